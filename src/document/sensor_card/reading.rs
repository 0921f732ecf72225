//! What one sensor reads: ohms and volts at a temperature, with their limits.

use super::KeyFigure;
use super::figures::{self, VOLT_DECIMALS};
use crate::document::Context;
use crate::model::{Multimeter, Sensor};
use crate::physics::Band;
use crate::physics::circuit::{Circuit, Corners, Meter, Probe};
use crate::physics::tolerance::{self, service_limits};
use crate::quantity::{Interval, Ratio, Resistance, Temperature, Voltage};
use crate::words::Message;

/// A sensor that is not there.
const OPEN: Resistance = Resistance::from_ohms(f64::INFINITY);

/// A sensor with its circuit and the meter on it.
pub(in crate::document) struct Readings<'a> {
    pub sensor: &'a Sensor,
    pub meter: Option<Meter>,
    /// Of circuit and meter, where all their tolerances are known.
    corners: Option<Corners>,
}

impl<'a> Readings<'a> {
    /// Readings at the control unit's pin.
    pub(in crate::document) fn new(sensor: &'a Sensor, meter: Option<&Multimeter>) -> Self {
        Self::at(sensor, meter, Probe::ControlUnit)
    }

    /// Readings where the probe touches.
    pub(in crate::document) fn at(sensor: &'a Sensor, meter: Option<&Multimeter>, at: Probe) -> Self {
        let input = meter.and_then(|meter| meter.input);
        let meter = input.map(|input| Meter { input, at });
        let corners = sensor.circuit.as_ref().and_then(|circuit| circuit.corners(meter.as_ref()));
        Self { sensor, meter, corners }
    }

    /// The nominal resistance.
    pub(in crate::document) fn ohms(&self, at: Temperature) -> Option<Resistance> {
        self.sensor.curve.resistance(at).ok()
    }

    /// The resistance of a good part, where its tolerance is known.
    pub(in crate::document) fn ohm_band(&self, at: Temperature) -> Option<Band<Resistance>> {
        let tolerance = self.sensor.tolerance.as_ref()?;
        tolerance::band(&self.sensor.curve, tolerance, at).ok()
    }

    /// The nominal voltage.
    pub(in crate::document) fn volts(&self, at: Temperature) -> Option<Voltage> {
        Some(self.circuit()?.voltage(self.ohms(at)?, self.meter.as_ref()))
    }

    /// The voltage of a good part in a good circuit, where all tolerances are known.
    pub(in crate::document) fn volt_band(&self, at: Temperature) -> Option<Band<Voltage>> {
        self.window_of(self.ohm_band(at)?)
    }

    /// The same as a part of the reference.
    pub(in crate::document) fn ratio_band(&self, at: Temperature) -> Option<Band<Ratio>> {
        let ohms = self.ohm_band(at)?;
        let window = self.corners.as_ref()?.ratio_window(Interval { low: ohms.low, high: ohms.high });
        let nominal = self.circuit()?.ratio(ohms.nominal, self.meter.as_ref());
        Some(Band { low: window.low, nominal, high: window.high })
    }

    /// The resistance between the service limits.
    pub(in crate::document) fn service_ohms(&self, at: Temperature) -> Option<Band<Resistance>> {
        let limit = self.sensor.service_limit?;
        let (low, high) = service_limits(&self.sensor.curve, limit, at).ok()?;
        Some(Band { low, nominal: self.ohms(at)?, high })
    }

    /// The voltage between the service limits.
    pub(in crate::document) fn service_volts(&self, at: Temperature) -> Option<Band<Voltage>> {
        self.window_of(self.service_ohms(at)?)
    }

    /// The voltage with the sensor unplugged; without limits where they are not known.
    pub(in crate::document) fn open(&self) -> Option<Band<Voltage>> {
        self.fixed(OPEN)
    }

