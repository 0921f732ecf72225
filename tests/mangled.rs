//! The demo set with one value mangled: whatever is written, the answer is a finding or
//! finite figures, never a panic and never NaN or infinity.
//!
//! 96 cases in every run, the same ones; `PROPTEST_CASES` asks for more.

use bayleaf::diag::{Findings, Renderer, Sources};
use bayleaf::document::judgement::{self, Reading, judge};
use bayleaf::document::table::{self, Cell, Table};
use bayleaf::document::{self, Edition, faults};
use bayleaf::model::{self, Model};
use bayleaf::quantity::{Temperature, Units, Voltage};
use bayleaf::rules;
use bayleaf::spec::{self, Set};
use bayleaf::words::Words;
use proptest::prelude::*;
use proptest::test_runner::{Config, RngSeed};

fn every_run() -> Config {
    let mut config = Config { failure_persistence: None, ..Config::default() };
    if std::env::var_os("PROPTEST_CASES").is_none() {
        config.cases = 96;
    }
    if config.rng_seed == RngSeed::Random {
        config.rng_seed = RngSeed::Fixed(0);
    }
    config
}

/// Where quoted values stand in a file: behind `= "` or `["`.
fn values(text: &str) -> Vec<std::ops::Range<usize>> {
    let mut found = Vec::new();
    let mut at = 0;
    while let Some(start) = text[at..].find('"').map(|start| at + start + 1) {
        let Some(end) = text[start..].find(['"', '\n']).map(|end| start + end) else { break };
        found.push(start..end);
        at = end + 1;
    }
    found
}

/// What may stand where a value stood: quantities of every unit and size, and nonsense.
fn junk() -> impl Strategy<Value = String> {
    let number = prop_oneof![
        Just("0".to_owned()),
        Just("-1".to_owned()),
        Just("1e300".to_owned()),
        Just("0.000000000000001".to_owned()),
        Just("99999999999999999999".to_owned()),
        (-1e3..1e6_f64).prop_map(|number| format!("{number:.3}")),
        (1e-3..1e3_f64).prop_map(|number| format!("{number:.4}")),
    ];
    let units = [
        "Ω", "kΩ", "MΩ", "V", "mV", "A", "mA", "%", "K", "°C", "°F", "W", "mW/K", "kPa", "bar", "psi", "m",
        "mm²", "AWG", "mH", "Hz", "s", "min", "W/m²", "kJ/kg", "",
    ];
    let quantity = (number.clone(), prop::sample::select(units.to_vec()))
        .prop_map(|(number, unit)| format!("{number} {unit}"));
    let range = (number, quantity.clone()).prop_map(|(low, high)| format!("{low} to {high}"));
    let spread =
        (quantity.clone(), 0.0..200.0_f64).prop_map(|(value, part)| format!("{value} ± {part:.1} %"));
    let nonsense = prop::sample::select(vec![
        "",
        " ",
        "±",
        "to",
        "nan",
        "unbounded",
        "−",
        "R-744",
        "table",
        "💥",
        "C2/7",
    ]);
    prop_oneof![4 => quantity, 1 => range, 2 => spread, 1 => nonsense.prop_map(str::to_owned)]
}

/// Every number of a table is finite.
fn finite(table: &Table) -> Result<(), TestCaseError> {
    for (row, cells) in table.rows.iter().enumerate() {
        for (column, cell) in table.columns.iter().zip(cells) {
            if let Cell::Number(number) = cell {
                prop_assert!(number.is_finite(), "{}, row {row}: {} is {number}", table.title, column.key);
            }
        }
    }
    for (column, text) in table.texts().iter().flat_map(|row| table.columns.iter().zip(row)) {
        let number = !text.contains("inf") && !text.contains("NaN");
        prop_assert!(number || column.head.is_empty(), "{}: {text}", column.key);
    }
    Ok(())
}

/// Everything that can be asked of a set.
fn ask_everything(model: &Model) -> Result<(), TestCaseError> {
    let words = Words::english();
    for id in table::known(model) {
        let ask = table::Ask { id: &id, bay: Some(Temperature::from_celsius(31.0)), ..table::Ask::default() };
        let told = table::of(model, &words, &ask);
        // A thing whose table does not depend on the bay may refuse to be given one.
        let told = told.or_else(|_| table::of(model, &words, &table::Ask { bay: None, ..ask }));
        if let Ok(table) = told {
            finite(&table)?;
        }
    }
    let at = Temperature::from_celsius(25.0);
    for id in faults::known(model) {
        let ask = faults::Ask { id: &id, at: Some(at), ..faults::Ask::default() };
        if let Ok(table) = faults::of(model, &words, &ask) {
            finite(&table)?;
            let notes = table.notes.join("\n");
            prop_assert!(!notes.contains("inf ") && !notes.contains("NaN"), "{notes}");
        }
    }
    let date = "2026-11-24".parse().expect("a date");
    let edition = Edition { language: words.language(), units: Units::Both, size: None, bay: Some(at) };
    let context = edition.context(model, &words, date);
    for listed in document::list(model) {
        let document = document::compose(context, &listed);
        prop_assert!(document.is_some(), "{} is listed and cannot be composed", listed.id);
        let data = document.map(|document| String::from_utf8_lossy(&document.data).into_owned());
        let data = data.unwrap_or_default();
        prop_assert!(
            !data.contains("NaN") && !data.contains("inf ") && !data.contains(":null,\"at"),
            "{data}"
        );
    }
    for id in model.sensors.keys() {
        let ask = judgement::Ask {
            id,
            reading: Reading::Volts(Voltage::from_volts(1.7)),
            at,
            second: Some((Reading::Volts(Voltage::from_volts(2.4)), Temperature::from_celsius(5.0))),
            place: None,
            instruments: &[],
        };
        if let Ok(judgement) = judge(model, &words, &ask) {
            let (lines, _) = judgement::lines(&words, &judgement);
            let said = lines.join("\n");
            prop_assert!(!said.contains("inf ") && !said.contains("NaN"), "{said}");
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(every_run())]

    #[test]
    fn a_mangled_value_is_a_finding_or_gives_finite_figures(
        file in 0..spec::DEMO.len(),
        which in any::<prop::sample::Index>(),
        junk in junk(),
    ) {
        let mut sources = Sources::default();
        for (index, (path, text)) in spec::DEMO.iter().enumerate() {
            let mut text = (*text).to_owned();
            let values = values(&text);
            if index == file && !values.is_empty() {
                text.replace_range(values[which.index(values.len())].clone(), &junk);
            }
            sources.add((*path).to_owned(), text);
        }
        let findings = Findings::default();
        let set = Set::read(&sources, &findings);
        rules::check(&set, &findings);
        let sound = !findings.has_errors();
        let words = Words::english();
        let renderer = Renderer::new(&sources, &words, false);
        for finding in findings.sorted() {
            let drawn = renderer.draw(&finding);
            prop_assert!(drawn.contains("-->") && !drawn.contains('⟨'), "{drawn}");
        }
        if sound {
            let model = model::build(&set);
            prop_assert!(model.is_some(), "no finding, and yet no model");
            ask_everything(&model.expect("it was just seen"))?;
        }
    }
}
