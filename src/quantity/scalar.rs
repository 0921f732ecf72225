//! Resistance, voltage, ratio and B value: one newtype each over its SI unit.

use std::fmt;

use super::unit::{Dimension, Unit};

/// A quantity on a linear scale: read from a unit by a factor alone.
pub trait Scalar: Copy + PartialOrd + fmt::Debug + 'static {
    /// What it measures.
    const DIMENSION: Dimension;
    /// Wraps a value in the SI unit.
    fn from_si(value: f64) -> Self;
    /// The value in the SI unit.
    fn si(self) -> f64;
}

/// An electrical resistance, in ohms.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Resistance(f64);

/// An electrical potential difference, in volts.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Voltage(f64);

/// A part of one: 3 % is 0.03.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Ratio(f64);

/// The B value of a thermistor, in kelvin.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Beta(f64);

impl Resistance {
    /// From ohms.
    #[must_use]
    pub const fn from_ohms(ohms: f64) -> Self {
        Self(ohms)
    }

    /// In ohms.
    #[must_use]
    pub const fn ohms(self) -> f64 {
        self.0
    }
}

impl Voltage {
    /// From volts.
    #[must_use]
    pub const fn from_volts(volts: f64) -> Self {
        Self(volts)
    }

    /// In volts.
    #[must_use]
    pub const fn volts(self) -> f64 {
        self.0
    }
}

impl Ratio {
    /// From a plain part of one.
    #[must_use]
    pub const fn new(part: f64) -> Self {
        Self(part)
    }

    /// As a plain part of one.
    #[must_use]
    pub const fn part(self) -> f64 {
        self.0
    }
}

impl Beta {
    /// From kelvins.
    #[must_use]
    pub const fn from_kelvins(kelvins: f64) -> Self {
        Self(kelvins)
    }

    /// In kelvins.
    #[must_use]
    pub const fn kelvins(self) -> f64 {
        self.0
    }
}

impl Scalar for Resistance {
    const DIMENSION: Dimension = Dimension::Resistance;
    fn from_si(value: f64) -> Self {
        Self(value)
    }
    fn si(self) -> f64 {
        self.0
    }
}

impl Scalar for Voltage {
    const DIMENSION: Dimension = Dimension::Voltage;
    fn from_si(value: f64) -> Self {
        Self(value)
    }
    fn si(self) -> f64 {
        self.0
    }
}

impl Scalar for Ratio {
    const DIMENSION: Dimension = Dimension::Ratio;
    fn from_si(value: f64) -> Self {
        Self(value)
    }
    fn si(self) -> f64 {
        self.0
    }
}

impl Scalar for Beta {
    const DIMENSION: Dimension = Dimension::Beta;
    fn from_si(value: f64) -> Self {
        Self(value)
    }
    fn si(self) -> f64 {
        self.0
    }
}

impl fmt::Display for Resistance {
    /// Writes the shortest form that reads back as the same value: `4.7 kΩ`.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let unit = match self.0.abs() {
            r if r >= 1e6 => Unit::Megaohm,
            r if r >= 1e3 => Unit::Kiloohm,
            _ => Unit::Ohm,
        };
        write_exact(f, self.0, unit, Unit::Ohm)
    }
}

impl fmt::Display for Voltage {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write_exact(f, self.0, Unit::Volt, Unit::Volt)
    }
}

impl fmt::Display for Ratio {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} %", shifted(self.0, 2))
    }
}

impl fmt::Display for Beta {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} K", self.0)
    }
}

/// Writes `value` in `unit`, or in `base` where the shift loses a bit.
fn write_exact(f: &mut fmt::Formatter<'_>, value: f64, unit: Unit, base: Unit) -> fmt::Result {
    let text = shifted(value, -unit.exponent());
    let back = text.parse::<f64>().map(|number| unshifted(number, unit.exponent()));
    if back.is_ok_and(|back| back.to_bits() == value.to_bits()) {
        write!(f, "{text} {}", unit.symbol())
    } else {
        write!(f, "{value} {}", base.symbol())
    }
}

/// `value` times ten to `exponent`, as the shortest decimal.
fn shifted(value: f64, exponent: i32) -> String {
    unshifted(value, exponent).to_string()
}

/// `number` times ten to `exponent`, with one rounding.
///
/// The point moves in the shortest decimal, which is what was written: 870.6 %
/// is 8.706 and 8.706 is 870.6 %, where 8.706 × 100 would be 870.5999999999999.
pub(super) fn unshifted(number: f64, exponent: i32) -> f64 {
    format!("{number}e{exponent}").parse().unwrap_or(number)
}
