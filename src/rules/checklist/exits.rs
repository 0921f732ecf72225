//! A question with fewer than two exits. A fourth has no key, and TOML has each key once.

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for step in super::questions(set).filter(|step| step.exits.len() < 2 && !step.misread) {
        let message = Message::new("rule-check-exits")
            .with("step", &step.id.value)
            .with_count("count", step.exits.len());
        let finding = Finding::error(message, step.id.place.clone(), Message::new("wanted-exits"));
        findings.report(finding.help(Message::new("rule-check-exits-help")));
    }
}
