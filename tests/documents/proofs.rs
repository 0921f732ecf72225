//! Every number of every card stands on its proof sheet, and those that were not computed
//! are the specs' own or fixed words.

use std::collections::BTreeSet;

use bayleaf::document::{self, Document, Edition, Listed};
use bayleaf::model::Model;
use bayleaf::quantity::Temperature;
use bayleaf::spec;
use bayleaf::words::{Language, Order, Words};
use serde_json::Value;

use super::demo;

/// Parts of a card that hold no figures: furniture, warnings, names of pins, what is drawn
/// or read aloud, letters of sources.
const FURNITURE: &[&str] = &[
    "furniture",
    "cautions",
    "ends",
    "alt",
    "outline",
    "paper",
    "mark",
    "place_mark",
    "pin",
    "card",
    "notes",
];

fn composed(model: &Model, listed: &Listed) -> Document {
    composed_in(Language::English, model, listed)
}

fn composed_in(language: Language, model: &Model, listed: &Listed) -> Document {
    let words = Words::of(language);
    let date = "2026-11-24".parse().expect("a date");
    let bay = Some(Temperature::from_celsius(31.0));
    let context = Edition { bay, ..Edition::of(model, &words) }.context(model, &words, date);
    document::compose(context, listed).expect("a listed document exists")
}

fn data(document: &Document) -> Value {
    serde_json::from_slice(&document.data).expect("data is JSON")
}

fn texts(value: &Value, unseen: &[&str], found: &mut Vec<String>) {
    match value {
        Value::String(text) => found.push(text.clone()),
        Value::Array(values) => values.iter().for_each(|value| texts(value, unseen, found)),
        Value::Object(entries) => entries
            .iter()
            .filter(|(key, _)| !unseen.contains(&key.as_str()))
            .for_each(|(_, value)| texts(value, unseen, found)),
        _ => {}
    }
}

/// Runs of digits with their point, blanks between thousands left out, where no letter or
/// stroke makes a name of them.
fn figures(text: &str) -> BTreeSet<String> {
    let text: String = text.chars().filter(|c| *c != '\u{202f}').collect();
    let is_part = |c: char| c.is_alphanumeric() || matches!(c, '.' | '/' | '-' | '_' | '#');
    let words = text.split(|c: char| !is_part(c));
    let words = words.map(|word| word.trim_matches(['.', '-', '/']));
    let is_figure = |word: &&str| !word.is_empty() && word.chars().all(|c| c.is_ascii_digit() || c == '.');
    words.filter(is_figure).map(str::to_owned).collect()
}

fn all_figures(value: &Value, unseen: &[&str]) -> BTreeSet<String> {
    let mut found = Vec::new();
    texts(value, unseen, &mut found);
    found.iter().flat_map(|text| figures(text)).collect()
}

#[test]
fn every_number_of_every_card_is_on_its_proof() {
    let model = demo();
    let cards = document::list(&model);
    let mut checked = 0;
    for proof in document::proofs(&model) {
        let card = cards.iter().find(|listed| listed.id == proof.spec).expect("a proof is a card's");
        let wanted = all_figures(&data(&composed(&model, card)), FURNITURE);
        let proved = all_figures(&data(&composed(&model, &proof)), &["furniture"]);
        let missing: Vec<&String> = wanted.difference(&proved).collect();
        assert!(missing.is_empty(), "{}: not proved: {missing:?}", proof.id);
        checked += wanted.len();
    }
    assert!(checked > 2000, "only {checked} numbers were looked for");
}

/// Numbers that no value of the specs and no computation has made: the ohms of the bad
/// contact that a sensor card's worked example supposes, and codes of contacts, which are
/// counted through.
fn is_named(number: &str) -> bool {
    number == "500" || (number.len() > 1 && number.chars().all(|digit| matches!(digit, '0' | '1')))
}

#[test]
fn what_is_not_computed_is_in_the_specs_or_the_words() {
    let model = demo();
    let mut known: BTreeSet<String> = spec::DEMO.iter().flat_map(|(_, text)| figures(text)).collect();
    // `0.5` in a spec may be quoted after a letter: every run of digits counts here.
    let runs = |text: &str| -> Vec<String> {
        text.split(|c: char| !(c.is_ascii_digit() || c == '.'))
            .map(|run| run.trim_matches('.').to_owned())
            .collect()
    };
    known.extend(spec::DEMO.iter().flat_map(|(_, text)| runs(text)));
    known.extend(runs(Language::English.table()));
    let mut strangers = Vec::new();
    for proof in document::proofs(&model) {
        let data = data(&composed(&model, &proof));
        let found = all_figures(&data["as_given"], &[]);
        // The words around a number may hold a neighbour that has its own line.
        let neighbours = &all_figures(&data["parts"], &[]) | &all_figures(&data["exact"], &[]);
        let strange =
            |number: &&String| !known.contains(*number) && !neighbours.contains(*number) && !is_named(number);
        let found: Vec<&String> = found.iter().filter(strange).collect();
        if !found.is_empty() {
            strangers.push(format!("{}: {found:?}", proof.id));
        }
    }
    assert!(strangers.is_empty(), "computed past the record:\n{}", strangers.join("\n"));
}

