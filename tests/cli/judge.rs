//! Stories of `judge` and `faults`: readings whose cause is known.

use serde_json::Value;

use super::{bayleaf, errors, folder, must_contain, said, write};

fn json(arguments: &[&str]) -> Value {
    let folder = folder();
    let output = bayleaf(folder.path(), &[arguments, &["--format", "json"]].concat());
    assert_eq!(output.status.code(), Some(0), "{arguments:?}: {}", errors(&output));
    serde_json::from_str(&said(&output)).expect("valid JSON")
}

fn judged(reading: &str, at: &str) -> Value {
    json(&["judge", "curlew-evaporator", "--reading", reading, "--at", at])
}

/// The cause of this name, with its sizes.
fn cause(judgement: &Value, fault: &str) -> Option<(f64, f64)> {
    let causes = judgement["causes"].as_array().expect("causes");
    let found = causes.iter().find(|cause| cause["fault"] == fault)?;
    Some((found["size_low"].as_f64()?, found["size_high"].as_f64()?))
}

/// 2.2 kΩ, 3500 K, 4.7 kΩ to 5 V, a 10 MΩ meter: 1745.2 Ω at 31 °C and 500 Ω more is
/// 1.616 V, which the unit takes for 24.5 °C (the figures of E1, worked in another language).
#[test]
fn a_bad_contact_is_judged_as_one() {
    let judgement = judged("1.616 V", "31 °C");
    assert_eq!(judgement["verdict"], "fail");
    assert_eq!(judgement["unit"], "V");
    let believed = judgement["believed_temperature_c"].as_f64().expect("believed");
    assert!((believed - 24.5).abs() < 0.06, "{believed}");
    let (low, high) = cause(&judgement, "series").expect("it explains the reading");
    assert!(low < 500.0 && 500.0 < high, "{low} to {high}");
    assert!(low > 200.0 && high < 900.0, "{low} to {high}");
    assert!(cause(&judgement, "leak").is_none(), "a leak lowers the volts: {judgement}");
    assert_eq!(judgement["remedy"], Value::Null);
    // Behind the bad contact the volts are those of a good sensor with less current, and
    // lower than any other suspect's: 5 V × 1745/(4700 + 500 + 1745) = 1.257 V.
    assert!(judgement["next"].as_str().is_some_and(|next| next.contains("volts at the sensor's plug")));
    let readings = judgement["next_readings"].as_array().expect("readings");
    let low = |reading: &Value| reading["low"].as_f64().expect("a number");
    let series = readings.iter().find(|reading| reading["fault"] == "series").expect("it is a suspect");
    assert!(low(series) < 1.257 && series["high"].as_f64() > Some(1.257), "{series}");
    let mut others = readings.iter().filter(|reading| reading["fault"] != "series");
    assert!(others.all(|other| series["high"].as_f64() < Some(low(other))), "{judgement}");
}

#[test]
fn a_verdict_follows_the_limits_and_the_guard() {
    let good = judged("1.354 V", "31 °C");
    assert_eq!(good["verdict"], "pass");
    let (low, high) = (good["limit_low"].as_f64().expect("low"), good["limit_high"].as_f64().expect("high"));
    let guard = good["guard"].as_f64().expect("guard");
    // 1.354 V ± (3.35 % of R, 1 % of Rp, 2 % of Vref): the corners by hand are 1.285 and 1.424 V.
    assert!((low - 1.285).abs() < 0.001 && (high - 1.424).abs() < 0.001, "{low} to {high}");
    let at = |volts: f64| judged(&format!("{volts:.4} V"), "31 °C")["verdict"].clone();
    assert_eq!(at(high - guard - 0.002), "pass");
    assert_eq!(at(high - 0.5 * guard), "undecided");
    assert_eq!(at(high + 0.5 * guard), "undecided");
    assert_eq!(at(high + guard + 0.002), "fail");
    let near = judged(&format!("{:.4} V", high - 0.5 * guard), "31 °C");
    assert!(near["remedy"].as_str().is_some_and(|remedy| remedy.contains("decided")), "{near}");
}

