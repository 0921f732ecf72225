//! A system's panel modes against its control points, and what each stuck point takes to be seen.

use super::{Ask, Cell, Column, Show, Table};
use crate::model::{Fact, Mode, ModeSet, Model};
use crate::physics::modes::{self, Cover, Pair};
use crate::quantity::Rounding;
use crate::words::{Message, Words};

/// The truth table: a row for each mode, a column for each control point.
pub(super) fn of_system(model: &Model, words: &Words, id: &str, _: &Ask<'_>) -> Result<Table, Message> {
    let set = Said::new(model, words, id)?;
    let mut notes = vec![set.smallest()];
    notes.extend(set.alone());
    notes.extend(set.listed("table-modes-never-forced", set.never_forced()));
    notes.push(set.hidden());
    Ok(Table {
        title: set.title("table-modes-title"),
        notes,
        columns: set.matrix_columns(),
        rows: set.modes.modes.iter().enumerate().map(|(index, mode)| set.matrix_row(index, mode)).collect(),
        formulas: set.formulas(),
        inputs: set.inputs(),
    })
}

/// Every control point stuck at each of its values, and the modes that expose it.
pub(super) fn of_stuck(model: &Model, words: &Words, id: &str, _: &Ask<'_>) -> Result<Table, Message> {
    let set = Said::new(model, words, id)?;
    let heads = [
        ("control", "table-control"),
        ("stuck_at", "table-stuck-at"),
        ("forced_by", "table-forced-by"),
        ("exposed_by", "table-exposed-by"),
        ("first_in_smallest_set", "table-first-exposing"),
    ];
    let text = Show::Digits(Rounding::Nearest);
    Ok(Table {
        title: set.title("table-stuck-title"),
        notes: vec![set.smallest(), set.hidden()],
        columns: heads.map(|(key, head)| Column::new(key, words.word(head), text)).into(),
        rows: set.modes.table.faults().iter().map(|fault| set.stuck_row(fault)).collect(),
        formulas: set.formulas(),
        inputs: set.inputs(),
    })
}

/// Modes and control points with their names.
struct Said<'a> {
    words: &'a Words,
    system: &'a str,
    modes: &'a ModeSet,
    cover: Cover,
}

impl<'a> Said<'a> {
    fn new(model: &'a Model, words: &'a Words, id: &str) -> Result<Self, Message> {
        let missing = || Message::new("run-no-such-table").with("id", id);
        let modes = model.mode_sets.get(id).ok_or_else(missing)?;
        let system = &model.systems.get(id).ok_or_else(missing)?.title;
        Ok(Self { words, system, modes, cover: modes.table.smallest_cover() })
    }

    fn title(&self, message: &'static str) -> String {
        self.words.say(&Message::new(message).with("system", self.system))
    }

    fn matrix_columns(&self) -> Vec<Column> {
        let text = Show::Digits(Rounding::Nearest);
        let whole = Show::Decimals(0, Rounding::Nearest);
        let word = |id| self.words.word(id);
        let mut columns = vec![
            Column::new("mode", word("table-mode"), text),
            Column::new("title", word("table-name"), text),
        ];
        columns.extend((self.modes.controls.iter()).map(|control| {
            // Named as in the specs, so that no id can be the name of another column.
            Column::new(format!("control.{}", control.id), &control.title, text)
        }));
        columns.push(Column::new("time_s", word("table-time"), Show::Decimals(1, Rounding::Nearest)));
        columns.push(Column::new("forced", word("table-forced"), whole));
        columns.push(Column::new("in_smallest_set", word("table-in-smallest"), text));
        columns
    }

    fn matrix_row(&self, index: usize, mode: &Mode) -> Vec<Cell> {
        let mut cells = vec![Cell::Text(mode.id.clone()), Cell::Text(mode.title.clone())];
        cells.extend(mode.cells.iter().enumerate().map(|(control, cell)| match cell {
            modes::Cell::Forced(value) => Cell::from(self.value(Pair { control, value: *value })),
            modes::Cell::Free => Cell::from(self.words.word("table-free")),
            modes::Cell::DontCare => Cell::from(self.words.word("table-dont-care")),
        }));
        cells.push(Cell::from(mode.time.map(|time| time.seconds())));
        let forced = self.modes.table.forced(index);
        cells.push(Cell::from((0..forced).fold(0.0, |count, _| count + 1.0)));
        let chosen = self.cover.modes.contains(&index);
        cells.push(Cell::from(self.words.word(if chosen { "table-yes" } else { "table-no" })));
        cells
    }

