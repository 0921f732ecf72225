//! The word table and the sources agree: no id is missing, none is left over.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use bayleaf::words::{Message, Words};

#[path = "words/tables.rs"]
mod tables;

/// What an id of the table begins with; a string literal of this form is a use of it.
const ROOMS: &[&str] = &[
    "card",
    "caution",
    "check",
    "did",
    "dimension",
    "doc",
    "enclosed",
    "fact",
    "fault",
    "faults",
    "finding",
    "issue",
    "judge",
    "fit",
    "holders",
    "import",
    "index",
    "kind",
    "label",
    "load",
    "misread",
    "paper",
    "place",
    "proof",
    "pulled",
    "register",
    "report",
    "rule",
    "run",
    "sheet",
    "spec",
    "status",
    "table",
    "verdict",
    "wanted",
    "withdraw",
];

fn files_below(folder: &Path, extension: &str) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder).expect("source folders can be listed");
    let paths: Vec<PathBuf> = entries.map(|entry| entry.expect("entries can be read").path()).collect();
    let below = paths.iter().filter(|path| path.is_dir()).flat_map(|path| files_below(path, extension));
    let here = paths.iter().filter(|path| path.extension().is_some_and(|e| e == extension)).cloned();
    here.chain(below).collect()
}

fn is_id(literal: &str) -> bool {
    let plain = |c: char| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-';
    literal.split_once('-').is_some_and(|(room, rest)| {
        ROOMS.contains(&room) && !rest.is_empty() && !rest.ends_with('-') && rest.chars().all(plain)
    })
}

/// Ids in quotes in Rust and typst, and `words.paper-…` in typst.
fn used_ids() -> BTreeSet<String> {
    let root = Path::new(env!("CARGO_MANIFEST_DIR"));
    let mut files = files_below(&root.join("src"), "rs");
    files.extend(files_below(&root.join("templates"), "typ"));
    assert!(files.len() > 40, "only {} source files were found", files.len());
    let mut used = BTreeSet::new();
    for file in files {
        let text = fs::read_to_string(file).expect("sources are UTF-8");
        used.extend(text.split('"').filter(|piece| is_id(piece)).map(str::to_owned));
        let fields = text.split("words.").skip(1).map(|rest| {
            let end = rest.find(|c: char| !(c.is_ascii_alphanumeric() || c == '-')).unwrap_or(rest.len());
            rest[..end].to_owned()
        });
        used.extend(fields.filter(|field| field.starts_with("paper-")));
    }
    used
}

#[test]
fn every_used_id_is_in_the_table_and_every_entry_is_used() {
    let words = Words::english();
    let table: BTreeSet<String> = words.ids().iter().cloned().collect();
    let used = used_ids();
    let missing: Vec<_> = used.difference(&table).collect();
    let left_over: Vec<_> = table.difference(&used).collect();
    assert!(missing.is_empty(), "not in src/words/en.ftl: {missing:?}");
    assert!(left_over.is_empty(), "nobody uses: {left_over:?}");
}

#[test]
fn no_id_stands_in_the_table_twice() {
    // The later one would win, and the earlier one's users would print the other's words.
    let mut seen = BTreeSet::new();
    let words = Words::english();
    let twice: Vec<_> = words.ids().iter().filter(|id| !seen.insert(id.as_str())).collect();
    assert!(twice.is_empty(), "twice in src/words/en.ftl: {twice:?}");
}

#[test]
fn gaps_are_filled_with_text_and_with_other_words() {
    let words = Words::english();
    let message =
        Message::new("rule-wrong-instrument").with("id", "probe").with_word("wanted", "kind-multimeter");
    assert_eq!(words.say(&message), "instrument `probe` is not a multimeter");
}

#[test]
fn a_missing_word_is_seen_and_not_silent() {
    assert_eq!(Words::english().word("no-such-word"), "⟨no-such-word⟩");
}
