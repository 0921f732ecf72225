//! Where volts may get lost on the way to the load and back, and how many.

use crate::document::Context;
use crate::document::grid::{Column, Grid};
use crate::document::marks::Marks;
use crate::document::said;
use crate::model::{Driver, Fact, Load, Switched, Wire};
use crate::physics::blower::Side;
use crate::physics::copper::REFERENCE;
use crate::physics::wire::{drop, resistance};
use crate::quantity::{Resistance, Rounding, Voltage, figure};
use crate::spec::Role;
use crate::words::{Message, Words};

/// The limits of the drops, NOT GIVEN where they are not, and what the wires alone lose.
pub(super) fn compose(context: Context<'_>, driver: &Driver, marks: &mut Marks) -> Grid {
    let words = context.words;
    let limit = |part: &str, label: &'static str| {
        let key = format!("driver.{}.limits.{part}", driver.id);
        let known = driver.facts.iter().find(|fact| fact.key == key).cloned();
        known.unwrap_or_else(|| Fact::new::<()>(key, label, None))
    };
    let mut row = |what: &str, from: String, fact: Fact| {
        let most = match fact.written {
            // A closed switch has a drop, not a limit.
            Some(_) if matches!(fact.label, "fact-switch-drop") => marks.shown(words, &fact),
            Some(_) => words.say(&Message::new("card-act-at-most").with("value", marks.shown(words, &fact))),
            None => marks.shown(words, &fact),
        };
        vec![words.word(what), from, most]
    };
    let of = |role| pin(words, driver, role);
    let say = |id: &'static str, pin: String| words.say(&Message::new(id).with("pin", pin));
    // Wires and contacts alone: the switch has a drop of its own, and a line of its own.
    let (supply, switch, ground) = match driver.polarity {
        Some(Side::High) => {
            ("card-drv-supply-of-switch", "card-drv-switch-high-from", ("card-drv-return-from", Role::Ground))
        }
        _ => {
            ("card-drv-supply-from", "card-drv-switch-low-from", ("card-drv-return-of-switch", Role::Ground))
        }
    };
    let mut rows =
        vec![row("card-drv-supply", say(supply, of(Role::Feed)), limit("supply_drop", "fact-supply-drop"))];
    let closed =
        driver.facts.iter().find(|fact| matches!(fact.label, "fact-switch-drop" | "fact-bypass-drop"));
    if let Some(fact) = closed.filter(|fact| !fact.is_missing() && driver.polarity.is_some()) {
        rows.push(row("card-drv-switch-row", say(switch, of(Role::Control)), fact.clone()));
    }
    rows.push(row("card-drv-return", say(ground.0, of(ground.1)), limit("ground_drop", "fact-ground-drop")));
    if matches!(driver.load, Load::Coil(_, Switched::Relay)) {
        let (into, out) = (pin(words, driver, Role::ContactIn), pin(words, driver, Role::ContactOut));
        let from = words.say(&Message::new("card-drv-contact-from").with("in", into).with("out", out));
        rows.push(row("card-drv-contact", from, limit("contact_drop", "fact-contact-drop")));
    }
    let wires = context.model.wires.values().filter(|wire| wire.driver.as_deref() == Some(&driver.id));
    let limits = rows.len();
    rows.extend(wires.map(|wire| of_wire(words, wire, marks)));
    let alone = (rows.len() > limits).then(|| words.word("card-drv-wire-note"));
    let heads = ["card-drv-drop", "card-drv-between", "card-drv-most"];
    Grid {
        title: words.word("card-drv-drops"),
        notes: std::iter::once(words.word("card-drv-drops-note")).chain(alone).collect(),
        columns: heads.map(|head| Column::words(words.word(head))).into(),
        rows,
    }
}

/// The pin of a role at the load's own plug.
fn pin(words: &Words, driver: &Driver, role: Role) -> String {
    let found = driver.own_ends.iter().flat_map(|end| &end.pins).find(|pin| pin.role == role);
    found.map_or_else(|| words.word("card-drv-its-plug"), |pin| pin.pin.name.clone())
}

/// What a good wire of this run loses, at its hottest.
fn of_wire(words: &Words, wire: &Wire, marks: &mut Marks) -> Vec<String> {
    let hottest = wire.temperature.map_or(REFERENCE, |range| range.high);
    let lost = |metre: Option<Resistance>| {
        let whole = resistance(metre?, wire.run?, hottest).ok()?;
        drop(whole, wire.current?).ok()
    };
    let volts = |volts: Voltage, rounding| figure(volts.volts(), 2, rounding);
    let loses = match (lost(Some(wire.nominal)), lost(wire.greatest)) {
        (Some(nominal), Some(greatest)) => words.say(
            &Message::new("card-drv-wire-loses")
                .with("nominal", volts(nominal, Rounding::Nearest))
                .with("greatest", volts(greatest, Rounding::Down)),
        ),
        (Some(nominal), None) => words.say(
            &Message::new("card-drv-wire-loses-nominal").with("nominal", volts(nominal, Rounding::Nearest)),
        ),
        (None, _) => words.word("doc-not-given"),
    };
    let mark = marks.letters(words, &wire.facts);
    let written = |label: &str| {
        let fact = wire.facts.iter().find(|fact| fact.label == label);
        said(words, fact)
    };
    let about = Message::new("card-drv-wire-of")
        .with("title", &wire.title)
        .with("size", written("fact-wire-size"))
        .with("length", written("fact-wire-length"))
        .with("current", written("fact-wire-current"));
    vec![words.word("card-drv-wire"), words.say(&about), format!("{loses} [{mark}]")]
}
