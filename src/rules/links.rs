//! A link leads to something, and to the right kind of thing.

use crate::diag::{Finding, Findings, nearest};
use crate::spec::{About, At, Entry, InstrumentKind, RowOf, Set, Thing, Watch};
use crate::words::Message;
use std::collections::BTreeMap;

pub(super) fn check(set: &Set, findings: &Findings) {
    let rule = Rule { set, findings };
    for (_, sensor, _) in super::sensors(set) {
        rule.link("system", &sensor.system, &set.systems);
    }
    for control in set.controls.values() {
        rule.link("system", &control.item.system, &set.systems);
    }
    for mode in set.modes.values() {
        rule.link("system", &mode.item.system, &set.systems);
        for control in mode.item.named() {
            rule.id("control", control, &set.controls);
        }
    }
    for panel in set.panels.values() {
        rule.link("system", &panel.item.system, &set.systems);
    }
    for driver in set.drivers.values() {
        rule.link("system", &driver.item.system, &set.systems);
    }
    for wire in set.wires.values() {
        rule.link("system", &wire.item.system, &set.systems);
        rule.link("driver", &wire.item.driver, &set.drivers);
    }
    let actuators = set.actuators.values().map(|entry| &entry.item.system);
    let lights = set.lights.values().map(|entry| &entry.item.system);
    let transducers = set.transducers.values().map(|entry| &entry.item.system);
    for system in actuators.chain(lights).chain(transducers) {
        rule.link("system", system, &set.systems);
    }
    for vehicle in set.vehicles.values() {
        rule.link("system", &vehicle.item.system, &set.systems);
    }
    for card in set.cards.values() {
        for (about, thing) in &card.item.about {
            match about {
                About::Sensor => rule.id(about.key(), thing, &set.sensors),
                About::Light => rule.id(about.key(), thing, &set.lights),
                About::Transducer => rule.id(about.key(), thing, &set.transducers),
                About::Connector => rule.id(about.key(), thing, &set.connectors),
                About::System => rule.id(about.key(), thing, &set.systems),
                About::Driver => rule.id(about.key(), thing, &set.drivers),
                About::Actuator => rule.id(about.key(), thing, &set.actuators),
                About::Panel => rule.id(about.key(), thing, &set.panels),
                About::Request => rule.id(about.key(), thing, &set.requests),
                About::Air => rule.id("system", thing, &set.systems),
            };
        }
        rule.instrument(&card.item.meter, InstrumentKind::Multimeter);
    }
    for refrigerant in set.refrigerants.values().map(|entry| &entry.item) {
        rule.link("system", &refrigerant.system, &set.systems);
        rule.instrument(&refrigerant.low_gauge, InstrumentKind::PressureGauge);
        rule.instrument(&refrigerant.high_gauge, InstrumentKind::PressureGauge);
        rule.instrument(&refrigerant.thermometer, InstrumentKind::Thermometer);
    }
    for request in set.requests.values().map(|entry| &entry.item) {
        rule.link("system", &request.system, &set.systems);
        for (watch, thing) in request.conditions.iter().flat_map(|condition| &condition.watch) {
            match watch {
                Watch::Sensor => rule.id("sensor", thing, &set.sensors),
                Watch::Transducer => rule.id("transducer", thing, &set.transducers),
                Watch::Reading => true,
            };
        }
    }
    for vent in set.vents.values().map(|entry| &entry.item) {
        rule.link("system", &vent.system, &set.systems);
        rule.instrument(&vent.thermometer, InstrumentKind::Thermometer);
        rule.instrument(&vent.hygrometer, InstrumentKind::Hygrometer);
    }
    for test in set.tests.values().map(|entry| &entry.item) {
        rule.component(&test.component);
        rule.link("mode", &test.mode, &set.modes);
        rule.instrument(&test.instrument, InstrumentKind::Multimeter);
    }
    for report in set.reports.values().map(|entry| &entry.item) {
        rule.link("sheet", &report.sheet, &set.sheets);
        for test in &report.evidence {
            rule.id("test", test, &set.tests);
        }
    }
    for sheet in set.sheets.values().map(|entry| &entry.item) {
        rule.link("system", &sheet.system, &set.systems);
        rule.instrument(&sheet.thermometer, InstrumentKind::Thermometer);
        rule.instrument(&sheet.meter, InstrumentKind::Multimeter);
        for vehicle in sheet.vehicles.iter().flatten() {
            rule.id("vehicle", vehicle, &set.vehicles);
        }
        for row in sheet.groups.iter().flat_map(|group| &group.rows) {
            match &row.what {
                RowOf::Sensor(sensor) => rule.id("sensor", sensor, &set.sensors),
                RowOf::Test(test) => rule.id("test", test, &set.tests),
            };
        }
    }
    for checklist in set.checklists.values().map(|entry| &entry.item) {
        rule.link("system", &checklist.system, &set.systems);
        for vehicle in checklist.vehicles.iter().flatten() {
            rule.id("vehicle", vehicle, &set.vehicles);
        }
        rule.instrument(&checklist.thermometer, InstrumentKind::Thermometer);
        rule.instrument(&checklist.meter, InstrumentKind::Multimeter);
        for step in &checklist.steps {
            rule.link("test", &step.test, &set.tests);
        }
        let cards = checklist.steps.iter().map(|step| &step.card);
        for card in cards.chain(checklist.endings.iter().map(|ending| &ending.card)) {
            rule.link("card", card, &set.cards);
        }
    }
    for symptom in set.symptoms.values().map(|entry| &entry.item) {
        rule.link("system", &symptom.system, &set.systems);
        rule.link("checklist", &symptom.checklist, &set.checklists);
        for card in symptom.cards.iter().flatten() {
            rule.id("card", card, &set.cards);
        }
    }
}

