//! Reads quantities: `4.7 kΩ ± 1 %`, `-20 °C to 60 °C`, `0.5 % + 2 digits`.

use std::fmt;
use std::ops::Range;

use super::accuracy::Accuracy;
use super::phrase::{Phrase, Term};
use super::scalar::{Ratio, Scalar};
use super::temperature::{Temperature, TemperatureDifference};
use super::unit::{Dimension, Unit, unshifted};

/// Why a text is not the quantity that was wanted, and which part of it.
#[derive(Debug, Clone, PartialEq)]
pub struct Misread {
    /// Byte range inside the text.
    pub at: Range<usize>,
    /// What is wrong there.
    pub reason: Reason,
}

/// What is wrong with a text that should be a quantity.
#[derive(Debug, Clone, PartialEq)]
pub enum Reason {
    /// There is no number where one is wanted.
    NotANumber,
    /// A comma stands where the decimal point belongs.
    DecimalComma {
        /// The same number with a point.
        suggestion: String,
    },
    /// A number without its unit.
    UnitMissing(Dimension),
    /// A unit that is none.
    UnitUnknown {
        /// As written.
        found: String,
        /// What was wanted.
        wanted: Dimension,
    },
    /// A unit of something else.
    WrongDimension {
        /// As written.
        found: String,
        /// What that unit measures.
        found_dimension: Dimension,
        /// What was wanted.
        wanted: Dimension,
    },
    /// A point on a scale where the distance between two points is wanted.
    TemperatureForDifference {
        /// The same number as a difference.
        suggestion: String,
    },
    /// Something stands behind the quantity.
    Trailing(String),
    /// A range whose ends are the wrong way round.
    Reversed {
        /// The same range the right way round.
        suggestion: String,
    },
    /// A range needs two ends.
    NotAnInterval(Dimension),
    /// A tolerance below zero.
    NegativeTolerance,
    /// A part of something, or an accuracy, below zero.
    Negative,
    /// A number with an exponent, which no workshop paper has.
    Exponent,
    /// A tolerance so large that the value may be zero or less.
    ToleranceTooLarge,
    /// Not of the form `0.5 % + 2 digits`.
    NotAnAccuracy,
    /// A unit of the right dimension where another one is asked for.
    OtherUnit {
        /// As written.
        found: String,
        /// The unit's symbol.
        wanted: &'static str,
    },
}

impl fmt::Display for Misread {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:?}", self.reason)
    }
}

impl std::error::Error for Misread {}

/// Anything that is read as one number with one unit.
pub trait Quantity: Copy + PartialOrd + 'static {
    /// What it measures.
    const MEASURES: Dimension;
    /// From a number and a unit; `signed` after a ± sign. `None`: not this dimension.
    fn from_written(number: f64, unit: Unit, signed: bool) -> Option<Self>;
}

impl<T: Scalar> Quantity for T {
    const MEASURES: Dimension = T::DIMENSION;
    fn from_written(number: f64, unit: Unit, _: bool) -> Option<Self> {
        unit.measures(T::DIMENSION).then(|| T::from_si(unit.to_si(number)))
    }
}

impl Quantity for Temperature {
    const MEASURES: Dimension = Dimension::Temperature;
    fn from_written(number: f64, unit: Unit, signed: bool) -> Option<Self> {
        if signed { None } else { Self::from_unit(number, unit) }
    }
}

impl Quantity for TemperatureDifference {
    const MEASURES: Dimension = Dimension::TemperatureDifference;
    fn from_written(number: f64, unit: Unit, signed: bool) -> Option<Self> {
        if signed || unit == Unit::Kelvin { Self::from_unit(number, unit) } else { None }
    }
}

/// A nominal value and how far the real one may lie from it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Toleranced<T> {
    /// The nominal value.
    pub nominal: T,
    /// The lowest and the highest value, where a tolerance was given.
    pub limits: Option<Interval<T>>,
}

/// Two ends, the lower one first.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Interval<T> {
    /// The lower end.
    pub low: T,
    /// The upper end.
    pub high: T,
}

impl<T: PartialOrd> Interval<T> {
    /// Whether `value` lies inside or on an end.
    #[must_use]
    pub fn contains(&self, value: &T) -> bool {
        self.low <= *value && *value <= self.high
    }
}

