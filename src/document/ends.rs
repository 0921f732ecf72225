//! The connectors at the ends of a thing's wires, and how each is seen.

use schemars::JsonSchema;
use serde::Serialize;

use super::marks::Marks;
use crate::model::{PartEnd, PinEnd, PinUse};
use crate::spec::{Role, Side, View};
use crate::words::{Message, Words};

/// The connector at one end of the wires.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct End {
    /// Its id and name: `C2 · climate control unit, 24-way`.
    pub title: String,
    /// How it is seen: `mating-face view, harness side`.
    pub view: String,
    /// Its pins.
    pub pins: Vec<PinLine>,
}

/// One pin: what it does, which it is, its wire, its source's letter.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct PinLine {
    /// What it does: `signal`.
    role: String,
    /// Which it is: `C2/8`.
    pin: String,
    /// Colour and size: `WH 0.5 mm²`; may be empty.
    wire: String,
    /// Letters of its sources, or that it has none.
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
    let view = words.word(view_word(view));
    let side = words.word(match side {
        Some(Side::Harness) => "card-side-harness",
        Some(Side::Component) => "card-side-component",
        None => "card-side-not-given",
    });
    [Some(view), Some(side), latch.map(str::to_owned)].into_iter().flatten().collect::<Vec<_>>().join(", ")
}

/// From where a connector is seen, in a word or two.
pub(super) fn view_word(view: Option<View>) -> &'static str {
    match view {
        Some(View::MatingFace) => "card-view-mating-face",
        Some(View::WireEntry) => "card-view-wire-entry",
        None => "card-view-not-given",
    }
}

/// The ends of a part's wires, each with its pins by their roles.
///
/// `contacts` are the names of its position contacts.
pub(super) fn of_part<'a>(
    words: &Words,
    ends: impl IntoIterator<Item = &'a PartEnd>,
    contacts: &[String],
    marks: &mut Marks,
) -> Vec<End> {
    let mut shown = |end: &PartEnd| {
        let pins = end.pins.iter().filter_map(|pin| {
            let mut shown = line(words, role(pin.role), Some(&pin.pin), marks)?;
            if let Role::Contact(index) = pin.role {
                shown.role =
                    contacts.get(index).map_or(shown.role.clone(), |name| format!("{} {name}", shown.role));
            }
            Some(shown)
        });
        End {
            pins: pins.collect(),
            title: title(words, &end.connector, &end.title),
            view: looked_at(words, end.view, end.side, end.latch.as_deref()),
        }
    };
    ends.into_iter().map(&mut shown).collect()
}

/// What a pin does, in a word or two.
pub(super) fn role(role: Role) -> &'static str {
    match role {
        Role::Signal => "card-pin-signal",
        Role::Reference => "card-pin-reference",
        Role::Return => "card-pin-return",
        Role::Ground => "card-pin-ground",
        Role::MotorPlus => "card-pin-motor-plus",
        Role::MotorMinus => "card-pin-motor-minus",
        Role::Contact(_) => "card-pin-contact",
        Role::Common => "card-pin-common",
        Role::Control => "card-pin-control",
        Role::Feed => "card-pin-feed",
        Role::ContactIn => "card-pin-contact-in",
        Role::ContactOut => "card-pin-contact-out",
    }
}

/// A pin's name as a drawing has room for it: a long connector name, which stands on the
/// front in full, is left out.
pub(super) fn short(pin: &str) -> String {
    match pin.split_once('/') {
        Some((connector, mark)) if connector.chars().count() > 5 => format!("…/{mark}"),
        _ => pin.to_owned(),
    }
}
