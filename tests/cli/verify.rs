//! `bayleaf verify`: an issued paper from its file alone, and files that are none.

use std::fs;

use crate::{bayleaf, errors, folder, must_contain, said, write};

#[test]
fn an_issued_paper_is_verified_from_its_file_alone() {
    let folder = folder();
    let kept = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/pages/issued/0.1.0-card.pdf");
    fs::copy(kept, folder.path().join("card.pdf")).expect("it can be copied");
    let output = bayleaf(folder.path(), &["verify", "card.pdf"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    must_contain(&said(&output), "CABIN r1 of 2026-11-28 by WB");
    must_contain(&said(&output), "computes the same figures");
    let output = bayleaf(folder.path(), &["--language", "de", "verify", "card.pdf"]);
    must_contain(&said(&output), "dieselben Werte");
}

#[test]
fn a_file_that_cannot_be_verified_is_refused_by_name() {
    let folder = folder();
    write(folder.path(), "notes.pdf", "ours");
    for (file, why) in [("notes.pdf", "not a PDF file"), ("nothing.pdf", "cannot be read")] {
        let output = bayleaf(folder.path(), &["verify", file]);
        assert_eq!(output.status.code(), Some(2));
        must_contain(&errors(&output), file);
        must_contain(&errors(&output), why);
    }
    // As large as no paper is; a hole in the disk, not 100 MB of it.
    let huge = fs::File::create(folder.path().join("huge.pdf")).expect("a file can be made");
    huge.set_len(100 << 20).expect("it can be made long");
    let output = bayleaf(folder.path(), &["verify", "huge.pdf"]);
    assert_eq!(output.status.code(), Some(2));
    must_contain(&errors(&output), "larger than 64 MiB");
}
