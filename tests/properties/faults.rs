//! Faults forward and back: what explains a reading, and what can be told apart.

use bayleaf::physics::circuit::{Circuit, Topology};
use bayleaf::physics::curve::{BetaCurve, Curve};
use bayleaf::physics::fault::{
    Cause, Condition, Fault, Instruments, Kind, Other, Reading, Second, Subject, Test, explain, separable,
    third_temperature, two_faults,
};
use bayleaf::physics::tolerance::Tolerance;
use bayleaf::quantity::{
    Accuracy, Beta, Interval, MeterRanges, Ratio, Resistance, Temperature, TemperatureDifference, Toleranced,
    Voltage, toleranced,
};
use proptest::prelude::*;

fn beta(ohms: f64, kelvins: f64) -> Curve {
    let rated = Temperature::from_celsius(25.0);
    let curve = BetaCurve::new(Resistance::from_ohms(ohms), rated, Beta::from_kelvins(kelvins));
    Curve::Beta(curve.expect("a thermistor"))
}

fn rated(resistance: f64, slope: f64) -> Tolerance {
    let at = Temperature::from_celsius(25.0);
    Tolerance::Rated { resistance: Ratio::new(resistance), beta: Ratio::new(slope), at }
}

fn circuit(topology: Topology) -> Circuit {
    let resistor = toleranced("4.7 kΩ ± 1 %").expect("a resistor");
    let reference = toleranced("5 V ± 2 %").expect("a reference");
    let series = toleranced("47 Ω ± 5 %").expect("a resistor");
    Circuit { series: Some(series), ..Circuit::divider(topology, resistor, reference) }
}

fn instruments() -> Instruments {
    let meter = Accuracy { reading: Ratio::new(0.005), digits: 2 };
    Instruments {
        volts: Some(MeterRanges::one(meter, 0.001)),
        ohms: Some(MeterRanges::one(meter, 1.0)),
        input: Some(toleranced("10 MΩ ± 1 %").expect("an input")),
        leads: Some(Resistance::from_ohms(0.2)),
        thermometer: Some(TemperatureDifference::from_kelvins(0.3)),
        soak: Some(TemperatureDifference::from_kelvins(0.3)),
    }
}

fn kinds() -> impl Strategy<Value = Kind> {
    prop::sample::select(Kind::ALL.to_vec())
}

fn tests_of(kind: Kind) -> Vec<Test> {
    let in_ohms = matches!(kind, Kind::Series | Kind::Leak | Kind::ShiftedResistance | Kind::ShiftedSlope);
    if in_ohms {
        vec![Test::VoltsAtUnit, Test::VoltsAtSensor, Test::OhmsAtUnit]
    } else {
        vec![Test::VoltsAtUnit]
    }
}

/// A size of a kind, by a share of its usual range.
fn usual(kind: Kind, share: f64) -> f64 {
    let between = |low: f64, high: f64| low * libm::pow(high / low, share);
    match kind {
        Kind::Series => between(1.0, 1e5),
        Kind::Leak | Kind::LeakToBattery => between(100.0, 1e7),
        Kind::LiftedReturn => share * 0.5,
        Kind::ShiftedResistance | Kind::WrongResistor => share - 0.5,
        Kind::ShiftedSlope => 0.4 * share - 0.2,
    }
}

fn named(causes: &[Cause], fault: &Fault) -> Option<Cause> {
    causes.iter().copied().find(|cause| match (cause.fault.kind(), fault.kind()) {
        (Some(one), Some(other)) => one == other,
        (None, None) => cause.fault == *fault,
        _ => false,
    })
}

fn size_of(fault: &Fault) -> f64 {
    match *fault {
        Fault::Series(ohms) | Fault::Leak(ohms) | Fault::LeakToBattery(ohms) => ohms.ohms(),
        Fault::LiftedReturn(volts) => volts.volts(),
        Fault::ShiftedResistance(by) | Fault::ShiftedSlope(by) | Fault::WrongResistor(by) => by.part(),
        _ => f64::NAN,
    }
}

