//! A range beyond what the curve knows, or a card beyond its sensor's range.

use super::coefficients_plausible;
use crate::diag::{Finding, Findings};
use crate::model;
use crate::physics::curve::FORMULA_DOMAIN;
use crate::quantity::{Interval, Temperature};
use crate::spec::{About, Curve, Sensor, Set, Sourced};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (id, sensor, _) in super::sensors(set) {
        let Some(curve) = &sensor.curve else { continue };
        let is_table = matches!(curve.value, Curve::Table { .. });
        if let Curve::SiliconPtc { at: Some(at), .. } | Curve::Beta { at: Some(at), .. } = &curve.value {
            // Outside the formulas' domain there is no such curve to ask for its own.
            let point = at.map(Interval { low: at.value, high: at.value });
            inside("rule-range-beyond-formula", &point, &FORMULA_DOMAIN, findings);
        }
        // Where the coefficients themselves are wrong, so is what they reach to.
        if coefficients_plausible::silicon(curve).is_some() {
            continue;
        }
        let Some(Ok(built)) = model::curve(&curve.value) else { continue };
        let domain = built.domain();
        let what = if is_table { "rule-range-beyond-table" } else { "rule-range-beyond-formula" };
        if let Some(range) = &sensor.range {
            inside(what, range, &domain, findings);
            beyond_class(sensor, range, findings);
        }
        if let Some(at) = sensor.tolerance.as_ref().and_then(|given| given.value.at.as_ref()) {
            let point = at.map(Interval { low: at.value, high: at.value });
            inside(what, &point, &domain, findings);
        }
        let whole = sensor.range.as_ref().map_or(domain, |range| range.value);
        let about = |card: &&crate::spec::Card| card.of(About::Sensor).is_some_and(|at| at.value == id);
        for card in set.cards.values().map(|entry| &entry.item).filter(about) {
            if let Some(range) = &card.range {
                inside("rule-range-beyond-sensor", range, &whole, findings);
            }
            if let Some(example) = &card.example {
                let point = example.map(Interval { low: example.value, high: example.value });
                inside("rule-range-beyond-sensor", &point, &whole, findings);
            }
        }
    }
}

/// A platinum class holds only between two temperatures: beyond, there are no limits.
fn beyond_class(sensor: &Sensor, range: &Sourced<Interval<Temperature>>, findings: &Findings) {
    let class = sensor.tolerance.as_ref().and_then(|given| given.value.class.as_ref());
    let platinum = sensor.curve.as_ref().is_some_and(|curve| matches!(curve.value, Curve::Platinum { .. }));
    let Some(class) = class.filter(|_| platinum) else { return };
    let holds = class.value.range();
    if holds.contains(&range.value.low) && holds.contains(&range.value.high) {
        return;
    }
    let message = Message::new("rule-range-beyond-class")
        .with("class", &class.written)
        .with("low", shown(holds.low))
        .with("high", shown(holds.high));
    let label = Message::new("wanted-inside").with("low", shown(holds.low)).with("high", shown(holds.high));
    let finding = Finding::warning(message, range.place.clone(), label);
    let finding = finding.because(class.place.clone(), Message::new("label-class"));
    findings.report(finding.help(Message::new("rule-range-beyond-class-help")));
}

fn inside(
    id: &'static str,
    range: &Sourced<Interval<Temperature>>,
    known: &Interval<Temperature>,
    findings: &Findings,
) {
    if known.contains(&range.value.low) && known.contains(&range.value.high) {
        return;
    }
    let message = Message::new(id)
        .with("range", &range.written)
        .with("low", shown(known.low))
        .with("high", shown(known.high));
    let label = Message::new("wanted-inside").with("low", shown(known.low)).with("high", shown(known.high));
    findings.report(Finding::error(message, range.place.clone(), label));
}

/// A temperature to a hundredth, without trailing zeros.
pub(super) fn shown(temperature: Temperature) -> String {
    temperature.to_hundredths().to_string()
}
