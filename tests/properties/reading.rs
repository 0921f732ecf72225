//! Reading and printing of quantities.

use bayleaf::quantity::{
    Beta, Interval, Misread, Quantity, Ratio, Reason, Resistance, Scalar, Temperature, TemperatureDifference,
    Voltage, accuracy, interval, number, ratio, scalar, toleranced,
};
use proptest::prelude::*;
use std::fmt::Display;

/// Any number that a spec may hold: from nothing to far more than any part, either sign.
fn any_number() -> impl Strategy<Value = f64> {
    prop_oneof![
        // A few digits, as people write them.
        (-99_999_i32..=99_999, 0_u32..=5)
            .prop_map(|(digits, decimals)| f64::from(digits) / f64::from(10_u32.pow(decimals))),
        // Any bits of a size that a workshop can meet.
        (1e-9..1e12_f64, any::<bool>()).prop_map(|(size, below)| if below { -size } else { size }),
        Just(0.0),
    ]
}

/// The number of fifteen digits nearest to a value; any such number survives as a double.
fn fifteen_digits(value: f64) -> f64 {
    format!("{value:.14e}").parse().expect("a float in its own notation")
}

/// Numbers as people write them, which must also be printed that way.
fn short_number() -> impl Strategy<Value = (String, f64)> {
    (1_u32..=99_999, 0_usize..=4).prop_map(|(digits, decimals)| {
        let value = f64::from(digits) / f64::from(10_u32.pow(u32::try_from(decimals).unwrap_or(0)));
        (value.to_string(), value)
    })
}

/// Text made of the pieces that quantities are made of, in any order.
fn nearly_a_quantity() -> impl Strategy<Value = String> {
    const PIECES: &str = "1|22|333|0|.|,|-|−|+|±|+/-| |\u{a0}|\u{202f}|'|to|–|…|of|of reading|digits|\
                          counts|°C|°F|K|k|kΩ|MΩ|Ω|V|mV|%|℃|é|😀|e9";
    let pieces: Vec<&str> = PIECES.split('|').collect();
    prop::collection::vec(prop::sample::select(pieces), 0..9).prop_map(|parts| parts.concat())
}

/// Temperatures as a spec gives them: tenths of a degree.
fn any_degrees() -> impl Strategy<Value = f64> {
    (-999_i32..=1999).prop_map(|tenths| f64::from(tenths) / 10.0)
}

fn any_text() -> impl Strategy<Value = String> {
    prop_oneof![nearly_a_quantity(), any::<String>()]
}

/// Demands that what was printed reads back as the very same value.
fn reads_back<T: Quantity + Display + PartialEq + std::fmt::Debug>(value: T) -> Result<(), TestCaseError> {
    let printed = value.to_string();
    prop_assert_eq!(scalar::<T>(&printed), Ok(value), "printed as {}", printed);
    Ok(())
}

/// Demands that a report on `text` can be drawn: its place is a part of the text.
fn points_into<T>(text: &str, outcome: Result<T, Misread>) -> Result<(), TestCaseError> {
    if let Err(Misread { at, reason }) = outcome {
        prop_assert!(text.get(at.clone()).is_some(), "{:?} at {:?} of {:?}", reason, at, text);
    }
    Ok(())
}

