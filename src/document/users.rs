//! Who hangs on a connector's pins, and which card tests it.

use crate::model::{Actuator, Driver, Light, Model, PartEnd, PinEnd, RolePin, Sensor, Transducer};
use crate::spec::{Role, Topology};

/// Something with pins.
#[derive(Debug, Clone, Copy)]
pub(super) enum Thing<'a> {
    Sensor(&'a Sensor),
    Actuator(&'a Actuator),
    Light(&'a Light),
    Transducer(&'a Transducer),
    Driver(&'a Driver),
}

/// At which end of its wires a pin of a thing is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum WhichEnd {
    /// At the control unit.
    Unit,
    /// At its own plug.
    Own,
}

/// One use of a pin.
#[derive(Debug, Clone, Copy)]
pub(super) struct User<'a> {
    pub thing: Thing<'a>,
    pub end: WhichEnd,
    pub role: Role,
    /// As written: `C2/7`.
    pub pin: &'a str,
}

impl<'a> Thing<'a> {
    pub(super) fn title(self) -> &'a str {
        match self {
            Self::Sensor(thing) => &thing.title,
            Self::Actuator(thing) => &thing.title,
            Self::Light(thing) => &thing.title,
            Self::Transducer(thing) => &thing.title,
            Self::Driver(thing) => &thing.title,
        }
    }

    pub(super) fn system(self) -> &'a str {
        match self {
            Self::Sensor(thing) => &thing.system,
            Self::Actuator(thing) => &thing.system,
            Self::Light(thing) => &thing.system,
            Self::Transducer(thing) => &thing.system,
            Self::Driver(thing) => &thing.system,
        }
    }

    /// The key that a card names it by, and its id.
    pub(super) fn name(self) -> (&'static str, &'a str) {
        match self {
            Self::Sensor(thing) => ("sensor", &thing.id),
            Self::Actuator(thing) => ("actuator", &thing.id),
            Self::Light(thing) => ("light", &thing.id),
            Self::Transducer(thing) => ("transducer", &thing.id),
            Self::Driver(thing) => ("driver", &thing.id),
        }
    }

    /// The card that tests it: the first by id.
    pub(super) fn card(self, model: &'a Model) -> Option<&'a str> {
        let (key, id) = self.name();
        card_of(model, key, id)
    }
}

/// The first card about a thing.
pub(super) fn card_of<'a>(model: &'a Model, key: &str, id: &str) -> Option<&'a str> {
    let about = |card: &&crate::model::Card| card.about.key() == key && card.thing == id;
    model.cards.values().find(about).map(|card| card.id.as_str())
}

/// Everything with pins, in the order of kinds and ids.
pub(super) fn things(model: &Model) -> impl Iterator<Item = Thing<'_>> {
    let sensors = model.sensors.values().map(Thing::Sensor);
    let lights = model.lights.values().map(Thing::Light);
    let transducers = model.transducers.values().map(Thing::Transducer);
    let actuators = model.actuators.values().map(Thing::Actuator);
    let drivers = model.drivers.values().map(Thing::Driver);
    sensors.chain(lights).chain(transducers).chain(actuators).chain(drivers)
}

/// Every use of every pin of a set, in the order of kinds and ids.
pub(super) fn all(model: &Model) -> impl Iterator<Item = User<'_>> {
    let sensors = model.sensors.values().flat_map(|sensor| {
        let thing = Thing::Sensor(sensor);
        let ends = [(WhichEnd::Unit, &sensor.control_unit), (WhichEnd::Own, &sensor.component)];
        ends.into_iter().flat_map(move |(at, end)| of_sensor(thing, at, end.as_ref(), sensor.topology))
    });
    let actuators = model.actuators.values().flat_map(|part| {
        let thing = Thing::Actuator(part);
        of_ends(thing, WhichEnd::Unit, &part.unit_ends).chain(of_ends(thing, WhichEnd::Own, &part.own_ends))
    });
    let drivers = model.drivers.values().flat_map(|part| {
        let thing = Thing::Driver(part);
        of_ends(thing, WhichEnd::Unit, &part.unit_ends).chain(of_ends(thing, WhichEnd::Own, &part.own_ends))
    });
    let lights = model.lights.values().flat_map(|part| of_pins(Thing::Light(part), &part.pins));
    let transducers =
        model.transducers.values().flat_map(|part| of_pins(Thing::Transducer(part), &part.pins));
    sensors.chain(lights).chain(transducers).chain(actuators).chain(drivers)
}

fn of_sensor<'a>(
    thing: Thing<'a>,
    at: WhichEnd,
    end: Option<&'a PinEnd>,
    topology: Option<Topology>,
) -> impl Iterator<Item = User<'a>> {
    let other = if topology == Some(Topology::PullDown) { Role::Reference } else { Role::Return };
    let pins = end.map(|end| [(Role::Signal, &end.signal), (other, &end.other), (Role::Ground, &end.ground)]);
    let pins = pins.into_iter().flatten();
    pins.filter_map(move |(role, pin)| Some(User { thing, end: at, role, pin: &pin.as_ref()?.name }))
}

fn of_ends<'a>(thing: Thing<'a>, at: WhichEnd, ends: &'a [PartEnd]) -> impl Iterator<Item = User<'a>> {
    let pins = ends.iter().flat_map(|end| &end.pins);
    pins.map(move |pin| User { thing, end: at, role: pin.role, pin: &pin.pin.name })
}

fn of_pins<'a>(thing: Thing<'a>, pins: &'a [RolePin]) -> impl Iterator<Item = User<'a>> {
    pins.iter().map(move |pin| User { thing, end: WhichEnd::Unit, role: pin.role, pin: &pin.pin.name })
}

/// Every use of the pins of one connector.
pub(super) fn of_connector<'a>(model: &'a Model, connector: &'a str) -> impl Iterator<Item = User<'a>> {
    all(model).filter(move |user| user.pin.split_once('/').is_some_and(|(id, _)| id == connector))
}
