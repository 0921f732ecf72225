//! Which documents a set makes, in which order, under which ids.

use super::index;
use crate::model::Model;
use crate::spec::{About, PaperKind};

/// One document of the set, not yet composed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Listed {
    /// Its id: the card's own, or `SHEET.VEHICLE`.
    pub id: String,
    /// The id of the card or sheet in the specs.
    pub spec: String,
    /// Which kind of paper it is.
    pub paperwork: Paperwork,
}

/// The kinds of paper.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Paperwork {
    /// A laminated card about one thing.
    Card(About),
    /// A sensor's card to be read from across the bay, on the shop's paper.
    WallCard,
    /// The strip table of a sensor alone.
    StripCard,
    /// A sheet to fill in for one vehicle.
    TestSheet {
        /// The vehicle's id.
        vehicle: String,
    },
    /// What was found and done on one vehicle.
    Report {
        /// The vehicle's id.
        vehicle: String,
    },
    /// Questions from a symptom to a named ending.
    Checklist,
    /// From complaints of a system to checklists and first tests.
    SymptomIndex,
    /// All documents of the set.
    Index,
    /// Every number of a card with what it was rounded from.
    Proof(About),
}

impl Paperwork {
    /// Its kind.
    #[must_use]
    pub fn kind(&self) -> PaperKind {
        match self {
            Self::Card(about) => PaperKind::Card(*about),
            Self::WallCard => PaperKind::Wall,
            Self::StripCard => PaperKind::Strip,
            Self::TestSheet { .. } => PaperKind::Sheet,
            Self::Report { .. } => PaperKind::Report,
            Self::Checklist => PaperKind::Checklist,
            Self::SymptomIndex => PaperKind::Symptoms,
            Self::Index => PaperKind::Index,
            Self::Proof(_) => PaperKind::Proof,
        }
    }

    /// The vehicle that it is for, where it is a paper of one.
    #[must_use]
    pub fn vehicle(&self) -> Option<&str> {
        match self {
            Self::TestSheet { vehicle } | Self::Report { vehicle } => Some(vehicle),
            _ => None,
        }
    }

    /// Whether it is made from checklists, or from the complaints that lead to them.
    #[must_use]
    pub fn is_from_checklists(&self) -> bool {
        matches!(self, Self::Checklist | Self::SymptomIndex | Self::Index | Self::Proof(_))
    }

    /// Whether it is a card of its own.
    #[must_use]
    pub fn is_card(&self) -> bool {
        matches!(self, Self::Card(_) | Self::WallCard | Self::StripCard)
    }
}

/// Every document of the set: cards first, then sheets, checklists, symptom indexes, each by id; last
/// the index of them all.
#[must_use]
pub fn list(model: &Model) -> Vec<Listed> {
    let cards = model.cards.values().map(|card| Listed {
        id: card.id.clone(),
        spec: card.id.clone(),
        paperwork: match (card.on_a_wall, card.strip) {
            (true, _) => Paperwork::WallCard,
            (false, Some(_)) => Paperwork::StripCard,
            (false, None) => Paperwork::Card(card.about),
        },
    });
    let sheets = model.sheets.values().flat_map(|sheet| {
        sheet.vehicles.iter().map(|vehicle| Listed {
            // A full stop joins the two because no id can hold one.
            id: format!("{}.{vehicle}", sheet.id),
            spec: sheet.id.clone(),
            paperwork: Paperwork::TestSheet { vehicle: vehicle.clone() },
        })
    });
    let reports = model.reports.values().flat_map(|report| {
        let vehicles = model.sheets.get(&report.sheet).map(|sheet| &sheet.vehicles[..]).unwrap_or_default();
        vehicles.iter().map(|vehicle| Listed {
            id: format!("{}.{vehicle}", report.id),
            spec: report.id.clone(),
            paperwork: Paperwork::Report { vehicle: vehicle.clone() },
        })
    });
    let checklists = model.checklists.keys().map(|id| Listed {
        id: id.clone(),
        spec: id.clone(),
        paperwork: Paperwork::Checklist,
    });
    let indexes = super::symptoms::indexed(model).map(|(system, id)| Listed {
        id,
        spec: system.to_owned(),
        paperwork: Paperwork::SymptomIndex,
    });
    let all = Listed { id: index::ID.to_owned(), spec: index::ID.to_owned(), paperwork: Paperwork::Index };
    let mut listed: Vec<Listed> =
        cards.chain(sheets).chain(reports).chain(checklists).chain(indexes).collect();
    // One document needs no index.
    if listed.len() > 1 {
        listed.push(all);
    }
    listed
}

impl Listed {
    /// Whether a name on the command line means this document: its own id, its
    /// card's or sheet's, or its vehicle's.
    #[must_use]
    pub fn is_meant_by(&self, name: &str) -> bool {
        self.id == name || self.spec == name || self.paperwork.vehicle() == Some(name)
    }
}
