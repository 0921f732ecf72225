//! `[sheet.ID]`: a fill-in test sheet, printed once per vehicle.

use super::reader::Reader;
use super::value::At;

/// A test sheet.
#[derive(Debug, Clone)]
pub struct Sheet {
    /// What it tests.
    pub title: Option<At<String>>,
    /// The system it is for; it is printed for every vehicle that has it.
    pub system: Option<At<String>>,
    /// Only these vehicles of the system, where not all.
    pub vehicles: Option<Vec<At<String>>>,
    /// The thermometer that the bay temperature is read with.
    pub thermometer: Option<At<String>>,
    /// The multimeter whose loading the volts include.
    pub meter: Option<At<String>>,
    /// Groups of tests that share a state.
    pub groups: Vec<Group>,
}

/// Tests that share a state of the vehicle.
#[derive(Debug, Clone)]
pub struct Group {
    /// The group's head.
    pub title: Option<At<String>>,
    /// The state, said once over the group: key, engine, blower.
    pub state: Option<At<String>>,
    /// What is measured.
    pub measure: Option<At<Measure>>,
    /// At which end of the wires.
    pub place: Option<At<Spot>>,
    /// The rows.
    pub rows: Vec<SheetRow>,
    /// Where the group stands.
    pub at: crate::diag::Place,
}

/// What a group measures.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Measure {
    /// Volts at the signal pin, everything mated.
    Voltage,
    /// Ohms of the sensor, unmated.
    Resistance,
    /// Volts at the signal wire with the sensor unmated: proves unit and wire.
    OpenVoltage,
}

/// At which end of the wires.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Spot {
    /// At the control unit's connector.
    ControlUnit,
    /// At the sensor's connector.
    Sensor,
}

/// One test.
#[derive(Debug, Clone)]
pub struct SheetRow {
    /// The sensor it measures.
    pub sensor: At<String>,
    /// What to mind while measuring.
    pub note: Option<At<String>>,
}

impl Sheet {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "system", "group"]);
        Self {
            title: reader.text("title"),
            system: reader.text("system"),
            vehicles: reader.texts("vehicles"),
            thermometer: reader.text("thermometer"),
            meter: reader.text("meter"),
            groups: reader.tables("group").iter().map(Group::read).collect(),
        }
    }
}

impl Group {
    fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "state", "measure", "place", "test"]);
        let measures = [
            ("voltage", Measure::Voltage),
            ("resistance", Measure::Resistance),
            ("open voltage", Measure::OpenVoltage),
        ];
        let group = Self {
            title: reader.text("title"),
            state: reader.text("state"),
            measure: reader.choice("measure", &measures),
            place: reader.choice("place", &[("control unit", Spot::ControlUnit), ("sensor", Spot::Sensor)]),
            rows: reader.tables("test").iter().filter_map(SheetRow::read).collect(),
            at: reader.place.clone(),
        };
        reader.finish();
        group
    }
}

impl SheetRow {
    fn read(reader: &Reader<'_>) -> Option<Self> {
        reader.require(&["sensor"]);
        let sensor = reader.text("sensor");
        let note = reader.text("note");
        reader.finish();
        Some(Self { sensor: sensor?, note })
    }
}
