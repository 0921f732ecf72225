//! Two documents whose files would be one on some disk, or a name no disk takes.

use std::collections::BTreeMap;

use crate::diag::{Finding, Findings, Place};
use crate::spec::Set;
use crate::words::Message;

/// Names that one family of operating systems keeps for devices (from memory).
const RESERVED: &[&str] = &["con", "prn", "aux", "nul", "com", "lpt"];

fn reserved(id: &str, place: &Place, findings: &Findings) {
    let folded = id.to_lowercase();
    if RESERVED.contains(&folded.trim_end_matches(|c: char| c.is_ascii_digit())) {
        let message = Message::new("rule-reserved-name").with("id", id);
        findings.report(Finding::error(message, place.clone(), Message::new("wanted-other-name")));
    }
}

pub(super) fn check(set: &Set, findings: &Findings) {
    let mut seen: BTreeMap<String, (&str, &Place)> = BTreeMap::new();
    let cards = set.cards.iter().map(|(id, entry)| (id.as_str(), &entry.place));
    let sheets = set.sheets.iter().map(|(id, entry)| (id.as_str(), &entry.place));
    let checklists = set.checklists.iter().map(|(id, entry)| (id.as_str(), &entry.place));
    let reports = set.reports.iter().map(|(id, entry)| (id.as_str(), &entry.place));
    // A system names its index of symptoms.
    set.systems.iter().for_each(|(id, entry)| reserved(id, &entry.place, findings));
    for (id, place) in cards.chain(sheets).chain(checklists).chain(reports) {
        reserved(id, place, findings);
        let folded = id.to_lowercase();
        match seen.get(&folded) {
            Some((_, first)) => {
                let message = Message::new("rule-same-name").with("id", id);
                let finding = Finding::error(message, place.clone(), Message::new("label-second"));
                findings.report(finding.because((*first).clone(), Message::new("label-first")));
            }
            None => drop(seen.insert(folded, (id, place))),
        }
    }
    let mut vehicles: BTreeMap<String, &Place> = BTreeMap::new();
    for (id, entry) in &set.vehicles {
        if let Some(first) = vehicles.insert(id.to_lowercase(), &entry.place) {
            let message = Message::new("rule-same-name").with("id", id);
            let finding = Finding::error(message, entry.place.clone(), Message::new("label-second"));
            findings.report(finding.because(first.clone(), Message::new("label-first")));
        }
    }
}
