//! The proof sheet of a card: every printed number, what it was rounded from, the formulas
//! and values it rests on, for the lead to sign.
//!
//! The card is composed once more under a record of every number that becomes text
//! (`quantity::traced`), so that a figure and its proof come from the same computation.

mod basis;
mod numbers;
mod walk;

use schemars::JsonSchema;
use serde::Serialize;
use serde_json::Value;

use super::furniture::{Furniture, Kind};
use super::marks::Marks;
use super::{Context, Data, Document, Listed, Paperwork, finish, said};
use crate::model::Model;
use crate::quantity::{Rounding, Traced, decimal_mark, marked, traced};
use crate::words::{Message, Words};
use basis::Basis;
pub(super) use walk::{Number, Part};

const TEMPLATE: &str = "proof.typ";

/// Digits of an unrounded value.
const DIGITS: usize = 10;

/// Everything a proof sheet's template gets.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Proof {
    /// What every page carries: title band, foot, sources.
    furniture: Furniture,
    /// Of which card, and how many numbers, a text each.
    intro: Vec<String>,
    /// With their sources, a text each.
    formulas: Vec<String>,
    /// The values that the figures rest on.
    inputs: Vec<Input>,
    /// Computed numbers, block by block.
    parts: Vec<Shown>,
    /// Numbers that needed no rounding, by their place.
    exact: Vec<String>,
    /// Numbers that were not computed, by their place.
    as_given: Vec<String>,
    /// Where nothing on the card was computed.
    nothing: String,
}

impl Data for Proof {
    fn furniture(&mut self) -> &mut Furniture {
        &mut self.furniture
    }
}

/// A value that figures rest on.
#[derive(Debug, Serialize, JsonSchema)]
struct Input {
    /// What it is.
    what: String,
    /// Its key in the specs: `shop.elevation`.
    key: String,
    /// As it is written: `340 m`.
    value: String,
    /// Letters of its sources, or that it has none.
    mark: String,
}

/// The computed numbers of a block of the card.
#[derive(Debug, Serialize, JsonSchema)]
struct Shown {
    /// Which block of the card.
    title: String,
    /// Place, number as printed, unrounded, and which way it was rounded.
    lines: Vec<[String; 4]>,
}

/// A proof sheet for every card of the set.
#[must_use]
pub fn proofs(model: &Model) -> Vec<Listed> {
    let proof = |card: &crate::model::Card| Listed {
        // A full stop joins the two because no id can hold one.
        id: format!("{}.PROOF", card.id),
        spec: card.id.clone(),
        paperwork: Paperwork::Proof(card.about),
    };
    model.cards.values().map(proof).collect()
}

/// Composes the proof of one card.
pub(super) fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let Context { model, words, units, .. } = context;
    let card = model.cards.get(&listed.spec)?;
    let of_card = super::list(model).into_iter().find(|other| other.id == card.id)?;
    let Proved { document: printed, parts, basis } = proved(context, &of_card)?;
    let furniture = printed.furniture;
    let sources = furniture.sources.into_iter().map(|source| source.text).collect();
    let mut marks = Marks::continuing(units, sources);
    let inputs = basis.inputs.iter().map(|fact| Input {
        what: words.word(fact.label),
        key: fact.key.clone(),
        value: marks.value(fact).unwrap_or_else(|| said(words, fact)),
        // A rule of the shop's own needs no source.
        mark: match fact.source.as_deref() {
            Some("") => words.word("proof-own"),
            _ => marks.mark(words, fact),
        },
    });
    let inputs: Vec<Input> = inputs.collect();
    let exact = listed_by_place(words, &parts, |number| number.traced.is_some() && rounded(number).is_none());
    let as_given = listed_by_place(words, &parts, |number| number.traced.is_none());
    let all = || parts.iter().flat_map(|part| &part.numbers);
    let computed = all().filter(|number| rounded(number).is_some()).count();
    let given = all().count() - computed;
    let of = Message::new("proof-of")
        .with("card", &card.id)
        .with("fingerprint", furniture.fingerprint)
        .with("title", &furniture.title);
    let counted =
        Message::new("proof-counted").with("computed", computed).with("given", given).with("digits", DIGITS);
    let title = words.say(&Message::new("proof-title").with("title", furniture.title));
    let kind = Kind { word: "doc-proof", size: context.size_of(listed), title, id: listed.id.clone() };
    let furniture = Furniture::like(context, kind, furniture.applicability, furniture.stop);
    let data = Proof {
        furniture,
        intro: vec![words.say(&of), words.say(&counted)],
        formulas: basis.formulas,
        inputs,
        parts: parts.iter().flat_map(|part| shown(words, part)).collect(),
        exact,
        as_given,
        nothing: if computed > 0 { String::new() } else { words.word("proof-nothing") },
    };
    Some(finish(context, listed, (TEMPLATE, 0), data, marks))
}

