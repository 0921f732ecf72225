//! A reading with a unit is held against a number.

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for step in super::questions(set) {
        let (Some(unit), Some(expect)) = (&step.unit, &step.expect) else { continue };
        // A card holds the numbers that depend on temperature.
        if expect.value.chars().any(|c| c.is_ascii_digit()) || step.card.is_some() {
            continue;
        }
        let message = Message::new("rule-check-no-number")
            .with("step", &step.id.value)
            .with("expect", &expect.written)
            .with("unit", &unit.value);
        let finding = Finding::error(message, expect.place.clone(), Message::new("wanted-limit"));
        findings.report(finding.because(unit.place.clone(), Message::new("label-unit")));
    }
}
