//! Positions of a resistor ladder whose windows overlap: no reading decides.

use crate::diag::{Finding, Findings};
use crate::model;
use crate::physics::ladder::overlaps;
use crate::quantity::{Interval, Ratio, Rounding, figure};
use crate::spec::{Actuator, DoorPosition, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for Actuator { system, ladder, .. } in set.actuators.values().map(|entry| &entry.item) {
        let reference = system.as_ref().and_then(|system| set.systems.get(&system.value));
        let reference = reference.and_then(|system| system.item.reference.as_ref());
        let Some(written) = ladder else { continue };
        let Some(ladder) = model::ladder(written, reference) else { continue };
        let window = |position: &DoorPosition| {
            let closed = position.code.closed(ladder.contacts())?;
            ladder.ratio_window(&closed, None).ok().flatten()
        };
        // A position without a window is another rule's.
        let windows: Option<Vec<Interval<Ratio>>> = written.positions.iter().map(window).collect();
        let Some(windows) = windows else { continue };
        for (first, second) in overlaps(&windows) {
            let (one, other) = (&written.positions[first], &written.positions[second]);
            if one.code.closed(ladder.contacts()) == other.code.closed(ladder.contacts()) {
                continue;
            }
            let message = Message::new("rule-ladder-overlap")
                .with("first", &one.name)
                .with("first_window", shown(windows[first]))
                .with("second", &other.name)
                .with("second_window", shown(windows[second]));
            let finding = Finding::warning(message, other.place.clone(), Message::new("wanted-own-window"));
            let finding = finding.because(one.place.clone(), Message::new("label-first"));
            findings.report(finding.help(Message::new("rule-ladder-overlap-help")));
        }
    }
}

/// A window as it is: rounded outward, so that an overlap stays one.
fn shown(window: Interval<Ratio>) -> String {
    let percent = |part: Ratio, rounding| figure(100.0 * part.part(), 1, rounding);
    format!("{} % to {} %", percent(window.low, Rounding::Down), percent(window.high, Rounding::Up))
}
