//! `[sensor.ID]`: a temperature sensor as its documents describe it.

use toml::de::DeValue;

use super::reader::{Reader, plain_number};
use super::value::{At, Sourced};
use crate::diag::{Finding, Place};
use crate::quantity::{
    Beta, Interval, Quantity as _, Ratio, Resistance, Temperature, TemperatureDifference, Toleranced, Unit,
    interval, ratio, scalar, toleranced,
};
use crate::words::Message;

/// A sensor.
#[derive(Debug, Clone)]
pub struct Sensor {
    /// The sensor's name, base word first or last as the shop likes.
    pub title: Option<At<String>>,
    /// The system it belongs to.
    pub system: Option<At<String>>,
    /// Where in the vehicle it sits.
    pub location: Option<Sourced<String>>,
    /// Resistance against temperature.
    pub curve: Option<At<Curve>>,
    /// How far a good part may lie from the curve.
    pub tolerance: Option<Sourced<Tolerance>>,
    /// The temperatures the card covers.
    pub range: Option<Sourced<Interval<Temperature>>>,
    /// How the control unit reads it.
    pub circuit: Option<Circuit>,
    /// Pins at the control unit.
    pub pins: Option<Pins>,
    /// Pins at the sensor's own connector.
    pub component_pins: Option<Pins>,
    /// How wrong the reading may be before it explains a complaint.
    pub service_limit: Option<Sourced<TemperatureDifference>>,
    /// What to do next when the reading is out of its window, in steps.
    pub next: Option<Vec<At<String>>>,
}

/// Resistance against temperature, in one of three forms.
#[derive(Debug, Clone)]
pub enum Curve {
    /// R = R₀ exp[B (1/T − 1/T₀)].
    Beta {
        /// The resistance at the rated temperature.
        resistance: Option<Sourced<Resistance>>,
        /// The rated temperature.
        at: Option<Sourced<Temperature>>,
        /// The B value.
        beta: Option<Sourced<Beta>>,
    },
    /// 1/T = a + b ln R + c (ln R)³.
    SteinhartHart {
        /// The constant term, 1/K.
        a: Option<Sourced<f64>>,
        /// The factor of ln R, 1/K.
        b: Option<Sourced<f64>>,
        /// The factor of (ln R)³, 1/K.
        c: Option<Sourced<f64>>,
    },
    /// Points as a manual prints them.
    Table {
        /// The rows, in the order they were written.
        rows: Vec<Row>,
        /// The unit of the temperature column.
        temperature_unit: Unit,
        /// The unit of the resistance columns.
        resistance_unit: Unit,
        /// Where the table comes from.
        source: Option<String>,
    },
}

/// One row of a table, with its place.
#[derive(Debug, Clone)]
pub struct Row {
    /// The temperature.
    pub temperature: Temperature,
    /// The nominal resistance.
    pub nominal: Resistance,
    /// The least and the greatest resistance, where the table has them.
    pub limits: Option<(Resistance, Resistance)>,
    /// The cells as the user wrote them.
    pub written: Vec<String>,
    /// Where the row stands.
    pub place: Place,
}

/// How far a good part may lie from the curve.
#[derive(Debug, Clone)]
pub struct Tolerance {
    /// Part of the resistance, at the rated temperature.
    pub resistance: Option<Sourced<Ratio>>,
    /// Part of the B value; makes the band grow away from the rated temperature.
    pub beta: Option<Sourced<Ratio>>,
    /// The temperature that the resistance tolerance holds at.
    pub at: Option<Sourced<Temperature>>,
    /// Or: a distance in temperature, the same over the whole range.
    pub temperature: Option<Sourced<TemperatureDifference>>,
    /// Whether a part stands there that could not be read.
    pub misread: bool,
}

/// How the control unit reads the sensor.
#[derive(Debug, Clone)]
pub struct Circuit {
    /// Which side the sensor is on.
    pub topology: Option<At<Topology>>,
    /// The pull-up or pull-down resistor.
    pub resistor: Option<Sourced<Toleranced<Resistance>>>,
    /// The reference, where it is not the system's.
    pub reference: Option<Sourced<Toleranced<crate::quantity::Voltage>>>,
    /// A resistor in the line, between the pin and the sensor.
    pub series: Option<Sourced<Toleranced<Resistance>>>,
    /// A resistor inside the control unit, across line and sensor.
    pub parallel: Option<Sourced<Toleranced<Resistance>>>,
}

/// Which side of the signal pin the sensor is on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Topology {
    /// Resistor from reference to signal, sensor from signal to return: hotter is fewer volts.
    PullUp,
    /// Sensor from reference to signal, resistor from signal to ground: hotter is more volts.
    PullDown,
}

/// The two pins of a sensor at one end of its wires, as `connector/pin`.
#[derive(Debug, Clone)]
pub struct Pins {
    /// The signal pin.
    pub signal: Option<Sourced<String>>,
    /// The return pin; for a pull-down sensor the reference pin, which may be
    /// called `reference`.
    pub return_: Option<Sourced<String>>,
    /// The pin to measure against, where the other one carries the reference.
    pub ground: Option<Sourced<String>>,
}

impl Sensor {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "system", "curve"]);
        let curve = reader.table("curve").and_then(|curve| Curve::read(&curve));
        // A table ends where its points end; a formula never does.
        if curve.as_ref().is_some_and(|curve| !matches!(curve.value, Curve::Table { .. })) {
            reader.require(&["range"]);
        }
        Self {
            title: reader.text("title"),
            system: reader.text("system"),
            location: reader.sourced_text("location"),
            curve,
            tolerance: reader.table("tolerance").map(|tolerance| Tolerance::read(&tolerance)),
            range: reader.sourced("range", interval),
            circuit: reader.table("circuit").map(|circuit| Circuit::read(&circuit)),
            pins: reader.table("pins").map(|pins| Pins::read(&pins)),
            component_pins: reader.table("component_pins").map(|pins| Pins::read(&pins)),
            service_limit: reader.sourced("service_limit", scalar),
            next: reader.texts("next"),
        }
    }
}

