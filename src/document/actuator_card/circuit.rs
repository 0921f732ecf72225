//! The circuit drawing of an actuator: control unit left, actuator right, a wire for each pin.

use schemars::JsonSchema;
use serde::Serialize;

use crate::document::ends::short;
use crate::model::{Actuator, PartEnd};
use crate::physics::ladder::Wiring;
use crate::physics::potentiometer::LoadTo;
use crate::quantity::{Resistance, Toleranced};
use crate::spec::Role;
use crate::words::{Message, Words};

/// More wires than the drawing has room for.
const MOST_LINES: usize = 9;

/// More contacts of a ladder than the drawing has room for.
const MOST_RUNGS: usize = 8;

/// What stands at the parts of the drawing.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Circuit {
    /// `potentiometer`, `contacts`, `series`, `parallel` or `motor`.
    form: &'static str,
    /// The wires from top to bottom.
    lines: Vec<Line>,
    /// The pull-up of a ladder.
    pull_up: String,
    /// What the pull-up of a ladder hangs on.
    supply: String,
    /// A load on the wiper, and whether it leads to the reference.
    load: String,
    /// Whether that load leads to the reference, not to the return.
    load_up: bool,
    /// The track of a potentiometer.
    track: String,
    /// The resistors of a ladder, from the pin on.
    chain: Vec<String>,
    /// How many contacts a ladder has.
    rungs: usize,
    /// What it shows, for readers who cannot see it.
    alt: String,
}

/// One wire: what it does, and its pin at each end.
#[derive(Debug, Serialize, JsonSchema)]
struct Line {
    /// `reference`, `signal`, `return`, `contact`, `common` or `motor`.
    role: &'static str,
    /// What stands inside the control unit.
    label: String,
    /// What stands beside it inside the actuator.
    name: String,
    /// The pin at the control unit: `C3/2`; may be empty.
    unit: String,
    /// The pin at the actuator.
    own: String,
}

/// Composes the drawing; `None` where no pin was given, or where there are too many.
pub(super) fn compose(words: &Words, actuator: &Actuator) -> Option<Circuit> {
    let (form, alt) = match (&actuator.stops, &actuator.ladder, &actuator.contacts) {
        (Some(_), ..) => ("potentiometer", "card-act-alt-potentiometer"),
        (None, Some(ladder), _) => match ladder.ladder.wiring {
            Wiring::Series { .. } => ("series", "card-act-alt-ladder"),
            Wiring::Parallel { .. } => ("parallel", "card-act-alt-ladder"),
        },
        (None, None, Some(_)) => ("contacts", "card-act-alt-contacts"),
        (None, None, None) => ("motor", "card-act-alt-motor"),
    };
    let names = actuator.contacts.as_ref().map(|contacts| contacts.names.as_slice()).unwrap_or_default();
    let lines = lines(words, actuator, form, names);
    let rungs = actuator.ladder.as_ref().map_or(0, |ladder| ladder.ladder.contacts());
    if lines.is_empty() || lines.len() > MOST_LINES || rungs > MOST_RUNGS {
        return None;
    }
    let load = actuator.feedback.as_ref().and_then(|feedback| feedback.load);
    let ladder = actuator.ladder.as_ref().map(|ladder| &ladder.ladder);
    let chain = match ladder.map(|ladder| &ladder.wiring) {
        Some(Wiring::Series { chain, .. } | Wiring::Parallel { chain }) => chain.iter().map(ohms).collect(),
        None => Vec::new(),
    };
    let pins = lines.iter().map(|line| format!("{} {}", line.unit, line.name).trim().to_owned());
    let alt = Message::new(alt).with("pins", pins.collect::<Vec<_>>().join(", "));
    Some(Circuit {
        form,
        pull_up: ladder.map(|ladder| ohms(&ladder.pull_up)).unwrap_or_default(),
        supply: ladder.map(|ladder| ladder.reference.nominal.to_string()).unwrap_or_default(),
        load: load.map(|(load, _)| ohms(&load)).unwrap_or_default(),
        load_up: load.is_some_and(|(_, to)| to == LoadTo::Reference),
        track: actuator.feedback.as_ref().map(|feedback| ohms(&feedback.track)).unwrap_or_default(),
        chain,
        rungs,
        alt: words.say(&alt),
        lines,
    })
}

fn ohms(part: &Toleranced<Resistance>) -> String {
    part.nominal.to_string()
}

/// The wires in the order in which they are drawn from top to bottom.
fn lines(words: &Words, actuator: &Actuator, form: &str, names: &[String]) -> Vec<Line> {
    let contact = |index: usize| (Role::Contact(index), "contact");
    let contacts = || (0..names.len()).map(contact).collect::<Vec<_>>();
    let reading: Vec<(Role, &'static str)> = match form {
        "potentiometer" => {
            vec![(Role::Reference, "reference"), (Role::Signal, "signal"), (Role::Return, "return")]
        }
        "contacts" => contacts().into_iter().chain([(Role::Common, "common")]).collect(),
        "motor" => Vec::new(),
        _ => vec![(Role::Signal, "signal"), (Role::Return, "return")],
    };
    let motor = [(Role::MotorPlus, "motor"), (Role::MotorMinus, "motor")];
    let pin = |ends: &[PartEnd], role: Role| {
        let found = ends.iter().flat_map(|end| &end.pins).find(|pin| pin.role == role);
        found.map(|pin| short(&pin.pin.name))
    };
    let line = |(role, key): (Role, &'static str)| {
        let (unit, own) = (pin(&actuator.unit_ends, role), pin(&actuator.own_ends, role));
        // A motor without pins is not drawn; a reading's wire is there, whatever its pins.
        if unit.is_none() && own.is_none() && key == "motor" {
            return None;
        }
        let reference = actuator.reference.map(|reference| reference.nominal.to_string());
        let label = match role {
            Role::Reference => reference.unwrap_or_else(|| words.word("doc-not-given")),
            Role::Signal | Role::Contact(_) => words.word("card-act-input"),
            Role::MotorPlus | Role::MotorMinus => words.word("card-act-driver"),
            _ => String::new(),
        };
        let name = match role {
            Role::Contact(index) => names.get(index).cloned().unwrap_or_default(),
            _ => String::new(),
        };
        Some(Line { role: key, label, name, unit: unit.unwrap_or_default(), own: own.unwrap_or_default() })
    };
    let lines: Vec<Line> = reading.into_iter().chain(motor).filter_map(line).collect();
    // A motor has two wires, or its drawing would hang in the air.
    let motors = lines.iter().filter(|line| line.role == "motor").count();
    lines.into_iter().filter(|line| line.role != "motor" || motors == 2).collect()
}
