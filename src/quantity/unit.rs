//! The units people write, and what each of them measures.

use super::scalar::Scalar;

/// What a unit measures.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Dimension {
    /// A point on a temperature scale.
    Temperature,
    /// The distance between two temperatures.
    TemperatureDifference,
    /// An electrical resistance.
    Resistance,
    /// An electrical potential difference.
    Voltage,
    /// An electrical current.
    Current,
    /// A part of something: percent.
    Ratio,
    /// The B value of a thermistor, a temperature-like constant in kelvin.
    Beta,
    /// A power.
    Power,
    /// Power that a part gives off for each kelvin it is warmer than the air.
    Dissipation,
    /// A pressure, or a difference of two.
    Pressure,
    /// A length, or a height above sea level.
    Length,
    /// An inductance.
    Inductance,
    /// A frequency.
    Frequency,
    /// A length of time.
    Duration,
    /// The power of light on a surface.
    Irradiance,
    /// Energy for each kilogram of dry air.
    SpecificEnthalpy,
    /// The size of a wire's conductor.
    WireSize,
}

impl Dimension {
    /// The word table's id for this dimension.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::Temperature => "dimension-temperature",
            Self::TemperatureDifference => "dimension-temperature-difference",
            Self::Resistance => "dimension-resistance",
            Self::Voltage => "dimension-voltage",
            Self::Current => "dimension-current",
            Self::Ratio => "dimension-ratio",
            Self::Beta => "dimension-beta",
            Self::Power => "dimension-power",
            Self::Dissipation => "dimension-dissipation",
            Self::Pressure => "dimension-pressure",
            Self::Length => "dimension-length",
            Self::Inductance => "dimension-inductance",
            Self::Frequency => "dimension-frequency",
            Self::Duration => "dimension-duration",
            Self::Irradiance => "dimension-irradiance",
            Self::SpecificEnthalpy => "dimension-specific-enthalpy",
            Self::WireSize => "dimension-wire-size",
        }
    }

    /// Units to offer when none, or a wrong one, was written.
    #[must_use]
    pub fn examples(self) -> &'static str {
        match self {
            Self::Temperature => "`25 °C`, `77 °F`",
            Self::TemperatureDifference => "`2.5 K`, `± 4.5 °F`",
            Self::Resistance => "`2.2 kΩ`, `470 Ω`",
            Self::Voltage => "`5.00 V`, `20 mV`",
            Self::Current => "`0.6 A`, `350 mA`",
            Self::Ratio => "`3 %`",
            Self::Beta => "`3500 K`",
            Self::Power => "`55 W`",
            Self::Dissipation => "`1.5 mW/K`",
            Self::Pressure => "`300 kPa`, `21 bar`, `45 psi`",
            Self::Length => "`4 m`, `250 mm`, `5300 ft`",
            Self::Inductance => "`25 mH`",
            Self::Frequency => "`400 Hz`, `800 r/min`",
            Self::Duration => "`12 s`, `5 min`",
            Self::Irradiance => "`1000 W/m²`",
            Self::SpecificEnthalpy => "`30 kJ/kg`",
            Self::WireSize => "`0.5 mm²`, `20 AWG`",
        }
    }
}

/// A unit as written.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd)]
#[expect(missing_docs, reason = "each is its own name; the table below spells it")]
pub enum Unit {
    Celsius,
    Fahrenheit,
    Kelvin,
    Milliohm,
    Ohm,
    Kiloohm,
    Megaohm,
    Microvolt,
    Millivolt,
    Volt,
    Microampere,
    Milliampere,
    Ampere,
    Percent,
    Milliwatt,
    Watt,
    Kilowatt,
    MilliwattPerKelvin,
    WattPerKelvin,
    Pascal,
    Hectopascal,
    Kilopascal,
    Megapascal,
    Millibar,
    Bar,
    PoundPerSquareInch,
    Millimetre,
    Metre,
    Kilometre,
    Foot,
    Millihenry,
    Henry,
    Hertz,
    Kilohertz,
    RevolutionPerMinute,
    Millisecond,
    Second,
    Minute,
    Hour,
    WattPerSquareMetre,
    JoulePerKilogram,
    KilojoulePerKilogram,
    SquareMillimetre,
    Gauge,
}

/// From a unit to the SI unit of its dimension.
#[derive(Debug, Clone, Copy, PartialEq)]
enum Scale {
    /// A power of ten, by which the point moves in the decimal as written.
    Ten(i32),
    /// A factor.
    Times(f64),
}

/// What is known of a unit; the first spelling is the one that is printed.
type Row = (Unit, Dimension, Scale, &'static [&'static str]);

