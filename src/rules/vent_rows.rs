//! A vent table with more rows than anyone reads.

use crate::diag::{Finding, Findings};
use crate::model::{MOST_VENT_ROWS, vent_steps};
use crate::spec::Set;
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for vent in set.vents.values().map(|entry| &entry.item) {
        let (Some(ambient), Some(step)) = (&vent.ambient, &vent.ambient_step) else { continue };
        let (Some(humidity), Some(humidity_step)) = (&vent.humidity, &vent.humidity_step) else { continue };
        // A step of nothing has its own finding.
        if !(step.value.kelvins() > 0.0 && humidity_step.value.part() > 0.0) {
            continue;
        }
        let degrees =
            vent_steps(ambient.value.low.celsius(), ambient.value.high.celsius(), step.value.kelvins());
        let parts =
            vent_steps(humidity.value.low.part(), humidity.value.high.part(), humidity_step.value.part());
        let rows = degrees * parts * vent.positions.len() as f64;
        if rows <= MOST_VENT_ROWS {
            continue;
        }
        let message = Message::new("rule-vent-rows").with("rows", rows);
        let label = Message::new("wanted-fewer-rows").with("most", MOST_VENT_ROWS);
        let finding = Finding::error(message, step.place.clone(), label);
        findings.report(finding.because(humidity_step.place.clone(), Message::new("label-other-step")));
    }
}
