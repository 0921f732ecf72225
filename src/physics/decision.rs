//! From a reading with its uncertainty to a verdict, and the risk of it.
//!
//! Readings here are of any quantity, so they are plain numbers.
//!
//! # Units
//! Limits, readings, uncertainties and guard bands of one decision share one
//! unit, whichever it is.

use std::fmt;

use super::uncertainty::COVERAGE;
use crate::quantity::Ratio;

/// The tolerance limits of a reading, on one side or both.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limits {
    low: Option<f64>,
    high: Option<f64>,
}

/// Why there is nothing to decide.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DecisionError {
    /// No limit, limits the wrong way round, or a limit that is not finite.
    Limits,
    /// A reading that is not finite, or an uncertainty or guard band below zero.
    Reading,
}

impl fmt::Display for DecisionError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Limits => "no limits that a reading can be judged by",
            Self::Reading => "not a reading with an uncertainty",
        })
    }
}

impl std::error::Error for DecisionError {}

impl Limits {
    /// Limits TL and TU; `None` where that side has none.
    ///
    /// # Errors
    /// When neither is given, TL lies above TU, or one is not finite.
    pub fn new(low: Option<f64>, high: Option<f64>) -> Result<Self, DecisionError> {
        let finite = low.into_iter().chain(high).all(f64::is_finite);
        let ordered = low.zip(high).is_none_or(|(low, high)| low <= high);
        if (low.is_some() || high.is_some()) && finite && ordered {
            Ok(Self { low, high })
        } else {
            Err(DecisionError::Limits)
        }
    }

    /// TL.
    #[must_use]
    pub fn low(&self) -> Option<f64> {
        self.low
    }

    /// TU.
    #[must_use]
    pub fn high(&self) -> Option<f64> {
        self.high
    }

    /// Whether a value lies inside; a value on a limit does.
    #[must_use]
    pub fn contains(&self, value: f64) -> bool {
        self.low.is_none_or(|low| low <= value) && self.high.is_none_or(|high| value <= high)
    }
}

/// How a shop decides.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Rule {
    /// Inside the limits passes, outside fails, whatever the uncertainty
    /// (simple acceptance, JCGM 106:2012, 8.2).
    Simple,
    /// With a guard band w = `multiple` × U on both sides of each limit: passes
    /// inside TL + w to TU − w, fails beyond TL − w or TU + w, and is undecided
    /// between.
    Guarded {
        /// The guard band as a part of U; 1 is w = U.
        multiple: Ratio,
    },
}

impl Rule {
    /// The guard band w for an expanded uncertainty U, in the reading's unit.
    #[must_use]
    pub fn guard(self, expanded: f64) -> f64 {
        match self {
            Self::Simple => 0.0,
            Self::Guarded { multiple } => multiple.part() * expanded,
        }
    }
}

/// What is said of a part.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Verdict {
    /// Within its limits.
    Pass,
    /// Outside its limits.
    Fail,
    /// The instruments cannot tell.
    Undecided,
}

/// The four states of ILAC-G8:09/2019, 4.2.3.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Conformance {
    /// Inside the limits by the guard band or more.
    Pass,
    /// Inside the limits, by less than the guard band.
    ConditionalPass,
    /// Outside the limits, by less than the guard band.
    ConditionalFail,
    /// Outside the limits by the guard band or more.
    Fail,
}

/// The readings that pass: from TL + w to TU − w.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Acceptance {
    /// AL = TL + w.
    pub low: Option<f64>,
    /// AU = TU − w.
    pub high: Option<f64>,
}

impl Acceptance {
    /// Whether no reading at all can pass with these instruments.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.low.zip(self.high).is_some_and(|(low, high)| low > high)
    }

    /// Whether a reading passes; one on an end does.
    #[must_use]
    pub fn contains(&self, reading: f64) -> bool {
        self.low.is_none_or(|low| low <= reading) && self.high.is_none_or(|high| reading <= high)
    }
}

/// A verdict with its risk.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Decision {
    /// What is said of the part.
    pub verdict: Verdict,
    /// The same in four states, for information.
    pub conformance: Conformance,
    /// The guard band w, in the reading's unit.
    pub guard: f64,
    /// The readings that pass.
    pub acceptance: Acceptance,
    /// The probability that the true value lies inside the limits.
    pub inside: Ratio,
    /// The probability that the verdict is wrong: of false accept behind a pass,
    /// of false reject behind a fail. `None` for undecided.
    pub risk: Option<Ratio>,
}

/// The limits inside which a reading passes.
///
/// # Errors
/// When the guard band is below zero or not finite, or moves a limit beyond what
/// a number can hold.
///
/// # Source
/// JCGM 106:2012, 8.3; tests/reference/04c_decision_rules.csv, AL_low and AU_high.
pub fn acceptance(limits: &Limits, guard: f64) -> Result<Acceptance, DecisionError> {
    let moved =
        Acceptance { low: limits.low.map(|low| low + guard), high: limits.high.map(|high| high - guard) };
    let finite = moved.low.into_iter().chain(moved.high).all(f64::is_finite);
    if guard >= 0.0 && finite { Ok(moved) } else { Err(DecisionError::Reading) }
}

