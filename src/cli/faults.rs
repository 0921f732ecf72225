//! `bayleaf faults`: what each fault of a thing would read.

use super::args::{FaultPlace, Faults as Arguments};
use super::load::load;
use super::outcome::{Outcome, fail};
use super::table::tell;
use crate::document::faults::{Ask, Place, of};
use crate::words::Words;

/// Runs the command.
pub(super) fn run(arguments: &Arguments) -> Outcome {
    let words = Words::english();
    let loaded = match load(arguments.specs.specs.as_deref(), &words, false) {
        Ok(loaded) => loaded,
        Err(outcome) => return outcome,
    };
    let ask = Ask {
        id: &arguments.id,
        at: arguments.at,
        place: arguments.place.map(|place| match place {
            FaultPlace::Unit => Place::ControlUnit,
            FaultPlace::Sensor => Place::Sensor,
        }),
        position: arguments.position,
        pressure: arguments.pressure,
        instruments: &arguments.instruments,
    };
    match of(&loaded.model, &words, &ask) {
        Ok(table) => tell(&words, &loaded.from, &table, arguments.format),
        Err(message) => fail(&words, &message),
    }
}
