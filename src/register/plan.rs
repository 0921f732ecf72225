//! What is due: each document beside what was last issued of it.

use std::collections::{BTreeMap, BTreeSet};

use chrono::NaiveDate;
use sha2::{Digest, Sha256};

use super::cause::{self, Texts};
use super::kept::Kept;
use super::moved::moved;
use super::record::Record;
use crate::diag::{Findings, Sources};
use crate::document::{self, Because, Context, Document, Listed, Moved, Paperwork, Trial};
use crate::model::{self, Model};
use crate::quantity::{Size, Temperature};
use crate::rules;
use crate::spec::{Issue, Set};
use crate::words::{Language, Words};

/// More values than this are named as changed, but not tried one by one.
const MOST_TRIED: usize = 60;

/// How a document stands to what was issued of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum State {
    /// Never issued.
    New,
    /// It says something else.
    Changed,
    /// It says the same, and looks otherwise.
    Layout,
    /// As issued.
    Same,
    /// Withdrawn, and still in the set.
    Withdrawn,
    /// Issued, and in the set no more.
    Gone,
}

/// What else than the specs decides what a page says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Edition {
    /// The language of its words.
    pub language: Language,
    /// The size of its pages, where one was asked for.
    pub size: Option<Size>,
    /// The bay temperature, where one was asked for.
    pub bay: Option<Temperature>,
}

/// One document.
#[derive(Debug, Clone)]
pub struct Entry {
    /// Its id.
    pub id: String,
    /// Its title; nothing where it is gone.
    pub title: String,
    /// Which document of the set it is.
    pub listed: Option<Listed>,
    /// How it stands.
    pub state: State,
    /// The newest revision that was issued.
    pub revision: Option<u32>,
    /// The edition that it is compared in.
    pub edition: Edition,
    /// The fingerprint of what it says today.
    pub content: String,
    /// The fingerprint of how it looks today.
    pub layout: String,
    /// What it says today.
    pub kept: Option<Kept>,
    /// The cells that changed; none where what the issue kept is lost.
    pub moved: Option<Vec<Moved>>,
    /// The values that changed them; none where the specs of the issue are lost.
    pub because: Option<Vec<Because>>,
}

/// What the plan is made from.
pub struct Today<'a> {
    /// The checked set.
    pub model: &'a Model,
    /// Its texts.
    pub texts: &'a Texts,
    /// The day.
    pub date: NaiveDate,
    /// The edition where nothing was issued, or where asked for.
    pub edition: Edition,
    /// Whether size and bay temperature of an earlier issue give way to those asked for.
    pub asked: (bool, bool, bool),
    /// Tells one state of the templates from another.
    pub templates: &'a str,
}

/// What earlier issues kept.
pub trait Archive {
    /// What a revision said.
    fn kept(&self, id: &str, revision: u32) -> Option<Kept>;
    /// The specs that an issue was made from.
    fn texts(&self, state: &str) -> Option<Texts>;
}

