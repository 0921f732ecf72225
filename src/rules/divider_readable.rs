//! A resistor that cannot read its sensor.

use crate::diag::{Finding, Findings};
use crate::model;
use crate::quantity::Temperature;
use crate::spec::Set;
use crate::words::Message;

/// Below 2 % and above 98 % of the reference a control unit takes a sensor for
/// shorted or open (common practice, no source).
const LEAST: f64 = 0.02;
const GREATEST: f64 = 0.98;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (_, sensor, _) in super::sensors(set) {
        let Some(Ok(curve)) = sensor.curve.as_ref().and_then(|curve| model::curve(&curve.value)) else {
            continue;
        };
        let resistor = sensor.circuit.as_ref().and_then(|circuit| circuit.resistor.as_ref());
        let Some(resistor) = resistor else { continue };
        let range = sensor.range.as_ref().map_or_else(|| curve.domain(), |range| range.value);
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
