//! A converter that nobody builds, or one that takes a good sensor for a broken one.

use crate::diag::{Finding, Findings};
use crate::model;
use crate::physics::circuit::Converter;
use crate::quantity::{Rounding, Temperature, figure};
use crate::spec::{self, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (_, sensor, _) in super::sensors(set) {
        let converter = sensor.circuit.as_ref().and_then(|circuit| circuit.converter.as_ref());
        let Some(converter) = converter else { continue };
        if let Some(bits) = converter.bits.as_ref().filter(|bits| model::bits_of(bits.value).is_none()) {
            let message = Message::new("rule-bits").with("written", &bits.written);
            findings.report(Finding::error(message, bits.place.clone(), Message::new("wanted-bits")));
        }
        good_sensor(set, sensor, converter, findings);
    }
}

/// A range at whose ends the unit takes a good sensor for open or shorted.
fn good_sensor(set: &Set, sensor: &spec::Sensor, converter: &spec::Converter, findings: &Findings) {
    let Some(plausible) = &converter.plausible else { return };
    let (low, high) = (plausible.value.low.part(), plausible.value.high.part());
    if low < 0.0 || high > 1.0 || low >= high {
        let message = Message::new("rule-plausible").with("written", &plausible.written);
        let label = Message::new("wanted-plausible-ends");
        return findings.report(Finding::error(message, plausible.place.clone(), label));
    }
    let system = sensor.system.as_ref().and_then(|system| set.systems.get(&system.value));
    let reference = system.and_then(|system| system.item.reference.as_ref());
    let circuit = sensor.circuit.as_ref().and_then(|circuit| model::circuit(circuit, reference));
    let curve = sensor.curve.as_ref().and_then(|curve| model::curve(&curve.value)?.ok());
    let (Some(circuit), Some(curve)) = (circuit, curve) else { return };
    let Some(range) = super::covered(sensor, &curve) else { return };
    let limits = Converter { bits: None, plausible: Some(plausible.value) };
    let [cold, hot] = limits.good_sensor_limits(&circuit, &curve);
    let too_warm = cold.filter(|cold| *cold > range.low).map(|limit| (range.low, limit));
    let too_cold = hot.filter(|hot| *hot < range.high).map(|limit| (range.high, limit));
    for (end, limit) in [too_warm, too_cold].into_iter().flatten() {
        let shown = |at: Temperature| format!("{} °C", figure(at.celsius(), 1, Rounding::Nearest));
        let message = Message::new("rule-looks-broken")
            .with("end", shown(end))
            .with("limit", shown(limit))
            .with("written", &plausible.written);
        let label = Message::new("wanted-plausible");
        let finding = Finding::warning(message, plausible.place.clone(), label);
        findings.report(finding.help(Message::new("rule-looks-broken-help")));
    }
}
