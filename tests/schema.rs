//! The schema of specs: every key described, the keys of README and schema the same, and
//! its patterns accept what the reader accepts. The schemas of templates' data.
//!
//! Whether specs and data validate is asked of outside validators: `tests/outside`.

#[path = "schema/templates.rs"]
mod templates;

use std::collections::{BTreeMap, BTreeSet};

use bayleaf::quantity::{
    Accuracy, Beta, Current, Misread, Phrasing, Pressure, Resistance, Step, Temperature,
    TemperatureDifference, Voltage, accuracy, deviation, interval, ratio, scalar, toleranced, wire_size,
};
use bayleaf::spec::schema::{described, keys, schema};
use fancy_regex::Regex;
use proptest::prelude::*;
use serde_json::Value;

const README: &str = include_str!("../README.md");

#[test]
fn every_key_has_a_description_and_no_description_is_left_over() {
    let described: BTreeSet<(String, String)> = described().into_iter().collect();
    let has = |path: &str, key: &str| described.contains(&(path.to_owned(), key.to_owned()));
    let mut used = BTreeSet::from([(String::new(), String::new())]);
    let mut missing = Vec::new();
    for (path, keys) in keys() {
        for key in std::iter::once("").chain(keys) {
            match (has(&path, key), has("any", key)) {
                (true, _) => drop(used.insert((path.clone(), key.to_owned()))),
                (_, true) if !key.is_empty() => drop(used.insert(("any".to_owned(), key.to_owned()))),
                _ => missing.push(format!("[{path}] {key}")),
            }
        }
        // A table whose keys are the user's own says what one of them is.
        if let Some(outer) = path.strip_suffix(".*") {
            used.insert((outer.to_owned(), "*".to_owned()));
        }
    }
    assert!(missing.is_empty(), "without a description: {missing:#?}");
    let left: Vec<_> = described.difference(&used).collect();
    assert!(left.is_empty(), "described, and asked for by no reader: {left:#?}");
}

#[test]
fn every_quantity_has_an_example() {
    let mut quantities = 0;
    walk(&schema(), &mut |value| {
        let text = value.to_string();
        let is_quantity = value.get("description").is_some() && text.contains("#/definitions/");
        let reference = value.pointer("/allOf/0/$ref").and_then(Value::as_str).unwrap_or_default();
        let plain = ["text", "flag", "number"].map(|name| format!("#/definitions/{name}"));
        if is_quantity && !reference.is_empty() && !plain.iter().any(|plain| plain == reference) {
            quantities += 1;
            assert!(value.get("examples").is_some(), "no example: {value:#}");
        }
    });
    assert!(quantities > 90, "only {quantities} quantities");
}

fn walk(value: &Value, visit: &mut impl FnMut(&Value)) {
    visit(value);
    match value {
        Value::Array(items) => items.iter().for_each(|item| walk(item, visit)),
        Value::Object(items) => items.values().for_each(|item| walk(item, visit)),
        _ => {}
    }
}