#[test]
fn an_open_line_and_an_unplugged_sensor_are_known() {
    let open = json(&["judge", "curlew-evaporator", "--reading", "OL", "--at", "31 °C"]);
    assert_eq!(open["verdict"], "fail");
    assert_eq!(open["causes"].as_array().map(Vec::len), Some(1));
    assert_eq!(open["causes"][0]["fault"], "open");
    let arguments = ["judge", "curlew-evaporator", "--at", "31 °C", "--place", "unplugged", "--reading"];
    let reference = json(&[&arguments[..], &["4.998 V"]].concat());
    assert_eq!(reference["verdict"], "pass", "the reference at an unplugged sensor: wire and unit are good");
    let nothing = json(&[&arguments[..], &["0 V"]].concat());
    assert_eq!(nothing["verdict"], "fail");
    let faults: Vec<&str> =
        nothing["causes"].as_array().expect("causes").iter().filter_map(|c| c["fault"].as_str()).collect();
    assert!(faults.contains(&"open wire") && faults.contains(&"short to ground"), "{faults:?}");
}

/// A sensor 5 % high with 100 Ω in its wires, read in ohms at the unit at two
/// temperatures: 1.05 × 6442.2 + 100 and 1.05 × 1745.2 + 100.
#[test]
fn a_second_reading_solves_for_two_faults() {
    let arguments =
        ["judge", "curlew-evaporator", "--place", "unit", "--reading", "1932.5 Ω", "--at", "31 °C"];
    let told = json(&[&arguments[..], &["--second", "6864.3 Ω@0 °C"]].concat());
    let pairs = told["pairs"].as_array().expect("pairs");
    let series = pairs.iter().find(|pair| pair["second"] == "series").expect("solved");
    let within = |low: &str, high: &str, value: f64| {
        series[low].as_f64().is_some_and(|low| low <= value)
            && series[high].as_f64().is_some_and(|high| value <= high)
    };
    assert!(within("shift_low", "shift_high", 5.0), "{series}");
    assert!(within("size_low", "size_high", 100.0), "{series}");
    assert_eq!(series["reasonable"], true);
    assert!(told["third"].as_str().is_some());
    let folder = folder();
    let mixed = bayleaf(folder.path(), &[&arguments[..], &["--second", "2.6 V@0 °C"]].concat());
    assert_eq!(mixed.status.code(), Some(2));
    must_contain(&errors(&mixed), "both readings must be volts, or both ohms");
}

#[test]
fn text_is_what_a_technician_can_read_aloud() {
    let folder = folder();
    let arguments = ["judge", "curlew-evaporator", "--reading", "1.616 V", "--at", "31 °C"];
    let text = said(&bayleaf(folder.path(), &arguments));
    must_contain(&text, "FAIL: outside its limits.");
    must_contain(
        &text,
        "Reads 1.616 V, volts at the control unit's connector, mated, key on, sensor at 31 °C.",
    );
    must_contain(&text, "high resistance in the wires: ");
    must_contain(
        &text,
        "sensor.curlew-evaporator.curve.beta; Curlew 3 maintenance manual, ch. 4, p. 31 (invented)",
    );
    let csv = said(&bayleaf(folder.path(), &[&arguments[..], &["--format", "csv"]].concat()));
    assert!(
        csv.starts_with("verdict,limit_low,limit_high,guard,unit,believed_temperature_c\nfail,"),
        "{csv}"
    );
}

/// The figures of E1, with the demo's meter: see tests/reference/faults.rs.
#[test]
fn faults_are_listed_with_what_they_read() {
    let rows = json(&["faults", "curlew-evaporator", "--at", "31 °C"]);
    let rows = rows.as_array().expect("an array");
    let row = |fault: &str, size: Option<&str>| {
        let same = |row: &&Value| row["fault"] == fault && size.is_none_or(|size| row["size"] == size);
        rows.iter().find(same).unwrap_or_else(|| panic!("no {fault} of {size:?}")).clone()
    };
    let near = |value: &Value, wanted: f64, within: f64| {
        assert!(value.as_f64().is_some_and(|value| (value - wanted).abs() <= within), "{value} for {wanted}");
    };
    let series = row("series", Some("500 Ω"));
    near(&series["resistance_ohm"], 2245.2, 0.1);
    near(&series["voltage_v"], 1.616, 0.001);
    near(&series["believed_temperature_c"], 24.5, 0.06);
    assert_eq!(series["separable"], true);
    let leak = row("leak", Some("1.00 MΩ"));
    assert_eq!(leak["separable"], false);
    let open = row("open", None);
    near(&open["voltage_v"], 4.998, 0.001);
    assert_eq!(open["resistance_ohm"], "OL");
    assert_eq!(open["believed_temperature_c"], Value::Null);
    near(&row("short to battery", None)["voltage_v"], 12.6, 1e-9);
    near(&row("unit still mated", None)["resistance_ohm"], 1272.6, 0.1);
    for row in rows {
        for key in ["fault", "size", "resistance_ohm", "voltage_v", "believed_temperature_c", "separable"] {
            assert!(row.get(key).is_some(), "{row} has no {key}");
        }
    }
}

