//! What the truth tables of the demo say, worked out again from their printed cells.

use std::collections::BTreeSet;

use bayleaf::document::table::{Ask, Cell, Table, of};
use bayleaf::words::Words;

fn table(id: &str) -> Table {
    let ask = Ask { id, ..Ask::default() };
    of(&crate::demo(), &Words::english(), &ask).unwrap_or_else(|message| panic!("{id}: {message:?}"))
}

fn text(cell: &Cell) -> String {
    match cell {
        Cell::Text(text) | Cell::Named(_, text) | Cell::Flag(_, text) => text.clone(),
        Cell::Missing => String::new(),
        Cell::Number(number) => number.to_string(),
    }
}

fn column(table: &Table, key: &str) -> Vec<String> {
    let at = table.columns.iter().position(|column| column.key == key);
    let at = at.unwrap_or_else(|| panic!("no column {key}"));
    table.rows.iter().map(|row| text(&row[at])).collect()
}

/// A printed truth table: modes, and for each control point the cells of all modes.
struct Printed {
    modes: Vec<String>,
    controls: Vec<(String, Vec<String>)>,
}

impl Printed {
    fn of(table: &Table) -> Self {
        let points = table.columns.iter().filter(|column| column.key.starts_with("control."));
        let controls = points.map(|point| (point.head.clone(), column(table, &point.key))).collect();
        Self { modes: column(table, "mode"), controls }
    }

    /// Every value that these modes force, with its control point.
    fn visited(&self, modes: &[usize]) -> BTreeSet<(&str, &str)> {
        let all = self
            .controls
            .iter()
            .flat_map(|(title, cells)| modes.iter().map(move |mode| (title.as_str(), cells[*mode].as_str())));
        all.filter(|(_, cell)| !["free", "don’t care"].contains(cell)).collect()
    }

    /// The modes whose cell of this control point shows another value.
    fn exposing(&self, control: &str, stuck_at: &str) -> Vec<&str> {
        let (_, cells) = self.controls.iter().find(|(title, _)| title == control).expect("it has a column");
        let others = cells
            .iter()
            .zip(&self.modes)
            .filter(|(cell, _)| ![stuck_at, "free", "don’t care"].contains(&cell.as_str()));
        others.map(|(_, mode)| mode.as_str()).collect()
    }
}

#[test]
fn the_marked_set_is_the_smallest_of_all_sets() {
    for system in ["heron", "curlew"] {
        let table = table(system);
        let printed = Printed::of(&table);
        let count = printed.modes.len();
        assert!((8..=10).contains(&count) && printed.controls.len() == 7, "{system}");
        let whole = printed.visited(&(0..count).collect::<Vec<_>>());
        let sets = (0..1_u32 << count).map(|set| (0..count).filter(|mode| set >> mode & 1 == 1).collect());
        let enough: Vec<Vec<usize>> =
            sets.filter(|modes: &Vec<usize>| printed.visited(modes) == whole).collect();
        let least = enough.iter().map(Vec::len).min().expect("all modes visit everything");
        let first = enough.into_iter().filter(|modes| modes.len() == least).min().expect("there is one");
        let marked = column(&table, "in_smallest_set");
        let marked: Vec<usize> = (0..count).filter(|mode| marked[*mode] == "yes").collect();
        assert_eq!(marked, first, "{system}");
    }
}

#[test]
fn each_stuck_control_point_has_the_modes_that_show_another_value() {
    for system in ["heron", "curlew"] {
        let matrix = table(&format!("modes.{system}"));
        let printed = Printed::of(&matrix);
        let stuck = table(&format!("stuck.{system}"));
        let faults = column(&stuck, "control").into_iter().zip(column(&stuck, "stuck_at"));
        let exposed = column(&stuck, "exposed_by");
        for ((control, value), exposed_by) in faults.zip(exposed) {
            assert_eq!(exposed_by, printed.exposing(&control, &value).join(", "), "{control} {value}");
        }
    }
    // The guide of the Heron has no mode that forces the rear heater on.
    let hidden = table("stuck.heron").notes.into_iter().filter(|note| note.contains("stuck at"));
    let hidden: Vec<String> = hidden.collect();
    assert_eq!(hidden, ["No mode exposes a control point stuck at: Rear heater off."]);
}

#[test]
fn a_panels_scales_stay_as_given() {
    let panel = table("heron-front");
    assert_eq!(column(&panel, "mark"), ["coldest", "hottest"]);
    assert_eq!(column(&panel, "celsius_c"), ["18", "32"]);
    assert_eq!(column(&panel, "agrees"), ["yes", "no"]);
    // 65 °F through °C and back.
    let fahrenheit = column(&panel, "fahrenheit_f");
    let degrees: Vec<f64> = fahrenheit.iter().map(|text| text.parse().expect("a number")).collect();
    assert!(degrees.iter().zip([65.0, 85.0]).all(|(found, given)| (found - given).abs() < 1e-12));
}
