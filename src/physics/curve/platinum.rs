//! The platinum resistance thermometer and its exact inverse.

use super::CurveError;
use crate::quantity::{Interval, Resistance, Temperature};

/// A, B and C of the standard's equation: 1/°C, 1/°C², 1/°C⁴.
const A: f64 = 3.9083e-3;
const B: f64 = -5.775e-7;
const C: f64 = -4.183e-12;

/// Temperatures for which the standard's equation is given.
pub const PLATINUM_DOMAIN: Interval<Temperature> =
    Interval { low: Temperature::from_celsius(-200.0), high: Temperature::from_celsius(850.0) };

/// R(t) = R₀ (1 + A t + B t²), below 0 °C R₀ (1 + A t + B t² + C (t − 100 °C) t³).
///
/// # Symbols
/// R₀ resistance at 0 °C (Ω), t temperature (°C), A, B, C the standard's
/// coefficients. R₀ of 100 Ω is a Pt100, 1000 Ω a Pt1000.
///
/// # Range
/// −200 °C to 850 °C ([`PLATINUM_DOMAIN`]); rises everywhere.
///
/// # Source
/// IEC 60751:2008 and 2022 (Callendar–Van Dusen); worked values and a published
/// table in tests/reference/02a_pt100_iec60751.csv.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Platinum {
    at_zero: Resistance,
}

impl Platinum {
    /// The curve of an element with the given resistance at 0 °C.
    ///
    /// # Errors
    /// When the resistance is not above zero and finite, or so large or small
    /// that no number holds the curve.
    ///
    /// # Example
    /// ```
    /// use bayleaf::physics::curve::Platinum;
    /// use bayleaf::quantity::{Resistance, Temperature};
    /// let pt100 = Platinum::new(Resistance::from_ohms(100.0))?;
    /// let warm = pt100.resistance(Temperature::from_celsius(100.0));
    /// assert!((warm.ohms() - 138.5055).abs() < 1e-9);
    /// # Ok::<(), bayleaf::physics::curve::CurveError>(())
    /// ```
    pub fn new(at_zero: Resistance) -> Result<Self, CurveError> {
        // At the ends R is 0.185 and 3.905 times R₀: neither may leave what a number holds.
        let normal = |ohms: f64| ohms.is_normal() && ohms > 0.0;
        if normal(at_zero.ohms() * 0.1) && normal(at_zero.ohms() * 10.0) {
            Ok(Self { at_zero })
        } else {
            Err(CurveError::NotPhysical)
        }
    }

    /// The resistance at 0 °C.
    #[must_use]
    pub fn at_zero(&self) -> Resistance {
        self.at_zero
    }

    /// R(T).
    #[must_use]
    pub fn resistance(&self, at: Temperature) -> Resistance {
        Resistance::from_ohms(self.at_zero.ohms() * ratio(at.celsius()))
    }

    /// T(R): the closed form from 0 °C up; below, Newton's method from there.
    pub(super) fn temperature(&self, of: Resistance) -> Result<Temperature, CurveError> {
        let wanted = of.ohms() / self.at_zero.ohms();
        let (low, high) = (PLATINUM_DOMAIN.low.celsius(), PLATINUM_DOMAIN.high.celsius());
        if !(ratio(low)..=ratio(high)).contains(&wanted) {
            return Err(CurveError::OutsideDomain);
        }
        let excess = wanted - 1.0;
        // t = (−A + √(A² + 4B·excess))/2B without the difference of near equals.
        let mut celsius = 2.0 * excess / (A + libm::sqrt(A * A + 4.0 * B * excess));
        if celsius < 0.0 {
            // Starts at most 2.4 K off at −200 °C; each step squares the error.
            for _ in 0..4 {
                celsius -= (ratio(celsius) - wanted) / rise(celsius);
            }
        }
        Ok(Temperature::from_celsius(celsius.clamp(low, high)))
    }

    /// (1/R) dR/dT.
    pub(super) fn slope(&self, at: Temperature) -> f64 {
        rise(at.celsius()) / ratio(at.celsius())
    }
}

/// R/R₀ at t °C.
fn ratio(t: f64) -> f64 {
    let cold = if t < 0.0 { C * (t - 100.0) * t * t * t } else { 0.0 };
    1.0 + t * (A + B * t) + cold
}

/// d(R/R₀)/dt at t °C, in 1/K.
fn rise(t: f64) -> f64 {
    let cold = if t < 0.0 { C * t * t * (4.0 * t - 300.0) } else { 0.0 };
    A + 2.0 * B * t + cold
}
