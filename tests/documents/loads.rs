//! What the cards of actuators and switched loads say, against figures worked by hand.

use super::{demo, demo_with, documents};
use bayleaf::document::{self, Document, Edition};
use bayleaf::model::Model;
use bayleaf::words::{Language, Words};
use serde_json::Value;

fn card(model: &Model, id: &str) -> (Document, Value) {
    let found = documents(model, None).into_iter().find(|document| document.id == id);
    let document = found.expect("it is in the set");
    let data = serde_json::from_slice(&document.data).expect("data is JSON");
    (document, data)
}

/// A text of the data, with plain spaces.
fn text(value: &Value) -> String {
    value.as_str().unwrap_or_else(|| panic!("no text: {value}")).replace(['\u{a0}', '\u{202f}'], " ")
}

fn rows(value: &Value) -> Vec<Vec<String>> {
    let rows = value["rows"].as_array().expect("a grid has rows");
    rows.iter().map(|row| row.as_array().expect("cells").iter().map(text).collect()).collect()
}

#[test]
fn a_stop_is_its_ratio_times_the_reference_rounded_inward() {
    let (_, mix) = card(&demo(), "HER-MIX");
    // 8 % of 4.90 V is 0.392 V, 14 % of 5.10 V 0.714 V; 86 % of 4.90 V is 4.214 V, 92 % of 5.10 V 4.692 V.
    let figure = |index: usize| text(&mix["key_figures"][index]["value"]);
    assert_eq!([figure(0), figure(1), figure(2)], ["0.40–0.71", "4.22–4.69", "≤ 12"]);
    assert_eq!(text(&mix["direction"]), "more volts → more % → hottest");
}

#[test]
fn a_code_without_a_position_is_marked() {
    let (_, intake) = card(&demo(), "HER-INTAKE");
    let rows = rows(&intake["readings"]);
    // Four positions, and 2³ − 4 codes that are no position's.
    let illegal = |row: &&Vec<String>| row[0] == "✗ no position";
    assert_eq!((rows.len(), rows.iter().filter(illegal).count()), (8, 4));
    assert_eq!(rows[1], ["fresh air 20 %", "●", "●", "○"]);
}

#[test]
fn many_codes_without_a_position_are_counted() {
    let changed = demo_with(&[
        ("names = [\"A\", \"B\", \"C\"]", "names = [\"A\", \"B\", \"C\", \"D\"]"),
        ("[\"fresh air\", \"100\"]", "[\"fresh air\", \"1000\"]"),
        ("[\"fresh air 20 %\", \"110\"]", "[\"fresh air 20 %\", \"1100\"]"),
        ("[\"recirculation\", \"010\"]", "[\"recirculation\", \"0100\"]"),
        ("[\"shut\", \"011\"]", "[\"shut\", \"0110\"]"),
    ]);
    let (_, intake) = card(&changed, "HER-INTAKE");
    assert_eq!(rows(&intake["readings"]).len(), 4);
    let notes = intake["readings"]["notes"].to_string();
    assert!(notes.contains("12 codes"), "{notes}");
}

#[test]
fn a_motor_is_never_fed_where_nobody_said_that_it_may() {
    let fed = |model: &Model| {
        let (document, mix) = card(model, "HER-MIX");
        let rows = rows(&mix["motion"]);
        let row = rows.into_iter().find(|row| row[0] == "Motor fed by hand").expect("a row");
        (row[1].clone(), document.not_given)
    };
    assert_eq!(fed(&demo()).0, "fused leads, unmated");
    let unknown = demo_with(&[("stall = \"0.35 A to 0.70 A\"\nplain_dc = true\n", "")]);
    let (said, missing) = fed(&unknown);
    assert!(said.starts_with("NEVER") && missing.iter().any(|key| key.ends_with("motor.plain_dc")), "{said}");
}

/// A plot's line in the units of its axes, from the texts at their first and last ticks.
fn line(plot: &Value) -> Vec<(f64, f64)> {
    let axis = |ticks: &Value| {
        let ticks: Vec<(f64, f64)> = (ticks.as_array().expect("ticks").iter())
            .map(|tick| {
                let value = text(&tick["text"]).replace('−', "-").parse().expect("a number");
                (tick["at"].as_f64().expect("a place"), value)
            })
            .collect();
        let (first, last) = (ticks[0], ticks[ticks.len() - 1]);
        move |at: f64| first.1 + (at - first.0) * (last.1 - first.1) / (last.0 - first.0)
    };
    let (x, y) = (axis(&plot["x_ticks"]), axis(&plot["y_ticks"]));
    let points = plot["nominal"].as_array().expect("points");
    let number = |value: &Value| value.as_f64().expect("a number");
    points.iter().map(|point| (x(number(&point[0])), y(number(&point[1])))).collect()
}

