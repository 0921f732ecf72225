//! `bayleaf export`: the figures of a whole set and what they rest on, for other programs.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

use rust_xlsxwriter::{Format, Workbook, XlsxError};
use serde_json::{Value, json};

use super::args::{Export, ExportFormat};
use super::load::answer;
use super::outcome::{Outcome, say, unwritten};
use super::table::{comma_separated, lines, rows, source};
use super::whole;
use crate::document::said;
use crate::document::table::{Ask, Cell, Show, Table, everything, of};
use crate::model::Fact;
use crate::words::{Language, Message, Words};

/// The columns of what a table rests on.
const INPUTS: [&str; 5] = ["label", "value", "given", "source", "key"];

/// A sheet's name in a workbook has no more characters.
const LONGEST_SHEET: usize = 31;

/// Runs the command.
pub(super) fn run(arguments: &Export, language: Option<Language>) -> Outcome {
    answer(arguments.specs.specs.as_deref(), language, |loaded, words| {
        let units = arguments.units.unwrap_or(loaded.model.shop.units);
        let mut tables = Vec::new();
        for (name, in_bay) in everything(&loaded.model) {
            // A system has the table of its modes.
            if name.starts_with("system.") {
                continue;
            }
            let bay = arguments.at.filter(|_| in_bay);
            let ask = Ask { id: &name, bay, units, ..Ask::default() };
            let table = of(&loaded.model, words, &ask)?;
            tables.push((name, table));
        }
        let files = match arguments.format {
            ExportFormat::Csv => csv(&tables, words),
            ExportFormat::Json => json(&tables, words),
            ExportFormat::Xlsx => {
                let book = workbook(&tables, words);
                let book = book.map_err(|error| unwritten(&arguments.folder, &io::Error::other(error)))?;
                vec![("figures.xlsx".to_owned(), book)]
            }
        };
        let written = write(&arguments.folder, &files)?;
        let told = written.iter().try_for_each(|path| say(path.display()));
        Ok(Outcome::of_output(words, told))
    })
}

/// Writes one table as a workbook of its own.
pub(super) fn spreadsheet(path: &Path, table: (String, Table), words: &Words) -> Result<Outcome, Message> {
    let failed = |error: &io::Error| unwritten(path, error);
    let book = workbook(&[table], words).map_err(|error| failed(&io::Error::other(error)))?;
    let name = path.file_name().ok_or_else(|| failed(&io::ErrorKind::InvalidFilename.into()))?;
    let folder = path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
    whole::write(folder, &name.to_string_lossy(), &book).map_err(|error| failed(&error))?;
    Ok(Outcome::of_output(words, say(path.display())))
}

fn write(folder: &Path, files: &[(String, Vec<u8>)]) -> Result<Vec<PathBuf>, Message> {
    fs::create_dir_all(folder).map_err(|error| unwritten(folder, &error))?;
    let one = |(name, bytes): &(String, Vec<u8>)| {
        let path = folder.join(name);
        whole::write(folder, name, bytes).map_err(|error| unwritten(&path, &error))?;
        Ok(path)
    };
    files.iter().map(one).collect()
}

/// What a table rests on, a row for each value: NOT GIVEN stands where one is missing.
fn inputs(table: &Table, words: &Words) -> Vec<[String; 5]> {
    let row = |fact: &Fact| {
        let source = source(words, fact).unwrap_or_default();
        let given = (!fact.is_missing()).to_string();
        [words.word(fact.label), said(words, fact), given, source, fact.key.clone()]
    };
    table.inputs.iter().map(row).collect()
}

/// Two files for each table: its figures under their keys, and what they rest on.
fn csv(tables: &[(String, Table)], words: &Words) -> Vec<(String, Vec<u8>)> {
    let mut files = Vec::new();
    for (name, table) in tables {
        files.push((format!("{name}.csv"), comma_separated(table)));
        let heads = INPUTS.map(str::to_owned).to_vec();
        let rows = inputs(table, words).into_iter().map(|row| row.to_vec());
        files.push((format!("{name}.inputs.csv"), lines(std::iter::once(heads).chain(rows))));
    }
    files
}

