//! Saturation of a refrigerant over temperature: absolute, as the shop's gauges show it, and
//! how well superheat, subcooling and a pressure at rest can be told with them.

use super::{Ask, Cell, Column, Show, Table, temperature_cells, temperature_columns, temperatures};
use crate::model::{Model, PressureGauge, Refrigerant};
use crate::physics::atmosphere::{Site, WEATHER};
use crate::physics::refrigerant::reading::Limits;
use crate::quantity::{Interval, Pressure, Rounding, Step, Temperature, Unit, Units, decimal_mark, marked};
use crate::words::{Message, Words};

/// From row to row where no step was asked for or given.
const USUAL_STEP: Step = Step::of_kelvins(5.0);

/// The table of a refrigerant over its range.
pub(super) fn of_refrigerant(
    model: &Model,
    words: &Words,
    id: &str,
    ask: &Ask<'_>,
) -> Result<Table, Message> {
    let of = model.refrigerants.get(id).ok_or_else(|| Message::new("run-no-such-table").with("id", id))?;
    let step = ask.units.step(of.step.unwrap_or(USUAL_STEP));
    let units = Edition { units: ask.units, pressures: pressures(ask.units, of) };
    let at = temperatures(ask, (id, of.range, of.fluid.range()), step)?;
    let site = model.shop.site;
    let mut inputs = vec![model.shop.elevation.clone()];
    inputs.extend(of.facts.iter().cloned());
    Ok(Table {
        title: of.title.clone(),
        notes: notes(words, &units, of, site),
        columns: columns(words, &units),
        rows: at.into_iter().map(|at| row(words, &units, of, site, at)).collect(),
        formulas: formulas(words, of),
        inputs,
    })
}

/// The units of one table.
struct Edition {
    units: Units,
    /// Those of its pressures.
    pressures: Vec<Unit>,
}

/// The units that the spec asks for, as far as the edition has them; else the edition's own.
fn pressures(units: Units, of: &Refrigerant) -> Vec<Unit> {
    let own: Vec<Unit> = of.units.iter().copied().filter(|unit| units.pressures().contains(unit)).collect();
    if own.is_empty() { units.pressures().to_vec() } else { own }
}

/// Where the gauges hang, and what nobody may do about what they show.
fn notes(words: &Words, edition: &Edition, of: &Refrigerant, site: Option<Site>) -> Vec<String> {
    let site = match site {
        Some(site) => words.say(
            &Message::new("table-site")
                .with("pressure", air_pressure(edition.units, site.pressure()))
                .with("weather", air_pressure(edition.units, WEATHER)),
        ),
        None => words.word("table-no-site"),
    };
    let mut notes = vec![site];
    notes.extend(gauges(words, edition, of));
    // A bay may well be as hot as that; the other fluids are critical far above it.
    let critical = of.fluid.critical_temperature();
    if of.at_rest.is_some() && critical < HOTTEST_BAY {
        let units = edition.units;
        let critical = crate::quantity::figure(units.degrees(critical), 1, Rounding::Down);
        let note = Message::new("table-note-above-critical").with("fluid", of.fluid.number());
        notes.push(words.say(&note.with("critical", format!("{critical} {}", units.symbol()))));
    }
    notes.extend([words.word("caution-refrigerant"), words.word("caution-law")]);
    notes
}

/// No soaked vehicle is hotter (common practice, no source).
const HOTTEST_BAY: Temperature = Temperature::from_celsius(60.0);

/// A pressure in the units of the table.
fn in_units(edition: &Edition, pressure: Pressure) -> String {
    let units = edition.pressures.iter().filter_map(|unit| Some((unit.count_of(pressure)?, unit.symbol())));
    units.map(|(count, symbol)| format!("{} {symbol}", trimmed(count, 1))).collect::<Vec<_>>().join(", ")
}

/// Which gauge tells what, and up to which pressure.
fn gauges(words: &Words, edition: &Edition, of: &Refrigerant) -> Vec<String> {
    let scale = |gauge: &Option<PressureGauge>, label: &'static str| {
        let full = gauge.as_ref().and_then(|gauge| gauge.gauge).map(|gauge| gauge.full_scale);
        let message = match full {
            Some(full) => Message::new("table-note-gauge-scale").with("full", in_units(edition, full)),
            None => Message::new("table-note-gauge-missing"),
        };
        words.say(&message.with_word("gauge", label))
    };
    let by = words.word("table-note-gauges-by-scale");
    vec![by, scale(&of.low_gauge, "fact-low-gauge"), scale(&of.high_gauge, "fact-high-gauge")]
}

