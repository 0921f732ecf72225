//! The temperatures of a strip table: the multiples of a step inside a range.

use crate::quantity::{Interval, Step, Temperature};

/// More rows than this are no card.
pub const MOST_ROWS: usize = 200;

/// A whole number of steps that binary arithmetic made a hair less.
const HAIR: f64 = 1e-9;

/// How many rows a strip has.
#[must_use]
pub fn rows_in(range: Interval<Temperature>, step: Step) -> usize {
    let (first, last) = ends(range, step);
    // At most a few thousand rows from any range: far from the end of `usize`.
    if last < first { 1 } else { (last - first) as usize + 1 }
}

/// The temperatures of the rows, or the range's lower end where no multiple of
/// the step lies inside.
#[must_use]
pub fn temperatures(range: Interval<Temperature>, step: Step) -> Vec<Temperature> {
    let (first, last) = ends(range, step);
    if last < first {
        return vec![range.low];
    }
    let inside = |celsius: f64| celsius.clamp(range.low.celsius(), range.high.celsius());
    (0..rows_in(range, step).min(MOST_ROWS))
        .map(|row| Temperature::from_celsius(inside(step.multiple(first + row as f64).celsius())))
        .collect()
}

/// The first and the last multiple of the step, counted from zero of its scale.
fn ends(range: Interval<Temperature>, step: Step) -> (f64, f64) {
    ((step.count_of(range.low) - HAIR).ceil(), (step.count_of(range.high) + HAIR).floor())
}

#[cfg(test)]
mod tests {
    use super::*;

    fn celsius(low: f64, high: f64, step: f64) -> Vec<f64> {
        let range = Interval { low: Temperature::from_celsius(low), high: Temperature::from_celsius(high) };
        let rows = temperatures(range, Step::of_kelvins(step));
        rows.into_iter().map(Temperature::celsius).collect()
    }

    #[test]
    fn rows_are_multiples_of_the_step() {
        assert_eq!(celsius(-5.5, 5.5, 5.0), [-5.0, 0.0, 5.0]);
        assert_eq!(celsius(0.0, 40.0, 20.0), [0.0, 20.0, 40.0]);
    }

    #[test]
    fn rows_of_degrees_fahrenheit_are_round_there() {
        let range = Interval { low: Temperature::from_celsius(-20.0), high: Temperature::from_celsius(0.0) };
        let rows = temperatures(range, Step::of_fahrenheit(10.0));
        let rows: Vec<f64> = rows.into_iter().map(|at| at.fahrenheit().round()).collect();
        assert_eq!(rows, [0.0, 10.0, 20.0, 30.0]);
    }

    #[test]
    fn a_range_between_two_multiples_has_its_lower_end() {
        assert_eq!(celsius(21.2, 21.9, 5.0), [21.2]);
        assert_eq!(celsius(25.0, 25.0, 5.0), [25.0]);
    }
}
