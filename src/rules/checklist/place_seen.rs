//! A question says where, and its connectors say how they are seen.

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for step in super::questions(set) {
        if step.at.is_none() && step.pins.is_empty() {
            let message = Message::new("rule-check-nowhere").with("step", &step.id.value);
            let finding = Finding::error(message, step.id.place.clone(), Message::new("wanted-where"));
            findings.report(finding.help(Message::new("rule-check-nowhere-help")));
        }
        let mut seen = Vec::new();
        for pin in &step.pins {
            let Some((connector, _)) = pin.value.split_once('/') else { continue };
            let Some(entry) = set.connectors.get(connector) else { continue };
            let is_given = entry.item.view.is_some() && entry.item.side.is_some();
            if is_given || seen.contains(&connector) {
                continue;
            }
            seen.push(connector);
            let message =
                Message::new("rule-check-no-view").with("step", &step.id.value).with("connector", connector);
            let finding = Finding::error(message, pin.place.clone(), Message::new("wanted-seen"));
            findings.report(finding.because(entry.place.clone(), Message::new("label-connector")));
        }
    }
}
