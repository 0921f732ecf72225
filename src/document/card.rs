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
    /// Where or when it holds: `31 °C`, `step 1`.
    pub at: String,
    /// A figure or a window: `2.234–2.424`.
    pub value: String,
    /// Its unit: `V`.
    pub unit: String,
    /// The same in another quantity: `3 979–4 218 Ω`; may be empty.
    pub also: String,
}

/// A reading and its meaning.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Reading {
    /// What is read: `4.898–5.097 V`.
    pub reads: String,
    /// What that means, in words.
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
