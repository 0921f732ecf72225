//! One state of moist air, and every way to describe it.

use super::{AirError, crossing, saturation};
use crate::quantity::{Pressure, Ratio, SpecificEnthalpy, Temperature};

/// Molar mass of water over that of dry air (ASHRAE Fundamentals 2017, chapter 1, equation 20).
const MASS_RATIO: f64 = 0.621_945;
/// The gas constant of dry air in J/(kg K) (the same, equation 1).
const GAS_CONSTANT: f64 = 287.042;

/// Kilograms of water with each kilogram of dry air.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct HumidityRatio(f64);

impl HumidityRatio {
    /// From kilograms of water per kilogram of dry air.
    #[must_use]
    pub const fn from_kilograms_per_kilogram(value: f64) -> Self {
        Self(value)
    }

    /// In kilograms of water per kilogram of dry air.
    #[must_use]
    pub const fn kilograms_per_kilogram(self) -> f64 {
        self.0
    }
}

/// Cubic metres that one kilogram of dry air fills together with its water.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct SpecificVolume(f64);

impl SpecificVolume {
    /// In cubic metres per kilogram of dry air.
    #[must_use]
    pub const fn cubic_metres_per_kilogram(self) -> f64 {
        self.0
    }
}

/// Air at a temperature and a pressure, with some water as vapour and none as drops.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MoistAir {
    dry_bulb: Temperature,
    water: HumidityRatio,
    pressure: Pressure,
}

impl MoistAir {
    /// Air of dry bulb t, relative humidity φ and pressure p:
    /// p_w = φ p_ws(t), W = 0.621945 p_w / (p − p_w).
    ///
    /// # Range
    /// −100 °C to 200 °C, and below the temperature at which water boils at p;
    /// p from 10 kPa to 200 kPa; φ from 0 to 1, below 0 °C over ice.
    ///
    /// # Errors
    /// One for each of those.
    ///
    /// # Source
    /// ASHRAE Handbook Fundamentals 2017, chapter 1, equations 20 and 22.
    ///
    /// # Example
    /// 25 °C, 50 %, at sea level (tests/reference/06a): W 9.88 g/kg, dew point 13.86 °C.
    /// ```
    /// use bayleaf::physics::air::MoistAir;
    /// use bayleaf::physics::atmosphere::SEA_LEVEL;
    /// use bayleaf::quantity::{Ratio, Temperature};
    /// let air = MoistAir::of_relative_humidity(Temperature::from_celsius(25.0), Ratio::new(0.5), SEA_LEVEL)?;
    /// assert!((air.humidity_ratio().kilograms_per_kilogram() - 0.009_881).abs() < 1e-6);
    /// assert!((air.dew_point()?.celsius() - 13.864).abs() < 0.01);
    /// # Ok::<(), bayleaf::physics::air::AirError>(())
    /// ```
    pub fn of_relative_humidity(
        dry_bulb: Temperature,
        relative: Ratio,
        pressure: Pressure,
    ) -> Result<Self, AirError> {
        let saturated = holds_vapour(dry_bulb, pressure)?;
        if !(0.0..=1.0).contains(&relative.part()) {
            return Err(AirError::NoHumidity);
        }
        let water = ratio_of(relative.part() * saturated, pressure);
        Ok(Self { dry_bulb, water: HumidityRatio(water), pressure })
    }

    /// Air of dry bulb t, humidity ratio W and pressure p.
    ///
    /// # Range
    /// As [`of_relative_humidity`](Self::of_relative_humidity).
    ///
    /// # Errors
    /// One for each of its limits; [`AirError::Supersaturated`] above 100 %.
    pub fn of_humidity_ratio(
        dry_bulb: Temperature,
        water: HumidityRatio,
        pressure: Pressure,
    ) -> Result<Self, AirError> {
        let saturated = ratio_of(holds_vapour(dry_bulb, pressure)?, pressure);
        if !(water.0 >= 0.0 && water.0.is_finite()) {
            return Err(AirError::NoHumidity);
        }
        if water.0 > saturated {
            return Err(AirError::Supersaturated);
        }
        Ok(Self { dry_bulb, water, pressure })
    }

