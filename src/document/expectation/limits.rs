//! Limits as text: written in a test, or taken from its component's figures.

use super::Tools;
use super::sensor;
use crate::document::Context;
use crate::document::figures::{self, VOLT_DECIMALS};
use crate::document::table::{self, Cell, Table};
use crate::model::{Bounds, Expect, Load, Test, TestSweep};
use crate::physics::Band;
use crate::physics::decision::Limits;
use crate::physics::uncertainty::{self, Instruments};
use crate::quantity::{
    Interval, Measured, Resistance, Rounding, Temperature, Unit, Units, Voltage, decimals_for, figure,
};
use crate::spec::{Origin, Reads, Sourced, Thing};
use crate::words::Words;

/// The limits of one reading, rounded inward, in the unit they are printed in.
#[derive(Debug, Clone)]
pub(super) struct Shown {
    pub low: Option<String>,
    pub high: Option<String>,
    pub unit: String,
    /// The same in the SI unit, unrounded.
    si: [Option<f64>; 2],
    /// How far the reading moves for a kelvin, where it does.
    per_kelvin: Option<f64>,
}

impl Shown {
    /// `1.285–1.424`, `≤ 0.10`, `≥ 1`.
    pub(super) fn text(&self) -> String {
        match (&self.low, &self.high) {
            (Some(low), Some(high)) => format!("{low}–{high}"),
            (None, Some(high)) => format!("≤ {high}"),
            (Some(low), None) => format!("≥ {low}"),
            (None, None) => String::new(),
        }
    }

    pub(super) fn with_unit(&self) -> String {
        format!("{} {}", self.text(), self.unit)
    }

    /// How near to a limit a reading is undecided, with the meter alone: no
    /// temperature moves what is written, or its slope is known.
    pub(super) fn undecided(&self, words: &Words, reads: Reads, tools: Tools<'_>) -> Option<String> {
        let most = self.si[1].or(self.si[0])?;
        let meter = tools.meter?;
        let thermometer = self.per_kelvin.and(tools.thermometer).and_then(|thermometer| thermometer.limit);
        let doubt = match reads {
            Reads::Voltage => {
                let instruments = Instruments { meter: meter.volts, ..Instruments::default() };
                uncertainty::meter_volts(Voltage::from_volts(most), &instruments).ok()?
            }
            Reads::Resistance => {
                let instruments = Instruments {
                    thermometer,
                    soak: self.per_kelvin.and(tools.shop.soak),
                    meter: meter.ohms,
                    leads: meter.most_of_leads(),
                };
                let reading = Resistance::from_ohms(most);
                uncertainty::meter_ohms(reading, self.per_kelvin, &instruments).ok()?
            }
            _ => return None,
        };
        // What is printed in millivolts or kilohms has its ± in the same unit.
        let in_unit = match (reads, self.unit.as_str()) {
            (Reads::Voltage, "V") | (Reads::Resistance, "Ω") => 1.0,
            (Reads::Voltage, "mV") => 1e3,
            (Reads::Resistance, "kΩ") => 1e-3,
            (Reads::Resistance, "MΩ") => 1e-6,
            _ => return None,
        };
        let decimals = match reads {
            Reads::Voltage if self.unit == "V" => VOLT_DECIMALS,
            _ => decimals_for(most * in_unit),
        };
        let limits = Limits::new(self.si[0], self.si[1]).ok()?;
        sensor::undecided(words, tools.shop.decision, &doubt, &limits, (decimals, in_unit, &self.unit))
    }
}

/// The unit of a reading that no limit gives one to.
pub(super) fn unit_of(units: Units, reads: Reads) -> &'static str {
    match reads {
        Reads::Voltage => "V",
        Reads::Resistance => "Ω",
        Reads::Current => "A",
        Reads::Duty => "%",
        Reads::Frequency => "Hz",
        Reads::Time => "s",
        Reads::Temperature => units.symbol(),
        Reads::Pressure => units.in_box("bar"),
        Reads::Contacts | Reads::Observation => "",
    }
}

/// The limits that a test has; `None` where they are NOT GIVEN.
pub(super) fn of(context: Context<'_>, test: &Test, bounds: &Bounds) -> Option<Shown> {
    let model = context.model;
    match bounds {
        Bounds::Given { low, high } => {
            let is_difference = matches!(test.expect, Expect::Difference(..));
            written((context.units, is_difference), low.as_ref(), high.as_ref())
        }
        Bounds::Of(Origin::LowStop) => stop(context, test, "0", "voltage", 1.0, "V"),
        Bounds::Of(Origin::HighStop) => stop(context, test, "100", "voltage", 1.0, "V"),
        Bounds::Of(Origin::Track) => {
            let feedback = model.actuators.get(&test.component)?.feedback.as_ref()?;
            let window = feedback.total_window()?;
            Some(between(window.low.ohms(), window.high.ohms(), None, "Ω"))
        }
        Bounds::Of(Origin::Reference) => {
            let limits = model.systems.get(&test.system)?.reference.as_ref()?.value.limits?;
            Some(between(limits.low.volts(), limits.high.volts(), Some(VOLT_DECIMALS), "V"))
        }
        Bounds::Of(Origin::Battery) => {
            let limits = model.systems.get(&test.system)?.battery.as_ref()?.value.limits?;
            Some(between(limits.low.volts(), limits.high.volts(), Some(2), "V"))
        }
        Bounds::Of(_) | Bounds::Step(_) => None,
    }
}

