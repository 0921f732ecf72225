//! Two points of a transducer that make a rising line inside the reference.

use crate::diag::{Finding, Findings};
use crate::model;
use crate::physics::transducer::TransducerError;
use crate::spec::{LinePoint, Set, Sourced, Transducer};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for transducer in set.transducers.values().map(|entry| &entry.item) {
        let told = check_parts(transducer, findings);
        match model::transducer(transducer) {
            Some(Err(TransducerError::Ends)) => ends(transducer, findings),
            // Whatever else is wrong has to be told, lest the set be given up without a word.
            Some(Err(error)) if !told => {
                let Some(high) = &transducer.high else { continue };
                let message = Message::new("rule-transducer").with("reason", error);
                let label = Message::new("wanted-line");
                findings.report(Finding::error(message, high.place.clone(), label));
            }
            _ => {}
        }
    }
}

/// Ratios outside 0 to 100 %; whether there was one.
fn check_parts(transducer: &Transducer, findings: &Findings) -> bool {
    let ratio = |point: &'_ Option<LinePoint>| point.as_ref().and_then(|point| point.ratio.clone());
    let mut told = check_clamp(transducer, findings);
    let mut outside = |written: &str, place: &crate::diag::Place, low: f64, high: f64| {
        if low >= 0.0 && high <= 1.0 {
            return;
        }
        told = true;
        let message = Message::new("rule-ratio-outside").with("written", written);
        findings.report(Finding::error(message, place.clone(), Message::new("wanted-inside-reference")));
    };
    for ratio in [ratio(&transducer.low), ratio(&transducer.high)].into_iter().flatten() {
        outside(&ratio.written, &ratio.place, ratio.value.part(), ratio.value.part());
    }
    if let Some(Sourced { value, written, place, .. }) = &transducer.clamp {
        outside(written, place, value.low.part(), value.high.part());
    }
    if let Some(Sourced { value, written, place, .. }) = &transducer.accuracy {
        outside(written, place, value.part(), value.part());
    }
    told
}

/// The output's ends hold both points of the line; whether they did not.
fn check_clamp(transducer: &Transducer, findings: &Findings) -> bool {
    let ratio = |point: &'_ Option<LinePoint>| point.as_ref().and_then(|point| point.ratio.clone());
    let (Some(clamp), Some(low), Some(high)) =
        (&transducer.clamp, ratio(&transducer.low), ratio(&transducer.high))
    else {
        return false;
    };
    if clamp.value.contains(&low.value) && clamp.value.contains(&high.value) {
        return false;
    }
    let message = Message::new("rule-clamp-cuts")
        .with("clamp", &clamp.written)
        .with("low", &low.written)
        .with("high", &high.written);
    let label = Message::new("wanted-clamp").with("low", &low.written).with("high", &high.written);
    findings.report(Finding::error(message, clamp.place.clone(), label));
    true
}

/// The upper point is not above the lower one.
fn ends(transducer: &Transducer, findings: &Findings) {
    let (Some(low), Some(high)) = (&transducer.low, &transducer.high) else { return };
    let both = |pick: fn(&LinePoint) -> Option<(String, f64, crate::diag::Place)>| {
        pick(low).zip(pick(high)).filter(|(low, high)| high.1 <= low.1)
    };
    let pressure = both(|point| {
        let pressure = point.pressure.as_ref()?;
        Some((pressure.written.clone(), pressure.value.pascals(), pressure.place.clone()))
    });
    let ratio = both(|point| {
        let ratio = point.ratio.as_ref()?;
        Some((ratio.written.clone(), ratio.value.part(), ratio.place.clone()))
    });
    match pressure.or(ratio) {
        Some(((low, _, low_place), (high, _, high_place))) => {
            let message = Message::new("rule-line-reversed").with("low", &low).with("high", &high);
            let finding = Finding::error(message, high_place, Message::new("wanted-above").with("low", &low));
            let finding = finding.because(low_place, Message::new("label-low-end"));
            findings.report(finding.help(Message::new("rule-line-reversed-help")));
        }
        None => {
            let message = Message::new("rule-transducer").with("reason", TransducerError::Ends);
            findings.report(Finding::error(message, high.place.clone(), Message::new("wanted-line")));
        }
    }
}
