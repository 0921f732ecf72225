//! The four-term Steinhart–Hart formula.

use super::{CurveError, FORMULA_DOMAIN};
use crate::quantity::{Interval, Resistance, Temperature};

/// Resistances between which the formula is asked at all, in Ω: thermistors are
/// made from 10 Ω to 2 MΩ at 25 °C (from memory), and change by 10⁴ either way.
const OHMS: (f64, f64) = (1e-2, 1e10);

/// The largest B value that the formula may have anywhere, in K: no thermistor is
/// steeper, and at a turning point of the cubic it would be infinite.
const STEEPEST: f64 = 20_000.0;

/// 1/T = a + b L + c L² + d L³ with L = ln(R/R₀).
///
/// # Symbols
/// T absolute temperature (K), R resistance (Ω), R₀ the resistance that the
/// coefficients belong to: 1 Ω for coefficients in ohms, the rated resistance
/// for those of R/R₂₅; a, b, c, d coefficients (1/K).
///
/// # Range
/// A cubic can turn, so the formula is used only in the widest stretch of
/// temperature inside [`FORMULA_DOMAIN`] in which R falls, with an effective B
/// value d L/d(1/T) from zero to 20 000 K, and R between 0.01 Ω and 10 GΩ:
/// [`domain`](Self::domain). The fourth term helps inside the fitted points and
/// can ruin what lies beyond (3.2 K in one case).
///
/// # Source
/// Form and worked values: tests/reference/01b_ntc_steinhart_hart.csv, set
/// `ratio4_10k`, and tests/reference/01e_ntc_sh_fits.csv, method `ls_invT_quad`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SteinhartHart4 {
    coefficients: [f64; 4],
    base: Resistance,
    domain: Interval<Temperature>,
    /// L at the hot and at the cold end of the domain.
    logs: (f64, f64),
}

impl SteinhartHart4 {
    /// A curve with the given coefficients, for ln(R/base).
    ///
    /// # Errors
    /// When a coefficient is not finite, `base` is not above zero, or there is no
    /// temperature at which the resistance falls.
    ///
    /// # Example
    /// ```
    /// use bayleaf::physics::curve::{Curve, SteinhartHart4};
    /// use bayleaf::quantity::{Resistance, Temperature};
    /// let printed = [3.3539438e-3, 2.5646095e-4, 2.5158166e-6, 1.0503069e-7];
    /// let curve = SteinhartHart4::new(printed, Resistance::from_ohms(10_000.0))?;
    /// let warm = Curve::SteinhartHart4(curve).resistance(Temperature::from_celsius(40.0))?;
    /// assert!((warm.ohms() - 5326.173_350_606).abs() < 1e-6);
    /// # Ok::<(), bayleaf::physics::curve::CurveError>(())
    /// ```
    pub fn new(coefficients: [f64; 4], base: Resistance) -> Result<Self, CurveError> {
        let sensible = coefficients.iter().all(|value| value.is_finite())
            && base.ohms() > 0.0
            && base.ohms().is_finite();
        if !sensible {
            return Err(CurveError::NotPhysical);
        }
        let log = |ohms: f64| libm::log(ohms) - libm::log(base.ohms());
        let whole = Interval { low: Temperature::from_celsius(0.0), high: Temperature::from_celsius(0.0) };
        let mut curve = Self { coefficients, base, domain: whole, logs: (log(OHMS.0), log(OHMS.1)) };
        let mut widest = 0.0;
        for piece in curve.falling_pieces() {
            let Some((domain, logs)) = curve.held(piece) else { continue };
            let width = domain.high.celsius() - domain.low.celsius();
            if width > widest {
                widest = width;
                (curve.domain, curve.logs) = (domain, logs);
            }
        }
        if widest > 0.0 { Ok(curve) } else { Err(CurveError::NotMonotonic) }
    }

    /// a, b, c and d.
    #[must_use]
    pub fn coefficients(&self) -> [f64; 4] {
        self.coefficients
    }

    /// R₀, the resistance that the coefficients belong to.
    #[must_use]
    pub fn base(&self) -> Resistance {
        self.base
    }

    /// The temperatures between which the formula is a thermistor's.
    #[must_use]
    pub fn domain(&self) -> Interval<Temperature> {
        self.domain
    }

