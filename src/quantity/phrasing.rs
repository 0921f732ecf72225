//! How a quantity may be written, found out by asking the function that reads it.
//!
//! A schema that lists units beside the reader would be a second truth. Here the
//! reader itself is given a small text in each unit and each form, and what it
//! accepts becomes a pattern.

use super::unit::{Dimension, Unit};

/// The texts that a reading function accepts.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Phrasing {
    /// Any text at all.
    free: bool,
    /// Units of `1 V`.
    plain: Vec<Unit>,
    /// Units of `-1 V`.
    below_zero: Vec<Unit>,
    /// Units of `± 1 V`.
    signed: Vec<Unit>,
    /// Whether a sign may stand behind the ±.
    signed_twice: bool,
    /// Units of `2 V ± 1 V` and `2 V ± 1 %`.
    about: Vec<Unit>,
    /// Units of `1 V to 2 V`.
    interval: Vec<Unit>,
    /// Units of `1 % + 2 digits`.
    digits: Vec<Unit>,
}

/// A number, its digits in one run or in groups of three.
const NUMBER: &str = r"(?:\d+(?:(?:\s+|')\d{3})*\.?\d*|\.\d+)";
const SIGN: &str = "[-−+]?";
const PLUS_MINUS: &str = r"(?:±|\+/-|\+/−|\+-)";

impl Phrasing {
    /// Asks whether texts are accepted.
    #[must_use]
    pub fn of(accepts: impl Fn(&str) -> bool) -> Self {
        if accepts("¤") {
            return Self { free: true, ..Self::default() };
        }
        let units = |form: &dyn Fn(&str) -> String| -> Vec<Unit> {
            Unit::all().filter(|unit| accepts(&form(unit.symbol()))).collect()
        };
        Self {
            free: false,
            plain: units(&|unit| format!("1 {unit}")),
            below_zero: units(&|unit| format!("-1 {unit}")),
            signed: units(&|unit| format!("± 1 {unit}")),
            signed_twice: !units(&|unit| format!("± -1 {unit}")).is_empty(),
            about: units(&|unit| format!("2 {unit} ± 1 {unit}")),
            interval: units(&|unit| format!("1 {unit} to 2 {unit}")),
            digits: units(&|unit| format!("1 {unit} + 2 digits")),
        }
    }

    /// Whether any text is accepted.
    #[must_use]
    pub fn is_free(&self) -> bool {
        self.free
    }

    /// A regular expression, ECMA 262 and Rust alike, for the texts that are accepted.
    ///
    /// What a pattern cannot say is left to the reader: that the ends of a range stand the
    /// right way round, that a tolerance is smaller than its value.
    #[must_use]
    pub fn pattern(&self) -> String {
        if self.free {
            return r"\S".to_owned();
        }
        let unit = |units: &[Unit]| one_of(units.iter().flat_map(|unit| unit.own_spellings()));
        let mut forms = Vec::new();
        if !self.signed.is_empty() {
            let any = self.plain == self.signed;
            let sign = if any { format!("{PLUS_MINUS}?") } else { PLUS_MINUS.to_owned() };
            let mark = if self.digits.is_empty() { "" } else { r"(?:\s*of reading)?" };
            let digits = r"(?:\s*\+\s*\d{1,3}\s*(?:digits?|counts?))?";
            let tail = if self.digits.is_empty() { String::new() } else { format!("{mark}{digits}") };
            let second = if self.signed_twice { SIGN } else { r"\+?" };
            forms.push(format!(r"{sign}\s*{second}{NUMBER}\s*{}{tail}", unit(&self.signed)));
        }
        if !self.plain.is_empty() && self.plain != self.signed {
            let sign = if self.below_zero.is_empty() { r"\+?" } else { SIGN };
            let tail = match self.about.is_empty() {
                true => String::new(),
                false => format!(r"(?:\s*{PLUS_MINUS}\s*\+?{NUMBER}\s*{})?", {
                    let mut with_percent = self.about.clone();
                    with_percent.extend((!self.about.contains(&Unit::Percent)).then_some(Unit::Percent));
                    unit(&with_percent)
                }),
            };
            forms.push(format!(r"{sign}{NUMBER}\s*{}{tail}", unit(&self.plain)));
        }
        if !self.interval.is_empty() {
            let unit = unit(&self.interval);
            let first = format!(r"(?:{unit}(?:\s+to|\s*[–…])|(?:to|[–…]))");
            forms.push(format!(r"{SIGN}{NUMBER}\s*{first}\s*{SIGN}{NUMBER}\s*{unit}"));
        }
        format!(r"^\s*{}\s*$", one_of_patterns(&forms))
    }

