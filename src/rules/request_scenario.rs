//! A scenario that cannot be computed: a condition without its trace, times that do not rise.

use crate::diag::{Finding, Findings};
use crate::spec::{Condition, Request, Scenario, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for request in set.requests.values().map(|entry| &entry.item) {
        for condition in &request.conditions {
            traced(condition, findings);
        }
        if let Some(scenario) = &request.scenario {
            requested(scenario, findings);
            untraced(request, scenario, findings);
        }
    }
}

/// The times of a trace rise and begin with the scenario.
fn traced(condition: &Condition, findings: &Findings) {
    let Some(trace) = &condition.trace else { return };
    let mut last: Option<f64> = None;
    for point in trace {
        let at = point.first.value.seconds();
        if last.is_some_and(|last| at <= last) || at < 0.0 {
            let message = Message::new("rule-trace-order").with("written", &point.first.written);
            let label = match last {
                Some(last) => Message::new("wanted-after").with("last", format!("{last} s")),
                None => Message::new("wanted-zero-or-more"),
            };
            findings.report(Finding::error(message, point.first.place.clone(), label));
            return;
        }
        last = Some(at);
    }
}

/// The request stands inside the scenario, and its times rise.
fn requested(scenario: &Scenario, findings: &Findings) {
    let Some(length) = &scenario.length else { return };
    let mut last = 0.0;
    for stretch in scenario.requested.iter().flatten() {
        let (from, to) = (stretch.value.low.seconds(), stretch.value.high.seconds());
        if from < last || to > length.value.seconds() {
            let message = Message::new("rule-requested-time").with("written", &stretch.written);
            let label =
                Message::new("wanted-inside").with("low", format!("{last} s")).with("high", &length.written);
            let finding = Finding::error(message, stretch.place.clone(), label);
            findings.report(finding.because(length.place.clone(), Message::new("label-scenario-length")));
            return;
        }
        last = to;
    }
}

/// Every condition says what its value does.
fn untraced(request: &Request, scenario: &Scenario, findings: &Findings) {
    let without = |condition: &&Condition| condition.trace.is_none() && !condition.trace_misread;
    for condition in request.conditions.iter().filter(without) {
        let Some(title) = &condition.title else { continue };
        let message = Message::new("rule-no-trace").with("title", &title.value);
        let finding = Finding::error(message, title.place.clone(), Message::new("wanted-trace"));
        let finding = finding.because(scenario.place.clone(), Message::new("label-scenario"));
        findings.report(finding.help(Message::new("rule-no-trace-help")));
    }
}