    /// R(T), by Newton's method in L held inside a bracket.
    pub(super) fn resistance(&self, at: Temperature) -> Resistance {
        let log = self.solve(1.0 / at.kelvins(), self.logs);
        Resistance::from_ohms(self.base.ohms() * libm::exp(log))
    }

    /// T(R), the formula itself.
    pub(super) fn temperature(&self, of: Resistance) -> Result<Temperature, CurveError> {
        let log = libm::log(of.ohms() / self.base.ohms());
        if !(self.logs.0..=self.logs.1).contains(&log) {
            return Err(CurveError::OutsideDomain);
        }
        let celsius = Temperature::from_kelvins(1.0 / self.inverse(log)).celsius();
        Ok(Temperature::from_celsius(celsius.clamp(self.domain.low.celsius(), self.domain.high.celsius())))
    }

    /// (1/R) dR/dT = −1/(T² d(1/T)/dL).
    pub(super) fn slope(&self, at: Temperature) -> f64 {
        let kelvins = at.kelvins();
        -1.0 / (kelvins * kelvins * self.rise(self.solve(1.0 / kelvins, self.logs)))
    }

    /// 1/T at L.
    fn inverse(&self, log: f64) -> f64 {
        let [a, b, c, d] = self.coefficients;
        a + log * (b + log * (c + log * d))
    }

    /// d(1/T)/dL at L.
    fn rise(&self, log: f64) -> f64 {
        let [_, b, c, d] = self.coefficients;
        b + log * (2.0 * c + log * 3.0 * d)
    }

    /// The stretches of L in which 1/T rises at least as fast as the steepest B allows.
    fn falling_pieces(&self) -> Vec<(f64, f64)> {
        let [_, b, c, d] = self.coefficients;
        let (first, last) = self.logs;
        let mut cuts = vec![first, last];
        cuts.extend(roots(3.0 * d, 2.0 * c, b - 1.0 / STEEPEST).into_iter().filter(|root| root.is_finite()));
        cuts.retain(|cut| (first..=last).contains(cut));
        cuts.sort_by(f64::total_cmp);
        let rises = |pair: &&[f64]| {
            let middle = 0.5 * (pair[0] + pair[1]);
            pair[0] < pair[1] && self.rise(middle) >= 1.0 / STEEPEST
        };
        cuts.windows(2).filter(rises).map(|pair| (pair[0], pair[1])).collect()
    }

    /// The part of a stretch whose temperatures lie in the formulas' domain.
    fn held(&self, piece: (f64, f64)) -> Option<(Interval<Temperature>, (f64, f64))> {
        let (hot, cold) = (1.0 / FORMULA_DOMAIN.high.kelvins(), 1.0 / FORMULA_DOMAIN.low.kelvins());
        let (first, last) = (self.inverse(piece.0), self.inverse(piece.1));
        if !(first.is_finite() && last.is_finite() && first < cold && last > hot) {
            return None;
        }
        let log_of = |x: f64| self.solve(x, piece);
        let (low_log, high_temperature) =
            if first < hot { (log_of(hot), FORMULA_DOMAIN.high) } else { (piece.0, reciprocal(first)) };
        let (high_log, low_temperature) =
            if last > cold { (log_of(cold), FORMULA_DOMAIN.low) } else { (piece.1, reciprocal(last)) };
        Some((Interval { low: low_temperature, high: high_temperature }, (low_log, high_log)))
    }

    /// The L of a stretch at which 1/T is x.
    fn solve(&self, x: f64, (mut low, mut high): (f64, f64)) -> f64 {
        let mut log = 0.5 * (low + high);
        for _ in 0..80 {
            let error = self.inverse(log) - x;
            if error > 0.0 {
                high = log
            } else {
                low = log
            }
            let step = log - error / self.rise(log);
            let next = if step >= low && step <= high { step } else { 0.5 * (low + high) };
            if (next - log).abs() <= 2.0 * f64::EPSILON * log.abs() {
                return next;
            }
            log = next;
        }
        log
    }
}

fn reciprocal(inverse: f64) -> Temperature {
    Temperature::from_kelvins(1.0 / inverse)
}

/// The real roots of q x² + p x + r, without the difference of near equals.
fn roots(q: f64, p: f64, r: f64) -> Vec<f64> {
    let under_root = p * p - 4.0 * q * r;
    if under_root < 0.0 {
        return Vec::new();
    }
    let larger = -0.5 * (p + libm::copysign(libm::sqrt(under_root), p));
    vec![larger / q, r / larger]
}
