//! What each page says: all numbers already text, rounded once.
//!
//! One file per kind of paper. A document is plain data, serialized to JSON for
//! its template; it knows nothing of millimetres.
//!
//! Invariant: this is the last place where a number is a number.

mod actuator_card;
mod air_card;
mod axis;
pub mod bench;
mod beside;
mod card;
mod caution;
mod checklist;
mod code;
mod connector_card;
mod content;
mod distance;
mod driver_card;
mod edition;
mod ends;
mod expectation;
mod fault_rows;
pub mod faults;
mod figures;
mod fingerprint;
pub mod fit;
mod furniture;
mod given;
mod grid;
pub mod import;
mod index;
pub mod judgement;
mod light_card;
mod list;
mod marks;
mod mode_card;
mod part_card;
mod plan;
mod proof;
mod pull_list;
mod report;
mod request_card;
mod schema;
mod sensor_card;
mod stamp;
mod symptoms;
mod system_card;
pub mod table;
mod test_sheet;
mod tie;
mod transducer_card;
mod users;
mod write_on;

use std::sync::Arc;

use chrono::NaiveDate;
use schemars::JsonSchema;
use serde::Serialize;

pub use content::{Cell, Codes, Content, Said, content};
pub(crate) use content::{code_of, texts};
pub use distance::{ASKED_FOR, Distance, Reading};
pub use edition::Edition;
pub(crate) use fingerprint::code as code_of_digest;
pub use given::said;
pub use list::{Listed, Paperwork, list};
pub use plan::Trial;
pub use proof::proofs;
pub use pull_list::{Because, Pull, PullList, compose_pull_list};
pub(crate) use schema::of as schema_of;
pub use schema::{NAMED, file_of, schemas};
pub use stamp::{CHANGED_FROM, CHANGED_TO, Moved, Since, Stamp};

use crate::model::{Fact, Lamination, Model, offered};
use crate::quantity::{Size, Temperature, Units, noted};
use crate::spec::About;
use crate::words::Words;
use code::Code;
use furniture::Furniture;
use marks::Marks;

/// What a document needs besides the model.
#[derive(Clone, Copy)]
pub struct Context<'a> {
    /// The checked set.
    pub model: &'a Model,
    /// The fixed words.
    pub words: &'a Words,
    /// The date printed on the page.
    pub date: NaiveDate,
    /// The bay temperature that windows are computed for.
    pub bay: Option<Temperature>,
    /// The units of the page.
    pub units: Units,
    /// The size of every paper, where not the card's own or the shop's.
    pub size: Option<Size>,
    /// What is tried in place of what the specs say.
    pub trial: Trial,
    /// What is known of other papers of the model already.
    pub codes: Option<&'a Codes>,
    /// What the document that is composed says, where that is known: a draft to be issued.
    pub said: Option<Said<'a>>,
}

impl Context<'_> {
    /// The size a document is printed in.
    #[must_use]
    pub fn size_of(&self, listed: &Listed) -> Size {
        let kind = listed.paperwork.kind();
        let shop = &self.model.shop;
        let of_card = || self.model.cards.get(&listed.spec).filter(|_| listed.paperwork.is_card())?.size;
        let of_shop = || shop.sizes.get(&kind).copied();
        self.size.or_else(of_card).or_else(of_shop).unwrap_or_else(|| offered::usual(kind, shop.paper))
    }
}

/// One document, ready for its template.
#[derive(Debug, Clone)]
pub struct Document {
    /// Its id, which is also its file name.
    pub id: String,
    /// The template's file name.
    pub template: &'static str,
    /// Its data as JSON.
    pub data: Vec<u8>,
    /// How many pages it will have, where that is known; 0 where they have to
    /// be counted.
    pub pages: usize,
    /// How many pages it may have; 0 for any number.
    pub sides: usize,
    /// The size of its pages.
    pub size: Size,
    /// From where it is read.
    pub reading: Reading,
    /// How it is laminated, where it is a card.
    pub lamination: Option<Lamination>,
    /// What its pages carry, for papers that name it.
    furniture: Furniture,
    /// What it says in neutral words.
    content: Arc<Content>,
    /// Spec keys of the values it shows without a source.
    pub no_source: Vec<String>,
    /// Spec keys of the values that are missing.
    pub not_given: Vec<String>,
    /// The values of the specs that it shows or names the source of, in its order.
    facts: Vec<Fact>,
}

impl Document {
    /// What it is about, as its title band says.
    #[must_use]
    pub fn title(&self) -> &str {
        &self.furniture.title
    }

    /// The code of what it says.
    #[must_use]
    pub fn fingerprint(&self) -> &str {
        &self.content.fingerprint
    }

    /// What it says, whatever the language.
    #[must_use]
    pub fn content(&self) -> &Content {
        &self.content
    }

