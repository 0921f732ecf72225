//! A coil's resistance and its greatest current over its own temperature.

use super::{Ask, Cell, Column, Show, Table, temperature_cells, temperature_columns, temperatures};
use crate::model::{Coil, Driver, Load, Model};
use crate::physics::copper::DOMAIN;
use crate::physics::solenoid::ceiling;
use crate::quantity::{Current, Interval, Resistance, Rounding, Step, Temperature, Units, Voltage};
use crate::words::{Message, Words};

/// From row to row where no step was asked for.
const USUAL_STEP: Step = Step::of_kelvins(10.0);

/// A driver and its coil, where it has one.
pub(super) fn coil(driver: &Driver) -> Option<&Coil> {
    match &driver.load {
        Load::Coil(coil, _) | Load::Solenoid(coil, _) => Some(coil),
        Load::Blower(_) => None,
    }
}

/// The table of a driver's coil.
pub(super) fn of(model: &Model, words: &Words, id: &str, ask: &Ask<'_>) -> Result<Table, Message> {
    let missing = || Message::new("run-no-such-table").with("id", id);
    let driver = model.drivers.get(id).ok_or_else(missing)?;
    let coil = coil(driver).ok_or_else(missing)?;
    // A coil whose temperatures are not given has one that is: its rated one.
    let rated = Interval { low: coil.rated.at, high: coil.rated.at };
    let at = temperatures(ask, (id, coil.temperature.unwrap_or(rated), DOMAIN), USUAL_STEP)?;
    let isolation =
        coil.isolation.map(|least| words.say(&Message::new("table-note-isolation").with("least", least)));
    let volts = driver.battery.map(|battery| {
        words.say(&Message::new("table-note-battery").with("low", battery.low).with("high", battery.high))
    });
    let nominal = driver
        .nominal
        .map(|nominal| words.say(&Message::new("table-note-nominal-battery").with("nominal", nominal)));
    Ok(Table {
        title: driver.title.clone(),
        notes: [
            Some(words.word("table-note-coil")),
            volts,
            nominal,
            isolation,
            Some(words.word("caution-around")),
        ]
        .into_iter()
        .flatten()
        .collect(),
        columns: columns(words, ask.units),
        rows: at.into_iter().map(|at| row(driver, coil, ask.units, at)).collect(),
        formulas: ["table-formula-copper", "table-formula-ceiling"].map(|id| words.word(id)).into(),
        inputs: driver.facts.iter().filter(|fact| is_of_coil(&fact.key)).cloned().collect(),
    })
}

/// Whether a value says something of a coil that is always on: not how it is switched.
fn is_of_coil(key: &str) -> bool {
    let switching = [
        ".drive.switch_drop",
        ".drive.diode_drop",
        ".drive.frequency",
        ".drive.inductance",
        ".drive.steps",
        ".displacement.",
    ];
    !switching.iter().any(|part| key.contains(part))
}

fn columns(words: &Words, units: Units) -> Vec<Column> {
    let tenth = Show::Decimals(1, Rounding::Nearest);
    let ohms = ["resistance_min_ohm", "resistance_nom_ohm", "resistance_max_ohm"];
    let amperes = ["current_min_a", "current_nom_a", "current_max_a"];
    temperature_columns(units, "temperature", tenth)
        .into_iter()
        .chain(Column::band(words, ohms, "Ω", Show::Digits))
        .chain(Column::band(words, amperes, "A", |rounding| Show::Decimals(3, rounding)))
        .collect()
}

fn row(driver: &Driver, coil: &Coil, units: Units, at: Temperature) -> Vec<Cell> {
    let nominal = coil.rated.nominal(at).ok();
    let band = coil.rated.band(at).ok().flatten();
    let ohms = [band.map(|band| band.low), nominal, band.map(|band| band.high)];
    let current = |battery: Option<Voltage>, ohms: Option<Resistance>| {
        battery.zip(ohms).and_then(|(battery, ohms)| ceiling(battery, ohms).ok()).map(Current::amperes)
    };
    let battery = driver.battery;
    let amperes = [
        current(battery.map(|battery| battery.low), ohms[2]),
        current(driver.nominal, nominal),
        current(battery.map(|battery| battery.high), ohms[0]),
    ];
    temperature_cells(units, at)
        .into_iter()
        .chain(ohms.map(|ohms| Cell::from(ohms.map(Resistance::ohms))))
        .chain(amperes.map(Cell::from))
        .collect()
}
