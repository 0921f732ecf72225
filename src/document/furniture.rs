//! What every page of every kind carries.

use schemars::JsonSchema;
use serde::Serialize;

use super::Context;
use super::caution::{self, Signalled};
use super::code::Code;
use super::marks::Marks;
use super::stamp::{Changed, Stamp};
use crate::model::{Fact, System};
use crate::quantity::{Size, Units};
use crate::words::{Message, Words};

/// Title band, foot and marks of a document's pages.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub(super) struct Furniture {
    /// The document's id: `CUR-EVAP`.
    pub id: String,
    /// Its kind of paper, in words.
    pub kind: String,
    /// What it is about.
    pub title: String,
    /// The title of its system, where it is a paper of one.
    #[serde(skip)]
    pub system: String,
    /// Who prints it.
    pub shop: String,
    /// Its revision, or that it is a draft: `R2`, `DRAFT`.
    pub revision: String,
    /// When it was printed or issued, in words.
    pub date: String,
    /// Which system, built when; with its source's letter.
    pub applicability: String,
    /// Of what it says, whatever its date and revision: `RS5D-MKAG`.
    pub fingerprint: String,
    /// Id, revision and fingerprint as text and as a symbol.
    pub code: Code,
    /// Whether it is marked as a draft across every page.
    pub draft: bool,
    /// The shop's own notice on every page; may be empty.
    pub notice: String,
    /// What no one may touch, where the system has high voltage.
    pub stop: Option<Signalled>,
    /// The name of its size, as `theme.typ` lists them: `a5`, `4x6-in`.
    pub paper: &'static str,
    /// What that names.
    #[serde(skip)]
    pub size: Size,
    /// The language's code: `en`, `de`, `fr`, `es` (ISO 639-1).
    pub language: &'static str,
    /// Letters and the documents that they stand for.
    pub sources: Vec<Source>,
    /// The units that it is printed in, in a line.
    pub units: String,
    /// What changed since the revision before.
    pub changed: Option<Changed>,
}

/// A letter and the document it stands for.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema)]
pub(super) struct Source {
    /// `a`, `b` … `z`, `aa`.
    pub letter: String,
    /// Document, edition and page, as the spec has it.
    pub text: String,
}

/// What tells one kind's furniture from another's.
pub(super) struct Kind {
    pub word: &'static str,
    pub size: Size,
    pub title: String,
    pub id: String,
}

impl Furniture {
    pub(super) fn new(
        context: Context<'_>,
        kind: Kind,
        system_id: &str,
        system: &System,
        marks: &mut Marks,
    ) -> Self {
        let words = context.words;
        let fact = Fact::new(
            format!("system.{system_id}.applicability"),
            "fact-applicability",
            system.applicability.as_ref(),
        );
        let vehicles = marks.shown(words, &fact);
        let applicability =
            Message::new("doc-applicability").with("system", &system.title).with("vehicles", vehicles);
        let stop = caution::stop(words, system_id, system, marks);
        let system = system.title.clone();
        Self { system, ..Self::like(context, kind, words.say(&applicability), stop) }
    }

    /// Furniture with an applicability and a STOP that are known.
    pub(super) fn like(
        context: Context<'_>,
        kind: Kind,
        applicability: String,
        stop: Option<Signalled>,
    ) -> Self {
        let words = context.words;
        let date = context.date.format(words.language().dates());
        Self {
            id: kind.id,
            kind: words.word(kind.word),
            title: kind.title,
            system: String::new(),
            shop: context.model.shop.title.clone(),
            revision: words.word("doc-revision-none"),
            date: words.say(&Message::new("doc-printed").with("date", date)),
            applicability,
            fingerprint: String::new(),
            code: Code::default(),
            draft: true,
            notice: context.model.shop.notice.clone().unwrap_or_default(),
            stop,
            paper: kind.size.slug(),
            size: kind.size,
            language: words.language().code(),
            sources: Vec::new(),
            units: words.word(match context.units {
                Units::Metric => "doc-units-metric",
                Units::Us => "doc-units-us",
                Units::Both => "doc-units",
            }),
            changed: None,
        }
    }

    /// Makes a draft's furniture that of an issue.
    pub(super) fn issue(&mut self, words: &Words, stamp: &Stamp) {
        self.revision = stamp.printed();
        self.date = stamp.issued(words);
        self.draft = false;
        self.changed = stamp.changed(words);
    }
}
