//! What each fault of a coil reads.

use crate::document::Context;
use crate::document::fault_rows::{self, FaultRow};
use crate::document::faults;
use crate::document::figures;
use crate::document::grid::{Column, Grid};
use crate::document::marks::Marks;
use crate::document::table::{BLANK, Cell};
use crate::model::{Coil, Driver, Load, Model};
use crate::quantity::{Rounding, decimals_for, figure};
use crate::words::Message;

/// The faults of a coil that is on or off, at its rated temperature; a solenoid's readings say as much.
pub(super) fn compose(context: Context<'_>, driver: &Driver, marks: &mut Marks) -> Option<Grid> {
    let Context { model, words, .. } = context;
    let Load::Coil(coil, _) = &driver.load else { return None };
    let id = format!("driver.{}", driver.id);
    let ask =
        faults::Ask { id: &id, at: Some(coil.rated.at), units: context.units, ..faults::Ask::default() };
    let table = faults::of(model, words, &ask).ok()?;
    let rows = fault_rows::rows(&table, 1, |cell| {
        let shown = |key, of: fn(f64) -> String| match cell(key) {
            Cell::Number(number) => of(number),
            Cell::Text(text) | Cell::Named(_, text) => text,
            _ => BLANK.to_owned(),
        };
        vec![
            shown("resistance_ohm", |ohms| figure(ohms, decimals_for(ohms), Rounding::Nearest)),
            shown("voltage_v", |volts| figure(volts, 1, Rounding::Nearest)),
            shown("current_a", |amperes| figure(amperes, 2, Rounding::Nearest)),
        ]
    });
    // A coil at another temperature stands in its own table; those of other systems are not at hand.
    let fits = |row: &FaultRow| {
        row.key != "other temperature" && (row.key != "other part" || is_of(model, driver, &row.names))
    };
    let rows: Vec<FaultRow> = rows.into_iter().filter(fits).collect();
    let is_seen = |row: &FaultRow| !row.by.is_empty();
    let (seen, unseen) = fault_rows::parted(words, rows, is_seen, "card-act-unseen-faults");
    if seen.is_empty() {
        return None;
    }
    let cells = |row: FaultRow| {
        let by = row.by.join(", ");
        std::iter::once(fault_rows::listed(&row.names)).chain(row.reads).chain([by]).collect()
    };
    let grid = Grid {
        title: words.word("card-act-wrong"),
        notes: [note(context, coil), fault_rows::instruments(context, &driver.system, true, marks)]
            .into_iter()
            .chain(unseen)
            .collect(),
        columns: vec![
            Column::words(words.word("card-act-fault")),
            Column::figures("Ω", ""),
            Column::figures(words.word("card-drv-across"), ""),
            Column::figures("A", ""),
            Column::words(words.word("card-act-by")),
        ],
        rows: seen.into_iter().map(cells).collect(),
    };
    Some(grid.without_blanks())
}

/// Whether another coil that is named belongs to the same system.
fn is_of(model: &Model, driver: &Driver, names: &[String]) -> bool {
    let named = |other: &&Driver| names.iter().any(|name| name.contains(&other.id));
    model.drivers.values().filter(named).any(|other| other.system == driver.system)
}

fn note(Context { words, units, .. }: Context<'_>, coil: &Coil) -> String {
    let at = figures::temperature(units, coil.rated.at);
    words.say(&Message::new("card-drv-wrong-note").with("at", at))
}
