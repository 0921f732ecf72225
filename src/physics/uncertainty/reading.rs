//! The uncertainty of a sensor's ohms and volts with given instruments.

use super::{Budget, Contribution, Input, Source, UncertaintyError};
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

/// The uncertainty of ohms read at a sensor that is at a measured temperature.
///
/// Temperature enters through the curve's own slope (exact), meter and leads as
/// they are. `reading` is the value at which the meter's percentage is taken:
/// the upper limit of the window is the safe choice.
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
    let nominal = curve.resistance(at).map_err(|_| UncertaintyError::OutsideModel)?;
    let slope = curve.slope(at).map_err(|_| UncertaintyError::OutsideModel)?;
    let leads = instruments.leads.map(Resistance::ohms);
    doubt(instruments, Some(slope * nominal.ohms()), reading.ohms(), &[(Source::Leads, leads)])
}

/// The uncertainty of volts at the signal of a sensor at a measured temperature.
///
/// The sensitivity to temperature is the central difference of
/// [`Circuit::voltage`] over the curve. The circuit's own tolerances are not part
/// of it: they belong to the window of a good circuit.
///
/// # Errors
/// Where the curve ends within a few thousandths of a kelvin, or a limit is below
/// zero or not finite.
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
    let model = |point: &[f64]| {
        let sensor = curve.resistance(Temperature::from_celsius(point[0])).ok()?;
        Some(circuit.voltage(sensor, meter).volts())
    };
    let slope = slope_inside(curve, at, model)?;
    doubt(instruments, Some(slope), reading.volts(), &[])
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
    let leads = instruments.leads.map(Resistance::ohms);
    doubt(instruments, per_kelvin, reading.ohms(), &[(Source::Leads, leads)])
}

/// The uncertainty of volts that no temperature moves: the meter's alone.
///
/// # Errors
/// Where a limit is below zero or not finite.
///
/// # Source
/// JCGM 100:2008, 5.1.2; tests/reference/04d_dmm_accuracy.csv.
pub fn meter_volts(reading: Voltage, instruments: &Instruments) -> Result<Doubt, UncertaintyError> {
    doubt(instruments, None, reading.volts(), &[])
}

/// The derivative by temperature, taken a little inside where the curve ends at `at`.
fn slope_inside(
    curve: &Curve,
    at: Temperature,
    model: impl Fn(&[f64]) -> Option<f64>,
) -> Result<f64, UncertaintyError> {
    const STEP: f64 = 0.05;
    let domain = curve.domain();
    if !domain.contains(&at) {
        return Err(UncertaintyError::OutsideModel);
    }
    // Four points two steps to either side: at an end the slope a tenth of a
    // kelvin inside differs by less than a hundredth of itself (2 × 0.1 K/T).
    let (least, most) = (domain.low.celsius() + 2.0 * STEP, domain.high.celsius() - 2.0 * STEP);
    let value = if least <= most { at.celsius().max(least).min(most) } else { at.celsius() };
    // The step comes from the limit alone: in °C the value's size means nothing.
    let moved = |point: &[f64]| model(&[value + point[0]]);
    let input = [Input { source: Source::Thermometer, value: 0.0, limit: 16.0 * STEP }];
    Ok(super::derivative(&input, 0, moved)?.value)
}

fn doubt(
    instruments: &Instruments,
    per_kelvin: Option<f64>,
    reading: f64,
    own: &[(Source, Option<f64>)],
) -> Result<Doubt, UncertaintyError> {
    let kelvins = |limit: Option<TemperatureDifference>| limit.map(TemperatureDifference::kelvins);
    let meter = instruments.meter.map(|meter| meter.limit(reading));
    let of_temperature = per_kelvin.map(|slope| {
        [
            (Source::Thermometer, kelvins(instruments.thermometer), slope),
            (Source::Soak, kelvins(instruments.soak), slope),
        ]
    });
    let own = own.iter().map(|&(source, limit)| (source, limit, 1.0));
    let (mut contributions, mut left_out) = (Vec::new(), Vec::new());
    let parts = of_temperature.into_iter().flatten().chain([(Source::MeterReading, meter, 1.0)]).chain(own);
    for (source, limit, sensitivity) in parts {
        match limit {
            Some(limit) => contributions.push(Contribution::limit(source, limit, sensitivity)),
            None => left_out.push(source),
        }
    }
    Ok(Doubt { budget: Budget::new(contributions)?, left_out })
}
