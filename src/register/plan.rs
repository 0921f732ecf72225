//! What is due: each document beside what was last issued of it.

use std::collections::BTreeSet;

use chrono::NaiveDate;
use rayon::prelude::*;
use serde_json::Value;
use sha2::{Digest, Sha256};

use super::cause::Texts;
use super::kept::Kept;
use super::moved::moved;
use super::reasons;
use super::record::{History, Record};
use crate::document::{self, Because, Codes, Context, Document, Edition, Listed, Moved, Paperwork};
use crate::enclosure::Encloser;
use crate::model::Model;
use crate::quantity::{Size, Temperature, Units};
use crate::spec::Issue;
use crate::words::{Language, Words};

/// How a document stands to what was issued of it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum State {
    /// Never issued.
    New,
    /// It says something else.
    Changed,
    /// Issued, and in the set no more.
    Gone,
    /// It says the same, and looks otherwise.
    Layout,
    /// Withdrawn, and still in the set.
    Withdrawn,
    /// As issued.
    Same,
}

impl State {
    /// Every state, those first that somebody has to do something about.
    pub const ALL: [Self; 6] =
        [Self::New, Self::Changed, Self::Gone, Self::Layout, Self::Withdrawn, Self::Same];

    /// Whether the register is behind the specs.
    #[must_use]
    pub fn is_due(self) -> bool {
        matches!(self, Self::New | Self::Changed | Self::Gone)
    }
}

/// One document.
#[derive(Debug, Clone)]
pub struct Entry {
    /// Its id.
    pub id: String,
    /// Its title; empty where it is as issued and no such titles are asked for.
    pub title: String,
    /// Which document of the set it is; nothing where it is gone.
    pub listed: Option<Listed>,
    /// How it stands.
    pub state: State,
    /// The newest revision that was issued.
    pub revision: Option<u32>,
    /// Whether it says something else than that.
    pub is_other: bool,
    /// The edition that it is compared in.
    pub edition: Edition,
    /// The fingerprint of what it says today.
    pub content: String,
    /// The fingerprint of how it looks today.
    pub layout: String,
    /// What differs from the newest revision, where it changed and that revision's paper is kept.
    pub difference: Option<Difference>,
}

/// What makes a document another than the one that was issued.
#[derive(Debug, Clone, Default)]
pub struct Difference {
    /// The cells that read otherwise.
    pub moved: Vec<Moved>,
    /// The values that made them so.
    pub because: Vec<Because>,
}

/// What is asked for on the command line, and wins over the edition that was issued.
#[derive(Debug, Clone, Copy, Default)]
pub struct Asked {
    /// The language.
    pub language: Option<Language>,
    /// The units.
    pub units: Option<Units>,
    /// The size.
    pub size: Option<Size>,
    /// The bay temperature.
    pub bay: Option<Temperature>,
}

/// What a plan is made from.
pub struct Today<'a> {
    /// The checked set.
    pub model: &'a Model,
    /// Its texts, by their paths below its folder.
    pub texts: &'a Texts,
    /// What its papers would carry inside.
    pub encloser: &'a Encloser,
    /// The words of its language.
    pub words: &'a Words,
    /// The day.
    pub date: NaiveDate,
    /// What is asked for.
    pub asked: Asked,
    /// Tells one state of the templates from another.
    pub templates: &'a str,
    /// Whether titles are wanted of papers that are as issued, too.
    pub all_titles: bool,
}

/// A paper of an earlier issue.
#[derive(Debug, Clone, Default)]
pub struct Earlier {
    /// Its title.
    pub title: String,
    /// What it said.
    pub kept: Kept,
    /// The specs that it was made from.
    pub texts: Texts,
}

/// Where papers of earlier issues are kept.
pub trait Archive: Sync {
    /// What a revision of a document said; nothing where its paper is lost.
    fn earlier(&self, id: &str, revision: u32) -> Option<Earlier>;
}

/// A document that changed, with both of its sides.
pub(super) struct Pair {
    /// Whether both were made by the same program in the same edition: then nothing but the specs
    /// made one another.
    pub is_of_specs: bool,
    pub now: Kept,
    pub before: Texts,
    pub today: Texts,
}

/// Compares every document with what was issued of it: in the order of the list, then those
/// that are gone by id. The index is none: it changes with every other.
#[must_use]
pub fn plan(today: &Today<'_>, record: &Record, archive: &dyn Archive) -> Vec<Entry> {
    let mut listed = document::list(today.model);
    listed.retain(|listed| listed.paperwork != Paperwork::Index);
    let newest = |listed: &Listed| record.of(&listed.id).and_then(History::newest);
    let spoken = Spoken::of(listed.iter().map(|listed| today.edition(newest(listed)).language));
    let codes = Codes::default();
    let compared = |listed: &Listed| today.compared(listed, (&spoken, &codes), record, archive);
    let compared: Vec<(Entry, Option<Pair>)> = listed.par_iter().filter_map(compared).collect();
    let (mut entries, pairs): (Vec<Entry>, Vec<Option<Pair>>) = compared.into_iter().unzip();
    reasons::explain(today, &spoken, &pairs, &mut entries);
    let there: BTreeSet<&str> = listed.iter().map(|listed| listed.id.as_str()).collect();
    for (id, history) in record.documents() {
        if let Some(issue) = history.current().filter(|_| !there.contains(id)) {
            entries.push(Entry::gone(id, issue, today, archive));
        }
    }
    entries
}

