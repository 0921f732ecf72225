//! A panel's set-point scale as it is printed: two ends in one unit, and its last digit.

use super::phrase::{Phrase, Term};
use super::read::{Interval, Misread, Reason, TO, interval};
use super::temperature::{Temperature, TemperatureDifference};
use super::unit::{Dimension, Unit};

/// A set-point scale, such as `18 °C to 32 °C` or `64.5 °F to 85.5 °F`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SetPoints {
    /// The lower and the upper end.
    pub ends: Interval<Temperature>,
    /// One unit of the last digit that was written: whole degrees, tenths.
    pub digit: TemperatureDifference,
}

/// Reads a set-point scale whose ends are in `unit`; the first unit may be left out.
///
/// The last digit is that of the end with more decimals.
///
/// # Errors
/// When the text is no range of temperatures, or one in another unit.
pub fn set_points(text: &str, unit: Unit) -> Result<SetPoints, Misread> {
    let ends = interval(text)?;
    let mut phrase = Phrase::new(text);
    let first = phrase.term()?;
    phrase.take(TO);
    let second = phrase.term()?;
    for term in [&first, &second] {
        if term.unit.is_some_and(|spelling| Unit::named(spelling) != Some(unit)) {
            let found = term.unit.unwrap_or_default().to_owned();
            let reason = Reason::OtherUnit { found, wanted: unit.symbol() };
            return Err(Misread { at: term.unit_at.clone(), reason });
        }
    }
    let decimals = decimals_of(text, &first).max(decimals_of(text, &second));
    let digit = (0..decimals).fold(1.0, |digit, _| digit / 10.0);
    let digit = TemperatureDifference::from_unit(digit, unit);
    // `interval` has read both ends, so the unit is one of a temperature.
    let not_one = || Misread { at: 0..text.len(), reason: Reason::NotAnInterval(Dimension::Temperature) };
    Ok(SetPoints { ends, digit: digit.ok_or_else(not_one)? })
}

fn decimals_of(text: &str, term: &Term<'_>) -> usize {
    let number = &text[term.number_at.clone()];
    number.split_once('.').map_or(0, |(_, fraction)| fraction.len())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_scale_has_the_digits_it_was_written_with() {
        let whole = set_points("65 to 85 °F", Unit::Fahrenheit).expect("a scale");
        assert_eq!(whole.digit, TemperatureDifference::from_kelvins(1.0 / 1.8));
        assert_eq!(whole.ends.high, Temperature::from_fahrenheit(85.0));
        let tenths = set_points("18 °C to 31.5 °C", Unit::Celsius).expect("a scale");
        assert_eq!(tenths.digit, TemperatureDifference::from_kelvins(0.1));
    }

    #[test]
    fn a_scale_in_the_other_unit_is_refused_at_its_unit() {
        let misread = set_points("65 °F to 85 °F", Unit::Celsius).expect_err("the other unit");
        assert_eq!(misread.at, 3..6);
        assert!(set_points("18 °C to 85 °F", Unit::Celsius).is_err());
        assert!(set_points("18 °C", Unit::Celsius).is_err());
        assert!(set_points("18 mm to 32 mm", Unit::Celsius).is_err());
    }
}
