//! A coil or a wire at a temperature for which copper is not computed.

use crate::diag::{Finding, Findings};
use crate::physics::copper::DOMAIN;
use crate::quantity::{Interval, Temperature};
use crate::spec::{Set, Sourced};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for coil in set.drivers.values().filter_map(|entry| entry.item.coil.as_ref()) {
        known(&coil.at, |at| Interval { low: *at, high: *at }, findings);
        known(&coil.temperature, |range| *range, findings);
    }
    for wire in set.wires.values() {
        known(&wire.item.temperature, |range| *range, findings);
    }
}

fn known<T>(value: &Option<Sourced<T>>, range: impl Fn(&T) -> Interval<Temperature>, findings: &Findings) {
    let Some(value) = value else { return };
    let ends = range(&value.value);
    if DOMAIN.contains(&ends.low) && DOMAIN.contains(&ends.high) {
        return;
    }
    let message = Message::new("rule-copper-range").with("written", &value.written);
    let label = Message::new("wanted-inside").with("low", DOMAIN.low).with("high", DOMAIN.high);
    findings.report(Finding::error(message, value.place.clone(), label));
}
