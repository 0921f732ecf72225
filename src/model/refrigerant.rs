//! A checked refrigerant: which it is, and what its pressures are read with.

use super::fact::Fact;
use super::instrument::{PressureGauge, Thermometer};
use crate::physics::refrigerant::Refrigerant as Fluid;
use crate::quantity::{Interval, Step, Temperature, TemperatureDifference, Unit};

/// A refrigerant in a system.
#[derive(Debug)]
pub struct Refrigerant {
    /// Its id in the specs.
    pub id: String,
    /// What its table is called.
    pub title: String,
    /// Its system's id.
    pub system: String,
    /// Which refrigerant it is.
    pub fluid: Fluid,
    /// The temperatures its table covers.
    pub range: Interval<Temperature>,
    /// From row to row, where given.
    pub step: Option<Step>,
    /// The units that the shop's gauges show.
    pub units: Vec<Unit>,
    /// The gauge on the suction side.
    pub low_gauge: Option<PressureGauge>,
    /// The gauge on the discharge side.
    pub high_gauge: Option<PressureGauge>,
    /// The thermometer on the lines.
    pub thermometer: Option<Thermometer>,
    /// How far the suction line may be above saturation.
    pub superheat: Option<Interval<TemperatureDifference>>,
    /// How far the liquid line may be below saturation.
    pub subcooling: Option<Interval<TemperatureDifference>>,
    /// How far off saturation a soaked system at rest still counts as saturated.
    pub at_rest: Option<TemperatureDifference>,
    /// The values behind all of it.
    pub facts: Vec<Fact>,
}
