//! A value of a size that nobody would fit: a slip of the unit's prefix.

use crate::diag::{Finding, Findings};
use crate::quantity::{Resistance, Scalar, Toleranced};
use crate::spec::{Curve, Set, Sourced};
use crate::words::Message;

/// From and to, in the SI unit (common practice, no source; a factor of ten is
/// left on either side of what is usual).
const SENSOR_OHMS: (f64, f64) = (10.0, 1e7);
const CIRCUIT_OHMS: (f64, f64) = (1.0, 1e7);
const METER_OHMS: (f64, f64) = (1e4, 1e12);
const REFERENCE_VOLTS: (f64, f64) = (1.0, 30.0);
const SERVICE_KELVINS: (f64, f64) = (0.1, 30.0);
const MODE_SECONDS: (f64, f64) = (0.1, 600.0);
const SOAK_KELVINS: (f64, f64) = (0.01, 10.0);
const LEAD_OHMS: (f64, f64) = (0.005, 5.0);

pub(super) fn check(set: &Set, findings: &Findings) {
    let rule = Rule { findings };
    for (_, sensor, _) in super::sensors(set) {
        match sensor.curve.as_ref().map(|curve| &curve.value) {
            Some(
                Curve::Beta { resistance, .. }
                | Curve::SteinhartHart4 { resistance, .. }
                | Curve::Platinum { resistance }
                | Curve::SiliconPtc { resistance, .. },
            ) => rule.value(resistance, SENSOR_OHMS, "Ω", |ohms| ohms.ohms()),
            Some(Curve::SteinhartHart { .. } | Curve::Table { .. }) | None => {}
        }
        rule.value(&sensor.service_limit, SERVICE_KELVINS, "K", |limit| limit.kelvins());
        if let Some(circuit) = &sensor.circuit {
            for part in [&circuit.resistor, &circuit.series, &circuit.parallel] {
                rule.part(part, CIRCUIT_OHMS, "Ω");
            }
            rule.part(&circuit.reference, REFERENCE_VOLTS, "V");
        }
    }
    for system in set.systems.values() {
        rule.part(&system.item.reference, REFERENCE_VOLTS, "V");
    }
    for mode in set.modes.values() {
        rule.value(&mode.item.time, MODE_SECONDS, "s", |time| time.seconds());
    }
    for meter in set.instruments.values() {
        rule.part(&meter.item.input_resistance, METER_OHMS, "Ω");
        rule.part(&meter.item.leads, LEAD_OHMS, "Ω");
    }
    if let Some(shop) = &set.shop {
        rule.value(&shop.item.soak, SOAK_KELVINS, "K", |soak| soak.kelvins());
    }
}

struct Rule<'a> {
    findings: &'a Findings,
}

impl Rule<'_> {
    fn part<T: Scalar>(&self, part: &Option<Sourced<Toleranced<T>>>, usual: (f64, f64), unit: &str) {
        self.value(part, usual, unit, |part| part.nominal.si());
    }

    fn value<T>(&self, value: &Option<Sourced<T>>, usual: (f64, f64), unit: &str, si: impl Fn(&T) -> f64) {
        if let Some(value) = value {
            outside(value, si(&value.value), usual, unit, self.findings);
        }
    }
}

/// Reports a value outside what is usual, given in the unit.
pub(super) fn outside<T>(
    value: &Sourced<T>,
    size: f64,
    (least, greatest): (f64, f64),
    unit: &str,
    findings: &Findings,
) {
    // Zero and less is another rule's.
    if size <= 0.0 || (least..=greatest).contains(&size) {
        return;
    }
    let message = Message::new("rule-magnitude").with("written", &value.written);
    let label = Message::new("wanted-magnitude")
        .with("least", shown(least, unit))
        .with("greatest", shown(greatest, unit));
    let finding = Finding::warning(message, value.place.clone(), label);
    findings.report(finding.help(Message::new("rule-magnitude-help")));
}

/// An end with the prefix that people use.
fn shown(size: f64, unit: &str) -> String {
    if unit == "Ω" { Resistance::from_ohms(size).to_string() } else { format!("{size} {unit}") }
}
