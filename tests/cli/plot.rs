//! `bayleaf table`: its curves in a terminal, and as a spreadsheet.

use std::fs;

use super::{bayleaf, errors, folder, said};

#[test]
fn curves_are_drawn_where_asked_and_never_into_a_pipe_unasked() {
    let folder = folder();
    let table = |more: &[&str]| {
        let arguments = [&["table", "curlew-evaporator"], more].concat();
        bayleaf(folder.path(), &arguments)
    };
    let is_braille = |c: char| ('\u{2801}'..='\u{28ff}').contains(&c);
    let plain = said(&table(&[]));
    assert!(!plain.contains(is_braille), "{plain}");
    let plotted = said(&table(&["--plot"]));
    assert!(plotted.starts_with(&plain), "the table is the same");
    let drawn: Vec<&str> = plotted[plain.len()..].lines().collect();
    assert!(drawn.iter().all(|line| line.chars().count() <= 80), "{drawn:?}");
    // Ohms and volts of a thermistor under a pull-up: both fall.
    let titles = drawn.iter().filter(|line| line.ends_with("nominal") || line.ends_with("logarithmic"));
    assert_eq!(titles.count(), 2, "{drawn:?}");
    assert!(drawn.iter().any(|line| line.ends_with("60.0 °C")), "{drawn:?}");
    assert_eq!(table(&["--plot", "--format", "csv"]).status.code(), Some(2));
    let german = said(&table(&["--plot", "--language", "de"]));
    assert!(german.contains("60,0 °C"), "{german}");
}

#[test]
fn a_table_without_curves_says_so() {
    let folder = folder();
    let output = bayleaf(folder.path(), &["table", "stuck.curlew", "--plot"]);
    assert_ne!(output.status.code(), Some(0));
    assert!(errors(&output).contains("has no curve to draw"), "{}", errors(&output));
}

#[test]
fn a_table_becomes_a_spreadsheet_with_its_sources() {
    let folder = folder();
    let output = bayleaf(folder.path(), &["table", "curlew-evaporator", "--xlsx", "evaporator.xlsx"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    let bytes = fs::read(folder.path().join("evaporator.xlsx")).expect("it was written");
    // A package of Office Open XML (ISO/IEC 29500) is a ZIP file.
    assert!(bytes.starts_with(b"PK\x03\x04"));
    let refused = bayleaf(folder.path(), &["table", "curlew-evaporator", "--xlsx", "no/such/folder.xlsx"]);
    assert_eq!(refused.status.code(), Some(2), "{}", errors(&refused));
}
