//! `bayleaf table`: the figures of one thing, for a screen or another program.

use std::io;

use serde::{Serialize, Serializer};

use super::args::{Format, Table as Arguments};
use super::load::{Origin, announce, answer};
use super::outcome::{Outcome, say};
use crate::document::table::{Ask, Cell, Column, Show, Table, of};
use crate::model::Fact;
use crate::quantity::Units;
use crate::words::{Language, Message, Words};

/// Runs the command.
pub(super) fn run(arguments: &Arguments, language: Option<Language>) -> Outcome {
    let ask = Ask {
        id: &arguments.id,
        from: arguments.from,
        to: arguments.to,
        step: arguments.step,
        bay: arguments.at,
        units: Units::default(),
    };
    answer(arguments.specs.specs.as_deref(), language, |loaded, words| {
        let ask = Ask { units: arguments.units.unwrap_or(loaded.model.shop.units), ..ask };
        of(&loaded.model, words, &ask).map(|table| tell(words, &loaded.from, &table, arguments.format))
    })
}

/// Writes a table in the form that was asked for.
pub(super) fn tell(words: &Words, from: &Origin, table: &Table, format: Format) -> Outcome {
    let told = match format {
        Format::Text => announce(from, words).and_then(|()| text(words, table)),
        Format::Csv => csv(table),
        Format::Json => json(table),
    };
    Outcome::of_output(words, told)
}

/// Aligned columns, rounded as on a card, and below them what they rest on.
pub(super) fn text(words: &Words, table: &Table) -> io::Result<()> {
    say(&table.title)?;
    for note in &table.notes {
        say(note)?;
    }
    grid(table).into_iter().try_for_each(say)?;
    for formula in &table.formulas {
        say(formula)?;
    }
    table.inputs.iter().try_for_each(|fact| say(input(words, fact)))
}

/// Head and rows in columns: numbers end below each other, words begin so.
fn grid(table: &Table) -> Vec<String> {
    let shown = |column: &Column| column.show != Show::Never;
    let texts = table.texts();
    let columns: Vec<(Vec<String>, bool)> = (table.columns.iter().enumerate())
        .filter(|(_, column)| shown(column))
        .map(|(index, column)| {
            let cells = || table.rows.iter().filter_map(|row| row.get(index));
            let below = texts.iter().filter_map(|row| row.get(index)).cloned();
            let lines = std::iter::once(column.head.clone()).chain(below);
            (lines.collect(), of_words(cells()))
        })
        .collect();
    let padded = |(lines, words): &(Vec<String>, bool), line: usize| {
        let width = lines.iter().map(|text| text.chars().count()).max().unwrap_or(0);
        let text = lines.get(line).map_or("", String::as_str);
        if *words { format!("{text:<width$}") } else { format!("{text:>width$}") }
    };
    let line = |line: usize| columns.iter().map(|column| padded(column, line)).collect::<Vec<_>>().join("  ");
    (0..=table.rows.len()).map(|number| line(number).trim_end().to_owned()).collect()
}

/// Whether the cells of a column are words; a number among them makes it one of numbers.
fn of_words<'a>(mut cells: impl Iterator<Item = &'a Cell> + Clone) -> bool {
    let numbers = cells.clone().any(|cell| matches!(cell, Cell::Number(_)));
    !numbers && cells.any(|cell| !matches!(cell, Cell::Missing))
}

/// One input: what it is, its value, where it stands and where it comes from.
pub(super) fn input(words: &Words, fact: &Fact) -> String {
    let value = fact.written.clone().unwrap_or_else(|| words.word("doc-not-given"));
    let source = match &fact.source {
        // What is the shop's own rule has no document behind it.
        Some(source) if source.is_empty() => words.word("table-own-rule"),
        Some(source) => source.clone(),
        None if fact.is_missing() => "–".to_owned(),
        None => words.word("doc-no-source"),
    };
    // The labels of instruments are short, for a sheet that says whose they are.
    let id = fact.key.strip_prefix("instrument.").and_then(|rest| rest.split('.').next());
    let message = match id {
        Some(id) => Message::new("table-input-of-instrument").with("id", id),
        None => Message::new("table-input"),
    };
    let message = message
        .with_word("label", fact.label)
        .with("value", value)
        .with("key", &fact.key)
        .with("source", source);
    words.say(&message)
}

/// Comma-separated values under the columns' names.
pub(super) fn csv(table: &Table) -> io::Result<()> {
    let quoted = |text: &str| {
        let plain = !text.contains(['"', ',', '\n', '\r']);
        if plain { text.to_owned() } else { format!("\"{}\"", text.replace('"', "\"\"")) }
    };
    say(table.columns.iter().map(|column| column.key.as_ref()).collect::<Vec<_>>().join(","))?;
    for row in &table.rows {
        let cells = row.iter().map(|cell| match cell {
            Cell::Number(number) => number.to_string(),
            Cell::Text(text) => quoted(text),
            Cell::Named(key, _) => quoted(key),
            Cell::Flag(flag, _) => flag.to_string(),
            Cell::Missing => String::new(),
        });
        say(cells.collect::<Vec<_>>().join(","))?;
    }
    Ok(())
}

/// A JSON array of objects with the columns in their order.
fn json(table: &Table) -> io::Result<()> {
    let rows: Vec<Row<'_>> =
        table.rows.iter().map(|row| Row { columns: &table.columns, cells: row }).collect();
    say(serde_json::to_string_pretty(&rows)?)
}

/// A row as an object; a plain map would sort its keys.
struct Row<'a> {
    columns: &'a [Column],
    cells: &'a [Cell],
}

impl Serialize for Row<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(self.columns.iter().map(|column| &column.key).zip(self.cells))
    }
}