    /// The voltage with the sensor unplugged, where all tolerances are known.
    pub(in crate::document) fn open_window(&self) -> Option<Band<Voltage>> {
        self.window(OPEN)
    }

    /// The voltage with the sensor's two wires touching.
    pub(in crate::document) fn short(&self) -> Option<Band<Voltage>> {
        self.fixed(Resistance::from_ohms(0.0))
    }

    /// The reference itself.
    pub(in crate::document) fn reference(&self) -> Option<Band<Voltage>> {
        let reference = self.circuit()?.reference;
        let nominal = reference.nominal;
        let limits = reference.limits.unwrap_or(Interval { low: nominal, high: nominal });
        Some(Band { low: limits.low, nominal, high: limits.high })
    }

    fn fixed(&self, sensor: Resistance) -> Option<Band<Voltage>> {
        let nominal = self.circuit()?.voltage(sensor, self.meter.as_ref());
        Some(self.window(sensor).unwrap_or(Band { low: nominal, nominal, high: nominal }))
    }

    /// The window of a sensor of exactly this resistance.
    fn window(&self, sensor: Resistance) -> Option<Band<Voltage>> {
        self.window_of(Band { low: sensor, nominal: sensor, high: sensor })
    }

    fn window_of(&self, sensor: Band<Resistance>) -> Option<Band<Voltage>> {
        let window = self.corners.as_ref()?.voltage_window(Interval { low: sensor.low, high: sensor.high });
        let nominal = self.circuit()?.voltage(sensor.nominal, self.meter.as_ref());
        Some(Band { low: window.low, nominal, high: window.high })
    }

    /// The circuit, where it is known.
    pub(in crate::document) fn circuit(&self) -> Option<&Circuit> {
        self.sensor.circuit.as_ref()
    }
}

/// A voltage band as text, in volts.
pub(in crate::document) fn volts(band: Band<Voltage>) -> figures::Shown {
    figures::band(band.map(Voltage::volts), VOLT_DECIMALS)
}

/// A resistance band as text, in ohms.
pub(in crate::document) fn ohms(band: Band<Resistance>) -> figures::Shown {
    figures::ohms(band.map(Resistance::ohms))
}

/// A resistance band as text, in ohms, with the decimals of its column.
pub(super) fn column_ohms(band: Band<Resistance>, decimals: usize) -> figures::Shown {
    figures::band(band.map(Resistance::ohms), decimals)
}

/// The window at one temperature, to be read from a distance.
pub(super) fn key_figure(
    context: Context<'_>,
    readings: &Readings<'_>,
    at: Temperature,
    decimals: usize,
) -> KeyFigure {
    let words = context.words;
    let in_ohms = readings.ohm_band(at).map(|band| figures::range(&column_ohms(band, decimals)));
    let temperature = figures::temperature(context.units, at);
    if let Some(band) = readings.volt_band(at) {
        let also = in_ohms.map(|ohms| format!("{ohms} Ω")).unwrap_or_default();
        let value = figures::range(&volts(band));
        return KeyFigure { at: temperature, value, unit: "V".to_owned(), also };
    }
    if let Some(value) = in_ohms {
        let volts = readings.volts(at).map(|volts| figures::nominal_volts(volts.volts()));
        let also = volts
            .map(|volts| words.say(&Message::new("card-nominal-value").with("value", format!("{volts} V"))));
        return KeyFigure { at: temperature, value, unit: "Ω".to_owned(), also: also.unwrap_or_default() };
    }
    let ohms = readings.ohms(at).map(|ohms| format!("{} Ω", figures::nominal_ohms(ohms.ohms())));
    let volts = readings.volts(at).map(|volts| format!("{} V", figures::nominal_volts(volts.volts())));
    let nominal = [volts, ohms].into_iter().flatten().collect::<Vec<_>>().join(" · ");
    let also = words.say(&Message::new("card-nominal-value").with("value", nominal));
    KeyFigure { at: temperature, value: words.word("doc-not-given"), unit: String::new(), also }
}
