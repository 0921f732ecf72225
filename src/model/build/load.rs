//! Links drivers and wires, and collects the values behind their figures.

use super::super::driver::{Blower, Coil, Driver, Limits, Load, Solenoid, Step, Switched};
use super::super::fact::Fact;
use super::super::load::{conductors, control, greatest, motor};
use super::super::wire::Wire;
use super::{ends, text};
use crate::physics::coil::RatedCoil;
use crate::physics::wire::{Run, nominal_per_metre};
use crate::quantity::WireSize;
use crate::spec::{self, BlowerControl, DriverKind, Set, Sourced};

/// A checked driver; `None` where the rules or the reader have said why.
pub(super) fn build_driver(set: &Set, id: &str, driver: &spec::Driver) -> Option<Driver> {
    let drive = driver.drive.as_ref();
    let load = match driver.kind.as_ref()?.value {
        DriverKind::Clutch => Load::Coil(coil(driver.coil.as_ref()?)?, Switched::Clutch),
        DriverKind::Relay => Load::Coil(coil(driver.coil.as_ref()?)?, Switched::Relay),
        DriverKind::Solenoid => Load::Solenoid(coil(driver.coil.as_ref()?)?, solenoid(driver)?),
        DriverKind::Blower => Load::Blower(blower(driver.blower.as_ref()?)),
    };
    Some(Driver {
        id: id.to_owned(),
        title: text(&driver.title)?,
        system: text(&driver.system)?,
        polarity: value(&driver.polarity),
        battery: drive.and_then(|drive| value(&drive.battery)),
        nominal: drive.and_then(|drive| value(&drive.nominal)),
        location: driver.location.as_ref().map(|location| location.value.clone()),
        limits: driver.limits.as_ref().map_or_else(Limits::default, limits),
        own_ends: ends::of(set, &format!("driver.{id}"), &driver.pins),
        unit_ends: ends::of(set, &format!("driver.{id}"), &driver.unit_pins),
        load,
        next: driver.next.iter().flatten().map(|step| step.value.clone()).collect(),
        facts: facts(id, driver),
    })
}

fn limits(written: &spec::Limits) -> Limits {
    Limits {
        supply: value(&written.supply_drop),
        ground: value(&written.ground_drop),
        contact: value(&written.contact_drop),
    }
}

/// A checked wire.
pub(super) fn build_wire(id: &str, wire: &spec::Wire) -> Option<Wire> {
    let size = wire.size.as_ref()?.value;
    let run = wire.length.as_ref().zip(conductors(wire));
    Some(Wire {
        id: id.to_owned(),
        title: text(&wire.title)?,
        system: text(&wire.system)?,
        driver: text(&wire.driver),
        size,
        nominal: nominal_per_metre(size).ok()?,
        greatest: greatest(wire),
        run: run.map(|(length, conductors)| Run { length: length.value, conductors }),
        current: value(&wire.current),
        temperature: value(&wire.temperature),
        drop_limit: value(&wire.drop_limit),
        facts: wire_facts(id, wire),
    })
}

fn value<T: Copy>(value: &Option<Sourced<T>>) -> Option<T> {
    value.as_ref().map(|value| value.value)
}

fn coil(coil: &spec::Coil) -> Option<Coil> {
    Some(Coil {
        rated: RatedCoil { resistance: value(&coil.resistance)?, at: value(&coil.at)? },
        temperature: value(&coil.temperature),
        isolation: value(&coil.isolation),
    })
}

fn solenoid(driver: &spec::Driver) -> Option<Solenoid> {
    let drive = driver.drive.as_ref();
    let of = |steps: &Vec<Sourced<_>>| steps.iter().map(|step| step.value).collect();
    let curve = match &driver.displacement {
        Some(displacement) => Some(control(displacement)?.ok()?),
        None => None,
    };
    Some(Solenoid {
        switch_drop: drive.and_then(|drive| value(&drive.switch_drop)),
        diode_drop: drive.and_then(|drive| value(&drive.diode_drop)),
        frequency: drive.and_then(|drive| value(&drive.frequency)),
        timing: drive.and_then(|drive| value(&drive.inductance).zip(value(&drive.frequency))),
        steps: drive.and_then(|drive| drive.steps.as_ref()).map(of),
        control: curve,
    })
}

