//! `[control.ID]`: a control point, which a panel mode forces to one of its values.

use super::reader::Reader;
use super::value::{At, Sourced};

/// A control point.
#[derive(Debug, Clone)]
pub struct Control {
    /// What it is called, such as "Intake door".
    pub title: Option<At<String>>,
    /// The system it belongs to.
    pub system: Option<At<String>>,
    /// Its values, in the lead's own words.
    pub values: Option<Vec<At<String>>>,
    /// How its value can be seen.
    pub observe: Option<Sourced<String>>,
    /// Where its values come from.
    pub source: Option<String>,
}

impl Control {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "system", "values"]);
        Self {
            title: reader.text("title"),
            system: reader.text("system"),
            values: reader.all_texts("values"),
            observe: reader.sourced_text("observe"),
            source: reader.source(),
        }
    }
}
