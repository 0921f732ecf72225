//! Coils at other temperatures, the faults behind their ohms, and control curves, by hand.

use bayleaf::physics::coil::{CoilFault, RatedCoil, causes};
use bayleaf::physics::solenoid::{ControlCurve, CurveFault, Direction};
use bayleaf::quantity::{Current, Interval, Ratio, Resistance, Temperature, Voltage};

use crate::bench::written;
use crate::sheet::Within::{Absolute, Relative};
use crate::sheet::meets;

fn celsius(degrees: f64) -> Temperature {
    Temperature::from_celsius(degrees)
}

fn ohms(value: f64) -> Resistance {
    Resistance::from_ohms(value)
}

/// 1 + 0.00393 × 60 K (IEC 60028).
const AT_80: f64 = 1.2358;

/// A coil of 10.5 Ω ± 5 % at 20 °C, somewhere between 20 and 80 °C: the cold one's least
/// to the hot one's greatest.
#[test]
fn a_coil_of_unknown_warmth_is_between_cold_and_hot() {
    let coil = RatedCoil { resistance: written("10.5 Ω ± 5 %"), at: celsius(20.0) };
    let between = coil.between(Interval { low: celsius(20.0), high: celsius(80.0) });
    let between = between.expect("inside the domain").expect("a tolerance");
    meets("least", 9.975, between.low.ohms(), Relative(1e-12));
    meets("most", 11.025 * AT_80, between.high.ohms(), Relative(1e-12));
}

/// Another coil of 7.2 Ω at 20 °C is 8.898 Ω at 80 °C; 0.2 Ω of leads are in the ohms and
/// not in the current of 12 V.
#[test]
fn a_wrong_coil_is_as_warm_as_the_right_one() {
    let coil = RatedCoil { resistance: written("10.5 Ω ± 5 %"), at: celsius(20.0) };
    let fault = Some(CoilFault::WrongPart(ohms(7.2)));
    let read = coil.reading(fault, celsius(80.0), ohms(0.2), Voltage::from_volts(12.0)).expect("a coil");
    meets("ohms", 7.2 * AT_80 + 0.2, read.resistance.expect("ohms").ohms(), Relative(1e-12));
    meets("amperes", 12.0 / (7.2 * AT_80), read.current.expect("a current").amperes(), Relative(1e-12));
}

/// 4.3 to 4.4 Ω of a coil of 3.42 to 3.78 Ω: a contact of 0.52 to 0.98 Ω, or a coil at
/// 55.0 to 92.9 °C; bridged turns would make it less. 3.7 to 3.8 Ω are a good coil.
#[test]
fn a_coils_ohms_lead_back_to_each_cause() {
    let coil = RatedCoil { resistance: written("3.6 Ω ± 5 %"), at: celsius(20.0) };
    let good = Interval { low: ohms(3.42), high: ohms(3.78) };
    let found = causes(&coil, good, Interval { low: ohms(4.3), high: ohms(4.4) }).expect("a reading");
    let series = found.series.expect("a contact explains it");
    meets("series, least", 0.52, series.low.ohms(), Relative(1e-9));
    meets("series, most", 0.98, series.high.ohms(), Relative(1e-9));
    let warm = found.temperature.expect("heat explains it");
    meets("coolest", 20.0 + (4.3 / 3.78 - 1.0) / 0.003_93, warm.low.celsius(), Absolute(1e-9));
    meets("hottest", 20.0 + (4.4 / 3.42 - 1.0) / 0.003_93, warm.high.celsius(), Absolute(1e-9));
    assert_eq!(found.shorted_turns, None);
    let found = causes(&coil, good, Interval { low: ohms(3.7), high: ohms(3.8) }).expect("a reading");
    let (turns, series) = (found.shorted_turns.expect("a few"), found.series.expect("a little"));
    meets("no turns", 0.0, turns.low.part(), Absolute(0.0));
    meets("most turns", 1.0 - 3.7 / 3.78, turns.high.part(), Relative(1e-9));
    meets("no contact", 0.0, series.low.ohms(), Absolute(0.0));
    meets("most contact", 0.38, series.high.ohms(), Relative(1e-9));
}

/// Full displacement up to 0.2 A, then down to 5 % at 0.6 A (straight lines): flat parts
/// are allowed in either direction, and every current of one makes its displacement.
#[test]
fn a_control_curve_may_be_flat_in_part() {
    let points = |ends: [(f64, f64); 3]| ends.map(|(i, d)| (Current::from_amperes(i), Ratio::new(d)));
    let falling = points([(0.6, 0.05), (0.0, 1.0), (0.2, 1.0)]);
    let curve = ControlCurve::new(&falling, Direction::LessDisplacement).expect("it never turns back");
    let rising = points([(0.0, 0.05), (0.2, 0.05), (0.6, 1.0)]);
    let other = ControlCurve::new(&rising, Direction::MoreDisplacement).expect("it never turns back");
    for (curve, flat, half) in [(&curve, 1.0, 0.525), (&other, 0.05, 0.525)] {
        let at = |amperes: f64| curve.displacement(Current::from_amperes(amperes)).expect("inside").part();
        meets("flat", flat, at(0.1), Absolute(1e-12));
        meets("half way down", half, at(0.4), Absolute(1e-12));
        let currents = curve.current(Ratio::new(flat)).expect("it is reached");
        meets("from", 0.0, currents.low.amperes(), Absolute(1e-12));
        meets("to", 0.2, currents.high.amperes(), Absolute(1e-12));
    }
    // The indices are those of the points as given, by rising current.
    let fault = ControlCurve::new(&falling, Direction::MoreDisplacement);
    assert_eq!(fault, Err(CurveFault::AgainstDirection(2, 0)));
    let twice = points([(0.2, 1.0), (0.0, 1.0), (0.2, 0.5)]);
    assert_eq!(ControlCurve::new(&twice, Direction::LessDisplacement), Err(CurveFault::SameCurrent(0, 2)));
}
