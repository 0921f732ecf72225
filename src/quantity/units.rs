//! In which units a page is printed: metric, US, or both side by side.
//!
//! The one place that decides on scales, steps and units; what a page says of a
//! temperature, a difference of two or a pressure goes through here.

use super::measured::Measured;
use super::scalar::Pressure;
use super::step::{Step, degrees, on_scale};
use super::temperature::{Temperature, TemperatureDifference};
use super::unit::{Dimension, Unit};

/// The units of a page.
///
/// # Source
/// t/°C = (t/°F − 32)/1.8 and 1 psi = 6.894 757 kPa: NIST Special Publication 811 (2008),
/// B.8 and B.9; the factor of psi is exact from its definition, see [`Unit`].
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Units {
    /// °C, K, kPa and bar, m.
    Metric,
    /// °F, differences in °F, psi, ft.
    Us,
    /// Both scales of temperature and all units of pressure, in columns beside each other;
    /// what has room for one is in °C.
    #[default]
    Both,
}

/// Units of boxes to write in, metric and US: what scales and odometers of a shop show
/// (common practice, no source).
const IN_BOXES: [(&str, &str); 5] =
    [("°C", "°F"), ("km", "mi"), ("g", "oz"), ("ml", "fl oz"), ("bar", "psi")];

/// Steps that people count in, before a power of ten.
const NATURAL: [f64; 3] = [1.0, 2.0, 5.0];

impl Units {
    /// Each with the word that names it in a spec and on the command line.
    pub const WORDS: &[(&str, Self)] = &[("metric", Self::Metric), ("US", Self::Us), ("both", Self::Both)];

