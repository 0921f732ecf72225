//! Faults in words: a key for programs, a name for people, a size with its unit.

use crate::model::Sensor;
use crate::physics::fault::{Fault, Kind};
use crate::quantity::{Rounding, figure};
use crate::words::{Message, Words};

/// The key of a fault in CSV and JSON; it does not change with the language.
#[must_use]
pub fn key(fault: &Fault) -> &'static str {
    match fault {
        Fault::Open => "open",
        Fault::OpenWire => "open wire",
        Fault::ShortToReturn => "short to return",
        Fault::ShortToGround => "short to ground",
        Fault::ShortToReference => "short to reference",
        Fault::ShortToBattery => "short to battery",
        Fault::Series(_) => "series",
        Fault::Leak(_) => "leak",
        Fault::LeakToBattery(_) => "leak to battery",
        Fault::LiftedReturn(_) => "lifted return",
        Fault::ShiftedResistance(_) => "shifted resistance",
        Fault::ShiftedSlope(_) => "shifted slope",
        Fault::OtherPart(_) => "other part",
        Fault::WrongResistor(_) => "wrong resistor",
        Fault::UnitStillMated => "unit still mated",
    }
}

/// The name of a fault, without its size.
#[must_use]
pub fn name(words: &Words, fault: &Fault, others: &[&Sensor]) -> String {
    let id = match fault {
        Fault::Open => "fault-open",
        Fault::OpenWire => "fault-open-wire",
        Fault::ShortToReturn => "fault-short-to-return",
        Fault::ShortToGround => "fault-short-to-ground",
        Fault::ShortToReference => "fault-short-to-reference",
        Fault::ShortToBattery => "fault-short-to-battery",
        Fault::Series(_) => "fault-series",
        Fault::Leak(_) => "fault-leak",
        Fault::LeakToBattery(_) => "fault-leak-to-battery",
        Fault::LiftedReturn(_) => "fault-lifted-return",
        Fault::ShiftedResistance(_) => "fault-shifted-resistance",
        Fault::ShiftedSlope(_) => "fault-shifted-slope",
        Fault::WrongResistor(_) => "fault-wrong-resistor",
        Fault::UnitStillMated => "fault-unit-still-mated",
        Fault::OtherPart(index) => {
            let title = others.get(*index).map_or("", |other| other.title.as_str());
            let id = others.get(*index).map_or("", |other| other.id.as_str());
            return words.say(&Message::new("fault-other-part").with("title", title).with("id", id));
        }
    };
    words.word(id)
}

/// The size of a fault with its unit; empty where it has none.
#[must_use]
pub fn size(fault: &Fault) -> String {
    match (fault.kind(), value(fault)) {
        (Some(kind), Some(value)) => sized(kind, value, Rounding::Nearest),
        _ => String::new(),
    }
}

/// The size of a fault in its SI unit.
#[must_use]
pub fn value(fault: &Fault) -> Option<f64> {
    match fault {
        Fault::Series(ohms) | Fault::Leak(ohms) | Fault::LeakToBattery(ohms) => Some(ohms.ohms()),
        Fault::LiftedReturn(volts) => Some(volts.volts()),
        Fault::ShiftedResistance(by) | Fault::ShiftedSlope(by) | Fault::WrongResistor(by) => Some(by.part()),
        _ => None,
    }
}

/// The unit in which a kind's sizes are told.
#[must_use]
pub fn unit(kind: Kind) -> &'static str {
    match kind {
        Kind::Series | Kind::Leak | Kind::LeakToBattery => "Ω",
        Kind::LiftedReturn => "V",
        Kind::ShiftedResistance | Kind::ShiftedSlope | Kind::WrongResistor => "%",
    }
}

/// A size in the unit in which it is told: parts of one become percent.
#[must_use]
pub fn in_unit(kind: Kind, size: f64) -> f64 {
    if unit(kind) == "%" { 100.0 * size } else { size }
}

/// A size as text with its unit, to three digits.
#[must_use]
pub fn sized(kind: Kind, size: f64, rounding: Rounding) -> String {
    match kind {
        Kind::Series | Kind::Leak | Kind::LeakToBattery => {
            let (number, unit) = match size.abs() {
                ohms if ohms >= 1e6 => (size / 1e6, "MΩ"),
                ohms if ohms >= 1e3 => (size / 1e3, "kΩ"),
                _ => (size, "Ω"),
            };
            let decimals = match number.abs() {
                n if n >= 100.0 => 0,
                n if n >= 10.0 => 1,
                _ => 2,
            };
            format!("{} {unit}", figure(number, decimals, rounding))
        }
        Kind::LiftedReturn => format!("{} V", figure(size, 3, rounding)),
        Kind::ShiftedResistance | Kind::ShiftedSlope | Kind::WrongResistor => {
            let number = figure(in_unit(kind, size), 1, rounding);
            if size > 0.0 { format!("+{number} %") } else { format!("{number} %") }
        }
    }
}
