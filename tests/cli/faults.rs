//! Stories of `faults` for feedbacks, coils, transducers and light sensors, and what
//! the notes of a sensor's dictionary say.

use serde_json::Value;
use tempfile::TempDir;

use super::{bayleaf, errors, folder, must_contain, said, write};

/// The keys that every kind has.
const KEYS: [&str; 6] =
    ["fault", "size", "resistance_ohm", "voltage_v", "believed_temperature_c", "separable"];

/// A feedback of tests/reference/03d: 5 kΩ, 47 kΩ to ground; its stops are that
/// file's readings at 20 % and 80 % of the track. No instrument.
const FEEDBACK: &str = r#"
[shop]
title = "A"
paper = "A4"

[system.s]
title = "S"
reference = "5 V ± 2 %"

[actuator.door]
title = "Door"
system = "s"

[actuator.door.feedback]
track = "5 kΩ ± 20 %"
load = "47 kΩ ± 5 %"
load_to = "ground"

[actuator.door.stops]
low = { name = "cold", ratio = "17 % to 22 %", nominal = "19.66527196 %" }
high = { name = "hot", ratio = "76 % to 81 %", nominal = "78.6610878 %" }

[driver.valve]
kind = "clutch"
title = "Valve"
system = "s"
coil = { resistance = "10.5 Ω ± 5 %", at = "20 °C" }
drive = { battery = "12.0 V to 14.5 V", nominal = "13.8 V" }

[transducer.pressure]
title = "Pressure"
system = "s"
pressure = "gauge"
low = { pressure = "0 kPa", ratio = "10 %" }
high = { pressure = "3200 kPa", ratio = "90 %" }
accuracy = "1 %"
"#;

fn set(text: &str) -> TempDir {
    let folder = folder();
    write(folder.path(), "specs/a.toml", text);
    folder
}

fn listed(folder: &TempDir, arguments: &[&str]) -> Vec<Value> {
    let arguments = [&["faults"], arguments, &["--format", "json"]].concat();
    let output = bayleaf(folder.path(), &arguments);
    assert_eq!(output.status.code(), Some(0), "{arguments:?}: {}", errors(&output));
    let rows: Vec<Value> = serde_json::from_str(&said(&output)).expect("an array");
    for row in &rows {
        for key in KEYS {
            assert!(row.get(key).is_some(), "{row} has no {key}");
        }
    }
    rows
}

fn row<'a>(rows: &'a [Value], fault: &str, size: Option<&str>) -> &'a Value {
    let same = |row: &&Value| row["fault"] == fault && size.is_none_or(|size| row["size"] == size);
    rows.iter().find(same).unwrap_or_else(|| panic!("no {fault} of {size:?}"))
}

#[track_caller]
fn near(value: &Value, wanted: f64, within: f64) {
    assert!(value.as_f64().is_some_and(|value| (value - wanted).abs() <= within), "{value} for {wanted}");
}

/// Volts of slipped wipers as simulated in 03d at 25 % and 10 % of the track; the rest by Ohm's law.
#[test]
fn the_faults_of_a_feedback_read_as_simulated() {
    let folder = set(FEEDBACK);
    let rows = listed(&folder, &["door", "--position", "0 %"]);
    let (low, high) = (0.983_263_598, 3.933_054_39);
    near(&row(&rows, "slipped", Some("+5 %"))["voltage_v"], 1.225_554_11, 2e-8);
    near(&row(&rows, "slipped", Some("−10 %"))["voltage_v"], 0.495_258_166, 2e-8);
    let believed = 100.0 * (1.225_554_11 - low) / (high - low);
    near(&row(&rows, "slipped", Some("+5 %"))["believed_position_percent"], believed, 1e-5);
    // 47 kΩ to ground behind the 4 kΩ that are left of the track: 5 V × 47/51.
    near(&row(&rows, "return lost", None)["voltage_v"], 5.0 * 47.0 / 51.0, 1e-4);
    assert_eq!(row(&rows, "return lost", None)["resistance_ohm"], "OL");
    near(&row(&rows, "return lost", None)["resistance_to_reference_ohm"], 4000.0, 0.01);
    assert_eq!(row(&rows, "wiper open", None)["voltage_v"], 0.0);
    near(&row(&rows, "wiper open", None)["resistance_end_to_end_ohm"], 5000.0, 1e-9);
    near(&row(&rows, "contact resistance", Some("1.00 kΩ"))["resistance_ohm"], 2000.0, 0.01);
    let short = row(&rows, "short to return", None);
    near(&short["believed_position_percent"], 100.0 * -low / (high - low), 1e-5);
    assert_eq!(short["believed_temperature_c"], Value::Null);
    assert_eq!(short["separable"], true);
    // 100 Ω of contact behind 47 kΩ move the volts by 2 ‰ of a window of ± 13 %.
    assert_eq!(row(&rows, "contact resistance", Some("100 Ω"))["separable"], false);
    // A return that is lost and a track that is broken there are the same to a meter.
    assert!(row(&rows, "return lost", None)["alike"].as_str().is_some_and(|alike| alike.contains('2')));
}

