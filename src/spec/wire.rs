//! `[wire.ID]`: a run of wire, and what may be lost along it.

use super::reader::Reader;
use super::value::{At, Sourced};
use crate::physics::wire::Class;
use crate::quantity::{
    Current, Interval, Length, Temperature, Voltage, WireSize, interval, scalar, wire_size,
};

/// A run of wire.
#[derive(Debug, Clone)]
pub struct Wire {
    /// What it feeds.
    pub title: Option<At<String>>,
    /// The system it belongs to.
    pub system: Option<At<String>>,
    /// The switched load that it feeds or grounds.
    pub driver: Option<At<String>>,
    /// The conductor's size.
    pub size: Option<Sourced<WireSize>>,
    /// How the conductor is built.
    pub class: Option<Sourced<Class>>,
    /// The way from one end to the other.
    pub length: Option<Sourced<Length>>,
    /// How many conductors the current passes one after the other.
    pub conductors: Option<Sourced<f64>>,
    /// The current that flows.
    pub current: Option<Sourced<Current>>,
    /// How cold and how hot the wire gets in service.
    pub temperature: Option<Sourced<Interval<Temperature>>>,
    /// The most that may be lost along it.
    pub drop_limit: Option<Sourced<Voltage>>,
}

impl Wire {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "system", "size"]);
        let classes =
            [("1", Class::Fixed), ("2", Class::Fixed), ("5", Class::Flexible), ("6", Class::Flexible)];
        Self {
            title: reader.text("title"),
            system: reader.text("system"),
            driver: reader.text("driver"),
            size: reader.sourced("size", wire_size),
            class: reader.sourced_choice("class", &classes),
            length: reader.sourced("length", scalar),
            conductors: reader.number("conductors"),
            current: reader.sourced("current", scalar),
            temperature: reader.sourced("temperature", interval),
            drop_limit: reader.sourced("drop_limit", scalar),
        }
    }
}
