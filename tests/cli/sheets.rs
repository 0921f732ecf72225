//! `print --sheet`: which files are written, and that they do not depend on who wrote them.

use std::fs;

use crate::{GOOD, bayleaf, errors, folder, must_contain, names_in, said, write};

/// As many cards as make two files.
fn many() -> String {
    let cards = (2..=16).map(|n| format!("[card.SEN-{n}]\nsensor = \"cabin\"\n"));
    GOOD.to_owned() + &cards.collect::<String>() + "[card.SEN-WALL]\nsensor = \"cabin\"\nhangs = \"wall\"\n"
}

#[test]
fn cards_go_onto_sheets_and_larger_papers_into_files_of_their_own() {
    let folder = folder();
    write(folder.path(), "specs/set.toml", many());
    let output = bayleaf(folder.path(), &["print", "--sheet", "A4"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    must_contain(&said(&output), "18 documents");
    must_contain(&said(&output), "16 sheets to be cut: SET.SHEETS-1.pdf to SET.SHEETS-2.pdf");
    must_contain(&said(&output), "flip on the long edge");
    let names = names_in(&folder.path().join("out"));
    assert_eq!(names, ["SEN-WALL.pdf", "SET.INDEX.pdf", "SET.SHEETS-1.pdf", "SET.SHEETS-2.pdf"]);
    // Another run with fewer of them leaves an old file, and says so.
    let output = bayleaf(folder.path(), &["print", "--sheet", "a4", "--flip", "short", "SEN-1"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    must_contain(
        &said(&output),
        "1 sheet to be cut: SET.SHEETS-1.pdf. Print on both sides, flip on the short",
    );
    must_contain(&errors(&output), "SET.SHEETS-2.pdf` is from an earlier run");
}

#[test]
fn sheets_are_the_same_whoever_prints_them() {
    let mut first: Option<Vec<(String, Vec<u8>)>> = None;
    for jobs in ["1", "2", "5"] {
        let folder = folder();
        write(folder.path(), "specs/set.toml", many());
        let arguments =
            ["print", "--sheet", "letter", "--date", "2026-11-24", "--jobs", jobs, "SEN-1", "SEN-2"];
        let ids: Vec<String> = (3..=15).map(|n| format!("SEN-{n}")).collect();
        let all: Vec<&str> = arguments.into_iter().chain(ids.iter().map(String::as_str)).collect();
        let output = bayleaf(folder.path(), &all);
        assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
        let out = folder.path().join("out");
        let read = |name: String| (name.clone(), fs::read(out.join(name)).expect("it was written"));
        let files: Vec<_> = names_in(&out).into_iter().map(read).collect();
        let known = first.get_or_insert_with(|| files.clone());
        let names =
            |files: &[(String, Vec<u8>)]| files.iter().map(|(name, _)| name.clone()).collect::<Vec<_>>();
        assert_eq!(names(known), names(&files));
        for (one, other) in known.iter().zip(&files) {
            assert!(one.1 == other.1, "{} differs with {jobs} jobs", one.0);
        }
    }
}

#[test]
fn a_paper_larger_than_the_sheet_is_named_and_the_others_are_printed() {
    let folder = folder();
    write(
        folder.path(),
        "specs/set.toml",
        GOOD.to_owned() + "[card.BIG]\nsensor = \"cabin\"\nhangs = \"wall\"\n",
    );
    let output = bayleaf(folder.path(), &["print", "--sheet", "letter", "BIG", "SEN-1"]);
    assert_eq!(output.status.code(), Some(2));
    must_contain(
        &errors(&output),
        "`BIG` was not printed: 210 × 297 mm does not fit a sheet of 215.9 × 279.4 mm",
    );
    assert_eq!(names_in(&folder.path().join("out")), ["SET.SHEETS-1.pdf"]);
    for wrong in [
        vec!["print", "--sheet", "A3"],
        vec!["print", "--flip", "short"],
        vec!["print", "--sheet", "A4", "--format", "png"],
        vec!["print", "--sheet", "A4", "--shard", "1/2"],
    ] {
        assert_eq!(bayleaf(folder.path(), &wrong).status.code(), Some(2), "{wrong:?}");
    }
}

#[test]
fn sheets_say_which_language_they_are_in() {
    let folder = folder();
    write(folder.path(), "specs/set.toml", GOOD);
    for code in ["en", "de", "es"] {
        let output = bayleaf(folder.path(), &["print", "--sheet", "A4", "--language", code, "SEN-1"]);
        assert!(output.status.success(), "{}", errors(&output));
        let pdf = fs::read(folder.path().join("out/SET.SHEETS-1.pdf")).expect("it was written");
        let entry = format!("/Lang({code})");
        assert!(pdf.windows(entry.len()).any(|part| part == entry.as_bytes()), "{code}");
    }
}

#[test]
fn what_a_hole_or_the_seal_would_take_is_refused_by_name() {
    let folder = folder();
    let print = |lamination: &str| {
        write(folder.path(), "specs/set.toml", format!("{GOOD}\n[shop.lamination]\n{lamination}\n"));
        bayleaf(folder.path(), &["print", "SEN-1"])
    };
    let hole = print("punch = { place = \"top\", diameter = \"6 mm\", inset = \"12 mm\" }");
    assert_eq!(hole.status.code(), Some(2));
    must_contain(&errors(&hole), "page 1: the hole at the top (6.0 mm, its centre 12.0 mm from the edge");
    must_contain(&errors(&hole), "the paper is white 8.0 mm deep there");
    let border = print("quiet = \"9 mm\"");
    assert_eq!(border.status.code(), Some(2));
    must_contain(&errors(&border), "as near as 7.6 mm to the edge; lamination needs 9.0 mm");
    let free = print("quiet = \"5 mm\"\npunch = { place = \"top\", diameter = \"4 mm\", inset = \"4 mm\" }");
    assert_eq!(free.status.code(), Some(0), "{}", errors(&free));
}
