//! What every dictionary has in common: rows of faults with what they read, which
//! of them can be told from good, and which read alike.

use crate::document::bench::Kit;
use crate::document::table::{Cell, Column, Show};
use crate::model::Fact;
use crate::physics::fault::apart;
use crate::quantity::{Interval, Resistance, Rounding, decimals_for, figure};
use crate::words::{Message, Words};

/// The faults of one thing.
pub(in crate::document) struct Dictionary {
    /// What the blocks differ by, such as a position; none where there is one block.
    pub(super) condition: Option<Column>,
    /// Readings and beliefs, in their order on a screen.
    pub(in crate::document) shown: Vec<Column>,
    /// What each test is called where it tells faults apart, in the order of `windows`.
    pub(super) tests: Vec<&'static str>,
    /// The faults, condition by condition.
    pub(in crate::document) blocks: Vec<Block>,
}

/// The faults under one condition: only these can be mistaken for each other.
pub(in crate::document) struct Block {
    /// The condition, where there is more than one.
    pub(in crate::document) condition: Option<f64>,
    /// What a good part reads in each test, widened by the reading's uncertainty.
    pub(in crate::document) good: Vec<Option<Interval<f64>>>,
    /// The faults.
    pub(in crate::document) entries: Vec<Entry>,
}

/// One fault.
pub(in crate::document) struct Entry {
    /// Its key for programs, and its name.
    pub(in crate::document) fault: (&'static str, String),
    /// Its size with its unit.
    pub(in crate::document) size: Option<String>,
    /// A cell for each column of `shown`.
    pub(in crate::document) shown: Vec<Cell>,
    /// What it reads in each test, widened by the reading's uncertainty; `None`
    /// where that is not known.
    pub(in crate::document) windows: Vec<Option<Interval<f64>>>,
}

impl Dictionary {
    /// The columns: those of every dictionary, and between them its own.
    pub(super) fn columns(&self, words: &Words) -> Vec<Column> {
        let whole = Show::Decimals(0, Rounding::Nearest);
        let word = |key, id: &str| Column::new(key, words.word(id), whole);
        std::iter::once(Column::new("number", "", whole))
            .chain(self.condition.clone())
            .chain([word("fault", "faults-fault"), word("size", "faults-size")])
            .chain(self.shown.iter().cloned())
            .chain([
                word("separable", "faults-separable"),
                word("separable_by", "faults-separable-by"),
                word("alike", "faults-alike"),
            ])
            .collect()
    }

    /// The rows, numbered through all blocks.
    pub(super) fn rows(&self, words: &Words) -> Vec<Vec<Cell>> {
        let mut rows = Vec::new();
        for block in &self.blocks {
            let first = rows.len() + 1;
            let row = |(index, entry): (usize, &Entry)| self.row(words, block, (index, entry), first);
            rows.extend(block.entries.iter().enumerate().map(row));
        }
        rows
    }

    fn row(&self, words: &Words, block: &Block, (index, entry): (usize, &Entry), first: usize) -> Vec<Cell> {
        let by = self.told_apart(&block.good, &entry.windows);
        let separable = match &by {
            None => Cell::Missing,
            Some(tests) => {
                let told = if tests.is_empty() { "faults-no" } else { "faults-yes" };
                Cell::Flag(!tests.is_empty(), words.word(told))
            }
        };
        let alike = |(_, other): &(usize, &Entry)| {
            self.told_apart(&entry.windows, &other.windows).is_some_and(|by| by.is_empty())
        };
        let others = block.entries.iter().enumerate().filter(|(other, _)| *other != index);
        let alike: Vec<String> = others.filter(alike).map(|(other, _)| (first + other).to_string()).collect();
        let (key, name) = &entry.fault;
        std::iter::once(Cell::from(number(first + index)))
            .chain(self.condition.as_ref().map(|_| Cell::from(block.condition)))
            .chain([Cell::Named(key, name.clone()), entry.size.clone().map_or(Cell::Missing, Cell::Text)])
            .chain(entry.shown.iter().cloned())
            .chain([separable, Cell::Text(by.unwrap_or_default().join(" ")), Cell::Text(alike.join(" "))])
            .collect()
    }

