//! `bayleaf table`: the figures of one thing, for a screen or another program.

use std::io::{self, IsTerminal, Write};

use serde::{Serialize, Serializer};

use super::args::{Format, Table as Arguments};
use super::export;
use super::load::{Origin, announce, answer};
use super::outcome::{Outcome, say};
use super::plot::plots;
use crate::document::said;
use crate::document::table::{Ask, Cell, Column, Show, Table, of};
use crate::model::Fact;
use crate::quantity::{Units, noted};
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
        for_people(arguments.format, words, || {
            let table = of(&loaded.model, words, &ask)?;
            if let Some(path) = &arguments.xlsx {
                return export::spreadsheet(path, (arguments.id.clone(), table), words);
            }
            let told = tell(words, &loaded.from, &table, arguments.format);
            let plain = arguments.format == Format::Text;
            if told != Outcome::Done || !plain || !(arguments.plot || io::stdout().is_terminal()) {
                return Ok(told);
            }
            let drawn = plots(&table, words);
            if drawn.is_empty() && arguments.plot {
                return Err(Message::new("table-plot-none").with("id", &arguments.id));
            }
            Ok(Outcome::of_output(words, drawn.iter().try_for_each(say)))
        })
    })
}

/// Runs something in the notation of the language where people read it; programs read points.
pub(super) fn for_people<T>(format: Format, words: &Words, make: impl FnOnce() -> T) -> T {
    noted(words.notation().filter(|_| format == Format::Text), make)
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
    let source = source(words, fact).unwrap_or_else(|| "–".to_owned());
    // The labels of instruments are short, for a sheet that says whose they are.
    let id = fact.key.strip_prefix("instrument.").and_then(|rest| rest.split('.').next());
    let message = match id {
        Some(id) => Message::new("table-input-of-instrument").with("id", id),
        None => Message::new("table-input"),
    };
    let message = message
        .with_word("label", fact.label)
        .with("value", said(words, fact))
        .with("key", &fact.key)
        .with("source", source);
    words.say(&message)
}

/// Where a value comes from, or that nobody said; `None` where there is no value.
pub(super) fn source(words: &Words, fact: &Fact) -> Option<String> {
    match &fact.source {
        // What is the shop's own rule has no document behind it.
        Some(source) if source.is_empty() => Some(words.word("table-own-rule")),
        Some(source) => Some(source.clone()),
        None if fact.is_missing() => None,
        None => Some(words.word("doc-no-source")),
    }
}

/// Comma-separated values under the columns' names.
pub(super) fn csv(table: &Table) -> io::Result<()> {
    io::stdout().lock().write_all(&comma_separated(table))
}

/// The same as the bytes of a file.
pub(super) fn comma_separated(table: &Table) -> Vec<u8> {
    let heads = table.columns.iter().map(|column| column.key.to_string()).collect();
    let plain = |cell: &Cell| match cell {
        Cell::Number(number) => number.to_string(),
        Cell::Text(text) => text.clone(),
        Cell::Named(key, _) => (*key).to_owned(),
        Cell::Flag(flag, _) => flag.to_string(),
        Cell::Missing => String::new(),
    };
    lines(std::iter::once(heads).chain(table.rows.iter().map(|row| row.iter().map(plain).collect())))
}

/// Rows of equal length as lines of comma-separated values.
pub(super) fn lines(rows: impl Iterator<Item = Vec<String>>) -> Vec<u8> {
    let mut writer = ::csv::Writer::from_writer(Vec::new());
    rows.for_each(|row| writer.write_record(row).expect("memory takes every row of equal length"));
    writer.into_inner().expect("memory can be flushed")
}

/// A JSON array of objects with the columns in their order.
fn json(table: &Table) -> io::Result<()> {
    say(serde_json::to_string_pretty(&rows(table))?)
}

/// Every row as an object.
pub(super) fn rows(table: &Table) -> Vec<Row<'_>> {
    table.rows.iter().map(|row| Row { columns: &table.columns, cells: row }).collect()
}

/// A row as an object; a plain map would sort its keys.
pub(super) struct Row<'a> {
    columns: &'a [Column],
    cells: &'a [Cell],
}

impl Serialize for Row<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(self.columns.iter().map(|column| &column.key).zip(self.cells))
    }
}
