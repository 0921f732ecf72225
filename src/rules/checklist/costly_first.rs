//! A step that unplugs or dismantles before one that only looks or measures.
//!
//! Asked of `yes` exits: what follows a good answer is the next independent question. What
//! follows a bad one looks closer at the same thing, and may well be cheaper.

use crate::diag::{Finding, Findings};
use crate::spec::{Answer, Cost, Set};
use crate::words::Message;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for (_, entry) in super::all(set) {
        let steps = &entry.item.steps;
        for step in steps.iter().filter(|step| step.because.is_none()) {
            let Some(yes) = step.exit(Answer::Yes) else { continue };
            let Some(next) = steps.iter().find(|next| next.id.value == yes.to.value) else { continue };
            let (Some(cost), Some(cheaper)) = (&step.cost, &next.cost) else { continue };
            if cost.value <= cheaper.value {
                continue;
            }
            let message = Message::new("rule-check-costly-first")
                .with("step", &step.id.value)
                .with_word("cost", word(cost.value))
                .with("next", &next.id.value)
                .with_word("cheaper", word(cheaper.value));
            let finding = Finding::warning(message, cost.place.clone(), Message::new("wanted-cheap-first"))
                .because(cheaper.place.clone(), Message::new("label-cheaper"));
            findings.report(finding.help(Message::new("rule-check-costly-first-help")));
        }
    }
}

fn word(cost: Cost) -> &'static str {
    match cost {
        Cost::Look => "check-cost-look",
        Cost::Measure => "check-cost-measure",
        Cost::Unplug => "check-cost-unplug",
        Cost::Dismantle => "check-cost-dismantle",
    }
}
