//! The silicon PTC sensor: a quadratic around its rated temperature.

use super::{CurveError, FORMULA_DOMAIN};
use crate::quantity::{Interval, Resistance, Temperature};

/// The part of the rated slope, and of the rated resistance, that must be left
/// at the ends of the domain: where a parabola turns, ohms tell no temperature.
const LEFT: f64 = 0.1;

/// The least slope at the rated temperature, in 1/K. Silicon has 7 to 8 × 10⁻³
/// (tests/reference/02f_silicon_ptc_quadratic.csv); below a thousandth of that
/// it is no sensor.
const FLATTEST: f64 = 1e-5;

/// R(T) = R₀ [1 + a (T − T₀) + b (T − T₀)²].
///
/// # Symbols
/// R₀ resistance at the rated temperature T₀ (Ω, °C), a (1/K), b (1/K²).
///
/// # Range
/// [`FORMULA_DOMAIN`], cut to where the resistance is at least a tenth of R₀ and
/// the slope at least a tenth of that at T₀. As a description of a real part the
/// quadratic holds to 1 % from −40 °C to about 110 °C; above that real parts
/// flatten and the quadratic does not (tests/reference/02d_kty_published.csv).
///
/// # Source
/// Controller manual TEC-03-50, section 5.4, as quoted in
/// tests/reference/02f_silicon_ptc_quadratic.csv.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SiliconPtc {
    rated: Resistance,
    at: Temperature,
    a: f64,
    b: f64,
    domain: Interval<Temperature>,
}

impl SiliconPtc {
    /// A curve through `rated` ohms at `at`, with a in 1/K and b in 1/K².
    ///
    /// # Errors
    /// When R₀ is not above zero, a is less than 10⁻⁵ 1/K, b is not finite, or T₀
    /// lies outside [`FORMULA_DOMAIN`].
    ///
    /// # Example
    /// ```
    /// use bayleaf::physics::curve::SiliconPtc;
    /// use bayleaf::quantity::{Resistance, Temperature};
    /// let at = Temperature::from_celsius(25.0);
    /// let curve = SiliconPtc::new(Resistance::from_ohms(1000.0), at, 7.88e-3, 1.937e-5)?;
    /// let hot = curve.resistance(Temperature::from_celsius(100.0));
    /// assert!((hot.ohms() - 1699.95625).abs() < 1e-6);
    /// # Ok::<(), bayleaf::physics::curve::CurveError>(())
    /// ```
    pub fn new(rated: Resistance, at: Temperature, a: f64, b: f64) -> Result<Self, CurveError> {
        let ohms = rated.ohms();
        let sensible = ohms * LEFT > f64::MIN_POSITIVE && a.is_finite() && a >= FLATTEST && b.is_finite();
        if !sensible || !FORMULA_DOMAIN.contains(&at) {
            return Err(CurveError::NotPhysical);
        }
        let mut low = FORMULA_DOMAIN.low.celsius() - at.celsius();
        let mut high = FORMULA_DOMAIN.high.celsius() - at.celsius();
        // a + 2bx = LEFT·a
        let turn = (LEFT - 1.0) * a / (2.0 * b);
        if b > 0.0 {
            low = low.max(turn);
        } else if b < 0.0 {
            high = high.min(turn);
        }
        // 1 + ax + bx² = LEFT, the root on the rising side.
        let under_root = a * a - 4.0 * b * (1.0 - LEFT);
        if under_root >= 0.0 {
            low = low.max(-2.0 * (1.0 - LEFT) / (a + libm::sqrt(under_root)));
        }
        let end = |x: f64| Temperature::from_celsius(at.celsius() + x);
        let domain = Interval { low: end(low), high: end(high) };
        let curve = Self { rated, at, a, b, domain };
        let hottest = curve.resistance(domain.high).ohms();
        let usable = domain.low < domain.high && domain.contains(&at) && hottest.is_finite();
        if usable { Ok(curve) } else { Err(CurveError::NotPhysical) }
    }

    /// R₀ and T₀.
    #[must_use]
    pub fn rated(&self) -> (Resistance, Temperature) {
        (self.rated, self.at)
    }

    /// a in 1/K and b in 1/K².
    #[must_use]
    pub fn coefficients(&self) -> (f64, f64) {
        (self.a, self.b)
    }

    /// The temperatures between which the quadratic rises.
    #[must_use]
    pub fn domain(&self) -> Interval<Temperature> {
        self.domain
    }

    /// R(T).
    #[must_use]
    pub fn resistance(&self, at: Temperature) -> Resistance {
        Resistance::from_ohms(self.rated.ohms() * self.ratio(self.above_rated(at)))
    }

    /// T(R): T = T₀ + [√(a² + 4b (R/R₀ − 1)) − a]/2b.
    pub(super) fn temperature(&self, of: Resistance) -> Result<Temperature, CurveError> {
        let ends = [self.domain.low, self.domain.high].map(|end| self.resistance(end).ohms());
        if !(ends[0]..=ends[1]).contains(&of.ohms()) {
            return Err(CurveError::OutsideDomain);
        }
        let excess = of.ohms() / self.rated.ohms() - 1.0;
        // The same without the difference of near equals; holds for b = 0 too.
        let root = libm::sqrt((self.a * self.a + 4.0 * self.b * excess).max(0.0));
        let celsius = self.at.celsius() + 2.0 * excess / (self.a + root);
        Ok(Temperature::from_celsius(celsius.clamp(self.domain.low.celsius(), self.domain.high.celsius())))
    }

    /// (1/R) dR/dT.
    pub(super) fn slope(&self, at: Temperature) -> f64 {
        let x = self.above_rated(at);
        (self.a + 2.0 * self.b * x) / self.ratio(x)
    }

    /// Kelvins above the rated temperature.
    fn above_rated(&self, at: Temperature) -> f64 {
        at.celsius() - self.at.celsius()
    }

    fn ratio(&self, x: f64) -> f64 {
        1.0 + x * (self.a + self.b * x)
    }
}
