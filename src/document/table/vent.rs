//! What should leave the outlets, over the outside air's temperature and humidity.

use super::refrigerant::air_pressure;
use super::{Ask, Cell, Column, Show, Table, temperature_cells, temperature_columns, temperatures};
use crate::model::{Model, Position, Vent, vent_steps};
use crate::physics::Band;
use crate::physics::air::MoistAir;
use crate::physics::air::intake::mix;
use crate::physics::air::vent::{Dripping, Inlet, dripping};
use crate::physics::atmosphere::Site;
use crate::quantity::{Pressure, Ratio, Rounding, Temperature, TemperatureDifference, Units};
use crate::words::{Message, Words};

/// The table of a vent over its ambient temperatures and humidities.
pub(super) fn of_vent(model: &Model, words: &Words, id: &str, ask: &Ask<'_>) -> Result<Table, Message> {
    let vent = model.vents.get(id).ok_or_else(|| Message::new("run-no-such-table").with("id", id))?;
    let (ambient, step) = vent.ambient;
    let units = ask.units;
    let outside = temperatures(ask, (id, ambient, ambient), step)?;
    let pressure = model.shop.site.map(Site::pressure);
    let humidities = humidities(vent);
    let mut rows = Vec::new();
    for position in &vent.positions {
        // A door that takes in no outside air has one row, whatever the weather.
        if position.outside.part() <= 0.0 {
            rows.push(Air { vent, position, outside: None }.row((words, units), pressure));
            continue;
        }
        for &at in &outside {
            let in_air = |&humidity| {
                Air { vent, position, outside: Some((at, humidity)) }.row((words, units), pressure)
            };
            rows.extend(humidities.iter().map(in_air));
        }
    }
    let share = pressure.and_then(|pressure| settled_share(vent, &outside, &humidities, pressure));
    let mut inputs = vec![model.shop.elevation.clone()];
    inputs.extend(vent.facts.iter().cloned());
    Ok(Table {
        title: vent.title.clone(),
        notes: notes((words, units), pressure),
        columns: columns(words, units),
        rows,
        formulas: formulas(words, vent, share),
        inputs,
    })
}

fn notes((words, units): (&Words, Units), pressure: Option<Pressure>) -> Vec<String> {
    let site = match pressure {
        Some(pressure) => {
            words.say(&Message::new("table-air-site").with("pressure", air_pressure(units, pressure)))
        }
        None => words.word("table-no-air-site"),
    };
    vec![site, words.word("caution-law")]
}

fn humidities(vent: &Vent) -> Vec<Ratio> {
    let (range, step) = vent.humidity;
    let (low, high) = (range.low.part(), range.high.part());
    let count = vent_steps(low, high, step.part());
    let counted = std::iter::successors(Some(0.0), |index| Some(index + 1.0));
    counted
        .take_while(|index| *index < count)
        .map(|index| Ratio::new((low + index * step.part()).min(high)))
        .collect()
}

fn columns(words: &Words, units: Units) -> Vec<Column> {
    let tenth = Show::Decimals(1, Rounding::Nearest);
    let plain = |key, id, show| Column::new(key, words.word(id), show);
    let outlet = match units {
        Units::Us => ["outlet_min_f", "outlet_nom_f", "outlet_max_f"],
        _ => ["outlet_min_c", "outlet_nom_c", "outlet_max_c"],
    };
    let in_unit = |id, unit: &str| words.say(&Message::new(id).with("unit", unit));
    let symbol = in_unit("table-outlet", units.symbol());
    let degrees =
        |key: &str, id| Column::new(format!("{key}_{}", units.key()), in_unit(id, units.symbol()), tenth);
    let (water, key) = units.humidity();
    let grams = |name: &str, id| Column::new(format!("{name}_{key}"), in_unit(id, water), tenth);
    let outside = |column: Column| {
        // Its head is the scale alone.
        let head = in_unit("table-outside", &column.head);
        Column { head, ..column }
    };
    let mut columns = vec![plain("intake", "table-intake", tenth)];
    columns.extend(temperature_columns(units, "outside", tenth).into_iter().map(outside));
    columns.extend([
        plain("humidity_percent", "table-humidity", Show::Decimals(0, Rounding::Nearest)),
        degrees("inlet", "table-inlet"),
        degrees("dew_point", "table-dew-point"),
        grams("water", "table-water"),
    ]);
    columns.extend(Column::band(words, outlet, &symbol, |rounding| Show::Decimals(1, rounding)));
    columns.extend([
        grams("settled", "table-settled"),
        plain("dripping", "table-dripping", tenth),
        plain("mark", "table-mark", tenth),
    ]);
    columns
}

