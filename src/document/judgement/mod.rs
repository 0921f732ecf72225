//! One reading of one sensor, judged: does it pass, what does the unit believe,
//! what explains it, what would decide it, what to measure next.

mod answer;
mod condition;
mod pair;
mod remedy;
mod text;

use crate::document::bench::{Bench, fault};
use crate::document::table;
use crate::model::Model;
use crate::physics::decision::{Decision, DecisionError, Limits, Rule, Verdict, decide};
use crate::physics::fault::{Cause, Instruments, Kind, Other, Subject, Test, explain};
use crate::physics::tolerance::{self, service_limits};
use crate::physics::uncertainty::{COVERAGE, Doubt, Source};
use crate::quantity::{Interval, Temperature, TemperatureDifference};
use crate::words::{Message, Words};

use answer::About;
pub use answer::{Ask, Expected, Explained, Judgement, Place, Reading};
pub use text::lines;

/// What is being judged: the sensor on its bench, and one reading of it.
struct Case<'a> {
    words: &'a Words,
    bench: &'a Bench<'a>,
    subject: Subject<'a>,
    instruments: Instruments,
    rule: Rule,
    test: Test,
    value: f64,
    at: Temperature,
}

/// Judges a reading.
///
/// # Errors
/// When there is no such sensor or instrument, the shop has no decision rule, a
/// tolerance is missing, or the question does not fit the sensor.
pub fn judge(model: &Model, words: &Words, ask: &Ask<'_>) -> Result<Judgement, Message> {
    only_sensors(model, ask.id)?;
    let bench = Bench::new(model, ask.id, ask.instruments)?;
    let rule = bench.rule.ok_or_else(|| Message::new("run-judge-no-rule"))?;
    possible(ask.reading)?;
    ask.second.map_or(Ok(()), |(reading, _)| possible(reading))?;
    let others: Vec<Other<'_>> = bench.others.iter().map(|(_, other)| *other).collect();
    let test = test_of(ask.reading, ask.place)?;
    let case = Case {
        words,
        bench: &bench,
        subject: bench.subject(&others),
        instruments: bench.instruments(),
        rule,
        test,
        value: value_of(ask.reading),
        at: ask.at,
    };
    case.judgement(ask)
}

/// Says so where the id is that of a thing which has a dictionary but no judgement.
fn only_sensors(model: &Model, id: &str) -> Result<(), Message> {
    let others = model.actuators.contains_key(id)
        || model.drivers.contains_key(id)
        || model.transducers.contains_key(id)
        || model.lights.contains_key(id);
    let sensor = model.sensors.contains_key(id);
    if others && !sensor { Err(Message::new("run-judge-no-sensor").with("id", id)) } else { Ok(()) }
}

/// Above it is high voltage, which is not this program's.
///
/// # Source
/// ISO 6469-3, from memory: 60 V DC.
const HIGH_VOLTAGE: f64 = 60.0;

/// More than a workshop meter shows.
const MOST_OHMS: f64 = 1e9;

/// Refuses what no meter shows, and what nobody should have measured.
fn possible(reading: Reading) -> Result<(), Message> {
    match reading {
        Reading::Volts(volts) if volts.volts().abs() > HIGH_VOLTAGE => {
            Err(Message::new("run-judge-high-voltage"))
        }
        Reading::Ohms(ohms) if ohms.ohms().is_finite() && ohms.ohms() > MOST_OHMS => {
            Err(Message::new("run-judge-too-many-ohms"))
        }
        _ => Ok(()),
    }
}

/// The test that a reading at a place belongs to.
fn test_of(reading: Reading, place: Option<Place>) -> Result<Test, Message> {
    match (reading, place) {
        (Reading::Volts(_), None | Some(Place::ControlUnit)) => Ok(Test::VoltsAtUnit),
        (Reading::Volts(_), Some(Place::Sensor)) => Ok(Test::VoltsAtSensor),
        (Reading::Volts(_), Some(Place::Unplugged)) => Ok(Test::VoltsUnplugged),
        (Reading::Ohms(_), None | Some(Place::Sensor)) => Ok(Test::OhmsAtSensor),
        (Reading::Ohms(_), Some(Place::ControlUnit)) => Ok(Test::OhmsAtUnit),
        (Reading::Ohms(_), Some(Place::Unplugged)) => Err(Message::new("run-judge-ohms-unplugged")),
    }
}

