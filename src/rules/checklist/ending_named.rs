//! An ending at a part or in the harness says which one.

use crate::diag::{Finding, Findings};
use crate::spec::{EndingKind, Set};
use crate::words::Message;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for ending in set.checklists.values().flat_map(|entry| &entry.item.endings) {
        let Some(kind) = &ending.kind else { continue };
        if matches!(kind.value, EndingKind::Part | EndingKind::Harness) && ending.what.is_none() {
            let message = Message::new("rule-check-ending-unnamed").with("ending", &ending.id.value);
            let finding = Finding::error(message, kind.place.clone(), Message::new("wanted-what"));
            findings.report(finding.help(Message::new("rule-check-ending-unnamed-help")));
        }
    }
}
