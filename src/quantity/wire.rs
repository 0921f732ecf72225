//! The size of a wire's conductor, in the two series that are sold.

use std::fmt;

use super::notation::marked;
use super::phrase::Phrase;
use super::read::{Misread, Reason, unit_of};
use super::unit::{Dimension, Unit};

/// A conductor's size as a wiring diagram states it.
///
/// The two are kept apart: a nominal cross-section has a standard's greatest
/// resistance, a gauge number has a diameter.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub enum WireSize {
    /// Nominal cross-section in square millimetres.
    SquareMillimetres(f64),
    /// American wire gauge number.
    Gauge(u8),
}

/// The thinnest gauge that is read: nothing thinner is a vehicle's wire.
const THINNEST: u8 = 40;

/// Reads a conductor's size: `0.5 mm²`, `20 AWG`.
///
/// # Errors
/// When the text is anything else, the cross-section is not above zero, or the
/// gauge is not a whole number from 0 to 40.
pub fn wire_size(text: &str) -> Result<WireSize, Misread> {
    let mut phrase = Phrase::new(text);
    let term = phrase.term()?;
    let unit = unit_of(&term, Dimension::WireSize)?;
    phrase.finish()?;
    let not_a_number = || Misread { at: term.number_at.clone(), reason: Reason::NotANumber };
    if unit == Unit::Gauge {
        let whole = (0..=THINNEST).find(|&gauge| f64::from(gauge).total_cmp(&term.number).is_eq());
        return whole.map(WireSize::Gauge).ok_or_else(not_a_number);
    }
    if term.number > 0.0 { Ok(WireSize::SquareMillimetres(term.number)) } else { Err(not_a_number()) }
}

impl fmt::Display for WireSize {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::SquareMillimetres(area) => {
                write!(f, "{} {}", marked(&area.to_string()), Unit::SquareMillimetre.symbol())
            }
            Self::Gauge(number) => write!(f, "{number} {}", Unit::Gauge.symbol()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_size_is_read_in_either_series() {
        assert_eq!(wire_size("0.5 mm²"), Ok(WireSize::SquareMillimetres(0.5)));
        assert_eq!(wire_size("0.75 mm2"), Ok(WireSize::SquareMillimetres(0.75)));
        assert_eq!(wire_size("20 AWG"), Ok(WireSize::Gauge(20)));
        for wrong in ["0.5", "0 mm²", "20.5 AWG", "-1 AWG", "41 AWG", "20 V", "20 AWG x"] {
            assert!(wire_size(wrong).is_err(), "{wrong}");
        }
    }
}
