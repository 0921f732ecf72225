//! A sheet's sensors and vehicles belong to its system, and its groups hold tests.

use crate::diag::{Finding, Findings};
use crate::spec::{At, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (id, entry) in &set.sheets {
        let sheet = &entry.item;
        let Some(system) = &sheet.system else { continue };
        let of = |kind: &str, link: &At<String>, theirs: Option<&Option<At<String>>>| {
            let Some(Some(theirs)) = theirs else { return };
            if theirs.value == system.value {
                return;
            }
            let message = Message::new("rule-other-system")
                .with("kind", kind)
                .with("id", &link.value)
                .with("theirs", &theirs.value)
                .with("system", &system.value);
            let label = Message::new("wanted-of-system").with("system", &system.value);
            let finding = Finding::error(message, link.place.clone(), label);
            findings.report(finding.because(theirs.place.clone(), Message::new("label-its-system")));
        };
        for vehicle in sheet.vehicles.iter().flatten() {
            of("vehicle", vehicle, set.vehicles.get(&vehicle.value).map(|v| &v.item.system));
        }
        for row in sheet.groups.iter().flat_map(|group| &group.rows) {
            if let Some(test) = row.test()
                && let Some(component) =
                    set.tests.get(&test.value).and_then(|entry| entry.item.component.as_ref())
                && let Some(theirs) = set.named_component(&component.value).and_then(|found| found.system)
            {
                let theirs = At { value: theirs.to_owned(), place: component.place.clone() };
                of("test", test, Some(&Some(theirs)));
            }
            if let Some(sensor) = row.sensor() {
                of("sensor", sensor, set.sensors.get(&sensor.value).map(|s| &s.item.system));
            }
        }
        let mut named = std::collections::BTreeMap::new();
        for vehicle in sheet.vehicles.iter().flatten() {
            if let Some(first) = named.insert(&vehicle.value, &vehicle.place) {
                let message = Message::new("spec-duplicate").with("name", &vehicle.value);
                let finding = Finding::error(message, vehicle.place.clone(), Message::new("label-second"));
                findings.report(finding.because(first.clone(), Message::new("label-first")));
            }
        }
        let empty = sheet.vehicles.as_ref().is_some_and(Vec::is_empty) || sheet.groups.is_empty();
        if empty {
            let message = Message::new("rule-empty-sheet").with("id", id);
            findings.report(Finding::warning(message, entry.place.clone(), Message::new("wanted-not-empty")));
        }
        for group in sheet.groups.iter().filter(|group| group.rows.is_empty()) {
            let message = Message::new("rule-empty-group").with("id", id);
            let label = Message::new("wanted-tests");
            findings.report(Finding::error(message, group.at.clone(), label));
        }
        let fitted = set
            .vehicles
            .values()
            .any(|vehicle| vehicle.item.system.as_ref().is_some_and(|theirs| theirs.value == system.value));
        if !fitted && set.systems.contains_key(&system.value) {
            let message = Message::new("rule-no-vehicle").with("id", id).with("system", &system.value);
            let label = Message::new("wanted-fitted");
            findings.report(Finding::warning(message, system.place.clone(), label));
        }
    }
}
