//! `bayleaf export`: the figures of every paper, as its page prints them.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use serde_json::Value;

use super::{bayleaf, errors, folder, said};

fn jsons(folder: &Path) -> BTreeMap<String, Value> {
    let entries = fs::read_dir(folder).expect("it was written").map(|entry| entry.expect("listed"));
    let read = |entry: fs::DirEntry| {
        let name = entry.file_name().to_string_lossy().trim_end_matches(".json").to_owned();
        let text = fs::read_to_string(entry.path()).expect("it is text");
        (name, serde_json::from_str(&text).expect("it is JSON"))
    };
    entries.map(read).collect()
}

fn texts(value: &Value, found: &mut Vec<String>) {
    match value {
        Value::String(text) => found.push(text.replace('\u{a0}', " ")),
        Value::Array(values) => values.iter().for_each(|value| texts(value, found)),
        Value::Object(entries) => entries.values().for_each(|value| texts(value, found)),
        _ => {}
    }
}

/// A printed number as a number.
fn number(printed: &str) -> f64 {
    let plain: String = printed.chars().filter(|c| *c != '\u{202f}').collect();
    plain.replace('−', "-").parse().expect("a printed number")
}

#[test]
fn every_card_sheet_and_checklist_gives_its_printed_figures_and_sources() {
    let folder = folder();
    let run = |arguments: &[&str]| {
        let output = bayleaf(folder.path(), arguments);
        assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    };
    run(&["export", "figures", "--format", "json", "--at", "31 °C"]);
    run(&["print", "--format", "json", "--out", "pages", "--at", "31 °C"]);
    let figures = jsons(&folder.path().join("figures"));
    let pages = jsons(&folder.path().join("pages"));
    let (mut numbers, mut kinds) = (0, BTreeMap::<String, usize>::new());
    for (id, page) in &pages {
        let kind = page["$schema"].as_str().expect("a page names its schema").to_owned();
        // A report quotes its sheet; an index names other papers.
        if ["report.", "index.", "symptoms."].iter().any(|other| kind.starts_with(other)) {
            continue;
        }
        let table = figures.get(&format!("paper.{id}")).unwrap_or_else(|| panic!("{id} is not exported"));
        let rows = table["rows"].as_array().expect("rows");
        let mut printed = Vec::new();
        texts(page, &mut printed);
        for row in rows {
            let [text, shown] = ["text", "printed"].map(|key| row[key].as_str().expect("a text"));
            assert!(printed.iter().any(|other| other == text), "{id} does not print {text}");
            assert!(text.contains(shown), "{id}: {row}");
            let value = row["value"].as_f64().expect("a number");
            let (shown_number, hair) = (number(shown), 1e-9 * value.abs() + 1e-9);
            let decimals = shown.split_once('.').map_or(0, |(_, decimals)| decimals.len());
            let digit = 10_f64.powi(-i32::try_from(decimals).expect("few decimals"));
            assert!((shown_number - value).abs() <= digit + hair, "{id}: {row}");
            match row["rounding"].as_str().expect("a way") {
                // A card that sets its own minus sign turns up and down round.
                "up" if value >= 0.0 => assert!(shown_number >= value - hair, "{id}: {row}"),
                "down" if value >= 0.0 => assert!(shown_number <= value + hair, "{id}: {row}"),
                _ => {}
            }
            numbers += 1;
        }
        let inputs = table["inputs"].as_array().expect("inputs");
        assert!(!inputs.is_empty(), "{id} rests on nothing");
        // Every source that the page names is one of an input's.
        for source in page["furniture"]["sources"].as_array().expect("sources") {
            let text = source["text"].as_str().expect("a text").replace('\u{a0}', " ");
            let known = inputs.iter().filter_map(|input| input["source"].as_str());
            assert!(known.map(|own| own.replace('\u{a0}', " ")).any(|own| own == text), "{id}: {text}");
        }
        *kinds.entry(kind).or_default() += rows.len();
    }
    assert!(numbers > 4000, "only {numbers} numbers");
    let without: Vec<&String> = kinds.iter().filter(|(_, rows)| **rows == 0).map(|(kind, _)| kind).collect();
    // A system card shows pins and given values, a mode card what each mode forces: the first has
    // no computed number, the second a table of its own.
    assert_eq!(without, ["mode-card.schema.json", "system-card.schema.json"]);
    assert!(figures.contains_key("modes.curlew") && figures.contains_key("panel.heron-front"));
    assert!(kinds.len() >= 12, "{kinds:?}");
}

#[test]
fn an_export_has_the_units_that_are_asked_for() {
    let folder = folder();
    for units in ["metric", "US", "both"] {
        let to = format!("in-{units}");
        let output =
            bayleaf(folder.path(), &["export", &to, "--units", units, "--format", "json", "--at", "88 °F"]);
        assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
        let tables = jsons(&folder.path().join(&to));
        let keys = |name: &str| tables[name]["columns"].to_string();
        let (has_c, has_f) = (units != "US", units != "metric");
        let of_sensor = keys("sensor.curlew-cabin");
        assert_eq!(of_sensor.contains("temperature_c"), has_c, "{of_sensor}");
        assert_eq!(of_sensor.contains("temperature_f"), has_f, "{of_sensor}");
        // 88 °F is 31.11 °C.
        let sheet = tables["paper.CUR-SENSORS.AMB-15"]["rows"].to_string();
        assert_eq!(sheet.contains("31.1 °C"), has_c, "{units}");
        assert_eq!(sheet.contains("88.0 °F"), has_f, "{units}");
    }
}

#[test]
fn one_paper_is_a_table_too() {
    let folder = folder();
    let output = bayleaf(folder.path(), &["table", "CUR-C2", "--format", "csv"]);
    let text = said(&output);
    assert!(text.starts_with("part,block,place,printed,unit,value,rounding,text\n"), "{text}");
    assert!(text.lines().any(|line| line.contains(",V,") && line.contains(",down,")), "{text}");
    let refused = bayleaf(folder.path(), &["table", "CUR-C2", "--at", "31 °C"]);
    assert_eq!(refused.status.code(), Some(2));
    assert!(errors(&refused).contains("do not depend on the temperature of the bay"), "{}", errors(&refused));
}