proptest! {
    #![proptest_config(crate::every_run())]

    #[test]
    fn what_is_printed_reads_back(value in any_number()) {
        reads_back(Resistance::from_ohms(value))?;
        reads_back(Voltage::from_volts(value))?;
        reads_back(Beta::from_kelvins(value))?;
        reads_back(Temperature::from_celsius(value))?;
        reads_back(TemperatureDifference::from_kelvins(value))?;
        prop_assert_eq!(number(&value.to_string()), Ok(value));
        // A ratio is only ever written in percent, and between two neighbouring
        // ones there is not always a percentage: fifteen digits hold, more can't.
        let part = fifteen_digits(value);
        reads_back(Ratio::new(part))?;
        let size = Ratio::new(part.abs());
        prop_assert_eq!(ratio(&size.to_string()), Ok(size));
    }

    #[test]
    fn a_short_number_is_printed_as_it_was_written((text, value) in short_number()) {
        let percent = format!("{text} %");
        prop_assert_eq!(ratio(&percent).map(|part| part.to_string()), Ok(percent));
        let volts = format!("{text} V");
        prop_assert_eq!(scalar::<Voltage>(&volts).map(|volts| volts.to_string()), Ok(volts));
        // Whatever prefix is chosen, none of them adds digits.
        let printed = Resistance::from_si(value).to_string();
        prop_assert!(printed.chars().count() <= text.len() + 5, "{} Ω printed as {}", text, printed);
    }

    #[test]
    fn two_kelvins_are_three_point_six_fahrenheit_degrees(kelvins in 0.001..100.0_f64) {
        let same = [format!("± {kelvins} °C"), format!("± {kelvins} K"), format!("{kelvins} K")];
        for text in same {
            let read: TemperatureDifference = scalar(&text).map_err(|e| TestCaseError::fail(e.to_string()))?;
            let degrees = read.fahrenheit_degrees();
            prop_assert!((degrees - 1.8 * kelvins).abs() <= 1e-12 * degrees, "{} is {} F°", text, degrees);
            // And back, without the 32 of the scale.
            let back = scalar::<TemperatureDifference>(&format!("± {degrees} °F"));
            prop_assert!(back.is_ok_and(|back| (back.kelvins() - kelvins).abs() <= 1e-12 * kelvins));
        }
        // Without its sign it is a point, and the report says how to write the distance.
        let point = scalar::<TemperatureDifference>(&format!("{kelvins} °C"));
        let Err(Misread { reason: Reason::TemperatureForDifference { suggestion }, .. }) = point else {
            return Err(TestCaseError::fail(format!("{kelvins} °C: {point:?}")));
        };
        let suggested = scalar(&suggestion);
        prop_assert_eq!(suggested, Ok(TemperatureDifference::from_kelvins(kelvins)), "{}", suggestion);
        // Moving a temperature moves both scales by just that.
        let (warm, by) = (Temperature::from_celsius(25.0), TemperatureDifference::from_kelvins(kelvins));
        let moved = warm.plus(by).fahrenheit() - warm.fahrenheit();
        prop_assert!((moved - by.fahrenheit_degrees()).abs() < 1e-12 * 212.0);
        prop_assert!((warm.plus(by).minus(by).celsius() - warm.celsius()).abs() < 1e-12);
    }

    #[test]
    fn no_text_makes_reading_panic(text in any_text()) {
        points_into(&text, scalar::<Resistance>(&text))?;
        points_into(&text, scalar::<Voltage>(&text))?;
        points_into(&text, scalar::<Ratio>(&text))?;
        points_into(&text, scalar::<Beta>(&text))?;
        points_into(&text, scalar::<Temperature>(&text))?;
        points_into(&text, scalar::<TemperatureDifference>(&text))?;
        points_into(&text, toleranced::<Resistance>(&text))?;
        points_into(&text, toleranced::<Voltage>(&text))?;
        points_into(&text, interval::<Temperature>(&text))?;
        points_into(&text, interval::<Resistance>(&text))?;
        points_into(&text, interval::<TemperatureDifference>(&text))?;
        points_into(&text, ratio(&text))?;
        points_into(&text, number(&text))?;
        points_into(&text, accuracy(&text))?;
    }

    #[test]
    fn what_is_read_is_finite_and_ordered(text in any_text()) {
        if let Ok(value) = scalar::<Resistance>(&text) {
            prop_assert!(value.ohms().is_finite(), "{:?} is {:?}", text, value);
        }
        if let Ok(value) = scalar::<Temperature>(&text) {
            prop_assert!(value.celsius().is_finite(), "{:?} is {:?}", text, value);
        }
        if let Ok(read) = interval::<Temperature>(&text) {
            prop_assert!(read.low <= read.high, "{:?} is {:?}", text, read);
        }
        if let Ok(read) = toleranced::<Resistance>(&text)
            && let Some(limits) = read.limits
        {
            prop_assert!(limits.contains(&read.nominal), "{:?} is {:?}", text, read);
        }
        if let Ok(part) = ratio(&text) {
            prop_assert!(part.part() >= 0.0, "{:?} is {:?}", text, part);
        }
    }

    #[test]
    fn a_tolerance_reaches_as_far_to_either_side(nominal in 1.0..1e7_f64, percent in 0.0..99.0_f64) {
        let text = format!("{nominal} Ω ± {percent} %");
        let read = toleranced::<Resistance>(&text).map_err(|e| TestCaseError::fail(e.to_string()))?;
        let limits = read.limits.ok_or_else(|| TestCaseError::fail("a tolerance was written"))?;
        prop_assert!(limits.low.ohms() > 0.0 && limits.contains(&read.nominal));
        let (below, above) = (nominal - limits.low.ohms(), limits.high.ohms() - nominal);
        prop_assert!((below - above).abs() <= 1e-12 * nominal);
        prop_assert!((above - nominal * percent / 100.0).abs() <= 1e-12 * nominal);
    }

    #[test]
    fn a_range_is_read_from_its_lower_to_its_upper_end(ends in (any_degrees(), any_degrees())) {
        let (first, second) = ends;
        let at = Temperature::from_celsius;
        let range = Interval { low: at(first.min(second)), high: at(first.max(second)) };
        // The first unit may be left out, and the suggestion for a reversed range is the range.
        for text in [format!("{first} °C to {second} °C"), format!("{first} – {second} °C")] {
            match interval::<Temperature>(&text) {
                Ok(read) => prop_assert!(first <= second && read == range, "{:?} is {:?}", text, read),
                Err(Misread { reason: Reason::Reversed { suggestion }, .. }) => {
                    prop_assert!(first > second, "{:?}", text);
                    prop_assert_eq!(interval(&suggestion), Ok(range), "{:?}", suggestion);
                }
                Err(misread) => prop_assert!(false, "{:?}: {}", text, misread),
            }
        }
    }
}