/// Every unit.
///
/// # Source
/// Factors: one pound-force per square inch from 0.45359237 kg, 9.80665 m/s² and
/// 0.0254 m, one foot as 0.3048 m, all exact by definition; the rest are SI prefixes.
const UNITS: &[Row] = &[
    (Unit::Celsius, Dimension::Temperature, Scale::Ten(0), &["°C", "degC", "C", "℃"]),
    (Unit::Fahrenheit, Dimension::Temperature, Scale::Ten(0), &["°F", "degF", "F", "℉"]),
    (Unit::Kelvin, Dimension::Temperature, Scale::Ten(0), &["K", "kelvin"]),
    (Unit::Milliohm, Dimension::Resistance, Scale::Ten(-3), &["mΩ", "mohm"]),
    (Unit::Ohm, Dimension::Resistance, Scale::Ten(0), &["Ω", "ohm", "ohms", "Ohm"]),
    (Unit::Kiloohm, Dimension::Resistance, Scale::Ten(3), &["kΩ", "kohm", "kOhm", "k"]),
    (Unit::Megaohm, Dimension::Resistance, Scale::Ten(6), &["MΩ", "Mohm", "MOhm", "M"]),
    (Unit::Microvolt, Dimension::Voltage, Scale::Ten(-6), &["µV", "uV"]),
    (Unit::Millivolt, Dimension::Voltage, Scale::Ten(-3), &["mV"]),
    (Unit::Volt, Dimension::Voltage, Scale::Ten(0), &["V", "volt", "volts"]),
    (Unit::Microampere, Dimension::Current, Scale::Ten(-6), &["µA", "uA"]),
    (Unit::Milliampere, Dimension::Current, Scale::Ten(-3), &["mA"]),
    (Unit::Ampere, Dimension::Current, Scale::Ten(0), &["A", "amp", "amps"]),
    (Unit::Percent, Dimension::Ratio, Scale::Ten(-2), &["%"]),
    (Unit::Milliwatt, Dimension::Power, Scale::Ten(-3), &["mW"]),
    (Unit::Watt, Dimension::Power, Scale::Ten(0), &["W", "watt", "watts"]),
    (Unit::Kilowatt, Dimension::Power, Scale::Ten(3), &["kW"]),
    (Unit::MilliwattPerKelvin, Dimension::Dissipation, Scale::Ten(-3), &["mW/K", "mW/°C"]),
    (Unit::WattPerKelvin, Dimension::Dissipation, Scale::Ten(0), &["W/K", "W/°C"]),
    (Unit::Pascal, Dimension::Pressure, Scale::Ten(0), &["Pa"]),
    (Unit::Hectopascal, Dimension::Pressure, Scale::Ten(2), &["hPa"]),
    (Unit::Kilopascal, Dimension::Pressure, Scale::Ten(3), &["kPa"]),
    (Unit::Megapascal, Dimension::Pressure, Scale::Ten(6), &["MPa"]),
    (Unit::Millibar, Dimension::Pressure, Scale::Ten(2), &["mbar"]),
    (Unit::Bar, Dimension::Pressure, Scale::Ten(5), &["bar"]),
    (Unit::PoundPerSquareInch, Dimension::Pressure, Scale::Times(6_894.757_293_168_361), &["psi"]),
    (Unit::Millimetre, Dimension::Length, Scale::Ten(-3), &["mm"]),
    (Unit::Metre, Dimension::Length, Scale::Ten(0), &["m", "metre", "metres"]),
    (Unit::Kilometre, Dimension::Length, Scale::Ten(3), &["km"]),
    (Unit::Foot, Dimension::Length, Scale::Times(0.3048), &["ft", "foot", "feet"]),
    (Unit::Millihenry, Dimension::Inductance, Scale::Ten(-3), &["mH"]),
    (Unit::Henry, Dimension::Inductance, Scale::Ten(0), &["H"]),
    (Unit::Hertz, Dimension::Frequency, Scale::Ten(0), &["Hz"]),
    (Unit::Kilohertz, Dimension::Frequency, Scale::Ten(3), &["kHz"]),
    (Unit::RevolutionPerMinute, Dimension::Frequency, Scale::Times(1.0 / 60.0), &["r/min", "rpm", "1/min"]),
    (Unit::Millisecond, Dimension::Duration, Scale::Ten(-3), &["ms"]),
    (Unit::Second, Dimension::Duration, Scale::Ten(0), &["s", "second", "seconds"]),
    (Unit::Minute, Dimension::Duration, Scale::Times(60.0), &["min", "minute", "minutes"]),
    (Unit::Hour, Dimension::Duration, Scale::Times(3600.0), &["h", "hour", "hours"]),
    (Unit::WattPerSquareMetre, Dimension::Irradiance, Scale::Ten(0), &["W/m²", "W/m2"]),
    (Unit::JoulePerKilogram, Dimension::SpecificEnthalpy, Scale::Ten(0), &["J/kg"]),
    (Unit::KilojoulePerKilogram, Dimension::SpecificEnthalpy, Scale::Ten(3), &["kJ/kg"]),
    (Unit::SquareMillimetre, Dimension::WireSize, Scale::Ten(0), &["mm²", "mm2", "sqmm"]),
    (Unit::Gauge, Dimension::WireSize, Scale::Ten(0), &["AWG", "awg"]),
];

