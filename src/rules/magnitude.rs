//! A value of a size that nobody would fit: a slip of the unit's prefix.
//!
//! Outside what is usual is a warning; a thousand times outside, or beyond what can be
//! at all, is an error.

use super::drive_steps::takes_all;
use super::{high_voltage, part_circuits};
use crate::diag::{Finding, Findings, Severity};
use crate::quantity::{Resistance, Scalar, SpecificEnthalpy, Toleranced, Voltage};
use crate::spec::{Curve, Driver, Instrument, Sensor, Set, Sourced};
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
const THERMOMETER_KELVINS: (f64, f64) = (0.005, 10.0);
const HYGROMETER_PERCENT: (f64, f64) = (0.5, 10.0);
const DIGIT_VOLTS: (f64, f64) = (1e-7, 1.0);
const DIGIT_OHMS: (f64, f64) = (1e-5, 1e6);
const METER_PERCENT: (f64, f64) = (1e-4, 10.0);
const TOLERANCE_KELVINS: (f64, f64) = (0.01, 50.0);
const SWITCH_VOLTS: (f64, f64) = (1e-3, 3.0);
const DIODE_VOLTS: (f64, f64) = (0.05, 2.0);
const PULSE_HERTZ: (f64, f64) = (10.0, 1e5);
const COIL_HENRIES: (f64, f64) = (1e-5, 0.5);
const ISOLATION_OHMS: (f64, f64) = (1e4, 1e10);
const BLOWER_AMPERES: (f64, f64) = (0.5, 80.0);
const BLOWER_EXPONENT: (f64, f64) = (1.0, 3.0);
const BYPASS_VOLTS: (f64, f64) = (1e-3, 2.0);
const WIRING_OHMS: (f64, f64) = (1e-4, 2.0);
const LOST_VOLTS: (f64, f64) = (0.01, 3.0);
const TOLERANCE_PERCENT: (f64, f64) = (1e-3, 30.0);

/// A tolerance in percent beyond this is that of no part that anybody sells as one value.
const WIDEST_PERCENT: f64 = 60.0;

/// A motor whose current does not grow with its voltage is none.
const LEAST_EXPONENT: f64 = 0.1;

/// A value this many times outside what is usual can't be right.
const IMPOSSIBLE: f64 = 1e3;

/// Kelvins have no prefix to slip, so less is enough.
const IMPOSSIBLE_KELVINS: f64 = 10.0;

