//! A coil's ohms at its temperature, and what its faults make of them.

use super::Band;
use super::copper::{self, CopperError};
use crate::quantity::{Current, Interval, Ratio, Resistance, Temperature, Toleranced, Voltage};

/// A copper coil as its document rates it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RatedCoil {
    /// The resistance, with its tolerance where one is given.
    pub resistance: Toleranced<Resistance>,
    /// The temperature it holds at.
    pub at: Temperature,
}

/// What may be wrong with a coil or its circuit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CoilFault {
    /// The winding is broken.
    Open,
    /// A wire to the coil is broken, or a contact is.
    OpenWire,
    /// A dead short across the whole coil.
    Shorted,
    /// A part of the turns is bridged: the ohms fall by the same part.
    ShortedTurns(Ratio),
    /// A corroded contact in series.
    Series(Resistance),
    /// Another coil, by its nominal resistance at the rated temperature.
    WrongPart(Resistance),
    /// The coil is warmer, or colder, than it is taken to be.
    OtherTemperature(Temperature),
}

impl CoilFault {
    /// The rows of a fault dictionary for a coil taken to be at a temperature;
    /// other parts of a set come on top.
    ///
    /// # Source
    /// Common practice, no source: sizes that a workshop meets.
    #[must_use]
    pub fn dictionary(at: Temperature) -> Vec<Self> {
        let warmer = |kelvins: f64| Self::OtherTemperature(Temperature::from_celsius(at.celsius() + kelvins));
        [Self::Open, Self::OpenWire, Self::Shorted]
            .into_iter()
            .chain([0.05, 0.1, 0.2, 0.5].map(|part| Self::ShortedTurns(Ratio::new(part))))
            .chain([0.2, 1.0, 5.0, 50.0].map(|ohms| Self::Series(Resistance::from_ohms(ohms))))
            .chain([-20.0, 20.0, 60.0].map(warmer))
            .collect()
    }
}

/// What meters show, and what the coil takes.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CoilReading {
    /// The ohmmeter's reading, leads included; `None` is over range.
    pub resistance: Option<Resistance>,
    /// The current at the stated voltage; `None` where only the feed's own
    /// resistance, or its fuse, limits it.
    pub current: Option<Current>,
    /// The voltage across the coil at its own plug: what a contact in series
    /// leaves of the stated one.
    pub voltage: Voltage,
}

/// Between which limits coils with one fault read; a field is `None` where it was
/// not given, or where nothing limits it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CoilWindow {
    /// The ohms; infinite is over range.
    pub resistance: Interval<Resistance>,
    /// The current over the battery's voltages.
    pub current: Option<Interval<Current>>,
    /// The voltage across the coil at its own plug, over the battery's voltages.
    pub voltage: Option<Interval<Voltage>>,
}

impl RatedCoil {
    /// The nominal resistance at a temperature.
    ///
    /// # Errors
    /// As [`copper::resistance`].
    pub fn nominal(&self, at: Temperature) -> Result<Resistance, CopperError> {
        copper::resistance(self.resistance.nominal, self.at, at)
    }

    /// Least, nominal and greatest resistance of a good coil at a temperature.
    ///
    /// `None` without a tolerance: a limit is never computed from one that was not given.
    ///
    /// # Errors
    /// As [`copper::resistance`].
    pub fn band(&self, at: Temperature) -> Result<Option<Band<Resistance>>, CopperError> {
        let nominal = self.nominal(at)?;
        let Some(limits) = self.resistance.limits else { return Ok(None) };
        let low = copper::resistance(limits.low, self.at, at)?;
        let high = copper::resistance(limits.high, self.at, at)?;
        Ok(Some(Band { low, nominal, high }))
    }

    /// The resistances of a good coil somewhere between two temperatures.
    ///
    /// # Errors
    /// As [`copper::resistance`].
    pub fn between(
        &self,
        temperatures: Interval<Temperature>,
    ) -> Result<Option<Interval<Resistance>>, CopperError> {
        let ends = (self.band(temperatures.low)?, self.band(temperatures.high)?);
        let (Some(cold), Some(hot)) = ends else { return Ok(None) };
        Ok(Some(Interval { low: cold.low, high: hot.high }))
    }

