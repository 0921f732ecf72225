//! A face that can be drawn: rows of one length, each pin once, every listed pin on it.

use std::collections::BTreeMap;

use super::quoted;
use crate::diag::{Finding, Findings, Place};
use crate::spec::{At, Connector, FaceRow, Set};
use crate::words::Message;

/// The places of a row that a card has room for, at a legible size.
const MOST_PLACES: usize = 24;

/// The rows that leave room for the pins' table.
const MOST_ROWS: usize = 10;

/// The characters of a mark that fit its square.
const LONGEST_MARK: usize = 3;

pub(super) fn check(set: &Set, findings: &Findings) {
    for connector in set.connectors.values().map(|entry| &entry.item) {
        let Some(rows) = &connector.rows else { continue };
        if connector.view.is_none() {
            // Without its view a face is read as its mirror image.
            let message = Message::new("rule-face-no-view");
            let label = Message::new("wanted-view");
            findings.report(Finding::error(message, rows.place.clone(), label));
        }
        if size(rows, findings) {
            lengths(rows, findings);
            pins(connector, rows, findings);
        }
    }
}

/// Whether there is anything to draw that a page has room for.
fn size(rows: &At<Vec<FaceRow>>, findings: &Findings) -> bool {
    let report = |message: Message, place: &Place, label: Message| {
        findings.report(Finding::error(message, place.clone(), label));
        false
    };
    let places = rows.value.iter().flat_map(|row| &row.places);
    if places.clone().all(|place| place.value.is_none()) {
        return report(Message::new("rule-face-empty"), &rows.place, Message::new("wanted-face-row"));
    }
    if rows.value.len() > MOST_ROWS {
        let message = Message::new("rule-face-rows").with("rows", rows.value.len());
        return report(message, &rows.place, Message::new("wanted-face-rows").with("most", MOST_ROWS));
    }
    if let Some(row) = rows.value.iter().find(|row| row.places.len() > MOST_PLACES) {
        let message = Message::new("rule-face-places").with("places", row.places.len());
        return report(message, &row.place, Message::new("wanted-face-places").with("most", MOST_PLACES));
    }
    let long = |place: &&At<Option<String>>| {
        place.value.as_ref().is_some_and(|mark| mark.chars().count() > LONGEST_MARK)
    };
    if let Some(place) = places.clone().find(long) {
        let mark = place.value.as_deref().unwrap_or_default();
        let message = Message::new("rule-face-mark").with("mark", mark);
        return report(message, &place.place, Message::new("wanted-face-mark").with("longest", LONGEST_MARK));
    }
    true
}

/// Every row has as many places as the first.
fn lengths(rows: &At<Vec<FaceRow>>, findings: &Findings) {
    let Some((first, others)) = rows.value.split_first() else { return };
    for row in others.iter().filter(|row| row.places.len() != first.places.len()) {
        let message = Message::new("rule-face-lengths")
            .with("places", row.places.len())
            .with("first", first.places.len());
        let finding = Finding::error(message, row.place.clone(), Message::new("wanted-face-length"));
        let finding = finding.because(first.place.clone(), Message::new("label-face-row"));
        findings.report(finding.help(Message::new("rule-face-lengths-help")));
    }
}

/// No pin is drawn twice, and every listed one is drawn.
fn pins(connector: &Connector, rows: &At<Vec<FaceRow>>, findings: &Findings) {
    let mut drawn: BTreeMap<&str, &Place> = BTreeMap::new();
    for place in rows.value.iter().flat_map(|row| &row.places) {
        let Some(mark) = &place.value else { continue };
        if let Some(first) = drawn.get(mark.as_str()) {
            let message = Message::new("rule-face-twice").with("mark", mark);
            let finding = Finding::error(message, place.place.clone(), Message::new("label-second"));
            findings.report(finding.because((*first).clone(), Message::new("label-first")));
        } else {
            drawn.insert(mark, &place.place);
        }
    }
    let lacking: Vec<(&String, &Place)> = (connector.pins.iter())
        .filter(|(mark, _)| !drawn.contains_key(mark.as_str()))
        .map(|(mark, pin)| (mark, &pin.place))
        .collect();
    let Some((_, place)) = lacking.first() else { return };
    let marks = quoted(lacking.iter().map(|(mark, _)| mark.as_str()));
    let message = Message::new("rule-face-lacks").with("marks", marks).with_count("count", lacking.len());
    let finding = Finding::error(message, (*place).clone(), Message::new("wanted-face-pin"));
    findings.report(finding.because(rows.place.clone(), Message::new("label-face")));
}