#[test]
fn a_feedback_is_listed_at_both_stops_where_no_position_is_given() {
    let folder = set(FEEDBACK);
    let rows = listed(&folder, &["actuator.door"]);
    let positions: Vec<&Value> = rows.iter().map(|row| &row["position_percent"]).collect();
    assert_eq!((positions.first(), positions.last()), (Some(&&Value::from(0.0)), Some(&&Value::from(100.0))));
    let middle = listed(&folder, &["door", "--position", "50 %"]);
    assert_eq!(rows.len(), 2 * middle.len());
    // 50 % of the way from 20 % to 80 % of the track; 47/(47 + 2.5) there.
    near(&row(&middle, "track open to return", None)["voltage_v"], 5.0 * 47.0 / 49.5, 1e-4);
    let text = said(&bayleaf(folder.path(), &["faults", "door"]));
    must_contain(&text, "Good at 0 % (cold), V: 0.983 V");
    must_contain(&text, "Without an instrument");
    must_contain(&text, "Its own temperature has no part");
}

/// Copper: 10.5 Ω × (1 + 0.00393 × 11) = 10.954 Ω at 31 °C.
#[test]
fn the_faults_of_a_coil_follow_copper_and_ohms_law() {
    let folder = set(FEEDBACK);
    let rows = listed(&folder, &["driver.valve", "--at", "31 °C"]);
    let coil = 10.5 * (1.0 + 0.003_93 * 11.0);
    let series = row(&rows, "series", Some("1.00 Ω"));
    near(&series["resistance_ohm"], coil + 1.0, 1e-9);
    near(&series["current_a"], 13.8 / (coil + 1.0), 1e-9);
    near(&series["voltage_v"], 13.8 * coil / (coil + 1.0), 1e-9);
    // Without an instrument ± 5 % is 0.55 Ω: 1 Ω overlaps by 0.1 Ω, 5 Ω and half the turns do not.
    assert_eq!(series["separable"], false);
    assert_eq!(row(&rows, "series", Some("5.00 Ω"))["separable"], true);
    assert_eq!(row(&rows, "shorted turns", Some("5 %"))["separable"], false);
    let turns = row(&rows, "shorted turns", Some("50 %"));
    assert_eq!(turns["separable"], true);
    near(&turns["resistance_ohm"], coil / 2.0, 1e-9);
    near(&turns["current_a"], 13.8 / (coil / 2.0), 1e-9);
    // Hotter by 60 K: 10.5 Ω × (1 + 0.00393 × 71).
    near(&row(&rows, "other temperature", Some("+60 K"))["resistance_ohm"], 10.5 * 1.279_03, 1e-9);
    let (open, wire) = (row(&rows, "open", None), row(&rows, "open wire", None));
    assert_eq!((&open["resistance_ohm"], &wire["resistance_ohm"]), (&"OL".into(), &"OL".into()));
    assert_eq!((open["voltage_v"].as_f64(), wire["voltage_v"].as_f64()), (Some(13.8), Some(0.0)));
    assert_eq!(row(&rows, "shorted", None)["current_a"], Value::Null);
    assert!(rows.iter().all(|row| row["believed_temperature_c"].is_null()));
}

/// 0.5 V to 4.5 V over 3200 kPa: 1.25 mV per kPa.
#[test]
fn the_faults_of_a_transducer_lie_on_its_line() {
    let folder = set(FEEDBACK);
    let rows = listed(&folder, &["pressure", "--pressure", "300 kPa"]);
    let offset = row(&rows, "offset", Some("+100 kPa"));
    near(&offset["voltage_v"], 0.5 + 0.001_25 * 400.0, 1e-9);
    near(&offset["believed_pressure_kpa"], 400.0, 1e-6);
    // The windows are ± 40 mV of accuracy and ± 2 % of reference: 100 kPa is 125 mV, 30 kPa is 37.5 mV.
    assert_eq!(offset["separable"], true);
    assert_eq!(row(&rows, "offset", Some("+30 kPa"))["separable"], false);
    near(&row(&rows, "short to return", None)["believed_pressure_kpa"], -400.0, 1e-6);
    near(&row(&rows, "short to reference", None)["voltage_v"], 5.0, 1e-9);
    let open = row(&rows, "signal open", None);
    assert_eq!((&open["voltage_v"], &open["separable"]), (&Value::Null, &Value::Null));
    assert!(rows.iter().all(|row| row["fault"] != "other sense"), "the shop gives no elevation");
    let both = listed(&folder, &["pressure"]);
    let pressures: Vec<Option<f64>> = both.iter().map(|row| row["pressure_kpa"].as_f64()).collect();
    assert_eq!((pressures.first(), pressures.last()), (Some(&Some(0.0)), Some(&Some(3200.0))));
    // Without a clamp nobody knows what lies below the line's end.
    assert_eq!(row(&both, "offset", Some("−100 kPa"))["voltage_v"], Value::Null);
}

