//! The instruments that a card's volts and a sheet's windows assume.

use super::fact::Fact;
use crate::quantity::{Accuracy, Resistance, TemperatureDifference, Toleranced};

/// A thermometer.
#[derive(Debug, Clone)]
pub struct Thermometer {
    /// What it is called.
    pub title: String,
    /// Its limit of error.
    pub limit: Option<TemperatureDifference>,
    /// Its accuracy, as written.
    pub facts: Vec<Fact>,
}

/// A multimeter.
#[derive(Debug, Clone)]
pub struct Multimeter {
    /// What it is called.
    pub title: String,
    /// Its input resistance on DC volts.
    pub input: Option<Toleranced<Resistance>>,
    /// Accuracy and value of a digit on DC volts, in volts.
    pub volts: Option<(Accuracy, f64)>,
    /// Accuracy and value of a digit on ohms, in ohms.
    pub ohms: Option<(Accuracy, f64)>,
    /// Accuracies and input resistance, as written.
    pub facts: Vec<Fact>,
}
