//! A checked door actuator: feedback, stops, contacts, motor.

use super::fact::Fact;
use super::pins::{PartEnd, RolePin};
use crate::physics::contacts::TruthTable;
use crate::physics::ladder::Ladder;
use crate::physics::potentiometer::Feedback;
use crate::quantity::{Current, Duration, Interval, Ratio, Resistance, Toleranced, Voltage};

/// A door actuator.
#[derive(Debug)]
pub struct Actuator {
    /// Its id in the specs.
    pub id: String,
    /// Its name.
    pub title: String,
    /// Its system's id.
    pub system: String,
    /// Where in the vehicle it sits.
    pub location: Option<String>,
    /// What it moves.
    pub moves: Option<String>,
    /// The reference of its feedback, its own or the system's.
    pub reference: Option<Toleranced<Voltage>>,
    /// Its feedback potentiometer, where track and reference were given.
    pub feedback: Option<Feedback>,
    /// Its end stops, where both windows were given.
    pub stops: Option<Stops>,
    /// What a good sweep does.
    pub sweep: Sweep,
    /// The motor's current while it runs free.
    pub motor_current: Option<Interval<Current>>,
    /// The motor's current while something holds it.
    pub stall_current: Option<Interval<Current>>,
    /// Whether a fused lead may feed the motor; never where this was not given.
    pub plain_dc: Option<bool>,
    /// Position contacts on a wire each.
    pub contacts: Option<Contacts>,
    /// Position contacts coded by resistors, where pull-up and reference were given.
    pub ladder: Option<PositionLadder>,
    /// Its pins at the control unit, connector by connector.
    pub unit_ends: Vec<PartEnd>,
    /// The pins at its own plug.
    pub own_ends: Vec<PartEnd>,
    /// How the control unit learns the stops again.
    pub recalibration: Option<String>,
    /// What to do next, in the lead's own words.
    pub next: Vec<String>,
    /// The values behind its figures.
    pub facts: Vec<Fact>,
}

impl Actuator {
    /// Its pins at the control unit.
    pub fn unit_pins(&self) -> impl Iterator<Item = &RolePin> {
        self.unit_ends.iter().flat_map(|end| &end.pins)
    }

    /// Its pins at both ends.
    pub fn pins(&self) -> impl Iterator<Item = &RolePin> {
        self.unit_pins().chain(self.own_ends.iter().flat_map(|end| &end.pins))
    }
}

/// The two end stops.
#[derive(Debug, Clone)]
pub struct Stops {
    /// The one at 0 %.
    pub low: Stop,
    /// The one at 100 %.
    pub high: Stop,
}

/// One end stop.
#[derive(Debug, Clone)]
pub struct Stop {
    /// What the door is there.
    pub name: Option<String>,
    /// The window of V/Vref.
    pub window: Interval<Ratio>,
    /// The nominal V/Vref, where the document has one.
    pub nominal: Option<Ratio>,
}

/// What a good sweep does; shares are parts of the travel.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sweep {
    /// The longest time from end to end.
    pub time: Option<Duration>,
    /// The largest step.
    pub step: Option<Ratio>,
    /// The largest commanded travel without a change.
    pub dead_band: Option<Ratio>,
    /// The largest difference between the two directions.
    pub hysteresis: Option<Ratio>,
}

/// Position contacts on a wire each.
#[derive(Debug, Clone)]
pub struct Contacts {
    /// Their names, in the order of the codes.
    pub names: Vec<String>,
    /// The greatest resistance of a closed contact.
    pub closed: Option<Resistance>,
    /// The positions' names in the order of travel.
    pub positions: Vec<String>,
    /// Their codes.
    pub table: TruthTable,
}

/// Position contacts coded by resistors on one wire.
#[derive(Debug, Clone)]
pub struct PositionLadder {
    /// The resistors.
    pub ladder: Ladder,
    /// Each position's name and closed contacts, in the order of travel.
    pub positions: Vec<(String, Vec<bool>)>,
}
