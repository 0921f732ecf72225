//! Back from readings to faults, against Ohm's and Kirchhoff's laws worked by hand.
//!
//! Every part is exact here unless a test says otherwise, so that the interval of
//! sizes that explain a reading has no width but that of the meter's uncertainty.

use bayleaf::physics::circuit::{Circuit, Topology};
use bayleaf::physics::curve::{BetaCurve, Curve};
use bayleaf::physics::fault::{
    Cause, Condition, Fault, Instruments, Kind, Subject, Test, best_condition, explain, looks_like, separable,
};
use bayleaf::physics::tolerance::Tolerance;
use bayleaf::quantity::{
    Accuracy, Beta, Interval, Ratio, Resistance, Temperature, TemperatureDifference, Toleranced, Voltage,
};

use crate::bench::{divider, exactly, written};
use crate::sheet::Within::Relative;
use crate::sheet::meets;

const PULL_UP: f64 = 4700.0;
const REFERENCE: f64 = 5.0;
const BATTERY: f64 = 12.6;

/// E1, the invented sensor of the project's notes, on its exact pull-up.
struct E1 {
    curve: Curve,
    circuit: Circuit,
    tolerance: Tolerance,
    at: Temperature,
}

impl E1 {
    fn new() -> Self {
        let rated = Temperature::from_celsius(25.0);
        let curve = BetaCurve::new(Resistance::from_ohms(2200.0), rated, Beta::from_kelvins(3500.0));
        let volts = Voltage::from_volts(REFERENCE);
        let reference = Toleranced { nominal: volts, limits: Some(Interval { low: volts, high: volts }) };
        Self {
            curve: Curve::Beta(curve.expect("a thermistor")),
            circuit: divider(Topology::PullUp, reference, exactly(Resistance::from_ohms(PULL_UP))),
            tolerance: Tolerance::Temperature(TemperatureDifference::from_kelvins(0.0)),
            at: Temperature::from_celsius(31.0),
        }
    }

    fn subject(&self) -> Subject<'_> {
        Subject {
            curve: &self.curve,
            tolerance: Some(&self.tolerance),
            circuit: Some(&self.circuit),
            others: &[],
            battery: Some(crate::bench::exactly_volts(BATTERY)),
        }
    }

    /// The good sensor's ohms.
    fn good(&self) -> f64 {
        self.curve.resistance(self.at).expect("inside").ohms()
    }

    fn causes(&self, reading: f64, test: Test, instruments: &Instruments) -> Vec<Cause> {
        explain(&self.subject(), reading, test, self.at, instruments)
    }
}

/// A meter that is off by a fixed voltage: 10 digits of a millivolt, U = 2 × 10 mV/√3.
fn ten_millivolts() -> (Instruments, f64) {
    let meter = Accuracy { reading: Ratio::new(0.0), digits: 10 };
    (
        Instruments {
            volts: Some(bayleaf::quantity::MeterRanges::one(meter, 0.001)),
            ..Instruments::default()
        },
        0.02 / 3f64.sqrt(),
    )
}

/// V at the pin with so many ohms from there to ground.
fn volts_over(ohms: f64) -> f64 {
    REFERENCE * ohms / (ohms + PULL_UP)
}

/// The ohms that make a voltage at the pin: R = Rp V/(Vref − V).
fn ohms_behind(volts: f64) -> f64 {
    PULL_UP * volts / (REFERENCE - volts)
}

/// The size of each kind that makes `volts` of a good sensor of `good` ohms, each
/// solved from the current law at the pin; NaN where none does.
fn by_hand(kind: Kind, volts: f64, good: f64) -> f64 {
    let behind = ohms_behind(volts);
    let into_pin = (REFERENCE - volts) / PULL_UP;
    match kind {
        Kind::Series => behind - good,
        Kind::Leak => 1.0 / (1.0 / behind - 1.0 / good),
        Kind::LeakToBattery => (BATTERY - volts) / (volts / good - into_pin),
        Kind::LiftedReturn => volts - into_pin * good,
        Kind::ShiftedResistance => behind / good - 1.0,
        Kind::ShiftedSlope => libm::log(behind / good) / libm::log(good / 2200.0),
        Kind::WrongResistor => good / volts * (REFERENCE - volts) / PULL_UP - 1.0,
    }
}

