//! Curves and the tolerances around them.

use bayleaf::physics::curve::{
    BetaCurve, Curve, CurveError, Direction, Platinum, SiliconPtc, SteinhartHart, SteinhartHart4, Table,
};
use bayleaf::physics::tolerance::{PlatinumClass, Tolerance, band};
use bayleaf::quantity::{Beta, Ratio, Resistance, Temperature, TemperatureDifference};
use proptest::prelude::*;

/// The way there and back may lose this much, in K.
///
/// A formula loses 1e-12 K. A table's cubic is least steep where the B values of
/// neighbouring pieces differ most, which costs some digits of the inverse; a
/// millionth of a kelvin is a thousandth of what a good thermometer shows.
const THERE_AND_BACK: f64 = 1e-6;

/// Beta curves with the B values of real parts.
fn beta_curves() -> impl Strategy<Value = Curve> {
    (10.0..1e6_f64, -40.0..120.0_f64, 2000.0..6000.0_f64).prop_map(|(rated, at, beta)| {
        let at = Temperature::from_celsius(at);
        let curve = BetaCurve::new(Resistance::from_ohms(rated), at, Beta::from_kelvins(beta));
        Curve::Beta(curve.expect("all three are above zero"))
    })
}

/// Coefficients within 5 % of the published sets of tests/reference/01b.
fn steinhart_hart_curves() -> impl Strategy<Value = Curve> {
    let published = [
        (1.4051e-3, 2.369e-4, 1.019e-7),
        (1.129_241e-3, 2.341_077e-4, 8.775_468e-8),
        (1.009_249_522e-3, 2.378_405_444e-4, 2.019_202_697e-7),
    ];
    let near = || 0.95..1.05_f64;
    (prop::sample::select(published.to_vec()), near(), near(), near()).prop_map(
        |((a, b, c), of_a, of_b, of_c)| {
            let curve = SteinhartHart::new(a * of_a, b * of_b, c * of_c);
            Curve::SteinhartHart(curve.expect("near the coefficients of a thermistor"))
        },
    )
}

/// Points that fall as a thermistor does: 2 to 30 K apart, each piece with its own B value.
fn points_of(beta: std::ops::Range<f64>) -> impl Strategy<Value = Vec<(Temperature, Resistance)>> {
    let pieces = prop::collection::vec((2.0..30.0_f64, beta), 1..12);
    (-60.0..0.0_f64, 1e3..1e6_f64, pieces).prop_map(|(coldest, most, pieces)| {
        let mut points = vec![(Temperature::from_celsius(coldest), Resistance::from_ohms(most))];
        for (apart, beta) in pieces {
            let (at, of) = points[points.len() - 1];
            let next = at.plus(TemperatureDifference::from_kelvins(apart));
            let fall = libm::exp(beta * (1.0 / next.kelvins() - 1.0 / at.kelvins()));
            points.push((next, Resistance::from_ohms(of.ohms() * fall)));
        }
        points
    })
}

/// Tables of parts: the B value drifts, but not out of what materials have.
fn tables() -> impl Strategy<Value = Curve> {
    points_of(2000.0..6000.0).prop_map(|points| table(&points))
}

fn table(points: &[(Temperature, Resistance)]) -> Curve {
    Curve::Table(Table::new(points).expect("every piece falls"))
}

/// Four terms: those of tests/reference/01b within 5 %, for ratios to any R₂₅.
fn four_term_curves() -> impl Strategy<Value = Curve> {
    let near = || 0.95..1.05_f64;
    (10.0..1e6_f64, near(), near(), near(), near()).prop_map(|(base, a, b, c, d)| {
        let terms = [3.353_943_8e-3 * a, 2.564_609_5e-4 * b, 2.515_816_6e-6 * c, 1.050_306_9e-7 * d];
        let curve = SteinhartHart4::new(terms, Resistance::from_ohms(base));
        Curve::SteinhartHart4(curve.expect("near the coefficients of a thermistor"))
    })
}

fn platinum_curves() -> impl Strategy<Value = Curve> {
    let platinum = |ohms| Platinum::new(Resistance::from_ohms(ohms)).expect("above zero");
    (1.0..1e5_f64).prop_map(move |ohms| Curve::Platinum(platinum(ohms)))
}

/// Silicon near the published coefficients of tests/reference/02f, and far from them.
fn silicon_curves() -> impl Strategy<Value = Curve> {
    (10.0..1e5_f64, -40.0..120.0_f64, 1e-3..2e-2_f64, -1e-5..5e-5_f64).prop_map(|(rated, at, a, b)| {
        let at = Temperature::from_celsius(at);
        let curve = SiliconPtc::new(Resistance::from_ohms(rated), at, a, b);
        Curve::SiliconPtc(curve.expect("it rises at the rated temperature"))
    })
}

