//! The resistance of a wire, and the voltage that is lost along it.
//!
//! A standard for cables states the *greatest* resistance of a size; geometry
//! gives the *nominal* one of solid copper. Both are computed where both exist,
//! and neither stands in for the other.

use std::fmt;

use super::copper::{self, CopperError};
use crate::quantity::{Current, Length, Resistance, Temperature, Voltage, WireSize};

/// Resistivity of annealed copper at 20 °C, Ω mm²/m: 1/58, 100 % IACS.
///
/// # Source
/// IEC 60028; header of tests/reference/08a_copper_iec60228.csv.
const RESISTIVITY: f64 = 1.0 / 58.0;

/// How a conductor is built, which decides its greatest resistance.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Class {
    /// Class 1 and 2: solid or stranded, for fixed wiring.
    Fixed,
    /// Class 5 and 6: flexible and extra flexible.
    Flexible,
}

/// Cross-section in mm², greatest resistance of class 1 and 2, of class 5 and 6, in Ω/km at 20 °C.
///
/// Plain copper.
///
/// # Source
/// IEC 60228:2004 as quoted by cable makers: class 1 and 2 in
/// tests/reference/08a_copper_iec60228.csv; class 5 up to 6 mm² as printed by a
/// cable calculator's page of that standard, in part repeated in
/// tests/reference/08d_voltage_drop.csv; class 5 from 10 mm² up from memory.
const GREATEST: [(f64, f64, f64); 10] = [
    (0.5, 36.0, 39.0),
    (0.75, 24.5, 26.0),
    (1.0, 18.1, 19.5),
    (1.5, 12.1, 13.3),
    (2.5, 7.41, 7.98),
    (4.0, 4.61, 4.95),
    (6.0, 3.08, 3.30),
    (10.0, 1.83, 1.91),
    (16.0, 1.15, 1.21),
    (25.0, 0.727, 0.780),
];

/// Why no resistance of a wire was computed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WireError {
    /// A cross-section that IEC 60228 does not list, or that is not read here: 0.5 to 25 mm².
    NotListed,
    /// A gauge number has no greatest resistance in IEC 60228.
    GaugeNumber,
    /// A cross-section, length or current that no wire has.
    NotPhysical,
    /// A temperature outside [`copper::DOMAIN`].
    OutsideDomain,
}

impl fmt::Display for WireError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NotListed => "no size of IEC 60228 from 0.5 to 25 mm²",
            Self::GaugeNumber => "a gauge number, which IEC 60228 does not know",
            Self::NotPhysical => "not the size, length or current of a wire",
            Self::OutsideDomain => "outside the temperatures computed for copper",
        })
    }
}

impl std::error::Error for WireError {}

impl From<CopperError> for WireError {
    fn from(error: CopperError) -> Self {
        match error {
            CopperError::OutsideDomain => Self::OutsideDomain,
            CopperError::NotPhysical => Self::NotPhysical,
        }
    }
}

/// The cross-sections in mm² that [`greatest_per_metre`] knows, the thinnest first.
pub fn listed_sizes() -> impl Iterator<Item = f64> {
    GREATEST.iter().map(|&(area, ..)| area)
}

/// The greatest resistance of one metre of a conductor at 20 °C that its standard allows.
///
/// # Errors
/// [`WireError::NotListed`] for a cross-section that the standard does not list
/// (0.35 mm² is a road-vehicle size of ISO 6722 and ISO 19642, whose values are
/// not known here), [`WireError::GaugeNumber`] for a gauge number. Nothing is
/// interpolated.
///
/// # Source
/// IEC 60228, table 1 and 3 (plain copper), as quoted by cable makers.
///
/// # Example
/// ```
/// use bayleaf::{physics::wire::{Class, greatest_per_metre}, quantity::WireSize};
/// let half = greatest_per_metre(WireSize::SquareMillimetres(0.5), Class::Flexible)?;
/// assert!((half.ohms() - 0.039).abs() < 1e-12);
/// assert!(greatest_per_metre(WireSize::SquareMillimetres(0.35), Class::Flexible).is_err());
/// # Ok::<(), bayleaf::physics::wire::WireError>(())
/// ```
pub fn greatest_per_metre(size: WireSize, class: Class) -> Result<Resistance, WireError> {
    let WireSize::SquareMillimetres(area) = size else { return Err(WireError::GaugeNumber) };
    let row = GREATEST.iter().find(|(listed, ..)| listed.total_cmp(&area).is_eq());
    let &(_, fixed, flexible) = row.ok_or(WireError::NotListed)?;
    let per_kilometre = match class {
        Class::Fixed => fixed,
        Class::Flexible => flexible,
    };
    Ok(Resistance::from_ohms(per_kilometre / 1000.0))
}

