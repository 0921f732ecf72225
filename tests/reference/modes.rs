//! Panel modes and set-point scales.
//!
//! No published source gives a truth table of panel modes with its smallest
//! set, so the two examples here are worked by hand and the working stands
//! beside them. The conversions of 10c are the definitions of the scales.

use bayleaf::physics::modes::Cell::{DontCare, Forced, Free};
use bayleaf::physics::modes::{Cell, Error, Pair, TruthTable};
use bayleaf::physics::scale::{PrintedScales, compare};
use bayleaf::quantity::{Interval, Temperature, TemperatureDifference};

use crate::sheet::Within::Absolute;
use crate::sheet::{meets, rows_of};

fn pair(control: usize, value: usize) -> Pair {
    Pair { control, value }
}

/// A point of two values has the values 0 and 1; a row has a cell for each point.
#[test]
fn a_table_of_other_values_or_cells_is_refused() {
    let table = |row: Vec<Cell>| TruthTable::new(vec![2, 3], vec![vec![Free, Free], row]).map(|_| ());
    assert_eq!(table(vec![Forced(1), Forced(2)]), Ok(()));
    assert_eq!(table(vec![Forced(2), Free]), Err(Error::NoSuchValue { mode: 1, control: 0 }));
    assert_eq!(table(vec![Free, Forced(3)]), Err(Error::NoSuchValue { mode: 1, control: 1 }));
    assert_eq!(table(vec![Free]), Err(Error::RowLength { mode: 1 }));
}

/// Beyond twenty modes one at a time is taken, of equal ones the first: of 22 modes that
/// all force the one value, mode 0.
#[test]
fn of_equal_modes_the_first_is_taken() {
    let table = TruthTable::new(vec![1], vec![vec![Forced(0)]; 22]).expect("a table of 22 modes");
    assert_eq!(table.smallest_cover().modes, [0]);
}

/// Worked by hand. Control points: intake (0 fresh, 1 recirculation), mix door
/// (0 cold, 1 hot), mode door (0 face, 1 foot, 2 windscreen). Modes:
///
/// | mode           | intake        | mix  | mode door  |
/// |----------------|---------------|------|------------|
/// | 0 coldest      | recirculation | cold | face       |
/// | 1 hottest      | fresh         | hot  | foot       |
/// | 2 windscreen   | fresh         | free | windscreen |
/// | 3 recirculate  | recirculation | free | don't care |
/// | 4 ventilate    | fresh         | cold | face       |
///
/// Only mode 1 visits hot and foot, only mode 2 visits windscreen, so both are
/// in every set. They visit fresh as well. Left are recirculation (modes 0, 3),
/// cold (0, 4) and face (0, 4): mode 0 visits all three, no other one does. The
/// smallest set is 0, 1, 2.
#[test]
fn five_modes_worked_by_hand() {
    let table = TruthTable::new(
        vec![2, 2, 3],
        vec![
            vec![Forced(1), Forced(0), Forced(0)],
            vec![Forced(0), Forced(1), Forced(1)],
            vec![Forced(0), Free, Forced(2)],
            vec![Forced(1), Free, DontCare],
            vec![Forced(0), Forced(0), Forced(0)],
        ],
    )
    .expect("a table of five modes");
    let forced: Vec<usize> = (0..5).map(|mode| table.forced(mode)).collect();
    assert_eq!(forced, [3, 3, 2, 1, 3]);
    let all = [pair(0, 0), pair(0, 1), pair(1, 0), pair(1, 1), pair(2, 0), pair(2, 1), pair(2, 2)];
    assert_eq!(table.pairs(), all);
    assert_eq!(table.visitors(pair(0, 0)), [1, 2, 4]);
    assert_eq!(table.essential(), [(pair(1, 1), 1), (pair(2, 1), 1), (pair(2, 2), 2)]);

    let cover = table.smallest_cover();
    assert_eq!(cover.modes, [0, 1, 2]);
    assert!(cover.is_proven());

    // Stuck at v is exposed by every mode that forces another value there:
    // by hand from the columns above.
    let by_hand: [(Pair, &[usize]); 7] = [
        (pair(0, 0), &[0, 3]),
        (pair(0, 1), &[1, 2, 4]),
        (pair(1, 0), &[1]),
        (pair(1, 1), &[0, 4]),
        (pair(2, 0), &[1, 2]),
        (pair(2, 1), &[0, 2, 4]),
        (pair(2, 2), &[0, 1, 4]),
    ];
    for (fault, (stuck_at, exposed_by)) in table.faults().into_iter().zip(by_hand) {
        assert_eq!((fault.stuck_at, fault.exposed_by.as_slice()), (stuck_at, exposed_by));
        let first = exposed_by.iter().copied().find(|mode| [0, 1, 2].contains(mode));
        assert_eq!(fault.first_in(&cover.modes), first);
    }
}

/// Worked by hand: six control points of which mode 0 forces the first four,
/// mode 1 the first, second and fifth, mode 2 the third, fourth and sixth.
/// Taking the mode with the most to show first needs three modes (0, then 1 and
/// 2 for the last two points); modes 1 and 2 alone visit all six.
#[test]
fn the_largest_mode_first_is_not_always_the_fewest() {
    let row = |points: &[usize]| -> Vec<Cell> {
        (0..6).map(|point| if points.contains(&point) { Forced(0) } else { Free }).collect()
    };
    let rows = vec![row(&[0, 1, 2, 3]), row(&[0, 1, 4]), row(&[2, 3, 5])];
    let table = TruthTable::new(vec![2; 6], rows).expect("a table of three modes");
    assert_eq!(table.smallest_cover().modes, [1, 2]);
    // Each point is forced to its first value only: stuck there is seen by no mode.
    let hidden = table.faults().into_iter().filter(|fault| fault.exposed_by.is_empty());
    let hidden: Vec<Pair> = hidden.map(|fault| fault.stuck_at).collect();
    assert_eq!(hidden, (0..6).map(|point| pair(point, 0)).collect::<Vec<_>>());
}

