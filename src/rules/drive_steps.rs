//! A duty, or a blower step, above 100 %; a blower whose data are those of no motor.

use crate::diag::{Finding, Findings};
use crate::model::load::motor;
use crate::quantity::Ratio;
use crate::spec::{Set, Sourced};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for driver in set.drivers.values().map(|entry| &entry.item) {
        let duties = driver.drive.iter().flat_map(|drive| drive.steps.iter().flatten());
        for duty in duties {
            at_most_whole("rule-duty", duty, findings);
        }
        let Some(blower) = &driver.blower else { continue };
        for step in blower.steps.iter().flatten() {
            at_most_whole("rule-blower-step", step, findings);
        }
        if let (Some(Err(_)), Some(exponent)) = (motor(blower), &blower.exponent)
            && !(exponent.value > 0.0 && exponent.value <= STEEPEST)
        {
            let message = Message::new("rule-exponent").with("written", &exponent.written);
            let label = Message::new("wanted-exponent").with("greatest", STEEPEST);
            findings.report(Finding::error(message, exponent.place.clone(), label));
        }
    }
}

/// The largest exponent that the motor model takes.
const STEEPEST: f64 = crate::physics::blower::STEEPEST;

fn at_most_whole(id: &'static str, step: &Sourced<Ratio>, findings: &Findings) {
    if step.value.part() <= 1.0 {
        return;
    }
    let message = Message::new(id).with("written", &step.written);
    findings.report(Finding::error(message, step.place.clone(), Message::new("wanted-at-most-whole")));
}
