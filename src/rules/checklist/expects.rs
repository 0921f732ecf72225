//! A question says once what answers yes: in its own words, or by a test of its system.

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for step in super::questions(set) {
        let place = match (&step.expect, &step.test) {
            (Some(_), Some(test)) => test.place.clone(),
            (None, None) => step.id.place.clone(),
            _ => continue,
        };
        let both = step.test.is_some();
        let id = if both { "rule-check-expects-twice" } else { "rule-check-expects-nothing" };
        let finding = Finding::error(
            Message::new(id).with("step", &step.id.value),
            place,
            Message::new("wanted-expect"),
        );
        findings.report(match &step.expect {
            Some(expect) if both => finding.because(expect.place.clone(), Message::new("label-first")),
            _ => finding,
        });
    }
}
