//! The refrigerant and air card: what gauges show at saturation, and what leaves the outlets.

use schemars::JsonSchema;
use serde::Serialize;

use super::caution::{self, Cautions, Room, Touch};
use super::furniture::{Furniture, Kind};
use super::given::{Given, given};
use super::grid::{Column, Grid};
use super::marks::Marks;
use super::table::{self, Ask, BLANK, Table};
use super::write_on::{self, WriteOn};
use super::{Context, Data, Document, Listed, finish};
use crate::model::{Refrigerant, Vent};
use crate::quantity::{Rounding, Unit, Units, figure, key_of};
use crate::spec::About;
use crate::words::{Message, Words};

const TEMPLATE: &str = "air-card.typ";

/// Everything a refrigerant and air card's template gets.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct AirCard {
    /// What every page carries: title band, foot, sources.
    furniture: Furniture,
    /// Each refrigerant of the system.
    fluids: Vec<Fluid>,
    /// What leaves the outlets.
    vents: Vec<Air>,
    /// The values that it rests on, a line each.
    given: Vec<Given>,
    /// The caution box.
    cautions: Cautions,
}

impl Data for AirCard {
    fn furniture(&mut self) -> &mut Furniture {
        &mut self.furniture
    }
}

/// One refrigerant of the system.
#[derive(Debug, Serialize, JsonSchema)]
struct Fluid {
    /// Of which system.
    title: String,
    /// The refrigerant's number: `R-1234yf` (ISO 817).
    number: String,
    /// Boxes to write charge and oil in.
    boxes: Vec<WriteOn>,
    /// Gauge pressures over the temperature of saturation.
    strip: Grid,
    /// What is said with it, a text each.
    notes: Vec<String>,
}

/// What leaves the outlets: a matrix for each position of the intake door.
#[derive(Debug, Serialize, JsonSchema)]
struct Air {
    /// Of which system.
    title: String,
    /// What is said with it, a text each.
    notes: Vec<String>,
    /// A matrix for each position of the intake door.
    positions: Vec<Grid>,
    /// Boxes to write what was measured in.
    boxes: Vec<WriteOn>,
}

/// Composes one refrigerant and air card.
pub(super) fn compose(context: Context<'_>, listed: &Listed) -> Option<Document> {
    let Context { model, words, .. } = context;
    let system_id = model.cards.get(&listed.spec)?.of(About::Air)?;
    let system = model.systems.get(system_id)?;
    let mut marks = Marks::of(context.units);
    let title = Message::new("card-air-title").with("system", &system.title);
    let kind = Kind {
        word: "doc-air-card",
        size: context.size_of(listed),
        title: words.say(&title),
        id: listed.id.clone(),
    };
    let furniture = Furniture::new(context, kind, system_id, system, &mut marks);
    let mut fluids: Vec<&Refrigerant> =
        model.refrigerants.values().filter(|of| of.system == system_id).collect();
    // The largest first: what is left of its page goes to the outlets.
    fluids.sort_by(|a, b| b.range.high.celsius().total_cmp(&a.range.high.celsius()));
    let vents: Vec<&Vent> = model.vents.values().filter(|of| of.system == system_id).collect();
    let mut facts = vec![&model.shop.elevation];
    let behind = fluids.iter().flat_map(|of| &of.facts).chain(vents.iter().flat_map(|of| &of.facts));
    for fact in behind {
        if !facts.contains(&fact) {
            facts.push(fact);
        }
    }
    let data = AirCard {
        furniture,
        fluids: fluids.iter().filter_map(|of| fluid(context, of)).collect(),
        vents: vents.iter().filter_map(|of| air(context, of)).collect(),
        given: given(words, facts, &mut marks),
        cautions: caution::of(
            words,
            &[Touch::Refrigerant, Touch::MovingParts, Touch::Running, Touch::HotParts],
            Room::Sheet,
        ),
    };
    Some(finish(context, listed, (TEMPLATE, 0), data, marks))
}

