//! A resistance or a voltage that is zero or less.

use super::part_circuits;
use crate::diag::{Finding, Findings, Place};
use crate::spec::{Curve, Row, SelfHeating, Set, Sourced};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    let rule = Rule { findings };
    for (_, sensor, _) in super::sensors(set) {
        match sensor.curve.as_ref().map(|curve| &curve.value) {
            Some(Curve::Beta { resistance, at, .. } | Curve::SiliconPtc { resistance, at, .. }) => {
                rule.value(resistance, |r| r.ohms());
                rule.value(at, |t| t.kelvins());
            }
            Some(Curve::Platinum { resistance } | Curve::SteinhartHart4 { resistance, .. }) => {
                rule.value(resistance, |r| r.ohms());
            }
            Some(Curve::Table { rows, .. }) => {
                check_rows(rows, findings);
            }
            Some(Curve::SteinhartHart { .. }) | None => {}
        }
        if let Some(circuit) = &sensor.circuit {
            for (_, part) in circuit.resistors() {
                rule.number(part.value.nominal.ohms(), &part.written, &part.place);
            }
            if let Some(reader) = &circuit.reader {
                rule.value(&reader.reference, |v| v.nominal.volts());
            }
            rule.value(&circuit.reference, |v| v.nominal.volts());
        }
        rule.value(&sensor.service_limit, |k| k.kelvins());
        if let Some(tolerance) = &sensor.tolerance {
            rule.value(&tolerance.value.temperature, |k| k.kelvins());
        }
        if let Some(dissipation) = &sensor.dissipation {
            rule.value(&dissipation.still, |d| d.watts_per_kelvin());
            rule.value(&dissipation.moving, |d| d.watts_per_kelvin());
            warmth(dissipation, findings);
        }
    }
    for system in set.systems.values() {
        rule.value(&system.item.reference, |v| v.nominal.volts());
        rule.value(&system.item.battery, |v| v.nominal.volts());
    }
    for meter in set.instruments.values().map(|entry| &entry.item) {
        rule.value(&meter.input_resistance, |r| r.nominal.ohms());
        rule.value(&meter.leads, |r| r.nominal.ohms());
        rule.value(&meter.accuracy, |k| k.kelvins());
        rule.value(&meter.accuracy_of_full_scale, |part| part.part());
        rule.value(&meter.full_scale, |p| p.pascals());
        rule.value(&meter.humidity, |part| part.part());
        for range in &meter.volts {
            rule.value(&range.resolution, |v| v.volts());
            rule.value(&range.to, |v| v.volts());
        }
        for range in &meter.ohms {
            rule.value(&range.resolution, |r| r.ohms());
            rule.value(&range.to, |r| r.ohms());
        }
        let volts = meter.volts.iter().map(|range| &range.accuracy);
        for accuracy in volts.chain(meter.ohms.iter().map(|range| &range.accuracy)) {
            // No meter is without any error.
            rule.value(accuracy, |accuracy| accuracy.reading.part() + f64::from(accuracy.digits));
        }
    }
    for request in set.requests.values().map(|entry| &entry.item) {
        rule.not_negative(&request.hold, |time| time.seconds());
        for condition in &request.conditions {
            rule.not_negative(&condition.delay, |time| time.seconds());
            rule.not_negative(&condition.release_delay, |time| time.seconds());
        }
        if let Some(scenario) = &request.scenario {
            rule.value(&scenario.length, |time| time.seconds());
        }
    }
    for mode in set.modes.values() {
        rule.value(&mode.item.time, |time| time.seconds());
    }
    if let Some(shop) = &set.shop {
        rule.value(&shop.item.soak, |k| k.kelvins());
    }
    for refrigerant in set.refrigerants.values().map(|entry| &entry.item) {
        rule.value(&refrigerant.step, |k| k.kelvins());
        for window in [&refrigerant.superheat, &refrigerant.subcooling] {
            rule.value(window, |window| window.high.kelvins());
            let starts = window.as_ref().filter(|window| window.value.high.kelvins() > 0.0);
            rule.not_negative(&starts.cloned(), |window| window.low.kelvins());
        }
        rule.value(&refrigerant.at_rest, |k| k.kelvins());
    }
    for vent in set.vents.values().map(|entry| &entry.item) {
        rule.value(&vent.duty, |duty| duty.nominal.joules_per_kilogram());
        rule.value(&vent.ambient_step, |k| k.kelvins());
        rule.value(&vent.humidity_step, |part| part.part());
    }
    for part in part_circuits::resistors(set) {
        rule.number(part.value.nominal.ohms(), &part.written, &part.place);
    }
    for part in part_circuits::references(set) {
        rule.number(part.value.nominal.volts(), &part.written, &part.place);
    }
    for light in set.lights.values().map(|entry| &entry.item) {
        rule.value(&light.current, |current| current.nominal.amperes());
        rule.value(&light.at, |at| at.watts_per_square_metre());
        rule.value(&light.dark, |dark| dark.amperes());
        rule.value(&light.least_span, |span| span.volts());
    }
    for actuator in set.actuators.values().map(|entry| &entry.item) {
        if let Some(sweep) = &actuator.sweep {
            rule.value(&sweep.time, |time| time.seconds());
        }
        if let Some(motor) = &actuator.motor {
            rule.value(&motor.current, |current| current.high.amperes());
            rule.value(&motor.stall, |current| current.low.amperes());
        }
        let contacts = actuator.contacts.as_ref().map(|contacts| &contacts.closed);
        let ladder = actuator.ladder.as_ref().map(|ladder| &ladder.closed);
        for closed in contacts.into_iter().chain(ladder) {
            rule.value(closed, |closed| closed.ohms());
        }
    }
    for card in set.cards.values() {
        rule.value(&card.item.step, |k| k.kelvins());
    }
    loads(set, &rule);
}

