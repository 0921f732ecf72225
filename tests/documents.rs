//! What the demo set's documents say, before typesetting: the main regression net.
//!
//! `tests/documents/ID.txt` is a document's data, a line a value. A changed
//! line is a changed page: read the difference like code. To accept it:
//! `UPDATE_EXPECT=1 cargo test --release --test documents`.

use std::path::Path;

use bayleaf::diag::Findings;
use bayleaf::document::{self, Context, Document};
use bayleaf::model::{self, Model};
use bayleaf::quantity::Temperature;
use bayleaf::spec::{self, Set};
use bayleaf::words::Words;
use expect_test::expect_file;
use serde_json::Value;

#[path = "documents/modes.rs"]
mod modes;

fn demo() -> Model {
    let findings = Findings::default();
    let set = Set::read(&spec::demo(), &findings);
    model::build(&set).expect("the demo set is clean")
}

fn documents(model: &Model, bay: Option<f64>) -> Vec<Document> {
    let words = Words::english();
    let context = Context {
        model,
        words: &words,
        date: "2026-11-24".parse().expect("a date"),
        bay: bay.map(Temperature::from_celsius),
    };
    let compose = |listed| document::compose(context, listed).expect("a listed document exists");
    document::list(model).iter().map(compose).collect()
}

/// The data as text: nested keys, one value a line, rows of a table on one line.
fn text_of(document: &Document) -> String {
    let data: Value = serde_json::from_slice(&document.data).expect("data is JSON");
    let mut lines = Vec::new();
    write(&data, String::new(), &mut lines);
    lines.join("\n") + "\n"
}

fn write(value: &Value, path: String, lines: &mut Vec<String>) {
    match value {
        // A drawn line is tested where it is computed; here its ends are enough.
        Value::Array(points)
            if path.ends_with("nominal") || path.ends_with("low") || path.ends_with("high") =>
        {
            let ends = [points.first(), points.last()].into_iter().flatten();
            let ends: Vec<String> = ends.map(Value::to_string).collect();
            lines.push(format!("{path}: {} points {}", points.len(), ends.join(" … ")));
        }
        Value::Array(cells) if cells.iter().all(Value::is_string) => {
            let cells: Vec<&str> = cells.iter().filter_map(Value::as_str).collect();
            lines.push(format!("{path}: {}", cells.join(" | ")));
        }
        Value::Array(values) => {
            for (index, value) in values.iter().enumerate() {
                write(value, format!("{path}[{index}]"), lines);
            }
        }
        Value::Object(entries) => {
            for (key, value) in entries {
                write(value, if path.is_empty() { key.clone() } else { format!("{path}.{key}") }, lines);
            }
        }
        Value::String(text) => lines.push(format!("{path}: {text}")),
        other => lines.push(format!("{path}: {other}")),
    }
}

#[test]
fn documents_say_what_they_said() {
    let model = demo();
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/documents");
    let chosen = [
        "CUR-EVAP",
        "CUR-LINE",
        "HER-CABIN",
        "HER-COOLANT",
        "HER-EVAP",
        "HER-LINE",
        "HER-OUTSIDE",
        "HER-REAR-CABIN",
        "HER-REAR-DUCT",
        "CUR-SENSORS.AMB-15",
        "HER-SENSORS.RRV-3",
    ];
    let documents = documents(&model, Some(31.0));
    for id in chosen {
        let document = documents.iter().find(|document| document.id == id).expect("it is in the demo set");
        expect_file![folder.join(format!("{id}.txt"))].assert_eq(&text_of(document));
    }
}

#[test]
fn a_sheet_without_a_bay_temperature_points_to_its_cards() {
    let model = demo();
    let documents = documents(&model, None);
    let sheet = documents.iter().find(|document| document.id == "CUR-SENSORS.AMB-12").expect("it is listed");
    let data: Value = serde_json::from_slice(&sheet.data).expect("data is JSON");
    let row = &data["groups"][0]["rows"][0];
    assert_eq!((row["expect"].as_str(), row["expect_sub"].as_str()), (Some(""), Some("card CUR-EVAP")));
    assert!(data["at_note"].as_str().is_some_and(|note| note.contains("strip table")));
    // Unplugged, the reading does not depend on the bay.
    assert_eq!(data["groups"][1]["rows"][0]["expect"].as_str(), Some("4.898–5.097"));
}

#[test]
fn a_bay_outside_a_sensors_range_gives_no_window() {
    let model = demo();
    let documents = documents(&model, Some(-25.0));
    let sheet = documents.iter().find(|document| document.id == "HER-SENSORS.RRV-3").expect("it is listed");
    let data: Value = serde_json::from_slice(&sheet.data).expect("data is JSON");
    let rows = data["groups"][0]["rows"].as_array().expect("rows");
    let row =
        |title: &str| rows.iter().find(|row| row["title"].as_str().is_some_and(|t| t.starts_with(title)));
    let cabin = row("Cabin").expect("it is on the sheet");
    assert_eq!(cabin["expect_sub"].as_str(), Some("not applicable: outside 0 to 40\u{a0}°C"));
    let outside = row("Outside").expect("it is on the sheet");
    assert!(outside["expect"].as_str().is_some_and(|window| window.contains('–')));
}

