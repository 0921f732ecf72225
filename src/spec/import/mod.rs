//! A table of points as a spreadsheet exports it, of any country, as rows of a curve.
//!
//! Which column is what, what parts cells, and what parts decimals are guessed from
//! heads and numbers, and handed back so that they can be shown. What cannot be decided
//! is a finding that says how to tell, never a guess.

mod cells;
mod columns;
mod number;

use crate::diag::{FileId, Finding, Findings, Place, Sources};
use crate::quantity::{Quantity as _, Resistance, Temperature, Unit};
use crate::words::Message;
use cells::{Cell, Line};
pub use columns::{Column, Use};
pub use number::Decimal;
use number::{Style, plain, split, style};

use super::curve::Row;

/// What the caller knows and the file may not say.
#[derive(Debug, Clone, Copy, Default)]
pub struct Known {
    /// The unit of temperatures that have none.
    pub temperature: Option<Unit>,
    /// The unit of resistances that have none.
    pub resistance: Option<Unit>,
    /// The decimal mark.
    pub decimal: Option<Decimal>,
}

/// A table that was read, and how it was understood.
#[derive(Debug)]
pub struct Imported {
    /// The rows in the order of the file, cells as a spec writes them.
    pub rows: Vec<Row>,
    /// The unit of the temperatures.
    pub temperature: Unit,
    /// The unit of the resistances.
    pub resistance: Unit,
    /// Every column.
    pub columns: Vec<Column>,
    /// What parts the cells.
    pub separator: char,
    /// What parts the decimals.
    pub decimal: Decimal,
    /// Lines above the heads, such as the title of the page.
    pub titles: Vec<String>,
    /// How many lines below the head hold no point and were left out, each with a warning.
    pub skipped: usize,
}

/// Reads the one file in `sources`; `None` where findings say why not.
#[must_use]
pub fn import(sources: &Sources, known: Known, findings: &Findings) -> Option<Imported> {
    let (file, text) = sources.texts().next()?;
    let whole = || Place { file, span: 0..0 };
    let Some(separator) = cells::separator(text) else {
        let finding = Finding::error(Message::new("import-no-cells"), whole(), Message::new("wanted-cells"));
        findings.report(finding.help(Message::new("import-cells-help")));
        return None;
    };
    let lines = cells::lines(file, text, separator);
    let is_row = |line: &Line| line.filled().filter(|cell| split(&cell.text).is_some()).count() >= 2;
    let first = lines.iter().position(is_row).unwrap_or(lines.len());
    let (above, rows) = lines.split_at(first);
    let (titles, heads): (Vec<&Line>, Vec<&Line>) = above.iter().partition(|line| line.filled().count() < 2);
    let heads: Vec<Line> = heads.into_iter().cloned().collect();
    if rows.is_empty() {
        let place = lines.last().map_or_else(whole, |line| line.place.clone());
        let finding = Finding::error(Message::new("import-no-rows"), place, Message::new("wanted-cells"));
        findings.report(finding.help(Message::new("import-rows-help")));
        return None;
    }
    let import = Import { file, findings, known };
    let columns = columns::columns(&heads, rows, (known.temperature, known.resistance));
    import.complete(&columns, heads.last().or(rows.first()))?;
    let decimal = import.decimal(&columns, rows)?;
    let unit_of =
        |used: Use| columns.iter().find(|column| column.used == used).and_then(|column| column.unit);
    let (temperature, resistance) = (unit_of(Use::Temperature)?, unit_of(Use::Nominal)?);
    let read: Vec<Read> = rows.iter().map(|line| import.row(line, &columns, decimal)).collect();
    if read.iter().any(|read| matches!(read, Read::Wrong)) {
        return None;
    }
    let skipped = read.iter().filter(|read| matches!(read, Read::Skipped)).count();
    let rows: Vec<Row> = read
        .into_iter()
        .filter_map(|read| if let Read::Row(row) = read { Some(row) } else { None })
        .collect();
    let titles = titles.iter().flat_map(|line| line.filled()).map(|cell| cell.text.clone()).collect();
    Some(Imported { rows, temperature, resistance, columns, separator, decimal, titles, skipped })
}

struct Import<'a> {
    file: FileId,
    findings: &'a Findings,
    known: Known,
}

/// What became of a line.
enum Read {
    Row(Row),
    Skipped,
    Wrong,
}

