//! What the meter is set to shows what is read, and limits are in a unit of it.

use crate::diag::{Finding, Findings, Place};
use crate::quantity::{Dimension, Measured};
use crate::spec::{Expect, Form, Set, Sourced, Test};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (id, entry) in &set.tests {
        let test = &entry.item;
        let (Some(reads), Some(meter)) = (&test.quantity, &test.meter) else { continue };
        if !meter.value.shows(reads.value) {
            let message = Message::new("rule-test-meter").with("id", id).with("meter", meter.value.word());
            let finding = Finding::error(message, meter.place.clone(), Message::new("wanted-meter-for"));
            findings.report(finding.because(reads.place.clone(), Message::new("label-quantity")));
            continue;
        }
        if let Some(expect) = &test.expect {
            units(test, expect, findings);
        }
    }
}

fn units(test: &Test, expect: &Expect, findings: &Findings) {
    let Some(form) = &expect.form else { return };
    let wanted = match form.value {
        Form::Ratio => Some(Dimension::Ratio),
        _ => test.quantity.as_ref().and_then(|reads| reads.value.dimension()),
    };
    let ends = |window: &Option<Sourced<crate::quantity::Interval<Measured>>>| {
        window
            .iter()
            .flat_map(|at| [(at.value.low, at.place.clone()), (at.value.high, at.place.clone())])
            .collect::<Vec<_>>()
    };
    let one = |limit: &Option<Sourced<Measured>>| {
        limit.iter().map(|at| (at.value, at.place.clone())).collect::<Vec<_>>()
    };
    let limits = [
        ends(&expect.window),
        one(&expect.least),
        one(&expect.most),
        ends(&expect.sweep.start),
        ends(&expect.sweep.end),
        one(&expect.sweep.largest_step),
    ];
    let mut told: Option<Place> = None;
    for (limit, place) in limits.into_iter().flatten() {
        let fits = match wanted {
            // The distance of two temperatures is in kelvins.
            Some(Dimension::Temperature) if form.value == Form::Difference => {
                limit.measures(Dimension::TemperatureDifference)
            }
            Some(wanted) => limit.measures(wanted),
            None => false,
        };
        if fits || told.as_ref() == Some(&place) {
            continue;
        }
        told = Some(place.clone());
        let message = Message::new("rule-test-unit").with_word("found", limit.dimension().word());
        let label = match wanted {
            Some(Dimension::Temperature) if form.value == Form::Difference => {
                Message::new("wanted-limit-unit").with_word("what", Dimension::TemperatureDifference.word())
            }
            Some(wanted) => Message::new("wanted-limit-unit").with_word("what", wanted.word()),
            None => Message::new("wanted-no-limit"),
        };
        let mut finding = Finding::error(message, place, label);
        if let Some(meter) = &test.meter {
            finding = finding.because(meter.place.clone(), Message::new("label-meter-shows"));
        }
        findings.report(finding);
    }
}
