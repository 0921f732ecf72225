//! The judgement as lines that a technician can read aloud.

use super::{Expected, Judgement};
use crate::document::bench::fault;
use crate::document::figures;
use crate::model::{Fact, Sensor};
use crate::physics::decision::{Rule, Verdict};
use crate::physics::fault::{Cause, Fault, Test};
use crate::physics::uncertainty::Source;
use crate::quantity::{Interval, Resistance, Rounding, Temperature, Voltage, decimals_for, figure};
use crate::words::{Message, Words};

/// The answer line by line, and the values it rests on.
#[must_use]
pub fn lines<'a>(words: &Words, judgement: &'a Judgement) -> (Vec<String>, &'a [Fact]) {
    let about = &judgement.about;
    let unit = judgement.unit;
    let shown = |value: f64, rounding| figure(value, decimals(value, unit), rounding);
    let verdict = match about.decision.verdict {
        Verdict::Pass => "judge-pass",
        Verdict::Fail => "judge-fail",
        Verdict::Undecided => "judge-undecided",
    };
    let window = Message::new("judge-window")
        .with("low", shown(judgement.limit_low, Rounding::Up))
        .with("high", shown(judgement.limit_high, Rounding::Down))
        .with("unit", unit);
    let mut all = vec![about.title.clone(), about.reading.clone(), words.word(verdict), words.say(&window)];
    all.push(guard(words, judgement));
    all.push(about.instruments.clone());
    if !about.left_out.is_empty() {
        let names: Vec<String> =
            about.left_out.iter().map(|source| words.word(source_word(*source))).collect();
        all.push(words.say(&Message::new("judge-left-out").with("what", names.join(", "))));
    }
    if !about.not_compared.is_empty() {
        let parts = about.not_compared.join(", ");
        all.push(words.say(&Message::new("judge-not-compared").with("parts", parts)));
    }
    if let Some((limit, window)) = about.service {
        let verdict = match judgement.service_verdict {
            Some("pass") => "judge-service-pass",
            Some("fail") => "judge-service-fail",
            _ => "judge-service-undecided",
        };
        let message = Message::new("judge-service")
            .with("limit", limit)
            .with("low", shown(window.low, Rounding::Up))
            .with("high", shown(window.high, Rounding::Down))
            .with("unit", unit)
            .with_word("verdict", verdict);
        all.push(words.say(&message));
    }
    all.push(match judgement.believed_temperature_c {
        Some(at) => {
            let at = format!("{} °C", figure(at, 1, Rounding::Nearest));
            words.say(&Message::new("judge-believed").with("at", at))
        }
        None => words.word("judge-believes-nothing"),
    });
    if judgement.causes.is_empty() {
        all.push(words.word("judge-no-cause"));
    } else {
        all.push(words.word("judge-causes"));
        all.extend(judgement.causes.iter().map(|cause| cause.told.clone()));
    }
    all.extend(judgement.pairs.iter().map(|pair| pair.told.clone()));
    all.extend(judgement.third.clone());
    all.extend(judgement.remedy.clone());
    all.push(judgement.next.clone());
    if !judgement.next_readings.is_empty() {
        all.push(words.word("judge-next-reads"));
    }
    all.extend(expected(words, &judgement.next_readings));
    if !about.steps.is_empty() {
        all.push(words.word("judge-steps"));
        all.extend(about.steps.iter().map(|step| format!("  {step}")));
    }
    all.extend(about.formulas.iter().cloned());
    all.push(words.word("judge-formula-doubt"));
    if judgement.risk.is_some() {
        all.push(words.word("judge-formula-risk"));
    }
    all.push(words.word("judge-formula-cause"));
    if !judgement.next_readings.is_empty() {
        all.push(words.word("judge-formula-next"));
    }
    if !judgement.pairs.is_empty() {
        all.push(words.word("judge-formula-pair"));
    }
    (all, &about.inputs)
}

/// The guard band and the readings that pass.
fn guard(words: &Words, judgement: &Judgement) -> String {
    let unit = judgement.unit;
    let about = &judgement.about;
    let Some(doubt) = judgement.uncertainty else { return words.word("judge-no-doubt") };
    let doubt = figure(doubt, decimals(doubt, unit).max(1), Rounding::Nearest);
    let risk = judgement.risk.map(|risk| {
        let percent = 100.0 * risk;
        if percent < 0.1 {
            "< 0.1 %".to_owned()
        } else {
            format!("{} %", figure(percent, 1, Rounding::Nearest))
        }
    });
    let risk = risk.map(|risk| words.say(&Message::new("judge-risk").with("risk", risk))).unwrap_or_default();
    let message = |id| Message::new(id).with("doubt", &doubt).with("unit", unit);
    if about.rule == Rule::Simple {
        return words.say(&message("judge-simple").with("risk", risk));
    }
    let Interval { low, high } = about.passing;
    if low > high {
        return words.say(&message("judge-no-reading-passes"));
    }
    let end = |value: f64, rounding| figure(value, decimals(value, unit), rounding);
    let message = message("judge-guarded")
        .with("low", end(low, Rounding::Up))
        .with("high", end(high, Rounding::Down))
        .with("risk", risk);
    words.say(&message)
}

