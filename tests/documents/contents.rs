//! What a document says does not depend on the language that it says it in.

use bayleaf::document::{Context, Edition, Listed, Paperwork, compose, content, list};
use bayleaf::model::Model;
use bayleaf::quantity::Temperature;
use bayleaf::words::{Language, Words};
use serde_json::Value;

use super::{demo, demo_with};

fn context<'a>(model: &'a Model, words: &'a Words) -> Context<'a> {
    let bay = Some(Temperature::from_celsius(31.0));
    let date = "2026-03-01".parse().expect("a date");
    Edition { bay, ..Edition::of(model, words) }.context(model, words, date)
}

/// Where every leaf of a value stands; an empty text is a leaf, too.
fn shape(value: &Value, at: &str, found: &mut Vec<String>) {
    match value {
        Value::Object(entries) => {
            entries.iter().for_each(|(key, value)| shape(value, &format!("{at}/{key}"), found));
        }
        Value::Array(values) => {
            values
                .iter()
                .enumerate()
                .for_each(|(index, value)| shape(value, &format!("{at}/{index}"), found));
        }
        _ => found.push(at.to_owned()),
    }
}

#[test]
fn every_language_says_the_same_in_the_same_places() {
    let model = demo();
    let leaves = |data: &Value| {
        let mut found = Vec::new();
        shape(data, "", &mut found);
        found
    };
    let neutral = Words::neutral();
    let languages: Vec<Words> = Language::ALL.iter().map(|language| Words::of(*language)).collect();
    // The index composes all others: it would be most of the time.
    for listed in list(&model).iter().filter(|listed| listed.paperwork != Paperwork::Index) {
        let meant = content(context(&model, &neutral), listed).expect("the demo's papers");
        let furniture = meant.data()["furniture"].as_object().expect("furniture");
        for words in &languages {
            let document = compose(context(&model, words), listed).expect("the demo's papers");
            assert_eq!(document.fingerprint(), meant.fingerprint, "{} in {:?}", listed.id, words.language());
            let mut said: Value = serde_json::from_slice(&document.data).expect("JSON");
            // What an issue or edition says of itself is no content.
            said["furniture"]
                .as_object_mut()
                .expect("furniture")
                .retain(|key, _| furniture.contains_key(key));
            let (said, meant) = (leaves(&said), leaves(meant.data()));
            assert_eq!(said, meant, "{} in {:?}: where texts stand", listed.id, words.language());
        }
    }
}

#[test]
fn a_corrected_pull_up_moves_the_papers_that_show_it_and_no_other() {
    let before = demo();
    let after = demo_with(&[(
        // The evaporator's: the only one with this converter.
        "resistor = \"4.7 kΩ ± 1 %\"\nconverter",
        "resistor = \"4.8 kΩ ± 1 %\"\nconverter",
    )]);
    let words = Words::english();
    let said = |model| {
        let context = context(model, &words);
        let said = |listed: Listed| {
            let document = compose(context, &listed).expect("the demo's papers");
            let mut data: Value = serde_json::from_slice(&document.data).expect("JSON");
            let furniture = data["furniture"].as_object_mut().expect("furniture");
            let code = furniture.remove("fingerprint").expect("a fingerprint");
            furniture.remove("code");
            (listed.id, code, data)
        };
        list(model).into_iter().map(said).collect::<Vec<_>>()
    };
    let (before, after) = (said(&before), said(&after));
    let mut moved = Vec::new();
    for (before, after) in before.into_iter().zip(after) {
        // The printed page differs exactly where the code does.
        assert_eq!(before.1 != after.1, before.2 != after.2, "{}", before.0);
        if before.1 != after.1 {
            moved.push(before.0);
        }
    }
    // Sheets and the reports that name their papers by codes: one of each vehicle.
    let of_vehicles = |sheet: &str| [11, 12, 14, 15].map(|number| format!("{sheet}.AMB-{number}"));
    let mut expected: Vec<String> =
        ["CUR-C2", "CUR-EVAP", "CUR-EVAP-STRIP", "CUR-EVAP-WALL", "CUR-REQUEST", "CUR-S3"]
            .map(str::to_owned)
            .to_vec();
    expected.extend(["CUR-PARTS", "CUR-SENSORS", "CUR-REPORT"].map(of_vehicles).concat());
    expected.extend(["CUR-NO-COLD", "SET.INDEX"].map(str::to_owned));
    assert_eq!(moved, expected);
}
