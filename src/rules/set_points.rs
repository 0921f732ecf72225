//! A set-point that nobody would sit in: a slip of the unit or of a digit.

use crate::diag::{Finding, Findings};
use crate::quantity::{SetPoints, Temperature};
use crate::spec::{Set, Sourced};
use crate::words::Message;

/// From and to, °C (common practice, no source; with room on either side of what is usual).
const USUAL: (Temperature, Temperature) = (Temperature::from_celsius(0.0), Temperature::from_celsius(50.0));

pub(super) fn check(set: &Set, findings: &Findings) {
    for panel in set.panels.values().map(|entry| &entry.item) {
        for scale in [&panel.celsius, &panel.fahrenheit].into_iter().flatten() {
            usual(scale, findings);
        }
    }
}

fn usual(scale: &Sourced<SetPoints>, findings: &Findings) {
    let (least, greatest) = USUAL;
    let ends = scale.value.ends;
    if least <= ends.low && ends.low < ends.high && ends.high <= greatest {
        return;
    }
    let message = Message::new("rule-magnitude").with("written", &scale.written);
    let label = Message::new("wanted-magnitude").with("least", least).with("greatest", greatest);
    let finding = Finding::warning(message, scale.place.clone(), label);
    findings.report(finding.help(Message::new("rule-digits-help")));
}
