//! A part of a circuit, or a coil, without a tolerance: its figures get no limits.

use super::part_circuits;
use crate::diag::{Finding, Findings};
use crate::quantity::{Scalar, Toleranced};
use crate::spec::{Set, Sourced};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (_, sensor, _) in super::sensors(set) {
        let Some(circuit) = &sensor.circuit else { continue };
        circuit.resistors().for_each(|(_, part)| without(part, VOLTS, findings));
        part_without(&circuit.reference, VOLTS, findings);
        part_without(&circuit.return_offset, VOLTS, findings);
        if let Some(reader) = &circuit.reader {
            part_without(&reader.reference, VOLTS, findings);
        }
    }
    for system in set.systems.values() {
        part_without(&system.item.reference, VOLTS, findings);
    }
    for meter in set.instruments.values() {
        part_without(&meter.item.input_resistance, VOLTS, findings);
    }
    for driver in set.drivers.values().map(|entry| &entry.item) {
        if let Some(coil) = &driver.coil {
            part_without(&coil.resistance, AMPERES, findings);
        }
        if let Some(drive) = &driver.drive {
            part_without(&drive.switch_drop, AMPERES, findings);
            part_without(&drive.diode_drop, AMPERES, findings);
        }
    }
    part_circuits::resistors(set).for_each(|part| without(part, VOLTS, findings));
    part_circuits::references(set).for_each(|part| without(part, VOLTS, findings));
    for light in set.lights.values() {
        part_without(&light.item.current, VOLTS, findings);
    }
}

/// Which limits are lost.
const VOLTS: &str = "rule-no-limits";
const AMPERES: &str = "rule-no-current-limits";

fn part_without<T: Scalar>(part: &Option<Sourced<Toleranced<T>>>, id: &'static str, findings: &Findings) {
    if let Some(part) = part {
        without(part, id, findings);
    }
}

fn without<T: Scalar>(part: &Sourced<Toleranced<T>>, id: &'static str, findings: &Findings) {
    if part.value.limits.is_some() {
        return;
    }
    let message = Message::new(id).with("written", &part.written);
    let finding = Finding::warning(message, part.place.clone(), Message::new("wanted-tolerance"));
    findings.report(finding.help(Message::new("rule-no-limits-help").with("written", &part.written)));
}
