//! What a row expects: the window, and the lines under it.

use crate::document::figures::{self, VOLT_DECIMALS};
use crate::document::sensor_card::advice;
use crate::document::sensor_card::reading::{self, Readings};
use crate::model::{Multimeter, Row, Sheet, Shop};
use crate::physics::Band;
use crate::physics::decision::{Limits, Rule, acceptance};
use crate::physics::uncertainty::{self, Doubt, Instruments};
use crate::quantity::{Resistance, Rounding, Temperature, Voltage, decimals_for, figure};
use crate::spec::{Measure, Spot};
use crate::words::{Message, Words};

/// One test of a sheet.
#[derive(Clone, Copy)]
pub(super) struct Test<'a> {
    pub words: &'a Words,
    pub shop: &'a Shop,
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
            // The meter's percentage is taken at the upper limit, where it is most.
            let doubt = uncertainty::ohms(&sensor.curve, at, band.high, &self.instruments()).ok();
            return Expected {
                main: ohm_range(band),
                is_window: true,
                sub: (readings.service_ohms(at))
                    .and_then(|band| self.through_the_line(band))
                    .map(|band| service(ohm_range(band), "Ω"))
                    .unwrap_or_default(),
                sub2: doubt.and_then(|doubt| self.undecided(&doubt, plain)).unwrap_or_default(),
                ..Expected::default()
            };
        }
        let Some(band) = readings.volt_band(at) else {
            let nominal = readings.volts(at).map(|volts| figures::nominal_volts(volts.volts()));
            return nominal_only(words, &nominal.unwrap_or_default(), "V");
        };
        let plain = band.map(Voltage::volts);
        let doubt = readings.circuit().and_then(|circuit| {
            let meter = readings.meter.as_ref();
            uncertainty::volts(&sensor.curve, circuit, meter, at, band.high, &self.instruments()).ok()
        });
        let unplugged = readings.open().map(|band| {
            let window = advice::span(words, band);
            words.say(&Message::new("sheet-unplugged").with("window", window))
        });
        Expected {
            main: volt_range(band),
            is_window: true,
            sub: readings.service_volts(at).map(|band| service(volt_range(band), "V")).unwrap_or_default(),
            sub2: doubt.and_then(|doubt| self.undecided(&doubt, plain)).unwrap_or_default(),
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

    /// The instruments of the sheet, on the range that this test reads.
    fn instruments(&self) -> Instruments {
        let Self { shop, sheet, measure, .. } = *self;
        let meter = sheet.meter.as_ref();
        Instruments {
            thermometer: sheet.thermometer.as_ref().and_then(|thermometer| thermometer.limit),
            soak: shop.soak,
            meter: meter.and_then(|meter| match measure {
                Measure::Resistance => meter.ohms,
                Measure::Voltage | Measure::OpenVoltage => meter.volts,
            }),
            leads: meter.and_then(Multimeter::most_of_leads),
        }
    }

    /// How near to a limit a reading is undecided, by the shop's rule.
    ///
    /// `None` where the accuracy of thermometer or meter was not given; what else
    /// was not given is left out, and the sheet's legend says so.
    fn undecided(&self, doubt: &Doubt, window: Band<f64>) -> Option<String> {
        use uncertainty::Source::{MeterReading, Thermometer};
        if [Thermometer, MeterReading].iter().any(|source| doubt.left_out.contains(source)) {
            return None;
        }
        let (decimals, unit) = match self.measure {
            Measure::Resistance => (decimals_for(window.nominal), "Ω"),
            Measure::Voltage | Measure::OpenVoltage => (VOLT_DECIMALS, "V"),
        };
        let expanded = doubt.budget.expanded();
        let (shown, id) = match self.shop.decision {
            Some(rule @ Rule::Guarded { .. }) => {
                let guard = rule.guard(expanded);
                let limits = Limits::new(Some(window.low), Some(window.high)).ok()?;
                let none_passes = acceptance(&limits, guard).ok()?.is_empty();
                (guard, if none_passes { "sheet-doubt-all" } else { "sheet-doubt" })
            }
            // Nothing is undecided by a simple rule, and without a rule nobody knows.
            Some(Rule::Simple) | None => (expanded, "sheet-doubt-only"),
        };
        let doubt = figure(shown, decimals, Rounding::Up);
        Some(self.words.say(&Message::new(id).with("doubt", doubt).with("unit", unit)))
    }
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
