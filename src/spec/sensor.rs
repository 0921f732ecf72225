//! `[sensor.ID]`: a temperature sensor as its documents describe it.

use super::circuit::Circuit;
use super::curve::Curve;
use super::reader::Reader;
use super::value::{At, Sourced};
use crate::physics::tolerance::PlatinumClass;
use crate::quantity::{
    Dissipation, Interval, Ratio, Temperature, TemperatureDifference, interval, ratio, scalar,
};

/// A sensor.
#[derive(Debug, Clone)]
pub struct Sensor {
    /// The sensor's name, base word first or last as the shop likes.
    pub title: Option<At<String>>,
    /// The system it belongs to.
    pub system: Option<At<String>>,
    /// Where in the vehicle it sits.
    pub location: Option<Sourced<String>>,
    /// Resistance against temperature.
    pub curve: Option<At<Curve>>,
    /// How far a good part may lie from the curve.
    pub tolerance: Option<Sourced<Tolerance>>,
    /// The temperatures the card covers.
    pub range: Option<Sourced<Interval<Temperature>>>,
    /// Whether a range stands there that could not be read.
    pub range_misread: bool,
    /// How the control unit reads it.
    pub circuit: Option<Circuit>,
    /// Power that warms it by a kelvin, in still and in moving air.
    pub dissipation: Option<SelfHeating>,
    /// Pins at the control unit.
    pub pins: Option<Pins>,
    /// Pins at the sensor's own connector.
    pub component_pins: Option<Pins>,
    /// How wrong the reading may be before it explains a complaint.
    pub service_limit: Option<Sourced<TemperatureDifference>>,
    /// What to do next when the reading is out of its window, in steps.
    pub next: Option<Vec<At<String>>>,
}

/// How far a good part may lie from the curve.
#[derive(Debug, Clone)]
pub struct Tolerance {
    /// Part of the resistance, at the rated temperature.
    pub resistance: Option<Sourced<Ratio>>,
    /// Part of the B value; makes the band grow away from the rated temperature.
    pub beta: Option<Sourced<Ratio>>,
    /// The temperature that the resistance tolerance holds at.
    pub at: Option<Sourced<Temperature>>,
    /// Or: a distance in temperature, the same over the whole range.
    pub temperature: Option<Sourced<TemperatureDifference>>,
    /// Or: the class of a platinum element.
    pub class: Option<Sourced<PlatinumClass>>,
    /// Whether a part stands there that could not be read.
    pub misread: bool,
}

/// The dissipation constant of a sensor.
#[derive(Debug, Clone)]
pub struct SelfHeating {
    /// In still air.
    pub still: Option<Sourced<Dissipation>>,
    /// In moving air.
    pub moving: Option<Sourced<Dissipation>>,
}

/// The two pins of a sensor at one end of its wires, as `connector/pin`.
#[derive(Debug, Clone)]
pub struct Pins {
    /// The signal pin.
    pub signal: Option<Sourced<String>>,
    /// The return pin; for a pull-down sensor the reference pin, which may be
    /// called `reference`.
    pub return_: Option<Sourced<String>>,
    /// The pin to measure against, where the other one carries the reference.
    pub ground: Option<Sourced<String>>,
}

impl Sensor {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "system", "curve"]);
        let curve = reader.table("curve").and_then(|curve| Curve::read(&curve));
        // A table ends where its points end; a formula never does.
        if curve.as_ref().is_some_and(|curve| !matches!(curve.value, Curve::Table { .. })) {
            reader.require(&["range"]);
        }
        let range = reader.sourced("range", interval);
        Self {
            title: reader.text("title"),
            system: reader.text("system"),
            location: reader.sourced_text("location"),
            curve,
            tolerance: reader.table("tolerance").map(|tolerance| Tolerance::read(&tolerance)),
            range_misread: range.is_none() && reader.has("range"),
            range,
            circuit: reader.table("circuit").map(|circuit| Circuit::read(&circuit)),
            dissipation: reader.table("dissipation").map(|dissipation| SelfHeating::read(&dissipation)),
            pins: reader.table("pins").map(|pins| Pins::read(&pins)),
            component_pins: reader.table("component_pins").map(|pins| Pins::read(&pins)),
            service_limit: reader.sourced("service_limit", scalar),
            next: reader.texts("next"),
        }
    }
}

impl Tolerance {
    fn read(reader: &Reader<'_>) -> Sourced<Self> {
        let mut value = Self {
            resistance: reader.sourced("resistance", ratio),
            beta: reader.sourced("beta", ratio),
            at: reader.sourced("at", scalar),
            temperature: reader.sourced("temperature", scalar),
            class: read_class(reader),
            misread: false,
        };
        let read = [
            ("resistance", value.resistance.is_some()),
            ("beta", value.beta.is_some()),
            ("at", value.at.is_some()),
            ("temperature", value.temperature.is_some()),
            ("class", value.class.is_some()),
        ];
        value.misread = read.iter().any(|(key, read)| !read && reader.has(key));
        reader.finish();
        let written = String::new();
        Sourced { value, written, place: reader.place.clone(), source: reader.source() }
    }
}

fn read_class(reader: &Reader<'_>) -> Option<Sourced<PlatinumClass>> {
    let classes = [
        ("AA", PlatinumClass::AA),
        ("A", PlatinumClass::A),
        ("B", PlatinumClass::B),
        ("C", PlatinumClass::C),
    ];
    let class = reader.choice("class", &classes)?;
    let written = classes.iter().find(|(_, known)| *known == class.value).map(|(word, _)| *word);
    let written = written.unwrap_or_default().to_owned();
    Some(Sourced { value: class.value, written, place: class.place, source: reader.source() })
}

impl SelfHeating {
    fn read(reader: &Reader<'_>) -> Self {
        let dissipation =
            Self { still: reader.sourced("still", scalar), moving: reader.sourced("moving", scalar) };
        reader.finish();
        dissipation
    }
}

impl Pins {
    fn read(reader: &Reader<'_>) -> Self {
        let pins = Self {
            signal: reader.sourced_text("signal"),
            return_: reader.sourced_text("return").or_else(|| reader.sourced_text("reference")),
            ground: reader.sourced_text("ground"),
        };
        reader.finish();
        pins
    }
}
