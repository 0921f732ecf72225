//! A checklist that is too long or too wide for the page of its map.

use crate::diag::{Finding, Findings};
use crate::model::{Chart, MOST_LAYERS, MOST_WIDTH};
use crate::spec::Set;
use crate::words::Message;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for (id, entry) in super::all(set) {
        let Some((ways, _)) = super::whole(&entry.item) else { continue };
        if Chart::can_fit(&ways) {
            continue;
        }
        let Some(Chart { map, .. }) = Chart::of(&ways) else { continue };
        let too_deep = map.layers > MOST_LAYERS;
        let message = Message::new(if too_deep { "rule-check-deep" } else { "rule-check-wide" })
            .with("id", id)
            .with("found", if too_deep { map.layers } else { boxes(map.width) });
        let label = Message::new("wanted-map-fits")
            .with("most", if too_deep { MOST_LAYERS } else { boxes(MOST_WIDTH) });
        let finding = Finding::error(message, entry.place.clone(), label);
        findings.report(finding.help(Message::new("rule-check-split-help")));
    }
}

/// Whole boxes side by side.
fn boxes(width: f64) -> usize {
    (1..).find(|count| f64::from(*count) >= width).map_or(0, |count: u32| usize::try_from(count).unwrap_or(0))
}
