//! The circuit drawing of a switched load: battery, load, switch, ground, and where to measure.

use schemars::JsonSchema;
use serde::Serialize;

use crate::document::ends::short;
use crate::model::{Blower, Driver, Load, PartEnd, Step, Switched};
use crate::physics::blower::Side;
use crate::spec::Role;
use crate::words::{Message, Words};

/// What stands at the parts of the drawing.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Circuit {
    /// `low`, `high`, or empty where nobody said on which side the switch is.
    side: &'static str,
    /// `coil` or `motor`.
    load: &'static str,
    /// Its value beside it.
    value: String,
    /// The freewheel diode across the coil.
    diode: bool,
    /// What sets a motor's voltage: `transistor`, `resistors` or nothing.
    series: &'static str,
    /// Whether a relay bypasses that.
    bypass: bool,
    /// Whether the contact of a relay is drawn beside its coil.
    contact: bool,
    /// The load's pin that is switched: `S10/1`; each pin may be empty.
    control: String,
    /// The control unit's pin that switches it.
    unit_control: String,
    /// The pin of its feed.
    feed: String,
    /// The pin of its ground.
    ground: String,
    /// A relay's contact, the pin that is fed.
    contact_in: String,
    /// A relay's contact, the pin that it feeds.
    contact_out: String,
    /// What switches, in the language of the page.
    switch: String,
    /// What it shows, for readers who cannot see it.
    alt: String,
}

/// Composes the drawing.
pub(super) fn compose(words: &Words, driver: &Driver) -> Circuit {
    let pin = |ends: &[PartEnd], role: Role| {
        let found = ends.iter().flat_map(|end| &end.pins).find(|pin| pin.role == role);
        found.map(|pin| short(&pin.pin.name)).unwrap_or_default()
    };
    let own = |role| pin(&driver.own_ends, role);
    let side = match driver.polarity {
        Some(Side::Low) => "low",
        Some(Side::High) => "high",
        None => "",
    };
    let (load, value) = match &driver.load {
        Load::Coil(coil, _) | Load::Solenoid(coil, _) => ("coil", coil.rated.resistance.nominal.to_string()),
        Load::Blower(_) => ("motor", String::new()),
    };
    let diode = matches!(&driver.load, Load::Solenoid(_, solenoid) if solenoid.diode_drop.is_some());
    let blower = match &driver.load {
        Load::Blower(blower) => Some(blower),
        _ => None,
    };
    let alt = match (side, load) {
        ("low", _) => "card-drv-alt-low",
        ("high", _) => "card-drv-alt-high",
        _ => "card-drv-alt-no-side",
    };
    let alt = Message::new(alt).with("load", &driver.title).with("control", own(Role::Control));
    let switch = match blower.map(series) {
        Some("transistor") => "card-drv-transistor",
        Some("resistors") => "card-drv-pack",
        _ => "card-drv-switch",
    };
    Circuit {
        side,
        load,
        value,
        diode,
        series: blower.map(series).unwrap_or_default(),
        bypass: blower.is_some_and(|blower| blower.bypass_drop.is_some()),
        contact: matches!(driver.load, Load::Coil(_, Switched::Relay)),
        control: own(Role::Control),
        unit_control: pin(&driver.unit_ends, Role::Control),
        feed: own(Role::Feed),
        ground: own(Role::Ground),
        contact_in: own(Role::ContactIn),
        contact_out: own(Role::ContactOut),
        switch: words.word(switch),
        alt: words.say(&alt),
    }
}

fn series(blower: &Blower) -> &'static str {
    match blower.steps.first() {
        Some(Step::Resistor(_)) => "resistors",
        Some(Step::Part(..)) => "transistor",
        None => "",
    }
}
