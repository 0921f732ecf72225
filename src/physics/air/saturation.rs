//! How much water vapour air can hold: over water, and below 0.01 °C over ice.

use super::AirError;
use crate::quantity::{Interval, Pressure, Temperature};

/// Temperatures between which the saturation pressure is known.
pub const DOMAIN: Interval<Temperature> =
    Interval { low: Temperature::from_celsius(-100.0), high: Temperature::from_celsius(200.0) };

/// The triple point of water, below which vapour settles as ice.
const TRIPLE_POINT: f64 = 0.01;

/// Saturation pressure over ice: ln(p/Pa) = c₁/T + c₂ + c₃T + c₄T² + c₅T³ + c₆T⁴ + c₇ ln T.
///
/// # Source
/// ASHRAE Handbook Fundamentals 2017, chapter 1, equation 5 (Hyland and Wexler);
/// constants from memory, checked in tests/reference/06a and 06b.
const OVER_ICE: [f64; 7] = [
    -5.674_535_9e3,
    6.392_524_7,
    -9.677_843_0e-3,
    6.221_570_1e-7,
    2.074_782_5e-9,
    -9.484_024_0e-13,
    4.163_501_9,
];

/// The same form over water: equation 6, with c₆ = 0.
const OVER_WATER: [f64; 7] =
    [-5.800_220_6e3, 1.391_499_3, -4.864_023_9e-2, 4.176_476_8e-5, -1.445_209_3e-8, 0.0, 6.545_967_3];

/// The pressure of water vapour that neither settles nor takes up more, in pascals.
///
/// Over ice below 0.01 °C, over water from there on.
///
/// # Range
/// −100 °C to 200 °C.
///
/// # Errors
/// [`AirError::OutsideRange`] outside.
///
/// # Source
/// ASHRAE Handbook Fundamentals 2017, chapter 1, equations 5 and 6.
///
/// # Example
/// Its table 3 prints 3169.7 Pa at 25 °C.
/// ```
/// use bayleaf::physics::air::saturation;
/// use bayleaf::quantity::Temperature;
/// let pressure = saturation::pressure(Temperature::from_celsius(25.0))?;
/// assert!((pressure.pascals() / 3169.7 - 1.0).abs() < 3e-4);
/// # Ok::<(), bayleaf::physics::air::AirError>(())
/// ```
pub fn pressure(at: Temperature) -> Result<Pressure, AirError> {
    if !DOMAIN.contains(&at) {
        return Err(AirError::OutsideRange);
    }
    Ok(Pressure::from_pascals(formula(at.celsius())))
}

/// The temperature at which vapour of this pressure begins to settle: dew point, or frost point
/// below 0.01 °C, where it settles as ice.
///
/// # Range
/// The pressures of −100 °C to 200 °C. At 0.01 °C the two formulas differ by
/// less than 0.01 %; a pressure between them gives 0.01 °C.
///
/// # Errors
/// [`AirError::OutsideRange`] outside; a pressure of 0 has no dew point.
pub fn temperature(of: Pressure) -> Result<Temperature, AirError> {
    let (low, high) = (DOMAIN.low.celsius(), DOMAIN.high.celsius());
    let inside = formula(low) <= of.pascals() && of.pascals() <= formula(high);
    if !inside {
        return Err(AirError::OutsideRange);
    }
    Ok(Temperature::from_celsius(super::crossing(low, high, |celsius| formula(celsius) - of.pascals())))
}

fn formula(celsius: f64) -> f64 {
    let [c1, c2, c3, c4, c5, c6, c7] = if celsius < TRIPLE_POINT { OVER_ICE } else { OVER_WATER };
    let t = Temperature::from_celsius(celsius).kelvins();
    libm::exp(c1 / t + c2 + t * (c3 + t * (c4 + t * (c5 + t * c6))) + c7 * libm::log(t))
}
