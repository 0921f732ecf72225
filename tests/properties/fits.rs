//! Fits of formulas to points, good ones and any.

use bayleaf::physics::curve::outlier::Point;
use bayleaf::physics::curve::{BetaCurve, Curve, SteinhartHart};
use bayleaf::physics::fit::{Fit, Model, fit, suspect};
use bayleaf::quantity::{Beta, Ratio, Resistance, Temperature};
use proptest::prelude::*;

/// Rows 10 K apart from -20 °C, as many as wanted.
fn temperatures(rows: usize) -> impl Iterator<Item = Temperature> {
    (0..rows).map(|row| Temperature::from_celsius(-20.0 + 10.0 * row as f64))
}

fn rows(curve: &Curve, count: usize) -> Vec<(Temperature, Resistance)> {
    let point = |at| (at, curve.resistance(at).expect("inside the formulas' domain"));
    temperatures(count).map(point).collect()
}

fn finite(fitted: &Fit) -> bool {
    fitted.residuals.iter().all(|r| r.temperature.kelvins().is_finite() && r.resistance.part().is_finite())
}

proptest! {
    #![proptest_config(crate::every_run())]

    #[test]
    fn a_fit_of_exact_points_finds_their_formula(
        rated in 100.0..1e5_f64,
        beta in 2500.0..5000.0_f64,
        count in 4..12_usize,
        // Within 5 % of a published set of tests/reference/01b.
        near in prop::array::uniform3(0.95..1.05_f64),
    ) {
        let at = Temperature::from_celsius(25.0);
        let curve = BetaCurve::new(Resistance::from_ohms(rated), at, Beta::from_kelvins(beta));
        let points = rows(&Curve::Beta(curve.expect("both are above zero")), count);
        let fitted = fit(Model::Beta, &points).expect("points that fall");
        prop_assert!(fitted.largest().temperature.kelvins() < 1e-8, "{:?}", fitted.largest());
        if let Curve::Beta(found) = &fitted.curve {
            prop_assert!((found.parameters().2.kelvins() / beta - 1.0).abs() < 1e-9);
        }
        let curve = SteinhartHart::new(1.129_241e-3 * near[0], 2.341_077e-4 * near[1], 8.775_468e-8 * near[2]);
        let points = rows(&Curve::SteinhartHart(curve.expect("a thermistor's")), count);
        for model in [Model::SteinhartHart, Model::SteinhartHart4] {
            let fitted = fit(model, &points).expect("points of this very formula");
            prop_assert!(fitted.largest().temperature.kelvins() < 1e-6, "{:?}", fitted.largest());
        }
    }

    #[test]
    fn a_fit_does_not_depend_on_the_order_of_its_points(
        near in prop::array::uniform3(0.95..1.05_f64),
        order in Just((0..8_usize).collect::<Vec<_>>()).prop_shuffle(),
    ) {
        let curve = SteinhartHart::new(1.129_241e-3 * near[0], 2.341_077e-4 * near[1], 8.775_468e-8 * near[2]);
        let points = rows(&Curve::SteinhartHart(curve.expect("a thermistor's")), 8);
        let shuffled: Vec<_> = order.iter().map(|&index| points[index]).collect();
        for model in Model::ALL {
            let (sorted, mixed) = (fit(model, &points), fit(model, &shuffled));
            prop_assert_eq!(sorted.map(|fitted| fitted.curve), mixed.map(|fitted| fitted.curve));
        }
    }

    #[test]
    fn any_points_give_a_finite_fit_or_a_reason(
        points in prop::collection::vec((prop::num::f64::ANY, prop::num::f64::ANY), 0..9),
        plain in prop::collection::vec((-300.0..400.0_f64, -10.0..1e7_f64), 0..9),
    ) {
        for points in [points, plain] {
            let pairs: Vec<_> = points
                .iter()
                .map(|&(t, r)| (Temperature::from_celsius(t), Resistance::from_ohms(r)))
                .collect();
            let doubted: Vec<_> =
                pairs.iter().map(|&(at, of)| Point { at, of, rounding: Ratio::new(0.001) }).collect();
            if let Some(found) = suspect(&doubted) {
                prop_assert!(found.index < points.len() && found.expected.ohms().is_finite());
            }
            for model in Model::ALL {
                if let Ok(fitted) = fit(model, &pairs) {
                    prop_assert!(finite(&fitted), "{:?}", fitted);
                }
            }
        }
    }

    #[test]
    fn falling_points_of_any_kind_give_a_finite_fit_or_a_reason(
        steps in prop::collection::vec((0.1..60.0_f64, 1e-6..3.0_f64), 1..12),
    ) {
        let mut points = vec![(Temperature::from_celsius(-90.0), Resistance::from_ohms(1e6))];
        for (apart, fall) in steps {
            let (at, of) = points[points.len() - 1];
            let next = Temperature::from_celsius(at.celsius() + apart);
            points.push((next, Resistance::from_ohms(of.ohms() * libm::exp(-fall))));
        }
        for model in Model::ALL {
            if let Ok(fitted) = fit(model, &points) {
                prop_assert!(finite(&fitted), "{:?}", fitted);
                prop_assert!(fitted.rms().temperature <= fitted.largest().temperature);
            }
        }
    }

    #[test]
    fn a_row_wrong_by_a_tenth_is_the_suspect(
        near in prop::array::uniform3(0.95..1.05_f64),
        wrong in 0..9_usize,
        factor in prop::sample::select(vec![0.9, 1.1]),
    ) {
        let curve = SteinhartHart::new(1.129_241e-3 * near[0], 2.341_077e-4 * near[1], 8.775_468e-8 * near[2]);
        let exact = rows(&Curve::SteinhartHart(curve.expect("a thermistor's")), 9);
        let mut points: Vec<_> =
            exact.iter().map(|&(at, of)| Point { at, of, rounding: Ratio::new(1e-4) }).collect();
        prop_assert_eq!(suspect(&points), None);
        points[wrong].of = Resistance::from_ohms(exact[wrong].1.ohms() * factor);
        let found = suspect(&points);
        prop_assert_eq!(found.map(|found| found.index), Some(wrong), "{:?}", found);
    }
}

