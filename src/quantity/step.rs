//! From row to row of a table, counted on one scale of temperature.

use std::fmt;

use super::read::Quantity;
use super::temperature::Temperature;
use super::unit::{Dimension, Unit};

/// From row to row: so many degrees of a scale, whose multiples the rows are.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Step {
    degrees: f64,
    scale: Unit,
}

impl Step {
    /// So many degrees of a scale.
    pub(super) const fn of(degrees: f64, scale: Unit) -> Self {
        Self { degrees, scale }
    }

    /// The scale that it counts on.
    pub(super) fn scale(self) -> Unit {
        self.scale
    }

    /// So many kelvins, counted from 0 °C.
    #[must_use]
    pub const fn of_kelvins(kelvins: f64) -> Self {
        Self { degrees: kelvins, scale: Unit::Celsius }
    }

    /// So many degrees Fahrenheit, counted from 0 °F.
    #[must_use]
    pub const fn of_fahrenheit(degrees: f64) -> Self {
        Self { degrees, scale: Unit::Fahrenheit }
    }

    /// As many degrees of its scale.
    #[must_use]
    pub fn degrees(self) -> f64 {
        self.degrees
    }

    /// How many kelvins lie between two rows.
    #[must_use]
    pub fn kelvins(self) -> f64 {
        if self.scale == Unit::Fahrenheit { self.degrees / 1.8 } else { self.degrees }
    }

    /// So many steps from zero of its scale.
    #[must_use]
    pub fn multiple(self, count: f64) -> Temperature {
        on_scale(count * self.degrees, self.scale)
    }

    /// How many steps a temperature is from zero of its scale.
    #[must_use]
    pub fn count_of(self, at: Temperature) -> f64 {
        degrees(at, self.scale) / self.degrees
    }
}

impl fmt::Display for Step {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let unit = if self.scale == Unit::Fahrenheit { Unit::Fahrenheit } else { Unit::Kelvin };
        write!(f, "{} {}", self.degrees, unit.symbol())
    }
}

/// A step is a difference; `5 °F` needs no ±, since nothing else than that can be meant.
impl Quantity for Step {
    const MEASURES: Dimension = Dimension::TemperatureDifference;
    fn from_written(number: f64, unit: Unit, _: bool) -> Option<Self> {
        match unit {
            Unit::Kelvin | Unit::Celsius => Some(Self::of_kelvins(number)),
            Unit::Fahrenheit => Some(Self::of_fahrenheit(number)),
            _ => None,
        }
    }
}

/// A temperature on a scale.
#[must_use]
pub fn degrees(at: Temperature, scale: Unit) -> f64 {
    if scale == Unit::Fahrenheit { at.fahrenheit() } else { at.celsius() }
}

/// The temperature of so many degrees of a scale.
pub(super) fn on_scale(degrees: f64, scale: Unit) -> Temperature {
    Temperature::from_unit(degrees, scale).unwrap_or(Temperature::from_celsius(degrees))
}
