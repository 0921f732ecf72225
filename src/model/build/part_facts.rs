//! The values behind the figures of actuators, light sensors and transducers.

use super::super::fact::Fact;
use crate::quantity::{Scalar, Toleranced, Voltage};
use crate::spec::{self, Sourced};

/// The facts of one part, as they are added.
struct List {
    /// The part's table, such as `actuator.mix`.
    table: String,
    facts: Vec<Fact>,
}

impl List {
    fn new(kind: &str, id: &str) -> Self {
        Self { table: format!("{kind}.{id}"), facts: Vec::new() }
    }

    /// A value that a part of this kind has: where it is not there it is missing.
    fn wanted<T>(&mut self, part: &str, label: &'static str, value: Option<&Sourced<T>>) {
        self.facts.push(Fact::new(format!("{}.{part}", self.table), label, value));
    }

    /// A value that a part of this kind may have.
    fn given<T>(&mut self, part: &str, label: &'static str, value: Option<&Sourced<T>>) {
        if value.is_some() {
            self.wanted(part, label, value);
        }
    }

    /// Counts a tolerance that is missing from a value that is there.
    fn tolerance<T: Scalar>(
        &mut self,
        part: &str,
        label: &'static str,
        value: Option<&Sourced<Toleranced<T>>>,
    ) {
        if value.is_some_and(|value| value.value.limits.is_none()) {
            self.wanted::<()>(&format!("{part}.tolerance"), label, None);
        }
    }

    /// The part's own reference, or the system's.
    fn reference(
        &mut self,
        part: &str,
        system: &str,
        own: Option<&Sourced<Toleranced<Voltage>>>,
        inherited: Option<&Sourced<Toleranced<Voltage>>>,
    ) {
        match own {
            Some(_) => self.wanted(part, "fact-reference", own),
            None => {
                let key = format!("system.{system}.reference");
                self.facts.push(Fact::new(key, "fact-reference", inherited));
            }
        }
        self.tolerance(part, "fact-reference-tolerance", own.or(inherited));
    }

    /// The positions of contacts, as one value.
    fn positions(&mut self, part: &str, positions: &[spec::DoorPosition]) {
        let names: Vec<&str> = positions.iter().map(|position| position.name.as_str()).collect();
        self.facts.push(Fact {
            key: format!("{}.{part}", self.table),
            label: "fact-positions",
            written: (!names.is_empty()).then(|| names.join(", ")),
            source: positions.first().and_then(|position| position.source.clone()),
        });
    }
}

type Reference<'a> = Option<&'a Sourced<Toleranced<Voltage>>>;

pub(super) fn actuator(
    id: &str,
    system: &str,
    written: &spec::Actuator,
    inherited: Reference<'_>,
) -> Vec<Fact> {
    let mut list = List::new("actuator", id);
    list.wanted("moves", "fact-moves", written.moves.as_ref());
    if let Some(feedback) = &written.feedback {
        list.wanted("feedback.track", "fact-track", feedback.track.as_ref());
        list.given("feedback.ends", "fact-track-ends", feedback.ends.as_ref());
        list.given("feedback.contact", "fact-wiper-contact", feedback.contact.as_ref());
        list.given("feedback.load", "fact-wiper-load", feedback.load.as_ref());
        if let Some(load_to) = &feedback.load_to {
            let end = match load_to.value {
                spec::LoadTo::Ground => "ground",
                spec::LoadTo::Reference => "reference",
            };
            // Where the load leads belongs to it, and comes from where it does.
            list.facts.push(Fact {
                key: format!("{}.feedback.load_to", list.table),
                label: "fact-wiper-load-to",
                written: Some(end.to_owned()),
                source: feedback.load.as_ref().and_then(|load| load.source.clone()),
            });
        }
        list.reference("feedback.reference", system, feedback.reference.as_ref(), inherited);
        let resistors = [
            ("feedback.track", &feedback.track),
            ("feedback.ends", &feedback.ends),
            ("feedback.contact", &feedback.contact),
            ("feedback.load", &feedback.load),
        ];
        for (part, value) in resistors {
            list.tolerance(part, "fact-resistor-tolerance", value.as_ref());
        }
    }
    // A feedback without its stops says nothing of the door.
    let stops = written.stops.as_ref();
    if stops.is_some() || written.feedback.is_some() {
        let ends = [
            ("low", "fact-stop-low", stops.and_then(|stops| stops.low.as_ref())),
            ("high", "fact-stop-high", stops.and_then(|stops| stops.high.as_ref())),
        ];
        for (end, label, stop) in ends {
            list.wanted(&format!("stops.{end}.ratio"), label, stop.and_then(|stop| stop.ratio.as_ref()));
            let nominal = stop.and_then(|stop| stop.nominal.as_ref());
            list.given(&format!("stops.{end}.nominal"), "fact-stop-nominal", nominal);
        }
    }
    if let Some(contacts) = &written.contacts {
        list.wanted("contacts.closed", "fact-contact-closed", contacts.closed.as_ref());
        list.positions("contacts.positions", &contacts.positions);
    }
    if let Some(ladder) = &written.ladder {
        ladder_facts(&mut list, system, ladder, inherited);
    }
    if let Some(sweep) = &written.sweep {
        list.given("sweep.time", "fact-sweep-time", sweep.time.as_ref());
        list.given("sweep.step", "fact-sweep-step", sweep.step.as_ref());
        list.given("sweep.dead_band", "fact-sweep-dead-band", sweep.dead_band.as_ref());
        list.given("sweep.hysteresis", "fact-sweep-hysteresis", sweep.hysteresis.as_ref());
    }
    let motor = written.motor.as_ref();
    list.wanted("motor.current", "fact-free-run-current", motor.and_then(|motor| motor.current.as_ref()));
    list.wanted("motor.plain_dc", "fact-plain-dc", motor.and_then(|motor| motor.plain_dc.as_ref()));
    list.given("motor.stall", "fact-stall-current", motor.and_then(|motor| motor.stall.as_ref()));
    list.wanted("location", "fact-location", written.location.as_ref());
    list.wanted("recalibration", "fact-recalibration", written.recalibration.as_ref());
    list.facts
}

