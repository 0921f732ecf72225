//! What the index of documents says of each: which revision of it is valid.

use std::collections::BTreeMap;

use super::desk::{Book, folder_of};
use super::status::planned;
use crate::cli::args::{Edition, Specs};
use crate::cli::load::Loaded;
use crate::enclosure::Encloser;
use crate::register::{Archive, Earlier, State};

/// Nobody asks what changed.
struct Unasked;

impl Archive for Unasked {
    fn earlier(&self, _: &str, _: u32) -> Option<Earlier> {
        None
    }
}

/// The revision of each document that was issued, or that it is withdrawn or says something else
/// by now, by its id; each is compared in the edition that it was issued in. Empty where nothing is
/// issued, or the register cannot be read, which is told.
pub(in crate::cli) fn standing(
    loaded: &Loaded,
    specs: &Specs,
    edition: &Edition,
) -> BTreeMap<String, String> {
    let words = &loaded.words;
    let Some(folder) = folder_of(specs.specs.as_deref()) else { return BTreeMap::new() };
    let Ok(book) = Book::read(&folder, words) else { return BTreeMap::new() };
    if book.record.documents().next().is_none() {
        return BTreeMap::new();
    }
    let as_issued = Edition {
        units: None,
        size: None,
        at: None,
        date: edition.date,
        templates: edition.templates.clone(),
    };
    let encloser = Encloser::new(&loaded.sources);
    let entries = planned((loaded, &encloser), &book, &Unasked, (&as_issued, None), false);
    let told = |state, revision: Option<u32>, code: &str| {
        let revision = format!("r{}", revision?);
        match state {
            State::Same | State::Layout => Some(format!("{revision} {code}")),
            State::Changed => Some(format!("{revision}, {}", words.word("status-changed"))),
            State::Withdrawn => Some(words.word("status-withdrawn")),
            State::New | State::Gone => None,
        }
    };
    let entries = entries.unwrap_or_default().into_iter();
    entries.filter_map(|entry| Some((entry.id, told(entry.state, entry.revision, &entry.content)?))).collect()
}
