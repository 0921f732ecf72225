//! A mode that forces nothing tests nothing.

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (id, entry) in &set.modes {
        if !entry.item.forces.is_empty() || entry.item.misread {
            continue;
        }
        let message = Message::new("rule-mode-forces-nothing").with("id", id);
        let finding = Finding::warning(message, entry.place.clone(), Message::new("wanted-forced"));
        findings.report(finding.help(Message::new("rule-mode-forces-nothing-help")));
    }
}