fn value_of(reading: Reading) -> f64 {
    match reading {
        Reading::Volts(volts) => volts.volts(),
        Reading::Ohms(ohms) => ohms.ohms(),
    }
}

impl<'a> Case<'a> {
    fn judgement(&self, ask: &Ask<'_>) -> Result<Judgement, Message> {
        let window = self.window(self.test, self.at)?;
        let near = self.value.max(window.low).min(window.high);
        let doubt = self.subject.doubt(near, self.test, self.at, &self.instruments);
        let doubt = doubt.ok_or_else(|| refused(DecisionError::Reading))?;
        self.trusted(&doubt)?;
        let decision = self.decided(window)?;
        let known = !doubt.left_out.contains(&Source::MeterReading);
        let service = self.service();
        let service_verdict = service.map(|(_, window)| self.decided(window)).transpose()?;
        let service_verdict = service_verdict.map(|decision| decision.verdict);
        let causes = explain(&self.subject, self.value, self.test, self.at, &self.instruments);
        let (next, next_readings) = self.next(decision.verdict, &causes);
        let pairs = ask.second.map(|second| self.pairs(second)).transpose()?;
        let (pairs, third) = pairs.unwrap_or_default();
        let undecided = decision.verdict == Verdict::Undecided;
        Ok(Judgement {
            verdict: verdict_key(decision.verdict),
            limit_low: window.low,
            limit_high: window.high,
            guard: decision.guard,
            unit: self.unit(),
            uncertainty: known.then(|| doubt.budget.expanded()),
            risk: decision.risk.map(|risk| risk.part()).filter(|_| known),
            service_verdict: service_verdict.map(verdict_key),
            believed_temperature_c: self.believed().map(Temperature::celsius),
            causes: causes.iter().map(|cause| self.explained(cause)).collect(),
            remedy: undecided.then(|| self.remedy()),
            next,
            next_readings,
            pairs,
            third,
            about: About {
                title: self.bench.sensor.title.clone(),
                reading: self.told_reading(),
                decision,
                rule: self.rule,
                instruments: self.bench.told(self.words),
                passing: self.passing(window)?,
                service,
                formulas: table::sensor::formulas(self.words, self.bench.sensor),
                left_out: doubt.left_out,
                not_compared: self.bench.without_tolerance(),
                steps: if decision.verdict == Verdict::Pass {
                    Vec::new()
                } else {
                    self.bench.sensor.next.clone()
                },
                inputs: self.bench.inputs(),
            },
        })
    }