/// The same of a ratio, in percent.
pub(super) fn of_ratio(context: Context<'_>, test: &Test, bounds: &Bounds) -> Option<Shown> {
    match bounds {
        Bounds::Of(Origin::LowStop) => stop(context, test, "0", "ratio", 100.0, "%"),
        Bounds::Of(Origin::HighStop) => stop(context, test, "100", "ratio", 100.0, "%"),
        Bounds::Step(step) => {
            let table = table_of(context, test)?;
            let row = table.rows.get(step - 1)?;
            let number = |key| table.number(row, key);
            Some(between(number("ratio_min_percent")?, number("ratio_max_percent")?, Some(1), "%"))
        }
        other => of(context, test, other),
    }
}

/// The coil of a load at the temperature of the bay; a transducer at a pressure.
pub(super) fn of_curve(context: Context<'_>, test: &Test) -> Option<Shown> {
    let model = context.model;
    match test.thing {
        Thing::Driver => {
            let at = context.bay?;
            let (Load::Coil(coil, _) | Load::Solenoid(coil, _)) = &model.drivers.get(&test.component)?.load
            else {
                return None;
            };
            let band = coil.rated.band(at).ok()??;
            // Copper is straight: a kelvin more is the same everywhere.
            let warmer = Temperature::from_celsius(at.celsius() + 1.0);
            let slope = coil.rated.nominal(warmer).ok()?.ohms() - band.nominal.ohms();
            let decimals = figures::column_decimals(band.low.ohms());
            let shown = between(band.low.ohms(), band.high.ohms(), Some(decimals), "Ω");
            Some(Shown { per_kelvin: Some(slope), ..shown })
        }
        Thing::Transducer => {
            let crate::model::Expect::Curve(Some(at)) = &test.expect else { return None };
            let transducer = model.transducers.get(&test.component)?;
            let window = transducer.line.as_ref()?.voltage_window(at.value, transducer.reference?).ok()??;
            Some(between(window.low.volts(), window.high.volts(), Some(VOLT_DECIMALS), "V"))
        }
        _ => None,
    }
}

/// A sweep from end to end.
pub(super) struct SweepShown {
    pub names: [Option<String>; 2],
    pub start: Option<Shown>,
    pub end: Option<Shown>,
    pub time: Option<Shown>,
    pub largest_step: Option<Shown>,
    pub rises: bool,
}

pub(super) fn of_sweep(context: Context<'_>, test: &Test, sweep: &TestSweep) -> SweepShown {
    match sweep {
        TestSweep::Given(sweep) => SweepShown {
            names: [None, None],
            start: within(context.units, &sweep.start),
            end: within(context.units, &sweep.end),
            time: sweep.time.as_ref().map(|time| most(time.value.seconds(), 1, "s")),
            largest_step: sweep
                .largest_step
                .as_ref()
                .and_then(|step| written((context.units, true), None, Some(step))),
            rises: sweep.start.value.high.value() <= sweep.end.value.low.value(),
        },
        TestSweep::Travel => travel(context, test),
    }
}

fn travel(context: Context<'_>, test: &Test) -> SweepShown {
    let actuator = context.model.actuators.get(&test.component);
    let stops = actuator.and_then(|actuator| actuator.stops.as_ref());
    let start = stop(context, test, "0", "voltage", 1.0, "V");
    let end = stop(context, test, "100", "voltage", 1.0, "V");
    // A step is a part of the travel; of all good travels the shortest counts.
    let travel = start.as_ref().and_then(|start| start.si[1]).zip(end.as_ref().and_then(|end| end.si[0]));
    let step = actuator.and_then(|actuator| actuator.sweep.step).zip(travel);
    SweepShown {
        names: [stops.and_then(|stops| stops.low.name.clone()), stops.and_then(|s| s.high.name.clone())],
        time: actuator.and_then(|actuator| actuator.sweep.time).map(|time| most(time.seconds(), 1, "s")),
        largest_step: step.map(|(part, (low, high))| most(part.part() * (high - low), VOLT_DECIMALS, "V")),
        start,
        end,
        rises: true,
    }
}