/// Compares every document with what was issued of it: in the order of the list, then those
/// that are gone by id. The index is none: it changes with every other.
#[must_use]
pub fn plan(today: &Today<'_>, record: &Record, archive: &dyn Archive) -> Vec<Entry> {
    let mut words: Vec<Words> = Vec::new();
    let listed = document::list(today.model);
    let listed: Vec<Listed> =
        listed.into_iter().filter(|listed| listed.paperwork != Paperwork::Index).collect();
    let issued = |id: &str| record.of(id).and_then(|history| history.newest());
    let editions: Vec<Edition> =
        listed.iter().map(|listed| edition(today, issued(&listed.id))).collect();
    for edition in &editions {
        if !words.iter().any(|words| words.language() == edition.language) {
            words.push(Words::of(edition.language));
        }
    }
    let spoken: BTreeMap<&str, String> =
        words.iter().map(|words| (words.language().code(), words.paper_json())).collect();
    let mut entries = Vec::new();
    for (listed, edition) in listed.iter().zip(editions) {
        let Some(words) = words.iter().find(|words| words.language() == edition.language) else { continue };
        let context = context(today, today.model, words, edition);
        let Some(document) = document::compose(context, listed) else { continue };
        let paper = spoken.get(edition.language.code()).map(String::as_str).unwrap_or_default();
        let layout = layout(&document, today.templates, paper);
        let mut entry = entry(listed, &document, edition, layout);
        let history = record.of(&listed.id);
        if let (Some(history), Some(issue)) = (history, issued(&listed.id)) {
            entry.revision = Some(issue.revision.value);
            entry.state = match (history.current().is_some(), issue.content == entry.content) {
                (false, _) => State::Withdrawn,
                (true, false) => State::Changed,
                (true, true) if issue.layout != entry.layout => State::Layout,
                (true, true) => State::Same,
            };
        }
        if matches!(entry.state, State::New | State::Changed) {
            entry.kept = document::content(context, listed).map(|content| Kept::of(&content, &document));
        }
        if entry.state == State::Changed {
            let before = archive.kept(&entry.id, entry.revision.unwrap_or_default());
            let cells = entry.kept.as_ref().zip(before);
            entry.moved = cells.map(|(now, before)| moved(&before, now, &document));
        }
        entries.push(entry);
    }
    explain(today, record, archive, (&words, &mut entries));
    let there: BTreeSet<&str> = listed.iter().map(|listed| listed.id.as_str()).collect();
    for (id, history) in record.documents() {
        if let Some(issue) = history.current().filter(|_| !there.contains(id)) {
            entries.push(gone(today, id, issue));
        }
    }
    entries
}

/// The edition that was issued, but for what is asked for.
fn edition(today: &Today<'_>, issued: Option<&Issue>) -> Edition {
    let Some(issued) = issued else { return today.edition };
    let (language, size, bay) = today.asked;
    Edition {
        language: if language { today.edition.language } else { issued.language },
        size: if size { today.edition.size } else { issued.size },
        bay: if bay { today.edition.bay } else { issued.at.as_ref().map(|at| at.value) },
    }
}

fn context<'a>(today: &Today<'_>, model: &'a Model, words: &'a Words, edition: Edition) -> Context<'a> {
    let Edition { size, bay, .. } = edition;
    Context { model, words, date: today.date, bay, size, trial: Trial::default(), stamp: None }
}

fn entry(listed: &Listed, document: &Document, edition: Edition, layout: String) -> Entry {
    Entry {
        id: listed.id.clone(),
        title: document.title().to_owned(),
        listed: Some(listed.clone()),
        state: State::New,
        revision: None,
        edition,
        content: document.fingerprint().to_owned(),
        layout,
        kept: None,
        moved: None,
        because: None,
    }
}

fn gone(today: &Today<'_>, id: &str, issue: &Issue) -> Entry {
    Entry {
        id: id.to_owned(),
        title: String::new(),
        listed: None,
        state: State::Gone,
        revision: Some(issue.revision.value),
        edition: today.edition,
        content: String::new(),
        layout: String::new(),
        kept: None,
        moved: None,
        because: None,
    }
}

/// Tells one look of a page from another: its data without date and revision, the templates,
/// the words, the program.
fn layout(document: &Document, templates: &str, words: &str) -> String {
    let mut data: serde_json::Value = serde_json::from_slice(&document.data).unwrap_or_default();
    if let Some(furniture) = data.get_mut("furniture").and_then(serde_json::Value::as_object_mut) {
        furniture.retain(|key, _| !["date", "revision", "draft", "code", "changed"].contains(&key.as_str()));
    }
    let mut hash = Sha256::new();
    for part in [&data.to_string(), templates, words, env!("CARGO_PKG_VERSION")] {
        hash.update(part);
        hash.update([0]);
    }
    hash.finalize().iter().take(5).map(|byte| format!("{byte:02x}")).collect()
}

