//! The strip card: the strip table of a sensor alone, for a small paper.

use schemars::JsonSchema;
use serde::Serialize;

use super::reading::Readings;
use super::{both_ends, direction, given_facts, strip};
use crate::document::caution::{self, Cautions, Room};
use crate::document::ends::End;
use crate::document::furniture::{Furniture, Kind};
use crate::document::marks::Marks;
use crate::document::{Context, Data, Document, Listed, finish};
use crate::model::{Card, Model};
use crate::spec::About;
use crate::words::Message;

const TEMPLATE: &str = "strip-card.typ";

/// Everything a strip card's template gets.
#[derive(Debug, Serialize, JsonSchema)]
pub(in crate::document) struct StripCard {
    /// What every page carries: title band, foot, sources.
    furniture: Furniture,
    /// Which way its reading goes: `hotter → fewer Ω → fewer V`.
    direction: String,
    /// The control unit's end; null where no pin is known.
    end: Option<End>,
    /// The strip table.
    strip: strip::Strip,
    /// Where the values stand that the table rests on.
    rests_on: String,
    /// The caution box.
    cautions: Cautions,
}

impl Data for StripCard {
    fn furniture(&mut self) -> &mut Furniture {
        &mut self.furniture
    }
}

/// Composes one strip card.
pub(in crate::document) fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let Context { model, words, .. } = context;
    let card = model.cards.get(&listed.spec)?;
    let sensor = model.sensors.get(card.of(About::Sensor)?)?;
    let system = model.systems.get(&sensor.system)?;
    let readings = Readings::new(sensor, card.meter.as_ref());
    let whole = whole_card(model, card);
    let mut marks = if whole.is_some() { Marks::elsewhere(context.units) } else { Marks::of(context.units) };
    let size = context.size_of(listed);
    let kind = Kind { word: "doc-strip-card", size, title: sensor.title.clone(), id: listed.id.clone() };
    let furniture = Furniture::new(context, kind, &sensor.system, system, &mut marks);
    let ends = both_ends(words, sensor, &mut marks);
    // What is missing or has no source is counted here too.
    given_facts(words, sensor, card, &mut marks);
    let rests_on =
        whole.map(|whole| words.say(&Message::new("card-rests-on").with("card", whole))).unwrap_or_default();
    let data = StripCard {
        furniture,
        direction: words.word(direction(sensor)),
        end: ends.into_iter().next(),
        strip: strip::compose(context, &readings, card, context.plan(listed)),
        rests_on,
        cautions: caution::of(words, caution::AT_WIRES, Room::Card),
    };
    let sides = context.plan(listed).sides;
    Some(Document { sides, ..finish(context, listed, (TEMPLATE, 0), data, marks) })
}

/// The sensor's card that tells what its figures rest on.
fn whole_card<'a>(model: &'a Model, card: &Card) -> Option<&'a str> {
    let same = |other: &&Card| {
        other.strip.is_none()
            && other.about == About::Sensor
            && other.thing == card.thing
            && other.meter.as_ref().map(|meter| &meter.title) == card.meter.as_ref().map(|meter| &meter.title)
    };
    model.cards.values().find(same).map(|card| card.id.as_str())
}
