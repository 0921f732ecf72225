//! The thing that a test is about, named with its kind: `actuator.mix`.

use super::set::{Entries, Set};
use super::value::At;
use crate::diag::Place;

/// The kinds of thing that a test may be about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Thing {
    /// A temperature sensor.
    Sensor,
    /// A door actuator.
    Actuator,
    /// A switched load.
    Driver,
    /// A light sensor.
    Light,
    /// A pressure transducer.
    Transducer,
    /// A run of wire.
    Wire,
    /// A refrigerant circuit.
    Refrigerant,
    /// The air at the outlets.
    Vent,
    /// A whole system: its reference, its battery, its panel modes.
    System,
}

impl Thing {
    /// Every kind.
    pub const ALL: [Self; 9] = [
        Self::Sensor,
        Self::Actuator,
        Self::Driver,
        Self::Light,
        Self::Transducer,
        Self::Wire,
        Self::Refrigerant,
        Self::Vent,
        Self::System,
    ];

    /// How specs name it.
    #[must_use]
    pub fn key(self) -> &'static str {
        match self {
            Self::Sensor => "sensor",
            Self::Actuator => "actuator",
            Self::Driver => "driver",
            Self::Light => "light",
            Self::Transducer => "transducer",
            Self::Wire => "wire",
            Self::Refrigerant => "refrigerant",
            Self::Vent => "vent",
            Self::System => "system",
        }
    }
}

/// A thing that a test is about.
#[derive(Debug, Clone, Copy)]
pub struct Component<'a> {
    /// What it is.
    pub thing: Thing,
    /// Its id.
    pub id: &'a str,
    /// What it is called.
    pub title: Option<&'a At<String>>,
    /// The id of its system.
    pub system: Option<&'a str>,
    /// Where it stands.
    pub place: &'a Place,
}

impl Set {
    /// The thing of a kind and an id.
    #[must_use]
    pub fn component(&self, thing: Thing, id: &str) -> Option<Component<'_>> {
        macro_rules! of {
            ($entries:expr) => {{
                let (id, entry) = $entries.get_key_value(id)?;
                (id, &entry.item.title, entry.item.system.as_ref().map(|at| at.value.as_str()), &entry.place)
            }};
        }
        let (id, title, system, place) = match thing {
            Thing::Sensor => of!(self.sensors),
            Thing::Actuator => of!(self.actuators),
            Thing::Driver => of!(self.drivers),
            Thing::Light => of!(self.lights),
            Thing::Transducer => of!(self.transducers),
            Thing::Wire => of!(self.wires),
            Thing::Refrigerant => of!(self.refrigerants),
            Thing::Vent => of!(self.vents),
            Thing::System => {
                let (id, entry) = self.systems.get_key_value(id)?;
                (id, &entry.item.title, Some(id.as_str()), &entry.place)
            }
        };
        Some(Component { thing, id, title: title.as_ref(), system, place })
    }

    /// The thing that `kind.id` names, where there is one.
    #[must_use]
    pub fn named_component(&self, written: &str) -> Option<Component<'_>> {
        let (kind, id) = written.split_once('.')?;
        let thing = Thing::ALL.into_iter().find(|thing| thing.key() == kind)?;
        self.component(thing, id)
    }

    /// Every id of a kind.
    #[must_use]
    pub fn ids_of(&self, thing: Thing) -> Vec<&str> {
        fn ids<T>(entries: &Entries<T>) -> Vec<&str> {
            entries.keys().map(String::as_str).collect()
        }
        match thing {
            Thing::Sensor => ids(&self.sensors),
            Thing::Actuator => ids(&self.actuators),
            Thing::Driver => ids(&self.drivers),
            Thing::Light => ids(&self.lights),
            Thing::Transducer => ids(&self.transducers),
            Thing::Wire => ids(&self.wires),
            Thing::Refrigerant => ids(&self.refrigerants),
            Thing::Vent => ids(&self.vents),
            Thing::System => ids(&self.systems),
        }
    }
}
