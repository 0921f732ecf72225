//! The figures that `bayleaf export` writes, read back by other programs' readers.

use std::collections::BTreeMap;
use std::fs;
use std::path::PathBuf;
use std::sync::atomic::{AtomicUsize, Ordering};

use bayleaf_outside::{root, said};
use calamine::{Data, Reader, Xlsx, open_workbook};
use serde_json::Value;

fn export(format: &str) -> PathBuf {
    // Tests run beside each other: each export has a folder of its own.
    static EXPORTS: AtomicUsize = AtomicUsize::new(0);
    let number = EXPORTS.fetch_add(1, Ordering::Relaxed);
    let folder = root().join("target/outside-export").join(format!("{format}-{number}"));
    drop(fs::remove_dir_all(&folder));
    let [specs, to] = [&root().join("specs"), &folder].map(|path| path.display().to_string());
    drop(said(&["export", "--format", format, "--specs", &specs, &to]));
    folder
}

/// Every JSON export by its id.
fn jsons() -> BTreeMap<String, Value> {
    let entries = fs::read_dir(export("json")).expect("it was exported");
    let read = |path: PathBuf| -> Value {
        serde_json::from_str(&fs::read_to_string(path).expect("it is text")).expect("it is JSON")
    };
    let all = entries.map(|entry| read(entry.expect("listed").path()));
    all.map(|value| (value["id"].as_str().expect("its id").to_owned(), value)).collect()
}

#[test]
fn csv_and_json_say_the_same_numbers_and_sources() {
    let jsons = jsons();
    assert!(jsons.len() > 20, "only {} tables", jsons.len());
    let folder = export("csv");
    let mut numbers = 0;
    for (id, json) in &jsons {
        let mut reader = csv::Reader::from_path(folder.join(format!("{id}.csv"))).expect("it was exported");
        let heads = reader.headers().expect("it has heads").clone();
        let rows: Vec<csv::StringRecord> = reader.records().map(|row| row.expect("a row")).collect();
        let told = json["rows"].as_array().expect("rows");
        assert_eq!(rows.len(), told.len(), "{id}");
        for (row, told) in rows.iter().zip(told) {
            for (key, cell) in heads.iter().zip(row) {
                match &told[key] {
                    Value::Number(number) => {
                        numbers += 1;
                        let same = cell.parse::<f64>().ok().map(f64::to_bits);
                        assert_eq!(same, number.as_f64().map(f64::to_bits), "{id} {key}");
                    }
                    Value::Null => assert_eq!(cell, "", "{id} {key}"),
                    Value::Bool(flag) => assert_eq!(cell, flag.to_string(), "{id} {key}"),
                    other => assert_eq!(Some(cell), other.as_str(), "{id} {key}"),
                }
            }
        }
        let mut reader = csv::Reader::from_path(folder.join(format!("{id}.inputs.csv"))).expect("exported");
        let inputs: Vec<csv::StringRecord> = reader.records().map(|row| row.expect("a row")).collect();
        let told = json["inputs"].as_array().expect("inputs");
        assert_eq!(inputs.len(), told.len(), "{id}");
        for (row, told) in inputs.iter().zip(told) {
            assert_eq!(row.get(3), told["source"].as_str(), "{id}");
            assert_eq!(row.get(1) == Some("NOT GIVEN"), told["given"] == Value::Bool(false), "{id}");
        }
    }
    assert!(numbers > 2000, "only {numbers} numbers");
}

#[test]
fn the_spreadsheet_holds_numbers_as_numbers() {
    let jsons = jsons();
    let path = export("xlsx").join("figures.xlsx");
    let mut book: Xlsx<_> = open_workbook(&path).expect("it is a workbook");
    let names = book.sheet_names();
    assert_eq!(names.len(), jsons.len() + 1, "a sheet for each table, and the sources");
    let name = "sensor.curlew-cabin";
    let sheet = book.worksheet_range(name).expect("the sheet of the sensor");
    let columns = jsons[name]["columns"].as_array().expect("columns");
    let rows = jsons[name]["rows"].as_array().expect("rows");
    assert_eq!(sheet.height(), rows.len() + 1);
    let mut numbers = 0;
    for at in 0..sheet.width() {
        let head = sheet.get((0, at)).map(ToString::to_string).unwrap_or_default();
        let column = columns.iter().find(|column| column["head"] == head.as_str()).expect("a known head");
        let key = column["key"].as_str().expect("a key");
        for (line, row) in rows.iter().enumerate() {
            match (sheet.get((line + 1, at)), &row[key]) {
                (Some(Data::Float(found)), Value::Number(told)) => {
                    numbers += 1;
                    assert_eq!(Some(found.to_bits()), told.as_f64().map(f64::to_bits), "{key} {line}");
                }
                (None | Some(Data::Empty), Value::Null) => {}
                (Some(Data::String(_)), Value::String(_) | Value::Bool(_)) => {}
                (found, told) => panic!("{key} {line}: {found:?} for {told}"),
            }
        }
    }
    assert!(numbers > 30, "only {numbers} numbers");
    let sources = book.worksheet_range("sources").expect("the sheet of sources");
    let inputs: usize = jsons.values().map(|json| json["inputs"].as_array().map_or(0, Vec::len)).sum();
    assert_eq!(sources.height(), inputs + 1);
}

#[test]
fn the_same_set_gives_the_same_bytes() {
    let bytes = || fs::read(export("xlsx").join("figures.xlsx")).expect("it was exported");
    let first = bytes();
    assert!(first == bytes(), "two runs differ");
}