#[track_caller]
fn holds(causes: &[Cause], kind: Kind, low: f64, high: f64) {
    let cause = causes.iter().find(|cause| cause.fault.kind() == Some(kind));
    let cause = cause.unwrap_or_else(|| panic!("{kind:?} is not in {causes:?}"));
    let sizes = cause.sizes.expect("it has a size");
    meets(&format!("{kind:?}, least"), low, sizes.low, Relative(1e-6));
    meets(&format!("{kind:?}, most"), high, sizes.high, Relative(1e-6));
}

fn kinds(causes: &[Cause]) -> Vec<Kind> {
    causes.iter().filter_map(|cause| cause.fault.kind()).collect()
}

/// 500 Ω in series and 10 kΩ across, read exactly: every kind has the one size that
/// the circuit's equation gives, and the kinds that go the other way are not named.
#[test]
fn an_exact_reading_has_one_size_of_each_fault() {
    let (e1, exact) = (E1::new(), Instruments::default());
    let good = e1.good();
    for (ohms, expected) in [
        (
            good + 500.0,
            vec![
                Kind::Series,
                Kind::LeakToBattery,
                Kind::LiftedReturn,
                Kind::ShiftedResistance,
                Kind::WrongResistor,
            ],
        ),
        (1.0 / (1.0 / good + 1.0 / 10e3), vec![Kind::Leak, Kind::ShiftedResistance, Kind::WrongResistor]),
        // 5 % less by the slope: ln 0.95 over ln(r/2200) is 0.22.
        (0.95 * good, vec![Kind::Leak, Kind::ShiftedResistance, Kind::ShiftedSlope, Kind::WrongResistor]),
    ] {
        let volts = volts_over(ohms);
        let causes = e1.causes(volts, Test::VoltsAtUnit, &exact);
        assert_eq!(kinds(&causes), expected, "{ohms} Ω");
        for kind in expected {
            let size = by_hand(kind, volts, good);
            holds(&causes, kind, size, size);
        }
        assert!(causes.iter().all(|cause| !cause.harmless), "{causes:?}");
    }
}

/// What a good circuit reads is explained by every kind at the size that is no fault.
#[test]
fn a_good_reading_is_explained_by_faults_that_are_none() {
    let e1 = E1::new();
    let (meter, _) = ten_millivolts();
    let causes = e1.causes(volts_over(e1.good()), Test::VoltsAtUnit, &meter);
    assert_eq!(kinds(&causes), Kind::ALL);
    assert!(causes.iter().all(|cause| cause.harmless), "{causes:?}");
}

/// The meter's U on either side of the reading, and 1 % of pull-up: both widen the sizes.
#[test]
fn doubt_and_tolerance_widen_the_sizes_to_their_own_ends() {
    let mut e1 = E1::new();
    let (meter, u) = ten_millivolts();
    let good = e1.good();
    let volts = volts_over(good + 500.0);
    let causes = e1.causes(volts, Test::VoltsAtUnit, &meter);
    for kind in [Kind::Series, Kind::LiftedReturn, Kind::ShiftedResistance] {
        holds(&causes, kind, by_hand(kind, volts - u, good), by_hand(kind, volts + u, good));
    }
    // More volts are less of these.
    for kind in [Kind::LeakToBattery, Kind::WrongResistor] {
        holds(&causes, kind, by_hand(kind, volts + u, good), by_hand(kind, volts - u, good));
    }
    e1.circuit.resistor = written("4.7 kΩ ± 1 %");
    let causes = e1.causes(volts, Test::VoltsAtUnit, &Instruments::default());
    let with = |part: f64| part * ohms_behind(volts) - good;
    holds(&causes, Kind::Series, with(0.99), with(1.01));
}

