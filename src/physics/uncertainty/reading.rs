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

impl Instruments {
    /// The limits of error behind a reading, in its unit.
    ///
    /// `reading` is the value at which the meter's percentage is taken: the upper
    /// limit of the window is the safe choice.
    #[must_use]
    pub fn errors(&self, reading: f64) -> Errors {
        let meter = self.meter.as_ref().map(|meter| meter.limit(reading));
        Errors { thermometer: self.thermometer, soak: self.soak, meter, leads: self.leads }
    }
}

/// The limits of error behind one reading. What is `None` was not given.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Errors {
    /// The thermometer's.
    pub thermometer: Option<TemperatureDifference>,
    /// Between sensor and thermometer.
    pub soak: Option<TemperatureDifference>,
    /// The meter's, in the unit of the reading.
    pub meter: Option<f64>,
    /// The most that the leads add.
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

    /// The uncertainty of a reading with these limits of error behind it.
    ///
    /// # Errors
    /// When a limit is below zero or not finite.
    ///
    /// # Source
    /// JCGM 100:2008, 5.1.2.
    pub fn doubt(&self, errors: &Errors) -> Result<Doubt, UncertaintyError> {
        let kelvins = |limit: Option<TemperatureDifference>| limit.map(TemperatureDifference::kelvins);
        let leads = errors.leads.map(Resistance::ohms);
        let parts = [
            (Source::Thermometer, kelvins(errors.thermometer), self.per_kelvin),
            (Source::Soak, kelvins(errors.soak), self.per_kelvin),
            (Source::MeterReading, errors.meter, Some(1.0)),
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
/// they are; see [`Instruments::errors`] for `reading`.
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
    Response::of_ohms(curve, at)?.doubt(&instruments.errors(reading.ohms()))
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
    Response::of_volts(curve, circuit, meter, at)?.doubt(&instruments.errors(reading.volts()))
}

/// The uncertainty of ohms that a meter shows of a part at a measured temperature.
///
/// `per_kelvin` is the part's own slope in Ω/K; `None` where no temperature moves
/// it, so that the thermometer has no place in the budget.
///
/// # Errors
/// Where a limit is below zero or not finite.
///
/// # Source
/// JCGM 100:2008, 5.1.2.
pub fn meter_ohms(
    reading: Resistance,
    per_kelvin: Option<f64>,
    instruments: &Instruments,
) -> Result<Doubt, UncertaintyError> {
    Response { per_kelvin, leads: true }.doubt(&instruments.errors(reading.ohms()))
}

/// The uncertainty of volts that no temperature moves: the meter's alone.
///
/// # Errors
/// Where a limit is below zero or not finite.
///
/// # Source
/// JCGM 100:2008, 5.1.2; tests/reference/04d_dmm_accuracy.csv.
pub fn meter_volts(reading: Voltage, instruments: &Instruments) -> Result<Doubt, UncertaintyError> {
    Response::UNPLUGGED.doubt(&instruments.errors(reading.volts()))
}
