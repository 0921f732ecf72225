//! The front of a driver card: figures to be read from a distance, and the table of the load.

use crate::document::Context;
use crate::document::card::{self, KeyFigure};
use crate::document::figures;
use crate::document::grid::{Column, Grid};
use crate::document::table::{self, Ask, Cell, Table};
use crate::model::{Blower, Coil, Driver, Load};
use crate::physics::Band;
use crate::physics::blower::Side;
use crate::physics::solenoid::ceiling;
use crate::quantity::{Resistance, Rounding, Temperature, Units, Voltage, figure};
use crate::words::{Message, Words};

/// More duties than this are shown by every second one.
const MOST_DUTIES: usize = 10;

/// At most so many rows of a coil's temperatures, where they are the card's main table.
const MAIN_ROWS: f64 = 11.0;

/// The same where they are beside others.
const OTHER_ROWS: f64 = 5.0;

/// Up to three figures.
pub(super) fn key_figures(Context { words, units, .. }: Context<'_>, driver: &Driver) -> Vec<KeyFigure> {
    let known = match &driver.load {
        Load::Blower(blower) => of_blower(words, driver, blower),
        Load::Coil(coil, _) | Load::Solenoid(coil, _) => of_coil((words, units), driver, coil),
    };
    card::figures(words, "card-drv-load", known)
}

/// A coil cold, as rated, and hot; without its temperatures as rated alone.
fn of_coil((words, units): (&Words, Units), driver: &Driver, coil: &Coil) -> Vec<KeyFigure> {
    let rated = coil.rated.at;
    let ends = coil.temperature.map_or_else(Vec::new, |range| vec![range.low, range.high]);
    let mut at: Vec<Temperature> = ends.into_iter().chain([rated]).collect();
    at.sort_by(|one, other| one.celsius().total_cmp(&other.celsius()));
    at.dedup();
    let figure = |at: Temperature| {
        let shown_at = figures::temperature(units, at);
        let Some(band) = coil.rated.band(at).ok().flatten() else {
            let nominal = coil.rated.nominal(at).ok()?;
            let nominal = format!("{} Ω", figures::nominal_ohms(nominal.ohms()));
            let also = words.say(&Message::new("card-nominal-value").with("value", nominal));
            return Some(KeyFigure {
                at: shown_at,
                value: words.word("doc-not-given"),
                unit: String::new(),
                also,
            });
        };
        let nominal = coil.rated.nominal(at).ok()?;
        let band = Band { low: band.low.ohms(), nominal: nominal.ohms(), high: band.high.ohms() };
        let shown = figures::band(band, figures::column_decimals(band.low));
        let current = driver.battery.and_then(|battery| {
            let amperes = |volts: Voltage, ohms: f64| ceiling(volts, Resistance::from_ohms(ohms)).ok();
            let (least, most) = (amperes(battery.low, band.high)?, amperes(battery.high, band.low)?);
            let (low, high) = (least.amperes(), most.amperes());
            let middle = 0.5 * (low + high);
            Some(format!("{} A", figures::range(&figures::band(Band { low, nominal: middle, high }, 2))))
        });
        Some(KeyFigure {
            at: shown_at,
            value: figures::range(&shown),
            unit: "Ω".to_owned(),
            also: current
                .map(|current| words.say(&Message::new("card-drv-always-on").with("current", current)))
                .unwrap_or_default(),
        })
    };
    at.into_iter().filter_map(figure).collect()
}

/// The slowest step, the fastest, and the relay; in parts of the battery.
fn of_blower(words: &Words, driver: &Driver, blower: &Blower) -> Vec<KeyFigure> {
    let rows = table::blower::parts(driver, blower);
    let first = rows.first();
    let last = rows.iter().rev().find(|row| row.step.is_some());
    let relay = rows.iter().find(|row| row.step.is_none());
    let figure = |row: &table::blower::Part| {
        let at = match row.step {
            Some(step) => words.say(&Message::new("card-drv-step").with("step", step)),
            None => words.word("card-drv-relay"),
        };
        let percent = |part: f64, rounding| figure(part, 1, rounding);
        let value = match (row.least, row.most, row.nominal) {
            (Some(low), Some(high), _) => {
                format!("{}–{}", percent(low, Rounding::Up), percent(high, Rounding::Down))
            }
            (_, _, Some(nominal)) => percent(nominal, Rounding::Nearest),
            _ => words.word("doc-not-given"),
        };
        let volts = row.volts.zip(driver.nominal).map(|(volts, battery)| {
            let volts = format!("{} V", self::figure(volts, 2, Rounding::Nearest));
            words.say(&Message::new("card-drv-of-battery").with("volts", volts).with("battery", battery))
        });
        KeyFigure { at, value, unit: "%".to_owned(), also: volts.unwrap_or_default() }
    };
    let different = last.filter(|last| first.is_some_and(|first| first.step != last.step));
    first.into_iter().chain(different).chain(relay).map(figure).collect()
}

/// The load's own table.
pub(super) fn figures(context: Context<'_>, driver: &Driver) -> Option<Grid> {
    let words = context.words;
    let id = format!("driver.{}", driver.id);
    match &driver.load {
        Load::Blower(blower) => blower_steps(context, driver, blower, &id),
        Load::Solenoid(..) => {
            let table =
                table::of(context.model, words, &Ask { id: &id, units: context.units, ..Ask::default() })
                    .ok()?;
            Some(duties(words, table))
        }
        Load::Coil(coil, _) => coil_rows(context, driver, coil, "card-drv-coil", MAIN_ROWS),
    }
}

