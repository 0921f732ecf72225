//! A row with a mistyped digit: one that does not lie on the curve of the others.

use crate::diag::{Finding, Findings};
use crate::physics::curve::outlier::Point;
use crate::physics::fit::suspect;
use crate::quantity::{Resistance, Rounding, Slip, decimals_for, figure, half_last_digit, reprinted, slip};
use crate::spec::{Curve, Row, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (_, sensor, _) in super::sensors(set) {
        let curve = sensor.curve.as_ref().map(|curve| &curve.value);
        let Some(Curve::Table { rows, .. }) = curve else { continue };
        check_rows(rows, findings);
    }
}

/// The rows of one table.
pub(super) fn check_rows(rows: &[Row], findings: &Findings) {
    let Some(found) = suspect_row(rows) else { return };
    let (row, expected) = (&rows[found.index], found.expected.ohms());
    let message = Message::new("rule-outlier")
        .with("row", row.said())
        .with("percent", figure(100.0 * found.off(row), 1, Rounding::Nearest));
    let label =
        Message::new("wanted-near").with("ohms", figure(expected, decimals_for(expected), Rounding::Nearest));
    let finding = Finding::warning(message, row.place.clone(), label);
    findings.report(finding.help(found.explanation()));
}

/// A row that looks mistyped.
#[derive(Debug, Clone, PartialEq)]
pub struct Suspect {
    /// Which of the rows.
    pub index: usize,
    /// The resistance that the others lead to.
    pub expected: Resistance,
    /// The slip of the hand that explains it, and the mended number in the row's unit.
    pub slip: Option<(Slip, String)>,
}

impl Suspect {
    /// How far the row lies from what is expected, as a part of that.
    #[must_use]
    pub fn off(&self, row: &Row) -> f64 {
        row.nominal.ohms() / self.expected.ohms() - 1.0
    }

    /// What would fit, or where to look.
    #[must_use]
    pub fn explanation(&self) -> Message {
        let Some((slip, mended)) = &self.slip else { return Message::new("rule-outlier-help") };
        let id = match slip {
            Slip::Swapped => "rule-outlier-swapped",
            Slip::Digit => "rule-outlier-digit",
            Slip::Point => "rule-outlier-point",
            Slip::Prefix => "rule-outlier-prefix",
        };
        Message::new(id).with("number", reprinted(mended))
    }
}

/// The row of a table that looks mistyped, if one does.
#[must_use]
pub fn suspect_row(rows: &[Row]) -> Option<Suspect> {
    // Of two rows at one temperature another rule speaks.
    let mut distinct: Vec<(usize, &Row)> = rows.iter().enumerate().collect();
    distinct.sort_by(|a, b| a.1.temperature.celsius().total_cmp(&b.1.temperature.celsius()));
    distinct.dedup_by(|a, b| a.1.temperature == b.1.temperature);
    let points = distinct.iter().map(|(_, row)| point(row)).collect::<Option<Vec<_>>>()?;
    let found = suspect(&points)?;
    let (index, row) = distinct[found.index];
    Some(Suspect { index, expected: found.expected, slip: slip_of(row, found.expected) })
}

fn slip_of(row: &Row, expected: Resistance) -> Option<(Slip, String)> {
    let written = nominal(row)?;
    // The row's own unit: what one written unit is in ohms.
    let unit = row.nominal.ohms() / written.parse::<f64>().ok()?;
    slip(&written, expected.ohms() / unit)
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
