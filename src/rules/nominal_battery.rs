//! A nominal battery voltage outside the voltages that the battery has.

use super::high_voltage::is_high;
use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for drive in set.drivers.values().filter_map(|entry| entry.item.drive.as_ref()) {
        let (Some(battery), Some(nominal)) = (&drive.battery, &drive.nominal) else { continue };
        // High voltage is another rule's.
        let high = is_high(nominal.value) || is_high(battery.value.high);
        // Nor is a voltage below zero this one's.
        if high || nominal.value.volts() <= 0.0 || battery.value.contains(&nominal.value) {
            continue;
        }
        let message = Message::new("rule-nominal-battery").with("written", &nominal.written);
        let label =
            Message::new("wanted-inside").with("low", battery.value.low).with("high", battery.value.high);
        let finding = Finding::error(message, nominal.place.clone(), label);
        findings.report(finding.because(battery.place.clone(), Message::new("label-battery")));
    }
}
