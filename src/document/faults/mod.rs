//! Fault dictionaries: what each fault of a thing reads, what the control unit
//! would believe, and which can be told apart.
//!
//! One file per kind of thing; `dictionary` is what they have in common.

mod coil;
pub(in crate::document) mod dictionary;
mod light;
mod potentiometer;
pub(in crate::document) mod sensor;
mod transducer;

use crate::diag::nearest;
use crate::document::table::Table;
use crate::model::Model;
use crate::quantity::{Pressure, Ratio, Temperature, Units};
use crate::words::{Message, Words};

/// Where the readings are taken.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Place {
    /// At the control unit's connector.
    ControlUnit,
    /// At the sensor's own plug.
    Sensor,
}

/// What is asked for.
#[derive(Debug, Clone, Copy, Default)]
pub struct Ask<'a> {
    /// The id of a thing, or `kind.id` where two kinds share it.
    pub id: &'a str,
    /// The temperature of a sensor or a coil; the others do not depend on one.
    pub at: Option<Temperature>,
    /// Where a sensor is measured; the others have one place.
    pub place: Option<Place>,
    /// The position of an actuator's feedback, a part of its travel; both stops where not given.
    pub position: Option<Ratio>,
    /// The pressure at a transducer, in its own sense; both ends of its line where not given.
    pub pressure: Option<Pressure>,
    /// The instruments named.
    pub instruments: &'a [String],
    /// The units of what is shown.
    pub units: Units,
}

/// One kind of thing: the names that stand before an id, its ids, its dictionary,
/// and which of the optional arguments it has.
struct Kind<'a> {
    names: &'static [&'static str],
    ids: Vec<&'a str>,
    dictionary: fn(&Model, &Words, &str, &Ask<'_>) -> Result<Table, Message>,
    takes: &'static [Argument],
}

/// An argument that not every kind has.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Argument {
    Place,
    Position,
    Pressure,
}

/// Every kind that has faults, in the order in which an id is looked for.
fn kinds(model: &Model) -> [Kind<'_>; 5] {
    [
        Kind {
            names: &["sensor"],
            ids: ids(&model.sensors),
            dictionary: sensor::of,
            takes: &[Argument::Place],
        },
        Kind {
            names: &["actuator"],
            ids: ids(&model.actuators),
            dictionary: potentiometer::of,
            takes: &[Argument::Position],
        },
        Kind { names: &["driver", "coil"], ids: ids(&model.drivers), dictionary: coil::of, takes: &[] },
        Kind {
            names: &["transducer"],
            ids: ids(&model.transducers),
            dictionary: transducer::of,
            takes: &[Argument::Pressure],
        },
        Kind { names: &["light"], ids: ids(&model.lights), dictionary: light::of, takes: &[] },
    ]
}

fn ids<T>(things: &std::collections::BTreeMap<String, T>) -> Vec<&str> {
    things.keys().map(String::as_str).collect()
}

/// The dictionary of one thing as a table.
///
/// # Errors
/// When there is no such thing or instrument, an argument is not one for it, or
/// what the dictionary rests on is NOT GIVEN.
pub fn of(model: &Model, words: &Words, ask: &Ask<'_>) -> Result<Table, Message> {
    let kinds = kinds(model);
    for kind in &kinds {
        let after = |name: &&str| ask.id.strip_prefix(*name).and_then(|rest| rest.strip_prefix('.'));
        let wanted = kind.names.iter().find_map(after).unwrap_or(ask.id);
        if kind.ids.contains(&wanted) {
            refuse_others(kind, ask, wanted)?;
            return (kind.dictionary)(model, words, wanted, ask);
        }
    }
    let known = kinds.iter().flat_map(|kind| kind.ids.iter().copied());
    Err(match nearest(ask.id, known) {
        Some(near) => Message::new("run-no-faults-near").with("id", ask.id).with("near", near),
        None => Message::new("run-no-faults").with("id", ask.id),
    })
}

/// Everything that may have a dictionary, as `kind.id`.
#[must_use]
pub fn known(model: &Model) -> Vec<String> {
    let named = |kind: Kind<'_>| -> Vec<String> {
        let name = kind.names.first().copied().unwrap_or_default();
        kind.ids.iter().map(|id| format!("{name}.{id}")).collect()
    };
    kinds(model).into_iter().flat_map(named).collect()
}

/// Refuses arguments that would be without effect.
fn refuse_others(kind: &Kind<'_>, ask: &Ask<'_>, id: &str) -> Result<(), Message> {
    let given = [
        (Argument::Place, ask.place.is_some(), "run-faults-place"),
        (Argument::Position, ask.position.is_some(), "run-faults-position"),
        (Argument::Pressure, ask.pressure.is_some(), "run-faults-pressure"),
    ];
    match given.iter().find(|(argument, given, _)| *given && !kind.takes.contains(argument)) {
        Some((_, _, message)) => Err(Message::new(message).with("id", id)),
        None => Ok(()),
    }
}

/// The temperature, of a thing that depends on one.
fn temperature(ask: &Ask<'_>, id: &str) -> Result<Temperature, Message> {
    ask.at.ok_or_else(|| Message::new("run-faults-no-temperature").with("id", id))
}
