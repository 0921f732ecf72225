//! Cuts a quantity as people write it into numbers, units and signs.
//!
//! Every piece keeps its byte range in the text, so that a finding can point
//! at the unit and not only at the whole string.

use std::ops::Range;

use super::read::{Misread, Reason};

/// A number followed by the unit it stands in, if any.
#[derive(Debug, Clone)]
pub(super) struct Term<'a> {
    pub number: f64,
    pub number_at: Range<usize>,
    pub unit: Option<&'a str>,
    pub unit_at: Range<usize>,
}

/// A place in the text being read.
#[derive(Debug, Clone)]
pub(super) struct Phrase<'a> {
    text: &'a str,
    at: usize,
}

impl<'a> Phrase<'a> {
    pub(super) fn new(text: &'a str) -> Self {
        Self { text, at: 0 }
    }

    fn rest(&self) -> &'a str {
        &self.text[self.at..]
    }

    fn peek(&self) -> Option<char> {
        self.rest().chars().next()
    }

    fn skip_space(&mut self) {
        self.at = self.text.len() - self.rest().trim_start().len();
    }

    /// Takes one of `words` if the text goes on with it.
    pub(super) fn take(&mut self, words: &[&str]) -> bool {
        self.skip_space();
        let found = words.iter().find(|word| self.rest().starts_with(**word));
        if let Some(word) = found {
            self.at += word.len();
        }
        found.is_some()
    }

    /// Takes a ± sign in any of its spellings.
    pub(super) fn take_plus_minus(&mut self) -> bool {
        self.take(&["±", "+/-", "+/−", "+-"])
    }

    /// Whether nothing but space is left.
    pub(super) fn is_done(&mut self) -> bool {
        self.skip_space();
        self.rest().is_empty()
    }

    /// Demands that nothing is left.
    pub(super) fn finish(&mut self) -> Result<(), Misread> {
        if self.is_done() {
            return Ok(());
        }
        let rest = self.rest().trim_end();
        Err(Misread { at: self.at..self.at + rest.len(), reason: Reason::Trailing(rest.to_owned()) })
    }

    /// Reads a number and the unit behind it, if there is one.
    pub(super) fn term(&mut self) -> Result<Term<'a>, Misread> {
        let (number, number_at) = self.number()?;
        let gap = self.at;
        self.skip_space();
        let start = self.at;
        let unit_len = unit_length(self.rest());
        if unit_len == 0 || is_joint(&self.rest()[..unit_len]) {
            self.at = gap;
            return Ok(Term { number, unit: None, unit_at: number_at.clone(), number_at });
        }
        self.at += unit_len;
        Ok(Term { number, number_at, unit: Some(&self.text[start..self.at]), unit_at: start..self.at })
    }

    /// Reads a number: sign, digits in groups of three or in one run, decimal point.
    pub(super) fn number(&mut self) -> Result<(f64, Range<usize>), Misread> {
        self.skip_space();
        let start = self.at;
        let mut plain = String::new();
        if let Some(sign @ ('-' | '−' | '+')) = self.peek() {
            self.at += sign.len_utf8();
            if sign != '+' {
                plain.push('-');
            }
        }
        while let Some(c) = self.peek() {
            if c.is_ascii_digit() || c == '.' {
                plain.push(c);
                self.at += c.len_utf8();
            } else if group_separator(c)
                && plain.ends_with(|c: char| c.is_ascii_digit())
                && self.group_follows(c)
            {
                self.at += c.len_utf8();
            } else {
                break;
            }
        }
        let at = start..self.at;
        if self.peek() == Some(',') && plain.ends_with(|c: char| c.is_ascii_digit()) {
            let whole = start..start + number_like_length(&self.text[start..]);
            let suggestion = self.text[whole.clone()].replacen(',', ".", 1);
            return Err(Misread { at: whole, reason: Reason::DecimalComma { suggestion } });
        }
        if let Some(end) = exponent_length(self.rest()) {
            return Err(Misread { at: start..self.at + end, reason: Reason::Exponent });
        }
        let number: f64 = plain.parse().map_err(|_| self.not_a_number(start))?;
        if number.is_finite() { Ok((number, at)) } else { Err(self.not_a_number(start)) }
    }

    /// Whether exactly three digits follow the separator, then no further digit.
    fn group_follows(&self, separator: char) -> bool {
        let after = &self.rest()[separator.len_utf8()..];
        after.chars().take_while(char::is_ascii_digit).count() == 3
    }

    fn not_a_number(&self, start: usize) -> Misread {
        let end = start + self.text[start..].trim_end().len();
        Misread { at: start..end, reason: Reason::NotANumber }
    }
}

/// The length of an exponent such as `e3` or `E-12`, where one follows a number.
fn exponent_length(text: &str) -> Option<usize> {
    let rest = text.strip_prefix(['e', 'E'])?;
    let digits = rest.strip_prefix(['+', '-', '−']).unwrap_or(rest);
    let count = digits.chars().take_while(char::is_ascii_digit).count();
    (count > 0).then(|| text.len() - digits.len() + count)
}

/// A space that may stand between groups of three digits.
fn group_separator(c: char) -> bool {
    matches!(c, ' ' | '\u{a0}' | '\u{2009}' | '\u{202f}' | '\'')
}

fn number_like_length(text: &str) -> usize {
    text.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',' | '-' | '−' | '+')))
        .unwrap_or(text.len())
}

/// The length of a unit: up to a space, a digit or a joint between two terms.
///
/// A 2 behind an m belongs to the unit: `mm2`, `W/m2`.
fn unit_length(text: &str) -> usize {
    let ends = |(at, c): &(usize, char)| {
        let squares = *c == '2' && text[..*at].ends_with('m');
        c.is_whitespace()
            || c.is_ascii_digit() && !squares
            || matches!(c, '±' | '+' | '-' | '−' | '–' | '…' | ',')
    };
    text.char_indices().find(ends).map_or(text.len(), |(at, _)| at)
}

/// Words that join two terms and are not units.
fn is_joint(word: &str) -> bool {
    matches!(word, "to" | "of")
}
