//! `[connector.ID]`: a connector, seen from a stated side, and its pins.

use std::collections::BTreeMap;

use super::reader::Reader;
use super::value::{At, Sourced};

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

/// Which half of a connector pair is meant.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// The half on the wires.
    Harness,
    /// The half on the component.
    Component,
}

/// One pin.
#[derive(Debug, Clone)]
pub struct Pin {
    /// What it carries.
    pub function: Option<At<String>>,
    /// The wire's colour letters (IEC 60757) and size, as written.
    pub wire: Option<Sourced<String>>,
    /// Where it stands.
    pub place: crate::diag::Place,
}

impl Connector {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "pins"]);
        let pins = reader.table("pins").map(|pins| read_pins(&pins)).unwrap_or_default();
        Self {
            title: reader.text("title"),
            view: reader
                .choice("view", &[("mating-face", View::MatingFace), ("wire-entry", View::WireEntry)]),
            side: reader.choice("side", &[("harness", Side::Harness), ("component", Side::Component)]),
            latch: reader.text("latch"),
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
                    place: key.place,
                };
                table.finish();
                pin
            }
            Err(function) => Pin { function, wire: None, place: key.place },
        };
        (key.value, pin)
    };
    reader.says_something();
    reader.entries().map(pin_of).collect()
}
