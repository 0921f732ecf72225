//! The front of an actuator card: direction, figures to be read from a distance, readings.

use super::codes;
use crate::document::Context;
use crate::document::card::{self, KeyFigure};
use crate::document::figures::{self, Shown};
use crate::document::grid::Grid;
use crate::document::table::{self, Ask, BLANK};
use crate::model::{Actuator, PositionLadder, Stop};
use crate::physics::Band;
use crate::quantity::{Current, Interval, Ratio, Rounding, Toleranced, Voltage, figure};
use crate::spec::Role;
use crate::words::{Message, Words};

/// The rows of a table of figures over the travel: each tenth.
const TRAVEL_ROWS: usize = 11;

/// Which way the reading goes, in words and arrows.
pub(super) fn direction(words: &Words, actuator: &Actuator) -> String {
    if let Some(high) = actuator.stops.as_ref().and_then(|stops| stops.high.name.as_ref()) {
        return words.say(&Message::new("card-act-more-volts").with("high", high));
    }
    if let Some((first, last)) = actuator.ladder.as_ref().and_then(|ladder| codes::ends(ladder)) {
        return words.say(&Message::new("card-act-volts-from").with("first", first).with("last", last));
    }
    let contacts = actuator.contacts.as_ref().map(|contacts| &contacts.positions);
    match contacts.and_then(|positions| Some((positions.first()?, positions.last()?))) {
        Some((first, last)) => {
            words.say(&Message::new("card-act-order").with("first", first).with("last", last))
        }
        None => String::new(),
    }
}

/// Up to three figures.
pub(super) fn key_figures(words: &Words, actuator: &Actuator) -> Vec<KeyFigure> {
    let time = actuator.sweep.time.map(|time| KeyFigure {
        at: words.word("card-act-end-to-end"),
        value: format!("≤ {}", figures::trimmed(time.seconds())),
        unit: "s".to_owned(),
        also: String::new(),
    });
    let motor = |id: &str, current: Option<Interval<Current>>| {
        let (value, unit) = amperes(current?);
        Some(KeyFigure { at: words.word(id), value, unit: unit.to_owned(), also: String::new() })
    };
    let moving = || {
        let free = motor("card-act-free", actuator.motor_current);
        let held = motor("card-act-held", actuator.stall_current);
        free.into_iter().chain(held)
    };
    let found: Vec<KeyFigure> = if let Some(stops) = &actuator.stops {
        let ends = [("0 %", &stops.low), ("100 %", &stops.high)];
        let ends = ends.map(|(percent, stop)| at_stop(words, actuator.reference, percent, stop));
        ends.into_iter().chain(time).chain(moving()).collect()
    } else if let Some(ladder) = &actuator.ladder {
        at_positions(ladder).into_iter().chain(time).chain(moving()).collect()
    } else {
        let closed = actuator.contacts.as_ref().and_then(|contacts| contacts.closed);
        let closed = closed.map(|closed| KeyFigure {
            at: words.word("card-act-closed"),
            value: format!("≤ {}", figures::trimmed(closed.ohms())),
            unit: "Ω".to_owned(),
            also: String::new(),
        });
        closed.into_iter().chain(time).chain(moving()).collect()
    };
    card::figures(words, "card-act-end-to-end", found.into_iter().take(3).collect())
}

/// The window of one stop: volts where the reference and its limits are known, else the part of it.
fn at_stop(words: &Words, reference: Option<Toleranced<Voltage>>, percent: &str, stop: &Stop) -> KeyFigure {
    let at = stop.name.as_ref().map_or(percent.to_owned(), |name| format!("{name}, {percent}"));
    let part = |ratio: Ratio, rounding| figure(100.0 * ratio.part(), 1, rounding);
    let parts = format!("{}–{}", part(stop.window.low, Rounding::Up), part(stop.window.high, Rounding::Down));
    let Some(limits) = reference.and_then(|reference| reference.limits) else {
        return KeyFigure { at, value: parts, unit: "% Vref".to_owned(), also: String::new() };
    };
    let (low, high) = (stop.window.low.part(), stop.window.high.part());
    let (low, high) = (low * limits.low.volts(), high * limits.high.volts());
    let also = words.say(&Message::new("card-act-of-reference").with("parts", parts));
    KeyFigure { at, value: volts(low, high), unit: "V".to_owned(), also }
}

