//! Specs against the schema that `bayleaf schema` writes, by a validator that is not ours.
//!
//! Run by `.ci/run`; by hand: `cargo build && cargo test --manifest-path tests/outside/Cargo.toml`.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use bayleaf_outside::{root, said, validator};
use jsonschema::Validator;
use serde_json::Value;

mod beyond;

/// Broken specs that the schema lets pass, and why: JSON Schema sees one file at a time and
/// compares no value with another.
const BEYOND_SCHEMA: &[(&str, &[&str])] = &[
    ("another table decides", beyond::OTHER_TABLE),
    ("numbers are compared", beyond::NUMBERS),
    ("a rule knows which keys go together", beyond::RULES),
    ("what a text means", beyond::TEXTS),
];

/// A spec as JSON; `None` where it is no TOML.
fn spec(text: &str) -> Option<Value> {
    serde_json::to_value(text.parse::<toml::Table>().ok()?).ok()
}

fn specs_below(folder: &Path) -> Vec<PathBuf> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder).expect("the folder can be read") {
        let path = entry.expect("its entries can be listed").path();
        if path.is_dir() {
            found.extend(specs_below(&path));
        } else if path.extension().is_some_and(|end| end == "toml") {
            found.push(path);
        }
    }
    found.sort();
    found
}

fn refusals(validator: &Validator, path: &Path) -> Vec<String> {
    let text = fs::read_to_string(path).expect("specs are UTF-8");
    match spec(&text) {
        Some(spec) => bayleaf_outside::refusals(validator, &spec),
        None => vec!["no TOML".to_owned()],
    }
}

#[test]
fn the_demo_set_and_a_new_set_are_valid() {
    let validator = validator(&said(&["schema"]));
    let new = root().join("target/outside-new");
    drop(fs::remove_dir_all(&new));
    drop(said(&["new", &new.display().to_string()]));
    let mut all = specs_below(&root().join("specs"));
    assert!(all.len() > 20, "the demo set has {} files", all.len());
    all.extend(specs_below(&new));
    for path in all {
        let refusals = refusals(&validator, &path);
        assert!(refusals.is_empty(), "{}: {refusals:#?}", path.display());
    }
}

#[test]
fn broken_specs_are_refused_where_a_schema_can_tell() {
    let validator = validator(&said(&["schema"]));
    let folder = root().join("tests/findings");
    let mut passed = BTreeSet::new();
    let mut refused = 0;
    for entry in fs::read_dir(&folder).expect("the folder of broken specs") {
        let path = entry.expect("its entries can be listed").path();
        let files = if path.is_dir() { specs_below(&path) } else { vec![path.clone()] };
        let files: Vec<_> =
            files.into_iter().filter(|file| file.extension().is_some_and(|end| end == "toml")).collect();
        if files.is_empty() {
            continue;
        }
        if files.iter().all(|file| refusals(&validator, file).is_empty()) {
            passed.insert(path.file_stem().expect("it has a name").to_string_lossy().into_owned());
        } else {
            refused += 1;
        }
    }
    let mut reasons: BTreeMap<&str, &str> = BTreeMap::new();
    for (reason, names) in BEYOND_SCHEMA {
        for name in *names {
            assert!(reasons.insert(name, reason).is_none(), "{name} is listed twice");
        }
    }
    let unexplained: Vec<_> = passed.iter().filter(|name| !reasons.contains_key(name.as_str())).collect();
    assert!(unexplained.is_empty(), "the schema lets these pass, with no reason said: {unexplained:#?}");
    let refused_too: Vec<_> = reasons.keys().filter(|name| !passed.contains(**name)).collect();
    assert!(refused_too.is_empty(), "the schema refuses these by now: {refused_too:#?}");
    assert!(refused > 60, "only {refused} broken specs are refused");
}
