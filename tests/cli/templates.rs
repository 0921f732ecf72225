//! `print --templates`: a shop's own templates in place of built-in ones.

use std::fs;

use super::{GOOD, bayleaf, errors, folder, must_contain, names_in, said, write};

fn theme() -> String {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/templates/theme.typ");
    fs::read_to_string(path).expect("the theme is part of the project")
}

#[test]
fn a_theme_alone_restyles_a_card() {
    let folder = folder();
    write(folder.path(), "specs/set.toml", GOOD);
    let usual = ["print", "--date", "2026-11-24", "--out", "usual"];
    assert!(bayleaf(folder.path(), &usual).status.success());
    let wider = theme().replace("line-open = 1pt", "line-open = 2pt");
    assert_ne!(wider, theme());
    write(folder.path(), "own/theme.typ", wider);
    let own = ["print", "--date", "2026-11-24", "--out", "restyled", "--templates", "own"];
    let output = bayleaf(folder.path(), &own);
    assert!(output.status.success(), "{}", errors(&output));
    let read = |name: &str| fs::read(folder.path().join(name)).expect("it was printed");
    assert_ne!(read("usual/SEN-1.pdf"), read("restyled/SEN-1.pdf"));
}

#[test]
fn a_template_of_another_name_is_told() {
    let folder = folder();
    write(folder.path(), "specs/set.toml", GOOD);
    write(folder.path(), "own/them.typ", theme());
    let output = bayleaf(folder.path(), &["print", "--templates", "own"]);
    assert!(output.status.success());
    assert!(
        errors(&output).contains("`them.typ` takes the place of no built-in template"),
        "{}",
        errors(&output)
    );
}

#[test]
fn a_folder_without_templates_or_a_broken_one_prints_nothing() {
    let folder = folder();
    write(folder.path(), "specs/set.toml", GOOD);
    write(folder.path(), "none/readme.txt", "");
    for missing in ["none", "nowhere"] {
        let output = bayleaf(folder.path(), &["print", "--templates", missing]);
        assert_eq!(output.status.code(), Some(2));
        assert!(errors(&output).contains(missing), "{}", errors(&output));
        assert!(!folder.path().join("out/SEN-1.pdf").exists());
    }
    write(folder.path(), "broken/theme.typ", "#let gap = ");
    let output = bayleaf(folder.path(), &["print", "--templates", "broken"]);
    assert_eq!(output.status.code(), Some(1));
    assert!(errors(&output).contains("broken/theme.typ:1:11"), "{}", errors(&output));
    assert!(!folder.path().join("out/SEN-1.pdf").exists());
}

#[test]
fn templates_that_are_handed_out_print_what_the_built_in_ones_do() {
    let folder = folder();
    write(folder.path(), "specs/set.toml", GOOD);
    let output = bayleaf(folder.path(), &["templates", "--write", "own"]);
    assert!(output.status.success(), "{}", errors(&output));
    assert!(said(&output).contains("print --templates own"), "{}", said(&output));
    for (out, more) in [("usual", &[] as &[&str]), ("handed", &["--templates", "own"])] {
        let print = [&["print", "--date", "2026-11-24", "--out", out], more].concat();
        let output = bayleaf(folder.path(), &print);
        assert!(output.status.success(), "{}", errors(&output));
    }
    let read = |name: &str| fs::read(folder.path().join(name)).expect("it was printed");
    assert_eq!(read("usual/SEN-1.pdf"), read("handed/SEN-1.pdf"));
}

#[test]
fn a_changed_template_is_overwritten_only_where_that_is_asked_for() {
    let folder = folder();
    write(folder.path(), "own/theme.typ", "// mine");
    let refused = bayleaf(folder.path(), &["templates", "--write", "own"]);
    assert_eq!(refused.status.code(), Some(2));
    assert!(errors(&refused).contains("theme.typ` exists and differs"), "{}", errors(&refused));
    assert_eq!(names_in(&folder.path().join("own")), ["theme.typ"], "nothing else was written");
    let twice = ["templates", "--write", "own", "--overwrite"];
    assert!(bayleaf(folder.path(), &twice).status.success());
    assert_eq!(fs::read_to_string(folder.path().join("own/theme.typ")).ok(), Some(theme()));
    // What is the same already stands in nobody's way.
    assert!(bayleaf(folder.path(), &["templates", "--write", "own"]).status.success());
}

#[test]
fn a_template_is_handed_out_with_the_schema_of_its_data() {
    let folder = folder();
    write(folder.path(), "specs/set.toml", GOOD);
    assert!(bayleaf(folder.path(), &["templates", "--write", "own"]).status.success());
    let beside =
        fs::read_to_string(folder.path().join("own/sensor-card.schema.json")).expect("it was written");
    for name in ["sensor-card.typ", "sensor-card"] {
        let printed = bayleaf(folder.path(), &["schema", "--template", name]);
        assert_eq!(said(&printed), beside);
    }
    let output = bayleaf(folder.path(), &["print", "--format", "json", "--jobs", "2"]);
    assert!(output.status.success(), "{}", errors(&output));
    assert!(!said(&output).contains("page"), "{}", said(&output));
    let data = fs::read_to_string(folder.path().join("out/SEN-1.json")).expect("it was written");
    must_contain(&data, "\"$schema\": \"sensor-card.schema.json\"");
    must_contain(&data, "\"furniture\": {");
    assert!(!folder.path().join("out/SEN-1.pdf").exists());
    write(folder.path(), "own/sensor-card.schema.json", "{}");
    let refused = bayleaf(folder.path(), &["templates", "--write", "own"]);
    must_contain(&errors(&refused), "sensor-card.schema.json` exists and differs");
}

#[test]
fn a_schema_of_no_template_is_an_error() {
    let folder = folder();
    let near = bayleaf(folder.path(), &["schema", "--template", "sensor-crad.typ"]);
    assert_eq!(near.status.code(), Some(2));
    must_contain(&errors(&near), "did you mean `sensor-card.typ`?");
    // A look alone receives no data.
    let none = bayleaf(folder.path(), &["schema", "--template", "theme.typ"]);
    assert_eq!(none.status.code(), Some(2));
    must_contain(&errors(&none), "`theme.typ` receives no data");
    let strange = bayleaf(folder.path(), &["schema", "--template", "letterhead"]);
    must_contain(&errors(&strange), "test-sheet.typ");
}
