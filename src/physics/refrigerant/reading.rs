//! Gauge and thermometer together: superheat, subcooling, and the soaked system at rest.

use super::{Refrigerant, RefrigerantError};
use crate::physics::Band;
use crate::physics::uncertainty;
use crate::quantity::{Interval, Pressure, Ratio, Temperature, TemperatureDifference};

/// A pressure gauge: its class, and the end of its scale.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gauge {
    /// The limit of error as a part of full scale: class 1.6 of EN 837-1 is 0.016.
    pub accuracy: Ratio,
    /// Full scale.
    pub full_scale: Pressure,
}

impl Gauge {
    /// The limit of error, the same anywhere on the scale.
    ///
    /// # Example
    /// A class 1.6 gauge to 35 bar is good to ± 56 kPa.
    /// ```
    /// use bayleaf::physics::refrigerant::reading::Gauge;
    /// use bayleaf::quantity::{Pressure, Ratio};
    /// let gauge = Gauge { accuracy: Ratio::new(0.016), full_scale: Pressure::from_pascals(35e5) };
    /// assert!((gauge.limit().pascals() - 56e3).abs() < 1e-6);
    /// ```
    #[must_use]
    pub fn limit(self) -> Pressure {
        Pressure::from_pascals(self.accuracy.part() * self.full_scale.pascals())
    }
}

/// Limits of error of everything that a pressure and a temperature are compared with.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limits {
    /// Of the gauge.
    pub gauge: Pressure,
    /// Of the air pressure that the gauge stands in.
    pub air: Pressure,
    /// Of the thermometer on the line.
    pub thermometer: TemperatureDifference,
}

/// The distance of a line from saturation, with its uncertainty.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Departure {
    /// The saturation temperature of the measured pressure.
    pub saturation: Temperature,
    /// Superheat of vapour above saturation, or subcooling of liquid below it.
    pub difference: TemperatureDifference,
    /// U, k = 2.
    pub expanded: TemperatureDifference,
}

/// The pressure of a soaked system at rest, against saturation at its temperature.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rest {
    /// Below saturation: no liquid is left.
    Below,
    /// At saturation: liquid is present. That is not how much.
    Saturated,
    /// Above saturation: suspect gas that does not condense, such as air.
    Above,
    /// The uncertainty does not allow any of these.
    Undecided,
}

/// A comparison of a pressure at rest with saturation.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AtRest {
    /// What follows.
    pub verdict: Rest,
    /// Saturation at the measured temperature, and at the ends of what counts as saturated; absolute.
    pub expected: Band<Pressure>,
    /// Measured less saturation pressure.
    pub difference: Pressure,
    /// U of that difference, k = 2.
    pub expanded: Pressure,
}

impl AtRest {
    /// The pressures, absolute, at which the verdict is [`Rest::Saturated`]; `None` where U leaves none.
    #[must_use]
    pub fn proven(&self) -> Option<Interval<Pressure>> {
        let inside = guarded(&self.expected, self.expanded.pascals());
        let ends =
            Interval { low: Pressure::from_pascals(inside.low), high: Pressure::from_pascals(inside.high) };
        (inside.low <= inside.high).then_some(ends)
    }
}

/// The band less a guard of U on either side, in pascals; its ends may have changed places.
fn guarded(expected: &Band<Pressure>, expanded: f64) -> Interval<f64> {
    Interval { low: expected.low.pascals() + expanded, high: expected.high.pascals() - expanded }
}

impl Limits {
    fn stand(&self) -> Result<(), RefrigerantError> {
        let all = [self.gauge.pascals(), self.air.pascals(), self.thermometer.kelvins()];
        let stand = all.iter().all(|limit| *limit >= 0.0 && limit.is_finite());
        if stand { Ok(()) } else { Err(RefrigerantError::NoLimit) }
    }
}

