//! What a watched value does over time, and when it is past which threshold.

use super::{Condition, Error, Span, push};

/// A value over time: straight from point to point, level before the first and after the last.
#[derive(Debug, Clone, PartialEq)]
pub struct Trace(Vec<(f64, f64)>);

/// Where a value is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Region {
    /// At the threshold or past it.
    Past,
    /// Between threshold and release threshold.
    Between,
    /// At the release threshold or past it.
    Back,
}

impl Trace {
    /// A trace through points of time, in seconds, and value.
    ///
    /// # Errors
    /// [`Error::Trace`] where there is no point, the times do not rise or a value is no number.
    pub fn new(points: Vec<(f64, f64)>) -> Result<Self, Error> {
        let rises = points.windows(2).all(|pair| pair[1].0 > pair[0].0);
        let finite = points.iter().all(|(at, value)| at.is_finite() && value.is_finite());
        if points.is_empty() || !rises || !finite {
            return Err(Error::Trace);
        }
        Ok(Self(points))
    }

    /// Its points, in seconds and as given.
    #[must_use]
    pub fn points(&self) -> &[(f64, f64)] {
        &self.0
    }

    /// The value at a time.
    #[must_use]
    pub fn at(&self, time: f64) -> f64 {
        let next = self.0.partition_point(|point| point.0 <= time);
        match (next.checked_sub(1).and_then(|index| self.0.get(index)), self.0.get(next)) {
            (Some(&(from, low)), Some(&(to, high))) => low + (high - low) * ((time - from) / (to - from)),
            (Some(&(_, value)), None) | (None, Some(&(_, value))) => value,
            (None, None) => f64::NAN,
        }
    }

    /// The regions of a condition that the value passes through; a touch without length is none.
    pub(super) fn regions(&self, condition: &Condition, length: f64) -> Vec<Span<Region>> {
        let mut times = vec![0.0, length];
        times.extend(self.0.iter().map(|point| point.0));
        for pair in self.0.windows(2) {
            let [(from, low), (to, high)] = [pair[0], pair[1]];
            for level in [condition.threshold, condition.release] {
                let part = (level - low) / (high - low);
                if part.is_finite() && part > 0.0 && part < 1.0 {
                    times.push(from + part * (to - from));
                }
            }
        }
        times.retain(|time| (0.0..=length).contains(time));
        times.sort_by(f64::total_cmp);
        let mut regions = Vec::new();
        for pair in times.windows(2) {
            let middle = pair[0] + 0.5 * (pair[1] - pair[0]);
            push(&mut regions, pair[0], pair[1], condition.region(self.at(middle)));
        }
        regions
    }
}