/// Coils, what drives them, blowers and wires; a drop may be nothing.
fn loads(set: &Set, rule: &Rule<'_>) {
    for driver in set.drivers.values().map(|entry| &entry.item) {
        if let Some(coil) = &driver.coil {
            rule.value(&coil.resistance, |r| r.nominal.ohms());
            rule.value(&coil.isolation, |r| r.ohms());
        }
        if let Some(drive) = &driver.drive {
            rule.value(&drive.battery, |v| v.low.volts());
            rule.value(&drive.nominal, |v| v.volts());
            rule.value(&drive.frequency, |f| f.hertz());
            rule.value(&drive.inductance, |l| l.henries());
            rule.not_negative(&drive.switch_drop, |v| v.nominal.volts());
            rule.not_negative(&drive.diode_drop, |v| v.nominal.volts());
        }
        if let Some(blower) = &driver.blower {
            rule.value(&blower.current, |i| i.amperes());
            rule.value(&blower.at, |v| v.volts());
            rule.not_negative(&blower.bypass_drop, |v| v.volts());
            rule.not_negative(&blower.wiring, |r| r.ohms());
            for step in blower.steps.iter().flatten() {
                rule.number(step.value.part(), &step.written, &step.place);
            }
            for resistor in blower.resistors.iter().flatten() {
                rule.number(resistor.value.nominal.ohms(), &resistor.written, &resistor.place);
            }
        }
        if let Some(limits) = &driver.limits {
            rule.value(&limits.supply_drop, |v| v.volts());
            rule.value(&limits.ground_drop, |v| v.volts());
            rule.value(&limits.contact_drop, |v| v.volts());
        }
    }
    for wire in set.wires.values().map(|entry| &entry.item) {
        rule.value(&wire.length, |l| l.metres());
        rule.value(&wire.current, |i| i.amperes());
        rule.value(&wire.drop_limit, |v| v.volts());
    }
}

/// Moving air takes away at least as much as still air does.
fn warmth(dissipation: &SelfHeating, findings: &Findings) {
    let (Some(still), Some(moving)) = (&dissipation.still, &dissipation.moving) else { return };
    if moving.value >= still.value {
        return;
    }
    let message = Message::new("rule-dissipation").with("written", &moving.written);
    let label = Message::new("wanted-at-least").with("least", &still.written);
    let finding = Finding::error(message, moving.place.clone(), label);
    let finding = finding.because(still.place.clone(), Message::new("label-still-air"));
    findings.report(finding.help(Message::new("rule-dissipation-help")));
}

/// Every row of a table is at a temperature that exists, and above zero ohms.
pub(super) fn check_rows(rows: &[Row], findings: &Findings) {
    let rule = Rule { findings };
    for row in rows {
        let limits = row.limits.into_iter().flat_map(|(low, high)| [low, high]);
        let least = limits.map(|r| r.ohms()).fold(row.nominal.ohms(), |a: f64, b| a.min(b));
        if row.temperature.kelvins() <= 0.0 {
            let message = Message::new("rule-absolute-zero").with("row", row.said());
            let label = Message::new("wanted-real-temperature");
            findings.report(Finding::error(message, row.place.clone(), label));
        }
        rule.number(least, &row.said(), &row.place);
    }
}

struct Rule<'a> {
    findings: &'a Findings,
}

impl Rule<'_> {
    fn value<T>(&self, value: &Option<Sourced<T>>, number: impl Fn(&T) -> f64) {
        if let Some(value) = value {
            self.number(number(&value.value), &value.written, &value.place);
        }
    }

    fn not_negative<T>(&self, value: &Option<Sourced<T>>, number: impl Fn(&T) -> f64) {
        let Some(value) = value.as_ref().filter(|value| number(&value.value) < 0.0) else { return };
        let message = Message::new("rule-negative").with("written", &value.written);
        let label = Message::new("wanted-zero-or-more");
        self.findings.report(Finding::error(message, value.place.clone(), label));
    }

    fn number(&self, number: f64, written: &str, place: &Place) {
        if number > 0.0 {
            return;
        }
        let message = Message::new("rule-not-positive").with("written", written);
        let label = Message::new("wanted-above-zero");
        self.findings.report(Finding::error(message, place.clone(), label));
    }
}