pub(super) fn check(set: &Set, findings: &Findings) {
    let rule = Rule { findings };
    for (_, sensor, _) in super::sensors(set) {
        if let Some(resistance) = rated(sensor) {
            outside(resistance, resistance.value.ohms(), SENSOR_OHMS, "Ω", findings);
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
        tolerance(sensor, &rule);
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
        rule.spread(part);
    }
    for light in set.lights.values() {
        rule.value(&light.item.current, LIGHT_AMPERES, "A", |current| current.nominal.amperes());
    }
    for motor in set.actuators.values().filter_map(|actuator| actuator.item.motor.as_ref()) {
        rule.value(&motor.current, MOTOR_AMPERES, "A", |current| current.high.amperes());
        rule.value(&motor.stall, MOTOR_AMPERES, "A", |current| current.high.amperes());
    }
    for system in set.systems.values() {
        rule.part(&system.item.battery, BATTERY_VOLTS, "V");
        rule.part(&system.item.reference, REFERENCE_VOLTS, "V");
        [&system.item.battery, &system.item.reference]
            .into_iter()
            .flatten()
            .for_each(|part| rule.spread(part));
    }
    for mode in set.modes.values() {
        rule.value(&mode.item.time, MODE_SECONDS, "s", |time| time.seconds());
    }
    for driver in set.drivers.values() {
        load(&driver.item, &rule);
    }
    for meter in set.instruments.values() {
        accuracy(&meter.item, &rule);
        rule.part(&meter.item.input_resistance, METER_OHMS, "Ω");
        rule.value(&meter.item.full_scale, FULL_SCALE_BAR, "bar", |pressure| pressure.pascals() / 1e5);
        rule.value(&meter.item.accuracy_of_full_scale, FULL_SCALE_PERCENT, "%", |part| 100.0 * part.part());
        rule.part(&meter.item.leads, LEAD_OHMS, "Ω");
    }
    if let Some(shop) = &set.shop {
        rule.value(&shop.item.soak, SOAK_KELVINS, "K", |soak| soak.kelvins());
    }
}

/// How far a sensor may lie from its curve, and the parts and voltages of its circuit.
fn tolerance(sensor: &Sensor, rule: &Rule<'_>) {
    if let Some(given) = &sensor.tolerance {
        rule.value(&given.value.temperature, TOLERANCE_KELVINS, "K", |kelvins| kelvins.kelvins());
        for part in [&given.value.resistance, &given.value.beta].into_iter().flatten() {
            // A tolerance of everything is another rule's.
            rule.percent(part, 100.0 * part.value.part());
        }
    }
    if let Some(circuit) = &sensor.circuit {
        circuit.resistors().for_each(|(_, part)| rule.spread(part));
        let other = circuit.reader.as_ref().and_then(|reader| reader.reference.as_ref());
        circuit.reference.iter().chain(other).for_each(|part| rule.spread(part));
    }
}

/// What a switched load is made of, and what feeds it.
fn load(driver: &Driver, rule: &Rule<'_>) {
    if let Some(coil) = &driver.coil {
        coil.resistance.iter().for_each(|part| rule.spread(part));
        rule.value(&coil.isolation, ISOLATION_OHMS, "Ω", |ohms| ohms.ohms());
    }
    if let Some(drive) = &driver.drive {
        let drop = drive.switch_drop.as_ref().filter(|drop| !takes_all(driver, drop.value.nominal));
        rule.part(&drop.cloned(), SWITCH_VOLTS, "V");
        rule.part(&drive.diode_drop, DIODE_VOLTS, "V");
        rule.value(&drive.frequency, PULSE_HERTZ, "Hz", |frequency| frequency.hertz());
        rule.value(&drive.inductance, COIL_HENRIES, "H", |inductance| inductance.henries());
    }
    if let Some(blower) = &driver.blower {
        rule.value(&blower.current, BLOWER_AMPERES, "A", |current| current.amperes());
        let drop = blower.bypass_drop.as_ref().filter(|drop| !takes_all(driver, drop.value));
        rule.value(&drop.cloned(), BYPASS_VOLTS, "V", |volts| volts.volts());
        rule.value(&blower.wiring, WIRING_OHMS, "Ω", |ohms| ohms.ohms());
        blower.resistors.iter().flatten().for_each(|part| rule.spread(part));
        if let Some(exponent) = &blower.exponent {
            let impossible = exponent.value < LEAST_EXPONENT;
            // Beyond the steepest is another rule's.
            if exponent.value <= crate::physics::blower::STEEPEST {
                unusual(exponent, exponent.value, BLOWER_EXPONENT, "", impossible, rule.findings);
            }
        }
        if let Some(tolerance) = blower.step_tolerance.as_ref().filter(|step| step.value.part() <= 1.0) {
            rule.percent(tolerance, 100.0 * tolerance.value.part());
        }
    }
    if let Some(limits) = &driver.limits {
        for limit in [&limits.supply_drop, &limits.ground_drop, &limits.contact_drop] {
            let limit = limit.as_ref().filter(|limit| !takes_all(driver, limit.value));
            rule.value(&limit.cloned(), LOST_VOLTS, "V", |volts| volts.volts());
        }
    }
}

/// How far an instrument can be trusted.
fn accuracy(meter: &Instrument, rule: &Rule<'_>) {
    rule.value(&meter.accuracy, THERMOMETER_KELVINS, "K", |kelvins| kelvins.kelvins());
    if let Some(share) = &meter.humidity {
        let percent = 100.0 * share.value.part();
        unusual(share, percent, HYGROMETER_PERCENT, "%", percent > 100.0, rule.findings);
    }
    for range in &meter.volts {
        rule.value(&range.resolution, DIGIT_VOLTS, "V", |volts| volts.volts());
    }
    for range in &meter.ohms {
        rule.value(&range.resolution, DIGIT_OHMS, "Ω", |ohms| ohms.ohms());
    }
    let volts = meter.volts.iter().map(|range| &range.accuracy);
    for accuracy in volts.chain(meter.ohms.iter().map(|range| &range.accuracy)).flatten() {
        let percent = 100.0 * accuracy.value.reading.part();
        unusual(accuracy, percent, METER_PERCENT, "%", percent > 100.0, rule.findings);
    }
}

/// The resistance that a formula starts from.
fn rated(sensor: &Sensor) -> Option<&Sourced<Resistance>> {
    match &sensor.curve.as_ref()?.value {
        Curve::Beta { resistance, .. }
        | Curve::SteinhartHart4 { resistance, .. }
        | Curve::Platinum { resistance }
        | Curve::SiliconPtc { resistance, .. } => resistance.as_ref(),
        Curve::SteinhartHart { .. } | Curve::Table { .. } => None,
    }
}

/// Whether a sensor's rated resistance is of an unusual size: what follows from it says nothing.
pub(super) fn is_unusual(sensor: &Sensor) -> bool {
    let usual = |ohms: f64| (SENSOR_OHMS.0..=SENSOR_OHMS.1).contains(&ohms);
    rated(sensor).is_some_and(|resistance| !usual(resistance.value.ohms()))
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

    /// The tolerance of a part, as a part of its nominal value.
    fn spread<T: Scalar>(&self, part: &Sourced<Toleranced<T>>) {
        let nominal = part.value.nominal.si();
        let Some(limits) = part.value.limits.filter(|_| nominal > 0.0) else { return };
        self.percent(part, 100.0 * (limits.high.si() - nominal) / nominal);
    }

    fn percent<T>(&self, value: &Sourced<T>, percent: f64) {
        if percent < 100.0 {
            unusual(value, percent, TOLERANCE_PERCENT, "%", percent > WIDEST_PERCENT, self.findings);
        }
    }
}

/// Reports a value outside what is usual, given in the unit.
pub(super) fn outside<T>(value: &Sourced<T>, size: f64, usual: (f64, f64), unit: &str, findings: &Findings) {
    let factor = if unit == "K" { IMPOSSIBLE_KELVINS } else { IMPOSSIBLE };
    let impossible = size < usual.0 / IMPOSSIBLE || size > usual.1 * factor;
    unusual(value, size, usual, unit, impossible, findings);
}

/// Reports a value outside what is usual; an error where it is called impossible.
fn unusual<T>(
    value: &Sourced<T>,
    size: f64,
    (least, greatest): (f64, f64),
    unit: &str,
    impossible: bool,
    findings: &Findings,
) {
    // Zero and less is another rule's, and so is high voltage.
    let high = unit == "V" && high_voltage::is_high(Voltage::from_volts(size));
    if size <= 0.0 || high || (least..=greatest).contains(&size) {
        return;
    }
    let (id, severity) = if impossible {
        ("rule-magnitude-impossible", Severity::Error)
    } else {
        ("rule-magnitude", Severity::Warning)
    };
    let message = Message::new(id).with("written", &value.written);
    let label = Message::new("wanted-magnitude")
        .with("least", shown(least, unit))
        .with("greatest", shown(greatest, unit));
    let finding = Finding { severity, ..Finding::error(message, value.place.clone(), label) };
    // What has no prefix has no slip of one.
    let help = if matches!(unit, "%" | "K" | "") { "rule-digits-help" } else { "rule-magnitude-help" };
    findings.report(finding.help(Message::new(help)));
}

/// An end with the prefix that people use.
fn shown(size: f64, unit: &str) -> String {
    match unit {
        "Ω" => Resistance::from_ohms(size).to_string(),
        _ => format!("{size} {unit}").trim_end().to_owned(),
    }
}