#[test]
fn computed_numbers_have_formulas_and_the_values_they_rest_on() {
    let model = demo();
    let mut computed = 0;
    for proof in document::proofs(&model) {
        let data = data(&composed(&model, &proof));
        let count = |key: &str| data[key].as_array().map_or(0, Vec::len);
        if count("parts") > 0 {
            assert!(count("formulas") > 0, "{}: no formula", proof.id);
            assert!(count("inputs") > 0, "{}: no input", proof.id);
            computed += 1;
        }
    }
    assert!(computed > 30, "only {computed} cards have computed numbers");
}

#[test]
fn a_proof_names_the_fingerprint_of_its_card_and_rounds_the_right_way() {
    let model = demo();
    let cards = document::list(&model);
    let mut lines = 0;
    for proof in document::proofs(&model) {
        let card = cards.iter().find(|listed| listed.id == proof.spec).expect("a proof is a card's");
        let fingerprint = data(&composed(&model, card))["furniture"]["fingerprint"].clone();
        let data = data(&composed(&model, &proof));
        let intro = data["intro"][0].as_str().expect("a text");
        assert!(intro.contains(fingerprint.as_str().expect("a text")), "{}", proof.id);
        for line in
            data["parts"].as_array().into_iter().flatten().flat_map(|part| part["lines"].as_array()).flatten()
        {
            let cell = |index: usize| line[index].as_str().expect("a text");
            let number = |text: &str| {
                let text: String = text.chars().filter(|c| !c.is_whitespace()).collect();
                text.replace('−', "-").parse::<f64>().unwrap_or_else(|_| panic!("{}: {text}", proof.id))
            };
            let (printed, unrounded) = (number(cell(1)), number(cell(2)));
            // Ten digits of the unrounded value are shown.
            let hair = 1e-9 * unrounded.abs() + 1e-12;
            let right = match cell(3) {
                "up" => printed >= unrounded - hair,
                "down" => printed <= unrounded + hair,
                _ => true,
            };
            assert!(right, "{}: {line}", proof.id);
            let decimals = cell(1).split_once('.').map_or(0, |(_, decimals)| decimals.len());
            let digit = 10_f64.powi(-i32::try_from(decimals).expect("few decimals"));
            assert!((printed - unrounded).abs() <= digit * 1.000_001 + hair, "{}: {line}", proof.id);
            lines += 1;
        }
    }
    assert!(lines > 2500, "only {lines} lines");
}

#[test]
fn every_block_of_a_card_has_a_name_in_words() {
    let model = demo();
    // No German name of a block is written like a key of the data: small letters, `_` for a blank.
    let is_key = |name: &str| name.chars().all(|c| c.is_ascii_lowercase() || c == ' ');
    let mut met = BTreeSet::new();
    // One system has every kind of card.
    for proof in document::proofs(&model).iter().filter(|proof| proof.id.starts_with("CUR-")) {
        let data = data(&composed_in(Language::German, &model, proof));
        let titles = data["parts"].as_array().into_iter().flatten().map(|part| &part["title"]);
        let places = ["exact", "as_given"].into_iter().flat_map(|key| data[key].as_array()).flatten();
        for said in titles.chain(places) {
            let said = said.as_str().expect("a text");
            let name = said.split([':', ',']).next().unwrap_or_default();
            assert!(!is_key(name), "{}: {said}", proof.id);
            met.insert(name.to_owned());
        }
    }
    assert!(met.contains("Zeichnungen") && met.contains("Anmerkungen"), "{met:?}");
}

#[test]
fn the_index_has_the_fingerprints_of_the_documents() {
    let model = demo();
    let all = document::list(&model);
    let index = all.last().expect("there are documents");
    let data_of_index = data(&composed(&model, index));
    let rows = data_of_index["documents"]["rows"].as_array().expect("rows");
    assert_eq!(rows.len(), all.len() - 1);
    let ids: Vec<&str> = rows.iter().filter_map(|row| row[0].as_str()).collect();
    let order = Order::of(Language::English);
    assert!(ids.is_sorted_by(|one, other| order.compare(one, other).is_lt()), "{ids:?}");
    // Words, not bytes: capitals count only among ids that are spelt alike without them.
    let place = |id: &str| ids.iter().position(|other| *other == id);
    assert!(place("CUR-VALVE") < place("curlew.SYMPTOMS") && place("curlew.SYMPTOMS") < place("HER-AIR"));
    for listed in &all[..all.len() - 1] {
        let row = rows.iter().find(|row| row[0] == *listed.id).expect("every document has a row");
        let document = composed(&model, listed);
        let furniture = &data(&document)["furniture"];
        let said = |key: &str| furniture[key].as_str().expect("a text").to_owned();
        assert_eq!(row[5].as_str(), Some(format!("{} {}", said("revision"), said("fingerprint")).as_str()));
        let count = |cell: &Value| cell.as_str().and_then(|text| text.parse().ok()).unwrap_or(0_usize);
        assert_eq!((count(&row[6]), count(&row[7])), (document.not_given.len(), document.no_source.len()));
        assert!(!row[3].as_str().unwrap_or_default().is_empty(), "{}: of no system", listed.id);
    }
}