/// What a contribution is called.
pub(super) fn source_word(source: Source) -> &'static str {
    match source {
        Source::Thermometer => "judge-source-thermometer",
        Source::Soak => "judge-source-soak",
        Source::Leads => "judge-source-leads",
        _ => "judge-source-meter",
    }
}

/// Volts to the millivolt, ohms to as many digits as their size calls for.
fn decimals(value: f64, unit: &str) -> usize {
    if unit == "V" { 3 } else { decimals_for(value) }
}

/// A value of a test with its unit; an open line in its own word.
pub(super) fn value(value: f64, test: Test) -> String {
    if value.is_infinite() {
        return "OL".to_owned();
    }
    let unit = if test.is_ohms() { "Ω" } else { "V" };
    format!("{} {unit}", figure(value, decimals(value, unit), Rounding::Nearest))
}

/// The reading, with all its digits, its place and temperature.
pub(super) fn reading(words: &Words, reading: f64, test: Test, at: Temperature) -> String {
    let value = match test.is_ohms() {
        true if reading.is_infinite() => "OL".to_owned(),
        true => Resistance::from_ohms(reading).to_string(),
        false => Voltage::from_volts(reading).to_string(),
    };
    let message = Message::new("judge-reading")
        .with("value", value)
        .with_word("test", test_word(test))
        .with("at", celsius(at));
    words.say(&message)
}

/// What a test measures, and where.
pub(super) fn test_word(test: Test) -> &'static str {
    match test {
        Test::VoltsAtUnit => "judge-volts-at-unit",
        Test::VoltsAtSensor => "judge-volts-at-sensor",
        Test::VoltsUnplugged => "judge-volts-unplugged",
        Test::OhmsAtSensor => "judge-ohms-at-sensor",
        Test::OhmsAtUnit => "judge-ohms-at-unit",
    }
}

/// A temperature with its unit.
pub(super) fn celsius(at: Temperature) -> String {
    format!("{} °C", figures::celsius(at))
}

/// A fault with its size, where it has one.
pub(super) fn with_size(words: &Words, fault: &Fault, others: &[&Sensor]) -> String {
    let name = fault::name(words, fault, others);
    let size = fault::size(fault);
    if size.is_empty() { name } else { format!("{name}, {size}") }
}

/// A cause with the sizes that explain the reading.
pub(super) fn cause(words: &Words, cause: &Cause, others: &[&Sensor]) -> String {
    let name = fault::name(words, &cause.fault, others);
    let Some((kind, sizes)) = cause.fault.kind().zip(cause.sizes) else {
        return format!("  {name}");
    };
    // Outward: the interval must hold the true size.
    let low = || fault::sized(kind, sizes.low, Rounding::Down);
    let high = || fault::sized(kind, sizes.high, Rounding::Up);
    let (least, most) = kind.sizes();
    // At an end of what was searched there is no bound on that side.
    let up_to = sizes.low <= least;
    let from = sizes.high >= most;
    let message = match (up_to, from) {
        (true, true) => Message::new("judge-any-size"),
        (true, false) => Message::new("judge-up-to").with("high", high()),
        (false, true) => Message::new("judge-from").with("low", low()),
        (false, false) => Message::new("judge-between").with("low", low()).with("high", high()),
    };
    let harmless = if cause.harmless { words.word("judge-or-none") } else { String::new() };
    format!("  {name}: {}{harmless}", words.say(&message))
}

/// What a suspect would read.
pub(super) fn range(words: &Words, window: Interval<f64>, test: Test) -> String {
    if window.low.is_infinite() {
        return words.word("faults-open-line");
    }
    let unit = if test.is_ohms() { "Ω" } else { "V" };
    let shown = |value: f64, rounding| figure(value, decimals(value, unit), rounding);
    format!("{}–{} {unit}", shown(window.low, Rounding::Down), shown(window.high, Rounding::Up))
}

/// Suspects by what they would read, those of one range on one line.
fn expected(words: &Words, all: &[Expected]) -> Vec<String> {
    let mut lines: Vec<(&str, Vec<&str>)> = Vec::new();
    for one in all {
        match lines.iter_mut().find(|(range, _)| *range == one.range) {
            Some((_, who)) => who.push(&one.told),
            None => lines.push((&one.range, vec![&one.told])),
        }
    }
    let line = |(range, who): (&str, Vec<&str>)| {
        words.say(&Message::new("judge-expected").with("range", range).with("who", who.join("; ")))
    };
    lines.into_iter().map(line).collect()
}
