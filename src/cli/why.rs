//! Why documents were not printed: told once for all that have the same reason.

use serde::{Deserialize, Serialize};

use super::load;
use super::outcome::{Outcome, complain, note};
use super::templates::Templates;
use crate::diag::{FileId, Finding, Place, Sources};
use crate::typeset::{Diagnosis, Spot};
use crate::words::{Message, Words};

/// Reasons that are shown; there may be as many as there are documents.
const SHOWN: usize = 5;

/// Documents that are named at a reason.
const NAMED: usize = 6;

/// Why a document was not printed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub(super) enum Why {
    /// The run failed: a full disk, a page that cannot be as it must.
    Run(String),
    /// A template of the shop's own fails.
    Own(Vec<Part>),
    /// A template of the shop's own is no text, which has been told.
    Unread,
}

/// One thing that is wrong with the shop's own templates.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub(super) enum Part {
    /// The typesetting library says what, and where.
    Template(Diagnosis),
    /// What is on the page may not be printed.
    Page(String),
}

impl Part {
    /// The same without what is not shown, so that what looks alike is told once.
    pub(super) fn of(mut diagnosis: Diagnosis, templates: &Templates) -> Self {
        let own = own_spot(&diagnosis, templates).cloned();
        diagnosis.through = own.into_iter().filter(|own| Some(own) != diagnosis.at.as_ref()).collect();
        Self::Template(diagnosis)
    }
}

/// Where it shows in the shop's own templates, or the nearest of their lines that led there.
fn own_spot<'a>(diagnosis: &'a Diagnosis, templates: &Templates) -> Option<&'a Spot> {
    let mut on_the_way = diagnosis.at.iter().chain(&diagnosis.through);
    on_the_way.find(|spot| templates.is_changed(&spot.path))
}

/// Reasons, each with the documents that have it.
#[derive(Debug, Default)]
pub(super) struct Reasons(Vec<(Why, Vec<String>)>);

impl Reasons {
    pub(super) fn add(&mut self, id: String, why: Why) {
        match self.0.iter_mut().find(|(known, _)| *known == why) {
            Some((_, ids)) => ids.push(id),
            None => self.0.push((why, vec![id])),
        }
    }

    /// How many documents there are.
    pub(super) fn documents(&self) -> usize {
        self.0.iter().map(|(_, ids)| ids.len()).sum()
    }

    /// How a run ends that does not print them.
    pub(super) fn outcome(&self) -> Outcome {
        if self.0.is_empty() {
            Outcome::Done
        } else if self.0.iter().all(|(why, _)| !matches!(why, Why::Run(_))) {
            Outcome::Findings
        } else {
            Outcome::Failed
        }
    }

    /// Shows them on standard error, in the order of the documents.
    pub(super) fn show(&mut self, templates: &Templates, words: &Words) {
        for (_, ids) in &mut self.0 {
            ids.sort();
        }
        self.0.sort_by(|a, b| a.1.cmp(&b.1));
        for (why, ids) in self.0.iter().take(SHOWN) {
            match why {
                Why::Run(reason) => complain(words, &unprinted(ids, reason, words)),
                Why::Unread => {
                    complain(words, &unprinted(ids, &words.word("run-template-unread"), words));
                }
                Why::Own(parts) => draw(parts, ids, templates, words),
            }
        }
        let more: usize = self.0.iter().skip(SHOWN).map(|(_, ids)| ids.len()).sum();
        if more > 0 {
            note(words.say(&Message::new("run-more-failures").with_count("count", more)));
        }
    }
}

fn unprinted(ids: &[String], reason: &str, words: &Words) -> Message {
    match ids {
        [id] => Message::new("run-cannot-print").with("id", id).with("reason", reason),
        _ => Message::new("run-cannot-print-many")
            .with_count("count", ids.len())
            .with("ids", named(ids, words))
            .with("reason", reason),
    }
}

fn named(ids: &[String], words: &Words) -> String {
    let mut named = ids.iter().take(NAMED).cloned().collect::<Vec<_>>().join(", ");
    if ids.len() > NAMED {
        let more = Message::new("run-more-failures").with_count("count", ids.len() - NAMED);
        named = format!("{named}, {}", words.say(&more));
    }
    named
}

/// Draws what is wrong over the shop's own lines.
fn draw(parts: &[Part], ids: &[String], templates: &Templates, words: &Words) {
    for (index, part) in parts.iter().enumerate() {
        let mut drawing = Drawing { templates, words, sources: Sources::default() };
        let mut finding = drawing.finding(part);
        if index + 1 == parts.len() {
            let keeps = Message::new("run-template-keeps").with_count("count", ids.len());
            finding = finding.note(keeps.with("ids", named(ids, words)));
        }
        load::draw(&[finding], &drawing.sources, words);
    }
}

/// The files that a finding is drawn over.
struct Drawing<'a> {
    templates: &'a Templates,
    words: &'a Words,
    sources: Sources,
}

impl Drawing<'_> {
    fn finding(&mut self, part: &Part) -> Finding {
        let diagnosis = match part {
            Part::Template(diagnosis) => diagnosis,
            Part::Page(said) => return self.about_folder(said),
        };
        let said = Message::new("run-library").with("said", &diagnosis.said);
        let own = own_spot(diagnosis, self.templates);
        let Some(shown) = own.or(diagnosis.at.as_ref()) else { return self.about_folder(&diagnosis.said) };
        let stops = if diagnosis.warning { "run-template-warns" } else { "run-template-stops" };
        let is_at = diagnosis.at.as_ref() == Some(shown);
        let label = if is_at { stops } else { "run-template-leads" };
        let mut finding = Finding::error(said, self.place(shown), Message::new(label));
        if let Some(at) = diagnosis.at.as_ref().filter(|_| !is_at) {
            finding = finding.because(self.place(at), Message::new(stops));
        }
        for hint in &diagnosis.hints {
            finding = finding.help(Message::new("run-library").with("said", hint));
        }
        if own.is_none() { finding.help(self.elsewhere()) } else { finding }
    }

    /// A finding that has no line.
    fn about_folder(&self, said: &str) -> Finding {
        let folder = self.templates.folder().map(|folder| folder.display().to_string());
        let said = Message::new("run-library").with("said", said);
        Finding::about_path(said, folder.unwrap_or_default()).help(self.elsewhere())
    }

    fn elsewhere(&self) -> Message {
        let changed: Vec<String> = self.templates.changed().map(|file| format!("`{file}`")).collect();
        Message::new("run-template-elsewhere").with("files", named(&changed, self.words))
    }

    fn place(&mut self, spot: &Spot) -> Place {
        let Spot { path, span, .. } = spot;
        let (file, text) = self.templates.shown(path).unwrap_or((None, ""));
        let built_in = || self.words.say(&Message::new("run-built-in").with("path", path));
        let shown = file.map_or_else(built_in, str::to_owned);
        let known = self.sources.texts().map(|(file, _)| file).find(|file| self.sources.path(*file) == shown);
        let file: FileId = known.unwrap_or_else(|| self.sources.add(shown, text.to_owned()));
        Place { file, span: span.clone() }
    }
}
