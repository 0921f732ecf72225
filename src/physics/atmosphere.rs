//! The pressure of the air at a site, and what a gauge shows against it.

use std::fmt;

use crate::quantity::{Interval, Length, Pressure};

/// The standard atmosphere at sea level.
///
/// # Source
/// ISO 2533, and ASHRAE Handbook Fundamentals 2017, chapter 1, table 1
/// (tests/reference/06b_ashrae_published_points.csv).
pub const SEA_LEVEL: Pressure = Pressure::from_pascals(101_325.0);

/// How far the air pressure of a day may lie from the standard atmosphere: ± 2 kPa.
///
/// Common practice, no source. Where a barometer is read, its limit of error
/// takes this place.
pub const WEATHER: Pressure = Pressure::from_pascals(2_000.0);

/// Elevations between which [`Site::at`] holds.
pub const ELEVATIONS: Interval<Length> =
    Interval { low: Length::from_metres(-5_000.0), high: Length::from_metres(11_000.0) };

/// Why there is no air pressure, or no absolute pressure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AtmosphereError {
    /// The elevation lies outside [`ELEVATIONS`].
    OutsideElevations,
    /// An air pressure that no place on the ground has.
    NoAirPressure,
    /// A gauge pressure below a perfect vacuum.
    BelowVacuum,
}

impl fmt::Display for AtmosphereError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::OutsideElevations => "outside the elevations of the standard atmosphere",
            Self::NoAirPressure => "not an air pressure on the ground",
            Self::BelowVacuum => "below a perfect vacuum",
        })
    }
}

impl std::error::Error for AtmosphereError {}

/// A place with its air pressure; there is no place without one, and none by default.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Site {
    pressure: Pressure,
}

impl Site {
    /// The standard atmosphere at an elevation above sea level, Z in metres:
    /// p = 101325 (1 − 2.25577 × 10⁻⁵ Z)^5.2559 in pascals.
    ///
    /// # Range
    /// −5000 m to 11000 m, as the source states.
    ///
    /// # Errors
    /// [`AtmosphereError::OutsideElevations`] outside that range.
    ///
    /// # Source
    /// ASHRAE Handbook Fundamentals 2017, chapter 1, equation 3; constants from
    /// memory, checked in tests/reference/06a, 06b and 05c.
    ///
    /// # Example
    /// 1600 m, where a gauge shows 18 kPa more than at sea level.
    /// ```
    /// use bayleaf::physics::atmosphere::{SEA_LEVEL, Site};
    /// use bayleaf::quantity::Length;
    /// let site = Site::at(Length::from_metres(1600.0))?;
    /// assert!((SEA_LEVEL.pascals() - site.pressure().pascals() - 17_800.0).abs() < 100.0);
    /// # Ok::<(), bayleaf::physics::atmosphere::AtmosphereError>(())
    /// ```
    pub fn at(elevation: Length) -> Result<Self, AtmosphereError> {
        if !ELEVATIONS.contains(&elevation) {
            return Err(AtmosphereError::OutsideElevations);
        }
        let part = libm::pow(1.0 - 2.25577e-5 * elevation.metres(), 5.2559);
        Ok(Self { pressure: Pressure::from_pascals(SEA_LEVEL.pascals() * part) })
    }

    /// A place whose air pressure was read from a barometer, not reduced to sea level.
    ///
    /// # Errors
    /// [`AtmosphereError::NoAirPressure`] outside 22 kPa to 180 kPa, about what
    /// [`ELEVATIONS`] span.
    pub fn measured(pressure: Pressure) -> Result<Self, AtmosphereError> {
        let ground = Interval { low: Pressure::from_pascals(22e3), high: Pressure::from_pascals(180e3) };
        if ground.contains(&pressure) { Ok(Self { pressure }) } else { Err(AtmosphereError::NoAirPressure) }
    }

    /// The air pressure, absolute.
    #[must_use]
    pub fn pressure(self) -> Pressure {
        self.pressure
    }

    /// What a gauge shows at an absolute pressure; below zero it is a vacuum.
    #[must_use]
    pub fn gauge(self, absolute: Pressure) -> Pressure {
        Pressure::from_pascals(absolute.pascals() - self.pressure.pascals())
    }

    /// The absolute pressure behind a gauge's reading.
    ///
    /// # Errors
    /// [`AtmosphereError::BelowVacuum`] where nothing, or less, would be left.
    pub fn absolute(self, gauge: Pressure) -> Result<Pressure, AtmosphereError> {
        let absolute = gauge.pascals() + self.pressure.pascals();
        if absolute > 0.0 && absolute.is_finite() {
            Ok(Pressure::from_pascals(absolute))
        } else {
            Err(AtmosphereError::BelowVacuum)
        }
    }
}
