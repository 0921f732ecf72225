//! What is to be printed: cards and sheets with their links resolved.

use super::fact::Fact;
use super::instrument::{Multimeter, Thermometer};
use super::sensor::Sensor;
use crate::quantity::{Interval, Size, Step, Temperature};
use crate::spec::{About, Measure, Spot, Surface, View};

/// A card about one thing.
#[derive(Debug)]
pub struct Card {
    /// Its id, which is also its file name.
    pub id: String,
    /// What kind of thing it is about.
    pub about: About,
    /// The id of that thing.
    pub thing: String,
    /// The multimeter whose loading the volts include.
    pub meter: Option<Multimeter>,
    /// The step of the strip table, where the lead chose it.
    pub step: Option<Step>,
    /// The temperatures of the strip table, where the lead chose them.
    pub range: Option<Interval<Temperature>>,
    /// The temperature of the worked example, where the lead chose it.
    pub example: Option<Temperature>,
    /// Whether it hangs on a wall and is read from across the bay.
    pub on_a_wall: bool,
    /// The temperature of the sensors on its connector, as written.
    pub at: (Option<Temperature>, Fact),
    /// From where its connector is drawn, where the lead chose that.
    pub view: Option<View>,
    /// The size it is printed in, where the lead chose that.
    pub size: Option<Size>,
    /// How many sides its strip table may take, where it is that table alone.
    pub strip: Option<usize>,
}

impl Card {
    /// The id of its thing, where that is of this kind.
    #[must_use]
    pub fn of(&self, kind: About) -> Option<&str> {
        (self.about == kind).then_some(self.thing.as_str())
    }

    /// The temperatures of the strip table of its sensor.
    #[must_use]
    pub fn range_of(&self, sensor: &Sensor) -> Interval<Temperature> {
        self.range.unwrap_or(sensor.range)
    }
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
    /// What it is written on.
    pub surface: Surface,
    /// Groups of tests that share a state.
    pub groups: Vec<Group>,
}

/// A result report, printed once for every vehicle of its sheet.
#[derive(Debug)]
pub struct Report {
    /// Its id.
    pub id: String,
    /// What it reports on.
    pub title: String,
    /// The sheet whose windows it carries.
    pub sheet: String,
    /// The tests whose readings are its evidence, where the lead chose them.
    pub evidence: Vec<String>,
}

/// Tests under one head.
#[derive(Debug)]
pub struct Group {
    /// Its head.
    pub title: String,
    /// Key, engine, blower, in the lead's own words.
    pub state: Option<String>,
    /// The tests.
    pub rows: Vec<Row>,
}

impl Group {
    /// What its sensors are measured as, and where; `None` where it has none.
    #[must_use]
    pub fn measured(&self) -> Option<(Measure, Spot)> {
        self.rows.iter().find_map(|row| match row.of {
            RowOf::Sensor { measure, place, .. } => Some((measure, place)),
            RowOf::Test(_) => None,
        })
    }
}

/// One row.
#[derive(Debug)]
pub struct Row {
    /// What it measures.
    pub of: RowOf,
    /// What to mind while measuring.
    pub note: Option<String>,
    /// The card that has its sensor's strip table, where there is one.
    pub card: Option<String>,
}

/// What a row measures.
#[derive(Debug)]
pub enum RowOf {
    /// A sensor, as its group says.
    Sensor {
        /// The sensor's id.
        id: String,
        /// What is measured.
        measure: Measure,
        /// At which end of the wires.
        place: Spot,
    },
    /// A test of its own, by its id.
    Test(String),
}

impl Row {
    /// The sensor that it measures as its group says.
    #[must_use]
    pub fn sensor(&self) -> Option<&str> {
        match &self.of {
            RowOf::Sensor { id, .. } => Some(id),
            RowOf::Test(_) => None,
        }
    }
}
