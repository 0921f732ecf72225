//! A duty, or a blower step, above 100 %; a blower whose data are those of no motor.

use super::high_voltage::is_high;
use crate::diag::{Finding, Findings};
use crate::model::load::motor;
use crate::quantity::{Ratio, Voltage};
use crate::spec::{Blower, Driver, Set, Sourced};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for driver in set.drivers.values().map(|entry| &entry.item) {
        let duties = driver.drive.iter().flat_map(|drive| drive.steps.iter().flatten());
        for duty in duties {
            at_most_whole("rule-duty", duty, findings);
        }
        drops(driver, findings);
        let Some(blower) = &driver.blower else { continue };
        rising(blower, findings);
        if let Some(tolerance) = &blower.step_tolerance {
            at_most_whole("rule-step-tolerance", tolerance, findings);
        }
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

/// What is lost in a switch, or in the relay that bypasses it, is less than what feeds the load.
fn drops(driver: &Driver, findings: &Findings) {
    let battery = driver.drive.as_ref().and_then(|drive| drive.battery.as_ref());
    let Some(battery) = battery else { return };
    let switch = driver.drive.as_ref().and_then(|drive| drive.switch_drop.as_ref());
    let bypass = driver.blower.as_ref().and_then(|blower| blower.bypass_drop.as_ref());
    let limits = driver.limits.as_ref();
    let drops = [
        switch.map(|drop| drop.map(drop.value.nominal)),
        bypass.cloned(),
        limits.and_then(|limits| limits.supply_drop.clone()),
        limits.and_then(|limits| limits.ground_drop.clone()),
        limits.and_then(|limits| limits.contact_drop.clone()),
    ];
    for drop in drops.into_iter().flatten() {
        // High voltage is another rule's.
        if !takes_all(driver, drop.value) || is_high(drop.value) || is_high(battery.value.high) {
            continue;
        }
        let message = Message::new("rule-drop-whole").with("written", &drop.written);
        let label = Message::new("wanted-below").with("greatest", battery.value.low);
        let finding = Finding::error(message, drop.place.clone(), label);
        findings.report(finding.because(battery.place.clone(), Message::new("label-battery")));
    }
}

/// Whether a drop leaves nothing of the lowest battery.
pub(super) fn takes_all(driver: &Driver, drop: Voltage) -> bool {
    let battery = driver.drive.as_ref().and_then(|drive| drive.battery.as_ref());
    battery.is_some_and(|battery| drop >= battery.value.low)
}

/// The steps of a blower go from the slowest to the fastest, each of them once.
fn rising(blower: &Blower, findings: &Findings) {
    let steps = blower.steps.as_deref().unwrap_or_default();
    for pair in steps.windows(2) {
        let [slower, faster] = pair else { continue };
        if faster.value > slower.value {
            continue;
        }
        let message =
            Message::new("rule-blower-order").with("faster", &faster.written).with("slower", &slower.written);
        let label = Message::new("wanted-above").with("low", &slower.written);
        let finding = Finding::error(message, faster.place.clone(), label);
        findings.report(finding.because(slower.place.clone(), Message::new("label-step-before")));
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
