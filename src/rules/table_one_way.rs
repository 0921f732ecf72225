//! A table has two rows or more, goes one way only, and keeps min below max.

use crate::diag::{Finding, Findings, Place};
use crate::quantity::Resistance;
use crate::spec::{Curve, Row, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (_, sensor, _) in super::sensors(set) {
        let Some(curve) = &sensor.curve else { continue };
        if let Curve::Table { rows, .. } = &curve.value {
            check_rows(rows, &curve.place, findings);
        }
    }
}

/// The rows of one table, whose name stands at `place`.
pub(super) fn check_rows(rows: &[Row], place: &Place, findings: &Findings) {
    if rows.len() < 2 {
        let message = Message::new("rule-few-rows").with("count", rows.len());
        let label = Message::new("wanted-two-rows");
        findings.report(Finding::error(message, place.clone(), label));
    }
    for row in rows {
        check_limits(row, findings);
    }
    check_columns(rows, findings);
    let mut cold_first: Vec<&Row> = rows.iter().collect();
    cold_first.sort_by(|a, b| a.temperature.celsius().total_cmp(&b.temperature.celsius()));
    let falls = falls(&cold_first);
    for pair in cold_first.windows(2) {
        check_pair(pair[0], pair[1], falls, findings);
    }
}

/// The limits of one row are the right way round and hold the nominal value.
fn check_limits(row: &Row, findings: &Findings) {
    let Some((low, high)) = row.limits else { return };
    if low <= row.nominal && row.nominal <= high {
        return;
    }
    let message = Message::new("rule-limits-order").with("row", row.said());
    let label = Message::new("wanted-min-nominal-max");
    findings.report(Finding::error(message, row.place.clone(), label));
}

/// Either every row has limits or none has.
fn check_columns(rows: &[Row], findings: &Findings) {
    let first = rows.first();
    let odd = rows.iter().find(|row| Some(row.limits.is_some()) != first.map(|r| r.limits.is_some()));
    let (Some(first), Some(odd)) = (first, odd) else { return };
    let message = Message::new("rule-mixed-columns").with("row", odd.said());
    let label = Message::new("wanted-same-columns");
    let finding = Finding::error(message, odd.place.clone(), label);
    findings.report(finding.because(first.place.clone(), Message::new("label-first-row")));
}

/// Which way the table is meant to go: the way that most of its rows go, and where
/// as many go either way, as its ends do.
fn falls(cold_first: &[&Row]) -> bool {
    let fallen = cold_first.windows(2).filter(|pair| pair[0].nominal > pair[1].nominal).count();
    let risen = cold_first.windows(2).filter(|pair| pair[0].nominal < pair[1].nominal).count();
    let ends = cold_first.first().zip(cold_first.last());
    fallen > risen || fallen == risen && ends.is_none_or(|(cold, hot)| cold.nominal >= hot.nominal)
}

/// From a colder row to the next hotter one every column goes the table's way.
fn check_pair(colder: &Row, hotter: &Row, falls: bool, findings: &Findings) {
    if colder.temperature == hotter.temperature {
        let message = Message::new("rule-equal-temperatures").with("temperature", &hotter.written[0]);
        let label = Message::new("label-second");
        let finding = Finding::error(message, hotter.place.clone(), label);
        findings.report(finding.because(colder.place.clone(), Message::new("label-first")));
        return;
    }
    let columns = |row: &Row| {
        let limits = row.limits.into_iter().flat_map(|(low, high)| [low, high]);
        std::iter::once(row.nominal).chain(limits).collect::<Vec<Resistance>>()
    };
    let goes = |cold: &Resistance, hot: &Resistance| if falls { cold > hot } else { cold < hot };
    if columns(colder).iter().zip(&columns(hotter)).all(|(cold, hot)| goes(cold, hot)) {
        return;
    }
    let (id, wanted, help) = if falls {
        ("rule-not-falling", "wanted-falling", "rule-not-falling-help")
    } else {
        ("rule-not-rising", "wanted-rising", "rule-not-rising-help")
    };
    let message = Message::new(id).with("colder", colder.said()).with("hotter", hotter.said());
    let finding = Finding::error(message, hotter.place.clone(), Message::new(wanted));
    let finding = finding.because(colder.place.clone(), Message::new("label-colder-row"));
    findings.report(finding.help(Message::new(help)));
}
