//! Preferred numbers of IEC 60063.

use bayleaf::physics::curve::{BetaCurve, Curve};
use bayleaf::physics::preferred::{Series, substitute};
use bayleaf::quantity::{Beta, Resistance, Temperature};

use crate::sheet::Within::{Absolute, Relative};
use crate::sheet::{meets, rows_of};

fn named(name: &str) -> Series {
    match name {
        "E3" => Series::E3,
        "E6" => Series::E6,
        "E12" => Series::E12,
        "E24" => Series::E24,
        "E96" => Series::E96,
        other => panic!("no check for series {other}"),
    }
}

/// 10a: every value of every series that is listed.
#[test]
fn a_series_has_the_values_of_the_standard() {
    let mut checked = 0;
    for row in rows_of("10a_e_series.csv") {
        let values: Vec<u16> =
            row.text("values").split(' ').map(|value| value.parse().expect("a number")).collect();
        assert_eq!(named(row.text("series")).numbers(), values, "{}", row.place());
        checked += 1;
    }
    assert_eq!(checked, 5, "every row of 10a");
    // From memory: E48 starts 100, 105, 110, 115, 121 and ends 866, 909, 953.
    let e48 = Series::E48.numbers();
    assert_eq!(
        (e48.len(), &e48[..5], &e48[45..]),
        (48, &[100, 105, 110, 115, 121][..], &[866, 909, 953][..])
    );
}

/// 10b: nearest by difference and by ratio, lower, upper. The values are exact.
#[test]
fn the_nearest_value_depends_on_how_near_is_meant() {
    let (mut checked, mut differ) = (0, 0);
    for row in rows_of("10b_nearest_preferred.csv") {
        let series = named(row.text("series"));
        let wanted = row.ohms("x");
        let found = |value: Option<Resistance>| value.map_or(f64::NAN, Resistance::ohms);
        row.agrees("nearest_abs", found(series.nearest_by_difference(wanted)), Relative(0.0));
        row.agrees("nearest_log", found(series.nearest_by_ratio(wanted)), Relative(0.0));
        row.agrees("lower", found(series.lower(wanted)), Relative(0.0));
        row.agrees("upper", found(series.upper(wanted)), Relative(0.0));
        if row.text("nearest_abs") != row.text("nearest_log") {
            differ += 1;
        }
        checked += 1;
    }
    // Row E12, 4290: 3900 is nearer in ohms, 4700 in percent.
    assert_eq!((checked, differ), (18, 1), "every row of 10b");
}

/// The substitute resistor of common practice (no source): E1 at 31 °C, 1745.2 Ω in
/// e1_invented.csv; 1.8 kΩ of E24 is 0.97 of the way to 30 °C (1812.7 Ω).
#[test]
fn a_substitute_resistor_simulates_a_temperature() {
    let rated = Temperature::from_celsius(25.0);
    let curve = BetaCurve::new(Resistance::from_ohms(2200.0), rated, Beta::from_kelvins(3500.0));
    let curve = Curve::Beta(curve.expect("2200 Ω and 3500 K are a thermistor"));
    let found = substitute(&curve, Temperature::from_celsius(31.0), Series::E24).expect("inside the curve");
    meets("resistor", 1800.0, found.resistor.ohms(), Relative(0.0));
    // ln R against 1/T between the table's 30 °C and 31 °C, which is exact for a beta
    // curve; the table has five digits, 0.05 Ω of 70 Ω/K.
    let [cold, warm] = [303.15_f64, 304.15].map(|kelvins| 1.0 / kelvins);
    let part = libm::log(1812.7 / 1800.0) / libm::log(1812.7 / 1745.2);
    let kelvins = 1.0 / (cold + part * (warm - cold));
    meets("simulates", kelvins - 273.15, found.simulates.celsius(), Absolute(0.002));
}
