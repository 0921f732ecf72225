//! A value of a size that nobody would fit: a slip of the unit's prefix.

use super::part_circuits;
use crate::diag::{Finding, Findings};
use crate::quantity::{Resistance, Scalar, SpecificEnthalpy, Toleranced};
use crate::spec::{Curve, Set, Sourced};
use crate::words::Message;

/// From and to, in the SI unit (common practice, no source; a factor of ten is
/// left on either side of what is usual).
const SENSOR_OHMS: (f64, f64) = (10.0, 1e7);
const CIRCUIT_OHMS: (f64, f64) = (1.0, 1e7);
const METER_OHMS: (f64, f64) = (1e4, 1e12);
const REFERENCE_VOLTS: (f64, f64) = (1.0, 30.0);
const BATTERY_VOLTS: (f64, f64) = (5.0, 60.0);
const OFFSET_VOLTS: (f64, f64) = (0.0001, 1.0);
const DISSIPATION: (f64, f64) = (1e-4, 0.1);
const LIGHT_AMPERES: (f64, f64) = (1e-6, 0.1);
const MOTOR_AMPERES: (f64, f64) = (1e-3, 20.0);
const SERVICE_KELVINS: (f64, f64) = (0.1, 30.0);
const MODE_SECONDS: (f64, f64) = (0.1, 600.0);
const SOAK_KELVINS: (f64, f64) = (0.01, 10.0);
const LEAD_OHMS: (f64, f64) = (0.005, 5.0);
const LINE_KELVINS: (f64, f64) = (0.0, 40.0);
const FULL_SCALE_BAR: (f64, f64) = (1.0, 400.0);
const FULL_SCALE_PERCENT: (f64, f64) = (0.05, 10.0);
const DUTY_KILOJOULES: (f64, f64) = (3.0, 100.0);

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
            for (_, part) in circuit.resistors() {
                outside(part, part.value.nominal.ohms(), CIRCUIT_OHMS, "Ω", findings);
            }
            rule.part(&circuit.reference, REFERENCE_VOLTS, "V");
            rule.part(&circuit.return_offset, OFFSET_VOLTS, "V");
            if let Some(reader) = &circuit.reader {
                rule.part(&reader.reference, REFERENCE_VOLTS, "V");
            }
        }
    }
    for (_, sensor, _) in super::sensors(set) {
        if let Some(dissipation) = &sensor.dissipation {
            for part in [&dissipation.still, &dissipation.moving] {
                rule.value(part, DISSIPATION, "W/K", |part| part.watts_per_kelvin());
            }
        }
    }
    for refrigerant in set.refrigerants.values().map(|entry| &entry.item) {
        for window in [&refrigerant.superheat, &refrigerant.subcooling] {
            rule.value(window, LINE_KELVINS, "K", |window| window.high.kelvins());
        }
        rule.value(&refrigerant.at_rest, SERVICE_KELVINS, "K", |allowed| allowed.kelvins());
    }
    for vent in set.vents.values().map(|entry| &entry.item) {
        let kilojoules = |duty: &Toleranced<SpecificEnthalpy>| duty.nominal.joules_per_kilogram() / 1e3;
        rule.value(&vent.duty, DUTY_KILOJOULES, "kJ/kg", kilojoules);
    }
    for part in part_circuits::resistors(set) {
        outside(part, part.value.nominal.ohms(), CIRCUIT_OHMS, "Ω", findings);
    }
    for part in part_circuits::references(set) {
        outside(part, part.value.nominal.volts(), REFERENCE_VOLTS, "V", findings);
    }
    for light in set.lights.values() {
        rule.value(&light.item.current, LIGHT_AMPERES, "A", |current| current.nominal.amperes());
    }
    for motor in set.actuators.values().filter_map(|actuator| actuator.item.motor.as_ref()) {
        rule.value(&motor.current, MOTOR_AMPERES, "A", |current| current.high.amperes());
    }
    for system in set.systems.values() {
        rule.part(&system.item.battery, BATTERY_VOLTS, "V");
        rule.part(&system.item.reference, REFERENCE_VOLTS, "V");
    }
    for mode in set.modes.values() {
        rule.value(&mode.item.time, MODE_SECONDS, "s", |time| time.seconds());
    }
    for meter in set.instruments.values() {
        rule.part(&meter.item.input_resistance, METER_OHMS, "Ω");
        rule.value(&meter.item.full_scale, FULL_SCALE_BAR, "bar", |pressure| pressure.pascals() / 1e5);
        rule.value(&meter.item.accuracy_of_full_scale, FULL_SCALE_PERCENT, "%", |part| 100.0 * part.part());
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
