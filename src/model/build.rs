//! Links a set that the rules have passed.

use std::collections::BTreeMap;

use super::convert;
use super::fact::Fact;
use super::instrument::{Multimeter, Thermometer};
use super::lamination::{Lamination, Punch};
use super::paper::Card;
use super::pins::{PinEnd, PinUse};
use super::sensor::{Points, Sensor};
use super::{Model, Shop, System, Vehicle};
use crate::physics::atmosphere::Site;
use crate::quantity::{Length, MeterRange, MeterRanges, Scalar};
use crate::spec::{self, At, Entry, Hangs, InstrumentKind, Set, Sourced};
pub use test::{probes as probes_of, step_number};

mod air;
mod checklist;
mod connector;
mod ends;
mod facts;
mod load;
mod modes;
mod part_facts;
mod parts;
mod request;
mod sheet;
mod test;

/// Builds the model; `None` where the set lacks what every set must have.
///
/// The rules have been asked before and have said why: a `None` here without
/// a finding of theirs would be a rule that is missing.
#[must_use]
pub fn build(set: &Set) -> Option<Model> {
    let shop = &set.shop.as_ref()?.item;
    Some(Model {
        shop: Shop {
            title: text(&shop.title)?,
            paper: shop.paper.as_ref()?.value,
            units: shop.units.as_ref().map(|units| units.value).unwrap_or_default(),
            sizes: shop.sizes.iter().map(|(kind, size)| (*kind, size.value)).collect(),
            notice: text(&shop.notice),
            decision: convert::decision(shop),
            soak: shop.soak.as_ref().map(|soak| soak.value),
            facts: facts::shop(shop),
            site: shop.elevation.as_ref().and_then(|elevation| Site::at(elevation.value).ok()),
            elevation: Fact::new("shop.elevation".to_owned(), "fact-elevation", shop.elevation.as_ref()),
            lamination: shop.lamination.as_ref().and_then(lamination),
        },
        systems: all(&set.systems, |_, system| {
            Some(System {
                title: text(&system.title)?,
                applicability: system.applicability.clone(),
                reference: system.reference.clone(),
                battery: system.battery.clone(),
                high_voltage: system.high_voltage.clone(),
            })
        })?,
        sensors: all(&set.sensors, |id, sensor| build_sensor(set, id, sensor))?,
        mode_sets: modes::mode_sets(set)?,
        panels: all(&set.panels, modes::panel)?,
        thermometers: instruments(set, InstrumentKind::Thermometer, thermometer_of)?,
        multimeters: instruments(set, InstrumentKind::Multimeter, multimeter_of)?,
        drivers: all(&set.drivers, |id, driver| load::build_driver(set, id, driver))?,
        wires: all(&set.wires, load::build_wire)?,
        actuators: all(&set.actuators, |id, actuator| parts::actuator(set, id, actuator))?,
        lights: all(&set.lights, |id, light| parts::light(set, id, light))?,
        transducers: all(&set.transducers, |id, transducer| parts::transducer(set, id, transducer))?,
        connectors: all(&set.connectors, connector::connector)?,
        vehicles: all(&set.vehicles, |id, vehicle| {
            Some(Vehicle {
                id: id.to_owned(),
                title: text(&vehicle.title)?,
                system: text(&vehicle.system)?,
                registration: text(&vehicle.registration),
                chassis: text(&vehicle.chassis),
                built: text(&vehicle.built),
            })
        })?,
        cards: all(&set.cards, |id, card| build_card(set, id, card))?,
        sheets: all(&set.sheets, |id, sheet| sheet::build(set, id, sheet))?,
        reports: all(&set.reports, sheet::report)?,
        tests: all(&set.tests, |id, test| test::build(set, id, test))?,
        checklists: all(&set.checklists, |id, checklist| checklist::checklist(set, id, checklist))?,
        symptoms: all(&set.symptoms, checklist::symptom)?,
        refrigerants: all(&set.refrigerants, |id, refrigerant| air::refrigerant(set, id, refrigerant))?,
        vents: all(&set.vents, |id, vent| air::vent(set, id, vent))?,
        requests: all(&set.requests, |id, request| request::request(set, id, request))?,
    })
}

/// What a shop does not say of its pouches is as most of them are (common practice, no source):
/// 3 mm of film around a card and 5 mm of it without print.
fn lamination(written: &spec::Lamination) -> Option<Lamination> {
    let value = |length: &Option<Sourced<Length>>| length.as_ref().map(|length| length.value);
    let punches = written.punches.iter().map(|punch| {
        Some(Punch {
            place: punch.place.as_ref()?.value,
            diameter: value(&punch.diameter)?,
            inset: value(&punch.inset)?,
        })
    });
    Some(Lamination {
        seal: value(&written.seal).unwrap_or_else(|| Length::from_millimetres(3.0)),
        quiet: value(&written.quiet).unwrap_or_else(|| Length::from_millimetres(5.0)),
        corner: value(&written.corner),
        punches: punches.collect::<Option<_>>()?,
    })
}