/// The pressure of the air, to a tenth of a kilopascal or a hundredth of a psi, with its unit.
pub(super) fn air_pressure(units: Units, pressure: Pressure) -> String {
    let decimals = if units == Units::Us { 2 } else { 1 };
    let number = crate::quantity::figure(units.of_pressure(pressure), decimals, Rounding::Nearest);
    format!("{number} {}", units.pressure().symbol())
}

/// The names of a unit's columns: absolute, gauge, least and greatest at rest.
fn keys(unit: Unit) -> [&'static str; 4] {
    match unit {
        Unit::Bar => ["absolute_bar", "gauge_bar", "at_rest_min_bar", "at_rest_max_bar"],
        Unit::PoundPerSquareInch => ["absolute_psi", "gauge_psi", "at_rest_min_psi", "at_rest_max_psi"],
        _ => ["absolute_kpa", "gauge_kpa", "at_rest_min_kpa", "at_rest_max_kpa"],
    }
}

/// A pressure in a unit that gauges show.
fn shown(pressure: Pressure, unit: Unit) -> Cell {
    Cell::from(unit.count_of(pressure))
}

fn columns(words: &Words, edition: &Edition) -> Vec<Column> {
    let units = edition.units;
    let tenth = |rounding| Show::Decimals(1, rounding);
    let head = |id, unit: Unit| words.say(&Message::new(id).with("unit", unit.symbol()));
    let digits = Show::Digits(Rounding::Nearest);
    let mut columns = temperature_columns(units, "temperature", tenth(Rounding::Nearest));
    for &unit in &edition.pressures {
        let [absolute, gauge, ..] = keys(unit);
        columns.push(Column::new(absolute, head("table-absolute", unit), digits));
        columns.push(Column::new(gauge, head("table-gauge", unit), digits));
    }
    columns.push(Column::new("mark", words.word("table-mark"), digits));
    let (pressure, by) = (units.pressure(), units.difference_unit().symbol());
    columns.push(Column::new(
        format!("slope_{}_per_{}", pressure.symbol().to_lowercase(), units.difference_key()),
        format!("{}/{by}", pressure.symbol()),
        Show::Decimals(2, Rounding::Nearest),
    ));
    let line = |key: &str, id, rounding| {
        let is_difference = key.ends_with("_u");
        let (end, unit) =
            if is_difference { (units.difference_key(), by) } else { (units.key(), units.symbol()) };
        let head = words.say(&Message::new(id).with("unit", unit));
        Column::new(format!("{key}_{end}"), head, tenth(rounding))
    };
    columns.extend([
        line("suction_line_min", "table-suction-min", Rounding::Up),
        line("suction_line_max", "table-suction-max", Rounding::Down),
        line("superheat_u", "table-superheat-u", Rounding::Up),
        line("liquid_line_min", "table-liquid-min", Rounding::Up),
        line("liquid_line_max", "table-liquid-max", Rounding::Down),
        line("subcooling_u", "table-subcooling-u", Rounding::Up),
    ]);
    if let Some(&unit) = edition.pressures.first() {
        let [.., least, greatest] = keys(unit);
        columns.push(Column::new(least, head("table-at-rest-min", unit), Show::Digits(Rounding::Up)));
        columns.push(Column::new(greatest, head("table-at-rest-max", unit), Show::Digits(Rounding::Down)));
    }
    columns
}

fn row(words: &Words, edition: &Edition, of: &Refrigerant, site: Option<Site>, at: Temperature) -> Vec<Cell> {
    let units = edition.units;
    let absolute = of.fluid.saturation_pressure(at).ok();
    let gauge = absolute.zip(site).map(|(absolute, site)| site.gauge(absolute));
    let mut cells = temperature_cells(units, at);
    for &unit in &edition.pressures {
        for pressure in [absolute, gauge] {
            cells.push(pressure.map_or(Cell::Missing, |pressure| shown(pressure, unit)));
        }
    }
    let vacuum = gauge.is_some_and(|gauge| gauge.pascals() < 0.0);
    cells.push(Cell::from(if vacuum { words.word("table-vacuum") } else { String::new() }));
    let slope = of.fluid.saturation_slope(at).ok().map(Pressure::from_pascals);
    cells.push(Cell::from(slope.map(|slope| units.of_pressure(slope) / units.per_kelvin())));
    let suction =
        of.superheat.map(|window| Interval { low: at.plus(window.low), high: at.plus(window.high) });
    cells.extend(ends(suction, |at| Cell::from(units.degrees(at))));
    let superheat = limits(of, of.low_gauge.as_ref(), gauge)
        .zip(absolute)
        .and_then(|(limits, pressure)| of.fluid.superheat(pressure, at, &limits).ok());
    cells.push(Cell::from(superheat.map(|superheat| units.of_difference(superheat.expanded))));
    let liquid =
        of.subcooling.map(|window| Interval { low: at.minus(window.high), high: at.minus(window.low) });
    cells.extend(ends(liquid, |at| Cell::from(units.degrees(at))));
    let subcooling = limits(of, of.high_gauge.as_ref(), gauge)
        .zip(absolute)
        .and_then(|(limits, pressure)| of.fluid.subcooling(pressure, at, &limits).ok());
    cells.push(Cell::from(subcooling.map(|subcooling| units.of_difference(subcooling.expanded))));
    let rest = at_rest(of, site, gauge, at);
    if let Some(&unit) = edition.pressures.first() {
        cells.extend(ends(rest, |pressure| shown(pressure, unit)));
    }
    cells
}

