//! The kinds of paper, by the keys of `[shop.sizes]`.

use super::card::About;

/// A kind of paper.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum PaperKind {
    /// A card about one thing.
    Card(About),
    /// A sensor's card that is read from across the bay.
    Wall,
    /// A sensor's strip table alone.
    Strip,
    /// A sheet to fill in for one vehicle.
    Sheet,
    /// What was found and done on one vehicle.
    Report,
    /// Questions from a symptom to a named ending.
    Checklist,
    /// From complaints to checklists.
    Symptoms,
    /// All documents of the set.
    Index,
    /// Every number of a card with what it was rounded from.
    Proof,
}

impl PaperKind {
    /// Every one, with its key and the word for it.
    pub const ALL: &[(&str, Self, &str)] = &[
        ("sensor", Self::Card(About::Sensor), "doc-sensor-card"),
        ("strip", Self::Strip, "doc-strip-card"),
        ("wall", Self::Wall, "doc-wall-card"),
        ("light", Self::Card(About::Light), "doc-light-card"),
        ("transducer", Self::Card(About::Transducer), "doc-transducer-card"),
        ("connector", Self::Card(About::Connector), "doc-connector-card"),
        ("actuator", Self::Card(About::Actuator), "doc-actuator-card"),
        ("driver", Self::Card(About::Driver), "doc-driver-card"),
        ("panel", Self::Card(About::Panel), "doc-mode-card"),
        ("request", Self::Card(About::Request), "doc-request-card"),
        ("air", Self::Card(About::Air), "doc-air-card"),
        ("system", Self::Card(About::System), "doc-system-card"),
        ("sheet", Self::Sheet, "doc-test-sheet"),
        ("report", Self::Report, "doc-report"),
        ("checklist", Self::Checklist, "doc-checklist"),
        ("symptoms", Self::Symptoms, "doc-symptoms"),
        ("index", Self::Index, "doc-index"),
        ("proof", Self::Proof, "doc-proof"),
    ];

    /// The word for it.
    #[must_use]
    pub fn word(self) -> &'static str {
        Self::ALL.iter().find(|(_, kind, _)| *kind == self).map_or("", |(.., word)| word)
    }
}
