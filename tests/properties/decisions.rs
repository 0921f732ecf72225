//! Uncertainty, decision rules, remedies, soaked sensors, thermocouples, preferred numbers.

use bayleaf::physics::circuit::{Circuit, Topology};
use bayleaf::physics::curve::{BetaCurve, Curve};
use bayleaf::physics::decision::{Limits, Rule, Verdict, acceptance, decide, probability};
use bayleaf::physics::preferred::Series;
use bayleaf::physics::remedy::{
    Candidate, Change, Decides, Situation, cheapest, decides, largest_thermometer_limit,
};
use bayleaf::physics::soak::{Soaked, agreement};
use bayleaf::physics::thermocouple::{Class, Thermocouple};
use bayleaf::physics::uncertainty::{
    Budget, Contribution, Input, Instruments, Source, derivative, expanded, ohms, volts,
};
use bayleaf::quantity::{
    Accuracy, Beta, MeterRanges, Ratio, Resistance, Temperature, TemperatureDifference, Toleranced, Voltage,
};
use proptest::prelude::*;

/// Sums of squares are computed in another order than the same sums elsewhere.
const LAST_BITS: f64 = 1e-12;

/// Any finite number: large, small, negative, subnormal, zero.
fn finite() -> impl Strategy<Value = f64> {
    prop_oneof![prop::num::f64::NORMAL, prop::num::f64::SUBNORMAL, Just(0.0), -1e3..1e3_f64]
}

fn any_limits() -> impl Strategy<Value = Limits> {
    let side = || prop::option::of(-10.0..10.0_f64);
    (side(), side()).prop_filter_map("limits in order", |(low, high)| Limits::new(low, high).ok())
}

fn rules() -> impl Strategy<Value = Rule> {
    prop_oneof![
        Just(Rule::Simple),
        (0.0..2.0_f64).prop_map(|multiple| Rule::Guarded { multiple: Ratio::new(multiple) })
    ]
}

fn guarded(multiple: f64) -> Rule {
    Rule::Guarded { multiple: Ratio::new(multiple) }
}

