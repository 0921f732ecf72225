//! `bayleaf fit`: formulas through the points of a table.

use std::io;
use std::path::Path;

use super::args::{Fit, Format};
use super::load::show;
use super::outcome::{Outcome, say};
use super::table::{csv, for_people, text};
use crate::diag::{Finding, Findings, Sources};
use crate::document::fit::{Fitted, compose, rises};
use crate::quantity::Unit;
use crate::rules;
use crate::spec::{self, Curve, Row};
use crate::words::{Message, Words};

/// Runs the command.
pub(super) fn run(arguments: &Fit, words: &Words) -> Outcome {
    let findings = Findings::default();
    let (sources, points) = read(&arguments.file, &findings);
    let failed = findings.has_errors();
    show(&findings.sorted(), &sources, words);
    let Some((rows, unit)) = points.filter(|_| !failed) else { return Outcome::Findings };
    for_people(arguments.format, words, || {
        let fitted = compose(words, &rows, unit);
        let told = match arguments.format {
            Format::Text => as_text(words, &fitted, &rows),
            Format::Csv => csv(&fitted.table(words, &rows)),
            Format::Json => as_json(&fitted),
        };
        Outcome::of_output(words, told)
    })
}

/// The rows of a file and the unit of their temperatures; findings where there are none.
fn read(path: &Path, findings: &Findings) -> (Sources, Option<(Vec<Row>, Unit)>) {
    let sources = spec::file(path, findings);
    let Some(curve) = spec::points(&sources, findings) else { return (sources, None) };
    rules::check_points(&curve, findings);
    let Curve::Table { rows, temperature_unit, .. } = curve.value else { return (sources, None) };
    if !findings.has_errors()
        && let Some((message, first)) = rises(&rows).zip(rows.first())
    {
        let finding = Finding::error(message, first.place.clone(), Message::new("wanted-falling-points"));
        findings.report(finding.help(Message::new("fit-rises-help")));
    }
    (sources, Some((rows, temperature_unit)))
}

fn as_text(words: &Words, fitted: &Fitted, rows: &[Row]) -> io::Result<()> {
    for line in fitted.lines(words) {
        say(line)?;
    }
    say("")?;
    text(words, &fitted.table(words, rows))
}

fn as_json(fitted: &Fitted) -> io::Result<()> {
    say(serde_json::to_string_pretty(fitted)?)
}
