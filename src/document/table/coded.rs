//! The positions of an actuator's contacts, and what a bad contact makes of them.

use super::actuator::{Row, volts};
use crate::model::{Actuator, Contacts, PositionLadder};
use crate::physics::contacts::{Seen, Stuck};
use crate::physics::ladder::{gaps, overlaps};
use crate::quantity::{Interval, Ratio, Resistance, Rounding, decimals_for, figure};
use crate::words::Message;

/// The positions of contacts and ladder, in the order of travel.
pub(super) fn rows(actuator: &Actuator) -> Vec<Row> {
    let contacts = actuator.contacts.as_ref().map(contact_rows);
    let ladder = actuator.ladder.as_ref().map(ladder_rows);
    contacts.into_iter().chain(ladder).flatten().collect()
}

fn contact_rows(contacts: &Contacts) -> Vec<Row> {
    let row = |(name, code): (&String, &crate::physics::contacts::Code)| Row {
        position: Some(name.clone()),
        contacts: Some(code.to_string()),
        ..Row::default()
    };
    contacts.positions.iter().zip(contacts.table.positions()).map(row).collect()
}

fn ladder_rows(ladder: &PositionLadder) -> Vec<Row> {
    let row = |(name, closed): &(String, Vec<bool>)| {
        let good: Vec<_> = closed.iter().map(|c| c.then_some(Resistance::from_ohms(0.0))).collect();
        let window = window(ladder, closed);
        let nominal = ladder.ladder.ratio(&good, None).ok();
        let ratio = [window.map(|w| w.low), nominal, window.map(|w| w.high)];
        Row {
            position: Some(name.clone()),
            contacts: Some(closed.iter().map(|closed| if *closed { '1' } else { '0' }).collect()),
            ratio: ratio.map(|ratio| ratio.map(Ratio::part)),
            volts: volts(ratio, Some(ladder.ladder.reference)),
            ..Row::default()
        }
    };
    ladder.positions.iter().map(row).collect()
}

fn window(ladder: &PositionLadder, closed: &[bool]) -> Option<Interval<Ratio>> {
    ladder.ladder.ratio_window(closed, None).ok().flatten()
}

/// What the technician has to know of codes and windows.
pub(super) fn notes(actuator: &Actuator) -> Vec<Message> {
    let contacts = actuator.contacts.as_ref().map(contact_notes);
    let ladder = actuator.ladder.as_ref().map(ladder_notes);
    contacts.into_iter().chain(ladder).flatten().collect()
}

fn contact_notes(contacts: &Contacts) -> Vec<Message> {
    let mut notes = Vec::new();
    let joined = |codes: Vec<String>| codes.join(", ");
    let illegal = contacts.table.illegal();
    if !illegal.is_empty() {
        let codes = joined(illegal.iter().map(ToString::to_string).collect());
        notes.push(Message::new("table-note-illegal").with("codes", codes));
    }
    for jump in contacts.table.jumps() {
        let codes = joined(jump.glitches.iter().map(|(code, _)| code.to_string()).collect());
        notes.push(
            Message::new("table-note-jump")
                .with("from", &contacts.positions[jump.from])
                .with("to", &contacts.positions[jump.from + 1])
                .with("count", jump.distance)
                .with("codes", codes),
        );
    }
    for (contact, name) in contacts.names.iter().enumerate() {
        let kinds = [(Stuck::Open, "table-note-stuck-open"), (Stuck::Closed, "table-note-stuck-closed")];
        for (stuck, id) in kinds {
            let pairs = misread(contacts, contact, stuck);
            if !pairs.is_empty() {
                notes.push(Message::new(id).with("contact", name).with("misread", joined(pairs)));
            }
        }
    }
    notes
}

/// What the control unit takes each position for where a contact is stuck: `shut → –`.
pub(in crate::document) fn misread(contacts: &Contacts, contact: usize, stuck: Stuck) -> Vec<String> {
    let misread = contacts.table.stuck(contact, stuck);
    let pair = |misread: &crate::physics::contacts::Misread| {
        format!("{} → {}", contacts.positions[misread.position], seen(contacts, &misread.seen))
    };
    misread.iter().map(pair).collect()
}

/// What the control unit makes of a code; a code without a position is shown as a dash.
fn seen(contacts: &Contacts, seen: &Seen) -> String {
    match seen {
        Seen::Position(position) => contacts.positions[*position].clone(),
        Seen::Undecidable(several) => {
            several.iter().map(|at| contacts.positions[*at].as_str()).collect::<Vec<_>>().join("/")
        }
        Seen::NoPosition => "–".to_owned(),
    }
}

fn ladder_notes(ladder: &PositionLadder) -> Vec<Message> {
    let windows: Option<Vec<_>> = ladder.positions.iter().map(|(_, closed)| window(ladder, closed)).collect();
    let Some(windows) = windows else { return Vec::new() };
    let name = |index: usize| ladder.positions[index].0.as_str();
    let overlapping = overlaps(&windows);
    let mut notes: Vec<Message> = (overlapping.iter())
        .map(|&(first, second)| {
            Message::new("table-note-overlap").with("lower", name(first)).with("upper", name(second))
        })
        .collect();
    let smallest = gaps(&windows).into_iter().min_by(|a, b| a.gap.total_cmp(&b.gap));
    if let Some(gap) = smallest.filter(|gap| gap.gap > 0.0) {
        notes.push(
            Message::new("table-note-gap")
                .with("gap", figure(100.0 * gap.gap, 2, Rounding::Down))
                .with("lower", name(gap.lower))
                .with("upper", name(gap.upper)),
        );
    }
    for dirty in dirty(ladder) {
        let ohms = figure(dirty.ohms, decimals_for(dirty.ohms), Rounding::Nearest);
        notes.push(
            Message::new("table-note-dirty")
                .with("position", dirty.position)
                .with("contact", dirty.contact)
                .with("ohms", ohms)
                .with("into", dirty.into),
        );
    }
    notes
}

/// A contact whose resistance moves one position into another.
pub(in crate::document) struct DirtyContact {
    pub position: String,
    pub contact: usize,
    pub ohms: f64,
    pub into: String,
}

/// Every contact that can be so dirty that its position is taken for another.
pub(in crate::document) fn dirty(ladder: &PositionLadder) -> Vec<DirtyContact> {
    let windows: Option<Vec<_>> = ladder.positions.iter().map(|(_, closed)| window(ladder, closed)).collect();
    let Some(windows) = windows else { return Vec::new() };
    let of_position = |(position, closed): &(String, Vec<bool>)| {
        let found = ladder.ladder.dirty(closed, &windows).unwrap_or_default();
        let named = |dirty: crate::physics::ladder::Dirty| DirtyContact {
            position: position.clone(),
            contact: dirty.contact,
            ohms: dirty.resistance.ohms(),
            into: ladder.positions[dirty.into].0.clone(),
        };
        found.into_iter().map(named).collect::<Vec<_>>()
    };
    ladder.positions.iter().flat_map(of_position).collect()
}
