//! A shop's own template that fails: told over its own line, other documents are printed.

use std::fs;
use std::path::Path;

use super::watch::Watch;
use super::{GOOD, bayleaf, errors, folder, must_contain, names_in, said, write};

/// A card of another template beside the sensor cards: a broken sensor card leaves it alone.
const OTHER: &str = r#"
[card.WAL-1]
sensor = "cabin"
hangs = "wall"

[card.SEN-2]
sensor = "cabin"
"#;

fn template(name: &str) -> String {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("templates").join(name);
    fs::read_to_string(path).expect("the template is part of the project")
}

/// A set, and its sensor card with a last line of the shop's own.
fn with_card(folder: &Path, more: &[u8]) {
    write(folder, "specs/set.toml", format!("{GOOD}{OTHER}"));
    let card = [template("sensor-card.typ").as_bytes(), more].concat();
    write(folder, "own/sensor-card.typ", card);
}

/// Prints with the shop's own; what is said on standard error.
#[track_caller]
fn refused(folder: &Path, more: &[&str]) -> String {
    let output = bayleaf(folder, &[&["print", "--templates", "own"], more].concat());
    assert_eq!(output.status.code(), Some(1), "{}", errors(&output));
    errors(&output)
}

#[test]
fn the_library_s_words_stand_over_the_shop_s_own_line_once_for_all_documents() {
    let folder = folder();
    with_card(folder.path(), b"#let wide = 3mm\n#block(width: wyde)\n");
    let line = template("sensor-card.typ").lines().count() + 2;
    for jobs in ["1", "2"] {
        let told = refused(folder.path(), &["--jobs", jobs]);
        must_contain(&told, &format!("--> own/sensor-card.typ:{line}:15"));
        must_contain(&told, "| #block(width: wyde)");
        must_contain(&told, "^^^^ typesetting stops here");
        must_contain(&told, "2 documents are not printed because of it: SEN-1, SEN-2");
        assert_eq!(told.matches("unknown variable: wyde").count(), 1, "{told}");
        assert_eq!(names_in(&folder.path().join("out")), ["SET.INDEX.pdf", "WAL-1.pdf"]);
    }
    let told = refused(folder.path(), &["--language", "de", "SEN-2"]);
    must_contain(&told, "Fehler: unknown variable: wyde");
    must_contain(&told, "SEN-2 wird deswegen nicht gedruckt");
}

#[test]
fn the_library_s_advice_is_help() {
    let folder = folder();
    with_card(folder.path(), b"#let a-b = 1\n#(a-c)\n");
    let told = refused(folder.path(), &["SEN-1"]);
    must_contain(&told, "= help: ");
    must_contain(&told, "`a - c`");
}

#[test]
fn syntax_loops_and_warnings_are_told_at_their_line() {
    for (more, label) in [
        ("#let x = (1,\n", "unclosed delimiter"),
        ("#let f(x) = f(x + 1)\n#f(1)\n", "maximum function call depth exceeded"),
        ("#while true { 1 }\n", "condition is always true"),
        ("#text(font: \"No Such Font\")[a]\n", "typesetting warns here, and a warning is refused"),
        ("#import \"/parts/nowhere.typ\": all\n", "file not found"),
    ] {
        let folder = folder();
        with_card(folder.path(), more.as_bytes());
        let told = refused(folder.path(), &[]);
        must_contain(&told, label);
        must_contain(&told, "--> own/sensor-card.typ:");
        assert!(folder.path().join("out/WAL-1.pdf").exists());
    }
}

#[test]
fn a_file_that_is_no_text_is_told_at_its_byte() {
    let folder = folder();
    with_card(folder.path(), b"// caf\xe9\n");
    let told = refused(folder.path(), &[]);
    must_contain(&told, "byte 0xE9 is not UTF-8 text");
    must_contain(&told, "--> own/sensor-card.typ:");
    must_contain(
        &told,
        "2 documents were not printed (SEN-1, SEN-2): a template that is needed cannot be read",
    );
    assert_eq!(names_in(&folder.path().join("out")), ["SET.INDEX.pdf", "WAL-1.pdf"]);
    // One that nothing needs is an error all the same.
    let told = refused(folder.path(), &["WAL-1"]);
    must_contain(&told, "byte 0xE9");
}

