//! The fault rows of a sensor card are those of `bayleaf faults`, and its signatures grow
//! where the reference says.

use bayleaf::document::faults::{self, Ask};
use bayleaf::quantity::Temperature;
use bayleaf::spec::About;
use bayleaf::words::Words;
use serde_json::Value;

use super::{demo, documents};

fn text(value: &Value) -> &str {
    value.as_str().expect("a text")
}

#[test]
fn the_fault_rows_of_a_card_are_those_of_the_dictionary() {
    let model = demo();
    let words = Words::english();
    let mut checked = 0;
    for document in documents(&model, None) {
        let Some(id) = model.cards.get(&document.id).and_then(|card| card.of(About::Sensor)) else {
            continue;
        };
        let data: Value = serde_json::from_slice(&document.data).expect("data is JSON");
        // A wall card leaves them to its sensor card.
        let Some(columns) = data["faults"]["columns"].as_array() else { continue };
        for (first, column) in columns.iter().enumerate().skip(1).step_by(3) {
            let celsius = text(&column["head"]).replace('−', "-").replace("\u{a0}°C", "");
            let at = Temperature::from_celsius(celsius.parse().expect("a temperature"));
            let table = faults::of(&model, &words, &Ask { id, at: Some(at), ..Ask::default() });
            let rows = table.expect("it has a dictionary").texts();
            for row in data["faults"]["rows"].as_array().expect("rows") {
                let cell = |index: usize| text(&row[index]).trim_matches(['(', ')']).replace('-', "−");
                let wanted = [cell(first), cell(first + 1), cell(first + 2)];
                // A part whose curve does not reach that far.
                if wanted.iter().all(|cell| cell == "–") {
                    continue;
                }
                // Number, fault, size, then ohms, volts and belief.
                let same = |row: &Vec<String>| row[3..6].iter().zip(&wanted).all(|(a, b)| a == b);
                assert!(rows.iter().any(same), "{}: {wanted:?} at {celsius} °C", document.id);
                checked += 1;
            }
        }
    }
    assert!(checked > 500, "only {checked} rows");
}

/// Series resistance is wrong where the sensor has few ohms, hot; leakage where it has
/// many, cold; a part that is off by a percentage nearly everywhere alike (common practice,
/// no source; the same in tests/reference/e1_signatures.csv).
#[test]
fn faults_in_the_wires_grow_at_opposite_ends() {
    let data = documents(&demo(), None);
    let card = data.iter().find(|document| document.id == "CUR-EVAP").expect("it is listed");
    let data: Value = serde_json::from_slice(&card.data).expect("data is JSON");
    let ends = |panel: usize, line: usize| {
        [0, 1].map(|end| {
            let text = text(&data["signature"]["panels"][panel]["lines"][line]["ends"][end]).to_owned();
            text.replace('−', "-").replace('+', "").parse::<f64>().expect("a number")
        })
    };
    let [series, leak, shifted] = [ends(0, 0), ends(0, 1), ends(1, 0)];
    assert!(series[1] < series[0] && series[0] < 0.0, "{series:?}: reads too cold, most when hot");
    assert!(leak[0] > leak[1] && leak[1] > 0.0, "{leak:?}: reads too hot, most when cold");
    let spread = (shifted[1] / shifted[0] - 1.0).abs();
    assert!(spread < 0.5, "{shifted:?}: alike at both ends");
}
