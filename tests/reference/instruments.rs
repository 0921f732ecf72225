//! Doubt of readings, limits that are met exactly, remedies and soaked sensors, by hand.

use bayleaf::physics::circuit::{Circuit, Topology};
use bayleaf::physics::curve::{BetaCurve, Curve, Table};
use bayleaf::physics::decision::{Conformance, Limits, Rule, Verdict, decide};
use bayleaf::physics::fault::{self, Subject, Test};
use bayleaf::physics::remedy::{Candidate, Change, Decides, cheapest};
use bayleaf::physics::soak::{Soaked, agreement, allowed};
use bayleaf::physics::uncertainty::{
    Budget, Contribution, Input, Instruments, Source, UncertaintyError, derivative, meter_ohms, ohms, volts,
};
use bayleaf::quantity::{
    Accuracy, Beta, Ratio, Resistance, Temperature, TemperatureDifference, Voltage, accuracy,
};

use crate::bench::{divider, written};
use crate::sheet::Within::{Absolute, Relative};
use crate::sheet::meets;

/// U of rectangular parts: 2 √(Σa²/3) (JCGM 100:2008, 4.3.7 and 5.1.2).
fn expanded_by_hand(parts: &[f64]) -> f64 {
    2.0 * libm::sqrt(parts.iter().map(|part| part * part).sum::<f64>() / 3.0)
}

/// E1, the invented sensor of the project's notes.
fn e1() -> (Curve, Circuit) {
    let rated = Temperature::from_celsius(25.0);
    let curve = BetaCurve::new(Resistance::from_ohms(2200.0), rated, Beta::from_kelvins(3500.0));
    let circuit = divider(Topology::PullUp, written("5 V"), written("4.7 kΩ"));
    (Curve::Beta(curve.expect("a thermistor")), circuit)
}

fn kelvins(value: f64) -> TemperatureDifference {
    TemperatureDifference::from_kelvins(value)
}

/// E1 at 25 °C: −3.937 %/K of 2200 Ω for each kelvin; the meter's percent of the 3000 Ω that it reads.
#[test]
fn ohms_are_doubted_by_slope_reading_and_leads() {
    let (curve, _) = e1();
    let at = Temperature::from_celsius(25.0);
    let instruments = Instruments {
        thermometer: Some(kelvins(0.3)),
        soak: Some(kelvins(0.5)),
        meter: Some(bayleaf::quantity::MeterRanges::one(
            accuracy("1 % + 2 digits").expect("an accuracy"),
            1.0,
        )),
        leads: Some(Resistance::from_ohms(0.4)),
    };
    let doubt = ohms(&curve, at, Resistance::from_ohms(3000.0), &instruments).expect("limits of error");
    let slope = 3500.0 / (298.15 * 298.15) * 2200.0;
    let by_hand = expanded_by_hand(&[0.3 * slope, 0.5 * slope, 32.0, 0.4]);
    meets("U", by_hand, doubt.budget.expanded(), Relative(1e-9));
    meets("worst", 0.8 * slope + 32.4, doubt.budget.worst_case(), Relative(1e-9));
    // A part that no temperature moves has the meter's 32 Ω and the leads.
    let doubt = meter_ohms(Resistance::from_ohms(3000.0), None, &instruments).expect("limits of error");
    meets("U", expanded_by_hand(&[32.0, 0.4]), doubt.budget.expanded(), Relative(1e-9));
    assert_eq!(doubt.left_out, []);
}

