//! `bayleaf faults`: what each fault of a thing would read.

use super::args::{FaultPlace, Faults as Arguments};
use super::load::answer;
use super::outcome::Outcome;
use super::table::{for_people, tell};
use crate::document::faults::{Ask, Place, of};
use crate::quantity::Units;
use crate::words::Language;

/// Runs the command.
pub(super) fn run(arguments: &Arguments, language: Option<Language>) -> Outcome {
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
        units: Units::default(),
    };
    answer(arguments.specs.specs.as_deref(), language, |loaded, words| {
        let ask = Ask { units: arguments.units.unwrap_or(loaded.model.shop.units), ..ask };
        for_people(arguments.format, words, || {
            of(&loaded.model, words, &ask).map(|table| tell(words, &loaded.from, &table, arguments.format))
        })
    })
}
