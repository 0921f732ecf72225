//! What a wrong reading means, and what to do next.

use schemars::JsonSchema;
use serde::Serialize;

use super::example;
use super::figures;
use super::reading::{self, Readings};
use super::{name, signed};
use crate::document::Context;
use crate::model::Card;
use crate::physics::Band;
use crate::quantity::Voltage;
use crate::spec::Topology;
use crate::words::{Message, Words};

/// A reading and its meaning.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Reading {
    /// What is read: `4.898–5.097 V`.
    reads: String,
    /// What that means, in words.
    means: String,
}

/// The readings that more ohms than good ones make; the others come of fewer.
const MORE_OHMS: [&str; 5] = [
    "card-means-open",
    "card-means-open-pull-down",
    "card-means-high",
    "card-means-low-pull-down",
    "card-means-ohms-high",
];

/// Open, short, too high, too low.
pub(super) fn readings(words: &Words, readings: &Readings<'_>) -> Vec<Reading> {
    let falls = readings.sensor.curve.falls();
    // What is believed of a reading depends on whether its fault is more ohms or fewer.
    let line = |reads: String, id: &'static str| {
        let warm = MORE_OHMS.contains(&id) != falls;
        let (looks, or) = if warm { ("card-hot", "card-warmer") } else { ("card-cold", "card-colder") };
        let message = Message::new(id).with_word("looks", looks).with_word("or", or);
        Reading { reads, means: words.say(&message) }
    };
    let (high, low) = (words.word("card-reads-high"), words.word("card-reads-low"));
    let (Some(open), Some(short), Some(topology)) =
        (readings.open(), readings.short(), readings.sensor.topology)
    else {
        return vec![
            line(words.word("card-reads-overload"), "card-means-open"),
            line(words.word("card-reads-zero-ohms"), "card-means-sensor-short"),
            line(high, "card-means-ohms-high"),
            line(low, "card-means-ohms-low"),
        ];
    };
    let behind_series = readings.circuit().is_some_and(|circuit| circuit.series.is_some());
    let (open, short) = (span(words, open), span(words, short));
    match topology {
        Topology::PullUp if behind_series => vec![
            line(open, "card-means-open"),
            line(short, "card-means-sensor-short"),
            line(words.word("card-reads-near-zero"), "card-means-short-before-series"),
            line(high, "card-means-high"),
            line(low, "card-means-low"),
        ],
        Topology::PullUp => vec![
            line(open, "card-means-open"),
            line(short, "card-means-short"),
            line(high, "card-means-high"),
            line(low, "card-means-low"),
        ],
        Topology::PullDown => vec![
            line(open, "card-means-open-pull-down"),
            line(short, "card-means-short-pull-down"),
            line(high, "card-means-high-pull-down"),
            line(low, "card-means-low-pull-down"),
        ],
    }
}

/// How the sensor is measured, in the order of doing, with the window at one temperature
/// between two rows as an example.
pub(super) fn measuring(context: Context<'_>, readings: &Readings<'_>, card: &Card) -> Vec<String> {
    let Context { words, units, .. } = context;
    let sensor = readings.sensor;
    let at = example::at(units, card.range_of(sensor), card);
    let window = match (readings.volt_band(at), readings.ohm_band(at)) {
        (Some(band), _) => Some(format!("{} V", figures::range(&reading::volts(band)))),
        (None, Some(band)) => Some(format!("{} Ω", figures::range(&reading::ohms(band)))),
        (None, None) => None,
    };
    let pins = sensor.control_unit.as_ref().map(|end| super::probes(words, sensor, end));
    let volts = pins.filter(|_| sensor.circuit.is_some());
    let steps = [
        Some(words.word("card-measure-temperature")),
        Some(match volts {
            Some(pins) => words.say(&Message::new("card-measure-volts").with("pins", pins)),
            None => words.word("card-measure-ohms"),
        }),
        window.map(|window| {
            let message = Message::new("card-measure-window").with("at", figures::temperature(units, at));
            words.say(&message.with("window", window))
        }),
    ];
    steps.into_iter().flatten().collect()
}

/// The lead's own next steps, or those that every such input has in common.
pub(super) fn next(words: &Words, readings: &Readings<'_>) -> Vec<String> {
    let sensor = readings.sensor;
    if !sensor.next.is_empty() {
        return sensor.next.clone();
    }
    let (Some(open), Some(topology), Some(circuit)) = (readings.open(), sensor.topology, readings.circuit())
    else {
        return vec![words.word("card-next-ohms")];
    };
    let steps = match topology {
        Topology::PullUp => ["card-next-unplug", "card-next-good", "card-next-bad"],
        // Unplugged, the signal of a pull-down reads nothing whatever the wires are
        // like. Between the two pins the meter takes the sensor's place: the
        // reference there proves both wires and the resistor.
        Topology::PullDown => ["card-next-unplug-between", "card-next-good-between", "card-next-bad"],
    };
    let pins = sensor.component.as_ref().map_or_else(
        || words.word("card-its-two-pins"),
        |end| {
            let (signal, other) = (name(&end.signal), name(&end.other));
            let (plus, minus) = match topology {
                Topology::PullUp => (signal, other),
                Topology::PullDown => (other, signal),
            };
            signed(plus, minus).join(" / ")
        },
    );
    let open = span(words, open);
    let reference = readings.reference().map(|band| span(words, band)).unwrap_or_default();
    let message = |id| {
        Message::new(id)
            .with("pins", &pins)
            .with("open", &open)
            .with("reference", &reference)
            .with("resistor", circuit.resistor.nominal)
    };
    let mut steps = steps.map(|id| words.say(&message(id))).to_vec();
    if let Some(series) = circuit.series {
        let note = Message::new("card-next-series").with("series", series.nominal);
        if let Some(last) = steps.last_mut() {
            *last = format!("{last} {}", words.say(&note));
        }
    }
    steps
}

/// A voltage below this is nothing to a workshop meter.
const NOTHING: f64 = 0.02;

/// A fixed reading with its limits, or as one value where they print alike.
pub(in crate::document) fn span(words: &Words, band: Band<Voltage>) -> String {
    if band.high.volts() < NOTHING {
        return words.word("card-reads-near-zero");
    }
    let shown = reading::volts(band);
    if shown.low == shown.high {
        return format!("{} V", shown.nominal);
    }
    format!("{} V", figures::range(&shown))
}
