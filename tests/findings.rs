//! A broken spec each, with the report a user gets for it beside it.
//!
//! `tests/findings/NAME.toml`, or a folder of that name, is the broken spec;
//! `NAME.txt` is the report. A new case is a new file. To accept changed
//! reports: `UPDATE_EXPECT=1 cargo test --release --test findings`, then read
//! the difference like code.

use std::fs;
use std::path::{Path, PathBuf};

use bayleaf::diag::{Findings, Renderer, Sources};
use bayleaf::rules;
use bayleaf::spec::Set;
use bayleaf::words::{Language, Words};
use expect_test::expect_file;

fn cases() -> Vec<PathBuf> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/findings");
    let entries = fs::read_dir(folder).expect("the folder of broken specs is part of the project");
    let mut cases: Vec<PathBuf> = entries
        .map(|entry| entry.expect("its entries can be listed").path())
        .filter(|path| path.is_dir() || path.extension().is_some_and(|extension| extension == "toml"))
        .collect();
    cases.sort();
    cases
}

/// Loads a case under short names, so that reports do not depend on the checkout.
fn sources(case: &Path) -> Sources {
    let mut files = if case.is_dir() {
        let entries = fs::read_dir(case).expect("a case that is a folder can be read");
        entries.map(|entry| entry.expect("its entries can be listed").path()).collect()
    } else {
        vec![case.to_owned()]
    };
    files.sort();
    let mut sources = Sources::default();
    for file in files {
        let name = file.file_name().expect("a listed file has a name").to_string_lossy().into_owned();
        sources.add(name, fs::read_to_string(&file).expect("cases are UTF-8"));
    }
    sources
}

fn report(sources: &Sources) -> String {
    report_in(sources, Language::English)
}

fn report_in(sources: &Sources, language: Language) -> String {
    let findings = Findings::default();
    let set = Set::read(sources, &findings);
    rules::check(&set, &findings);
    let words = Words::of(language);
    let renderer = Renderer::new(sources, &words, false);
    findings.sorted().iter().map(|finding| renderer.draw(finding) + "\n\n").collect()
}

#[test]
fn every_broken_spec_gets_its_report() {
    let cases = cases();
    assert!(cases.len() > 40, "only {} broken specs were found", cases.len());
    for case in cases {
        let sources = sources(&case);
        for language in Language::ALL {
            let report = report_in(&sources, *language);
            assert!(!report.contains('⟨'), "{} in {}:\n{report}", case.display(), language.code());
        }
        let report = report(&sources);
        assert!(!report.is_empty(), "{} has no finding", case.display());
        expect_file![case.with_extension("txt")].assert_eq(&report);
    }
}

#[test]
fn the_demo_set_has_no_finding() {
    let report = report(&bayleaf::spec::demo());
    assert_eq!(report, "", "the shipped demo set must be clean");
}
