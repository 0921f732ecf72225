//! A step at airbag wiring: it is not probed, not ohmed, not unplugged.

use crate::diag::{Finding, Findings};
use crate::spec::{Near, Set};
use crate::words::Message;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for step in super::questions(set) {
        if let Some(near) = step.near.iter().find(|near| near.value == Near::Airbag) {
            let message = Message::new("rule-check-airbag").with("step", &step.id.value);
            let finding = Finding::error(message, near.place.clone(), Message::new("wanted-no-airbag"));
            findings.report(finding.help(Message::new("rule-check-airbag-help")));
        }
    }
}
