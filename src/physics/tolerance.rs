//! How far a good part may lie from its curve, at any temperature.

use super::Band;
use super::curve::{Curve, CurveError, Table};
use crate::quantity::{Ratio, Resistance, Temperature, TemperatureDifference};

/// The tolerance of a thermistor, as its documents state it.
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
    /// Columns of least and greatest resistance in the source's own table.
    Columns {
        /// The column of least resistance.
        low: Table,
        /// The column of greatest resistance.
        high: Table,
    },
}

/// The resistance of a part at one temperature: least, nominal, greatest.
///
/// For [`Tolerance::Rated`] the limits are the exact corners
/// R(T) (1 ± δR) (R(T)/R(T₀))^(± δB), with δR and δB the parts of resistance
/// and B value. For a beta curve that is R₀ (1 ± δR) exp[B (1 ± δB)(1/T − 1/T₀)];
/// for any other curve it is the same growth with the curve's own effective B
/// between T₀ and T. The corners are not symmetric, and the worst corner of B
/// changes sides at T₀.
///
/// # Errors
/// Where the curve, or a column, is not known at the temperature, or at a
/// temperature ± K away from it.
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
        Tolerance::Columns { low, high } => (low.resistance(at)?, high.resistance(at)?),
    };
    Ok(Band { low, nominal, high })
}

/// The resistances of a nominal part that is warmer, and colder, by a difference.
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
    Ok((curve.resistance(at.plus(difference))?, curve.resistance(at.minus(difference))?))
}