    /// What it measures, where that is one thing.
    #[must_use]
    pub fn dimension(&self) -> Option<Dimension> {
        let units = [&self.plain, &self.signed, &self.interval].into_iter().flatten();
        let mut found: Vec<Dimension> = units.map(|unit| unit.dimension()).collect();
        found.dedup();
        let first = *found.first()?;
        let other_units = found.iter().any(|dimension| *dimension != first);
        // A difference is read in kelvin, or behind a ± in degrees.
        match (other_units, first) {
            (false, Dimension::Temperature) if self.plain == [Unit::Kelvin] => {
                Some(if self.signed.is_empty() { Dimension::Beta } else { Dimension::TemperatureDifference })
            }
            (false, first) => Some(first),
            (true, _) => None,
        }
    }

    /// Texts that are accepted, in the unit that people would write.
    #[must_use]
    pub fn examples(&self) -> Vec<String> {
        if self.free {
            return Vec::new();
        }
        let usual = |units: &[Unit]| {
            let wanted = [Unit::Celsius, Unit::Kiloohm, Unit::Volt, Unit::Kilopascal, Unit::Second];
            let by_use = wanted.into_iter().find(|unit| units.contains(unit));
            by_use.or_else(|| units.first().copied()).map(Unit::symbol)
        };
        let forms = [
            usual(&self.interval).map(|unit| format!("1 {unit} to 2 {unit}")),
            usual(&self.digits).map(|unit| format!("0.5 {unit} + 2 digits")),
            usual(&self.about).map(|unit| format!("2 {unit} ± 1 %")),
            usual(&self.plain).map(|unit| format!("2 {unit}")),
        ];
        let mut examples: Vec<String> = forms.into_iter().flatten().collect();
        if !self.signed.is_empty() && self.digits.is_empty() {
            examples.extend(usual(&self.signed).map(|unit| format!("± 2 {unit}")));
        }
        examples
    }

    /// A text that is accepted.
    #[must_use]
    pub fn sample(&self) -> String {
        if self.free { "x".to_owned() } else { self.examples().into_iter().next().unwrap_or_default() }
    }
}

/// A group of words, the longest first, with the signs that look alike.
fn one_of<'a>(words: impl Iterator<Item = &'a str>) -> String {
    let mut words: Vec<&str> = words.collect();
    words.sort_by_key(|word| std::cmp::Reverse(word.chars().count()));
    let escaped: Vec<String> = words.into_iter().map(escaped).collect();
    one_of_patterns(&escaped)
}

fn one_of_patterns(patterns: &[String]) -> String {
    match patterns {
        [only] => only.clone(),
        several => format!("(?:{})", several.join("|")),
    }
}

fn escaped(word: &str) -> String {
    let mut pattern = String::new();
    for c in word.chars() {
        match Unit::looks_like(c) {
            Some(other) => pattern.extend(['[', c, other, ']']),
            None => pattern.push(c),
        }
    }
    pattern
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{Resistance, TemperatureDifference, Voltage, interval, scalar, toleranced};

    #[test]
    fn a_reader_tells_its_units_and_forms() {
        let ohms = Phrasing::of(|text| toleranced::<Resistance>(text).is_ok());
        assert_eq!(ohms.dimension(), Some(Dimension::Resistance));
        assert_eq!(ohms.examples(), ["2 kΩ ± 1 %", "2 kΩ"]);
        let window = Phrasing::of(|text| interval::<Voltage>(text).is_ok());
        assert_eq!(window.examples(), ["1 V to 2 V"]);
        let apart = Phrasing::of(|text| scalar::<TemperatureDifference>(text).is_ok());
        assert_eq!(apart.dimension(), Some(Dimension::TemperatureDifference));
        assert_eq!(apart.examples(), ["2 K", "± 2 °C"]);
        assert!(Phrasing::of(|_| true).is_free());
    }
}
