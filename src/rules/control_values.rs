//! A control point has two values or more, each once, and none that reads like a cell without one.

use std::collections::BTreeMap;

use crate::diag::{Finding, Findings, Place};
use crate::spec::Set;
use crate::words::Message;

/// What a truth table shows in a cell that forces nothing; from the keys of a mode.
const TAKEN: &[&str] = &["free", "don't care", "don’t care"];

pub(super) fn check(set: &Set, findings: &Findings) {
    for (id, entry) in &set.controls {
        let Some(values) = &entry.item.values else { continue };
        if values.len() < 2 {
            let message = Message::new("rule-control-values").with("id", id);
            let place = values.first().map_or(&entry.place, |only| &only.place);
            findings.report(Finding::error(message, place.clone(), Message::new("wanted-two-values")));
        }
        let mut seen: BTreeMap<String, &Place> = BTreeMap::new();
        for value in values {
            let folded = value.value.to_lowercase();
            if TAKEN.contains(&folded.as_str()) {
                let message = Message::new("rule-control-taken").with("value", &value.value);
                findings.report(Finding::error(
                    message,
                    value.place.clone(),
                    Message::new("wanted-value-word"),
                ));
            }
            if let Some(first) = seen.insert(folded, &value.place) {
                let message =
                    Message::new("rule-control-value-twice").with("id", id).with("value", &value.value);
                let finding = Finding::error(message, value.place.clone(), Message::new("label-second"));
                findings.report(finding.because(first.clone(), Message::new("label-first")));
            }
        }
    }
}
