//! A threshold that what watches it never shows.

use crate::diag::{Finding, Findings};
use crate::physics::curve::Curve;
use crate::quantity::{Dimension, Pressure};
use crate::spec::{Condition, Level, Set, Sourced, Watch};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for condition in set.requests.values().flat_map(|entry| &entry.item.conditions) {
        let Some((dimension, (low, high), words)) = shown(set, condition) else { continue };
        // Another quantity than the part measures is another rule's.
        let measured = |level: &&Sourced<Level>| level.value.dimension == dimension;
        for level in [&condition.threshold, &condition.release].into_iter().flatten().filter(measured) {
            if low <= level.value.number && level.value.number <= high {
                continue;
            }
            let message = Message::new("rule-request-range").with("written", &level.written);
            let finding = Finding::warning(message, level.place.clone(), words.clone());
            findings.report(finding.help(Message::new("rule-request-range-help")));
        }
    }
}

/// What the watching part shows, from and to, and the label that says so.
fn shown(set: &Set, condition: &Condition) -> Option<(Dimension, (f64, f64), Message)> {
    let inside =
        |low: String, high: String| Message::new("wanted-inside").with("low", low).with("high", high);
    if let Some(id) = condition.of(Watch::Sensor) {
        let sensor = &set.sensors.get(&id.value)?.item;
        let curve: Curve = crate::model::curve(&sensor.curve.as_ref()?.value)?.ok()?;
        let range = super::covered(sensor, &curve)?;
        let label = inside(range.low.to_string(), range.high.to_string());
        return Some((Dimension::Temperature, (range.low.celsius(), range.high.celsius()), label));
    }
    let id = condition.of(Watch::Transducer)?;
    let transducer = &set.transducers.get(&id.value)?.item;
    let end = |point: &Option<crate::spec::LinePoint>| Some(point.as_ref()?.pressure.as_ref()?.value);
    let (low, high): (Pressure, Pressure) = (end(&transducer.low)?, end(&transducer.high)?);
    Some((Dimension::Pressure, (low.pascals(), high.pascals()), inside(low.to_string(), high.to_string())))
}