fn blower(blower: &spec::Blower) -> Blower {
    let tolerance = value(&blower.step_tolerance);
    let parts = blower.steps.iter().flatten().map(|step| Step::Part(step.value, tolerance));
    let resistors = blower.resistors.iter().flatten().map(|step| Step::Resistor(step.value));
    Blower {
        motor: motor(blower).and_then(Result::ok),
        steps: parts.chain(resistors).collect(),
        bypass_drop: value(&blower.bypass_drop),
        wiring: value(&blower.wiring),
    }
}

/// The values behind a driver's figures, those that are missing among them.
fn facts(id: &str, driver: &spec::Driver) -> Vec<Fact> {
    let kind = driver.kind.as_ref().map(|kind| kind.value);
    let mut facts = Facts { prefix: format!("driver.{id}"), list: Vec::new() };
    if kind == Some(DriverKind::Blower) {
        blower_facts(&mut facts, driver.blower.as_ref());
    } else {
        coil_facts(&mut facts, driver.coil.as_ref());
    }
    let drive = driver.drive.as_ref();
    facts.add("drive.battery", "fact-battery", drive.and_then(|drive| drive.battery.as_ref()));
    facts.add("drive.nominal", "fact-battery-nominal", drive.and_then(|drive| drive.nominal.as_ref()));
    if kind == Some(DriverKind::Solenoid) {
        facts.add(
            "drive.switch_drop",
            "fact-switch-drop",
            drive.and_then(|drive| drive.switch_drop.as_ref()),
        );
        facts.add("drive.diode_drop", "fact-diode-drop", drive.and_then(|drive| drive.diode_drop.as_ref()));
        facts.add("drive.frequency", "fact-frequency", drive.and_then(|drive| drive.frequency.as_ref()));
        facts.add("drive.inductance", "fact-inductance", drive.and_then(|drive| drive.inductance.as_ref()));
        // Without a list of its own the table has every tenth: nothing is missing.
        let steps = drive.and_then(|drive| drive.steps.as_deref());
        if steps.is_some() {
            facts.list_of("drive.steps", "fact-duties", steps);
        }
        displacement_facts(&mut facts, driver.displacement.as_ref());
    }
    facts.add("polarity", "fact-polarity", driver.polarity.as_ref());
    facts.add("location", "fact-location", driver.location.as_ref());
    // Limits and pins that a driver does not list are not behind its figures.
    if let Some(limits) = &driver.limits {
        facts.add("limits.supply_drop", "fact-supply-drop", limits.supply_drop.as_ref());
        facts.add("limits.ground_drop", "fact-ground-drop", limits.ground_drop.as_ref());
        if kind == Some(DriverKind::Relay) {
            facts.add("limits.contact_drop", "fact-contact-drop", limits.contact_drop.as_ref());
        }
    }
    for pin in driver.pins.iter().chain(&driver.unit_pins) {
        facts.add(&pin.key, pin.role.word(), Some(&pin.pin));
    }
    facts.list
}

fn coil_facts(facts: &mut Facts, coil: Option<&spec::Coil>) {
    facts.add("coil.resistance", "fact-rated-resistance", coil.and_then(|coil| coil.resistance.as_ref()));
    facts.add("coil.at", "fact-rated-temperature", coil.and_then(|coil| coil.at.as_ref()));
    facts.add("coil.temperature", "fact-coil-temperature", coil.and_then(|coil| coil.temperature.as_ref()));
    facts.add("coil.isolation", "fact-isolation", coil.and_then(|coil| coil.isolation.as_ref()));
}