struct Rule<'a> {
    set: &'a Set,
    findings: &'a Findings,
}

impl Rule<'_> {
    fn link<T>(&self, kind: &str, link: &Option<At<String>>, known: &BTreeMap<String, Entry<T>>) {
        if let Some(link) = link {
            self.id(kind, link, known);
        }
    }

    fn id<T>(&self, kind: &str, link: &At<String>, known: &BTreeMap<String, Entry<T>>) -> bool {
        if known.contains_key(&link.value) {
            return true;
        }
        let message = Message::new("rule-no-such").with("kind", kind).with("id", &link.value);
        let ids = known.keys().map(String::as_str);
        let label = match known.len() {
            0 => Message::new("wanted-defined").with("kind", kind),
            _ => Message::new("wanted-one-of").with("words", listed(ids.clone())),
        };
        let finding = Finding::error(message, link.place.clone(), label);
        self.findings.report(match nearest(&link.value, ids) {
            Some(near) => finding.help(Message::new("did-you-mean").with("word", near)),
            None => finding,
        });
        false
    }

    /// A thing with its kind in front, such as `actuator.mix`.
    fn component(&self, link: &Option<At<String>>) {
        let Some(link) = link else { return };
        if self.set.named_component(&link.value).is_some() {
            return;
        }
        let kind = link.value.split_once('.').map_or("", |(kind, _)| kind);
        let message = Message::new("rule-no-such-component").with("word", &link.value);
        let named = |thing: Thing, id: &str| format!("{}.{id}", thing.key());
        let mut known = Vec::new();
        for thing in Thing::ALL.into_iter().filter(|thing| kind.is_empty() || thing.key() == kind) {
            known.extend(self.set.ids_of(thing).into_iter().map(|id| named(thing, id)));
        }
        let of_kind = Thing::ALL.into_iter().find(|thing| thing.key() == kind);
        let label = match of_kind {
            Some(thing) if known.is_empty() => Message::new("wanted-defined").with("kind", thing.key()),
            Some(_) => Message::new("wanted-one-of").with("words", listed(known.iter().map(String::as_str))),
            None => {
                let kinds = Thing::ALL.map(|thing| format!("`{}.…`", thing.key())).join(", ");
                Message::new("wanted-component").with("words", kinds)
            }
        };
        let finding = Finding::error(message, link.place.clone(), label);
        let near = known.iter().map(String::as_str);
        self.findings.report(match nearest(&link.value, near) {
            Some(near) => finding.help(Message::new("did-you-mean").with("word", near)),
            None => finding,
        });
    }

    fn instrument(&self, link: &Option<At<String>>, wanted: InstrumentKind) {
        let Some(link) = link else { return };
        if !self.id("instrument", link, &self.set.instruments) {
            return;
        }
        let Some(entry) = self.set.instruments.get(&link.value) else { return };
        let Some(kind) = &entry.item.kind else { return };
        if kind.value == wanted {
            return;
        }
        let word = match wanted {
            InstrumentKind::Thermometer => "kind-thermometer",
            InstrumentKind::Multimeter => "kind-multimeter",
            InstrumentKind::PressureGauge => "kind-pressure-gauge",
            InstrumentKind::Hygrometer => "kind-hygrometer",
        };
        let message = Message::new("rule-wrong-instrument").with("id", &link.value).with_word("wanted", word);
        let label = Message::new("wanted-instrument").with_word("wanted", word);
        let finding = Finding::error(message, link.place.clone(), label);
        self.findings.report(finding.because(kind.place.clone(), Message::new("label-its-kind")));
    }
}

/// The first few ids, and how many more there are.
fn listed<'a>(ids: impl Iterator<Item = &'a str>) -> String {
    const SHOWN: usize = 6;
    let all: Vec<String> = ids.map(|id| format!("`{id}`")).collect();
    let more = all.len().saturating_sub(SHOWN);
    let shown = all.iter().take(SHOWN).cloned().collect::<Vec<_>>().join(", ");
    if more > 0 { format!("{shown}, … (+{more})") } else { shown }
}
