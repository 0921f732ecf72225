//! Builds checklists and symptoms.

use std::sync::OnceLock;

use super::{multimeter, text, thermometer};
use crate::model::checklist::{Checklist, Ending, Exit, Probes, Question, Symptom, node_of, ways};
use crate::model::fact::Fact;
use crate::model::pins::PinEnd;
use crate::spec::{self, At, Set, Sourced};

/// A checklist whose graph the rules have passed.
pub(super) fn checklist(set: &Set, id: &str, written: &spec::Checklist) -> Option<Checklist> {
    let step = |step| self::step(set, written, &format!("checklist.{id}.step"), step);
    Some(Checklist {
        id: id.to_owned(),
        title: text(&written.title)?,
        system: text(&written.system)?,
        vehicles: written.vehicles.as_ref().map(|vehicles| values(vehicles)),
        symptom: text(&written.symptom)?,
        thermometer: thermometer(set, &written.thermometer),
        meter: multimeter(set, &written.meter),
        work: written.work.as_ref()?.value,
        ways: ways(written),
        steps: written.steps.iter().map(step).collect::<Option<_>>()?,
        endings: written.endings.iter().map(ending).collect::<Option<_>>()?,
        chart: OnceLock::new(),
    })
}

fn values(texts: &[At<String>]) -> Vec<String> {
    texts.iter().map(|text| text.value.clone()).collect()
}

fn step(set: &Set, checklist: &spec::Checklist, key: &str, step: &spec::Question) -> Option<Question> {
    let key = |part: &str| format!("{key}.{}.{part}", step.id.value);
    let exit = |exit: &spec::Exit| {
        let to = node_of(checklist, &exit.to.value)?;
        Some(Exit { answer: exit.answer, to, note: text(&exit.note) })
    };
    Some(Question {
        title: text(&step.title)?,
        question: text(&step.question)?,
        action: text(&step.action)?,
        at: text(&step.at),
        probes: probes(set, &key("pins"), &step.pins)?,
        half: step.half.as_ref().map(|half| half.value),
        state: text(&step.state)?,
        test: text(&step.test),
        expect: Fact::new(key("expect"), "fact-expect", step.expect.as_ref()),
        unit: text(&step.unit),
        time: step.time.as_ref()?.value,
        time_fact: Fact::new(key("time"), "fact-step-time", step.time.as_ref()),
        cost: step.cost.as_ref()?.value,
        because: text(&step.because),
        near: step.near.iter().map(|near| near.value).collect(),
        card: text(&step.card),
        exits: step.exits.iter().map(exit).collect::<Option<_>>()?,
    })
}

/// Pins by their connector, in the order in which they stand.
fn probes(set: &Set, key: &str, pins: &[Sourced<String>]) -> Option<Vec<Probes>> {
    let mut all: Vec<Probes> = Vec::new();
    for pin in pins {
        let (connector, mark) = pin.value.split_once('/')?;
        let entry = &set.connectors.get(connector)?.item;
        let wire = entry.pins.get(mark)?.wire.as_ref();
        let wire_key = format!("connector.{connector}.pins.{mark}.wire");
        let wire = wire.map(|wire| Fact::new(wire_key, "fact-wire", Some(wire)));
        let fact = Fact::new(key.to_owned(), "fact-pins", Some(pin));
        match all.iter_mut().find(|probes| probes.end.connector == connector) {
            Some(probes) => probes.pins.push((fact, wire)),
            None => all.push(Probes { end: end(connector, entry)?, pins: vec![(fact, wire)] }),
        }
    }
    Some(all)
}

/// A connector as it is looked at; its pins stand beside it.
fn end(id: &str, connector: &spec::Connector) -> Option<PinEnd> {
    Some(PinEnd {
        connector: id.to_owned(),
        title: text(&connector.title)?,
        view: connector.view.as_ref().map(|view| view.value),
        side: connector.side.as_ref().map(|side| side.value),
        latch: text(&connector.latch),
        signal: None,
        other: None,
        ground: None,
        missing: Vec::new(),
    })
}

fn ending(ending: &spec::Ending) -> Option<Ending> {
    Some(Ending {
        kind: ending.kind.as_ref()?.value,
        what: text(&ending.what),
        action: text(&ending.action)?,
        card: text(&ending.card),
    })
}

/// A complaint.
pub(super) fn symptom(id: &str, symptom: &spec::Symptom) -> Option<Symptom> {
    let fact =
        |test: &Sourced<String>| Fact::new(format!("symptom.{id}.first"), "fact-first-tests", Some(test));
    Some(Symptom {
        title: text(&symptom.title)?,
        system: text(&symptom.system)?,
        checklist: text(&symptom.checklist),
        first: symptom.first.iter().flatten().map(fact).collect(),
        cards: symptom.cards.as_deref().map(values).unwrap_or_default(),
    })
}
