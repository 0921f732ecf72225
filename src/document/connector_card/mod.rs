//! The connector card: how one looks at a connector, and what is at each of its pins.

mod expected;
mod face;

use schemars::JsonSchema;
use serde::Serialize;

use super::caution::{self, Cautions, Room};
use super::ends;
use super::figures;
use super::furniture::{Furniture, Kind};
use super::marks::Marks;
use super::users::{self, User, WhichEnd};
use super::{Context, Data, Document, Listed, finish};
use crate::model::{Card, Connector, ConnectorPin, Model};
use crate::spec::{About, Side};
use crate::words::{Message, Words};
use expected::{Conditions, ON, STATES};
use face::{Face, Look, Seen};

const TEMPLATE: &str = "connector-card.typ";

/// Everything a connector card's template gets.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct ConnectorCard {
    /// What every page carries: title band, foot, sources.
    furniture: Furniture,
    /// The drawing, or nothing where the spec has no rows.
    face: Option<Face>,
    /// How to look at the drawing, a line each.
    looks: Vec<Look>,
    /// How the drawing changes seen from the other side, and whether it is that already.
    mirror: String,
    /// Whether the drawing is that of the other side already.
    mirrored: bool,
    /// Four heads: `key off`, `key on`, `unmated`, `running`.
    states: [String; STATES],
    /// What is at each pin, in their order.
    pins: Vec<PinRow>,
    /// What holds for all pins, a text each.
    notes: Vec<String>,
    /// The caution box.
    cautions: Cautions,
}

/// One pin: two lines, and a third for those that share it.
#[derive(Debug, Serialize, JsonSchema)]
struct PinRow {
    /// Its mark: `7`.
    pin: String,
    /// Colour and size: `GN 0.5 mm²`; may be empty.
    wire: String,
    /// What is on it: `cabin air, signal`.
    function: String,
    /// The letters of the sources of wire and pin.
    mark: String,
    /// What a meter shows in each state; nothing where only its card says it.
    states: Vec<String>,
    /// Who shares the pin; empty where nobody does.
    shared: String,
    /// The card of what hangs on it: `card CUR-EVAP`; may be empty.
    card: String,
}

impl Data for ConnectorCard {
    fn furniture(&mut self) -> &mut Furniture {
        &mut self.furniture
    }
}

/// Composes one connector card.
pub(super) fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let Context { model, words, .. } = context;
    let card = model.cards.get(&listed.spec)?;
    let connector = model.connectors.get(card.of(About::Connector)?)?;
    let users: Vec<User<'_>> = users::of_connector(model, &connector.id).collect();
    // The rules see to it that something hangs on it.
    let system_id = users.first()?.thing.system();
    let system = model.systems.get(system_id)?;
    let mut marks = Marks::of(context.units);
    let kind = Kind {
        word: "doc-connector-card",
        size: context.size_of(listed),
        title: ends::title(words, &connector.id, &connector.title),
        id: listed.id.clone(),
    };
    let furniture = Furniture::new(context, kind, system_id, system, &mut marks);
    for fact in &connector.missing {
        marks.mark(words, fact);
    }
    let conditions =
        Conditions { words, side: connector.side, at: card.at.0, meter: card.meter.as_ref(), system };
    let seen = Seen::new(connector, card.view);
    let (mirrored, mirror) = seen.mirror(words).unwrap_or_default();
    let rows = connector.pins.iter().map(|pin| row(&conditions, model, (connector, pin), &users, &mut marks));
    let data = ConnectorCard {
        furniture,
        face: seen.face(words),
        looks: seen.looks(words),
        mirror,
        mirrored,
        states: ["card-state-off", "card-state-on", "card-state-unmated", "card-state-running"]
            .map(|id| words.word(id)),
        pins: rows.collect(),
        notes: notes(context, card, connector, &users, &mut marks),
        cautions: caution::of(words, caution::AT_WIRES, Room::Card),
    };
    // A face of few pins is one side, a wide one runs on.
    Some(finish(context, listed, (TEMPLATE, 0), data, marks))
}

