//! `[panel.ID]`: a panel's set-point scales, each kept as given.

use super::reader::Reader;
use super::value::{At, Sourced};
use crate::quantity::{SetPoints, Unit, set_points};

/// A panel.
#[derive(Debug, Clone)]
pub struct Panel {
    /// What it is called.
    pub title: Option<At<String>>,
    /// The system whose panel it is.
    pub system: Option<At<String>>,
    /// The scale it shows in °C.
    pub celsius: Option<Sourced<SetPoints>>,
    /// The scale it shows in °F.
    pub fahrenheit: Option<Sourced<SetPoints>>,
    /// What the lower end means, such as "coldest": it is no temperature.
    pub low_mark: Option<Sourced<String>>,
    /// What the upper end means, such as "hottest".
    pub high_mark: Option<Sourced<String>>,
    /// Whether its document says that the two scales are no conversions of each other.
    pub separate: Option<Sourced<bool>>,
}

impl Panel {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "system"]);
        // A panel may have one scale only, but not none.
        if !reader.has("fahrenheit") {
            reader.require(&["celsius"]);
        }
        Self {
            title: reader.text("title"),
            system: reader.text("system"),
            celsius: reader.sourced("celsius", |text| set_points(text, Unit::Celsius)),
            fahrenheit: reader.sourced("fahrenheit", |text| set_points(text, Unit::Fahrenheit)),
            low_mark: reader.sourced_text("low_mark"),
            high_mark: reader.sourced_text("high_mark"),
            separate: reader.flag("separate"),
        }
    }
}
