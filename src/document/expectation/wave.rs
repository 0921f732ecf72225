//! A switched line: frequency, period, duty and levels, and how it should look.

use schemars::JsonSchema;
use serde::Serialize;

use super::limits::{Shown, between};
use super::{Expectation, Field};
use crate::document::figures;
use crate::model::Wave;
use crate::quantity::{Frequency, Interval, Ratio, Voltage, ten_to};
use crate::words::{Message, Words};

/// The line over two periods; all words and figures are text.
#[derive(Debug, Clone, PartialEq, Serialize, JsonSchema)]
pub(in crate::document) struct Sketch {
    /// The part of a period at the high level.
    pub duty: f64,
    /// From edge to edge: `2.23–2.43 ms`.
    pub period: String,
    /// The high level's part of it: `35–45 %`.
    pub on: String,
    /// Volts at the high level: `12.8–14.4 V`.
    pub high: String,
    /// Volts at the low level.
    pub low: String,
    /// What it shows, for readers who cannot see it.
    pub alt: String,
}

/// The middle of a duty window where none is given: only the picture uses it.
const ANY_DUTY: f64 = 0.5;

/// What a switched line expects.
pub(super) fn of(words: &Words, wave: &Wave) -> Expectation {
    let not_given = || words.word("doc-not-given");
    let frequency = wave.frequency.map(|range| scaled(range, Frequency::hertz, 1.0, "Hz"));
    // The longest period is that of the lowest frequency; both ends go inward.
    let period = wave.frequency.map(|range| {
        let of = |hertz: f64| 1000.0 / hertz;
        between(of(range.high.hertz()), of(range.low.hertz()), Some(2), "ms")
    });
    let duty = wave.duty.map(|range| scaled(range, Ratio::part, 100.0, "%"));
    let level = |range: Option<Interval<Voltage>>| range.map(|range| scaled(range, Voltage::volts, 1.0, "V"));
    let (high, low) = (level(wave.high), level(wave.low));
    let field = |label: &str, shown: Option<&Shown>, unit: &str| Field {
        label: words.word(label),
        window: shown.map_or_else(not_given, Shown::with_unit),
        unit: unit.to_owned(),
    };
    let middle = wave.duty.map_or(ANY_DUTY, |range| f64::midpoint(range.low.part(), range.high.part()));
    let text = |shown: Option<&Shown>| shown.map_or_else(String::new, Shown::with_unit);
    let part = figures::trimmed((middle * 100.0).round());
    Expectation {
        main: frequency.as_ref().map_or_else(not_given, Shown::text),
        unit: if frequency.is_some() { "Hz".to_owned() } else { String::new() },
        subs: vec![words.word("sheet-wave")],
        reading: Some("Hz".to_owned()),
        fields: vec![
            field("sheet-wave-period", period.as_ref(), "ms"),
            field("sheet-wave-duty", duty.as_ref(), "%"),
            field("sheet-wave-high", high.as_ref(), "V"),
            field("sheet-wave-low", low.as_ref(), "V"),
        ],
        steps: Vec::new(),
        sketch: Some(Sketch {
            duty: middle,
            period: text(period.as_ref()),
            on: text(duty.as_ref()),
            high: text(high.as_ref()),
            low: text(low.as_ref()),
            alt: words.say(&Message::new("sheet-wave-alt").with("part", part)),
        }),
    }
}

/// A window with no more decimals than it was written with, up to three.
fn scaled<T: Copy>(range: Interval<T>, of: impl Fn(T) -> f64, factor: f64, unit: &str) -> Shown {
    let (low, high) = (of(range.low) * factor, of(range.high) * factor);
    let whole = |value: f64, decimals: usize| {
        let moved = value * ten_to(decimals);
        (moved - moved.round()).abs() < 1e-6
    };
    let decimals = (0..3).find(|&decimals| whole(low, decimals) && whole(high, decimals)).unwrap_or(3);
    between(low, high, Some(decimals), unit)
}
