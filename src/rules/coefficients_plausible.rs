//! Steinhart–Hart coefficients that describe no thermistor.

use crate::diag::{Finding, Findings};
use crate::model;
use crate::quantity::Temperature;
use crate::spec::{Curve, Set};
use crate::words::Message;

/// Resistances that thermistors have at 25 °C (from memory: 10 Ω to 2 MΩ are
/// made; the rule leaves a factor of ten on both sides).
const LEAST: f64 = 1.0;
const GREATEST: f64 = 2e7;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (_, sensor, _) in super::sensors(set) {
        let Some(curve) = &sensor.curve else { continue };
        let Curve::SteinhartHart { a: Some(a), .. } = &curve.value else { continue };
        let Some(built) = model::curve(&curve.value) else { continue };
        let at_25 = built.and_then(|curve| curve.resistance(Temperature::from_celsius(25.0)));
        let label = Message::new("wanted-coefficients");
        let message = match at_25 {
            Ok(ohms) if (LEAST..=GREATEST).contains(&ohms.ohms()) => continue,
            Ok(ohms) => Message::new("rule-coefficients").with("resistance", rough(ohms.ohms())),
            Err(_) => Message::new("rule-coefficients-not-falling"),
        };
        let finding = Finding::error(message, a.place.clone(), label);
        findings.report(finding.help(Message::new("rule-coefficients-help")));
    }
}

/// A resistance of any size in a few characters.
fn rough(ohms: f64) -> String {
    format!("{ohms:.2e} Ω")
}
