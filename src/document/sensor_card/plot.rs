//! Resistance and voltage against temperature, in parts of the plot's sides.

use serde::Serialize;

use super::figures;
use super::reading::Readings;
use crate::model::Card;
use crate::quantity::{Interval, Temperature};
use crate::words::{Message, Words};

/// Steps of the drawn lines; at arm's length they look smooth.
const PIECES: u32 = 24;

/// How many ticks an axis has at most.
const MOST_TICKS: f64 = 6.0;

#[derive(Debug, Serialize)]
pub(super) struct Plot {
    title: String,
    unit: &'static str,
    x_unit: &'static str,
    x_ticks: Vec<Tick>,
    y_ticks: Vec<Tick>,
    nominal: Vec<[f64; 2]>,
    low: Vec<[f64; 2]>,
    high: Vec<[f64; 2]>,
    alt: String,
}

#[derive(Debug, Serialize)]
struct Tick {
    at: f64,
    text: String,
}

/// Units of an axis: from this value on, this unit, which is that many base units.
type Scales = [(f64, &'static str, f64)];

/// An axis has room for four digits and a space.
const OHMS: [(f64, &str, f64); 3] = [(0.0, "Ω", 1.0), (1e4, "kΩ", 1e3), (1e7, "MΩ", 1e6)];
const VOLTS: [(f64, &str, f64); 1] = [(0.0, "V", 1.0)];

/// Nominal value and limits at one temperature.
type Sample = (f64, Option<(f64, f64)>);

/// One plot of ohms, and one of volts where the circuit is known.
pub(super) fn compose(words: &Words, readings: &Readings<'_>, card: &Card) -> Vec<Plot> {
    let range = card.range_of(readings.sensor);
    let ohms = |at| {
        let limits = readings.ohm_band(at).map(|band| (band.low.ohms(), band.high.ohms()));
        Some((readings.ohms(at)?.ohms(), limits))
    };
    let volts = |at| {
        let limits = readings.volt_band(at).map(|band| (band.low.volts(), band.high.volts()));
        Some((readings.volts(at)?.volts(), limits))
    };
    let title = |id| words.word(id);
    // Every card shows volts up to the reference, so that cards side by side compare.
    let reference = readings.circuit().map_or(0.0, |circuit| circuit.reference.nominal.volts());
    let resistance = plot(words, range, title("card-plot-resistance"), &OHMS, 0.0, ohms);
    let voltage = plot(words, range, title("card-plot-voltage"), &VOLTS, reference, volts);
    resistance.into_iter().chain(voltage).collect()
}

fn plot(
    words: &Words,
    range: Interval<Temperature>,
    title: String,
    scales: &Scales,
    at_least: f64,
    of: impl Fn(Temperature) -> Option<Sample>,
) -> Option<Plot> {
    let (cold, hot) = (range.low.celsius(), range.high.celsius());
    // A single temperature makes no plot.
    if hot - cold < 1.0 {
        return None;
    }
    let share = |piece: u32| f64::from(piece) / f64::from(PIECES);
    let samples: Vec<(f64, Sample)> = (0..=PIECES)
        .map(|piece| {
            let at = Temperature::from_celsius((cold + share(piece) * (hot - cold)).clamp(cold, hot));
            Some((share(piece), of(at)?))
        })
        .collect::<Option<_>>()?;
    let top_of = |sample: &Sample| sample.1.map_or(sample.0, |(_, high)| high);
    let most = samples.iter().map(|(_, sample)| top_of(sample)).fold(at_least, f64::max);
    let (_, unit, scale) = *scales.iter().rev().find(|(from, ..)| most >= *from)?;
    let step = round_step(most / scale) * scale;
    let top = (most / step).ceil() * step;
    let line = |value: &dyn Fn(&Sample) -> Option<f64>| {
        let point = |(x, sample): &(f64, Sample)| Some([tidy(*x), tidy(value(sample)? / top)]);
        samples.iter().filter_map(point).collect::<Vec<_>>()
    };
    let ends = samples.first().zip(samples.last());
    let (first, last) = ends.map(|(first, last)| (first.1.0, last.1.0))?;
    let alt = Message::new("card-alt-plot")
        .with("title", &title)
        .with("first", format!("{} {unit}", figures::trimmed(first / scale)))
        .with("last", format!("{} {unit}", figures::trimmed(last / scale)))
        .with("cold", figures::celsius(range.low))
        .with("hot", figures::celsius(range.high));
    Some(Plot {
        title,
        unit,
        x_unit: "°C",
        x_ticks: ticks(cold, hot, round_step(hot - cold)),
        y_ticks: ticks(0.0, top / scale, step / scale),
        nominal: line(&|sample| Some(sample.0)),
        low: line(&|sample| sample.1.map(|(low, _)| low)),
        high: line(&|sample| sample.1.map(|(_, high)| high)),
        alt: words.say(&alt),
    })
}

/// The smallest of 1, 2, 5 × 10ⁿ that gives no more ticks than an axis can hold.
fn round_step(span: f64) -> f64 {
    let power = libm::pow(10.0, libm::floor(libm::log10(span / MOST_TICKS)));
    let fits = |factor: &f64| span / (factor * power) <= MOST_TICKS;
    [1.0, 2.0, 5.0].into_iter().find(fits).unwrap_or(10.0) * power
}

fn ticks(low: f64, high: f64, step: f64) -> Vec<Tick> {
    let first = (low / step - 1e-9).ceil();
    let count = ((high / step + 1e-9).floor() - first).max(0.0) as u32;
    (0..=count)
        .map(|index| (first + f64::from(index)) * step)
        .map(|value| Tick { at: tidy((value - low) / (high - low)), text: figures::trimmed(value) })
        .collect()
}

/// An axis with its ticks, in parts of its length.
#[derive(Debug, Serialize)]
pub(in crate::document) struct Axis {
    /// The value at its beginning.
    #[serde(skip)]
    pub low: f64,
    /// The value at its end.
    #[serde(skip)]
    pub high: f64,
    ticks: Vec<Tick>,
}

impl Axis {
    /// An axis that begins and ends at a tick, around both values.
    pub(in crate::document) fn rounded(low: f64, high: f64) -> Self {
        let step = round_step(high - low);
        let (low, high) = ((low / step).floor() * step, (high / step).ceil() * step);
        Self { low, high, ticks: ticks(low, high, step) }
    }

    /// Where a value lies on it.
    pub(in crate::document) fn share(&self, value: f64) -> f64 {
        (value - self.low) / (self.high - self.low)
    }
}

/// An axis from one value to another, which need not be ticks.
pub(in crate::document) fn axis(low: f64, high: f64) -> Axis {
    Axis { low, high, ticks: ticks(low, high, round_step(high - low)) }
}

/// Four decimals are a hundredth of a millimetre on paper; fewer bytes, same line.
pub(in crate::document) fn tidy(share: f64) -> f64 {
    (share * 1e4).round() / 1e4
}