fn fluid(context: Context<'_>, of: &Refrigerant) -> Option<Fluid> {
    let Context { model, words, units, .. } = context;
    let id = format!("refrigerant.{}", of.id);
    let table = table::of(model, words, &Ask { id: &id, units, ..Ask::default() }).ok()?;
    let wanted = |key: &str| {
        let pressure = key.starts_with("absolute_") || key.starts_with("gauge_");
        let line = key.starts_with("suction_line_") || key.starts_with("liquid_line_");
        key.starts_with("temperature_") || pressure || line
    };
    let table = only(&table, wanted);
    let mut strip = Grid::of_table(words, "card-saturation", &table);
    strip.title = String::new();
    strip.notes = Vec::new();
    for (shown, column) in strip.columns.iter_mut().zip(&table.columns) {
        *shown = head(words, units, &column.key);
    }
    let strip = strip.without_blanks();
    let has_lines = of.superheat.is_some() || of.subcooling.is_some();
    let critical = figure(units.degrees(of.fluid.critical_temperature()), 1, Rounding::Down);
    let critical = format!("{critical} {}", units.symbol());
    let critical = Message::new("card-critical").with("fluid", of.fluid.number()).with("critical", critical);
    // The first note says where the gauges hang; of the others their columns are not here.
    let mut notes: Vec<String> = table.notes.into_iter().take(1).collect();
    notes.push(words.say(&critical));
    notes.extend(has_lines.then(|| words.word("card-saturation-how")));
    Some(Fluid {
        title: of.title.clone(),
        number: of.fluid.number().to_owned(),
        boxes: write_on::boxes(
            context,
            &[("card-box-charge", "g"), ("card-box-oil", ""), ("card-box-oil-charge", "ml")],
        ),
        strip,
        notes,
    })
}

/// The head of a column of the strip: what it is of, and below it its unit or its end.
fn head(words: &Words, units: Units, key: &str) -> Column {
    let word = |id: &str| words.word(id);
    let degrees = |id| words.say(&Message::new(id).with("unit", units.symbol()));
    if let Some(scale) = key.strip_prefix("temperature_") {
        return Column::figures(word("card-saturation"), if scale == "c" { "°C" } else { "°F" });
    }
    let end = if key.contains("_min_") { word("card-from") } else { word("card-to") };
    if key.starts_with("suction") {
        return Column::figures(degrees("card-suction-line"), end);
    }
    if key.starts_with("liquid") {
        return Column::figures(degrees("card-liquid-line"), end);
    }
    let (which, unit) = key.split_once('_').unwrap_or((key, ""));
    let unit = if unit == "kpa" { "kPa" } else { unit };
    let which = if which == "absolute" { "card-absolute" } else { "card-gauge" };
    Column::figures(unit, word(which))
}

/// The columns of a table whose keys are wanted.
fn only(table: &Table, wanted: impl Fn(&str) -> bool) -> Table {
    let kept: Vec<bool> = table.columns.iter().map(|column| wanted(&column.key)).collect();
    let keep = |index: &usize| kept[*index];
    let row = |row: &Vec<table::Cell>| {
        (0..row.len()).filter(keep).map(|index| row[index].clone()).collect::<Vec<_>>()
    };
    Table {
        columns: (0..kept.len()).filter(keep).map(|index| table.columns[index].clone()).collect(),
        rows: table.rows.iter().map(row).collect(),
        ..table.clone()
    }
}

