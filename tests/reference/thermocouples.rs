//! Thermocouples of types K, T and J against published EMFs.

use bayleaf::physics::thermocouple::{Class, Thermocouple};
use bayleaf::quantity::{Temperature, Voltage};

use crate::sheet::Within::Absolute;
use crate::sheet::{Row, meets, rows_of};

fn of_type(letter: &str) -> Thermocouple {
    match letter {
        "K" => Thermocouple::K,
        "T" => Thermocouple::T,
        "J" => Thermocouple::J,
        other => panic!("no check for thermocouple type {other}"),
    }
}

fn millivolts(emf: Voltage) -> f64 {
    1e3 * emf.volts()
}

/// 09a: header demands 1e-6 mV against two libraries, 0.0006 mV against printed tables.
#[test]
fn emfs_are_those_of_the_reference_functions() {
    let (mut checked, mut printed) = (0, 0);
    for row in rows_of("09a_thermocouple.csv") {
        let wire = of_type(row.text("type"));
        let (at, reference) = (row.celsius("t_degC"), row.celsius("t_ref_degC"));
        let emf = wire.emf_from(at, reference).expect("inside the reference function");
        row.agrees("emf_lib_mV", millivolts(emf), Absolute(1e-6));
        row.agrees("emf_its90lib_mV", millivolts(emf), Absolute(1e-6));
        if row.has("emf_K_coeff_mV") {
            row.agrees("emf_K_coeff_mV", millivolts(emf), Absolute(1e-6));
        }
        if row.has("printed_mV") {
            row.agrees("printed_mV", millivolts(emf), Absolute(0.0006));
            printed += 1;
        }
        checked += 1;
        back_again(&row, wire, emf, reference);
    }
    assert_eq!((checked, printed), (42, PRINTED), "every row of 09a");
}

/// How many rows of 09a have a printed value.
const PRINTED: usize = 1;

/// The cold junction adds EMFs; whoever adds temperatures gets `t_naive_degC`.
fn back_again(row: &Row, wire: Thermocouple, emf: Voltage, reference: Temperature) {
    let ice = Temperature::from_celsius(0.0);
    let back = wire.temperature(emf, reference).expect("inside the reference function");
    // The column is printed to eight digits; K's library reads −3e-9 mV at 0 °C.
    row.agrees("t_back_degC", back.celsius(), Absolute(2e-6));
    let naive = wire.temperature(emf, ice).expect("inside the reference function");
    row.agrees("t_naive_degC", naive.celsius() + reference.celsius(), Absolute(1e-3));
}

/// Beyond 09a's range: PyPI thermocouple-its90 1.0.2, `get(type).emf(t, 0)`, printed to
/// eight decimals; the library states that it meets every value of the NIST tables.
#[test]
fn the_whole_range_is_that_of_the_reference_functions() {
    let points = [
        ("K", -270.0, -6.45773795),
        ("K", -200.0, -5.89140359),
        ("K", -100.0, -3.55363134),
        ("K", 500.0, 20.64428639),
        ("K", 1000.0, 41.27560646),
        ("K", 1372.0, 54.88636403),
        ("T", -270.0, -6.25750504),
        ("T", -200.0, -5.60296070),
        ("T", -100.0, -3.37858206),
        ("T", 300.0, 14.86192801),
        ("T", 400.0, 20.87197005),
        ("J", -210.0, -8.09537965),
        ("J", -100.0, -4.63252368),
        ("J", 500.0, 27.39263097),
        ("J", 760.0, 42.91864133),
        ("J", 1000.0, 57.95341035),
        ("J", 1200.0, 69.55317979),
    ];
    for (letter, celsius, published) in points {
        let emf = of_type(letter).emf(Temperature::from_celsius(celsius)).expect("inside");
        meets(&format!("{letter} at {celsius} °C"), published, millivolts(emf), Absolute(1e-6));
    }
}

/// The ends as NIST's tables print them, to a thousandth of a millivolt (from memory).
#[test]
fn the_ends_are_as_printed() {
    let points = [
        ("K", -270.0, -6.458),
        ("K", 1372.0, 54.886),
        ("T", -270.0, -6.258),
        ("T", 400.0, 20.872),
        ("J", -210.0, -8.095),
        ("J", 760.0, 42.919),
        ("J", 1200.0, 69.553),
    ];
    for (letter, celsius, printed) in points {
        let emf = of_type(letter).emf(Temperature::from_celsius(celsius)).expect("inside");
        meets(&format!("{letter} at {celsius} °C"), printed, millivolts(emf), Absolute(0.0006));
    }
}

/// IEC 60584-1, tolerance classes (from memory).
#[test]
fn a_class_is_as_good_as_the_standard_says() {
    let limit = |wire: Thermocouple, class, celsius| {
        wire.limit_of_error(class, Temperature::from_celsius(celsius)).map(|limit| limit.kelvins())
    };
    assert_eq!(limit(Thermocouple::K, Class::One, 31.0), Some(1.5));
    assert_eq!(limit(Thermocouple::K, Class::Two, 31.0), Some(2.5));
    assert_eq!(limit(Thermocouple::T, Class::One, 31.0), Some(0.5));
    meets(
        "T, class 1, 200 °C",
        0.8,
        limit(Thermocouple::T, Class::One, 200.0).unwrap_or(f64::NAN),
        Absolute(1e-12),
    );
    assert_eq!(limit(Thermocouple::J, Class::Three, 31.0), None);
    assert_eq!(limit(Thermocouple::K, Class::Three, 50.0), None);
}
