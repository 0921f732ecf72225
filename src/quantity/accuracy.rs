//! A meter's accuracy as its maker states it: percent of reading plus digits.

use std::fmt;

use super::scalar::Ratio;

/// ± (a part of the reading + a count of the last displayed digit).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Accuracy {
    /// The part of the reading.
    pub reading: Ratio,
    /// How many counts of the last digit.
    pub digits: u32,
}

impl Accuracy {
    /// The limit of error at a reading, in the reading's unit.
    ///
    /// `resolution` is the value of one count on the range in use, in the same
    /// unit as the reading.
    ///
    /// # Example
    /// 2.000 V on a ± (0.08 % + 2 digits) meter with 1 mV digits is good to
    /// 3.6 mV (tests/reference/04d_dmm_accuracy.csv, row d2).
    /// ```
    /// use bayleaf::quantity::{Accuracy, Ratio};
    /// let meter = Accuracy { reading: Ratio::new(0.0008), digits: 2 };
    /// assert!((meter.limit(2.0, 0.001) - 0.0036).abs() < 1e-12);
    /// ```
    #[must_use]
    pub fn limit(self, reading: f64, resolution: f64) -> f64 {
        self.reading.part() * reading.abs() + f64::from(self.digits) * resolution
    }
}

impl fmt::Display for Accuracy {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} + {} digits", self.reading, self.digits)
    }
}
