//! How a language writes numbers: decimal mark, groups of digits, the words within a quantity.
//!
//! A notation holds for whatever a thread makes text of while [`noted`] runs, as the record of
//! [`traced`](super::traced) does: no figure can be printed past it. Outside of it numbers are
//! written as in specs.

use std::cell::RefCell;

use super::unit::Unit;

/// How numbers are written.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Notation {
    /// The decimal mark.
    pub decimal: char,
    /// From so many digits on a whole number is parted in groups of three.
    pub grouped_from: usize,
    /// What stands between the ends of a range: `to`.
    pub to: String,
    /// What a meter's counts of the last digit are called.
    pub digits: String,
}

thread_local! {
    static CURRENT: RefCell<Option<Notation>> = const { RefCell::new(None) };
}

/// The decimal mark of specs.
const POINT: char = '.';

/// Runs something that writes its numbers in a notation.
pub fn noted<T>(notation: Option<Notation>, make: impl FnOnce() -> T) -> T {
    let outer = CURRENT.with(|current| current.replace(notation));
    let made = make();
    CURRENT.with(|current| current.replace(outer));
    made
}

fn with<T>(of: impl FnOnce(&Notation) -> T) -> Option<T> {
    CURRENT.with(|current| current.borrow().as_ref().map(of))
}

/// The decimal mark that numbers are written with here.
#[must_use]
pub fn decimal_mark() -> char {
    with(|notation| notation.decimal).unwrap_or(POINT)
}

/// What stands between the ends of a range here.
#[must_use]
pub fn range_word() -> String {
    with(|notation| notation.to.clone()).unwrap_or_else(|| "to".to_owned())
}

/// From so many digits on a whole number is parted in groups.
pub(super) fn grouped_from() -> usize {
    with(|notation| notation.grouped_from).unwrap_or(4)
}

/// A number as Rust writes it, with the decimal mark that is due here.
#[must_use]
pub fn marked(number: &str) -> String {
    number.replace(POINT, decimal_mark().encode_utf8(&mut [0; 4]))
}

/// A quantity as a spec has it (`-20 °C to 60 °C`, `4.7 kΩ ± 1 %`, `0.5 % + 2 digits`) in the
/// notation that is due here. Any other text stays as it was written.
#[must_use]
pub fn reprinted(text: &str) -> String {
    let changed = with(|notation| in_notation(text, notation));
    changed.flatten().unwrap_or_else(|| text.to_owned())
}

fn in_notation(text: &str, notation: &Notation) -> Option<String> {
    if !text.contains(|c: char| c.is_ascii_digit()) {
        return None;
    }
    let words: Option<Vec<String>> = text.split(' ').map(|word| of_word(word, notation)).collect();
    words.map(|words| words.join(" "))
}

/// One word of a quantity; `None` makes the whole text somebody's own words.
fn of_word(word: &str, notation: &Notation) -> Option<String> {
    let plain = word.trim_start_matches('(').trim_end_matches([',', ')']);
    let (before, behind) = word.split_once(plain)?;
    let decimal = notation.decimal.to_string();
    let number = |part: &str| part.trim_start_matches(['-', '−', '+', '±', '~']).parse::<f64>().is_ok();
    let said = match plain {
        "to" => notation.to.clone(),
        "digits" | "digit" | "counts" | "count" => notation.digits.clone(),
        "±" | "+" | "–" | "…" | "→" | "≤" | "≥" => plain.to_owned(),
        _ if Unit::named(plain).is_some() => plain.to_owned(),
        _ if plain.split(['/', '–', '…', ':']).all(number) => plain.replace(POINT, &decimal),
        _ => return None,
    };
    // Between numbers with a decimal comma a comma parts nothing.
    let behind = if notation.decimal == ',' { behind.replace(',', ";") } else { behind.to_owned() };
    Some(format!("{before}{said}{behind}"))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{Resistance, Rounding, Temperature, figure};

    fn german<T>(make: impl FnOnce() -> T) -> T {
        let (to, digits) = ("bis".to_owned(), "Digits".to_owned());
        noted(Some(Notation { decimal: ',', grouped_from: 4, to, digits }), make)
    }

    #[test]
    fn figures_and_quantities_have_the_mark_of_the_notation_inside_it_only() {
        assert_eq!(german(|| figure(17728.94, 1, Rounding::Nearest)), "17\u{202f}728,9");
        assert_eq!(german(|| Resistance::from_ohms(4700.0).to_string()), "4,7 kΩ");
        assert_eq!(german(|| Temperature::from_celsius(-2.5).to_string()), "-2,5 °C");
        assert_eq!(figure(1.5, 1, Rounding::Nearest), "1.5");
    }

    #[test]
    fn four_digits_are_grouped_where_the_language_does() {
        let spanish =
            Notation { decimal: ',', grouped_from: 5, to: "a".to_owned(), digits: "dígitos".to_owned() };
        let figures = || [1234.0, 12345.0].map(|value| figure(value, 0, Rounding::Nearest));
        assert_eq!(noted(Some(spanish), figures), ["1234", "12\u{202f}345"]);
        assert_eq!(german(figures), ["1\u{202f}234", "12\u{202f}345"]);
    }

    #[test]
    fn a_quantity_of_a_spec_follows_and_words_do_not() {
        let said = |text: &str| german(|| reprinted(text));
        assert_eq!(said("-20 °C to 60.5 °C"), "-20 °C bis 60,5 °C");
        assert_eq!(said("4.7 kΩ ± 1 %"), "4,7 kΩ ± 1 %");
        assert_eq!(said("0.5 % + 2 digits (≤ 6.5 kΩ)"), "0,5 % + 2 Digits (≤ 6,5 kΩ)");
        assert_eq!(
            said("14 °F 23.13/24.33 kΩ, 23 °F 18.15/19.05 kΩ"),
            "14 °F 23,13/24,33 kΩ; 23 °F 18,15/19,05 kΩ"
        );
        for own in ["built 2019 to 2024", "manual 4.2, p. 31", "C2/7", "pin 2.5", "to", "v1.2"] {
            assert_eq!(said(own), own);
        }
        assert_eq!(reprinted("4.7 kΩ"), "4.7 kΩ");
    }
}
