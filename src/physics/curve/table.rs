//! A table of points, interpolated in ln R against 1/T.

use super::{CurveError, Direction};
use crate::quantity::{Interval, Resistance, Temperature};

/// Points of a curve, joined by a monotone cubic in ln R against 1/T.
///
/// The points fall all the way (a thermistor) or rise all the way (silicon,
/// platinum). In these axes a thermistor is nearly a straight line, so the curve between
/// two points is known to a few hundredths of a percent where the points are
/// 5 K apart, and to some tenths where they are 20 K apart; straight lines in
/// R are wrong by 1.4 % and 24 %
/// (tests/reference/01f_ntc_interpolation_dropped_points.csv).
///
/// The cubic is that of Fritsch and Carlson with the derivatives of Fritsch
/// and Butland (SIAM J. Numer. Anal. 17 (1980) 238; SIAM J. Sci. Stat. Comput.
/// 5 (1984) 300; titles from memory). It never overshoots: between two points
/// it stays between them, so it goes one way only and has one inverse.
///
/// # Range
/// From the coldest to the hottest point. Never beyond.
#[derive(Debug, Clone, PartialEq)]
pub struct Table {
    domain: Interval<Temperature>,
    /// 1 where the resistance falls, −1 where it rises: ln R times this rises with 1/T.
    sign: f64,
    /// 1/T of the points in 1/K, rising: hottest point first.
    inverse: Vec<f64>,
    /// sign × ln R of the points, rising.
    log: Vec<f64>,
    /// d(sign × ln R)/d(1/T) at the points, in K.
    derivative: Vec<f64>,
}

impl Table {
    /// A table of points in any order.
    ///
    /// # Errors
    /// With fewer than two points, with a resistance at or below zero, or when
    /// the resistance neither falls nor rises from each point to the next hotter
    /// one (two points of one temperature included).
    pub fn new(points: &[(Temperature, Resistance)]) -> Result<Self, CurveError> {
        let mut hot_first = points.to_vec();
        hot_first.sort_by(|a, b| b.0.celsius().total_cmp(&a.0.celsius()));
        let [(high, hottest), .., (low, coldest)] = hot_first[..] else {
            return Err(CurveError::TooFewPoints);
        };
        let sensible = |(t, r): &(Temperature, Resistance)| {
            t.kelvins() > 0.0 && t.kelvins().is_finite() && r.ohms() > 0.0 && r.ohms().is_finite()
        };
        if !hot_first.iter().all(sensible) {
            return Err(CurveError::NotPhysical);
        }
        let inverse: Vec<f64> = hot_first.iter().map(|(t, _)| 1.0 / t.kelvins()).collect();
        let sign = if hottest < coldest { 1.0 } else { -1.0 };
        let log: Vec<f64> = hot_first.iter().map(|(_, r)| sign * libm::log(r.ohms())).collect();
        let rising = |values: &[f64]| values.windows(2).all(|pair| pair[0] < pair[1]);
        if !rising(&inverse) || !rising(&log) {
            return Err(CurveError::NotMonotonic);
        }
        let derivative = derivatives(&inverse, &log);
        Ok(Self { domain: Interval { low, high }, sign, inverse, log, derivative })
    }

    /// The coldest and the hottest point.
    #[must_use]
    pub fn domain(&self) -> Interval<Temperature> {
        self.domain
    }

    /// Which way the points go.
    #[must_use]
    pub fn direction(&self) -> Direction {
        if self.sign > 0.0 { Direction::Falling } else { Direction::Rising }
    }

    /// R(T).
    ///
    /// # Errors
    /// Outside [`domain`](Self::domain).
    pub fn resistance(&self, at: Temperature) -> Result<Resistance, CurveError> {
        if self.domain.contains(&at) { Ok(self.inside(at)) } else { Err(CurveError::OutsideDomain) }
    }

    /// R(T) where T lies in the domain.
    fn inside(&self, at: Temperature) -> Resistance {
        let x = 1.0 / at.kelvins();
        Resistance::from_ohms(libm::exp(self.sign * self.segment(x).value(x)))
    }

