//! A strip table with more rows than a card can hold.

use crate::diag::{Finding, Findings};
use crate::model;
use crate::model::strip::{MOST_ROWS, rows_in};
use crate::spec::{About, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for card in set.cards.values().map(|entry| &entry.item) {
        let Some(step) = card.step.as_ref().filter(|step| step.value.kelvins() > 0.0) else { continue };
        let sensor = card.of(About::Sensor).and_then(|id| set.sensors.get(&id.value));
        let Some(sensor) = sensor.map(|entry| &entry.item) else { continue };
        let Some(Ok(curve)) = sensor.curve.as_ref().and_then(|curve| model::curve(&curve.value)) else {
            continue;
        };
        let whole = sensor.range.as_ref().map_or_else(|| curve.domain(), |range| range.value);
        let range = card.range.as_ref().map_or(whole, |range| range.value);
        let rows = rows_in(range, step.value);
        if rows <= MOST_ROWS {
            continue;
        }
        let message = Message::new("rule-strip-rows").with("step", &step.written).with("rows", rows);
        let label = Message::new("wanted-fewer-rows").with("most", MOST_ROWS);
        findings.report(Finding::error(message, step.place.clone(), label));
    }
}
