//! What faults read at three temperatures: the rows of the dictionary that a person
//! at the vehicle needs, one size of each.

use super::strip;
use crate::document::Context;
use crate::document::bench::{Bench, fault};
use crate::document::faults::dictionary::{Block, Dictionary, Entry};
use crate::document::faults::sensor::at_unit;
use crate::document::figures;
use crate::document::grid::{Column, Grid};
use crate::document::table::{BLANK, Cell, Show};
use crate::model::Card;
use crate::physics::fault::{Fault, apart};
use crate::quantity::{Interval, Rounding, Units};
use crate::words::{Message, Words};

/// How many parts of the same system can be mixed up on one card.
const MOST_PARTS: usize = 5;

/// Words of a dictionary's tests, in the order of its windows.
const VOLTS: usize = 0;
const OHMS: usize = 1;

/// Which column of a dictionary has what the control unit believes.
const BELIEVED: usize = 2;

/// The table of faults; `None` where the sensor's circuit is not known.
pub(super) fn compose(context: Context<'_>, bench: &Bench<'_>, card: &Card) -> Option<Grid> {
    let Context { words, units, .. } = context;
    let sensor = bench.sensor;
    sensor.circuit.as_ref()?;
    let at = strip::key_temperatures(units, card.range_of(sensor));
    let dictionaries: Vec<Dictionary> = at.iter().map(|at| at_unit((words, units), bench, *at)).collect();
    let blocks: Vec<&Block> = dictionaries.iter().filter_map(|all| all.blocks.first()).collect();
    let mut shown = dictionaries.first()?.shown.clone();
    // A degree Fahrenheit is about half a kelvin: there the unit's belief needs no tenths.
    if let Some(believed) = shown.get_mut(BELIEVED).filter(|_| units == Units::Us) {
        believed.show = Show::Decimals(0, Rounding::Nearest);
    }
    let chosen = chosen(bench, &blocks);
    let row = |fault: &Fault| {
        let name = name(words, fault, bench);
        let cells = blocks.iter().flat_map(|block| match entry(block, bench, fault) {
            Some(entry) => cells(&shown, block, entry),
            None => [BLANK.to_owned(), BLANK.to_owned(), BLANK.to_owned()],
        });
        std::iter::once(name).chain(cells).collect::<Vec<String>>()
    };
    let mut columns = vec![Column::words(words.word("card-fault"))];
    let believed = words.say(&Message::new("card-fault-believed").with("unit", units.symbol()));
    for at in &at {
        let head = figures::temperature(units, *at);
        let subs = ["Ω".to_owned(), "V".to_owned(), believed.clone()];
        columns.extend(subs.map(|sub| Column::figures(&head, sub)));
    }
    Some(Grid {
        title: words.word("card-faults"),
        notes: notes(context, bench, &blocks),
        columns,
        rows: chosen.iter().map(row).collect(),
    })
}

fn notes(Context { words, units, .. }: Context<'_>, bench: &Bench<'_>, blocks: &[&Block]) -> Vec<String> {
    let id = &bench.sensor.id;
    let known = blocks.iter().any(|block| block.good.iter().any(Option::is_some));
    let brackets = if known { "card-note-faults-brackets" } else { "card-note-faults-unknown" };
    ["card-note-faults-where", brackets, "card-note-faults-more"]
        .map(|note| words.say(&Message::new(note).with("id", id).with("unit", units.symbol())))
        .to_vec()
}

/// The faults of the card: of each family the smallest that can be told from good at one
/// of the temperatures, or the largest where none can.
fn chosen(bench: &Bench<'_>, blocks: &[&Block]) -> Vec<Fault> {
    let mut families: Vec<Vec<Fault>> = Vec::new();
    let mut parts = 0;
    for fault in Fault::dictionary(bench.others.len()) {
        if !blocks.iter().any(|block| entry(block, bench, &fault).is_some()) {
            continue;
        }
        if let Fault::OtherPart(other) = fault {
            // Only what is fitted to the same vehicle is at hand to be mixed up.
            let other = bench.others.get(other);
            if parts == MOST_PARTS || other.is_none_or(|(other, _)| other.system != bench.sensor.system) {
                continue;
            }
            parts += 1;
        }
        match families.iter_mut().find(|family| are_sizes(&family[0], &fault)) {
            Some(family) => family.push(fault),
            None => families.push(vec![fault]),
        }
    }
    let told = |fault: &&Fault| blocks.iter().any(|block| is_told(block, bench, fault));
    let by_effect = |one: &&Fault, other: &&Fault| effect(one).total_cmp(&effect(other));
    let choice = |family: Vec<Fault>| {
        let smallest = family.iter().filter(told).min_by(by_effect);
        smallest.or_else(|| family.iter().max_by(by_effect)).copied()
    };
    families.into_iter().filter_map(choice).collect()
}

