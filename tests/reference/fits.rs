//! Coefficients fitted to published tables, and rows that were misprinted.

use bayleaf::physics::curve::Curve;
use bayleaf::physics::curve::outlier::{Point, outlier};
use bayleaf::physics::fit::{Fit, Model, fit, suspect};
use bayleaf::quantity::{Ratio, Resistance, Temperature};

use crate::curves::{Points, published_tables};
use crate::platinum::silicon_tables;
use crate::sheet::Within::{Absolute, Relative};
use crate::sheet::{Row, meets, rows_of};

/// The published points that a row of 01e was fitted to: `0 25 50` or `0..70 step 10`.
fn chosen(points: &Points, row: &Row) -> Points {
    let text = row.text("t_points");
    let number = |text: &str| text.trim().parse::<f64>().unwrap_or_else(|_| panic!("{}", row.place()));
    let wanted: Vec<f64> = match text.split_once(" step ") {
        Some((ends, step)) => {
            let (first, last) = ends.split_once("..").unwrap_or_else(|| panic!("{}", row.place()));
            let count = ((number(last) - number(first)) / number(step)).round() as i32;
            (0..=count).map(|index| number(first) + f64::from(index) * number(step)).collect()
        }
        None => text.split(' ').map(number).collect(),
    };
    let is = |celsius: f64| move |(at, _): &&(Temperature, Resistance)| (at.celsius() - celsius).abs() < 1e-6;
    let found: Points =
        wanted.iter().filter_map(|&celsius| points.iter().find(is(celsius)).copied()).collect();
    assert!(found.len() >= 3, "{}: only {} of the points are in 01a", row.place(), found.len());
    found
}

fn coefficients(fitted: &Fit) -> [f64; 4] {
    match &fitted.curve {
        // In the columns' order: A, B, C of the cube, C2 of the square.
        Curve::SteinhartHart(curve) => {
            let (a, b, c) = curve.coefficients();
            [a, b, c, 0.0]
        }
        Curve::SteinhartHart4(curve) => {
            let [a, b, c, d] = curve.coefficients();
            [a, b, d, c]
        }
        other => panic!("not asked for: {other:?}"),
    }
}

/// 01e: the fits of 50-digit arithmetic are met: coefficients of the same method to
/// 1e-6 relative, residuals to 1e-4 K, as the header demands.
#[test]
fn fits_meet_those_of_high_precision_arithmetic() {
    let (mut exact, mut squares, mut other_method) = (0, 0, 0);
    for row in rows_of("01e_ntc_sh_fits.csv") {
        let used = chosen(&fitted_table(row.text("part")), &row);
        let model = if row.is_zero("C2_lnR2_term") { Model::SteinhartHart } else { Model::SteinhartHart4 };
        let fitted = fit(model, &used).unwrap_or_else(|error| panic!("{}: {error}", row.place()));
        if row.text("method") == "ls_T" {
            // Another thing is minimised there: kelvins, where ours cannot be smaller
            // and, on these tables, is less than a quarter larger.
            let (ours, theirs) = (fitted.rms().temperature.kelvins(), row.number("rms_res_fit_K"));
            assert!(ours >= theirs - 1e-6 && ours < 1.25 * theirs, "{}: {ours}", row.place());
            other_method += 1;
            continue;
        }
        let names = ["A", "B", "C", "C2_lnR2_term"];
        for (name, value) in names.iter().zip(coefficients(&fitted)) {
            row.agrees(name, value, Relative(1e-6));
        }
        row.agrees("max_res_fit_K", fitted.largest().temperature.kelvins(), Absolute(1e-4));
        row.agrees("rms_res_fit_K", fitted.rms().temperature.kelvins(), Absolute(1e-4));
        if row.text("method") == "exact3" { exact += 1 } else { squares += 1 }
    }
    assert_eq!((exact, squares, other_method), (10, 12, 6), "every row of 01e");
}

