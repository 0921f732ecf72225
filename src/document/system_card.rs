//! The system card: every input, the control unit and every output on one page.
//!
//! Things stand in the order of the pins that they hang on, inputs at the left of the control
//! unit and outputs at its right, so that no line crosses another.

use std::collections::BTreeMap;

use schemars::JsonSchema;
use serde::Serialize;

use super::caution::{self, Cautions, Room};
use super::ends;
use super::furniture::{Furniture, Kind};
use super::given::{Given, given};
use super::marks::Marks;
use super::users::{self, Thing, User, WhichEnd};
use super::{Context, Data, Document, Listed, finish};
use crate::model::{Fact, Model, pin_order};
use crate::spec::{About, Role};
use crate::words::{Message, Words};

const TEMPLATE: &str = "system-card.typ";

/// Everything a system card's template gets.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct SystemCard {
    /// What every page carries: title band, foot, sources.
    furniture: Furniture,
    /// The values that it rests on, a line each.
    given: Vec<Given>,
    /// Each connector of the control unit.
    sections: Vec<Section>,
    /// What is said with it, a text each.
    notes: Vec<String>,
    /// The caution box.
    cautions: Cautions,
}

/// One connector of the control unit with all that hangs on it.
#[derive(Debug, Serialize, JsonSchema)]
struct Section {
    /// The connector: `C2 · climate control unit, 24-way`.
    title: String,
    /// Its card: `card CUR-C2`; may be empty.
    card: String,
    /// What hangs on it, from top to bottom.
    rows: Vec<Row>,
}

/// An input, an output, or both beside each other.
#[derive(Debug, Default, Serialize, JsonSchema)]
struct Row {
    /// At the left; null where there is none.
    input: Option<Part>,
    /// At the right; null where there is none.
    output: Option<Part>,
}

/// A thing: what it is, its own plug, the card that tests it, its pins at the unit.
#[derive(Debug, Serialize, JsonSchema)]
struct Part {
    /// What it is.
    title: String,
    /// Its own connector: `plug S3`; may be empty.
    plug: String,
    /// The card that tests it: `card CUR-EVAP`; may be empty.
    card: String,
    /// Its pins at the unit: `C2/7 signal`.
    pins: Vec<String>,
    /// Whether something comes back from an output.
    both: bool,
}

impl Data for SystemCard {
    fn furniture(&mut self) -> &mut Furniture {
        &mut self.furniture
    }
}

/// Composes one system card.
pub(super) fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let Context { model, words, .. } = context;
    let id = model.cards.get(&listed.spec)?.of(About::System)?;
    let system = model.systems.get(id)?;
    let mut marks = Marks::of(context.units);
    let kind = Kind {
        word: "doc-system-card",
        size: context.size_of(listed),
        title: words.say(&Message::new("card-system-title").with("system", &system.title)),
        id: listed.id.clone(),
    };
    let furniture = Furniture::new(context, kind, id, system, &mut marks);
    let supply = [
        Fact::new(format!("system.{id}.reference"), "fact-reference", system.reference.as_ref()),
        Fact::new(format!("system.{id}.battery"), "fact-system-battery", system.battery.as_ref()),
    ];
    let data = SystemCard {
        furniture,
        given: given(words, &supply, &mut marks),
        sections: sections(words, model, id, &mut marks),
        notes: vec![words.word("card-system-note-lines"), words.word("card-system-note-cards")],
        cautions: caution::of(words, caution::AT_WIRES, Room::Card),
    };
    Some(finish(context, listed, (TEMPLATE, 0), data, marks))
}

