//! The actuator card: what a door actuator reads at its stops, how it moves, and what it
//! means where it does neither.

mod circuit;
mod codes;
mod front;
mod motion;
mod wrong;

use schemars::JsonSchema;
use serde::Serialize;

use super::card::{self, KeyFigure};
use super::caution::{self, Cautions, Room};
use super::ends::{self, End};
use super::furniture::{Furniture, Kind};
use super::given::{Given, given};
use super::grid::Grid;
use super::marks::Marks;
use super::{Context, Data, Document, Listed, finish};
use crate::model::{Actuator, Fact};
use crate::spec::About;
use crate::words::Words;

const TEMPLATE: &str = "actuator-card.typ";

/// Everything an actuator card's template gets.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct ActuatorCard {
    /// What every page carries: title band, foot, sources.
    furniture: Furniture,
    /// Where in the vehicle it sits, or NOT GIVEN.
    place: String,
    /// The letter of that place's source.
    place_mark: String,
    /// Which way its reading goes: `hotter → fewer Ω → fewer V`.
    direction: String,
    /// The connectors at both ends of its wires.
    ends: Vec<End>,
    /// Up to three figures to be read from a distance.
    key_figures: Vec<KeyFigure>,
    /// What it reads: over its travel, or at each position.
    readings: Option<Grid>,
    /// How it moves, and what it means where it does not.
    motion: Grid,
    /// What tells its position: `feedback`, `contacts`, `ladder`, or `nothing`.
    form: &'static str,
    /// The drawing of the circuit; null where no pin is known, or too many.
    circuit: Option<circuit::Circuit>,
    /// What each fault reads.
    wrong: Option<Grid>,
    /// How it finds its stops again, a text each.
    recalibration: Vec<String>,
    /// What to do next, a text for each step.
    next: Vec<String>,
    /// The values that it rests on, a line each.
    given: Vec<Given>,
    /// The caution box.
    cautions: Cautions,
}

impl Data for ActuatorCard {
    fn furniture(&mut self) -> &mut Furniture {
        &mut self.furniture
    }
}

/// Composes one actuator card.
pub(super) fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let Context { model, words, .. } = context;
    let card = model.cards.get(&listed.spec)?;
    let actuator = model.actuators.get(card.of(About::Actuator)?)?;
    let system = model.systems.get(&actuator.system)?;
    let mut marks = Marks::of(context.units);
    let kind = Kind {
        word: "doc-actuator-card",
        size: context.size_of(listed),
        title: actuator.title.clone(),
        id: listed.id.clone(),
    };
    let furniture = Furniture::new(context, kind, &actuator.system, system, &mut marks);
    let (place, place_mark) = card::place(words, &actuator.facts, &mut marks);
    let names = actuator.contacts.as_ref().map(|contacts| contacts.names.clone()).unwrap_or_default();
    let ends = actuator.unit_ends.iter().chain(&actuator.own_ends);
    // An actuator that reports no position has little to say.
    let form = form(actuator);
    let data = ActuatorCard {
        furniture,
        form,
        place,
        place_mark,
        direction: front::direction(words, actuator),
        ends: ends::of_part(words, ends, &names, &mut marks),
        key_figures: front::key_figures(words, actuator),
        readings: front::readings(context, actuator),
        motion: motion::compose(words, actuator, &mut marks),
        circuit: circuit::compose(words, actuator),
        wrong: wrong::compose(context, actuator, &mut marks),
        recalibration: motion::recalibration(words, actuator, &mut marks),
        next: motion::next(words, actuator),
        given: given_facts(words, actuator, &mut marks),
        cautions: caution::of(words, caution::AT_WIRES, Room::Card),
    };
    Some(finish(context, listed, (TEMPLATE, if form == "nothing" { 1 } else { 2 }), data, marks))
}

/// What tells its position.
fn form(actuator: &Actuator) -> &'static str {
    match () {
        () if actuator.stops.is_some() => "feedback",
        () if actuator.ladder.is_some() => "ladder",
        () if actuator.contacts.is_some() => "contacts",
        () => "nothing",
    }
}

/// Every value the card rests on; the place is marked where it stands.
fn given_facts(words: &Words, actuator: &Actuator, marks: &mut Marks) -> Vec<Given> {
    let prefix = format!("actuator.{}", actuator.id);
    let absent = |part: &str, label, is_there: bool| {
        (!is_there).then(|| Fact::new::<()>(format!("{prefix}.{part}"), label, None))
    };
    // A card without these is one with a gap, also where the table of figures needs them not.
    let absent = [
        absent("sweep.time", "fact-sweep-time", actuator.sweep.time.is_some()),
        absent("pins", "fact-control-unit-pins", !actuator.unit_ends.is_empty()),
        absent("component_pins", "fact-own-pins", !actuator.own_ends.is_empty()),
    ];
    let absent: Vec<Fact> = absent.into_iter().flatten().collect();
    let looks = actuator.unit_ends.iter().chain(&actuator.own_ends).flat_map(|end| &end.missing);
    // Place and learning are marked where they stand; the positions stand in the table above.
    // Where a load leads is drawn, and comes from where the load does.
    let elsewhere = |fact: &&Fact| {
        let said = fact.label == "fact-moves" && !fact.is_missing();
        !said && !matches!(fact.label, "fact-location" | "fact-recalibration" | "fact-wiper-load-to")
    };
    let own = actuator.facts.iter().filter(elsewhere).cloned().map(|fact| match fact.label {
        "fact-positions" if !fact.is_missing() => {
            Fact { written: Some(words.word("card-act-as-above")), ..fact }
        }
        _ => fact,
    });
    let own: Vec<Fact> = own.collect();
    given(words, own.iter().chain(&absent).chain(looks), marks)
}
