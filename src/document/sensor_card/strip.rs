//! The strip table: a row per step of temperature.

use schemars::JsonSchema;
use serde::Serialize;

use super::figures::{self, VOLT_DECIMALS};
use super::reading::{self, Readings};
use crate::document::Context;
use crate::document::plan::Plan;
use crate::document::table::BLANK;
use crate::model::strip::{rows_in, temperatures};
use crate::model::{Card, Sensor};
use crate::physics::tolerance::Tolerance;
use crate::quantity::{Interval, Rounding, Step, Temperature, Units, figure, ten_to};
use crate::words::{Message, Words};

/// So many steps are fine enough for a card that has other sides too.
const FINE: usize = 3;

/// The strip table: a row for each temperature.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Strip {
    /// Heads, from left to right.
    columns: Vec<Column>,
    /// A row for each temperature, a text for each column: `31.0`, `1.285`; the decimal mark of the language.
    rows: Vec<Vec<String>>,
    /// How it was measured, and what the limits include.
    notes: [String; 2],
}

/// A column of the strip table. Neighbours with the same head stand under one.
#[derive(Debug, Serialize, JsonSchema)]
#[schemars(rename = "StripColumn")]
struct Column {
    /// `°C`, `°F`, `Ω` or `V`.
    head: String,
    /// `min`, `nominal`, `max`, in the language of the page, or nothing.
    sub: String,
}

/// Three round temperatures well inside a range: at a quarter, half and three
/// quarters; fewer where the range is too narrow for different ones.
pub(super) fn key_temperatures(units: Units, range: Interval<Temperature>) -> Vec<Temperature> {
    let (low, high) = (units.degrees(range.low), units.degrees(range.high));
    // Tens where the range is wide enough for three different ones.
    let grid = if high - low >= 40.0 {
        10.0
    } else if high - low >= 4.0 {
        1.0
    } else {
        0.1
    };
    let mut round = [0.25, 0.5, 0.75].map(|part| {
        let round = ((low + part * (high - low)) / grid).round() * grid;
        units.temperature(round.clamp(low, high))
    });
    round.sort_by(|a, b| a.celsius().total_cmp(&b.celsius()));
    let mut temperatures = round.to_vec();
    temperatures.dedup();
    temperatures
}

/// The lead's step as this edition counts, else the smallest whose rows have the room that is
/// planned, or the largest there is.
fn step(units: Units, card: &Card, sensor: &Sensor, plan: Plan) -> Step {
    plan.step.map(|step| units.step(step)).unwrap_or_else(|| {
        let mut steps = units.strip_steps().to_vec();
        if plan.sides == 0 {
            steps.truncate(FINE);
        }
        let fits = |step: &Step| rows_in(card.range_of(sensor), *step) <= plan.rows;
        steps.iter().copied().find(fits).unwrap_or(steps[steps.len() - 1])
    })
}

/// Whether the whole strip has the room that is planned for it.
pub(super) fn fits(units: Units, card: &Card, sensor: &Sensor, plan: Plan) -> bool {
    rows_in(card.range_of(sensor), step(units, card, sensor, plan)) <= plan.rows
}

/// Composes the table.
pub(super) fn compose(context: Context<'_>, readings: &Readings<'_>, card: &Card, plan: Plan) -> Strip {
    let Context { words, units, .. } = context;
    let sensor = readings.sensor;
    let temperatures = temperatures(card.range_of(sensor), step(units, card, sensor, plan));
    let decimals = ohm_decimals(readings, card);
    let count = units.scales().len() + if plan.slope { 7 } else { 6 };
    let row = |at: &Temperature| row(units, readings, *at, decimals).into_iter().take(count).collect();
    let rows: Vec<Vec<String>> = temperatures.iter().map(row).collect();
    let (min, nominal, max) = (words.word("card-min"), words.word("card-nominal"), words.word("card-max"));
    let scales = units.scales().iter().map(|scale| (scale.symbol().to_owned(), String::new()));
    let heads = [
        ("Ω", min.clone()),
        ("Ω", nominal.clone()),
        ("Ω", max.clone()),
        ("V", min),
        ("V", nominal),
        ("V", max),
    ];
    let slope = (format!("%/{}", units.difference_unit().symbol()), String::new());
    let heads = heads.into_iter().map(|(head, sub)| (head.to_owned(), sub));
    let columns = scales.chain(heads).chain([slope]).take(count).map(|(head, sub)| Column { head, sub });
    Strip { columns: columns.collect(), notes: notes(words, readings, card), rows }
}

