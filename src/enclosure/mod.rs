//! What an issued PDF carries inside: the specs it was made from, its figures, the tool's version.
//!
//! So that in ten years the paper can be computed again, by whoever has the file alone.
//! This room puts a record together, reads one back, and compares it with what today's tool
//! makes of the same specs. It knows the text of documents, never what a figure means.

mod bundle;
mod compare;
mod meant;
mod read;

use std::collections::BTreeMap;
use std::sync::{Arc, Mutex, OnceLock, PoisonError};

use chrono::NaiveDate;
use serde::{Deserialize, Serialize};
use serde_json::Value;

pub use compare::apart;
pub use compare::{Comparison, Differing, compare};
pub use read::{Enclosed, Known, LARGEST, read, read_knowing};

use crate::diag::Sources;
use crate::document::{CHANGED_FROM, CHANGED_TO, Cell, Context, Document, Listed, Paperwork, Stamp};
use crate::quantity::Size;
use crate::spec::{Part, Parts, Texts};
use crate::typeset::Attachment;
use crate::words::{Language, Message, Words};
use meant::Meant;

/// The form of the record; a newer one is refused. Of the first form each spec was a file, and each
/// text was written down in neutral words.
const FORMAT: u32 = 2;

/// The record's name among the attached files.
const RECORD: &str = "figures.json";

/// The attached specs.
const SPECS: &str = "specs.toml";

/// Before the names of specs; in the first form each was attached as a file of its own.
const FOLDER: &str = "specs/";

/// What a page says, and what else than the specs decided it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Record {
    /// The form of this record.
    format: u32,
    /// The tool and its version.
    pub tool: String,
    /// The document.
    pub id: String,
    /// Its revision.
    pub revision: u32,
    /// When it was issued.
    #[serde(with = "day")]
    pub date: NaiveDate,
    /// Who issued it.
    pub by: String,
    /// The code of the language of its words.
    language: String,
    /// The bay temperature, K.
    bay: Option<f64>,
    /// The word for the units of the page.
    units: String,
    /// The size of its pages, where not the card's own or the shop's.
    size: Option<String>,
    /// All that its template got.
    pub data: Value,
    /// Its texts with a figure or of the user's own.
    #[serde(default)]
    cells: Meant,
}

impl Record {
    /// The language of the page.
    #[must_use]
    pub fn language(&self) -> Language {
        Language::of_code(&self.language).unwrap_or_default()
    }

    /// Its texts with a figure or of the user's own, in neutral words.
    #[must_use]
    pub fn cells(&self) -> Vec<Cell> {
        self.cells.cells(&self.data)
    }
}

/// Puts together what the PDFs of a set carry inside. One serves a whole issue: papers of one
/// system carry the same specs.
#[derive(Debug)]
pub struct Encloser<'a> {
    sources: &'a Sources,
    /// Taken apart when somebody first asks.
    parts: OnceLock<Parts>,
    made: Mutex<BTreeMap<From, Arc<Specs>>>,
}

/// What a paper is made from: a part of the set, and its vehicle.
type From = (Part, Option<String>);

/// Specs that papers carry.
#[derive(Debug)]
struct Specs {
    texts: Arc<Texts>,
    /// The same as they are carried.
    joined: String,
}

impl<'a> Encloser<'a> {
    /// For a set without errors.
    #[must_use]
    pub fn new(sources: &'a Sources) -> Self {
        Self { sources, parts: OnceLock::new(), made: Mutex::default() }
    }

    /// The files that go into the PDF of an issued document; none for the index, which is no paper to
    /// work with and names every vehicle.
    ///
    /// # Panics
    /// Never: a document's data are JSON.
    #[must_use]
    pub fn enclose(
        &self,
        context: Context<'_>,
        listed: &Listed,
        (document, stamp): (&Document, &Stamp),
    ) -> Vec<Attachment> {
        if listed.paperwork == Paperwork::Index {
            return Vec::new();
        }
        let data = plain(&document.data);
        let record = Record {
            format: FORMAT,
            tool: tool(),
            id: document.id.clone(),
            revision: stamp.revision,
            date: stamp.date,
            by: stamp.by.clone(),
            language: context.words.language().code().to_owned(),
            bay: context.bay.map(|bay| bay.kelvins()),
            units: context.units.word().to_owned(),
            size: context.size.map(|size: Size| size.name().to_owned()),
            cells: Meant::of(document.content().cells(), &data),
            data,
        };
        let record = serde_json::to_string(&record).expect("a record is plain data");
        let figures = Attachment {
            name: RECORD.to_owned(),
            bytes: (record + "\n").into_bytes(),
            mime: "application/json",
            description: context.words.say(&Message::new("enclosed-figures").with("id", &document.id)),
            is_source: false,
        };
        let specs = Attachment {
            name: SPECS.to_owned(),
            bytes: self.carried(listed).joined.clone().into_bytes(),
            mime: "application/toml",
            description: context.words.word("enclosed-specs"),
            is_source: true,
        };
        vec![figures, specs]
    }

    /// The specs that a paper carries.
    #[must_use]
    pub fn specs(&self, listed: &Listed) -> Arc<Texts> {
        Arc::clone(&self.carried(listed).texts)
    }

    fn carried(&self, listed: &Listed) -> Arc<Specs> {
        let parts = self.parts.get_or_init(|| Parts::of(self.sources));
        let part = parts.part_of(&listed.spec, listed.paperwork.is_from_checklists());
        let part = (part, listed.paperwork.vehicle().map(str::to_owned));
        let mut made = self.made.lock().unwrap_or_else(PoisonError::into_inner);
        let specs = made.entry(part).or_insert_with_key(|(part, vehicle)| {
            let texts = parts.files(*part, vehicle.as_deref());
            Arc::new(Specs { joined: bundle::joined(&texts), texts: Arc::new(texts) })
        });
        Arc::clone(specs)
    }
}

/// This tool and its version.
#[must_use]
pub fn tool() -> String {
    concat!("bayleaf ", env!("CARGO_PKG_VERSION")).to_owned()
}

/// Data without what an issue marks in them.
fn plain(data: &[u8]) -> Value {
    let text: String =
        String::from_utf8_lossy(data).chars().filter(|c| ![CHANGED_FROM, CHANGED_TO].contains(c)).collect();
    let mut data: Value = serde_json::from_str(&text).unwrap_or_default();
    if let Some(furniture) = data.get_mut("furniture").and_then(Value::as_object_mut) {
        furniture.remove("changed");
    }
    data
}

/// The words of a record's language.
fn words(record: &Record) -> Words {
    Words::of(record.language())
}

/// A date as text, year first.
mod day {
    use chrono::NaiveDate;
    use serde::de::Error;
    use serde::{Deserialize, Deserializer, Serializer};

    pub(super) fn serialize<S: Serializer>(date: &NaiveDate, to: S) -> Result<S::Ok, S::Error> {
        to.collect_str(date)
    }

    pub(super) fn deserialize<'de, D: Deserializer<'de>>(from: D) -> Result<NaiveDate, D::Error> {
        String::deserialize(from)?.parse().map_err(D::Error::custom)
    }
}