/// The nominal resistance of one metre of solid copper of this size at 20 °C: R = ρ/A.
///
/// # Range
/// Theoretical: a stranded conductor of the same nominal size has 3 to 15 %
/// more (header of tests/reference/08a_copper_iec60228.csv).
///
/// # Errors
/// When the cross-section is not a finite number above zero.
///
/// # Source
/// ρ = 1/58 Ω mm²/m, IEC 60028; diameter of a gauge number: [`diameter`].
pub fn nominal_per_metre(size: WireSize) -> Result<Resistance, WireError> {
    let ohms = RESISTIVITY / area(size)?;
    if ohms.is_finite() && ohms > 0.0 { Ok(Resistance::from_ohms(ohms)) } else { Err(WireError::NotPhysical) }
}

/// The diameter of a solid conductor: d = 0.127 mm × 92^((36 − n)/39), or d = 2 √(A/π).
///
/// n is the gauge number, A the nominal cross-section.
///
/// # Errors
/// When the cross-section is not a finite number above zero.
///
/// # Source
/// ASTM B258 (formula from memory; it reproduces the printed diameters of
/// tests/reference/08b_copper_awg.csv to 0.1 %).
pub fn diameter(size: WireSize) -> Result<Length, WireError> {
    let millimetres = match size {
        WireSize::Gauge(number) => 0.127 * libm::pow(92.0, (36.0 - f64::from(number)) / 39.0),
        WireSize::SquareMillimetres(_) => 2.0 * libm::sqrt(area(size)? / std::f64::consts::PI),
    };
    Ok(Length::from_millimetres(millimetres))
}

/// The cross-section in mm²: of a gauge number from its diameter, A = π d²/4.
///
/// # Units
/// mm², the unit in which cross-sections are named.
///
/// # Errors
/// When the cross-section is not a finite number above zero.
///
/// # Source
/// As [`diameter`].
pub fn area(size: WireSize) -> Result<f64, WireError> {
    let area = match size {
        WireSize::SquareMillimetres(area) => area,
        WireSize::Gauge(_) => {
            let diameter = 1000.0 * diameter(size)?.metres();
            std::f64::consts::PI / 4.0 * diameter * diameter
        }
    };
    if area.is_finite() && area > 0.0 { Ok(area) } else { Err(WireError::NotPhysical) }
}

/// A run of wire: how far, and how many conductors the current passes one after the other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Run {
    /// The way from one end to the other.
    pub length: Length,
    /// 2 for out and return, 1 where the body is the return and its drop is not counted.
    pub conductors: u8,
}

/// The resistance of a run at a temperature: R = n l r₂₀ (1 + α (t − 20 °C)).
///
/// r₂₀ is the resistance of one metre at 20 °C, n the number of conductors, l the length.
///
/// # Errors
/// When the length is negative or not finite, there is no conductor, or the
/// temperature lies outside [`copper::DOMAIN`].
///
/// # Source
/// tests/reference/08d_voltage_drop.csv.
pub fn resistance(per_metre: Resistance, run: Run, at: Temperature) -> Result<Resistance, WireError> {
    let length = run.length.metres();
    let metre = copper::physical(per_metre)?;
    let ohms = f64::from(run.conductors) * length * metre * copper::factor(at)?;
    let valid = length >= 0.0 && ohms.is_finite() && run.conductors > 0;
    if valid { Ok(Resistance::from_ohms(ohms)) } else { Err(WireError::NotPhysical) }
}

/// The voltage lost along a resistance: V = I R.
///
/// A drop is only there while current flows.
///
/// # Errors
/// When the current is negative, or a value is not finite.
///
/// # Source
/// Ohm's law; tests/reference/08d_voltage_drop.csv.
pub fn drop(resistance: Resistance, current: Current) -> Result<Voltage, WireError> {
    let volts = resistance.ohms() * current.amperes();
    let valid = volts.is_finite() && current.amperes() >= 0.0 && resistance.ohms() >= 0.0;
    if valid { Ok(Voltage::from_volts(volts)) } else { Err(WireError::NotPhysical) }
}