/// The resistance that a sensor looks like: R = Rp V/(Vref − V) at V ± U. What a good
/// part may have is not in it.
#[test]
fn a_sensor_looks_like_what_ohms_law_says() {
    let mut e1 = E1::new();
    e1.tolerance = Tolerance::Rated {
        resistance: Ratio::new(0.03),
        beta: Ratio::new(0.015),
        at: Temperature::from_celsius(25.0),
    };
    let (meter, u) = ten_millivolts();
    let volts = volts_over(e1.good() + 500.0);
    let looks = looks_like(&e1.subject(), volts, Test::VoltsAtUnit, e1.at, &meter).expect("it is known");
    meets("least", ohms_behind(volts - u), looks.low.ohms(), Relative(1e-6));
    meets("most", ohms_behind(volts + u), looks.high.ohms(), Relative(1e-6));
}

/// Faults without a size, each at the reading it makes (common practice, no source);
/// a sensor that is unplugged is no suspect of volts at its plug.
#[test]
fn whole_faults_are_named_where_they_can_be_met() {
    let e1 = E1::new();
    let meter = Instruments { input: Some(exactly(Resistance::from_ohms(10e6))), ..Instruments::default() };
    let whole = |reading: f64, test| -> Vec<Fault> {
        let causes = e1.causes(reading, test, &meter);
        causes.iter().filter(|cause| cause.sizes.is_none()).map(|cause| cause.fault).collect()
    };
    let good_harness = REFERENCE * 10e6 / (10e6 + PULL_UP);
    assert_eq!(whole(good_harness, Test::VoltsUnplugged), []);
    assert_eq!(whole(0.0, Test::VoltsUnplugged), [Fault::OpenWire, Fault::ShortToGround]);
    assert_eq!(whole(REFERENCE, Test::VoltsUnplugged), [Fault::ShortToReference]);
    assert_eq!(whole(BATTERY, Test::VoltsUnplugged), [Fault::ShortToBattery]);
    assert_eq!(whole(f64::INFINITY, Test::OhmsAtSensor), [Fault::Open]);
    assert_eq!(whole(0.0, Test::OhmsAtSensor), [Fault::ShortToReturn]);
    assert_eq!(whole(f64::INFINITY, Test::OhmsAtUnit), [Fault::Open, Fault::OpenWire]);
    // The pull-up lies across the sensor: R Rp/(R + Rp).
    let mated = e1.good() * PULL_UP / (e1.good() + PULL_UP);
    let found = e1.causes(mated * (1.0 + 1e-15), Test::OhmsAtUnit, &ohms_meter());
    assert!(found.iter().any(|cause| cause.fault == Fault::UnitStillMated), "{found:?}");
}

fn ohms_meter() -> Instruments {
    let meter = Accuracy { reading: Ratio::new(0.001), digits: 0 };
    Instruments { ohms: Some(bayleaf::quantity::MeterRanges::one(meter, 1.0)), ..Instruments::default() }
}

/// Moisture to a wire with battery voltage lifts the open plug of an unplugged sensor:
/// (5 V − V)/4.7 kΩ + (12.6 V − V)/100 kΩ = 0 at V = 5.341 V.
#[test]
fn a_leak_to_battery_shows_at_the_open_plug() {
    let e1 = E1::new();
    let volts = (REFERENCE / PULL_UP + BATTERY / 100e3) / (1.0 / PULL_UP + 1.0 / 100e3);
    let causes = e1.causes(volts, Test::VoltsUnplugged, &Instruments::default());
    assert_eq!(kinds(&causes), [Kind::LeakToBattery]);
    holds(&causes, Kind::LeakToBattery, 100e3, 100e3);
}

