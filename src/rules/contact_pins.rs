//! Position contacts on a wire each have as many pins as names.

use crate::diag::{Finding, Findings};
use crate::spec::{Role, RolePin, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for actuator in set.actuators.values().map(|entry| &entry.item) {
        let Some(names) = actuator.contacts.as_ref().and_then(|contacts| contacts.names.as_ref()) else {
            continue;
        };
        for pins in [&actuator.pins, &actuator.component_pins] {
            let of_contacts = |pin: &&RolePin| matches!(pin.role, Role::Contact(_));
            let pins: Vec<&RolePin> = pins.iter().filter(of_contacts).collect();
            let (Some(last), Some(name)) = (pins.last(), names.first()) else { continue };
            if pins.len() == names.len() {
                continue;
            }
            let message =
                Message::new("rule-contact-pins").with_count("count", pins.len()).with("names", names.len());
            let label = Message::new("wanted-pins").with_count("count", names.len());
            let finding = Finding::error(message, last.pin.place.clone(), label);
            findings.report(finding.because(name.place.clone(), Message::new("label-contact-names")));
        }
    }
}
