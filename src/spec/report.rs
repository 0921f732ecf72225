//! `[report.ID]`: what was found and done on one vehicle, filled in by hand.

use super::reader::Reader;
use super::value::At;

/// A result report, printed for every vehicle of its sheet.
#[derive(Debug, Clone)]
pub struct Report {
    /// What it reports on.
    pub title: Option<At<String>>,
    /// The sheet whose windows it carries.
    pub sheet: Option<At<String>>,
    /// The tests whose readings are its evidence; three at most, lines are left for the others.
    pub evidence: Vec<At<String>>,
}

impl Report {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "sheet"]);
        Self {
            title: reader.text("title"),
            sheet: reader.text("sheet"),
            evidence: reader.texts("evidence").unwrap_or_default(),
        }
    }
}
