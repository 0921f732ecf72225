//! What the demo set's documents say, before typesetting: the main regression net.
//!
//! `tests/documents/ID.txt` is a document's data, a line a value. A changed
//! line is a changed page: read the difference like code. To accept it:
//! `UPDATE_EXPECT=1 cargo test --release --test documents`.

use std::path::Path;

use bayleaf::diag::Findings;
use bayleaf::document::{self, Document, Edition};
use bayleaf::model::{self, Model};
use bayleaf::quantity::{Temperature, Units};
use bayleaf::spec::{self, Set};
use bayleaf::words::Words;
use expect_test::expect_file;
use serde_json::Value;

#[path = "documents/contents.rs"]
mod contents;
#[path = "documents/languages.rs"]
mod languages;
#[path = "documents/loads.rs"]
mod loads;
#[path = "documents/modes.rs"]
mod modes;
#[path = "documents/proofs.rs"]
mod proofs;
#[path = "documents/pull.rs"]
mod pull;
#[path = "documents/sensor_faults.rs"]
mod sensor_faults;
#[path = "documents/units.rs"]
mod units;

fn demo() -> Model {
    let findings = Findings::default();
    let set = Set::read(&spec::demo(), &findings);
    model::build(&set).expect("the demo set is clean")
}

/// The demo set with some of its text replaced.
fn demo_with(changes: &[(&str, &str)]) -> Model {
    let mut sources = bayleaf::diag::Sources::default();
    let mut met = vec![false; changes.len()];
    for (path, text) in spec::DEMO {
        let mut text = (*text).to_owned();
        for ((from, to), met) in changes.iter().zip(&mut met) {
            *met |= text.contains(from);
            text = text.replace(from, to);
        }
        sources.add((*path).to_owned(), text);
    }
    assert!(met.iter().all(|met| *met), "the demo set no longer holds all of {changes:?}");
    let findings = Findings::default();
    let set = Set::read(&sources, &findings);
    model::build(&set).expect("the changed demo set is clean")
}

fn documents(model: &Model, bay: Option<f64>) -> Vec<Document> {
    let words = Words::english();
    let (date, bay) = ("2026-11-24".parse().expect("a date"), bay.map(Temperature::from_celsius));
    let context = Edition { bay, ..Edition::of(model, &words) }.context(model, &words, date);
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
        // The symbol is read back from the page in `tests/pages/codes.rs`.
        Value::String(outline) if path.ends_with("outline") => {
            lines.push(format!("{path}: {} runs", outline.matches('M').count()));
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
        "CUR-BLOWER",
        "CUR-CLUTCH",
        "CUR-AIR",
        "CUR-EVAP",
        "CUR-INTAKE",
        "CUR-LINE",
        "CUR-MODES",
        "CUR-REQUEST",
        "HER-AIR",
        "CUR-C2",
        "CUR-MIX",
        "CUR-MODE",
        "CUR-R2",
        "CUR-SUN",
        "CUR-SYSTEM",
        "CUR-RELAY",
        "CUR-VALVE",
        "HER-BLOWER",
        "HER-CABIN",
        "HER-COOLANT",
        "HER-EVAP",
        "HER-INTAKE",
        "HER-K9",
        "HER-LINE",
        "HER-MIX",
        "HER-OUTSIDE",
        "HER-PRESSURE",
        "HER-REAR-CABIN",
        "HER-REAR-DUCT",
        "HER-T1",
        "TEA-CABIN",
        "HER-VALVE",
        "CUR-SENSORS.AMB-15",
        "CUR-PARTS.AMB-15",
        "HER-PARTS.RRV-3",
        "CUR-REPORT.AMB-15",
        "HER-REPORT.RRV-3",
        "CUR-NO-COLD",
        "CUR-BLOWER-FULL",
        "CUR-ODD-SENSOR",
        "curlew.SYMPTOMS",
        "HER-NO-COLD",
        "HER-BLOWER-FULL",
        "HER-ODD-SENSOR",
        "heron.SYMPTOMS",
        "HER-SENSORS.RRV-3",
    ];
    let documents = documents(&model, Some(31.0));
    for id in chosen {
        let document = documents.iter().find(|document| document.id == id).expect("it is in the demo set");
        expect_file![folder.join(format!("{id}.txt"))].assert_eq(&text_of(document));
    }
}

