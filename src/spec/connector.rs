//! `[connector.ID]`: a connector, seen from a stated side, and its pins.

use std::collections::BTreeMap;

use super::face::{Corner, Edge, FaceRow, read_rows};
use super::reader::Reader;
use super::value::{At, Sourced};
use crate::quantity::{Interval, Misread, Resistance, Toleranced, Voltage, deviation, interval, toleranced};

/// A connector.
#[derive(Debug, Clone)]
pub struct Connector {
    /// What it is and where, such as "Climate control unit, 24-way".
    pub title: Option<At<String>>,
    /// From where its face is seen.
    pub view: Option<At<View>>,
    /// Which half of the pair is meant.
    pub side: Option<At<Side>>,
    /// Where latch and keys are in that view, in words.
    pub latch: Option<At<String>>,
    /// The rows of its face in that view, from the top; a place without a mark is a gap.
    pub rows: Option<At<Vec<FaceRow>>>,
    /// At which edge of the face the latch is, in that view.
    pub latch_side: Option<At<Edge>>,
    /// Where the keys are that fit only one way, in that view.
    pub keys: Option<Vec<At<Corner>>>,
    /// Whether it belongs to an airbag or belt tensioner: nothing of it is printed.
    pub airbag: Option<At<bool>>,
    /// Pins by their mark.
    pub pins: BTreeMap<String, Pin>,
}

/// From where a connector's face is seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum View {
    /// Looking at the face that mates.
    MatingFace,
    /// Looking at the face where the wires enter, as when back-probing.
    WireEntry,
}

impl View {
    /// Both, with their words in a spec.
    pub(super) const WORDS: &'static [(&'static str, Self)] =
        &[("mating-face", Self::MatingFace), ("wire-entry", Self::WireEntry)];

    /// The view from the other side, in which left and right change places.
    #[must_use]
    pub fn other(self) -> Self {
        match self {
            Self::MatingFace => Self::WireEntry,
            Self::WireEntry => Self::MatingFace,
        }
    }
}

/// Which half of a connector pair is meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// The half on the wires.
    Harness,
    /// The half on the component.
    Component,
}

impl Side {
    /// Both, with their words in a spec.
    pub(super) const WORDS: &'static [(&'static str, Self)] =
        &[("harness", Self::Harness), ("component", Self::Component)];
}

/// One pin.
#[derive(Debug, Clone)]
pub struct Pin {
    /// What it carries.
    pub function: Option<At<String>>,
    /// The wire's colour letters (IEC 60757) and size, as written.
    pub wire: Option<Sourced<String>>,
    /// What a meter shows at it with the key off, on, unmated, and running, as a document says.
    pub expect: [Option<Sourced<Expected>>; 4],
    /// Where it stands.
    pub place: crate::diag::Place,
}

/// What a meter shows at a pin.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Expected {
    /// Volts to ground.
    Volts(Interval<Voltage>),
    /// Ohms to the pin's partner.
    Ohms(Interval<Resistance>),
}

impl Pin {
    /// The keys of `expect`, in the order of [`Pin::expect`].
    pub const STATES: [&str; 4] = ["off", "on", "unmated", "running"];
}

impl Connector {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "pins"]);
        let pins = reader.table("pins").map(|pins| read_pins(&pins)).unwrap_or_default();
        Self {
            title: reader.text("title"),
            view: reader.choice("view", View::WORDS),
            side: reader.choice("side", Side::WORDS),
            latch: reader.text("latch"),
            rows: read_rows(reader),
            latch_side: reader.choice("latch_side", Edge::WORDS),
            keys: reader.choices("keys", Corner::WORDS),
            airbag: reader.flag("airbag").map(|flag| At { value: flag.value, place: flag.place }),
            pins,
        }
    }
}

/// Pins as `7 = "evaporator signal"` or `7 = { function = "…", wire = "GN 0.5 mm²" }`.
fn read_pins(reader: &Reader<'_>) -> BTreeMap<String, Pin> {
    let pin_of = |(key, value)| {
        let key: At<String> = key;
        let pin = match reader.entry(&key, value) {
            Ok(table) => {
                let pin = Pin {
                    function: table.text("function"),
                    wire: table.sourced_text("wire"),
                    expect: table.table("expect").map(|table| read_expected(&table)).unwrap_or_default(),
                    place: key.place,
                };
                table.finish();
                pin
            }
            Err(function) => Pin { function, wire: None, expect: Default::default(), place: key.place },
        };
        (key.value, pin)
    };
    reader.says_something();
    reader.entries().map(pin_of).collect()
}

fn read_expected(reader: &Reader<'_>) -> [Option<Sourced<Expected>>; 4] {
    let expected = Pin::STATES.map(|state| reader.sourced(state, expected));
    reader.finish();
    expected
}

/// Volts or ohms: `4.9 V to 5.1 V`, `0 V ± 50 mV`, `2.2 kΩ ± 5 %`, or a value alone.
fn expected(text: &str) -> Result<Expected, Misread> {
    if let Ok(volts) = interval(text) {
        return Ok(Expected::Volts(volts));
    }
    let misread = match deviation(text) {
        Ok(volts) => return Ok(Expected::Volts(whole(volts))),
        Err(misread) => misread,
    };
    let ohms = interval(text).or_else(|_| toleranced(text).map(whole));
    ohms.map(Expected::Ohms).map_err(|_| misread)
}

fn whole<T: Copy>(value: Toleranced<T>) -> Interval<T> {
    value.limits.unwrap_or(Interval { low: value.nominal, high: value.nominal })
}
