//! A number with any unit: what it has to measure is decided by the test it stands in.

use super::phrase::{Phrase, Term};
use super::read::{Interval, Misread, Reason, TO, any_unit_of};
use super::temperature::Temperature;
use super::unit::{Dimension, Unit};

/// A number and the unit it was written in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Measured {
    number: f64,
    unit: Unit,
}

impl Measured {
    /// What its unit measures.
    #[must_use]
    pub fn dimension(self) -> Dimension {
        self.unit.dimension()
    }

    /// Whether its unit measures `wanted`.
    #[must_use]
    pub fn measures(self, wanted: Dimension) -> bool {
        self.unit.measures(wanted)
    }

    /// The unit it was written in.
    #[must_use]
    pub fn unit(self) -> Unit {
        self.unit
    }

    /// As many of `unit`, which measures the same; as written where it is its own unit.
    #[must_use]
    pub fn in_unit(self, unit: Unit) -> f64 {
        match (self.unit == unit, unit) {
            (true, _) => self.number,
            (false, Unit::Celsius) => self.value(),
            (false, Unit::Fahrenheit) => Temperature::from_celsius(self.value()).fahrenheit(),
            (false, unit) => unit.number_of(self.value()),
        }
    }

    /// In the SI unit; a point on a temperature scale in °C, as [`Temperature`] keeps it.
    #[must_use]
    pub fn value(self) -> f64 {
        match self.unit {
            Unit::Celsius | Unit::Fahrenheit => {
                Temperature::from_unit(self.number, self.unit).map_or(self.number, Temperature::celsius)
            }
            unit => unit.to_si(self.number),
        }
    }
}

/// Reads one number with its unit; `wanted` is what a finding about the unit asks for.
///
/// # Errors
/// When the text is anything else.
pub fn measured(text: &str, wanted: Dimension) -> Result<Measured, Misread> {
    let mut phrase = Phrase::new(text);
    let term = phrase.term()?;
    let found = of_term(&term, wanted)?;
    phrase.finish()?;
    Ok(found)
}

/// Reads a window, such as `4.9 V to 5.1 V`; the first unit may be left out.
///
/// # Errors
/// When the text is anything else, or its ends are the wrong way round.
pub fn window(text: &str, wanted: Dimension) -> Result<Interval<Measured>, Misread> {
    let whole = || Misread { at: 0..text.len(), reason: Reason::NotAnInterval(wanted) };
    let mut phrase = Phrase::new(text);
    let first = phrase.term().map_err(|misread| match misread.reason {
        Reason::NotANumber => whole(),
        _ => misread,
    })?;
    if !phrase.take(TO) {
        return Err(whole());
    }
    let second = phrase.term()?;
    let high = of_term(&second, wanted)?;
    let low = match first.unit {
        Some(_) => of_term(&first, wanted)?,
        None => Measured { number: first.number, unit: high.unit },
    };
    phrase.finish()?;
    if low.dimension() == high.dimension() && low.value() > high.value() {
        let end = |term: &Term<'_>| {
            format!(
                "{} {}",
                &text[term.number_at.clone()],
                term.unit.unwrap_or(second.unit.unwrap_or_default())
            )
        };
        let suggestion = format!("{} to {}", end(&second), end(&first));
        return Err(Misread { at: 0..text.len(), reason: Reason::Reversed { suggestion } });
    }
    Ok(Interval { low, high })
}

fn of_term(term: &Term<'_>, wanted: Dimension) -> Result<Measured, Misread> {
    Ok(Measured { number: term.number, unit: any_unit_of(term, wanted)? })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_window_keeps_its_unit_and_knows_its_value() {
        let found = window("450 to 750 mV", Dimension::Voltage).expect("a window");
        assert_eq!((found.low.value(), found.high.value()), (0.45, 0.75));
        assert!(found.low.measures(Dimension::Voltage) && !found.low.measures(Dimension::Resistance));
        let warm = measured("88 °F", Dimension::Temperature).expect("a temperature");
        assert!((warm.value() - 280.0 / 9.0).abs() < 1e-12);
    }

    #[test]
    fn another_unit_is_read_and_left_to_the_rules() {
        assert_eq!(measured("3 Ω", Dimension::Voltage).expect("read").dimension(), Dimension::Resistance);
    }

    #[test]
    fn a_reversed_window_is_refused_with_the_right_way_round() {
        let misread = window("0.75 V to 0.45 V", Dimension::Voltage).expect_err("reversed");
        assert_eq!(misread.reason, Reason::Reversed { suggestion: "0.45 V to 0.75 V".to_owned() });
        assert!(window("0.45 V", Dimension::Voltage).is_err());
        assert!(matches!(
            measured("3", Dimension::Voltage).expect_err("no unit").reason,
            Reason::UnitMissing(Dimension::Voltage)
        ));
    }
}
