//! The instruments that the figures of cards, sheets and tables assume.

use super::fact::Fact;
use crate::physics::refrigerant::reading::Gauge;
use crate::physics::thermocouple::Thermocouple;
use crate::quantity::{MeterRanges, Ratio, Resistance, TemperatureDifference, Toleranced};

/// A thermometer.
#[derive(Debug, Clone)]
pub struct Thermometer {
    /// What it is called.
    pub title: String,
    /// Its limit of error.
    pub limit: Option<TemperatureDifference>,
    /// The thermocouple behind it, where it is one.
    pub thermocouple: Option<Thermocouple>,
    /// Its accuracy, and its thermocouple, as written.
    pub facts: Vec<Fact>,
}

/// A multimeter.
#[derive(Debug, Clone)]
pub struct Multimeter {
    /// What it is called.
    pub title: String,
    /// Its input resistance on DC volts.
    pub input: Option<Toleranced<Resistance>>,
    /// Its ranges of DC volts.
    pub volts: Option<MeterRanges>,
    /// Its ranges of ohms.
    pub ohms: Option<MeterRanges>,
    /// What its two leads add to ohms.
    pub leads: Option<Toleranced<Resistance>>,
    /// Accuracies, input resistance and leads, as written.
    pub facts: Vec<Fact>,
}

impl Multimeter {
    /// The most that the leads add to a reading in ohms.
    ///
    /// All of it counts as a limit of error: a reading is not corrected for it.
    #[must_use]
    pub fn most_of_leads(&self) -> Option<Resistance> {
        let leads = self.leads?;
        Some(leads.limits.map_or(leads.nominal, |limits| limits.high))
    }
}

/// A pressure gauge.
#[derive(Debug, Clone)]
pub struct PressureGauge {
    /// What it is called.
    pub title: String,
    /// Class and full scale, where both were given.
    pub gauge: Option<Gauge>,
    /// Both, as written.
    pub facts: Vec<Fact>,
}

/// A hygrometer.
#[derive(Debug, Clone)]
pub struct Hygrometer {
    /// What it is called.
    pub title: String,
    /// Its limit of error, in parts of relative humidity.
    pub limit: Option<Ratio>,
    /// Its accuracy, as written.
    pub facts: Vec<Fact>,
}
