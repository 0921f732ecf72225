//! Panel modes: the smallest set against all sets; set-point scales against both conversions.

use bayleaf::physics::modes::{Cell, MOST_EXACT, TruthTable};
use bayleaf::physics::scale::{PrintedScales, compare};
use bayleaf::quantity::{Interval, Temperature, TemperatureDifference};
use proptest::prelude::*;

/// A table of so many modes and up to five control points of one to four values.
fn tables(modes: std::ops::RangeInclusive<usize>) -> impl Strategy<Value = TruthTable> {
    let values = prop::collection::vec(1_usize..=4, 1..=5);
    (values, modes).prop_flat_map(|(values, modes)| {
        let cell = |&count: &usize| {
            prop_oneof![
                2 => (0..count).prop_map(Cell::Forced),
                2 => Just(Cell::Free),
                1 => Just(Cell::DontCare),
            ]
        };
        let row = values.iter().map(cell).collect::<Vec<_>>();
        prop::collection::vec(row, modes)
            .prop_map(move |rows| TruthTable::new(values.clone(), rows).expect("forced values exist"))
    })
}

fn visits_all(table: &TruthTable, modes: &[usize]) -> bool {
    let met = |pair| table.visitors(pair).iter().any(|mode| modes.contains(mode));
    table.pairs().into_iter().all(met)
}

/// Every subset of `count` modes, the smaller ones and then the lexicographically first ones first.
fn subsets(count: usize) -> Vec<Vec<usize>> {
    let of = |set: u32| (0..count).filter(|mode| set >> mode & 1 == 1).collect::<Vec<_>>();
    let mut all: Vec<Vec<usize>> = (0..1_u32 << count).map(of).collect();
    all.sort_by(|a, b| a.len().cmp(&b.len()).then_with(|| a.cmp(b)));
    all
}

proptest! {
    #![proptest_config(crate::every_run())]

    /// Brute force: the first of all subsets that visits every pair.
    #[test]
    fn no_smaller_set_and_no_earlier_one_visits_every_pair(
        (table, count) in (0_usize..=8).prop_flat_map(|count| (tables(count..=count), Just(count)))
    ) {
        let found = table.smallest_cover();
        let wanted = subsets(count).into_iter().find(|set| visits_all(&table, set));
        prop_assert_eq!(Some(&found.modes), wanted.as_ref());
        prop_assert!(found.is_proven());
    }

    /// Whatever any mode exposes, a mode of the set exposes; essential modes are in it.
    #[test]
    fn the_set_exposes_whatever_can_be_exposed(table in tables(0..=40)) {
        let cover = table.smallest_cover();
        prop_assert!(visits_all(&table, &cover.modes));
        prop_assert!(cover.modes.is_sorted());
        for fault in table.faults() {
            let first = fault.first_in(&cover.modes);
            prop_assert_eq!(first.is_some(), !fault.exposed_by.is_empty());
            prop_assert!(first.is_none_or(|mode| fault.exposed_by.contains(&mode)));
        }
        for (pair, mode) in table.essential() {
            prop_assert_eq!(table.visitors(pair), vec![mode]);
            prop_assert!(cover.modes.contains(&mode));
        }
    }

    /// Beyond the exact search the bound holds, and no mode of the set can go.
    #[test]
    fn a_set_of_many_modes_is_honest(
        table in tables(MOST_EXACT + 1..=40)
    ) {
        let cover = table.smallest_cover();
        prop_assert!(cover.at_least <= cover.modes.len());
        for mode in &cover.modes {
            let without: Vec<usize> = cover.modes.iter().copied().filter(|kept| kept != mode).collect();
            prop_assert!(!visits_all(&table, &without), "mode {} is not needed", mode);
        }
    }

    /// A bound above what twenty modes need would be a false proof: the same
    /// rows with one more that forces nothing need as many.
    #[test]
    fn the_bound_of_many_modes_is_below_the_proven_size(
        (values, rows) in (prop::collection::vec(2_usize..=4, 3), Just(MOST_EXACT)).prop_flat_map(|(values, modes)| {
            let cell = |&count: &usize| prop::option::of(0..count)
                .prop_map(|value| value.map_or(Cell::Free, Cell::Forced));
            let row = values.iter().map(cell).collect::<Vec<_>>();
            (Just(values), prop::collection::vec(row, modes))
        })
    ) {
        let exact = TruthTable::new(values.clone(), rows.clone()).expect("values exist").smallest_cover();
        let mut more = rows;
        more.push(vec![Cell::Free; values.len()]);
        let many = TruthTable::new(values, more).expect("values exist").smallest_cover();
        prop_assert!(exact.is_proven());
        prop_assert!(many.at_least <= exact.modes.len());
        prop_assert!(many.modes.len() >= exact.modes.len());
    }

    /// A scale made from the other one by rounding is found to be a conversion,
    /// whichever was rounded; one degree more is not.
    #[test]
    fn a_rounded_scale_is_a_conversion(whole in -40_i32..60, width in 1_i32..40, from_celsius: bool) {
        let (low, high) = (f64::from(whole), f64::from(whole + width));
        let made = |end: f64| if from_celsius {
            (end, Temperature::from_celsius(end).fahrenheit().round())
        } else {
            (Temperature::from_fahrenheit(end).celsius().round(), end)
        };
        let ((low_c, low_f), (high_c, high_f)) = (made(low), made(high));
        let scales = |high_c: f64| PrintedScales {
            celsius: Interval { low: Temperature::from_celsius(low_c), high: Temperature::from_celsius(high_c) },
            celsius_digit: TemperatureDifference::from_kelvins(1.0),
            fahrenheit: Interval {
                low: Temperature::from_fahrenheit(low_f),
                high: Temperature::from_fahrenheit(high_f),
            },
            fahrenheit_digit: TemperatureDifference::from_kelvins(1.0 / 1.8),
        };
        prop_assert!(compare(&scales(high_c)).expect("finite").are_conversions());
        let found = compare(&scales(high_c + 2.0)).expect("finite");
        prop_assert!(found.low.agrees && !found.high.agrees);
    }

    /// Any number: a finite comparison or a refusal.
    #[test]
    fn scales_of_any_number_are_compared_or_refused(
        ends in prop::array::uniform4(any::<f64>()), digits in prop::array::uniform2(any::<f64>())
    ) {
        let [a, b, c, d] = ends.map(Temperature::from_celsius);
        let [e, f] = digits.map(TemperatureDifference::from_kelvins);
        let scales = PrintedScales {
            celsius: Interval { low: a, high: b },
            celsius_digit: e,
            fahrenheit: Interval { low: c, high: d },
            fahrenheit_digit: f,
        };
        if let Ok(found) = compare(&scales) {
            let all = [found.low.difference, found.high.difference, found.celsius_span, found.fahrenheit_span];
            prop_assert!(all.iter().all(|difference| difference.kelvins().is_finite()));
        }
    }
}
