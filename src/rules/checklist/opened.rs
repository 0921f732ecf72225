//! An electrical paper that opens a refrigerant fitting.

use super::{sentences, words_of};
use crate::diag::{Finding, Findings, Place};
use crate::spec::{Near, Question, Set, Work};
use crate::words::Message;

/// Words for opening, each by its beginning, and for what holds refrigerant in.
const OPENS: &[&str] = &[
    "open",
    "loosen",
    "undo",
    "unscrew",
    "remove",
    "disconnect",
    "crack",
    "connect",
    "bleed",
    "vent",
    "drain",
    "discharge",
    "evacuate",
    "recover",
    "recharge",
];
const HOLDS: &[&str] = &[
    "fitting",
    "fittings",
    "refrigerant",
    "gauge",
    "gauges",
    "manifold",
    "port",
    "ports",
    "valve-core",
    "union",
];
/// A step that says not to is no step that does.
const NOT: &[&str] = &["not", "never", "no", "without", "closed", "licensed"];

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for (_, entry) in super::all(set) {
        let Some(work) = &entry.item.work else { continue };
        if work.value != Work::Electrical {
            continue;
        }
        for step in &entry.item.steps {
            let Some((place, said)) = opens(step) else { continue };
            let message = Message::new("rule-check-opens").with("step", &step.id.value).with("said", said);
            let finding = Finding::error(message, place, Message::new("wanted-closed"))
                .because(work.place.clone(), Message::new("label-work"));
            findings.report(finding.help(Message::new("rule-check-opens-help")));
        }
    }
}

/// Where a step opens the circuit, by its own word or by what it tells to do.
fn opens(step: &Question) -> Option<(Place, String)> {
    if let Some(near) = step.near.iter().find(|near| near.value == Near::Fitting) {
        return Some((near.place.clone(), "refrigerant fitting".to_owned()));
    }
    let texts = [&step.question, &step.action, &step.at, &step.state].into_iter().flatten();
    texts.flat_map(|text| sentences(&text.value).map(move |sentence| (text, sentence))).find_map(
        |(text, sentence)| {
            let words = words_of(sentence);
            let has = |known: &[&str]| words.iter().any(|word| known.contains(&word.as_str()));
            (has(OPENS) && has(HOLDS) && !has(NOT)).then(|| (text.place.clone(), sentence.trim().to_owned()))
        },
    )
}
