//! Which column is what, and in which unit: from the heads, and from units in the cells.

use super::cells::Line;
use super::number::split;
use crate::quantity::{Dimension, Unit};

/// What a column holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Use {
    /// The temperature of the row.
    Temperature,
    /// The least resistance.
    Low,
    /// The nominal resistance.
    Nominal,
    /// The greatest resistance.
    High,
    /// The same temperatures on another scale, or anything that a curve has no use for.
    LeftOut,
    /// Nothing in any row.
    Empty,
}

/// One column as it was understood.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Column {
    /// Its head, empty where there is none.
    pub head: String,
    /// What it holds.
    pub used: Use,
    /// Its unit, where head or cells have one.
    pub unit: Option<Unit>,
}

/// Words of heads, in the languages of the manuals that shops have.
const TEMPERATURE: &[&str] =
    &["t", "temp", "temperature", "temperatur", "température", "temperatura", "ϑ", "θ"];
const RESISTANCE: &[&str] =
    &["r", "rt", "resistance", "resistor", "ohms", "widerstand", "résistance", "resistencia", "resistenza"];
const LOW: &[&str] = &["min", "minimum", "low", "lower", "rmin", "least"];
const NOMINAL: &[&str] =
    &["nom", "nominal", "typ", "typical", "centre", "center", "rnom", "rcent", "mean", "soll"];
const HIGH: &[&str] = &["max", "maximum", "high", "upper", "rmax", "greatest"];

/// The columns, with the units that the caller demands in place of unknown ones.
pub(super) fn columns(
    heads: &[Line],
    rows: &[Line],
    (temperature, resistance): (Option<Unit>, Option<Unit>),
) -> Vec<Column> {
    let count = heads.iter().chain(rows).map(|line| line.cells.len()).max().unwrap_or(0);
    let mut all: Vec<Column> = (0..count).map(|index| column(heads, rows, index)).collect();
    let words: Vec<Vec<String>> = all.iter().map(|column| words_of(&column.head)).collect();
    let has = |index: usize, known: &[&str]| words[index].iter().any(|word| known.contains(&word.as_str()));
    let measures = |column: &Column, dimension| column.unit.is_some_and(|unit| unit.measures(dimension));
    for (index, column) in all.iter_mut().enumerate() {
        if column.used == Use::Empty || column.unit.is_some() {
            continue;
        }
        if has(index, TEMPERATURE) {
            column.unit = temperature;
        } else if [RESISTANCE, LOW, NOMINAL, HIGH].iter().any(|known| has(index, known)) {
            column.unit = resistance;
        }
    }
    // No word helps: the first column is the temperature, as in every table.
    let named = all.iter().any(|column| measures(column, Dimension::Temperature));
    if let Some(first) = all.iter_mut().find(|column| column.used != Use::Empty && column.unit.is_none())
        && !named
    {
        first.unit = temperature;
    }
    let known = |columns: &[Column]| columns.iter().any(|column| measures(column, Dimension::Resistance));
    if !known(&all) && resistance.is_some() {
        let unknown = all.iter_mut().filter(|column| column.used != Use::Empty && column.unit.is_none());
        unknown.for_each(|column| column.unit = resistance);
    }
    if let Some(first) = all.iter_mut().find(|column| measures(column, Dimension::Temperature)) {
        first.used = Use::Temperature;
    }
    let ohms: Vec<usize> = (0..count).filter(|&index| measures(&all[index], Dimension::Resistance)).collect();
    let by_word = [(LOW, Use::Low), (NOMINAL, Use::Nominal), (HIGH, Use::High)];
    for &index in &ohms {
        let word = by_word.iter().find(|(known, _)| has(index, known));
        all[index].used = word.map_or(Use::LeftOut, |(_, used)| *used);
    }
    let nameless: Vec<usize> =
        ohms.iter().copied().filter(|&index| all[index].used == Use::LeftOut).collect();
    match (&nameless[..], ohms.len()) {
        // Three without names stand in the order of every table.
        (&[low, nominal, high], 3) => {
            for (index, used) in [(low, Use::Low), (nominal, Use::Nominal), (high, Use::High)] {
                all[index].used = used;
            }
        }
        // One without a name beside named limits, or alone, is the nominal value.
        (&[only], 1 | 3) => all[only].used = Use::Nominal,
        _ => {}
    }
    all
}

fn column(heads: &[Line], rows: &[Line], index: usize) -> Column {
    let cell =
        |line: &Line| line.cells.get(index).map(|cell| cell.text.clone()).filter(|text| !text.is_empty());
    let heads: Vec<String> = heads.iter().filter_map(cell).collect();
    let cells: Vec<String> = rows.iter().filter_map(cell).collect();
    let in_cells =
        cells.iter().filter_map(|text| split(text)).map(|(_, unit)| unit).find(|unit| !unit.is_empty());
    let head = heads.join(" ");
    let unit = heads.iter().rev().find_map(|head| unit_in(head)).or_else(|| in_cells.and_then(Unit::named));
    Column { used: if cells.is_empty() { Use::Empty } else { Use::LeftOut }, unit, head }
}

/// The unit that a head names: alone, in brackets, behind a stroke or a comma, or last.
fn unit_in(head: &str) -> Option<Unit> {
    let apart =
        |c: char| c.is_whitespace() || matches!(c, '(' | ')' | '[' | ']' | '/' | ',' | ';' | ':' | '_');
    let words: Vec<&str> = head.split(apart).filter(|word| !word.is_empty()).collect();
    // A lone letter that is also a symbol, as R or T or C, is a name unless it stands in brackets.
    let bracketed = |word: &str| head.contains(&format!("({word})")) || head.contains(&format!("[{word}]"));
    let named =
        |word: &&&str| (word.chars().count() > 1 || **word == "Ω" || bracketed(word)) || words.len() == 1;
    let units = || words.iter().rev().filter(named).filter_map(|word| Unit::named(word));
    let of_a_curve =
        |unit: &Unit| unit.measures(Dimension::Temperature) || unit.measures(Dimension::Resistance);
    // `min` is a minute elsewhere, and here the least resistance.
    units().find(of_a_curve).or_else(|| units().next())
}

fn words_of(head: &str) -> Vec<String> {
    let apart = |c: char| !c.is_alphanumeric();
    head.to_lowercase().split(apart).filter(|word| !word.is_empty()).map(str::to_owned).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_unit_stands_in_brackets_behind_a_stroke_or_last() {
        for (head, unit) in [
            ("Temp (°F)", Some(Unit::Fahrenheit)),
            ("R [kΩ]", Some(Unit::Kiloohm)),
            ("t/°C", Some(Unit::Celsius)),
            ("resistance, ohm", Some(Unit::Ohm)),
            ("t_degC", Some(Unit::Celsius)),
            ("kΩ min", Some(Unit::Kiloohm)),
            ("T (K)", Some(Unit::Kelvin)),
            ("R", None),
            ("remarks", None),
        ] {
            assert_eq!(unit_in(head), unit, "{head}");
        }
    }
}
