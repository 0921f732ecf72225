//! The head of a sheet: which vehicle, which instruments.

use serde::Serialize;

use crate::document::marks::Marks;
use crate::model::{Fact, Sheet, Vehicle};
use crate::words::{Message, Words};

/// A known fact of the vehicle.
#[derive(Debug, Serialize)]
pub(super) struct Labelled {
    label: String,
    value: String,
}

/// An instrument, and how far to trust it.
#[derive(Debug, Serialize)]
pub(super) struct Instrument {
    role: String,
    name: String,
    accuracy: String,
}

/// What is known of the vehicle; what is not is NOT GIVEN.
pub(super) fn identity(words: &Words, vehicle: &Vehicle, system: &str, marks: &mut Marks) -> Vec<Labelled> {
    let mut known = |part: &str, label, value: &Option<String>| {
        let fact = Fact {
            key: format!("vehicle.{}.{part}", vehicle.id),
            label,
            written: value.clone(),
            source: Some(String::new()),
        };
        if fact.is_missing() {
            marks.mark(words, &fact);
        }
        Labelled {
            label: words.word(label),
            value: fact.written.unwrap_or_else(|| words.word("doc-not-given")),
        }
    };
    vec![
        known("title", "sheet-vehicle", &Some(vehicle.title.clone())),
        known("system", "sheet-system", &Some(system.to_owned())),
        known("registration", "sheet-registration", &vehicle.registration),
        known("chassis", "sheet-chassis", &vehicle.chassis),
        known("built", "sheet-built", &vehicle.built),
    ]
}

/// The instruments that windows and ± assume.
pub(super) fn instruments(words: &Words, sheet: &Sheet, marks: &mut Marks) -> Vec<Instrument> {
    let mut all = Vec::new();
    let mut line = |role, found: Option<(&String, &Vec<Fact>)>| {
        let Some((title, facts)) = found else {
            let not_given = words.word("doc-not-given");
            let key = format!("sheet.{}.{role}", sheet.id);
            marks.mark(words, &Fact::new::<()>(key, role, None));
            all.push(Instrument { role: words.word(role), name: not_given, accuracy: String::new() });
            return;
        };
        let shown = facts.iter().map(|fact| {
            let value = Message::new("sheet-instrument-value")
                .with_word("what", fact.label)
                .with("value", marks.shown(words, fact));
            words.say(&value)
        });
        let accuracy = shown.collect::<Vec<_>>().join(" · ");
        all.push(Instrument { role: words.word(role), name: title.clone(), accuracy });
    };
    let thermometer = sheet.thermometer.as_ref();
    line("sheet-thermometer", thermometer.map(|meter| (&meter.title, &meter.facts)));
    line("sheet-multimeter", sheet.meter.as_ref().map(|meter| (&meter.title, &meter.facts)));
    all
}