/// Finds which changed value moved which cell, by putting each back alone.
fn explain(
    today: &Today<'_>,
    record: &Record,
    archive: &dyn Archive,
    (words, entries): (&[Words], &mut [Entry]),
) {
    let mut states: BTreeMap<String, Vec<usize>> = BTreeMap::new();
    for (at, entry) in entries.iter().enumerate().filter(|(_, entry)| entry.state == State::Changed) {
        let newest = record.of(&entry.id).and_then(|history| history.newest());
        states.entry(newest.map(|issue| issue.set.clone()).unwrap_or_default()).or_default().push(at);
    }
    for (state, of_state) in states {
        let Some(before) = archive.texts(&state) else { continue };
        let changed = cause::changed(&before, today.texts);
        for at in &of_state {
            entries[*at].because = Some(Vec::new());
        }
        if changed.len() > MOST_TRIED {
            of_state.iter().for_each(|at| entries[*at].because = Some(changed.clone()));
            continue;
        }
        for value in &changed {
            let tried = cause::put_back(&before, today.texts, &value.key).and_then(|texts| built(&texts));
            for at in &of_state {
                let entry = &mut entries[*at];
                let alone = changed.len() == 1;
                let moved = tried.as_ref().and_then(|model| said_with(today, model, words, entry));
                let has_moved = match &moved {
                    Some(then) => mark(entry, then, &value.key),
                    None => alone,
                };
                if alone {
                    let cells = entry.moved.iter_mut().flatten().filter(|moved| moved.key.is_none());
                    cells.for_each(|moved| moved.key = Some(value.key.clone()));
                }
                if has_moved || alone {
                    entry.because.get_or_insert_default().push(value.clone());
                }
            }
        }
        // What no single value explains: all that changed stands behind it.
        for at in of_state {
            let entry = &mut entries[at];
            if entry.because.as_ref().is_some_and(Vec::is_empty) {
                entry.because = Some(changed.clone());
            }
        }
    }
}

/// Names the value behind each cell that would read otherwise with the old one; whether any would.
fn mark(entry: &mut Entry, then: &Kept, key: &str) -> bool {
    let Some(now) = &entry.kept else { return false };
    let old: BTreeMap<String, &str> =
        then.named().into_iter().map(|(name, cell)| (name, cell.meant.as_str())).collect();
    let named = now.named();
    let differing: BTreeSet<&str> = (named.iter())
        .filter(|(name, cell)| old.get(name) != Some(&cell.meant.as_str()))
        .map(|(_, cell)| cell.at.as_str())
        .collect();
    let any = !differing.is_empty() || old.len() != named.len();
    for moved in entry.moved.iter_mut().flatten().filter(|moved| moved.key.is_none()) {
        if differing.contains(moved.pointer.as_str()) {
            moved.key = Some(key.to_owned());
        }
    }
    any
}

/// What a document would say of another model.
fn said_with(today: &Today<'_>, model: &Model, words: &[Words], entry: &Entry) -> Option<Kept> {
    let listed = entry.listed.as_ref()?;
    let words = words.iter().find(|words| words.language() == entry.edition.language)?;
    let content = document::content(context(today, model, words, entry.edition), listed)?;
    let cell = |cell: document::Cell| super::kept::KeptCell { at: cell.pointer, meant: cell.text, said: None };
    Some(Kept { cells: content.cells.into_iter().map(cell).collect() })
}

/// The model of a set's texts, where it is free of errors.
fn built(texts: &Texts) -> Option<Model> {
    let mut sources = Sources::default();
    for (path, text) in texts {
        sources.add(path.clone(), text.clone());
    }
    let findings = Findings::default();
    let set = Set::read(&sources, &findings);
    rules::check(&set, &findings);
    if findings.has_errors() { None } else { model::build(&set) }
}