/// A paper, every number on it beside what it was rounded from, and what they rest on.
pub(super) struct Proved {
    pub document: Document,
    pub parts: Vec<Part>,
    pub basis: Basis,
}

/// Composes a paper under a record of the numbers that become text.
pub(super) fn proved(context: Context<'_>, listed: &Listed) -> Option<Proved> {
    let (document, record) = traced(|| super::compose(context, listed));
    let document = document?;
    let data: Value = serde_json::from_slice(&document.data).ok()?;
    let basis = basis::of(context, listed);
    let parts = walk::parts(&data, &record, &basis::written(&basis.inputs));
    Some(Proved { document, parts, basis })
}

/// The computed numbers of a block, each with its unrounded value; apart for each of its
/// tables and entries that has a title.
fn shown(words: &Words, part: &Part) -> Vec<Shown> {
    let block = title(words, &part.key);
    let mut shown: Vec<Shown> = Vec::new();
    for number in &part.numbers {
        let Some(traced) = rounded(number) else { continue };
        let title = match number.group.as_str() {
            "" => block.clone(),
            group if group.starts_with(&block) => group.to_owned(),
            group => format!("{block}: {group}"),
        };
        let place = number.place.clone();
        let line = [place, number.printed.clone(), unrounded(traced, &number.printed), way(words, traced)];
        match shown.iter_mut().find(|known| known.title == title) {
            Some(known) if known.lines.last() == Some(&line) => {}
            Some(known) => known.lines.push(line),
            None => shown.push(Shown { title, lines: vec![line] }),
        }
    }
    shown
}

/// A value with ten significant digits, zeros at the end left out.
fn unrounded(traced: &Traced, printed: &str) -> String {
    let text = ten_digits(traced.value);
    // A sign that the card sets before a figure of its own is the card's, not the value's.
    let own = if traced.value > 0.0 && printed.starts_with('−') { "−" } else { "" };
    format!("{own}{text}")
}

/// A value with as many digits as a proof shows.
pub(super) fn ten_digits(value: f64) -> String {
    let size = if value == 0.0 { 0.0 } else { libm::floor(libm::log10(value.abs())) };
    // Between -307 and 308, and clamped.
    let before =
        (0..DIGITS).take_while(|digits| u32::try_from(*digits).is_ok_and(|d| f64::from(d) <= size)).count();
    let decimals = if size < 0.0 { DIGITS + 2 } else { DIGITS.saturating_sub(before) };
    let text = format!("{:.decimals$}", value.abs());
    let text = if text.contains('.') { text.trim_end_matches('0').trim_end_matches('.') } else { &text };
    let minus = if value < 0.0 && text.chars().any(|c| matches!(c, '1'..='9')) { "−" } else { "" };
    format!("{minus}{}", marked(text))
}

fn way(words: &Words, traced: &Traced) -> String {
    words.word(way_word(traced.rounding))
}

