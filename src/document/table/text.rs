//! A row of a table as text: limits that rounding would change over get more digits.

use super::{Cell, Column, Show};
use crate::document::figures::band;
use crate::physics::Band;
use crate::quantity::{Rounding, decimals_for};

/// A row's cells as a screen shows them.
///
/// Limits are rounded inward. Where a window is narrower than its last digit, the lower
/// limit would stand above the upper one; its figures then get more digits, as on paper.
pub(super) fn texts(columns: &[Column], row: &[Cell]) -> Vec<String> {
    let mut texts: Vec<String> = columns.iter().zip(row).map(|(column, cell)| column.text(cell)).collect();
    for (low, nominal, high) in windows(columns) {
        let number = |index: usize| match row.get(index) {
            Some(Cell::Number(number)) => Some(*number),
            _ => None,
        };
        let (Some(least), Some(greatest)) = (number(low), number(high)) else { continue };
        let middle = nominal.and_then(number);
        let decimals = |index: usize, number: f64| match columns[index].show {
            Show::Decimals(decimals, _) => decimals,
            Show::Digits(_) | Show::Unrounded | Show::Never => decimals_for(number),
        };
        let shown = [
            Some((least, decimals(low, least), Rounding::Up)),
            middle.map(|middle| (middle, decimals(nominal.unwrap_or(low), middle), Rounding::Nearest)),
            Some((greatest, decimals(high, greatest), Rounding::Down)),
        ];
        if is_in_order(shown.into_iter().flatten()) || least > greatest {
            continue;
        }
        let middle = middle.unwrap_or(0.5 * (least + greatest));
        let opened = band(Band { low: least, nominal: middle, high: greatest }, decimals(low, least));
        texts[low] = opened.low;
        texts[high] = opened.high;
        if let Some(nominal) = nominal {
            texts[nominal] = opened.nominal;
        }
    }
    texts
}

/// Columns that are the limits of one quantity, with its nominal value where that has one:
/// the name of the upper limit is that of the lower one with `max` for `min`.
fn windows(columns: &[Column]) -> impl Iterator<Item = (usize, Option<usize>, usize)> {
    let rounds = |index: usize, wanted: Rounding| {
        let show = columns.get(index).map(|column: &Column| column.show);
        matches!(show, Some(Show::Decimals(_, rounding) | Show::Digits(rounding)) if rounding == wanted)
    };
    (0..columns.len()).filter(move |low| rounds(*low, Rounding::Up)).filter_map(move |low| {
        let key = columns[low].key.replace("min", "max");
        let is_other_end = |high: &usize| {
            key != columns[low].key && rounds(*high, Rounding::Down) && columns[*high].key == key
        };
        let high = [low + 1, low + 2].into_iter().find(is_other_end)?;
        Some((low, (high == low + 2).then_some(low + 1), high))
    })
}

/// Whether numbers stay in their order when they are rounded.
fn is_in_order(numbers: impl Iterator<Item = (f64, usize, Rounding)>) -> bool {
    /// As `figure` takes a number for one on the grid.
    const HAIR: f64 = 1e-6;
    let rounded = numbers.map(|(number, decimals, rounding)| {
        let power = crate::quantity::ten_to(decimals);
        let units = match rounding {
            Rounding::Up => (number * power - HAIR).ceil(),
            Rounding::Down => (number * power + HAIR).floor(),
            Rounding::Nearest => (number * power).round(),
        };
        units / power
    });
    rounded.collect::<Vec<_>>().is_sorted()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn table(low: f64, nominal: f64, high: f64) -> Vec<String> {
        let column = |key, decimals, rounding| Column::new(key, "", Show::Decimals(decimals, rounding));
        let columns = [
            column("x_min_v", 3, Rounding::Up),
            column("x_nom_v", 3, Rounding::Nearest),
            column("x_max_v", 3, Rounding::Down),
        ];
        texts(&columns, &[low, nominal, high].map(Cell::from))
    }

    #[test]
    fn limits_stay_in_their_order() {
        assert_eq!(table(1.3206, 1.3536, 1.3868), ["1.321", "1.354", "1.386"]);
        assert_eq!(table(0.00112, 0.00115, 0.00118), ["0.00112", "0.00115", "0.00118"]);
    }

    #[test]
    fn an_exact_value_is_its_own_limits() {
        let third = 1.0 / 3.0;
        assert_eq!(table(third, third, third), ["0.333", "0.333", "0.333"]);
    }
}
