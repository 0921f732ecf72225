//! Letters for sources, and the count of what has no source or no value.

use std::collections::BTreeSet;

use super::beside;
use super::furniture::Source;
use crate::model::Fact;
use crate::quantity::Units;
use crate::words::Words;

/// The sources of one document in the order in which they are first shown.
#[derive(Debug, Default)]
pub(super) struct Marks {
    /// The units of the page, which values that are shown as written have beside them.
    units: Units,
    sources: Vec<String>,
    no_source: BTreeSet<String>,
    not_given: BTreeSet<String>,
    /// Every fact that the page shows or rests on, each once.
    facts: Vec<Fact>,
    /// Whether another paper, which this one names, says which sources there are.
    elsewhere: bool,
}

impl Marks {
    /// Marks of a page in these units.
    pub(super) fn of(units: Units) -> Self {
        Self { units, ..Self::default() }
    }

    /// A fact as written, with the same in the page's unit beside it; `None` where it is missing.
    pub(super) fn value(&self, fact: &Fact) -> Option<String> {
        beside::shown(self.units, fact)
    }

    /// Marks of a page in these units that goes on with the letters of another document.
    pub(super) fn continuing(units: Units, sources: Vec<String>) -> Self {
        Self { units, sources, ..Self::default() }
    }

    /// Marks of a paper that names another one for its sources: no letters.
    pub(super) fn elsewhere(units: Units) -> Self {
        Self { units, elsewhere: true, ..Self::default() }
    }

    /// The mark of a fact: its source's letter, the words "no source", or
    /// nothing where the value itself is missing. Counts it.
    pub(super) fn mark(&mut self, words: &Words, fact: &Fact) -> String {
        if !self.facts.iter().any(|known| known.key == fact.key && known.label == fact.label) {
            self.facts.push(fact.clone());
        }
        if fact.is_missing() {
            self.not_given.insert(fact.key.clone());
            return String::new();
        }
        if fact.has_no_source() {
            self.no_source.insert(fact.key.clone());
            return words.word("doc-no-source");
        }
        if self.elsewhere {
            return String::new();
        }
        fact.source.as_deref().map(|source| self.letter(source)).unwrap_or_default()
    }

    /// Counts a value that has no key of its own in the specs, and is missing.
    pub(super) fn missing(&mut self, key: String) {
        self.not_given.insert(key);
    }

    /// The value of a fact with its mark behind it, or NOT GIVEN.
    pub(super) fn shown(&mut self, words: &Words, fact: &Fact) -> String {
        let mark = self.mark(words, fact);
        match self.value(fact) {
            Some(value) if mark.is_empty() => value,
            Some(value) => format!("{value} [{mark}]"),
            None => words.word("doc-not-given"),
        }
    }

    /// The letters of several facts, each once, for a figure that rests on all.
    pub(super) fn letters<'a>(&mut self, words: &Words, facts: impl IntoIterator<Item = &'a Fact>) -> String {
        let mut all: Vec<String> = Vec::new();
        for fact in facts {
            let mark = self.mark(words, fact);
            if !mark.is_empty() && !all.contains(&mark) {
                all.push(mark);
            }
        }
        all.sort_by_key(|mark| (mark.len(), mark.clone()));
        all.join(", ")
    }

    /// The letter of a source: a to z, then aa, ab and so on.
    fn letter(&mut self, source: &str) -> String {
        let known = self.sources.iter().position(|known| known == source);
        let index = known.unwrap_or_else(|| {
            self.sources.push(source.to_owned());
            self.sources.len() - 1
        });
        letters_of(index)
    }

    /// The key to the letters.
    pub(super) fn sources(&self) -> Vec<Source> {
        let source =
            |(index, text): (usize, &String)| Source { letter: letters_of(index), text: text.clone() };
        self.sources.iter().enumerate().map(source).collect()
    }

    /// Keys of values without a source, keys of values that are missing, and every fact.
    pub(super) fn counted(self) -> (Vec<String>, Vec<String>, Vec<Fact>) {
        (self.no_source.into_iter().collect(), self.not_given.into_iter().collect(), self.facts)
    }
}

pub(super) fn letters_of(index: usize) -> String {
    let letter = u8::try_from(index % 26).map_or('?', |offset| char::from(b'a' + offset));
    match index / 26 {
        0 => letter.to_string(),
        round => format!("{}{letter}", letters_of(round - 1)),
    }
}

#[cfg(test)]
mod tests {
    use super::letters_of;

    #[test]
    fn letters_go_on_behind_z() {
        assert_eq!([0, 25, 26, 51, 52].map(letters_of), ["a", "z", "aa", "az", "ba"]);
    }
}
