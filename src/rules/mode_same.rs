//! Two modes of one system that do the same with every control point.

use std::collections::BTreeMap;

use crate::diag::{Finding, Findings};
use crate::spec::{Mode, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for system in set.systems.keys() {
        let mut seen = BTreeMap::new();
        for (id, entry) in set.modes_of(system) {
            // Modes that force nothing are another rule's.
            if entry.item.misread || entry.item.forces.is_empty() {
                continue;
            }
            let Some((first_id, first)) = seen.insert(cells(&entry.item), (id, &entry.place)) else {
                continue;
            };
            let message = Message::new("rule-mode-same").with("first", first_id).with("second", id);
            let finding = Finding::warning(message, entry.place.clone(), Message::new("label-second-mode"))
                .because(first.clone(), Message::new("label-first-mode"))
                .help(Message::new("rule-mode-same-help"));
            findings.report(finding);
        }
    }
}

/// What a mode does with each control point: a value, free, or don't care.
fn cells(mode: &Mode) -> BTreeMap<&str, (u8, &str)> {
    let forced = mode.forces.iter().map(|force| {
        let value = force.value.as_ref().map_or("", |value| value.value.as_str());
        (force.control.value.as_str(), (0, value))
    });
    let free = mode.free.iter().map(|control| (control.value.as_str(), (1, "")));
    let dont_care = mode.dont_care.iter().map(|control| (control.value.as_str(), (2, "")));
    forced.chain(free).chain(dont_care).collect()
}