/// Every thing of a system, at the connector of the control unit that it first hangs on.
fn sections(words: &Words, model: &Model, system: &str, marks: &mut Marks) -> Vec<Section> {
    let mut uses: BTreeMap<(&str, &str), Vec<User<'_>>> = BTreeMap::new();
    for user in users::all(model).filter(|user| user.thing.system() == system) {
        uses.entry(user.thing.name()).or_default().push(user);
    }
    let mut by_connector: BTreeMap<String, Vec<(Thing<'_>, Vec<User<'_>>)>> = BTreeMap::new();
    for thing in users::things(model).filter(|thing| thing.system() == system) {
        let of_it = uses.remove(&thing.name()).unwrap_or_default();
        let first = of_it.iter().find(|user| user.end == WhichEnd::Unit);
        let connector =
            first.and_then(|user| user.pin.split_once('/')).map_or("", |(connector, _)| connector);
        by_connector.entry(connector.to_owned()).or_default().push((thing, of_it));
    }
    // What hangs on no pin of the unit stands last.
    let without = by_connector.remove("");
    let named = by_connector.into_iter().map(|(connector, things)| {
        let title = model.connectors.get(&connector).map_or("", |connector| &connector.title);
        Section {
            title: ends::title(words, &connector, title),
            card: card_words(words, users::card_of(model, "connector", &connector)),
            rows: rows(words, model, things),
        }
    });
    let mut sections: Vec<Section> = named.collect();
    if let Some(things) = without {
        for (thing, _) in &things {
            let (kind, id) = thing.name();
            let key = if kind == "driver" { "unit_pins" } else { "pins" };
            marks.missing(format!("{kind}.{id}.{key}"));
        }
        let title = words.word("card-system-no-pins");
        sections.push(Section { title, card: String::new(), rows: rows(words, model, things) });
    }
    sections
}

/// Inputs and outputs beside each other, each in the order of its first pin.
fn rows(words: &Words, model: &Model, mut things: Vec<(Thing<'_>, Vec<User<'_>>)>) -> Vec<Row> {
    things.sort_by_cached_key(|(_, uses)| {
        // A shared pin says nothing of the order: those of its own come first.
        let unit = uses.iter().filter(|user| user.end == WhichEnd::Unit);
        let place = |user: &User<'_>| {
            (!user.role.is_own(), user.pin.split_once('/').map(|(_, mark)| pin_order(mark)))
        };
        unit.map(place).min()
    });
    let mut rows: Vec<Row> = Vec::new();
    let (mut inputs, mut outputs) = (0, 0);
    for (thing, uses) in things {
        let is_output = matches!(thing, Thing::Actuator(_) | Thing::Driver(_));
        let at = if is_output { &mut outputs } else { &mut inputs };
        if *at == rows.len() {
            rows.push(Row::default());
        }
        let part = Some(part(words, model, thing, &uses));
        if is_output {
            rows[*at].output = part
        } else {
            rows[*at].input = part
        }
        *at += 1;
    }
    rows
}

fn part(words: &Words, model: &Model, thing: Thing<'_>, uses: &[User<'_>]) -> Part {
    let pin = |user: &User<'_>| {
        let role = words.word(ends::role(user.role));
        words.say(&Message::new("card-system-pin").with("pin", user.pin).with("role", role))
    };
    let mut plugs: Vec<&str> = uses
        .iter()
        .filter(|user| user.end == WhichEnd::Own)
        .filter_map(|user| user.pin.split_once('/').map(|(connector, _)| connector))
        .collect();
    plugs.dedup();
    let plug = if plugs.is_empty() {
        String::new()
    } else {
        words.say(&Message::new("card-system-plug").with("plug", plugs.join(", ")))
    };
    let reports = |user: &User<'_>| matches!(user.role, Role::Signal | Role::Contact(_));
    Part {
        title: thing.title().to_owned(),
        plug,
        card: card_words(words, thing.card(model)),
        pins: uses.iter().filter(|user| user.end == WhichEnd::Unit).map(pin).collect(),
        both: uses.iter().any(reports),
    }
}

fn card_words(words: &Words, card: Option<&str>) -> String {
    match card {
        Some(card) => words.say(&Message::new("card-tested-by").with("card", card)),
        None => words.word("card-tested-by-none"),
    }
}