fn air(context: Context<'_>, of: &Vent) -> Option<Air> {
    let Context { model, words, units, .. } = context;
    let id = format!("vent.{}", of.id);
    let table = table::of(model, words, &Ask { id: &id, units, ..Ask::default() }).ok()?;
    let texts = table.texts();
    let at = |key: &str| table.column(key);
    let end = units.key();
    let outlet = |which| at(&format!("outlet_{which}_{end}"));
    let outside = units.scales().iter().map(|scale| at(&format!("outside_{}", key_of(*scale))));
    let column = Columns {
        intake: at("intake")?,
        outside: outside.collect::<Option<_>>()?,
        humidity: at("humidity_percent")?,
        window: [outlet("min")?, outlet("nom")?, outlet("max")?],
        mark: at("mark")?,
    };
    let positions = of.positions.iter().map(|position| {
        let mine: Vec<&Vec<String>> =
            texts.iter().filter(|row| row[column.intake] == position.name).collect();
        matrix((words, units), &position.name, &mine, &column)
    });
    let said = words.word("caution-law");
    let mut notes: Vec<String> = table.notes.iter().filter(|note| **note != said).cloned().collect();
    notes.push(words.say(&Message::new("card-vent-how").with("unit", units.symbol())));
    Some(Air {
        title: of.title.clone(),
        notes,
        positions: positions.collect(),
        boxes: write_on::boxes(
            context,
            &[
                ("card-box-ambient", "°C"),
                ("card-box-humidity", "%"),
                ("card-box-outlet", "°C"),
                ("card-box-suction", ""),
                ("card-box-discharge", ""),
            ],
        ),
    })
}

/// Where the columns of the vent's table are.
struct Columns {
    intake: usize,
    /// The outside air on each scale of the edition.
    outside: Vec<usize>,
    humidity: usize,
    window: [usize; 3],
    mark: usize,
}

/// Ambient temperatures against humidities: the window in which the outlet air is good.
fn matrix((words, units): (&Words, Units), position: &str, rows: &[&Vec<String>], column: &Columns) -> Grid {
    let first = column.outside[0];
    let mut humidities: Vec<&str> = Vec::new();
    let mut ambient: Vec<&str> = Vec::new();
    for row in rows {
        if !humidities.contains(&row[column.humidity].as_str()) {
            humidities.push(&row[column.humidity]);
        }
        if !ambient.contains(&row[first].as_str()) {
            ambient.push(&row[first]);
        }
    }
    let cell = |at: &str, humidity: &str| {
        let found = rows.iter().find(|row| row[first] == at && row[column.humidity] == humidity);
        found.map_or_else(|| BLANK.to_owned(), |row| shown(words, row, column))
    };
    let line = |at: &&str| {
        let found = rows.iter().find(|row| row[first] == **at);
        let text = |index: &usize| found.map(|row| row[*index].clone()).unwrap_or_default();
        let cells = humidities.iter().map(|humidity| cell(at, humidity));
        column.outside.iter().map(text).chain(cells).collect()
    };
    let head = |humidity: &&str| match *humidity {
        BLANK => Column::figures(words.word("card-any-weather"), ""),
        humidity => Column::figures(words.word("card-outside-humidity"), format!("{humidity} %")),
    };
    let title = Message::new("card-vent-position").with("position", position);
    let outside = |scale: &Unit| Column::figures(words.word("card-outside-air"), scale.symbol());
    let mut columns: Vec<Column> = units.scales().iter().map(outside).collect();
    columns.extend(humidities.iter().map(head));
    let rows = ambient.iter().map(line).collect();
    Grid { title: words.say(&title), notes: Vec::new(), columns, rows }.without_blanks()
}

/// The window of one cell, or why there is none.
fn shown(words: &Words, row: &[String], column: &Columns) -> String {
    let [low, nominal, high] = column.window.map(|index| row[index].as_str());
    if low != BLANK && high != BLANK {
        let cut = row[column.mark] == words.word("table-held-least");
        return format!("{low}–{high}{}", if cut { " *" } else { "" });
    }
    if nominal != BLANK {
        let message = Message::new("card-nominal-value").with("value", nominal);
        return words.say(&message);
    }
    match row[column.mark].as_str() {
        mark if mark == words.word("table-held") => words.word("card-vent-held"),
        "" => BLANK.to_owned(),
        mark => mark.to_owned(),
    }
}