/// The keys and words that a cell of README names in code.
fn named(text: &'static str) -> impl Iterator<Item = &'static str> {
    text.split('`').skip(1).step_by(2).flat_map(|span| {
        // `{ to = "…", note = "…" }` and `[[vent.ID.position]]` name keys too.
        let inner = span
            .contains(" = ")
            .then(|| span.split(" =").filter_map(|part| part.split([' ', '{']).next_back()));
        let table = span.starts_with('[').then(|| span.trim_matches(['[', ']']).split('.').skip(1));
        std::iter::once(span).chain(inner.into_iter().flatten()).chain(table.into_iter().flatten())
    })
}

/// The words in code of README's table of keys, by the kinds of their rows.
fn keys_of_readme() -> BTreeMap<&'static str, BTreeSet<&'static str>> {
    let mut kinds: BTreeMap<&str, BTreeSet<&str>> = BTreeMap::new();
    let mut now: Vec<&str> = Vec::new();
    let table = README.split("| Kind | Keys").nth(1).expect("README has a table of keys");
    for row in table.lines().skip(2).take_while(|row| row.starts_with('|')) {
        let (head, words) = row[1..].split_once('|').expect("a row has two cells");
        let own: Vec<&str> =
            head.split('[').skip(1).filter_map(|rest| rest.split([']', '.']).next()).collect();
        if !own.is_empty() {
            now = own;
        }
        for kind in &now {
            kinds.entry(kind).or_default().extend(named(words));
        }
    }
    kinds
}

#[test]
fn the_table_of_keys_in_the_readme_and_the_schema_name_the_same_keys() {
    let readme = keys_of_readme();
    let mut all: BTreeMap<String, BTreeSet<&str>> = BTreeMap::new();
    for (path, keys) in keys() {
        let kind = path.split('.').next().unwrap_or_default().to_owned();
        all.entry(kind).or_default().extend(keys);
    }
    assert_eq!(readme.keys().copied().collect::<Vec<_>>(), all.keys().collect::<Vec<_>>());
    let known: BTreeSet<&str> = all.values().flatten().copied().collect();
    let mut words: BTreeSet<String> = BTreeSet::new();
    walk(&schema(), &mut |value| {
        let all = value.get("enum").and_then(Value::as_array).into_iter().flatten();
        words.extend(all.filter_map(Value::as_str).map(str::to_owned));
    });
    // What every kind has is told once, above the table, and so are a sensor's curve and tolerance.
    let part = |head: &str, end: &str| README.split(head).nth(1).and_then(|rest| rest.split(end).next());
    let part = |head, end| part(head, end).expect("README has this paragraph");
    let general: BTreeSet<&str> =
        ["**Pins.**", "**Sources.**"].into_iter().flat_map(|head| named(part(head, "\n\n"))).collect();
    let curve = part("**Curves**", "| Kind | Keys");
    let curve: BTreeSet<&str> = curve.split(|c: char| !c.is_ascii_lowercase()).collect();
    let mut wrong = Vec::new();
    for (kind, keys) in &all {
        let told = &readme[kind.as_str()];
        let is_told = |key: &&&str| {
            told.contains(**key) || general.contains(**key) || kind == "sensor" && curve.contains(**key)
        };
        let untold: Vec<_> = keys.iter().filter(|key| !is_told(key)).collect();
        if !untold.is_empty() {
            wrong.push(format!("README's rows of [{kind}] lack {untold:?}"));
        }
        let is_key =
            |word: &&&str| !word.is_empty() && word.chars().all(|c| c.is_ascii_lowercase() || c == '_');
        let strange: Vec<_> = (told.iter().filter(is_key))
            .filter(|word| !known.contains(**word) && !words.contains(**word) && **word != "true")
            .collect();
        if !strange.is_empty() {
            wrong.push(format!("README's rows of [{kind}] name {strange:?}, unknown to the schema"));
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

type Reads = (&'static str, fn(&str) -> Result<(), Misread>);

/// Every reading function that specs use, without what it reads.
const READERS: &[Reads] = &[
    ("resistance", |text| toleranced::<Resistance>(text).map(drop)),
    ("voltage", |text| scalar::<Voltage>(text).map(drop)),
    ("offset", |text| deviation::<Voltage>(text).map(drop)),
    ("currents", |text| interval::<Current>(text).map(drop)),
    ("temperature", |text| scalar::<Temperature>(text).map(drop)),
    ("temperatures", |text| interval::<Temperature>(text).map(drop)),
    ("difference", |text| scalar::<TemperatureDifference>(text).map(drop)),
    ("step", |text| scalar::<Step>(text).map(drop)),
    ("differences", |text| interval::<TemperatureDifference>(text).map(drop)),
    ("pressure", |text| scalar::<Pressure>(text).map(drop)),
    ("beta", |text| scalar::<Beta>(text).map(drop)),
    ("part", |text| ratio(text).map(drop)),
    ("accuracy", |text| accuracy(text).map(|_: Accuracy| ())),
    ("wire", |text| wire_size(text).map(drop)),
];

/// Texts made of the pieces of quantities, most of them nearly right.
fn texts() -> impl Strategy<Value = String> {
    let number = prop_oneof![
        Just("1"),
        Just("2.2"),
        Just("-5"),
        Just("−0.5"),
        Just("+3"),
        Just("10 000"),
        Just("4,7"),
        Just(".5"),
        Just("1e3"),
        Just("7."),
        Just(""),
    ];
    let unit = prop_oneof![
        Just(" V"),
        Just("mV"),
        Just(" kΩ"),
        Just(" k\u{2126}"),
        Just(" °C"),
        Just(" ºF"),
        Just(" K"),
        Just(" %"),
        Just(" bar"),
        Just(" psi"),
        Just(" AWG"),
        Just(" mm²"),
        Just(" A"),
        Just(" volts"),
        Just(" X"),
        Just(""),
    ];
    let joint = prop_oneof![
        Just(" to "),
        Just("–"),
        Just(" … "),
        Just(" ± "),
        Just(" +/- "),
        Just(" + "),
        Just(" "),
        Just(" of reading + "),
    ];
    let lead = prop_oneof![8 => Just(""), 2 => Just("± "), 1 => Just("+-"), 1 => Just("about ")];
    let tail = prop_oneof![8 => Just(""), 2 => Just(" digits"), 1 => Just(" count"), 1 => Just(" at rest")];
    let term = (number, unit).prop_map(|(number, unit)| format!("{number}{unit}"));
    let more = proptest::option::of((joint, term.clone()));
    (lead, term, more, tail).prop_map(|(lead, term, more, tail)| {
        let more = more.map(|(joint, term)| format!("{joint}{term}")).unwrap_or_default();
        format!("{lead}{term}{more}{tail}")
    })
}

/// What a pattern cannot see: numbers in relation to each other, and below nought.
fn is_beyond_patterns(reason: &bayleaf::quantity::Reason) -> bool {
    use bayleaf::quantity::Reason::{Reversed, ToleranceTooLarge};
    matches!(reason, Reversed { .. } | ToleranceTooLarge)
}

#[test]
fn a_pattern_accepts_what_its_reader_accepts() {
    let patterns: Vec<(&Reads, Regex)> = READERS
        .iter()
        .map(|reads| {
            let pattern = Phrasing::of(|text| reads.1(text).is_ok()).pattern();
            (reads, Regex::new(&pattern).expect("a regular expression"))
        })
        .collect();
    let mut config = proptest::test_runner::Config::with_cases(4000);
    config.failure_persistence = None;
    let accepted = std::cell::Cell::new(0);
    let mut runner = proptest::test_runner::TestRunner::new_with_rng(
        config,
        proptest::test_runner::TestRng::deterministic_rng(proptest::test_runner::RngAlgorithm::ChaCha),
    );
    let outcome = runner.run(&texts(), |text| {
        for ((name, read), pattern) in &patterns {
            let matches = pattern.is_match(&text).expect("a match ends");
            match read(&text) {
                Ok(()) => {
                    accepted.set(accepted.get() + 1);
                    prop_assert!(matches, "{name} reads `{text}`, the pattern {pattern} refuses it");
                }
                Err(misread) if is_beyond_patterns(&misread.reason) => {}
                Err(misread) => {
                    // Only whole gauge numbers are wire sizes; sizes are above nought.
                    let is_size = *name == "wire";
                    prop_assert!(
                        !matches || is_size,
                        "{name}: {misread} in `{text}`, the pattern {pattern} takes it"
                    );
                }
            }
        }
        Ok(())
    });
    outcome.expect("patterns and readers agree");
    assert!(accepted.get() > 500, "only {} texts were readable", accepted.get());
}

/// A card's step is a difference, on the scale that its table is round on.
#[test]
fn the_schema_takes_a_step_in_fahrenheit_as_the_reader_does() {
    let schema = schema();
    let step = &schema["definitions"]["card"]["properties"]["step"];
    let definition = step["allOf"][0]["$ref"].as_str().and_then(|name| name.strip_prefix("#/definitions/"));
    let definition = &schema["definitions"][definition.expect("a step is a quantity")];
    let pattern = definition["anyOf"][0]["pattern"].as_str().expect("quantities have a pattern");
    let pattern = Regex::new(pattern).expect("a regular expression");
    let mut taken = 0;
    for text in [
        "5 °F",
        "5 K",
        "2.5 °C",
        "± 5 °F",
        "10 degF",
        "0.5 ℉",
        "5",
        "5 °",
        "5 Ω",
        "5 psi",
        "five °F",
        "5 °F/K",
        "",
        "5 °F to 10 °F",
    ] {
        let reads = scalar::<Step>(text).is_ok();
        assert_eq!(pattern.is_match(text).expect("a match ends"), reads, "`{text}`");
        taken += usize::from(reads);
    }
    assert!(taken >= 5, "only {taken} of them are steps");
}