    /// T(R).
    pub(super) fn temperature(&self, of: Resistance) -> Result<Temperature, CurveError> {
        let y = self.sign * libm::log(of.ohms());
        let above = self.log.partition_point(|log| *log <= y);
        let inside = self.log.first() <= Some(&y) && self.log.last() >= Some(&y);
        if !inside {
            return Err(CurveError::OutsideDomain);
        }
        let index = above.clamp(1, self.log.len() - 1);
        let x = self.segment_before(index).solve(y);
        // At an end the last bit of 1/T may step over the table's own edge.
        let celsius = Temperature::from_kelvins(1.0 / x).celsius();
        let held = celsius.clamp(self.domain.low.celsius(), self.domain.high.celsius());
        Ok(Temperature::from_celsius(held))
    }

    /// (1/R) dR/dT = −[d(ln R)/d(1/T)] / T².
    pub(super) fn slope(&self, at: Temperature) -> f64 {
        let x = 1.0 / at.kelvins();
        -self.sign * self.segment(x).derivative(x) * x * x
    }

    fn segment(&self, x: f64) -> Segment {
        let above = self.inverse.partition_point(|inverse| *inverse <= x);
        self.segment_before(above.clamp(1, self.inverse.len() - 1))
    }

    fn segment_before(&self, index: usize) -> Segment {
        let end = |i: usize| End { x: self.inverse[i], y: self.log[i], slope: self.derivative[i] };
        Segment { left: end(index - 1), right: end(index) }
    }
}

/// One end of a cubic piece.
#[derive(Debug, Clone, Copy)]
struct End {
    x: f64,
    y: f64,
    slope: f64,
}

/// A cubic piece between two points, given by values and slopes at its ends.
#[derive(Debug, Clone, Copy)]
struct Segment {
    left: End,
    right: End,
}

impl Segment {
    fn width(&self) -> f64 {
        self.right.x - self.left.x
    }

    fn value(&self, x: f64) -> f64 {
        let (h, s) = (self.width(), (x - self.left.x) / self.width());
        let (s2, s3) = (s * s, s * s * s);
        self.left.y * (2.0 * s3 - 3.0 * s2 + 1.0)
            + self.left.slope * h * (s3 - 2.0 * s2 + s)
            + self.right.y * (3.0 * s2 - 2.0 * s3)
            + self.right.slope * h * (s3 - s2)
    }

    fn derivative(&self, x: f64) -> f64 {
        let (h, s) = (self.width(), (x - self.left.x) / self.width());
        let s2 = s * s;
        (self.left.y - self.right.y) * (6.0 * s2 - 6.0 * s) / h
            + self.left.slope * (3.0 * s2 - 4.0 * s + 1.0)
            + self.right.slope * (3.0 * s2 - 2.0 * s)
    }

    /// The x at which the piece has the value y: Newton's method, held inside
    /// a bracket that is halved when a step would leave it.
    fn solve(&self, y: f64) -> f64 {
        let (mut low, mut high) = (self.left.x, self.right.x);
        let share = (y - self.left.y) / (self.right.y - self.left.y);
        let mut x = low + share * (high - low);
        for _ in 0..60 {
            let error = self.value(x) - y;
            if error > 0.0 {
                high = x
            } else {
                low = x
            }
            let step = x - error / self.derivative(x);
            let next = if step > low && step < high { step } else { 0.5 * (low + high) };
            if (next - x).abs() <= x * f64::EPSILON {
                return next;
            }
            x = next;
        }
        x
    }
}

/// Slopes at the points that keep every piece monotone.
fn derivatives(x: &[f64], y: &[f64]) -> Vec<f64> {
    let width: Vec<f64> = x.windows(2).map(|pair| pair[1] - pair[0]).collect();
    let secant: Vec<f64> =
        y.windows(2).zip(&width).map(|(pair, width)| (pair[1] - pair[0]) / width).collect();
    if let [only] = secant[..] {
        return vec![only, only];
    }
    let inner = width.windows(2).zip(secant.windows(2)).map(|(w, s)| {
        let (first, second) = (2.0 * w[1] + w[0], w[1] + 2.0 * w[0]);
        (first + second) / (first / s[0] + second / s[1])
    });
    let last = width.len() - 1;
    let start = end_slope(width[0], width[1], secant[0], secant[1]);
    let end = end_slope(width[last], width[last - 1], secant[last], secant[last - 1]);
    std::iter::once(start).chain(inner).chain(std::iter::once(end)).collect()
}

/// The slope at an end from its two nearest pieces, held to the end's own trend.
fn end_slope(near: f64, far: f64, near_secant: f64, far_secant: f64) -> f64 {
    let slope = ((2.0 * near + far) * near_secant - near * far_secant) / (near + far);
    slope.clamp(0.0, 3.0 * near_secant)
}
