//! `curve` of a sensor: a formula's values, or points as a manual prints them.

use toml::de::DeValue;

use super::reader::{Item, Reader, plain_number};
use super::value::{At, Sourced};
use crate::diag::{Finding, Place};
use crate::quantity::{Beta, Quantity as _, Resistance, Temperature, Unit, reprinted, scalar};
use crate::words::Message;

/// Resistance against temperature, in one of several forms.
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
    /// 1/T = a + b L + c L² + d L³ with L = ln(R/R₀).
    SteinhartHart4 {
        /// R₀; `None` where the coefficients are for R in ohms.
        resistance: Option<Sourced<Resistance>>,
        /// The constant term, 1/K.
        a: Option<Sourced<f64>>,
        /// The factor of L, 1/K.
        b: Option<Sourced<f64>>,
        /// The factor of L², 1/K.
        c: Option<Sourced<f64>>,
        /// The factor of L³, 1/K.
        d: Option<Sourced<f64>>,
    },
    /// Platinum by IEC 60751.
    Platinum {
        /// The resistance at 0 °C.
        resistance: Option<Sourced<Resistance>>,
    },
    /// R = R₀ [1 + a (T − T₀) + b (T − T₀)²].
    SiliconPtc {
        /// The resistance at the rated temperature.
        resistance: Option<Sourced<Resistance>>,
        /// The rated temperature.
        at: Option<Sourced<Temperature>>,
        /// The factor of T − T₀, 1/K.
        a: Option<Sourced<f64>>,
        /// The factor of (T − T₀)², 1/K².
        b: Option<Sourced<f64>>,
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

impl Row {
    /// Its cells as a finding quotes them, in the notation that is due there.
    #[must_use]
    pub fn said(&self) -> String {
        reprinted(&self.written.join(", "))
    }
}

#[derive(Clone, Copy)]
enum Model {
    Beta,
    SteinhartHart,
    SteinhartHart4,
    Platinum,
    SiliconPtc,
    Table,
}

impl Curve {
    pub(super) fn read(reader: &Reader<'_>) -> Option<At<Self>> {
        let models = [
            ("beta", Model::Beta),
            ("steinhart-hart", Model::SteinhartHart),
            ("steinhart-hart-4", Model::SteinhartHart4),
            ("platinum", Model::Platinum),
            ("silicon-ptc", Model::SiliconPtc),
            ("table", Model::Table),
        ];
        reader.require(&["model"]);
        // Without its model a curve's other keys mean nothing: one finding is enough.
        let Some(model) = reader.choice("model", &models) else {
            reader.give_up("model");
            return None;
        };
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
            Model::SteinhartHart4 => {
                reader.require(&["a", "b", "c", "d"]);
                Some(Self::SteinhartHart4 {
                    resistance: reader.sourced("resistance", scalar),
                    a: reader.number("a"),
                    b: reader.number("b"),
                    c: reader.number("c"),
                    d: reader.number("d"),
                })
            }
            Model::Platinum => {
                reader.require(&["resistance"]);
                Some(Self::Platinum { resistance: reader.sourced("resistance", scalar) })
            }
            Model::SiliconPtc => {
                reader.require(&["resistance", "at", "a", "b"]);
                Some(Self::SiliconPtc {
                    resistance: reader.sourced("resistance", scalar),
                    at: reader.sourced("at", scalar),
                    a: reader.number("a"),
                    b: reader.number("b"),
                })
            }
            Model::Table => read_table(reader),
        };
        reader.finish();
        curve.map(|value| At { value, place: reader.place.clone() })
    }
}

/// `[temperature, resistance]` or `[temperature, min, nominal, max]`.
const POINT: Item = Item::OneOf(&[
    Item::Row(&[Item::Number, Item::Number]),
    Item::Row(&[Item::Number, Item::Number, Item::Number, Item::Number]),
]);

/// Reads `points`: rows of `[temperature, resistance]` or `[temperature, min, nominal, max]`.
pub(super) fn read_table(reader: &Reader<'_>) -> Option<Curve> {
    reader.require(&["temperature", "resistance", "points"]);
    let temperatures = [("°C", Unit::Celsius), ("°F", Unit::Fahrenheit), ("K", Unit::Kelvin)];
    let resistances = [("Ω", Unit::Ohm), ("ohm", Unit::Ohm), ("kΩ", Unit::Kiloohm), ("kohm", Unit::Kiloohm)];
    let temperature_unit = reader.choice("temperature", &temperatures);
    let resistance_unit = reader.choice("resistance", &resistances);
    let points = reader.list("points", &POINT)?;
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