fn most(high: f64, decimals: usize, unit: &str) -> Shown {
    let high_text = figure(high, decimals, Rounding::Down);
    // 15.0 s is 15 s.
    let trimmed = if unit == "s" { figures::trimmed(high) } else { high_text };
    Shown { low: None, high: Some(trimmed), unit: unit.to_owned(), si: [None, Some(high)], per_kelvin: None }
}

/// One end of an actuator's travel, from its own table.
fn stop(
    context: Context<'_>,
    test: &Test,
    percent: &str,
    what: &str,
    factor: f64,
    unit: &str,
) -> Option<Shown> {
    let table = table_of(context, test)?;
    let wanted: f64 = percent.parse().ok()?;
    let at = |row: &&Vec<Cell>| {
        table.number(row, "travel_percent").is_some_and(|found| found.total_cmp(&wanted).is_eq())
    };
    let row = table.rows.iter().find(at)?;
    let (low, high) = match what {
        "voltage" => ("voltage_min_v", "voltage_max_v"),
        _ => ("ratio_min", "ratio_max"),
    };
    let decimals = if unit == "V" { VOLT_DECIMALS } else { 1 };
    Some(between(factor * table.number(row, low)?, factor * table.number(row, high)?, Some(decimals), unit))
}

/// The table of figures of a test's component.
pub(super) fn table_of(context: Context<'_>, test: &Test) -> Option<Table> {
    let id = format!("{}.{}", test.thing.key(), test.component);
    table::of(
        context.model,
        context.words,
        &table::Ask { id: &id, units: context.units, ..table::Ask::default() },
    )
    .ok()
}

/// A computed window, rounded inward.
pub(super) fn between(low: f64, high: f64, decimals: Option<usize>, unit: &str) -> Shown {
    let nominal = f64::midpoint(low, high);
    let decimals = decimals.unwrap_or_else(|| decimals_for(nominal));
    let shown = figures::band(Band { low, nominal, high }, decimals);
    Shown {
        low: Some(shown.low),
        high: Some(shown.high),
        unit: unit.to_owned(),
        si: [Some(low), Some(high)],
        per_kelvin: None,
    }
}

fn within(units: Units, window: &Sourced<Interval<Measured>>) -> Option<Shown> {
    let (low, high) = (window.map(window.value.low), window.map(window.value.high));
    written((units, false), Some(&low), Some(&high))
}

/// Limits as they were written: nothing is rounded, both have the same decimals. What is
/// written in units that the edition has not is converted, and rounded inward.
pub(super) fn written(
    (units, is_difference): (Units, bool),
    low: Option<&Sourced<Measured>>,
    high: Option<&Sourced<Measured>>,
) -> Option<Shown> {
    let (low, high) = (low.map(|at| at.value), high.map(|at| at.value));
    let unit = high.or(low)?.unit();
    if units.of_measured(high.or(low)?, is_difference).1 != unit {
        return converted(units, is_difference, (low, high));
    }
    // Two units in one window are brought to the upper one's.
    let number = |limit: Measured| limit.in_unit(unit);
    let decimals_of = |number: f64| number.to_string().split_once('.').map_or(0, |(_, part)| part.len());
    let numbers = [low.map(number), high.map(number)];
    let decimals = numbers.iter().flatten().map(|number| decimals_of(*number)).max().unwrap_or(0);
    let text = |number: Option<f64>, rounding| number.map(|number| figure(number, decimals.min(9), rounding));
    Some(Shown {
        low: text(numbers[0], Rounding::Nearest),
        high: text(numbers[1], Rounding::Nearest),
        unit: unit.symbol().to_owned(),
        si: [low.map(Measured::value), high.map(Measured::value)],
        per_kelvin: None,
    })
}

/// Limits in the edition's own unit.
fn converted(
    units: Units,
    is_difference: bool,
    (low, high): (Option<Measured>, Option<Measured>),
) -> Option<Shown> {
    let of = |limit: Measured| units.of_measured(limit, is_difference);
    let unit = of(high.or(low)?).1;
    let [from, to] = [low, high].map(|limit| limit.map(|limit| of(limit).0));
    // A tenth of a degree or of a psi is finer than any workshop instrument; a kilopascal too.
    let decimals = if unit == Unit::Kilopascal { 0 } else { 1 };
    let shown = match (from, to) {
        (Some(from), Some(to)) => between(from, to, Some(decimals), unit.symbol()),
        _ => Shown {
            low: from.map(|from| figure(from, decimals, Rounding::Up)),
            high: to.map(|to| figure(to, decimals, Rounding::Down)),
            unit: unit.symbol().to_owned(),
            si: [None, None],
            per_kelvin: None,
        },
    };
    Some(Shown { si: [low.map(Measured::value), high.map(Measured::value)], ..shown })
}
