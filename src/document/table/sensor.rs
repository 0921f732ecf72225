//! A sensor's resistances, volts and ratios over temperature.

use super::{Ask, Cell, Column, Show, Table, temperatures};
use crate::document::sensor_card::reading::Readings;
use crate::model::{Model, Multimeter, Sensor};
use crate::physics::Band;
use crate::physics::circuit::Topology;
use crate::physics::curve::Curve;
use crate::physics::tolerance::Tolerance;
use crate::quantity::{Interval, Ratio, Resistance, Rounding, Temperature, TemperatureDifference, Voltage};
use crate::words::{Message, Words};

/// From row to row where no step was asked for.
const USUAL_STEP: TemperatureDifference = TemperatureDifference::from_kelvins(5.0);

/// The table of a sensor over its whole range.
pub(super) fn of_sensor(model: &Model, words: &Words, id: &str, ask: &Ask<'_>) -> Result<Table, Message> {
    let sensor = model.sensors.get(id).ok_or_else(|| missing(id))?;
    table(words, sensor, None, sensor.range, ask)
}

/// The table of a card's sensor, with the card's meter and range.
pub(super) fn of_card(model: &Model, words: &Words, id: &str, ask: &Ask<'_>) -> Result<Table, Message> {
    let card = model.cards.get(id).ok_or_else(|| missing(id))?;
    let sensor = model.sensors.get(&card.sensor).ok_or_else(|| missing(&card.sensor))?;
    table(words, sensor, card.meter.as_ref(), card.range, ask)
}

fn missing(id: &str) -> Message {
    Message::new("run-no-such-table").with("id", id)
}

fn table(
    words: &Words,
    sensor: &Sensor,
    meter: Option<&Multimeter>,
    usual: Interval<Temperature>,
    ask: &Ask<'_>,
) -> Result<Table, Message> {
    let at = temperatures(ask, (&sensor.id, usual, sensor.range), USUAL_STEP)?;
    let readings = Readings::new(sensor, meter);
    let loading = match meter.and_then(|meter| meter.input) {
        Some(input) => words.say(&Message::new("run-table-meter").with("input", input.nominal)),
        None => words.word("run-table-no-meter"),
    };
    let facts = [&sensor.curve_facts, &sensor.circuit_facts, &sensor.other_facts];
    Ok(Table {
        title: sensor.title.clone(),
        notes: vec![loading],
        columns: columns(words),
        rows: at.into_iter().map(|at| row(&readings, at)).collect(),
        formulas: formulas(words, sensor),
        inputs: facts.into_iter().flatten().cloned().collect(),
    })
}

fn columns(words: &Words) -> Vec<Column> {
    let tenth = Show::Decimals(1, Rounding::Nearest);
    let ohms = ["resistance_min_ohm", "resistance_nom_ohm", "resistance_max_ohm"];
    let volts = ["voltage_min_v", "voltage_nom_v", "voltage_max_v"];
    let ratios = ["ratio_min", "ratio_nom", "ratio_max"];
    let temperatures = [Column::new("temperature_c", "°C", tenth), Column::new("temperature_f", "°F", tenth)];
    let slope = Column::new("slope_percent_per_k", "%/K", Show::Decimals(2, Rounding::Nearest));
    temperatures
        .into_iter()
        .chain(Column::band(words, ohms, "Ω", Show::Digits))
        .chain(Column::band(words, volts, "V", |rounding| Show::Decimals(3, rounding)))
        .chain(Column::band(words, ratios, "V/Vref", |rounding| Show::Decimals(4, rounding)))
        .chain([slope])
        .collect()
}

fn row(readings: &Readings<'_>, at: Temperature) -> Vec<Cell> {
    let of = |band: Option<Band<f64>>, nominal: Option<f64>| {
        let nominal = band.map(|band| band.nominal).or(nominal);
        [band.map(|band| band.low), nominal, band.map(|band| band.high)].map(Cell::from)
    };
    let ohms = of(
        readings.ohm_band(at).map(|band| band.map(Resistance::ohms)),
        readings.ohms(at).map(Resistance::ohms),
    );
    let nominal = readings.volts(at).map(Voltage::volts);
    let volts = of(readings.volt_band(at).map(|band| band.map(Voltage::volts)), nominal);
    let reference = readings.circuit().map(|circuit| circuit.reference.nominal.volts());
    let nominal_ratio = nominal.zip(reference).map(|(volts, reference)| volts / reference);
    let ratios = of(readings.ratio_band(at).map(|band| band.map(Ratio::part)), nominal_ratio);
    let slope = readings.sensor.curve.slope(at).ok().map(|slope| 100.0 * slope);
    [at.celsius(), at.fahrenheit()]
        .map(Cell::from)
        .into_iter()
        .chain(ohms)
        .chain(volts)
        .chain(ratios)
        .chain([Cell::from(slope)])
        .collect()
}

/// How the figures follow from the sensor's values.
fn formulas(words: &Words, sensor: &Sensor) -> Vec<String> {
    let curve = match sensor.curve {
        Curve::Beta(_) => "table-formula-beta",
        Curve::SteinhartHart(_) => "table-formula-steinhart-hart",
        Curve::SteinhartHart4(_) => "table-formula-steinhart-hart-4",
        Curve::Platinum(_) => "table-formula-platinum",
        Curve::SiliconPtc(_) => "table-formula-silicon",
        Curve::Table(_) => "table-formula-points",
    };
    let tolerance = sensor.tolerance.as_ref().map(|tolerance| match tolerance {
        Tolerance::Rated { .. } => "table-formula-tolerance-rated",
        Tolerance::Temperature(_) => "table-formula-tolerance-temperature",
        Tolerance::Platinum(_) => "table-formula-tolerance-class",
        Tolerance::Columns { .. } => "table-formula-tolerance-columns",
    });
    let circuit = sensor.circuit.as_ref().map(|circuit| match circuit.topology {
        Topology::PullUp => "table-formula-pull-up",
        Topology::PullDown => "table-formula-pull-down",
    });
    let window = circuit.and(tolerance).map(|_| "table-formula-window");
    [Some(curve), tolerance, circuit, window].into_iter().flatten().map(|id| words.word(id)).collect()
}