/// The word for a way of rounding.
pub(super) fn way_word(rounding: Rounding) -> &'static str {
    match rounding {
        Rounding::Nearest => "proof-nearest",
        Rounding::Up => "proof-up",
        Rounding::Down => "proof-down",
    }
}

/// What a number was rounded from; nothing where it was given, or is exact as printed.
fn rounded(number: &Number) -> Option<&Traced> {
    let plain = |text: &str| {
        let text: String = text.chars().filter(|c| !c.is_whitespace()).collect();
        let mark = decimal_mark();
        if text.contains(mark) { text.trim_end_matches('0').trim_end_matches(mark).to_owned() } else { text }
    };
    number
        .traced
        .as_ref()
        .filter(|traced| plain(&unrounded(traced, &number.printed)) != plain(&number.printed))
}

/// The numbers that need no rounding, by where they stand.
fn listed_by_place(words: &Words, parts: &[Part], wanted: impl Fn(&Number) -> bool) -> Vec<String> {
    let mut places: Vec<(String, Vec<String>)> = Vec::new();
    for part in parts {
        for number in part.numbers.iter().filter(|number| wanted(number)) {
            let text = if number.text.chars().count() > 40 {
                numbers::around(&number.text, &number.range)
            } else {
                number.text.clone()
            };
            let place = match number.head.as_str() {
                "" => title(words, &part.key),
                head => format!("{}, {head}", title(words, &part.key)),
            };
            match places.iter_mut().find(|(known, _)| *known == place) {
                Some((_, texts)) if texts.contains(&text) => {}
                Some((_, texts)) => texts.push(text),
                None => places.push((place, vec![text])),
            }
        }
    }
    places.into_iter().map(|(place, texts)| format!("{place}: {}", texts.join("; "))).collect()
}

/// What a block of a paper is called.
pub(super) fn title(words: &Words, key: &str) -> String {
    let id = match key {
        "key_figures" => "proof-part-key-figures",
        "strip" | "figures" | "main" => "proof-part-table",
        "readings" => "proof-part-readings",
        "wrong" | "faults" => "proof-part-faults",
        "example" => "proof-part-example",
        "chart" | "plots" | "waveform" | "topology" | "circuit" | "face" | "sections" => {
            "proof-part-drawings"
        }
        "given" | "points" => "proof-part-given",
        "next" => "proof-part-next",
        "drops" => "proof-part-drops",
        "pins" | "end" => "proof-part-pins",
        "fluids" => "proof-part-fluids",
        "vents" => "proof-part-vents",
        "measuring" => "proof-part-measuring",
        "signature" => "proof-part-signature",
        "motion" => "proof-part-motion",
        "form" => "proof-part-positions",
        "conditions" | "key_facts" => "proof-part-conditions",
        "timeline" | "scenario" | "states" | "stages" => "proof-part-timeline",
        "notes" | "run_note" | "waveform_notes" => "proof-part-notes",
        "coil" => "proof-part-coil",
        "modes" => "proof-part-modes",
        "run" => "proof-part-run",
        "recalibration" => "paper-recalibration",
        "groups" => "proof-part-tests",
        "instruments" => "proof-part-instruments",
        "legend" | "at" | "at_note" => "proof-part-conditions",
        "meanings" | "else_lines" => "proof-part-readings",
        "steps" | "intro" => "proof-part-questions",
        // A block of a kind that has no name here goes by its key in the template's data;
        // a test sees that none of the demo's does.
        _ => return key.replace('_', " "),
    };
    words.word(id)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn text(value: f64) -> String {
        let traced = Traced { value, decimals: 3, rounding: Rounding::Up, printed: String::new() };
        unrounded(&traced, "1")
    }

    #[test]
    fn unrounded_values_have_ten_digits() {
        assert_eq!(text(1.0 / 3.0), "0.333333333333");
        assert_eq!(text(18_111.274_563_9), "18111.27456");
        assert_eq!(text(-40.0), "−40");
        assert_eq!(text(0.0), "0");
    }
}
