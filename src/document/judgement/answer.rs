//! The question and the answer, as programs read it.

use serde::Serialize;

use super::pair;
use crate::model::Fact;
use crate::physics::decision::{Decision, Rule};
use crate::physics::uncertainty::Source;
use crate::quantity::{Interval, Resistance, Temperature, TemperatureDifference, Voltage};

/// A reading as a meter shows it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Reading {
    /// Volts.
    Volts(Voltage),
    /// Ohms; infinite where the meter shows an open line.
    Ohms(Resistance),
}

/// Where it was taken.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Place {
    /// At the control unit's connector.
    ControlUnit,
    /// At the sensor's own plug.
    Sensor,
    /// At the harness side of the sensor's plug, sensor unplugged.
    Unplugged,
}

/// What is asked.
#[derive(Debug, Clone, Copy)]
pub struct Ask<'a> {
    /// The sensor.
    pub id: &'a str,
    /// What the meter shows.
    pub reading: Reading,
    /// The temperature of the sensor.
    pub at: Temperature,
    /// A second reading at another temperature, at the same place.
    pub second: Option<(Reading, Temperature)>,
    /// Where both were taken, where not the usual place: volts at the unit, ohms at the sensor.
    pub place: Option<Place>,
    /// The instruments, where not those of the sensor's sheet or card.
    pub instruments: &'a [String],
}

/// The answer, for programs; [`lines`](super::lines) tells it to people.
#[derive(Debug, Clone, Serialize)]
pub struct Judgement {
    /// `pass`, `fail` or `undecided`.
    pub verdict: &'static str,
    /// The lower limit of a good sensor in a good circuit, in `unit`.
    pub limit_low: f64,
    /// The upper limit.
    pub limit_high: f64,
    /// The guard band w to either side of a limit, in `unit`.
    pub guard: f64,
    /// `V` or `Ω`.
    pub unit: &'static str,
    /// The expanded uncertainty of a reading there, k = 2, in `unit`; null where the meter's
    /// accuracy is not given.
    pub uncertainty: Option<f64>,
    /// The probability that the verdict is wrong; null where it is undecided.
    pub risk: Option<f64>,
    /// The verdict against the service limit: whether the sensor is off by as much
    /// as explains a complaint; null where no service limit is given.
    pub service_verdict: Option<&'static str>,
    /// What the control unit believes; null where no temperature gives that reading.
    pub believed_temperature_c: Option<f64>,
    /// Every single fault that explains the reading.
    pub causes: Vec<Explained>,
    /// Where undecided: the cheapest single change that would decide.
    pub remedy: Option<String>,
    /// What to do next.
    pub next: String,
    /// What each suspect would read there.
    pub next_readings: Vec<Expected>,
    /// Two faults that give both readings, where a second one was given.
    pub pairs: Vec<pair::Told>,
    /// The third temperature that would tell the pairs apart.
    pub third: Option<String>,
    #[serde(skip)]
    pub(super) about: About,
}

/// A fault that explains the reading.
#[derive(Debug, Clone, Serialize)]
pub struct Explained {
    /// Its key.
    pub fault: &'static str,
    /// The least size that explains the reading; null where it has none, or no bound.
    pub size_low: Option<f64>,
    /// The greatest size.
    pub size_high: Option<f64>,
    /// The unit of the sizes.
    pub unit: Option<&'static str>,
    /// Whether the sizes reach one at which nothing is wrong.
    pub includes_none: bool,
    /// The other part's id, where the fault is one.
    pub part: Option<String>,
    #[serde(skip)]
    pub(super) told: String,
}

/// What a suspect would read at the next place.
#[derive(Debug, Clone, Serialize)]
pub struct Expected {
    /// Its key; `none` is a good sensor.
    pub fault: &'static str,
    /// The least it would read; null for an open line.
    pub low: Option<f64>,
    /// The greatest.
    pub high: Option<f64>,
    /// The unit.
    pub unit: &'static str,
    #[serde(skip)]
    pub(super) range: String,
    #[serde(skip)]
    pub(super) told: String,
}

/// What only people are told.
#[derive(Debug, Clone)]
pub(super) struct About {
    pub(super) title: String,
    pub(super) reading: String,
    pub(super) decision: Decision,
    pub(super) rule: Rule,
    pub(super) instruments: String,
    pub(super) passing: Interval<f64>,
    pub(super) service: Option<(TemperatureDifference, Interval<f64>)>,
    pub(super) formulas: Vec<String>,
    pub(super) left_out: Vec<Source>,
    pub(super) not_compared: Vec<String>,
    pub(super) steps: Vec<String>,
    pub(super) inputs: Vec<Fact>,
}
