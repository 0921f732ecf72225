//! Adds up what was printed and says so in a line.

use std::collections::{BTreeMap, BTreeSet};
use std::io::{self, Write};
use std::path::Path;
use std::time::Instant;

use super::batch::Report;
use crate::cli::outcome::{Outcome, note, say};
use crate::words::{Message, Words};

/// Failures that are shown one by one; a full disk makes one of every document.
const SHOWN: usize = 5;

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
    failures: Vec<(String, String)>,
    /// Documents with more pages than they were made for.
    overfull: Vec<(String, usize, usize)>,
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
            failures: Vec::new(),
            overfull: Vec::new(),
        }
    }

    pub(super) fn words(&self) -> &'a Words {
        self.words
    }

    /// The pages of every document printed so far.
    pub(super) fn printed(&self) -> &BTreeMap<String, usize> {
        &self.printed
    }

    /// Counts one document.
    pub(super) fn add(&mut self, report: Report) {
        self.no_source.extend(report.no_source);
        self.not_given.extend(report.not_given);
        match report.failure {
            Some(failure) => self.failures.push((report.id, failure)),
            None => {
                if report.expected > 0 && report.pages > report.expected {
                    self.overfull.push((report.id.clone(), report.pages, report.expected));
                }
                self.printed.insert(report.id, report.pages);
            }
        }
    }

    /// Rewrites one line of the terminal.
    pub(super) fn show_progress(&self) {
        let message = Message::new("run-progress")
            .with("done", self.printed.len() + self.failures.len())
            .with("all", self.expected);
        let mut terminal = io::stderr().lock();
        drop(write!(terminal, "\r{}\x1b[K\r", self.words.say(&message)));
        drop(terminal.flush());
    }

    /// Says what was printed, and what was not.
    pub(super) fn finish(mut self, out: &Path, lost_workers: usize) -> Outcome {
        self.overfull.sort();
        for (id, pages, expected) in &self.overfull {
            let message = Message::new("run-more-sides").with("id", id);
            let message = message.with("pages", pages).with("expected", expected);
            note(format_args!("{}: {}", self.words.word("finding-warning"), self.words.say(&message)));
        }
        self.failures.sort();
        for (id, reason) in self.failures.iter().take(SHOWN) {
            let message = Message::new("run-cannot-print").with("id", id).with("reason", reason);
            note(format_args!("{}: {}", self.words.word("finding-error"), self.words.say(&message)));
        }
        let more = self.failures.len().saturating_sub(SHOWN);
        if more > 0 {
            note(self.words.say(&Message::new("run-more-failures").with_count("count", more)));
        }
        let missing = self.expected - self.printed.len() - self.failures.len();
        if missing > 0 || lost_workers > 0 {
            let message = Message::new("run-worker-lost").with_count("missing", missing);
            note(format_args!("{}: {}", self.words.word("finding-error"), self.words.say(&message)));
        }
        let seconds = self.started.elapsed().as_secs_f64();
        let message = Message::new("run-printed")
            .with_count("documents", self.printed.len())
            .with_count("pages", self.printed.values().sum())
            .with("seconds", format!("{seconds:.2}"))
            .with("out", out.display())
            .with_count("no-source", self.no_source.len())
            .with_count("not-given", self.not_given.len());
        let told = Outcome::of_output(self.words, self.told.and_then(|()| say(self.words.say(&message))));
        let complete = self.failures.is_empty() && missing == 0 && lost_workers == 0;
        if complete { told } else { Outcome::Failed }
    }
}
