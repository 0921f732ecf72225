//! The driver card: what a switched load draws and how it is switched, and where volts get lost.

mod advice;
mod circuit;
mod drops;
mod front;
mod waveform;
mod wrong;

use schemars::JsonSchema;
use serde::Serialize;

use super::axis::Trace;
use super::card::{self, KeyFigure, Reading};
use super::caution::{self, Cautions, Room, Touch};
use super::ends::{self, End};
use super::furniture::{Furniture, Kind};
use super::given::{Given, given};
use super::grid::Grid;
use super::marks::Marks;
use super::{Context, Data, Document, Listed, finish};
use crate::model::{Driver, Fact, Load};
use crate::physics::blower::Side;
use crate::spec::About;
use crate::words::Words;

const TEMPLATE: &str = "driver-card.typ";

/// What a load is measured among: many of them with the engine running.
const AT_LOADS: &[Touch] = &[
    Touch::Dash,
    Touch::MovingParts,
    Touch::Running,
    Touch::HotParts,
    Touch::Unplugging,
    Touch::Ohms,
    Touch::Probing,
];

/// Everything a driver card's template gets.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct DriverCard {
    /// What every page carries: title band, foot, sources.
    furniture: Furniture,
    /// `blower`, `solenoid`, `clutch` or `relay`.
    form: &'static str,
    /// Where in the vehicle it sits, or NOT GIVEN.
    place: String,
    /// The letter of that place's source.
    place_mark: String,
    /// On which side the load is switched.
    direction: String,
    /// The connectors at both ends of its wires.
    ends: Vec<End>,
    /// Up to three figures to be read from a distance.
    key_figures: Vec<KeyFigure>,
    /// Steps, duties or temperatures; none where nothing of them is known.
    figures: Option<Grid>,
    /// A solenoid's coil over its temperature.
    coil: Option<Grid>,
    /// What may be lost along the wires.
    drops: Grid,
    /// The drawing of the circuit.
    circuit: circuit::Circuit,
    /// The line that is switched, over two periods; empty where it is not switched fast.
    waveform: Vec<Trace>,
    /// What is said below that, a text each.
    waveform_notes: Vec<String>,
    /// What readings mean.
    readings: Vec<Reading>,
    /// What each fault reads; null where that cannot be computed.
    wrong: Option<Grid>,
    /// What to do next, a text for each step.
    next: Vec<String>,
    /// The values that it rests on, a line each.
    given: Vec<Given>,
    /// The caution box.
    cautions: Cautions,
}

impl Data for DriverCard {
    fn furniture(&mut self) -> &mut Furniture {
        &mut self.furniture
    }
}

/// Composes one driver card.
pub(super) fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let Context { model, words, .. } = context;
    let card = model.cards.get(&listed.spec)?;
    let driver = model.drivers.get(card.of(About::Driver)?)?;
    let system = model.systems.get(&driver.system)?;
    let mut marks = Marks::of(context.units);
    let kind = Kind {
        word: "doc-driver-card",
        size: context.size_of(listed),
        title: driver.title.clone(),
        id: listed.id.clone(),
    };
    let furniture = Furniture::new(context, kind, &driver.system, system, &mut marks);
    let (place, place_mark) = card::place(words, &driver.facts, &mut marks);
    let ends = driver.unit_ends.iter().chain(&driver.own_ends);
    let drops = drops::compose(context, driver, &mut marks);
    let (waveform, waveform_notes) = waveform::compose(words, driver);
    let data = DriverCard {
        furniture,
        form: form(driver),
        place,
        place_mark,
        direction: direction(words, driver),
        ends: ends::of_part(words, ends, &[], &mut marks),
        key_figures: front::key_figures(context, driver),
        figures: front::figures(context, driver)
            .filter(|grid| !grid.rows.is_empty() && !grid.columns.is_empty()),
        coil: front::coil(context, driver),
        drops,
        circuit: circuit::compose(words, driver),
        waveform,
        waveform_notes,
        readings: advice::readings(words, driver),
        wrong: wrong::compose(context, driver, &mut marks),
        next: advice::next(words, driver),
        given: given_facts(context, driver, &mut marks),
        cautions: caution::of(words, AT_LOADS, Room::Card),
    };
    Some(finish(context, listed, (TEMPLATE, 2), data, marks))
}

fn form(driver: &Driver) -> &'static str {
    use crate::model::Switched;
    match &driver.load {
        Load::Blower(_) => "blower",
        Load::Solenoid(..) => "solenoid",
        Load::Coil(_, Switched::Clutch) => "clutch",
        Load::Coil(_, Switched::Relay) => "relay",
    }
}

/// On which side of the load the switch is, in words.
fn direction(words: &Words, driver: &Driver) -> String {
    words.word(match driver.polarity {
        Some(Side::Low) => "card-drv-low-side",
        Some(Side::High) => "card-drv-high-side",
        None => "card-drv-no-side",
    })
}

/// Every value the card rests on; place and pins are marked where they stand.
fn given_facts(context: Context<'_>, driver: &Driver, marks: &mut Marks) -> Vec<Given> {
    let words = context.words;
    let pins = (driver.own_ends.is_empty())
        .then(|| Fact::new::<()>(format!("driver.{}.pins", driver.id), "fact-own-pins", None));
    let looks = driver.unit_ends.iter().chain(&driver.own_ends).flat_map(|end| &end.missing);
    // Drops are marked in their own table.
    let elsewhere = |fact: &&Fact| {
        let below = fact.key.splitn(3, '.').nth(2).unwrap_or_default();
        fact.label != "fact-location"
            && !["pins.", "unit_pins.", "limits."].iter().any(|start| below.starts_with(start))
    };
    // Points and duties stand in the table above.
    let own = driver.facts.iter().filter(elsewhere).cloned().map(|fact| match fact.label {
        "fact-duties" | "fact-blower-steps" if !fact.is_missing() => {
            Fact { written: Some(words.word("card-act-as-above")), ..fact }
        }
        _ => fact,
    });
    let own: Vec<Fact> = own.collect();
    given(words, own.iter().chain(&pins).chain(looks), marks)
}
