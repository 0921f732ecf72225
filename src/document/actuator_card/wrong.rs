//! What each fault of an actuator reads: of its potentiometer, its contacts or its ladder.

use crate::document::Context;
use crate::document::fault_rows::{self, FaultRow};
use crate::document::faults;
use crate::document::figures;
use crate::document::grid::{Column, Grid};
use crate::document::marks::Marks;
use crate::document::table::{BLANK, Cell, coded};
use crate::model::{Actuator, Contacts, PositionLadder, Stops};
use crate::physics::contacts::Stuck;
use crate::quantity::{Rounding, figure};
use crate::words::Words;

/// The faults of whatever tells its position.
pub(super) fn compose(context: Context<'_>, actuator: &Actuator, marks: &mut Marks) -> Option<Grid> {
    if let Some(stops) = actuator.stops.as_ref().filter(|_| actuator.feedback.is_some()) {
        return of_feedback(context, (actuator, stops), marks);
    }
    let words = context.words;
    let contacts = actuator.contacts.as_ref().map(|contacts| of_contacts(words, contacts));
    contacts.or_else(|| actuator.ladder.as_ref().and_then(|ladder| of_ladder(words, ladder)))
}

/// The readings of each fault at both stops.
fn of_feedback(
    context: Context<'_>,
    (actuator, stops): (&Actuator, &Stops),
    marks: &mut Marks,
) -> Option<Grid> {
    let Context { model, words, .. } = context;
    let id = format!("actuator.{}", actuator.id);
    let table =
        faults::of(model, words, &faults::Ask { id: &id, units: context.units, ..faults::Ask::default() })
            .ok()?;
    let mut rows = fault_rows::rows(&table, 2, |cell| {
        let volts = |key| match cell(key) {
            Cell::Number(volts) => Some(volts),
            _ => None,
        };
        // A faulty part may read anything between these: rounded outward.
        let (low, high) = (volts("voltage_min_v"), volts("voltage_max_v"));
        let range = low.zip(high).map_or_else(|| BLANK.to_owned(), |(low, high)| between(low, high));
        let believed = match cell("believed_position_percent") {
            Cell::Number(percent) => figure(percent, 0, Rounding::Nearest),
            _ => BLANK.to_owned(),
        };
        vec![range, believed]
    });
    rows.sort_by_key(|row| row.key == "slipped" || row.key == "contact resistance");
    let name = |stop: &Option<String>, percent: &str| stop.clone().unwrap_or_else(|| percent.to_owned());
    let (low, high) = (name(&stops.low.name, "0 %"), name(&stops.high.name, "100 %"));
    let believed = words.word("card-act-believes");
    // Without nominal stops nobody knows what the control unit believes.
    let all_blank = rows.iter().all(|row| row.reads.iter().skip(1).step_by(2).all(|cell| cell == BLANK));
    let stop = |name: String| match all_blank {
        true => vec![Column::figures(format!("{name} V"), ""), Column::figures("", "")],
        false => vec![Column::figures(name.clone(), "V"), Column::figures(name, believed.clone())],
    };
    let fault = std::iter::once(Column::words(words.word("card-act-fault")));
    let by = std::iter::once(Column::words(words.word("card-act-by")));
    let columns = fault.chain(stop(low)).chain(stop(high)).chain(by).collect();
    // What nothing sees is named, and gives no figures to look for.
    let is_seen = |row: &FaultRow| !row.by.is_empty();
    let (seen, unseen) = fault_rows::parted(words, rows, is_seen, "card-act-unseen-faults");
    if seen.is_empty() {
        return None;
    }
    let cells = |row: FaultRow| {
        let told = told(&row.by);
        std::iter::once(fault_rows::listed(&row.names)).chain(row.reads).chain([told]).collect()
    };
    let grid = Grid {
        title: words.word("card-act-wrong"),
        notes: [
            words.word(if all_blank { "card-act-wrong-note-windows" } else { "card-act-wrong-note" }),
            fault_rows::instruments(context, &actuator.system, false, marks),
        ]
        .into_iter()
        .chain(unseen)
        .collect(),
        columns,
        rows: seen.into_iter().map(cells).collect(),
    };
    Some(grid.without_blanks())
}

/// A range of volts, rounded outward to two decimals; one value where both ends are it.
fn between(low: f64, high: f64) -> String {
    let (low, high) = (figure(low, 2, Rounding::Down), figure(high, 2, Rounding::Up));
    if low == high { low } else { format!("{low}–{high}") }
}

/// What tells a fault from a good part: volts, or ohms between the wires.
fn told(by: &[String]) -> String {
    let volts = by.iter().any(|test| test == "V");
    let ohms = by.iter().any(|test| test != "V");
    match (volts, ohms) {
        (true, true) => "V, Ω".to_owned(),
        (true, false) => "V".to_owned(),
        (false, true) => "Ω".to_owned(),
        (false, false) => BLANK.to_owned(),
    }
}

/// What the control unit takes each position for where a contact is stuck.
fn of_contacts(words: &Words, contacts: &Contacts) -> Grid {
    let misread = |contact, stuck| {
        let all = coded::misread(contacts, contact, stuck);
        if all.is_empty() { words.word("card-act-unseen") } else { all.join("; ") }
    };
    let rows = contacts.names.iter().enumerate();
    let rows = rows.map(|(contact, name)| {
        vec![name.clone(), misread(contact, Stuck::Open), misread(contact, Stuck::Closed)]
    });
    let heads = ["card-act-contact-name", "card-act-never-closes", "card-act-never-opens"];
    Grid {
        title: words.word("card-act-wrong"),
        notes: vec![words.word("card-act-stuck-note")],
        columns: heads.map(|head| Column::words(words.word(head))).into(),
        rows: rows.collect(),
    }
}

/// From how many ohms in a contact on a position is taken for another.
fn of_ladder(words: &Words, ladder: &PositionLadder) -> Option<Grid> {
    let rows: Vec<Vec<String>> = coded::dirty(ladder)
        .into_iter()
        .map(|dirty| {
            let ohms = figures::nominal_ohms(dirty.ohms);
            vec![dirty.position, dirty.contact.to_string(), ohms, dirty.into]
        })
        .collect();
    if rows.is_empty() {
        return None;
    }
    let columns = vec![
        Column::words(words.word("card-act-position")),
        Column::figures(words.word("card-act-contact-name"), ""),
        Column::figures(words.word("card-act-dirty-ohms"), ""),
        Column::words(words.word("card-act-dirty-into")),
    ];
    let notes = vec![words.word("card-act-dirty-note")];
    Some(Grid { title: words.word("card-act-wrong"), notes, columns, rows })
}