    fn stuck_row(&self, fault: &modes::StuckAt) -> Vec<Cell> {
        let modes =
            |modes: &[usize]| if modes.is_empty() { Cell::Missing } else { Cell::Text(self.ids(modes)) };
        let first = fault.first_in(&self.cover.modes);
        vec![
            Cell::Text(self.control(fault.stuck_at)),
            Cell::Text(self.value(fault.stuck_at)),
            modes(&self.modes.table.visitors(fault.stuck_at)),
            modes(&fault.exposed_by),
            modes(&first.into_iter().collect::<Vec<_>>()),
        ]
    }

    /// The smallest set, and whether it is proven.
    fn smallest(&self) -> String {
        if self.cover.modes.is_empty() {
            return self.words.word("table-modes-nothing");
        }
        let proven = self.cover.is_proven();
        let message = if proven { "table-modes-smallest" } else { "table-modes-small" };
        let message = Message::new(message)
            .with("modes", self.ids(&self.cover.modes))
            .with("count", self.cover.modes.len())
            .with("all", self.modes.modes.len())
            .with("least", self.cover.at_least)
            .with("most", modes::MOST_EXACT);
        self.words.say(&message)
    }

    /// What a single mode forces, one note for each such mode.
    fn alone(&self) -> Vec<String> {
        let essential = self.modes.table.essential();
        let note = |(index, mode): (usize, &Mode)| {
            let pairs = essential.iter().filter(|(_, by)| *by == index).map(|(pair, _)| *pair);
            let pairs: Vec<String> = pairs.map(|pair| self.pair(pair)).collect();
            let message = Message::new("table-modes-alone").with("mode", &mode.id);
            (!pairs.is_empty()).then(|| self.words.say(&message.with("values", pairs.join(", "))))
        };
        self.modes.modes.iter().enumerate().filter_map(note).collect()
    }

    /// Values that no mode forces.
    fn never_forced(&self) -> Vec<Pair> {
        let forced = self.modes.table.pairs();
        let all = self.modes.table.faults().into_iter().map(|fault| fault.stuck_at);
        all.filter(|pair| !forced.contains(pair)).collect()
    }

    /// Stuck control points that no mode exposes, by name.
    fn hidden(&self) -> String {
        let faults = self.modes.table.faults().into_iter();
        let hidden = faults.filter(|fault| fault.exposed_by.is_empty()).map(|fault| fault.stuck_at).collect();
        let listed = self.listed("table-modes-hidden", hidden);
        listed.unwrap_or_else(|| self.words.word("table-modes-none-hidden"))
    }

    fn listed(&self, message: &'static str, pairs: Vec<Pair>) -> Option<String> {
        let named: Vec<String> = pairs.into_iter().map(|pair| self.pair(pair)).collect();
        let message = Message::new(message).with("values", named.join(", "));
        (!named.is_empty()).then(|| self.words.say(&message))
    }

    fn formulas(&self) -> Vec<String> {
        let most = Message::new("table-formula-smallest-set").with("most", modes::MOST_EXACT);
        vec![self.words.say(&most), self.words.word("table-formula-stuck-at")]
    }

    fn inputs(&self) -> Vec<Fact> {
        let controls = self.modes.controls.iter().flat_map(|control| &control.facts);
        controls.chain(self.modes.modes.iter().flat_map(|mode| &mode.facts)).cloned().collect()
    }

    fn control(&self, pair: Pair) -> String {
        self.modes.controls[pair.control].title.clone()
    }

    fn value(&self, pair: Pair) -> String {
        self.modes.controls[pair.control].values[pair.value].clone()
    }

    fn pair(&self, pair: Pair) -> String {
        format!("{} {}", self.control(pair), self.value(pair))
    }

    fn ids(&self, modes: &[usize]) -> String {
        modes.iter().map(|mode| self.modes.modes[*mode].id.as_str()).collect::<Vec<_>>().join(", ")
    }
}