/// A part that may be in hand: each value somewhere inside its tolerance.
struct InHand {
    curve: Curve,
    circuit: Circuit,
    instruments: Instruments,
}

fn in_hand(shares: [f64; 6], circuit: &Circuit, bench: &Instruments) -> InHand {
    let pick = |part: Toleranced<Resistance>, share: f64| {
        let limits = part.limits.expect("it has a tolerance");
        let ohms = limits.low.ohms() + share * (limits.high.ohms() - limits.low.ohms());
        Toleranced { nominal: Resistance::from_ohms(ohms), limits: None }
    };
    let volts = circuit.reference.limits.expect("it has a tolerance");
    let reference = volts.low.volts() + shares[1] * (volts.high.volts() - volts.low.volts());
    let ohms = 2200.0 * (1.0 + 0.03 * (2.0 * shares[2] - 1.0));
    let kelvins = 3500.0 * (1.0 + 0.015 * (2.0 * shares[3] - 1.0));
    InHand {
        curve: beta(ohms, kelvins),
        circuit: Circuit {
            resistor: pick(circuit.resistor, shares[0]),
            reference: Toleranced { nominal: Voltage::from_volts(reference), limits: None },
            series: circuit.series.map(|series| pick(series, shares[4])),
            ..*circuit
        },
        instruments: Instruments { input: bench.input.map(|input| pick(input, shares[5])), ..*bench },
    }
}

