//! A row with a mistyped digit: an outlier in ln R against 1/T.
//!
//! Each row is predicted from its neighbours by the cubic through two of them
//! on either side, in the axes in which a thermistor is nearly a straight line.
//! One wrong row spoils its neighbours' predictions too; the culprit is the row
//! whose removal makes all the others agree.

use crate::diag::{Finding, Findings};
use crate::quantity::{Rounding, decimals_for, figure};
use crate::spec::{Curve, Row, Set};
use crate::words::Message;

/// Predictions between clean published rows 5 K to 20 K apart miss by 0.2 %
/// at most, towards the ends by 1 % (tests/reference/01a_ntc_rt_published.csv,
/// every table). Anything above is not the thermistor.
const ALLOWED_INSIDE: f64 = 0.01;
const ALLOWED_AT_ENDS: f64 = 0.04;

/// A cubic through neighbours, and one row to doubt.
const FEWEST_ROWS: usize = 5;

struct Point {
    /// 1/T, 1/K.
    x: f64,
    /// ln R.
    y: f64,
    /// Half the last written digit as a part of R.
    rounding: f64,
}

pub(super) fn check(set: &Set, findings: &Findings) {
    for (_, sensor, _) in super::sensors(set) {
        let curve = sensor.curve.as_ref().map(|curve| &curve.value);
        let Some(Curve::Table { rows, .. }) = curve else { continue };
        let mut rows: Vec<&Row> = rows.iter().collect();
        rows.sort_by(|a, b| a.temperature.celsius().total_cmp(&b.temperature.celsius()));
        rows.dedup_by(|a, b| a.temperature == b.temperature);
        let Some(points) = rows.iter().map(|row| point(row)).collect::<Option<Vec<_>>>() else {
            continue;
        };
        let Some(index) = outlier(&points) else { continue };
        let row = rows[index];
        let predicted = libm::exp(predict(&points, index));
        let unit = row.nominal.ohms() / libm::exp(points[index].y);
        let ohms = figure(predicted * unit, decimals_for(predicted), Rounding::Nearest);
        let message = Message::new("rule-outlier")
            .with("row", row.written.join(", "))
            .with("percent", figure(100.0 * (row.nominal.ohms() / predicted - 1.0), 1, Rounding::Nearest));
        let label = Message::new("wanted-near").with("ohms", ohms);
        let finding = Finding::warning(message, row.place.clone(), label);
        findings.report(finding.help(Message::new("rule-outlier-help")));
    }
}

fn point(row: &Row) -> Option<Point> {
    let (kelvins, ohms) = (row.temperature.kelvins(), row.nominal.ohms());
    let nominal = match row.written.len() {
        4 => row.written.get(2)?,
        _ => row.written.get(1)?,
    };
    let decimals = nominal.split_once('.').map_or(0, |(_, fraction)| fraction.len());
    let shown: f64 = nominal.replace('_', "").parse().ok()?;
    let half_digit = 0.5 * libm::pow(10.0, -f64::from(u32::try_from(decimals).ok()?));
    (kelvins > 0.0 && ohms > 0.0 && shown > 0.0).then(|| Point {
        x: 1.0 / kelvins,
        y: libm::log(ohms),
        rounding: half_digit / shown,
    })
}

/// The row that cannot be right, where there is exactly one such row.
fn outlier(points: &[Point]) -> Option<usize> {
    if points.len() < FEWEST_ROWS || worst(points, None) <= 1.0 {
        return None;
    }
    let without = (0..points.len()).map(|index| (index, worst(points, Some(index))));
    let (culprit, rest) = without.min_by(|a, b| a.1.total_cmp(&b.1))?;
    (rest <= 1.0).then_some(culprit)
}

/// The largest miss of any row, in parts of what is allowed there, with one row left out.
fn worst(points: &[Point], left_out: Option<usize>) -> f64 {
    let kept: Vec<usize> = (0..points.len()).filter(|index| Some(*index) != left_out).collect();
    let miss = |position: usize| {
        let index = kept[position];
        let neighbours = neighbours(&kept, position);
        let predicted = interpolate(points, &neighbours, points[index].x);
        let ends = position < 2 || position + 2 >= kept.len();
        let allowed = if ends { ALLOWED_AT_ENDS } else { ALLOWED_INSIDE };
        // Rounding of the row and of its neighbours both enter the miss.
        let rounding = neighbours.iter().map(|&n| points[n].rounding).fold(points[index].rounding, f64::max);
        (predicted - points[index].y).abs() / (allowed + 4.0 * rounding)
    };
    (0..kept.len()).map(miss).fold(0.0, f64::max)
}

fn predict(points: &[Point], index: usize) -> f64 {
    let all: Vec<usize> = (0..points.len()).collect();
    interpolate(points, &neighbours(&all, index), points[index].x)
}

/// Two rows on either side, or the nearest three towards an end.
fn neighbours(kept: &[usize], position: usize) -> Vec<usize> {
    let start = position.saturating_sub(2);
    let end = (position + 3).min(kept.len());
    (start..end).filter(|&other| other != position).map(|other| kept[other]).collect()
}

/// The polynomial through the given rows (Lagrange), at x.
fn interpolate(points: &[Point], through: &[usize], x: f64) -> f64 {
    let term = |&i: &usize| {
        let factor = |&j: &usize| (x - points[j].x) / (points[i].x - points[j].x);
        points[i].y * through.iter().filter(|&&j| j != i).map(factor).product::<f64>()
    };
    through.iter().map(term).sum()
}
