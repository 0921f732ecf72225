//! Limits of the specs in another edition's unit: whatever the numbers, they lie inside.

use proptest::prelude::*;

use super::limits::{Shown, written};
use crate::diag::{Place, Sources};
use crate::quantity::{Dimension, Measured, Units, measured};
use crate::spec::Sourced;

/// One pound-force per square inch in kilopascals, from its definition: 0.45359237 kg times
/// 9.80665 m/s² on a square of 0.0254 m (NIST Special Publication 811, B.8).
const PSI: f64 = 0.453_592_37 * 9.806_65 / (0.0254 * 0.0254) / 1000.0;

/// A number that differs by less is on the grid of the printed digits (see `quantity::figure`).
const HAIR: f64 = 1e-6;

fn limit(text: &str, dimension: Dimension) -> Sourced<Measured> {
    let value = measured(text, dimension).expect("it is a quantity");
    let place = Place { file: Sources::default().add("test.toml".to_owned(), String::new()), span: 0..0 };
    Sourced { value, written: text.to_owned(), place, source: None }
}

fn shown(low: Option<&str>, high: Option<&str>, dimension: Dimension) -> Shown {
    let [low, high] = [low, high].map(|text| text.map(|text| limit(text, dimension)));
    written((Units::Us, false), low.as_ref(), high.as_ref()).expect("it has a unit")
}

fn number(text: Option<&String>) -> f64 {
    let plain: String = text.expect("a limit").chars().filter(|c| *c != '\u{202f}').collect();
    plain.replace('−', "-").parse().expect("a printed number")
}

/// Printed limits and the exact ones: inside, by less than a tenth.
fn lie_inside(shown: &Shown, low: f64, high: f64) -> Result<(), TestCaseError> {
    let (printed_low, printed_high) = (number(shown.low.as_ref()), number(shown.high.as_ref()));
    prop_assert!(printed_low >= low - HAIR && printed_low < low + 0.1, "{printed_low} for {low}");
    prop_assert!(printed_high <= high + HAIR && printed_high > high - 0.1, "{printed_high} for {high}");
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::with_cases(2000) })]

    #[test]
    fn limits_in_psi_lie_inside_those_written_in_kilopascals(low in -90_i32..3000, wide in 5_i32..3000) {
        let (low, high) = (f64::from(low), f64::from(low + wide));
        let texts = [format!("{low} kPa"), format!("{high} kPa")];
        let both = shown(Some(&texts[0]), Some(&texts[1]), Dimension::Pressure);
        prop_assert_eq!(both.unit.as_str(), "psi");
        lie_inside(&both, low / PSI, high / PSI)?;
        // A limit that stands alone is rounded the same way.
        let least = shown(Some(&texts[0]), None, Dimension::Pressure);
        let most = shown(None, Some(&texts[1]), Dimension::Pressure);
        prop_assert_eq!((&least.low, &most.high), (&both.low, &both.high));
        prop_assert!(least.high.is_none() && most.low.is_none());
    }

    #[test]
    fn limits_in_bar_do_so_too(low in 0_i32..300, wide in 1_i32..300) {
        let (low, high) = (f64::from(low) / 10.0, f64::from(low + wide) / 10.0);
        let both = shown(Some(&format!("{low} bar")), Some(&format!("{high} bar")), Dimension::Pressure);
        lie_inside(&both, 100.0 * low / PSI, 100.0 * high / PSI)?;
    }

    #[test]
    fn limits_in_fahrenheit_lie_inside_those_written_in_celsius(low in -400_i32..1500, wide in 1_i32..900) {
        let (low, high) = (f64::from(low) / 10.0, f64::from(low + wide) / 10.0);
        let texts = [format!("{low} °C"), format!("{high} °C")];
        let both = shown(Some(&texts[0]), Some(&texts[1]), Dimension::Temperature);
        prop_assert_eq!(both.unit.as_str(), "°F");
        lie_inside(&both, 1.8 * low + 32.0, 1.8 * high + 32.0)?;
    }
}
