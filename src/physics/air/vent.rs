//! The air that leaves an evaporator for a stated cooling duty.

use super::moist::{HumidityRatio, MoistAir};
use super::{AirError, crossing, dry_bulb, saturation};
use crate::physics::Band;
use crate::quantity::{
    Interval, Pressure, Ratio, SpecificEnthalpy, Temperature, TemperatureDifference, Toleranced,
};

/// What a cooled air is like.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outlet {
    /// The air that leaves.
    pub air: MoistAir,
    /// Water that settled, per kilogram of dry air; zero where the air was cooled dry.
    pub condensed: HumidityRatio,
}

/// How an evaporator cools: what it takes from each kilogram of air, and how humid air leaves it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cooling {
    /// The air-side duty for each kilogram of dry air.
    pub duty: Toleranced<SpecificEnthalpy>,
    /// Relative humidity of the air that leaves while water settles: 1 for saturated air;
    /// less where some air passes between the fins untouched.
    pub outlet_humidity: Ratio,
}

/// The air before the evaporator as measured, with the instruments' limits of error.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Inlet {
    /// Dry bulb as read.
    pub dry_bulb: Temperature,
    /// Relative humidity as read.
    pub humidity: Ratio,
    /// The thermometer's limit of error.
    pub thermometer: TemperatureDifference,
    /// The hygrometer's limit of error, in parts of relative humidity (3 % is 0.03).
    pub hygrometer: Ratio,
}

/// Whether water should run from the drain.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Dripping {
    /// The dew point is above every temperature the evaporator may have.
    Yes,
    /// The dew point is below every temperature the evaporator may have.
    No,
    /// It lies among them, or within the uncertainty of its measurement.
    Undecided,
}

impl Cooling {
    /// The air that leaves, with the duty at its nominal value: h_out = h_in − q.
    ///
    /// As long as air of that enthalpy and the inlet's own humidity ratio is not more humid
    /// than `outlet_humidity`, it was cooled dry. Otherwise water settles, and the air
    /// leaves at `outlet_humidity` with that enthalpy. The heat that the settled water
    /// takes along is left out: [`settled_share`](Self::settled_share) says how much that is.
    ///
    /// # Range
    /// Outlets from −40 °C, below which no evaporator of a vehicle cools.
    ///
    /// # Errors
    /// [`AirError::NoDuty`] for a duty below zero; [`AirError::NoHumidity`] for an outlet humidity
    /// outside 0 to 1; [`AirError::EntersTooHumid`] where the air comes in more humid than
    /// `outlet_humidity` and the duty is too small to change that; [`AirError::OutsideRange`].
    ///
    /// # Source
    /// Energy balance over dry air with equation 30 of ASHRAE Handbook Fundamentals 2017, chapter 1.
    ///
    /// # Example
    /// 31 °C at 50 % less 30 kJ/kg leaves at 13.7 °C, if it leaves at 95 % relative humidity.
    /// ```
    /// use bayleaf::physics::air::MoistAir;
    /// use bayleaf::physics::air::vent::Cooling;
    /// use bayleaf::physics::atmosphere::SEA_LEVEL;
    /// use bayleaf::quantity::{Ratio, Temperature, toleranced};
    /// let inlet = MoistAir::of_relative_humidity(Temperature::from_celsius(31.0), Ratio::new(0.5), SEA_LEVEL)?;
    /// let duty = toleranced("30 kJ/kg").expect("a duty");
    /// let outlet = Cooling { duty, outlet_humidity: Ratio::new(0.95) }.outlet(&inlet)?;
    /// assert!((outlet.air.dry_bulb().celsius() - 13.7).abs() < 0.05);
    /// # Ok::<(), bayleaf::physics::air::AirError>(())
    /// ```
    pub fn outlet(&self, inlet: &MoistAir) -> Result<Outlet, AirError> {
        cooled(inlet, self.duty.nominal, self.outlet_humidity)
    }

    /// The part of the duty that the settled water takes along, which [`outlet`](Self::outlet)
    /// leaves out: W c t/q, with W settled, c = 4.186 kJ/(kg K) and t the outlet's °C.
    ///
    /// `None` where no water settles, where it freezes, or without a duty.
    ///
    /// # Source
    /// Enthalpy of liquid water, ASHRAE Handbook Fundamentals 2017, chapter 1 (number of the
    /// equation not given here: from memory). 10 g/kg at 15 °C are 0.63 of 30 kJ/kg: 2.1 %.
    #[must_use]
    pub fn settled_share(&self, outlet: &Outlet) -> Option<Ratio> {
        let (water, celsius) = (outlet.condensed.kilograms_per_kilogram(), outlet.air.dry_bulb().celsius());
        let duty = self.duty.nominal.joules_per_kilogram();
        let share = water * WATER * celsius / duty;
        (water > 0.0 && celsius > 0.0 && share.is_finite()).then(|| Ratio::new(share))
    }