/// Tables that rise by 0.1 to 2 % a kelvin.
fn rising_tables() -> impl Strategy<Value = Curve> {
    let pieces = prop::collection::vec((2.0..30.0_f64, 0.001..0.02_f64), 1..12);
    (-60.0..0.0_f64, 100.0..5e3_f64, pieces).prop_map(|(coldest, least, pieces)| {
        let mut points = vec![(Temperature::from_celsius(coldest), Resistance::from_ohms(least))];
        for (apart, rise) in pieces {
            let (at, of) = points[points.len() - 1];
            let next = at.plus(TemperatureDifference::from_kelvins(apart));
            points.push((next, Resistance::from_ohms(of.ohms() * libm::exp(rise * apart))));
        }
        table(&points)
    })
}

fn falling_curves() -> impl Strategy<Value = Curve> {
    prop_oneof![beta_curves(), steinhart_hart_curves(), four_term_curves(), tables()]
}

fn rising_curves() -> impl Strategy<Value = Curve> {
    prop_oneof![platinum_curves(), silicon_curves(), rising_tables()]
}

fn curves() -> impl Strategy<Value = Curve> {
    prop_oneof![falling_curves(), rising_curves()]
}

/// The temperature a share of the way from the coldest to the hottest of a curve.
fn at_share(curve: &Curve, share: f64) -> Temperature {
    let domain = curve.domain();
    let celsius = domain.low.celsius() + share * (domain.high.celsius() - domain.low.celsius());
    Temperature::from_celsius(celsius.min(domain.high.celsius()))
}

/// A value that must exist where the property asks for it.
fn known<T>(value: Result<T, CurveError>) -> Result<T, TestCaseError> {
    value.map_err(|error| TestCaseError::fail(error.to_string()))
}

fn ohms(curve: &Curve, at: Temperature) -> Result<f64, TestCaseError> {
    let of = known(curve.resistance(at))?;
    prop_assert!(of.ohms().is_finite() && of.ohms() > 0.0, "{} at {}", of, at);
    Ok(of.ohms())
}

