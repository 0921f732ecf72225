//! Where a row is measured: what is mated, which half is seen, where the probes go.

use crate::document::ends::view;
use crate::document::sensor_card;
use crate::model::{PinEnd, Sensor};
use crate::spec::{Measure, Side, Spot};
use crate::words::Words;

/// What is mated for the measurement of a group's sensors.
pub(super) fn mated(measure: Measure, place: Spot) -> &'static str {
    match (measure, place) {
        (Measure::Voltage, _) => "sheet-all-mated",
        (Measure::OpenVoltage, _) => "sheet-sensor-unmated",
        (Measure::Resistance, Spot::ControlUnit) => "sheet-unit-unmated",
        (Measure::Resistance, Spot::Sensor) => "sheet-sensor-unmated",
    }
}

/// How the half of the connector that is probed is seen.
///
/// Unplugged, ohms at the sensor are measured on the component's half, all else
/// on the harness's. Where the spec describes the other half, its view and latch
/// would be a mirror image: then only the half is named.
pub(super) fn seen(words: &Words, end: &PinEnd, measure: Measure, place: Spot) -> String {
    let (wanted, half) = match (measure, place) {
        (Measure::Voltage, _) => return view(words, end),
        (Measure::Resistance, Spot::Sensor) => (Side::Component, "sheet-component-half"),
        _ => (Side::Harness, "sheet-harness-half"),
    };
    if end.side == Some(wanted) { view(words, end) } else { words.word(half) }
}

/// Where the two probes go; ohms have no polarity.
pub(super) fn probes(words: &Words, sensor: &Sensor, end: &PinEnd, measure: Measure) -> String {
    if measure != Measure::Resistance {
        return sensor_card::probes(words, sensor, end);
    }
    let pins = end.signal.iter().chain(&end.other).map(|pin| pin.name.as_str());
    pins.collect::<Vec<_>>().join("  ")
}
