//! A tolerance that says two things at once, or not enough to compute a limit.

use crate::diag::{Finding, Findings};
use crate::model;
use crate::spec::{Curve, Sensor, Set, Tolerance};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (_, sensor, _) in super::sensors(set) {
        let Some(given) = &sensor.tolerance else { continue };
        let tolerance = &given.value;
        let columns = match sensor.curve.as_ref().map(|curve| &curve.value) {
            Some(Curve::Table { rows, .. }) => rows.iter().find(|row| row.limits.is_some()),
            _ => None,
        };
        if let Some(row) = columns {
            let message = Message::new("rule-tolerance-and-columns");
            let finding = Finding::error(message, given.place.clone(), Message::new("wanted-one-tolerance"));
            let context = Message::new("label-columns");
            findings.report(finding.because(row.place.clone(), context));
        }
        if of_no_such_curve(sensor, tolerance, findings) {
            continue;
        }
        let parts = [&tolerance.resistance, &tolerance.beta].into_iter().flatten().next();
        let other = parts.map(|part| &part.place).or(tolerance.temperature.as_ref().map(|at| &at.place));
        if let (Some(class), Some(other)) = (&tolerance.class, other) {
            let message = Message::new("rule-tolerance-and-class");
            let finding = Finding::error(message, class.place.clone(), Message::new("wanted-one-tolerance"));
            findings.report(finding.because(other.clone(), Message::new("label-other-tolerance")));
            continue;
        }
        if let (Some(kelvins), Some(part)) = (&tolerance.temperature, parts) {
            let message = Message::new("rule-tolerance-twice");
            let finding =
                Finding::error(message, kelvins.place.clone(), Message::new("wanted-one-tolerance"));
            findings.report(finding.because(part.place.clone(), Message::new("label-other-tolerance")));
            continue;
        }
        for part in [&tolerance.resistance, &tolerance.beta].into_iter().flatten() {
            if part.value.part() >= 1.0 {
                let message = Message::new("rule-tolerance-whole").with("written", &part.written);
                let label = Message::new("wanted-smaller-tolerance");
                findings.report(Finding::error(message, part.place.clone(), label));
            }
        }
        let known = sensor.curve.as_ref().and_then(|curve| model::curve(&curve.value));
        let computable = known.is_some_and(|curve| curve.is_ok()) && !tolerance.misread;
        if columns.is_none() && computable && model::tolerance(sensor).is_none() {
            let missing = if tolerance.resistance.is_none() {
                "resistance"
            } else if tolerance.beta.is_none() {
                "beta"
            } else {
                "at"
            };
            let message = Message::new("rule-tolerance-incomplete").with("key", missing);
            let label = Message::new("wanted-key").with("key", missing);
            let finding = Finding::warning(message, given.place.clone(), label);
            findings.report(match missing {
                "beta" => finding.help(Message::new("rule-tolerance-incomplete-help")),
                _ => finding,
            });
        }
    }
}

/// Whether the tolerance is one that this kind of curve cannot have.
///
/// A class belongs to platinum; a tolerance of B, and the temperature that it grows
/// from, to thermistors.
fn of_no_such_curve(sensor: &Sensor, tolerance: &Tolerance, findings: &Findings) -> bool {
    let Some(curve) = &sensor.curve else { return false };
    let platinum = matches!(curve.value, Curve::Platinum { .. });
    let mut refused = false;
    if let Some(class) = tolerance.class.as_ref().filter(|_| !platinum) {
        let message = Message::new("rule-class-of-no-platinum").with("class", &class.written);
        let finding = Finding::error(message, class.place.clone(), Message::new("wanted-no-class"));
        let finding = finding.because(curve.place.clone(), Message::new("label-its-curve"));
        findings.report(finding.help(Message::new("rule-class-of-no-platinum-help")));
        refused = true;
    }
    let rises = model::curve(&curve.value).is_some_and(|built| built.is_ok_and(|built| !built.falls()));
    let beta = tolerance.beta.as_ref().map(|beta| ("beta", &beta.place));
    let at = tolerance.at.as_ref().map(|at| ("at", &at.place));
    if let Some((key, place)) = beta.or(at).filter(|_| rises) {
        let message = Message::new("rule-tolerance-no-b").with("key", key);
        let finding = Finding::error(message, place.clone(), Message::new("wanted-no-b"));
        let finding = finding.because(curve.place.clone(), Message::new("label-its-curve"));
        findings.report(finding.help(Message::new("rule-tolerance-no-b-help")));
        refused = true;
    }
    refused
}
