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
mod card;
mod caution;
mod checklist;
mod code;
mod connector_card;
mod content;
mod distance;
mod driver_card;
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
mod proof;
mod report;
mod request_card;
mod sensor_card;
mod symptoms;
mod system_card;
pub mod table;
mod test_sheet;
mod tie;
mod transducer_card;
mod users;
mod write_on;

use chrono::NaiveDate;
use serde::Serialize;

pub use content::{Cell, Content, content};
pub use distance::{ASKED_FOR, Distance, Reading};
pub use given::said;
pub use list::{Listed, Paperwork, list};
pub use proof::proofs;

use crate::model::{Lamination, Model};
use crate::quantity::{Temperature, noted};
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
    /// From where it is read.
    pub reading: Reading,
    /// How it is laminated, where it is a card.
    pub lamination: Option<Lamination>,
    /// What its pages carry, for papers that name it.
    furniture: Furniture,
    /// Spec keys of the values it shows without a source.
    pub no_source: Vec<String>,
    /// Spec keys of the values that are missing.
    pub not_given: Vec<String>,
}

/// Composes one listed document.
#[must_use]
pub fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let mut document = noted(context.words.notation(), || composed(context, listed))?;
    if matches!(listed.paperwork, Paperwork::Card(_) | Paperwork::WallCard) {
        document.lamination.clone_from(&context.model.shop.lamination);
    }
    Some(document)
}

fn composed(context: Context<'_>, listed: &Listed) -> Option<Document> {
    match listed.paperwork {
        Paperwork::Card(About::Actuator) => actuator_card::compose(context, listed),
        Paperwork::Card(About::Driver) => driver_card::compose(context, listed),
        Paperwork::Card(About::Sensor) | Paperwork::WallCard => sensor_card::compose(context, listed),
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
        Paperwork::Index => compose_index(context, listed, &|_| None),
        Paperwork::Proof(_) => proof::compose(context, listed),
    }
}

/// Composes the index of all documents; `pages` counts those of one that does not know.
#[must_use]
pub fn compose_index(
    context: Context<'_>,
    listed: &Listed,
    pages: &dyn Fn(&Document) -> Option<usize>,
) -> Option<Document> {
    noted(context.words.notation(), || index::compose(context, listed, pages))
}

/// The data of any kind: the furniture of its pages, and the rest.
trait Data: Serialize {
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
    let fingerprint = if context.words.are_neutral() {
        content::fingerprint(&data)
    } else {
        content::fingerprint_of(context, listed)
    };
    let furniture = data.furniture();
    furniture.code = Code::new(&furniture.id, &furniture.revision, &fingerprint);
    furniture.fingerprint = fingerprint;
    let furniture = furniture.clone();
    let (no_source, not_given) = marks.counted();
    let data = tie::tie(&serde_json::to_string(&data).expect(PLAIN)).into_bytes();
    Document {
        id: listed.id.clone(),
        template,
        data,
        pages,
        reading: distance::of(&listed.paperwork),
        lamination: None,
        furniture,
        no_source,
        not_given,
    }
}
