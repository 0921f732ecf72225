//! `[symptom.ID]`: a complaint, and what to test first.

use super::reader::Reader;
use super::value::{At, Sourced};

/// A line of a system's symptom index.
#[derive(Debug, Clone)]
pub struct Symptom {
    /// The complaint, in a driver's words.
    pub title: Option<At<String>>,
    /// The system whose index it stands in.
    pub system: Option<At<String>>,
    /// The checklist that leads through it.
    pub checklist: Option<At<String>>,
    /// The first tests in their order, where no checklist has them.
    pub first: Option<Vec<Sourced<String>>>,
    /// The cards to have at hand.
    pub cards: Option<Vec<At<String>>>,
}

impl Symptom {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "system"]);
        Self {
            title: reader.text("title"),
            system: reader.text("system"),
            checklist: reader.text("checklist"),
            first: reader.sourced_list("first", |text| Ok(text.to_owned())),
            cards: reader.texts("cards"),
        }
    }
}