fn ends<T>(window: Option<Interval<T>>, cell: impl Fn(T) -> Cell) -> [Cell; 2] {
    match window {
        Some(window) => [cell(window.low), cell(window.high)],
        None => [Cell::Missing, Cell::Missing],
    }
}

/// The limits of error at a gauge reading; none where it is off the gauge's scale or not all was given.
fn limits(of: &Refrigerant, gauge: Option<&PressureGauge>, reading: Option<Pressure>) -> Option<Limits> {
    let gauge = gauge?.gauge?;
    let on_scale = reading? <= gauge.full_scale;
    let thermometer = of.thermometer.as_ref()?.limit?;
    on_scale.then(|| Limits { gauge: gauge.limit(), air: WEATHER, thermometer })
}

/// Gauge readings that prove saturation in a soaked system at rest, by the suction gauge where the
/// reading is on its scale, else by the discharge gauge; none where no reading could.
fn at_rest(
    of: &Refrigerant,
    site: Option<Site>,
    reading: Option<Pressure>,
    at: Temperature,
) -> Option<Interval<Pressure>> {
    let by = |gauge| limits(of, gauge, reading);
    let limits = by(of.low_gauge.as_ref()).or_else(|| by(of.high_gauge.as_ref()))?;
    let absolute = site?.absolute(reading?).ok()?;
    let rest = of.fluid.at_rest(absolute, at, of.at_rest?, &limits).ok()?;
    // Convex saturation can leave a sliver on one side, which a system at saturation never shows.
    let window = rest.proven().filter(|window| window.contains(&rest.expected.nominal))?;
    Some(Interval { low: site?.gauge(window.low), high: site?.gauge(window.high) })
}

/// The coefficients of the saturation equation, with every digit.
fn terms(of: &Refrigerant) -> Message {
    let critical = of.fluid.critical_temperature().kelvins();
    let listed: Vec<String> = of
        .fluid
        .terms()
        .iter()
        .map(|(n, t)| format!("{} ({})", marked(&n.to_string()), marked(&t.to_string())))
        .collect();
    Message::new("table-formula-saturation-terms")
        .with("fluid", of.fluid.number())
        .with("temperature", trimmed(critical, 4))
        .with("pressure", trimmed(of.fluid.critical_pressure().kilopascals(), 3))
        .with("terms", listed.join(if decimal_mark() == ',' { "; " } else { ", " }).replace('-', "−"))
}

/// A constant with the digits that it has, up to so many decimals.
fn trimmed(value: f64, most: usize) -> String {
    let text = crate::quantity::figure(value, most, Rounding::Nearest);
    text.trim_end_matches('0').trim_end_matches(['.', ',']).to_owned()
}

/// How the figures follow, each with its source.
fn formulas(words: &Words, of: &Refrigerant) -> Vec<String> {
    use crate::physics::refrigerant::Refrigerant as Fluid;
    let source = match of.fluid {
        Fluid::R134a => "table-source-r134a",
        Fluid::R1234yf => "table-source-r1234yf",
        Fluid::R744 => "table-source-r744",
    };
    let saturation = Message::new("table-formula-saturation")
        .with("fluid", of.fluid.number())
        .with_word("source", source)
        .with("limit", of.fluid.equation_limit());
    let mut formulas = vec![words.say(&saturation), words.say(&terms(of)), words.word("table-formula-gauge")];
    let told = [
        (of.superheat.is_some(), "table-formula-suction"),
        (of.subcooling.is_some(), "table-formula-liquid"),
        (of.low_gauge.is_some() || of.high_gauge.is_some(), "table-formula-superheat-u"),
        (of.at_rest.is_some(), "table-formula-at-rest"),
    ];
    formulas.extend(told.into_iter().filter(|(given, _)| *given).map(|(_, id)| words.word(id)));
    formulas
}
