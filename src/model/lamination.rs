//! What becomes of a printed card: sealed into a pouch, its corners rounded, punched.

use crate::quantity::Length;
pub use crate::spec::Place;

/// How a shop laminates its cards.
#[derive(Debug, Clone, PartialEq)]
pub struct Lamination {
    /// Film around the card, sealed to film.
    pub seal: Length,
    /// Nothing is printed this near to the card's edge.
    pub quiet: Length,
    /// Radius of the card's corners, where they are rounded.
    pub corner: Option<Length>,
    /// Holes through the card.
    pub punches: Vec<Punch>,
}

/// A hole to hang the card up by.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Punch {
    /// Where it is, as the front of the card is seen.
    pub place: Place,
    /// How wide it is.
    pub diameter: Length,
    /// From the card's edge to its centre.
    pub inset: Length,
}

impl Punch {
    /// Its centre on a page of this size, mm from the left and from the top; on a card's
    /// back left and right are changed over.
    #[must_use]
    pub fn centre(&self, (width, height): (f64, f64), on_back: bool) -> (f64, f64) {
        let inset = self.inset.millimetres();
        let across = match self.place {
            Place::Left | Place::TopLeft | Place::BottomLeft => inset,
            Place::Right | Place::TopRight | Place::BottomRight => width - inset,
            Place::Top | Place::Bottom => width / 2.0,
        };
        let down = match self.place {
            Place::Top | Place::TopLeft | Place::TopRight => inset,
            Place::Bottom | Place::BottomLeft | Place::BottomRight => height - inset,
            Place::Left | Place::Right => height / 2.0,
        };
        (if on_back { width - across } else { across }, down)
    }
}
