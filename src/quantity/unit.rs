//! The units people write, and what each of them measures.

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
    /// A part of something: percent.
    Ratio,
    /// The B value of a thermistor, a temperature-like constant in kelvin.
    Beta,
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
            Self::Ratio => "dimension-ratio",
            Self::Beta => "dimension-beta",
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
            Self::Ratio => "`3 %`",
            Self::Beta => "`3500 K`",
        }
    }
}

/// A unit as written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Unit {
    /// °C
    Celsius,
    /// °F
    Fahrenheit,
    /// K
    Kelvin,
    /// mΩ
    Milliohm,
    /// Ω
    Ohm,
    /// kΩ
    Kiloohm,
    /// MΩ
    Megaohm,
    /// mV
    Millivolt,
    /// V
    Volt,
    /// %
    Percent,
}

/// Spellings, the first of each unit being the one that is printed.
const SPELLINGS: &[(Unit, &[&str])] = &[
    (Unit::Celsius, &["°C", "degC", "C", "℃"]),
    (Unit::Fahrenheit, &["°F", "degF", "F", "℉"]),
    (Unit::Kelvin, &["K", "kelvin"]),
    (Unit::Milliohm, &["mΩ", "mohm"]),
    (Unit::Ohm, &["Ω", "ohm", "ohms", "Ohm"]),
    (Unit::Kiloohm, &["kΩ", "kohm", "kOhm", "k"]),
    (Unit::Megaohm, &["MΩ", "Mohm", "MOhm", "M"]),
    (Unit::Millivolt, &["mV"]),
    (Unit::Volt, &["V", "volt", "volts"]),
    (Unit::Percent, &["%"]),
];

impl Unit {
    /// Finds a unit by any of its spellings.
    #[must_use]
    pub fn named(spelling: &str) -> Option<Self> {
        // The ohm sign and the ordinal sign look like omega and degree, and people type them.
        let plain = spelling.replace('\u{2126}', "Ω").replace('º', "°");
        SPELLINGS.iter().find(|(_, all)| all.contains(&plain.as_str())).map(|&(unit, _)| unit)
    }

    /// Every spelling, to search for the nearest one.
    pub fn spellings() -> impl Iterator<Item = &'static str> {
        SPELLINGS.iter().flat_map(|(_, all)| all.iter().copied())
    }

    /// The spelling used in print.
    #[must_use]
    pub fn symbol(self) -> &'static str {
        SPELLINGS.iter().find(|(unit, _)| *unit == self).map_or("", |(_, all)| all[0])
    }

    /// Whether a bare number in this unit can measure `dimension`.
    ///
    /// A scale unit (°C, °F) alone is a temperature; after a ± sign it is also
    /// a difference, which the reader decides, not the unit.
    #[must_use]
    pub fn measures(self, dimension: Dimension) -> bool {
        match dimension {
            Dimension::Temperature => matches!(self, Self::Celsius | Self::Fahrenheit | Self::Kelvin),
            Dimension::TemperatureDifference | Dimension::Beta => self == Self::Kelvin,
            Dimension::Resistance => {
                matches!(self, Self::Milliohm | Self::Ohm | Self::Kiloohm | Self::Megaohm)
            }
            Dimension::Voltage => matches!(self, Self::Millivolt | Self::Volt),
            Dimension::Ratio => self == Self::Percent,
        }
    }

    /// What a bare number in this unit measures, for the finding that says so.
    #[must_use]
    pub fn dimension(self) -> Dimension {
        match self {
            Self::Celsius | Self::Fahrenheit | Self::Kelvin => Dimension::Temperature,
            Self::Milliohm | Self::Ohm | Self::Kiloohm | Self::Megaohm => Dimension::Resistance,
            Self::Millivolt | Self::Volt => Dimension::Voltage,
            Self::Percent => Dimension::Ratio,
        }
    }

    /// The power of ten from this unit to its base unit, where it is linear.
    pub(super) fn exponent(self) -> i32 {
        match self {
            Self::Milliohm | Self::Millivolt => -3,
            Self::Percent => -2,
            Self::Kiloohm => 3,
            Self::Megaohm => 6,
            Self::Celsius | Self::Fahrenheit | Self::Kelvin | Self::Ohm | Self::Volt => 0,
        }
    }
}