proptest! {
    #![proptest_config(crate::every_run())]

    #[test]
    fn there_and_back_is_the_same_temperature(curve in curves(), share in 0.0..=1.0_f64) {
        let at = at_share(&curve, share);
        // Right at an end the last bit may fall outside, which is no temperature.
        let near_end = !(1e-9..=1.0 - 1e-9).contains(&share);
        match curve.temperature(Resistance::from_ohms(ohms(&curve, at)?)) {
            Ok(back) => prop_assert!((back.celsius() - at.celsius()).abs() <= THERE_AND_BACK, "{back}"),
            Err(error) => prop_assert!(near_end, "{} at {}", error, at),
        }
    }

    #[test]
    fn a_curve_goes_one_way(curve in curves(), share in 0.0..0.99_f64, further in 0.001..=1.0_f64) {
        let colder = at_share(&curve, share);
        let warmer = at_share(&curve, share + further * (1.0 - share));
        let by = ohms(&curve, warmer)? - ohms(&curve, colder)?;
        let slope = known(curve.slope(colder))?;
        prop_assert!(slope.is_finite(), "slope {} at {}", slope, colder);
        match curve.direction() {
            Direction::Falling => prop_assert!(by < 0.0 && slope < 0.0, "{} and {}", colder, warmer),
            Direction::Rising => prop_assert!(by > 0.0 && slope > 0.0, "{} and {}", colder, warmer),
        }
    }

    #[test]
    fn a_platinum_class_holds_its_nominal_wherever_it_holds(
        curve in platinum_curves(),
        class in prop::sample::select(vec![
            PlatinumClass::AA, PlatinumClass::A, PlatinumClass::B, PlatinumClass::C,
        ]),
        at in -200.0..850.0_f64,
    ) {
        let at = Temperature::from_celsius(at);
        match band(&curve, &Tolerance::Platinum(class), at) {
            Ok(band) => prop_assert!(band.low < band.nominal && band.nominal < band.high, "{:?}", band),
            Err(error) => prop_assert!(!class.range().contains(&at), "{} at {}", error, at),
        }
    }

    #[test]
    fn a_slope_is_the_fall_over_a_small_step(curve in curves(), share in 0.01..0.99_f64) {
        const STEP: f64 = 1e-3;
        let at = at_share(&curve, share);
        let by = TemperatureDifference::from_kelvins(STEP);
        let fall = libm::log(ohms(&curve, at.plus(by))? / ohms(&curve, at.minus(by))?) / (2.0 * STEP);
        let slope = known(curve.slope(at))?;
        // A difference quotient over 2 mK: its own rounding and the bend of the curve.
        prop_assert!((fall - slope).abs() <= 1e-3 * slope.abs() + 1e-6, "{} against {}", fall, slope);
    }

    #[test]
    fn a_table_never_leaves_the_two_points_around_it(
        // Pieces that no part has: one as flat as a resistor, the next a cliff.
        points in points_of(10.0..20_000.0),
        shares in prop::collection::vec(0.0..=1.0_f64, 8),
    ) {
        let curve = table(&points);
        for pair in points.windows(2) {
            let [(cold, most), (hot, least)] = pair else { continue };
            for share in &shares {
                let at = cold.celsius() + share * (hot.celsius() - cold.celsius());
                let at = Temperature::from_celsius(at.min(hot.celsius()));
                let of = ohms(&curve, at)?;
                let inside = of <= most.ohms() * (1.0 + 1e-12) && of >= least.ohms() * (1.0 - 1e-12);
                prop_assert!(inside, "{} at {} between {} and {}", of, at, most, least);
                // Where a table is flat the temperature is not sharp, but the ohms are met.
                let held = of.clamp(points[points.len() - 1].1.ohms(), points[0].1.ohms());
                let back = known(curve.temperature(Resistance::from_ohms(held)))?;
                prop_assert!((ohms(&curve, back)? / held - 1.0).abs() <= 1e-9, "{} and {}", at, back);
            }
        }
    }

    #[test]
    fn the_order_of_a_tables_rows_does_not_matter(
        points in points_of(2000.0..6000.0).prop_shuffle(),
        share in 0.0..=1.0_f64,
    ) {
        let mut sorted = points.clone();
        sorted.sort_by(|a, b| a.0.celsius().total_cmp(&b.0.celsius()));
        let (shuffled, sorted) = (table(&points), table(&sorted));
        let at = at_share(&sorted, share);
        prop_assert_eq!(shuffled.resistance(at), sorted.resistance(at));
    }

    #[test]
    fn a_band_holds_its_nominal(
        curve in curves(),
        spreads in (0.0..0.2_f64, 0.0..0.05_f64),
        shares in (0.0..=1.0_f64, 0.0..=1.0_f64),
    ) {
        let (at, rated) = (at_share(&curve, shares.0), at_share(&curve, shares.1));
        let (resistance, beta) = (Ratio::new(spreads.0), Ratio::new(spreads.1));
        let tolerance = Tolerance::Rated { resistance, beta, at: rated };
        let band = known(band(&curve, &tolerance, at))?;
        prop_assert!(band.low <= band.nominal && band.nominal <= band.high, "{:?}", band);
        prop_assert!(band.low.ohms() > 0.0 && band.high.ohms().is_finite(), "{:?}", band);
    }

    #[test]
    fn a_band_in_kelvins_ends_where_its_curve_ends(
        curve in curves(),
        kelvins in 0.0..5.0_f64,
        share in 0.0..=1.0_f64,
    ) {
        let by = TemperatureDifference::from_kelvins(kelvins);
        let at = at_share(&curve, share);
        let domain = curve.domain();
        let reaches = domain.contains(&at.plus(by)) && domain.contains(&at.minus(by));
        let band = band(&curve, &Tolerance::Temperature(by), at);
        // A curve that is not known so far away says so; it never guesses.
        prop_assert_eq!(band.is_ok(), reaches, "{} ± {}", at, by);
        if let Ok(band) = band {
            prop_assert!(band.low <= band.nominal && band.nominal <= band.high, "{:?}", band);
        }
    }

    #[test]
    fn a_band_of_columns_is_its_columns(
        points in points_of(2000.0..6000.0),
        parts in (0.5..1.0_f64, 1.0..2.0_f64),
        share in 0.0..=1.0_f64,
    ) {
        let column = |part: f64| {
            let scaled = points.iter().map(|(at, of)| (*at, Resistance::from_ohms(of.ohms() * part)));
            Table::new(&scaled.collect::<Vec<_>>()).expect("every piece falls")
        };
        let tolerance = Tolerance::Columns { low: column(parts.0), high: column(parts.1) };
        let curve = table(&points);
        let band = known(band(&curve, &tolerance, at_share(&curve, share)))?;
        // A factor moves ln R as a whole, so the columns keep their distance.
        for (limit, part) in [(band.low, parts.0), (band.high, parts.1)] {
            let limit = limit.ohms() / band.nominal.ohms();
            prop_assert!((limit / part - 1.0).abs() <= 1e-9, "{} for {}", limit, part);
        }
    }

    #[test]
    fn a_part_inside_its_tolerance_lies_in_the_band(
        rated in 10.0..1e6_f64,
        beta in 2000.0..6000.0_f64,
        spreads in (0.0..0.2_f64, 0.0..0.05_f64),
        choice in (-1.0..=1.0_f64, -1.0..=1.0_f64),
        at in -60.0..200.0_f64,
    ) {
        let rated_at = Temperature::from_celsius(25.0);
        let beta_curve = |rated, beta| {
            let curve = BetaCurve::new(Resistance::from_ohms(rated), rated_at, Beta::from_kelvins(beta));
            Curve::Beta(curve.expect("both are above zero"))
        };
        let tolerance = Tolerance::Rated {
            resistance: Ratio::new(spreads.0),
            beta: Ratio::new(spreads.1),
            at: rated_at,
        };
        let at = Temperature::from_celsius(at);
        let band = known(band(&beta_curve(rated, beta), &tolerance, at))?;
        let part = beta_curve(rated * (1.0 + choice.0 * spreads.0), beta * (1.0 + choice.1 * spreads.1));
        let of = ohms(&part, at)?;
        let inside = of >= band.low.ohms() * (1.0 - 1e-12) && of <= band.high.ohms() * (1.0 + 1e-12);
        prop_assert!(inside, "{} outside {:?}", of, band);
    }

    #[test]
    fn a_band_in_kelvins_is_that_many_kelvins_wide(
        curve in beta_curves(),
        kelvins in 0.1..5.0_f64,
        at in -60.0..200.0_f64,
    ) {
        let tolerance = Tolerance::Temperature(TemperatureDifference::from_kelvins(kelvins));
        let band = known(band(&curve, &tolerance, Temperature::from_celsius(at)))?;
        for (limit, off) in [(band.low, kelvins), (band.high, -kelvins)] {
            let reads = known(curve.temperature(limit))?;
            prop_assert!((reads.celsius() - at - off).abs() <= THERE_AND_BACK, "{} for {}", reads, off);
        }
    }

    #[test]
    fn a_curve_that_exists_has_finite_values_everywhere(
        beta in (1e-3..1e9_f64, -100.0..350.0_f64, 1.0..1e6_f64),
        coefficients in (-1.0..1.0_f64, 1e-9..1.0_f64, 0.0..1.0_f64),
        any in prop::array::uniform4(prop::num::f64::ANY),
        wild in prop::array::uniform4(-1.0..1.0_f64),
        shares in prop::collection::vec(0.0..=1.0_f64, 8),
        any_ohms in 1e-12..1e12_f64,
    ) {
        let (rated, at, kelvins) = beta;
        let at = Temperature::from_celsius(at);
        let beta = BetaCurve::new(Resistance::from_ohms(rated), at, Beta::from_kelvins(kelvins));
        let (a, b, c) = coefficients;
        let steinhart_hart = SteinhartHart::new(a * 1e-2, b * 1e-2, c * 1e-4);
        let base = |ohms: f64| Resistance::from_ohms(ohms);
        let wild = [wild[0] * 1e-2, wild[1] * 1e-2, wild[2] * 1e-4, wild[3] * 1e-5];
        let every = [
            beta.map(Curve::Beta),
            steinhart_hart.map(Curve::SteinhartHart),
            SteinhartHart4::new(wild, base(1.0)).map(Curve::SteinhartHart4),
            SteinhartHart4::new(wild, base(rated)).map(Curve::SteinhartHart4),
            SteinhartHart4::new(any, base(any[0])).map(Curve::SteinhartHart4),
            Platinum::new(base(any[0])).map(Curve::Platinum),
            SiliconPtc::new(base(any[0]), at, any[1], any[2]).map(Curve::SiliconPtc),
            SiliconPtc::new(base(rated), at, wild[1].abs(), wild[2]).map(Curve::SiliconPtc),
        ];
        for curve in every.into_iter().flatten() {
            for share in &shares {
                let at = at_share(&curve, *share);
                ohms(&curve, at)?;
                prop_assert!(curve.slope(at).is_ok_and(f64::is_finite), "slope at {}", at);
            }
            if let Ok(at) = curve.temperature(Resistance::from_ohms(any_ohms)) {
                prop_assert!(curve.domain().contains(&at), "{} Ω at {}", any_ohms, at);
            }
        }
    }
}
