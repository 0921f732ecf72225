//! `[actuator.ID]`: a door actuator with its feedback, as its documents describe it.

use super::coded::{Contacts, Ladder};
use super::reader::Reader;
use super::roles::{self, RolePin};
use super::value::{At, Sourced};
use crate::quantity::{
    Current, Duration, Interval, Ratio, Resistance, Toleranced, Voltage, interval, ratio, scalar, toleranced,
};

/// A door actuator.
#[derive(Debug, Clone)]
pub struct Actuator {
    /// Its name.
    pub title: Option<At<String>>,
    /// The system it belongs to.
    pub system: Option<At<String>>,
    /// Where in the vehicle it sits.
    pub location: Option<Sourced<String>>,
    /// What it moves.
    pub moves: Option<Sourced<String>>,
    /// Its feedback potentiometer.
    pub feedback: Option<Feedback>,
    /// Its end stops.
    pub stops: Option<Stops>,
    /// What a good sweep does.
    pub sweep: Option<Sweep>,
    /// Its motor.
    pub motor: Option<Motor>,
    /// Position contacts on a wire each.
    pub contacts: Option<Contacts>,
    /// Position contacts coded by resistors on one wire.
    pub ladder: Option<Ladder>,
    /// Its pins at the control unit.
    pub pins: Vec<RolePin>,
    /// The pins at its own plug.
    pub component_pins: Vec<RolePin>,
    /// How the control unit learns the stops again.
    pub recalibration: Option<Sourced<String>>,
    /// What to do next, in steps.
    pub next: Option<Vec<At<String>>>,
}

/// A feedback potentiometer and the input that reads it.
#[derive(Debug, Clone)]
pub struct Feedback {
    /// The track from end to end, without its end resistances.
    pub track: Option<Sourced<Toleranced<Resistance>>>,
    /// The resistance at each end that the wiper never reaches.
    pub ends: Option<Sourced<Toleranced<Resistance>>>,
    /// The resistance between wiper and pin.
    pub contact: Option<Sourced<Toleranced<Resistance>>>,
    /// The control unit's resistor at the pin.
    pub load: Option<Sourced<Toleranced<Resistance>>>,
    /// Where that resistor leads to.
    pub load_to: Option<At<LoadTo>>,
    /// The reference, where it is not the system's.
    pub reference: Option<Sourced<Toleranced<Voltage>>>,
}

/// Where the control unit's load leads to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LoadTo {
    /// From the pin to ground.
    Ground,
    /// From the pin to the reference.
    Reference,
}

/// The two end stops.
#[derive(Debug, Clone)]
pub struct Stops {
    /// The one with the lower reading: 0 %.
    pub low: Option<Stop>,
    /// The one with the higher reading: 100 %.
    pub high: Option<Stop>,
}

/// One end stop.
#[derive(Debug, Clone)]
pub struct Stop {
    /// What the door is there.
    pub name: Option<Sourced<String>>,
    /// The window of V/Vref.
    pub ratio: Option<Sourced<Interval<Ratio>>>,
    /// The nominal V/Vref, where the document has one.
    pub nominal: Option<Sourced<Ratio>>,
}

/// What a good sweep does; shares are parts of the travel.
#[derive(Debug, Clone)]
pub struct Sweep {
    /// The longest time from end to end.
    pub time: Option<Sourced<Duration>>,
    /// The largest step.
    pub step: Option<Sourced<Ratio>>,
    /// The largest commanded travel without a change.
    pub dead_band: Option<Sourced<Ratio>>,
    /// The largest difference between the two directions.
    pub hysteresis: Option<Sourced<Ratio>>,
}

/// A motor.
#[derive(Debug, Clone)]
pub struct Motor {
    /// Its current while it runs free.
    pub current: Option<Sourced<Interval<Current>>>,
    /// Its current while something holds it.
    pub stall: Option<Sourced<Interval<Current>>>,
    /// Whether it is a direct-current motor that a fused lead may feed.
    pub plain_dc: Option<Sourced<bool>>,
}

impl Actuator {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "system"]);
        let contacts = reader.table("contacts").map(|contacts| Contacts::read(&contacts));
        let ends = |end, of: fn(&Contacts) -> &Vec<RolePin>| {
            let mut pins = roles::read(reader, end, roles::MOVING);
            pins.extend(contacts.iter().flat_map(|contacts| of(contacts).iter().cloned()));
            pins
        };
        Self {
            title: reader.text("title"),
            system: reader.text("system"),
            location: reader.sourced_text("location"),
            moves: reader.sourced_text("moves"),
            feedback: reader.table("feedback").map(|feedback| Feedback::read(&feedback)),
            stops: reader.table("stops").map(|stops| Stops::read(&stops)),
            sweep: reader.table("sweep").map(|sweep| Sweep::read(&sweep)),
            motor: reader.table("motor").map(|motor| Motor::read(&motor)),
            pins: ends("pins", |contacts| &contacts.pins),
            component_pins: ends("component_pins", |contacts| &contacts.component_pins),
            ladder: reader.table("ladder").map(|ladder| Ladder::read(&ladder)),
            contacts,
            recalibration: reader.sourced_text("recalibration"),
            next: reader.texts("next"),
        }
    }
}

impl Feedback {
    fn read(reader: &Reader<'_>) -> Self {
        // A load without its other end, or the other end of none, means nothing.
        for (key, other) in [("load", "load_to"), ("load_to", "load")] {
            if reader.has(key) {
                reader.require(&[other]);
            }
        }
        let feedback = Self {
            track: reader.sourced("track", toleranced),
            ends: reader.sourced("ends", toleranced),
            contact: reader.sourced("contact", toleranced),
            load: reader.sourced("load", toleranced),
            load_to: reader
                .choice("load_to", &[("ground", LoadTo::Ground), ("reference", LoadTo::Reference)]),
            reference: reader.sourced("reference", toleranced),
        };
        reader.finish();
        feedback
    }
}

impl Stops {
    fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["low", "high"]);
        let stop = |key| reader.table(key).map(|stop| Stop::read(&stop));
        let stops = Self { low: stop("low"), high: stop("high") };
        reader.finish();
        stops
    }
}

impl Stop {
    fn read(reader: &Reader<'_>) -> Self {
        let stop = Self {
            name: reader.sourced_text("name"),
            ratio: reader.sourced("ratio", interval),
            nominal: reader.sourced("nominal", scalar),
        };
        reader.finish();
        stop
    }
}

impl Sweep {
    fn read(reader: &Reader<'_>) -> Self {
        let sweep = Self {
            time: reader.sourced("time", scalar),
            step: reader.sourced("step", ratio),
            dead_band: reader.sourced("dead_band", ratio),
            hysteresis: reader.sourced("hysteresis", ratio),
        };
        reader.finish();
        sweep
    }
}

impl Motor {
    fn read(reader: &Reader<'_>) -> Self {
        let motor = Self {
            current: reader.sourced("current", interval),
            stall: reader.sourced("stall", interval),
            plain_dc: reader.flag("plain_dc"),
        };
        reader.finish();
        motor
    }
}
