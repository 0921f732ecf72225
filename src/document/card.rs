//! What cards of several kinds have in common: figures to be read from a distance, what a
//! reading means, the place.

use schemars::JsonSchema;
use serde::Serialize;

use super::marks::Marks;
use super::said;
use crate::model::Fact;
use crate::words::Words;

/// One of the figures that are read from a distance.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct KeyFigure {
    pub at: String,
    pub value: String,
    pub unit: String,
    pub also: String,
}

/// A reading and its meaning.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Reading {
    pub reads: String,
    pub means: String,
}

/// The figures of a card; where nothing is known for them, one that says so.
pub(super) fn figures(words: &Words, title: &str, known: Vec<KeyFigure>) -> Vec<KeyFigure> {
    if !known.is_empty() {
        return known;
    }
    let value = words.word("doc-not-given");
    vec![KeyFigure { at: words.word(title), value, unit: String::new(), also: String::new() }]
}

/// Where in the vehicle a thing sits, and the mark of that.
pub(super) fn place(words: &Words, facts: &[Fact], marks: &mut Marks) -> (String, String) {
    let fact = facts.iter().find(|fact| fact.label == "fact-location");
    let place = said(words, fact);
    (place, fact.map(|fact| marks.mark(words, fact)).unwrap_or_default())
}
