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

/// One range of a meter.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MeterRange {
    /// The greatest reading it shows, in the reading's unit; infinite where not given.
    pub most: f64,
    /// How far to trust it.
    pub accuracy: Accuracy,
    /// The value of one count of the last digit, in the reading's unit.
    pub digit: f64,
}

/// The ranges of one function of a meter, the smallest first.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MeterRanges {
    list: [MeterRange; MOST_RANGES],
    count: usize,
}

/// More ranges than a function of a workshop meter has.
pub const MOST_RANGES: usize = 8;

impl MeterRanges {
    /// Several ranges in any order; `None` for none of them, or more than [`MOST_RANGES`].
    #[must_use]
    pub fn new(ranges: &[MeterRange]) -> Option<Self> {
        let last = *ranges.last()?;
        let mut list = [last; MOST_RANGES];
        list.get_mut(..ranges.len())?.copy_from_slice(ranges);
        list[..ranges.len()].sort_by(|one, other| one.most.total_cmp(&other.most));
        Some(Self { list, count: ranges.len() })
    }

    /// A function of a single range.
    #[must_use]
    pub fn one(accuracy: Accuracy, digit: f64) -> Self {
        let range = MeterRange { most: f64::INFINITY, accuracy, digit };
        Self { list: [range; MOST_RANGES], count: 1 }
    }

    /// The range that shows a reading: the smallest that reaches it, as a meter chooses
    /// by itself; beyond all of them the greatest.
    #[must_use]
    pub fn at(&self, reading: f64) -> &MeterRange {
        let ranges = &self.list[..self.count];
        ranges.iter().find(|range| reading.abs() <= range.most).unwrap_or(&ranges[self.count - 1])
    }

    /// The limit of error at a reading, in its unit.
    ///
    /// # Example
    /// Digits are counts of the range in use: 2.5 kΩ on a 6 kΩ range of 1 Ω digits is
    /// good to ± (20 + 2) Ω, on a 60 kΩ range of 10 Ω digits to ± (20 + 20) Ω.
    /// ```
    /// use bayleaf::quantity::{Accuracy, MeterRange, MeterRanges, Ratio};
    /// let accuracy = Accuracy { reading: Ratio::new(0.008), digits: 2 };
    /// let fine = MeterRange { most: 6e3, accuracy, digit: 1.0 };
    /// let coarse = MeterRange { most: 60e3, accuracy, digit: 10.0 };
    /// let both = MeterRanges::new(&[coarse, fine]).expect("two ranges");
    /// assert!((both.limit(2500.0) - 22.0).abs() < 1e-9);
    /// let coarse = MeterRanges::new(&[coarse]).expect("one range");
    /// assert!((coarse.limit(2500.0) - 40.0).abs() < 1e-9);
    /// ```
    #[must_use]
    pub fn limit(&self, reading: f64) -> f64 {
        let range = self.at(reading);
        range.accuracy.limit(reading, range.digit)
    }

    /// The same function of a meter whose errors are this part of these.
    #[must_use]
    pub fn scaled(mut self, part: Ratio) -> Self {
        for range in &mut self.list {
            range.accuracy.reading = Ratio::new(range.accuracy.reading.part() * part.part());
            range.digit *= part.part();
        }
        self
    }
}

impl fmt::Display for Accuracy {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} + {} digits", self.reading, self.digits)
    }
}
