//! Published curves: tables, Steinhart–Hart coefficients, B values.

use bayleaf::physics::curve::{BetaCurve, Curve, CurveError, SteinhartHart, SteinhartHart4, Table};
use bayleaf::quantity::{Beta, Resistance, Temperature};

use crate::fits::fitted_table;
use crate::sheet::Within::{Absolute, Relative};
use crate::sheet::{Row, meets, rows_of};

/// The points of one published table.
pub(crate) type Points = Vec<(Temperature, Resistance)>;

/// The curve-A ratios are turned into the table of the part with this R25.
pub(crate) const CURVE_A_R25: f64 = 10_000.0;

/// The published tables of 01a by the code of the part, in the order of the file.
///
/// # Source
/// Linux kernel `drivers/hwmon/ntc_thermistor.c` (`NCPxxWB473`, B57330V2103), the
/// firmware wwaites/thermo (103AT), probe maker's page "Rt/R25 curve, CURVE A",
/// instrument manual 8002-4-1 Table 16 (103JL1A), probe manual 109SS Table C-1
/// (10K3MCD1); the file's `source` column.
pub(crate) fn published_tables() -> Vec<(String, Points)> {
    let mut tables: Vec<(String, Points)> = Vec::new();
    for row in rows_of("01a_ntc_rt_published.csv") {
        let unit = match row.text("unit") {
            "ohm" => 1.0,
            "ratio" => CURVE_A_R25,
            other => panic!("{}: unknown unit {other}", row.place()),
        };
        let point = (row.celsius("t_degC"), Resistance::from_ohms(row.number("value") * unit));
        match tables.last_mut() {
            Some((part, points)) if part == row.text("part") => points.push(point),
            _ => tables.push((row.text("part").to_owned(), vec![point])),
        }
    }
    tables
}

/// The points of one part of 01a.
pub(crate) fn published_table(part: &str) -> Points {
    let mut tables = published_tables();
    let index = tables.iter().position(|(name, _)| name == part);
    tables.swap_remove(index.unwrap_or_else(|| panic!("01a has no part {part}"))).1
}

/// The curve through points.
pub(crate) fn through(points: &[(Temperature, Resistance)]) -> Curve {
    Curve::Table(Table::new(points).expect("a published table falls"))
}

/// The resistance of a curve, in Ω, where the check knows it to exist.
pub(crate) fn ohms(curve: &Curve, at: Temperature) -> f64 {
    curve.resistance(at).unwrap_or_else(|error| panic!("{at}: {error}")).ohms()
}

/// The temperature of a curve, in °C, where the check knows it to exist.
pub(crate) fn celsius(curve: &Curve, of: Resistance) -> f64 {
    curve.temperature(of).unwrap_or_else(|error| panic!("{of}: {error}")).celsius()
}

/// 01a: a table keeps its own points, both ways.
#[test]
fn a_table_gives_back_its_published_points() {
    let mut checked = 0;
    for (part, points) in published_tables() {
        let curve = through(&points);
        for &(at, of) in &points {
            let what = format!("{part} at {at}");
            // The points are the table: nothing but the last bits of exp(ln R) may change.
            meets(&what, of.ohms(), ohms(&curve, at), Relative(1e-12));
            meets(&what, at.celsius(), celsius(&curve, of), Absolute(1e-9));
            checked += 1;
        }
        // Never beyond the source's own rows.
        let [(coldest, most), .., (hottest, least)] = points[..] else { panic!("{part}: no table") };
        for outside in [coldest.celsius() - 0.001, hottest.celsius() + 0.001] {
            let beyond = curve.resistance(Temperature::from_celsius(outside));
            assert_eq!(beyond, Err(CurveError::OutsideDomain), "{part} at {outside} °C");
        }
        for outside in [most.ohms() * 1.001, least.ohms() * 0.999] {
            let beyond = curve.temperature(Resistance::from_ohms(outside));
            assert_eq!(beyond, Err(CurveError::OutsideDomain), "{part} at {outside} Ω");
        }
    }
    assert_eq!(checked, 196, "every row of 01a");
}

