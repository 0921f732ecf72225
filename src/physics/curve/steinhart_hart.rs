//! The three-term Steinhart–Hart formula and its exact inverse.

use super::{CurveError, FORMULA_DOMAIN};
use crate::quantity::{Resistance, Temperature};

/// 1/T = a + b ln R + c (ln R)³.
///
/// # Symbols
/// T absolute temperature (K), R resistance in ohms (taken as a number, so the
/// coefficients belong to ohms), a, b, c coefficients (1/K).
///
/// # Range
/// A fit misses the part by 0.07 to 0.6 K over −40 °C to 125 °C, and by far
/// less between its own points (tests/reference/01e_ntc_sh_fits.csv). Here b
/// is above zero and c is zero or more, which makes R fall everywhere.
///
/// # Source
/// Steinhart and Hart, Deep-Sea Research 15 (1968) 497, title from memory;
/// worked values in tests/reference/01b_ntc_steinhart_hart.csv.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SteinhartHart {
    a: f64,
    b: f64,
    c: f64,
}

impl SteinhartHart {
    /// A curve with the given coefficients.
    ///
    /// # Errors
    /// When b is not above zero, c is below zero, or the curve does not give a
    /// finite resistance over [`FORMULA_DOMAIN`].
    pub fn new(a: f64, b: f64, c: f64) -> Result<Self, CurveError> {
        let curve = Self { a, b, c };
        let sensible = a.is_finite() && b.is_finite() && c.is_finite() && b > 0.0 && c >= 0.0;
        if !sensible {
            return Err(CurveError::NotPhysical);
        }
        curve.resistance(FORMULA_DOMAIN.low)?;
        curve.resistance(FORMULA_DOMAIN.high)?;
        Ok(curve)
    }

    /// a, b and c.
    #[must_use]
    pub fn coefficients(&self) -> (f64, f64, f64) {
        (self.a, self.b, self.c)
    }

    /// R(T), by the closed form of the cubic in ln R.
    ///
    /// With y = (1/T − a)/c and p = b/c, L³ + pL = y has the one real root
    /// L = ∛(√(p³/27 + y²/4) + y/2) − ∛(√(p³/27 + y²/4) − y/2); two Newton steps
    /// give back what the subtraction loses when c is very small.
    pub(super) fn resistance(&self, at: Temperature) -> Result<Resistance, CurveError> {
        let rest = 1.0 / at.kelvins() - self.a;
        let mut log = if self.c > 0.0 { self.root(rest) } else { rest / self.b };
        for _ in 0..2 {
            let error = self.b * log + self.c * log * log * log - rest;
            log -= error / (self.b + 3.0 * self.c * log * log);
        }
        let ohms = libm::exp(log);
        if ohms.is_finite() && ohms > 0.0 {
            Ok(Resistance::from_ohms(ohms))
        } else {
            Err(CurveError::NotPhysical)
        }
    }

    fn root(&self, rest: f64) -> f64 {
        let (y, p) = (rest / self.c, self.b / self.c);
        let x = libm::sqrt(p * p * p / 27.0 + y * y / 4.0);
        // Of the two cube roots one is a difference of near equals; their
        // product is p/3, so it follows from the other without loss.
        let large = libm::cbrt(x + y.abs() / 2.0);
        (large - p / 3.0 / large).copysign(y)
    }

    /// T(R), the formula itself.
    pub(super) fn temperature(&self, of: Resistance) -> Result<Temperature, CurveError> {
        let log = libm::log(of.ohms());
        let inverse = self.a + self.b * log + self.c * log * log * log;
        if inverse > 0.0 {
            Ok(Temperature::from_kelvins(1.0 / inverse))
        } else {
            Err(CurveError::OutsideDomain)
        }
    }

    /// (1/R) dR/dT = −1 / (T² (b + 3c (ln R)²)).
    pub(super) fn slope(&self, at: Temperature) -> Result<f64, CurveError> {
        let log = libm::log(self.resistance(at)?.ohms());
        let kelvins = at.kelvins();
        Ok(-1.0 / (kelvins * kelvins * (self.b + 3.0 * self.c * log * log)))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_vanishing_third_term_is_no_third_term() {
        let at = Temperature::from_celsius(31.0);
        let ohms = |c: f64| {
            let curve = SteinhartHart::new(1.4051e-3, 2.369e-4, c).expect("a thermistor's coefficients");
            curve.resistance(at).expect("inside the domain").ohms()
        };
        assert!((ohms(1e-26) / ohms(0.0) - 1.0).abs() < 1e-12);
    }
}
