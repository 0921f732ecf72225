//! How a strip table is planned for its paper: how many rows a side holds, how many sides
//! there are, and which step follows from them.
//!
//! The template decides what fits; `tests/pages` typesets cards with as many rows as this
//! says and sees that they have the sides foreseen.

use super::{Context, Listed, Paperwork};
use crate::quantity::{Format, Size, Step};

/// What is tried in place of what the specs say, to find out what would fit.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Trial {
    /// The step of a strip table.
    pub step: Option<Step>,
    /// The sides of a strip card.
    pub sides: Option<usize>,
}

/// What the composing of a strip table has to know of its paper.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Plan {
    /// The step, where it is not to be chosen.
    pub step: Option<Step>,
    /// How many rows there is room for.
    pub rows: usize,
    /// How many sides a strip card may have; 0 for any number.
    pub sides: usize,
    /// Whether the slope has a column: there is none on a narrow paper.
    pub slope: bool,
}

/// Rows of the strip that fit the front of a card at the legible size, or a side of their own.
fn rows_of_card(size: Size) -> usize {
    match (size.format, size.landscape) {
        (Format::A5 | Format::HalfLetter, true) => 22,
        (Format::A6 | Format::FourBySix | Format::HundredBy150, false) => 23,
        (Format::A6 | Format::FourBySix | Format::HundredBy150, true) => 12,
        _ => 26,
    }
}

/// Rows that fit the first side of a strip card, and each further one.
fn rows_of_strip(size: Size) -> (usize, usize) {
    match (size.format, size.landscape) {
        (Format::A4 | Format::Letter, false) => (58, 64),
        (Format::A4 | Format::Letter, true) => (36, 40),
        (Format::A5 | Format::HalfLetter, false) => (35, 44),
        (Format::A5, true) => (17, 23),
        (Format::HalfLetter, true) => (15, 21),
        (Format::A6 | Format::FourBySix | Format::HundredBy150, false) => (10, 22),
        (Format::A6 | Format::FourBySix | Format::HundredBy150, true) => (6, 12),
    }
}

impl Context<'_> {
    /// The plan of a card with a strip table.
    pub(super) fn plan(&self, listed: &Listed) -> Plan {
        let size = self.size_of(listed);
        let card = self.model.cards.get(&listed.spec);
        let step = self.trial.step.or_else(|| card?.step);
        if listed.paperwork != Paperwork::StripCard {
            return Plan { step, rows: rows_of_card(size), sides: 0, slope: !is_small(size) };
        }
        let sides = self.trial.sides.or_else(|| card?.strip).unwrap_or(1);
        let (first, further) = rows_of_strip(size);
        Plan { step, rows: first + (sides - 1) * further, sides, slope: false }
    }
}

/// Whether a size is smaller than half a letter or an A4.
pub(super) fn is_small(size: Size) -> bool {
    matches!(size.format, Format::A6 | Format::FourBySix | Format::HundredBy150)
}