impl Refrigerant {
    /// Superheat of a suction line: t_line − t_sat(p), p absolute, with U from gauge, air pressure,
    /// saturation equation and thermometer.
    ///
    /// # Errors
    /// [`RefrigerantError::NoLimit`] for a limit below zero; those of
    /// [`saturation_temperature`](Self::saturation_temperature). A gauge that may err past
    /// the ends of the range has its uncertainty taken at the reading.
    ///
    /// # Source
    /// JCGM 100:2008, 4.3.7 and 5.1.2: pressures divided by dp/dT at saturation, a first-order
    /// step that holds while U is some kelvins.
    pub fn superheat(
        self,
        suction: Pressure,
        line: Temperature,
        limits: &Limits,
    ) -> Result<Departure, RefrigerantError> {
        self.departure(suction, limits, |saturation| line.celsius() - saturation.celsius())
    }

    /// Subcooling of a liquid line: t_sat(p) − t_line, else as [`superheat`](Self::superheat).
    ///
    /// # Errors
    /// As [`superheat`](Self::superheat).
    pub fn subcooling(
        self,
        liquid: Pressure,
        line: Temperature,
        limits: &Limits,
    ) -> Result<Departure, RefrigerantError> {
        self.departure(liquid, limits, |saturation| saturation.celsius() - line.celsius())
    }

    fn departure(
        self,
        pressure: Pressure,
        limits: &Limits,
        difference: impl Fn(Temperature) -> f64,
    ) -> Result<Departure, RefrigerantError> {
        limits.stand()?;
        let saturation = self.saturation_temperature(pressure)?;
        let in_kelvins = 1.0 / self.saturation_slope(saturation)?;
        let expanded = uncertainty::expanded(&[
            limits.gauge.pascals() * in_kelvins,
            limits.air.pascals() * in_kelvins,
            self.equation_limit().part() * pressure.pascals() * in_kelvins,
            limits.thermometer.kelvins(),
        ]);
        Ok(Departure {
            saturation,
            difference: TemperatureDifference::from_kelvins(difference(saturation)),
            expanded: TemperatureDifference::from_kelvins(expanded),
        })
    }

    /// Holds the pressure of a soaked system at rest against saturation at its temperature.
    ///
    /// `allowed` is how far off saturation, in kelvins, still counts as saturated. With that band
    /// and a guard of U on each side: saturated where the pressure is inside by U, below or
    /// above where it is outside by U, undecided between.
    ///
    /// # Errors
    /// [`RefrigerantError::NoLimit`] for a limit or band below zero; outside the range, or above
    /// the critical point, at the temperature or an end of the band: there the check is void.
    ///
    /// # Source
    /// JCGM 100:2008 for U; JCGM 106:2012 for the guard band w = U. That a pressure above saturation
    /// points to gas that does not condense is common practice, no source.
    pub fn at_rest(
        self,
        pressure: Pressure,
        soaked: Temperature,
        allowed: TemperatureDifference,
        limits: &Limits,
    ) -> Result<AtRest, RefrigerantError> {
        limits.stand()?;
        let band_stands = allowed.kelvins() >= 0.0 && allowed.kelvins().is_finite();
        if !(band_stands && pressure.pascals() > 0.0 && pressure.pascals().is_finite()) {
            return Err(RefrigerantError::NoLimit);
        }
        let expected = Band {
            low: self.saturation_pressure(soaked.minus(allowed))?,
            nominal: self.saturation_pressure(soaked)?,
            high: self.saturation_pressure(soaked.plus(allowed))?,
        };
        let expanded = uncertainty::expanded(&[
            limits.gauge.pascals(),
            limits.air.pascals(),
            self.equation_limit().part() * expected.nominal.pascals(),
            limits.thermometer.kelvins() * self.saturation_slope(soaked)?,
        ]);
        let verdict = if guarded(&expected, expanded).contains(&pressure.pascals()) {
            Rest::Saturated
        } else if pressure.pascals() < expected.low.pascals() - expanded {
            Rest::Below
        } else if pressure.pascals() > expected.high.pascals() + expanded {
            Rest::Above
        } else {
            Rest::Undecided
        };
        Ok(AtRest {
            verdict,
            expected,
            difference: Pressure::from_pascals(pressure.pascals() - expected.nominal.pascals()),
            expanded: Pressure::from_pascals(expanded),
        })
    }
}
