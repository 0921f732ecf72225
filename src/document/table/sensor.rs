//! A sensor's resistances, volts and ratios over temperature.

use super::{Ask, Cell, Column, Show, Table, temperature_cells, temperature_columns, temperatures};
use crate::document::sensor_card::reading::Readings;
use crate::model::{Fact, Model, Multimeter, Sensor};
use crate::physics::Band;
use crate::physics::circuit::{Circuit, Converter, Topology, self_heating};
use crate::physics::curve::Curve;
use crate::physics::tolerance::Tolerance;
use crate::quantity::{
    Dissipation, Interval, Ratio, Resistance, Rounding, Step, Temperature, Units, Voltage, figure,
};
use crate::spec::About;
use crate::words::{Message, Words};

/// From row to row where no step was asked for.
const USUAL_STEP: Step = Step::of_kelvins(5.0);

/// The table of a sensor over its whole range.
pub(super) fn of_sensor(model: &Model, words: &Words, id: &str, ask: &Ask<'_>) -> Result<Table, Message> {
    let sensor = model.sensors.get(id).ok_or_else(|| missing(id))?;
    table(words, sensor, None, sensor.range, ask)
}

/// The table of a card's sensor, with the card's meter and range.
pub(super) fn of_card(model: &Model, words: &Words, id: &str, ask: &Ask<'_>) -> Result<Table, Message> {
    let card = model.cards.get(id).ok_or_else(|| missing(id))?;
    let sensor = card.of(About::Sensor).and_then(|id| model.sensors.get(id)).ok_or_else(|| missing(id))?;
    table(words, sensor, card.meter.as_ref(), card.range_of(sensor), ask)
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
    let units = ask.units;
    let readings = Readings::new(sensor, meter);
    let loading = match meter.and_then(|meter| meter.input) {
        Some(input) => words.say(&Message::new("run-table-meter").with("input", input.nominal)),
        None => words.word("run-table-no-meter"),
    };
    let extras: Vec<Extra<'_>> = Extra::of(&readings, units);
    let mut notes = vec![loading];
    notes.extend(limits_of_belief(words, sensor, units));
    let has_counts =
        sensor.circuit.is_some() && sensor.converter.is_some_and(|converter| converter.bits.is_some());
    if has_counts && readings.meter.is_some() {
        notes.push(words.word("table-note-counts-unloaded"));
    }
    let facts = [&sensor.curve_facts, &sensor.circuit_facts, &sensor.other_facts];
    Ok(Table {
        title: sensor.title.clone(),
        notes,
        columns: columns(words, units)
            .into_iter()
            .chain(extras.iter().flat_map(|extra| extra.columns(words)))
            .collect(),
        rows: at
            .into_iter()
            .map(|at| {
                row(&readings, units, at)
                    .into_iter()
                    .chain(extras.iter().flat_map(|extra| extra.cells(at)))
                    .collect()
            })
            .collect(),
        formulas: formulas(words, sensor).into_iter().chain(of_columns(words, &readings)).collect(),
        inputs: facts
            .into_iter()
            .flatten()
            .map(|fact| with_points(sensor, fact))
            .chain(meter_input(meter))
            .collect(),
    })
}

/// The points of a table instead of their number, which is enough where a paper shows them.
fn with_points(sensor: &Sensor, fact: &Fact) -> Fact {
    let points = sensor.points.as_ref().filter(|_| fact.label == "fact-table");
    let Some(points) = points else { return fact.clone() };
    let (temperature, resistance) = points.units;
    let point = |row: &Vec<String>| match row.as_slice() {
        [at, ohms @ ..] => format!("{at} {temperature} {} {resistance}", ohms.join("/")),
        [] => String::new(),
    };
    let written = points.rows.iter().map(point).collect::<Vec<_>>().join(", ");
    Fact { written: Some(written), ..fact.clone() }
}

/// The input resistance of the meter that the volts are loaded with.
fn meter_input(meter: Option<&Multimeter>) -> Option<Fact> {
    let meter = meter.filter(|meter| meter.input.is_some())?;
    meter.facts.iter().find(|fact| fact.label == "fact-input").cloned()
}

