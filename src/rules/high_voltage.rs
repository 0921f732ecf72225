//! A voltage above 60 V DC: high voltage, for which nothing is computed or printed.

use super::part_circuits;
use crate::diag::{Finding, Findings};
use crate::quantity::{Dimension, Toleranced, Voltage};
use crate::spec::{Expected, Set, Sourced};
use crate::words::Message;

/// Above 60 V DC a circuit is of voltage class B (ISO 6469-3, from memory).
const GREATEST: f64 = 60.0;

pub(super) fn check(set: &Set, findings: &Findings) {
    for driver in set.drivers.values().map(|entry| &entry.item) {
        let drive = driver.drive.as_ref();
        let battery = drive.and_then(|drive| drive.battery.as_ref());
        let nominal = drive.and_then(|drive| drive.nominal.as_ref());
        let blower = driver.blower.as_ref();
        let limits = driver.limits.as_ref();
        // One finding is enough: what feeds the load comes first.
        let voltages = [
            battery.map(|battery| battery.map(battery.value.high)),
            nominal.cloned(),
            blower.and_then(|blower| blower.at.clone()),
            blower.and_then(|blower| blower.bypass_drop.clone()),
            limits.and_then(|limits| limits.supply_drop.clone()),
            limits.and_then(|limits| limits.ground_drop.clone()),
            limits.and_then(|limits| limits.contact_drop.clone()),
            drive.and_then(|drive| drive.switch_drop.as_ref()).map(nominal_of),
            drive.and_then(|drive| drive.diode_drop.as_ref()).map(nominal_of),
        ];
        let high = voltages.into_iter().flatten().find(|volts| is_high(volts.value));
        findings.report_all(high.map(|high| stop(&high)));
    }
    for system in set.systems.values().map(|entry| &entry.item) {
        let voltages = [&system.battery, &system.reference].into_iter().flatten().map(nominal_of);
        let high = voltages.into_iter().find(|volts| is_high(volts.value));
        findings.report_all(high.map(|high| stop(&high)));
    }
    for condition in set.requests.values().flat_map(|entry| &entry.item.conditions) {
        let levels = [&condition.threshold, &condition.release].into_iter().flatten();
        let mut volts = levels.filter(|level| level.value.dimension == Dimension::Voltage);
        let high = volts.find(|level| is_high(Voltage::from_volts(level.value.number)));
        findings.report_all(high.map(|level| stop(&level.map(Voltage::from_volts(level.value.number)))));
    }
    let pins = set.connectors.values().flat_map(|entry| entry.item.pins.values());
    for expected in pins.flat_map(|pin| &pin.expect).flatten() {
        if let Expected::Volts(volts) = expected.value
            && (is_high(volts.high) || is_high(Voltage::from_volts(-volts.low.volts())))
        {
            findings.report(stop(&expected.map(volts.high)));
        }
    }
    let circuits = super::sensors(set).filter_map(|(_, sensor, _)| sensor.circuit.as_ref());
    let references = circuits.flat_map(|circuit| {
        [circuit.reference.as_ref(), circuit.reader.as_ref().and_then(|reader| reader.reference.as_ref())]
    });
    for reference in references.flatten().chain(part_circuits::references(set)).map(nominal_of) {
        findings.report_all(is_high(reference.value).then(|| stop(&reference)));
    }
}

/// Whether a voltage is one that the rule refuses.
pub(super) fn is_high(volts: Voltage) -> bool {
    volts.volts() > GREATEST
}

fn nominal_of(volts: &Sourced<Toleranced<Voltage>>) -> Sourced<Voltage> {
    volts.map(volts.value.nominal)
}

fn stop(volts: &Sourced<Voltage>) -> Finding {
    let message = Message::new("rule-high-voltage").with("written", &volts.written);
    let label = Message::new("wanted-low-voltage").with("greatest", GREATEST);
    let finding = Finding::error(message, volts.place.clone(), label);
    finding.help(Message::new("rule-high-voltage-help"))
}
