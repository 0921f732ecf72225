//! Builds actuators, light sensors and transducers.

use super::super::actuator::{Actuator, Contacts, PositionLadder, Stop, Stops, Sweep};
use super::super::fact::Fact;
use super::super::light::Light;
use super::super::pins::RolePin;
use super::super::transducer::Transducer;
use super::{convert, ends, part_facts, pin_use, text};
use crate::quantity::{Toleranced, Voltage};
use crate::spec::{self, Set, Sourced};

/// The reference that a system feeds to its parts.
fn reference<'a>(set: &'a Set, system: &str) -> Option<&'a Sourced<Toleranced<Voltage>>> {
    set.systems.get(system)?.item.reference.as_ref()
}

fn value<T: Clone>(value: &Option<Sourced<T>>) -> Option<T> {
    value.as_ref().map(|value| value.value.clone())
}

fn steps(next: &Option<Vec<spec::At<String>>>) -> Vec<String> {
    next.iter().flatten().map(|step| step.value.clone()).collect()
}

/// The pins of a part whose table is `key`.
pub(super) fn pins(set: &Set, key: &str, pins: &[spec::RolePin]) -> Vec<RolePin> {
    let pin = |pin: &spec::RolePin| {
        let fact = Fact::new(format!("{key}.{}", pin.key), pin.role.word(), Some(&pin.pin));
        Some(RolePin { role: pin.role, pin: pin_use(set, &Some(pin.pin.clone()), fact)? })
    };
    pins.iter().filter_map(pin).collect()
}

pub(super) fn actuator(set: &Set, id: &str, written: &spec::Actuator) -> Option<Actuator> {
    let system = text(&written.system)?;
    let inherited = reference(set, &system);
    let own = written.feedback.as_ref().and_then(|feedback| feedback.reference.as_ref());
    let sweep = written.sweep.as_ref();
    let motor = written.motor.as_ref();
    let contacts = match written.contacts.as_ref().and_then(|c| Some((c, convert::truth_table(c)?))) {
        Some((contacts, table)) => Some(Contacts {
            names: contacts.names.iter().flatten().map(|name| name.value.clone()).collect(),
            closed: value(&contacts.closed),
            positions: contacts.positions.iter().map(|position| position.name.clone()).collect(),
            table: table.ok()?,
        }),
        None => None,
    };
    Some(Actuator {
        id: id.to_owned(),
        title: text(&written.title)?,
        location: value(&written.location),
        moves: value(&written.moves),
        reference: own.or(inherited).map(|reference| reference.value),
        feedback: written.feedback.as_ref().and_then(|f| convert::feedback(f, inherited)),
        stops: written.stops.as_ref().and_then(stops),
        sweep: Sweep {
            time: sweep.and_then(|sweep| value(&sweep.time)),
            step: sweep.and_then(|sweep| value(&sweep.step)),
            dead_band: sweep.and_then(|sweep| value(&sweep.dead_band)),
            hysteresis: sweep.and_then(|sweep| value(&sweep.hysteresis)),
        },
        motor_current: motor.and_then(|motor| value(&motor.current)),
        stall_current: motor.and_then(|motor| value(&motor.stall)),
        plain_dc: motor.and_then(|motor| value(&motor.plain_dc)),
        contacts,
        ladder: written.ladder.as_ref().and_then(|ladder| position_ladder(ladder, inherited)),
        unit_ends: ends::of(set, &format!("actuator.{id}"), &written.pins),
        own_ends: ends::of(set, &format!("actuator.{id}"), &written.component_pins),
        recalibration: value(&written.recalibration),
        next: steps(&written.next),
        facts: part_facts::actuator(id, &system, written, inherited),
        system,
    })
}

fn stops(written: &spec::Stops) -> Option<Stops> {
    let stop = |stop: &Option<spec::Stop>| {
        let stop = stop.as_ref()?;
        Some(Stop { name: value(&stop.name), window: value(&stop.ratio)?, nominal: value(&stop.nominal) })
    };
    Some(Stops { low: stop(&written.low)?, high: stop(&written.high)? })
}

fn position_ladder(
    written: &spec::Ladder,
    inherited: Option<&Sourced<Toleranced<Voltage>>>,
) -> Option<PositionLadder> {
    let ladder = convert::ladder(written, inherited)?;
    let contacts = ladder.contacts();
    let position =
        |position: &spec::DoorPosition| Some((position.name.clone(), position.code.closed(contacts)?));
    Some(PositionLadder { positions: written.positions.iter().map(position).collect::<Option<_>>()?, ladder })
}

pub(super) fn light(set: &Set, id: &str, written: &spec::Light) -> Option<Light> {
    let system = text(&written.system)?;
    let inherited = reference(set, &system);
    Some(Light {
        id: id.to_owned(),
        title: text(&written.title)?,
        location: value(&written.location),
        sensor: convert::light(written, inherited),
        least_span: value(&written.least_span),
        pins: pins(set, &format!("light.{id}"), &written.pins),
        next: steps(&written.next),
        facts: part_facts::light(id, &system, written, inherited),
        system,
    })
}

pub(super) fn transducer(set: &Set, id: &str, written: &spec::Transducer) -> Option<Transducer> {
    let system = text(&written.system)?;
    let inherited = reference(set, &system);
    let line = match convert::transducer(written) {
        Some(line) => Some(line.ok()?),
        None => None,
    };
    Some(Transducer {
        id: id.to_owned(),
        title: text(&written.title)?,
        location: value(&written.location),
        sense: convert::sense(written)?,
        line,
        reference: written.reference.as_ref().or(inherited).map(|reference| reference.value),
        pins: pins(set, &format!("transducer.{id}"), &written.pins),
        next: steps(&written.next),
        facts: part_facts::transducer(id, &system, written, inherited),
        system,
    })
}