/// Every limit of every window is rounded inward: never below the computed low,
/// never above the computed high. The computed ones come from the unrounded table.
#[test]
fn printed_limits_lie_inside_the_computed_ones() {
    let model = demo();
    let step = Some(bayleaf::quantity::TemperatureDifference::from_kelvins(2.0));
    let ask = document::table::Ask { id: "CUR-EVAP", from: None, to: None, step };
    let computed = document::table::of(&model, &Words::english(), &ask).expect("it has a table");
    let documents = documents(&model, None);
    let document = documents.iter().find(|document| document.id == "CUR-EVAP").expect("it is listed");
    let data: Value = serde_json::from_slice(&document.data).expect("data is JSON");
    let rows = data["strip"]["rows"].as_array().expect("rows");
    assert_eq!((rows.len(), computed.rows.len()), (26, 26));
    let number = |cell: &Value| -> f64 {
        let text = cell.as_str().expect("text").replace('−', "-");
        let plain: String = text.chars().filter(|c| c.is_ascii_digit() || matches!(c, '.' | '-')).collect();
        plain.parse().expect("a number")
    };
    // A millionth of the last digit is binary arithmetic, not rounding.
    for (row, cells) in rows.iter().zip(&computed.rows) {
        let computed = |key: &str| {
            let column = computed.columns.iter().position(|column| column.key == key);
            match &cells[column.expect("the column is there")] {
                document::table::Cell::Number(number) => *number,
                other => panic!("{key}: {other:?}"),
            }
        };
        assert!(number(&row[2]) >= computed("resistance_min_ohm") - 1e-6, "{row}");
        assert!(number(&row[4]) <= computed("resistance_max_ohm") + 1e-6, "{row}");
        assert!(number(&row[5]) >= computed("voltage_min_v") - 1e-9, "{row}");
        assert!(number(&row[7]) <= computed("voltage_max_v") + 1e-9, "{row}");
    }
}

#[test]
fn the_fingerprint_tells_content_and_not_the_date() {
    let model = demo();
    let words = Words::english();
    let print = |date: &str, bay: f64, id: &str| {
        let context = Context {
            model: &model,
            words: &words,
            date: date.parse().expect("a date"),
            bay: Some(Temperature::from_celsius(bay)),
        };
        let listed = document::list(&model).into_iter().find(|listed| listed.id == id).expect("it is listed");
        let document = document::compose(context, &listed).expect("it composes");
        let data: Value = serde_json::from_slice(&document.data).expect("data is JSON");
        data["furniture"]["fingerprint"].as_str().expect("a code").to_owned()
    };
    let sheet = "CUR-SENSORS.AMB-12";
    assert_eq!(print("2026-11-24", 31.0, sheet), print("2027-01-01", 31.0, sheet));
    assert_ne!(print("2026-11-24", 31.0, sheet), print("2026-11-24", 30.0, sheet));
    assert_ne!(print("2026-11-24", 31.0, sheet), print("2026-11-24", 31.0, "CUR-SENSORS.AMB-11"));
    // A card does not depend on the bay.
    assert_eq!(print("2026-11-24", 31.0, "CUR-EVAP"), print("2026-11-24", 30.0, "CUR-EVAP"));
}

/// 7 604–7 797 Ω of sensor behind 1 kΩ ± 5 % in the line: 8 554–8 847 Ω.
#[test]
fn ohms_through_the_harness_include_the_lines_resistor() {
    let mut sources = bayleaf::diag::Sources::default();
    for (path, text) in spec::DEMO {
        let at_unit = text.replace(
            "measure = \"resistance\"\nplace = \"sensor\"",
            "measure = \"resistance\"\nplace = \"control unit\"",
        );
        sources.add((*path).to_owned(), at_unit);
    }
    let findings = Findings::default();
    let set = Set::read(&sources, &findings);
    let model = model::build(&set).expect("the changed demo set is clean");
    let documents = documents(&model, Some(31.0));
    let sheet = documents.iter().find(|document| document.id == "CUR-SENSORS.AMB-12").expect("it is listed");
    let data: Value = serde_json::from_slice(&sheet.data).expect("data is JSON");
    let rows = data["groups"][2]["rows"].as_array().expect("rows");
    let expect = |index: usize| rows[index]["expect"].as_str().unwrap_or_default().replace('\u{202f}', "");
    assert_eq!(expect(4), "8554–8847");
    // A sensor without one reads as at its own pins.
    assert_eq!(expect(0), "1687–1803");
}
