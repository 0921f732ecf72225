//! `bayleaf new`: a set that is valid as it stands, and nothing overwritten.

use std::fs;

use crate::{bayleaf, errors, folder, must_contain, said, write};

#[test]
fn a_new_set_has_no_finding_and_prints() {
    let folder = folder();
    let output = bayleaf(folder.path(), &["new", "specs"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    must_contain(&said(&output), "bayleaf check --specs specs");
    for name in ["shop.toml", "system.toml", "papers.toml"] {
        let spec = fs::read_to_string(folder.path().join("specs").join(name)).expect("it was written");
        assert!(spec.starts_with("#:schema spec.schema.json\n"), "{name} names no schema");
    }
    let schema = fs::read_to_string(folder.path().join("specs/spec.schema.json")).expect("it was written");
    assert_eq!(schema, said(&bayleaf(folder.path(), &["schema"])));
    let output = bayleaf(folder.path(), &["check"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    assert_eq!(errors(&output), "");
    must_contain(&said(&output), "0 values NOT GIVEN");
    let output = bayleaf(folder.path(), &["print", "--at", "31 °C"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    for name in ["CABIN.pdf", "SENSORS.V1.pdf"] {
        assert!(folder.path().join("out").join(name).exists(), "{name} was not printed");
    }
}

#[test]
fn a_shop_in_another_country_begins_in_its_language_and_units() {
    let folder = folder();
    let output = bayleaf(folder.path(), &["new", "specs", "--language", "fr", "--units", "us"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    must_contain(&said(&output), "bayleaf check --specs specs");
    let shop = fs::read_to_string(folder.path().join("specs/shop.toml")).expect("it was written");
    must_contain(&shop, "language = \"fr\"");
    must_contain(&shop, "units = \"US\"");
    let output = bayleaf(folder.path(), &["check"]);
    assert_eq!(errors(&output), "");
    let output = bayleaf(folder.path(), &["print", "--format", "json"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    let card = fs::read_to_string(folder.path().join("out/CABIN.json")).expect("it was printed");
    must_contain(&card, "\"language\": \"fr\"");
    must_contain(&card, "°F");
    assert!(!card.contains("\"°C\""), "it has a column in °C");
}

#[test]
fn a_folder_with_something_in_it_is_left_alone() {
    let folder = folder();
    write(folder.path(), "specs/notes.txt", "ours");
    let output = bayleaf(folder.path(), &["new", "specs"]);
    assert_eq!(output.status.code(), Some(2));
    must_contain(&errors(&output), "`specs` is not empty");
    let entries = fs::read_dir(folder.path().join("specs")).expect("it is there").count();
    assert_eq!(entries, 1);
    write(folder.path(), "file", "");
    let output = bayleaf(folder.path(), &["new", "file"]);
    assert_eq!(output.status.code(), Some(2));
    must_contain(&errors(&output), "cannot write to `file`");
    fs::create_dir(folder.path().join("empty")).expect("a folder can be made");
    assert!(bayleaf(folder.path(), &["new", "empty"]).status.success());
}
