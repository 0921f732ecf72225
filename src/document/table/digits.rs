//! How many digits a column shows: its windows decide.
//!
//! A limit is rounded inward. Where the last digit is as wide as the window, that
//! fails good parts; so a band's three columns have as many digits as their
//! narrowest window needs, and all rows of a column the same.

use super::{Cell, Column, Show, Table};
use crate::document::figures::column_decimals;
use crate::quantity::{Rounding, figure, ten_to};

/// How many digits more than usual a band may get.
const EXTRA_DECIMALS: usize = 4;

/// A window is at least this many last digits wide, so that rounding both limits inward takes no
/// more than a fifth of it.
const DIGITS_ACROSS: f64 = 10.0;

/// A last digit that is off by less is the computer's doing, not the figure's.
const HAIR: f64 = 1e-6;

impl Table {
    /// The rows as a screen shows them.
    #[must_use]
    pub fn texts(&self) -> Vec<Vec<String>> {
        let mut columns = self.columns.clone();
        let bands = bands(&self.columns);
        for &first in &bands {
            let decimals = decimals(self, first);
            for column in &mut columns[first..first + 3] {
                column.show = Show::Decimals(decimals, rounding(column));
            }
        }
        let texts = |row: &Vec<Cell>| {
            let mut texts = super::text::texts(&columns, row);
            for &first in &bands {
                let Show::Decimals(decimals, _) = columns[first].show else { continue };
                // A window that no digits open, such as one of no tolerance, is the nominal value itself.
                if let Some(nominal) = closed(row, first, decimals) {
                    texts[first..first + 3].fill(nominal);
                }
            }
            texts
        };
        self.rows.iter().map(texts).collect()
    }
}

fn rounding(column: &Column) -> Rounding {
    match column.show {
        Show::Decimals(_, rounding) | Show::Digits(rounding) => rounding,
        Show::Unrounded | Show::Never => Rounding::Nearest,
    }
}

/// The first columns of the bands.
fn bands(columns: &[Column]) -> Vec<usize> {
    let in_bands: Vec<usize> = (0..columns.len()).filter(|&index| columns[index].of_band).collect();
    in_bands.chunks_exact(3).map(|band| band[0]).collect()
}

/// Least, nominal and greatest, where all three are known.
fn window(row: &[Cell], first: usize) -> Option<[f64; 3]> {
    match &row[first..first + 3] {
        [Cell::Number(low), Cell::Number(nominal), Cell::Number(high)] => Some([*low, *nominal, *high]),
        _ => None,
    }
}

/// How many decimals the three columns of a band have.
fn decimals(table: &Table, first: usize) -> usize {
    let numbers = table.rows.iter().flat_map(|row| &row[first..first + 3]);
    let smallest = numbers.filter_map(|cell| match cell {
        Cell::Number(number) => Some(number.abs()),
        _ => None,
    });
    let usual = match table.columns[first].show {
        Show::Decimals(decimals, _) => decimals,
        Show::Unrounded | Show::Never => 0,
        Show::Digits(_) => column_decimals(smallest.fold(f64::INFINITY, f64::min)),
    };
    let windows: Vec<[f64; 3]> = table.rows.iter().filter_map(|row| window(row, first)).collect();
    let wide = |decimals: usize| {
        windows.iter().all(|window| {
            let [low, _, high] = *window;
            let one_value = high - low <= HAIR * low.abs();
            one_value || ((high - low) * ten_to(decimals) >= DIGITS_ACROSS && open(window, decimals))
        })
    };
    let most = usual + EXTRA_DECIMALS;
    (usual..=most).find(|&decimals| wide(decimals)).unwrap_or(most)
}

/// Whether the limits, rounded inward, still have the nominal value between them.
fn open([low, nominal, high]: &[f64; 3], decimals: usize) -> bool {
    let power = ten_to(decimals);
    let (low, high) = ((low * power - HAIR).ceil(), (high * power + HAIR).floor());
    let nominal = (nominal * power).round();
    low <= nominal && nominal <= high
}

/// The nominal value of a window that rounding closes.
fn closed(row: &[Cell], first: usize, decimals: usize) -> Option<String> {
    let window = window(row, first)?;
    (!open(&window, decimals)).then(|| figure(window[1], decimals, Rounding::Nearest))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::Words;

    fn texts(form: fn(Rounding) -> Show, windows: &[[f64; 3]]) -> Vec<String> {
        let columns = Column::band(&Words::english(), ["min", "nom", "max"], "Ω", form);
        let table = Table {
            title: String::new(),
            notes: Vec::new(),
            columns: columns.into(),
            rows: windows.iter().map(|window| window.map(Cell::Number).into()).collect(),
            formulas: Vec::new(),
            inputs: Vec::new(),
        };
        table.texts().iter().map(|row| row.join(" · ")).collect()
    }

    #[test]
    fn a_narrow_window_has_the_digits_that_it_needs() {
        // 1000 Ω of class B at 15 °C: 1058.49 Ω ± 0.375 K × 3.89 Ω/K, by hand.
        assert_eq!(
            texts(Show::Digits, &[[1057.03, 1058.49, 1059.95]]),
            ["1\u{202f}057.1 · 1\u{202f}058.5 · 1\u{202f}059.9"]
        );
        // A wide one keeps its own.
        assert_eq!(texts(Show::Digits, &[[950.4, 1000.0, 1049.6]]), ["951 · 1\u{202f}000 · 1\u{202f}049"]);
    }

    #[test]
    fn a_column_has_one_number_of_digits() {
        let found = texts(Show::Digits, &[[950.4, 1000.0, 1049.6], [94.0, 100.0, 106.0]]);
        assert_eq!(found, ["950.4 · 1\u{202f}000.0 · 1\u{202f}049.6", "94.0 · 100.0 · 106.0"]);
    }

    #[test]
    fn rounding_never_puts_the_least_above_the_greatest() {
        let form = |rounding| Show::Decimals(3, rounding);
        assert_eq!(texts(form, &[[0.0015, 0.0016, 0.0017]]), ["0.00150 · 0.00160 · 0.00170"]);
        let third = 1.0 / 3.0;
        assert_eq!(texts(form, &[[third, third, third]]), ["0.333 · 0.333 · 0.333"]);
    }
}