/// 01a: a table of half its rows finds the other half.
///
/// The demands are ours, no source states one. Rows 10 K apart leave 0.05 %,
/// of which most is the rounding of the printed rows: half an ohm of 671 Ω is
/// 0.07 %. Rows 4 K apart with seven printed digits (10K3MCD1) leave 0.001 %.
/// The table of 103AT has the same B value over two rows at a time up to 50 °C:
/// its odd rows are themselves straight lines of ln R between the even ones,
/// and a smooth curve must miss them by up to 0.2 %.
#[test]
fn a_thinned_table_finds_its_dropped_points() {
    let mut checked = 0;
    for (part, points) in published_tables() {
        let nearness = match part.as_str() {
            "103AT_10k" => Relative(0.0025),
            "10K3MCD1_10k" => Relative(1e-5),
            _ => Relative(0.0005),
        };
        let kept: Points = points.iter().copied().step_by(2).collect();
        let curve = through(&kept);
        // The last row of a table of even length lies outside the kept ones.
        let inside = |(at, _): &&(Temperature, Resistance)| curve.domain().contains(at);
        for &(at, of) in points.iter().skip(1).step_by(2).filter(inside) {
            meets(&format!("{part} at {at}"), of.ohms(), ohms(&curve, at), nearness);
            checked += 1;
        }
    }
    assert_eq!(checked, 93, "every other row of 01a");
}

/// 01b: the three- and the four-term formula and their inverses, against 50-digit arithmetic.
#[test]
fn steinhart_hart_meets_high_precision_arithmetic_both_ways() {
    let (mut cold_to_ohms, mut ohms_to_cold, mut four_terms) = (0, 0, 0);
    for row in rows_of("01b_ntc_steinhart_hart.csv") {
        assert!(row.is_zero("D5"), "{}: no formula here has a fifth power", row.place());
        let curve = if row.is_zero("D2") {
            steinhart_hart(&row, ["A", "B", "C"])
        } else {
            four_terms += 1;
            let terms = ["A", "B", "D2", "C"].map(|column| row.number(column));
            Curve::SteinhartHart4(SteinhartHart4::new(terms, row.ohms("R0")).expect("a published set"))
        };
        // Header: pure arithmetic in double, 1e-9 relative and 1e-9 K.
        match row.text("direction") {
            "t_to_R" => {
                row.agrees("R_ohm", ohms(&curve, row.celsius("t_degC")), Relative(1e-9));
                cold_to_ohms += 1;
            }
            "R_to_t" => {
                row.agrees("t_degC", celsius(&curve, row.ohms("R_ohm")), Absolute(1e-9));
                ohms_to_cold += 1;
            }
            other => panic!("{}: unknown direction {other}", row.place()),
        }
    }
    assert_eq!((cold_to_ohms, ohms_to_cold, four_terms), (40, 28, 17), "rows of 01b");
}

/// 1/T = 1/298.15 K + 2.5e-4 L − 2e-5 L²: its slope 2.5e-4 − 4e-5 L is that of 20 000 K at
/// L = 5, 1/T = 4.104e-3: colder than −29.5 °C it is no thermistor's.
#[test]
fn a_four_term_curve_ends_where_it_is_too_steep() {
    let base = Resistance::from_ohms(10e3);
    let curve = SteinhartHart4::new([1.0 / 298.15, 2.5e-4, -2e-5, 0.0], base).expect("it falls somewhere");
    let coldest = 1.0 / (1.0 / 298.15 + 7.5e-4) - 273.15;
    meets("coldest", coldest, curve.domain().low.celsius(), Absolute(1e-9));
    let most = celsius(&Curve::SteinhartHart4(curve), Resistance::from_ohms(10e3 * libm::exp(4.999_999)));
    meets("at its end", coldest, most, Absolute(1e-4));
    let beyond = Curve::SteinhartHart4(curve).temperature(Resistance::from_ohms(10e3 * libm::exp(5.001)));
    assert_eq!(beyond, Err(CurveError::OutsideDomain));
}

/// 1/T = 1/300 K + 3e-5 (L³/3 − 5 L² + 24 L) falls up to L = 4 and again from L = 6: from
/// 350 °C to about −48.6 °C, and from about −46.5 °C to −100 °C. The wider stretch is the curve.
#[test]
fn a_four_term_curve_that_turns_twice_keeps_its_wider_stretch() {
    let terms = [1.0 / 300.0, 24.0 * 3e-5, -5.0 * 3e-5, 1e-5];
    let curve = SteinhartHart4::new(terms, Resistance::from_ohms(1000.0)).expect("it falls twice");
    let domain = curve.domain();
    meets("hottest", 350.0, domain.high.celsius(), Absolute(1e-9));
    // The slope of 20 000 K is reached a little before the turn: up to a kelvin.
    let turn = 1.0 / (1.0 / 300.0 + 3e-5 * (64.0 / 3.0 - 80.0 + 96.0)) - 273.15;
    assert!((turn..turn + 1.0).contains(&domain.low.celsius()), "{domain:?}, {turn}");
}

