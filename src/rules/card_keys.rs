//! A key of a sensor's strip table on a card that has none.

use crate::diag::{Finding, Findings};
use crate::spec::{About, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for card in set.cards.values().map(|entry| &entry.item) {
        let Some((about, _)) = card.about.first().filter(|(about, _)| *about != About::Sensor) else {
            continue;
        };
        let step = card.step.as_ref().map(|step| ("step", &step.place));
        let range = card.range.as_ref().map(|range| ("range", &range.place));
        let example = card.example.as_ref().map(|example| ("example", &example.place));
        for (key, place) in [step, range, example].into_iter().flatten() {
            let message = Message::new("rule-card-key").with("key", key).with("about", about.key());
            findings.report(Finding::error(message, place.clone(), Message::new("wanted-sensor-card")));
        }
    }
}
