//! Values with units: what a number means, how people write it, how it is printed.
//!
//! This room knows no sensor and no file. SI inside (kelvin, ohm, volt); other
//! units exist only while text is read or printed.
//!
//! Invariant: a temperature and a temperature difference are two types, so a
//! tolerance of ± 2 °C can only become ± 3.6 °F, never 35.6 °F.

mod accuracy;
mod figure;
mod measured;
mod misprint;
mod notation;
mod phrase;
mod phrasing;
mod read;
mod scalar;
mod set_points;
mod size;
mod step;
mod temperature;
mod trace;
mod unit;
mod units;
mod wire;

pub use accuracy::{Accuracy, MOST_RANGES, MeterRange, MeterRanges};
pub use figure::{Rounding, decimals_for, figure, ten_to};
pub use measured::{Measured, measured, window};
pub use misprint::{Slip, half_last_digit, slip};
pub use notation::{Notation, decimal_mark, marked, noted, range_word, reprinted};
pub use phrasing::Phrasing;
pub use read::{
    Interval, Misread, Quantity, Reason, Toleranced, accuracy, deviation, interval, number, ratio, scalar,
    toleranced,
};
pub use scalar::{
    Beta, Current, Dissipation, Duration, Frequency, Inductance, Irradiance, Length, Power, Pressure, Ratio,
    Resistance, Scalar, SpecificEnthalpy, Voltage,
};
pub use set_points::{SetPoints, set_points};
pub use size::{Format, Size};
pub use step::{Step, degrees};
pub use temperature::{Temperature, TemperatureDifference};
pub use trace::{Traced, traced};
pub use unit::{Dimension, Unit};
pub use units::{Units, key_of};
pub use wire::{WireSize, wire_size};
