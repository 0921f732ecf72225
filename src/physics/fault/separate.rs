//! Which faults can be told from a good sensor, and from each other, and where best.

use super::Fault;
use super::subject::{Instruments, Subject, Test};
use crate::quantity::{Interval, Temperature};

/// Where and at what temperature to measure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Condition {
    /// What is measured, and where.
    pub test: Test,
    /// The temperature of the sensor.
    pub at: Temperature,
}

/// How well a condition tells suspects apart.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Separation {
    /// The condition.
    pub condition: Condition,
    /// How many pairs of suspects it tells apart.
    pub pairs: usize,
    /// Of how many.
    pub of: usize,
}

/// Whether two faults, or a fault and a good sensor (`None`), read differently for
/// certain: their windows, each widened by the reading's uncertainty, do not meet.
///
/// `None` where a tolerance is missing or the test does not apply to one of them.
///
/// # Source
/// Common practice: readings that differ by more than twice the uncertainty are
/// told apart; each reading carries its own U (JCGM 100, k = 2).
#[must_use]
pub fn separable(
    subject: &Subject<'_>,
    (one, other): (Option<&Fault>, Option<&Fault>),
    condition: Condition,
    instruments: &Instruments,
) -> Option<bool> {
    let one = widened(subject, one, condition, instruments)?;
    let other = widened(subject, other, condition, instruments)?;
    Some(apart(one, other))
}

/// Whether two windows of readings do not meet, so that no reading is in both.
#[must_use]
pub fn apart(one: Interval<f64>, other: Interval<f64>) -> bool {
    one.high < other.low || other.high < one.low
}

/// The first condition that tells at least half as many pairs of suspects apart as
/// the best one does; `candidates` are in the order of their effort.
///
/// `None` where no candidate tells any pair apart.
///
/// # Source
/// Common practice, no source: two cheap measurements one after the other beat an
/// expensive one, so the best is taken only where no cheaper one does half of its work.
#[must_use]
pub fn best_condition(
    subject: &Subject<'_>,
    suspects: &[Option<Fault>],
    candidates: &[Condition],
    instruments: &Instruments,
) -> Option<Separation> {
    let pairs = pairs(suspects);
    let apart = |condition| {
        let told = |(one, other): &&(Option<Fault>, Option<Fault>)| {
            separable(subject, (one.as_ref(), other.as_ref()), condition, instruments) == Some(true)
        };
        pairs.iter().filter(told).count()
    };
    let separations: Vec<Separation> = (candidates.iter())
        .map(|&condition| Separation { condition, pairs: apart(condition), of: pairs.len() })
        .collect();
    let most = separations.iter().map(|separation| separation.pairs).max().filter(|most| *most > 0)?;
    separations.into_iter().find(|separation| 2 * separation.pairs >= most)
}

fn pairs(suspects: &[Option<Fault>]) -> Vec<(Option<Fault>, Option<Fault>)> {
    let from = |index: usize| suspects[index + 1..].iter().map(move |other| (suspects[index], *other));
    (0..suspects.len()).flat_map(from).collect()
}

/// The window of readings, in ohms or volts, widened by the uncertainty of its own ends.
///
/// `None` where a tolerance is missing or the test does not apply to the fault.
///
/// # Source
/// See [`separable`], which compares two of these.
#[must_use]
pub fn widened(
    subject: &Subject<'_>,
    fault: Option<&Fault>,
    Condition { test, at }: Condition,
    instruments: &Instruments,
) -> Option<Interval<f64>> {
    let (_, window) = subject.reading(fault, test, at, instruments)?;
    let window = window?;
    let doubt = |reading: f64| subject.uncertainty(reading, test, at, instruments);
    Some(Interval { low: window.low - doubt(window.low)?, high: window.high + doubt(window.high)? })
}
