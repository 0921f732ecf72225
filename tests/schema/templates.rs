//! The schemas of templates' data: one for each template that receives any, every key described.

use std::collections::BTreeSet;

use bayleaf::typeset::{TEMPLATES, schemas};
use serde_json::Value;

#[test]
fn every_template_that_receives_data_has_exactly_one_schema() {
    let reads = |text: &str| text.contains("json(\"/data.json\")");
    let templates: Vec<&str> =
        TEMPLATES.iter().filter(|(_, text)| reads(text)).map(|(path, _)| *path).collect();
    let known: Vec<&str> = schemas().iter().map(|(template, _)| *template).collect();
    let set = |names: &[&str]| names.iter().map(ToString::to_string).collect::<BTreeSet<String>>();
    assert_eq!(set(&templates), set(&known));
    assert_eq!(known.len(), templates.len(), "a template has two schemas");
    assert!(known.len() > 15, "only {} templates", known.len());
}

/// Every object of a schema with its name.
fn objects(schema: &Value) -> Vec<(&str, &Value)> {
    let definitions = schema["definitions"].as_object().expect("the furniture at least");
    std::iter::once(("", schema))
        .chain(definitions.iter().map(|(name, object)| (name.as_str(), object)))
        .collect()
}

#[test]
fn every_key_says_what_it_is() {
    let mut missing = BTreeSet::new();
    let mut keys = 0;
    for (template, schema) in schemas() {
        for (name, object) in objects(&schema) {
            assert!(!name.ends_with(|c: char| c.is_ascii_digit()), "{template}: two types are called {name}");
            let own = object["properties"].as_object().expect("an object with keys");
            let described = own.iter().map(|(key, value)| (key.as_str(), value)).chain([("", object)]);
            for (key, value) in described {
                keys += 1;
                if value["description"].as_str().is_none_or(str::is_empty) {
                    missing.insert(format!("{template}: {name}.{key}"));
                }
            }
        }
    }
    assert!(missing.is_empty(), "without a comment in src/document: {missing:#?}");
    assert!(keys > 1000, "only {keys} keys");
}

#[test]
fn nothing_is_left_open() {
    for (template, schema) in schemas() {
        for (name, object) in objects(&schema) {
            let here = format!("{template}, {name}");
            assert_eq!(object["additionalProperties"], false, "{here}");
            let required = object["required"].as_array().map_or(0, Vec::len);
            let all = object["properties"].as_object().expect("an object with keys").keys();
            assert_eq!(required, all.filter(|key| *key != "$schema").count(), "{here}");
        }
    }
}
