//! The beta formula.

use super::{CurveError, FORMULA_DOMAIN};
use crate::quantity::{Beta, Resistance, Temperature};

/// R(T) = R₀ exp[B (1/T − 1/T₀)].
///
/// # Symbols
/// R₀ resistance at the rated temperature T₀ (Ω, K), B the thermistor's B
/// value (K), T absolute temperature (K).
///
/// # Range
/// Exact as a formula; as a description of a real part B drifts by 1 to 10 %
/// over a wide range (tests/reference/01c_ntc_beta_from_table.csv).
///
/// # Source
/// IEC 60539-1 defines R₀ and B; worked values in
/// tests/reference/01c_ntc_beta_tolerance.csv.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BetaCurve {
    rated: Resistance,
    at: Temperature,
    beta: Beta,
}

impl BetaCurve {
    /// A curve through `rated` ohms at the temperature `at`.
    ///
    /// # Errors
    /// When R₀ or B is not above zero, or `at` is not above absolute zero.
    ///
    /// # Example
    /// ```
    /// use bayleaf::physics::curve::BetaCurve;
    /// use bayleaf::quantity::{Beta, Resistance, Temperature};
    /// let at = Temperature::from_celsius(25.0);
    /// let curve = BetaCurve::new(Resistance::from_ohms(10_000.0), at, Beta::from_kelvins(3950.0))?;
    /// let cold = curve.resistance(Temperature::from_celsius(0.0));
    /// assert!((cold.ohms() - 33_620.603_721_4).abs() < 1e-4);
    /// # Ok::<(), bayleaf::physics::curve::CurveError>(())
    /// ```
    pub fn new(rated: Resistance, at: Temperature, beta: Beta) -> Result<Self, CurveError> {
        let all = [rated.ohms(), at.kelvins(), beta.kelvins()];
        if !all.iter().all(|value| value.is_finite() && *value > 0.0) {
            return Err(CurveError::NotPhysical);
        }
        let curve = Self { rated, at, beta };
        let ends = [FORMULA_DOMAIN.low, FORMULA_DOMAIN.high].map(|at| curve.resistance(at).ohms());
        if ends.iter().all(|ohms| ohms.is_finite() && *ohms > 0.0) {
            Ok(curve)
        } else {
            Err(CurveError::NotPhysical)
        }
    }

    /// R₀, T₀ and B.
    #[must_use]
    pub fn parameters(&self) -> (Resistance, Temperature, Beta) {
        (self.rated, self.at, self.beta)
    }

    /// R(T).
    #[must_use]
    pub fn resistance(&self, at: Temperature) -> Resistance {
        let exponent = self.beta.kelvins() * (1.0 / at.kelvins() - 1.0 / self.at.kelvins());
        Resistance::from_ohms(self.rated.ohms() * libm::exp(exponent))
    }

    /// T(R): 1/T = 1/T₀ + ln(R/R₀)/B.
    pub(super) fn temperature(&self, of: Resistance) -> Result<Temperature, CurveError> {
        let inverse =
            1.0 / self.at.kelvins() + libm::log(of.ohms() / self.rated.ohms()) / self.beta.kelvins();
        if inverse > 0.0 {
            Ok(Temperature::from_kelvins(1.0 / inverse))
        } else {
            Err(CurveError::OutsideDomain)
        }
    }

    /// (1/R) dR/dT = −B/T².
    pub(super) fn slope(&self, at: Temperature) -> f64 {
        -self.beta.kelvins() / (at.kelvins() * at.kelvins())
    }
}
