//! A pin exists on its connector, and carries one signal only.

use std::collections::BTreeMap;

use crate::diag::{Finding, Findings, Place, nearest};
use crate::spec::{Pins, Set, Sourced};
use crate::words::Message;

/// Who uses a pin, and as what.
struct Use<'a> {
    signal: bool,
    system: &'a str,
    place: &'a Place,
}

pub(super) fn check(set: &Set, findings: &Findings) {
    let mut used: BTreeMap<&str, Use<'_>> = BTreeMap::new();
    for (_, sensor, _) in super::sensors(set) {
        let system = sensor.system.as_ref().map_or("", |system| &system.value);
        for pins in [&sensor.pins, &sensor.component_pins].into_iter().flatten() {
            one_connector(set, pins, findings);
            // A return, or a reference, is shared by many sensors; a signal is not.
            let roles = [(&pins.signal, true), (&pins.return_, false), (&pins.ground, false)];
            take(set, system, given(roles), &mut used, findings);
        }
    }
    let drivers = set.drivers.values().map(|entry| &entry.item);
    let drivers = drivers.flat_map(|item| [(&item.system, &item.pins), (&item.system, &item.unit_pins)]);
    let actuators = set.actuators.values().map(|entry| &entry.item);
    let actuators =
        actuators.flat_map(|item| [(&item.system, &item.pins), (&item.system, &item.component_pins)]);
    let lights = set.lights.values().map(|entry| (&entry.item.system, &entry.item.pins));
    let transducers = set.transducers.values().map(|entry| (&entry.item.system, &entry.item.pins));
    for request in set.requests.values().map(|entry| &entry.item) {
        let system = request.system.as_ref().map_or("", |system| &system.value);
        take(set, system, given([(&request.line, true)]), &mut used, findings);
    }
    for (system, pins) in drivers.chain(actuators).chain(lights).chain(transducers) {
        let system = system.as_ref().map_or("", |system| &system.value);
        take(set, system, pins.iter().map(|pin| (&pin.pin, pin.role.is_own())), &mut used, findings);
    }
    asked(set, findings);
}

/// A checklist's questions name pins that others carry.
fn asked(set: &Set, findings: &Findings) {
    let questions = set.checklists.values().flat_map(|entry| &entry.item.steps);
    for pin in questions.flat_map(|question| &question.pins) {
        exists(set, pin, findings);
    }
}

/// Every pin that anything of the set names.
pub(super) fn written(set: &Set) -> impl Iterator<Item = &Sourced<String>> {
    let ends = super::sensors(set).flat_map(|(_, sensor, _)| [&sensor.pins, &sensor.component_pins]);
    let of_sensors = ends.flatten().flat_map(|pins| [&pins.signal, &pins.return_, &pins.ground]).flatten();
    let drivers = set.drivers.values().flat_map(|entry| [&entry.item.pins, &entry.item.unit_pins]);
    let actuators = set.actuators.values().flat_map(|entry| [&entry.item.pins, &entry.item.component_pins]);
    let lights = set.lights.values().map(|entry| &entry.item.pins);
    let transducers = set.transducers.values().map(|entry| &entry.item.pins);
    let of_parts = drivers.chain(actuators).chain(lights).chain(transducers).flatten();
    of_sensors.chain(of_parts.map(|pin| &pin.pin))
}

/// The pins that are there.
fn given<const N: usize>(
    roles: [(&Option<Sourced<String>>, bool); N],
) -> impl Iterator<Item = (&Sourced<String>, bool)> {
    roles.into_iter().filter_map(|(pin, signal)| Some((pin.as_ref()?, signal)))
}

/// Notes who uses these pins, and reports those that are not there or taken.
fn take<'a>(
    set: &Set,
    system: &'a str,
    roles: impl Iterator<Item = (&'a Sourced<String>, bool)>,
    used: &mut BTreeMap<&'a str, Use<'a>>,
    findings: &Findings,
) {
    for (pin, signal) in roles {
        if !exists(set, pin, findings) {
            continue;
        }
        let place = &pin.place;
        match used.get(pin.value.as_str()) {
            Some(first) if first.signal || signal => twice(pin, first, system, findings),
            _ => drop(used.insert(&pin.value, Use { signal, system, place })),
        }
    }
}

fn twice(pin: &Sourced<String>, first: &Use<'_>, system: &str, findings: &Findings) {
    let message = Message::new("rule-pin-twice").with("pin", &pin.value);
    let finding = Finding::error(message, pin.place.clone(), Message::new("label-second-use"))
        .because(first.place.clone(), Message::new("label-first-use"));
    findings.report(if first.system == system {
        finding
    } else {
        finding.help(Message::new("rule-pin-twice-systems-help"))
    });
}

/// Both pins of one end are on one connector.
fn one_connector(set: &Set, pins: &Pins, findings: &Findings) {
    let (Some(signal), Some(other)) = (&pins.signal, &pins.return_) else { return };
    let connector = |pin: &Sourced<String>| pin.value.split_once('/').map(|(id, _)| id.to_owned());
    let (Some(first), Some(second)) = (connector(signal), connector(other)) else { return };
    // A connector that is not there is another finding.
    let known = [&first, &second].iter().all(|id| set.connectors.contains_key(id.as_str()));
    if first == second || !known {
        return;
    }
    let message = Message::new("rule-two-connectors").with("first", first).with("second", second);
    let finding = Finding::error(message, other.place.clone(), Message::new("wanted-same-connector"));
    findings.report(finding.because(signal.place.clone(), Message::new("label-first-use")));
}

pub(super) fn exists(set: &Set, pin: &Sourced<String>, findings: &Findings) -> bool {
    let Some((connector, mark)) = pin.value.split_once('/') else {
        let message = Message::new("rule-pin-form").with("pin", &pin.value);
        findings.report(Finding::error(message, pin.place.clone(), Message::new("wanted-pin")));
        return false;
    };
    let Some(entry) = set.connectors.get(connector) else {
        let message = Message::new("rule-no-such").with("kind", "connector").with("id", connector);
        let label = Message::new("wanted-defined").with("kind", "connector");
        let finding = Finding::error(message, pin.place.clone(), label);
        findings.report(match nearest(connector, set.connectors.keys().map(String::as_str)) {
            Some(near) => finding.help(Message::new("did-you-mean").with("word", format!("{near}/{mark}"))),
            None => finding,
        });
        return false;
    };
    if entry.item.pins.contains_key(mark) {
        return true;
    }
    let message = Message::new("rule-no-such-pin").with("connector", connector).with("pin", mark);
    let label = Message::new("wanted-listed-pin").with("connector", connector);
    let finding = Finding::error(message, pin.place.clone(), label);
    findings.report(finding.because(entry.place.clone(), Message::new("label-connector")));
    false
}
