//! Set-point scales of a panel in °C and °F.
//!
//! A panel may have two scales of its own: what it shows in °F is then no
//! conversion of what it shows in °C. Both are kept as given; this file only
//! says by how much their ends differ.

use crate::quantity::{Interval, Temperature, TemperatureDifference};

/// A difference this close to half a digit, in kelvins, is half a digit: the
/// conversion 9/5 is not exact in binary.
const HAIR: f64 = 1e-9;

/// The two scales of one panel, as printed on it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PrintedScales {
    /// Both ends of the scale in °C.
    pub celsius: Interval<Temperature>,
    /// One unit of the last digit that the °C scale shows.
    pub celsius_digit: TemperatureDifference,
    /// Both ends of the scale in °F.
    pub fahrenheit: Interval<Temperature>,
    /// One unit of the last digit that the °F scale shows.
    pub fahrenheit_digit: TemperatureDifference,
}

/// How the two scales compare.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Comparison {
    /// The lower ends.
    pub low: End,
    /// The upper ends.
    pub high: End,
    /// From the lower to the upper end in °C.
    pub celsius_span: TemperatureDifference,
    /// From the lower to the upper end in °F, in kelvins.
    pub fahrenheit_span: TemperatureDifference,
}

impl Comparison {
    /// Whether one scale may be the other one, converted and rounded.
    #[must_use]
    pub fn are_conversions(&self) -> bool {
        self.low.agrees && self.high.agrees
    }
}

/// One end of both scales.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct End {
    /// The end in °C less the end in °F.
    pub difference: TemperatureDifference,
    /// Whether that is no more than rounding.
    pub agrees: bool,
}

/// Why two scales cannot be compared.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Error {
    /// An end, a difference of two ends, or a digit is not finite.
    NotFinite,
    /// A last digit that is worth nothing, or less.
    DigitNotPositive,
}

/// Compares the two scales of a panel, end by end.
///
/// An end agrees when |t(°C) − t(°F)| ≤ ½ d, where t are the two ends as
/// temperatures and d the larger of the two digits in kelvins: then it may be
/// the other scale's end, converted and rounded to the digits it shows. A span
/// converts as an interval, 1 K = 1.8 °F, without the offset of the scale.
///
/// # Errors
/// [`Error::NotFinite`] for an end, a digit or a result that is no finite
/// number; [`Error::DigitNotPositive`] for a digit of zero or less.
///
/// # Source
/// t/°F = 1.8 t/°C + 32 by definition of the scales. That panels have such
/// scales: common practice, no source. The rule of half a digit is our own.
///
/// # Example
/// ```
/// use bayleaf::physics::scale::{PrintedScales, compare};
/// use bayleaf::quantity::{Interval, Temperature, TemperatureDifference};
/// let (c, f) = (Temperature::from_celsius, Temperature::from_fahrenheit);
/// let found = compare(&PrintedScales {
///     celsius: Interval { low: c(18.0), high: c(32.0) },
///     celsius_digit: TemperatureDifference::from_kelvins(1.0),
///     fahrenheit: Interval { low: f(65.0), high: f(85.0) },
///     fahrenheit_digit: TemperatureDifference::from_kelvins(1.0 / 1.8),
/// })?;
/// assert!(found.low.agrees && !found.high.agrees);
/// assert_eq!(format!("{:.1}", found.high.difference.kelvins()), "2.6");
/// # Ok::<(), bayleaf::physics::scale::Error>(())
/// ```
pub fn compare(scales: &PrintedScales) -> Result<Comparison, Error> {
    let digits = [scales.celsius_digit.kelvins(), scales.fahrenheit_digit.kelvins()];
    if !digits.iter().all(|digit| digit.is_finite()) {
        return Err(Error::NotFinite);
    }
    if !digits.iter().all(|&digit| digit > 0.0) {
        return Err(Error::DigitNotPositive);
    }
    let half = 0.5 * digits[0].max(digits[1]);
    let end = |celsius, fahrenheit| {
        let difference = between(celsius, fahrenheit)?;
        Ok(End { difference, agrees: difference.kelvins().abs() <= half + HAIR })
    };
    Ok(Comparison {
        low: end(scales.celsius.low, scales.fahrenheit.low)?,
        high: end(scales.celsius.high, scales.fahrenheit.high)?,
        celsius_span: between(scales.celsius.high, scales.celsius.low)?,
        fahrenheit_span: between(scales.fahrenheit.high, scales.fahrenheit.low)?,
    })
}

/// How far `upper` lies above `lower`.
fn between(upper: Temperature, lower: Temperature) -> Result<TemperatureDifference, Error> {
    let kelvins = upper.celsius() - lower.celsius();
    if kelvins.is_finite() { Ok(TemperatureDifference::from_kelvins(kelvins)) } else { Err(Error::NotFinite) }
}