/// The published table that rows of 01e were fitted to.
pub(crate) fn fitted_table(part: &str) -> Points {
    let plain = |points: Vec<Point>| points.iter().map(|point| (point.at, point.of)).collect();
    match part {
        "manual10k_LDT5525_as_printed_5331_at_40" => plain(manual(5331.0)),
        "manual10k_LDT5525_with_5231_at_40" => plain(manual(5231.0)),
        "CurveA_x10000ohm" => crate::curves::published_table("CurveA_ratio"),
        other => crate::curves::published_table(other),
    }
}

/// 01c: two points give the B value that joins them.
#[test]
fn a_beta_fit_of_two_points_is_the_b_value_between_them() {
    let mut checked = 0;
    for row in rows_of("01c_ntc_beta_from_table.csv") {
        let points = [(row.celsius("t1"), row.ohms("R1")), (row.celsius("t2"), row.ohms("R2"))];
        let fitted = fit(Model::Beta, &points).expect("a published table falls");
        let Curve::Beta(curve) = &fitted.curve else { panic!("a beta curve was asked for") };
        row.agrees("B_K", curve.parameters().2.kelvins(), Relative(1e-8));
        assert!(fitted.largest().temperature.kelvins() < 1e-9, "{}", row.place());
        checked += 1;
    }
    assert_eq!(checked, 10, "every row of 01c");
}

/// 47 kΩ of 01a from 40 °C up: 25 °C lies outside, so R₀ is that of the middle row.
#[test]
fn a_beta_fit_away_from_25_degrees_is_rated_at_its_middle_row() {
    let points = crate::curves::published_table("NCPxxWB473_47k");
    let hot: Points = points.iter().copied().filter(|(at, _)| at.celsius() >= 40.0).collect();
    for (points, rated) in [(&points, 25.0), (&hot, hot[hot.len() / 2].0.celsius())] {
        let fitted = fit(Model::Beta, points).expect("it falls");
        let Curve::Beta(curve) = &fitted.curve else { panic!("a beta curve was asked for") };
        assert!((curve.parameters().1.celsius() - rated).abs() < 1e-9, "{:?}", curve.parameters());
    }
}

/// A B value over the whole published table misses by up to some percent: formula less
/// table, in kelvins and as a part of the table's ohms, row by row from its own R₀ and B.
#[test]
fn residuals_are_formula_less_table() {
    let points = crate::curves::published_table("NCPxxWB473_47k");
    let fitted = fit(Model::Beta, &points).expect("it falls");
    let Curve::Beta(curve) = &fitted.curve else { panic!("a beta curve was asked for") };
    let (rated, at, beta) = curve.parameters();
    let (mut squares, mut most) = (0.0, 0.0_f64);
    for (&(t, of), residual) in points.iter().zip(&fitted.residuals) {
        let ohms = rated.ohms() * libm::exp(beta.kelvins() * (1.0 / t.kelvins() - 1.0 / at.kelvins()));
        let part = (ohms - of.ohms()) / of.ohms();
        meets(&format!("{t}"), part, residual.resistance.part(), Absolute(1e-12));
        let inverse = 1.0 / at.kelvins() + libm::log(of.ohms() / rated.ohms()) / beta.kelvins();
        meets(&format!("{t}"), 1.0 / inverse - t.kelvins(), residual.temperature.kelvins(), Absolute(1e-9));
        squares += part * part;
        most = most.max(part.abs());
    }
    assert!(most > 0.02, "a B value does not hold so far: {most}");
    meets("largest", most, fitted.largest().resistance.part(), Absolute(1e-12));
    let rms = libm::sqrt(squares / points.len() as f64);
    meets("root of the mean square", rms, fitted.rms().resistance.part(), Absolute(1e-12));
}