    /// Air of dry bulb t and dew point (below 0.01 °C: frost point) t_d at pressure p.
    ///
    /// # Errors
    /// As [`of_humidity_ratio`](Self::of_humidity_ratio).
    pub fn of_dew_point(
        dry_bulb: Temperature,
        dew_point: Temperature,
        pressure: Pressure,
    ) -> Result<Self, AirError> {
        let saturated = holds_vapour(dry_bulb, pressure)?;
        let vapour = saturation::pressure(dew_point)?.pascals();
        if vapour > saturated {
            return Err(AirError::Supersaturated);
        }
        Ok(Self { dry_bulb, water: HumidityRatio(ratio_of(vapour, pressure)), pressure })
    }

    /// Air of dry bulb t and thermodynamic wet bulb t* at pressure p, with W*ₛ the
    /// humidity ratio of saturated air at t*:
    /// W = [(2501 − 2.326 t*) W*ₛ − 1.006 (t − t*)] / (2501 + 1.86 t − 4.186 t*),
    /// and over ice, t* below 0 °C,
    /// W = [(2830 − 0.24 t*) W*ₛ − 1.006 (t − t*)] / (2830 + 1.86 t − 2.1 t*).
    ///
    /// An aspirated thermometer in a wet wick reads near this; one in still air reads higher.
    ///
    /// # Errors
    /// [`AirError::WetBulb`] where t* is above t or no air is so dry; else as
    /// [`of_relative_humidity`](Self::of_relative_humidity).
    ///
    /// # Source
    /// ASHRAE Handbook Fundamentals 2017, chapter 1, equations 33 and 35.
    pub fn of_wet_bulb(
        dry_bulb: Temperature,
        wet_bulb: Temperature,
        pressure: Pressure,
    ) -> Result<Self, AirError> {
        holds_vapour(dry_bulb, pressure)?;
        let soaked = ratio_of(holds_vapour(wet_bulb, pressure)?, pressure);
        if wet_bulb > dry_bulb {
            return Err(AirError::WetBulb);
        }
        let water = behind_wick(dry_bulb.celsius(), wet_bulb.celsius(), soaked);
        if water < 0.0 {
            return Err(AirError::WetBulb);
        }
        Self::of_humidity_ratio(dry_bulb, HumidityRatio(water), pressure)
    }

    /// The dry-bulb temperature.
    #[must_use]
    pub fn dry_bulb(&self) -> Temperature {
        self.dry_bulb
    }

    /// The humidity ratio W.
    #[must_use]
    pub fn humidity_ratio(&self) -> HumidityRatio {
        self.water
    }

    /// The pressure of air and vapour together, absolute.
    #[must_use]
    pub fn pressure(&self) -> Pressure {
        self.pressure
    }

    /// The pressure of the vapour alone: p_w = p W / (0.621945 + W).
    #[must_use]
    pub fn vapour_pressure(&self) -> Pressure {
        Pressure::from_pascals(self.pressure.pascals() * self.water.0 / (MASS_RATIO + self.water.0))
    }

    /// The relative humidity φ = p_w / p_ws(t).
    ///
    /// # Errors
    /// None for a state that exists.
    pub fn relative_humidity(&self) -> Result<Ratio, AirError> {
        let saturated = saturation::pressure(self.dry_bulb)?.pascals();
        Ok(Ratio::new((self.vapour_pressure().pascals() / saturated).min(1.0)))
    }

    /// The dew point; below 0.01 °C the frost point, where vapour settles as ice.
    ///
    /// # Errors
    /// [`AirError::OutsideRange`] for air so dry that it would lie below −100 °C.
    pub fn dew_point(&self) -> Result<Temperature, AirError> {
        saturation::temperature(self.vapour_pressure())
    }

    /// The thermodynamic wet bulb, by halving over the equations of
    /// [`of_wet_bulb`](Self::of_wet_bulb).
    ///
    /// Where dry air leaves open whether the wick holds water or ice (the two
    /// equations overlap by about 0.1 K at 0 °C), it is taken as water.
    ///
    /// # Errors
    /// [`AirError::WetBulb`] where it would lie below −100 °C.
    pub fn wet_bulb(&self) -> Result<Temperature, AirError> {
        let dry = self.dry_bulb.celsius();
        let missing = |wet: f64| {
            let saturated =
                saturation::pressure(Temperature::from_celsius(wet)).map_or(f64::NAN, Pressure::pascals);
            behind_wick(dry, wet, ratio_of(saturated, self.pressure)) - self.water.0
        };
        let lowest = saturation::DOMAIN.low.celsius();
        let (low, high) = if dry < 0.0 {
            (lowest, dry)
        } else if missing(0.0) <= 0.0 {
            (0.0, dry)
        } else {
            (lowest, -f64::MIN_POSITIVE)
        };
        if missing(low) > 0.0 {
            return Err(AirError::WetBulb);
        }
        Ok(Temperature::from_celsius(crossing(low, high, missing)))
    }

