//! `bayleaf table`: one sensor's figures for a screen or another program.

use std::io;

use super::args::{Format, Table};
use super::load::{Loaded, announce, load};
use super::outcome::{Outcome, fail, say};
use crate::diag::nearest;
use crate::document::table::{COLUMNS, TableRow, rows};
use crate::model::{Model, Multimeter, Sensor};
use crate::quantity::{Interval, Rounding, decimals_for, figure};
use crate::words::{Message, Words};

/// More rows than anyone reads, and than a step of a thousandth of a kelvin gives.
const MOST_ROWS: f64 = 1e6;

/// Runs the command.
pub(super) fn run(arguments: &Table) -> Outcome {
    let words = Words::english();
    let loaded = match load(arguments.specs.specs.as_deref(), &words, false) {
        Ok(loaded) => loaded,
        Err(outcome) => return outcome,
    };
    match select(arguments, &loaded) {
        Ok((sensor, meter, range)) => {
            let rows = rows(sensor, meter, range, arguments.step);
            let told = match arguments.format {
                Format::Text => {
                    announce(&loaded.from, &words).and_then(|()| text(&words, sensor, meter, rows))
                }
                Format::Csv => csv(rows),
                Format::Json => json(rows),
            };
            Outcome::of_output(&words, told)
        }
        Err(message) => fail(&words, &message),
    }
}

type Selected<'a> = (&'a Sensor, Option<&'a Multimeter>, Interval<crate::quantity::Temperature>);

/// The sensor, the meter on it, and the rows that were asked for.
fn select<'a>(arguments: &Table, loaded: &'a Loaded) -> Result<Selected<'a>, Message> {
    let model = &loaded.model;
    let (sensor, meter, usual) = find(model, &arguments.id)?;
    let range =
        Interval { low: arguments.from.unwrap_or(usual.low), high: arguments.to.unwrap_or(usual.high) };
    if range.low > range.high {
        return Err(Message::new("run-table-reversed").with("from", range.low).with("to", range.high));
    }
    for end in [range.low, range.high] {
        if !sensor.range.contains(&end) {
            return Err(Message::new("run-table-outside")
                .with("at", end)
                .with("id", &sensor.id)
                .with("low", sensor.range.low)
                .with("high", sensor.range.high));
        }
    }
    let step = arguments.step.kelvins();
    let many = (range.high.celsius() - range.low.celsius()) / step;
    if !(step > 0.0 && many <= MOST_ROWS) {
        return Err(Message::new("run-table-step").with("step", arguments.step));
    }
    Ok((sensor, meter, range))
}

/// A sensor by its id, or a card's sensor with the card's meter and range.
fn find<'a>(model: &'a Model, id: &str) -> Result<Selected<'a>, Message> {
    if let Some(sensor) = model.sensors.get(id) {
        return Ok((sensor, None, sensor.range));
    }
    let card = model.cards.get(id);
    if let Some((card, sensor)) = card.and_then(|card| Some((card, model.sensors.get(&card.sensor)?))) {
        return Ok((sensor, card.meter.as_ref(), card.range));
    }
    let known = model.sensors.keys().chain(model.cards.keys()).map(String::as_str);
    let message = Message::new("run-no-such-table").with("id", id);
    Err(match nearest(id, known) {
        Some(near) => Message::new("run-no-such-table-near").with("id", id).with("near", near),
        None => message,
    })
}

/// Columns of one width, rounded as on a card.
fn text(
    words: &Words,
    sensor: &Sensor,
    meter: Option<&Multimeter>,
    rows: impl Iterator<Item = TableRow>,
) -> io::Result<()> {
    let loading = match meter.and_then(|meter| meter.input) {
        Some(input) => words.say(&Message::new("run-table-meter").with("input", input.nominal)),
        None => words.word("run-table-no-meter"),
    };
    say(format_args!("{} · {loading}", sensor.title))?;
    let heads = ["°C", "°F", "Ω min", "Ω nominal", "Ω max", "V min", "V nominal", "V max", "%/K"];
    say(heads.map(|head| format!("{head:>10}")).concat())?;
    for row in rows {
        let number = |value: Option<f64>, decimals: usize, rounding| {
            value.map_or_else(|| "–".to_owned(), |value| figure(value, decimals, rounding))
        };
        let ohms = |value: Option<f64>, rounding| number(value, value.map_or(0, decimals_for), rounding);
        let cells = [
            number(Some(row.temperature_c), 1, Rounding::Nearest),
            number(Some(row.temperature_f), 1, Rounding::Nearest),
            ohms(row.resistance_min_ohm, Rounding::Up),
            ohms(row.resistance_nom_ohm, Rounding::Nearest),
            ohms(row.resistance_max_ohm, Rounding::Down),
            number(row.voltage_min_v, 3, Rounding::Up),
            number(row.voltage_nom_v, 3, Rounding::Nearest),
            number(row.voltage_max_v, 3, Rounding::Down),
            number(row.slope_percent_per_k, 2, Rounding::Nearest),
        ];
        say(cells.map(|cell| format!("{cell:>10}")).concat())?;
    }
    Ok(())
}

fn csv(rows: impl Iterator<Item = TableRow>) -> io::Result<()> {
    say(COLUMNS.join(","))?;
    for row in rows {
        let cell = |value: Option<f64>| value.map_or_else(String::new, |value| value.to_string());
        say(values(&row).map(cell).join(","))?;
    }
    Ok(())
}

fn json(rows: impl Iterator<Item = TableRow>) -> io::Result<()> {
    let rows: Vec<TableRow> = rows.collect();
    say(serde_json::to_string_pretty(&rows)?)
}

/// A row's values in the order of [`COLUMNS`].
fn values(row: &TableRow) -> [Option<f64>; 12] {
    [
        Some(row.temperature_c),
        Some(row.temperature_f),
        row.resistance_min_ohm,
        row.resistance_nom_ohm,
        row.resistance_max_ohm,
        row.voltage_min_v,
        row.voltage_nom_v,
        row.voltage_max_v,
        row.ratio_min,
        row.ratio_nom,
        row.ratio_max,
        row.slope_percent_per_k,
    ]
}