/// Builds every entry of a kind, or none where one cannot be.
fn all<T, U>(
    entries: &BTreeMap<String, Entry<T>>,
    build: impl Fn(&str, &T) -> Option<U>,
) -> Option<BTreeMap<String, U>> {
    entries.iter().map(|(id, entry)| Some((id.clone(), build(id, &entry.item)?))).collect()
}

fn text(value: &Option<At<String>>) -> Option<String> {
    value.as_ref().map(|text| text.value.clone())
}

fn build_sensor(set: &Set, id: &str, sensor: &spec::Sensor) -> Option<Sensor> {
    let system = text(&sensor.system)?;
    let reference = set.systems.get(&system).and_then(|system| system.item.reference.as_ref());
    let written_curve = &sensor.curve.as_ref()?.value;
    let curve = convert::curve(written_curve)?.ok()?;
    let range = sensor.range.as_ref().map_or_else(|| curve.domain(), |range| range.value);
    let written = sensor.circuit.as_ref();
    let topology = written.and_then(|circuit| circuit.topology.as_ref()).map(|at| at.value);
    // Both pins of a pull-down sensor carry signals: volts need a third to be measured against.
    let hangs_on_reference = topology == Some(spec::Topology::PullDown);
    Some(Sensor {
        id: id.to_owned(),
        title: text(&sensor.title)?,
        location: sensor.location.as_ref().map(|location| location.value.clone()),
        points: points(written_curve),
        tolerance: convert::tolerance(sensor),
        range,
        topology,
        circuit: written.and_then(|circuit| convert::circuit(circuit, reference)),
        converter: written.and_then(|circuit| convert::converter(circuit.converter.as_ref()?)),
        dissipation: sensor.dissipation.as_ref().map_or((None, None), |dissipation| {
            let value = |part: &Option<Sourced<_>>| part.as_ref().map(|part| part.value);
            (value(&dissipation.still), value(&dissipation.moving))
        }),
        control_unit: pin_end(set, &format!("sensor.{id}.pins"), sensor.pins.as_ref(), hangs_on_reference),
        component: pin_end(
            set,
            &format!("sensor.{id}.component_pins"),
            sensor.component_pins.as_ref(),
            false,
        ),
        service_limit: sensor.service_limit.as_ref().map(|limit| limit.value),
        next: sensor.next.iter().flatten().map(|step| step.value.clone()).collect(),
        curve_facts: facts::curve(id, sensor),
        circuit_facts: facts::circuit(id, &system, written, reference),
        other_facts: facts::other(id, sensor),
        curve,
        system,
    })
}

fn points(curve: &spec::Curve) -> Option<Points> {
    let spec::Curve::Table { rows, temperature_unit, resistance_unit, .. } = curve else {
        return None;
    };
    Some(Points {
        units: (temperature_unit.symbol(), resistance_unit.symbol()),
        rows: rows.iter().map(|row| row.written.clone()).collect(),
    })
}

/// The connector at one end, found through the first pin that names it.
fn pin_end(set: &Set, key: &str, pins: Option<&spec::Pins>, needs_ground: bool) -> Option<PinEnd> {
    let pins = pins?;
    let named = [&pins.signal, &pins.return_].into_iter().flatten().next()?;
    let (connector, _) = named.value.split_once('/')?;
    let plug = plug(set, connector)?;
    let pin = |part: &str, label, value: &Option<Sourced<String>>| {
        let fact = Fact::new(format!("{key}.{part}"), label, value.as_ref());
        (pin_use(set, value, fact.clone()), fact)
    };
    let (signal, signal_fact) = pin("signal", "fact-signal-pin", &pins.signal);
    let (other, other_fact) = pin("return", "fact-return-pin", &pins.return_);
    let (ground, ground_fact) = pin("ground", "fact-ground-pin", &pins.ground);
    let ground_fact = needs_ground.then_some(ground_fact);
    let pins = [signal_fact, other_fact].into_iter().chain(ground_fact);
    let missing = pins.filter(Fact::is_missing).chain(plug.missing).collect();
    Some(PinEnd { signal, other, ground, missing, ..plug })
}

