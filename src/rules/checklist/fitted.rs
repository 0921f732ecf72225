//! A checklist's vehicles belong to its system, and there is at least one.

use crate::diag::{Finding, Findings};
use crate::rules::shared::{each_once, of_system};
use crate::spec::Set;
use crate::words::Message;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for (id, entry) in super::all(set) {
        let Some(system) = &entry.item.system else { continue };
        each_once(findings, entry.item.vehicles.iter().flatten());
        for vehicle in entry.item.vehicles.iter().flatten() {
            let theirs = set.vehicles.get(&vehicle.value).and_then(|known| known.item.system.as_ref());
            of_system(findings, "vehicle", vehicle, theirs, system);
        }
        let none_chosen = entry.item.vehicles.as_ref().is_some_and(Vec::is_empty);
        let none_fitted = !set.vehicles.values().any(|vehicle| vehicle.item.has(&system.value));
        if set.systems.contains_key(&system.value) && (none_chosen || none_fitted) {
            let message = Message::new("rule-check-no-vehicle").with("id", id).with("system", &system.value);
            let label = Message::new("wanted-fitted");
            findings.report(Finding::warning(message, system.place.clone(), label));
        }
    }
}
