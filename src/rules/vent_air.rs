//! Air that does not exist, or that nobody described.

use crate::diag::{Finding, Findings, Place};
use crate::quantity::{Interval, Ratio, Temperature};
use crate::spec::{Set, Sourced, Vent};
use crate::words::Message;

/// Outside air in which vehicles are tested (common practice, no source; some room on both sides).
const OUTSIDE_AIR: Interval<Temperature> =
    Interval { low: Temperature::from_celsius(-40.0), high: Temperature::from_celsius(60.0) };

/// Air that leaves a wet evaporator is nearly saturated (common practice, no source).
const LEAST_OUTLET: f64 = 0.5;

pub(super) fn check(set: &Set, findings: &Findings) {
    for vent in set.vents.values().map(|entry| &entry.item) {
        for (at, written, place) in [
            vent.ambient.as_ref().map(|range| (range.value, &range.written, &range.place)),
            vent.cabin.as_ref().map(|cabin| (point(cabin.value), &cabin.written, &cabin.place)),
            vent.evaporator.as_ref().map(|range| (range.value, &range.written, &range.place)),
        ]
        .into_iter()
        .flatten()
        {
            if !(OUTSIDE_AIR.contains(&at.low) && OUTSIDE_AIR.contains(&at.high)) {
                let message = Message::new("rule-no-such-air").with("written", written);
                let label = between(OUTSIDE_AIR.low, OUTSIDE_AIR.high);
                findings.report(Finding::error(message, place.clone(), label));
            }
        }
        let humidity = vent.humidity.as_ref().map(|range| (range.value, &range.written, &range.place));
        let cabin = vent.cabin_humidity.as_ref().map(of_ratio);
        for (part, written, place) in [humidity, cabin].into_iter().flatten() {
            share(part, 0.0, written, place, findings);
        }
        if let Some((part, written, place)) = vent.outlet_humidity.as_ref().map(of_ratio) {
            share(part, LEAST_OUTLET, written, place, findings);
        }
        for position in &vent.positions {
            if let Some((part, written, place)) = position.outside.as_ref().map(of_ratio) {
                share(part, 0.0, written, place, findings);
            }
        }
        cabin_air(vent, findings);
    }
}

/// A position that takes in cabin air needs to know it.
fn cabin_air(vent: &Vent, findings: &Findings) {
    if vent.cabin_misread || vent.cabin.is_some() && vent.cabin_humidity.is_some() {
        return;
    }
    let mixes = |outside: &Sourced<Ratio>| outside.value.part() < 1.0;
    let first = vent.positions.iter().find(|position| position.outside.as_ref().is_some_and(mixes));
    let Some(position) = first else { return };
    let key = if vent.cabin.is_none() { "cabin" } else { "cabin_humidity" };
    let message = Message::new("rule-cabin-missing").with("key", key);
    let finding = Finding::warning(message, position.at.clone(), Message::new("label-takes-cabin-air"));
    findings.report(finding.help(Message::new("rule-cabin-help")));
}

fn share(part: Interval<Ratio>, least: f64, written: &str, place: &Place, findings: &Findings) {
    if least <= part.low.part() && part.high.part() <= 1.0 {
        return;
    }
    let message = Message::new("rule-no-such-share").with("written", written);
    let label = between(Ratio::new(least), Ratio::new(1.0));
    findings.report(Finding::error(message, place.clone(), label));
}

fn of_ratio(ratio: &Sourced<Ratio>) -> (Interval<Ratio>, &String, &Place) {
    (Interval { low: ratio.value, high: ratio.value }, &ratio.written, &ratio.place)
}

fn point(at: Temperature) -> Interval<Temperature> {
    Interval { low: at, high: at }
}

fn between<T: std::fmt::Display>(low: T, high: T) -> Message {
    Message::new("wanted-inside").with("low", low).with("high", high)
}
