//! A motor takes more current held than running free.

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for motor in set.actuators.values().filter_map(|entry| entry.item.motor.as_ref()) {
        let (Some(free), Some(held)) = (&motor.current, &motor.stall) else { continue };
        // Zero and less is another rule's.
        if held.value.low > free.value.high || held.value.low.amperes() <= 0.0 {
            continue;
        }
        let message = Message::new("rule-stall").with("held", &held.written).with("free", &free.written);
        let label = Message::new("wanted-above").with("low", free.value.high);
        let finding = Finding::error(message, held.place.clone(), label);
        let finding = finding.because(free.place.clone(), Message::new("label-free-run"));
        findings.report(finding.help(Message::new("rule-stall-help")));
    }
}
