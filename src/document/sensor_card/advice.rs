//! What a wrong reading means, and what to do next.

use serde::Serialize;

use super::figures;
use super::reading::{self, Readings};
use crate::physics::Band;
use crate::quantity::Voltage;
use crate::spec::Topology;
use crate::words::{Message, Words};

/// A reading and its meaning.
#[derive(Debug, Serialize)]
pub(super) struct Reading {
    reads: String,
    means: String,
}

/// Open, short, too high, too low.
pub(super) fn readings(words: &Words, readings: &Readings<'_>) -> Vec<Reading> {
    let line = |reads: String, id: &'static str| Reading { reads, means: words.word(id) };
    let (high, low) = (words.word("card-reads-high"), words.word("card-reads-low"));
    let (Some(open), Some(short), Some(topology)) =
        (readings.open(), readings.short(), readings.sensor.topology)
    else {
        return vec![
            line(words.word("card-reads-overload"), "card-means-open"),
            line(words.word("card-reads-zero-ohms"), "card-means-short"),
            line(high, "card-means-ohms-high"),
            line(low, "card-means-ohms-low"),
        ];
    };
    let (open_means, short_means, high_means, low_means) = match topology {
        Topology::PullUp => ("card-means-open", "card-means-short", "card-means-high", "card-means-low"),
        Topology::PullDown => {
            ("card-means-open", "card-means-short-to-reference", "card-means-low", "card-means-high")
        }
    };
    vec![
        line(span(open), open_means),
        line(span(short), short_means),
        line(high, high_means),
        line(low, low_means),
    ]
}

/// The lead's own next steps, or those that every such input has in common.
pub(super) fn next(words: &Words, readings: &Readings<'_>) -> Vec<String> {
    if !readings.sensor.next.is_empty() {
        return readings.sensor.next.clone();
    }
    let (Some(open), Some(topology)) = (readings.open(), readings.sensor.topology) else {
        return vec![words.word("card-next-ohms")];
    };
    let steps = match topology {
        Topology::PullUp => ["card-next-unplug", "card-next-good", "card-next-bad"],
        // Unplugged, the signal of a pull-down reads nothing whatever the wires are
        // like: it is the reference on the other pin that proves them.
        Topology::PullDown => ["card-next-unplug-reference", "card-next-good-reference", "card-next-bad"],
    };
    let (open, reference) = (span(open), readings.reference().map(span).unwrap_or_default());
    let say = |id| words.say(&Message::new(id).with("open", &open).with("reference", &reference));
    steps.map(say).to_vec()
}

/// A fixed reading with its limits, or as one value where they print alike.
fn span(band: Band<Voltage>) -> String {
    let shown = reading::volts(band);
    if shown.low == shown.high {
        return format!("{} V", shown.nominal);
    }
    format!("{} V", figures::range(&shown))
}
