//! `bayleaf faults`: what each fault of a sensor would read.

use super::args::{FaultPlace, Faults as Arguments};
use super::load::load;
use super::outcome::{Outcome, fail};
use super::table::tell;
use crate::document::faults::{Place, of};
use crate::words::Words;

/// Runs the command.
pub(super) fn run(arguments: &Arguments) -> Outcome {
    let words = Words::english();
    let loaded = match load(arguments.specs.specs.as_deref(), &words, false) {
        Ok(loaded) => loaded,
        Err(outcome) => return outcome,
    };
    let place = match arguments.place {
        FaultPlace::Unit => Place::ControlUnit,
        FaultPlace::Sensor => Place::Sensor,
    };
    match of(&loaded.model, &words, (&arguments.id, arguments.at, place), &arguments.instruments) {
        Ok(table) => tell(&words, &loaded.from, &table, arguments.format),
        Err(message) => fail(&words, &message),
    }
}
