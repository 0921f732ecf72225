//! A wire that loses more than it may.

use crate::diag::{Finding, Findings};
use crate::model::load::{conductors, greatest};
use crate::physics::copper::REFERENCE;
use crate::physics::wire::{Run, drop, nominal_per_metre, resistance};
use crate::quantity::{Rounding, Temperature, Voltage, figure};
use crate::spec::{Set, Wire};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for wire in set.wires.values().map(|entry| &entry.item) {
        let Some(limit) = &wire.drop_limit else { continue };
        let Some((lost, at)) = lost(wire).filter(|(lost, _)| *lost > limit.value) else { continue };
        let message = Message::new("rule-wire-drop")
            .with("lost", format!("{} V", figure(lost.volts(), 3, Rounding::Up)))
            .with("limit", &limit.written)
            .with("at", at.to_hundredths());
        let finding = Finding::warning(message, limit.place.clone(), Message::new("wanted-wire-drop"));
        let finding = match &wire.size {
            Some(size) => finding.because(size.place.clone(), Message::new("label-its-size")),
            None => finding,
        };
        findings.report(finding.help(Message::new("rule-wire-drop-help")));
    }
}

/// The greatest drop, at the hottest; of solid copper where no greatest resistance is known.
fn lost(wire: &Wire) -> Option<(Voltage, Temperature)> {
    let metre = match greatest(wire) {
        Some(metre) => metre,
        None => nominal_per_metre(wire.size.as_ref()?.value).ok()?,
    };
    let run = Run { length: wire.length.as_ref()?.value, conductors: conductors(wire)? };
    let at = wire.temperature.as_ref().map_or(REFERENCE, |range| range.value.high);
    let whole = resistance(metre, run, at).ok()?;
    Some((drop(whole, wire.current.as_ref()?.value).ok()?, at))
}
