//! What is to be printed: cards and sheets with their links resolved.

use super::instrument::{Multimeter, Thermometer};
use crate::quantity::{Interval, Temperature, TemperatureDifference};
use crate::spec::{Measure, Spot};

/// A sensor card.
#[derive(Debug)]
pub struct Card {
    /// Its id, which is also its file name.
    pub id: String,
    /// The sensor's id.
    pub sensor: String,
    /// The multimeter whose loading the volts include.
    pub meter: Option<Multimeter>,
    /// The step of the strip table, where the lead chose it.
    pub step: Option<TemperatureDifference>,
    /// The temperatures of the strip table.
    pub range: Interval<Temperature>,
    /// The temperature of the worked example, where the lead chose it.
    pub example: Option<Temperature>,
}

/// A test sheet, printed once per vehicle.
#[derive(Debug)]
pub struct Sheet {
    /// Its id.
    pub id: String,
    /// What it tests.
    pub title: String,
    /// The system's id.
    pub system: String,
    /// The vehicles it is printed for.
    pub vehicles: Vec<String>,
    /// The thermometer for the bay temperature.
    pub thermometer: Option<Thermometer>,
    /// The multimeter for the readings.
    pub meter: Option<Multimeter>,
    /// Groups of tests that share a state.
    pub groups: Vec<Group>,
}

/// Tests that share a state.
#[derive(Debug)]
pub struct Group {
    /// Its head.
    pub title: String,
    /// Key, engine, blower.
    pub state: String,
    /// What is measured.
    pub measure: Measure,
    /// At which end of the wires.
    pub place: Spot,
    /// The tests.
    pub rows: Vec<Row>,
}

/// One test.
#[derive(Debug)]
pub struct Row {
    /// The sensor's id.
    pub sensor: String,
    /// What to mind while measuring.
    pub note: Option<String>,
    /// The card that has this sensor's strip table, where there is one.
    pub card: Option<String>,
}