fn columns(words: &Words, units: Units) -> Vec<Column> {
    let tenth = Show::Decimals(1, Rounding::Nearest);
    let ohms = ["resistance_min_ohm", "resistance_nom_ohm", "resistance_max_ohm"];
    let volts = ["voltage_min_v", "voltage_nom_v", "voltage_max_v"];
    let ratios = ["ratio_min", "ratio_nom", "ratio_max"];
    let slope = Column::new(
        format!("slope_percent_per_{}", units.difference_key()),
        format!("%/{}", units.difference_unit().symbol()),
        Show::Decimals(2, Rounding::Nearest),
    );
    temperature_columns(units, "temperature", tenth)
        .into_iter()
        .chain(Column::band(words, ohms, "Ω", Show::Digits))
        .chain(Column::band(words, volts, "V", |rounding| Show::Decimals(3, rounding)))
        .chain(Column::band(words, ratios, "V/Vref", |rounding| Show::Decimals(4, rounding)))
        .chain([slope])
        .collect()
}

fn row(readings: &Readings<'_>, units: Units, at: Temperature) -> Vec<Cell> {
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
    let slope = readings.sensor.curve.slope(at).ok().map(|slope| 100.0 * slope / units.per_kelvin());
    temperature_cells(units, at)
        .into_iter()
        .chain(ohms)
        .chain(volts)
        .chain(ratios)
        .chain([Cell::from(slope)])
        .collect()
}

/// How the figures follow from the sensor's values.
pub(in crate::document) fn formulas(words: &Words, sensor: &Sensor) -> Vec<String> {
    let curve = match sensor.curve {
        Curve::Beta(_) => "table-formula-beta",
        Curve::SteinhartHart(_) => "table-formula-steinhart-hart",
        Curve::SteinhartHart4(_) => "table-formula-steinhart-hart-4",
        Curve::Platinum(_) => "table-formula-platinum",
        Curve::SiliconPtc(_) => "table-formula-silicon",
        Curve::Table(_) => "table-formula-points",
    };
    let tolerance = sensor.tolerance.as_ref().map(|tolerance| match tolerance {
        Tolerance::Rated { beta, .. } if beta.part() > 0.0 => "table-formula-tolerance-rated",
        Tolerance::Rated { .. } => "table-formula-tolerance-plain",
        Tolerance::Temperature(_) => "table-formula-tolerance-temperature",
        Tolerance::Platinum(_) => "table-formula-tolerance-class",
        Tolerance::Columns { .. } => "table-formula-tolerance-columns",
    });
    let circuit = sensor.circuit.as_ref().map(|circuit| match circuit.topology {
        Topology::PullUp => "table-formula-pull-up",
        Topology::PullDown => "table-formula-pull-down",
    });
    let window = circuit.and(tolerance).map(|_| "table-formula-window");
    let counts = sensor.converter.and_then(|converter| converter.bits).map(|_| "table-formula-counts");
    let (still, moving) = sensor.dissipation;
    let heating = circuit.and(still.or(moving)).map(|_| "table-formula-self-heating");
    [Some(curve), tolerance, circuit, window, counts, heating]
        .into_iter()
        .flatten()
        .map(|id| words.word(id))
        .collect()
}

/// What only the table itself shows: the meter's load, the slope, the temperatures of belief.
fn of_columns(words: &Words, readings: &Readings<'_>) -> Vec<String> {
    let circuit = readings.circuit();
    let loaded = circuit.filter(|_| readings.meter.is_some()).map(|_| "table-formula-loaded");
    let plausible = circuit.and(readings.sensor.converter).and_then(|converter| converter.plausible);
    let plausible = plausible.map(|_| "table-formula-plausible");
    let ids = [loaded, Some("table-formula-slope"), plausible];
    ids.into_iter().flatten().map(|id| words.word(id)).collect()
}

/// Columns that only some sensors have.
struct Extra<'a> {
    readings: &'a Readings<'a>,
    circuit: Circuit,
    units: Units,
    what: What,
}

enum What {
    /// Volts with the second resistor switched in.
    Switched,
    /// The converter's count, and the difference from one count to the next.
    Counts(Converter),
    /// How much the sensor warms itself, and the air that it holds for.
    Heating(Dissipation, &'static str, &'static str),
}

impl<'a> Extra<'a> {
    fn of(readings: &'a Readings<'a>, units: Units) -> Vec<Self> {
        let Some(circuit) = readings.circuit() else { return Vec::new() };
        let of = |circuit: Circuit, what| Self { readings, circuit, units, what };
        let switched = circuit.with_switched().map(|circuit| of(circuit, What::Switched));
        let counts = readings.sensor.converter.filter(|converter| converter.bits.is_some());
        let (still, moving) = readings.sensor.dissipation;
        let still = still.map(|still| What::Heating(still, "self_heating_still", "table-still"));
        let moving = moving.map(|moving| What::Heating(moving, "self_heating_moving", "table-moving"));
        let others = [counts.map(What::Counts), still, moving].into_iter().flatten();
        switched.into_iter().chain(others.map(|what| of(*circuit, what))).collect()
    }

