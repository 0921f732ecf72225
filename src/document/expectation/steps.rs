//! Rows of a test's own: the positions of a truth table, the events of a sequence.

use schemars::JsonSchema;
use serde::Serialize;

use super::limits::{between, table_of};
use crate::document::Context;
use crate::document::figures;
use crate::document::table::Cell;
use crate::model::{SequenceStep, Test, TruthRow};
use crate::physics::modes;
use crate::quantity::Duration;
use crate::words::{Message, Words};

/// One row with a box of its own.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema)]
pub(in crate::document) struct StepRow {
    /// Behind the test's number: a, b, c.
    pub mark: String,
    /// What it is about.
    pub title: String,
    /// When or how to look.
    pub detail: String,
    /// What is expected.
    pub expect: String,
    /// The unit of what is expected, where that is a figure.
    pub expect_unit: String,
    /// The unit in its box; empty for a word.
    pub unit: String,
}

/// What stands over the rows, and the rows.
pub(super) type Steps = (String, Vec<StepRow>);

/// Events one after the other, each with its delay.
pub(super) fn of_sequence(words: &Words, events: &[SequenceStep]) -> Steps {
    let row = |(index, step): (usize, &SequenceStep)| {
        let before = mark(index.saturating_sub(1));
        let detail = delay(words, step, &before);
        StepRow {
            mark: mark(index),
            title: step.event.clone(),
            unit: if detail.is_empty() { String::new() } else { "s".to_owned() },
            detail,
            expect: step.expect.clone(),
            expect_unit: String::new(),
        }
    };
    (words.word("sheet-sequence"), events.iter().enumerate().map(row).collect())
}

/// `2 to 4 s after a`.
fn delay(words: &Words, step: &SequenceStep, before: &str) -> String {
    let seconds = |time: Duration| figures::trimmed(time.seconds());
    let message = match (step.least, step.most) {
        (Some(least), Some(most)) => {
            Message::new("sheet-after").with("least", seconds(least)).with("most", seconds(most))
        }
        (None, Some(most)) => Message::new("sheet-within").with("most", seconds(most)),
        _ => return String::new(),
    };
    words.say(&message.with("mark", before))
}

/// A truth table as it was written.
pub(super) fn of_rows(columns: &[String], rows: &[TruthRow]) -> Steps {
    let row = |(index, row): (usize, &TruthRow)| {
        let states = columns.iter().zip(&row.values).map(|(column, value)| format!("{column}\u{a0}{value}"));
        plain(index, row.name.clone(), String::new(), states.collect::<Vec<_>>().join(" · "))
    };
    (String::new(), rows.iter().enumerate().map(row).collect())
}

/// The contacts of an actuator: closed or open on their wires, or volts of a ladder.
pub(super) fn of_contacts(context: Context<'_>, test: &Test) -> Steps {
    let words = context.words;
    let Some(actuator) = context.model.actuators.get(&test.component) else { return Steps::default() };
    if let Some(contacts) = &actuator.contacts {
        let rows = contacts.positions.iter().zip(contacts.table.positions()).enumerate();
        let row = |(index, (name, code)): (usize, (&String, &crate::physics::contacts::Code))| {
            let states = contacts.names.iter().zip(code.closed()).map(|(name, closed)| {
                let word = words.word(if closed { "sheet-closed" } else { "sheet-open" });
                // Name and state stay on one line.
                format!("{name}\u{a0}{word}")
            });
            plain(index, name.clone(), String::new(), states.collect::<Vec<_>>().join(" · "))
        };
        let head = contacts.closed.map_or_else(
            || words.word("sheet-closed-not-given"),
            |most| words.say(&Message::new("sheet-closed-at-most").with("most", most)),
        );
        return (head, rows.map(row).collect());
    }
    let Some((ladder, table)) = actuator.ladder.as_ref().zip(table_of(context, test)) else {
        return Steps::default();
    };
    let row = |(index, (name, _)): (usize, &(String, Vec<bool>))| {
        let of = |row: &&Vec<Cell>| matches!(row.first(), Some(Cell::Text(found)) if found == name);
        let shown = table.rows.iter().find(of).and_then(|row| {
            let low = table.number(row, "voltage_min_v")?;
            Some(between(low, table.number(row, "voltage_max_v")?, Some(figures::VOLT_DECIMALS), "V"))
        });
        let expect_unit = if shown.is_some() { "V".to_owned() } else { String::new() };
        let expect = shown.map_or_else(|| words.word("doc-not-given"), |shown| shown.text());
        StepRow { expect_unit, unit: "V".to_owned(), ..plain(index, name.clone(), String::new(), expect) }
    };
    (String::new(), ladder.positions.iter().enumerate().map(row).collect())
}

/// What the test's panel mode forces; only what is forced can be wrong.
pub(super) fn of_mode(context: Context<'_>, test: &Test) -> Steps {
    let words = context.words;
    let found = test.mode.as_ref().zip(context.model.mode_sets.get(&test.system));
    let Some(((id, _), set)) = found else { return Steps::default() };
    let Some(mode) = set.modes.iter().find(|mode| mode.id == *id) else { return Steps::default() };
    let forced = set.controls.iter().zip(&mode.cells).filter_map(|(control, cell)| match cell {
        modes::Cell::Forced(value) => Some((control, control.values.get(*value)?)),
        _ => None,
    });
    let row = |(index, (control, value)): (usize, (&crate::model::Control, &String))| {
        let observe = control.observe.clone().unwrap_or_default();
        plain(index, control.title.clone(), observe, value.clone())
    };
    let head = mode.time.map_or_else(String::new, |time| {
        let most = figures::trimmed(time.seconds());
        words.say(&Message::new("sheet-reached-within").with("most", most))
    });
    (head, forced.enumerate().map(row).collect())
}

fn plain(index: usize, title: String, detail: String, expect: String) -> StepRow {
    StepRow { mark: mark(index), title, detail, expect, expect_unit: String::new(), unit: String::new() }
}

/// a to z, then aa, ab.
fn mark(index: usize) -> String {
    crate::document::marks::letters_of(index)
}
