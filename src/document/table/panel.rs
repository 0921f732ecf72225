//! A panel's two scales as given, each end beside its conversion.

use super::{Ask, Cell, Column, Show, Table};
use crate::model::{Model, Panel};
use crate::physics::scale::{Comparison, End, compare};
use crate::quantity::{Rounding, Temperature, figure};
use crate::words::{Message, Words};

/// The table of a panel: its lower and its upper end.
pub(super) fn of_panel(model: &Model, words: &Words, id: &str, _: &Ask<'_>) -> Result<Table, Message> {
    let missing = || Message::new("run-no-such-table").with("id", id);
    let panel = model.panels.get(id).ok_or_else(missing)?;
    let found = panel.scales().and_then(|scales| compare(&scales).ok());
    let tenth = Show::Decimals(1, Rounding::Nearest);
    let column = |key, head, show| Column::new(key, words.word(head), show);
    Ok(Table {
        title: panel.title.clone(),
        notes: notes(words, found.as_ref()),
        columns: vec![
            column("end", "table-panel-end", tenth),
            column("mark", "table-panel-mark", tenth),
            column("celsius_c", "table-panel-celsius", tenth),
            column("celsius_in_f", "table-panel-celsius-in-f", tenth),
            column("fahrenheit_f", "table-panel-fahrenheit", tenth),
            column("fahrenheit_in_c", "table-panel-fahrenheit-in-c", tenth),
            column("difference_k", "table-panel-difference", tenth),
            column("agrees", "table-panel-agrees", tenth),
        ],
        rows: [0, 1].map(|end| row(words, panel, found.as_ref(), end)).into(),
        formulas: vec![words.word("table-formula-scales"), words.word("table-formula-scales-agree")],
        inputs: panel.facts.clone(),
    })
}

/// The lower end of both scales, or the upper one.
fn row(words: &Words, panel: &Panel, found: Option<&Comparison>, index: usize) -> Vec<Cell> {
    let celsius = panel.celsius.map(|scale| [scale.ends.low, scale.ends.high][index]);
    let fahrenheit = panel.fahrenheit.map(|scale| [scale.ends.low, scale.ends.high][index]);
    let end: Option<End> = found.map(|found| [found.low, found.high][index]);
    let yes_or_no = |end: End| words.word(if end.agrees { "table-yes" } else { "table-no" });
    vec![
        Cell::Text(words.word(["table-panel-low", "table-panel-high"][index])),
        panel.marks[index].clone().map_or(Cell::Missing, Cell::Text),
        Cell::from(celsius.map(Temperature::celsius)),
        Cell::from(celsius.map(Temperature::fahrenheit)),
        Cell::from(fahrenheit.map(Temperature::fahrenheit)),
        Cell::from(fahrenheit.map(Temperature::celsius)),
        Cell::from(end.map(|end| end.difference.kelvins())),
        end.map_or(Cell::Missing, |end| Cell::Text(yes_or_no(end))),
    ]
}

/// Whether the scales are conversions of each other, and how wide they are.
fn notes(words: &Words, found: Option<&Comparison>) -> Vec<String> {
    let Some(found) = found else { return vec![words.word("table-panel-one-scale")] };
    let shown = |number: f64| figure(number, 1, Rounding::Nearest);
    let verdict = if found.are_conversions() { "table-panel-conversions" } else { "table-panel-separate" };
    let spans = Message::new("table-panel-spans")
        .with("celsius", shown(found.celsius_span.kelvins()))
        .with("fahrenheit", shown(found.fahrenheit_span.fahrenheit_degrees()))
        .with("kelvins", shown(found.fahrenheit_span.kelvins()));
    vec![words.word(verdict), words.say(&spans)]
}
