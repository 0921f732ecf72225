//! Back from a reading: every single fault whose size explains it.

use super::subject::{Instruments, Subject, Test};
use super::{Condition, Fault, Kind};
use crate::physics::tolerance::Tolerance;
use crate::quantity::{Interval, Resistance, Temperature, TemperatureDifference};

/// Steps of a bisection: far below a digit over any of the ranges searched.
const STEPS: usize = 80;

/// Faults without a size that show in volts: first those of the sensor itself.
const WHOLE: [Fault; 6] = [
    Fault::Open,
    Fault::ShortToReturn,
    Fault::OpenWire,
    Fault::ShortToGround,
    Fault::ShortToReference,
    Fault::ShortToBattery,
];

/// A fault that explains a reading.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cause {
    /// The fault; where it has a size, the one in the middle of its interval, or
    /// the worst one where the interval reaches down to none.
    pub fault: Fault,
    /// The sizes that explain the reading, in the fault's SI unit.
    pub sizes: Option<Interval<f64>>,
    /// Whether the interval reaches a size at which nothing is wrong.
    pub harmless: bool,
}

/// Every single fault that explains a reading at a temperature.
///
/// A size explains a reading when some good part in some good circuit would give
/// it: when the reading, give or take its uncertainty, lies in the window of all
/// tolerances. The window moves one way with the size, so that the sizes form an
/// interval, whose ends are found by bisection.
///
/// Empty where tolerances are missing: nothing can be said then.
#[must_use]
pub fn explain(
    subject: &Subject<'_>,
    reading: f64,
    test: Test,
    at: Temperature,
    instruments: &Instruments,
) -> Vec<Cause> {
    let Some(setup) = subject.setup(Condition { test, at }, instruments) else { return Vec::new() };
    let Some(doubt) = setup.uncertainty(reading) else { return Vec::new() };
    let window = |fault: &Fault| {
        let (_, window) = setup.reading(Some(fault))?;
        window.map(|window| Interval { low: window.low - doubt, high: window.high + doubt })
    };
    let whole = match test {
        Test::VoltsAtUnit | Test::VoltsAtSensor => &WHOLE[..],
        Test::VoltsUnplugged => &WHOLE[2..],
        Test::OhmsAtSensor => &[Fault::Open, Fault::ShortToReturn, Fault::UnitStillMated],
        Test::OhmsAtUnit => &[Fault::Open, Fault::ShortToReturn, Fault::OpenWire, Fault::UnitStillMated],
    };
    let others = (0..subject.others.len()).map(Fault::OtherPart);
    let others = others.filter(|_| test != Test::VoltsUnplugged);
    let without_size = whole.iter().copied().chain(others).filter_map(|fault| {
        let holds = window(&fault)?.contains(&reading);
        holds.then_some(Cause { fault, sizes: None, harmless: false })
    });
    let with_size = Kind::ALL.into_iter().filter(|kind| matters(*kind, test)).filter_map(|kind| {
        let sizes = sizes(kind, reading, &window)?;
        let harmless = sizes.contains(&kind.harmless());
        let size = if harmless { worst(kind, sizes) } else { middle(kind, sizes) };
        Some(Cause { fault: kind.of_size(size), sizes: Some(sizes), harmless })
    });
    with_size.chain(without_size).collect()
}

/// Whether a fault changes what a test reads at all.
fn matters(kind: Kind, test: Test) -> bool {
    match test {
        Test::VoltsAtUnit | Test::VoltsAtSensor => true,
        Test::VoltsUnplugged => matches!(kind, Kind::Leak | Kind::LeakToBattery | Kind::WrongResistor),
        Test::OhmsAtSensor => matches!(kind, Kind::ShiftedResistance | Kind::ShiftedSlope),
        Test::OhmsAtUnit => {
            matches!(kind, Kind::Series | Kind::Leak | Kind::ShiftedResistance | Kind::ShiftedSlope)
        }
    }
}

/// The sizes whose window holds the reading.
fn sizes(
    kind: Kind,
    reading: f64,
    window: &impl Fn(&Fault) -> Option<Interval<f64>>,
) -> Option<Interval<f64>> {
    let (least, most) = kind.sizes();
    // Both ends must be readable, or the fault does not apply here.
    window(&kind.of_size(least))?;
    window(&kind.of_size(most))?;
    let of = |share: f64| size_at(kind, share);
    let at = |share: f64| window(&kind.of_size(of(share)));
    let below_top = region(|share| at(share).map_or(f64::NAN, |window| window.high - reading))?;
    let above_bottom = region(|share| at(share).map_or(f64::NAN, |window| reading - window.low))?;
    let shares = (below_top.0.max(above_bottom.0), below_top.1.min(above_bottom.1));
    (shares.0 <= shares.1).then(|| Interval { low: of(shares.0), high: of(shares.1) })
}

