//! Every computed number of a paper, unrounded: any card, test sheet or checklist.
//!
//! The paper is composed under the record that its proof is made from, so that what is
//! exported and what is printed are one computation.

use chrono::NaiveDate;

use super::{Ask, Cell, Column, Show, Table, not_over_temperature};
use crate::document::proof::{self, Number, Proved, proved, way_word};
use crate::document::{Edition, Listed, Paperwork, list};
use crate::model::Model;
use crate::quantity::{Rounding, Unit};
use crate::words::{Message, Words};

/// What stands in front of a paper's id.
pub(super) const KIND: &str = "paper.";

/// The papers that show figures of their own: a report quotes its sheet, an index other papers.
pub(super) fn papers(model: &Model) -> Vec<Listed> {
    let has_figures = |listed: &Listed| {
        listed.paperwork.is_card()
            || matches!(listed.paperwork, Paperwork::TestSheet { .. } | Paperwork::Checklist)
    };
    list(model).into_iter().filter(has_figures).collect()
}

/// The figures of one paper.
pub(super) fn of(model: &Model, words: &Words, listed: &Listed, ask: &Ask<'_>) -> Result<Table, Message> {
    not_over_temperature(ask)?;
    if ask.bay.is_some() && listed.paperwork.is_card() {
        return Err(Message::new("run-table-no-bay").with("id", ask.id));
    }
    let edition = Edition { units: ask.units, bay: ask.bay, ..Edition::of(model, words) };
    // The day that a paper bears is no figure of it: any will do.
    let context = edition.context(model, words, NaiveDate::default());
    let proved = proved(context, listed);
    let Proved { document, parts, basis } =
        proved.ok_or_else(|| Message::new("run-no-such-table").with("id", ask.id))?;
    let ends = ["table-min", "table-nominal", "table-max"].map(|id| words.word(id));
    let rows = parts.iter().flat_map(|part| {
        let title = proof::title(words, &part.key);
        part.numbers
            .iter()
            .filter_map(|number| row(words, (&part.key, &title), number, &ends))
            .collect::<Vec<_>>()
    });
    let mut inputs = document.facts;
    inputs.retain(|fact| !basis.inputs.iter().any(|known| known.key == fact.key));
    Ok(Table {
        title: document.furniture.title,
        notes: vec![words.word("table-figure-note")],
        columns: columns(words),
        rows: rows.collect(),
        formulas: basis.formulas,
        inputs: basis.inputs.into_iter().chain(inputs).collect(),
    })
}

fn columns(words: &Words) -> Vec<Column> {
    let text = Show::Digits(Rounding::Nearest);
    let column = |key, head, show| Column::new(key, words.word(head), show);
    vec![
        Column::new("part", "", Show::Never),
        column("block", "table-figure-block", text),
        column("place", "table-figure-place", text),
        column("printed", "table-figure-printed", text),
        column("unit", "table-figure-unit", text),
        column("value", "table-figure-value", Show::Unrounded),
        column("rounding", "table-figure-rounding", text),
        Column::new("text", "", Show::Never),
    ]
}

/// One number; nothing where it stands as the specs or the fixed words have it.
fn row(words: &Words, (key, title): (&str, &str), number: &Number, ends: &[String]) -> Option<Vec<Cell>> {
    let traced = number.traced.as_ref()?;
    let block = match number.group.as_str() {
        "" => title.to_owned(),
        group => format!("{title}: {group}"),
    };
    // Where a text says its minus sign itself the record has the number alone.
    let sign = if traced.printed == number.printed { 1.0 } else { -1.0 };
    let way = match traced.rounding {
        Rounding::Nearest => "nearest",
        Rounding::Up => "up",
        Rounding::Down => "down",
    };
    Some(vec![
        Cell::Text(key.to_owned()),
        Cell::Text(block),
        Cell::Text(number.place.clone()),
        Cell::Text(number.printed.clone()),
        unit(number, ends).map_or(Cell::Missing, Cell::Text),
        Cell::Number(sign * traced.value),
        Cell::Named(way, words.word(way_word(traced.rounding))),
        Cell::Text(number.text.clone()),
    ])
}

/// The unit of a printed number: in its own field, behind it, or in the head of its column.
fn unit(number: &Number, ends: &[String]) -> Option<String> {
    if !number.unit.is_empty() {
        return Some(number.unit.clone());
    }
    let behind = number.text.get(number.range.end..).unwrap_or_default();
    // The unit of a range stands behind its upper end.
    let behind = behind.trim_start_matches(|c: char| c.is_ascii_digit() || "–,. \u{202f}/±−".contains(c));
    let token = behind.split([' ', ',', ';', ')', ']', ':']).next().unwrap_or_default();
    let in_head = || {
        let named = |word: &&str| !ends.iter().any(|end| end == word) && is_unit(word);
        number.head.split(' ').find(named).map(str::to_owned)
    };
    if is_unit(token) { Some(token.to_owned()) } else { in_head() }
}

/// Whether a word is a unit, as papers print it.
fn is_unit(word: &str) -> bool {
    Unit::named(word).is_some_and(|unit| unit.symbol() == word)
}
