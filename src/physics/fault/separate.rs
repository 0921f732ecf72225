//! Which faults can be told from a good sensor, and from each other, and where best.

use super::Fault;
use super::setup::Signature;
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
/// certain: see [`Signature::is_apart_from`], which is cheaper where there are many.
///
/// `None` where a tolerance is missing or the test does not apply to one of them.
#[must_use]
pub fn separable(
    subject: &Subject<'_>,
    (one, other): (Option<&Fault>, Option<&Fault>),
    condition: Condition,
    instruments: &Instruments,
) -> Option<bool> {
    let setup = subject.setup(condition, instruments)?;
    setup.signature(one)?.is_apart_from(&setup.signature(other)?)
}

/// Whether two windows of readings do not meet, so that no reading is in both.
#[must_use]
pub fn apart(one: Interval<f64>, other: Interval<f64>) -> bool {
    one.high < other.low || other.high < one.low
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
    condition: Condition,
    instruments: &Instruments,
) -> Option<Interval<f64>> {
    subject.setup(condition, instruments)?.signature(fault)?.widened
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
    let of = suspects.len() * suspects.len().saturating_sub(1) / 2;
    let separations: Vec<Separation> = (candidates.iter())
        .map(|&condition| Separation {
            condition,
            pairs: told(subject, suspects, condition, instruments),
            of,
        })
        .collect();
    let most = separations.iter().map(|separation| separation.pairs).max().filter(|most| *most > 0)?;
    separations.into_iter().find(|separation| 2 * separation.pairs >= most)
}

/// How many pairs of suspects a condition tells apart.
fn told(
    subject: &Subject<'_>,
    suspects: &[Option<Fault>],
    condition: Condition,
    instruments: &Instruments,
) -> usize {
    let Some(setup) = subject.setup(condition, instruments) else { return 0 };
    let read: Vec<Signature> =
        suspects.iter().filter_map(|suspect| setup.signature(suspect.as_ref())).collect();
    (read.iter().enumerate())
        .flat_map(|(index, one)| read[index + 1..].iter().map(move |other| (one, other)))
        .filter(|(one, other)| one.is_apart_from(other) == Some(true))
        .count()
}