#[test]
fn a_name_that_the_shop_s_theme_lacks_is_told_with_the_shop_s_files() {
    let folder = folder();
    write(folder.path(), "specs/set.toml", GOOD);
    let theme = template("theme.typ");
    let without: String = theme
        .lines()
        .filter(|line| !line.starts_with("#let card-gap "))
        .fold(String::new(), |text, line| text + line + "\n");
    assert_ne!(without, theme);
    write(folder.path(), "own/theme.typ", without);
    let told = refused(folder.path(), &["SEN-1"]);
    must_contain(&told, "unknown variable: card-gap");
    must_contain(&told, "--> built in: sensor-card.typ:");
    must_contain(&told, "look through `own/theme.typ`");
}

#[test]
fn a_built_in_part_that_is_called_wrongly_is_told_at_the_call() {
    let folder = folder();
    with_card(folder.path(), b"#key-figures(d.key_figures, \"wide\")\n");
    let told = refused(folder.path(), &["SEN-1"]);
    must_contain(&told, "--> own/sensor-card.typ:");
    must_contain(&told, "reached from here");
    must_contain(&told, "::: built in: parts/figures.typ:");
}

#[test]
fn a_text_that_the_shop_made_too_small_is_the_shop_s() {
    let folder = folder();
    with_card(folder.path(), b"#text(size: 2pt)[tiny writing]\n");
    let told = refused(folder.path(), &["SEN-1"]);
    must_contain(&told, "`tiny writing` at 2.0 pt is too small");
    must_contain(&told, "look through `own/sensor-card.typ`");
}

#[test]
fn what_fails_with_the_built_in_templates_too_is_not_the_shop_s() {
    let folder = folder();
    // Nothing can be printed within 25 mm of the edge of an A5 card.
    let sealed = format!("{GOOD}\n[shop.lamination]\nquiet = \"25 mm\"\n");
    write(folder.path(), "specs/set.toml", sealed);
    write(folder.path(), "own/sensor-card.typ", template("sensor-card.typ") + "// mine\n");
    let output = bayleaf(folder.path(), &["print", "--templates", "own", "SEN-1"]);
    assert_eq!(output.status.code(), Some(2), "{}", errors(&output));
    must_contain(&errors(&output), "`SEN-1` was not printed: page 1");
}

#[test]
fn marks_of_sheets_that_fail_are_told_too() {
    let folder = folder();
    write(folder.path(), "specs/set.toml", GOOD);
    write(folder.path(), "own/sheet.typ", "#let x = nope");
    let told = refused(folder.path(), &["--sheet", "A4", "SEN-1"]);
    must_contain(&told, "--> own/sheet.typ:1:10");
    must_contain(&told, "SET.SHEETS-1.pdf is not printed because of it");
}

#[test]
fn a_preview_says_it_alike() {
    let folder = folder();
    with_card(folder.path(), b"#wyde\n");
    let output = bayleaf(folder.path(), &["preview", "--templates", "own", "SEN-1"]);
    assert_eq!(output.status.code(), Some(1));
    must_contain(&errors(&output), "SEN-1 is not printed because of it");
    assert!(said(&output).is_empty() && !folder.path().join("SEN-1.png").exists());
    let other = bayleaf(folder.path(), &["preview", "--templates", "own", "WAL-1"]);
    assert!(other.status.success(), "{}", errors(&other));
}

#[test]
fn watch_says_it_alike_and_goes_on() {
    let folder = folder();
    let at = folder.path();
    with_card(at, b"");
    let watch = Watch::start(at, &["--templates", "own"]);
    watch.until("3 drawn, 0 as before");
    with_card(at, b"#wyde\n");
    let told = watch.until("watching");
    must_contain(&told, "--> own/sensor-card.typ:");
    must_contain(&told, "2 documents are not printed because of it: SEN-1, SEN-2");
    must_contain(&told, "1 drawn, 0 as before");
    with_card(at, b"// again\n");
    watch.until("3 drawn, 0 as before");
}
