//! A file of points alone, as a manual prints them: TOML, or columns of text.

use super::curve::{Curve, Row, read_table};
use super::reader::{File, Reader, misread};
use super::syntax;
use super::value::At;
use crate::diag::{Finding, Findings, Place, Sources};
use crate::quantity::{Dimension, Quantity as _, Resistance, Temperature, Unit, number};
use crate::quantity::{Misread, Reason};
use crate::words::Message;

/// Reads the points of the one file in `sources`; `None` where findings say why.
///
/// A file whose name ends in `.toml` has the keys of a table curve. Anything else
/// is columns of text, separated by commas, semicolons or tabs, below a line that
/// names their units; lines that begin with `#` are comments.
#[must_use]
pub fn points(sources: &Sources, findings: &Findings) -> Option<At<Curve>> {
    let (id, text) = sources.texts().next()?;
    let mut file = File::new(id, text, findings);
    let curve = if sources.path(id).to_ascii_lowercase().ends_with(".toml") {
        toml(&mut file)
    } else {
        Columns::read(file)
    };
    curve.map(|value| At { value, place: Place { file: id, span: 0..0 } })
}

fn toml(file: &mut File<'_>) -> Option<Curve> {
    let root = syntax::parse(file);
    let place = Place { file: file.id, span: 0..0 };
    let reader = Reader::new(*file, root.get_ref(), "points".to_owned(), place, None);
    // The key of a sensor's curve may stay where a curve was copied.
    reader.choice("model", &[("table", ())]);
    let curve = read_table(&reader);
    reader.finish();
    curve
}

/// Which column is what, and in which unit.
struct Columns<'a> {
    file: File<'a>,
    separator: char,
    temperature: (usize, Unit),
    /// One column, or min, nominal and max.
    resistance: (Vec<usize>, Unit),
    count: usize,
}

/// A stretch of a line.
#[derive(Clone)]
struct Cell<'a> {
    text: &'a str,
    start: usize,
}

impl<'a> Columns<'a> {
    fn read(file: File<'a>) -> Option<Curve> {
        let mut lines = lines(file.text);
        let Some(head) = lines.next() else {
            let place = Place { file: file.id, span: 0..0 };
            let finding = Finding::error(Message::new("fit-empty"), place, Message::new("wanted-columns"));
            file.findings.report(finding.help(Message::new("fit-columns-help")));
            return None;
        };
        let columns = Self::of_head(file, head)?;
        // Every bad row is reported before the file as a whole is given up.
        let rows: Vec<Option<Row>> = lines.map(|line| columns.row(&line)).collect();
        let rows = rows.into_iter().collect::<Option<Vec<Row>>>()?;
        let (temperature_unit, resistance_unit) = (columns.temperature.1, columns.resistance.1);
        Some(Curve::Table { rows, temperature_unit, resistance_unit, source: None })
    }

    /// Reads the line that names the units.
    fn of_head(file: File<'a>, head: Cell<'a>) -> Option<Self> {
        let separator = [';', '\t', ','].into_iter().find(|mark| head.text.contains(*mark)).unwrap_or(',');
        let cells = cells(&head, separator);
        let units: Vec<Option<Unit>> = cells.iter().map(|cell| unit_in(cell.text)).collect();
        let measuring = |dimension: Dimension| {
            let of = |unit: &Option<Unit>| unit.is_some_and(|unit| unit.measures(dimension));
            (0..units.len()).filter(|&index| of(&units[index])).collect::<Vec<usize>>()
        };
        let temperatures = measuring(Dimension::Temperature);
        let resistances = measuring(Dimension::Resistance);
        let unit_at = |index: usize| units.get(index).copied().flatten();
        let same = resistances.iter().all(|&index| unit_at(index) == unit_at(resistances[0]));
        let known = temperatures.len() == 1 && matches!(resistances.len(), 1 | 3) && same;
        let unit = resistances.first().and_then(|&index| unit_at(index));
        let usual = unit.filter(|unit| matches!(unit, Unit::Ohm | Unit::Kiloohm));
        let (true, Some(unit), Some(at)) =
            (known && cells.len() == 1 + resistances.len(), usual, temperatures.first())
        else {
            let place = Place { file: file.id, span: head.start..head.start + head.text.len() };
            let message = Message::new("fit-head").with("head", head.text);
            let finding = Finding::error(message, place, Message::new("wanted-columns"));
            file.findings.report(finding.help(Message::new("fit-columns-help")));
            return None;
        };
        let temperature = (*at, unit_at(*at)?);
        Some(Self { file, separator, temperature, count: cells.len(), resistance: (resistances, unit) })
    }

