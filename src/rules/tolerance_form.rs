//! A tolerance that says two things at once, or not enough to compute a limit.

use crate::diag::{Finding, Findings};
use crate::model;
use crate::spec::{Curve, Set};
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
        let parts = [&tolerance.resistance, &tolerance.beta].into_iter().flatten().next();
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
