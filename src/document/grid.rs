//! A table of figures on paper: all cells text, with what its columns are.

use schemars::JsonSchema;
use serde::Serialize;

use super::table::{self, Cell, Show, Table};
use crate::words::Words;

/// A table on paper. The template sets column widths from the lengths of the texts.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema)]
pub(super) struct Grid {
    /// What it is a table of; empty where a head above says so.
    pub title: String,
    /// What is said above it: where and how, what the columns include.
    pub notes: Vec<String>,
    /// Heads, from left to right.
    pub columns: Vec<Column>,
    /// Rows from the top, a text for each column.
    pub rows: Vec<Vec<String>>,
}

/// One column: its head, and below it what tells neighbours with the same head apart.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, JsonSchema)]
pub(super) struct Column {
    /// What is in it: `Ω`.
    pub head: String,
    /// `min`, `max`, a unit or nothing.
    pub sub: String,
    /// Whether its cells are figures, which align at the right; words begin at the left.
    pub figures: bool,
}

impl Column {
    /// A column of words.
    pub(super) fn words(head: impl Into<String>) -> Self {
        Self { head: head.into(), sub: String::new(), figures: false }
    }

    /// A column of figures.
    pub(super) fn figures(head: impl Into<String>, sub: impl Into<String>) -> Self {
        Self { head: head.into(), sub: sub.into(), figures: true }
    }
}

impl Grid {
    /// A table as a screen shows it, with its limits rounded inward in the same place.
    pub(super) fn of_table(words: &Words, title: &str, table: &Table) -> Self {
        let is_figure =
            |index: usize| table.rows.iter().any(|row| matches!(row.get(index), Some(Cell::Number(_))));
        let shown: Vec<bool> = table.columns.iter().map(|column| column.show != Show::Never).collect();
        let column = |(index, column): (usize, &table::Column)| {
            let (head, sub) = column.heads();
            shown[index].then(|| Column { head, sub, figures: is_figure(index) })
        };
        let row = |texts: Vec<String>| {
            texts.into_iter().zip(&shown).filter(|(_, shown)| **shown).map(|(text, _)| text).collect()
        };
        Self {
            title: words.word(title),
            notes: table.notes.clone(),
            columns: table.columns.iter().enumerate().filter_map(column).collect(),
            rows: table.texts().into_iter().map(row).collect(),
        }
    }

    /// The same without columns in which no cell says anything.
    pub(super) fn without_blanks(mut self) -> Self {
        let says = |cell: &String| !cell.is_empty() && cell != table::BLANK;
        let kept: Vec<bool> = (0..self.columns.len())
            .map(|at| self.rows.iter().any(|row| row.get(at).is_some_and(says)))
            .collect();
        let keep = |index: usize| kept.get(index).copied().unwrap_or_default();
        let chosen = |row: Vec<String>| -> Vec<String> {
            row.into_iter().enumerate().filter(|(index, _)| keep(*index)).map(|(_, cell)| cell).collect()
        };
        self.columns =
            self.columns.into_iter().enumerate().filter(|(index, _)| keep(*index)).map(|(_, c)| c).collect();
        self.rows = self.rows.into_iter().map(chosen).collect();
        self
    }
}
