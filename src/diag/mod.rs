//! Findings: what is wrong, or doubtful, in the user's files, and where.
//!
//! A finding is about the user's files and is a value: it is collected, sorted
//! and shown with the others. An error of the run itself (a folder that cannot
//! be written) is not a finding. This room decides nothing.

mod render;
mod sources;

use std::cell::RefCell;
use std::io;
use std::ops::Range;

pub use render::Renderer;
pub use sources::{FileId, Sources};

use crate::words::Message;

/// How bad a finding is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Severity {
    /// Nothing is printed until it is mended.
    Error,
    /// Worth a look; printing goes on.
    Warning,
}

/// A stretch of one of the user's files.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Place {
    /// The file.
    pub file: FileId,
    /// The bytes of it.
    pub span: Range<usize>,
}

/// What a finding is about.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Subject {
    /// A stretch of a file, with the label under it.
    Place(Place, Message),
    /// A file or folder as a whole.
    Path(String),
}

/// Something wrong or doubtful in the user's files.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Finding {
    /// How bad it is.
    pub severity: Severity,
    /// What is wrong, with the number.
    pub message: Message,
    /// Where, and what was expected there.
    pub subject: Subject,
    /// The other place it disagrees with.
    pub context: Option<(Place, Message)>,
    /// What follows from it.
    pub notes: Vec<Message>,
    /// What the reader can do.
    pub help: Vec<Message>,
}

impl Finding {
    /// An error at a place; `expected` is the label under it.
    #[must_use]
    pub fn error(message: Message, place: Place, expected: Message) -> Self {
        Self::about(message, Subject::Place(place, expected))
    }

    /// A warning at a place.
    #[must_use]
    pub fn warning(message: Message, place: Place, expected: Message) -> Self {
        Self { severity: Severity::Warning, ..Self::error(message, place, expected) }
    }

    /// An error about a file or folder as a whole.
    #[must_use]
    pub fn about_path(message: Message, path: String) -> Self {
        Self::about(message, Subject::Path(path))
    }

    fn about(message: Message, subject: Subject) -> Self {
        let (notes, help) = (Vec::new(), Vec::new());
        Self { severity: Severity::Error, message, subject, context: None, notes, help }
    }

    /// Adds the place this one disagrees with.
    #[must_use]
    pub fn because(mut self, place: Place, label: Message) -> Self {
        self.context = Some((place, label));
        self
    }

    /// Adds what the reader can do.
    #[must_use]
    pub fn help(mut self, help: Message) -> Self {
        self.help.push(help);
        self
    }

    /// Adds what follows from it.
    #[must_use]
    pub fn note(mut self, note: Message) -> Self {
        self.notes.push(note);
        self
    }
}

/// Collects the findings of a run.
#[derive(Debug, Default)]
pub struct Findings {
    list: RefCell<Vec<Finding>>,
}

impl Findings {
    /// Adds one.
    pub fn report(&self, finding: Finding) {
        self.list.borrow_mut().push(finding);
    }

    /// Adds several, or none.
    pub fn report_all(&self, findings: impl IntoIterator<Item = Finding>) {
        self.list.borrow_mut().extend(findings);
    }

    /// Whether any of them is an error.
    #[must_use]
    pub fn has_errors(&self) -> bool {
        self.list.borrow().iter().any(|finding| finding.severity == Severity::Error)
    }

    /// All of them in the order of the files and lines they are about.
    #[must_use]
    pub fn sorted(self) -> Vec<Finding> {
        let mut list = self.list.into_inner();
        list.sort_by_key(|finding| match &finding.subject {
            Subject::Path(_) => (0, 0),
            Subject::Place(place, _) => (place.file.number() + 1, place.span.start),
        });
        list
    }
}

/// The operating system's words for an error, without its number.
#[must_use]
pub fn reason(error: &io::Error) -> String {
    let text = error.to_string();
    text.split(" (os error").next().unwrap_or_default().to_lowercase()
}

/// The word nearest to `word` among `known`, where one is near enough.
///
/// Near is a similarity of 0.7 and more: a slip of the finger, not a guess.
#[must_use]
pub fn nearest<'a>(word: &str, known: impl IntoIterator<Item = &'a str>) -> Option<&'a str> {
    let lower = word.to_lowercase();
    known
        .into_iter()
        .map(|candidate| (strsim::jaro_winkler(&lower, &candidate.to_lowercase()), candidate))
        .filter(|(similarity, _)| *similarity >= 0.7)
        .max_by(|a, b| a.0.total_cmp(&b.0).then_with(|| b.1.cmp(a.1)))
        .map(|(_, candidate)| candidate)
}
