//! Resistance and voltage against temperature, in parts of the plot's sides.

use super::figures;
use super::reading::Readings;
use crate::document::Context;
use crate::document::axis::{Axis, Trace, tidy};
use crate::model::Card;
use crate::quantity::{Interval, Temperature};
use crate::words::Message;

/// Steps of the drawn lines; at arm's length they look smooth.
const PIECES: u32 = 24;

/// How many steps an axis of a sensor card has at most.
pub(super) const STEPS: f64 = 6.0;

/// Units of an axis: from this value on, this unit, which is that many base units.
type Scales = [(f64, &'static str, f64)];

/// An axis has room for four digits and a space.
const OHMS: [(f64, &str, f64); 3] = [(0.0, "Ω", 1.0), (1e4, "kΩ", 1e3), (1e7, "MΩ", 1e6)];
const VOLTS: [(f64, &str, f64); 1] = [(0.0, "V", 1.0)];

/// Nominal value and limits at one temperature.
type Sample = (f64, Option<(f64, f64)>);

/// A temperature that arithmetic on another scale may have moved a hair beyond its range.
pub(super) fn inside(at: Temperature, range: Interval<Temperature>) -> Temperature {
    Temperature::from_celsius(at.celsius().clamp(range.low.celsius(), range.high.celsius()))
}

/// One plot of ohms, and one of volts where the circuit is known.
pub(super) fn compose(context: Context<'_>, readings: &Readings<'_>, card: &Card) -> Vec<Trace> {
    let words = context.words;
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
    let resistance = plot(context, range, title("card-plot-resistance"), &OHMS, 0.0, ohms);
    let voltage = plot(context, range, title("card-plot-voltage"), &VOLTS, reference, volts);
    resistance.into_iter().chain(voltage).collect()
}

fn plot(
    Context { words, units, .. }: Context<'_>,
    range: Interval<Temperature>,
    title: String,
    scales: &Scales,
    at_least: f64,
    of: impl Fn(Temperature) -> Option<Sample>,
) -> Option<Trace> {
    let (cold, hot) = (units.degrees(range.low), units.degrees(range.high));
    // A single temperature makes no plot.
    if hot - cold < 1.0 {
        return None;
    }
    let share = |piece: u32| f64::from(piece) / f64::from(PIECES);
    let samples: Vec<(f64, Sample)> = (0..=PIECES)
        .map(|piece| {
            let at = inside(units.temperature(cold + share(piece) * (hot - cold)), range);
            Some((share(piece), of(at)?))
        })
        .collect::<Option<_>>()?;
    let top_of = |sample: &Sample| sample.1.map_or(sample.0, |(_, high)| high);
    let most = samples.iter().map(|(_, sample)| top_of(sample)).fold(at_least, f64::max);
    let (_, unit, scale) = *scales.iter().rev().find(|(from, ..)| most >= *from)?;
    let x = Axis::exactly(cold, hot, STEPS)?;
    let y = Axis::around(0.0, most / scale, STEPS)?;
    let line = |value: &dyn Fn(&Sample) -> Option<f64>| {
        let point = |(x, sample): &(f64, Sample)| Some([tidy(*x), y.part(value(sample)? / scale)]);
        samples.iter().filter_map(point).collect::<Vec<_>>()
    };
    let ends = samples.first().zip(samples.last());
    let (first, last) = ends.map(|(first, last)| (first.1.0, last.1.0))?;
    let alt = Message::new("card-alt-plot")
        .with("title", &title)
        .with("first", format!("{} {unit}", figures::trimmed(first / scale)))
        .with("last", format!("{} {unit}", figures::trimmed(last / scale)))
        .with("cold", figures::temperature(units, range.low))
        .with("hot", figures::temperature(units, range.high));
    Some(Trace {
        title,
        unit,
        x_unit: units.symbol(),
        x_ticks: x.ticks(),
        y_ticks: y.ticks(),
        nominal: line(&|sample| Some(sample.0)),
        low: line(&|sample| sample.1.map(|(low, _)| low)),
        high: line(&|sample| sample.1.map(|(_, high)| high)),
        alt: words.say(&alt),
    })
}