    /// The mean temperature of a nominal coil behind its ohms.
    ///
    /// # Errors
    /// As [`copper::temperature`].
    pub fn temperature(&self, reading: Resistance) -> Result<Temperature, CopperError> {
        copper::temperature(self.resistance.nominal, self.at, reading)
    }

    /// What a nominal coil reads with a fault, or without one.
    ///
    /// `leads` is the resistance of the meter's leads, which a reading includes
    /// unless it was set to zero; `volts` is what the circuit has to drive the
    /// coil with.
    ///
    /// # Errors
    /// As [`copper::resistance`]; [`CopperError::NotPhysical`] for a part of the
    /// turns outside 0 to 1, leads or a series resistance below zero, or a
    /// negative voltage.
    ///
    /// # Source
    /// Ohm's law; the part of the ohms that bridged turns take with them is the
    /// part of the turns, for wire of one gauge (common practice, no source).
    pub fn reading(
        &self,
        fault: Option<CoilFault>,
        at: Temperature,
        leads: Resistance,
        volts: Voltage,
    ) -> Result<CoilReading, CopperError> {
        let good = self.nominal(at)?.ohms();
        let not_negative = |value: f64| {
            if value.is_finite() && value >= 0.0 { Ok(value) } else { Err(CopperError::NotPhysical) }
        };
        let (leads, volts) = (not_negative(leads.ohms())?, not_negative(volts.volts())?);
        let ohms = match fault {
            None => good,
            Some(open @ (CoilFault::Open | CoilFault::OpenWire)) => {
                // Nothing flows, so nothing is lost on the way to an open winding.
                let voltage = if open == CoilFault::Open { volts } else { 0.0 };
                return Ok(CoilReading {
                    resistance: None,
                    current: Some(Current::from_amperes(0.0)),
                    voltage: Voltage::from_volts(voltage),
                });
            }
            Some(CoilFault::Shorted) => 0.0,
            Some(CoilFault::ShortedTurns(part)) if (0.0..=1.0).contains(&part.part()) => {
                good * (1.0 - part.part())
            }
            Some(CoilFault::ShortedTurns(_)) => return Err(CopperError::NotPhysical),
            Some(CoilFault::Series(extra)) => not_negative(good + not_negative(extra.ohms())?)?,
            Some(CoilFault::WrongPart(other)) => copper::resistance(other, self.at, at)?.ohms(),
            Some(CoilFault::OtherTemperature(other)) => self.nominal(other)?.ohms(),
        };
        let current = volts / ohms;
        let left = match fault {
            Some(CoilFault::Series(_)) => good / ohms,
            // A dead short has no voltage, whatever feeds it.
            _ if ohms <= 0.0 => 0.0,
            _ => 1.0,
        };
        Ok(CoilReading {
            resistance: Some(Resistance::from_ohms(not_negative(ohms + leads)?)),
            current: current.is_finite().then(|| Current::from_amperes(current)),
            voltage: Voltage::from_volts(volts * left),
        })
    }

