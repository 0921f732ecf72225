//! A worked example with this sensor's own numbers.

use schemars::JsonSchema;
use serde::Serialize;

use super::figures::{self, nominal_ohms, nominal_volts};
use super::reading::{self, Readings};
use crate::document::Context;
use crate::model::Card;
use crate::physics::circuit::{Circuit, Topology};
use crate::physics::curve::Curve;
use crate::quantity::{Interval, Resistance, Temperature, Units, Voltage};
use crate::words::{Message, Words};

/// A warm bay; between two rows of any five-point table.
const USUAL: Temperature = Temperature::from_celsius(31.0);

/// The same, a whole degree of the other scale.
const USUAL_FAHRENHEIT: f64 = 88.0;

/// Bad contacts to show what a wrong reading looks like, in Ω: the first that still
/// looks like a temperature of the sensor's range, or else of its curve. Half a
/// kiloohm is nothing to one sensor and beyond every temperature of another.
const EXTRA: [f64; 4] = [500.0, 100.0, 10.0, 1.0];

/// The figures of one temperature, worked through.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Example {
    /// At which temperature.
    title: String,
    /// A formula with its numbers each.
    lines: Vec<String>,
}

/// Composes the example.
pub(super) fn compose(context: Context<'_>, readings: &Readings<'_>, card: &Card) -> Example {
    let Context { words, units, .. } = context;
    let range = card.range_of(readings.sensor);
    let at = at(units, range, card);
    let temperature = figures::temperature(units, at);
    let title = Message::new("card-example").with("temperature", &temperature);
    let lines = [
        // A table's own line has both scales.
        scales(words, units, at).filter(|_| !matches!(readings.sensor.curve, Curve::Table(_))),
        resistance(words, readings, at),
        voltage(words, readings, at),
        window(words, readings, at),
        fault(context, readings, at),
    ];
    Example { title: words.say(&title), lines: lines.into_iter().flatten().collect() }
}

/// The temperature of the example: the lead's, or a warm bay's.
pub(super) fn at(units: Units, range: Interval<Temperature>, card: &Card) -> Temperature {
    let (low, high) = (units.degrees(range.low), units.degrees(range.high));
    let middle = match units {
        // A whole degree of this scale, where there is one in the range.
        Units::Us => Some(units.temperature((0.5 * (low + high)).round())).filter(|at| range.contains(at)),
        _ => None,
    };
    let middle = middle.unwrap_or_else(|| units.temperature(0.5 * (low + high)));
    let usual = if units == Units::Us { units.temperature(USUAL_FAHRENHEIT) } else { USUAL };
    let usual = if range.contains(&usual) { usual } else { middle };
    card.example.unwrap_or(usual)
}

/// What the formulas count in, where the page has the other scale.
fn scales(words: &Words, units: Units, at: Temperature) -> Option<String> {
    let message = Message::new("card-example-scales")
        .with("fahrenheit", figures::trimmed(at.fahrenheit()))
        .with("celsius", figures::celsius(at))
        .with("kelvins", figures::trimmed(at.kelvins()));
    (units == Units::Us).then(|| words.say(&message))
}

/// How the curve gives the resistance.
fn resistance(words: &Words, readings: &Readings<'_>, at: Temperature) -> Option<String> {
    let ohms = nominal_ohms(readings.ohms(at)?.ohms());
    let kelvins = figures::trimmed(at.kelvins());
    let message = match &readings.sensor.curve {
        Curve::Beta(curve) => {
            let (rated, rated_at, beta) = curve.parameters();
            Message::new("card-example-beta")
                .with("rated", nominal_ohms(rated.ohms()))
                .with("beta", figures::trimmed(beta.kelvins()))
                .with("rated-kelvins", figures::trimmed(rated_at.kelvins()))
        }
        Curve::SteinhartHart(_) => Message::new("card-example-steinhart-hart"),
        Curve::SteinhartHart4(curve) => {
            Message::new("card-example-steinhart-hart-4").with("base", nominal_ohms(curve.base().ohms()))
        }
        Curve::Platinum(curve) => {
            let cold = at.celsius() < 0.0;
            let id = if cold { "card-example-platinum-cold" } else { "card-example-platinum" };
            Message::new(id)
                .with("rated", nominal_ohms(curve.at_zero().ohms()))
                .with("temperature", figures::celsius(at))
        }
        Curve::SiliconPtc(curve) => {
            let (rated, rated_at) = curve.rated();
            let above = at.celsius() - rated_at.celsius();
            Message::new("card-example-silicon")
                .with("rated", nominal_ohms(rated.ohms()))
                .with("temperature", figures::celsius(at))
                .with("rated-temperature", figures::celsius(rated_at))
                .with("above", figures::trimmed(above))
        }
        Curve::Table(_) => Message::new("card-example-table")
            .with("temperature", figures::celsius(at))
            .with("fahrenheit", figures::trimmed(at.fahrenheit())),
    };
    Some(words.say(&message.with("kelvins", kelvins).with("ohms", ohms)))
}

