//! The instruments that a card's volts and a sheet's windows assume.

use super::fact::Fact;
use crate::quantity::{Resistance, Toleranced};

/// A thermometer.
#[derive(Debug, Clone)]
pub struct Thermometer {
    /// What it is called.
    pub title: String,
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
    /// Accuracies and input resistance, as written.
    pub facts: Vec<Fact>,
}
