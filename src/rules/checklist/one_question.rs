//! A step asks one question, so that an answer to it is one answer.

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for step in super::questions(set) {
        let Some(question) = &step.question else { continue };
        let marks = question.value.matches('?').count();
        if marks == 1 && question.value.ends_with('?') {
            continue;
        }
        let id = if marks > 1 { "rule-check-questions" } else { "rule-check-no-question" };
        let message = Message::new(id).with("step", &step.id.value);
        findings.report(Finding::error(message, question.place.clone(), Message::new("wanted-question")));
    }
}
