//! A guard band belongs to a guarded decision, and is one.

use crate::diag::{Finding, Findings};
use crate::spec::{Decision, Set};
use crate::words::Message;

/// The largest guard band of the usual ones, w = 3 U, which leaves less than one
/// false accept in a million (ILAC-G8:09/2019, table 1, from memory).
const MOST: f64 = 3.0;

pub(super) fn check(set: &Set, findings: &Findings) {
    let Some(shop) = set.shop.as_ref().map(|entry| &entry.item) else { return };
    let Some(guard) = &shop.guard else { return };
    let part = guard.value.part();
    if part <= 0.0 || part > MOST {
        let message = Message::new("rule-guard-size").with("written", &guard.written);
        let finding = Finding::error(message, guard.place.clone(), Message::new("wanted-guard-size"));
        findings.report(finding.help(Message::new("rule-guard-size-help")));
        return;
    }
    if shop.decision.as_ref().is_some_and(|decision| decision.value == Decision::Guarded) {
        return;
    }
    let message = Message::new("rule-guard-alone").with("written", &guard.written);
    let finding = Finding::error(message, guard.place.clone(), Message::new("wanted-no-guard"));
    let finding = match &shop.decision {
        Some(decision) => finding.because(decision.place.clone(), Message::new("label-its-decision")),
        None => finding,
    };
    findings.report(finding.help(Message::new("rule-guard-alone-help")));
}
