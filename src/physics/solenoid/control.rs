//! Displacement of a compressor against the control current of its valve.

use std::fmt;

use crate::quantity::{Current, Interval, Ratio};

/// What more control current does.
///
/// Where the valve bleeds the crankcase, more current means less displacement;
/// the opposite exists. The spec says which: it cannot be guessed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Direction {
    /// More current, less displacement.
    LessDisplacement,
    /// More current, more displacement.
    MoreDisplacement,
}

/// Displacement against control current: points, joined by straight lines.
///
/// # Range
/// Common practice, no source: full displacement is 100 %, the least about 5 %,
/// the control current 0 to 0.6 A. Straight lines between the points of the
/// source, nothing beyond its first and last.
#[derive(Debug, Clone, PartialEq)]
pub struct ControlCurve {
    /// By rising current.
    points: Vec<(f64, f64)>,
    direction: Direction,
}

/// Why points make no control curve; the numbers are indices into the points as given.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CurveFault {
    /// Fewer than two points.
    TooFewPoints,
    /// A current below zero, a displacement outside 0 to 100 %, or a value that is not finite.
    NotPhysical(usize),
    /// Two points of one current.
    SameCurrent(usize, usize),
    /// From the first point to the second the displacement goes against the stated direction.
    AgainstDirection(usize, usize),
    /// The displacement is the same at every point.
    Flat,
}

impl fmt::Display for CurveFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::TooFewPoints => "fewer than two points",
            Self::NotPhysical(_) => "a point of no compressor",
            Self::SameCurrent(..) => "two points of one current",
            Self::AgainstDirection(..) => "against the stated direction",
            Self::Flat => "the displacement never changes",
        })
    }
}

impl std::error::Error for CurveFault {}

impl ControlCurve {
    /// A curve through points, in any order; it may be flat in part, never turn back.
    ///
    /// # Errors
    /// As [`CurveFault`] says, naming the points.
    pub fn new(points: &[(Current, Ratio)], direction: Direction) -> Result<Self, CurveFault> {
        if points.len() < 2 {
            return Err(CurveFault::TooFewPoints);
        }
        let plain = |&(current, displacement): &(Current, Ratio)| (current.amperes(), displacement.part());
        for (index, point) in points.iter().enumerate() {
            let (current, displacement) = plain(point);
            if !(current.is_finite() && current >= 0.0 && (0.0..=1.0).contains(&displacement)) {
                return Err(CurveFault::NotPhysical(index));
            }
        }
        let mut order: Vec<usize> = (0..points.len()).collect();
        order.sort_by(|&a, &b| plain(&points[a]).0.total_cmp(&plain(&points[b]).0));
        for pair in order.windows(2) {
            let ((i1, d1), (i2, d2)) = (plain(&points[pair[0]]), plain(&points[pair[1]]));
            if i1 >= i2 {
                return Err(CurveFault::SameCurrent(pair[0].min(pair[1]), pair[0].max(pair[1])));
            }
            let against = match direction {
                Direction::LessDisplacement => d2 > d1,
                Direction::MoreDisplacement => d2 < d1,
            };
            if against {
                return Err(CurveFault::AgainstDirection(pair[0], pair[1]));
            }
        }
        let points: Vec<_> = order.iter().map(|&index| plain(&points[index])).collect();
        let changes = points.windows(2).any(|pair| pair[0].1.total_cmp(&pair[1].1).is_ne());
        if changes { Ok(Self { points, direction }) } else { Err(CurveFault::Flat) }
    }

    /// What more current does.
    #[must_use]
    pub fn direction(&self) -> Direction {
        self.direction
    }

    /// The currents between which the curve is known.
    #[must_use]
    pub fn domain(&self) -> Interval<Current> {
        let end = |point: Option<&(f64, f64)>| Current::from_amperes(point.map_or(0.0, |point| point.0));
        Interval { low: end(self.points.first()), high: end(self.points.last()) }
    }

    /// The displacement at a control current; `None` beyond the points.
    ///
    /// # Example
    /// ```
    /// use bayleaf::physics::solenoid::{ControlCurve, Direction};
    /// use bayleaf::quantity::{Current, Ratio};
    /// let ends = [(0.0, 1.0), (0.6, 0.05)].map(|(i, d)| (Current::from_amperes(i), Ratio::new(d)));
    /// let curve = ControlCurve::new(&ends, Direction::LessDisplacement)?;
    /// let half_way = curve.displacement(Current::from_amperes(0.3)).expect("between the ends");
    /// assert!((half_way.part() - 0.525).abs() < 1e-12);
    /// # Ok::<(), bayleaf::physics::solenoid::CurveFault>(())
    /// ```
    #[must_use]
    pub fn displacement(&self, at: Current) -> Option<Ratio> {
        let at = at.amperes();
        let pair = self.points.windows(2).find(|pair| pair[0].0 <= at && at <= pair[1].0)?;
        let ((i1, d1), (i2, d2)) = (pair[0], pair[1]);
        let share = (at - i1) / (i2 - i1);
        // The lower and the upper end come out exactly.
        Some(Ratio::new(d1 * (1.0 - share) + d2 * share))
    }

    /// Every current that makes a displacement; `None` where none does.
    ///
    /// More than one where the curve is flat.
    #[must_use]
    pub fn current(&self, displacement: Ratio) -> Option<Interval<Current>> {
        let wanted = displacement.part();
        let mut found: Option<(f64, f64)> = None;
        for pair in self.points.windows(2) {
            let ((i1, d1), (i2, d2)) = (pair[0], pair[1]);
            if !(d1.min(d2)..=d1.max(d2)).contains(&wanted) {
                continue;
            }
            let here = if d1.total_cmp(&d2).is_eq() {
                (i1, i2)
            } else {
                let share = (wanted - d1) / (d2 - d1);
                let at = i1 * (1.0 - share) + i2 * share;
                (at, at)
            };
            found = Some(found.map_or(here, |(low, high)| (low.min(here.0), high.max(here.1))));
        }
        let (low, high) = found?;
        Some(Interval { low: Current::from_amperes(low), high: Current::from_amperes(high) })
    }
}
