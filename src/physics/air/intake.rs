//! Two airs that meet at the intake, and how much of each there is.

use std::fmt;

use super::moist::{self, HumidityRatio, MoistAir};
use super::{AirError, dry_bulb, saturation};
use crate::physics::uncertainty;
use crate::quantity::{Ratio, SpecificEnthalpy, Temperature, TemperatureDifference};

/// Below this distance between outside and return air a share is not worth working out: 5 K.
///
/// Common practice, no source.
pub const LEAST_DIFFERENCE: TemperatureDifference = TemperatureDifference::from_kelvins(5.0);

/// Two airs mixed, before any fog has formed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mixture {
    /// The dry bulb; where there is fog the air is warmer than this, by the heat of its drops.
    pub dry_bulb: Temperature,
    /// Water per kilogram of dry air, as vapour or as drops.
    pub water: HumidityRatio,
    /// The enthalpy.
    pub enthalpy: SpecificEnthalpy,
    /// The air, unless it is foggy.
    pub air: Option<MoistAir>,
}

impl Mixture {
    /// Whether more water came together than the mixed air holds.
    #[must_use]
    pub fn fog(&self) -> bool {
        self.air.is_none()
    }
}

/// Outside air and return air, mixed by mass of dry air: with x the share of outside air,
/// W = x W_out + (1 − x) W_rec, h likewise, t from both.
///
/// A share by volume is not this share: the colder air is denser.
///
/// # Errors
/// [`AirError::NoShare`] for x outside 0 to 1; [`AirError::TwoPressures`]; those of [`dry_bulb`].
///
/// # Source
/// Conservation of water and of energy; equation 30 of ASHRAE Handbook Fundamentals 2017,
/// chapter 1; tests/reference/06c_mixed_air.csv.
pub fn mix(outside: &MoistAir, recirculated: &MoistAir, share: Ratio) -> Result<Mixture, AirError> {
    let x = share.part();
    if !(0.0..=1.0).contains(&x) {
        return Err(AirError::NoShare);
    }
    let pressure = outside.pressure();
    if pressure != recirculated.pressure() {
        return Err(AirError::TwoPressures);
    }
    let blend = |out: f64, rec: f64| x * out + (1.0 - x) * rec;
    let kilograms = |air: &MoistAir| air.humidity_ratio().kilograms_per_kilogram();
    let joules = |air: &MoistAir| air.enthalpy().joules_per_kilogram();
    let water =
        HumidityRatio::from_kilograms_per_kilogram(blend(kilograms(outside), kilograms(recirculated)));
    let enthalpy = SpecificEnthalpy::from_joules_per_kilogram(blend(joules(outside), joules(recirculated)));
    let dry_bulb = dry_bulb(enthalpy, water)?;
    let saturated = moist::saturated_ratio(dry_bulb, pressure)?;
    // A last bit above saturation is no fog: one share of 1 gives back the very air.
    let held = if water.kilograms_per_kilogram() <= saturated.kilograms_per_kilogram() * (1.0 + LAST_BITS) {
        let least = water.kilograms_per_kilogram().min(saturated.kilograms_per_kilogram());
        Some(HumidityRatio::from_kilograms_per_kilogram(least))
    } else {
        None
    };
    let air = held.map(|water| MoistAir::of_humidity_ratio(dry_bulb, water, pressure)).transpose()?;
    Ok(Mixture { dry_bulb, water, enthalpy, air })
}

/// Rounding of two sums and a quotient, far below what any hygrometer shows.
const LAST_BITS: f64 = 1e-12;

/// Three temperatures that were measured at an intake, each with its limit of error.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Intake {
    /// Behind the intake door, where both airs are mixed.
    pub mixed: Temperature,
    /// Of the outside air.
    pub outside: Temperature,
    /// Of the air that comes back from the cabin.
    pub recirculated: Temperature,
    /// The thermometer's limit of error, the same for each of the three.
    pub thermometer: TemperatureDifference,
}

/// The share of outside air, by mass, with its uncertainty.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FreshAir {
    /// x; readings may put it a little below 0 or above 1.
    pub share: Ratio,
    /// U, k = 2.
    pub expanded: Ratio,
}

/// Why a share of outside air can't be told.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum IntakeError {
    /// Outside and return air are too near each other.
    TooNear {
        /// How far apart they are.
        difference: TemperatureDifference,
    },
    /// Not the temperature of any air, or a limit of error below zero.
    NoReading,
}

impl fmt::Display for IntakeError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::TooNear { difference } => write!(f, "outside and return air are only {difference} apart"),
            Self::NoReading => f.write_str("not a reading"),
        }
    }
}

impl std::error::Error for IntakeError {}

impl Intake {
    /// The share of outside air x = (t_mix − t_rec) / (t_out − t_rec), with
    /// U = 2 (a/√3) √(1 + x² + (1 − x)²) / |t_out − t_rec| for thermometers good to ± a.
    ///
    /// The straight line in t leaves out that humid air carries more heat; against the
    /// exact mixture that is at most 0.01 of a share in tests/reference/06c, fog apart.
    ///
    /// # Errors
    /// [`IntakeError::TooNear`] where the airs are less than `least` apart
    /// ([`LEAST_DIFFERENCE`] is common practice), or so near that the thermometers
    /// cannot tell them apart: no share follows from such readings.
    ///
    /// # Source
    /// JCGM 100:2008, 5.1.2 with the sensitivities 1/D, −(1 − x)/D and −x/D, D = t_out − t_rec.
    ///
    /// # Example
    /// ± 0.5 K thermometers at 13 K difference: a standard uncertainty of 0.03.
    /// ```
    /// use bayleaf::physics::air::intake::{Intake, LEAST_DIFFERENCE};
    /// use bayleaf::quantity::{Temperature, TemperatureDifference};
    /// let readings = Intake {
    ///     mixed: Temperature::from_celsius(24.0),
    ///     outside: Temperature::from_celsius(37.0),
    ///     recirculated: Temperature::from_celsius(24.0),
    ///     thermometer: TemperatureDifference::from_kelvins(0.5),
    /// };
    /// let fresh = readings.fresh_air(LEAST_DIFFERENCE)?;
    /// assert!((fresh.expanded.part() / 2.0 - 0.03).abs() < 0.005);
    /// # Ok::<(), bayleaf::physics::air::intake::IntakeError>(())
    /// ```
    pub fn fresh_air(&self, least: TemperatureDifference) -> Result<FreshAir, IntakeError> {
        let limit = self.thermometer.kelvins();
        let span = self.outside.celsius() - self.recirculated.celsius();
        let risen = self.mixed.celsius() - self.recirculated.celsius();
        let read = [self.mixed, self.outside, self.recirculated];
        let readings = read.iter().all(|at| saturation::DOMAIN.contains(at));
        if !(readings && limit >= 0.0 && limit.is_finite()) {
            return Err(IntakeError::NoReading);
        }
        let apart = uncertainty::expanded(&[limit, limit]);
        if span.abs() < least.kelvins() || span.abs() <= apart {
            return Err(IntakeError::TooNear { difference: TemperatureDifference::from_kelvins(span.abs()) });
        }
        let share = risen / span;
        let limits = [limit / span, (1.0 - share) * limit / span, share * limit / span];
        Ok(FreshAir { share: Ratio::new(share), expanded: Ratio::new(uncertainty::expanded(&limits)) })
    }
}

impl FreshAir {
    /// Whether a door position with this share of outside air explains the readings.
    #[must_use]
    pub fn explains(&self, position: Ratio) -> bool {
        (self.share.part() - position.part()).abs() <= self.expanded.part()
    }
}
