//! An exit, or the beginning, that leads to nothing.

use crate::diag::{Finding, Findings, nearest};
use crate::rules::quoted;
use crate::spec::{At, Set};
use crate::words::Message;

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for (_, entry) in super::all(set) {
        let checklist = &entry.item;
        let steps: Vec<&str> = checklist.steps.iter().map(|step| step.id.value.as_str()).collect();
        if let Some(start) = &checklist.start
            && !steps.contains(&start.value.as_str())
        {
            findings.report(nowhere("rule-check-start", start, &steps));
        }
        let names: Vec<&str> = checklist.names().map(|name| name.value.as_str()).collect();
        for exit in checklist.steps.iter().flat_map(|step| &step.exits) {
            if !names.contains(&exit.to.value.as_str()) {
                findings.report(nowhere("rule-check-dangling", &exit.to, &names));
            }
        }
    }
}

fn nowhere(id: &'static str, to: &At<String>, known: &[&str]) -> Finding {
    let message = Message::new(id).with("name", &to.value);
    let label = Message::new("wanted-one-of").with("words", quoted(known.iter().copied()));
    let finding = Finding::error(message, to.place.clone(), label);
    match nearest(&to.value, known.iter().copied()) {
        Some(near) => finding.help(Message::new("did-you-mean").with("word", near)),
        None => finding,
    }
}