    /// Least and greatest readings with a fault, or without one, over the coil's
    /// tolerance and the battery's voltages; leads are not in the ohms.
    ///
    /// Every reading rises or falls with each of the two, so their ends are exact.
    /// `None` without a tolerance where the fault leaves it in the reading, and for
    /// [`CoilFault::WrongPart`], whose tolerance is not known.
    ///
    /// # Errors
    /// As for [`reading`](Self::reading).
    pub fn window(
        &self,
        fault: Option<CoilFault>,
        at: Temperature,
        battery: Option<Interval<Voltage>>,
    ) -> Result<Option<CoilWindow>, CopperError> {
        let certain = matches!(fault, Some(CoilFault::Open | CoilFault::OpenWire | CoilFault::Shorted));
        let nominal = Interval { low: self.resistance.nominal, high: self.resistance.nominal };
        let limits = if certain { Some(nominal) } else { self.resistance.limits };
        let (Some(limits), false) = (limits, matches!(fault, Some(CoilFault::WrongPart(_)))) else {
            return Ok(None);
        };
        let end = |ohms: Resistance, volts: Voltage| {
            let coil = Self { resistance: Toleranced { nominal: ohms, limits: None }, at: self.at };
            coil.reading(fault, at, Resistance::from_ohms(0.0), volts)
        };
        let volts =
            battery.unwrap_or(Interval { low: Voltage::from_volts(0.0), high: Voltage::from_volts(0.0) });
        let (least, most) = (end(limits.low, volts.low)?, end(limits.high, volts.high)?);
        let (smallest, greatest) =
            (end(limits.high, volts.low)?.current, end(limits.low, volts.high)?.current);
        let ohms = |reading: CoilReading| reading.resistance.unwrap_or(Resistance::from_ohms(f64::INFINITY));
        Ok(Some(CoilWindow {
            resistance: Interval { low: ohms(least), high: ohms(most) },
            current: battery.and(smallest.zip(greatest)).map(|(low, high)| Interval { low, high }),
            voltage: battery.map(|_| Interval { low: least.voltage, high: most.voltage }),
        }))
    }
}

/// Single faults that explain a reading, each with the sizes that do.
///
/// A field is `None` where no size does. A size that begins at nothing says that
/// a good coil explains the reading too.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Causes {
    /// The part of the turns that is bridged.
    pub shorted_turns: Option<Interval<Ratio>>,
    /// The resistance in series.
    pub series: Option<Interval<Resistance>>,
    /// The temperature of a good coil, where one inside [`copper::DOMAIN`] reads so.
    pub temperature: Option<Interval<Temperature>>,
}

/// From a coil's reading back to its causes.
///
/// `reading` holds the meter's own doubt, its leads taken off; `good` is what a
/// good coil may have at the stated temperature.
///
/// # Errors
/// When a resistance is not above zero or not finite.
///
/// # Source
/// Interval arithmetic on R = R_good (1 − part) and R = R_good + series, both
/// monotone in each argument.
pub fn causes(
    coil: &RatedCoil,
    good: Interval<Resistance>,
    reading: Interval<Resistance>,
) -> Result<Causes, CopperError> {
    let (low, high) = (copper::physical(good.low)?, copper::physical(good.high)?);
    let (least, most) = (copper::physical(reading.low)?, copper::physical(reading.high)?);
    let sizes = |smallest: f64, largest: f64| (largest >= 0.0).then(|| (smallest.max(0.0), largest));
    let turns = sizes(1.0 - most / low, 1.0 - least / high);
    let series = sizes(least - high, most - low);
    let limits = coil.resistance.limits;
    let least_good = limits.map_or(coil.resistance.nominal, |limits| limits.low);
    let most_good = limits.map_or(coil.resistance.nominal, |limits| limits.high);
    let temperature = temperatures(
        copper::factor(coil.at)?,
        least / copper::physical(most_good)?,
        most / copper::physical(least_good)?,
    );
    Ok(Causes {
        shorted_turns: turns.map(|(low, high)| Interval { low: Ratio::new(low), high: Ratio::new(high) }),
        series: series.map(|(low, high)| Interval {
            low: Resistance::from_ohms(low),
            high: Resistance::from_ohms(high),
        }),
        temperature,
    })
}

/// The temperatures inside [`copper::DOMAIN`] between two parts of the rated resistance.
fn temperatures(rated: f64, least: f64, most: f64) -> Option<Interval<Temperature>> {
    let at = |part: f64| copper::REFERENCE.celsius() + (rated * part - 1.0) / copper::COEFFICIENT;
    let low = at(least).max(copper::DOMAIN.low.celsius());
    let high = at(most).min(copper::DOMAIN.high.celsius());
    let ends = Interval { low: Temperature::from_celsius(low), high: Temperature::from_celsius(high) };
    (low <= high).then_some(ends)
}