impl Today<'_> {
    /// The edition that was issued, but for what is asked for.
    fn edition(&self, issued: Option<&Issue>) -> Edition {
        let edition = issued.map_or_else(|| Edition::of(self.model, self.words), edition_of);
        let Asked { language, units, size, bay } = self.asked;
        Edition {
            language: language.unwrap_or(edition.language),
            units: units.unwrap_or(edition.units),
            size: size.or(edition.size),
            bay: bay.or(edition.bay),
        }
    }

    /// A document beside what was issued of it. Neutral words say whether it is another: only
    /// one that somebody has to do something about is composed in words.
    fn compared(
        &self,
        listed: &Listed,
        (spoken, codes): (&Spoken, &Codes),
        record: &Record,
        archive: &dyn Archive,
    ) -> Option<(Entry, Option<Pair>)> {
        let history = record.of(&listed.id);
        let issue = history.and_then(History::newest);
        let edition = self.edition(issue);
        let (words, table) = spoken.in_language(edition.language)?;
        let context = edition.context(self.model, words, self.date);
        let context = Context { codes: Some(codes), ..context };
        let layout = layout(edition.language, context.size_of(listed), self.templates, table);
        let Some(issue) = issue else {
            let document = document::compose(context, listed)?;
            let content = document.fingerprint().to_owned();
            return Some((Entry::new(listed, edition, (content, layout), document.title()), None));
        };
        let content = document::code_of(context, listed)?;
        let is_current = history.is_some_and(|history| history.current().is_some());
        let state = match (is_current, issue.content == content) {
            (false, _) => State::Withdrawn,
            (true, false) => State::Changed,
            (true, true) if issue.layout != layout => State::Layout,
            (true, true) => State::Same,
        };
        let document = if state == State::Same && !self.all_titles {
            None
        } else {
            Some(document::compose(context, listed)?)
        };
        let title = document.as_ref().map(Document::title).unwrap_or_default();
        let mut entry = Entry::new(listed, edition, (content, layout), title);
        entry.state = state;
        entry.revision = Some(issue.act.revision.value);
        entry.is_other = issue.content != entry.content;
        let Some(document) = document.filter(|_| entry.is_other) else { return Some((entry, None)) };
        let pair = archive.earlier(&listed.id, issue.act.revision.value).map(|earlier| {
            let is_of_specs = edition == edition_of(issue) && issue.tool == env!("CARGO_PKG_VERSION");
            let (pair, difference) = self.pair(listed, &document, earlier, is_of_specs);
            entry.difference = Some(difference);
            pair
        });
        Some((entry, pair))
    }

    /// Tells a changed document from its earlier self, cell by cell.
    fn pair(
        &self,
        listed: &Listed,
        document: &Document,
        earlier: Earlier,
        is_of_specs: bool,
    ) -> (Pair, Difference) {
        let data: Value = serde_json::from_slice(&document.data).unwrap_or_default();
        let now = Kept::of(&document.content().cells, &data);
        let moved = moved(&earlier.kept, &now, &data);
        let today = self.encloser.specs(listed).into_iter().collect();
        (Pair { is_of_specs, now, before: earlier.texts, today }, Difference { moved, because: Vec::new() })
    }
}

/// The edition that a paper was issued in.
fn edition_of(issue: &Issue) -> Edition {
    let bay = issue.at.as_ref().map(|at| at.value);
    Edition { language: issue.language, units: issue.units, size: issue.size, bay }
}

impl Entry {
    /// The revision that it is issued with.
    #[must_use]
    pub fn next(&self) -> u32 {
        self.revision.map_or(1, |revision| revision.saturating_add(1))
    }

    fn new(listed: &Listed, edition: Edition, (content, layout): (String, String), title: &str) -> Self {
        Self {
            id: listed.id.clone(),
            title: title.to_owned(),
            listed: Some(listed.clone()),
            state: State::New,
            revision: None,
            is_other: false,
            edition,
            content,
            layout,
            difference: None,
        }
    }

    fn gone(id: &str, issue: &Issue, today: &Today<'_>, archive: &dyn Archive) -> Self {
        let revision = issue.act.revision.value;
        Self {
            id: id.to_owned(),
            title: archive.earlier(id, revision).map(|earlier| earlier.title).unwrap_or_default(),
            listed: None,
            state: State::Gone,
            revision: Some(revision),
            is_other: false,
            edition: today.edition(Some(issue)),
            content: issue.content.clone(),
            layout: issue.layout.clone(),
            difference: None,
        }
    }
}

/// The words of every language that a plan needs, with the table that templates get of each.
pub(super) struct Spoken(Vec<(Words, String)>);

impl Spoken {
    fn of(languages: impl Iterator<Item = Language>) -> Self {
        let spoken: Vec<Language> = languages.collect();
        let languages = Language::ALL.iter().filter(|language| spoken.contains(language));
        let languages = languages.map(|language| Words::of(*language));
        Self(
            languages.map(|words| (words.paper_json(), words)).map(|(table, words)| (words, table)).collect(),
        )
    }

    pub(super) fn in_language(&self, language: Language) -> Option<(&Words, &str)> {
        let found = self.0.iter().find(|(words, _)| words.language() == language);
        found.map(|(words, table)| (words, table.as_str()))
    }
}

/// Tells one look of what a page says from another: its language and size, the templates, the
/// words, the program.
fn layout(language: Language, size: Size, templates: &str, words: &str) -> String {
    let mut hash = Sha256::new();
    for part in [language.code(), size.slug(), templates, words, env!("CARGO_PKG_VERSION")] {
        hash.update(part);
        hash.update([0]);
    }
    document::code_of_digest(&hash.finalize())
}