/// The probability that the value behind a reading lies inside, and outside, the limits.
///
/// p = Φ((TU − y)/u) − Φ((TL − y)/u): normal, centred on the reading, nothing known
/// of the value before. Both are computed from the small side, so that neither
/// loses its digits near 0. With u = 0 the reading is the value.
///
/// # Errors
/// When the reading is not finite, or u is below zero or not finite.
///
/// # Source
/// JCGM 106:2012, 7.4 (two-sided) and 7.3 (one-sided), from memory;
/// tests/reference/04c_decision_rules.csv, p_conform, to 10⁻⁶.
///
/// # Example
/// ```
/// use bayleaf::physics::decision::{Limits, probability};
/// let (inside, outside) = probability(&Limits::new(None, Some(5.0))?, 4.98, 0.01)?;
/// assert!((inside.part() - 0.977_249_868_1).abs() < 1e-9);
/// assert!((outside.part() - 0.022_750_131_9).abs() < 1e-9);
/// # Ok::<(), bayleaf::physics::decision::DecisionError>(())
/// ```
pub fn probability(limits: &Limits, reading: f64, standard: f64) -> Result<(Ratio, Ratio), DecisionError> {
    let sound = reading.is_finite() && standard >= 0.0 && standard.is_finite();
    if !sound {
        return Err(DecisionError::Reading);
    }
    let below = limits.low.map_or(0.0, |low| upper_tail(reading - low, standard));
    let above = limits.high.map_or(0.0, |high| upper_tail(high - reading, standard));
    let outside = (below + above).min(1.0);
    // Far outside 1 − outside would be a difference of nearly equal numbers: there
    // one tail is nearly all of it, and what is left is a difference of two small ones.
    let inside = match (limits.low, limits.high) {
        (_, Some(high)) if reading > high => {
            let beyond = |edge: f64| upper_tail(reading - edge, standard);
            beyond(high) - limits.low.map_or(0.0, beyond)
        }
        (Some(low), _) if reading < low => {
            let beyond = |edge: f64| upper_tail(edge - reading, standard);
            beyond(low) - limits.high.map_or(0.0, beyond)
        }
        _ => 1.0 - outside,
    };
    Ok((Ratio::new(inside.max(0.0)), Ratio::new(outside)))
}

/// The verdict over a reading with standard uncertainty u.
///
/// U = 2 u. Limits are inclusive: a reading on an acceptance limit passes; one
/// that lies outside a tolerance limit by the whole guard band fails.
///
/// # Errors
/// When the reading or u is no number, or the guard band is below zero.
///
/// # Source
/// ILAC-G8:09/2019, 4.2 (as quoted; the document was not opened), JCGM 106:2012, 8;
/// tests/reference/04c_decision_rules.csv. w = U leaves at most 2.3 % risk of
/// false accept on a one-sided limit (row one_upper_guard).
pub fn decide(limits: &Limits, reading: f64, standard: f64, rule: Rule) -> Result<Decision, DecisionError> {
    let (inside, outside) = probability(limits, reading, standard)?;
    let guard = rule.guard(COVERAGE * standard);
    let acceptance = acceptance(limits, guard)?;
    let beyond = limits.low.is_some_and(|low| reading <= low - guard)
        || limits.high.is_some_and(|high| reading >= high + guard);
    let conformance = match (acceptance.contains(reading), limits.contains(reading)) {
        (true, _) => Conformance::Pass,
        // With no guard band every reading inside has passed already.
        (false, true) => Conformance::ConditionalPass,
        (false, false) if beyond => Conformance::Fail,
        (false, false) => Conformance::ConditionalFail,
    };
    let verdict = match conformance {
        Conformance::Pass => Verdict::Pass,
        Conformance::Fail => Verdict::Fail,
        Conformance::ConditionalPass | Conformance::ConditionalFail => Verdict::Undecided,
    };
    let risk = match verdict {
        Verdict::Pass => Some(outside),
        Verdict::Fail => Some(inside),
        Verdict::Undecided => None,
    };
    Ok(Decision { verdict, conformance, guard, acceptance, inside, risk })
}

/// 1 − Φ(distance/u), the part of a normal distribution beyond a distance.
fn upper_tail(distance: f64, standard: f64) -> f64 {
    let deviations = distance / standard;
    if deviations.is_nan() {
        // No uncertainty and on the limit, which is inside; or two numbers too far
        // apart for their distance to be one.
        return 0.0;
    }
    libm::erfc(deviations / std::f64::consts::SQRT_2) / 2.0
}
