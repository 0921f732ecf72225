//! A checked sensor: its curve, its tolerance, its circuit, its pins.

use super::fact::Fact;
use super::pins::PinEnd;
use crate::physics::circuit::{Circuit, Converter};
use crate::physics::curve::Curve;
use crate::physics::tolerance::Tolerance;
use crate::quantity::{Dissipation, Interval, Temperature, TemperatureDifference};
use crate::spec::Topology;

/// A temperature sensor.
#[derive(Debug)]
pub struct Sensor {
    /// Its id in the specs.
    pub id: String,
    /// Its name.
    pub title: String,
    /// Its system's id.
    pub system: String,
    /// Where it sits.
    pub location: Option<String>,
    /// Resistance against temperature.
    pub curve: Curve,
    /// The table as its document gives it, where the curve is one.
    pub points: Option<Points>,
    /// How far a good part may lie from the curve, where that was given whole.
    pub tolerance: Option<Tolerance>,
    /// The temperatures it is used at.
    pub range: Interval<Temperature>,
    /// Which side of the signal pin it is on, where given.
    pub topology: Option<Topology>,
    /// How the control unit reads it, where resistor and reference were given.
    pub circuit: Option<Circuit>,
    /// The converter behind it, where given.
    pub converter: Option<Converter>,
    /// Its dissipation constant in still and in moving air.
    pub dissipation: (Option<Dissipation>, Option<Dissipation>),
    /// Its pins at the control unit.
    pub control_unit: Option<PinEnd>,
    /// Its pins at its own connector.
    pub component: Option<PinEnd>,
    /// How wrong it may read before that explains a complaint.
    pub service_limit: Option<TemperatureDifference>,
    /// What to do next, in the lead's own words.
    pub next: Vec<String>,
    /// The values behind the curve and its tolerance.
    pub curve_facts: Vec<Fact>,
    /// The values behind the volts: resistor, reference and the rest.
    pub circuit_facts: Vec<Fact>,
    /// Range, service limit and place.
    pub other_facts: Vec<Fact>,
}

/// A table as a document gives it: heads and cells as written.
#[derive(Debug, Clone)]
pub struct Points {
    /// The unit symbols of temperature and resistance.
    pub units: (&'static str, &'static str),
    /// Cells as written; two or four in a row.
    pub rows: Vec<Vec<String>>,
}
