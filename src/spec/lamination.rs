//! `[shop.lamination]`: what becomes of a printed card.

use super::reader::Reader;
use super::value::{At, Sourced};
use crate::quantity::{Length, scalar};

/// How a shop laminates its cards.
#[derive(Debug, Clone)]
pub struct Lamination {
    /// Film around the card, sealed to film.
    pub seal: Option<Sourced<Length>>,
    /// Border of the card in which nothing is printed.
    pub quiet: Option<Sourced<Length>>,
    /// Radius of its corners.
    pub corner: Option<Sourced<Length>>,
    /// Holes through it.
    pub punches: Vec<Punch>,
}

/// A hole through a card.
#[derive(Debug, Clone)]
pub struct Punch {
    /// Where it is, as the front of the card is seen.
    pub place: Option<At<Place>>,
    /// How wide it is.
    pub diameter: Option<Sourced<Length>>,
    /// From the card's edge to its centre.
    pub inset: Option<Sourced<Length>>,
}

/// Where a hole is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[expect(missing_docs, reason = "each says it all")]
pub enum Place {
    Top,
    Bottom,
    Left,
    Right,
    TopLeft,
    TopRight,
    BottomLeft,
    BottomRight,
}

/// As a spec names them.
const PLACES: &[(&str, Place)] = &[
    ("top", Place::Top),
    ("bottom", Place::Bottom),
    ("left", Place::Left),
    ("right", Place::Right),
    ("top left", Place::TopLeft),
    ("top right", Place::TopRight),
    ("bottom left", Place::BottomLeft),
    ("bottom right", Place::BottomRight),
];

impl Place {
    /// The id of its word.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Top => "place-top",
            Self::Bottom => "place-bottom",
            Self::Left => "place-left",
            Self::Right => "place-right",
            Self::TopLeft => "place-top-left",
            Self::TopRight => "place-top-right",
            Self::BottomLeft => "place-bottom-left",
            Self::BottomRight => "place-bottom-right",
        }
    }
}

impl Lamination {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        let lamination = Self {
            seal: reader.sourced("seal", scalar),
            quiet: reader.sourced("quiet", scalar),
            corner: reader.sourced("corner", scalar),
            punches: reader.one_or_more("punch").iter().map(Punch::read).collect(),
        };
        reader.finish();
        lamination
    }
}

impl Punch {
    fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["place", "diameter", "inset"]);
        let punch = Self {
            place: reader.choice("place", PLACES),
            diameter: reader.sourced("diameter", scalar),
            inset: reader.sourced("inset", scalar),
        };
        reader.finish();
        punch
    }
}
