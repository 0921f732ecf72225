//! Axes with round values, and a line over them as parts/plot.typ draws it.

use schemars::JsonSchema;
use serde::Serialize;

use super::figures;

/// A line with its axes; coordinates are parts of the plot's sides, y upwards.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Trace {
    /// What is plotted.
    pub title: String,
    /// Unit of the heights: `V`.
    pub unit: &'static str,
    /// Unit along the axis: `°C`.
    pub x_unit: &'static str,
    /// Values along the axis.
    pub x_ticks: Vec<Tick>,
    /// Values up the axis.
    pub y_ticks: Vec<Tick>,
    /// Points of the thick line, x and y each.
    pub nominal: Vec<[f64; 2]>,
    /// Points of the lower limit; empty where there is none.
    pub low: Vec<[f64; 2]>,
    /// Points of the upper limit.
    pub high: Vec<[f64; 2]>,
    /// What it shows, for readers who cannot see it.
    pub alt: String,
}

/// A value on an axis.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Tick {
    /// Where, as a part of the axis: 0 to 1.
    pub at: f64,
    /// The value there: `2 000`.
    pub text: String,
}

/// An axis from one round value to another that holds all of what it shows.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Axis {
    low: f64,
    high: f64,
    step: f64,
}

impl Axis {
    /// An axis that holds both ends, with at most so many steps.
    pub(super) fn around(low: f64, high: f64, most: f64) -> Option<Self> {
        let span = high - low;
        if !(span.is_finite() && span > 0.0) {
            return None;
        }
        let step = round_step(span, most);
        let (from, to) = (libm::floor(low / step + 1e-9) * step, libm::ceil(high / step - 1e-9) * step);
        (to > from).then_some(Self { low: from, high: to, step })
    }

    /// An axis that ends where its line ends, with ticks at round values.
    pub(super) fn exactly(low: f64, high: f64, most: f64) -> Option<Self> {
        let span = high - low;
        (span.is_finite() && span > 0.0).then(|| Self { low, high, step: round_step(span, most) })
    }

    /// Where a value lies, as a part of the axis.
    pub(super) fn part(self, value: f64) -> f64 {
        tidy((value - self.low) / (self.high - self.low))
    }

    /// Whether a value lies on it.
    pub(super) fn holds(self, value: f64) -> bool {
        (self.low..=self.high).contains(&value)
    }

    /// Its round values.
    pub(super) fn ticks(self) -> Vec<Tick> {
        // Not minus zero, which would be other data for the same page.
        let first = libm::ceil(self.low / self.step - 1e-9) + 0.0;
        let values = std::iter::successors(Some(first), |index| Some(index + 1.0));
        let values = values.map(|index| index * self.step);
        let within = values.take_while(|value| *value <= self.high + 1e-9 * self.step);
        within.map(|value| Tick { at: self.part(value), text: figures::trimmed(value) }).collect()
    }
}

/// Four decimals are a hundredth of a millimetre on paper; fewer bytes, same line.
pub(super) fn tidy(share: f64) -> f64 {
    (share * 1e4).round() / 1e4
}

/// The smallest of 1, 2, 5 × 10ⁿ that gives no more steps than that.
fn round_step(span: f64, most: f64) -> f64 {
    let power = libm::pow(10.0, libm::floor(libm::log10(span / most)));
    let fits = |factor: &f64| span / (factor * power) <= most;
    [1.0, 2.0, 5.0].into_iter().find(fits).unwrap_or(10.0) * power
}

#[cfg(test)]
mod tests {
    use super::*;

    fn texts(axis: Option<Axis>) -> Vec<String> {
        axis.expect("an axis").ticks().into_iter().map(|tick| tick.text).collect()
    }

    #[test]
    fn an_axis_has_round_values_around_its_line() {
        assert_eq!(texts(Axis::around(-0.8, 13.6, 6.0)), ["−5", "0", "5", "10", "15"]);
        assert_eq!(texts(Axis::exactly(0.0, 2.5, 6.0)), ["0", "0.5", "1", "1.5", "2", "2.5"]);
        assert_eq!(texts(Axis::exactly(0.0, 2.33, 6.0)), ["0", "0.5", "1", "1.5", "2"]);
    }

    #[test]
    fn nothing_has_no_axis() {
        assert_eq!(Axis::around(1.0, 1.0, 6.0), None);
        assert_eq!(Axis::exactly(0.0, f64::INFINITY, 6.0), None);
    }
}
