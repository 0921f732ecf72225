//! Temperature scales: a point on a scale is not a distance on it.

use bayleaf::physics::scale::{PrintedScales, compare};
use bayleaf::quantity::{Interval, Reason, Temperature, TemperatureDifference, scalar};

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

/// A panel's °F end that lies exactly half a °F digit from its °C end is rounding either
/// way: 17.5 °C is 63.5 °F, shown as 63 or as 64 (arithmetic of the definitions).
#[test]
fn half_a_digit_is_rounding_either_way() {
    let (c, f) = (Temperature::from_celsius, Temperature::from_fahrenheit);
    for step in -8..=12 {
        let celsius = 2.5 + 5.0 * f64::from(step);
        for half in [-0.5, 0.5] {
            let fahrenheit = 1.8 * celsius + 32.0;
            let shown = (fahrenheit + half).round();
            let found = compare(&PrintedScales {
                celsius: Interval { low: c(celsius), high: c(celsius) },
                celsius_digit: TemperatureDifference::from_kelvins(0.5),
                fahrenheit: Interval { low: f(shown), high: f(shown) },
                fahrenheit_digit: TemperatureDifference::from_kelvins(1.0 / 1.8),
            });
            let found = found.expect("both scales are finite");
            assert!(found.are_conversions(), "{celsius} °C and {shown} °F: {found:?}");
        }
    }
}
