//! A part replaced to find out whether it was good.

use super::{sentences, words_of};
use crate::diag::{Finding, Findings};
use crate::spec::Set;
use crate::words::Message;

/// Words for putting another part in (common practice, no source).
const REPLACES: &[&str] = &["replace", "replacing", "renew", "swap", "swapping", "substitute", "exchange"];
/// And for what is put in.
const ANOTHER: &[&[&str]] = &[
    &["known", "good"],
    &["known-good"],
    &["new", "part"],
    &["try", "a", "new"],
    &["try", "another"],
    &["fit", "a", "new"],
    &["fit", "another"],
];
const NOT: &[&str] = &["not", "never", "no", "without"];

pub(in crate::rules) fn check(set: &Set, findings: &Findings) {
    for step in super::questions(set) {
        let texts = [&step.question, &step.action].into_iter().flatten();
        let sentences = texts.flat_map(|text| sentences(&text.value).map(move |said| (text, said)));
        let Some((text, said)) = sentences.into_iter().find(|(_, said)| replaces(said)) else { continue };
        let message =
            Message::new("rule-check-replacing").with("step", &step.id.value).with("said", said.trim());
        let finding = Finding::error(message, text.place.clone(), Message::new("wanted-measurement"));
        findings.report(finding.help(Message::new("rule-check-replacing-help")));
    }
}

fn replaces(sentence: &str) -> bool {
    let words = words_of(sentence);
    let has = |known: &[&str]| words.iter().any(|word| known.contains(&word.as_str()));
    let says = |phrase: &&[&str]| words.windows(phrase.len()).any(|part| part == *phrase);
    (has(REPLACES) || ANOTHER.iter().any(says)) && !has(NOT)
}
