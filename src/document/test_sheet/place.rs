//! Where a row is measured: what is mated, which half is seen, where the probes go.

use crate::document::ends::view;
use crate::document::sensor_card;
use crate::model::{Group, PinEnd, Sensor};
use crate::spec::{Measure, Side, Spot};
use crate::words::Words;

/// The group's state, and what is mated for this measurement.
pub(super) fn state(words: &Words, group: &Group) -> String {
    let mated = match (group.measure, group.place) {
        (Measure::Voltage, _) => "sheet-all-mated",
        (Measure::OpenVoltage, _) => "sheet-sensor-unmated",
        (Measure::Resistance, Spot::ControlUnit) => "sheet-unit-unmated",
        (Measure::Resistance, Spot::Sensor) => "sheet-sensor-unmated",
    };
    format!("{} · {}", group.state, words.word(mated))
}

/// How the half of the connector that is probed is seen.
///
/// Unplugged, ohms at the sensor are measured on the component's half, all else
/// on the harness's. Where the spec describes the other half, its view and latch
/// would be a mirror image: then only the half is named.
pub(super) fn seen(words: &Words, end: &PinEnd, group: &Group) -> String {
    let (wanted, half) = match (group.measure, group.place) {
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
