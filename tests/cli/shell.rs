//! `bayleaf completions` and `bayleaf man` know every command and option.

use std::fs;

use crate::{bayleaf, errors, folder, must_contain, said, write};

#[test]
fn every_shell_gets_every_command() {
    let folder = folder();
    for shell in ["bash", "zsh", "fish", "elvish", "powershell"] {
        let output = bayleaf(folder.path(), &["completions", shell]);
        assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
        for word in ["print", "judge", "import", "templates", "--shard", "--instrument"] {
            must_contain(&said(&output), word.trim_start_matches("--"));
        }
    }
    assert_eq!(bayleaf(folder.path(), &["completions", "bahs"]).status.code(), Some(2));
}

#[test]
fn every_command_has_a_manual_page() {
    let folder = folder();
    let output = bayleaf(folder.path(), &["man", "pages"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    for name in ["bayleaf.1", "bayleaf-print.1", "bayleaf-judge.1"] {
        let page = fs::read_to_string(folder.path().join("pages").join(name)).expect(name);
        must_contain(&page, ".TH");
    }
    let page = fs::read_to_string(folder.path().join("pages/bayleaf-print.1")).expect("it is there");
    // Options hidden from the help are hidden here.
    must_contain(&page, "\\-\\-shard");
    assert!(!page.contains("digest"), "{page}");
    write(folder.path(), "file", "");
    let output = bayleaf(folder.path(), &["man", "file"]);
    assert_eq!(output.status.code(), Some(2));
    must_contain(&errors(&output), "cannot write to `file`");
}
