//! A cooling duty without a tolerance: vent temperatures get no limits.

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for vent in set.vents.values().map(|entry| &entry.item) {
        let Some(duty) = vent.duty.as_ref().filter(|duty| duty.value.limits.is_none()) else { continue };
        let message = Message::new("rule-duty-no-limits").with("written", &duty.written);
        let finding = Finding::warning(message, duty.place.clone(), Message::new("wanted-tolerance"));
        findings.report(finding.help(Message::new("rule-no-limits-help").with("written", &duty.written)));
    }
}
