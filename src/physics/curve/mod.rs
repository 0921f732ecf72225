//! Resistance of a temperature sensor against temperature, and back.
//!
//! A curve falls (NTC thermistors) or rises (platinum, silicon) everywhere
//! inside its domain; [`Curve::direction`] says which.

mod beta;
pub mod outlier;
mod platinum;
mod silicon;
mod steinhart_hart;
mod steinhart_hart_4;
mod table;

pub use beta::BetaCurve;
pub use platinum::{PLATINUM_DOMAIN, Platinum};
pub use silicon::SiliconPtc;
pub use steinhart_hart::SteinhartHart;
pub use steinhart_hart_4::SteinhartHart4;
pub use table::Table;

use std::fmt;

use crate::quantity::{Interval, Resistance, Temperature};

/// Temperatures between which the thermistor and silicon formulas are evaluated at all.
///
/// NTC thermistors for vehicles are made for −55 °C to about 300 °C (from
/// memory); a value outside is a misprint, not a sensor.
pub const FORMULA_DOMAIN: Interval<Temperature> =
    Interval { low: Temperature::from_celsius(-100.0), high: Temperature::from_celsius(350.0) };

/// Resistance against temperature; falls or rises everywhere inside its domain.
#[derive(Debug, Clone, PartialEq)]
pub enum Curve {
    /// Two-parameter formula of a thermistor.
    Beta(BetaCurve),
    /// Three-term formula of a thermistor.
    SteinhartHart(SteinhartHart),
    /// Four-term formula of a thermistor.
    SteinhartHart4(SteinhartHart4),
    /// Platinum resistance thermometer.
    Platinum(Platinum),
    /// Silicon sensor with a positive temperature coefficient.
    SiliconPtc(SiliconPtc),
    /// Points, interpolated.
    Table(Table),
}

/// Which way the resistance goes as the temperature rises.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Direction {
    /// Hotter is fewer ohms: negative temperature coefficient.
    Falling,
    /// Hotter is more ohms: positive temperature coefficient.
    Rising,
}

/// Why a curve, or a value of it, does not exist.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CurveError {
    /// The temperature, or the resistance, lies outside the curve.
    OutsideDomain,
    /// A resistance, B value or coefficient that no sensor has.
    NotPhysical,
    /// Fewer than two points.
    TooFewPoints,
    /// The resistance neither falls nor rises all the way.
    NotMonotonic,
}

impl fmt::Display for CurveError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::OutsideDomain => "outside the curve",
            Self::NotPhysical => "not the data of a sensor",
            Self::TooFewPoints => "fewer than two points",
            Self::NotMonotonic => "resistance neither falls nor rises all the way",
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
            Self::SteinhartHart4(curve) => curve.domain(),
            Self::Platinum(_) => PLATINUM_DOMAIN,
            Self::SiliconPtc(curve) => curve.domain(),
            Self::Table(table) => table.domain(),
        }
    }

    /// Which way the resistance goes as the temperature rises.
    #[must_use]
    pub fn direction(&self) -> Direction {
        match self {
            Self::Beta(_) | Self::SteinhartHart(_) | Self::SteinhartHart4(_) => Direction::Falling,
            Self::Platinum(_) | Self::SiliconPtc(_) => Direction::Rising,
            Self::Table(table) => table.direction(),
        }
    }

    /// Whether hotter is fewer ohms.
    #[must_use]
    pub fn falls(&self) -> bool {
        self.direction() == Direction::Falling
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
            Self::SteinhartHart4(curve) => curve.resistance(at),
            Self::Platinum(curve) => curve.resistance(at),
            Self::SiliconPtc(curve) => curve.resistance(at),
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
            Self::SteinhartHart4(curve) => curve.temperature(of)?,
            Self::Platinum(curve) => curve.temperature(of)?,
            Self::SiliconPtc(curve) => curve.temperature(of)?,
            Self::Table(table) => table.temperature(of)?,
        };
        self.inside(at)?;
        Ok(at)
    }

    /// The relative slope (1/R) dR/dT, per kelvin; −0.04 is −4 %/K. Below zero
    /// for a falling curve, above zero for a rising one.
    ///
    /// # Errors
    /// Outside [`domain`](Self::domain).
    pub fn slope(&self, at: Temperature) -> Result<f64, CurveError> {
        self.inside(at)?;
        Ok(match self {
            Self::Beta(curve) => curve.slope(at),
            Self::SteinhartHart(curve) => curve.slope(at)?,
            Self::SteinhartHart4(curve) => curve.slope(at),
            Self::Platinum(curve) => curve.slope(at),
            Self::SiliconPtc(curve) => curve.slope(at),
            Self::Table(table) => table.slope(at),
        })
    }

    fn inside(&self, at: Temperature) -> Result<(), CurveError> {
        if self.domain().contains(&at) { Ok(()) } else { Err(CurveError::OutsideDomain) }
    }
}
