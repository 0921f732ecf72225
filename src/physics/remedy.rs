//! What would decide a reading that these instruments leave undecided.
//!
//! Nothing here is canned: whoever asks gives the window and the uncertainty under
//! a changed condition, and the verdict under it is computed.
//!
//! # Units
//! A reading, its window and its uncertainty are plain numbers in one unit,
//! as in [`decision`](super::decision).

use super::curve::{Curve, CurveError};
use super::decision::{Limits, Rule, Verdict, decide};
use super::uncertainty::COVERAGE;
use crate::quantity::{Ratio, Resistance, Temperature, TemperatureDifference};

/// One thing to change, all else as it was.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Change {
    /// A thermometer whose limit of error is no greater than this.
    Thermometer(TemperatureDifference),
    /// Soaking until sensor and thermometer agree within this.
    Soak(TemperatureDifference),
    /// The sensor at another temperature, such as in ice water.
    Temperature(Temperature),
    /// Ohms at the component instead of volts at the control unit, or the reverse.
    Place(Place),
    /// A meter whose limit of error is no greater than this part of today's.
    Meter(Ratio),
}

/// Where to measure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Place {
    /// Ohms at the component's own pins, unmated.
    Component,
    /// Volts at the control unit's connector, mated.
    ControlUnit,
}

/// The window of a test and the expanded uncertainty of its reading, under some condition.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Situation {
    /// The tolerance limits.
    pub limits: Limits,
    /// U of a reading.
    pub expanded: f64,
}

/// Whether a change would decide.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Decides {
    /// The part as it reads now would get this verdict, pass or fail.
    Yes(Verdict),
    /// It would stay undecided, or the condition cannot be computed.
    No,
}

/// A change with its cost and what it would bring.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Candidate {
    /// The change.
    pub change: Change,
    /// The effort; only its order counts.
    pub cost: u8,
    /// What it would bring.
    pub decides: Decides,
}

/// The cheapest candidate that decides; of equal ones the first.
///
/// `None` when none does.
#[must_use]
pub fn cheapest(candidates: &[Candidate]) -> Option<&Candidate> {
    let decide = candidates.iter().filter(|candidate| candidate.decides != Decides::No);
    decide.min_by_key(|candidate| candidate.cost)
}

/// The verdict that a reading would get in a situation.
///
/// `reading` is the reading expected there: the one at hand where only the
/// instrument changes, else the one that [`carried`] predicts.
#[must_use]
pub fn decides(situation: Option<Situation>, reading: f64, rule: Rule) -> Decides {
    let verdict = situation.and_then(|Situation { limits, expanded }| {
        decide(&limits, reading, expanded / COVERAGE, rule).ok().map(|decision| decision.verdict)
    });
    match verdict {
        Some(verdict @ (Verdict::Pass | Verdict::Fail)) => Decides::Yes(verdict),
        Some(Verdict::Undecided) | None => Decides::No,
    }
}

/// The largest limit of error of the thermometer that decides this reading.
///
/// `situation` gives window and U for a thermometer's limit of error; U must not
/// fall as the limit grows. The answer is within 2⁻⁵⁰ of `today` below the true
/// one and decides; `today` itself where that decides already; `None` where not even
/// a perfect thermometer does.
///
/// # Range
/// `today` finite and zero or more; else `None`.
///
/// # Example
/// A sensor of −3.78 %/K with a tolerance of ± 3.35 % reads 1.2 % high. The meter
/// is good to 0.9 % and soaking to 0.3 K: w must come down to 2.15 %.
/// ```
/// use bayleaf::physics::decision::{Limits, Rule};
/// use bayleaf::physics::remedy::{Situation, largest_thermometer_limit};
/// use bayleaf::physics::uncertainty::expanded;
/// use bayleaf::quantity::{Ratio, TemperatureDifference};
/// let limits = Limits::new(Some(-3.35), Some(3.35))?;
/// let situation = |thermometer: TemperatureDifference| {
///     let expanded = expanded(&[3.78 * thermometer.kelvins(), 3.78 * 0.3, 0.9]);
///     Some(Situation { limits, expanded })
/// };
/// let rule = Rule::Guarded { multiple: Ratio::new(1.0) };
/// let today = TemperatureDifference::from_kelvins(1.0);
/// let enough = largest_thermometer_limit(situation, today, 1.2, rule).map(|limit| limit.kelvins());
/// // (2.15/2)² × 3 − 1.134² − 0.9² = 1.371, its root over 3.78.
/// assert!(enough.is_some_and(|kelvins| (kelvins - 0.3098).abs() < 1e-4));
/// # Ok::<(), bayleaf::physics::decision::DecisionError>(())
/// ```
#[must_use]
pub fn largest_thermometer_limit(
    situation: impl Fn(TemperatureDifference) -> Option<Situation>,
    today: TemperatureDifference,
    reading: f64,
    rule: Rule,
) -> Option<TemperatureDifference> {
    let of = |kelvins| situation(TemperatureDifference::from_kelvins(kelvins));
    largest(of, today.kelvins(), reading, rule).map(TemperatureDifference::from_kelvins)
}

/// The same for the meter: the largest part of today's limit of error that decides.
#[must_use]
pub fn largest_meter_part(
    situation: impl Fn(Ratio) -> Option<Situation>,
    reading: f64,
    rule: Rule,
) -> Option<Ratio> {
    largest(|part| situation(Ratio::new(part)), 1.0, reading, rule).map(Ratio::new)
}

/// What a part that reads `reading` at one temperature should read at another, if
/// it deviates by the same part of its resistance there.
///
/// # Range
/// True of a shifted rated resistance; a series or parallel fault, or another B
/// value, reads differently there, which a second reading shows.
///
/// # Errors
/// Where the curve is not known at both temperatures.
pub fn carried(
    curve: &Curve,
    reading: Resistance,
    from: Temperature,
    to: Temperature,
) -> Result<Resistance, CurveError> {
    let part = reading.ohms() / curve.resistance(from)?.ohms();
    let there = part * curve.resistance(to)?.ohms();
    if there.is_finite() { Ok(Resistance::from_ohms(there)) } else { Err(CurveError::OutsideDomain) }
}

/// Halvings of an interval until its width is 2⁻⁵⁰ of the whole.
const HALVINGS: u32 = 50;

fn largest(
    situation: impl Fn(f64) -> Option<Situation>,
    today: f64,
    reading: f64,
    rule: Rule,
) -> Option<f64> {
    let enough = |limit: f64| decides(situation(limit), reading, rule) != Decides::No;
    if !(today >= 0.0 && today.is_finite()) {
        return None;
    }
    if enough(today) {
        return Some(today);
    }
    if !enough(0.0) {
        return None;
    }
    let (mut good, mut bad) = (0.0, today);
    for _ in 0..HALVINGS {
        let middle = good + (bad - good) / 2.0;
        if enough(middle) {
            good = middle;
        } else {
            bad = middle;
        }
    }
    Some(good)
}
