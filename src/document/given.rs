//! The values that a card rests on, as its last block lists them.

use serde::Serialize;

use super::marks::Marks;
use crate::model::Fact;
use crate::words::Words;

/// A value the card rests on.
#[derive(Debug, Serialize)]
pub(super) struct Given {
    what: String,
    value: String,
    mark: String,
}

/// Each fact as a line: what it is, as written or NOT GIVEN, its source's letter.
pub(super) fn given<'a>(
    words: &Words,
    facts: impl IntoIterator<Item = &'a Fact>,
    marks: &mut Marks,
) -> Vec<Given> {
    let line = |fact: &Fact| Given {
        what: words.word(fact.label),
        value: value(words, fact, marks),
        mark: marks.mark(words, fact),
    };
    facts.into_iter().map(line).collect()
}

/// As written in the specs, but a flag of theirs in a word.
fn value(words: &Words, fact: &Fact, marks: &Marks) -> String {
    match fact.written.as_deref() {
        Some("true") => words.word("table-yes"),
        Some("false") => words.word("table-no"),
        _ => marks.value(fact).unwrap_or_else(|| words.word("doc-not-given")),
    }
}
