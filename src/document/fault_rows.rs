//! The fault dictionary of a thing as a card has room for it: what reads alike in one row.

use super::Context;
use super::bench::Kit;
use super::marks::Marks;
use super::table::{Cell, Table};
use crate::words::{Message, Words};

/// One fault of a dictionary, by its conditions; or several that read the same.
pub(super) struct FaultRow {
    /// Key of the fault.
    pub key: &'static str,
    /// Names with their sizes.
    pub names: Vec<String>,
    /// One text for each column asked for, condition by condition.
    pub reads: Vec<String>,
    /// The tests that tell it from a good part, in any condition.
    pub by: Vec<String>,
}

/// A dictionary's faults in `blocks` conditions, with what `read` makes of each row's cells.
///
/// A dictionary lists its faults condition after condition, in the same order in each.
pub(super) fn rows(
    table: &Table,
    blocks: usize,
    read: impl Fn(&dyn Fn(&str) -> Cell) -> Vec<String>,
) -> Vec<FaultRow> {
    let per_block = table.rows.len() / blocks.max(1);
    let mut grouped: Vec<FaultRow> = Vec::new();
    for fault in 0..per_block {
        let of_fault: Vec<&Vec<Cell>> =
            (0..blocks).filter_map(|block| table.rows.get(block * per_block + fault)).collect();
        let Some(first) = of_fault.first() else { continue };
        let (key, name) = match cell(table, first, "fault") {
            Cell::Named(key, name) => (key, name),
            _ => continue,
        };
        // Another part's size is its id, which its name holds already.
        let name = match cell(table, first, "size") {
            Cell::Text(size) if key != "other part" => format!("{name}, {size}"),
            _ => name,
        };
        let reads: Vec<String> =
            of_fault.iter().flat_map(|row| read(&|column| cell(table, row, column))).collect();
        let mut by: Vec<String> = Vec::new();
        for row in &of_fault {
            let Cell::Text(tests) = cell(table, row, "separable_by") else { continue };
            for test in tests.split_whitespace() {
                if !by.iter().any(|known| known == test) {
                    by.push(test.to_owned());
                }
            }
        }
        match grouped.iter_mut().find(|known| known.reads == reads) {
            Some(same) => {
                same.names.push(name);
                same.by.retain(|test| by.contains(test));
            }
            None => grouped.push(FaultRow { key, names: vec![name], reads, by }),
        }
    }
    grouped
}

/// The rows that `gives` something to look for, and a sentence of the word table that names
/// the others.
pub(super) fn parted(
    words: &Words,
    rows: Vec<FaultRow>,
    gives: impl Fn(&FaultRow) -> bool,
    others: &'static str,
) -> (Vec<FaultRow>, Option<String>) {
    let (kept, rest): (Vec<FaultRow>, Vec<FaultRow>) = rows.into_iter().partition(|row| gives(row));
    let rest: Vec<String> = rest.into_iter().flat_map(|row| row.names).collect();
    let named = (!rest.is_empty()).then(|| words.say(&Message::new(others).with("faults", listed(&rest))));
    (kept, named)
}

/// Names with their sizes as one text: several sizes of one fault name it once.
pub(super) fn listed(names: &[String]) -> String {
    let mut parts: Vec<(&str, Vec<&str>)> = Vec::new();
    for name in names {
        let (fault, size) = name.rsplit_once(", ").unwrap_or((name, ""));
        let is_size = size.chars().any(|digit| digit.is_ascii_digit());
        let (fault, size) = if is_size { (fault, size) } else { (name.as_str(), "") };
        match parts.last_mut().filter(|(known, _)| *known == fault) {
            Some((_, sizes)) => sizes.push(size),
            None => parts.push((fault, vec![size])),
        }
    }
    let part = |(fault, sizes): &(&str, Vec<&str>)| {
        let sizes: Vec<&str> = sizes.iter().copied().filter(|size| !size.is_empty()).collect();
        std::iter::once(*fault).chain(sizes).collect::<Vec<_>>().join(", ")
    };
    parts.iter().map(part).collect::<Vec<_>>().join("; ")
}

/// Which instruments tell the faults from good, and where their accuracies come from.
///
/// Only ohms that depend on the temperature are taken with a thermometer.
pub(super) fn instruments(context: Context<'_>, system: &str, warm: bool, marks: &mut Marks) -> String {
    let words = context.words;
    let kit = Kit::of_system(context.model, &[], system).ok();
    let Some((kit, meter)) = kit.as_ref().and_then(|kit| Some((kit, kit.meter?))) else {
        return words.word("card-no-instrument");
    };
    let thermometer = kit.thermometer.filter(|_| warm).into_iter().flat_map(|meter| &meter.facts);
    let letters = marks.letters(words, meter.facts.iter().chain(thermometer));
    words.say(&Message::new("card-instrument").with("meter", &meter.title).with("mark", letters))
}

/// A row's cell by the key of its column.
fn cell(table: &Table, row: &[Cell], key: &str) -> Cell {
    table.column(key).and_then(|column| row.get(column)).cloned().unwrap_or(Cell::Missing)
}