/// The same in volts: dV/dT = V (1 − V/Vref) × (−3.785 %/K), −37.4 mV/K (e1_invented: 31 °C).
/// At the end of a curve the slope a tenth of a kelvin inside stands for its own, to 1 %.
#[test]
fn volts_are_doubted_by_the_slope_of_the_circuit() {
    let (curve, circuit) = e1();
    let instruments = Instruments {
        thermometer: Some(kelvins(1.0)),
        meter: Some(bayleaf::quantity::MeterRanges::one(
            Accuracy { reading: Ratio::new(0.0), digits: 1 },
            0.0,
        )),
        ..Instruments::default()
    };
    let at = |celsius: f64| Temperature::from_celsius(celsius);
    let slope = |celsius: f64| {
        let sensor = curve.resistance(at(celsius)).expect("inside");
        let part = circuit.ratio(sensor, None).part();
        5.0 * part * (1.0 - part) * 3500.0 / (at(celsius).kelvins() * at(celsius).kelvins())
    };
    let doubt = |curve: &Curve, celsius: f64| {
        let reading = Voltage::from_volts(1.0);
        volts(curve, &circuit, None, at(celsius), reading, &instruments).map(|doubt| doubt.budget.expanded())
    };
    let inside = doubt(&curve, 31.0).expect("inside the curve");
    meets("e1_invented", 0.0374, slope(31.0), Absolute(0.000_05));
    meets("U", expanded_by_hand(&[slope(31.0)]), inside, Relative(1e-6));
    let rows = [0.0, 20.0, 40.0].map(|celsius| (at(celsius), curve.resistance(at(celsius)).expect("inside")));
    let table = Curve::Table(Table::new(&rows).expect("it falls"));
    for end in [0.0, 40.0] {
        let found = doubt(&table, end).expect("the end is inside");
        meets(&format!("{end} °C"), expanded_by_hand(&[slope(end)]), found, Relative(0.01));
    }
    assert_eq!(doubt(&table, 40.01), Err(UncertaintyError::OutsideModel));
}

/// Each test is doubted by the accuracy of the range that it is read on.
#[test]
fn volts_and_ohms_have_accuracies_of_their_own() {
    let (curve, circuit) = e1();
    let subject =
        Subject { curve: &curve, tolerance: None, circuit: Some(&circuit), others: &[], battery: None };
    let fixed = |digits| Accuracy { reading: Ratio::new(0.0), digits };
    let bench = fault::Instruments {
        volts: Some(bayleaf::quantity::MeterRanges::one(fixed(3), 0.001)),
        ohms: Some(bayleaf::quantity::MeterRanges::one(fixed(7), 1.0)),
        thermometer: Some(kelvins(0.0)),
        soak: Some(kelvins(0.0)),
        leads: Some(Resistance::from_ohms(0.0)),
        ..fault::Instruments::default()
    };
    for (test, limit) in [
        (Test::VoltsAtUnit, 0.003),
        (Test::VoltsAtSensor, 0.003),
        (Test::VoltsUnplugged, 0.003),
        (Test::OhmsAtSensor, 7.0),
        (Test::OhmsAtUnit, 7.0),
    ] {
        let found = subject.uncertainty(1.5, test, Temperature::from_celsius(31.0), &bench);
        meets(&format!("{test:?}"), expanded_by_hand(&[limit]), found.expect("it applies"), Relative(1e-9));
    }
    // No meter misreads an open circuit.
    let open =
        subject.uncertainty(f64::INFINITY, Test::OhmsAtSensor, Temperature::from_celsius(31.0), &bench);
    assert_eq!(open, Some(0.0));
}

/// A falling slope adds like a rising one; lines of one source are one share; the
/// greatest share comes first: 16/26 of the meter, 9/26 + 1/26 of the leads.
#[test]
fn shares_add_up_by_source_without_signs() {
    let budget = Budget::new(vec![
        Contribution::limit(Source::Leads, 1.0, -3.0),
        Contribution::limit(Source::MeterReading, 2.0, 2.0),
        Contribution::limit(Source::Leads, 1.0, 1.0),
    ]);
    let budget = budget.expect("limits of error");
    meets("u of a falling slope", 3.0 / 3f64.sqrt(), budget.contributions()[0].standard(), Relative(1e-12));
    meets("worst", 8.0, budget.worst_case(), Relative(1e-12));
    meets("U", expanded_by_hand(&[3.0, 4.0, 1.0]), budget.expanded(), Relative(1e-12));
    let [(first, most), (second, rest)] = budget.shares()[..] else { panic!("{:?}", budget.shares()) };
    assert_eq!((first, second), (Source::MeterReading, Source::Leads));
    meets("meter", 16.0 / 26.0, most.part(), Relative(1e-12));
    meets("leads", 10.0 / 26.0, rest.part(), Relative(1e-12));
}

