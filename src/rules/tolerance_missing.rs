//! A part of a circuit without a tolerance: its volts get no limits.

use crate::diag::{Finding, Findings};
use crate::quantity::{Scalar, Toleranced};
use crate::spec::{Set, Sourced};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (_, sensor, _) in super::sensors(set) {
        let Some(circuit) = &sensor.circuit else { continue };
        for part in [&circuit.resistor, &circuit.series, &circuit.parallel] {
            part_without(part, findings);
        }
        part_without(&circuit.reference, findings);
    }
    for system in set.systems.values() {
        part_without(&system.item.reference, findings);
    }
    for meter in set.instruments.values() {
        part_without(&meter.item.input_resistance, findings);
    }
}

fn part_without<T: Scalar>(part: &Option<Sourced<Toleranced<T>>>, findings: &Findings) {
    let Some(part) = part.as_ref().filter(|part| part.value.limits.is_none()) else { return };
    let message = Message::new("rule-no-limits").with("written", &part.written);
    let finding = Finding::warning(message, part.place.clone(), Message::new("wanted-tolerance"));
    findings.report(finding.help(Message::new("rule-no-limits-help").with("written", &part.written)));
}
