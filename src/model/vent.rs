//! Checked data of what leaves the outlets.

use super::fact::Fact;
use super::instrument::{Hygrometer, Thermometer};
use crate::physics::air::vent::Cooling;
use crate::quantity::{Interval, Ratio, Step, Temperature};

/// What leaves the outlets for a stated duty.
#[derive(Debug)]
pub struct Vent {
    /// Its id in the specs.
    pub id: String,
    /// What its table is called.
    pub title: String,
    /// Its system's id.
    pub system: String,
    /// The duty, and how humid the air leaves.
    pub cooling: Cooling,
    /// The temperatures of the outside air, and the step between them.
    pub ambient: (Interval<Temperature>, Step),
    /// Its relative humidities, and the step between them.
    pub humidity: (Interval<Ratio>, Ratio),
    /// The temperatures that the evaporator is held between.
    pub evaporator: Option<Interval<Temperature>>,
    /// The cabin air, where it was given whole.
    pub cabin: Option<CabinAir>,
    /// The thermometer that the airs are measured with.
    pub thermometer: Option<Thermometer>,
    /// The hygrometer that they are measured with.
    pub hygrometer: Option<Hygrometer>,
    /// The positions of the intake door.
    pub positions: Vec<Position>,
    /// The values behind all of it.
    pub facts: Vec<Fact>,
}

/// The air that comes back from the cabin.
#[derive(Debug, Clone, Copy)]
pub struct CabinAir {
    /// Its temperature.
    pub dry_bulb: Temperature,
    /// Its relative humidity.
    pub humidity: Ratio,
}

/// A position of the intake door.
#[derive(Debug, Clone)]
pub struct Position {
    /// What the shop calls it.
    pub name: String,
    /// The share of outside air, by mass.
    pub outside: Ratio,
}

/// The most rows that a vent table may have.
pub const MOST_ROWS: f64 = 1_000.0;

/// How many values there are from one end to the other, a step apart and both ends among
/// them; the step is above zero, and the last one may be shorter.
#[must_use]
pub fn steps(low: f64, high: f64, step: f64) -> f64 {
    let hair = 1e-9;
    ((high - low) / step - hair).max(0.0).ceil() + 1.0
}
