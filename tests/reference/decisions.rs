//! Decision rules with their risks, and the worked figures of a sensor's uncertainty.

use bayleaf::physics::curve::{BetaCurve, Curve};
use bayleaf::physics::decision::{Conformance, Limits, Rule, Verdict, decide};
use bayleaf::physics::remedy::{
    Candidate, Change, Decides, Situation, carried, cheapest, decides, largest_thermometer_limit,
};
use bayleaf::physics::tolerance::{Tolerance, band};
use bayleaf::physics::uncertainty::{Instruments, Source, ohms};
use bayleaf::quantity::{Beta, MeterRanges, Ratio, Resistance, Temperature, TemperatureDifference, accuracy};

use crate::sheet::Within::{Absolute, Relative};
use crate::sheet::{Row, meets, rows_of};

fn optional(row: &Row, column: &str) -> Option<f64> {
    row.has(column).then(|| row.number(column))
}

/// 04c: header demands 1e-6 on p_conform and the decisions exactly; limits are
/// inclusive at equality.
#[test]
fn decisions_are_those_of_the_guides() {
    let mut checked = 0;
    for row in rows_of("04c_decision_rules.csv") {
        let limits = Limits::new(optional(&row, "TL"), optional(&row, "TU")).expect("limits in order");
        let (reading, u) = (row.number("y"), row.number("u"));
        let rule = Rule::Guarded { multiple: Ratio::new(row.number("r_guard")) };
        let guarded = decide(&limits, reading, u, rule).expect("a reading with an uncertainty");
        row.agrees("p_conform", guarded.inside.part(), Absolute(1e-6));
        row.agrees("w", guarded.guard, Relative(1e-12));
        for (column, limit) in [("AL_low", guarded.acceptance.low), ("AU_high", guarded.acceptance.high)] {
            assert_eq!(row.has(column), limit.is_some(), "{} {column}", row.place());
            if let Some(limit) = limit {
                row.agrees(column, limit, Relative(1e-12));
            }
        }
        let four_state = match guarded.conformance {
            Conformance::Pass => "PASS",
            Conformance::ConditionalPass => "COND_PASS",
            Conformance::ConditionalFail => "COND_FAIL",
            Conformance::Fail => "FAIL",
        };
        assert_eq!(four_state, row.text("four_state"), "{}", row.place());
        // The column is binary: what does not pass fails. Here that may be undecided.
        let passes = guarded.verdict == Verdict::Pass;
        assert_eq!(if passes { "PASS" } else { "FAIL" }, row.text("guarded"), "{}", row.place());
        assert_eq!(guarded.verdict == Verdict::Undecided, four_state.starts_with("COND"), "{}", row.place());
        let simple = decide(&limits, reading, u, Rule::Simple).expect("a reading with an uncertainty");
        let word = if simple.verdict == Verdict::Pass { "PASS" } else { "FAIL" };
        assert_eq!(word, row.text("simple"), "{}", row.place());
        assert_ne!(simple.verdict, Verdict::Undecided, "{}", row.place());
        let empty = row.text("id") == "window_narrower_than_2w" || row.text("id") == "JCGM106_7.4";
        assert_eq!(guarded.acceptance.is_empty(), empty, "{}", row.place());
        risk_is_that_of_the_verdict(&row, &simple, &guarded);
        checked += 1;
    }
    assert_eq!(checked, 10, "every row of 04c");
}

/// A pass is wrong with 1 − p, a fail with p.
fn risk_is_that_of_the_verdict(
    row: &Row,
    simple: &bayleaf::physics::decision::Decision,
    guarded: &bayleaf::physics::decision::Decision,
) {
    for decision in [simple, guarded] {
        let inside = row.number("p_conform");
        match (decision.verdict, decision.risk) {
            (Verdict::Pass, Some(risk)) => meets(&row.place(), 1.0 - inside, risk.part(), Absolute(1e-6)),
            (Verdict::Fail, Some(risk)) => meets(&row.place(), inside, risk.part(), Absolute(1e-6)),
            (Verdict::Undecided, None) => {}
            other => panic!("{}: {other:?}", row.place()),
        }
    }
}

