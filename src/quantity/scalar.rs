//! Quantities on a linear scale: one newtype each over its SI unit.

use std::fmt;

use super::notation::marked;
use super::unit::{Dimension, Unit};

/// A quantity on a linear scale: read from a unit by a factor alone.
pub trait Scalar: Copy + PartialOrd + fmt::Debug + 'static {
    /// What it measures.
    const DIMENSION: Dimension;
    /// The units it is printed in, the largest first; the last one is the SI unit.
    const UNITS: &'static [Unit];
    /// Wraps a value in the SI unit.
    fn from_si(value: f64) -> Self;
    /// The value in the SI unit.
    fn si(self) -> f64;
}

/// Declares a newtype: its doc, name, constructor and getter with the SI unit, print units.
macro_rules! scalar {
    ($(#[$doc:meta])* $name:ident, $from:ident, $get:ident, $unit:literal, [$($print:ident),+]) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl $name {
            #[doc = concat!("From ", $unit, ".")]
            #[must_use]
            pub const fn $from(value: f64) -> Self {
                Self(value)
            }

            #[doc = concat!("In ", $unit, ".")]
            #[must_use]
            pub const fn $get(self) -> f64 {
                self.0
            }
        }

        impl Scalar for $name {
            const DIMENSION: Dimension = Dimension::$name;
            const UNITS: &'static [Unit] = &[$(Unit::$print),+];
            fn from_si(value: f64) -> Self {
                Self(value)
            }
            fn si(self) -> f64 {
                self.0
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write_exact(f, self.0, Self::UNITS)
            }
        }
    };
}

scalar!(
    /// An electrical resistance.
    Resistance, from_ohms, ohms, "ohms", [Megaohm, Kiloohm, Ohm]
);
scalar!(
    /// An electrical potential difference.
    Voltage, from_volts, volts, "volts", [Volt]
);
scalar!(
    /// An electrical current.
    Current, from_amperes, amperes, "amperes", [Ampere]
);
scalar!(
    /// A part of one: 3 % is 0.03.
    Ratio, new, part, "parts of one", [Percent]
);
scalar!(
    /// The B value of a thermistor.
    Beta, from_kelvins, kelvins, "kelvins", [Kelvin]
);
scalar!(
    /// A power.
    Power, from_watts, watts, "watts", [Kilowatt, Watt]
);
scalar!(
    /// The power that warms a part by one kelvin above the air around it.
    Dissipation, from_watts_per_kelvin, watts_per_kelvin, "watts per kelvin", [WattPerKelvin]
);
scalar!(
    /// A pressure; whether absolute or gauge stands beside it.
    Pressure, from_pascals, pascals, "pascals", [Megapascal, Kilopascal, Pascal]
);
scalar!(
    /// A length, or a height above sea level.
    Length, from_metres, metres, "metres", [Metre]
);
scalar!(
    /// An inductance.
    Inductance, from_henries, henries, "henries", [Henry]
);
scalar!(
    /// A frequency.
    Frequency, from_hertz, hertz, "hertz", [Kilohertz, Hertz]
);
scalar!(
    /// A length of time.
    Duration, from_seconds, seconds, "seconds", [Second]
);
scalar!(
    /// The power of light on each square metre of a surface.
    Irradiance, from_watts_per_square_metre, watts_per_square_metre, "watts per square metre",
    [WattPerSquareMetre]
);
scalar!(
    /// Energy for each kilogram of dry air.
    SpecificEnthalpy, from_joules_per_kilogram, joules_per_kilogram, "joules per kilogram",
    [KilojoulePerKilogram, JoulePerKilogram]
);

impl Length {
    /// From millimetres.
    #[must_use]
    pub fn from_millimetres(value: f64) -> Self {
        Self::from_metres(value / 1000.0)
    }

    /// In millimetres.
    #[must_use]
    pub fn millimetres(self) -> f64 {
        Unit::Millimetre.number_of(self.0)
    }
}

impl Pressure {
    /// In kilopascals.
    #[must_use]
    pub fn kilopascals(self) -> f64 {
        Unit::Kilopascal.number_of(self.0)
    }

    /// In bars.
    #[must_use]
    pub fn bars(self) -> f64 {
        Unit::Bar.number_of(self.0)
    }

    /// In pounds-force per square inch.
    #[must_use]
    pub fn pounds_per_square_inch(self) -> f64 {
        Unit::PoundPerSquareInch.number_of(self.0)
    }
}

/// Writes the shortest form that reads back as the same value: `4.7 kΩ`.
///
/// The largest unit that leaves no zero before the point, or the SI unit where
/// the shift loses a bit.
fn write_exact(f: &mut fmt::Formatter<'_>, value: f64, units: &[Unit]) -> fmt::Result {
    let si = units[units.len() - 1];
    // A percentage is the only SI value that is not printed as it stands.
    let fits = |unit: &&Unit| unit.number_of(value).abs() >= 1.0;
    let unit = *units.iter().find(fits).unwrap_or(&si);
    let shown = unit.number_of(value);
    if unit.to_si(shown).to_bits() == value.to_bits() {
        write!(f, "{} {}", marked(&shown.to_string()), unit.symbol())
    } else {
        write!(f, "{} {}", marked(&si.number_of(value).to_string()), si.symbol())
    }
}
