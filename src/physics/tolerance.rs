//! How far a good part may lie from its curve, at any temperature.

use super::Band;
use super::curve::{Curve, CurveError, Table};
use crate::quantity::{Interval, Ratio, Resistance, Temperature, TemperatureDifference};

/// The tolerance of a sensor, as its documents state it.
#[derive(Debug, Clone, PartialEq)]
pub enum Tolerance {
    /// Part of the resistance at one temperature, part of the B value elsewhere.
    Rated {
        /// ± part of the resistance at `at`.
        resistance: Ratio,
        /// ± part of the B value.
        beta: Ratio,
        /// The temperature that `resistance` holds at.
        at: Temperature,
    },
    /// The same distance in temperature everywhere.
    Temperature(TemperatureDifference),
    /// A distance in temperature that grows with |t|, by the standard's class.
    Platinum(PlatinumClass),
    /// Columns of least and greatest resistance in the source's own table.
    Columns {
        /// The column of least resistance.
        low: Table,
        /// The column of greatest resistance.
        high: Table,
    },
}

/// A tolerance class of platinum resistance thermometers.
///
/// # Source
/// IEC 60751:2008, table 3; tests/reference/02c_pt_tolerance.csv.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PlatinumClass {
    /// ± (0.1 + 0.0017 |t|) K.
    AA,
    /// ± (0.15 + 0.002 |t|) K.
    A,
    /// ± (0.3 + 0.005 |t|) K.
    B,
    /// ± (0.6 + 0.01 |t|) K.
    C,
}

impl PlatinumClass {
    /// How far from the true temperature a good part may read, either way.
    ///
    /// # Example
    /// ```
    /// use bayleaf::physics::tolerance::PlatinumClass;
    /// use bayleaf::quantity::Temperature;
    /// let off = PlatinumClass::B.difference(Temperature::from_celsius(100.0));
    /// assert!((off.kelvins() - 0.8).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn difference(self, at: Temperature) -> TemperatureDifference {
        let (fixed, growth) = match self {
            Self::AA => (0.1, 0.0017),
            Self::A => (0.15, 0.002),
            Self::B => (0.3, 0.005),
            Self::C => (0.6, 0.01),
        };
        TemperatureDifference::from_kelvins(fixed + growth * at.celsius().abs())
    }

    /// The temperatures that the class holds at.
    ///
    /// # Range
    /// Those of wire-wound elements; a thin-film element's data sheet may give
    /// less. From memory (IEC 60751:2008, table 3), no source was opened.
    #[must_use]
    pub fn range(self) -> Interval<Temperature> {
        let (low, high) = match self {
            Self::AA => (-50.0, 250.0),
            Self::A => (-100.0, 450.0),
            Self::B | Self::C => (-196.0, 600.0),
        };
        Interval { low: Temperature::from_celsius(low), high: Temperature::from_celsius(high) }
    }
}

/// The resistance of a part at one temperature: least, nominal, greatest.
///
/// The least is the low limit whether the curve falls or rises.
///
/// For [`Tolerance::Rated`] the limits are the exact corners
/// R(T) (1 ± δR) (R(T)/R(T₀))^(± δB), with δR and δB the parts of resistance
/// and B value. For a beta curve that is R₀ (1 ± δR) exp[B (1 ± δB)(1/T − 1/T₀)];
/// for any other curve it is the same growth with the curve's own effective B
/// between T₀ and T. The corners are not symmetric, and the worst corner of B
/// changes sides at T₀. Where the smooth curve through a column would cross the
/// nominal one between two rows, the limit is the nominal value.
///
/// # Errors
/// Where the curve, or a column, is not known at the temperature, or at a
/// temperature ± K away from it; outside the range of a platinum class.
///
/// # Source
/// tests/reference/01c_ntc_beta_tolerance.csv; the first-order form is in
/// component makers' notes on standardized R/T characteristics
/// (tests/reference/01d_ntc_worked_examples.csv, row tolB_1009).
pub fn band(curve: &Curve, tolerance: &Tolerance, at: Temperature) -> Result<Band<Resistance>, CurveError> {
    let nominal = curve.resistance(at)?;
    let (low, high) = match tolerance {
        Tolerance::Rated { resistance, beta, at: rated } => {
            let growth = libm::log(nominal.ohms() / curve.resistance(*rated)?.ohms()).abs();
            let corner = |sign: f64| {
                let part = 1.0 + sign * resistance.part();
                Resistance::from_ohms(nominal.ohms() * part * libm::exp(sign * beta.part() * growth))
            };
            (corner(-1.0), corner(1.0))
        }
        Tolerance::Temperature(difference) => service_limits(curve, *difference, at)?,
        Tolerance::Platinum(class) => {
            if !class.range().contains(&at) {
                return Err(CurveError::OutsideDomain);
            }
            service_limits(curve, class.difference(at), at)?
        }
        Tolerance::Columns { low, high } => {
            let least = |a: Resistance, b: Resistance| if a < b { a } else { b };
            let most = |a: Resistance, b: Resistance| if a > b { a } else { b };
            (least(low.resistance(at)?, nominal), most(high.resistance(at)?, nominal))
        }
    };
    Ok(Band { low, nominal, high })
}

/// The resistances of a nominal part that is colder and warmer by a difference,
/// the smaller one first.
///
/// This is the service limit: a reading between them cannot explain a complaint
/// of a temperature that is wrong by more than `difference`.
///
/// # Errors
/// Where the curve is not known so far from `at`.
pub fn service_limits(
    curve: &Curve,
    difference: TemperatureDifference,
    at: Temperature,
) -> Result<(Resistance, Resistance), CurveError> {
    let warmer = curve.resistance(at.plus(difference))?;
    let colder = curve.resistance(at.minus(difference))?;
    Ok(if curve.falls() { (warmer, colder) } else { (colder, warmer) })
}
