//! A driver above 60 V DC: high voltage, for which nothing is computed or printed.

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

/// Above 60 V DC a circuit is of voltage class B (ISO 6469-3, from memory).
pub(super) const GREATEST: f64 = 60.0;

pub(super) fn check(set: &Set, findings: &Findings) {
    for entry in set.drivers.values() {
        let Some(drive) = &entry.item.drive else { continue };
        let battery = drive.battery.as_ref().map(|battery| (battery.value.high, battery));
        let battery = battery.map(|(high, battery)| (high, &battery.written, &battery.place));
        let nominal = drive.nominal.as_ref().map(|nominal| (nominal.value, &nominal.written, &nominal.place));
        let high = |(volts, ..): &(crate::quantity::Voltage, _, _)| volts.volts() > GREATEST;
        let Some((_, written, place)) = [battery, nominal].into_iter().flatten().find(high) else { continue };
        let message = Message::new("rule-high-voltage").with("written", written);
        let label = Message::new("wanted-low-voltage").with("greatest", GREATEST);
        let finding = Finding::error(message, place.clone(), label);
        findings.report(finding.help(Message::new("rule-high-voltage-help")));
    }
}
