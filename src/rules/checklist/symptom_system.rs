//! A symptom's checklist is one of its own system.

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for symptom in set.symptoms.values().map(|entry| &entry.item) {
        let (Some(system), Some(link)) = (&symptom.system, &symptom.checklist) else { continue };
        let theirs = set.checklists.get(&link.value).and_then(|entry| entry.item.system.as_ref());
        let Some(theirs) = theirs.filter(|theirs| theirs.value != system.value) else { continue };
        let message = Message::new("rule-other-system")
            .with("kind", "checklist")
            .with("id", &link.value)
            .with("theirs", &theirs.value)
            .with("system", &system.value);
        let label = Message::new("wanted-of-system").with("system", &system.value);
        let finding = Finding::error(message, link.place.clone(), label);
        findings.report(finding.because(theirs.place.clone(), Message::new("label-its-system")));
    }
}