proptest! {
    #![proptest_config(crate::every_run())]

    /// Any good part in any good circuit with any fault: the fault is found again,
    /// and its interval holds the size.
    #[test]
    fn a_fault_explains_what_it_makes(
        kind in kinds(),
        share in 0.0..=1.0_f64,
        celsius in -20.0..60.0_f64,
        topology in prop::sample::select(vec![Topology::PullUp, Topology::PullDown]),
        which in 0..3_usize,
        shares in prop::array::uniform6(0.0..=1.0_f64),
    ) {
        let (curve, tolerance, circuit) = (beta(2200.0, 3500.0), rated(0.03, 0.015), circuit(topology));
        let battery = Some(toleranced("12.6 V ± 0.3 V").expect("a battery"));
        let bench = instruments();
        let at = Temperature::from_celsius(celsius);
        let tests = tests_of(kind);
        let test = tests[which % tests.len()];
        let size = usual(kind, share);
        let fault = kind.of_size(size);
        let nominal =
            Subject { curve: &curve, tolerance: Some(&tolerance), circuit: Some(&circuit), others: &[], battery };
        let hand = in_hand(shares, &circuit, &bench);
        let real = Subject { curve: &hand.curve, tolerance: None, circuit: Some(&hand.circuit), ..nominal };
        let Some((reading, _)) = real.reading(Some(&fault), test, at, &hand.instruments) else {
            // A pull-down sensor has no return to lift.
            prop_assert!(kind == Kind::LiftedReturn && topology == Topology::PullDown);
            return Ok(());
        };
        let causes = explain(&nominal, reading, test, at, &bench);
        let cause = named(&causes, &fault);
        prop_assert!(cause.is_some(), "{fault:?} at {at} reads {reading}: {causes:?}");
        let sizes = cause.and_then(|cause| cause.sizes).expect("it has a size");
        let hair = 1e-9 * size.abs().max(1e-9);
        prop_assert!(
            sizes.low - hair <= size && size <= sizes.high + hair,
            "{fault:?} not in {sizes:?}, reads {reading}"
        );
    }

    #[test]
    fn a_whole_fault_explains_what_it_makes(
        which in 0..8_usize,
        celsius in -20.0..60.0_f64,
        shares in prop::array::uniform6(0.0..=1.0_f64),
        in_ohms in any::<bool>(),
    ) {
        let (curve, tolerance) = (beta(2200.0, 3500.0), rated(0.03, 0.015));
        let circuit = circuit(Topology::PullUp);
        let (other, others_tolerance) = (beta(10e3, 3950.0), rated(0.02, 0.01));
        let others = [Other { curve: &other, tolerance: Some(&others_tolerance) }];
        let fault = [
            Fault::Open, Fault::OpenWire, Fault::ShortToReturn, Fault::UnitStillMated, Fault::OtherPart(0),
            Fault::ShortToGround, Fault::ShortToReference, Fault::ShortToBattery,
        ][which];
        let outside = which > 4;
        let mated = fault == Fault::UnitStillMated;
        let test = if mated || in_ohms && !outside { Test::OhmsAtUnit } else { Test::VoltsAtUnit };
        let bench = instruments();
        let at = Temperature::from_celsius(celsius);
        let nominal = Subject {
            curve: &curve,
            tolerance: Some(&tolerance),
            circuit: Some(&circuit),
            others: &others,
            battery: Some(toleranced("12.6 V ± 0.3 V").expect("a battery")),
        };
        let hand = in_hand(shares, &circuit, &bench);
        let real = Subject { curve: &hand.curve, tolerance: None, circuit: Some(&hand.circuit), ..nominal };
        let (reading, _) = real.reading(Some(&fault), test, at, &hand.instruments).expect("it applies");
        let causes = explain(&nominal, reading, test, at, &bench);
        prop_assert!(named(&causes, &fault).is_some(), "{fault:?} reads {reading}: {causes:?}");
    }

    /// Good and faulty parts drawn inside their tolerances, each read with an error
    /// inside the instruments' doubt. Called separable, no draw crosses over; called
    /// not separable, the draws from the ends of the tolerances do.
    #[test]
    fn separable_means_that_no_draw_crosses_over(
        kind in kinds(),
        share in 0.0..=1.0_f64,
        celsius in -10.0..50.0_f64,
        draws in prop::collection::vec((prop::array::uniform6(0.0..=1.0_f64), -1.0..=1.0_f64), 64),
    ) {
        let (curve, tolerance) = (beta(2200.0, 3500.0), rated(0.03, 0.015));
        let circuit = circuit(Topology::PullUp);
        let (bench, at) = (instruments(), Temperature::from_celsius(celsius));
        let nominal = Subject {
            curve: &curve,
            tolerance: Some(&tolerance),
            circuit: Some(&circuit),
            others: &[],
            battery: Some(toleranced("12.6 V ± 0.3 V").expect("a battery")),
        };
        let test = Test::VoltsAtUnit;
        let fault = kind.of_size(usual(kind, share));
        let condition = Condition { test, at };
        let apart = separable(&nominal, (None, Some(&fault)), condition, &bench).expect("all is known");
        // Each draw: shares of the six parts' tolerances, of the battery's, and of the doubt.
        let span = |fault: Option<&Fault>, draws: &mut dyn Iterator<Item = ([f64; 6], f64, f64)>| {
            draws.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), (shares, battery, error)| {
                let hand = in_hand(shares, &circuit, &bench);
                let battery = Toleranced { nominal: Voltage::from_volts(12.3 + 0.6 * battery), limits: None };
                let real = Subject {
                    curve: &hand.curve,
                    tolerance: None,
                    circuit: Some(&hand.circuit),
                    battery: Some(battery),
                    ..nominal
                };
                let (value, _) = real.reading(fault, test, at, &hand.instruments).expect("known");
                let read = value + error * nominal.uncertainty(value, test, at, &bench).expect("known");
                (low.min(read), high.max(read))
            })
        };
        let crosses = |(one, other): ((f64, f64), (f64, f64))| one.1 >= other.0 && other.1 >= one.0;
        let drawn = || draws.iter().map(|(shares, error)| (*shares, shares[0], *error));
        let drawn = (span(None, &mut drawn()), span(Some(&fault), &mut drawn()));
        prop_assert!(!apart || !crosses(drawn), "{fault:?} at {at}: {drawn:?}");
        let corners = || {
            (0..256_u32).map(|bits| {
                let end = |bit: u32| f64::from(bits >> bit & 1);
                ([0, 1, 2, 3, 4, 5].map(end), end(7), 2.0 * end(6) - 1.0)
            })
        };
        let ends = (span(None, &mut corners()), span(Some(&fault), &mut corners()));
        prop_assert_eq!(apart, !crosses(ends), "{:?} at {}: {:?}", fault, at, ends);
    }

    #[test]
    fn two_readings_hold_the_two_faults_that_made_them(
        shift in -0.3..0.3_f64,
        share in 0.0..=1.0_f64,
        leaks in any::<bool>(),
        noise in prop::array::uniform2(-1.0..=1.0_f64),
    ) {
        let curve = beta(2200.0, 3500.0);
        let rating = (Temperature::from_celsius(25.0), Ratio::new(0.0));
        let size = if leaks { 10e3 * libm::pow(100.0, share) } else { 10.0 * libm::pow(100.0, share) };
        let reading = |celsius: f64, noise: f64| {
            let at = Temperature::from_celsius(celsius);
            let shifted = (1.0 + shift) * curve.resistance(at).expect("inside").ohms();
            let looks = if leaks { 1.0 / (1.0 / shifted + 1.0 / size) } else { shifted + size };
            let doubt = 0.002 * looks;
            Reading {
                at,
                resistance: Resistance::from_ohms(looks + noise * doubt),
                limits: Interval {
                    low: Resistance::from_ohms(looks + noise * doubt - doubt),
                    high: Resistance::from_ohms(looks + noise * doubt + doubt),
                },
            }
        };
        let pairs = two_faults(&curve, rating, reading(0.0, noise[0]), reading(40.0, noise[1])).expect("apart");
        let pair = pairs.iter().find(|pair| (pair.second == Second::Leak) == leaks).expect("both are solved");
        let (low, high) = (pair.shifts.low.part(), pair.shifts.high.part());
        prop_assert!(low - 1e-9 <= shift && shift <= high + 1e-9, "{shift} not in {low} to {high}");
        prop_assert!(pair.reasonable, "{pair:?}");
        let candidates = [-20.0, 10.0, 25.0, 60.0, 80.0].map(Temperature::from_celsius);
        let doubt = |ohms: Resistance, _| Resistance::from_ohms(0.002 * ohms.ohms().abs());
        if let Some((at, looks)) = third_temperature(&curve, &pairs, &candidates, doubt) {
            prop_assert!(candidates.contains(&at));
            prop_assert!((looks[0].ohms() - looks[1].ohms()).abs() > 0.002 * (looks[0].ohms() + looks[1].ohms()));
        }
    }

    /// Whatever finite figures are asked, the answer is finite or none.
    #[test]
    fn nothing_finite_makes_a_fault_undefined(
        kind in kinds(),
        share in 0.0..=1.0_f64,
        celsius in -400.0..900.0_f64,
        reading in prop_oneof![Just(0.0), -20.0..20.0_f64, -1e9..1e9_f64, Just(f64::MAX), Just(f64::INFINITY)],
        test in prop::sample::select(Test::ALL.to_vec()),
    ) {
        let (curve, tolerance) = (beta(2200.0, 3500.0), rated(0.03, 0.015));
        let circuit = circuit(Topology::PullUp);
        let subject = Subject {
            curve: &curve, tolerance: Some(&tolerance), circuit: Some(&circuit), others: &[],
            battery: Some(toleranced("12.6 V ± 0.3 V").expect("a battery")),
        };
        let (bench, at) = (instruments(), Temperature::from_celsius(celsius));
        for cause in explain(&subject, reading, test, at, &bench) {
            if let Some(sizes) = cause.sizes {
                prop_assert!(sizes.low.is_finite() && sizes.high.is_finite() && sizes.low <= sizes.high);
                let size = size_of(&cause.fault);
                prop_assert!(sizes.low <= size && size <= sizes.high, "{cause:?}");
            }
        }
        let (least, most) = kind.sizes();
        let fault = kind.of_size(least + share * (most - least));
        if let Some((nominal, window)) = subject.reading(Some(&fault), test, at, &bench) {
            prop_assert!(nominal.is_finite());
            let window = window.expect("every tolerance is known");
            let slack = 1e-9 * nominal.abs().max(1.0);
            prop_assert!(window.low - slack <= nominal && nominal <= window.high + slack, "{window:?} {nominal}");
        }
    }
}