/// Two figures of a ladder: its first and its last position.
fn at_positions(ladder: &PositionLadder) -> Vec<KeyFigure> {
    let Some(limits) = ladder.ladder.reference.limits else { return Vec::new() };
    let wanted = codes::ends(ladder);
    let named = |name: &str| {
        let (_, closed) = ladder.positions.iter().find(|(known, _)| known == name)?;
        let window = ladder.ladder.ratio_window(closed, None).ok().flatten()?;
        let value = volts(window.low.part() * limits.low.volts(), window.high.part() * limits.high.volts());
        Some(KeyFigure { at: name.to_owned(), value, unit: "V".to_owned(), also: String::new() })
    };
    wanted.into_iter().flat_map(|(first, last)| [named(first), named(last)]).flatten().collect()
}

/// A window of volts, to two decimals where that leaves it open.
fn volts(low: f64, high: f64) -> String {
    let shown: Shown = figures::band(Band { low, nominal: 0.5 * (low + high), high }, 2);
    figures::range(&shown)
}

/// A window of current and its unit.
pub(super) fn amperes(current: Interval<Current>) -> (String, &'static str) {
    let (low, high) = (current.low.amperes(), current.high.amperes());
    let (scale, unit) = if high < 0.9995 { (1e3, "mA") } else { (1.0, "A") };
    (format!("{}–{}", figures::trimmed(scale * low), figures::trimmed(scale * high)), unit)
}

/// What it reads over its travel, or at each position; `None` where it reports nothing.
pub(super) fn readings(context: Context<'_>, actuator: &Actuator) -> Option<Grid> {
    let Context { model, words, .. } = context;
    if let Some(contacts) = actuator.contacts.as_ref().filter(|_| actuator.stops.is_none()) {
        return Some(codes::compose(words, contacts));
    }
    actuator.stops.as_ref().map(|_| ()).or(actuator.ladder.as_ref().map(|_| ()))?;
    let id = format!("actuator.{}", actuator.id);
    let table = table::of(model, words, &Ask { id: &id, units: context.units, ..Ask::default() }).ok()?;
    let title = if actuator.stops.is_some() { "card-act-travel" } else { "card-act-positions" };
    let mut grid = Grid::of_table(words, title, &table).without_blanks();
    // Between the stops every second row is enough for a hand's sweep.
    let travel = if actuator.stops.is_some() { TRAVEL_ROWS } else { 0 };
    let rows = std::mem::take(&mut grid.rows).into_iter().enumerate();
    grid.rows = rows.filter(|(row, _)| *row >= travel || row % 2 == 0).map(|(_, cells)| cells).collect();
    for cells in &mut grid.rows {
        if let Some(name) = cells.first_mut().filter(|name| *name == BLANK) {
            name.clear();
        }
    }
    let place = Message::new("card-act-volts").with("pins", probes(words, actuator));
    let bent = actuator.feedback.as_ref().is_some_and(|feedback| feedback.load.is_some());
    let bent = bent.then(|| words.word("card-act-bent"));
    grid.notes =
        [Some(words.say(&place)), bent, codes::legend(words, actuator)].into_iter().flatten().collect();
    Some(grid)
}

/// Where the two probes go for volts at the control unit.
fn probes(words: &Words, actuator: &Actuator) -> String {
    let pin = |role| actuator.unit_pins().find(|pin| pin.role == role).map(|pin| pin.pin.name.clone());
    let plus = pin(Role::Signal).unwrap_or_else(|| words.word("doc-not-given"));
    let minus =
        pin(Role::Return).or_else(|| pin(Role::Ground)).unwrap_or_else(|| words.word("doc-not-given"));
    format!("{plus} +  {minus} −")
}
