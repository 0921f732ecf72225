//! Figures for a screen or another program: unrounded, with the formulas and
//! the values that they rest on.
//!
//! One file per kind of thing that has figures. Rounding is a column's business
//! and happens where text is made of it.

mod actuator;
pub(in crate::document) mod blower;
pub(in crate::document) mod coded;
mod coil;
mod digits;
mod driver;
mod light;
mod modes;
mod panel;
mod paper;
mod refrigerant;
pub(in crate::document) mod request;
pub(in crate::document) mod sensor;
mod solenoid;
mod temperatures;
mod text;
mod thermocouple;
pub(in crate::document) mod transducer;
mod vent;
mod wire;

use std::borrow::Cow;

use serde::{Serialize, Serializer};

use super::proof::ten_digits;
use crate::diag::nearest;
use crate::model::{Fact, Model};
use crate::quantity::{Rounding, Step, Temperature, Units, decimals_for, figure};
use crate::spec::About;
use crate::words::{Message, Words};
use temperatures::temperatures;
pub(in crate::document) use temperatures::{temperature_cells, temperature_columns};

/// Stands where there is no figure.
pub(in crate::document) const BLANK: &str = "–";

/// The kind of things whose figures depend on the temperature of the bay.
const THERMOCOUPLES: &str = "instrument";

/// What is asked for.
#[derive(Debug, Clone, Copy, Default)]
pub struct Ask<'a> {
    /// The id of a thing, or `kind.id` where two kinds share it.
    pub id: &'a str,
    /// First and last temperature, where not the whole range.
    pub from: Option<Temperature>,
    /// See `from`.
    pub to: Option<Temperature>,
    /// From row to row, where not the usual step.
    pub step: Option<Step>,
    /// The temperature of the bay, where the figures depend on it.
    pub bay: Option<Temperature>,
    /// The units of its columns, and the scale that its rows are round on.
    pub units: Units,
}

/// A table of figures.
#[derive(Debug, Clone, PartialEq)]
pub struct Table {
    /// What it is a table of.
    pub title: String,
    /// What else must be known to read it, such as the meter on the pin.
    pub notes: Vec<String>,
    /// The columns.
    pub columns: Vec<Column>,
    /// The rows, each with a cell for every column.
    pub rows: Vec<Vec<Cell>>,
    /// How the figures follow from the inputs, each with its source.
    pub formulas: Vec<String>,
    /// The values of the specs that the figures rest on.
    pub inputs: Vec<Fact>,
}

/// One column.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Column {
    /// Its name in CSV and JSON, with its unit.
    pub key: Cow<'static, str>,
    /// Its head on a screen.
    pub head: String,
    /// How its numbers are shown on a screen.
    pub show: Show,
    /// Whether it is one of the three columns of a band, which have their digits together.
    of_band: bool,
}

/// How the numbers of a column become text.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Show {
    /// This many decimals.
    Decimals(usize, Rounding),
    /// As many as the size of each number calls for.
    Digits(Rounding),
    /// The number as it is, with ten digits.
    Unrounded,
    /// Not on a screen: a key that programs find in every table of this form, with
    /// nothing in it here.
    Never,
}

/// What stands in a row; as JSON a number, a text, a flag or null.
#[derive(Debug, Clone, PartialEq)]
pub enum Cell {
    /// A number, in the unit of the column's key.
    Number(f64),
    /// A word.
    Text(String),
    /// A key for programs, and what a screen shows for it.
    Named(&'static str, String),
    /// Yes or no, and what a screen shows for it.
    Flag(bool, String),
    /// Nothing: the value cannot be computed from what was given.
    Missing,
}

impl Table {
    /// Which column has this key.
    #[must_use]
    pub fn column(&self, key: &str) -> Option<usize> {
        self.columns.iter().position(|column| column.key == key)
    }

    /// The number of a row in the column of this key.
    #[must_use]
    pub fn number(&self, row: &[Cell], key: &str) -> Option<f64> {
        match row.get(self.column(key)?)? {
            Cell::Number(number) => Some(*number),
            _ => None,
        }
    }
}

impl Column {
    /// A column with this name, head and form.
    pub fn new(key: impl Into<Cow<'static, str>>, head: impl Into<String>, show: Show) -> Self {
        Self { key: key.into(), head: head.into(), show, of_band: false }
    }

