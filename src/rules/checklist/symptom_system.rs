//! A symptom's checklist is one of its own system.

use crate::diag::Findings;
use crate::rules::shared::of_system;
use crate::spec::Set;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for symptom in set.symptoms.values().map(|entry| &entry.item) {
        let (Some(system), Some(link)) = (&symptom.system, &symptom.checklist) else { continue };
        let theirs = set.checklists.get(&link.value).and_then(|entry| entry.item.system.as_ref());
        of_system(findings, "checklist", link, theirs, system);
    }
}