impl Import<'_> {
    fn error(&self, message: Message, place: Place, label: &'static str, help: &'static str) {
        let finding = Finding::error(message, place, Message::new(label));
        self.findings.report(finding.help(Message::new(help)));
    }

    /// Whether the columns make a curve: a temperature, and a resistance or three.
    fn complete(&self, columns: &[Column], head: Option<&Line>) -> Option<()> {
        let place = head.map_or(Place { file: self.file, span: 0..0 }, |line| line.place.clone());
        let count = |used: Use| columns.iter().filter(|column| column.used == used).count();
        if count(Use::Temperature) == 0 {
            let message = Message::new("import-no-temperature");
            self.error(message, place, "wanted-temperature-column", "import-temperature-help");
            return None;
        }
        let limits = (count(Use::Low), count(Use::High));
        if count(Use::Nominal) != 1 || !matches!(limits, (0, 0) | (1, 1)) {
            self.error(
                Message::new("import-no-resistance"),
                place,
                "wanted-resistance-columns",
                "import-resistance-help",
            );
            return None;
        }
        let ohms = columns.iter().filter(|column| matches!(column.used, Use::Low | Use::Nominal | Use::High));
        let mut units = ohms.filter_map(|column| column.unit);
        let first = units.next()?;
        if let Some(other) = units.find(|unit| *unit != first) {
            let message =
                Message::new("import-two-units").with("one", first.symbol()).with("two", other.symbol());
            self.error(message, place, "wanted-one-unit", "import-units-help");
            return None;
        }
        if !matches!(first, Unit::Ohm | Unit::Kiloohm) {
            let message = Message::new("import-unit-of-curve").with("unit", first.symbol());
            self.error(message, place, "wanted-curve-unit", "import-units-help");
            return None;
        }
        Some(())
    }

    /// The decimal mark: the caller's, or what the numbers say.
    fn decimal(&self, columns: &[Column], rows: &[Line]) -> Option<Decimal> {
        if let Some(decimal) = self.known.decimal {
            return Some(decimal);
        }
        let used = |index: usize| {
            columns.get(index).is_some_and(|column| !matches!(column.used, Use::LeftOut | Use::Empty))
        };
        let cells: Vec<&Cell> = (rows.iter())
            .flat_map(|line| line.cells.iter().enumerate())
            .filter(|(index, _)| used(*index))
            .map(|(_, cell)| cell)
            .collect();
        match style(cells.iter().copied()) {
            Style::Clear(decimal) => Some(decimal),
            Style::Either(cell) => {
                let message = Message::new("import-either").with("cell", &cell.text);
                self.error(message, cell.place.clone(), "wanted-decimal-told", "import-either-help");
                None
            }
            Style::Mixed(point, comma) => {
                let message = Message::new("import-mixed").with("cell", &comma.text);
                let finding =
                    Finding::error(message, comma.place.clone(), Message::new("label-decimal-comma"));
                let finding = finding.because(point.place.clone(), Message::new("label-decimal-point"));
                self.findings.report(finding.help(Message::new("import-mixed-help")));
                None
            }
        }
    }

    fn row(&self, line: &Line, columns: &[Column], decimal: Decimal) -> Read {
        let cell = |used: Use| {
            let index = columns.iter().position(|column| column.used == used)?;
            line.cells.get(index).filter(|cell| !cell.text.is_empty()).zip(columns.get(index))
        };
        let has_limits = columns.iter().any(|column| column.used == Use::Low);
        let order: &[Use] = if has_limits {
            &[Use::Temperature, Use::Low, Use::Nominal, Use::High]
        } else {
            &[Use::Temperature, Use::Nominal]
        };
        let cells: Vec<Option<(&Cell, &Column)>> = order.iter().map(|used| cell(*used)).collect();
        // A foot line, or a temperature without its value: no point, and said so.
        if cells.iter().any(Option::is_none) {
            let message = Message::new("import-no-point");
            self.findings.report(Finding::warning(
                message,
                line.place.clone(),
                Message::new("label-left-out"),
            ));
            return Read::Skipped;
        }
        let numbers: Vec<Option<String>> =
            cells.iter().flatten().map(|(cell, column)| self.number(cell, column, decimal)).collect();
        let Some(written) = numbers.into_iter().collect::<Option<Vec<String>>>() else { return Read::Wrong };
        row(line, written, columns).map_or(Read::Wrong, Read::Row)
    }

    /// A cell's number as a spec writes it; its own unit must be its column's.
    fn number(&self, cell: &Cell, column: &Column, decimal: Decimal) -> Option<String> {
        let read = split(&cell.text);
        let number = read.and_then(|(number, _)| plain(number, decimal));
        let (Some(number), Some((_, unit))) = (number, read) else {
            let message = Message::new("import-no-number").with("cell", &cell.text);
            self.error(message, cell.place.clone(), "wanted-plain-number", "import-number-help");
            return None;
        };
        let wanted = column.unit.map_or("", Unit::symbol);
        if !unit.is_empty() && Unit::named(unit) != column.unit {
            let message = Message::new("import-other-unit").with("cell", &cell.text).with("unit", wanted);
            self.error(message, cell.place.clone(), "wanted-one-unit", "import-units-help");
            return None;
        }
        Some(number)
    }
}

fn row(line: &Line, written: Vec<String>, columns: &[Column]) -> Option<Row> {
    let unit = |used: Use| columns.iter().find(|column| column.used == used)?.unit;
    let number = |index: usize| written.get(index)?.parse::<f64>().ok();
    let ohms = |index: usize| Resistance::from_written(number(index)?, unit(Use::Nominal)?, false);
    let temperature = Temperature::from_written(number(0)?, unit(Use::Temperature)?, false)?;
    let (nominal, limits) =
        if written.len() == 4 { (ohms(2)?, Some((ohms(1)?, ohms(3)?))) } else { (ohms(1)?, None) };
    Some(Row { temperature, nominal, limits, written, place: line.place.clone() })
}
