//! Why a document could not be typeset.

use std::ops::Range;

use serde::{Deserialize, Serialize};

use crate::words::{Message, Words};

/// Says why a document could not be typeset.
#[derive(Debug, Clone)]
pub struct Failure {
    /// The document's id.
    pub id: String,
    /// Everything that is in the way.
    pub complaints: Vec<Complaint>,
    /// Whether all that is wrong is that it does not fit its pages.
    pub crowded: bool,
}

impl Failure {
    /// Why, in words and on one line.
    #[must_use]
    pub fn said(&self, words: &Words) -> String {
        let said: Vec<String> = self.complaints.iter().map(|complaint| complaint.said(words)).collect();
        said.join("; ")
    }
}

/// One thing that is in a document's way.
#[derive(Debug, Clone)]
pub enum Complaint {
    /// The typesetting library reports something about a template.
    Template(Diagnosis),
    /// A template that it needs is no text: see [`Typesetter::refusing`](super::Typesetter::refusing).
    Unread,
    /// What was laid out may not be printed.
    Page(Message),
}

impl Complaint {
    fn said(&self, words: &Words) -> String {
        match self {
            Self::Template(diagnosis) => diagnosis.line(),
            Self::Unread => words.word("run-template-unread"),
            Self::Page(message) => words.say(message),
        }
    }
}

/// What the typesetting library reports, in its own English words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Diagnosis {
    /// Whether it could have gone on.
    pub warning: bool,
    /// What is wrong.
    pub said: String,
    /// Where.
    pub at: Option<Spot>,
    /// From where that was reached, the nearest first.
    pub through: Vec<Spot>,
    /// What the library advises.
    pub hints: Vec<String>,
}

/// A stretch of a template.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Spot {
    /// The template's path below the folder of templates.
    pub path: String,
    /// The bytes of it.
    pub span: Range<usize>,
    /// Its line, from 1.
    pub line: usize,
}

impl Diagnosis {
    /// All of it on one line.
    #[must_use]
    pub fn line(&self) -> String {
        let hints = self.hints.iter().map(|hint| format!(" ({hint})"));
        let said = std::iter::once(self.said.clone()).chain(hints).collect::<String>();
        match &self.at {
            Some(Spot { path, line, .. }) => format!("{path}:{line}: {said}"),
            None => said,
        }
    }
}
