//! The sensor card: what one sensor reads at every temperature, and why.

pub(super) mod advice;
mod diagram;
mod example;
mod faults;
mod plot;
pub(super) mod reading;
mod signature;
mod strip;
pub(super) mod strip_card;

use schemars::JsonSchema;
use serde::Serialize;

use super::axis::Trace;
use super::bench::Bench;
use super::card::KeyFigure;
use super::caution::{self, Cautions, Room};
use super::ends::{self, End};
use super::figures;
use super::furniture::{Furniture, Kind};
use super::given::{Given, given};
use super::grid::Grid;
use super::marks::Marks;
use super::{Context, Data, Document, Listed, Paperwork, finish};
use crate::model::{Card, PinEnd, PinUse, Points, Sensor};
use crate::physics::curve::Direction;
use crate::quantity::marked;
use crate::spec::{About, Topology};
use crate::words::{Message, Words};
use reading::Readings;

const TEMPLATE: &str = "sensor-card.typ";

const WALL_TEMPLATE: &str = "wall-card.typ";

/// Everything a sensor card's template gets.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct SensorCard {
    /// What every page carries: title band, foot, sources.
    furniture: Furniture,
    /// Where in the vehicle it sits, or NOT GIVEN.
    place: String,
    /// The letter of that place's source.
    place_mark: String,
    /// Which way its reading goes: `hotter → fewer Ω → fewer V`.
    direction: String,
    /// Up to three figures to be read from a distance.
    key_figures: Vec<KeyFigure>,
    /// The connectors at both ends of its wires.
    ends: Vec<End>,
    /// The strip table.
    strip: strip::Strip,
    /// The drawing of the circuit; null where it is not known.
    topology: Option<diagram::Diagram>,
    /// Ohms and volts over the temperature.
    plots: Vec<Trace>,
    /// The example worked through by hand.
    example: example::Example,
    /// What readings outside the strip mean.
    readings: Vec<advice::Reading>,
    /// How to measure, a text each.
    measuring: Vec<String>,
    /// What to do next, a text for each step.
    next: Vec<String>,
    /// What each fault reads; null on a wall card, or where nothing is computed.
    faults: Option<Grid>,
    /// How errors grow over the temperature; null on a wall card, or where nothing is computed.
    signature: Option<signature::Signature>,
    /// The values that it rests on, a line each.
    given: Vec<Given>,
    /// The source's own table; null where it has none.
    points: Option<PointTable>,
    /// The caution box.
    cautions: Cautions,
}

impl Data for SensorCard {
    fn furniture(&mut self) -> &mut Furniture {
        &mut self.furniture
    }
}

/// The table as its source gives it.
#[derive(Debug, Serialize, JsonSchema)]
struct PointTable {
    /// What it is, and in which unit.
    title: String,
    /// Heads: `°F`, `kΩ`.
    columns: Vec<String>,
    /// Rows as the source has them, a text for each column.
    rows: Vec<Vec<String>>,
}

/// Composes one sensor card.
pub(super) fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let Context { model, words, units, .. } = context;
    let card = model.cards.get(&listed.spec)?;
    let sensor = model.sensors.get(card.of(About::Sensor)?)?;
    let system = model.systems.get(&sensor.system)?;
    let readings = Readings::new(sensor, card.meter.as_ref());
    let bench = Bench::of_card(model, card)?;
    let mut marks = Marks::of(context.units);
    let on_a_wall = listed.paperwork == Paperwork::WallCard;
    let (word, template) =
        if on_a_wall { ("doc-wall-card", WALL_TEMPLATE) } else { ("doc-sensor-card", TEMPLATE) };
    let size = context.size_of(listed);
    let plan = context.plan(listed);
    let kind = Kind { word, size, title: sensor.title.clone(), id: listed.id.clone() };
    let furniture = Furniture::new(context, kind, &sensor.system, system, &mut marks);
    let location = sensor.other_facts.iter().find(|fact| fact.label == "fact-location");
    let data = SensorCard {
        furniture,
        place_mark: location.map(|fact| marks.mark(words, fact)).unwrap_or_default(),
        place: sensor.location.clone().unwrap_or_else(|| words.word("doc-not-given")),
        direction: words.word(direction(sensor)),
        given: given_facts(words, sensor, card, &mut marks),
        ends: both_ends(words, sensor, &mut marks),
        key_figures: strip::key_temperatures(units, card.range_of(sensor))
            .into_iter()
            .map(|at| {
                let decimals = strip::ohm_decimals(&readings, card);
                reading::key_figure(context, &readings, at, decimals)
            })
            .collect(),
        strip: strip::compose(context, &readings, card, plan),
        topology: diagram::compose(words, sensor, card),
        plots: plot::compose(context, &readings, card),
        example: example::compose(context, &readings, card),
        readings: advice::readings(words, &readings),
        measuring: advice::measuring(context, &readings, card),
        next: advice::next(words, &readings),
        // A wall card is for what is read from afar: its sensor card has the faults.
        faults: faults::compose(context, &bench, card).filter(|_| !on_a_wall),
        signature: signature::compose(context, &bench, card).filter(|_| !on_a_wall),
        points: sensor.points.as_ref().map(|points| point_table(words, points)),
        cautions: caution::of(words, caution::AT_WIRES, Room::Card),
    };
    // Front and back, or two leaves; unless the strip runs on or the source's own table is long.
    let sides = if data.faults.is_some() { 4 } else { 2 };
    let pages = if strip::fits(units, card, sensor, plan) && plan.slope { sides } else { 0 };
    Some(finish(context, listed, (template, pages), data, marks))
}

