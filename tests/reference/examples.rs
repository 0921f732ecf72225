//! Worked examples printed in manuals and component makers' notes (01d).

use bayleaf::physics::curve::{BetaCurve, Curve, SteinhartHart};
use bayleaf::physics::tolerance::{Tolerance, band};
use bayleaf::quantity::{Beta, Ratio, Resistance, Rounding, Temperature, TemperatureDifference, figure};

use crate::curves::{celsius, ohms, published_table, through};
use crate::sheet::Within::{Absolute, Relative};
use crate::sheet::{Row, meets, rows_of};
use crate::tolerances::{second_order, spread};

/// 01d: each example by the id of its row; one that nothing here computes is named.
#[test]
fn worked_examples_come_out_as_printed() {
    let (mut checked, mut plain_division) = (0, 0);
    for row in rows_of("01d_ntc_worked_examples.csv") {
        match row.text("id") {
            "SH_3k" => steinhart_hart_of_3k(&row),
            "SH_273.2" => ice_point_is_not_273_2(&row),
            "alpha_10k" => slope_of_10k(&row),
            "alpha_interp_4k7" => slope_from_a_neighbouring_row(&row),
            "tolB_1009" => tolerance_referred_to_100_degrees(&row),
            "tolXY_10k" => tolerances_multiply(&row),
            "ratio_100k" => curve_a_scales(&row),
            "linear_interp_23C" => straight_lines_are_a_trap(&row),
            // dT = (1/α) dR/R with both numbers given: no function of ours.
            "tolT_1009" => {
                plain_division += 1;
                continue;
            }
            other => panic!("{}: no check for example {other}", row.place()),
        }
        checked += 1;
    }
    assert_eq!((checked, plain_division), (8, 1), "every row of 01d");
}

/// The numbers in a column such as `-4.44 %/degC; 2.22 %`, in order.
fn numbers(row: &Row, column: &str) -> Vec<f64> {
    row.text(column).split([' ', ';']).filter_map(|word| word.parse().ok()).collect()
}

/// Header: agree with the recomputed column to 1e-6 relative.
#[track_caller]
fn meets_recomputed(row: &Row, computed: &[f64]) {
    let recomputed = numbers(row, "recomputed");
    assert!(recomputed.len() >= computed.len(), "{}: too few numbers", row.place());
    for (published, &computed) in recomputed.into_iter().zip(computed) {
        meets(&row.place(), published, computed, Relative(1e-6));
    }
}

fn beta_curve(rated: f64, at: f64, beta: f64) -> Curve {
    let (rated, at) = (Resistance::from_ohms(rated), Temperature::from_celsius(at));
    let curve = BetaCurve::new(rated, at, Beta::from_kelvins(beta));
    Curve::Beta(curve.expect("a thermistor of a worked example"))
}

fn curve_of_3k() -> Curve {
    let curve = SteinhartHart::new(1.4051e-3, 2.369e-4, 1.019e-7);
    Curve::SteinhartHart(curve.expect("published coefficients"))
}

/// Data-logger manual CDM-VW300, F.1.1: 2221 Ω is 31.98 °C, cut off and not rounded.
fn steinhart_hart_of_3k(row: &Row) {
    let at = celsius(&curve_of_3k(), Resistance::from_ohms(2221.0));
    meets_recomputed(row, &[at]);
    assert_eq!(figure(at, 2, Rounding::Down), "31.98");
    assert_eq!(figure(at, 2, Rounding::Nearest), "31.99");
}

/// Another manual takes 273.2 K for 0 °C, which moves every temperature by 0.05 K.
fn ice_point_is_not_273_2(row: &Row) {
    let at = celsius(&curve_of_3k(), Resistance::from_ohms(2221.0));
    meets(&row.place(), numbers(row, "recomputed")[0] + 0.05, at, Absolute(1e-9));
}

/// Component maker's page on the temperature coefficient: α = −B/T².
fn slope_of_10k(row: &Row) {
    let curve = beta_curve(10_000.0, 25.0, 3950.0);
    let rated = Temperature::from_celsius(25.0);
    let slope = curve.slope(rated).expect("inside the formula's domain");
    meets_recomputed(row, &[100.0 * slope, -100.0 * slope * 0.5]);
    // The page's ± 2.22 % for ± 0.5 K is first order: the exponential bends, and
    // so does 1/T, by another 0.5 K/T of it.
    let half_kelvin = Tolerance::Temperature(TemperatureDifference::from_kelvins(0.5));
    let (low, high) = spread(&band(&curve, &half_kelvin, rated).expect("inside the domain"));
    let nearness = Absolute(second_order(0.0222) + 0.0222 * 0.5 / rated.kelvins());
    meets("0.5 K warmer", 0.5 * slope, low, nearness);
    meets("0.5 K colder", -0.5 * slope, high, nearness);
}

