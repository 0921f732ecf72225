//! Thermocouples of types K, T and J: EMF against temperature, and back.

use std::fmt;

use crate::quantity::{Interval, Temperature, TemperatureDifference, Voltage};

/// A type of thermocouple, by its letter in IEC 60584-1.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Thermocouple {
    /// Nickel-chromium against nickel-aluminium.
    K,
    /// Copper against copper-nickel.
    T,
    /// Iron against copper-nickel.
    J,
}

/// The temperature, or the EMF, lies outside the reference function.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct OutsideReference;

impl fmt::Display for OutsideReference {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("outside the thermocouple's reference function")
    }
}

impl std::error::Error for OutsideReference {}

/// One range of a reference function: E/mV = Σ cᵢ (t/°C)ⁱ.
struct Piece {
    /// From here, °C.
    from: f64,
    /// c₀, c₁, …
    coefficients: &'static [f64],
}

/// The coefficients of ITS-90, in millivolts and degrees Celsius.
///
/// # Source
/// NIST Monograph 175 (SRD 60), identical in IEC 60584-1; typed from memory, each
/// found again in PyPI thermocouples_reference 0.20, and checked against
/// tests/reference/09a_thermocouple.csv (−40 to 200 °C) and over the full ranges
/// in tests/reference/thermocouples.rs.
const K: &[Piece] = &[
    Piece {
        from: -270.0,
        coefficients: &[
            0.0,
            0.394_501_280_250e-1,
            0.236_223_735_980e-4,
            -0.328_589_067_840e-6,
            -0.499_048_287_770e-8,
            -0.675_090_591_730e-10,
            -0.574_103_274_280e-12,
            -0.310_888_728_940e-14,
            -0.104_516_093_650e-16,
            -0.198_892_668_780e-19,
            -0.163_226_974_860e-22,
        ],
    },
    Piece {
        from: 0.0,
        coefficients: &[
            -0.176_004_136_860e-1,
            0.389_212_049_750e-1,
            0.185_587_700_320e-4,
            -0.994_575_928_740e-7,
            0.318_409_457_190e-9,
            -0.560_728_448_890e-12,
            0.560_750_590_590e-15,
            -0.320_207_200_030e-18,
            0.971_511_471_520e-22,
            -0.121_047_212_750e-25,
        ],
    },
];

/// Type K above 0 °C has a term a₀ exp[a₁ (t − a₂)²] besides: mV, °C⁻², °C.
const K_BELL: [f64; 3] = [0.118_597_600_000, -0.118_343_200_000e-3, 0.126_968_600_000e3];

const T: &[Piece] = &[
    Piece {
        from: -270.0,
        coefficients: &[
            0.0,
            0.387_481_063_640e-1,
            0.441_944_343_470e-4,
            0.118_443_231_050e-6,
            0.200_329_735_540e-7,
            0.901_380_195_590e-9,
            0.226_511_565_930e-10,
            0.360_711_542_050e-12,
            0.384_939_398_830e-14,
            0.282_135_219_250e-16,
            0.142_515_947_790e-18,
            0.487_686_622_860e-21,
            0.107_955_392_700e-23,
            0.139_450_270_620e-26,
            0.797_951_539_270e-30,
        ],
    },
    Piece {
        from: 0.0,
        coefficients: &[
            0.0,
            0.387_481_063_640e-1,
            0.332_922_278_800e-4,
            0.206_182_434_040e-6,
            -0.218_822_568_460e-8,
            0.109_968_809_280e-10,
            -0.308_157_587_720e-13,
            0.454_791_352_900e-16,
            -0.275_129_016_730e-19,
        ],
    },
];

const J: &[Piece] = &[
    Piece {
        from: -210.0,
        coefficients: &[
            0.0,
            0.503_811_878_150e-1,
            0.304_758_369_300e-4,
            -0.856_810_657_200e-7,
            0.132_281_952_950e-9,
            -0.170_529_583_370e-12,
            0.209_480_906_970e-15,
            -0.125_383_953_360e-18,
            0.156_317_256_970e-22,
        ],
    },
    Piece {
        from: 760.0,
        coefficients: &[
            0.296_456_256_810e3,
            -0.149_761_277_860e1,
            0.317_871_039_240e-2,
            -0.318_476_867_010e-5,
            0.157_208_190_040e-8,
            -0.306_913_690_560e-12,
        ],
    },
];

impl Thermocouple {
    /// The temperatures between which the reference function is defined.
    #[must_use]
    pub fn domain(self) -> Interval<Temperature> {
        let (low, high) = match self {
            Self::K => (-270.0, 1372.0),
            Self::T => (-270.0, 400.0),
            Self::J => (-210.0, 1200.0),
        };
        Interval { low: Temperature::from_celsius(low), high: Temperature::from_celsius(high) }
    }

