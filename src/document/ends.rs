//! The connectors at the ends of a thing's wires, and how each is seen.

use serde::Serialize;

use super::marks::Marks;
use crate::model::{PinEnd, PinUse};
use crate::spec::{Side, View};
use crate::words::{Message, Words};

/// The connector at one end of the wires.
#[derive(Debug, Serialize)]
pub(super) struct End {
    pub title: String,
    pub view: String,
    pub pins: Vec<PinLine>,
}

/// One pin: what it does, which it is, its wire, its source's letter.
#[derive(Debug, Serialize)]
pub(super) struct PinLine {
    role: String,
    pin: String,
    wire: String,
    mark: String,
}

/// One pin with its role's word, if there is such a pin.
pub(super) fn line(words: &Words, role: &str, pin: Option<&PinUse>, marks: &mut Marks) -> Option<PinLine> {
    let pin = pin?;
    Some(PinLine {
        role: words.word(role),
        pin: pin.name.clone(),
        wire: pin.wire.as_ref().and_then(|wire| wire.written.clone()).unwrap_or_default(),
        mark: marks.letters(words, pin.facts()),
    })
}

/// A connector by its id and its name.
pub(super) fn title(words: &Words, connector: &str, title: &str) -> String {
    words.say(&Message::new("card-connector").with("id", connector).with("title", title))
}

/// How a sensor's connector is seen.
pub(super) fn view(words: &Words, end: &PinEnd) -> String {
    looked_at(words, end.view, end.side, end.latch.as_deref())
}

/// How a connector is seen: view, side and latch in words.
pub(super) fn looked_at(
    words: &Words,
    view: Option<View>,
    side: Option<Side>,
    latch: Option<&str>,
) -> String {
    let view = words.word(match view {
        Some(View::MatingFace) => "card-view-mating-face",
        Some(View::WireEntry) => "card-view-wire-entry",
        None => "card-view-not-given",
    });
    let side = words.word(match side {
        Some(Side::Harness) => "card-side-harness",
        Some(Side::Component) => "card-side-component",
        None => "card-side-not-given",
    });
    [Some(view), Some(side), latch.map(str::to_owned)].into_iter().flatten().collect::<Vec<_>>().join(", ")
}
