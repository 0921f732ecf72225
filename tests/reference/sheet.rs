//! Reads a table of published values: columns by name, the place of a row for the message.

use std::path::Path;

use bayleaf::quantity::{Ratio, Resistance, Temperature, Voltage};
use csv::StringRecord;

/// How nearly a computed value must meet a published one.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Within {
    /// As a part of the published value.
    Relative(f64),
    /// In the unit of the column.
    Absolute(f64),
}

/// One row of a table in tests/reference.
#[derive(Debug, Clone)]
pub(crate) struct Row {
    file: &'static str,
    line: u64,
    header: StringRecord,
    fields: StringRecord,
}

/// Every row of a file in tests/reference; the `#` lines name its source and are skipped.
pub(crate) fn rows_of(file: &'static str) -> Vec<Row> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/reference").join(file);
    let mut reader = csv::ReaderBuilder::new()
        .comment(Some(b'#'))
        .from_path(&path)
        .unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    let header = reader.headers().unwrap_or_else(|error| panic!("{file}: {error}")).clone();
    let row = |record: csv::Result<StringRecord>| {
        let fields = record.unwrap_or_else(|error| panic!("{file}: {error}"));
        let line = fields.position().map_or(0, csv::Position::line);
        Row { file, line, header: header.clone(), fields }
    };
    reader.records().map(row).collect()
}

impl Row {
    /// What stands in a column.
    pub(crate) fn text(&self, column: &str) -> &str {
        let found = self.header.iter().zip(&self.fields).find(|(name, _)| *name == column);
        found.unwrap_or_else(|| panic!("{}: no column {column}", self.place())).1
    }

    /// Whether anything stands in a column.
    pub(crate) fn has(&self, column: &str) -> bool {
        !self.text(column).is_empty()
    }

    /// The number in a column.
    pub(crate) fn number(&self, column: &str) -> f64 {
        let text = self.text(column);
        text.parse().unwrap_or_else(|_| panic!("{}: {column} is {text:?}, no number", self.place()))
    }

    /// A column in Ω.
    pub(crate) fn ohms(&self, column: &str) -> Resistance {
        Resistance::from_ohms(self.number(column))
    }

    /// A column in V.
    pub(crate) fn volts(&self, column: &str) -> Voltage {
        Voltage::from_volts(self.number(column))
    }

    /// A column in °C.
    pub(crate) fn celsius(&self, column: &str) -> Temperature {
        Temperature::from_celsius(self.number(column))
    }

    /// A column in percent.
    pub(crate) fn percent(&self, column: &str) -> Ratio {
        Ratio::new(self.number(column) / 100.0)
    }

    /// Whether a column holds the number zero.
    pub(crate) fn is_zero(&self, column: &str) -> bool {
        self.number(column).abs() <= 0.0
    }

    /// Demands that `computed` meets the number in a column.
    #[track_caller]
    pub(crate) fn agrees(&self, column: &str, computed: f64, within: Within) {
        meets(&format!("{} {column}", self.place()), self.number(column), computed, within);
    }

    /// File and line, for a message.
    pub(crate) fn place(&self) -> String {
        format!("{}:{}", self.file, self.line)
    }
}

/// Demands that `computed` meets `published`; a NaN meets nothing.
#[track_caller]
pub(crate) fn meets(what: &str, published: f64, computed: f64, within: Within) {
    let allowed = match within {
        Within::Relative(part) => part * published.abs(),
        Within::Absolute(distance) => distance,
    };
    let off = (computed - published).abs();
    assert!(
        off <= allowed,
        "{what}: published {published}, computed {computed}, off by {off:e}, allowed {allowed:e}"
    );
}
