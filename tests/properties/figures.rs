//! Numbers as they stand on paper.

use bayleaf::quantity::{Accuracy, Ratio, Rounding, Voltage, decimals_for, figure, scalar};
use proptest::prelude::*;

/// The part of the last digit that counts as being on the grid; the documented hair.
const HAIR: f64 = 1e-6;

/// Values that a card can hold, on the grid of a display as often as off it.
fn value_on_paper() -> impl Strategy<Value = f64> {
    prop_oneof![
        -1e6..1e6_f64,
        -10.0..10.0_f64,
        -0.01..0.01_f64,
        (-99_999_i32..=99_999).prop_map(|digits| f64::from(digits) / 1000.0),
        // Arithmetic that is on the grid on paper and beside it in binary.
        (1_i32..=999, 1_i32..=99)
            .prop_map(|(volts, percent)| { f64::from(volts) / 10.0 * (1.0 - f64::from(percent) / 100.0) }),
    ]
}

/// The value of printed digits, read as a spec would read them.
fn printed_value(text: &str) -> Result<f64, TestCaseError> {
    let read = scalar::<Voltage>(&format!("{text} V"));
    read.map(Voltage::volts).map_err(|misread| TestCaseError::fail(format!("{text:?}: {misread}")))
}

proptest! {
    #![proptest_config(crate::every_run())]

    #[test]
    fn a_figure_lies_on_the_side_it_was_rounded_to(value in value_on_paper(), decimals in 0_usize..=3) {
        let last_digit = 1.0 / f64::from(10_u32.pow(u32::try_from(decimals).unwrap_or(0)));
        let as_printed = |rounding| printed_value(&figure(value, decimals, rounding));
        let up = as_printed(Rounding::Up)?;
        let down = as_printed(Rounding::Down)?;
        let nearest = as_printed(Rounding::Nearest)?;
        let hair = 1.01 * HAIR * last_digit;
        prop_assert!(up >= value - hair, "{} up to {}", value, up);
        prop_assert!(down <= value + hair, "{} down to {}", value, down);
        // Never by a whole digit, and the nearest by half a digit at most.
        prop_assert!(up - value < last_digit && value - down < last_digit, "{}: {} {}", value, down, up);
        prop_assert!((nearest - value).abs() <= 0.5 * last_digit + hair, "{} to {}", value, nearest);
        prop_assert!(down <= nearest && nearest <= up, "{}: {} {} {}", value, down, nearest, up);
    }

    #[test]
    fn a_figure_has_the_digits_it_was_asked_for(value in value_on_paper(), decimals in 0_usize..=3) {
        let text = figure(value, decimals, Rounding::Nearest);
        let fraction = text.split_once('.').map_or(0, |(_, fraction)| fraction.len());
        prop_assert_eq!(fraction, decimals, "{}", &text);
        // A true minus, and never a zero with a sign.
        prop_assert!(!text.contains('-'), "{}", &text);
        let nothing = text.chars().all(|c| !c.is_ascii_digit() || c == '0');
        prop_assert!(!(nothing && text.starts_with('−')), "{}", &text);
    }

    #[test]
    fn the_same_number_rounds_to_itself(digits in -999_999_i32..=999_999, decimals in 0_usize..=3) {
        let power = f64::from(10_u32.pow(u32::try_from(decimals).unwrap_or(0)));
        let value = f64::from(digits) / power;
        let nearest = figure(value, decimals, Rounding::Nearest);
        prop_assert_eq!(&figure(value, decimals, Rounding::Up), &nearest);
        prop_assert_eq!(&figure(value, decimals, Rounding::Down), &nearest);
        // The float nearest to the printed digits is the value itself.
        prop_assert!(printed_value(&nearest)?.total_cmp(&value).is_eq(), "{} as {}", value, &nearest);
    }

    #[test]
    fn four_significant_digits_are_enough_to_tell_ohms_apart(ohms in 10.0..1e6_f64) {
        let text = figure(ohms, decimals_for(ohms), Rounding::Nearest);
        prop_assert!(text.chars().filter(char::is_ascii_digit).count() >= 4, "{} as {}", ohms, &text);
        prop_assert!((printed_value(&text)? / ohms - 1.0).abs() <= 0.0005 + 1e-9);
    }

    #[test]
    fn a_limit_of_error_grows_with_the_reading(
        percent in 0.0..5.0_f64,
        digits in 0_u32..50,
        reading in -1000.0..1000.0_f64,
        more in 0.0..1000.0_f64,
    ) {
        let meter = Accuracy { reading: Ratio::new(percent / 100.0), digits };
        let limit = meter.limit(reading, 0.01);
        prop_assert!(limit.is_finite() && limit >= f64::from(digits) * 0.01);
        prop_assert!((limit - meter.limit(-reading, 0.01)).abs() <= 0.0);
        prop_assert!(meter.limit(reading.abs() + more, 0.01) >= limit);
    }
}
