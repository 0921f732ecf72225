//! A step and an ending under one name: an exit could mean either.

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for (_, entry) in super::all(set) {
        for ending in &entry.item.endings {
            let same = entry.item.steps.iter().find(|step| step.id.value == ending.id.value);
            let Some(step) = same else { continue };
            let message = Message::new("rule-check-same-name").with("name", &ending.id.value);
            let finding =
                Finding::error(message, ending.id.place.clone(), Message::new("wanted-other-name-here"));
            findings.report(finding.because(step.id.place.clone(), Message::new("label-step-of-name")));
        }
    }
}
