//! What the tests of this package share: see `tests/`.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use jsonschema::Validator;
use serde_json::Value;

/// The project's folder.
#[must_use]
pub fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// The binary: `BAYLEAF`, or the one built last.
fn bayleaf() -> PathBuf {
    if let Some(path) = std::env::var_os("BAYLEAF") {
        return root().join(path);
    }
    let built = ["target/debug/bayleaf", "target/release/bayleaf"].map(|path| root().join(path));
    let age = |path: &PathBuf| fs::metadata(path).and_then(|data| data.modified()).ok();
    let newest = built.into_iter().filter(|path| path.exists()).max_by_key(age);
    newest.expect("`cargo build` comes before this test, or BAYLEAF names the binary")
}

/// What the binary says; it must be content.
#[must_use]
pub fn said(arguments: &[&str]) -> String {
    let output = Command::new(bayleaf()).args(arguments).output().expect("the binary starts");
    assert!(output.status.success(), "{}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).expect("it says UTF-8")
}

/// A validator of a schema that is one of draft 7.
#[must_use]
pub fn validator(schema: &str) -> Validator {
    let schema: Value = serde_json::from_str(schema).expect("the schema is JSON");
    assert!(jsonschema::draft7::meta::is_valid(&schema), "it is a schema of draft 7");
    jsonschema::draft7::new(&schema).expect("the schema compiles")
}

/// What a validator refuses, each with its place.
#[must_use]
pub fn refusals(validator: &Validator, instance: &Value) -> Vec<String> {
    validator.iter_errors(instance).map(|error| format!("{}: {error}", error.instance_path())).collect()
}
