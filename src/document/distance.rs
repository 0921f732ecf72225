//! From how far away each kind of paper is read, and which of its parts from farther.
//!
//! A template marks a part by its name (`templates/parts/part.typ`); whatever it does not
//! mark is read from the kind's own distance. `typeset` refuses what is too small for it.

use super::list::Paperwork;
use crate::spec::About;

/// Where the reader's eyes are.
///
/// # Source
/// Common practice, no source, as far as the millimetres go; what they ask of a
/// character's height is in `typeset`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Distance {
    /// The paper is in the hand.
    Hand,
    /// It lies on the bench or the wing while both hands hold probes.
    Bench,
    /// It hangs or lies at arm's length.
    Arm,
    /// It hangs on a wall across the bay.
    Wall,
}

impl Distance {
    /// In millimetres.
    #[must_use]
    pub fn millimetres(self) -> f64 {
        match self {
            Self::Hand => 400.0,
            Self::Bench => 500.0,
            Self::Arm => 600.0,
            Self::Wall => 2000.0,
        }
    }
}

/// From where a kind of paper is read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Reading {
    /// All that is not marked as a part.
    pub rest: Distance,
    /// Parts by the name that the template marks them with. Each must be there.
    pub parts: &'static [(&'static str, Distance)],
}

/// Parts that every page may have: the lines under the title band, and the foot. Whoever
/// asks which revision this is takes the paper into the hand.
pub const ASKED_FOR: [(&str, Distance); 2] = [("head", Distance::Hand), ("foot", Distance::Hand)];

/// Papers to work with at the bench or in the hand, found by their titles.
const IN_HAND: Reading = Reading { rest: Distance::Hand, parts: &[("title", Distance::Arm)] };

/// From where a kind is read. A new kind does not compile without a line here.
pub(super) fn of(paperwork: &Paperwork) -> Reading {
    match paperwork {
        Paperwork::Card(About::Sensor) => Reading {
            rest: Distance::Hand,
            parts: &[("title", Distance::Arm), ("figures", Distance::Arm), ("strip", Distance::Bench)],
        },
        Paperwork::StripCard => {
            Reading { rest: Distance::Hand, parts: &[("title", Distance::Arm), ("strip", Distance::Bench)] }
        }
        // The back is for whoever takes it off the wall.
        Paperwork::WallCard => Reading {
            rest: Distance::Hand,
            parts: &[("title", Distance::Wall), ("figures", Distance::Wall), ("strip", Distance::Arm)],
        },
        Paperwork::Card(About::Actuator | About::Driver | About::Light | About::Transducer) => {
            Reading { rest: Distance::Hand, parts: &[("title", Distance::Arm), ("figures", Distance::Arm)] }
        }
        Paperwork::Card(About::Connector | About::System | About::Panel | About::Request | About::Air)
        | Paperwork::TestSheet { .. }
        | Paperwork::Report { .. }
        | Paperwork::Checklist
        | Paperwork::SymptomIndex
        | Paperwork::Index
        | Paperwork::Proof(_) => IN_HAND,
    }
}