/// Signs that look alike, and people type either: ohm and omega, ordinal and degree,
/// Greek mu and micro. The second is the one in the table.
const ALIKE: &[(char, char)] = &[('\u{2126}', 'Ω'), ('º', '°'), ('μ', 'µ')];

impl Unit {
    /// Finds a unit by any of its spellings.
    #[must_use]
    pub fn named(spelling: &str) -> Option<Self> {
        let one = |c: char| ALIKE.iter().find(|(other, _)| *other == c).map_or(c, |&(_, plain)| plain);
        let plain: String = spelling.chars().map(one).collect();
        UNITS.iter().find(|(.., all)| all.contains(&plain.as_str())).map(|&(unit, ..)| unit)
    }

    /// Every spelling, to search for the nearest one.
    pub fn spellings() -> impl Iterator<Item = &'static str> {
        UNITS.iter().flat_map(|(.., all)| all.iter().copied())
    }

    /// Every unit, in the order of the table.
    pub(super) fn all() -> impl Iterator<Item = Self> {
        UNITS.iter().map(|&(unit, ..)| unit)
    }

    /// The spellings of this unit.
    pub(super) fn own_spellings(self) -> impl Iterator<Item = &'static str> {
        self.row().into_iter().flat_map(|(.., all)| all.iter().copied())
    }

    /// The other sign that people type for `c`, as [`Unit::named`] takes it.
    pub(super) fn looks_like(c: char) -> Option<char> {
        ALIKE.iter().find(|(_, plain)| *plain == c).map(|&(other, _)| other)
    }

    /// The spelling used in print.
    #[must_use]
    pub fn symbol(self) -> &'static str {
        self.row().map_or("", |(.., all)| all[0])
    }

    /// Whether a bare number in this unit can measure `dimension`.
    ///
    /// A scale unit (°C, °F) alone is a temperature; after a ± sign it is also
    /// a difference, which the reader decides, not the unit.
    #[must_use]
    pub fn measures(self, dimension: Dimension) -> bool {
        match dimension {
            Dimension::TemperatureDifference | Dimension::Beta => self == Self::Kelvin,
            other => self.dimension() == other,
        }
    }

    /// What a bare number in this unit measures, for the finding that says so.
    #[must_use]
    pub fn dimension(self) -> Dimension {
        self.row().map_or(Dimension::Ratio, |&(_, dimension, ..)| dimension)
    }

    /// How many of this unit a quantity is; `None` where the unit measures something else.
    ///
    /// # Example
    /// ```
    /// use bayleaf::quantity::{Pressure, Unit};
    /// assert_eq!(Unit::Bar.count_of(Pressure::from_pascals(292_800.0)), Some(2.928));
    /// ```
    #[must_use]
    pub fn count_of<T: Scalar>(self, quantity: T) -> Option<f64> {
        self.measures(T::DIMENSION).then(|| self.number_of(quantity.si()))
    }

    /// `number` of this unit in the SI unit, where the scale starts at zero.
    pub(super) fn to_si(self, number: f64) -> f64 {
        match self.scale() {
            Scale::Ten(exponent) => unshifted(number, exponent),
            Scale::Times(factor) => number * factor,
        }
    }

    /// `value` of the SI unit in this unit.
    pub(super) fn number_of(self, value: f64) -> f64 {
        match self.scale() {
            Scale::Ten(exponent) => unshifted(value, -exponent),
            Scale::Times(factor) => value / factor,
        }
    }

    fn scale(self) -> Scale {
        self.row().map_or(Scale::Ten(0), |&(_, _, scale, _)| scale)
    }

    fn row(self) -> Option<&'static Row> {
        UNITS.iter().find(|(unit, ..)| *unit == self)
    }
}

/// `number` times ten to `exponent`, with one rounding.
///
/// The point moves in the shortest decimal, which is what was written: 870.6 %
/// is 8.706 and 8.706 is 870.6 %, where 8.706 × 100 would be 870.5999999999999.
pub(super) fn unshifted(number: f64, exponent: i32) -> f64 {
    format!("{number}e{exponent}").parse().unwrap_or(number)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_unit_has_its_row() {
        // The table is searched by unit: a missing row would be a silent percentage.
        let gauge = Unit::Gauge as usize;
        assert_eq!(UNITS.len(), gauge + 1);
        for (index, (unit, ..)) in UNITS.iter().enumerate() {
            assert_eq!(*unit as usize, index, "{unit:?} stands where it is declared");
        }
    }
}