/// What stands between the two ends of a range.
pub(super) const TO: &[&str] = &["to", "–", "…"];

/// Reads one quantity, such as `2.2 kΩ` or `31 °C`; a difference may carry ±.
///
/// # Errors
/// When the text is anything else; the [`Misread`] points at the part.
pub fn scalar<T: Quantity>(text: &str) -> Result<T, Misread> {
    let mut phrase = Phrase::new(text);
    let signed = T::MEASURES == Dimension::TemperatureDifference && phrase.take_plus_minus();
    let term = phrase.term()?;
    let value = with_unit(&term, signed)?;
    phrase.finish()?;
    Ok(value)
}

/// Reads a part of one, such as `3 %` or `± 3 %`; it can't be negative.
///
/// # Errors
/// When the text is anything else.
pub fn ratio(text: &str) -> Result<Ratio, Misread> {
    let mut phrase = Phrase::new(text);
    phrase.take_plus_minus();
    let term = phrase.term()?;
    let value: Ratio = with_unit(&term, true)?;
    phrase.finish()?;
    not_negative(value.part(), &term, Reason::Negative)?;
    Ok(value)
}

/// Reads a plain number without a unit, such as a curve's coefficient.
///
/// # Errors
/// When the text is anything else.
pub fn number(text: &str) -> Result<f64, Misread> {
    let whole = || Misread { at: 0..text.len(), reason: Reason::NotANumber };
    let value: f64 = text.trim().replace('−', "-").parse().map_err(|_| whole())?;
    if value.is_finite() { Ok(value) } else { Err(whole()) }
}

/// Reads a value with or without a tolerance: `4.7 kΩ ± 1 %`, `5 V ± 0.1 V`.
///
/// # Errors
/// When the text is anything else.
pub fn toleranced<T: Scalar>(text: &str) -> Result<Toleranced<T>, Misread> {
    let (value, spread): (Toleranced<T>, _) = about(text)?;
    let half_width = value.limits.map_or(0.0, |limits| limits.high.si() - value.nominal.si());
    if let Some(at) = spread.filter(|_| half_width > 0.0 && half_width >= value.nominal.si().abs()) {
        return Err(Misread { at, reason: Reason::ToleranceTooLarge });
    }
    Ok(value)
}

/// Reads a value that may be nothing, such as an offset: `20 mV ± 10 mV`, `0 V ± 20 mV`.
///
/// # Errors
/// When the text is anything else.
pub fn deviation<T: Scalar>(text: &str) -> Result<Toleranced<T>, Misread> {
    about(text).map(|(value, _)| value)
}

/// A value with its tolerance, and where that stands.
fn about<T: Scalar>(text: &str) -> Result<(Toleranced<T>, Option<Range<usize>>), Misread> {
    let mut phrase = Phrase::new(text);
    let term = phrase.term()?;
    let nominal: T = with_unit(&term, false)?;
    if !phrase.take_plus_minus() {
        phrase.finish()?;
        return Ok((Toleranced { nominal, limits: None }, None));
    }
    let spread = phrase.term()?;
    let half_width = if spread.unit == Some("%") {
        nominal.si().abs() * unshifted(spread.number, -2)
    } else {
        with_unit::<T>(&spread, true)?.si()
    };
    phrase.finish()?;
    not_negative(half_width, &spread, Reason::NegativeTolerance)?;
    let end = |sign: f64| T::from_si(nominal.si() + sign * half_width);
    let limits = Some(Interval { low: end(-1.0), high: end(1.0) });
    Ok((Toleranced { nominal, limits }, Some(spread.number_at)))
}

