//! The values that a card rests on, as its last block lists them.

use schemars::JsonSchema;
use serde::Serialize;

use super::marks::Marks;
use crate::model::Fact;
use crate::words::Words;

/// A value the card rests on.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Given {
    /// What it is.
    what: String,
    /// As it is written, in the notation of the language: `± 4 %`; or NOT GIVEN.
    value: String,
    /// Letters of its sources, or that it has none.
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

/// A value as written, a quantity in the notation of the paper; NOT GIVEN where it is missing.
pub fn said<'a>(words: &Words, fact: impl Into<Option<&'a Fact>>) -> String {
    fact.into().and_then(Fact::shown).unwrap_or_else(|| words.word("doc-not-given"))
}

/// As the paper's units have it, but what is chosen in the specs among fixed words is said in the
/// paper's.
fn value(words: &Words, fact: &Fact, marks: &Marks) -> String {
    let id = match (fact.label, fact.written.as_deref().unwrap_or_default()) {
        (_, "true") => "table-yes",
        (_, "false") => "table-no",
        ("fact-polarity", "low side") => "fact-is-low-side",
        ("fact-polarity", "high side") => "fact-is-high-side",
        ("fact-more-current", "more displacement") => "fact-is-more-displacement",
        ("fact-more-current", "less displacement") => "fact-is-less-displacement",
        ("fact-blower-control", "transistor") => "fact-is-transistor",
        ("fact-blower-control", "resistor pack") => "fact-is-resistor-pack",
        _ => return marks.value(fact).unwrap_or_else(|| words.word("doc-not-given")),
    };
    words.word(id)
}