/// Whether two faults are sizes of one, in the same direction.
fn are_sizes(one: &Fault, other: &Fault) -> bool {
    let value = |fault: &Fault| fault::value(fault).unwrap_or(0.0);
    one.kind().is_some() && one.kind() == other.kind() && value(one) * value(other) >= 0.0
}

/// How large a fault is among those of its family; a leak is small where its resistance is high.
fn effect(fault: &Fault) -> f64 {
    let size = fault::value(fault).unwrap_or(0.0).abs();
    match fault {
        Fault::Leak(_) | Fault::LeakToBattery(_) => -size,
        _ => size,
    }
}

/// The dictionary's entry of a fault: same family, same size.
fn entry<'a>(block: &'a Block, bench: &Bench<'_>, fault: &Fault) -> Option<&'a Entry> {
    let size = match fault {
        Fault::OtherPart(index) => bench.others.get(*index).map(|(sensor, _)| sensor.id.clone()),
        _ => Some(fault::size(fault)).filter(|size| !size.is_empty()),
    };
    block.entries.iter().find(|entry| entry.fault.0 == fault::key(fault) && entry.size == size)
}

fn is_told(block: &Block, bench: &Bench<'_>, fault: &Fault) -> bool {
    let told = |entry: &Entry| [VOLTS, OHMS].iter().any(|test| differs(block, entry, *test));
    entry(block, bench, fault).is_some_and(told)
}

/// Whether this test tells the fault from a good part.
fn differs(block: &Block, entry: &Entry, test: usize) -> bool {
    let window = |of: &[Option<Interval<f64>>]| of.get(test).copied().flatten();
    window(&block.good).zip(window(&entry.windows)).is_some_and(|(good, faulty)| apart(good, faulty))
}

/// Ohms, volts and belief as text; in brackets what cannot be told from a good part.
fn cells(shown: &[crate::document::table::Column], block: &Block, entry: &Entry) -> [String; 3] {
    let text = |index: usize| match (entry.shown.get(index), shown.get(index)) {
        (Some(cell), Some(column)) => column.text(cell),
        _ => BLANK.to_owned(),
    };
    let known = |index: usize| !matches!(entry.shown.get(index), None | Some(Cell::Missing));
    let marked = |index: usize, test: usize| {
        let good = known(index) && !differs(block, entry, test) && window_known(block, entry, test);
        if good { format!("({})", text(index)) } else { text(index) }
    };
    [marked(0, OHMS), marked(1, VOLTS), text(BELIEVED)]
}

fn window_known(block: &Block, entry: &Entry, test: usize) -> bool {
    [&block.good, &entry.windows].iter().all(|windows| windows.get(test).is_some_and(Option::is_some))
}

/// The fault in the few words that a row has, with its size.
pub(super) fn name(words: &Words, fault: &Fault, bench: &Bench<'_>) -> String {
    let id = match fault {
        Fault::Open => "card-fault-open",
        Fault::OpenWire => "card-fault-open-wire",
        Fault::ShortToReturn => "card-fault-short",
        Fault::ShortToGround => "card-fault-to-ground",
        Fault::ShortToReference => "card-fault-to-reference",
        Fault::ShortToBattery => "card-fault-to-battery",
        Fault::Series(_) => "card-fault-series",
        Fault::Leak(_) => "card-fault-leak",
        Fault::LeakToBattery(_) => "card-fault-leak-to-battery",
        Fault::LiftedReturn(_) => "card-fault-lifted-return",
        Fault::ShiftedResistance(_) => "card-fault-resistance",
        Fault::ShiftedSlope(_) => "card-fault-slope",
        Fault::WrongResistor(_) => "card-fault-resistor",
        Fault::UnitStillMated => "card-fault-mated",
        Fault::OtherPart(_) => "card-fault-part",
    };
    let part = match fault {
        Fault::OtherPart(index) => bench.others.get(*index).map_or("", |(sensor, _)| bench.card_of(sensor)),
        _ => "",
    };
    words.say(&Message::new(id).with("size", fault::size(fault)).with("part", part))
}
