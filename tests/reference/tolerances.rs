//! Growth of a thermistor's tolerance away from its rated temperature.

use bayleaf::physics::Band;
use bayleaf::physics::curve::{BetaCurve, Curve};
use bayleaf::physics::tolerance::{Tolerance, band};
use bayleaf::quantity::{Beta, Ratio, Resistance, Temperature};

use crate::curves::{celsius, published_table, through};
use crate::sheet::Within::{Absolute, Relative};
use crate::sheet::{meets, rows_of};

/// The limits as parts of the nominal resistance: below it, above it.
pub(crate) fn spread(band: &Band<Resistance>) -> (f64, f64) {
    let part = |limit: Resistance| limit.ohms() / band.nominal.ohms() - 1.0;
    (part(band.low), part(band.high))
}

/// How far exact corners may lie from the first-order rule δR + δB·B·|1/T − 1/T₀| = x.
///
/// Either corner is (1 ± δR) exp(± δB·B·|…|); the rest of its series beyond x
/// is less than x²/2 times exp x.
pub(crate) fn second_order(x: f64) -> f64 {
    0.5 * x * x * libm::exp(x)
}

/// 01c: exact corners of R25 and B, checked by its author against 50-digit arithmetic.
#[test]
fn beta_tolerance_grows_to_its_exact_corners() {
    let rated = Temperature::from_celsius(25.0);
    let (mut checked, mut at_rated) = (0, 0);
    for row in rows_of("01c_ntc_beta_tolerance.csv") {
        let at = row.celsius("t_degC");
        let beta = Beta::from_kelvins(row.number("B_K"));
        let curve = BetaCurve::new(row.ohms("R25_ohm"), rated, beta).expect("a thermistor");
        let curve = Curve::Beta(curve);
        let tolerance = Tolerance::Rated {
            resistance: row.percent("tolR_pct"),
            beta: row.percent("tolB_pct"),
            at: rated,
        };
        let band = band(&curve, &tolerance, at).expect("inside the formula's domain");
        // Header: 1e-9 relative on the columns of R; the others have nine digits.
        row.agrees("R_nominal", band.nominal.ohms(), Relative(1e-9));
        row.agrees("R_low_corner", band.low.ohms(), Relative(1e-9));
        row.agrees("R_high_corner", band.high.ohms(), Relative(1e-9));
        let (low, high) = spread(&band);
        row.agrees("low_pct", 100.0 * low, Relative(1e-8));
        row.agrees("high_pct", 100.0 * high, Relative(1e-8));
        let slope = curve.slope(at).expect("inside the formula's domain");
        row.agrees("alpha_pct_per_K", 100.0 * slope, Relative(1e-8));
        let shift = |of| celsius(&curve, of) - at.celsius();
        row.agrees("dt_at_Rhigh_K", shift(band.high), Absolute(1e-8));
        row.agrees("dt_at_Rlow_K", shift(band.low), Absolute(1e-8));
        // That rule in kelvins, by the curve's own slope.
        row.agrees("dt_linear_K", row.number("linear_rule_pct") / (100.0 * slope.abs()), Relative(1e-8));
        // The makers' linear rule is near the corners and is not the corners.
        let linear = row.number("linear_rule_pct") / 100.0;
        let nearness = Absolute(second_order(linear) + 1e-10);
        meets(&format!("{} low, linear", row.place()), -linear, low, nearness);
        meets(&format!("{} high, linear", row.place()), linear, high, nearness);
        if (at.celsius() - rated.celsius()).abs() > 0.0 {
            assert!(-low < linear && linear < high, "{}: corners are not symmetric", row.place());
        } else {
            at_rated += 1;
        }
        checked += 1;
    }
    assert_eq!((checked, at_rated), (40, 4), "every row of 01c");
}

/// 01i: the ratio tolerance of interchangeable curve A, as its maker prints it.
///
/// An approximation: the page gives no tolerance of B. One value, 0.87 % of the
/// curve's effective B, follows the whole column to a quarter of a percentage
/// point; the column is rounded to 0.1 and rises unevenly, up to 3.5.
#[test]
fn the_printed_growth_of_a_ratio_tolerance_is_followed() {
    const NEARNESS: f64 = 0.25;
    let curve = through(&published_table("CurveA_ratio"));
    let tolerance = Tolerance::Rated {
        resistance: Ratio::new(0.0),
        beta: Ratio::new(0.0087),
        at: Temperature::from_celsius(25.0),
    };
    let mut checked = 0;
    for row in rows_of("01i_ntc_ratio_tolerance_published.csv") {
        let band = band(&curve, &tolerance, row.celsius("t_degC")).expect("a row of the curve");
        let (low, high) = spread(&band);
        row.agrees("ratio_tol_pct", -100.0 * low, Absolute(NEARNESS));
        row.agrees("ratio_tol_pct", 100.0 * high, Absolute(NEARNESS));
        checked += 1;
    }
    assert_eq!(checked, 23, "every row of 01i");
}
