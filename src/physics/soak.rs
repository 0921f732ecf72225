//! Whether sensors that have soaked at one temperature agree.

use std::fmt;

use crate::quantity::{Temperature, TemperatureDifference};

/// One soaked sensor.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Soaked {
    /// The temperature that its reading means on its own curve.
    pub believed: Temperature,
    /// Its tolerance, as a temperature: how far a good one may be off.
    pub tolerance: TemperatureDifference,
    /// The expanded uncertainty of the reading, as a temperature.
    pub uncertainty: TemperatureDifference,
}

/// A number that is not finite, or a tolerance or uncertainty below zero.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NotASoakedSensor;

impl fmt::Display for NotASoakedSensor {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("not a reading of a soaked sensor")
    }
}

impl std::error::Error for NotASoakedSensor {}

/// Two sensors that differ by more than they may; their places in the list.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Disagreement {
    /// The earlier one.
    pub first: usize,
    /// The later one.
    pub second: usize,
    /// How far they are apart.
    pub difference: TemperatureDifference,
    /// How far they may be apart.
    pub allowed: TemperatureDifference,
}

/// What the sensors say of each other.
#[derive(Debug, Clone, PartialEq)]
pub struct Agreement {
    /// Every pair that disagrees.
    pub disagreements: Vec<Disagreement>,
    /// The one sensor without which all others agree. `None` where all agree, and
    /// where more than one would do: of two sensors that disagree neither is odd.
    pub odd_one_out: Option<usize>,
}

/// How far two good sensors at one temperature may be apart.
///
/// √(tolᵢ² + tolⱼ² + Uᵢ² + Uⱼ²), each a half-width.
///
/// # Range
/// Tolerances and uncertainties that are independent: the thermometer's error
/// drops out of a difference and must not be in `uncertainty`.
///
/// # Source
/// Common practice, no source, for comparing after a cold soak; the sum of squares
/// is JCGM 100:2008, 5.1.2, over half-widths.
///
/// # Errors
/// When a number is not finite or a half-width is below zero.
pub fn allowed(a: &Soaked, b: &Soaked) -> Result<TemperatureDifference, NotASoakedSensor> {
    let parts = [a.tolerance, a.uncertainty, b.tolerance, b.uncertainty];
    let sum = parts.iter().map(|part| part.kelvins()).fold(0.0, libm::hypot);
    let sound = parts.iter().all(|part| part.kelvins() >= 0.0) && sum.is_finite();
    if sound { Ok(TemperatureDifference::from_kelvins(sum)) } else { Err(NotASoakedSensor) }
}

/// Compares every sensor with every other one. A pair exactly at its allowed
/// difference agrees.
///
/// # Errors
/// When a number is not finite or a half-width is below zero.
pub fn agreement(sensors: &[Soaked]) -> Result<Agreement, NotASoakedSensor> {
    let mut disagreements = Vec::new();
    for (second, b) in sensors.iter().enumerate() {
        for (first, a) in sensors.iter().enumerate().take(second) {
            let allowed = allowed(a, b)?;
            let apart = (a.believed.celsius() - b.believed.celsius()).abs();
            if !apart.is_finite() {
                return Err(NotASoakedSensor);
            }
            if apart > allowed.kelvins() {
                let difference = TemperatureDifference::from_kelvins(apart);
                disagreements.push(Disagreement { first, second, difference, allowed });
            }
        }
    }
    let odd_one_out = odd_one_out(&disagreements);
    Ok(Agreement { disagreements, odd_one_out })
}

/// The sensor that every disagreement is with, where there is only one such.
fn odd_one_out(disagreements: &[Disagreement]) -> Option<usize> {
    let first = disagreements.first()?;
    let in_all =
        |sensor: &usize| disagreements.iter().all(|pair| pair.first == *sensor || pair.second == *sensor);
    let mut odd = [first.first, first.second].into_iter().filter(in_all);
    match (odd.next(), odd.next()) {
        (Some(one), None) => Some(one),
        _ => None,
    }
}