/// The greatest part of the duty, over the rows, that is left out with the settled water.
fn settled_share(
    vent: &Vent,
    outside: &[Temperature],
    humidities: &[Ratio],
    pressure: Pressure,
) -> Option<f64> {
    let airs = outside.iter().flat_map(|&at| humidities.iter().map(move |&humidity| Some((at, humidity))));
    let airs: Vec<_> = airs.chain([None]).collect();
    let rows = vent.positions.iter().flat_map(|position| {
        let takes_outside_air = position.outside.part() > 0.0;
        let airs = airs.iter().filter(move |air| air.is_some() == takes_outside_air);
        airs.map(move |&outside| Air { vent, position, outside })
    });
    let share = |row: Air<'_>| {
        let Entering::Air(air, _) = row.entering(pressure) else { return None };
        let outlet = vent.cooling.outlet(&air).ok()?;
        // A row that the evaporator's control holds has no such figure.
        let held = vent.evaporator.is_some_and(|fins| outlet.air.dry_bulb() < fins.low);
        vent.cooling.settled_share(&outlet).filter(|_| !held).map(Ratio::part)
    };
    rows.filter_map(share).max_by(f64::total_cmp)
}

/// One row: a position of the intake door in one outside air.
struct Air<'a> {
    vent: &'a Vent,
    position: &'a Position,
    /// Temperature and relative humidity of the outside air, where some is taken in.
    outside: Option<(Temperature, Ratio)>,
}

/// What is in front of the evaporator.
enum Entering {
    /// Air, nominal and, where both instruments are known, with its corners.
    Air(MoistAir, Option<Band<MoistAir>>),
    /// More water than the mixture holds.
    Fog,
    /// Not known.
    Unknown,
}

