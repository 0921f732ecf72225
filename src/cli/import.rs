//! `bayleaf import`: a table as a spreadsheet has it, as lines for a spec.

use std::io;
use std::path::Path;

use super::args::{Import, Mark};
use super::load::show;
use super::outcome::{Outcome, say};
use crate::diag::{Findings, Place};
use crate::document::import::{Named, lines};
use crate::quantity::{Unit, noted};
use crate::rules;
use crate::spec::import::{Decimal, Imported, Known, import};
use crate::spec::{self, At, Curve};
use crate::words::Words;

/// Runs the command.
pub(super) fn run(arguments: &Import, words: &Words) -> Outcome {
    let findings = Findings::default();
    let sources = spec::file(&arguments.file, &findings);
    let known = Known {
        temperature: arguments.temperature,
        resistance: arguments.resistance,
        decimal: arguments.decimal.map(|mark| match mark {
            Mark::Point => Decimal::Point,
            Mark::Comma => Decimal::Comma,
        }),
    };
    let imported = import(&sources, known, &findings);
    // What is told to people is in their notation; the lines of the spec are in that of specs.
    if let Some((imported, (file, _))) = imported.as_ref().zip(sources.texts().next()) {
        let curve = curve(imported, Place { file, span: 0..0 });
        noted(words.notation(), || rules::check_points(&curve, &findings));
    }
    let failed = findings.has_errors();
    show(&findings.sorted(), &sources, words);
    let Some(imported) = imported.filter(|_| !failed) else { return Outcome::Findings };
    let named = Named {
        id: arguments.id.clone().unwrap_or_else(|| id_of(&arguments.file)),
        title: arguments.title.clone(),
        system: arguments.system.clone(),
        source: arguments.source.clone(),
    };
    let file = arguments.file.file_name().unwrap_or_default().to_string_lossy();
    Outcome::of_output(words, told(&lines(words, &file, &imported, &named)))
}

fn told(lines: &[String]) -> io::Result<()> {
    lines.iter().try_for_each(say)
}

fn curve(imported: &Imported, place: Place) -> At<Curve> {
    let value = Curve::Table {
        rows: imported.rows.clone(),
        temperature_unit: imported.temperature,
        resistance_unit: imported.resistance,
        source: None,
    };
    At { value, place }
}

/// An id from the file's name: `Cabin air.csv` is `cabin-air`.
fn id_of(file: &Path) -> String {
    let stem = file.file_stem().unwrap_or_default().to_string_lossy().to_lowercase();
    let plain = stem.split(|c: char| !c.is_ascii_alphanumeric()).filter(|part| !part.is_empty());
    let id: String = plain.collect::<Vec<_>>().join("-").chars().take(spec::LONGEST_ID).collect();
    let id = id.trim_end_matches('-');
    if id.is_empty() { "imported".to_owned() } else { id.to_owned() }
}

/// A unit of temperatures, for the command line.
pub(super) fn temperature_unit(text: &str) -> Result<Unit, String> {
    unit(text, &[Unit::Celsius, Unit::Fahrenheit, Unit::Kelvin])
}

/// A unit of resistances, for the command line.
pub(super) fn resistance_unit(text: &str) -> Result<Unit, String> {
    unit(text, &[Unit::Ohm, Unit::Kiloohm])
}

fn unit(text: &str, wanted: &[Unit]) -> Result<Unit, String> {
    let names = wanted.iter().map(|unit| unit.symbol()).collect::<Vec<_>>().join(", ");
    Unit::named(text).filter(|unit| wanted.contains(unit)).ok_or_else(|| format!("expected one of {names}"))
}