fn ladder_facts(list: &mut List, system: &str, ladder: &spec::Ladder, inherited: Reference<'_>) {
    list.wanted("ladder.resistor", "fact-pull-up", ladder.resistor.as_ref());
    list.tolerance("ladder.resistor", "fact-resistor-tolerance", ladder.resistor.as_ref());
    list.reference("ladder.reference", system, ladder.reference.as_ref(), inherited);
    for (index, resistor) in ladder.chain.iter().flatten().enumerate() {
        let part = format!("ladder.chain.{index}");
        list.wanted(&part, "fact-ladder-resistor", Some(resistor));
        list.tolerance(&part, "fact-resistor-tolerance", Some(resistor));
    }
    list.given("ladder.end", "fact-ladder-end", ladder.end.as_ref());
    list.tolerance("ladder.end", "fact-resistor-tolerance", ladder.end.as_ref());
    list.wanted("ladder.closed", "fact-contact-closed", ladder.closed.as_ref());
    list.positions("ladder.positions", &ladder.positions);
}

pub(super) fn light(id: &str, system: &str, written: &spec::Light, inherited: Reference<'_>) -> Vec<Fact> {
    let mut list = List::new("light", id);
    list.wanted("current", "fact-photocurrent", written.current.as_ref());
    list.tolerance("current", "fact-photocurrent-tolerance", written.current.as_ref());
    list.wanted("at", "fact-photocurrent-at", written.at.as_ref());
    list.wanted("dark", "fact-dark-current", written.dark.as_ref());
    match &written.circuit {
        Some(circuit) => {
            let label = match circuit.topology.as_ref().map(|topology| topology.value) {
                Some(spec::LightTopology::Load) => "fact-load-resistor",
                _ => "fact-pull-up",
            };
            list.wanted("circuit.resistor", label, circuit.resistor.as_ref());
            list.tolerance("circuit.resistor", "fact-resistor-tolerance", circuit.resistor.as_ref());
            list.reference("circuit.reference", system, circuit.reference.as_ref(), inherited);
        }
        None => list.wanted::<()>("circuit", "fact-circuit", None),
    }
    list.wanted("least_span", "fact-least-span", written.least_span.as_ref());
    list.wanted("location", "fact-location", written.location.as_ref());
    list.facts
}

pub(super) fn transducer(
    id: &str,
    system: &str,
    written: &spec::Transducer,
    inherited: Reference<'_>,
) -> Vec<Fact> {
    let mut list = List::new("transducer", id);
    let labels = ("fact-line-low-pressure", "fact-line-low-ratio");
    let high_labels = ("fact-line-high-pressure", "fact-line-high-ratio");
    let ends = [("low", labels, &written.low), ("high", high_labels, &written.high)];
    for (end, labels, point) in ends {
        let pressure = point.as_ref().and_then(|point| point.pressure.as_ref());
        let ratio = point.as_ref().and_then(|point| point.ratio.as_ref());
        list.wanted(&format!("{end}.pressure"), labels.0, pressure);
        list.wanted(&format!("{end}.ratio"), labels.1, ratio);
    }
    list.wanted("accuracy", "fact-span-accuracy", written.accuracy.as_ref());
    list.given("clamp", "fact-clamp", written.clamp.as_ref());
    list.reference("reference", system, written.reference.as_ref(), inherited);
    list.wanted("location", "fact-location", written.location.as_ref());
    list.facts
}