#[test]
fn a_waveform_has_the_levels_times_and_mean_of_its_spec() {
    let (_, valve) = card(&demo(), "HER-VALVE");
    let volts = line(&valve["waveform"][0]);
    // Low side: 0.2 V of the switch while on; 13.8 V and 0.8 V of the diode while the current flows.
    let levels = |value: f64| volts.iter().filter(|(_, volts)| (volts - value).abs() < 0.01).count();
    assert_eq!(levels(0.2) + levels(14.6), volts.len(), "{volts:?}");
    // Two periods of 400 Hz are 5 ms; 40 % of the first are 1 ms.
    let end = volts.last().expect("points").0;
    let off = volts.iter().find(|(_, volts)| *volts > 1.0).expect("it goes off").0;
    assert!((end - 5.0).abs() < 0.01 && (off - 1.0).abs() < 0.01, "{end}, {off}");
    // (0.4 × 13.6 V − 0.6 × 0.8 V)/10.5 Ω = 0.4724 A, as the current never stops at 40 %.
    let amperes = line(&valve["waveform"][1]);
    let piece = |pair: &[(f64, f64)]| 0.5 * (pair[0].1 + pair[1].1) * (pair[1].0 - pair[0].0);
    let mean = amperes.windows(2).map(piece).sum::<f64>() / 5.0;
    assert!((mean - 4.96 / 10.5).abs() < 0.001, "{mean}");
}

#[test]
fn a_high_side_switch_is_seen_from_the_other_end() {
    let (_, valve) = card(&demo(), "CUR-VALVE");
    // 13.5 V less 0.3 V while on, 0.7 V below ground while off; no inductance, so no current.
    assert_eq!(valve["waveform"].as_array().expect("plots").len(), 1);
    let volts = line(&valve["waveform"][0]);
    assert!(volts.iter().all(|(_, v)| (v - 13.2).abs() < 0.01 || (v + 0.7).abs() < 0.01), "{volts:?}");
}

#[test]
fn without_a_side_or_a_battery_there_is_no_sketch() {
    for cut in [
        ("polarity = \"high side\"\npins = { control = \"S9/1\"", "pins = { control = \"S9/1\""),
        ("nominal = \"13.5 V\"\n", ""),
    ] {
        let (_, valve) = card(&demo_with(&[cut]), "CUR-VALVE");
        assert!(valve["waveform"].as_array().expect("plots").is_empty());
        assert!(valve["waveform_notes"].to_string().contains("NOT GIVEN"));
    }
}

#[test]
fn drops_that_are_not_given_are_counted() {
    let (document, _) = card(&demo(), "CUR-VALVE");
    for key in ["limits.supply_drop", "limits.ground_drop", "drive.inductance"] {
        let key = format!("driver.curlew-displacement.{key}");
        assert!(document.not_given.contains(&key), "{:?}", document.not_given);
    }
}

#[test]
fn a_wire_of_a_load_loses_what_ohm_says() {
    let (_, blower) = card(&demo(), "HER-BLOWER");
    let wire = rows(&blower["drops"]).pop().expect("rows");
    // 22 A × 4 m × 4.95 mΩ/m (IEC 60228, class 5) × (1 + 0.00393 × 60) at 80 °C = 0.5383 V; solid copper
    // 4 m × 1/58 Ω mm²/m / 4 mm² × 22 A × 1.2358 = 0.4688 V.
    assert!(wire[2].starts_with("0.47 V; ≤ 0.53 V"), "{wire:?}");
}

#[test]
fn a_choice_of_the_specs_is_said_in_the_language_of_the_paper() {
    let model = demo();
    let words = Words::of(Language::German);
    let date = "2026-11-24".parse().expect("a date");
    let context = Edition::of(&model, &words).context(&model, &words, date);
    let listed = document::list(&model);
    // What the specs may choose, as they write it.
    let english =
        ["low side", "high side", "more displacement", "less displacement", "transistor", "resistor pack"];
    let mut met = Vec::new();
    for id in ["CUR-VALVE", "HER-VALVE", "CUR-BLOWER", "HER-BLOWER"] {
        let listed = listed.iter().find(|listed| listed.id == id).expect("it is in the set");
        let document = document::compose(context, listed).expect("a listed document exists");
        let data: Value = serde_json::from_slice(&document.data).expect("data is JSON");
        let given = data["given"].as_array().expect("a card lists what it rests on");
        let values: Vec<String> = given.iter().map(|line| text(&line["value"])).collect();
        assert!(values.iter().all(|value| !english.contains(&value.as_str())), "{id}: {values:?}");
        met.extend(values);
    }
    for said in ["plusseitig", "mehr Hub", "Transistor", "Widerstände"] {
        assert!(met.iter().any(|value| value == said), "{said}: {met:?}");
    }
}
