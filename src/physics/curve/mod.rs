//! Resistance of an NTC thermistor against temperature, and back.

mod beta;
mod steinhart_hart;
mod table;

pub use beta::BetaCurve;
pub use steinhart_hart::SteinhartHart;
pub use table::Table;

use std::fmt;

use crate::quantity::{Interval, Resistance, Temperature};

/// Temperatures between which the formulas are evaluated at all.
///
/// NTC thermistors for vehicles are made for −55 °C to about 300 °C (from
/// memory); a value outside is a misprint, not a sensor.
pub const FORMULA_DOMAIN: Interval<Temperature> =
    Interval { low: Temperature::from_celsius(-100.0), high: Temperature::from_celsius(350.0) };

/// Resistance against temperature; falls everywhere inside its domain.
#[derive(Debug, Clone, PartialEq)]
pub enum Curve {
    /// Two-parameter formula.
    Beta(BetaCurve),
    /// Three-term formula.
    SteinhartHart(SteinhartHart),
    /// Points, interpolated.
    Table(Table),
}

/// Why a curve, or a value of it, does not exist.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CurveError {
    /// The temperature, or the resistance, lies outside the curve.
    OutsideDomain,
    /// A resistance, B value or coefficient that no thermistor has.
    NotPhysical,
    /// Fewer than two points.
    TooFewPoints,
    /// The resistance does not fall from each point to the next hotter one.
    NotFalling,
}

impl fmt::Display for CurveError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::OutsideDomain => "outside the curve",
            Self::NotPhysical => "not the data of a thermistor",
            Self::TooFewPoints => "fewer than two points",
            Self::NotFalling => "resistance does not fall",
        })
    }
}

impl std::error::Error for CurveError {}

impl Curve {
    /// The temperatures between which the curve is known.
    #[must_use]
    pub fn domain(&self) -> Interval<Temperature> {
        match self {
            Self::Beta(_) | Self::SteinhartHart(_) => FORMULA_DOMAIN,
            Self::Table(table) => table.domain(),
        }
    }

    /// R(T).
    ///
    /// # Errors
    /// Outside [`domain`](Self::domain): a curve is never extrapolated.
    pub fn resistance(&self, at: Temperature) -> Result<Resistance, CurveError> {
        self.inside(at)?;
        Ok(match self {
            Self::Beta(curve) => curve.resistance(at),
            Self::SteinhartHart(curve) => curve.resistance(at)?,
            Self::Table(table) => table.resistance(at)?,
        })
    }

    /// T(R), the inverse of [`resistance`](Self::resistance).
    ///
    /// # Errors
    /// When the temperature would lie outside [`domain`](Self::domain).
    pub fn temperature(&self, of: Resistance) -> Result<Temperature, CurveError> {
        let positive = of.ohms() > 0.0 && of.ohms().is_finite();
        if !positive {
            return Err(CurveError::OutsideDomain);
        }
        let at = match self {
            Self::Beta(curve) => curve.temperature(of)?,
            Self::SteinhartHart(curve) => curve.temperature(of)?,
            Self::Table(table) => table.temperature(of)?,
        };
        self.inside(at)?;
        Ok(at)
    }

    /// The relative slope (1/R) dR/dT, per kelvin; −0.04 is −4 %/K.
    ///
    /// # Errors
    /// Outside [`domain`](Self::domain).
    pub fn slope(&self, at: Temperature) -> Result<f64, CurveError> {
        self.inside(at)?;
        Ok(match self {
            Self::Beta(curve) => curve.slope(at),
            Self::SteinhartHart(curve) => curve.slope(at)?,
            Self::Table(table) => table.slope(at),
        })
    }

    fn inside(&self, at: Temperature) -> Result<(), CurveError> {
        if self.domain().contains(&at) { Ok(()) } else { Err(CurveError::OutsideDomain) }
    }
}