/// 340 m above the sea: 101.325 kPa × (1 − 2.25577e-5 × 340)^5.2559 = 97.31 kPa (standard atmosphere).
#[test]
fn an_absolute_part_for_a_gauge_one_is_off_by_the_air() {
    let rows = listed(&folder(), &["heron-discharge", "--pressure", "0 kPa"]);
    let other = row(&rows, "other sense", None);
    near(&other["believed_pressure_kpa"], 97.31, 0.01);
    assert_eq!(other["separable"], false, "0.125 V are inside 2 % of the span and 2 % of the reference");
}

#[test]
fn a_light_sensor_is_listed_in_the_dark_and_in_light() {
    let rows = listed(&folder(), &["heron-sun"]);
    let of = |fault: &str, light: f64| {
        rows.iter().find(|row| row["fault"] == fault && row["irradiance_w_per_m2"] == light).expect("a row")
    };
    // 5 V through 2.7 kΩ into a 10 MΩ meter.
    near(&of("open", 0.0)["voltage_v"], 5.0 / (1.0 + 2.7e3 / 10e6), 1e-9);
    assert_eq!(of("open", 0.0)["separable"], false, "a good one in the dark reads the same");
    assert_eq!(of("open", 1000.0)["separable"], true);
    assert_eq!(of("shorted", 0.0)["voltage_v"], 0.0);
}

/// 5 V × 10 MΩ/(10 MΩ + 4.7 kΩ); 1.8 kΩ beside 10 MΩ below 4.7 kΩ; 30.2 °C is worked in
/// the doc test of `physics::preferred::substitute`.
#[test]
fn the_notes_of_a_sensor_name_harness_volts_and_a_substitute() {
    let text = said(&bayleaf(folder().path(), &["faults", "curlew-cabin", "--at", "31 °C"]));
    must_contain(&text, "Sensor unplugged, at the harness side of its plug, key on: 4.998 V");
    must_contain(&text, "1.80 kΩ in place of the sensor: 1.384 V");
    must_contain(&text, "the unit then believes 30.2 °C");
}

#[test]
fn words_begin_below_their_head_and_numbers_end_there() {
    let text = said(&bayleaf(folder().path(), &["faults", "curlew-cabin", "--at", "31 °C"]));
    let lines: Vec<&str> = text.lines().collect();
    let head = lines.iter().find(|line| line.trim_start().starts_with("fault ")).expect("a head");
    let row = lines.iter().find(|line| line.contains("sensor shorted")).expect("a row");
    let place = |line: &str, what: &str| line.find(what).map(|byte| line[..byte].chars().count());
    assert_eq!(place(head, "fault"), place(row, "sensor shorted"));
    assert_eq!(place(head, "told from good"), place(row, "yes"));
    let row = lines.iter().find(|line| line.contains("  500 Ω  ")).expect("a row");
    let end = |line: &str, what: &str| place(line, what).map(|start| start + what.chars().count());
    assert_eq!(end(head, "unit believes °C"), end(row, "24.5"));
    assert!(lines.iter().all(|line| line.trim_end() == *line), "no line ends in spaces");
    let table = said(&bayleaf(folder().path(), &["table", "heron-intake"]));
    must_contain(&table, "\nposition        contacts\nfresh air       100\n");
}

#[test]
fn arguments_without_effect_are_refused() {
    let folder = set(FEEDBACK);
    let refused = |arguments: &[&str], wanted: &str| {
        let output = bayleaf(folder.path(), &[&["faults"], arguments].concat());
        assert_eq!(output.status.code(), Some(2), "{arguments:?}");
        must_contain(&errors(&output), wanted);
    };
    refused(&["door", "--pressure", "3 bar"], "`--pressure` is for pressure transducers");
    refused(&["pressure", "--position", "50 %"], "`--position` is for actuators");
    refused(&["valve", "--at", "31 °C", "--place", "unit"], "`--place` is for sensors");
    refused(&["valve"], "depends on its temperature");
    refused(&["valve", "--at", "900 °C"], "lies outside the range");
    refused(&["pressure", "--pressure", "5 MPa"], "lies beyond the line");
    refused(&["door", "--position", "130 %"], "expected a position");
    refused(&["dor"], "did you mean `door`?");
}
