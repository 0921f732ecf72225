//! A row with a mistyped digit: one that does not lie on the curve of the others.

use crate::diag::{Finding, Findings};
use crate::physics::curve::outlier::Point;
use crate::physics::fit::suspect;
use crate::quantity::{Resistance, Rounding, Slip, decimals_for, figure, half_last_digit, slip};
use crate::spec::{Curve, Row, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (_, sensor, _) in super::sensors(set) {
        let curve = sensor.curve.as_ref().map(|curve| &curve.value);
        let Some(Curve::Table { rows, .. }) = curve else { continue };
        findings.report_all(outlier(rows));
    }
}

/// The finding about the row of a table that looks mistyped, if one does.
pub(crate) fn outlier(rows: &[Row]) -> Option<Finding> {
    let mut rows: Vec<&Row> = rows.iter().collect();
    rows.sort_by(|a, b| a.temperature.celsius().total_cmp(&b.temperature.celsius()));
    rows.dedup_by(|a, b| a.temperature == b.temperature);
    let points = rows.iter().map(|row| point(row)).collect::<Option<Vec<_>>>()?;
    let found = suspect(&points)?;
    let (row, expected) = (rows[found.index], found.expected.ohms());
    let off = 100.0 * (row.nominal.ohms() / expected - 1.0);
    let message = Message::new("rule-outlier")
        .with("row", row.written.join(", "))
        .with("percent", figure(off, 1, Rounding::Nearest));
    let label =
        Message::new("wanted-near").with("ohms", figure(expected, decimals_for(expected), Rounding::Nearest));
    let finding = Finding::warning(message, row.place.clone(), label);
    Some(finding.help(explanation(row, found.expected)))
}

/// The slip of the hand that explains the row, or where to look.
fn explanation(row: &Row, expected: Resistance) -> Message {
    let found = nominal(row).and_then(|written| {
        // The row's own unit: what one written unit is in ohms.
        let unit = row.nominal.ohms() / written.parse::<f64>().ok()?;
        slip(&written, expected.ohms() / unit)
    });
    let Some((slip, mended)) = found else { return Message::new("rule-outlier-help") };
    let id = match slip {
        Slip::Swapped => "rule-outlier-swapped",
        Slip::Digit => "rule-outlier-digit",
        Slip::Point => "rule-outlier-point",
        Slip::Prefix => "rule-outlier-prefix",
    };
    Message::new(id).with("number", mended)
}

fn point(row: &Row) -> Option<Point> {
    let rounding = half_last_digit(&nominal(row)?)?;
    Some(Point { at: row.temperature, of: row.nominal, rounding })
}

/// The nominal resistance as written, without separators.
fn nominal(row: &Row) -> Option<String> {
    let cell = row.written.get(if row.written.len() == 4 { 2 } else { 1 })?;
    Some(cell.replace('_', ""))
}