fn blower_facts(facts: &mut Facts, blower: Option<&spec::Blower>) {
    facts.add("blower.current", "fact-motor-current", blower.and_then(|blower| blower.current.as_ref()));
    facts.add("blower.at", "fact-motor-voltage", blower.and_then(|blower| blower.at.as_ref()));
    facts.add("blower.exponent", "fact-motor-exponent", blower.and_then(|blower| blower.exponent.as_ref()));
    facts.add("blower.control", "fact-blower-control", blower.and_then(|blower| blower.control.as_ref()));
    let resistors = blower.and_then(|blower| blower.resistors.as_deref());
    if resistors.is_some() {
        facts.list_of("blower.resistors", "fact-blower-resistors", resistors);
    }
    let steps = blower.and_then(|blower| blower.steps.as_deref());
    let by_resistors = blower
        .and_then(|blower| blower.control.as_ref())
        .is_some_and(|control| control.value == BlowerControl::ResistorPack && resistors.is_some());
    if steps.is_some() || !by_resistors {
        facts.list_of("blower.steps", "fact-blower-steps", steps);
        let tolerance = blower.and_then(|blower| blower.step_tolerance.as_ref());
        facts.add("blower.step_tolerance", "fact-step-tolerance", tolerance);
    }
    facts.add("blower.bypass_drop", "fact-bypass-drop", blower.and_then(|b| b.bypass_drop.as_ref()));
    facts.add("blower.wiring", "fact-blower-wiring", blower.and_then(|blower| blower.wiring.as_ref()));
}

fn displacement_facts(facts: &mut Facts, displacement: Option<&spec::Displacement>) {
    let direction = displacement.and_then(|curve| curve.more_current.as_ref());
    facts.add("displacement.more_current", "fact-more-current", direction);
    let points = displacement.and_then(|curve| curve.points.as_ref()).map(|points| {
        let pair = |pair: &spec::Pair<_, _>| format!("{} → {}", pair.first.written, pair.second.written);
        points.iter().map(pair).collect::<Vec<_>>().join(", ")
    });
    let source = points.as_ref().and(displacement).and_then(|curve| curve.source.clone());
    facts.list.push(Fact {
        key: facts.key("displacement.points"),
        label: "fact-displacement",
        written: points,
        source,
    });
}

/// The values behind a wire's figures.
fn wire_facts(id: &str, wire: &spec::Wire) -> Vec<Fact> {
    let mut facts = Facts { prefix: format!("wire.{id}"), list: Vec::new() };
    facts.add("size", "fact-wire-size", wire.size.as_ref());
    // A gauge number has no class.
    let gauge = |size: &Sourced<_>| matches!(size.value, WireSize::Gauge(_));
    if !wire.size.as_ref().is_some_and(gauge) {
        facts.add("class", "fact-wire-class", wire.class.as_ref());
    }
    facts.add("length", "fact-wire-length", wire.length.as_ref());
    facts.add("conductors", "fact-wire-conductors", wire.conductors.as_ref());
    facts.add("current", "fact-wire-current", wire.current.as_ref());
    facts.add("temperature", "fact-wire-temperature", wire.temperature.as_ref());
    facts.add("drop_limit", "fact-drop-limit", wire.drop_limit.as_ref());
    facts.list
}

/// Facts below one spec table.
struct Facts {
    prefix: String,
    list: Vec<Fact>,
}

impl Facts {
    fn key(&self, part: &str) -> String {
        format!("{}.{part}", self.prefix)
    }

    fn add<T>(&mut self, part: &str, label: &'static str, value: Option<&Sourced<T>>) {
        self.list.push(Fact::new(self.key(part), label, value));
    }

    /// A list as one fact; its entries share the table's source unless one has its own.
    fn list_of<T>(&mut self, part: &str, label: &'static str, values: Option<&[Sourced<T>]>) {
        let written = values
            .map(|values| values.iter().map(|value| value.written.as_str()).collect::<Vec<_>>().join(", "));
        let source = values.and_then(|values| values.first()).and_then(|value| value.source.clone());
        self.list.push(Fact { key: self.key(part), label, written, source });
    }
}
