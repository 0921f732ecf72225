//! A thermocouple's EMF over temperature, for its cold junction in ice and in the bay.

use super::{Ask, Cell, Column, Show, Table, temperature_cells, temperature_columns, temperatures};
use crate::document::figures;
use crate::model::Model;
use crate::physics::thermocouple::Thermocouple;
use crate::quantity::{Interval, Rounding, Step, Temperature, Units, Voltage};
use crate::words::{Message, Words};

/// From row to row where no step was asked for.
const USUAL_STEP: Step = Step::of_kelvins(5.0);

/// The temperatures of vehicle climate systems (common practice, no source); the
/// reference function's whole domain can be asked for.
const USUAL_RANGE: Interval<Temperature> =
    Interval { low: Temperature::from_celsius(-40.0), high: Temperature::from_celsius(150.0) };

/// The ids of thermometers that have a thermocouple.
pub(super) fn ids(model: &Model) -> Vec<&str> {
    let with = model.thermometers.iter().filter(|(_, thermometer)| thermometer.thermocouple.is_some());
    with.map(|(id, _)| id.as_str()).collect()
}

/// The table of a thermometer with a thermocouple.
pub(super) fn of_thermometer(
    model: &Model,
    words: &Words,
    id: &str,
    ask: &Ask<'_>,
) -> Result<Table, Message> {
    let missing = || Message::new("run-no-such-table").with("id", id);
    let thermometer = model.thermometers.get(id).ok_or_else(missing)?;
    let wire = thermometer.thermocouple.ok_or_else(missing)?;
    let at = temperatures(ask, (id, USUAL_RANGE, wire.domain()), USUAL_STEP)?;
    let domain = wire.domain();
    if let Some(bay) = ask.bay.filter(|bay| !domain.contains(bay)) {
        return Err(Message::new("run-junction-outside")
            .with("at", bay.to_hundredths())
            .with("id", id)
            .with("low", domain.low.to_hundredths())
            .with("high", domain.high.to_hundredths()));
    }
    let bay = ask.bay;
    let letter = match wire {
        Thermocouple::K => "K",
        Thermocouple::T => "T",
        Thermocouple::J => "J",
    };
    let reference = Message::new("table-formula-thermocouple").with("type", letter);
    let note = match bay {
        Some(bay) => {
            words.say(&Message::new("table-junction-at").with("at", figures::temperature(ask.units, bay)))
        }
        None => words.word("table-junction-ice"),
    };
    Ok(Table {
        title: thermometer.title.clone(),
        notes: vec![note],
        columns: columns(words, bay, ask.units),
        rows: at.into_iter().map(|at| row(wire, at, bay, ask.units)).collect(),
        formulas: vec![words.say(&reference), words.word("table-formula-junction")],
        inputs: thermometer.facts.clone(),
    })
}

fn columns(words: &Words, bay: Option<Temperature>, units: Units) -> Vec<Column> {
    let tenth = Show::Decimals(1, Rounding::Nearest);
    let microvolt = Show::Decimals(3, Rounding::Nearest);
    let head = |word| format!("mV {}", words.word(word));
    let temperatures = temperature_columns(units, "temperature", tenth);
    let from_ice = Column::new("emf_from_ice_mv", head("table-head-ice"), microvolt);
    let in_bay = bay.map(|_| Column::new("emf_from_bay_mv", head("table-head-bay"), microvolt));
    temperatures.into_iter().chain([from_ice]).chain(in_bay).collect()
}

fn row(wire: Thermocouple, at: Temperature, bay: Option<Temperature>, units: Units) -> Vec<Cell> {
    let millivolts = |emf: Voltage| 1e3 * emf.volts();
    let from_ice = wire.emf(at).ok().map(millivolts);
    let from_bay = bay.map(|bay| Cell::from(wire.emf_from(at, bay).ok().map(millivolts)));
    temperature_cells(units, at).into_iter().chain([Cell::from(from_ice)]).chain(from_bay).collect()
}