    fn unit(&self) -> &'static str {
        if self.test.is_ohms() { "Ω" } else { "V" }
    }

    /// What a good sensor in a good circuit may read.
    fn window(&self, test: Test, at: Temperature) -> Result<Interval<f64>, Message> {
        let sensor = self.bench.sensor;
        self.bench.covers(at)?;
        let missing =
            |what| Message::new("run-judge-not-given").with("id", &sensor.id).with_word("what", what);
        let reading = self.subject.reading(None, test, at, &self.instruments);
        let (_, window) = reading.ok_or_else(|| missing("judge-circuit"))?;
        // Unplugged, the part's own tolerance does not matter: the circuit's does.
        let of_part = test != Test::VoltsUnplugged;
        window.ok_or_else(|| match &sensor.tolerance {
            None if of_part => missing("judge-tolerance"),
            Some(tolerance) if of_part && tolerance::band(&sensor.curve, tolerance, at).is_err() => {
                Message::new("run-judge-beyond").with("id", &sensor.id)
            }
            _ => missing("judge-circuit-tolerance"),
        })
    }

    fn decided(&self, window: Interval<f64>) -> Result<Decision, Message> {
        let limits = Limits::new(Some(window.low), Some(window.high)).map_err(refused)?;
        let standard = self.doubt_within(window, self.value)? / COVERAGE;
        // An open line is as far outside as a reading can be: any number beyond will do.
        let value = if self.value.is_finite() { self.value } else { f64::MAX.sqrt() };
        decide(&limits, value, standard, self.rule).map_err(refused)
    }

    /// The expanded uncertainty of a reading, or where it lies outside the window that of
    /// the limit it passes: far out nothing is left to decide.
    fn doubt_within(&self, window: Interval<f64>, value: f64) -> Result<f64, Message> {
        let near = value.max(window.low).min(window.high);
        let doubt = self.subject.uncertainty(near, self.test, self.at, &self.instruments);
        doubt.ok_or_else(|| refused(DecisionError::Reading))
    }

    /// The readings that pass, each limit with the uncertainty of a reading there.
    fn passing(&self, window: Interval<f64>) -> Result<Interval<f64>, Message> {
        let guard = |limit| self.doubt_within(window, limit).map(|doubt| self.rule.guard(doubt));
        Ok(Interval { low: window.low + guard(window.low)?, high: window.high - guard(window.high)? })
    }

    /// A guarded decision needs to know how far meter and thermometer can be trusted.
    fn trusted(&self, doubt: &Doubt) -> Result<(), Message> {
        let needed = [Source::MeterReading, Source::Thermometer];
        let missing: Vec<_> = needed.into_iter().filter(|source| doubt.left_out.contains(source)).collect();
        if missing.is_empty() || self.rule == Rule::Simple {
            return Ok(());
        }
        let names: Vec<String> =
            missing.into_iter().map(|source| self.words.word(text::source_word(source))).collect();
        Err(Message::new("run-judge-no-instrument").with("what", names.join(", ")))
    }

    /// The service limit, and the readings between its two sides.
    fn service(&self) -> Option<(TemperatureDifference, Interval<f64>)> {
        let limit = self.bench.sensor.service_limit?;
        Some((limit, self.service_window(limit)?))
    }

    fn service_window(&self, limit: TemperatureDifference) -> Option<Interval<f64>> {
        let (low, high) = service_limits(&self.bench.sensor.curve, limit, self.at).ok()?;
        match self.test {
            Test::OhmsAtSensor => Some(Interval { low: low.ohms(), high: high.ohms() }),
            Test::OhmsAtUnit => {
                let series = self.subject.circuit.and_then(|circuit| circuit.series);
                let ends = series.map_or(Some((0.0, 0.0)), |series| {
                    series.limits.map(|limits| (limits.low.ohms(), limits.high.ohms()))
                })?;
                Some(Interval { low: low.ohms() + ends.0, high: high.ohms() + ends.1 })
            }
            Test::VoltsAtUnit | Test::VoltsAtSensor => {
                let meter = self.instruments.meter(self.test);
                let window = self.subject.circuit?.voltage_window(Interval { low, high }, meter.as_ref())?;
                Some(Interval { low: window.low.volts(), high: window.high.volts() })
            }
            Test::VoltsUnplugged => None,
        }
    }

    /// The temperature that the unit takes the sensor for, corrected for the meter.
    fn believed(&self) -> Option<Temperature> {
        let ohms = self.sensor_of(self.value)?;
        let at = self.bench.sensor.curve.temperature(ohms).ok()?;
        self.bench.is_plausible(ohms).then_some(at)
    }

    fn explained(&self, cause: &Cause) -> Explained {
        let names: Vec<_> = self.bench.others.iter().map(|(sensor, _)| *sensor).collect();
        let kind = cause.fault.kind();
        // Where the search ended there is no bound on that side; no resistance is one.
        let bounded = |kind: Kind, size: f64| {
            let (least, most) = kind.sizes();
            size < most && (size > least || least.abs() <= 0.0)
        };
        let size = |end: fn(&Interval<f64>) -> f64| {
            let (kind, size) = kind.zip(cause.sizes.as_ref().map(end))?;
            bounded(kind, size).then(|| fault::in_unit(kind, size))
        };
        let part = match cause.fault {
            crate::physics::fault::Fault::OtherPart(index) => names.get(index).map(|other| other.id.clone()),
            _ => None,
        };
        Explained {
            fault: fault::key(&cause.fault),
            size_low: size(|sizes| sizes.low),
            size_high: size(|sizes| sizes.high),
            unit: kind.map(fault::unit),
            includes_none: cause.harmless,
            part,
            told: text::cause(self.words, cause, &names),
        }
    }

    /// The reading with its unit, place and temperature.
    fn told_reading(&self) -> String {
        text::reading(self.words, self.value, self.test, self.at)
    }
}

fn refused(_: DecisionError) -> Message {
    Message::new("run-judge-no-number")
}

fn verdict_key(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Pass => "pass",
        Verdict::Fail => "fail",
        Verdict::Undecided => "undecided",
    }
}