/// The same papers in US units: rows at round °F, limits inside what is computed there.
#[test]
fn papers_in_us_units_say_what_they_said() {
    let (model, words) = (demo(), Words::english());
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/documents/us");
    let edition = Edition {
        units: Units::Us,
        bay: Some(Temperature::from_fahrenheit(88.0)),
        ..Edition::of(&model, &words)
    };
    let context = edition.context(&model, &words, "2026-11-24".parse().expect("a date"));
    for id in ["CUR-EVAP", "HER-AIR", "HER-PARTS.RRV-3"] {
        let listed = document::list(&model).into_iter().find(|listed| listed.id == id).expect("it is listed");
        let document = document::compose(context, &listed).expect("a listed document exists");
        expect_file![folder.join(format!("{id}.txt"))].assert_eq(&text_of(&document));
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

/// What a test expects follows from its component; worked here from the demo's own values.
#[test]
fn a_test_takes_its_window_from_its_component() {
    let model = demo();
    let rows = |id: &str| {
        let documents = documents(&model, Some(31.0));
        let sheet = documents.iter().find(|document| document.id == id).expect("it is listed");
        let data: Value = serde_json::from_slice(&sheet.data).expect("data is JSON");
        let groups = data["groups"].as_array().expect("groups").clone();
        groups.iter().flat_map(|group| group["rows"].as_array().expect("rows").clone()).collect::<Vec<_>>()
    };
    let heron = rows("HER-PARTS.RRV-3");
    let text = |value: &Value| value.as_str().unwrap_or_default().replace('\u{a0}', " ");
    let row = |title: &str| {
        heron.iter().find(|row| text(&row["title"]) == title).expect("it is on the sheet").clone()
    };
    assert_eq!(text(&row("Reference at the unit")["expect"]), "4.900–5.100");
    // 10.5 Ω ± 5 % at 20 °C, copper 11 K warmer by (234.5 + 31)/(234.5 + 20) (IEC 60034-1 form):
    // 10.406 to 11.501, inward.
    let by_copper = |cold: f64| cold * (234.5 + 31.0) / (234.5 + 20.0);
    assert!((by_copper(9.975) - 10.406).abs() < 1e-3 && (by_copper(11.025) - 11.501).abs() < 1e-3);
    assert_eq!(text(&row("Solenoid coil")["expect"]), "10.5–11.5");
    // 8 to 14 % and 86 to 92 % of 5.00 V ± 2 %; 3 % of the shortest travel.
    let sweep = row("Mix door, coldest to hottest");
    let field = |index: usize| text(&sweep["fields"][index]["window"]);
    assert_eq!([field(0), field(1)], ["0.392–0.714 V", "4.214–4.692 V"]);
    assert_eq!(field(2), "≤ 0.105 V");
    let travel = |low: f64, high: f64| 0.03 * (low * 0.86 - high * 0.14);
    assert!(travel(4.9, 5.1) >= 0.105);
    // 42 % ± 3 % of the battery.
    assert_eq!(text(&row("Blower step 2, across the motor")["expect"]), "39.0–45.0");
    // A lower frequency is the longer period: 1/420 s to 1/380 s, inward.
    let wave = row("Solenoid, command 40 %");
    assert_eq!(text(&wave["fields"][0]["window"]), "2.39–2.63 ms");
    let forced: Vec<String> = row("Panel at the coldest set-point")["steps"]
        .as_array()
        .expect("steps")
        .iter()
        .map(|s| text(&s["expect"]))
        .collect();
    assert_eq!(forced, ["recirculation", "face", "cold stop", "highest", "present", "full"]);
}

#[test]
fn a_test_for_other_vehicles_leaves_no_box() {
    let model = demo_with(&[("built_from = \"2020-01\"", "built_from = \"2021-01\"")]);
    let documents = documents(&model, Some(31.0));
    let last_row = |id: &str| {
        let sheet = documents.iter().find(|document| document.id == id).expect("it is listed");
        let data: Value = serde_json::from_slice(&sheet.data).expect("data is JSON");
        let groups = data["groups"].as_array().expect("groups");
        let rows = groups.last().and_then(|group| group["rows"].as_array()).expect("rows");
        rows.last().expect("a row").clone()
    };
    let early = last_row("HER-PARTS.RRV-3");
    assert_eq!((early["applies"].as_bool(), early["unit"].as_str()), (Some(false), None));
    assert_eq!(early["expect_sub"].as_str(), Some("not applicable: only if built 2021-01 or later"));
    assert_eq!(last_row("HER-PARTS.RRV-7")["applies"].as_bool(), Some(true));
}

#[test]
fn a_laminated_sheet_says_what_to_write_with() {
    let paper = ("[sheet.HER-PARTS]\n", "[sheet.HER-PARTS]\nsurface = \"laminated, wet-erase\"\n");
    let said = |changes: &[(&str, &str)]| {
        let documents = documents(&demo_with(changes), Some(31.0));
        let sheet = documents.into_iter().find(|document| document.id == "HER-PARTS.RRV-3").expect("listed");
        let data: Value = serde_json::from_slice(&sheet.data).expect("data is JSON");
        data["corrections"].as_str().expect("text").to_owned()
    };
    assert!(said(&[]).starts_with("Write in ink."));
    assert!(said(&[paper]).contains("wet-erase marker"));
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
    let step = Some(bayleaf::quantity::Step::of_kelvins(2.0));
    let ask = document::table::Ask { id: "CUR-EVAP", step, ..document::table::Ask::default() };
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
        let (date, bay) = (date.parse().expect("a date"), Some(Temperature::from_celsius(bay)));
        let context = Edition { bay, ..Edition::of(&model, &words) }.context(&model, &words, date);
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
    let at_unit = (
        "measure = \"resistance\"\nplace = \"sensor\"",
        "measure = \"resistance\"\nplace = \"control unit\"",
    );
    let model = demo_with(&[at_unit]);
    let documents = documents(&model, Some(31.0));
    let sheet = documents.iter().find(|document| document.id == "CUR-SENSORS.AMB-12").expect("it is listed");
    let data: Value = serde_json::from_slice(&sheet.data).expect("data is JSON");
    let rows = data["groups"][2]["rows"].as_array().expect("rows");
    let expect = |index: usize| rows[index]["expect"].as_str().unwrap_or_default().replace('\u{202f}', "");
    assert_eq!(expect(4), "8554–8847");
    // A sensor without one reads as at its own pins.
    assert_eq!(expect(0), "1687–1803");
}

/// What ± means is the shop's business, and what it leaves out is said.
#[test]
fn a_sheet_decides_as_its_shop_does() {
    const GUARDED: &str = "decision = \"guarded\"\n";
    let sheet = |changes: &[(&str, &str)]| {
        let documents = documents(&demo_with(changes), Some(31.0));
        let sheet = documents.into_iter().find(|document| document.id == "CUR-SENSORS.AMB-12");
        let sheet = sheet.expect("it is listed");
        let data: Value = serde_json::from_slice(&sheet.data).expect("data is JSON");
        // Numbers and units are tied by spaces that do not break.
        let text = |value: &Value| value.as_str().unwrap_or_default().replace('\u{a0}', " ");
        let doubt = text(&data["groups"][0]["rows"][0]["expect_sub2"]);
        let last = data["else_lines"].as_array().and_then(|lines| lines.last()).map(text);
        (doubt, text(&data["legend"]), last.unwrap_or_default(), sheet.not_given)
    };
    let (doubt, legend, last, not_given) = sheet(&[]);
    assert_eq!(doubt, "± 0.019 V undecided");
    assert!(legend.contains("undecided with these instruments (U, k = 2)"), "{legend}");
    assert!(!legend.contains("NOT GIVEN") && last.starts_with("Undecided:"), "{legend} {last}");
    assert!(!not_given.iter().any(|key| key.starts_with("shop.")), "{not_given:?}");

    // Half of U: 9.5 mV or less, rounded up.
    let (doubt, legend, ..) = sheet(&[(GUARDED, "decision = \"guarded\"\nguard = \"50 %\"\n")]);
    assert_eq!(doubt, "± 0.010 V undecided");
    assert!(legend.contains("50 % of U"), "{legend}");

    let (doubt, legend, last, not_given) = sheet(&[(GUARDED, "decision = \"simple\"\n")]);
    assert_eq!(doubt, "± 0.019 V uncertain");
    assert!(legend.contains("by the limits alone") && !last.contains("ndecided"), "{legend} {last}");
    assert!(!not_given.iter().any(|key| key.starts_with("shop.")), "{not_given:?}");

    let (doubt, legend, _, not_given) = sheet(&[(GUARDED, "")]);
    assert_eq!(doubt, "± 0.019 V uncertain");
    assert!(legend.contains("NOT GIVEN"), "{legend}");
    assert!(not_given.contains(&"shop.decision".to_owned()), "{not_given:?}");

    // Without soaking ± is smaller, which would be a silent gain.
    let changes = [("soak = \"± 0.2 K\"\n", ""), ("leads = \"0.2 Ω ± 0.1 Ω\"\n", "")];
    let (doubt, legend, _, not_given) = sheet(&changes);
    assert_eq!(doubt, "± 0.017 V undecided");
    assert!(legend.ends_with("Not in ±, because NOT GIVEN: soak, leads."), "{legend}");
    for key in ["shop.soak", "instrument.meter.leads"] {
        assert!(not_given.contains(&key.to_owned()), "{not_given:?}");
    }
}

/// A cold junction in the bay takes off what the bay itself would read.
#[test]
fn a_thermocouple_has_a_table_for_the_bay() {
    let model = demo();
    let at = Temperature::from_celsius;
    let ask = document::table::Ask {
        id: "clamp-probe",
        from: Some(at(25.0)),
        to: Some(at(50.0)),
        step: Some(bayleaf::quantity::Step::of_kelvins(25.0)),
        bay: Some(at(25.0)),
        ..document::table::Ask::default()
    };
    let table = document::table::of(&model, &Words::english(), &ask).expect("it has a table");
    let number = |row: usize, key: &str| {
        let column = table.columns.iter().position(|column| column.key == key).expect("the column is there");
        match table.rows[row][column] {
            document::table::Cell::Number(number) => number,
            ref other => panic!("{key}: {other:?}"),
        }
    };
    // tests/reference/09a_thermocouple.csv, type K: 25 and 50 °C from 0 and from 25 °C.
    for (row, key, published) in [
        (0, "emf_from_ice_mv", 1.000_242_35),
        (0, "emf_from_bay_mv", 0.0),
        (1, "emf_from_ice_mv", 2.023_077_89),
        (1, "emf_from_bay_mv", 1.022_835_53),
    ] {
        assert!((number(row, key) - published).abs() <= 1e-6, "{key} in row {row}: {}", number(row, key));
    }
    assert!(table.inputs.iter().any(|fact| fact.written.as_deref() == Some("K")), "{:?}", table.inputs);
}

/// The cell of a column in the row whose first cell is `row`, as a number.
fn number_in(table: &document::table::Table, row: &str, key: &str) -> f64 {
    let column = table.columns.iter().position(|column| column.key == key).expect("the column is there");
    let named = |cells: &&Vec<document::table::Cell>| table.columns[0].text(&cells[0]) == row;
    match table.rows.iter().find(named).map(|cells| &cells[column]) {
        Some(document::table::Cell::Number(number)) => *number,
        other => panic!("{row}, {key}: {other:?}"),
    }
}

#[test]
fn the_tables_of_actuators_lights_and_transducers_follow_from_their_values() {
    let (model, words) = (demo(), Words::english());
    let table = |id: &str| {
        let ask = document::table::Ask { id, ..document::table::Ask::default() };
        document::table::of(&model, &words, &ask).expect("it has a table")
    };
    let close = |found: f64, wanted: f64| assert!((found - wanted).abs() < 1e-9, "{found}, {wanted}");
    let mix = table("heron-mix");
    close(number_in(&mix, "coldest", "voltage_min_v"), 4.9 * 0.08);
    close(number_in(&mix, "hottest", "voltage_max_v"), 5.1 * 0.92);
    close(number_in(&mix, "hottest", "ratio_nom"), 0.89);
    // u/(1 + 0.051 u (1 − u)) half-way between 11 % and 89 %, by bisection in another language.
    let half = &mix.rows[5];
    let document::table::Cell::Number(ratio) = half[6] else { panic!("{half:?}") };
    close(ratio, 0.496_096_201_515);
    let mode = table("curlew-mode");
    close(number_in(&mode, "face and floor", "voltage_nom_v"), 5.0 * 150.0 / 1150.0);
    close(number_in(&mode, "face and floor", "voltage_max_v"), 5.1 * 158.0 / (158.0 + 990.0));
    let sun = table("curlew-sun");
    close(number_in(&sun, "500", "voltage_nom_v"), 0.4e-3 * 3900.0);
    close(number_in(&sun, "500", "voltage_max_v"), (0.5e-3 + 2e-6) * 3939.0);
    let discharge = table("heron-discharge");
    // Its ends are given in psi, so its rows are: 300 psi, at 6.894757293168361 kPa each 2068 kPa.
    close(number_in(&discharge, "2\u{202f}068", "ratio_nom"), 0.1 + 0.8 * 300.0 / 450.0);
    for id in model.actuators.keys().chain(model.lights.keys()).chain(model.transducers.keys()) {
        let table = table(id);
        // One actuator reports no position: its table says so.
        let silent = table.notes.iter().any(|note| note.contains("reports no position"));
        assert_eq!(silent, id == "curlew-intake", "{id}");
        assert!(silent != (!table.rows.is_empty() && !table.formulas.is_empty()), "{id}");
        assert!(!table.inputs.is_empty(), "{id}");
        for row in &table.rows {
            assert_eq!(row.len(), table.columns.len(), "{id}");
        }
        for note in table.notes.iter().chain(&table.formulas) {
            assert!(!note.contains('⟨') && !note.contains('{'), "{id}: {note}");
        }
    }
    let ask = document::table::Ask {
        id: "heron-mix",
        from: Some(Temperature::from_celsius(3.0)),
        ..document::table::Ask::default()
    };
    assert!(document::table::of(&model, &words, &ask).is_err(), "travel is no temperature");
}

#[test]
fn every_paper_of_a_system_with_high_voltage_says_stop_and_no_other() {
    let parts = "electric heater and its orange cables";
    let changed = format!("[system.heron]\nhigh_voltage = \"{parts}\"");
    let model = demo_with(&[("[system.heron]", &changed)]);
    let documents = documents(&model, None);
    assert!(documents.iter().any(|document| document.id.starts_with("CUR")));
    for document in documents {
        let data: Value = serde_json::from_slice(&document.data).expect("data is JSON");
        let stop = &data["furniture"]["stop"];
        // The index of all documents is of no system.
        if document.id.to_uppercase().starts_with("CUR") || document.id == "SET.INDEX" {
            assert!(stop.is_null(), "{}", document.id);
            continue;
        }
        assert_eq!(stop["signal"], "STOP · DANGER", "{}", document.id);
        let text = stop["text"].as_str().expect("a text");
        if document.id.starts_with("TEA") {
            // The battery-electric type of the demo, whose parts have a source.
            assert!(text.contains("orange cables ["), "{}: {text}", document.id);
            assert!(!text.contains("no source"), "{}: {text}", document.id);
            continue;
        }
        // The lead's own words have no source here, and that is said and counted.
        assert!(text.contains(&format!("{parts} [no source]")), "{}: {text}", document.id);
        assert!(document.no_source.contains(&"system.heron.high_voltage".to_owned()), "{}", document.id);
    }
}