    /// The tests that tell two faults, or a fault and a good part, apart; `None`
    /// where no test is known of both.
    fn told_apart(
        &self,
        one: &[Option<Interval<f64>>],
        other: &[Option<Interval<f64>>],
    ) -> Option<Vec<&'static str>> {
        let pairs = self.tests.iter().zip(one.iter().zip(other));
        let known: Vec<(&'static str, bool)> =
            pairs.filter_map(|(test, (one, other))| Some((*test, apart((*one)?, (*other)?)))).collect();
        let by = known.iter().filter(|(_, apart)| *apart).map(|(test, _)| *test).collect();
        (!known.is_empty()).then_some(by)
    }
}

/// A row's number as a cell's number.
fn number(index: usize) -> f64 {
    u32::try_from(index).map_or(f64::NAN, f64::from)
}

/// A window widened by the uncertainty of its own ends; an open circuit has none.
pub(super) fn widened(window: Interval<f64>, doubt: impl Fn(f64) -> Option<f64>) -> Option<Interval<f64>> {
    let doubt = |end: f64| if end.is_infinite() { Some(0.0) } else { doubt(end) };
    Some(Interval { low: window.low - doubt(window.low)?, high: window.high + doubt(window.high)? })
}

/// What an ohmmeter shows; an open circuit has no number.
pub(super) fn ohms(words: &Words, ohms: Option<f64>) -> Cell {
    match ohms {
        Some(ohms) if ohms.is_infinite() => Cell::Named("OL", words.word("faults-open-line")),
        other => Cell::from(other),
    }
}

/// The columns that every dictionary has between its faults and its verdicts.
pub(super) fn resistance(words: &Words) -> Column {
    Column::new("resistance_ohm", words.word("faults-ohms"), Show::Digits(Rounding::Nearest))
}

/// See [`resistance`].
pub(super) fn voltage(words: &Words) -> Column {
    Column::new("voltage_v", words.word("faults-volts"), Show::Decimals(3, Rounding::Nearest))
}

/// See [`resistance`]; of things that tell no temperature a program gets null.
pub(super) fn believed_temperature() -> Column {
    Column::new("believed_temperature_c", "", Show::Never)
}

/// What a good part reads in one test.
pub(super) struct Good {
    /// Its nominal reading.
    pub(super) nominal: Option<f64>,
    /// Its limits, not widened.
    pub(super) window: Option<Interval<f64>>,
    /// How far a reading there can be trusted, k = 2.
    pub(super) doubt: Option<f64>,
}

impl Good {
    /// As a technician reads it out, in `V` or `Ω`.
    pub(super) fn told(&self, words: &Words, unit: &str) -> String {
        let size = self.nominal.or(self.window.map(|window| window.low));
        let decimals = if unit == "V" { 3 } else { size.map_or(0, decimals_for) };
        let shown = |value, rounding| figure(value, decimals, rounding);
        let missing = || words.word("doc-not-given");
        let nominal = self.nominal.map(|nominal| format!("{} {unit}", shown(nominal, Rounding::Nearest)));
        let range = self.window.map(|window| {
            format!("{}–{} {unit}", shown(window.low, Rounding::Up), shown(window.high, Rounding::Down))
        });
        let doubt = self.doubt.filter(|doubt| self.window.is_some() && *doubt > 0.0);
        let message = Message::new(if doubt.is_some() { "faults-reading-doubt" } else { "faults-reading" })
            .with("nominal", nominal.unwrap_or_else(missing))
            .with("range", range.unwrap_or_else(missing));
        let decimals = decimals.max(1);
        let doubt = doubt.map(|doubt| format!("{} {unit}", figure(doubt, decimals, Rounding::Up)));
        words.say(&message.with("doubt", doubt.unwrap_or_default()))
    }
}

/// What the instruments are, and what it means that there are none.
pub(super) fn instruments(words: &Words, kit: &Kit<'_>) -> Vec<String> {
    let without = kit.meter.is_none().then(|| words.word("faults-no-instrument"));
    std::iter::once(kit.told(words)).chain(without).collect()
}

/// A resistance in ohms, kilohms or megohms, to three digits.
pub(super) fn sized_ohms(ohms: Resistance) -> String {
    use crate::document::bench::fault::sized;
    use crate::physics::fault::Kind;
    sized(Kind::Series, ohms.ohms(), Rounding::Nearest)
}

/// The facts of a thing that change its figures, then those of the instruments;
/// `without` are how keys below `kind.ID` begin that change none.
pub(super) fn inputs<'a>(own: impl Iterator<Item = &'a Fact>, without: &[&str], kit: &Kit<'a>) -> Vec<Fact> {
    let counts = |fact: &&Fact| {
        let key = fact.key.splitn(3, '.').nth(2).unwrap_or_default();
        fact.label != "fact-location" && !without.iter().any(|start| key.starts_with(start))
    };
    own.filter(counts).chain(kit.facts()).cloned().collect()
}