#[derive(Clone, Copy)]
enum Model {
    Beta,
    SteinhartHart,
    Table,
}

impl Curve {
    fn read(reader: &Reader<'_>) -> Option<At<Self>> {
        let models =
            [("beta", Model::Beta), ("steinhart-hart", Model::SteinhartHart), ("table", Model::Table)];
        reader.require(&["model"]);
        // Without its model a curve's other keys mean nothing: one finding is enough.
        let model = reader.choice("model", &models)?;
        let curve = match model.value {
            Model::Beta => {
                reader.require(&["resistance", "at", "beta"]);
                Some(Self::Beta {
                    resistance: reader.sourced("resistance", scalar),
                    at: reader.sourced("at", scalar),
                    beta: reader.sourced("beta", scalar),
                })
            }
            Model::SteinhartHart => {
                reader.require(&["a", "b", "c"]);
                Some(Self::SteinhartHart {
                    a: reader.number("a"),
                    b: reader.number("b"),
                    c: reader.number("c"),
                })
            }
            Model::Table => read_table(reader),
        };
        reader.finish();
        curve.map(|value| At { value, place: reader.place.clone() })
    }
}

impl Tolerance {
    fn read(reader: &Reader<'_>) -> Sourced<Self> {
        let mut value = Self {
            resistance: reader.sourced("resistance", ratio),
            beta: reader.sourced("beta", ratio),
            at: reader.sourced("at", scalar),
            temperature: reader.sourced("temperature", scalar),
            misread: false,
        };
        let read = [
            ("resistance", value.resistance.is_some()),
            ("beta", value.beta.is_some()),
            ("at", value.at.is_some()),
            ("temperature", value.temperature.is_some()),
        ];
        value.misread = read.iter().any(|(key, read)| !read && reader.has(key));
        reader.finish();
        let written = String::new();
        Sourced { value, written, place: reader.place.clone(), source: reader.source() }
    }
}

impl Circuit {
    fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["topology"]);
        let topologies = [("pull-up", Topology::PullUp), ("pull-down", Topology::PullDown)];
        let circuit = Self {
            topology: reader.choice("topology", &topologies),
            resistor: reader.sourced("resistor", toleranced),
            reference: reader.sourced("reference", toleranced),
            series: reader.sourced("series", toleranced),
            parallel: reader.sourced("parallel", toleranced),
        };
        reader.finish();
        circuit
    }
}

impl Pins {
    fn read(reader: &Reader<'_>) -> Self {
        let pins = Self {
            signal: reader.sourced_text("signal"),
            return_: reader.sourced_text("return").or_else(|| reader.sourced_text("reference")),
            ground: reader.sourced_text("ground"),
        };
        reader.finish();
        pins
    }
}

/// Reads `points`: rows of `[temperature, resistance]` or `[temperature, min, nominal, max]`.
fn read_table(reader: &Reader<'_>) -> Option<Curve> {
    reader.require(&["temperature", "resistance", "points"]);
    let temperatures = [("°C", Unit::Celsius), ("°F", Unit::Fahrenheit), ("K", Unit::Kelvin)];
    let resistances = [("Ω", Unit::Ohm), ("ohm", Unit::Ohm), ("kΩ", Unit::Kiloohm), ("kohm", Unit::Kiloohm)];
    let temperature_unit = reader.choice("temperature", &temperatures);
    let resistance_unit = reader.choice("resistance", &resistances);
    let points = reader.list("points")?;
    let (temperature_unit, resistance_unit) = (temperature_unit?.value, resistance_unit?.value);
    // Every bad row is reported before the table as a whole is given up.
    let rows: Vec<Option<Row>> = (points.value.iter())
        .map(|value| read_row(reader, value, temperature_unit, resistance_unit))
        .collect();
    let rows = rows.into_iter().collect::<Option<Vec<Row>>>()?;
    Some(Curve::Table { rows, temperature_unit, resistance_unit, source: reader.source() })
}

fn read_row(
    reader: &Reader<'_>,
    value: &toml::Spanned<DeValue<'_>>,
    temperature: Unit,
    resistance: Unit,
) -> Option<Row> {
    let file = reader.file();
    let place = file.place(value);
    let cells = value.get_ref().as_array();
    let numbers: Option<Vec<f64>> =
        cells.and_then(|cells| cells.iter().map(|cell| plain_number(cell.get_ref())).collect());
    let ohms = |number: f64| Resistance::from_written(number, resistance, false);
    let row = numbers.as_deref().and_then(|numbers| match *numbers {
        [t, nominal] => Some((t, ohms(nominal)?, None)),
        [t, low, nominal, high] => Some((t, ohms(nominal)?, Some((ohms(low)?, ohms(high)?)))),
        _ => None,
    });
    let Some((t, nominal, limits)) = row else {
        let finding = Finding::error(Message::new("spec-bad-row"), place, Message::new("wanted-row"));
        reader.report(finding);
        return None;
    };
    let temperature = Temperature::from_written(t, temperature, false)?;
    let written =
        (cells?.iter()).map(|cell| file.text.get(cell.span()).unwrap_or_default().to_owned()).collect();
    Some(Row { temperature, nominal, limits, written, place })
}
