//! A broken register each, with the report a user gets for it beside it, in `broken/`. To accept
//! changed reports: `UPDATE_EXPECT=1 cargo test --release --test register`, then read them.

use std::fs;
use std::path::{Path, PathBuf};

use bayleaf::diag::{Findings, Renderer, Sources};
use bayleaf::register::Record;
use bayleaf::spec::Register;
use bayleaf::words::{Language, Words};
use expect_test::expect_file;

fn report(path: &Path, language: Language) -> String {
    let mut sources = Sources::default();
    sources.add("register.toml".to_owned(), fs::read_to_string(path).expect("cases are UTF-8"));
    let findings = Findings::default();
    let _ = Record::checked(Register::read(&sources, &findings), &findings);
    let words = Words::of(language);
    let renderer = Renderer::new(&sources, &words, false);
    findings.sorted().iter().map(|finding| renderer.draw(finding) + "\n\n").collect()
}

#[test]
fn every_broken_register_gets_its_report() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/register/broken");
    let entries = fs::read_dir(folder).expect("the folder of broken registers is part of the project");
    let mut cases: Vec<PathBuf> = entries.map(|entry| entry.expect("it can be listed").path()).collect();
    cases.retain(|path| path.extension().is_some_and(|extension| extension == "toml"));
    cases.sort();
    assert!(cases.len() >= 7, "{cases:?}");
    for case in cases {
        let told = report(&case, Language::English);
        assert!(told.contains("error"), "{}", case.display());
        expect_file![case.with_extension("txt")].assert_eq(&told);
        for language in Language::ALL {
            assert!(!report(&case, *language).contains('⟨'), "{}", case.display());
        }
    }
}
