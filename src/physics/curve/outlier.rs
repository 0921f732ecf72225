//! The row of a table that does not belong to its neighbours.
//!
//! Each row is predicted from its neighbours by the cubic through two of them
//! on either side, in ln R against 1/T, the axes in which a thermistor is nearly
//! a straight line. One wrong row spoils its neighbours' predictions too; the
//! culprit is the row whose removal makes all the others agree.

use crate::quantity::{Ratio, Resistance, Temperature};

/// Predictions between clean published rows 5 K to 20 K apart miss by 0.2 %
/// at most, towards the ends by 1 % (tests/reference/01a_ntc_rt_published.csv,
/// every table). Anything above is not the sensor.
const ALLOWED_INSIDE: f64 = 0.01;
const ALLOWED_AT_ENDS: f64 = 0.04;

/// A cubic through neighbours, and one row to doubt.
const FEWEST_ROWS: usize = 5;

/// One row of a table.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// The temperature.
    pub at: Temperature,
    /// The resistance.
    pub of: Resistance,
    /// Half the last printed digit, as a part of the resistance.
    pub rounding: Ratio,
}

/// A row that cannot be right.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outlier {
    /// Which of the points, in the order they were given.
    pub index: usize,
    /// The resistance that its neighbours lead to.
    pub expected: Resistance,
}

/// The one row whose removal makes all the others agree, if there is one.
///
/// `None` when every row agrees, when no single row explains it, with fewer than
/// five rows, with two rows of one temperature, or with a value that no sensor
/// has. Works for falling and for rising tables, with points in any order.
///
/// # Range
/// Allowed are 1 % inside a table and 4 % in its last two rows at either end,
/// and twice the last printed digit.
///
/// # Source
/// The limits from the published tables of tests/reference/01a and 02d.
#[must_use]
pub fn outlier(points: &[Point]) -> Option<Outlier> {
    let mut order: Vec<usize> = (0..points.len()).collect();
    order.sort_by(|&a, &b| points[a].at.celsius().total_cmp(&points[b].at.celsius()));
    let rows = order.iter().map(|&index| Row::of(&points[index])).collect::<Option<Vec<_>>>()?;
    if rows.windows(2).any(|pair| pair[0].x <= pair[1].x) {
        return None;
    }
    let position = culprit(&rows)?;
    let expected = Resistance::from_ohms(libm::exp(predict(&rows, position)));
    expected.ohms().is_finite().then_some(Outlier { index: order[position], expected })
}

struct Row {
    /// 1/T, 1/K.
    x: f64,
    /// ln R.
    y: f64,
    /// Half the last written digit as a part of R.
    rounding: f64,
}

impl Row {
    fn of(point: &Point) -> Option<Self> {
        let (kelvins, ohms) = (point.at.kelvins(), point.of.ohms());
        let real = kelvins > 0.0 && kelvins.is_finite() && ohms > 0.0 && ohms.is_finite();
        real.then(|| Self { x: 1.0 / kelvins, y: libm::log(ohms), rounding: point.rounding.part() })
    }
}

/// The row that cannot be right, where there is exactly one such row.
fn culprit(rows: &[Row]) -> Option<usize> {
    if rows.len() < FEWEST_ROWS || worst(rows, None) <= 1.0 {
        return None;
    }
    let without = (0..rows.len()).map(|index| (index, worst(rows, Some(index))));
    let (culprit, rest) = without.min_by(|a, b| a.1.total_cmp(&b.1))?;
    (rest <= 1.0).then_some(culprit)
}

/// The largest miss of any row, in parts of what is allowed there, with one row left out.
fn worst(rows: &[Row], left_out: Option<usize>) -> f64 {
    let kept: Vec<usize> = (0..rows.len()).filter(|index| Some(*index) != left_out).collect();
    let miss = |position: usize| {
        let index = kept[position];
        let neighbours = neighbours(&kept, position);
        let predicted = interpolate(rows, &neighbours, rows[index].x);
        let ends = position < 2 || position + 2 >= kept.len();
        let allowed = if ends { ALLOWED_AT_ENDS } else { ALLOWED_INSIDE };
        // Rounding of the row and of its neighbours both enter the miss.
        let rounding = neighbours.iter().map(|&n| rows[n].rounding).fold(rows[index].rounding, f64::max);
        (predicted - rows[index].y).abs() / (allowed + 4.0 * rounding)
    };
    (0..kept.len()).map(miss).fold(0.0, f64::max)
}

fn predict(rows: &[Row], index: usize) -> f64 {
    let all: Vec<usize> = (0..rows.len()).collect();
    interpolate(rows, &neighbours(&all, index), rows[index].x)
}

/// Two rows on either side, or the nearest three towards an end.
fn neighbours(kept: &[usize], position: usize) -> Vec<usize> {
    let start = position.saturating_sub(2);
    let end = (position + 3).min(kept.len());
    (start..end).filter(|&other| other != position).map(|other| kept[other]).collect()
}

/// The polynomial through the given rows (Lagrange), at x.
fn interpolate(rows: &[Row], through: &[usize], x: f64) -> f64 {
    let term = |&i: &usize| {
        let factor = |&j: &usize| (x - rows[j].x) / (rows[i].x - rows[j].x);
        rows[i].y * through.iter().filter(|&&j| j != i).map(factor).product::<f64>()
    };
    through.iter().map(term).sum()
}