fn row(
    conditions: &Conditions<'_>,
    model: &Model,
    (connector, pin): (&Connector, &ConnectorPin),
    users: &[User<'_>],
    marks: &mut Marks,
) -> PinRow {
    let words = conditions.words;
    let name = format!("{}/{}", connector.id, pin.mark);
    let here: Vec<&User<'_>> = users.iter().filter(|user| user.pin == name).collect();
    let given = pin.expect.iter().flatten();
    let mark = marks.letters(words, std::iter::once(&pin.wire).chain(given));
    let mut states = states(conditions, pin, &here).to_vec();
    let cards: Vec<&str> = here.iter().filter_map(|user| user.thing.card(model)).collect();
    // What the card of a thing says of its pins is not missing here.
    if states.iter().all(|shown| shown == super::table::BLANK) {
        match (here.as_slice(), cards.as_slice()) {
            (_, []) => {
                states[ON] = words.word("doc-not-given");
                marks.missing(format!("connector.{}.pins.{}.expect", connector.id, pin.mark));
            }
            ([_], [_]) => states.clear(),
            _ => states[ON] = words.word("card-see-card"),
        }
    }
    let card = match (here.as_slice(), cards.as_slice()) {
        ([_], [card]) if states.is_empty() => {
            words.say(&Message::new("card-tested-only-by").with("card", card))
        }
        ([_], [card]) => words.say(&Message::new("card-tested-by").with("card", card)),
        ([_], []) => words.word("card-tested-by-none"),
        _ => String::new(),
    };
    PinRow {
        pin: pin.mark.clone(),
        wire: pin.wire.written.clone().unwrap_or_else(|| words.word("doc-not-given")),
        function: pin.function.clone().unwrap_or_else(|| words.word("doc-not-given")),
        mark,
        states,
        shared: shared(words, model, &here),
        card,
    }
}

/// What a document expects of a pin comes before what its users let one compute.
fn states(conditions: &Conditions<'_>, pin: &ConnectorPin, users: &[&User<'_>]) -> [String; STATES] {
    let computed: Vec<expected::Shown> = users.iter().map(|user| conditions.computed(user)).collect();
    std::array::from_fn(|state| {
        if let Some(given) = &pin.expect[state] {
            return given.shown().unwrap_or_default();
        }
        // All who share a pin see the same reference; where they do not, none is printed.
        let mut shown = computed.iter().filter_map(|shown| shown[state].as_ref());
        let first = shown.next();
        let agree = shown.all(|other| Some(other) == first);
        first.filter(|_| agree).cloned().unwrap_or_else(|| super::table::BLANK.to_owned())
    })
}

/// Everything on a pin that more than one thing hangs on, each with its card.
fn shared(words: &Words, model: &Model, users: &[&User<'_>]) -> String {
    if users.len() < 2 {
        return String::new();
    }
    let one = |user: &&User<'_>| match user.thing.card(model) {
        Some(card) => {
            let message = Message::new("card-shares").with("title", user.thing.title()).with("card", card);
            words.say(&message)
        }
        None => user.thing.title().to_owned(),
    };
    let all: Vec<String> = users.iter().map(one).collect();
    words.say(&Message::new("card-shared").with("count", users.len()).with("things", all.join("; ")))
}

/// What the values of the four states mean, and what they hold for.
fn notes(
    Context { words, units, .. }: Context<'_>,
    card: &Card,
    connector: &Connector,
    users: &[User<'_>],
    marks: &mut Marks,
) -> Vec<String> {
    let mut notes = vec![words.word("card-note-to-ground")];
    let sensors = || users.iter().filter(|user| matches!(user.thing, users::Thing::Sensor(_)));
    if sensors().next().is_some() {
        let (at, fact) = &card.at;
        let mark = marks.mark(words, fact);
        let of = mark.is_empty().then(String::new).unwrap_or_else(|| format!(" [{mark}]"));
        notes.push(match at {
            Some(at) => {
                let at = format!("{}{of}", figures::temperature(units, *at));
                words.say(&Message::new("card-note-sensors-at").with("at", at))
            }
            None => words.word("card-note-sensors-not-given"),
        });
        let beyond = |at| {
            let out = |user: &User<'_>| match user.thing {
                users::Thing::Sensor(sensor) => !sensor.range.contains(&at),
                _ => false,
            };
            sensors().any(out)
        };
        if at.is_some_and(beyond) {
            notes.push(words.word("card-note-sensors-beyond"));
        }
        let unmated = match (connector.side, sensors().next().map(|user| user.end)) {
            (Some(Side::Harness), Some(WhichEnd::Unit)) => Some("card-note-unmated-unit"),
            (Some(Side::Harness), Some(WhichEnd::Own)) => Some("card-note-unmated-plug"),
            (Some(Side::Component), Some(WhichEnd::Own)) => Some("card-note-unmated-part"),
            _ => None,
        };
        notes.extend(unmated.map(|id| words.word(id)));
        let meter = card.meter.as_ref().and_then(|meter| meter.input);
        notes.push(match meter {
            Some(input) => words.say(&Message::new("card-note-meter-on").with("input", input.nominal)),
            None => words.word("card-note-meter-none"),
        });
    }
    notes.extend(["card-note-computed", "card-note-states-blank"].map(|id| words.word(id)));
    notes
}
