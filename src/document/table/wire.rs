//! A wire's resistance, and what is lost along it, over temperature.

use super::{Ask, Cell, Column, Show, Table, temperature_cells, temperature_columns, temperatures};
use crate::model::{Model, Wire};
use crate::physics::copper::{DOMAIN, REFERENCE};
use crate::physics::wire::{drop, resistance};
use crate::quantity::{Interval, Resistance, Rounding, Step, Temperature, Units, Voltage, WireSize, figure};
use crate::words::{Message, Words};

/// From row to row where no step was asked for.
const USUAL_STEP: Step = Step::of_kelvins(20.0);

/// The table of a wire.
pub(super) fn of(model: &Model, words: &Words, id: &str, ask: &Ask<'_>) -> Result<Table, Message> {
    let wire = model.wires.get(id).ok_or_else(|| Message::new("run-no-such-table").with("id", id))?;
    // Where no temperature is given there is the one that the standards refer to.
    let standard = Interval { low: REFERENCE, high: REFERENCE };
    let at = temperatures(ask, (id, wire.temperature.unwrap_or(standard), DOMAIN), USUAL_STEP)?;
    let build = match (wire.size, wire.greatest) {
        (_, Some(_)) => "table-note-wire-listed",
        (WireSize::Gauge(_), None) => "table-note-wire-gauge",
        (WireSize::SquareMillimetres(_), None) => "table-note-wire-theory",
    };
    let metre = match wire.greatest {
        Some(greatest) => {
            Message::new("table-note-wire-metre-greatest").with("greatest", milliohms(greatest))
        }
        None => Message::new("table-note-wire-metre"),
    };
    let metre = words.say(&metre.with("nominal", milliohms(wire.nominal)));
    let limit = wire.drop_limit.map(|limit| {
        let known = wire.greatest.is_some();
        let id = if known { "table-note-wire-limit" } else { "table-note-wire-limit-nominal" };
        words.say(&Message::new(id).with("limit", limit))
    });
    let dead = wire.current.is_some().then(|| words.word("table-note-wire-drop"));
    let greatest = wire.greatest.map(|_| "table-formula-wire-greatest");
    let gauge = matches!(wire.size, WireSize::Gauge(_)).then_some("table-formula-wire-gauge");
    let formulas = [Some("table-formula-wire-nominal"), gauge, greatest, Some("table-formula-wire-drop")];
    Ok(Table {
        title: wire.title.clone(),
        notes: [Some(words.word(build)), Some(metre), limit, dead].into_iter().flatten().collect(),
        columns: columns(words, ask.units),
        rows: at.into_iter().map(|at| row(wire, ask.units, at)).collect(),
        formulas: formulas.into_iter().flatten().map(|id| words.word(id)).collect(),
        inputs: wire.facts.clone(),
    })
}

/// The resistance of a metre, with the digits of the cable standard's tables.
fn milliohms(metre: Resistance) -> String {
    let number = 1e3 * metre.ohms();
    format!("{} mΩ/m", figure(number, if number < 10.0 { 3 } else { 1 }, Rounding::Nearest))
}

fn columns(words: &Words, units: Units) -> Vec<Column> {
    let nearest = |decimals| Show::Decimals(decimals, Rounding::Nearest);
    let head = |symbol: &str, word| format!("{symbol} {}", words.word(word));
    let mut columns = temperature_columns(units, "temperature", nearest(1));
    columns.extend([
        Column::new("resistance_nom_ohm", head("Ω", "table-nominal"), nearest(4)),
        Column::new("resistance_max_ohm", head("Ω", "table-max"), Show::Decimals(4, Rounding::Down)),
        Column::new("drop_nom_v", head("V", "table-nominal"), nearest(3)),
        Column::new("drop_max_v", head("V", "table-max"), Show::Decimals(3, Rounding::Down)),
        Column::new("of_limit_percent", words.word("table-of-limit"), nearest(0)),
    ]);
    columns
}

fn row(wire: &Wire, units: Units, at: Temperature) -> Vec<Cell> {
    let whole = |metre: Option<Resistance>| resistance(metre?, wire.run?, at).ok();
    let lost = |whole: Option<Resistance>| drop(whole?, wire.current?).ok();
    let ohms = [whole(Some(wire.nominal)), whole(wire.greatest)];
    let volts = ohms.map(lost);
    // The greatest drop where it is known, else that of solid copper.
    let worst = volts[1].or(volts[0]);
    let of_limit = worst.zip(wire.drop_limit).map(|(lost, limit)| 100.0 * lost.volts() / limit.volts());
    let temperatures = temperature_cells(units, at).into_iter();
    let ohms = ohms.map(|ohms| Cell::from(ohms.map(Resistance::ohms)));
    let volts = volts.map(|volts| Cell::from(volts.map(Voltage::volts)));
    temperatures.chain(ohms).chain(volts).chain([Cell::from(of_limit)]).collect()
}
