//! The tables of refrigerants and vents, from a spec to their cells.
//!
//! Figures are those of published tables or worked elsewhere, at a shop by the sea.

use bayleaf::diag::{Findings, Sources};
use bayleaf::document::table::{Ask, Cell, Table, of};
use bayleaf::model::{self, Model};
use bayleaf::quantity::{Step, Temperature};
use bayleaf::rules;
use bayleaf::spec::{self, Set};
use bayleaf::words::Words;

/// A shop at `elevation` with one refrigerant and one vent, all of it invented.
fn shop(elevation: Option<&str>, duty: &str) -> Model {
    let elevation = elevation.map(|height| format!("elevation = \"{height}\"\n")).unwrap_or_default();
    let text = format!(
        r#"
[shop]
title = "Shop"
paper = "A4"
{elevation}
[system.s]
title = "System"

[instrument.probe]
kind = "thermometer"
title = "Probe"
accuracy = "0.5 K"

[instrument.hygrometer]
kind = "hygrometer"
title = "Hygrometer"
accuracy = "3 %"

[instrument.gauge]
kind = "pressure gauge"
title = "Gauge"
accuracy_of_full_scale = "1.6 %"
full_scale = "10 bar"

[refrigerant.r]
title = "Saturation"
system = "s"
fluid = "R-134a"
low_gauge = "gauge"
thermometer = "probe"
superheat = "4 K to 9 K"
at_rest = "3 K"

[vent.v]
title = "Outlets"
system = "s"
duty = "{duty}"
outlet_humidity = "95 %"
ambient = "31 °C to 31 °C"
ambient_step = "1 K"
humidity = "20 % to 80 %"
humidity_step = "30 %"
evaporator = "2 °C to 6 °C"
thermometer = "probe"
hygrometer = "hygrometer"
position = [{{ name = "outside", outside = "100 %" }}, {{ name = "cabin", outside = "0 %" }}]
"#
    );
    let mut sources = Sources::default();
    sources.add("shop.toml".to_owned(), text);
    let findings = Findings::default();
    let set = Set::read(&sources, &findings);
    rules::check(&set, &findings);
    assert!(!findings.has_errors(), "{:?}", findings.sorted());
    model::build(&set).expect("there is no error")
}

fn table(model: &Model, id: &str) -> Table {
    let words = Words::english();
    of(model, &words, &Ask { id, ..Ask::default() }).expect("there is such a table")
}

/// The cell of a row in a column.
fn cell<'a>(table: &'a Table, row: usize, key: &str) -> &'a Cell {
    let index = table.columns.iter().position(|column| column.key == key);
    &table.rows[row][index.unwrap_or_else(|| panic!("no column {key}"))]
}

fn number(table: &Table, row: usize, key: &str) -> f64 {
    match cell(table, row, key) {
        Cell::Number(number) => *number,
        other => panic!("{key} of row {row} is {other:?}"),
    }
}

#[test]
fn gauge_readings_are_those_of_the_site() {
    let sea = table(&shop(Some("0 m"), "30 kJ/kg ± 10 %"), "r");
    // tests/reference/05a: R-134a at 0 °C, the seventh row from -30 °C in steps of 5 K.
    assert!((number(&sea, 6, "absolute_kpa") / 292.803_18 - 1.0).abs() < 5e-4);
    assert!((number(&sea, 6, "gauge_kpa") - 191.478_18).abs() < 0.15);
    assert!((number(&sea, 6, "gauge_psi") - 27.771_562).abs() < 0.03);
    assert!((number(&sea, 6, "gauge_bar") - 1.914_781_8).abs() < 0.002);
    // At -30 °C it boils in a vacuum, which is a reading and no error.
    assert!((number(&sea, 0, "gauge_kpa") + 16.947_257).abs() < 0.05);
    assert_eq!(cell(&sea, 0, "mark"), &Cell::Text("vacuum".to_owned()));
    assert_eq!(cell(&sea, 6, "mark"), &Cell::Text(String::new()));
    // 1600 m: about 18 kPa more on the gauge (a worked figure of the trade).
    let high = table(&shop(Some("1600 m"), "30 kJ/kg ± 10 %"), "r");
    let more = number(&high, 6, "gauge_kpa") - number(&sea, 6, "gauge_kpa");
    assert!((more - 18.0).abs() < 0.5, "{more}");
}

#[test]
fn a_shop_without_elevation_gets_no_gauge_readings() {
    let nowhere = table(&shop(None, "30 kJ/kg ± 10 %"), "r");
    assert!((number(&nowhere, 6, "absolute_kpa") / 292.803_18 - 1.0).abs() < 5e-4);
    for key in ["gauge_kpa", "gauge_bar", "gauge_psi", "superheat_u_k", "at_rest_min_kpa"] {
        assert_eq!(cell(&nowhere, 6, key), &Cell::Missing, "{key}");
    }
    assert!(nowhere.inputs.iter().any(|fact| fact.key == "shop.elevation" && fact.is_missing()));
    let air = table(&shop(None, "30 kJ/kg ± 10 %"), "v");
    assert_eq!(cell(&air, 1, "outlet_nom_c"), &Cell::Missing);
}