/// "Standardized R/T characteristics" 1.1: from 5 °C to 7 °C by the slope at 5 °C.
fn slope_from_a_neighbouring_row(row: &Row) {
    let neighbour = Temperature::from_celsius(5.0);
    // α T² is the B value of that slope, which makes the note's formula a beta curve.
    let beta = 0.044 * neighbour.kelvins() * neighbour.kelvins();
    let curve = beta_curve(10_687.3, 5.0, beta);
    let slope = curve.slope(neighbour).expect("inside the formula's domain");
    meets("slope at 5 °C", -0.044, slope, Relative(1e-12));
    let [_, recomputed, ..] = numbers(row, "recomputed")[..] else {
        panic!("{}: two numbers are printed", row.place())
    };
    let at_seven = ohms(&curve, Temperature::from_celsius(7.0));
    meets(&row.place(), 1000.0 * recomputed, at_seven, Relative(1e-6));
}

/// The same note, 1.2c: 5 % at 100 °C has grown to 8.3 % at 35 °C.
fn tolerance_referred_to_100_degrees(row: &Row) {
    let rated = Temperature::from_celsius(100.0);
    let curve = beta_curve(1000.0, 100.0, 3930.0);
    let tolerance = Tolerance::Rated { resistance: Ratio::new(0.05), beta: Ratio::new(0.015), at: rated };
    let band = band(&curve, &tolerance, Temperature::from_celsius(35.0)).expect("inside the domain");
    let (low, high) = spread(&band);
    // The note adds to first order; ours are the exact corners around it.
    let linear = numbers(row, "recomputed")[0] / 100.0;
    meets(&row.place(), -linear, low, Absolute(second_order(linear)));
    meets(&row.place(), linear, high, Absolute(second_order(linear)));
    assert!(-low < linear && linear < high, "{}: corners are not symmetric", row.place());
}

/// Component maker's document 29049, p. 73: two tolerances multiply, Z = (1 + X)(1 + Y) − 1.
fn tolerances_multiply(row: &Row) {
    const Y: f64 = 0.0089;
    let ice = Temperature::from_celsius(0.0);
    // The page gives the effect Y at 0 °C; the B tolerance behind it follows.
    let curve = beta_curve(10_000.0, 25.0, 3950.0);
    let growth = libm::log(ohms(&curve, ice) / 10_000.0);
    let tolerance = Tolerance::Rated {
        resistance: Ratio::new(0.05),
        beta: Ratio::new(libm::log1p(Y) / growth),
        at: Temperature::from_celsius(25.0),
    };
    let (low, high) = spread(&band(&curve, &tolerance, ice).expect("inside the domain"));
    let [product, ..] = numbers(row, "recomputed")[..] else { panic!("{}: no number", row.place()) };
    // The column prints five digits.
    meets(&row.place(), product, 100.0 * high, Absolute(0.000_051));
    // Below, a smaller B divides where the page multiplies by 1 − Y: Y² apart.
    meets(&row.place(), -0.058_455, low, Absolute(Y * Y + 1e-7));
}

/// Probe maker's page on curve A: the ratio 0.3601 at 50 °C makes 36.01 kΩ of 100 kΩ.
fn curve_a_scales(row: &Row) {
    let scale = 100_000.0 / crate::curves::CURVE_A_R25;
    let scaled = |(at, of): (Temperature, Resistance)| (at, Resistance::from_ohms(of.ohms() * scale));
    let points: Vec<_> = published_table("CurveA_ratio").into_iter().map(scaled).collect();
    meets_recomputed(row, &[ohms(&through(&points), Temperature::from_celsius(50.0))]);
}

/// A manual, p. 14, interpolates in R: 10996 Ω. The curve itself reads 10920.3 Ω.
fn straight_lines_are_a_trap(row: &Row) {
    let point = |at, of| (Temperature::from_celsius(at), Resistance::from_ohms(of));
    let curve = through(&[point(20.0, 12_490.0), point(25.0, 10_000.0)]);
    let at_23 = ohms(&curve, Temperature::from_celsius(23.0));
    // Note of the row: printed to a tenth of an ohm, and 0.69 % below.
    meets(&row.place(), 10_920.3, at_23, Absolute(0.05));
    let straight = numbers(row, "recomputed")[0];
    meets("straight line", 0.0069, straight / at_23 - 1.0, Absolute(0.000_05));
}