/// Of the published 47 kΩ table one row is moved: 2 % inside and 6 % at an end are more
/// than its neighbours allow (1 % and 4 %), half a percent and 2 % are not.
#[test]
fn a_row_is_held_against_its_neighbours() {
    let published = crate::curves::published_table("NCPxxWB473_47k");
    let last = published.len() - 1;
    let moved = |index: usize, part: f64| {
        let mut points: Vec<Point> = published
            .iter()
            .map(|&(at, of)| Point { at, of, rounding: Ratio::new(0.5 / of.ohms()) })
            .collect();
        points[index].of = Resistance::from_ohms(points[index].of.ohms() * (1.0 + part));
        // In any order: the answer names the row as given.
        points.reverse();
        outlier(&points).map(|found| (last - found.index, found.expected.ohms()))
    };
    for (index, part) in [(10, 0.02), (20, -0.02), (0, 0.06), (last, -0.06)] {
        let (found, expected) = moved(index, part).expect("it does not belong");
        assert_eq!(found, index);
        // Towards an end the cubic is extrapolated: 1 %.
        let published = published[index].1.ohms();
        assert!((expected / published - 1.0).abs() < 0.01, "{index}: {expected} for {published}");
    }
    for (index, part) in [(10, 0.005), (20, -0.005), (0, 0.02), (last, -0.02)] {
        assert_eq!(moved(index, part), None, "{index} by {part}");
    }
}

/// The rows of a laser-driver manual's table A.1, which 01e fitted and 01a does not have.
///
/// Worked back from 01e in another language: 0, 20, 25 and 50 °C are whole ohms of its two
/// exact fits, 40 °C stands in its header, and of the whole ohms near 10 and 30 °C only
/// 19549 and 7908 give its least squares to the last digit. All nine rows of 01e that
/// rest on this table meet it.
fn manual(at_40: f64) -> Vec<Point> {
    let rows = [
        (0.0, 32_128.0),
        (10.0, 19_549.0),
        (20.0, 12_262.0),
        (25.0, 9_814.0),
        (30.0, 7_908.0),
        (40.0, at_40),
        (50.0, 3_542.0),
    ];
    let point = |(celsius, ohms): (f64, f64)| Point {
        at: Temperature::from_celsius(celsius),
        of: Resistance::from_ohms(ohms),
        rounding: Ratio::new(0.5 / ohms),
    };
    rows.map(point).to_vec()
}

/// 01e: a manual's 40 °C row reads 5331 Ω and must be 5231 Ω.
#[test]
fn the_misprint_of_a_published_manual_is_found() {
    let found = suspect(&manual(5331.0)).expect("a row of the manual is misprinted");
    assert_eq!(found.index, 5, "the row at 40 °C");
    assert!((found.expected.ohms() - 5231.0).abs() < 1.0, "{}", found.expected);
    assert_eq!(suspect(&manual(5231.0)), None, "mended, it is clean");
}

/// No published table is suspected: whole, thinned, or cut to windows of five to
/// twelve rows; thermistors of 01a, silicon of 02d.
#[test]
fn no_published_table_is_suspected_by_the_fit() {
    let four_digits = |ohms: f64| Ratio::new(if ohms >= 1000.0 { 0.5 / ohms } else { 0.05 / ohms });
    let mut tried = 0;
    for (part, points) in published_tables().into_iter().chain(silicon_tables()) {
        let points: Vec<Point> =
            points.iter().map(|&(at, of)| Point { at, of, rounding: four_digits(of.ohms()) }).collect();
        for step in [1, 2, 3] {
            let thinned: Vec<Point> = points.iter().copied().step_by(step).collect();
            for length in (5..=12).chain([thinned.len()]) {
                for window in thinned.windows(length) {
                    assert_eq!(
                        suspect(window),
                        None,
                        "{part}, every {step}, {length} rows from {:?}",
                        window[0]
                    );
                    tried += 1;
                }
            }
        }
    }
    assert!(tried > 1000, "only {tried} tables were tried");
}
