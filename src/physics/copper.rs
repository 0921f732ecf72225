//! The resistance of copper at a temperature: coils and wires.
//!
//! Two corrections are in use and are kept apart: the metal's own coefficient,
//! which holds for a coil and for a wire, and the rounded one of the cable
//! standard, by which a cable's measured resistance is brought to 20 °C.

use std::fmt;

use crate::quantity::{Interval, Resistance, Temperature};

/// α, the temperature coefficient of the resistance of annealed copper, per kelvin at 20 °C.
///
/// It belongs to its reference temperature: the coefficient at 0 °C is 0.00427 /K.
///
/// # Source
/// IEC 60028 (0.00393 /K at constant mass); tests/reference/08c_copper_temperature.csv.
pub const COEFFICIENT: f64 = 0.003_93;

/// The temperature that [`COEFFICIENT`] belongs to, and that conductor standards refer to.
pub const REFERENCE: Temperature = Temperature::from_celsius(20.0);

/// Temperatures between which the straight line is used.
///
/// The line is within 1 % of the metal from −100 °C to 200 °C (from memory,
/// handbook tables of pure copper); enamelled wire ends near 200 °C.
pub const DOMAIN: Interval<Temperature> =
    Interval { low: Temperature::from_celsius(-100.0), high: Temperature::from_celsius(200.0) };

/// Why a resistance or a temperature of copper was not computed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CopperError {
    /// A temperature beyond [`DOMAIN`], given or found.
    OutsideDomain,
    /// A resistance that is not above zero, or not finite.
    NotPhysical,
}

impl fmt::Display for CopperError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::OutsideDomain => "outside the temperatures computed for copper",
            Self::NotPhysical => "not a resistance above zero",
        })
    }
}

impl std::error::Error for CopperError {}

/// R(t)/R(20 °C) = 1 + α (t − 20 °C), a plain number.
///
/// # Errors
/// Outside [`DOMAIN`].
///
/// # Source
/// IEC 60028; tests/reference/08c_copper_temperature.csv, column `Rt_over_R20_alpha_00393`.
///
/// # Example
/// ```
/// use bayleaf::{physics::copper::factor, quantity::Temperature};
/// assert!((factor(Temperature::from_celsius(80.0))? - 1.2358).abs() < 1e-12);
/// # Ok::<(), bayleaf::physics::copper::CopperError>(())
/// ```
pub fn factor(at: Temperature) -> Result<f64, CopperError> {
    if DOMAIN.contains(&at) {
        Ok(1.0 + COEFFICIENT * (at.celsius() - REFERENCE.celsius()))
    } else {
        Err(CopperError::OutsideDomain)
    }
}

/// Kt = 250/(230 + t/°C), by which a cable's resistance measured at t is **multiplied** to get R(20 °C).
///
/// The cable standard's rounded correction, 0.004 /K: not the inverse of
/// [`factor`], and not to be mixed with it.
///
/// # Errors
/// Outside [`DOMAIN`].
///
/// # Source
/// IEC 60228, Annex B, as quoted by a cable maker;
/// tests/reference/08c_copper_temperature.csv, column `kt_printed`.
pub fn cable_factor(at: Temperature) -> Result<f64, CopperError> {
    if DOMAIN.contains(&at) { Ok(250.0 / (230.0 + at.celsius())) } else { Err(CopperError::OutsideDomain) }
}

/// R(t) = R₁ (1 + α (t − 20 °C)) / (1 + α (t₁ − 20 °C)): a copper part at another temperature.
///
/// R₁ in Ω is the resistance at t₁.
///
/// # Errors
/// When a temperature lies outside [`DOMAIN`], or R₁ is not above zero.
///
/// # Source
/// IEC 60028 for α; a straight line through both temperatures.
///
/// # Example
/// A coil of 10.5 Ω at 20 °C has 12.98 Ω at 80 °C.
/// ```
/// use bayleaf::physics::copper::{REFERENCE, resistance};
/// use bayleaf::quantity::{Resistance, Temperature};
/// let hot = resistance(Resistance::from_ohms(10.5), REFERENCE, Temperature::from_celsius(80.0))?;
/// assert!((hot.ohms() - 12.98).abs() < 0.005);
/// # Ok::<(), bayleaf::physics::copper::CopperError>(())
/// ```
pub fn resistance(
    known: Resistance,
    known_at: Temperature,
    at: Temperature,
) -> Result<Resistance, CopperError> {
    let ohms = physical(known)? * (factor(at)? / factor(known_at)?);
    physical(Resistance::from_ohms(ohms)).map(Resistance::from_ohms)
}

/// t from R, the inverse of [`resistance`]: how hot a coil is, from its ohms.
///
/// # Errors
/// When `reading` or `known` is not above zero, or the temperature would lie
/// outside [`DOMAIN`].
///
/// # Source
/// As [`resistance`].
pub fn temperature(
    known: Resistance,
    known_at: Temperature,
    reading: Resistance,
) -> Result<Temperature, CopperError> {
    let factor = factor(known_at)? * (physical(reading)? / physical(known)?);
    let at = Temperature::from_celsius(REFERENCE.celsius() + (factor - 1.0) / COEFFICIENT);
    // The inverse of an end of the domain may miss it by the last bits.
    let hair = 1e-9;
    let (low, high) = (DOMAIN.low.celsius(), DOMAIN.high.celsius());
    if (low - hair..=high + hair).contains(&at.celsius()) {
        Ok(Temperature::from_celsius(at.celsius().clamp(low, high)))
    } else {
        Err(CopperError::OutsideDomain)
    }
}

/// The ohms of a resistance that is one.
pub(super) fn physical(resistance: Resistance) -> Result<f64, CopperError> {
    let ohms = resistance.ohms();
    if ohms.is_finite() && ohms > 0.0 { Ok(ohms) } else { Err(CopperError::NotPhysical) }
}