/// Texts that are nearly files of points.
fn texts() -> impl Strategy<Value = String> {
    let piece = prop::sample::select(vec![
        "°C",
        "°F",
        "kΩ",
        "Ω",
        "K",
        "V",
        ",",
        ";",
        "\t",
        "\n",
        "\r\n",
        " ",
        "#",
        "\"",
        "0",
        "25",
        "-40",
        "1e9",
        "5.325",
        "2,75",
        "32650",
        "−10",
        "nan",
        "inf",
        "1e400",
        "[",
        "]",
        "=",
        "points",
        "temperature",
        "resistance",
    ]);
    prop::collection::vec(piece, 0..40).prop_map(|pieces| pieces.concat())
}

proptest! {
    #![proptest_config(crate::every_run())]

    #[test]
    fn any_file_of_points_is_read_or_has_a_finding(
        text in prop_oneof![texts(), any::<String>()],
        rows in texts(),
        name in prop::sample::select(vec!["points.csv", "points.toml"]),
    ) {
        for text in [text, format!("°C,Ω\n{rows}")] {
            let findings = bayleaf::diag::Findings::default();
            let mut sources = bayleaf::diag::Sources::default();
            sources.add(name.to_owned(), text.clone());
            match bayleaf::spec::points(&sources, &findings) {
                Some(curve) => {
                    bayleaf::rules::check_points(&curve, &findings);
                    if let bayleaf::spec::Curve::Table { rows, temperature_unit, .. } = curve.value {
                        let words = bayleaf::words::Words::english();
                        let fitted = bayleaf::document::fit::compose(&words, &rows, temperature_unit);
                        prop_assert_eq!(fitted.table(&words, &rows).rows.len(), rows.len());
                        prop_assert!(!fitted.lines(&words).is_empty());
                    }
                }
                None => prop_assert!(findings.has_errors(), "{:?} is neither read nor refused", text),
            }
        }
    }
}