/// The rows of the project's notes (common practice, no source): shorts, series
/// 10/100/500/1000 Ω, leak 10k/22k/47k/100k/1M, lift 20/50/100/200 mV, R ± 10 %,
/// slope ± 5 %, every other part, the unit's resistor.
#[test]
fn the_dictionary_has_the_rows_of_the_notes() {
    let sizes =
        |kind: Kind, sizes: &[f64]| -> Vec<Fault> { sizes.iter().map(|&size| kind.of_size(size)).collect() };
    let mut expected = vec![
        Fault::Open,
        Fault::OpenWire,
        Fault::ShortToReturn,
        Fault::ShortToGround,
        Fault::ShortToReference,
        Fault::ShortToBattery,
    ];
    expected.extend(sizes(Kind::Series, &[10.0, 100.0, 500.0, 1000.0]));
    expected.extend(sizes(Kind::Leak, &[10e3, 22e3, 47e3, 100e3, 1e6]));
    expected.extend(sizes(Kind::LeakToBattery, &[100e3]));
    expected.extend(sizes(Kind::LiftedReturn, &[0.02, 0.05, 0.1, 0.2]));
    expected.extend(sizes(Kind::ShiftedResistance, &[-0.1, 0.1]));
    expected.extend(sizes(Kind::ShiftedSlope, &[-0.05, 0.05]));
    expected.extend([Fault::OtherPart(0), Fault::OtherPart(1)]);
    expected.extend(sizes(Kind::WrongResistor, &[-0.1, 0.1]));
    expected.push(Fault::UnitStillMated);
    assert_eq!(Fault::dictionary(2), expected);
}

/// Two windows, each widened by U at its own ends, stop to meet where
/// V_faulty,least (1 − q) = V_good,most (1 + q), with q = 2 × 1 %/√3 of the reading.
#[test]
fn two_readings_separate_where_their_widened_windows_part() {
    let mut e1 = E1::new();
    e1.circuit.resistor = written("4.7 kΩ ± 10 %");
    let meter = Accuracy { reading: Ratio::new(0.01), digits: 0 };
    let bench = Instruments {
        volts: Some(bayleaf::quantity::MeterRanges::one(meter, 0.001)),
        ..Instruments::default()
    };
    let q = 0.02 / 3f64.sqrt();
    let good = e1.good();
    let good_most = REFERENCE * good / (good + 0.9 * PULL_UP);
    let least = good_most * (1.0 + q) / (1.0 - q);
    // R over a pull-up at its upper end: V = 5 V R/(R + 1.1 Rp).
    let series = 1.1 * PULL_UP * least / (REFERENCE - least) - good;
    let condition = Condition { test: Test::VoltsAtUnit, at: e1.at };
    for (part, apart) in [(0.9999, false), (1.0001, true)] {
        let fault = Kind::Series.of_size(part * series);
        for pair in [(None, Some(&fault)), (Some(&fault), None)] {
            assert_eq!(separable(&e1.subject(), pair, condition, &bench), Some(apart), "{fault:?}");
        }
    }
}

/// Three suspects are three pairs; of two conditions that tell all of them apart the
/// first, which is the less effort, is named.
#[test]
fn the_first_of_two_equal_conditions_is_the_best() {
    let e1 = E1::new();
    let suspects = [None, Some(Kind::Series.of_size(500.0)), Some(Kind::Leak.of_size(10e3))];
    let (bench, _) = ten_millivolts();
    let at = |celsius| Condition { test: Test::VoltsAtUnit, at: Temperature::from_celsius(celsius) };
    // Nothing of the wires shows in ohms of the sensor itself.
    let blind = Condition { test: Test::OhmsAtSensor, ..at(31.0) };
    let best = best_condition(&e1.subject(), &suspects, &[blind, at(31.0), at(30.0)], &bench);
    let best = best.expect("volts tell them apart");
    assert_eq!((best.condition, best.pairs, best.of), (at(31.0), 3, 3));
    assert_eq!(best_condition(&e1.subject(), &suspects, &[blind], &bench), None);
}