/// The part of 0 to 1 in which a monotone function is not below zero.
///
/// The ends lie on the side where it is not, so that the true size is never cut off.
fn region(of: impl Fn(f64) -> f64) -> Option<(f64, f64)> {
    match (of(0.0) >= 0.0, of(1.0) >= 0.0) {
        (true, true) => Some((0.0, 1.0)),
        (false, false) => None,
        (true, false) => Some((0.0, crossing(&of, 0.0, 1.0))),
        (false, true) => Some((crossing(&of, 1.0, 0.0), 1.0)),
    }
}

/// Where a function leaves zero between an inner point, where it holds, and an outer one.
fn crossing(of: &impl Fn(f64) -> f64, inner: f64, outer: f64) -> f64 {
    let (mut inner, mut outer) = (inner, outer);
    for _ in 0..STEPS {
        let middle = 0.5 * (inner + outer);
        if of(middle) >= 0.0 { inner = middle } else { outer = middle }
    }
    outer
}

/// A size at a share of the way through its range, ohms and multiples on a logarithmic scale.
fn size_at(kind: Kind, share: f64) -> f64 {
    let (least, most) = kind.sizes();
    // A whisker from the end is the end.
    if share <= 0.0 {
        return least;
    }
    if share >= 1.0 {
        return most;
    }
    match kind {
        // From a milliohm, which no meter sees, up.
        Kind::Series => between_logarithms(1e-3, most, share),
        Kind::Leak | Kind::LeakToBattery => between_logarithms(least, most, share),
        Kind::ShiftedResistance | Kind::WrongResistor => {
            between_logarithms(1.0 + least, 1.0 + most, share) - 1.0
        }
        Kind::LiftedReturn | Kind::ShiftedSlope => least + share * (most - least),
    }
}

fn between_logarithms(low: f64, high: f64, share: f64) -> f64 {
    libm::exp(libm::log(low) + share * (libm::log(high) - libm::log(low)))
}

/// The end of an interval that is further from harmless, unless the search ended there.
fn worst(kind: Kind, sizes: Interval<f64>) -> f64 {
    let (least, most) = kind.sizes();
    let by_effect = |size: f64| match kind {
        Kind::Leak | Kind::LeakToBattery => -libm::log(size),
        Kind::ShiftedResistance | Kind::WrongResistor => libm::log1p(size).abs(),
        _ => size.abs(),
    };
    let found = [sizes.low, sizes.high].into_iter().filter(|size| *size > least && *size < most);
    found.max_by(|one, other| by_effect(*one).total_cmp(&by_effect(*other))).unwrap_or(sizes.high)
}

/// A size inside an interval, in the middle of its scale.
fn middle(kind: Kind, sizes: Interval<f64>) -> f64 {
    match kind {
        Kind::Series => libm::sqrt(sizes.low.max(1e-3) * sizes.high),
        Kind::Leak | Kind::LeakToBattery => libm::sqrt(sizes.low * sizes.high),
        _ => 0.5 * (sizes.low + sizes.high),
    }
}

/// The resistances of the sensor itself that explain a reading, in a good circuit.
///
/// `None` where no resistance does, or a tolerance of the circuit is missing.
#[must_use]
pub fn looks_like(
    subject: &Subject<'_>,
    reading: f64,
    test: Test,
    at: Temperature,
    instruments: &Instruments,
) -> Option<Interval<Resistance>> {
    // A part without any doubt of its own, shifted until it reads so.
    let exact = Tolerance::Temperature(TemperatureDifference::from_kelvins(0.0));
    let part = Subject { tolerance: Some(&exact), ..*subject };
    let setup = part.setup(Condition { test, at }, instruments)?;
    let doubt = setup.uncertainty(reading)?;
    let window = |fault: &Fault| {
        let (_, window) = setup.reading(Some(fault))?;
        window.map(|window| Interval { low: window.low - doubt, high: window.high + doubt })
    };
    let shifts = sizes(Kind::ShiftedResistance, reading, &window)?;
    let good = subject.curve.resistance(at).ok()?.ohms();
    let shifted = |by: f64| Resistance::from_ohms(good * (1.0 + by));
    Some(Interval { low: shifted(shifts.low), high: shifted(shifts.high) })
}
