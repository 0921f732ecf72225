//! What a sensor is expected to read: the window, and the lines under it.

use super::Tools;
use crate::document::figures::{self, VOLT_DECIMALS};
use crate::document::sensor_card::advice;
use crate::document::sensor_card::reading::{self, Readings};
use crate::model::{Fact, Multimeter, PinEnd, Sensor};
use crate::physics::Band;
use crate::physics::decision::{Limits, Rule, acceptance};
use crate::physics::uncertainty::{self, Doubt, Instruments};
use crate::quantity::{Resistance, Rounding, Temperature, Units, Voltage, decimals_for, figure};
use crate::spec::{Measure, Spot};
use crate::words::{Message, Words};

/// A sensor about to be measured.
#[derive(Clone, Copy)]
pub(in crate::document) struct Asked<'a> {
    pub words: &'a Words,
    pub units: Units,
    pub tools: Tools<'a>,
    pub readings: &'a Readings<'a>,
    pub measure: Measure,
    pub place: Spot,
    /// The card that has its strip table, where there is one.
    pub card: Option<&'a str>,
}

/// The window of a sensor and the lines under it.
#[derive(Debug, Default)]
pub(in crate::document) struct Expected {
    pub main: String,
    pub is_window: bool,
    pub sub: String,
    pub sub2: String,
    pub sub3: String,
}

impl Asked<'_> {
    /// What it expects at a bay temperature, or where to read that.
    pub(in crate::document) fn expected(&self, bay: Option<Temperature>) -> Expected {
        let Self { words, readings, measure, card, .. } = *self;
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
            let sub = match card {
                Some(card) => words.say(&Message::new("sheet-see-card").with("card", card)),
                None => words.word("sheet-no-card"),
            };
            return Expected { sub, ..Expected::default() };
        };
        if !sensor.range.contains(&at) {
            let outside = Message::new("sheet-outside")
                .with("low", figures::degrees(self.units, sensor.range.low))
                .with("high", figures::temperature(self.units, sensor.range.high));
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

    /// The instruments, on the range that this test reads.
    fn instruments(&self) -> Instruments {
        let Self { tools, measure, .. } = *self;
        Instruments {
            thermometer: tools.thermometer.and_then(|thermometer| thermometer.limit),
            soak: tools.shop.soak,
            meter: tools.meter.and_then(|meter| match measure {
                Measure::Resistance => meter.ohms,
                Measure::Voltage | Measure::OpenVoltage => meter.volts,
            }),
            leads: tools.meter.and_then(Multimeter::most_of_leads),
        }
    }

    /// How near to a limit a reading is undecided.
    ///
    /// `None` where the accuracy of the thermometer was not given: the curve moves with it.
    fn undecided(&self, doubt: &Doubt, window: Band<f64>) -> Option<String> {
        if doubt.left_out.contains(&uncertainty::Source::Thermometer) {
            return None;
        }
        let decimals = match self.measure {
            Measure::Resistance => decimals_for(window.nominal),
            Measure::Voltage | Measure::OpenVoltage => VOLT_DECIMALS,
        };
        let limits = Limits::new(Some(window.low), Some(window.high)).ok()?;
        let unit = (decimals, 1.0, unit_of(self.measure));
        undecided(self.words, self.tools.shop.decision, doubt, &limits, unit)
    }
}

/// How near to a limit a reading is undecided, by the shop's rule; `unit` is the decimals,
/// the number of printed units in the SI unit, and the printed unit.
///
/// `None` where the accuracy of the meter was not given; what else was not given is
/// left out, and the sheet's legend says so.
pub(super) fn undecided(
    words: &Words,
    decision: Option<Rule>,
    doubt: &Doubt,
    limits: &Limits,
    (decimals, factor, unit): (usize, f64, &str),
) -> Option<String> {
    if doubt.left_out.contains(&uncertainty::Source::MeterReading) {
        return None;
    }
    let expanded = doubt.budget.expanded();
    let (shown, id) = match decision {
        Some(rule @ Rule::Guarded { .. }) => {
            let guard = rule.guard(expanded);
            let none_passes = acceptance(limits, guard).ok()?.is_empty();
            (guard, if none_passes { "sheet-doubt-all" } else { "sheet-doubt" })
        }
        // Nothing is undecided by a simple rule, and without a rule nobody knows.
        Some(Rule::Simple) | None => (expanded, "sheet-doubt-only"),
    };
    let doubt = figure(shown * factor, decimals, Rounding::Up);
    Some(words.say(&Message::new(id).with("doubt", doubt).with("unit", unit)))
}

/// The unit of what is measured.
pub(in crate::document) fn unit_of(measure: Measure) -> &'static str {
    match measure {
        Measure::Voltage | Measure::OpenVoltage => "V",
        Measure::Resistance => "Ω",
    }
}

/// The facts that the window of a sensor rests on, its pins not counted.
pub(in crate::document) fn facts(sensor: &Sensor, measure: Measure) -> Vec<&Fact> {
    let curve = sensor.curve_facts.iter().filter(|_| measure != Measure::OpenVoltage);
    let circuit = sensor.circuit_facts.iter().filter(|_| measure != Measure::Resistance);
    let other = sensor.other_facts.iter().filter(|fact| fact.label == "fact-service-limit");
    curve.chain(circuit).chain(other).collect()
}

/// The same with the pins of both its ends.
pub(in crate::document) fn facts_with_pins(sensor: &Sensor, measure: Measure) -> Vec<&Fact> {
    let pins = [&sensor.control_unit, &sensor.component].into_iter().flatten();
    // A sheet names pins, not wires.
    let pins = pins.flat_map(PinEnd::facts).filter(|fact| fact.label != "fact-wire");
    facts(sensor, measure).into_iter().chain(pins).collect()
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
