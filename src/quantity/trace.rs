//! Which numbers became text, and from what: the proof of a printed figure comes from
//! the very rounding that made it.
//!
//! A record per thread, open only while [`traced`] runs: a figure cannot be printed past
//! it, and nothing that prints has to carry it along.

use std::cell::RefCell;

use super::figure::Rounding;

/// A number that became text.
#[derive(Debug, Clone, PartialEq)]
pub struct Traced {
    /// The number before rounding, in the unit it is printed in.
    pub value: f64,
    /// Decimals printed.
    pub decimals: usize,
    /// Which way it was rounded.
    pub rounding: Rounding,
    /// The text.
    pub printed: String,
}

thread_local! {
    static RECORD: RefCell<Option<Vec<Traced>>> = const { RefCell::new(None) };
}

/// Runs something and lists every number that it made text of, in order.
pub fn traced<T>(make: impl FnOnce() -> T) -> (T, Vec<Traced>) {
    let outer = RECORD.with(|record| record.replace(Some(Vec::new())));
    let made = make();
    let record = RECORD.with(|record| record.replace(outer));
    (made, record.unwrap_or_default())
}

/// Notes a number, if anybody asked.
pub(super) fn note(value: f64, decimals: usize, rounding: Rounding, printed: &str) {
    RECORD.with(|record| {
        if let Some(record) = record.borrow_mut().as_mut() {
            record.push(Traced { value, decimals, rounding, printed: printed.to_owned() });
        }
    });
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::figure;

    #[test]
    fn what_is_printed_inside_is_noted_and_nothing_else() {
        let _ = figure(1.0, 1, Rounding::Nearest);
        let (text, record) = traced(|| figure(1.3206, 3, Rounding::Up));
        assert_eq!((text.as_str(), record.len()), ("1.321", 1));
        assert_eq!(record[0].printed, "1.321");
        assert_eq!(record[0].value.to_bits(), 1.3206_f64.to_bits());
    }

    #[test]
    fn a_record_within_a_record_leaves_the_outer_one_alone() {
        let (inner, outer) = traced(|| {
            let first = figure(1.0, 0, Rounding::Nearest);
            let inner = traced(|| figure(2.0, 0, Rounding::Nearest)).1.len();
            assert_eq!(first, "1");
            inner
        });
        assert_eq!((inner, outer.len()), (1, 1));
    }
}