/// Which way the reading moves when it gets hotter.
fn direction(sensor: &Sensor) -> &'static str {
    match (sensor.topology, sensor.curve.direction()) {
        (Some(Topology::PullUp), Direction::Falling) => "card-direction-pull-up",
        (Some(Topology::PullDown), Direction::Falling) => "card-direction-pull-down",
        (None, Direction::Falling) => "card-direction-ohms",
        (Some(Topology::PullUp), Direction::Rising) => "card-direction-rising-pull-up",
        (Some(Topology::PullDown), Direction::Rising) => "card-direction-rising-pull-down",
        (None, Direction::Rising) => "card-direction-rising-ohms",
    }
}

/// Every value the card rests on, with its mark. Place and pins are marked where
/// they stand.
fn given_facts(words: &Words, sensor: &Sensor, card: &Card, marks: &mut Marks) -> Vec<Given> {
    let meter = card.meter.iter().flat_map(|meter| &meter.facts).filter(|fact| fact.label == "fact-input");
    let pins = [&sensor.control_unit, &sensor.component].into_iter().flatten();
    // Of the pins only what is missing is a line of its own.
    let missing = pins.flat_map(|end| &end.missing);
    let facts = (sensor.curve_facts.iter())
        .chain(&sensor.circuit_facts)
        .chain(sensor.other_facts.iter().filter(|fact| fact.label != "fact-location"))
        .chain(meter)
        .chain(missing);
    given(words, facts, marks)
}

fn both_ends(words: &Words, sensor: &Sensor, marks: &mut Marks) -> Vec<End> {
    let other = match sensor.topology {
        Some(Topology::PullDown) => "card-pin-reference",
        _ => "card-pin-return",
    };
    let mut end = |end: &PinEnd| {
        let pins = [
            ends::line(words, "card-pin-signal", end.signal.as_ref(), marks),
            ends::line(words, other, end.other.as_ref(), marks),
            ends::line(words, "card-pin-ground", end.ground.as_ref(), marks),
        ];
        End {
            title: ends::title(words, &end.connector, &end.title),
            view: ends::view(words, end),
            pins: pins.into_iter().flatten().collect(),
        }
    };
    [&sensor.control_unit, &sensor.component].into_iter().flatten().map(&mut end).collect()
}

/// Where the two probes go for volts: `C2/7 +  C2/14 −`.
///
/// The other pin of a pull-down sensor carries the reference, so its volts are
/// measured against the ground pin of the control unit.
pub(super) fn probes(words: &Words, sensor: &Sensor, end: &PinEnd) -> String {
    let minus = match sensor.topology {
        Some(Topology::PullDown) => name(&end.ground).or_else(|| Some(words.word("card-ground"))),
        _ => name(&end.other),
    };
    signed(name(&end.signal), minus).join("  ")
}

fn name(pin: &Option<PinUse>) -> Option<String> {
    pin.as_ref().map(|pin| pin.name.clone())
}

/// Two pins with the sign of the probe that touches each.
fn signed(plus: Option<String>, minus: Option<String>) -> Vec<String> {
    let both = [plus.map(|pin| format!("{pin} +")), minus.map(|pin| format!("{pin} −"))];
    both.into_iter().flatten().collect()
}

fn point_table(words: &Words, points: &Points) -> PointTable {
    let (temperature, resistance) = points.units;
    let four = points.rows.first().is_some_and(|row| row.len() == 4);
    let columns = if four {
        let heads = ["card-min", "card-nominal", "card-max"].map(|id| words.word(id));
        std::iter::once(temperature.to_owned()).chain(heads).collect()
    } else {
        vec![temperature.to_owned(), resistance.to_owned()]
    };
    let cell = |cell: &String| marked(&cell.replace('-', "−").replace('_', ""));
    PointTable {
        title: words.say(&Message::new("card-points").with("unit", resistance)),
        columns,
        rows: points.rows.iter().map(|row| row.iter().map(cell).collect()).collect(),
    }
}
