//! How the state of documents is told: as lines for people, and as JSON for programs.

use std::collections::BTreeMap;
use std::fmt::Write;

use serde_json::{Value, json};

use crate::document::Moved;
use crate::enclosure::apart;
use crate::quantity::{Rounding, figure, noted};
use crate::register::{Entry, History, Record, State};
use crate::words::{Message, Words};

/// The word for a state.
fn word(state: State) -> &'static str {
    match state {
        State::New => "status-new",
        State::Changed => "status-changed",
        State::Gone => "status-gone",
        State::Layout => "status-layout",
        State::Withdrawn => "status-withdrawn",
        State::Same => "status-same",
    }
}

/// The same in JSON, whatever the language.
fn code(state: State) -> &'static str {
    match state {
        State::New => "new",
        State::Changed => "changed",
        State::Gone => "gone",
        State::Layout => "layout only",
        State::Withdrawn => "withdrawn",
        State::Same => "same",
    }
}

/// Tells documents one by one: those in full that somebody has to do something about, the others
/// by how many there are.
pub(super) fn documents(words: &Words, entries: &[Entry], record: &Record) -> String {
    let mut lines = Lines::default();
    for state in State::ALL {
        let of_state: Vec<&Entry> = entries.iter().filter(|entry| entry.state == state).collect();
        if of_state.is_empty() {
            continue;
        }
        let count = Message::new("status-count").with_word("state", word(state));
        lines.add(0, words.say(&count.with_count("count", of_state.len())));
        match state {
            State::Same => {}
            State::Layout | State::Withdrawn => {
                let names: Vec<String> = of_state.iter().map(|entry| named(entry)).collect();
                names.chunks(A_LINE).for_each(|names| lines.add(1, names.join(", ")));
            }
            _ => of_state.iter().for_each(|entry| document(&mut lines, words, entry, record)),
        }
    }
    lines.0
}

/// So many names of documents stand on a line.
const A_LINE: usize = 6;

/// Lines of text, indented by how far they are below something.
#[derive(Default)]
struct Lines(String);

impl Lines {
    fn add(&mut self, depth: usize, line: impl std::fmt::Display) {
        // Writing to a text never fails.
        let _ = writeln!(self.0, "{:width$}{line}", "", width = 2 * depth);
    }
}

fn named(entry: &Entry) -> String {
    entry.revision.map_or_else(|| entry.id.clone(), |revision| format!("{} r{revision}", entry.id))
}

/// A document with what changed in it and who holds it.
fn document(lines: &mut Lines, words: &Words, entry: &Entry, record: &Record) {
    lines.add(1, format_args!("{}  {}", named(entry), entry.title));
    if let Some(difference) = &entry.difference {
        let given = |text: &str| if text.is_empty() { words.word("doc-not-given") } else { text.to_owned() };
        let of_key = |lines: &mut Lines, key: Option<&str>, depth| {
            let moved = difference.moved.iter().filter(|moved| moved.key.as_deref() == key);
            moved.for_each(|moved| lines.add(depth, cell(words, moved)));
        };
        for because in &difference.because {
            let (old, new) = (given(&because.old), given(&because.new));
            let told = Message::new("status-moved").with("place", &because.key);
            lines.add(2, words.say(&told.with("old", old).with("new", new)));
            of_key(lines, Some(&because.key), 3);
        }
        of_key(lines, None, 2);
    } else if entry.is_other {
        lines.add(2, words.word("status-lost"));
    }
    let held = record.of(&entry.id).into_iter().flat_map(History::held);
    for copy in held.filter(|_| entry.state != State::New) {
        let place = copy.at.as_deref().map(|place| format!(", {place}")).unwrap_or_default();
        let holder = format!("{}{place}", copy.holder);
        let message = Message::new("status-held").with("revision", copy.revision.value);
        lines.add(2, words.say(&message.with("holder", holder)));
    }
}

/// A cell that moved: where, from what to what, by how much.
fn cell(words: &Words, moved: &Moved) -> String {
    let shown = |text: &str| if text.is_empty() { "–".to_owned() } else { text.to_owned() };
    let told = Message::new("status-moved").with("place", &moved.place);
    let told = words.say(&told.with("old", shown(&moved.old)).with("new", shown(&moved.new)));
    match apart(&moved.old, &moved.new) {
        Some(digits) => {
            let digits = noted(words.notation(), || figure(digits, 0, Rounding::Nearest));
            format!("{told}, {}", words.say(&Message::new("enclosed-digits").with("digits", digits)))
        }
        None => told,
    }
}

/// Sheets of vehicles that were issued and say something else today, by vehicle.
fn open_sheets<'a>(entries: &'a [Entry], record: &'a Record) -> BTreeMap<&'a str, Vec<&'a Entry>> {
    let mut vehicles: BTreeMap<&str, Vec<&Entry>> = BTreeMap::new();
    for entry in entries.iter().filter(|entry| matches!(entry.state, State::Changed | State::Gone)) {
        let issue = record.of(&entry.id).and_then(History::current);
        if let Some(vehicle) = issue.and_then(|issue| issue.vehicle.as_deref()) {
            vehicles.entry(vehicle).or_default().push(entry);
        }
    }
    vehicles
}

/// Tells which vehicles have sheets with old figures.
pub(super) fn vehicles(words: &Words, entries: &[Entry], record: &Record) -> String {
    let (vehicles, mut lines) = (open_sheets(entries, record), Lines::default());
    if !vehicles.is_empty() {
        lines.add(0, words.say(&Message::new("status-vehicles").with_count("count", vehicles.len())));
    }
    for (vehicle, sheets) in vehicles {
        let sheets: Vec<String> = sheets.into_iter().map(named).collect();
        lines.add(1, format_args!("{vehicle}: {}", sheets.join(", ")));
    }
    lines.0
}

/// All of it for programs.
pub(super) fn as_json(entries: &[Entry], record: &Record) -> Value {
    let vehicles: BTreeMap<&str, Vec<&str>> = open_sheets(entries, record)
        .into_iter()
        .map(|(vehicle, sheets)| (vehicle, sheets.iter().map(|entry| entry.id.as_str()).collect()))
        .collect();
    json!({
        "due": entries.iter().any(|entry| entry.state.is_due()),
        "documents": entries.iter().map(|entry| of_document(entry, record)).collect::<Vec<_>>(),
        "vehicles-with-old-sheets": vehicles,
    })
}

fn of_document(entry: &Entry, record: &Record) -> Value {
    let because = entry.difference.as_ref().map(|difference| {
        let because = difference.because.iter();
        because.map(|one| json!({ "key": one.key, "old": one.old, "new": one.new })).collect::<Vec<_>>()
    });
    let moved = entry.difference.as_ref().map(|difference| {
        let cell = |moved: &Moved| {
            json!({
                "place": moved.place, "pointer": moved.pointer, "old": moved.old, "new": moved.new,
                "last-digits": apart(&moved.old, &moved.new), "key": moved.key,
            })
        };
        difference.moved.iter().map(cell).collect::<Vec<_>>()
    });
    let held = record.of(&entry.id).into_iter().flat_map(History::held);
    let held = held.map(|copy| {
        json!({ "holder": copy.holder, "place": copy.at, "revision": copy.revision.value,
                "since": copy.since.value.to_string() })
    });
    json!({
        "id": entry.id, "title": entry.title, "state": code(entry.state), "revision": entry.revision,
        "fingerprint": entry.content, "because": because, "cells": moved,
        "holders": held.collect::<Vec<_>>(),
    })
}