/// Below one ohm ln R is negative; the closed form and the formula are inverse there too.
#[test]
fn a_steinhart_hart_curve_goes_below_one_ohm() {
    let curve = Curve::SteinhartHart(SteinhartHart::new(3e-3, 2.5e-4, 1e-7).expect("a thermistor"));
    for of in [0.1, 0.5, 0.999, 1.0, 1.001] {
        let log: f64 = libm::log(of);
        let by_hand = 1.0 / (3e-3 + 2.5e-4 * log + 1e-7 * log * log * log) - 273.15;
        let at = celsius(&curve, Resistance::from_ohms(of));
        meets(&format!("{of} Ω"), by_hand, at, Absolute(1e-9));
        meets(&format!("{at} °C"), of, ohms(&curve, Temperature::from_celsius(by_hand)), Relative(1e-9));
    }
}

fn steinhart_hart(row: &Row, columns: [&str; 3]) -> Curve {
    let [a, b, c] = columns.map(|column| row.number(column));
    let curve = SteinhartHart::new(a, b, c);
    Curve::SteinhartHart(curve.unwrap_or_else(|error| panic!("{}: {error}", row.place())))
}

/// 01c: one B value joins two published points, and its own two only.
#[test]
fn a_b_value_joins_the_two_points_it_was_taken_from() {
    let mut checked = 0;
    for row in rows_of("01c_ntc_beta_from_table.csv") {
        let (first, second) = (row.celsius("t1"), row.celsius("t2"));
        let beta = Beta::from_kelvins(row.number("B_K"));
        let curve = BetaCurve::new(row.ohms("R1"), first, beta).expect("a published B value");
        // Header: 1e-8 relative, which is the last digit of the printed B.
        row.agrees("R2", ohms(&Curve::Beta(curve), second), Relative(1e-8));
        row.agrees("t2", celsius(&Curve::Beta(curve), row.ohms("R2")), Absolute(1e-6));
        // A table of two points is a beta curve; its slope −B/T² gives B itself.
        let line = through(&[(first, row.ohms("R1")), (second, row.ohms("R2"))]);
        for at in [first, second] {
            let slope = line.slope(at).expect("an end lies in the domain");
            row.agrees("B_K", -slope * at.kelvins() * at.kelvins(), Relative(1e-8));
        }
        checked += 1;
    }
    assert_eq!(checked, 10, "every row of 01c");
}

/// 01e: fitted coefficients miss their table by what the fit says, no more and no less.
#[test]
fn a_steinhart_hart_fit_misses_its_table_by_the_stated_residual() {
    let (mut three_terms, mut four_terms) = (0, 0);
    for row in rows_of("01e_ntc_sh_fits.csv") {
        let curve = if row.is_zero("C2_lnR2_term") {
            three_terms += 1;
            steinhart_hart(&row, ["A", "B", "C"])
        } else {
            four_terms += 1;
            let terms = ["A", "B", "C2_lnR2_term", "C"].map(|column| row.number(column));
            let curve = SteinhartHart4::new(terms, Resistance::from_ohms(1.0));
            Curve::SteinhartHart4(curve.unwrap_or_else(|error| panic!("{}: {error}", row.place())))
        };
        let miss = |&(at, of): &(Temperature, Resistance)| ((celsius(&curve, of) - at.celsius()).abs(), at);
        let table = fitted_table(row.text("part"));
        let (worst, at) = table.iter().map(miss).max_by(|a, b| a.0.total_cmp(&b.0)).expect("it has rows");
        // Header: residuals to 1e-4 K.
        row.agrees("max_res_table_K", worst, Absolute(1e-4));
        row.agrees("t_of_max_table", at.celsius(), Absolute(1e-9));
    }
    assert_eq!((three_terms, four_terms), (22, 6), "every row of 01e");
}