    /// The EMF with the reference junction at 0 °C.
    ///
    /// # Errors
    /// Outside [`domain`](Self::domain).
    ///
    /// # Source
    /// NIST Monograph 175, IEC 60584-1; tests/reference/09a_thermocouple.csv to 10⁻⁶ mV.
    ///
    /// # Example
    /// ```
    /// use bayleaf::physics::thermocouple::Thermocouple;
    /// use bayleaf::quantity::Temperature;
    /// let emf = Thermocouple::K.emf(Temperature::from_celsius(100.0))?;
    /// assert!((1e3 * emf.volts() - 4.096_230_22).abs() < 1e-6);
    /// # Ok::<(), bayleaf::physics::thermocouple::OutsideReference>(())
    /// ```
    pub fn emf(self, at: Temperature) -> Result<Voltage, OutsideReference> {
        if self.domain().contains(&at) {
            Ok(Voltage::from_volts(self.millivolts(at.celsius()) / 1e3))
        } else {
            Err(OutsideReference)
        }
    }

    /// The EMF between a junction and a reference junction at another temperature.
    ///
    /// # Errors
    /// When either lies outside [`domain`](Self::domain).
    pub fn emf_from(self, at: Temperature, reference: Temperature) -> Result<Voltage, OutsideReference> {
        Ok(Voltage::from_volts(self.emf(at)?.volts() - self.emf(reference)?.volts()))
    }

    /// The temperature of a junction from its EMF and the reference junction's temperature.
    ///
    /// The EMFs add, never the temperatures: for type T at 200 °C with the reference
    /// junction at 25 °C, adding temperatures would be 6 K wrong (09a, column t_naive).
    /// Found by halving the domain until the ends are neighbours, so it is the
    /// inverse of [`emf`](Self::emf) and no approximation of its own.
    ///
    /// # Errors
    /// When the temperature would lie outside [`domain`](Self::domain).
    pub fn temperature(self, emf: Voltage, reference: Temperature) -> Result<Temperature, OutsideReference> {
        let wanted = 1e3 * (emf.volts() + self.emf(reference)?.volts());
        let Interval { low, high } = self.domain();
        let (mut low, mut high) = (low.celsius(), high.celsius());
        // An EMF that was computed at an end may come back one rounding beyond it.
        let hair = 1e-12 * wanted.abs();
        let (least, most) = (self.millivolts(low), self.millivolts(high));
        if !(least - hair <= wanted && wanted <= most + hair) {
            return Err(OutsideReference);
        }
        loop {
            let middle = low + (high - low) / 2.0;
            if middle <= low || middle >= high {
                // The neighbour whose EMF is nearer.
                let (below, above) = (wanted - self.millivolts(low), self.millivolts(high) - wanted);
                return Ok(Temperature::from_celsius(if below <= above { low } else { high }));
            }
            if self.millivolts(middle) <= wanted {
                low = middle;
            } else {
                high = middle;
            }
        }
    }

    /// How far a thermocouple of a class may be off at a temperature.
    ///
    /// The greater of a fixed difference and a part of the temperature in °C.
    /// `None` where the class does not apply.
    ///
    /// # Source
    /// IEC 60584-1 (before 2013 in IEC 60584-2), from memory.
    #[must_use]
    pub fn limit_of_error(self, class: Class, at: Temperature) -> Option<TemperatureDifference> {
        let (fixed, part, low, high) = match (self, class) {
            (Self::K, Class::One) => (1.5, 0.004, -40.0, 1000.0),
            (Self::K, Class::Two) => (2.5, 0.0075, -40.0, 1200.0),
            (Self::K, Class::Three) => (2.5, 0.015, -200.0, 40.0),
            (Self::T, Class::One) => (0.5, 0.004, -40.0, 350.0),
            (Self::T, Class::Two) => (1.0, 0.0075, -40.0, 350.0),
            (Self::T, Class::Three) => (1.0, 0.015, -200.0, 40.0),
            (Self::J, Class::One) => (1.5, 0.004, -40.0, 750.0),
            (Self::J, Class::Two) => (2.5, 0.0075, -40.0, 750.0),
            (Self::J, Class::Three) => return None,
        };
        let celsius = at.celsius();
        let applies = low <= celsius && celsius <= high;
        let limit = libm::fmax(fixed, part * celsius.abs());
        applies.then(|| TemperatureDifference::from_kelvins(limit))
    }

    /// E(t) in millivolts; for a temperature of the domain.
    fn millivolts(self, celsius: f64) -> f64 {
        let pieces = match self {
            Self::K => K,
            Self::T => T,
            Self::J => J,
        };
        let piece = pieces.iter().rev().find(|piece| piece.from <= celsius).unwrap_or(&pieces[0]);
        let polynomial = piece.coefficients.iter().rev().fold(0.0, |sum, c| sum * celsius + c);
        if self == Self::K && celsius > 0.0 {
            let [height, width, centre] = K_BELL;
            let away = celsius - centre;
            polynomial + height * libm::exp(width * away * away)
        } else if celsius.abs() <= 0.0 {
            // Every type reads nothing at 0 °C; K's two terms cancel to 10⁻⁸ mV.
            0.0
        } else {
            polynomial
        }
    }
}

/// How good a thermocouple is bought.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Class {
    /// The best.
    One,
    /// The usual.
    Two,
    /// For low temperatures.
    Three,
}