/// A solenoid's duties; where its current stops between pulses stands below the head.
fn duties(words: &Words, mut table: Table) -> Grid {
    let stops = words.word("table-discontinuous");
    let mut paused = Vec::new();
    if let Some(conduction) = table.column("conduction") {
        let is_paused = |row: &&Vec<Cell>| matches!(&row[conduction], Cell::Text(text) if *text == stops);
        paused = table.rows.iter().filter(is_paused).map(|row| table.columns[0].text(&row[0])).collect();
        table.columns.remove(conduction);
        table.rows.iter_mut().for_each(|row| drop(row.remove(conduction)));
    }
    if let Some(meter) = table.column("meter_v") {
        table.columns[meter].head = words.word("card-drv-meter");
    }
    let mut grid = Grid::of_table(words, "card-drv-duties", &table).without_blanks();
    // Each tenth, where nobody chose, is more than a hand needs.
    if grid.rows.len() > MOST_DUTIES {
        let rows = std::mem::take(&mut grid.rows).into_iter().step_by(2);
        grid.rows = rows.collect();
    }
    // The column has a shorter name here.
    for note in &mut grid.notes {
        if *note == words.word("table-note-averaging") {
            *note = words.word("card-drv-meter-note");
        }
    }
    // The caution stands in its own box.
    grid.notes.retain(|note| *note != words.word("caution-around"));
    if !paused.is_empty() {
        let duties = paused.join(" %, ");
        grid.notes.push(words.say(&Message::new("card-drv-paused").with("duties", format!("{duties} %"))));
    }
    grid
}

/// A solenoid's coil over its temperature, a column for each.
pub(super) fn coil(context: Context<'_>, driver: &Driver) -> Option<Grid> {
    let Load::Solenoid(coil, _) = &driver.load else { return None };
    let by_row = coil_rows(context, driver, coil, "card-drv-coil", OTHER_ROWS)?;
    let words = context.words;
    // °C, °F and three of ohms, whichever of them are known.
    let ohms: Vec<usize> = (0..by_row.columns.len()).filter(|at| by_row.columns[*at].head == "Ω").collect();
    let scale = context.units.symbol();
    let at = |row: &Vec<String>| Column::figures(format!("{} {scale}", row[0].trim_end_matches(".0")), "");
    let first = std::iter::once(Column::words(words.word("card-drv-coil-at")));
    let row = |column: &usize| {
        let head = &by_row.columns[*column];
        let name = format!("{} {}", head.head, head.sub);
        std::iter::once(name.trim().to_owned())
            .chain(by_row.rows.iter().map(|row| row[*column].clone()))
            .collect()
    };
    Some(Grid {
        title: by_row.title.clone(),
        notes: Vec::new(),
        columns: first.chain(by_row.rows.iter().map(at)).collect(),
        rows: ohms.iter().map(row).collect(),
    })
}

fn coil_rows(context: Context<'_>, driver: &Driver, coil: &Coil, title: &str, most: f64) -> Option<Grid> {
    let words = context.words;
    let id = format!("coil.{}", driver.id);
    let units = context.units;
    let span = coil.temperature.map_or(0.0, |range| units.degrees(range.high) - units.degrees(range.low));
    // A step in tens, so that the rows are round where the range is.
    let step = (span / most / 10.0).ceil().max(1.0) * 10.0;
    let step = Some(units.step_of(step));
    let table = table::of(context.model, words, &Ask { id: &id, step, units, ..Ask::default() }).ok()?;
    let mut grid = Grid::of_table(words, title, &table).without_blanks();
    grid.notes.retain(|note| *note != words.word("caution-around"));
    Some(grid)
}

/// A blower's steps, with heads that say at which battery.
fn blower_steps(context: Context<'_>, driver: &Driver, blower: &Blower, id: &str) -> Option<Grid> {
    let words = context.words;
    let table = table::of(context.model, words, &Ask { id, units: context.units, ..Ask::default() }).ok()?;
    let mut grid = Grid::of_table(words, "card-drv-steps", &table);
    let battery = |volts: Option<Voltage>| volts.map(|volts| volts.to_string()).unwrap_or_default();
    let (low, high) = driver.battery.map_or((None, None), |range| (Some(range.low), Some(range.high)));
    let parts = words.word("card-drv-parts");
    let motor = words.word("card-drv-motor");
    let heads = [
        (words.word("table-step"), String::new()),
        (parts.clone(), words.word("card-min")),
        (parts.clone(), words.word("card-nominal")),
        (parts, words.word("card-max")),
        (motor.clone(), battery(low)),
        (motor.clone(), battery(driver.nominal)),
        (motor, battery(high)),
        ("A".to_owned(), String::new()),
        ("W".to_owned(), String::new()),
        (words.word("card-drv-ground"), String::new()),
    ];
    for (column, (head, sub)) in grid.columns.iter_mut().zip(heads) {
        *column = Column { head, sub, figures: column.figures };
    }
    let nominal = driver.nominal.map(|battery| {
        let switched = match driver.polarity {
            Some(Side::Low) => "card-drv-at-nominal-low",
            Some(Side::High) => "card-drv-at-nominal-high",
            None => "card-drv-at-nominal",
        };
        words.say(&Message::new(switched).with("battery", battery))
    });
    grid.notes = nominal.into_iter().chain(table::blower::hottest(words, driver, blower)).collect();
    Some(grid.without_blanks())
}
