//! How printed numbers go wrong: a digit, two digits swapped, the point, the prefix.

use super::figure::ten_to;
use super::scalar::Ratio;
use super::unit::unshifted;

/// What would turn a printed number into the right one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Slip {
    /// Two neighbouring digits have changed places.
    Swapped,
    /// One digit is another one.
    Digit,
    /// The point stands one or two places too far left or right, or is missing.
    Point,
    /// The number is a thousand times too large or too small: another prefix.
    Prefix,
}

/// How near a mended number must come to the expected one: the next digit of a
/// number with four of them is 0.1 % at most, and an expected value is known to
/// some tenths of a percent (tests/reference/01a_ntc_rt_published.csv).
const NEAR: f64 = 0.005;

/// The single slip of the hand that explains a printed number, with the number mended.
///
/// Of several the least strange one is taken: digits swapped, one digit, the
/// point, the prefix; of one kind the nearest. `None` where no single slip comes
/// within 0.5 % and half a digit of `expected`, or the text is no plain decimal.
///
/// # Example
/// A manual's 5331 Ω where the curve wants 5231 Ω
/// (tests/reference/01e_ntc_sh_fits.csv).
/// ```
/// use bayleaf::quantity::{Slip, slip};
/// assert_eq!(slip("5331", 5231.0), Some((Slip::Digit, "5231".to_owned())));
/// assert_eq!(slip("5.825", 5.285), Some((Slip::Swapped, "5.285".to_owned())));
/// assert_eq!(slip("1249", 12.492), Some((Slip::Point, "12.49".to_owned())));
/// assert_eq!(slip("5.825", 4.0), None);
/// ```
#[must_use]
pub fn slip(written: &str, expected: f64) -> Option<(Slip, String)> {
    let near = NEAR + half_last_digit(written)?.part();
    let distance = |text: &str| {
        let value: f64 = text.parse().ok()?;
        let off = (value / expected - 1.0).abs();
        (off <= near).then_some(off)
    };
    let nearest = |candidates: Vec<String>| {
        let near = candidates.into_iter().filter_map(|text| Some((distance(&text)?, text)));
        near.min_by(|a, b| a.0.total_cmp(&b.0)).map(|(_, text)| text)
    };
    let kinds = [
        (Slip::Swapped, swapped(written)),
        (Slip::Digit, other_digits(written)),
        (Slip::Point, moved(written, &[-1, 1, -2, 2])),
        (Slip::Prefix, moved(written, &[-3, 3])),
    ];
    kinds.into_iter().find_map(|(slip, candidates)| Some((slip, nearest(candidates)?)))
}

/// Half the last printed digit, as a part of the number; `None` for anything but a
/// plain decimal above zero.
///
/// # Example
/// ```
/// use bayleaf::quantity::half_last_digit;
/// let part = half_last_digit("12.50").map(|ratio| ratio.part());
/// assert!(part.is_some_and(|part| (part - 0.0004).abs() < 1e-15));
/// assert_eq!(half_last_digit("1e3"), None);
/// ```
#[must_use]
pub fn half_last_digit(written: &str) -> Option<Ratio> {
    let plain = written.chars().all(|c| c.is_ascii_digit() || c == '.');
    let value: f64 = written.parse().ok().filter(|value: &f64| plain && value.is_normal())?;
    let decimals = written.split_once('.').map_or(0, |(_, fraction)| fraction.len());
    Some(Ratio::new(0.5 / ten_to(decimals) / value))
}

fn swapped(written: &str) -> Vec<String> {
    let digits: Vec<char> = written.chars().collect();
    let places: Vec<usize> = (0..digits.len()).filter(|&place| digits[place] != '.').collect();
    let swap = |pair: &[usize]| {
        let mut digits = digits.clone();
        digits.swap(pair[0], pair[1]);
        digits.into_iter().collect()
    };
    places.windows(2).filter(|pair| digits[pair[0]] != digits[pair[1]]).map(swap).collect()
}

fn other_digits(written: &str) -> Vec<String> {
    let digits: Vec<char> = written.chars().collect();
    let mut all = Vec::new();
    for place in (0..digits.len()).filter(|&place| digits[place] != '.') {
        for digit in ('0'..='9').filter(|digit| *digit != digits[place]) {
            let mut digits = digits.clone();
            digits[place] = digit;
            all.push(digits.into_iter().collect());
        }
    }
    all
}

/// The number with its point moved to the right by each of the places.
fn moved(written: &str, places: &[i32]) -> Vec<String> {
    let Ok(number) = written.parse() else { return Vec::new() };
    places.iter().map(|&by| unshifted(number, by).to_string()).collect()
}
