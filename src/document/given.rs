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

/// As written in the specs, but what is chosen there among fixed words is said in the paper's.
fn value(words: &Words, fact: &Fact, marks: &Marks) -> String {
    let Some(written) = fact.written.as_deref() else {
        return words.word("doc-not-given");
    };
    let id = match (fact.label, written) {
        (_, "true") => "table-yes",
        (_, "false") => "table-no",
        ("fact-polarity", "low side") => "fact-is-low-side",
        ("fact-polarity", "high side") => "fact-is-high-side",
        ("fact-more-current", "more displacement") => "fact-is-more-displacement",
        ("fact-more-current", "less displacement") => "fact-is-less-displacement",
        ("fact-blower-control", "transistor") => "fact-is-transistor",
        ("fact-blower-control", "resistor pack") => "fact-is-resistor-pack",
        _ => return marks.value(fact).unwrap_or_else(|| written.to_owned()),
    };
    words.word(id)
}
