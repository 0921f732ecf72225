//! A checklist's vehicles belong to its system, and there is at least one.

use std::collections::BTreeMap;

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for (id, entry) in super::all(set) {
        let Some(system) = &entry.item.system else { continue };
        let mut named = BTreeMap::new();
        for vehicle in entry.item.vehicles.iter().flatten() {
            if let Some(first) = named.insert(&vehicle.value, &vehicle.place) {
                let message = Message::new("spec-duplicate").with("name", &vehicle.value);
                let finding = Finding::error(message, vehicle.place.clone(), Message::new("label-second"));
                findings.report(finding.because(first.clone(), Message::new("label-first")));
            }
            let theirs = set.vehicles.get(&vehicle.value).and_then(|known| known.item.system.as_ref());
            let Some(theirs) = theirs.filter(|theirs| theirs.value != system.value) else { continue };
            let message = Message::new("rule-other-system")
                .with("kind", "vehicle")
                .with("id", &vehicle.value)
                .with("theirs", &theirs.value)
                .with("system", &system.value);
            let label = Message::new("wanted-of-system").with("system", &system.value);
            let finding = Finding::error(message, vehicle.place.clone(), label);
            findings.report(finding.because(theirs.place.clone(), Message::new("label-its-system")));
        }
        let of_system = |vehicle: &crate::spec::Vehicle| {
            vehicle.system.as_ref().is_some_and(|theirs| theirs.value == system.value)
        };
        let none_chosen = entry.item.vehicles.as_ref().is_some_and(Vec::is_empty);
        let none_fitted = !set.vehicles.values().any(|vehicle| of_system(&vehicle.item));
        if set.systems.contains_key(&system.value) && (none_chosen || none_fitted) {
            let message = Message::new("rule-check-no-vehicle").with("id", id).with("system", &system.value);
            let label = Message::new("wanted-fitted");
            findings.report(Finding::warning(message, system.place.clone(), label));
        }
    }
}