/// JCGM 106, 8.3.2 (from memory): w = U leaves at least 97.7 % conformance at a
/// one-sided acceptance limit, and w = 0.8225 U leaves 95 %.
#[test]
fn a_guard_band_bounds_the_risk_of_a_pass() {
    let limits = Limits::new(None, Some(1.0)).expect("one limit");
    for (multiple, inside) in [(1.0, 0.977_249_868), (0.822_426_813_5, 0.95)] {
        let rule = Rule::Guarded { multiple: Ratio::new(multiple) };
        let at_limit = decide(&limits, 1.0 - multiple * 0.2, 0.1, rule).expect("a reading");
        meets("conformance", inside, at_limit.inside.part(), Absolute(1e-8));
    }
}

/// E1 of the trade's notes (invented part, computed figures): U in percent of the
/// reading with thermometer, soak and a 0.9 % meter, and what it decides.
struct Worked {
    celsius: f64,
    thermometer: f64,
    soak: f64,
    /// U, %, printed to a tenth.
    expanded: f64,
    /// The tolerance, %, first order.
    tolerance: f64,
}

const WORKED: [Worked; 3] = [
    Worked { celsius: 31.0, thermometer: 1.0, soak: 0.5, expanded: 5.0, tolerance: 3.35 },
    Worked { celsius: 31.0, thermometer: 0.3, soak: 0.3, expanded: 2.1, tolerance: 3.35 },
    Worked { celsius: 0.0, thermometer: 0.1, soak: 0.1, expanded: 1.3, tolerance: 4.61 },
];

#[test]
fn the_worked_figures_of_a_thermistor_come_out() {
    let rated = Temperature::from_celsius(25.0);
    let curve = BetaCurve::new(Resistance::from_ohms(2200.0), rated, Beta::from_kelvins(3500.0));
    let curve = Curve::Beta(curve.expect("2200 Ω and 3500 K are a thermistor"));
    let tolerance = Tolerance::Rated { resistance: Ratio::new(0.03), beta: Ratio::new(0.015), at: rated };
    // 0.9 % of the reading and no digits.
    let meter = MeterRanges::one(accuracy("0.9 % + 0 digits").expect("an accuracy"), 1.0);
    let mut acceptances = Vec::new();
    for case in WORKED {
        let at = Temperature::from_celsius(case.celsius);
        let kelvins = |limit| Some(TemperatureDifference::from_kelvins(limit));
        let instruments = Instruments {
            thermometer: kelvins(case.thermometer),
            soak: kelvins(case.soak),
            meter: Some(meter),
            leads: Some(Resistance::from_ohms(0.0)),
        };
        let nominal = curve.resistance(at).expect("inside the curve");
        let doubt = ohms(&curve, at, nominal, &instruments).expect("limits of error");
        assert_eq!(doubt.left_out, [], "everything was given");
        let percent = 100.0 * doubt.budget.expanded() / nominal.ohms();
        meets("U", case.expanded, percent, Absolute(0.05));
        let limits = band(&curve, &tolerance, at).expect("inside the curve");
        let limits = Limits::new(Some(limits.low.ohms()), Some(limits.high.ohms())).expect("in order");
        let rule = Rule::Guarded { multiple: Ratio::new(1.0) };
        let good = decide(&limits, nominal.ohms(), doubt.budget.combined(), rule).expect("a reading");
        let half = good.acceptance.high.zip(good.acceptance.low).map(|(high, low)| (high - low) / 2.0);
        let half = 100.0 * half.expect("two limits") / nominal.ohms();
        // Exact corners lie up to tol²/2 from the first-order tolerance, U within its 0.05.
        let second_order = case.tolerance * case.tolerance / 200.0;
        meets("acceptance", case.tolerance - case.expanded, half, Absolute(0.06 + second_order));
        acceptances.push((good.acceptance.is_empty(), good.verdict));
    }
    // "Cannot pass any sensor", "accept ± 1.2 %", "decidable".
    let expected = [(true, Verdict::Undecided), (false, Verdict::Pass), (false, Verdict::Pass)];
    assert_eq!(acceptances, expected);
}

