//! A resistor that cannot read its sensor.

use super::{beta_plausible, coefficients_plausible, magnitude};
use crate::diag::{Finding, Findings};
use crate::model;
use crate::physics::curve::FORMULA_DOMAIN;
use crate::quantity::Temperature;
use crate::spec::{Curve, Sensor, Set};
use crate::words::Message;

/// Below 2 % and above 98 % of the reference a control unit takes a sensor for
/// shorted or open (common practice, no source).
const LEAST: f64 = 0.02;
const GREATEST: f64 = 0.98;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (_, sensor, _) in super::sensors(set) {
        if is_doubtful(sensor) {
            continue;
        }
        let Some(Ok(curve)) = sensor.curve.as_ref().and_then(|curve| model::curve(&curve.value)) else {
            continue;
        };
        let resistor = sensor.circuit.as_ref().and_then(|circuit| circuit.resistor.as_ref());
        let Some(resistor) = resistor else { continue };
        let Some(range) = super::covered(sensor, &curve) else { continue };
        let middle = 0.5 * (range.low.celsius() + range.high.celsius());
        let Ok(ohms) = curve.resistance(Temperature::from_celsius(middle)) else { continue };
        // Pull-up or pull-down, the share of the larger leg is the same question.
        let share = ohms.ohms() / (ohms.ohms() + resistor.value.nominal.ohms());
        if (LEAST..=GREATEST).contains(&share) || resistor.value.nominal.ohms() <= 0.0 {
            continue;
        }
        let message = Message::new("rule-divider")
            .with("resistor", &resistor.written)
            .with("sensor", format!("{:.0} Ω", ohms.ohms()))
            .with("temperature", Temperature::from_celsius(middle.round()));
        let label = Message::new("wanted-divider")
            .with("least", format!("{:.0} Ω", ohms.ohms() * LEAST / GREATEST))
            .with("greatest", format!("{:.0} Ω", ohms.ohms() * GREATEST / LEAST));
        findings.report(Finding::warning(message, resistor.place.clone(), label));
    }
}

/// Whether the curve itself is what other rules refuse: its resistances accuse nothing else.
fn is_doubtful(sensor: &Sensor) -> bool {
    let misrated = match sensor.curve.as_ref().map(|curve| &curve.value) {
        Some(Curve::Beta { at: Some(at), beta: Some(beta), .. }) => {
            !FORMULA_DOMAIN.contains(&at.value) || !beta_plausible::is_usual(beta.value)
        }
        _ => false,
    };
    misrated || coefficients_plausible::is_wrong(sensor) || magnitude::is_unusual(sensor)
}
