//! The uncertainty of a sensor's ohms and volts with given instruments.

use super::{Budget, Contribution, Source, UncertaintyError};
use crate::physics::circuit::{Circuit, Meter};
use crate::physics::curve::Curve;
use crate::quantity::{MeterRanges, Resistance, Temperature, TemperatureDifference, Voltage};

/// The instruments behind a reading, and how well sensor and thermometer agree.
///
/// What is `None` was not given: it is left out of the budget and named.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Instruments {
    /// The thermometer's limit of error.
    pub thermometer: Option<TemperatureDifference>,
    /// How far the sensor may be from the thermometer after soaking.
    pub soak: Option<TemperatureDifference>,
    /// The meter's ranges of volts or ohms, whichever is read.
    pub meter: Option<MeterRanges>,
    /// The most that the meter's leads add to ohms. It is not subtracted from the
    /// reading; whoever subtracts the reading of shorted leads does better.
    pub leads: Option<Resistance>,
}

/// An uncertainty, and what could not be part of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Doubt {
    /// What is known.
    pub budget: Budget,
    /// What was not given.
    pub left_out: Vec<Source>,
}

/// How a reading answers to what its instruments may be off by.
///
/// It holds for every reading of one sensor at one temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Response {
    /// How far the reading moves for a kelvin; `None` without the sensor on the line.
    per_kelvin: Option<f64>,
    /// Whether the meter's leads are in the reading.
    leads: bool,
}

impl Response {
    /// Volts on a line without its sensor: nothing counts but the meter.
    pub const UNPLUGGED: Self = Self { per_kelvin: None, leads: false };

    /// Ohms at a sensor: the curve's own slope.
    ///
    /// # Errors
    /// Where the curve is not known.
    pub fn of_ohms(curve: &Curve, at: Temperature) -> Result<Self, UncertaintyError> {
        let nominal = curve.resistance(at).map_err(|_| UncertaintyError::OutsideModel)?;
        let slope = curve.slope(at).map_err(|_| UncertaintyError::OutsideModel)?;
        Ok(Self { per_kelvin: Some(slope * nominal.ohms()), leads: true })
    }

    /// Volts at a sensor's signal: dV/dT = dV/dR · dR/dT, both exact.
    ///
    /// # Errors
    /// Where the curve is not known.
    pub fn of_volts(
        curve: &Curve,
        circuit: &Circuit,
        meter: Option<&Meter>,
        at: Temperature,
    ) -> Result<Self, UncertaintyError> {
        let nominal = curve.resistance(at).map_err(|_| UncertaintyError::OutsideModel)?;
        let slope = curve.slope(at).map_err(|_| UncertaintyError::OutsideModel)?;
        let per_kelvin = circuit.voltage_slope(nominal, meter) * (slope * nominal.ohms());
        Ok(Self { per_kelvin: Some(per_kelvin), leads: false })
    }

    /// The uncertainty of a reading, in its unit.
    ///
    /// `reading` is the value at which the meter's percentage is taken: the upper
    /// limit of the window is the safe choice.
    ///
    /// # Errors
    /// When a limit is below zero or not finite.
    ///
    /// # Source
    /// JCGM 100:2008, 5.1.2.
    pub fn doubt(&self, reading: f64, instruments: &Instruments) -> Result<Doubt, UncertaintyError> {
        let kelvins = |limit: Option<TemperatureDifference>| limit.map(TemperatureDifference::kelvins);
        let meter = instruments.meter.map(|meter| meter.limit(reading));
        let leads = instruments.leads.map(Resistance::ohms);
        let parts = [
            (Source::Thermometer, kelvins(instruments.thermometer), self.per_kelvin),
            (Source::Soak, kelvins(instruments.soak), self.per_kelvin),
            (Source::MeterReading, meter, Some(1.0)),
            (Source::Leads, leads, self.leads.then_some(1.0)),
        ];
        let (mut contributions, mut left_out) = (Vec::with_capacity(parts.len()), Vec::new());
        for (source, limit, sensitivity) in parts {
            match (limit, sensitivity) {
                (_, None) => {}
                (Some(limit), Some(sensitivity)) => {
                    contributions.push(Contribution::limit(source, limit, sensitivity));
                }
                (None, Some(_)) => left_out.push(source),
            }
        }
        Ok(Doubt { budget: Budget::new(contributions)?, left_out })
    }
}

/// The uncertainty of ohms read at a sensor that is at a measured temperature.
///
/// Temperature enters through the curve's own slope (exact), meter and leads as
/// they are; see [`Response::doubt`].
///
/// # Errors
/// Where the curve is not known, or a limit is below zero or not finite.
///
/// # Source
/// JCGM 100:2008, 5.1.2; worked figures in tests/reference/decisions.rs.
pub fn ohms(
    curve: &Curve,
    at: Temperature,
    reading: Resistance,
    instruments: &Instruments,
) -> Result<Doubt, UncertaintyError> {
    Response::of_ohms(curve, at)?.doubt(reading.ohms(), instruments)
}

/// The uncertainty of volts at the signal of a sensor at a measured temperature.
///
/// The sensitivity to temperature is exact: the circuit's slope times the curve's.
/// The circuit's own tolerances are not part of it: they belong to the window of a
/// good circuit.
///
/// # Errors
/// Where the curve is not known, or a limit is below zero or not finite.
///
/// # Source
/// JCGM 100:2008, 5.1.2 and 5.1.3.
pub fn volts(
    curve: &Curve,
    circuit: &Circuit,
    meter: Option<&Meter>,
    at: Temperature,
    reading: Voltage,
    instruments: &Instruments,
) -> Result<Doubt, UncertaintyError> {
    Response::of_volts(curve, circuit, meter, at)?.doubt(reading.volts(), instruments)
}
