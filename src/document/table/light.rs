//! A light sensor's volts over irradiance.

use super::{Ask, Cell, Column, Show, Table, not_over_temperature};
use crate::model::{Light, Model};
use crate::physics::light::{LightSensor, LightTopology};
use crate::quantity::{Irradiance, Rounding, Voltage, figure};
use crate::words::{Message, Words};

/// How many rows lie above darkness, up to the rated irradiance.
const STEPS: u32 = 10;

/// The table of a light sensor.
pub(super) fn of_light(model: &Model, words: &Words, id: &str, ask: &Ask<'_>) -> Result<Table, Message> {
    not_over_temperature(ask)?;
    let light = model.lights.get(id).ok_or_else(|| Message::new("run-no-such-table").with("id", id))?;
    let rows = light.sensor.as_ref().map(rows).unwrap_or_default();
    let formula = light.sensor.as_ref().map(|sensor| match sensor.topology {
        LightTopology::PullUp => "table-formula-light-pull-up",
        LightTopology::Load => "table-formula-light-load",
    });
    let pins = light.pins.iter().flat_map(|pin| pin.pin.facts());
    let one = Show::Decimals(0, Rounding::Nearest);
    let volts = ["voltage_min_v", "voltage_nom_v", "voltage_max_v"];
    Ok(Table {
        title: light.title.clone(),
        notes: notes(light).iter().map(|note| words.say(note)).collect(),
        columns: [Column::new("irradiance_w_per_m2", "W/m²", one)]
            .into_iter()
            .chain(Column::band(words, volts, "V", |rounding| Show::Decimals(3, rounding)))
            .collect(),
        rows,
        formulas: formula.into_iter().map(|id| words.word(id)).collect(),
        inputs: light.facts.iter().chain(pins).cloned().collect(),
    })
}

fn rows(sensor: &LightSensor) -> Vec<Vec<Cell>> {
    let row = |step: u32| {
        let part = f64::from(step) / f64::from(STEPS);
        let at = Irradiance::from_watts_per_square_metre(part * sensor.at.watts_per_square_metre());
        let window = sensor.voltage_window(at, None).ok().flatten();
        let nominal = sensor.voltage(at, None).ok();
        let volts = [window.map(|w| w.low), nominal, window.map(|w| w.high)];
        std::iter::once(Cell::from(at.watts_per_square_metre()))
            .chain(volts.map(|volts| Cell::from(volts.map(Voltage::volts))))
            .collect()
    };
    (0..=STEPS).map(row).collect()
}

fn notes(light: &Light) -> Vec<Message> {
    let mut notes = Vec::new();
    let shown = |light: Irradiance, rounding| figure(light.watts_per_square_metre(), 0, rounding);
    if let Some(sensor) = &light.sensor {
        notes.push(Message::new("run-table-no-meter"));
        let nominal = sensor.saturation().ok();
        let earliest = sensor.earliest_saturation().ok().flatten();
        notes.extend(match (nominal, earliest) {
            (Some(nominal), Some(earliest)) => Some(
                Message::new("table-note-saturation")
                    .with("nominal", shown(nominal, Rounding::Nearest))
                    .with("earliest", shown(earliest, Rounding::Down)),
            ),
            (Some(nominal), None) => Some(
                Message::new("table-note-saturation-nominal")
                    .with("nominal", shown(nominal, Rounding::Nearest)),
            ),
            _ => None,
        });
    }
    let span = light.least_span.map(|span| Message::new("table-note-least-span").with("span", span));
    notes.extend(span);
    notes.push(Message::new("table-note-shop-light"));
    notes
}
