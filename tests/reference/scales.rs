//! Temperature scales: a point on a scale is not a distance on it.

use bayleaf::quantity::{Reason, Temperature, TemperatureDifference, scalar};

use crate::sheet::Within::Absolute;
use crate::sheet::{Row, rows_of};

/// The unit as people write it.
fn symbol(row: &Row, column: &str) -> &'static str {
    match row.text(column) {
        "degC" | "per degC" => "°C",
        "degF" | "per degF" => "°F",
        "K" => "K",
        other => panic!("{}: unknown unit {other}", row.place()),
    }
}

/// 10c: conversions by the definitions of the scales, K = C + 273.15 and F = 1.8 C + 32.
#[test]
fn temperatures_and_differences_convert_by_their_own_rules() {
    let (mut points, mut distances, mut coefficients) = (0, 0, 0);
    for row in rows_of("10c_temperature_conversion.csv") {
        let unit = symbol(&row, "to");
        let written = format!("{} {}", row.text("value"), symbol(&row, "from"));
        let converted = match row.text("kind") {
            "absolute" => {
                points += 1;
                let at: Temperature = scalar(&written).expect("a temperature");
                point_in(at, unit)
            }
            "interval" => {
                distances += 1;
                // Without its ± sign it would be a point, and is refused.
                if symbol(&row, "from") != "K" {
                    let bare = scalar::<TemperatureDifference>(&written).map_err(|misread| misread.reason);
                    let refused = matches!(bare, Err(Reason::TemperatureForDifference { .. }));
                    assert!(refused, "{}: {bare:?}", row.place());
                }
                distance_in(scalar(&format!("± {written}")).expect("a difference"), unit)
            }
            // A coefficient per degree divides by the distance.
            "coefficient" => {
                coefficients += 1;
                row.number("value") / distance_in(scalar("± 1 °C").expect("a difference"), unit)
            }
            other => panic!("{}: unknown kind {other}", row.place()),
        };
        // Header: exact decimals, 1e-12.
        row.agrees("result", converted, Absolute(1e-12));
    }
    assert_eq!((points, distances, coefficients), (8, 3, 1), "every row of 10c");
}

fn point_in(at: Temperature, unit: &str) -> f64 {
    match unit {
        "°C" => at.celsius(),
        "°F" => at.fahrenheit(),
        _ => at.kelvins(),
    }
}

fn distance_in(distance: TemperatureDifference, unit: &str) -> f64 {
    match unit {
        "°F" => distance.fahrenheit_degrees(),
        _ => distance.kelvins(),
    }
}