    /// The enthalpy h = 1.006 t + W (2501 + 1.86 t) in kJ for each kilogram of dry air,
    /// with 0 at dry air and liquid water of 0 °C.
    ///
    /// # Source
    /// ASHRAE Handbook Fundamentals 2017, chapter 1, equation 30.
    #[must_use]
    pub fn enthalpy(&self) -> SpecificEnthalpy {
        enthalpy(self.dry_bulb, self.water)
    }

    /// The volume v = R T (1 + 1.607858 W) / p, R = 287.042 J/(kg K).
    ///
    /// # Source
    /// ASHRAE Handbook Fundamentals 2017, chapter 1, equation 26.
    #[must_use]
    pub fn specific_volume(&self) -> SpecificVolume {
        let moist = 1.0 + 1.607_858 * self.water.0;
        SpecificVolume(GAS_CONSTANT * self.dry_bulb.kelvins() * moist / self.pressure.pascals())
    }
}

/// The enthalpy of air at `dry_bulb` with `water` as vapour in it, saturated or not.
pub(super) fn enthalpy(dry_bulb: Temperature, water: HumidityRatio) -> SpecificEnthalpy {
    let t = dry_bulb.celsius();
    SpecificEnthalpy::from_joules_per_kilogram(1e3 * (1.006 * t + water.0 * (2501.0 + 1.86 * t)))
}

/// The dry bulb of air with this enthalpy and humidity ratio:
/// t = (h − 2501 W) / (1.006 + 1.86 W), h in kJ/kg.
///
/// It may lie below the dew point: then the air is foggy, and a little warmer.
///
/// # Errors
/// [`AirError::NoHumidity`] for W below 0; [`AirError::OutsideRange`] outside −100 °C to 200 °C.
///
/// # Source
/// ASHRAE Handbook Fundamentals 2017, chapter 1, equation 30.
pub fn dry_bulb(of: SpecificEnthalpy, water: HumidityRatio) -> Result<Temperature, AirError> {
    if !(water.0 >= 0.0 && water.0.is_finite()) {
        return Err(AirError::NoHumidity);
    }
    let kilojoules = of.joules_per_kilogram() / 1e3;
    let at = Temperature::from_celsius((kilojoules - 2501.0 * water.0) / (1.006 + 1.86 * water.0));
    if saturation::DOMAIN.contains(&at) { Ok(at) } else { Err(AirError::OutsideRange) }
}

/// The humidity ratio of air saturated at `at`.
pub(super) fn saturated_ratio(at: Temperature, pressure: Pressure) -> Result<HumidityRatio, AirError> {
    Ok(HumidityRatio(ratio_of(holds_vapour(at, pressure)?, pressure)))
}

/// The saturation pressure in pascals, where air of this pressure can be saturated at all.
fn holds_vapour(at: Temperature, pressure: Pressure) -> Result<f64, AirError> {
    if !(10e3..=200e3).contains(&pressure.pascals()) {
        return Err(AirError::NoAirPressure);
    }
    let saturated = saturation::pressure(at)?.pascals();
    // At nine tenths of the pressure air is mostly steam, and no equation here is about it.
    if saturated < 0.9 * pressure.pascals() { Ok(saturated) } else { Err(AirError::Boiling) }
}

/// W of a vapour pressure, both in pascals.
fn ratio_of(vapour: f64, pressure: Pressure) -> f64 {
    MASS_RATIO * vapour / (pressure.pascals() - vapour)
}

/// W of air at `dry` that leaves a wick at `wet`, where saturated air has the ratio `soaked`.
fn behind_wick(dry: f64, wet: f64, soaked: f64) -> f64 {
    let given_up = 1.006 * (dry - wet);
    if wet >= 0.0 {
        ((2501.0 - 2.326 * wet) * soaked - given_up) / (2501.0 + 1.86 * dry - 4.186 * wet)
    } else {
        ((2830.0 - 0.24 * wet) * soaked - given_up) / (2830.0 + 1.86 * dry - 2.1 * wet)
    }
}