#[test]
fn superheat_is_as_uncertain_as_its_gauge() {
    let sea = table(&shop(Some("0 m"), "30 kJ/kg ± 10 %"), "r");
    // ± 16 kPa of gauge, ± 2 kPa of weather over dp/dT = 10.63 kPa/K (neighbours in 05a), ± 0.5 K.
    let per_kelvin = (349.658_61 - 243.342_37) / 10.0;
    let parts = [16.0 / per_kelvin, 2.0 / per_kelvin, 0.5, 0.0005 * 292.8 / per_kelvin];
    let by_hand = 2.0 * (parts.iter().map(|part| part * part / 3.0).sum::<f64>()).sqrt();
    assert!((number(&sea, 6, "superheat_u_k") - by_hand).abs() < 0.01, "{by_hand}");
    assert!((number(&sea, 6, "suction_line_min_c") - 4.0).abs() < 1e-9);
    assert!((number(&sea, 6, "suction_line_max_c") - 9.0).abs() < 1e-9);
    // 60 °C is beyond a 10 bar gauge; subcooling has no gauge and no window here.
    assert_eq!(cell(&sea, 18, "superheat_u_k"), &Cell::Missing);
    assert_eq!(cell(&sea, 6, "subcooling_u_k"), &Cell::Missing);
    assert_eq!(cell(&sea, 6, "liquid_line_min_c"), &Cell::Missing);
    // At rest: inside saturation ± 3 K by U; near -30 °C the gauge proves nothing.
    let (least, greatest) = (number(&sea, 11, "at_rest_min_kpa"), number(&sea, 11, "at_rest_max_kpa"));
    let nominal = number(&sea, 11, "gauge_kpa");
    assert!(least < nominal && nominal < greatest && greatest - least < 6.0 * 19.9);
    assert_eq!(cell(&sea, 0, "at_rest_min_kpa"), &Cell::Missing);
}

#[test]
fn humid_air_leaves_warmer_and_drips() {
    let sea = table(&shop(Some("0 m"), "30 kJ/kg ± 10 %"), "v");
    // A worked figure of the trade: 31 °C and 30 kJ/kg leave at 3.7, 13.7 and 21.3 °C.
    for (row, published) in [(0, 3.7), (1, 13.7), (2, 21.3)] {
        let nominal = number(&sea, row, "outlet_nom_c");
        assert!((nominal - published).abs() < 0.05, "{nominal}");
        assert!(number(&sea, row, "outlet_min_c") < nominal && nominal < number(&sea, row, "outlet_max_c"));
    }
    // The corner of the driest air lies below the evaporator's 2 °C, which no air leaves colder than.
    assert!((number(&sea, 0, "outlet_min_c") - 2.0).abs() < 1e-9);
    assert_eq!(cell(&sea, 0, "mark"), &Cell::Text("min: evaporator control".to_owned()));
    assert_eq!(cell(&sea, 1, "mark"), &Cell::Text(String::new()));
    // By hand, 31 °C at 80 % to 21.3 °C at 95 %: 23.0 − 15.2 g/kg × 4.186 kJ/(kg K) × 21.3 K = 0.70 of 30 kJ/kg.
    let share = sea.formulas.iter().find(|formula| formula.contains("settled water"));
    let share = share.expect("water settles");
    assert!(["2.3 %", "2.4 %"].iter().any(|percent| share.contains(percent)), "{share}");
    let drips: Vec<&Cell> = (0..3).map(|row| cell(&sea, row, "dripping")).collect();
    // Dew points 5.4, 19.4 and 27.2 °C against an evaporator of 2 °C to 6 °C.
    let expected = ["undecided", "yes", "yes"].map(|word| Cell::Text(word.to_owned()));
    assert_eq!(drips, expected.iter().collect::<Vec<_>>());
    // The door on cabin air has one row, and the cabin's air was not given.
    assert_eq!(sea.rows.len(), 4);
    assert_eq!(cell(&sea, 3, "outlet_nom_c"), &Cell::Missing);
    assert_eq!(cell(&sea, 3, "outside_c"), &Cell::Missing);
}

#[test]
fn a_duty_without_a_tolerance_gives_no_limits() {
    let sea = table(&shop(Some("0 m"), "30 kJ/kg"), "v");
    assert!((number(&sea, 1, "outlet_nom_c") - 13.7).abs() < 0.05);
    assert_eq!(cell(&sea, 1, "outlet_min_c"), &Cell::Missing);
    assert_eq!(cell(&sea, 1, "outlet_max_c"), &Cell::Missing);
    // 40 kJ/kg would cool the driest air below the evaporator: control does not let it.
    let strong = table(&shop(Some("0 m"), "40 kJ/kg ± 10 %"), "v");
    assert_eq!(cell(&strong, 0, "outlet_nom_c"), &Cell::Missing);
    assert_eq!(cell(&strong, 0, "mark"), &Cell::Text("evaporator control".to_owned()));
}

#[test]
fn saturation_is_not_asked_for_where_there_is_none() {
    let findings = Findings::default();
    let set = Set::read(&spec::demo(), &findings);
    let model = model::build(&set).expect("the demo set is clean");
    let words = Words::english();
    let ask = |to: f64| {
        let (from, step) = (Temperature::from_celsius(0.0), Step::of_kelvins(1.0));
        let to = Temperature::from_celsius(to);
        of(
            &model,
            &words,
            &Ask {
                id: "curlew-rear-refrigerant",
                from: Some(from),
                to: Some(to),
                step: Some(step),
                ..Ask::default()
            },
        )
    };
    assert_eq!(ask(30.0).expect("saturated").rows.len(), 31);
    let refused = ask(32.0).expect_err("above the critical point");
    assert!(words.say(&refused).contains("lies outside the range"), "{}", words.say(&refused));
    // Every refrigerant's table says who may open a circuit.
    let notes = ask(30.0).expect("saturated").notes.join(" ");
    assert!(notes.contains("licensed people"), "{notes}");
}