/// Worked by hand: two pairs of equal modes; the first by the given order is taken.
#[test]
fn of_equal_sets_the_first_by_order_is_taken() {
    let rows = vec![vec![Free], vec![Forced(1)], vec![Forced(0)], vec![Forced(1)], vec![Forced(0)]];
    let table = TruthTable::new(vec![2], rows).expect("a table of five modes");
    assert_eq!(table.smallest_cover().modes, [1, 2]);
}

/// Known without a search: of twenty modes, a set that holds one of each two is
/// all of them but one; one of each two neighbours in a ring is every other one.
#[test]
fn twenty_modes_are_searched_to_the_end() {
    let of_each = |couples: Vec<(usize, usize)>| {
        let cell = |mode, &(a, b): &(usize, usize)| if a == mode || b == mode { Forced(0) } else { Free };
        let row = |mode| couples.iter().map(|couple| cell(mode, couple)).collect();
        let rows = (0..20).map(row).collect();
        TruthTable::new(vec![1; couples.len()], rows).expect("a table of twenty modes").smallest_cover()
    };
    let every_two = of_each((0..20).flat_map(|a| (0..a).map(move |b| (a, b))).collect());
    assert_eq!(every_two.modes, (0..19).collect::<Vec<_>>());
    let ring = of_each((0..20).map(|a| (a, (a + 1) % 20)).collect());
    assert_eq!(ring.modes, (0..20).step_by(2).collect::<Vec<_>>());
    assert!(every_two.is_proven() && ring.is_proven());
}

fn whole_degrees(celsius: (f64, f64), fahrenheit: (f64, f64)) -> PrintedScales {
    let ends = |(low, high), of: fn(f64) -> Temperature| Interval { low: of(low), high: of(high) };
    PrintedScales {
        celsius: ends(celsius, Temperature::from_celsius),
        celsius_digit: TemperatureDifference::from_kelvins(1.0),
        fahrenheit: ends(fahrenheit, Temperature::from_fahrenheit),
        fahrenheit_digit: TemperatureDifference::from_kelvins(1.0 / 1.8),
    }
}

/// Common practice, no source: 65 to 85 °F beside 18 to 32 °C on one panel.
///
/// Worked by hand: 85 °F = 53/1.8 °C = 29.444 °C, 2.556 K below 32 °C; 65 °F =
/// 33/1.8 °C = 18.333 °C, 0.333 K above 18 °C, which rounds to 18. The span of
/// 20 °F is 11.111 K beside 14 K.
#[test]
fn two_own_scales_of_one_panel() {
    let found = compare(&whole_degrees((18.0, 32.0), (65.0, 85.0))).expect("finite scales");
    meets("upper ends", 32.0 - 53.0 / 1.8, found.high.difference.kelvins(), Absolute(1e-12));
    meets("upper ends, as printed", 2.6, found.high.difference.kelvins(), Absolute(0.05));
    meets("lower ends", -1.0 / 3.0, found.low.difference.kelvins(), Absolute(1e-12));
    meets("lower ends, as printed", -0.3, found.low.difference.kelvins(), Absolute(0.05));
    assert!(found.low.agrees && !found.high.agrees);
    assert!(!found.are_conversions());
    meets("span of °C", 14.0, found.celsius_span.kelvins(), Absolute(1e-12));
    meets("span of °F", 20.0 / 1.8, found.fahrenheit_span.kelvins(), Absolute(1e-12));
}

/// Worked by hand: 16 °C = 60.8 °F, printed 61; 30 °C = 86 °F. 61 °F = 16.111 °C.
#[test]
fn scales_rounded_to_whole_degrees_are_conversions() {
    let found = compare(&whole_degrees((16.0, 30.0), (61.0, 86.0))).expect("finite scales");
    assert!(found.are_conversions());
    // One digit further: 62 °F is 16.667 °C, which rounds to 17.
    let found = compare(&whole_degrees((16.0, 30.0), (62.0, 86.0))).expect("finite scales");
    assert!(!found.low.agrees && found.high.agrees);
}

/// 10c: each conversion of a point is one end in both scales, so nothing differs.
#[test]
fn definitions_of_the_scales_differ_by_nothing() {
    let mut checked = 0;
    for row in rows_of("10c_temperature_conversion.csv") {
        let (celsius, fahrenheit) = match (row.text("kind"), row.text("from"), row.text("to")) {
            ("absolute", "degC", "degF") => (row.number("value"), row.number("result")),
            ("absolute", "degF", "degC") => (row.number("result"), row.number("value")),
            _ => continue,
        };
        let found = compare(&whole_degrees((celsius, celsius), (fahrenheit, fahrenheit)));
        let found = found.expect("finite scales");
        // Header: exact decimals, 1e-12; -17.777… has 15 digits.
        meets(&row.place(), 0.0, found.low.difference.kelvins(), Absolute(1e-12));
        assert!(found.are_conversions(), "{}", row.place());
        checked += 1;
    }
    assert_eq!(checked, 6, "every point of 10c between °C and °F");
}
