//! Adds up what was printed and says so in a line.

use std::collections::{BTreeMap, BTreeSet};
use std::io::{self, Write};
use std::path::Path;
use std::time::Instant;

use super::batch::{Report, Told};
use super::sheets::{self, Bundled};
use crate::cli::outcome::{Outcome, complain, say, seconds_since, warn};
use crate::cli::templates::Templates;
use crate::cli::why::{Reasons, Why};
use crate::diag::reason;
use crate::typeset::Press;
use crate::words::{Message, Words};

/// What a run has printed so far.
pub(super) struct Summary<'a> {
    started: Instant,
    words: &'a Words,
    expected: usize,
    /// Whether the lines told so far could be written.
    told: io::Result<()>,
    /// How many pages each printed document has.
    printed: BTreeMap<String, usize>,
    no_source: BTreeSet<String>,
    not_given: BTreeSet<String>,
    /// What was not printed, and why.
    failures: Reasons,
    /// Documents with more pages than they were made for.
    overfull: Vec<(String, usize, usize)>,
    /// Documents and their pages without the bar of 100 mm.
    without_bar: Vec<(String, Vec<usize>)>,
    bundled: Vec<Bundled>,
}

impl<'a> Summary<'a> {
    pub(super) fn new(started: Instant, words: &'a Words, expected: usize, told: io::Result<()>) -> Self {
        Self {
            started,
            words,
            expected,
            told,
            printed: BTreeMap::new(),
            no_source: BTreeSet::new(),
            not_given: BTreeSet::new(),
            failures: Reasons::default(),
            overfull: Vec::new(),
            without_bar: Vec::new(),
            bundled: Vec::new(),
        }
    }

    pub(super) fn words(&self) -> &'a Words {
        self.words
    }

    /// The pages of every document printed so far.
    pub(super) fn printed(&self) -> &BTreeMap<String, usize> {
        &self.printed
    }

    /// The leaves that fill no sheet.
    pub(super) fn left(&self) -> impl Iterator<Item = &(String, usize)> {
        self.bundled.iter().flat_map(|bundled| &bundled.left)
    }

    /// Counts what was printed.
    pub(super) fn add(&mut self, told: Told) {
        match told {
            Told::Document(report) => self.count(report),
            Told::Sheets(bundled) => self.bundled.push(bundled),
        }
    }

    /// Counts one document.
    fn count(&mut self, report: Report) {
        self.no_source.extend(report.no_source);
        self.not_given.extend(report.not_given);
        match report.failure {
            Some(why) => self.failures.add(report.id, why),
            None => {
                if report.expected > 0 && report.pages > report.expected {
                    self.overfull.push((report.id.clone(), report.pages, report.expected));
                }
                if !report.without_bar.is_empty() {
                    self.without_bar.push((report.id.clone(), report.without_bar));
                }
                self.printed.insert(report.id, report.pages);
            }
        }
    }

    /// Rewrites one line of the terminal.
    pub(super) fn show_progress(&self) {
        let message = Message::new("run-progress")
            .with("done", self.printed.len() + self.failures.documents())
            .with("all", self.expected);
        let mut terminal = io::stderr().lock();
        drop(write!(terminal, "\r{}\x1b[K\r", self.words.say(&message)));
        drop(terminal.flush());
    }

    /// Says what was printed, and what was not.
    pub(super) fn finish(
        mut self,
        (out, press): (&Path, Option<&Press>),
        templates: &Templates,
        lost_workers: usize,
    ) -> Outcome {
        self.overfull.sort();
        for (id, pages, expected) in &self.overfull {
            let message = Message::new("run-more-sides").with("id", id);
            let message = message.with("pages", pages).with("expected", expected);
            warn(self.words, &message);
        }
        let sheets = press.map(|press| self.sheets(out, press));
        let missing = self.expected - self.printed.len() - self.failures.documents();
        for bundled in &mut self.bundled {
            if let Some(why) = bundled.failure.take() {
                self.failures.add(sheets::file(bundled.number), why);
            }
        }
        self.failures.show(templates, self.words);
        if missing > 0 || lost_workers > 0 {
            let message = Message::new("run-worker-lost").with_count("missing", missing);
            complain(self.words, &message);
        }
        let message = Message::new("run-printed")
            .with_count("documents", self.printed.len())
            .with_count("pages", self.printed.values().sum())
            .with("seconds", seconds_since(self.words, self.started))
            .with("out", out.display())
            .with_count("no-source", self.no_source.len())
            .with_count("not-given", self.not_given.len());
        let mut told = self.told.and_then(|()| say(self.words.say(&message)));
        if let Some(Some(line)) = &sheets {
            told = told.and_then(|()| say(line));
        }
        let told = Outcome::of_output(self.words, told);
        let complete = missing == 0 && lost_workers == 0;
        let printed = if complete { self.failures.outcome() } else { Outcome::Failed };
        if printed == Outcome::Done { told } else { printed }
    }

    /// Numbers the files of sheets, says what is amiss with them, and what to do with them.
    fn sheets(&mut self, out: &Path, press: &Press) -> Option<String> {
        let words = self.words;
        for (id, pages) in &self.without_bar {
            let pages = pages.iter().map(ToString::to_string).collect::<Vec<_>>().join(", ");
            warn(words, &Message::new("run-no-bar").with("id", id).with("pages", pages));
        }
        let files = match sheets::close_gaps(out, &mut self.bundled) {
            Ok(files) => files,
            Err(error) => {
                let failed = Bundled { failure: Some(Why::Run(reason(&error))), ..Bundled::default() };
                self.bundled.push(failed);
                0
            }
        };
        for bundled in &self.bundled {
            if bundled.without_bar > 0 {
                let message = Message::new("run-no-bar-on-sheet").with("id", sheets::file(bundled.number));
                warn(words, &message.with_count("sides", bundled.without_bar));
            }
        }
        for name in sheets::stale(out, files) {
            warn(words, &Message::new("run-stale-sheets").with("path", out.join(name).display()));
        }
        sheets::told(&self.bundled, files, press, words)
    }
}