    fn columns(&self, words: &Words) -> Vec<Column> {
        let nearest = |decimals| Show::Decimals(decimals, Rounding::Nearest);
        match self.what {
            What::Switched => {
                let keys = ["switched_voltage_min_v", "switched_voltage_nom_v", "switched_voltage_max_v"];
                let symbol = words.word("table-switched");
                Column::band(words, keys, &symbol, |rounding| Show::Decimals(3, rounding)).into()
            }
            What::Counts(_) => vec![
                Column::new("count", words.word("table-count"), nearest(0)),
                self.difference(words, "count_step", "table-count-step"),
            ],
            What::Heating(_, key, head) => vec![self.difference(words, key, head)],
        }
    }

    /// A column of a difference of temperatures; its key and head end with or hold the unit.
    fn difference(&self, words: &Words, key: &str, head: &'static str) -> Column {
        let key = format!("{key}_{}", self.units.difference_key());
        let unit = self.units.difference_unit().symbol();
        let head = words.say(&Message::new(head).with("unit", unit));
        Column::new(key, head, Show::Decimals(2, Rounding::Nearest))
    }

    fn cells(&self, at: Temperature) -> Vec<Cell> {
        let curve = &self.readings.sensor.curve;
        let nominal = self.readings.ohms(at);
        match &self.what {
            What::Switched => {
                let meter = self.readings.meter.as_ref();
                let band = self.readings.ohm_band(at).and_then(|band| self.circuit.voltage_band(band, meter));
                let nominal = nominal.map(|ohms| self.circuit.voltage(ohms, meter).volts());
                [band.map(|band| band.low.volts()), nominal, band.map(|band| band.high.volts())]
                    .map(Cell::from)
                    .into()
            }
            What::Counts(converter) => {
                let count = nominal.and_then(|ohms| converter.count(self.circuit.ratio(ohms, None)));
                let step = converter.step(&self.circuit, curve, at).ok().flatten();
                vec![
                    Cell::from(count.map(f64::from)),
                    Cell::from(step.map(|step| self.units.of_difference(step))),
                ]
            }
            What::Heating(dissipation, ..) => {
                let rise = self_heating(&self.circuit, curve, at, *dissipation).ok();
                vec![Cell::from(rise.map(|rise| self.units.of_difference(rise)))]
            }
        }
    }
}

/// At which temperatures the control unit may take a good sensor for a broken one.
fn limits_of_belief(words: &Words, sensor: &Sensor, units: Units) -> Vec<String> {
    let limits = sensor.converter.zip(sensor.circuit.as_ref());
    let Some((converter, circuit)) = limits.filter(|(converter, _)| converter.plausible.is_some()) else {
        return Vec::new();
    };
    let nominal = converter.good_sensor_limits(circuit, &sensor.curve);
    let tolerance = sensor.tolerance.as_ref();
    let worst = tolerance
        .map_or([None, None], |tolerance| converter.every_good_sensor(circuit, &sensor.curve, tolerance));
    // The colder a thermistor, the more ohms: it looks open; what rises with temperature, shorted.
    let open = words.word("table-open");
    let shorted = words.word("table-shorted");
    let looks = if sensor.curve.falls() { [open, shorted] } else { [shorted, open] };
    let ids = ["table-looks-broken-below", "table-looks-broken-above"];
    let nominals = ["table-looks-broken-below-nominal", "table-looks-broken-above-nominal"];
    let notes = (0..2).filter_map(|end| {
        // Inward: a limit that passes no temperature at which a sensor is not believed.
        let inward = if end == 0 { Rounding::Up } else { Rounding::Down };
        let shown = |at: Temperature, rounding| {
            format!("{} {}", figure(units.degrees(at), 1, rounding), units.symbol())
        };
        let (at, message) = match (worst[end], nominal[end]) {
            (Some(worst), nominal) => {
                let nominal = nominal.map_or_else(|| "–".to_owned(), |at| shown(at, Rounding::Nearest));
                (worst, Message::new(ids[end]).with("at", shown(worst, inward)).with("nominal", nominal))
            }
            (None, Some(nominal)) => {
                (nominal, Message::new(nominals[end]).with("at", shown(nominal, Rounding::Nearest)))
            }
            (None, None) => return None,
        };
        let said = words.say(&message.with("looks", &looks[end]));
        let beyond = !sensor.range.contains(&at);
        Some(if beyond { format!("{said} {}", words.word("table-beyond-range")) } else { said })
    });
    notes.collect()
}
