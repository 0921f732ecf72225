//! The tables of the languages say the same: every word of the English table, with the same
//! gaps, and nothing that was left in English.

use std::collections::{BTreeMap, BTreeSet};

use bayleaf::words::{Language, Message, Words};
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::parser;

/// Messages of three words or more that are rightly the same in another language.
const SAME: &[(&str, &[&str])] = &[];

/// What a message is made of.
#[derive(Debug, Default, PartialEq, Eq)]
struct Parts {
    /// Its gaps.
    gaps: BTreeSet<String>,
    /// The gaps that decide between its forms.
    selectors: BTreeSet<String>,
    /// Its fixed text.
    text: String,
}

fn parts_of(pattern: &Pattern<String>, parts: &mut Parts) {
    for element in &pattern.elements {
        match element {
            PatternElement::TextElement { value } => parts.text += value,
            PatternElement::Placeable { expression } => match expression {
                Expression::Inline(inline) => gap(inline, parts),
                Expression::Select { selector, variants } => {
                    if let InlineExpression::VariableReference { id } = selector {
                        parts.selectors.insert(id.name.clone());
                    }
                    gap(selector, parts);
                    variants.iter().for_each(|variant| parts_of(&variant.value, parts));
                }
            },
        }
    }
}

fn gap(inline: &InlineExpression<String>, parts: &mut Parts) {
    match inline {
        InlineExpression::VariableReference { id } => {
            parts.gaps.insert(id.name.clone());
        }
        InlineExpression::StringLiteral { value } => parts.text += value,
        other => panic!("the tables use gaps and texts only, and here is {other:?}"),
    }
}

fn table(language: Language) -> BTreeMap<String, Parts> {
    let parsed = parser::parse(language.table().to_owned());
    let resource = parsed.unwrap_or_else(|(_, errors)| panic!("{}.ftl: {errors:?}", language.code()));
    let mut table = BTreeMap::new();
    for entry in &resource.body {
        let Entry::Message(message) = entry else { continue };
        let mut parts = Parts::default();
        parts_of(message.value.as_ref().expect("a message says something"), &mut parts);
        let before = table.insert(message.id.name.clone(), parts);
        assert!(before.is_none(), "twice in {}.ftl: {}", language.code(), message.id.name);
    }
    table
}

fn others() -> impl Iterator<Item = (Language, BTreeMap<String, Parts>)> {
    let others = Language::ALL.iter().filter(|language| **language != Language::English);
    others.map(|language| (*language, table(*language)))
}

#[test]
fn every_table_has_the_words_of_the_english_one_and_no_others() {
    let english: BTreeSet<String> = table(Language::English).into_keys().collect();
    for (language, table) in others() {
        let own: BTreeSet<String> = table.into_keys().collect();
        let missing: Vec<_> = english.difference(&own).collect();
        let left_over: Vec<_> = own.difference(&english).collect();
        assert!(missing.is_empty(), "not in src/words/{}.ftl: {missing:?}", language.code());
        assert!(left_over.is_empty(), "in src/words/{}.ftl alone: {left_over:?}", language.code());
    }
}

#[test]
fn every_word_has_the_same_gaps_in_every_language() {
    let english = table(Language::English);
    for (language, table) in others() {
        for (id, own) in &table {
            let Some(model) = english.get(id) else { continue };
            assert_eq!(own.gaps, model.gaps, "gaps of {id} in {}.ftl", language.code());
            assert_eq!(own.selectors, model.selectors, "what decides in {id} in {}.ftl", language.code());
        }
    }
}

#[test]
fn nothing_is_left_in_english() {
    let english = table(Language::English);
    let mut left: Vec<String> = Vec::new();
    for (language, table) in others() {
        let allowed = SAME.iter().find(|(code, _)| *code == language.code()).map_or(&[][..], |(_, ids)| ids);
        // Symbols and units are no words.
        let is_word = |word: &&str| word.chars().count() >= 3;
        let words = |text: &str| text.split(|c: char| !c.is_alphabetic()).filter(is_word).count();
        let same = |id: &str| {
            let (own, model) = (&table.get(id)?.text, &english.get(id)?.text);
            Some(own == model && words(own) >= 3)
        };
        let found = table.keys().filter(|id| same(id) == Some(true) && !allowed.contains(&id.as_str()));
        left.extend(found.map(|id| format!("{} {id}", language.code())));
        let wrong = allowed.iter().filter(|id| same(id) != Some(true));
        left.extend(wrong.map(|id| format!("{} {id} is allowed to be the same and is not", language.code())));
    }
    assert!(left.is_empty(), "the same as in English: {left:#?}");
}

#[test]
fn counts_choose_the_form_that_the_language_has() {
    let lost = |language, count| {
        Words::of(language).say(&Message::new("run-worker-lost").with_count("missing", count))
    };
    for language in Language::ALL {
        let (one, two) = (lost(*language, 1), lost(*language, 2));
        assert_ne!(one.replace('1', "2"), two, "{}", language.code());
    }
    assert!(lost(Language::Spanish, 1).contains("1 documento sin"));
    assert!(lost(Language::Spanish, 2).contains("2 documentos sin"));
    // Unicode CLDR: nought is singular in French, and is still nought.
    assert!(lost(Language::French, 0).contains("0 document n"));
    assert!(lost(Language::French, 2).contains("2 documents n"));
}

#[test]
fn a_code_has_one_language_and_other_names_of_it_are_understood() {
    for language in Language::ALL {
        assert_eq!(Language::of_code(language.code()), Some(*language));
        assert_eq!(Language::meant_by(&language.code().to_uppercase()), Some(*language));
    }
    assert_eq!(Language::of_code("EN"), None);
    assert_eq!(Language::meant_by("Anglais"), Some(Language::English));
}