    /// Least, nominal and greatest of one quantity; limits are rounded inward, to digits that
    /// their window decides.
    #[must_use]
    pub fn band(
        words: &Words,
        keys: [&'static str; 3],
        symbol: &str,
        form: fn(Rounding) -> Show,
    ) -> [Self; 3] {
        let heads = [
            ("table-min", Rounding::Up),
            ("table-nominal", Rounding::Nearest),
            ("table-max", Rounding::Down),
        ];
        std::array::from_fn(|index| {
            let (word, rounding) = heads[index];
            let head = format!("{symbol} {}", words.word(word));
            Self { of_band: true, ..Self::new(keys[index], head, form(rounding)) }
        })
    }

    /// Its head, and for a limit or nominal value which of the three it is.
    pub(in crate::document) fn heads(&self) -> (String, String) {
        match self.head.rsplit_once(' ').filter(|_| self.of_band) {
            Some((symbol, which)) => (symbol.to_owned(), which.to_owned()),
            None => (self.head.clone(), String::new()),
        }
    }

    /// A cell of this column as text, by itself: [`Table::texts`] knows the windows.
    #[must_use]
    pub fn text(&self, cell: &Cell) -> String {
        match (cell, self.show) {
            (Cell::Number(number), Show::Decimals(decimals, rounding)) => figure(*number, decimals, rounding),
            (Cell::Number(number), Show::Digits(rounding)) => {
                figure(*number, decimals_for(*number), rounding)
            }
            (Cell::Number(number), Show::Unrounded) => ten_digits(*number),
            (Cell::Text(text) | Cell::Named(_, text) | Cell::Flag(_, text), _) => text.clone(),
            (Cell::Missing, _) | (Cell::Number(_), Show::Never) => BLANK.to_owned(),
        }
    }
}

impl Serialize for Cell {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Number(number) => serializer.serialize_f64(*number),
            Self::Text(text) => serializer.serialize_str(text),
            Self::Named(key, _) => serializer.serialize_str(key),
            Self::Flag(flag, _) => serializer.serialize_bool(*flag),
            Self::Missing => serializer.serialize_none(),
        }
    }
}

impl From<f64> for Cell {
    fn from(number: f64) -> Self {
        Self::Number(number)
    }
}

impl From<Option<f64>> for Cell {
    fn from(number: Option<f64>) -> Self {
        number.map_or(Self::Missing, Self::Number)
    }
}

impl From<String> for Cell {
    fn from(text: String) -> Self {
        Self::Text(text)
    }
}

/// One kind of thing: its name in front of an id, its ids, and its table.
struct Kind<'a> {
    name: &'static str,
    ids: Vec<&'a str>,
    table: fn(&Model, &Words, &str, &Ask<'_>) -> Result<Table, Message>,
}

/// Every kind that has figures, in the order in which an id is looked for.
fn kinds(model: &Model) -> Vec<Kind<'_>> {
    vec![
        Kind { name: "sensor", ids: ids(&model.sensors), table: sensor::of_sensor },
        Kind { name: "driver", ids: ids(&model.drivers), table: driver::of },
        Kind { name: "coil", ids: coils(model), table: coil::of },
        Kind { name: "wire", ids: ids(&model.wires), table: wire::of },
        Kind { name: "actuator", ids: ids(&model.actuators), table: actuator::of_actuator },
        Kind { name: "light", ids: ids(&model.lights), table: light::of_light },
        Kind { name: "transducer", ids: ids(&model.transducers), table: transducer::of_transducer },
        Kind { name: "card", ids: sensor_cards(model), table: sensor::of_card },
        Kind { name: "modes", ids: ids(&model.mode_sets), table: modes::of_system },
        // A system has no other table.
        Kind { name: "system", ids: ids(&model.mode_sets), table: modes::of_system },
        Kind { name: "stuck", ids: ids(&model.mode_sets), table: modes::of_stuck },
        Kind { name: "panel", ids: ids(&model.panels), table: panel::of_panel },
        Kind { name: THERMOCOUPLES, ids: thermocouple::ids(model), table: thermocouple::of_thermometer },
        Kind { name: "refrigerant", ids: ids(&model.refrigerants), table: refrigerant::of_refrigerant },
        Kind { name: "vent", ids: ids(&model.vents), table: vent::of_vent },
        Kind { name: "request", ids: ids(&model.requests), table: request::of_request },
    ]
}

fn ids<T>(things: &std::collections::BTreeMap<String, T>) -> Vec<&str> {
    things.keys().map(String::as_str).collect()
}

/// The drivers that have a coil: `coil.ID` asks for it where the driver itself has another table.
fn coils(model: &Model) -> Vec<&str> {
    let with_coil = model.drivers.values().filter(|driver| coil::coil(driver).is_some());
    with_coil.map(|driver| driver.id.as_str()).collect()
}

/// The cards that have a table of their own: with their meter and range.
fn sensor_cards(model: &Model) -> Vec<&str> {
    let of_sensors = model.cards.values().filter(|card| card.about == About::Sensor);
    of_sensors.map(|card| card.id.as_str()).collect()
}

/// Refuses a temperature step for a table whose rows are no temperatures.
fn without_step(id: &str, ask: &Ask<'_>) -> Result<(), Message> {
    match ask.step {
        Some(_) => Err(Message::new("run-table-no-step").with("id", id)),
        None => Ok(()),
    }
}

