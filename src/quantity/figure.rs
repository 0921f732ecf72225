//! Numbers as they stand on paper: rounded once, here, and never again.

use super::{notation, trace};

/// Which way a number goes when it loses digits.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Rounding {
    /// To the nearest, halves away from zero.
    Nearest,
    /// Up: for the lower limit of a window, so that no bad part passes.
    Up,
    /// Down: for the upper limit of a window.
    Down,
}

/// A number this close to the grid, in last digits, is on the grid.
///
/// 5.00 V less 2 % is 4.9 V; binary arithmetic may make it 4.9 plus a hair,
/// and rounding that up to 4.901 V would be wrong about the arithmetic.
const HAIR: f64 = 1e-6;

/// The longest fraction that is ever printed.
const MOST_DECIMALS: usize = 9;

/// Prints `value` with `decimals` decimals: true minus sign, narrow space for thousands.
///
/// # Example
/// ```
/// use bayleaf::quantity::{Rounding, figure};
/// assert_eq!(figure(17728.9, 0, Rounding::Nearest), "17\u{202f}729");
/// assert_eq!(figure(-4.3204, 3, Rounding::Up), "−4.320");
/// assert_eq!(figure(1.3206, 3, Rounding::Down), "1.320");
/// ```
#[must_use]
pub fn figure(value: f64, decimals: usize, rounding: Rounding) -> String {
    let decimals = decimals.min(MOST_DECIMALS);
    let power = ten_to(decimals);
    let scaled = value * power;
    let nearest = scaled.round();
    let units = match rounding {
        Rounding::Up if (scaled - nearest).abs() > HAIR => scaled.ceil(),
        Rounding::Down if (scaled - nearest).abs() > HAIR => scaled.floor(),
        _ => nearest,
    };
    let plain = format!("{:.decimals$}", units.abs() / power);
    let (whole, fraction) = plain.split_at(plain.find('.').unwrap_or(plain.len()));
    let sign = if units < 0.0 { "−" } else { "" };
    let printed = format!("{sign}{}{}", grouped(whole), notation::marked(fraction));
    trace::note(value, decimals, rounding, &printed);
    printed
}

/// How many decimals show a value to at least four significant digits.
///
/// Whole ohms from 1000 Ω up, tenths from 100 Ω, hundredths below: the digits
/// that a workshop meter can show and that a source table has.
#[must_use]
pub fn decimals_for(value: f64) -> usize {
    match value.abs() {
        v if v >= 1000.0 => 0,
        v if v >= 100.0 => 1,
        _ => 2,
    }
}

/// Ten to a small power, exact: `powi` may differ from machine to machine.
#[must_use]
pub fn ten_to(power: usize) -> f64 {
    (0..power).fold(1.0, |product, _| product * 10.0)
}

/// Groups of three digits with a narrow no-break space, from as many digits up as the language has it.
fn grouped(digits: &str) -> String {
    if digits.len() < notation::grouped_from() {
        return digits.to_owned();
    }
    let mut out = String::new();
    for (index, digit) in digits.chars().enumerate() {
        if index > 0 && (digits.len() - index).is_multiple_of(3) {
            out.push('\u{202f}');
        }
        out.push(digit);
    }
    out
}
