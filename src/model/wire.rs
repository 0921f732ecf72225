//! A checked run of wire.

use super::fact::Fact;
use crate::physics::wire::Run;
use crate::quantity::{Current, Interval, Resistance, Temperature, Voltage, WireSize};

/// A run of wire.
#[derive(Debug)]
pub struct Wire {
    /// Its id in the specs.
    pub id: String,
    /// What it feeds.
    pub title: String,
    /// Its system's id.
    pub system: String,
    /// The id of the switched load that it feeds or grounds.
    pub driver: Option<String>,
    /// The conductor's size.
    pub size: WireSize,
    /// The nominal resistance of one metre of solid copper of this size at 20 °C.
    pub nominal: Resistance,
    /// The greatest resistance of one metre at 20 °C, where size and class are
    /// the cable standard's.
    pub greatest: Option<Resistance>,
    /// How long it is, where length and conductors are given.
    pub run: Option<Run>,
    /// The current that flows, where given.
    pub current: Option<Current>,
    /// How cold and how hot it gets, where given.
    pub temperature: Option<Interval<Temperature>>,
    /// The most that may be lost along it, where given.
    pub drop_limit: Option<Voltage>,
    /// The values behind its figures.
    pub facts: Vec<Fact>,
}
