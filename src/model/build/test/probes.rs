//! Where the probes of a test go.

use super::super::super::fact::Fact;
use super::super::super::pins::{PinEnd, PinUse};
use super::super::{pin_use, plug};
use crate::spec::{self, Probes, Reads, Role, Set, Sourced, Thing, Where};

/// A probe: the spec key of its pin, and the pin.
type Probe<'a> = Option<(String, &'a Sourced<String>)>;

/// Where the two probes go: as the test says, or at the component's own pins.
#[must_use]
pub fn probes<'a>(set: &'a Set, test: &'a spec::Test) -> [Option<(String, &'a Sourced<String>)>; 2] {
    if let Some(pins) = &test.pins {
        let own = |part: &str, pin: &'a Option<Sourced<String>>| {
            pin.as_ref().map(|pin| (format!("test.pins.{part}"), pin))
        };
        return [own("plus", &pins.plus), own("minus", &pins.minus)];
    }
    let (Some(reads), Some(named)) = (&test.quantity, &test.component) else { return [None, None] };
    if !matches!(reads.value, Reads::Voltage | Reads::Resistance) {
        return [None, None];
    }
    let Some(component) = set.named_component(&named.value) else { return [None, None] };
    let id = component.id;
    match component.thing {
        Thing::Sensor => of_sensor(set, id, test, reads.value),
        Thing::Actuator => set.actuators.get(id).map(|entry| {
            let own = &entry.item.component_pins;
            let at_part = test.place.as_ref().is_some_and(|at| at.value == Where::Component);
            of_roles(named, if at_part && !own.is_empty() { own } else { &entry.item.pins })
        }),
        Thing::Light => set.lights.get(id).map(|entry| of_roles(named, &entry.item.pins)),
        Thing::Transducer => set.transducers.get(id).map(|entry| of_roles(named, &entry.item.pins)),
        Thing::Driver => set.drivers.get(id).map(|entry| match test.place.as_ref().map(|at| at.value) {
            Some(Where::ControlUnit) => across(named, &entry.item.unit_pins),
            _ => across(named, &entry.item.pins),
        }),
        Thing::Wire | Thing::Refrigerant | Thing::Vent | Thing::System => None,
    }
    .unwrap_or([None, None])
}

fn of_sensor<'a>(set: &'a Set, id: &str, test: &spec::Test, reads: Reads) -> Option<[Probe<'a>; 2]> {
    let sensor = &set.sensors.get(id)?.item;
    let (part, pins) = match test.place.as_ref()?.value {
        Where::ControlUnit => ("pins", sensor.pins.as_ref()?),
        Where::Component => ("component_pins", sensor.component_pins.as_ref()?),
        Where::InLine | Where::Vehicle => return None,
    };
    let key = |role: &str| format!("sensor.{id}.{part}.{role}");
    let signal = pins.signal.as_ref().map(|pin| (key("signal"), pin));
    let ground = pins.ground.as_ref().filter(|_| reads == Reads::Voltage).map(|pin| (key("ground"), pin));
    Some([signal, ground.or(pins.return_.as_ref().map(|pin| (key("return"), pin)))])
}

/// The pin of a role.
fn of_role<'a>(named: &spec::At<String>, pins: &'a [spec::RolePin], role: Role) -> Probe<'a> {
    let pin = pins.iter().find(|pin| pin.role == role)?;
    Some((format!("{}.{}", named.value, pin.key), &pin.pin))
}

/// The signal of a part against its return, or against ground.
fn of_roles<'a>(named: &spec::At<String>, pins: &'a [spec::RolePin]) -> [Probe<'a>; 2] {
    let of = |role| of_role(named, pins, role);
    [of(Role::Signal), of(Role::Return).or_else(|| of(Role::Ground))]
}

/// Across a load: the end that is nearer to the battery first.
fn across<'a>(named: &spec::At<String>, pins: &'a [spec::RolePin]) -> [Probe<'a>; 2] {
    let of = |role| of_role(named, pins, role);
    match of(Role::Feed) {
        Some(feed) => [Some(feed), of(Role::Control)],
        None => [of(Role::Control), of(Role::Ground)],
    }
}

pub(super) fn probe_use(set: &Set, id: &str, key: String, pin: &Sourced<String>) -> Option<PinUse> {
    let key = key.strip_prefix("test.").map(|rest| format!("test.{id}.{rest}")).unwrap_or(key);
    let fact = Fact::new(key, "fact-probe", Some(pin));
    if Probes::POSTS.contains(&pin.value.as_str()) {
        return Some(PinUse { name: pin.value.clone(), fact, wire: None });
    }
    pin_use(set, &Some(pin.clone()), fact)
}

/// The connector of a probe, and how it is seen.
pub(super) fn end(set: &Set, probe: &PinUse) -> Option<PinEnd> {
    let (connector, _) = probe.name.split_once('/')?;
    plug(set, connector)
}