    /// The temperatures that the air may leave with: nominal, and the exact corners of
    /// thermometer, hygrometer and duty.
    ///
    /// The outlet rises with the inlet's temperature and humidity and falls with the duty,
    /// so the ends are corners; [`Inlet::corners`] gives those of measured air.
    /// `None` where the duty has no tolerance: a limit that was not given is not computed.
    ///
    /// # Errors
    /// As [`outlet`](Self::outlet), at any corner.
    pub fn window(&self, inlet: &Band<MoistAir>) -> Result<Option<Band<Temperature>>, AirError> {
        let leaving = |air: &MoistAir, duty| Ok(cooled(air, duty, self.outlet_humidity)?.air.dry_bulb());
        let nominal = leaving(&inlet.nominal, self.duty.nominal)?;
        let Some(duty) = self.duty.limits else { return Ok(None) };
        let low = leaving(&inlet.low, duty.high)?;
        let high = leaving(&inlet.high, duty.low)?;
        Ok(Some(Band { low, nominal, high }))
    }
}

impl Inlet {
    /// The air as read, and the coldest driest and hottest dampest that it may be; the humidity
    /// at a corner stays within 0 to 100 %.
    ///
    /// # Errors
    /// Those of [`MoistAir::of_relative_humidity`]; [`AirError::NoHumidity`] for a limit of
    /// error below zero.
    pub fn corners(&self, pressure: Pressure) -> Result<Band<MoistAir>, AirError> {
        let limits_stand = self.thermometer.kelvins() >= 0.0 && self.hygrometer.part() >= 0.0;
        if !limits_stand {
            return Err(AirError::NoHumidity);
        }
        let corner = |sign: f64| {
            let dry_bulb =
                Temperature::from_celsius(self.dry_bulb.celsius() + sign * self.thermometer.kelvins());
            let humidity = (self.humidity.part() + sign * self.hygrometer.part()).clamp(0.0, 1.0);
            MoistAir::of_relative_humidity(dry_bulb, Ratio::new(humidity), pressure)
        };
        let nominal = MoistAir::of_relative_humidity(self.dry_bulb, self.humidity, pressure)?;
        Ok(Band { low: corner(-1.0)?, nominal, high: corner(1.0)? })
    }
}

/// Whether an evaporator of these temperatures should drip in this air: where the dew point is above them.
///
/// # Errors
/// Those of [`MoistAir::dew_point`], save that air without water drips nowhere.
pub fn dripping(air: &Band<MoistAir>, evaporator: Interval<Temperature>) -> Result<Dripping, AirError> {
    let dew = |air: &MoistAir| {
        if air.humidity_ratio().kilograms_per_kilogram() > 0.0 {
            air.dew_point()
        } else {
            Ok(saturation::DOMAIN.low)
        }
    };
    let (driest, dampest) = (dew(&air.low)?, dew(&air.high)?);
    Ok(if driest > evaporator.high {
        Dripping::Yes
    } else if dampest < evaporator.low {
        Dripping::No
    } else {
        Dripping::Undecided
    })
}

/// The specific heat of water, in J/(kg K).
const WATER: f64 = 4186.0;

/// The coldest outlet that is looked for.
const COLDEST: Temperature = Temperature::from_celsius(-40.0);

/// Air less a duty.
fn cooled(inlet: &MoistAir, duty: SpecificEnthalpy, outlet_humidity: Ratio) -> Result<Outlet, AirError> {
    let taken = duty.joules_per_kilogram();
    if !(taken >= 0.0 && taken.is_finite()) {
        return Err(AirError::NoDuty);
    }
    let humid = outlet_humidity.part();
    if !(humid > 0.0 && humid <= 1.0) {
        return Err(AirError::NoHumidity);
    }
    let pressure = inlet.pressure();
    let left = inlet.enthalpy().joules_per_kilogram() - taken;
    let dry = dry_bulb(SpecificEnthalpy::from_joules_per_kilogram(left), inlet.humidity_ratio())?;
    let at_humidity = |celsius: f64| {
        MoistAir::of_relative_humidity(Temperature::from_celsius(celsius), outlet_humidity, pressure)
    };
    let kilograms = |air: &MoistAir| air.humidity_ratio().kilograms_per_kilogram();
    let most = kilograms(&at_humidity(dry.celsius())?);
    if kilograms(inlet) <= most {
        let air = MoistAir::of_humidity_ratio(dry, inlet.humidity_ratio(), pressure)?;
        return in_range(Outlet { air, condensed: HumidityRatio::from_kilograms_per_kilogram(0.0) });
    }
    // Water settles, which warms: between the dry answer and the inlet lies the true one.
    let excess = |celsius: f64| {
        at_humidity(celsius).map_or(f64::NAN, |air| air.enthalpy().joules_per_kilogram() - left)
    };
    let entered = inlet.dry_bulb().celsius();
    if excess(entered) < 0.0 {
        return Err(AirError::EntersTooHumid);
    }
    let air = at_humidity(crossing(dry.celsius(), entered, excess))?;
    let condensed = HumidityRatio::from_kilograms_per_kilogram((kilograms(inlet) - kilograms(&air)).max(0.0));
    in_range(Outlet { air, condensed })
}

fn in_range(outlet: Outlet) -> Result<Outlet, AirError> {
    if outlet.air.dry_bulb() >= COLDEST { Ok(outlet) } else { Err(AirError::OutsideRange) }
}
