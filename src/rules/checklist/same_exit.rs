//! A question whose every answer leads to the same place: it decides nothing.

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for step in super::questions(set) {
        let [first, rest @ ..] = step.exits.as_slice() else { continue };
        let Some(second) = rest.first() else { continue };
        if rest.iter().any(|exit| exit.to.value != first.to.value) {
            continue;
        }
        let message =
            Message::new("rule-check-same-exit").with("step", &step.id.value).with("to", &first.to.value);
        let finding = Finding::warning(message, second.to.place.clone(), Message::new("wanted-other-place"))
            .because(first.to.place.clone(), Message::new("label-first-exit"));
        findings.report(finding.help(Message::new("rule-check-same-exit-help")));
    }
}
