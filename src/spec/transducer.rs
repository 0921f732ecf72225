//! `[transducer.ID]`: a pressure transducer as its documents describe it.

use super::reader::Reader;
use super::roles::{self, RolePin};
use super::value::{At, Sourced};
use crate::quantity::{Interval, Pressure, Ratio, Toleranced, Voltage, interval, ratio, scalar, toleranced};

/// A ratiometric pressure transducer.
#[derive(Debug, Clone)]
pub struct Transducer {
    /// Its name.
    pub title: Option<At<String>>,
    /// The system it belongs to.
    pub system: Option<At<String>>,
    /// Where in the circuit it sits.
    pub location: Option<Sourced<String>>,
    /// What its pressures are measured against.
    pub pressure: Option<At<Sense>>,
    /// The lower end of its line.
    pub low: Option<LinePoint>,
    /// The upper end of its line.
    pub high: Option<LinePoint>,
    /// How far a good part may lie from the line, a part of the span.
    pub accuracy: Option<Sourced<Ratio>>,
    /// The ratios beyond which its output does not go.
    pub clamp: Option<Sourced<Interval<Ratio>>>,
    /// The reference, where it is not the system's.
    pub reference: Option<Sourced<Toleranced<Voltage>>>,
    /// Its pins.
    pub pins: Vec<RolePin>,
    /// What to do next, in steps.
    pub next: Option<Vec<At<String>>>,
}

/// What a pressure is measured against.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sense {
    /// Against vacuum.
    Absolute,
    /// Against the air around.
    Gauge,
}

/// One end of a transducer's line.
#[derive(Debug, Clone)]
pub struct LinePoint {
    /// The pressure.
    pub pressure: Option<Sourced<Pressure>>,
    /// The output's part of the reference.
    pub ratio: Option<Sourced<Ratio>>,
    /// Where its name stands.
    pub place: crate::diag::Place,
}

impl Transducer {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "system", "pressure"]);
        let point = |key| reader.table(key).map(|point| LinePoint::read(&point));
        Self {
            title: reader.text("title"),
            system: reader.text("system"),
            location: reader.sourced_text("location"),
            pressure: reader.choice("pressure", &[("absolute", Sense::Absolute), ("gauge", Sense::Gauge)]),
            low: point("low"),
            high: point("high"),
            accuracy: reader.sourced("accuracy", ratio),
            clamp: reader.sourced("clamp", interval),
            reference: reader.sourced("reference", toleranced),
            pins: roles::read(reader, "pins", roles::READING),
            next: reader.texts("next"),
        }
    }
}

impl LinePoint {
    fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["pressure", "ratio"]);
        let point = Self {
            pressure: reader.sourced("pressure", scalar),
            ratio: reader.sourced("ratio", scalar),
            place: reader.place.clone(),
        };
        reader.finish();
        point
    }
}
