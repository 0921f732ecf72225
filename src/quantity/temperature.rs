//! Temperature on a scale, and the difference of two temperatures.

use std::fmt;

use super::notation::marked;
use super::unit::Unit;

/// 0 °C in kelvin, exact by definition of the scale.
const ZERO_CELSIUS: f64 = 273.15;

/// A point on the temperature scale, kept in degrees Celsius.
///
/// Celsius, not kelvin, is the inner scale because cards are printed at whole
/// degrees: 0.1 °C as kelvin and back would not be 0.1 °C in binary.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Temperature(f64);

impl Temperature {
    /// From degrees Celsius.
    #[must_use]
    pub const fn from_celsius(degrees: f64) -> Self {
        Self(degrees)
    }

    /// From degrees Fahrenheit: t/°C = (t/°F − 32) / 1.8.
    #[must_use]
    pub fn from_fahrenheit(degrees: f64) -> Self {
        Self((degrees - 32.0) / 1.8)
    }

    /// From kelvins.
    #[must_use]
    pub fn from_kelvins(kelvins: f64) -> Self {
        Self(kelvins - ZERO_CELSIUS)
    }

    /// In degrees Celsius.
    #[must_use]
    pub const fn celsius(self) -> f64 {
        self.0
    }

    /// In degrees Fahrenheit: t/°F = 1.8 t/°C + 32.
    ///
    /// # Example
    /// ```
    /// use bayleaf::quantity::Temperature;
    /// assert_eq!(Temperature::from_celsius(31.0).fahrenheit(), 87.8);
    /// ```
    #[must_use]
    pub fn fahrenheit(self) -> f64 {
        // Times 9 over 5 rounds once less than times 1.8 for whole degrees.
        self.0 * 9.0 / 5.0 + 32.0
    }

    /// In kelvins.
    #[must_use]
    pub fn kelvins(self) -> f64 {
        self.0 + ZERO_CELSIUS
    }

    /// This temperature moved by a difference.
    #[must_use]
    pub fn plus(self, difference: TemperatureDifference) -> Self {
        Self(self.0 + difference.kelvins())
    }

    /// This temperature moved down by a difference.
    #[must_use]
    pub fn minus(self, difference: TemperatureDifference) -> Self {
        Self(self.0 - difference.kelvins())
    }

    /// From a number in a scale unit; `None` for any other unit.
    pub(super) fn from_unit(number: f64, unit: Unit) -> Option<Self> {
        match unit {
            Unit::Celsius => Some(Self::from_celsius(number)),
            Unit::Fahrenheit => Some(Self::from_fahrenheit(number)),
            Unit::Kelvin => Some(Self::from_kelvins(number)),
            _ => None,
        }
    }
}

impl Temperature {
    /// To a hundredth of a degree, as messages show what was computed or converted.
    ///
    /// # Example
    /// ```
    /// use bayleaf::quantity::Temperature;
    /// let zero = Temperature::from_fahrenheit(0.0).to_hundredths();
    /// assert_eq!(zero.to_string(), "-17.78 °C");
    /// ```
    #[must_use]
    pub fn to_hundredths(self) -> Self {
        // Adding nothing makes a zero of a minus zero.
        Self((self.0 * 100.0).round() / 100.0 + 0.0)
    }
}

impl fmt::Display for Temperature {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} °C", marked(&self.0.to_string()))
    }
}

/// The distance between two temperatures, in kelvins.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct TemperatureDifference(f64);

impl TemperatureDifference {
    /// From kelvins, which equal degrees Celsius here.
    #[must_use]
    pub const fn from_kelvins(kelvins: f64) -> Self {
        Self(kelvins)
    }

    /// In kelvins.
    #[must_use]
    pub const fn kelvins(self) -> f64 {
        self.0
    }

    /// In Fahrenheit degrees: 1 K is 1.8 of them, with no offset.
    #[must_use]
    pub fn fahrenheit_degrees(self) -> f64 {
        self.0 * 9.0 / 5.0
    }

    /// From a number of degrees of a scale; `None` for any other unit.
    pub(super) fn from_unit(number: f64, unit: Unit) -> Option<Self> {
        match unit {
            Unit::Celsius | Unit::Kelvin => Some(Self(number)),
            Unit::Fahrenheit => Some(Self(number / 1.8)),
            _ => None,
        }
    }
}

impl fmt::Display for TemperatureDifference {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} K", marked(&self.0.to_string()))
    }
}
