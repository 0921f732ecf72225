//! Two readings at two temperatures, with doubt in both and in the slope.
//!
//! The intervals were worked in another language (Python, from the two linear
//! equations of each answer, over all eight corners and the readings as they are);
//! the sensor is E1, invented, of the project's notes.

use bayleaf::physics::curve::{BetaCurve, Curve};
use bayleaf::physics::fault::{Pair, PairError, Reading, Second, third_temperature, two_faults};
use bayleaf::quantity::{Beta, Interval, Ratio, Resistance, Temperature};

use crate::sheet::Within::{Absolute, Relative};
use crate::sheet::meets;

const RATED: Temperature = Temperature::from_celsius(25.0);

fn e1() -> Curve {
    let curve = BetaCurve::new(Resistance::from_ohms(2200.0), RATED, Beta::from_kelvins(3500.0));
    Curve::Beta(curve.expect("a thermistor"))
}

fn good(celsius: f64) -> f64 {
    e1().resistance(Temperature::from_celsius(celsius)).expect("inside").ohms()
}

/// Readings at 0 °C and 31 °C of what the good ohms become, with their doubts in Ω.
fn readings(of: impl Fn(f64) -> f64, doubts: [f64; 2]) -> [Reading; 2] {
    let reading = |celsius: f64, doubt: f64| {
        let ohms = of(good(celsius));
        Reading {
            at: Temperature::from_celsius(celsius),
            resistance: Resistance::from_ohms(ohms),
            limits: Interval {
                low: Resistance::from_ohms(ohms - doubt),
                high: Resistance::from_ohms(ohms + doubt),
            },
        }
    };
    [reading(0.0, doubts[0]), reading(31.0, doubts[1])]
}

fn solved(of: impl Fn(f64) -> f64, doubts: [f64; 2], tilt: f64) -> Result<[Pair; 2], PairError> {
    let [first, second] = readings(of, doubts);
    two_faults(&e1(), (RATED, Ratio::new(tilt)), first, second)
}

#[track_caller]
fn between(pair: &Pair, shifts: [f64; 2], sizes: [f64; 2]) {
    meets("shift, least", shifts[0], pair.shifts.low.part(), Absolute(1e-8));
    meets("shift, most", shifts[1], pair.shifts.high.part(), Absolute(1e-8));
    let found = pair.sizes.expect("some of it exists");
    meets("size, least", sizes[0], found.low.ohms(), Relative(1e-8));
    meets("size, most", sizes[1], found.high.ohms(), Relative(1e-8));
}

/// 10 % more, with 10 kΩ across or with 100 Ω in series, read to ± 20 Ω and ± 5 Ω, of a
/// sensor whose B is good to 1.5 %.
#[test]
fn doubt_in_readings_and_slope_widens_both_answers() {
    let leaking = |ohms: f64| 1.0 / (1.0 / (1.1 * ohms) + 1.0 / 10e3);
    let [series, leak] = solved(leaking, [20.0, 5.0], 0.015).expect("solvable");
    between(&series, [-0.477_537_674, -0.441_611_285], [627.654_163, 706.906_397]);
    between(&leak, [0.079_344_188, 0.120_903_847], [9_432.720_32, 10_660.326_8]);
    // A sensor with half its ohms is another one, however the readings err.
    assert!(leak.reasonable && !series.reasonable, "{series:?} {leak:?}");
    let [series, leak] = solved(|ohms| 1.1 * ohms + 100.0, [20.0, 5.0], 0.015).expect("solvable");
    between(&series, [0.069_468_060, 0.131_598_416], [32.981_841_9, 164.757_096]);
    between(&leak, [0.155_720_697, 0.191_596_343], [88_070.078_1, 440_214.821]);
}

/// A slope that is 5 % too steep would take −160 Ω or −73 kΩ: there are none. Where B
/// may be off by 6 % there may be no second fault at all: then the leak has no upper end.
#[test]
fn a_second_fault_below_nothing_is_none() {
    let steeper = |ohms: f64| ohms * libm::pow(ohms / 2200.0, 0.05);
    let [series, leak] = solved(steeper, [0.0; 2], 0.0).expect("solvable");
    meets("shift", 0.079_973_729, series.shift.part(), Absolute(1e-8));
    meets("shift", -0.034_196_472, leak.shift.part(), Absolute(1e-8));
    assert_eq!((series.sizes, leak.sizes), (None, None));
    assert!(!series.reasonable && !leak.reasonable, "{series:?} {leak:?}");
    let [series, leak] = solved(steeper, [0.0; 2], 0.06).expect("solvable");
    // −377 Ω to 29.9 Ω, of which none to 29.9 Ω exists.
    between(&series, [-0.015_032_914, 0.187_863_319], [0.0, 29.864_089_2]);
    let leaks = leak.sizes.expect("some of it exists");
    meets("leak, least", 392_678.969, leaks.low.ohms(), Relative(1e-8));
    assert!(leaks.high.ohms().is_infinite() && leaks.high.ohms() > 0.0, "{leak:?}");
    assert!(series.reasonable && leak.reasonable, "{series:?} {leak:?}");
}

/// A sensor of 5 % too many ohms, or of 40 % too many, with nothing else: reason ends at 30 %.
#[test]
fn a_shift_is_inside_reason_up_to_thirty_percent() {
    for (part, reasonable) in [(1.05, true), (0.95, true), (1.4, false), (0.6, false)] {
        let [series, _] = solved(|ohms| part * ohms, [1e-6; 2], 0.0).expect("solvable");
        assert_eq!(series.reasonable, reasonable, "{part}: {series:?}");
    }
}

/// Good ohms of 6442.2 Ω and 1745.2 Ω are 4697.0 Ω apart: doubts that add up to more say nothing.
#[test]
fn readings_within_their_doubts_are_too_near() {
    let same = |ohms: f64| ohms;
    assert!(solved(same, [3000.0, 1690.0], 0.0).is_ok());
    assert_eq!(solved(same, [3010.0, 1690.0], 0.0), Err(PairError::TooNear));
    assert_eq!(solved(same, [0.0, 1750.0], 0.0), Err(PairError::Outside), "1745 Ω less 1750 Ω is none");
}

/// A third reading tells two answers apart where they differ by more than both doubts.
#[test]
fn a_third_temperature_needs_more_than_both_doubts() {
    let pairs = solved(|ohms| 1.1 * ohms + 100.0, [0.0; 2], 0.0).expect("solvable");
    assert_eq!((pairs[0].second, pairs[1].second), (Second::Series, Second::Leak));
    let hot = [Temperature::from_celsius(80.0)];
    // 17.363 % more with 145.147 kΩ across it (tests/reference/faults.rs).
    let with_leak = 1.0 / (1.0 / (1.173_630_6 * good(80.0)) + 1.0 / 145_147.33);
    let apart = 1.1 * good(80.0) + 100.0 - with_leak;
    let told = |part: f64| {
        third_temperature(&e1(), &pairs, &hot, |_, _| Resistance::from_ohms(part * apart))
            .map(|(_, looks)| looks)
    };
    let [_, leak] = told(0.49).expect("the doubts are less than the distance");
    meets("with the leak", with_leak, leak.ohms(), Relative(1e-7));
    assert_eq!(told(0.51), None);
}
