//! A B value that no thermistor has.

use crate::diag::{Finding, Findings};
use crate::quantity::Beta;
use crate::spec::{Curve, Set};
use crate::words::Message;

/// B values of NTC thermistors lie between about 2000 K and 6000 K (common
/// practice, no source); the rule leaves room on both sides and still finds a
/// digit too many or too few.
pub(super) const LEAST: f64 = 1500.0;
pub(super) const GREATEST: f64 = 8000.0;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (_, sensor, _) in super::sensors(set) {
        let curve = sensor.curve.as_ref().map(|curve| &curve.value);
        let Some(Curve::Beta { beta: Some(beta), .. }) = curve else { continue };
        if is_usual(beta.value) {
            continue;
        }
        let message = Message::new("rule-beta").with("beta", &beta.written);
        let label = Message::new("wanted-beta").with("least", LEAST).with("greatest", GREATEST);
        let finding = Finding::error(message, beta.place.clone(), label);
        findings.report(finding.help(Message::new("rule-beta-help")));
    }
}

/// Whether a thermistor may have this B value.
pub(super) fn is_usual(beta: Beta) -> bool {
    (LEAST..=GREATEST).contains(&beta.kelvins())
}