/// How the circuit turns it into volts: without the meter, then with it.
fn voltage(words: &Words, readings: &Readings<'_>, at: Temperature) -> Option<String> {
    let circuit = readings.circuit()?;
    let sensor = readings.ohms(at)?;
    let volts = nominal_volts(circuit.voltage(sensor, None).volts());
    let mut parts = Vec::new();
    if circuit.reader.is_some() || circuit.offset.is_some() {
        // More than one voltage drives the pin: no longer a divider.
        let (currents, conductances) = at_pin(circuit, sensor);
        let message = Message::new("card-example-node")
            .with("currents", currents)
            .with("conductances", conductances)
            .with("volts", volts);
        parts.push(words.say(&message));
    } else {
        let leg = nominal_ohms(circuit.leg(sensor).ohms());
        if circuit.series.is_some() || circuit.parallel.is_some() {
            parts.push(words.say(&Message::new("card-example-network").with("ohms", &leg)));
        }
        let id = match circuit.topology {
            Topology::PullUp => "card-example-pull-up",
            Topology::PullDown => "card-example-pull-down",
        };
        let message = Message::new(id)
            .with("reference", circuit.reference.nominal)
            .with("ohms", leg)
            .with("resistor", nominal_ohms(circuit.resistor.nominal.ohms()))
            .with("volts", volts);
        parts.push(words.say(&message));
    }
    if let Some(meter) = &readings.meter {
        let loaded = Message::new("card-example-meter")
            .with("input", meter.input.nominal)
            .with("volts", nominal_volts(readings.volts(at)?.volts()));
        parts.push(words.say(&loaded));
    }
    Some(parts.join(" "))
}

/// All that leads to the unit's pin, as current and conductance: V/R + V/R …, 1/R + 1/R ….
///
/// # Source
/// Kirchhoff's current law, for the pin: V Σ 1/R = Σ Vᵢ/R.
fn at_pin(circuit: &Circuit, sensor: Resistance) -> (String, String) {
    let none = Voltage::from_volts(0.0);
    let offset = circuit.offset.map_or(none, |offset| offset.nominal);
    let reference = circuit.reference.nominal;
    let (resistor_to, parallel_to, sensor_to) = match circuit.topology {
        Topology::PullUp => (reference, none, offset),
        Topology::PullDown => (none, reference, reference),
    };
    let line = circuit.series.map_or(0.0, |series| series.nominal.ohms()) + sensor.ohms();
    let reader_to = circuit.reader.and_then(|reader| reader.reference).map_or(none, |volts| volts.nominal);
    let parts = [
        Some((circuit.resistor.nominal, resistor_to)),
        circuit.parallel.map(|parallel| (parallel.nominal, parallel_to)),
        circuit.reader.map(|reader| (reader.resistor.nominal, reader_to)),
        Some((Resistance::from_ohms(line), sensor_to)),
    ];
    let (mut currents, mut conductances) = (Vec::new(), Vec::new());
    for (ohms, to) in parts.into_iter().flatten() {
        let ohms = nominal_ohms(ohms.ohms());
        if to.volts().abs() > 0.0 {
            currents.push(format!("{} V/{ohms} Ω", nominal_volts(to.volts())));
        }
        conductances.push(format!("1/{ohms} Ω"));
    }
    (currents.join(" + "), conductances.join(" + "))
}

/// The window around it.
fn window(words: &Words, readings: &Readings<'_>, at: Temperature) -> Option<String> {
    let message = match (readings.volt_band(at), readings.ohm_band(at)) {
        (Some(band), _) => Message::new("card-example-window")
            .with("window", figures::range(&reading::volts(band)))
            .with("unit", "V"),
        (None, Some(band)) => Message::new("card-example-window")
            .with("window", figures::range(&reading::ohms(band)))
            .with("unit", "Ω"),
        (None, None) => return None,
    };
    Some(words.say(&message))
}

/// What a bad contact would make of it.
fn fault(
    Context { words, units, .. }: Context<'_>,
    readings: &Readings<'_>,
    at: Temperature,
) -> Option<String> {
    let circuit = readings.circuit()?;
    let good = readings.ohms(at)?.ohms();
    let looks = EXTRA.into_iter().filter_map(|extra| {
        let wrong = Resistance::from_ohms(good + extra);
        Some((extra, wrong, readings.sensor.curve.temperature(wrong).ok()?))
    });
    let usual = |(.., believed): &(f64, Resistance, Temperature)| readings.sensor.range.contains(believed);
    let (extra, wrong, believed) = looks.clone().find(usual).or_else(|| looks.clone().next())?;
    let volts = circuit.voltage(wrong, readings.meter.as_ref());
    let message = Message::new("card-example-fault")
        .with("extra", Resistance::from_ohms(extra))
        .with("volts", nominal_volts(volts.volts()))
        .with("believed", figures::tenths(units, believed));
    Some(words.say(&message))
}
