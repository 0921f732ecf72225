//! End stops lie inside the reference, apart, and the lower one first.

use crate::diag::{Finding, Findings};
use crate::quantity::{Interval, Ratio};
use crate::spec::{Set, Sourced, Stop};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for stops in set.actuators.values().filter_map(|entry| entry.item.stops.as_ref()) {
        for stop in [&stops.low, &stops.high].into_iter().flatten() {
            check_window(stop, findings);
        }
        let window = |stop: &'_ Option<Stop>| stop.as_ref().and_then(|stop| stop.ratio.clone());
        let (Some(low), Some(high)) = (window(&stops.low), window(&stops.high)) else { continue };
        if low.value.high >= high.value.low {
            apart(&low, &high, findings);
        }
    }
}

/// A window, and the nominal reading in it, lies between 0 and 100 %.
fn check_window(stop: &Stop, findings: &Findings) {
    let Some(window) = &stop.ratio else { return };
    if window.value.low.part() < 0.0 || window.value.high.part() > 1.0 {
        let message = Message::new("rule-stop-outside").with("written", &window.written);
        let label = Message::new("wanted-inside-reference");
        findings.report(Finding::error(message, window.place.clone(), label));
    }
    let Some(nominal) = stop.nominal.as_ref().filter(|nominal| !window.value.contains(&nominal.value)) else {
        return;
    };
    let message = Message::new("rule-stop-nominal").with("written", &nominal.written);
    let label = inside(window.value);
    let finding = Finding::error(message, nominal.place.clone(), label);
    findings.report(finding.because(window.place.clone(), Message::new("label-window")));
}

fn inside(window: Interval<Ratio>) -> Message {
    Message::new("wanted-inside").with("low", window.low).with("high", window.high)
}

/// Two windows that overlap, or are the wrong way round.
fn apart(low: &Sourced<Interval<Ratio>>, high: &Sourced<Interval<Ratio>>, findings: &Findings) {
    let reversed = high.value.high < low.value.low;
    let id = if reversed { "rule-stops-reversed" } else { "rule-stops-overlap" };
    let message = Message::new(id).with("low", &low.written).with("high", &high.written);
    let label = Message::new("wanted-above-low-stop").with("low", low.value.high);
    let finding = Finding::error(message, high.place.clone(), label);
    let finding = finding.because(low.place.clone(), Message::new("label-low-stop"));
    findings.report(if reversed { finding.help(Message::new("rule-stops-reversed-help")) } else { finding });
}
