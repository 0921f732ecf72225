//! What a row expects: the window, and the lines under it.

use crate::document::figures::{self, VOLT_DECIMALS};
use crate::document::sensor_card::advice;
use crate::document::sensor_card::reading::{self, Readings};
use crate::model::{Row, Sheet};
use crate::physics::Band;
use crate::physics::uncertainty::expanded;
use crate::quantity::{Resistance, Rounding, Temperature, Voltage, decimals_for, figure};
use crate::spec::{Measure, Spot};
use crate::words::{Message, Words};

/// One test of a sheet.
#[derive(Clone, Copy)]
pub(super) struct Test<'a> {
    pub words: &'a Words,
    pub sheet: &'a Sheet,
    pub readings: &'a Readings<'a>,
    pub measure: Measure,
    pub place: Spot,
    pub row: &'a Row,
}

/// The window of one row and the lines under it.
#[derive(Debug, Default)]
pub(super) struct Expected {
    pub main: String,
    pub is_window: bool,
    pub sub: String,
    pub sub2: String,
    pub sub3: String,
}

impl Test<'_> {
    /// What it expects at a bay temperature, or where to read that.
    pub(super) fn expected(&self, bay: Option<Temperature>) -> Expected {
        let Self { words, readings, measure, row, .. } = *self;
        let sensor = readings.sensor;
        if measure == Measure::OpenVoltage {
            // Unplugged, the line does not depend on the bay's temperature.
            return match (readings.open_window(), readings.open()) {
                (Some(band), _) => {
                    Expected { main: volt_range(band), is_window: true, ..Expected::default() }
                }
                (None, Some(band)) => nominal_only(words, &figures::nominal_volts(band.nominal.volts()), "V"),
                (None, None) => Expected { main: words.word("doc-not-given"), ..Expected::default() },
            };
        }
        let Some(at) = bay else {
            let sub = match &row.card {
                Some(card) => words.say(&Message::new("sheet-see-card").with("card", card)),
                None => words.word("sheet-no-card"),
            };
            return Expected { sub, ..Expected::default() };
        };
        if !sensor.range.contains(&at) {
            let outside = Message::new("sheet-outside")
                .with("low", figures::celsius(sensor.range.low))
                .with("high", figures::celsius(sensor.range.high));
            return Expected { sub: words.say(&outside), ..Expected::default() };
        }
        let service = |window: String, unit: &str| {
            words.say(&Message::new("sheet-service").with("window", window).with("unit", unit))
        };
        if measure == Measure::Resistance {
            let Some(band) = readings.ohm_band(at).and_then(|band| self.through_the_line(band)) else {
                let nominal = readings.ohms(at).map(|ohms| figures::nominal_ohms(ohms.ohms()));
                return nominal_only(words, &nominal.unwrap_or_default(), "Ω");
            };
            let plain = band.map(Resistance::ohms);
            // The series resistor does not change with temperature; the sensor does.
            let alone = readings.ohms(at).map_or(0.0, |ohms| ohms.ohms());
            let per_kelvin = sensor.curve.slope(at).map_or(0.0, |slope| slope * alone);
            return Expected {
                main: ohm_range(band),
                is_window: true,
                sub: (readings.service_ohms(at))
                    .and_then(|band| self.through_the_line(band))
                    .map(|band| service(ohm_range(band), "Ω"))
                    .unwrap_or_default(),
                sub2: doubt(self, plain, per_kelvin).unwrap_or_default(),
                ..Expected::default()
            };
        }
        let Some(band) = readings.volt_band(at) else {
            let nominal = readings.volts(at).map(|volts| figures::nominal_volts(volts.volts()));
            return nominal_only(words, &nominal.unwrap_or_default(), "V");
        };
        let plain = band.map(Voltage::volts);
        let unplugged = readings.open().map(|band| {
            let window = advice::span(words, band);
            words.say(&Message::new("sheet-unplugged").with("window", window))
        });
        Expected {
            main: volt_range(band),
            is_window: true,
            sub: readings.service_volts(at).map(|band| service(volt_range(band), "V")).unwrap_or_default(),
            sub2: doubt(self, plain, readings.volts_per_kelvin(at)).unwrap_or_default(),
            sub3: unplugged.unwrap_or_default(),
        }
    }

    /// Ohms as measured: at the control unit's plug the line's own resistor is in
    /// series. `None` where that resistor's tolerance, or circuit, was not given.
    fn through_the_line(&self, band: Band<Resistance>) -> Option<Band<Resistance>> {
        let sensor = self.readings.sensor;
        let has_series = sensor.circuit_facts.iter().any(|fact| fact.label == "fact-series");
        if self.place == Spot::Sensor || !has_series {
            return Some(band);
        }
        let series = self.readings.circuit()?.series?;
        let limits = series.limits?;
        let plus = |sensor: Resistance, line: Resistance| Resistance::from_ohms(sensor.ohms() + line.ohms());
        Some(Band {
            low: plus(band.low, limits.low),
            nominal: plus(band.nominal, series.nominal),
            high: plus(band.high, limits.high),
        })
    }
}

/// What the instruments leave undecided next to a limit.
///
/// The expanded uncertainty from the thermometer, through the sensor's slope, and
/// from the meter at the window's upper end. `None` where an instrument's
/// accuracy was not given.
fn doubt(test: &Test<'_>, window: Band<f64>, per_kelvin: f64) -> Option<String> {
    let Test { words, sheet, measure, .. } = *test;
    let thermometer = sheet.thermometer.as_ref()?.limit?.kelvins();
    let meter = sheet.meter.as_ref()?;
    let (range, decimals, unit) = match measure {
        Measure::Resistance => (meter.ohms?, decimals_for(window.nominal), "Ω"),
        Measure::Voltage | Measure::OpenVoltage => (meter.volts?, VOLT_DECIMALS, "V"),
    };
    let (accuracy, digit) = range;
    let meter = accuracy.limit(window.high, digit);
    let doubt = expanded(&[thermometer * per_kelvin.abs(), meter]);
    let id = if 2.0 * doubt < window.high - window.low { "sheet-doubt" } else { "sheet-doubt-all" };
    let doubt = figure(doubt, decimals, Rounding::Up);
    Some(words.say(&Message::new(id).with("doubt", doubt).with("unit", unit)))
}

/// NOT GIVEN where a window should be, with the nominal value where that is known.
fn nominal_only(words: &Words, nominal: &str, unit: &str) -> Expected {
    let main = words.word("doc-not-given");
    if nominal.is_empty() {
        return Expected { main, ..Expected::default() };
    }
    let value = Message::new("sheet-record-only").with("value", format!("{nominal} {unit}"));
    Expected { main, sub: words.say(&value), ..Expected::default() }
}

fn volt_range(band: Band<Voltage>) -> String {
    figures::range(&reading::volts(band))
}

fn ohm_range(band: Band<Resistance>) -> String {
    figures::range(&reading::ohms(band))
}