#[test]
fn what_cannot_be_judged_is_refused_with_the_reason() {
    let folder = folder();
    let refused = |arguments: &[&str], wanted: &str| {
        let output = bayleaf(folder.path(), arguments);
        assert_eq!(output.status.code(), Some(2), "{arguments:?}");
        must_contain(&errors(&output), wanted);
    };
    let judge = |id, reading, at| ["judge", id, "--reading", reading, "--at", at];
    refused(&judge("curlew-evaporatr", "1 V", "31 °C"), "did you mean `curlew-evaporator`?");
    refused(&judge("heron-mix", "2 V", "31 °C"), "`bayleaf faults heron-mix` lists what its faults read");
    refused(&judge("curlew-evaporator", "1", "31 °C"), "expected a reading with its unit");
    refused(
        &judge("curlew-evaporator", "1 V", "61 °C"),
        "lies outside the range of `curlew-evaporator`, -20 °C to 60 °C",
    );
    refused(&judge("curlew-evaporator", "400 V", "31 °C"), "STOP: more than 60 V DC");
    refused(&judge("curlew-evaporator", "1e12 Ω", "31 °C"), "expected a reading with its unit");
    refused(&judge("curlew-evaporator", "5000 MΩ", "31 °C"), "write OL for an open line");
    // A tenth of a kelvin apart is one temperature to a thermometer of ± 0.3 K.
    let second = ["--second", "1.36 V@31.1 °C"];
    refused(
        &[&judge("curlew-evaporator", "1.354 V", "31 °C")[..], &second].concat(),
        "further from the first",
    );
    let twice = ["--instrument", "probe", "--instrument", "clamp-probe"];
    refused(
        &[&judge("curlew-evaporator", "1 V", "31 °C")[..], &twice].concat(),
        "a second instrument of its kind",
    );
    refused(&[&judge("curlew-evaporator", "1 V", "31 °C")[..], &twice[..2]].concat(), "NOT GIVEN: meter");
    // The tolerance in kelvin reaches beyond the table's end.
    refused(&judge("heron-outside", "168 kΩ", "-22 °F"), "beyond the end of its table");
    // Its documents give no tolerance.
    refused(&judge("heron-line", "1.6 V", "31 °C"), "is NOT GIVEN");
    refused(
        &["faults", "curlew-evaporator", "--at", "31 °C", "--instrument", "metre"],
        "did you mean `meter`?",
    );
    write(
        folder.path(),
        "specs/a.toml",
        "[shop]\ntitle = \"A\"\npaper = \"A4\"\n[system.s]\ntitle = \"S\"\nreference = \"5 V ± 2 %\"\n\
        [sensor.x]\ntitle = \"X\"\nsystem = \"s\"\nrange = \"0 °C to 40 °C\"\ncurve = { model = \"beta\", resistance = \"2.2 kΩ\", at = \"25 °C\", beta = \"3500 K\" }\n\
        tolerance = { resistance = \"3 %\", beta = \"1 %\" }\n",
    );
    refused(&judge("x", "1745 Ω", "31 °C"), "no rule to decide by");
}

#[test]
fn the_readme_shows_what_the_program_says() {
    let readme = include_str!("../../README.md");
    let block =
        readme.split("$ bayleaf judge ").nth(1).and_then(|rest| rest.split("```").next()).expect("a block");
    let (command, shown) = block.split_once('\n').expect("a command and its answer");
    assert_eq!(command, "curlew-evaporator --reading \"1.616 V\" --at \"31 °C\"");
    let folder = folder();
    let said = said(&bayleaf(
        folder.path(),
        &["judge", "curlew-evaporator", "--reading", "1.616 V", "--at", "31 °C"],
    ));
    for line in shown.lines().filter(|line| line.trim() != "…") {
        assert!(said.lines().any(|said| said == line), "the README shows `{line}`, the program says\n{said}");
    }
}
