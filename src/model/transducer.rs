//! A checked pressure transducer.

use super::fact::Fact;
use super::pins::RolePin;
use crate::physics::transducer::{Sense, Transducer as Line};
use crate::quantity::{Toleranced, Voltage};

/// A ratiometric pressure transducer.
#[derive(Debug)]
pub struct Transducer {
    /// Its id in the specs.
    pub id: String,
    /// Its name.
    pub title: String,
    /// Its system's id.
    pub system: String,
    /// Where it sits.
    pub location: Option<String>,
    /// What its pressures are measured against.
    pub sense: Sense,
    /// Its line, where both points were given.
    pub line: Option<Line>,
    /// Its reference, its own or the system's.
    pub reference: Option<Toleranced<Voltage>>,
    /// Its pins.
    pub pins: Vec<RolePin>,
    /// What to do next, in the lead's own words.
    pub next: Vec<String>,
    /// The values behind its figures.
    pub facts: Vec<Fact>,
}