/// E1, nominal, at 31 °C with ± 1 K, soak ± 0.5 K and a 0.9 % meter: undecided. By hand,
/// to first order: U = 3.35 % leaves 3 (3.35/2)² − 1.89² − 0.9² = 4.035 for the
/// thermometer, √4.035 / 3.78 = 0.53 K. In ice water the same instruments make
/// U = 2 √((4.69² + 2.345² + 0.9²)/3) = 6.1 % of a 4.61 % tolerance; with a soak and a
/// thermometer of ± 0.1 K it is 1.3 %.
#[test]
fn an_undecided_reading_has_a_computed_way_out() {
    let rated = Temperature::from_celsius(25.0);
    let curve = BetaCurve::new(Resistance::from_ohms(2200.0), rated, Beta::from_kelvins(3500.0));
    let curve = Curve::Beta(curve.expect("2200 Ω and 3500 K are a thermistor"));
    let tolerance = Tolerance::Rated { resistance: Ratio::new(0.03), beta: Ratio::new(0.015), at: rated };
    let meter = accuracy("0.9 % + 0 digits").expect("an accuracy");
    let situation = |at: Temperature, thermometer: TemperatureDifference, soak: f64| {
        let instruments = Instruments {
            thermometer: Some(thermometer),
            soak: Some(TemperatureDifference::from_kelvins(soak)),
            meter: Some(MeterRanges::one(meter, 1.0)),
            leads: None,
        };
        let band = band(&curve, &tolerance, at).ok()?;
        let doubt = ohms(&curve, at, band.nominal, &instruments).ok()?;
        let limits = Limits::new(Some(band.low.ohms()), Some(band.high.ohms())).ok()?;
        Some(Situation { limits, expanded: doubt.budget.expanded() })
    };
    let rule = Rule::Guarded { multiple: Ratio::new(1.0) };
    let kelvins = TemperatureDifference::from_kelvins;
    let (bay, ice) = (Temperature::from_celsius(31.0), Temperature::from_celsius(0.0));
    let reading = curve.resistance(bay).expect("inside the curve");
    let today = kelvins(1.0);
    assert_eq!(decides(situation(bay, today, 0.5), reading.ohms(), rule), Decides::No);
    let enough = largest_thermometer_limit(|limit| situation(bay, limit, 0.5), today, reading.ohms(), rule);
    let enough = enough.expect("a better thermometer would do");
    // The nearer corner lies at 3.29 %, tol²/2 inside the first-order tolerance.
    meets("thermometer", 0.53, enough.kelvins(), Absolute(0.02));
    let there = carried(&curve, reading, bay, ice).expect("inside the curve").ohms();
    meets("in ice water", 6442.2, there, Absolute(0.05));
    let candidate = |change, cost, decides| Candidate { change, cost, decides };
    let candidates = [
        candidate(Change::Temperature(ice), 1, decides(situation(ice, today, 0.5), there, rule)),
        candidate(Change::Thermometer(enough), 2, decides(situation(bay, enough, 0.5), reading.ohms(), rule)),
        candidate(Change::Temperature(ice), 3, decides(situation(ice, kelvins(0.1), 0.1), there, rule)),
    ];
    let found = candidates.map(|candidate| candidate.decides);
    assert_eq!(found, [Decides::No, Decides::Yes(Verdict::Pass), Decides::Yes(Verdict::Pass)]);
    assert_eq!(cheapest(&candidates).map(|found| found.change), Some(Change::Thermometer(enough)));
}

/// What was not given is named and never taken for zero.
#[test]
fn what_was_not_given_is_named() {
    let rated = Temperature::from_celsius(25.0);
    let curve = BetaCurve::new(Resistance::from_ohms(2200.0), rated, Beta::from_kelvins(3500.0));
    let curve = Curve::Beta(curve.expect("2200 Ω and 3500 K are a thermistor"));
    let instruments =
        Instruments { thermometer: Some(TemperatureDifference::from_kelvins(0.3)), ..Instruments::default() };
    let doubt = ohms(&curve, rated, Resistance::from_ohms(2200.0), &instruments).expect("limits of error");
    assert_eq!(doubt.left_out, [Source::Soak, Source::MeterReading, Source::Leads]);
    // e1_invented: −3.94 %/K at 25 °C, so 0.3 K is 26 Ω; 2/√3 of it.
    meets("U", 2.0 / 3f64.sqrt() * 0.0394 * 0.3 * 2200.0, doubt.budget.expanded(), Relative(0.002));
}
