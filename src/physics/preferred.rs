//! Resistors that can be bought: the preferred numbers of IEC 60063.

use super::curve::{Curve, CurveError};
use crate::quantity::{Resistance, Temperature};

/// A series of preferred numbers; E24 has 24 in each decade.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Series {
    /// 3 values, 40 % apart.
    E3,
    /// 6 values, usual with ± 20 %.
    E6,
    /// 12 values, usual with ± 10 %.
    E12,
    /// 24 values, usual with ± 5 %.
    E24,
    /// 48 values, usual with ± 2 %.
    E48,
    /// 96 values, usual with ± 1 %.
    E96,
}

/// The values of E24 from 10 up; every second one is E12, every fourth E6, every eighth E3.
///
/// # Source
/// IEC 60063 (not opened); tests/reference/10a_e_series.csv.
const E24: [u16; 24] =
    [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91];

/// The values of E96 from 100 up; every second one is E48.
///
/// # Source
/// IEC 60063 (not opened); tests/reference/10a_e_series.csv. E48 from memory.
const E96: [u16; 96] = [
    100, 102, 105, 107, 110, 113, 115, 118, 121, 124, 127, 130, 133, 137, 140, 143, 147, 150, 154, 158, 162,
    165, 169, 174, 178, 182, 187, 191, 196, 200, 205, 210, 215, 221, 226, 232, 237, 243, 249, 255, 261, 267,
    274, 280, 287, 294, 301, 309, 316, 324, 332, 340, 348, 357, 365, 374, 383, 392, 402, 412, 422, 432, 442,
    453, 464, 475, 487, 499, 511, 523, 536, 549, 562, 576, 590, 604, 619, 634, 649, 665, 681, 698, 715, 732,
    750, 768, 787, 806, 825, 845, 866, 887, 909, 931, 953, 976,
];

/// Resistances that resistors are made for, with room to spare, as powers of ten in ohms.
const DECADES: std::ops::RangeInclusive<i32> = -3..=12;

impl Series {
    /// The numbers of one decade: from 10 (E3 to E24), from 100 (E48, E96).
    #[must_use]
    pub fn numbers(self) -> Vec<u16> {
        let (all, step): (&[u16], usize) = match self {
            Self::E3 => (&E24, 8),
            Self::E6 => (&E24, 4),
            Self::E12 => (&E24, 2),
            Self::E24 => (&E24, 1),
            Self::E48 => (&E96, 2),
            Self::E96 => (&E96, 1),
        };
        all.iter().copied().step_by(step).collect()
    }

    /// The power of ten that the decade's numbers start at.
    fn digits(self) -> i32 {
        if matches!(self, Self::E48 | Self::E96) { 2 } else { 1 }
    }

    /// The largest value of the series that is not above a resistance.
    ///
    /// `None` below 1 mΩ and from 10 TΩ up, where there are no resistors.
    #[must_use]
    pub fn lower(self, of: Resistance) -> Option<Resistance> {
        self.around(of).map(|(lower, _)| lower)
    }

    /// The smallest value of the series that is not below a resistance.
    ///
    /// `None` below 1 mΩ and from 10 TΩ up, where there are no resistors.
    #[must_use]
    pub fn upper(self, of: Resistance) -> Option<Resistance> {
        self.around(of).map(|(_, upper)| upper)
    }

    /// The value nearest by ratio: the one that is fewest percent away.
    ///
    /// `None` below 1 mΩ and from 10 TΩ up, where there are no resistors.
    ///
    /// # Source
    /// tests/reference/10b_nearest_preferred.csv, column nearest_log.
    #[must_use]
    pub fn nearest_by_ratio(self, to: Resistance) -> Option<Resistance> {
        let (lower, upper) = self.around(to)?;
        // Which side of the geometric mean, without a logarithm's last bit.
        let below = to.ohms() / lower.ohms() <= upper.ohms() / to.ohms();
        Some(if below { lower } else { upper })
    }

    /// The value nearest by difference: the one that is fewest ohms away.
    ///
    /// `None` below 1 mΩ and from 10 TΩ up, where there are no resistors.
    ///
    /// # Source
    /// tests/reference/10b_nearest_preferred.csv, column nearest_abs.
    #[must_use]
    pub fn nearest_by_difference(self, to: Resistance) -> Option<Resistance> {
        let (lower, upper) = self.around(to)?;
        let below = to.ohms() - lower.ohms() <= upper.ohms() - to.ohms();
        Some(if below { lower } else { upper })
    }

    /// The values at or next to a resistance on either side; both are the
    /// resistance itself where it is in the series.
    fn around(self, of: Resistance) -> Option<(Resistance, Resistance)> {
        let ohms = of.ohms();
        let first = power_of_ten(1, *DECADES.start());
        let beyond = power_of_ten(1, *DECADES.end() + 1);
        if !(ohms >= first && ohms < beyond) {
            return None;
        }
        let numbers = self.numbers();
        let values = (*DECADES.start()..=*DECADES.end() + 1).flat_map(|decade| {
            let shift = decade - self.digits();
            numbers.iter().map(move |&number| power_of_ten(number, shift))
        });
        let (mut lower, mut upper) = (None, None);
        for value in values {
            if value <= ohms {
                lower = Some(value);
            }
            if value >= ohms {
                upper = Some(value);
                break;
            }
        }
        Some((Resistance::from_ohms(lower?), Resistance::from_ohms(upper?)))
    }
}

/// A number times a power of ten, with one rounding: 274 × 10⁻¹ is 27.4.
fn power_of_ten(number: u16, exponent: i32) -> f64 {
    // Powers up to 10²² are exact, so that the one product or quotient rounds once.
    let power = (0..exponent.unsigned_abs()).fold(1.0, |power, _| power * 10.0);
    if exponent < 0 { f64::from(number) / power } else { f64::from(number) * power }
}

/// A resistor in place of a sensor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Substitute {
    /// The resistor to fit.
    pub resistor: Resistance,
    /// The temperature that a nominal sensor of this resistance would be at.
    pub simulates: Temperature,
}

/// The resistor of a series that stands in for a good sensor at a temperature.
///
/// It tells a sensor from a control unit: with it fitted the unit must believe
/// [`Substitute::simulates`].
///
/// # Errors
/// Where the curve is not known at `at` or at the resistor's own value.
///
/// # Example
/// 2200 Ω at 25 °C with B = 3500 K, at 31 °C: 1745 Ω, so 1.8 kΩ fits, which is 30.2 °C.
/// ```
/// use bayleaf::physics::curve::{BetaCurve, Curve};
/// use bayleaf::physics::preferred::{Series, substitute};
/// use bayleaf::quantity::{Beta, Resistance, Temperature};
/// let rated = Temperature::from_celsius(25.0);
/// let curve = BetaCurve::new(Resistance::from_ohms(2200.0), rated, Beta::from_kelvins(3500.0))?;
/// let found = substitute(&Curve::Beta(curve), Temperature::from_celsius(31.0), Series::E24)?;
/// assert_eq!(found.resistor, Resistance::from_ohms(1800.0));
/// assert!((found.simulates.celsius() - 30.18).abs() < 0.01);
/// # Ok::<(), bayleaf::physics::curve::CurveError>(())
/// ```
pub fn substitute(curve: &Curve, at: Temperature, series: Series) -> Result<Substitute, CurveError> {
    let sensor = curve.resistance(at)?;
    let resistor = series.nearest_by_ratio(sensor).ok_or(CurveError::OutsideDomain)?;
    Ok(Substitute { resistor, simulates: curve.temperature(resistor)? })
}
