//! Air with water in it: what it holds, where it drips, what it carries of heat.
//!
//! Ideal-gas equations per kilogram of dry air, at the pressure of the site.
//! Against the real-gas model they are up to 0.6 % low in humidity ratio and
//! 0.02 K in dew point (tests/reference/06a_moist_air.csv).

pub mod intake;
mod moist;
pub mod saturation;
pub mod vent;

pub use moist::{HumidityRatio, MoistAir, SpecificVolume, dry_bulb};

use std::fmt;

/// Why a state of air does not exist, or is not known.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AirError {
    /// Outside the temperatures of the saturation equation.
    OutsideRange,
    /// A relative humidity below 0 or above 100 %, or a humidity ratio below 0.
    NoHumidity,
    /// A pressure that is not that of air around a vehicle.
    NoAirPressure,
    /// So hot that water boils at this pressure: saturated air does not exist.
    Boiling,
    /// More water than air of this temperature holds.
    Supersaturated,
    /// A wet bulb above the dry bulb, or so far below that no air is so dry.
    WetBulb,
    /// Two airs that are mixed must have one pressure.
    TwoPressures,
    /// A share below nothing or above the whole.
    NoShare,
    /// A cooling duty below zero, or a tolerance that is none.
    NoDuty,
    /// Air that enters more humid than the air that is to leave.
    EntersTooHumid,
}

impl fmt::Display for AirError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::OutsideRange => "outside the saturation equation",
            Self::NoHumidity => "not a humidity",
            Self::NoAirPressure => "not the pressure of air around a vehicle",
            Self::Boiling => "water boils at this pressure",
            Self::Supersaturated => "more water than the air holds",
            Self::WetBulb => "no air has this wet bulb",
            Self::TwoPressures => "two pressures",
            Self::NoShare => "not a share",
            Self::NoDuty => "not a cooling duty",
            Self::EntersTooHumid => "the air enters more humid than it leaves",
        })
    }
}

impl std::error::Error for AirError {}

/// Where a rising function crosses zero, by halving until no double lies between.
///
/// The function is below zero at `low` and not below at `high`; at most 64 halvings
/// leave less than 1e-16 of the interval.
fn crossing(mut low: f64, mut high: f64, rising: impl Fn(f64) -> f64) -> f64 {
    for _ in 0..64 {
        let middle = 0.5 * (low + high);
        if rising(middle) < 0.0 {
            low = middle;
        } else {
            high = middle;
        }
    }
    0.5 * (low + high)
}
