//! What a checklist may not say: one rule per file.

pub(super) mod airbag;
pub(super) mod costly_first;
pub(super) mod dangling;
pub(super) mod ending_named;
pub(super) mod exits;
pub(super) mod expects;
pub(super) mod fitted;
pub(super) mod loops;
pub(super) mod map_fits;
pub(super) mod measurable;
pub(super) mod names;
pub(super) mod one_question;
pub(super) mod opened;
pub(super) mod place_seen;
pub(super) mod replacing;
pub(super) mod same_exit;
pub(super) mod symptom_system;
pub(super) mod unreachable;

use crate::model::{Ways, ways};
use crate::spec::{At, Checklist, Entry, Question, Set};

/// Every checklist with its id.
fn all(set: &Set) -> impl Iterator<Item = (&str, &Entry<Checklist>)> {
    set.checklists.iter().map(|(id, entry)| (id.as_str(), entry))
}

/// Every question of every checklist.
fn questions(set: &Set) -> impl Iterator<Item = &Question> {
    set.checklists.values().flat_map(|entry| &entry.item.steps)
}

/// The graph of a checklist that says where it begins and whose exits all lead somewhere;
/// what is wrong with others is said before.
fn whole(checklist: &Checklist) -> Option<(Ways, usize)> {
    let ways = ways(checklist);
    let start = ways.start?;
    let is_whole = checklist.steps.iter().enumerate().all(|(node, step)| {
        !step.misread && !step.exits.is_empty() && ways.graph.next(node).len() == step.exits.len()
    });
    is_whole.then_some((ways, start))
}

/// The name of a node.
fn name(checklist: &Checklist, node: usize) -> Option<&At<String>> {
    checklist.names().nth(node)
}

/// Words of a text, in small letters.
fn words_of(text: &str) -> Vec<String> {
    let apart = text.split(|c: char| !c.is_alphanumeric() && c != '-');
    apart.filter(|word| !word.is_empty()).map(str::to_lowercase).collect()
}

/// Sentences of a text: up to a full stop, a semicolon or a colon.
fn sentences(text: &str) -> impl Iterator<Item = &str> {
    text.split(['.', ';', ':', '?']).filter(|sentence| !sentence.trim().is_empty())
}
