//! A control point that no mode forces is never tested.

use crate::diag::{Finding, Findings};
use crate::spec::{Mode, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for system in set.systems.keys() {
        let modes = set.modes_of(system);
        // Without modes, or with one that was not read, nobody can say so.
        let unknown = |mode: &Mode| mode.misread || super::names_a_stranger(set, mode);
        if modes.is_empty() || modes.iter().any(|(_, entry)| unknown(&entry.item)) {
            continue;
        }
        for (id, entry) in set.controls_of(system) {
            let mut forces = modes.iter().flat_map(|(_, mode)| &mode.item.forces);
            if forces.any(|force| force.control.value == id) {
                continue;
            }
            let message = Message::new("rule-control-never-forced").with("id", id).with("system", system);
            let finding = Finding::warning(message, entry.place.clone(), Message::new("wanted-forcing-mode"));
            findings.report(finding.help(Message::new("rule-control-never-forced-help")));
        }
    }
}