proptest! {
    #![proptest_config(crate::every_run())]

    #[test]
    fn a_wider_guard_band_passes_and_fails_less(
        limits in any_limits(),
        reading in -12.0..12.0_f64,
        u in 0.0..3.0_f64,
        multiples in (0.0..2.0_f64, 0.0..2.0_f64),
    ) {
        let (narrow, wide) = (multiples.0.min(multiples.1), multiples.0.max(multiples.1));
        let narrow = decide(&limits, reading, u, guarded(narrow)).expect("a reading");
        let wide = decide(&limits, reading, u, guarded(wide)).expect("a reading");
        prop_assert!(wide.verdict == narrow.verdict || wide.verdict == Verdict::Undecided);
        prop_assert!(wide.acceptance.low >= narrow.acceptance.low);
        let highs = wide.acceptance.high.zip(narrow.acceptance.high);
        prop_assert!(highs.is_none_or(|(wide, narrow)| wide <= narrow));
        if narrow.acceptance.is_empty() {
            prop_assert!(wide.acceptance.is_empty());
        }
    }

    #[test]
    fn a_verdict_keeps_to_its_own_limits(
        limits in any_limits(),
        reading in -12.0..12.0_f64,
        u in 0.0..3.0_f64,
        rule in rules(),
    ) {
        let decision = decide(&limits, reading, u, rule).expect("a reading");
        match decision.verdict {
            Verdict::Pass => prop_assert!(limits.contains(reading) && decision.acceptance.contains(reading)),
            Verdict::Fail => prop_assert!(!limits.contains(reading)),
            Verdict::Undecided => prop_assert!(rule != Rule::Simple),
        }
        // One side only: the true value is more likely on the verdict's side. With two
        // near limits most of it may lie outside although the reading lies inside.
        if limits.low().is_none() || limits.high().is_none() {
            prop_assert!(decision.risk.is_none_or(|risk| risk.part() <= 0.5 + LAST_BITS));
        }
        // w = U leaves 2.3 % on either side of the limits: two tails at most.
        if rule == guarded(1.0) && decision.verdict == Verdict::Pass && u > 0.0 {
            prop_assert!(decision.risk.is_some_and(|risk| risk.part() <= 2.0 * 0.022_750_2));
        }
    }

    #[test]
    fn a_reading_further_inside_is_more_likely_good(
        limit in -10.0..10.0_f64,
        u in 0.01..3.0_f64,
        readings in (-12.0..12.0_f64, -12.0..12.0_f64),
    ) {
        let limits = Limits::new(None, Some(limit)).expect("one limit");
        let (inner, outer) = (readings.0.min(readings.1), readings.0.max(readings.1));
        let (inner, _) = probability(&limits, inner, u).expect("a reading");
        let (outer, _) = probability(&limits, outer, u).expect("a reading");
        prop_assert!(inner >= outer);
    }

    #[test]
    fn inside_and_outside_make_one(limits in any_limits(), reading in -12.0..12.0_f64, u in 0.0..3.0_f64) {
        let (inside, outside) = probability(&limits, reading, u).expect("a reading");
        prop_assert!((inside.part() + outside.part() - 1.0).abs() <= LAST_BITS);
        prop_assert!((0.0..=1.0).contains(&inside.part()) && (0.0..=1.0).contains(&outside.part()));
    }

    #[test]
    fn nothing_finite_makes_a_decision_undefined(
        ends in (prop::option::of(finite()), prop::option::of(finite())),
        reading in finite(),
        u in finite(),
        multiple in finite(),
    ) {
        let Ok(limits) = Limits::new(ends.0, ends.1) else { return Ok(()) };
        if let Ok(decision) = decide(&limits, reading, u, guarded(multiple)) {
            prop_assert!(u >= 0.0 && decision.guard >= 0.0 && decision.guard.is_finite());
            prop_assert!((0.0..=1.0).contains(&decision.inside.part()), "{:?}", decision);
            prop_assert!(decision.risk.is_none_or(|risk| (0.0..=1.0).contains(&risk.part())));
            let ends = [decision.acceptance.low, decision.acceptance.high];
            prop_assert!(ends.into_iter().flatten().all(f64::is_finite));
        }
        if let Ok(open) = acceptance(&limits, multiple) {
            prop_assert!(multiple >= 0.0 && open.low >= limits.low());
        }
    }

    #[test]
    fn a_budget_grows_with_every_line(
        lines in prop::collection::vec((0.0..10.0_f64, -10.0..10.0_f64), 1..8),
    ) {
        let all: Vec<_> = (lines.iter())
            .map(|&(limit, slope)| Contribution::limit(Source::MeterReading, limit, slope))
            .collect();
        let whole = Budget::new(all.clone()).expect("limits of error");
        let fewer = Budget::new(all[1..].to_vec()).expect("limits of error");
        prop_assert!(whole.combined() >= fewer.combined());
        prop_assert!(whole.combined() <= whole.worst_case() + LAST_BITS);
        let plain: Vec<f64> = lines.iter().map(|(limit, slope)| limit * slope).collect();
        prop_assert!((whole.expanded() - expanded(&plain)).abs() <= LAST_BITS * whole.expanded());
        let shares: f64 = whole.shares().iter().map(|(_, share)| share.part()).sum();
        prop_assert!(whole.combined() <= 0.0 || (shares - 1.0).abs() <= LAST_BITS, "{}", shares);
    }

    #[test]
    fn nothing_finite_makes_a_budget_undefined(lines in prop::collection::vec((finite(), finite()), 0..6)) {
        let lines = lines.iter().map(|&(limit, slope)| Contribution::limit(Source::Soak, limit, slope));
        if let Ok(budget) = Budget::new(lines.collect()) {
            prop_assert!(budget.expanded().is_finite() && budget.expanded() >= 0.0);
            prop_assert!(budget.shares().iter().all(|(_, share)| share.part().is_finite()));
        }
    }

    #[test]
    fn nothing_finite_makes_a_readings_doubt_undefined(
        celsius in prop_oneof![-120.0..400.0_f64, finite()],
        limits in (finite(), finite(), finite(), finite()),
        reading in finite(),
    ) {
        let curve = BetaCurve::new(
            Resistance::from_ohms(2200.0), Temperature::from_celsius(25.0), Beta::from_kelvins(3500.0),
        );
        let curve = Curve::Beta(curve.expect("a thermistor"));
        let (thermometer, soak, part, digit) = limits;
        let instruments = Instruments {
            thermometer: Some(TemperatureDifference::from_kelvins(thermometer)),
            soak: Some(TemperatureDifference::from_kelvins(soak)),
            meter: Some(MeterRanges::one(Accuracy { reading: Ratio::new(part), digits: 2 }, digit)),
            leads: None,
        };
        let at = Temperature::from_celsius(celsius);
        let circuit = Circuit::divider(
            Topology::PullUp,
            Toleranced { nominal: Resistance::from_ohms(4700.0), limits: None },
            Toleranced { nominal: Voltage::from_volts(5.0), limits: None },
        );
        let doubts = [
            ohms(&curve, at, Resistance::from_ohms(reading), &instruments),
            volts(&curve, &circuit, None, at, Voltage::from_volts(reading), &instruments),
        ];
        for doubt in doubts.into_iter().flatten() {
            prop_assert!(curve.domain().contains(&at) && thermometer >= 0.0 && soak >= 0.0);
            prop_assert!(doubt.budget.expanded().is_finite(), "{:?}", doubt);
        }
    }

    #[test]
    fn a_derivative_is_the_exact_one_of_a_power(
        value in prop_oneof![0.1..1e4_f64, -1e4..-0.1_f64],
        part in 0.0..0.2_f64,
        power in 1_i32..5,
    ) {
        let input = Input { source: Source::Rated, value, limit: part * value.abs() };
        let slope = derivative(&[input], 0, |point| Some(point[0].powi(power))).expect("a slope everywhere");
        let exact = f64::from(power) * value.powi(power - 1);
        prop_assert!((slope.value - exact).abs() <= 1e-9 * exact.abs(), "{:?} for {}", slope, exact);
        prop_assert!((slope.value - exact).abs() <= slope.error + 1e-9 * exact.abs());
    }

    #[test]
    fn nothing_finite_makes_a_derivative_undefined(value in finite(), limit in finite(), edge in finite()) {
        let input = Input { source: Source::Rated, value, limit };
        let model = |point: &[f64]| (point[0] < edge).then(|| 1.0 / point[0]);
        if let Ok(slope) = derivative(&[input], 0, model) {
            prop_assert!(slope.value.is_finite() && slope.error.is_finite());
        }
    }

    #[test]
    fn the_largest_thermometer_limit_is_just_enough(
        half in 0.5..5.0_f64,
        reading in -7.0..7.0_f64,
        slope in 1.0..6.0_f64,
        meter in 0.0..2.0_f64,
        today in 0.0..3.0_f64,
        rule in rules(),
    ) {
        let limits = Limits::new(Some(-half), Some(half)).expect("limits in order");
        let situation = |limit: TemperatureDifference| {
            Some(Situation { limits, expanded: expanded(&[slope * limit.kelvins(), meter]) })
        };
        let kelvins = TemperatureDifference::from_kelvins;
        let enough = |limit| decides(situation(kelvins(limit)), reading, rule) != Decides::No;
        match largest_thermometer_limit(situation, kelvins(today), reading, rule).map(|limit| limit.kelvins()) {
            Some(limit) => {
                prop_assert!(limit <= today && enough(limit));
                prop_assert!(limit >= today || !enough(limit + 1e-9), "{} K would do as well", limit + 1e-9);
            }
            None => prop_assert!(!enough(0.0) && !enough(today)),
        }
    }

    #[test]
    fn the_cheapest_remedy_decides(costs in prop::collection::vec((0_u8..9, any::<bool>()), 0..8)) {
        let candidate = |&(cost, yes): &(u8, bool)| Candidate {
            change: Change::Meter(Ratio::new(0.5)),
            cost,
            decides: if yes { Decides::Yes(Verdict::Pass) } else { Decides::No },
        };
        let candidates: Vec<_> = costs.iter().map(candidate).collect();
        let least = costs.iter().filter(|(_, yes)| *yes).map(|(cost, _)| *cost).min();
        prop_assert_eq!(cheapest(&candidates).map(|candidate| candidate.cost), least);
    }

    #[test]
    fn the_odd_sensor_is_the_same_in_any_order(
        celsius in prop::collection::vec(18.0..24.0_f64, 0..6),
        parts in (0.0..1.0_f64, 0.0..1.0_f64),
        turns in 0_usize..6,
        swap in any::<bool>(),
    ) {
        let kelvins = TemperatureDifference::from_kelvins;
        let soaked = |&celsius: &f64| Soaked {
            believed: Temperature::from_celsius(celsius),
            tolerance: kelvins(parts.0),
            uncertainty: kelvins(parts.1),
        };
        let sensors: Vec<_> = celsius.iter().map(soaked).collect();
        let mut turned = sensors.clone();
        turned.rotate_left(turns.min(sensors.len()));
        if swap && turned.len() > 1 {
            turned.swap(0, 1);
        }
        let (before, after) = (agreement(&sensors).expect("sensors"), agreement(&turned).expect("sensors"));
        prop_assert_eq!(before.disagreements.len(), after.disagreements.len());
        let odd = before.odd_one_out.map(|odd| sensors[odd]);
        prop_assert_eq!(odd, after.odd_one_out.map(|odd| turned[odd]));
        // Without it all others agree; without any other one some still disagree.
        if let Some(odd) = before.odd_one_out {
            for left_out in 0..sensors.len() {
                let mut rest = sensors.clone();
                rest.remove(left_out);
                let agree = agreement(&rest).expect("sensors").disagreements.is_empty();
                prop_assert_eq!(agree, left_out == odd);
            }
        }
    }

    #[test]
    fn a_thermocouple_rises_and_leads_back(
        wire in prop::sample::select(vec![Thermocouple::K, Thermocouple::T, Thermocouple::J]),
        parts in (0.0..=1.0_f64, 0.0..=1.0_f64),
        reference in -20.0..60.0_f64,
    ) {
        let domain = wire.domain();
        let (low, high) = (domain.low.celsius(), domain.high.celsius());
        let at = |part: f64| Temperature::from_celsius(low + part * (high - low));
        let reference = Temperature::from_celsius(reference);
        let emf = |part| wire.emf_from(at(part), reference).expect("inside the domain");
        let back = wire.temperature(emf(parts.0), reference).expect("inside the domain");
        // Below −200 °C a kelvin is only a few microvolts; types K and T end almost flat.
        let near = if at(parts.0).celsius() < -200.0 { 1e-6 } else { 1e-9 };
        prop_assert!((back.celsius() - at(parts.0).celsius()).abs() <= near, "{} for {}", back, at(parts.0));
        if (parts.0 - parts.1).abs() * (high - low) > 1e-6 {
            prop_assert_eq!(parts.0 < parts.1, emf(parts.0) < emf(parts.1));
        }
    }

    #[test]
    fn nothing_finite_makes_a_thermocouple_undefined(celsius in finite(), volts in finite(), cold in finite()) {
        let (at, cold) = (Temperature::from_celsius(celsius), Temperature::from_celsius(cold));
        for wire in [Thermocouple::K, Thermocouple::T, Thermocouple::J] {
            prop_assert!(wire.emf(at).is_ok_and(|emf| emf.volts().is_finite()) == wire.domain().contains(&at));
            if let Ok(back) = wire.temperature(Voltage::from_volts(volts), cold) {
                prop_assert!(wire.domain().contains(&back));
            }
            for class in [Class::One, Class::Two, Class::Three] {
                let limit = wire.limit_of_error(class, at);
                prop_assert!(limit.is_none_or(|limit| limit.kelvins() >= 0.5));
            }
        }
    }

    #[test]
    fn preferred_numbers_lie_on_either_side(
        series in prop::sample::select(vec![
            Series::E3, Series::E6, Series::E12, Series::E24, Series::E48, Series::E96,
        ]),
        exponent in -3.0..12.0_f64,
    ) {
        let ohms = libm::pow(10.0, exponent);
        let of = Resistance::from_ohms(ohms);
        let found = [
            series.lower(of), series.upper(of), series.nearest_by_ratio(of), series.nearest_by_difference(of),
        ];
        let [Some(lower), Some(upper), Some(ratio), Some(difference)] = found else {
            return Err(TestCaseError::fail(format!("{ohms}: {found:?}")));
        };
        prop_assert!(lower <= of && of <= upper);
        prop_assert!([lower, upper].contains(&ratio) && [lower, upper].contains(&difference));
        // The gap between neighbours of E3 is 2.2 at most.
        prop_assert!(upper.ohms() / lower.ohms() <= 2.2 + LAST_BITS);
        // A preferred number is its own neighbour on both sides.
        prop_assert_eq!((series.lower(lower), series.upper(lower)), (Some(lower), Some(lower)));
    }

    #[test]
    fn a_resistance_without_a_resistor_has_no_preferred_number(ohms in finite()) {
        let found = Series::E24.nearest_by_ratio(Resistance::from_ohms(ohms));
        prop_assert_eq!(found.is_some(), (1e-3..1e13).contains(&ohms));
    }
}

/// Constructed cases: one that drifted, two that differ, two pairs, all alike.
#[test]
fn one_of_three_is_odd_and_one_of_two_is_not() {
    let kelvins = TemperatureDifference::from_kelvins;
    let odd = |celsius: &[f64]| {
        // Allowed: √(2 × 0.3² + 2 × 0.4²) = 0.707 K.
        let soaked = |&celsius: &f64| Soaked {
            believed: Temperature::from_celsius(celsius),
            tolerance: kelvins(0.3),
            uncertainty: kelvins(0.4),
        };
        let found = agreement(&celsius.iter().map(soaked).collect::<Vec<_>>()).expect("sensors");
        (found.disagreements.len(), found.odd_one_out)
    };
    assert_eq!(odd(&[20.0, 20.2, 22.0]), (2, Some(2)));
    assert_eq!(odd(&[20.0, 22.0]), (1, None));
    assert_eq!(odd(&[20.0, 20.1, 22.0, 22.1]), (4, None));
    assert_eq!(odd(&[20.0, 20.5, 20.7]), (0, None));
    // Only the ends disagree: either would do, so neither is named.
    assert_eq!(odd(&[20.0, 20.5, 21.0]), (1, None));
    assert_eq!(odd(&[]), (0, None));
}
