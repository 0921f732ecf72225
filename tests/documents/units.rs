//! Editions of one spec: US rows are computed at round degrees Fahrenheit, limits lie inside.

use bayleaf::document::table::{Ask, Cell, Table, of};
use bayleaf::document::{self, Edition};
use bayleaf::quantity::{Step, Temperature, Units};
use bayleaf::words::Words;
use serde_json::Value;

use super::demo;

fn composed(units: Units, id: &str) -> Value {
    let (model, words) = (demo(), Words::english());
    let date = "2026-11-24".parse().expect("a date");
    let bay = Some(Temperature::from_fahrenheit(88.0));
    let edition = Edition { language: words.language(), units, size: None, bay };
    let context = edition.context(&model, &words, date);
    let mut all = document::list(&model).into_iter().chain(document::proofs(&model));
    let listed = all.find(|listed| listed.id == id).expect("it is listed");
    let document = document::compose(context, &listed).expect("it composes");
    serde_json::from_slice(&document.data).expect("data is JSON")
}

fn number(text: &Value) -> f64 {
    let plain: String = text.as_str().expect("text").chars().filter(|c| !c.is_whitespace()).collect();
    plain.replace('−', "-").parse().expect("a number")
}

fn table(id: &str, ask: &Ask<'_>) -> Table {
    of(&demo(), &Words::english(), &Ask { id, ..*ask }).expect("there is such a table")
}

#[test]
fn printed_limits_of_a_us_strip_lie_inside_what_is_computed_at_its_round_rows() {
    let card = composed(Units::Us, "CUR-EVAP");
    let rows = card["strip"]["rows"].as_array().expect("rows");
    assert!(rows.len() > 10, "{} rows", rows.len());
    for row in rows {
        let printed: Vec<f64> = row.as_array().expect("a row").iter().map(number).collect();
        let at = Temperature::from_fahrenheit(printed[0]);
        assert!(printed[0] % 5.0 == 0.0, "{} °F is no round row", printed[0]);
        // The edition with both scales computes the same at exactly this temperature.
        let step = Some(Step::of_kelvins(1.0));
        let exact = table("CUR-EVAP", &Ask { from: Some(at), to: Some(at), step, ..Ask::default() });
        let of = |key| exact.number(&exact.rows[0], key).expect("a number");
        let keys = [("resistance_min_ohm", "resistance_max_ohm"), ("voltage_min_v", "voltage_max_v")];
        for ((low, high), (least, greatest)) in [(1, 3), (4, 6)].into_iter().zip(keys) {
            let (hair, last) = (1e-6, if low == 1 { 1.0 } else { 1e-3 });
            assert!(printed[low] >= of(least) - hair && printed[low] - of(least) < last);
            assert!(printed[high] <= of(greatest) + hair && of(greatest) - printed[high] < last);
        }
    }
}

#[test]
fn saturation_rows_in_us_units_agree_with_what_tables_print_in_psi() {
    // R-134a at 40 °F: 49.7 psia, at 100 °F: 138.8 psia (refrigerant makers' saturation tables
    // in US units, from memory).
    let table = table("heron-refrigerant", &Ask { units: Units::Us, ..Ask::default() });
    for (fahrenheit, psia) in [(40.0, 49.7), (100.0, 138.8)] {
        let is_row = |row: &&Vec<Cell>| {
            table.number(row, "temperature_f").is_some_and(|at| (at - fahrenheit).abs() < 1e-9)
        };
        let row = table.rows.iter().find(is_row).expect("a round row");
        let found = table.number(row, "absolute_psi").expect("a pressure");
        assert!((found - psia).abs() < 0.3, "{found} psi at {fahrenheit} °F");
    }
    assert!(table.columns.iter().all(|column| !column.key.ends_with("_c") && !column.key.ends_with("_kpa")));
}

#[test]
fn one_scale_shows_nothing_of_the_other_but_what_a_document_gives() {
    for (units, own, other) in [(Units::Us, "°F", "°C"), (Units::Metric, "°C", "°F")] {
        let card = composed(units, "CUR-EVAP");
        for part in ["key_figures", "strip", "faults", "signature", "plots", "measuring"] {
            let text = card[part].to_string();
            assert!(!text.contains(other), "{part} of {}: {text}", units.word());
        }
        assert!(card["key_figures"].to_string().contains(own));
    }
    let given = composed(Units::Us, "CUR-EVAP")["given"].to_string().replace('\u{a0}', " ");
    assert!(given.contains("± 2.5 K (± 4.5 °F)") && given.contains("25 °C (77 °F)"), "{given}");
}

#[test]
fn a_proof_in_us_units_shows_its_inputs_as_the_card_does() {
    let mut beside = 0;
    for id in ["CUR-EVAP", "HER-REAR-DUCT", "CUR-LINE"] {
        let given = composed(Units::Us, id)["given"].clone();
        let proof = composed(Units::Us, &format!("{id}.PROOF"));
        let inputs = proof["inputs"].as_array().expect("inputs");
        for line in given.as_array().expect("a list") {
            beside += usize::from(same_in_fahrenheit(line, inputs));
        }
    }
    assert!(beside >= 5, "only {beside} values with °F beside them");
}

/// Whether a line of a card's given values has °F in brackets; its proof must have the same.
fn same_in_fahrenheit(line: &Value, inputs: &[Value]) -> bool {
    let Some(value) = line["value"].as_str().filter(|value| value.contains("°F)")) else { return false };
    let what = &line["what"];
    let found = inputs.iter().find(|input| input["what"] == *what).unwrap_or_else(|| panic!("no {what}"));
    assert_eq!(found["value"].as_str(), Some(value), "{what}");
    true
}
