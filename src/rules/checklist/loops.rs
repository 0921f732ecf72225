//! Answers that lead back to a question that was asked before.

use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for (_, entry) in super::all(set) {
        let checklist = &entry.item;
        for found in crate::model::ways(checklist).graph.loops() {
            let named = |node: &usize| super::name(checklist, *node).map(|name| name.value.as_str());
            let way: Vec<&str> = found.iter().chain(found.first()).filter_map(named).collect();
            let (Some(&last), Some(first)) = (found.last(), found.first().and_then(named)) else { continue };
            let Some(closing) = checklist.steps.get(last) else { continue };
            let Some(exit) = closing.exits.iter().find(|exit| exit.to.value == first) else { continue };
            let message = Message::new("rule-check-loop").with("way", way.join(" → "));
            let finding = Finding::error(message, exit.to.place.clone(), Message::new("wanted-onward"));
            let opening = found.first().and_then(|node| super::name(checklist, *node));
            let finding = match opening {
                Some(step) => finding.because(step.place.clone(), Message::new("label-loop-begins")),
                None => finding,
            };
            findings.report(finding.help(Message::new("rule-check-loop-help")));
        }
    }
}