    fn row(&self, line: &Cell<'a>) -> Option<Row> {
        let cells = cells(line, self.separator);
        let place = Place { file: self.file.id, span: line.start..line.start + line.text.len() };
        if cells.len() != self.count {
            let message =
                Message::new("fit-cells").with_count("found", cells.len()).with("wanted", self.count);
            let finding = Finding::error(message, place, Message::new("wanted-as-many-cells"));
            self.file.findings.report(finding.help(Message::new("fit-cells-help")));
            return None;
        }
        let numbers: Vec<Option<f64>> = cells.iter().map(|cell| self.number(cell)).collect();
        let numbers = numbers.into_iter().collect::<Option<Vec<f64>>>()?;
        let ohms = |column: usize| Resistance::from_written(numbers[column], self.resistance.1, false);
        let (nominal, limits) = match self.resistance.0[..] {
            [low, nominal, high] => (ohms(nominal)?, Some((ohms(low)?, ohms(high)?))),
            _ => (ohms(*self.resistance.0.first()?)?, None),
        };
        let temperature = Temperature::from_written(numbers[self.temperature.0], self.temperature.1, false)?;
        let order = std::iter::once(&self.temperature.0).chain(&self.resistance.0);
        let written = order.map(|&column| cells[column].text.replace('−', "-")).collect();
        Some(Row { temperature, nominal, limits, written, place })
    }

    fn number(&self, cell: &Cell<'a>) -> Option<f64> {
        let comma = cell.text.contains(',');
        let read = if comma {
            let suggestion = cell.text.replacen(',', ".", 1);
            Err(Misread { at: 0..cell.text.len(), reason: Reason::DecimalComma { suggestion } })
        } else {
            number(cell.text)
        };
        match read {
            Ok(number) => Some(number),
            Err(misread) => {
                let key = if comma { "points" } else { "row" };
                let place = Place { file: self.file.id, span: cell.start..cell.start + cell.text.len() };
                self.file.findings.report(misread::finding(key, cell.text, &misread, place));
                None
            }
        }
    }
}

/// The lines that say something, without the space around them.
fn lines(text: &str) -> impl Iterator<Item = Cell<'_>> {
    let mut start = 0;
    text.split_inclusive('\n')
        .map(move |line| {
            let cell = trimmed(line, start);
            start += line.len();
            cell
        })
        .filter(|line| !line.text.is_empty() && !line.text.starts_with('#'))
}

/// The cells of a line, without space and quotes around them.
fn cells<'a>(line: &Cell<'a>, separator: char) -> Vec<Cell<'a>> {
    let mut start = line.start;
    let cell = |part: &'a str| {
        let cell = trimmed(part, start);
        start += part.len() + separator.len_utf8();
        match cell.text.strip_prefix('"').and_then(|rest| rest.strip_suffix('"')) {
            Some(inner) => trimmed(inner, cell.start + 1),
            None => cell,
        }
    };
    line.text.split(separator).map(cell).collect()
}

fn trimmed(text: &str, start: usize) -> Cell<'_> {
    let front = text.len() - text.trim_start().len();
    Cell { text: text.trim(), start: start + front }
}

/// The unit that a head names: alone, or behind a name, in brackets or after a stroke.
fn unit_in(head: &str) -> Option<Unit> {
    let apart = |c: char| c.is_whitespace() || matches!(c, '(' | ')' | '[' | ']' | '/');
    head.split(apart).rfind(|word| !word.is_empty()).and_then(Unit::named)
}
