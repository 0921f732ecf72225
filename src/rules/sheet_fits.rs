//! A sheet's sensors and vehicles belong to its system, and its groups hold tests.

use crate::diag::{Finding, Findings};
use crate::spec::{At, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (id, entry) in &set.sheets {
        let sheet = &entry.item;
        let Some(system) = &sheet.system else { continue };
        let of = |kind: &str, link: &At<String>, theirs: Option<&At<String>>| {
            super::shared::of_system(findings, kind, link, theirs, system);
        };
        for vehicle in sheet.vehicles.iter().flatten() {
            of("vehicle", vehicle, set.vehicles.get(&vehicle.value).and_then(|v| v.item.system.as_ref()));
        }
        for row in sheet.groups.iter().flat_map(|group| &group.rows) {
            if let Some(test) = row.test()
                && let Some(component) =
                    set.tests.get(&test.value).and_then(|entry| entry.item.component.as_ref())
                && let Some(theirs) = set.named_component(&component.value).and_then(|found| found.system)
            {
                let theirs = At { value: theirs.to_owned(), place: component.place.clone() };
                of("test", test, Some(&theirs));
            }
            if let Some(sensor) = row.sensor() {
                of("sensor", sensor, set.sensors.get(&sensor.value).and_then(|s| s.item.system.as_ref()));
            }
        }
        super::shared::each_once(findings, sheet.vehicles.iter().flatten());
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
        let fitted = set.vehicles.values().any(|vehicle| vehicle.item.has(&system.value));
        if !fitted && set.systems.contains_key(&system.value) {
            let message = Message::new("rule-no-vehicle").with("id", id).with("system", &system.value);
            let label = Message::new("wanted-fitted");
            findings.report(Finding::warning(message, system.place.clone(), label));
        }
    }
}