    /// The data to be read by people, with the name of their schema.
    ///
    /// # Panics
    /// Never: a document's data are an object.
    #[must_use]
    pub fn named_data(&self) -> Vec<u8> {
        let mut data: serde_json::Value = serde_json::from_slice(&self.data).expect(PLAIN);
        data[NAMED] = file_of(self.template).into();
        format!("{data:#}\n").into_bytes()
    }
}

/// Composes one listed document, as a draft. In neutral words it has its content alone: nobody reads
/// such a page.
#[must_use]
pub fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let mut document = noted(context.words.notation(), || composed(context, listed))?;
    if listed.paperwork.is_card() {
        document.lamination.clone_from(&context.model.shop.lamination);
    }
    Some(document)
}

fn composed(context: Context<'_>, listed: &Listed) -> Option<Document> {
    match listed.paperwork {
        Paperwork::Card(About::Actuator) => actuator_card::compose(context, listed),
        Paperwork::Card(About::Driver) => driver_card::compose(context, listed),
        Paperwork::Card(About::Sensor) | Paperwork::WallCard => sensor_card::compose(context, listed),
        Paperwork::StripCard => sensor_card::strip_card::compose(context, listed),
        Paperwork::Card(About::Connector) => connector_card::compose(context, listed),
        Paperwork::Card(About::Panel) => mode_card::compose(context, listed),
        Paperwork::Card(About::Request) => request_card::compose(context, listed),
        Paperwork::Card(About::Air) => air_card::compose(context, listed),
        Paperwork::Card(About::System) => system_card::compose(context, listed),
        Paperwork::Card(About::Light) => light_card::compose(context, listed),
        Paperwork::Card(About::Transducer) => transducer_card::compose(context, listed),
        Paperwork::TestSheet { .. } => test_sheet::compose(context, listed),
        Paperwork::Report { .. } => report::compose(context, listed),
        Paperwork::Checklist => checklist::compose(context, listed),
        Paperwork::SymptomIndex => symptoms::compose(context, listed),
        Paperwork::Index => compose_index(context, listed, &|_| None, &|_| None),
        Paperwork::Proof(_) => proof::compose(context, listed),
    }
}

/// Composes the index of all documents; `pages` counts those of one that does not know, `issued` says
/// which revision of one is valid.
#[must_use]
pub fn compose_index(
    context: Context<'_>,
    listed: &Listed,
    pages: &dyn Fn(&Document) -> Option<usize>,
    issued: &dyn Fn(&str) -> Option<String>,
) -> Option<Document> {
    noted(context.words.notation(), || index::compose(context, listed, pages, issued))
}

/// The data of any kind: the furniture of its pages, and the rest.
trait Data: Serialize + JsonSchema {
    fn furniture(&mut self) -> &mut Furniture;
}

/// Why a document's data always serialize.
const PLAIN: &str = "documents are plain data with text for keys";

/// Puts the fingerprint in and serializes.
fn finish(
    context: Context<'_>,
    listed: &Listed,
    (template, pages): (&'static str, usize),
    mut data: impl Data,
    marks: Marks,
) -> Document {
    data.furniture().sources = marks.sources();
    let is_neutral = context.words.are_neutral();
    let neutral = if is_neutral { None } else { content::content(context, listed) };
    let content = neutral.unwrap_or_else(|| Arc::new(content::of(&data)));
    let stage = match (is_neutral, context.said) {
        (true, _) => Stage::Unread,
        // Its content is known because it is compared: it gets its symbol when it is issued.
        (false, Some(_)) => Stage::ToBeIssued,
        (false, None) => Stage::Printed,
    };
    finish_as(listed, (template, pages), data, (content, marks), stage)
}

/// What becomes of a document that is composed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Stage {
    /// In neutral words it is read by nobody, and has nothing but its content.
    Unread,
    /// Its code is another once it is issued: no symbol is drawn of it before.
    ToBeIssued,
    Printed,
}

/// The same of a document whose content is known.
fn finish_as(
    listed: &Listed,
    (template, pages): (&'static str, usize),
    mut data: impl Data,
    (content, marks): (Arc<Content>, Marks),
    stage: Stage,
) -> Document {
    let furniture = data.furniture();
    let code = if stage == Stage::Printed { Code::new } else { Code::text };
    furniture.code = code(&furniture.id, &furniture.revision, &content.fingerprint);
    furniture.fingerprint.clone_from(&content.fingerprint);
    let furniture = furniture.clone();
    let size = furniture.size;
    // How many sides a kind takes is known for the papers that it is made for first.
    let pages = if offered::is_like_usual(listed.paperwork.kind(), size) { pages } else { 0 };
    let (no_source, not_given, facts) = marks.counted();
    let text = || tie::tie(&serde_json::to_string(&data).expect(PLAIN)).into_bytes();
    let data = if stage == Stage::Unread { Vec::new() } else { text() };
    Document {
        id: listed.id.clone(),
        template,
        data,
        pages,
        sides: 0,
        size,
        reading: distance::of(&listed.paperwork),
        lamination: None,
        furniture,
        content,
        no_source,
        not_given,
        facts,
    }
}