/// d(x³)/dx = 3 where the model ends 0.02 to either side of 1: the step is halved
/// until it fits, from 0.1 to 0.00625. Where the model is a single point there is none.
#[test]
fn a_derivative_is_found_near_the_end_of_its_model() {
    let input = Input { source: Source::Rated, value: 1.0, limit: 1.6 };
    let within = |reach: f64| {
        move |point: &[f64]| {
            let x = point[0];
            ((x - 1.0).abs() <= reach).then_some(x * x * x)
        }
    };
    let found = derivative(&[input], 0, within(0.02)).expect("near enough");
    meets("slope", 3.0, found.value, Relative(1e-9));
    // An input without a limit of its own still has a slope: d(x³)/dx at 2 is 12.
    let exact = Input { source: Source::Rated, value: 2.0, limit: 0.0 };
    let found = derivative(&[exact], 0, |point| Some(point[0] * point[0] * point[0])).expect("it is smooth");
    meets("slope at an exact input", 12.0, found.value, Relative(1e-9));
    assert_eq!(derivative(&[input], 0, within(0.0)), Err(UncertaintyError::OutsideModel));
}

/// ILAC-G8 as 04c has it, on both sides: at a limit less the whole guard band a part
/// fails, at the limit it is inside, at the acceptance limit it passes. All are binary fractions.
#[test]
fn readings_exactly_on_a_limit_are_on_its_better_side() {
    let limits = Limits::new(Some(2.0), Some(8.0)).expect("in order");
    let rule = Rule::Guarded { multiple: Ratio::new(1.0) };
    let of = |reading: f64| {
        let found = decide(&limits, reading, 0.25, rule).expect("a reading");
        (found.conformance, found.verdict)
    };
    for (reading, expected) in [
        (1.5, (Conformance::Fail, Verdict::Fail)),
        (1.75, (Conformance::ConditionalFail, Verdict::Undecided)),
        (2.0, (Conformance::ConditionalPass, Verdict::Undecided)),
        (2.5, (Conformance::Pass, Verdict::Pass)),
        (7.5, (Conformance::Pass, Verdict::Pass)),
        (8.0, (Conformance::ConditionalPass, Verdict::Undecided)),
        (8.25, (Conformance::ConditionalFail, Verdict::Undecided)),
        (8.5, (Conformance::Fail, Verdict::Fail)),
    ] {
        assert_eq!(of(reading), expected, "{reading}");
    }
    // A window of 2 w is one reading wide, and not empty.
    let narrow = Limits::new(Some(2.0), Some(3.0)).expect("in order");
    let found = decide(&narrow, 2.5, 0.25, rule).expect("a reading");
    assert!(!found.acceptance.is_empty() && found.verdict == Verdict::Pass, "{found:?}");
}

/// Of equal costs the first; a fail decides as well as a pass.
#[test]
fn the_first_of_the_cheapest_remedies_is_named() {
    let candidate =
        |part: f64, cost, decides| Candidate { change: Change::Meter(Ratio::new(part)), cost, decides };
    let yes = Decides::Yes(Verdict::Pass);
    let all = [
        candidate(0.1, 1, Decides::No),
        candidate(0.2, 3, yes),
        candidate(0.3, 2, Decides::Yes(Verdict::Fail)),
        candidate(0.4, 2, yes),
    ];
    assert_eq!(cheapest(&all), Some(&all[2]));
    assert_eq!(cheapest(&all[..1]), None);
}

/// Half-widths of 1, 2, 4 and 10 K: √(1 + 4 + 16 + 100) = 11 K. Apart by exactly that they agree.
#[test]
fn sensors_exactly_their_allowed_difference_apart_agree() {
    let soaked = |celsius: f64, tolerance: f64, uncertainty: f64| Soaked {
        believed: Temperature::from_celsius(celsius),
        tolerance: kelvins(tolerance),
        uncertainty: kelvins(uncertainty),
    };
    let (a, b) = (soaked(20.0, 1.0, 2.0), soaked(31.0, 4.0, 10.0));
    meets("allowed", 11.0, allowed(&a, &b).expect("half-widths").kelvins(), Relative(1e-12));
    // 3 and 4 K make 5 K without a rounding.
    let (c, d) = (soaked(20.0, 3.0, 0.0), soaked(25.0, 0.0, 4.0));
    for pair in [[c, d], [d, c]] {
        assert_eq!(agreement(&pair).expect("half-widths").disagreements, []);
    }
    let e = soaked(25.001, 0.0, 4.0);
    for pair in [[c, e], [e, c]] {
        assert_eq!(agreement(&pair).expect("half-widths").disagreements.len(), 1);
    }
}