/// The decimals of the card's ohms: those that its smallest value needs.
///
/// A rising curve moves ten times less in a kelvin than a thermistor, so it also
/// needs as many as show a tenth of a kelvin, up to two.
pub(super) fn ohm_decimals(readings: &Readings<'_>, card: &Card) -> usize {
    let curve = &readings.sensor.curve;
    let range = card.range_of(readings.sensor);
    let at = if curve.falls() { range.high } else { range.low };
    let smallest = readings.ohms(at).map_or(f64::MAX, |ohms| ohms.ohms());
    let usual = figures::column_decimals(smallest);
    if curve.falls() {
        return usual;
    }
    let tenth = curve.slope(at).map_or(1.0, |slope| 0.1 * slope * smallest);
    let shown = (0_usize..2).find(|&decimals| tenth * ten_to(decimals) >= 1.0).unwrap_or(2);
    usual.max(shown)
}

fn row(units: Units, readings: &Readings<'_>, at: Temperature, decimals: usize) -> Vec<String> {
    let blank = || BLANK.to_owned();
    let ohms = match (readings.ohm_band(at), readings.ohms(at)) {
        (Some(band), _) => {
            let shown = reading::column_ohms(band, decimals);
            [shown.low, shown.nominal, shown.high]
        }
        (None, Some(ohms)) => [blank(), figure(ohms.ohms(), decimals, Rounding::Nearest), blank()],
        (None, None) => [blank(), blank(), blank()],
    };
    let volts = match (readings.volt_band(at), readings.volts(at)) {
        (Some(band), _) => {
            let shown = reading::volts(band);
            [shown.low, shown.nominal, shown.high]
        }
        (None, Some(volts)) => [blank(), figure(volts.volts(), VOLT_DECIMALS, Rounding::Nearest), blank()],
        (None, None) => [blank(), blank(), blank()],
    };
    let curve = &readings.sensor.curve;
    // Platinum has 0.4 %/K, a thermistor ten times as much.
    let digits = if curve.falls() { 1 } else { 2 };
    let shown = |slope: f64| figure(100.0 * slope / units.per_kelvin(), digits, Rounding::Nearest);
    let slope = curve.slope(at).map_or_else(|_| blank(), shown);
    // A whole degree Celsius is a whole number of tenths of a degree Fahrenheit.
    let temperatures = match units {
        Units::Both => vec![figures::celsius(at), figure(at.fahrenheit(), 1, Rounding::Nearest)],
        _ => vec![figures::degrees(units, at)],
    };
    temperatures.into_iter().chain(ohms).chain(volts).chain([slope]).collect()
}

/// Where and how to measure; then what the columns include, and why one is blank.
fn notes(words: &Words, readings: &Readings<'_>, card: &Card) -> [String; 2] {
    let sensor = readings.sensor;
    let mut parts = Vec::new();
    let range = card.range_of(sensor);
    let middle = Temperature::from_celsius(0.5 * (range.low.celsius() + range.high.celsius()));
    if readings.volt_band(middle).is_some() {
        parts.push(words.word("card-note-window"));
    } else if sensor.tolerance.is_some() {
        parts.push(words.word("card-note-ohm-window"));
    } else {
        parts.push(words.word("card-note-no-tolerance"));
    }
    let ends = [range.low, range.high];
    if sensor.tolerance.is_some() && ends.iter().any(|&at| readings.ohm_band(at).is_none()) {
        let class = matches!(sensor.tolerance, Some(Tolerance::Platinum(_)));
        parts.push(words.word(if class { "card-note-beyond-class" } else { "card-note-beyond" }));
    }
    if sensor.circuit.is_none() {
        parts.push(words.word("card-note-no-circuit"));
    } else if sensor.tolerance.is_some() && readings.volt_band(middle).is_none() {
        parts.push(words.word("card-note-no-volt-limits"));
    }
    let mut places = Vec::new();
    if sensor.circuit.is_some() {
        let pins =
            sensor.control_unit.as_ref().map_or_else(String::new, |end| super::probes(words, sensor, end));
        places.push(words.say(&Message::new("card-note-volts").with("pins", pins)));
        places.push(match &readings.meter {
            Some(meter) => words.say(&Message::new("card-note-meter").with("input", meter.input.nominal)),
            None => words.word("card-note-no-meter"),
        });
    }
    if sensor.circuit.as_ref().is_some_and(|circuit| circuit.switched.is_some()) {
        places.push(words.word("card-note-switched"));
    }
    places.push(words.word("card-note-ohms"));
    [places.join(" "), parts.join(" ")]
}
