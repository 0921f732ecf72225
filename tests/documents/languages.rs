//! Numbers on paper follow the language; the user's own texts do not.

use bayleaf::document::{Edition, compose, list, proofs};
use bayleaf::quantity::{noted, reprinted};
use bayleaf::spec;
use bayleaf::words::{Language, Words};
use serde_json::Value;

use super::demo;

fn texts(value: &Value, found: &mut Vec<String>) {
    match value {
        Value::String(text) => found.push(text.replace('\u{a0}', " ")),
        Value::Array(values) => values.iter().for_each(|value| texts(value, found)),
        Value::Object(entries) => entries.values().for_each(|value| texts(value, found)),
        _ => {}
    }
}

/// Numbers with a decimal point: digits, one point, digits, and nothing that makes a name of them.
fn pointed(text: &str) -> Vec<String> {
    let runs = text.split(|c: char| !(c.is_alphanumeric() || matches!(c, '.' | '_' | '-' | '/' | '#')));
    let is_number = |run: &&str| {
        run.split_once('.').is_some_and(|(whole, part)| {
            let digits = |text: &str| !text.is_empty() && text.chars().all(|c| c.is_ascii_digit());
            digits(whole) && digits(part)
        })
    };
    runs.map(|run| run.trim_end_matches('.')).filter(is_number).map(str::to_owned).collect()
}

#[test]
fn numbers_have_the_decimal_mark_of_the_language() {
    let model = demo();
    let date = chrono::NaiveDate::from_ymd_opt(2026, 3, 1).expect("a day");
    let bay = Some(bayleaf::quantity::Temperature::from_celsius(31.0));
    // What is no quantity in a spec is somebody's own words.
    let notation = Words::of(Language::German).notation();
    let own_words = |text: &String| noted(notation.clone(), || reprinted(text)) == *text;
    let mut own: Vec<String> =
        spec::DEMO.iter().flat_map(|(_, text)| quoted(text)).filter(own_words).collect();
    own.retain(|text| text.contains('.') && text.len() > 3);
    own.sort_by_key(|text| std::cmp::Reverse(text.len()));
    own.dedup();
    let own: Vec<String> = own.iter().map(|text| text.replace('\u{a0}', " ")).collect();
    for language in Language::ALL.iter().filter(|language| language.numbers().0 == ',') {
        let words = Words::of(*language);
        let context = Edition { bay, ..Edition::of(&model, &words) }.context(&model, &words, date);
        let mut strange = Vec::new();
        for listed in list(&model).iter().chain(&proofs(&model)) {
            let document = compose(context, listed).expect("the demo's papers can be composed");
            let data: Value = serde_json::from_slice(&document.data).expect("JSON");
            let mut found = Vec::new();
            texts(&data, &mut found);
            // A proof cuts long texts, also those that are somebody's own.
            for text in found.iter().filter(|text| !pointed(text).is_empty() && !text.contains('…')) {
                let rest = own.iter().fold(text.clone(), |rest, own| rest.replace(own, ""));
                if !pointed(&rest).is_empty() {
                    strange.push(format!("{}: {text}", document.id));
                }
            }
        }
        strange.sort();
        strange.dedup();
        assert!(
            strange.is_empty(),
            "{} {}: {:#?}",
            language.code(),
            strange.len(),
            &strange[..strange.len().min(60)]
        );
    }
}

/// Texts in quotes, as specs have them.
fn quoted(text: &str) -> Vec<String> {
    text.split('"').map(str::to_owned).collect()
}
