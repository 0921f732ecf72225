//! A wire and the load that it feeds belong to one system.

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for wire in set.wires.values().map(|entry| &entry.item) {
        // A load that is not there is another rule's.
        let (Some(driver), Some(system)) = (&wire.driver, &wire.system) else { continue };
        let Some(load) = set.drivers.get(&driver.value).map(|entry| &entry.item) else { continue };
        let Some(other) = load.system.as_ref().filter(|other| other.value != system.value) else { continue };
        let message =
            Message::new("rule-wire-system").with("driver", &driver.value).with("system", &other.value);
        let label = Message::new("wanted-driver-of").with("system", &system.value);
        let finding = Finding::error(message, driver.place.clone(), label);
        findings.report(finding.because(system.place.clone(), Message::new("label-wire-system")));
    }
}