/// One file for each table.
fn json(tables: &[(String, Table)], words: &Words) -> Vec<(String, Vec<u8>)> {
    let one = |(name, table): &(String, Table)| {
        let input = |row: [String; 5]| -> Value {
            let cells = INPUTS.iter().zip(row).map(|(key, text)| ((*key).to_owned(), json!(text)));
            let mut cells: serde_json::Map<String, Value> = cells.collect();
            cells.insert("given".to_owned(), json!(cells["given"] == json!("true")));
            cells.into()
        };
        let value = json!({
            "id": name,
            "title": table.title,
            "notes": table.notes,
            "columns": table.columns.iter().map(|column| json!({ "key": column.key, "head": column.head })).collect::<Vec<_>>(),
            "rows": rows(table),
            "formulas": table.formulas,
            "inputs": inputs(table, words).into_iter().map(input).collect::<Vec<_>>(),
        });
        (format!("{name}.json"), format!("{value:#}\n").into_bytes())
    };
    tables.iter().map(one).collect()
}

/// One workbook: a sheet for each table, numbers as numbers, units in the heads, and on
/// the last one what all of them rest on.
fn workbook(tables: &[(String, Table)], words: &Words) -> Result<Vec<u8>, XlsxError> {
    let mut book = Workbook::new();
    // The day of the run has no place in the file: same set, same bytes.
    let epoch = rust_xlsxwriter::ExcelDateTime::from_ymd(2000, 1, 1)?;
    book.set_properties(&rust_xlsxwriter::DocProperties::new().set_creation_datetime(&epoch));
    let bold = Format::new().set_bold();
    let mut names: Vec<String> = Vec::new();
    for (name, table) in tables {
        let sheet = book.add_worksheet();
        let short: String = name.chars().take(LONGEST_SHEET - 3).collect();
        let tries = std::iter::once(name.chars().take(LONGEST_SHEET).collect());
        let mut tries = tries.chain((2..).map(|number| format!("{short}~{number}")));
        let own = tries.find(|own: &String| !names.iter().any(|other| other.eq_ignore_ascii_case(own)));
        let own = own.unwrap_or_default();
        sheet.set_name(&own)?;
        names.push(own);
        let shown: Vec<usize> =
            (0..table.columns.len()).filter(|&index| table.columns[index].show != Show::Never).collect();
        for (at, &index) in (0..).zip(&shown) {
            sheet.write_with_format(0, at, &table.columns[index].head, &bold)?;
        }
        for (line, row) in (1..).zip(&table.rows) {
            for (at, &index) in (0..).zip(&shown) {
                match &row[index] {
                    Cell::Number(number) => sheet.write_number(line, at, *number)?,
                    Cell::Text(text) | Cell::Named(_, text) | Cell::Flag(_, text) => {
                        sheet.write_string(line, at, text)?
                    }
                    Cell::Missing => continue,
                };
            }
        }
        sheet.set_freeze_panes(1, 0)?;
        sheet.autofit();
    }
    let sheet = book.add_worksheet();
    sheet.set_name("sources")?;
    for (at, head) in (0..).zip(std::iter::once("table").chain(INPUTS)) {
        sheet.write_with_format(0, at, head, &bold)?;
    }
    let rows =
        tables.iter().flat_map(|(name, table)| inputs(table, words).into_iter().map(move |row| (name, row)));
    for (line, (name, row)) in (1..).zip(rows) {
        sheet.write_string(line, 0, name)?;
        for (at, text) in (1..).zip(row) {
            sheet.write_string(line, at, text)?;
        }
    }
    sheet.set_freeze_panes(1, 0)?;
    sheet.autofit();
    book.save_to_buffer()
}
