//! Faults of a sensor, its wires and its circuit: what each reads, which can be
//! told apart, and which explain a reading.
//!
//! `subject` is what is looked at, `setup` reads it, `separate` compares, `explain` goes back from one reading,
//! `pair` from two.

mod explain;
mod pair;
mod separate;
mod setup;
mod subject;

pub use explain::{Cause, explain, looks_like};
pub use pair::{Pair, PairError, REASONABLE_SHIFT, Reading, Second, third_temperature, two_faults};
pub use separate::{Condition, Separation, apart, best_condition, separable, widened};
pub use setup::{Setup, Signature};
pub use subject::{Instruments, Other, Subject, Test};

use crate::quantity::{Ratio, Resistance, Voltage};

/// What is wrong, and how much of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Fault {
    /// The sensor, or its plug, is open.
    Open,
    /// A wire between control unit and sensor is open.
    OpenWire,
    /// The sensor is shorted, or both its wires touch.
    ShortToReturn,
    /// The signal wire touches the body.
    ShortToGround,
    /// The signal wire touches a reference wire.
    ShortToReference,
    /// The signal wire touches a wire with battery voltage.
    ShortToBattery,
    /// Resistance in the wires that does not belong there: a bad contact.
    Series(Resistance),
    /// A path between the sensor's two wires, such as moisture in a plug.
    Leak(Resistance),
    /// A path from signal to a wire with battery voltage.
    LeakToBattery(Resistance),
    /// The sensor's return lies above the unit's ground.
    LiftedReturn(Voltage),
    /// The sensor's resistance is off by this part at every temperature.
    ShiftedResistance(Ratio),
    /// The sensor's B value, or the slope of its curve, is off by this part.
    ShiftedSlope(Ratio),
    /// Another sensor of the set is fitted, or plugged in: its number in the subject's list.
    OtherPart(usize),
    /// The control unit's resistor is off by this part.
    WrongResistor(Ratio),
    /// Ohms were taken with the control unit still plugged in.
    UnitStillMated,
}

/// A fault without its size.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kind {
    /// See [`Fault::Series`].
    Series,
    /// See [`Fault::Leak`].
    Leak,
    /// See [`Fault::LeakToBattery`].
    LeakToBattery,
    /// See [`Fault::LiftedReturn`].
    LiftedReturn,
    /// See [`Fault::ShiftedResistance`].
    ShiftedResistance,
    /// See [`Fault::ShiftedSlope`].
    ShiftedSlope,
    /// See [`Fault::WrongResistor`].
    WrongResistor,
}

impl Kind {
    /// Every fault that has a size.
    pub const ALL: [Self; 7] = [
        Self::Series,
        Self::Leak,
        Self::LeakToBattery,
        Self::LiftedReturn,
        Self::ShiftedResistance,
        Self::ShiftedSlope,
        Self::WrongResistor,
    ];

    /// This fault at a size in its SI unit: ohms, volts, or a part of one.
    #[must_use]
    pub fn of_size(self, size: f64) -> Fault {
        match self {
            Self::Series => Fault::Series(Resistance::from_ohms(size)),
            Self::Leak => Fault::Leak(Resistance::from_ohms(size)),
            Self::LeakToBattery => Fault::LeakToBattery(Resistance::from_ohms(size)),
            Self::LiftedReturn => Fault::LiftedReturn(Voltage::from_volts(size)),
            Self::ShiftedResistance => Fault::ShiftedResistance(Ratio::new(size)),
            Self::ShiftedSlope => Fault::ShiftedSlope(Ratio::new(size)),
            Self::WrongResistor => Fault::WrongResistor(Ratio::new(size)),
        }
    }

    /// The sizes between which a cause is looked for, in the SI unit.
    ///
    /// # Source
    /// Common practice, no source: wider than what is found in vehicles, where
    /// contacts rise to some kilohms, moisture falls to some kilohms, grounds lift
    /// by tenths of a volt, and an aged sensor is off by some tens of percent.
    #[must_use]
    pub fn sizes(self) -> (f64, f64) {
        match self {
            Self::Series => (0.0, 10e6),
            Self::Leak | Self::LeakToBattery => (0.1, 100e6),
            Self::LiftedReturn => (0.0, 2.0),
            Self::ShiftedResistance | Self::WrongResistor => (-0.9, 9.0),
            Self::ShiftedSlope => (-0.3, 0.3),
        }
    }

    /// The size at which there is no fault: an end of [`sizes`](Self::sizes), or 0.
    #[must_use]
    pub fn harmless(self) -> f64 {
        match self {
            Self::Leak | Self::LeakToBattery => self.sizes().1,
            _ => 0.0,
        }
    }
}

impl Fault {
    /// The fault without its size, where it has one.
    #[must_use]
    pub fn kind(&self) -> Option<Kind> {
        match self {
            Self::Series(_) => Some(Kind::Series),
            Self::Leak(_) => Some(Kind::Leak),
            Self::LeakToBattery(_) => Some(Kind::LeakToBattery),
            Self::LiftedReturn(_) => Some(Kind::LiftedReturn),
            Self::ShiftedResistance(_) => Some(Kind::ShiftedResistance),
            Self::ShiftedSlope(_) => Some(Kind::ShiftedSlope),
            Self::WrongResistor(_) => Some(Kind::WrongResistor),
            _ => None,
        }
    }

    /// The rows of a fault dictionary, for a subject with this many other parts.
    ///
    /// # Source
    /// Common practice, no source: sizes that a workshop meets.
    #[must_use]
    pub fn dictionary(others: usize) -> Vec<Self> {
        let ohms = |of: fn(Resistance) -> Self, sizes: &[f64]| -> Vec<Self> {
            sizes.iter().map(|&size| of(Resistance::from_ohms(size))).collect()
        };
        let parts = |of: fn(Ratio) -> Self, size: f64| [of(Ratio::new(-size)), of(Ratio::new(size))];
        let lifts = [0.02, 0.05, 0.1, 0.2].map(|volts| Self::LiftedReturn(Voltage::from_volts(volts)));
        let shorts = [Self::ShortToReturn, Self::ShortToGround, Self::ShortToReference, Self::ShortToBattery];
        [Self::Open, Self::OpenWire]
            .into_iter()
            .chain(shorts)
            .chain(ohms(Self::Series, &[10.0, 100.0, 500.0, 1000.0]))
            .chain(ohms(Self::Leak, &[10e3, 22e3, 47e3, 100e3, 1e6]))
            .chain(ohms(Self::LeakToBattery, &[100e3]))
            .chain(lifts)
            .chain(parts(Self::ShiftedResistance, 0.1))
            .chain(parts(Self::ShiftedSlope, 0.05))
            .chain((0..others).map(Self::OtherPart))
            .chain(parts(Self::WrongResistor, 0.1))
            .chain([Self::UnitStillMated])
            .collect()
    }
}