/// Every id that has a table, with its kind in front.
#[must_use]
pub fn known(model: &Model) -> Vec<String> {
    let named = |kind: &Kind<'_>| kind.ids.iter().map(|id| format!("{}.{id}", kind.name)).collect::<Vec<_>>();
    kinds(model).iter().flat_map(named).collect()
}

/// All of those, then every paper, each with whether its figures depend on the temperature of
/// the bay.
#[must_use]
pub fn everything(model: &Model) -> Vec<(String, bool)> {
    let in_bay = |name: &str| name.split_once('.').is_some_and(|(kind, _)| kind == THERMOCOUPLES);
    let things = known(model).into_iter().map(|name| {
        let in_bay = in_bay(&name);
        (name, in_bay)
    });
    let papers = paper::papers(model);
    let papers =
        papers.iter().map(|listed| (format!("{}{}", paper::KIND, listed.id), !listed.paperwork.is_card()));
    things.chain(papers).collect()
}

/// The table of one thing.
///
/// # Errors
/// When there is no such thing, or not over these temperatures.
pub fn of(model: &Model, words: &Words, ask: &Ask<'_>) -> Result<Table, Message> {
    let kinds = kinds(model);
    for kind in &kinds {
        let plain = ask.id.strip_prefix(kind.name).and_then(|rest| rest.strip_prefix('.'));
        let wanted = plain.unwrap_or(ask.id);
        if kind.ids.contains(&wanted) {
            // Only the cold junction of a thermocouple lies in the bay.
            if ask.bay.is_some() && kind.name != THERMOCOUPLES {
                return Err(Message::new("run-table-no-bay").with("id", ask.id));
            }
            return (kind.table)(model, words, wanted, ask);
        }
    }
    let papers = paper::papers(model);
    let wanted = ask.id.strip_prefix(paper::KIND).unwrap_or(ask.id);
    if let Some(listed) = papers.iter().find(|listed| listed.id == wanted) {
        return paper::of(model, words, listed, ask);
    }
    let of_papers = papers.iter().map(|listed| listed.id.as_str());
    let known = kinds.iter().flat_map(|kind| kind.ids.iter().copied()).chain(of_papers);
    Err(match nearest(ask.id, known) {
        Some(near) => Message::new("run-no-such-table-near").with("id", ask.id).with("near", near),
        None => Message::new("run-no-such-table").with("id", ask.id),
    })
}

/// Refuses temperatures for a table that does not run over them.
fn not_over_temperature(ask: &Ask<'_>) -> Result<(), Message> {
    if ask.from.is_none() && ask.to.is_none() && ask.step.is_none() {
        return Ok(());
    }
    Err(Message::new("run-table-not-over-temperature").with("id", ask.id))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::diag::Findings;
    use crate::{model, spec};

    fn asked(ask: &Ask<'_>) -> Result<Table, Message> {
        let set = spec::Set::read(&spec::demo(), &Findings::default());
        of(&model::build(&set).expect("the demo set is whole"), &Words::english(), ask)
    }

    #[test]
    fn only_a_thermocouple_lies_in_the_bay() {
        let bay = Some(Temperature::from_celsius(31.0));
        let refused =
            asked(&Ask { id: "curlew-cabin", bay, ..Ask::default() }).expect_err("it has no junction");
        assert_eq!(refused.id(), "run-table-no-bay");
    }

    #[test]
    fn both_ends_of_the_range_are_rows() {
        let step = Some(Step::of_kelvins(7.0));
        let to = Some(Temperature::from_celsius(40.0));
        let from = Some(Temperature::from_celsius(0.0));
        let table =
            asked(&Ask { id: "curlew-cabin", from, to, step, ..Ask::default() }).expect("it has a table");
        let first = |row: &Vec<Cell>| row[0].clone();
        let at: Vec<Cell> = table.rows.iter().map(first).collect();
        assert_eq!(at, [0.0, 7.0, 14.0, 21.0, 28.0, 35.0, 40.0].map(Cell::Number));
    }

    #[test]
    fn every_constant_of_the_saturation_is_printed() {
        let table = asked(&Ask { id: "heron-refrigerant", ..Ask::default() }).expect("it has a table");
        // The ancillary of tests/reference/05b for R-134a: reducing point and first term.
        let all = table.formulas.join(" ");
        assert!(all.contains("Tc = 374.21 K") && all.contains("059.28 kPa"), "{all}");
        assert!(all.contains("0.4331478287291047 (0.845)"), "{all}");
    }

    #[test]
    fn the_points_of_a_curve_are_printed() {
        let table = asked(&Ask { id: "heron-evaporator", ..Ask::default() }).expect("it has a table");
        let points = table.inputs.iter().find(|fact| fact.label == "fact-table");
        let written = points.and_then(|fact| fact.written.as_deref()).expect("its curve is a table");
        assert!(written.starts_with("14 °F 23.13/24.33/25.54 kΩ, 23 °F 18.15/"), "{written}");
    }
}
