//! A step or an ending that no answer leads to.

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for (_, entry) in super::all(set) {
        let checklist = &entry.item;
        // Where an exit dangles, what it should have led to is not to blame.
        let Some((ways, start)) = super::whole(checklist) else { continue };
        let reached = ways.graph.reachable(start);
        for node in (0..ways.graph.len()).filter(|node| !reached[*node]) {
            let Some(name) = super::name(checklist, node) else { continue };
            let (id, label) = if ways.is_ending(node) {
                ("rule-check-unreached-ending", "wanted-reached-ending")
            } else {
                ("rule-check-unreachable", "wanted-reached-step")
            };
            let message = Message::new(id).with("name", &name.value);
            let finding = Finding::error(message, name.place.clone(), Message::new(label));
            findings.report(match &checklist.start {
                Some(at) => finding.because(at.place.clone(), Message::new("label-start")),
                None => finding,
            });
        }
    }
}
