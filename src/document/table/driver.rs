//! A driver's main table: duties of a solenoid, steps of a blower, temperatures of a coil.

use super::{Ask, Table, blower, coil, solenoid};
use crate::model::{Load, Model};
use crate::words::{Message, Words};

/// The main table of a driver.
pub(super) fn of(model: &Model, words: &Words, id: &str, ask: &Ask<'_>) -> Result<Table, Message> {
    let driver = model.drivers.get(id).ok_or_else(|| Message::new("run-no-such-table").with("id", id))?;
    match &driver.load {
        Load::Coil(..) => coil::of(model, words, id, ask),
        Load::Solenoid(coil, solenoid) => solenoid::of(words, (driver, coil, solenoid), ask),
        Load::Blower(blower) => blower::of(words, (driver, blower), ask),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::diag::Findings;
    use crate::document::table::{self, Cell};
    use crate::{model, spec};

    fn demo() -> Model {
        let set = spec::Set::read(&spec::demo(), &Findings::default());
        model::build(&set).expect("the demo set is whole")
    }

    /// The number of a column, in the row whose first cell is `first`.
    fn number(id: &str, first: f64, key: &str) -> Option<f64> {
        let ask = Ask { id, ..Ask::default() };
        let table = table::of(&demo(), &Words::english(), &ask).expect("it has a table");
        let near = |row: &&Vec<Cell>| matches!(row[0], Cell::Number(cell) if (cell - first).abs() < 1e-9);
        let row = table.rows.iter().find(near).expect("the row is there");
        assert!(table.column(key).is_some(), "the column is there");
        table.number(row, key)
    }

    #[test]
    fn the_demos_loads_have_the_trades_figures() {
        // 10.5 Ω at 20 °C is 12.98 Ω at 80 °C (worked figure of the trade, common practice, no source).
        let hot = number("coil.heron-displacement", 80.0, "resistance_nom_ohm").expect("known");
        assert!((hot - 12.98).abs() < 0.005, "{hot}");
        // (0.5 × 13.6 V − 0.5 × 0.8 V)/10.5 Ω by hand.
        let mean = number("heron-displacement", 50.0, "current_nom_a").expect("known");
        assert!((mean - 6.4 / 10.5).abs() < 1e-12, "{mean}");
        // 22 A through out and return of 2 m, class 5, 4.95 Ω/km.
        let lost = number("heron-blower-feed", 20.0, "drop_max_v").expect("known");
        assert!((lost - 22.0 * 2.0 * 2.0 * 0.004_95).abs() < 1e-12, "{lost}");
    }

    /// A table of the demo with each cell as a screen shows it.
    fn shown(id: &str) -> (Table, Vec<Vec<String>>) {
        let table =
            table::of(&demo(), &Words::english(), &Ask { id, ..Ask::default() }).expect("it has a table");
        let rows = table.texts();
        (table, rows)
    }

    fn has_note(table: &Table, wanted: &str) -> bool {
        table.notes.iter().any(|note| note.contains(wanted))
    }

    #[test]
    fn a_good_pack_passes_at_every_battery() {
        // Worked elsewhere: 2.2 Ω ± 5 % and 40 mΩ before 14 A at 13.8 V, n = 1.7, give 44.8 to 46.5 % at
        // 12 V and 42.5 to 44.2 % at 14.5 V.
        let (table, rows) = shown("curlew-blower");
        assert_eq!([rows[0][1].as_str(), rows[0][3].as_str()], ["42.5", "46.5"]);
        assert!(
            has_note(&table, "With 13.8 V the resistors are hottest at step 2: 30.9 W"),
            "{:?}",
            table.notes
        );
        assert!(table.columns[4].head.ends_with("at 12 V"), "{}", table.columns[4].head);
    }

    #[test]
    fn a_transistor_is_hottest_at_the_highest_battery() {
        // By hand at 61 % of 14.5 V: Vm 8.86 V, 22 A (8.86/13.8)^1.7 = 10.35 A, (5.64 − 0.21) V × 10.35 A = 56.2 W.
        let (table, _) = shown("heron-blower");
        assert!(has_note(
            &table,
            "hottest at 61 % of the battery, 8.9 V across the motor: no more than 56.3 W"
        ));
    }

    #[test]
    fn a_hot_coil_and_a_low_battery_bound_the_current_from_above() {
        // 10.5 Ω ± 5 % at 20 °C is 13.11 to 14.49 Ω at 100 °C; 11.9 V over them 0.908 and 0.821 A.
        let (table, rows) = shown("heron-displacement");
        assert!(has_note(&table, "0.91 A with a good hot coil of 13.11 Ω, 0.83 A with one of 14.49 Ω"));
        // 0.61 A lies beyond the last point, 0.60 A and 5 %.
        assert_eq!(rows[5][8], "≤ 5.0");
    }

    #[test]
    fn who_measures_a_driver_is_warned_of_belts_and_fans() {
        for id in ["heron-blower", "heron-displacement", "coil.curlew-clutch"] {
            assert!(has_note(&shown(id).0, "belts, hot parts, and fans"), "{id}");
        }
        let coil = shown("coil.heron-displacement").0;
        assert!(coil.inputs.iter().all(|fact| !fact.key.contains("frequency")), "a coil at rest has none");
    }

    #[test]
    fn nominal_figures_lie_between_their_limits() {
        let hot = Some(crate::quantity::Temperature::from_celsius(80.0));
        for (id, from) in [
            ("heron-displacement", None),
            ("heron-displacement", hot),
            ("curlew-displacement", hot),
            ("coil.curlew-clutch", None),
        ] {
            let ask = Ask { id, from, ..Ask::default() };
            let table = table::of(&demo(), &Words::english(), &ask).expect("it has a table");
            let bands: Vec<usize> = (0..table.columns.len())
                .filter(|&index| table.columns[index].key.contains("_nom_"))
                .collect();
            assert!(!bands.is_empty(), "{id} has bands");
            for row in &table.rows {
                for &index in &bands {
                    let cells = [&row[index - 1], &row[index], &row[index + 1]];
                    let [Cell::Number(low), Cell::Number(nominal), Cell::Number(high)] = cells else {
                        continue;
                    };
                    assert!(low <= nominal && nominal <= high, "{id}: {low} {nominal} {high}");
                }
            }
        }
    }

    #[test]
    fn what_was_not_given_stays_missing() {
        assert_eq!(number("curlew-displacement", 50.0, "ripple_a"), None);
        assert_eq!(number("curlew-valve", 20.0, "resistance_max_ohm"), None);
    }

    #[test]
    fn a_table_without_temperatures_refuses_them() {
        let step = Some(crate::quantity::Step::of_kelvins(1.0));
        for id in ["heron-displacement", "heron-blower"] {
            let ask = Ask { id, step, ..Ask::default() };
            let refused = table::of(&demo(), &Words::english(), &ask).expect_err("no step of temperature");
            assert_eq!(refused.id(), "run-table-no-step");
        }
    }
}