/// Reads a range, such as `-20 °C to 60 °C`; the first unit may be left out.
///
/// # Errors
/// When the text is anything else, or its ends are the wrong way round.
pub fn interval<T: Quantity>(text: &str) -> Result<Interval<T>, Misread> {
    let mut phrase = Phrase::new(text);
    let not_one = |misread: Misread| match misread.reason {
        Reason::NotANumber => Misread { at: 0..text.len(), reason: Reason::NotAnInterval(T::MEASURES) },
        _ => misread,
    };
    let first = phrase.term().map_err(not_one)?;
    if !phrase.take(TO) {
        // A wrong unit explains more than a missing second end.
        if first.unit.is_some() {
            with_unit::<T>(&first, false)?;
        }
        return Err(Misread { at: 0..text.len(), reason: Reason::NotAnInterval(T::MEASURES) });
    }
    let second = phrase.term().map_err(not_one)?;
    let high: T = with_unit(&second, false)?;
    let low: T = match first.unit {
        Some(_) => with_unit(&first, false)?,
        None => with_unit(&Term { unit: second.unit, ..first.clone() }, false)?,
    };
    phrase.finish()?;
    if low > high {
        // The first unit may be missing; where the ends change places none may be.
        let unit = second.unit.unwrap_or_default();
        let end =
            |term: &Term<'_>| format!("{} {}", &text[term.number_at.clone()], term.unit.unwrap_or(unit));
        let suggestion = format!("{} to {}", end(&second), end(&first));
        return Err(Misread { at: 0..text.len(), reason: Reason::Reversed { suggestion } });
    }
    Ok(Interval { low, high })
}

/// Reads a meter's accuracy: `0.5 %`, `0.5 % + 2 digits`, `± 0.8 % of reading + 2 counts`.
///
/// # Errors
/// When the text is anything else.
pub fn accuracy(text: &str) -> Result<Accuracy, Misread> {
    let not_one = || Misread { at: 0..text.len(), reason: Reason::NotAnAccuracy };
    let mut phrase = Phrase::new(text);
    phrase.take_plus_minus();
    let term = phrase.term()?;
    let reading: Ratio = with_unit(&term, true)?;
    not_negative(reading.part(), &term, Reason::Negative)?;
    phrase.take(&["of reading"]);
    if phrase.is_done() {
        return Ok(Accuracy { reading, digits: 0 });
    }
    if !phrase.take(&["+"]) {
        return Err(not_one());
    }
    let (count, at) = phrase.number()?;
    if !phrase.take(&["digits", "digit", "counts", "count"]) {
        return Err(not_one());
    }
    phrase.finish()?;
    // A count of digits is small and whole; a tenth of a digit is a misprint.
    let digits = (0..1000).find(|&digits| f64::from(digits).total_cmp(&count).is_eq());
    digits.map(|digits| Accuracy { reading, digits }).ok_or(Misread { at, reason: Reason::NotAnAccuracy })
}

/// Gives a term its meaning, or says what is wrong with its unit.
fn with_unit<T: Quantity>(term: &Term<'_>, signed: bool) -> Result<T, Misread> {
    let wanted = T::MEASURES;
    let unit = any_unit_of(term, wanted)?;
    T::from_written(term.number, unit, signed).ok_or_else(|| match (wanted, unit) {
        (Dimension::TemperatureDifference, Unit::Celsius | Unit::Fahrenheit) => Misread {
            at: term.unit_at.clone(),
            reason: Reason::TemperatureForDifference {
                suggestion: format!("± {} {}", term.number.abs(), unit.symbol()),
            },
        },
        _ => wrong_dimension(term, unit, wanted),
    })
}

/// The unit of a term, which must measure `wanted`.
pub(super) fn unit_of(term: &Term<'_>, wanted: Dimension) -> Result<Unit, Misread> {
    let unit = any_unit_of(term, wanted)?;
    if unit.measures(wanted) { Ok(unit) } else { Err(wrong_dimension(term, unit, wanted)) }
}

/// The unit of a term, whatever it measures.
pub(super) fn any_unit_of(term: &Term<'_>, wanted: Dimension) -> Result<Unit, Misread> {
    let Some(spelling) = term.unit else {
        return Err(Misread { at: term.number_at.clone(), reason: Reason::UnitMissing(wanted) });
    };
    Unit::named(spelling).ok_or_else(|| Misread {
        at: term.unit_at.clone(),
        reason: Reason::UnitUnknown { found: spelling.to_owned(), wanted },
    })
}

fn wrong_dimension(term: &Term<'_>, unit: Unit, wanted: Dimension) -> Misread {
    let found = term.unit.unwrap_or_default().to_owned();
    let reason = Reason::WrongDimension { found, found_dimension: unit.dimension(), wanted };
    Misread { at: term.unit_at.clone(), reason }
}

fn not_negative(value: f64, term: &Term<'_>, reason: Reason) -> Result<(), Misread> {
    if value < 0.0 {
        return Err(Misread { at: term.number_at.clone(), reason });
    }
    Ok(())
}