/// A connector and how it is seen, with none of its pins.
fn plug(set: &Set, connector: &str) -> Option<PinEnd> {
    let entry = &set.connectors.get(connector)?.item;
    // View and side say how to look: they have no source, but they can be missing.
    let look = [("view", "fact-view", entry.view.is_some()), ("side", "fact-side", entry.side.is_some())];
    let missing = look
        .into_iter()
        .filter(|(.., given)| !given)
        .map(|(part, label, _)| Fact::new::<()>(format!("connector.{connector}.{part}"), label, None));
    Some(PinEnd {
        connector: connector.to_owned(),
        title: text(&entry.title)?,
        view: entry.view.as_ref().map(|view| view.value),
        side: entry.side.as_ref().map(|side| side.value),
        latch: text(&entry.latch),
        signal: None,
        other: None,
        ground: None,
        missing: missing.collect(),
    })
}

fn pin_use(set: &Set, pin: &Option<Sourced<String>>, fact: Fact) -> Option<PinUse> {
    let name = pin.as_ref()?.value.clone();
    let (connector, mark) = name.split_once('/')?;
    let wire = set.connectors.get(connector)?.item.pins.get(mark)?.wire.as_ref();
    let key = format!("connector.{connector}.pins.{mark}.wire");
    let wire = wire.map(|wire| Fact::new(key, "fact-wire", Some(wire)));
    Some(PinUse { name, fact, wire })
}

/// Every instrument of one kind.
fn instruments<T>(
    set: &Set,
    kind: InstrumentKind,
    build: impl Fn(&str, &spec::Instrument) -> Option<T>,
) -> Option<BTreeMap<String, T>> {
    let of_kind = (set.instruments.iter())
        .filter(|(_, entry)| entry.item.kind.as_ref().is_some_and(|found| found.value == kind));
    of_kind.map(|(id, entry)| Some((id.clone(), build(id, &entry.item)?))).collect()
}

fn multimeter(set: &Set, link: &Option<At<String>>) -> Option<Multimeter> {
    let id = &link.as_ref()?.value;
    multimeter_of(id, &set.instruments.get(id)?.item)
}

fn multimeter_of(id: &str, meter: &spec::Instrument) -> Option<Multimeter> {
    Some(Multimeter {
        title: text(&meter.title)?,
        input: meter.input_resistance.as_ref().map(|input| input.value),
        volts: ranges(&meter.volts),
        ohms: ranges(&meter.ohms),
        leads: meter.leads.as_ref().map(|leads| leads.value),
        facts: facts::multimeter(id, meter),
    })
}

/// The ranges of a function; `None` where one of them lacks its accuracy or digit.
fn ranges<T: Scalar>(written: &[spec::Range<T>]) -> Option<MeterRanges> {
    let range = |range: &spec::Range<T>| {
        Some(MeterRange {
            most: range.to.as_ref().map_or(f64::INFINITY, |to| to.value.si()),
            accuracy: range.accuracy.as_ref()?.value,
            digit: range.resolution.as_ref()?.value.si(),
        })
    };
    MeterRanges::new(&written.iter().map(range).collect::<Option<Vec<_>>>()?)
}

fn thermometer(set: &Set, link: &Option<At<String>>) -> Option<Thermometer> {
    let id = &link.as_ref()?.value;
    thermometer_of(id, &set.instruments.get(id)?.item)
}

fn thermometer_of(id: &str, meter: &spec::Instrument) -> Option<Thermometer> {
    Some(Thermometer {
        title: text(&meter.title)?,
        limit: meter.accuracy.as_ref().map(|accuracy| accuracy.value),
        thermocouple: meter.thermocouple.as_ref().map(|wire| wire.value),
        facts: facts::thermometer(id, meter),
    })
}

fn build_card(set: &Set, id: &str, card: &spec::Card) -> Option<Card> {
    let (about, thing) = card.about.first()?;
    Some(Card {
        id: id.to_owned(),
        about: *about,
        thing: thing.value.clone(),
        meter: multimeter(set, &card.meter),
        step: card.step.as_ref().map(|step| step.value),
        range: card.range.as_ref().map(|range| range.value),
        example: card.example.as_ref().map(|example| example.value),
        on_a_wall: card.hangs.as_ref().is_some_and(|hangs| hangs.value == Hangs::Wall),
        at: (
            card.at.as_ref().map(|at| at.value),
            Fact::new(format!("card.{id}.at"), "fact-sensors-at", card.at.as_ref()),
        ),
        view: card.view.as_ref().map(|view| view.value),
        size: card.size.as_ref().map(|size| size.value),
        strip: card.strip.as_ref().map(|strip| strip.value),
    })
}