    /// The word that names it.
    #[must_use]
    pub fn word(self) -> &'static str {
        Self::WORDS.iter().find(|(_, units)| *units == self).map_or("", |(word, _)| word)
    }

    /// The units that a word of a spec names.
    #[must_use]
    pub fn of_word(word: &str) -> Option<Self> {
        Self::WORDS.iter().find(|(own, _)| *own == word).map(|(_, units)| *units)
    }

    /// The units that another usual name means, to offer their word.
    #[must_use]
    pub fn meant_by(name: &str) -> Option<Self> {
        match name.to_lowercase().as_str() {
            "us" => Some(Self::Us),
            "metric" => Some(Self::Metric),
            "both" => Some(Self::Both),
            "si" | "celsius" | "°c" => Some(Self::Metric),
            "imperial" | "customary" | "us customary" | "usa" | "fahrenheit" | "°f" => Some(Self::Us),
            _ => None,
        }
    }

    /// The scale of a temperature that has room for one.
    #[must_use]
    pub fn scale(self) -> Unit {
        if self == Self::Us { Unit::Fahrenheit } else { Unit::Celsius }
    }

    /// The scales of a table's rows: a column for each.
    #[must_use]
    pub fn scales(self) -> &'static [Unit] {
        match self {
            Self::Metric => &[Unit::Celsius],
            Self::Us => &[Unit::Fahrenheit],
            Self::Both => &[Unit::Celsius, Unit::Fahrenheit],
        }
    }

    /// The units of a pressure: a column for each.
    #[must_use]
    pub fn pressures(self) -> &'static [Unit] {
        match self {
            Self::Metric => &[Unit::Kilopascal, Unit::Bar],
            Self::Us => &[Unit::PoundPerSquareInch],
            Self::Both => &[Unit::Kilopascal, Unit::Bar, Unit::PoundPerSquareInch],
        }
    }

    /// The unit of a pressure that has room for one.
    #[must_use]
    pub fn pressure(self) -> Unit {
        self.pressures()[0]
    }

    /// How a pressure is printed that has room for one unit: to a kilopascal, or a tenth of a psi.
    #[must_use]
    pub fn pressure_decimals(self) -> usize {
        if self == Self::Us { 1 } else { 0 }
    }

    /// A pressure in the one unit.
    ///
    /// # Example
    /// ```
    /// use bayleaf::quantity::{Pressure, Units};
    /// let psi = Units::Us.of_pressure(Pressure::from_pascals(100_000.0));
    /// assert!((psi - 14.5038).abs() < 1e-4);
    /// ```
    #[must_use]
    pub fn of_pressure(self, pressure: Pressure) -> f64 {
        self.pressure().count_of(pressure).unwrap_or(f64::NAN)
    }

    /// A temperature on the one scale.
    #[must_use]
    pub fn degrees(self, at: Temperature) -> f64 {
        degrees(at, self.scale())
    }

    /// The temperature of so many degrees of the one scale.
    #[must_use]
    pub fn temperature(self, degrees: f64) -> Temperature {
        on_scale(degrees, self.scale())
    }

    /// The symbol of the one scale.
    #[must_use]
    pub fn symbol(self) -> &'static str {
        self.scale().symbol()
    }

    /// The unit of a difference of two temperatures: a kelvin, or a degree Fahrenheit.
    #[must_use]
    pub fn difference_unit(self) -> Unit {
        if self == Self::Us { Unit::Fahrenheit } else { Unit::Kelvin }
    }

    /// A difference of two temperatures: 1 K is 1.8 °F, and nothing is added.
    ///
    /// # Example
    /// ```
    /// use bayleaf::quantity::{TemperatureDifference, Units};
    /// assert_eq!(Units::Us.of_difference(TemperatureDifference::from_kelvins(2.5)), 4.5);
    /// ```
    #[must_use]
    pub fn of_difference(self, by: TemperatureDifference) -> f64 {
        if self == Self::Us { by.fahrenheit_degrees() } else { by.kelvins() }
    }

    /// How many degrees of the one scale a kelvin is.
    #[must_use]
    pub fn per_kelvin(self) -> f64 {
        self.of_difference(TemperatureDifference::from_kelvins(1.0))
    }

    /// The end of a column's key for programs: `c` or `f`.
    #[must_use]
    pub fn key(self) -> &'static str {
        key_of(self.scale())
    }

    /// The end of the key of a difference: `k` or `f`.
    #[must_use]
    pub fn difference_key(self) -> &'static str {
        if self == Self::Us { "f" } else { "k" }
    }

    /// A step as this edition counts: as written where its scale is one of the edition's, else
    /// the nearest of 1, 2, 5, 10 … of the other scale, in proportion.
    ///
    /// # Example
    /// ```
    /// use bayleaf::quantity::{Step, Units};
    /// assert_eq!(Units::Us.step(Step::of_kelvins(2.0)), Step::of_fahrenheit(5.0));
    /// assert_eq!(Units::Us.step(Step::of_kelvins(5.0)), Step::of_fahrenheit(10.0));
    /// assert_eq!(Units::Us.step(Step::of_fahrenheit(4.0)), Step::of_fahrenheit(4.0));
    /// ```
    #[must_use]
    pub fn step(self, step: Step) -> Step {
        if self.scales().contains(&step.scale()) {
            return step;
        }
        let wanted = step.kelvins() * self.per_kelvin();
        self.step_of(nearest_natural(wanted))
    }

    /// So many degrees of the one scale from row to row.
    #[must_use]
    pub fn step_of(self, degrees: f64) -> Step {
        Step::of(degrees, self.scale())
    }

    /// A number as a test or a box has it, in this edition's unit; of a difference of two
    /// temperatures 1 K is 1.8 °F. What has no unit of its own here stays as written.
    #[must_use]
    pub fn of_measured(self, measured: Measured, is_difference: bool) -> (f64, Unit) {
        let (written, unit) = (measured.in_unit(measured.unit()), measured.unit());
        match unit {
            Unit::Kelvin | Unit::Celsius if self == Self::Us && (is_difference || unit == Unit::Kelvin) => {
                (written * 1.8, Unit::Fahrenheit)
            }
            Unit::Fahrenheit if self == Self::Metric && is_difference => (written / 1.8, Unit::Kelvin),
            Unit::Celsius if self == Self::Us => (measured.in_unit(Unit::Fahrenheit), Unit::Fahrenheit),
            Unit::Fahrenheit if self == Self::Metric => (measured.value(), Unit::Celsius),
            Unit::PoundPerSquareInch if self == Self::Metric => {
                (measured.in_unit(Unit::Kilopascal), Unit::Kilopascal)
            }
            other if self == Self::Us && other.measures(Dimension::Pressure) => {
                (measured.in_unit(Unit::PoundPerSquareInch), Unit::PoundPerSquareInch)
            }
            _ => (written, unit),
        }
    }

    /// The unit of water in air, for each mass of dry air, and the end of its column's key.
    #[must_use]
    pub fn humidity(self) -> (&'static str, &'static str) {
        if self == Self::Us { ("gr/lb", "gr_per_lb") } else { ("g/kg", "g_per_kg") }
    }

    /// Water in air in that unit, from kilograms for each kilogram: a pound has 7000 grains,
    /// by definition.
    #[must_use]
    pub fn of_humidity_ratio(self, ratio: f64) -> f64 {
        ratio * if self == Self::Us { 7000.0 } else { 1000.0 }
    }

    /// The unit printed in a box to write in, from the metric one.
    #[must_use]
    pub fn in_box(self, metric: &'static str) -> &'static str {
        let of = |(known, us): &(&str, &'static str)| (*known == metric).then_some(*us);
        if self == Self::Us { IN_BOXES.iter().find_map(of).unwrap_or(metric) } else { metric }
    }

    /// The steps that a strip table may choose from, where nobody chose: degrees of its scale.
    #[must_use]
    pub fn strip_steps(self) -> [Step; 5] {
        let steps = if self == Self::Us { [2.0, 5.0, 10.0, 20.0, 40.0] } else { [1.0, 2.0, 5.0, 10.0, 20.0] };
        steps.map(|degrees| self.step_of(degrees))
    }
}

/// The end of a column's key for a scale.
#[must_use]
pub fn key_of(scale: Unit) -> &'static str {
    if scale == Unit::Fahrenheit { "f" } else { "c" }
}

/// The nearest of 1, 2, 5 × 10ⁿ, in proportion.
fn nearest_natural(wanted: f64) -> f64 {
    if !(wanted.is_finite() && wanted > 0.0) {
        return wanted;
    }
    let power = libm::floor(libm::log10(wanted));
    let tens = [power - 1.0, power, power + 1.0].map(|power| libm::pow(10.0, power));
    let off = |step: &f64| libm::log(step / wanted).abs();
    let all = tens.into_iter().flat_map(|ten| NATURAL.map(|step| step * ten));
    all.min_by(|one, other| off(one).total_cmp(&off(other))).unwrap_or(wanted)
}
