//! `bayleaf table`: the figures of one thing, for a screen or another program.

use std::io;

use serde::{Serialize, Serializer};

use super::args::{Format, Table as Arguments};
use super::load::{Origin, announce, load};
use super::outcome::{Outcome, fail, say};
use crate::document::table::{Ask, Cell, Column, Table, of};
use crate::model::Fact;
use crate::words::{Message, Words};

/// Runs the command.
pub(super) fn run(arguments: &Arguments) -> Outcome {
    let words = Words::english();
    let loaded = match load(arguments.specs.specs.as_deref(), &words, false) {
        Ok(loaded) => loaded,
        Err(outcome) => return outcome,
    };
    let ask = Ask {
        id: &arguments.id,
        from: arguments.from,
        to: arguments.to,
        step: arguments.step,
        bay: arguments.at,
    };
    match of(&loaded.model, &words, &ask) {
        Ok(table) => tell(&words, &loaded.from, &table, arguments.format),
        Err(message) => fail(&words, &message),
    }
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
    let heads: Vec<String> = table.columns.iter().map(|column| column.head.clone()).collect();
    let lines: Vec<Vec<String>> = [heads].into_iter().chain(table.texts()).collect();
    let widths: Vec<usize> = (0..table.columns.len())
        .map(|index| lines.iter().map(|line| line[index].chars().count()).max().unwrap_or(0))
        .collect();
    for line in &lines {
        let padded = line.iter().zip(&widths).map(|(cell, width)| format!("{cell:>width$}"));
        say(padded.collect::<Vec<_>>().join("  "))?;
    }
    for formula in &table.formulas {
        say(formula)?;
    }
    table.inputs.iter().try_for_each(|fact| say(input(words, fact)))
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
