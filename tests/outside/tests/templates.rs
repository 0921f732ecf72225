//! What templates receive, against the schemas that `bayleaf templates --write` lays beside them.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicUsize, Ordering};

use bayleaf_outside::{refusals, root, said, validator};
use jsonschema::Validator;
use serde_json::Value;

fn json(path: &Path) -> Value {
    serde_json::from_str(&fs::read_to_string(path).expect("it was written")).expect("it is JSON")
}

/// Every file of a folder by its name.
fn files(folder: &Path) -> BTreeMap<String, PathBuf> {
    let entries = fs::read_dir(folder).expect("it was written").map(|entry| entry.expect("listed"));
    entries.map(|entry| (entry.file_name().to_string_lossy().into_owned(), entry.path())).collect()
}

/// A new folder: tests run beside each other.
fn folder(name: &str) -> PathBuf {
    static FOLDERS: AtomicUsize = AtomicUsize::new(0);
    let number = FOLDERS.fetch_add(1, Ordering::Relaxed);
    let folder = root().join("target/outside-templates").join(format!("{name}-{number}"));
    drop(fs::remove_dir_all(&folder));
    folder
}

/// The schemas by the names of their files.
fn schemas() -> BTreeMap<String, Validator> {
    let folder = folder("schemas");
    drop(said(&["templates", "--write", &folder.display().to_string()]));
    let all = files(&folder).into_iter().filter(|(name, _)| name.ends_with(".schema.json"));
    all.map(|(name, path)| (name, validator(&json(&path).to_string()))).collect()
}

/// The data of every document of the demo set, proof sheets too, in one language and one system of units.
fn data(language: &str, units: &str) -> BTreeMap<String, Value> {
    let folder = folder(&format!("{language}-{units}"));
    let [specs, to] = [&root().join("specs"), &folder].map(|path| path.display().to_string());
    let print = ["print", "--format", "json", "--proofs", "--at", "31 °C", "--date", "2026-11-24"];
    drop(said(
        &[&print[..], &["--specs", &specs, "--out", &to, "--language", language, "--units", units]].concat(),
    ));
    files(&folder).into_iter().map(|(name, path)| (name, json(&path))).collect()
}

#[test]
fn the_data_of_every_document_are_as_the_schema_of_its_template_says() {
    let schemas = schemas();
    let mut used = BTreeSet::new();
    for (language, units) in [("en", "both"), ("en", "US"), ("de", "metric"), ("fr", "both"), ("es", "US")] {
        let documents = data(language, units);
        assert!(documents.len() > 100, "{language}: only {} documents", documents.len());
        for (name, data) in &documents {
            let schema = data["$schema"].as_str().expect("data name their schema");
            let refusals = refusals(&schemas[schema], data);
            assert!(refusals.is_empty(), "{language}, {name}: {refusals:#?}");
            used.insert(schema.to_owned());
        }
    }
    // A sheet's data are places of cards, a pull list's come from the register: no document of a
    // set has them, and no command writes them.
    let unused: Vec<&String> = schemas.keys().filter(|name| !used.contains(*name)).collect();
    assert_eq!(
        unused,
        ["pull-list.schema.json", "sheet.schema.json"],
        "no document of the demo shows these right"
    );
}

#[test]
fn data_with_another_key_or_without_one_are_refused() {
    let schemas = schemas();
    let mut refused = 0;
    for (name, whole) in &data("en", "both") {
        let validator = &schemas[whole["$schema"].as_str().expect("data name their schema")];
        for key in whole.as_object().expect("data are an object").keys().filter(|key| *key != "$schema") {
            let mut without = whole.clone();
            let value = without.as_object_mut().expect("an object").remove(key).expect("it has the key");
            assert!(!validator.is_valid(&without), "{name} without {key}");
            let mut renamed = without;
            renamed[format!("{key}_of_late")] = value;
            renamed[key] = whole[key].clone();
            assert!(!validator.is_valid(&renamed), "{name} with another {key}");
            refused += 1;
        }
        let mut deeper = whole.clone();
        deeper["furniture"]["shade"] = "grey".into();
        assert!(!validator.is_valid(&deeper), "{name}: furniture with another key");
    }
    assert!(refused > 1000, "only {refused} keys");
}
