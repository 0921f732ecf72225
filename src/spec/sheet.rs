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
    /// What is written on.
    pub surface: Option<At<Surface>>,
    /// Groups of tests that share a state.
    pub groups: Vec<Group>,
}

/// What a sheet is written on, and with what.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Surface {
    /// Paper: a pen that cannot be rubbed out.
    Paper,
    /// A laminated sheet that is used again.
    WetErase,
    /// A laminated sheet that is kept.
    Permanent,
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

/// One row: a `[test.ID]`, or a sensor measured as its group says.
#[derive(Debug, Clone)]
pub struct SheetRow {
    /// What it measures.
    pub what: RowOf,
    /// What to mind while measuring.
    pub note: Option<At<String>>,
}

/// What a row measures.
#[derive(Debug, Clone)]
pub enum RowOf {
    /// A sensor, as the group says.
    Sensor(At<String>),
    /// A test of its own.
    Test(At<String>),
}

impl SheetRow {
    /// The sensor that it measures as its group says.
    #[must_use]
    pub fn sensor(&self) -> Option<&At<String>> {
        match &self.what {
            RowOf::Sensor(sensor) => Some(sensor),
            RowOf::Test(_) => None,
        }
    }

    /// The test that it is.
    #[must_use]
    pub fn test(&self) -> Option<&At<String>> {
        match &self.what {
            RowOf::Test(test) => Some(test),
            RowOf::Sensor(_) => None,
        }
    }
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
            surface: reader.choice(
                "surface",
                &[
                    ("paper", Surface::Paper),
                    ("laminated, wet-erase", Surface::WetErase),
                    ("laminated, permanent", Surface::Permanent),
                ],
            ),
            groups: reader.tables("group").iter().map(Group::read).collect(),
        }
    }
}

impl Group {
    fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "test"]);
        let measures = [
            ("voltage", Measure::Voltage),
            ("resistance", Measure::Resistance),
            ("open voltage", Measure::OpenVoltage),
        ];
        let rows: Vec<SheetRow> = reader.tables("test").iter().filter_map(SheetRow::read).collect();
        // A test has its own state; a sensor is measured as the group says.
        if rows.is_empty() || rows.iter().any(|row| row.sensor().is_some()) {
            reader.require(&["state", "measure", "place"]);
        }
        let group = Self {
            title: reader.text("title"),
            state: reader.text("state"),
            measure: reader.choice("measure", &measures),
            place: reader.choice("place", &[("control unit", Spot::ControlUnit), ("sensor", Spot::Sensor)]),
            rows,
            at: reader.place.clone(),
        };
        reader.finish();
        group
    }
}

impl SheetRow {
    fn read(reader: &Reader<'_>) -> Option<Self> {
        reader.require_one_of(["sensor", "test"].into_iter());
        let (sensor, test) = (reader.text("sensor"), reader.text("test"));
        let what = sensor.map(RowOf::Sensor).or(test.map(RowOf::Test));
        let note = reader.text("note");
        reader.finish();
        Some(Self { what: what?, note })
    }
}