impl Air<'_> {
    fn row(&self, (words, units): (&Words, Units), pressure: Option<Pressure>) -> Vec<Cell> {
        let entering = pressure.map_or(Entering::Unknown, |pressure| self.entering(pressure));
        let (air, corners) = match &entering {
            Entering::Air(air, corners) => (Some(air), corners.as_ref()),
            Entering::Fog | Entering::Unknown => (None, None),
        };
        let grams = |kilograms: f64| units.of_humidity_ratio(kilograms);
        let degrees = |at: Temperature| units.degrees(at);
        let outside = match self.outside {
            Some((at, _)) => temperature_cells(units, at),
            None => vec![Cell::Missing; units.scales().len()],
        };
        let window = corners.and_then(|corners| self.vent.cooling.window(corners).ok().flatten());
        let outlet = air.and_then(|air| self.vent.cooling.outlet(air).ok());
        let nominal = outlet.map(|outlet| outlet.air.dry_bulb());
        let fins = self.vent.evaporator;
        let drips = corners.zip(fins).and_then(|(corners, fins)| dripping(corners, fins).ok());
        // Control holds the evaporator: no air leaves colder than that, whatever the duty.
        let held = nominal.zip(fins).is_some_and(|(nominal, fins)| nominal < fins.low);
        let window = window.filter(|_| !held);
        // A lower limit below it would pass an evaporator that ices.
        let least = window.map(|window| {
            fins.map_or(window.low, |fins| if window.low < fins.low { fins.low } else { window.low })
        });
        let cut = window.zip(least).is_some_and(|(window, least)| window.low < least);
        let (nominal, outlet) = (nominal.filter(|_| !held), outlet.filter(|_| !held));
        let mark = match entering {
            Entering::Fog => words.word("table-fog"),
            _ if held => words.word("table-held"),
            _ if cut => words.word("table-held-least"),
            _ => String::new(),
        };
        let mut cells = vec![Cell::Text(self.position.name.clone())];
        cells.extend(outside);
        cells.extend([
            Cell::from(self.outside.map(|(_, humidity)| 100.0 * humidity.part())),
            Cell::from(air.map(|air| degrees(air.dry_bulb()))),
            Cell::from(air.and_then(|air| air.dew_point().ok()).map(degrees)),
            Cell::from(air.map(|air| grams(air.humidity_ratio().kilograms_per_kilogram()))),
            Cell::from(least.map(degrees)),
            Cell::from(nominal.map(degrees)),
            Cell::from(window.map(|window| degrees(window.high))),
            Cell::from(outlet.map(|outlet| grams(outlet.condensed.kilograms_per_kilogram()))),
            drips.map_or(Cell::Missing, |drips| {
                Cell::Text(words.word(match drips {
                    Dripping::Yes => "table-drips",
                    Dripping::No => "table-stays-dry",
                    Dripping::Undecided => "table-undecided",
                }))
            }),
            Cell::Text(mark),
        ]);
        cells
    }

    /// The air in front of the evaporator: outside air, mixed with cabin air where the door takes some in.
    fn entering(&self, pressure: Pressure) -> Entering {
        let limits = self
            .vent
            .thermometer
            .as_ref()
            .and_then(|meter| meter.limit)
            .zip(self.vent.hygrometer.as_ref().and_then(|meter| meter.limit));
        let (thermometer, hygrometer) =
            limits.unwrap_or((TemperatureDifference::from_kelvins(0.0), Ratio::new(0.0)));
        let read =
            |dry_bulb, humidity| Inlet { dry_bulb, humidity, thermometer, hygrometer }.corners(pressure).ok();
        let outside = self.outside.map(|(at, humidity)| read(at, humidity));
        let cabin = || self.vent.cabin.and_then(|cabin| read(cabin.dry_bulb, cabin.humidity));
        let band = match outside {
            None => cabin(),
            Some(outside) if self.position.outside.part() < 1.0 => {
                let Some((outside, cabin)) = outside.zip(cabin()) else { return Entering::Unknown };
                let mixed = |outside, cabin| mix(outside, cabin, self.position.outside).ok();
                let Some(nominal) = mixed(&outside.nominal, &cabin.nominal) else { return Entering::Unknown };
                let Some(nominal) = nominal.air else { return Entering::Fog };
                let corner = |outside, cabin| mixed(outside, cabin).and_then(|mixture| mixture.air);
                match (corner(&outside.low, &cabin.low), corner(&outside.high, &cabin.high)) {
                    (Some(low), Some(high)) => Some(Band { low, nominal, high }),
                    // A corner in the fog leaves the nominal air without its limits.
                    _ => return Entering::Air(nominal, None),
                }
            }
            Some(outside) => outside,
        };
        band.map_or(Entering::Unknown, |band| Entering::Air(band.nominal, limits.map(|_| band)))
    }
}

/// How the figures follow, each with its source.
fn formulas(words: &Words, vent: &Vent, share: Option<f64>) -> Vec<String> {
    let mixes = vent.positions.iter().any(|position| position.outside.part() < 1.0);
    let outlet = Message::new("table-formula-outlet").with("humidity", vent.cooling.outlet_humidity);
    let mut formulas = vec![words.word("table-formula-moist-air")];
    if mixes {
        formulas.push(words.word("table-formula-mixed-air"));
    }
    formulas.push(words.say(&outlet));
    if let Some(share) = share {
        let percent = crate::quantity::figure(100.0 * share, 1, Rounding::Up);
        formulas.push(words.say(&Message::new("table-formula-settled").with("percent", percent)));
    }
    formulas.push(words.word("table-formula-outlet-window"));
    formulas.push(words.word("table-formula-dripping"));
    formulas
}
