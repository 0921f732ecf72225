//! A key on a card about a thing that it says nothing of.

use crate::diag::{Finding, Findings, Place};
use crate::spec::{About, Card, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for card in set.cards.values().map(|entry| &entry.item) {
        let Some((about, _)) = card.about.first() else { continue };
        for (key, place, belongs) in keys(card).into_iter().filter(|(.., belongs)| !belongs.contains(about)) {
            let Some(place) = place else { continue };
            let words = super::quoted(belongs.iter().map(|about| about.key()));
            let message = Message::new("rule-card-key").with("key", key).with("about", about.key());
            let label = Message::new("wanted-card-about").with("words", words);
            findings.report(Finding::error(message, place.clone(), label));
        }
    }
}

/// Each such key, where it stands, and which cards it belongs to.
fn keys(card: &Card) -> [(&'static str, Option<&Place>, &'static [About]); 8] {
    let sensor: &[About] = &[About::Sensor];
    let connector: &[About] = &[About::Connector];
    let metered: &[About] =
        &[About::Sensor, About::Connector, About::Actuator, About::Driver, About::Request];
    [
        ("meter", card.meter.as_ref().map(|meter| &meter.place), metered),
        ("step", card.step.as_ref().map(|step| &step.place), sensor),
        ("range", card.range.as_ref().map(|range| &range.place), sensor),
        ("example", card.example.as_ref().map(|example| &example.place), sensor),
        ("strip", card.strip.as_ref().map(|strip| &strip.place), sensor),
        ("hangs", card.hangs.as_ref().map(|hangs| &hangs.place), sensor),
        ("at", card.at.as_ref().map(|at| &at.place), connector),
        ("view", card.view.as_ref().map(|view| &view.place), connector),
    ]
}
