//! `[vehicle.ID]`: one vehicle of the fleet.

use super::reader::Reader;
use super::value::At;

/// A vehicle.
#[derive(Debug, Clone)]
pub struct Vehicle {
    /// What the shop calls it, such as "Ambulance 12".
    pub title: Option<At<String>>,
    /// The climate system fitted.
    pub system: Option<At<String>>,
    /// The registration mark.
    pub registration: Option<At<String>>,
    /// The chassis number.
    pub chassis: Option<At<String>>,
    /// When it was built.
    pub built: Option<At<String>>,
}

impl Vehicle {
    /// Whether the system of this id is fitted.
    #[must_use]
    pub fn has(&self, system: &str) -> bool {
        self.system.as_ref().is_some_and(|fitted| fitted.value == system)
    }

    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "system"]);
        Self {
            title: reader.text("title"),
            system: reader.text("system"),
            registration: reader.text("registration"),
            chassis: reader.text("chassis"),
            built: reader.text("built"),
        }
    }
}
