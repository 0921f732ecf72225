//! What is due: each document beside what was last issued of it.

use std::collections::BTreeSet;
use std::sync::Arc;
use std::sync::atomic::{AtomicUsize, Ordering};

use chrono::NaiveDate;
use rayon::prelude::*;
use serde_json::Value;
use sha2::{Digest, Sha256};

use super::entry::{Difference, Entry, State};
use super::kept::Kept;
use super::moved::moved;
use super::reasons;
use super::record::{History, Record};
use crate::document::{self, Codes, Context, Document, Edition, Listed, Paperwork};
use crate::enclosure::Encloser;
use crate::model::Model;
use crate::quantity::{Size, Temperature, Units};
use crate::spec::{Issue, Texts};
use crate::words::{Language, Words};

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
    pub encloser: &'a Encloser<'a>,
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

/// So many documents that have to be issued are kept as composed: more would take more memory than
/// composing them again takes time.
const DRAFTS: usize = 100;

/// A paper of an earlier issue.
#[derive(Debug, Clone, Default)]
pub struct Earlier {
    /// Its title.
    pub title: String,
    /// What it said.
    pub kept: Kept,
    /// The specs that it was made from.
    pub texts: Arc<Texts>,
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
    pub before: Arc<Texts>,
    pub today: Arc<Texts>,
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
    let run = Run { today, spoken: &spoken, codes: &codes, record, archive, drafts: AtomicUsize::new(0) };
    let compared: Vec<(Entry, Option<Pair>)> =
        listed.par_iter().filter_map(|listed| run.compared(listed)).collect();
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
    pub(super) fn edition(&self, issued: Option<&Issue>) -> Edition {
        let edition = issued.map_or_else(|| Edition::of(self.model, self.words), edition_of);
        let Asked { language, units, size, bay } = self.asked;
        Edition {
            language: language.unwrap_or(edition.language),
            units: units.unwrap_or(edition.units),
            size: size.or(edition.size),
            bay: bay.or(edition.bay),
        }
    }
}

/// A plan that is being made.
struct Run<'a> {
    today: &'a Today<'a>,
    spoken: &'a Spoken,
    codes: &'a Codes,
    record: &'a Record,
    archive: &'a dyn Archive,
    /// How many documents are kept as composed.
    drafts: AtomicUsize,
}

impl Run<'_> {
    /// A document beside what was issued of it. Neutral words say whether it is another: only
    /// one that somebody has to do something about is composed in words.
    fn compared(&self, listed: &Listed) -> Option<(Entry, Option<Pair>)> {
        let today = self.today;
        let history = self.record.of(&listed.id);
        let issue = history.and_then(History::newest);
        let edition = today.edition(issue);
        let (words, table) = self.spoken.in_language(edition.language)?;
        let context = edition.context(today.model, words, today.date);
        let context = Context { codes: Some(self.codes), ..context };
        let layout = layout(edition.language, context.size_of(listed), today.templates, table);
        // A report may have named its code before.
        let is_as_issued = |code: &String| issue.is_some_and(|issue| issue.content == *code);
        let (content, said) = match self.codes.of(&context, listed).filter(is_as_issued) {
            Some(code) => (code, None),
            None => {
                let said = document::content(context, listed)?;
                (said.fingerprint.clone(), Some(said))
            }
        };
        let context = Context { said: said.as_ref().map(|said| (listed.id.as_str(), said)), ..context };
        let Some(issue) = issue else {
            let document = document::compose(context, listed)?;
            let mut entry = Entry::new(listed, edition, (content, layout), document.title());
            entry.draft = self.kept(document);
            return Some((entry, None));
        };
        let is_current = history.is_some_and(|history| history.current().is_some());
        let state = match (is_current, issue.content == content) {
            (false, _) => State::Withdrawn,
            (true, false) => State::Changed,
            (true, true) if issue.layout != layout => State::Layout,
            (true, true) => State::Same,
        };
        let document = if state == State::Same && !today.all_titles {
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
        let pair = self.archive.earlier(&listed.id, issue.act.revision.value).map(|earlier| {
            let is_of_specs = edition == edition_of(issue) && issue.tool == env!("CARGO_PKG_VERSION");
            let (pair, difference) = self.pair(listed, &document, earlier, is_of_specs);
            entry.difference = Some(difference);
            pair
        });
        entry.draft = self.kept(document);
        Some((entry, pair))
    }

    /// A document that has to be issued.
    fn kept(&self, document: Document) -> Option<Arc<Document>> {
        (self.drafts.fetch_add(1, Ordering::Relaxed) < DRAFTS).then(|| Arc::new(document))
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
        let now = Kept::of(document.content().cells(), &data);
        let moved = moved(&earlier.kept, &now, &data);
        let today = self.today.encloser.specs(listed);
        (Pair { is_of_specs, now, before: earlier.texts, today }, Difference { moved, because: Vec::new() })
    }
}

/// The edition that a paper was issued in.
fn edition_of(issue: &Issue) -> Edition {
    let bay = issue.at.as_ref().map(|at| at.value);
    Edition { language: issue.language, units: issue.units, size: issue.size, bay }
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
