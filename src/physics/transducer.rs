//! Pressure transducers: volts in proportion to reference and pressure.

use std::fmt;

use crate::quantity::{Interval, Pressure, Ratio, Toleranced, Voltage};

/// What a transducer's pressure is measured against.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sense {
    /// Against vacuum.
    Absolute,
    /// Against the air around it.
    Gauge,
}

impl Sense {
    /// An absolute pressure in this sense.
    #[must_use]
    pub fn of_absolute(self, absolute: Pressure, air: Pressure) -> Pressure {
        match self {
            Self::Absolute => absolute,
            Self::Gauge => Pressure::from_pascals(absolute.pascals() - air.pascals()),
        }
    }

    /// A pressure of this sense as absolute pressure.
    #[must_use]
    pub fn to_absolute(self, own: Pressure, air: Pressure) -> Pressure {
        match self {
            Self::Absolute => own,
            Self::Gauge => Pressure::from_pascals(own.pascals() + air.pascals()),
        }
    }

    /// The other one.
    #[must_use]
    pub fn other(self) -> Self {
        match self {
            Self::Absolute => Self::Gauge,
            Self::Gauge => Self::Absolute,
        }
    }
}

/// One end of a transducer's line.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    /// The pressure, in the transducer's sense.
    pub pressure: Pressure,
    /// The output's part of the reference there.
    pub ratio: Ratio,
}

/// A ratiometric transducer: V = Vref (a + b p).
///
/// An output of 10 % to 90 % of the reference is common (common practice, no
/// source); the two points come from the part's own document.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Transducer {
    sense: Sense,
    low: Point,
    high: Point,
    accuracy: Option<Ratio>,
    clamp: Option<Interval<Ratio>>,
}

/// Why there is no transducer, or no reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TransducerError {
    /// The pressure of `high` is not above that of `low`, or its ratio not another.
    Ends,
    /// A ratio outside 0 to 1, an accuracy below zero, or a value that is no number.
    NotPhysical,
    /// The pressure, or the reading, lies outside the line and no clamp was given.
    OutsideRange,
    /// The reading lies at the clamp: the pressure is this or beyond.
    Clamped,
}

impl fmt::Display for TransducerError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Ends => "the two points make no rising line",
            Self::NotPhysical => "not the data of a transducer",
            Self::OutsideRange => "outside the transducer's range",
            Self::Clamped => "at the end of the transducer's output",
        })
    }
}

impl std::error::Error for TransducerError {}

impl Transducer {
    /// From two points of its line.
    ///
    /// `accuracy` is a part of the span, in either direction; `clamp` are the
    /// ratios beyond which the output does not go.
    ///
    /// # Errors
    /// [`TransducerError::Ends`], [`TransducerError::NotPhysical`].
    pub fn new(
        sense: Sense,
        low: Point,
        high: Point,
        accuracy: Option<Ratio>,
        clamp: Option<Interval<Ratio>>,
    ) -> Result<Self, TransducerError> {
        let pressures = [low.pressure.pascals(), high.pressure.pascals()];
        let ends = clamp.map(|clamp| [clamp.low, clamp.high]);
        let ratios = [low.ratio, high.ratio].into_iter().chain(ends.into_iter().flatten());
        let physical = pressures.iter().all(|p| p.abs() <= MOST_PASCALS)
            && ratios.map(Ratio::part).all(|ratio| (0.0..=1.0).contains(&ratio))
            && accuracy.is_none_or(|part| (0.0..=1.0).contains(&part.part()))
            && clamp.is_none_or(|clamp| clamp.low < clamp.high);
        if !physical {
            return Err(TransducerError::NotPhysical);
        }
        let rises = high.pressure.pascals() - low.pressure.pascals() >= LEAST_SPAN
            && high.ratio.part() - low.ratio.part() >= LEAST_RATIO;
        if rises { Ok(Self { sense, low, high, accuracy, clamp }) } else { Err(TransducerError::Ends) }
    }

    /// What its pressure is measured against.
    #[must_use]
    pub fn sense(&self) -> Sense {
        self.sense
    }

    /// The pressures of its line, in its sense.
    #[must_use]
    pub fn range(&self) -> Interval<Pressure> {
        Interval { low: self.low.pressure, high: self.high.pressure }
    }

    /// The nominal output at a pressure in its own sense, a part of the reference.
    ///
    /// # Errors
    /// [`TransducerError::OutsideRange`] beyond the two points where no clamp was given.
    ///
    /// # Source
    /// The straight line through two points (arithmetic).
    pub fn ratio(&self, own: Pressure) -> Result<Ratio, TransducerError> {
        self.clamped(self.line(own)?)
    }

    /// The outputs of good parts at a pressure; `None` where no accuracy was given.
    ///
    /// The reference's tolerance is not in it: it drops out of a ratio.
    ///
    /// # Errors
    /// As for [`ratio`](Self::ratio).
    pub fn ratio_window(&self, own: Pressure) -> Result<Option<Interval<Ratio>>, TransducerError> {
        let line = self.line(own)?;
        self.clamped(line)?;
        let Some(accuracy) = self.accuracy else { return Ok(None) };
        let off = accuracy.part() * self.span();
        let within = |ratio: f64| {
            let ends = self.clamp.map_or((0.0, 1.0), |clamp| (clamp.low.part(), clamp.high.part()));
            Ratio::new(ratio.clamp(ends.0, ends.1))
        };
        Ok(Some(Interval { low: within(line - off), high: within(line + off) }))
    }

    /// The nominal output in volts.
    ///
    /// # Errors
    /// As for [`ratio`](Self::ratio).
    pub fn voltage(&self, own: Pressure, reference: Toleranced<Voltage>) -> Result<Voltage, TransducerError> {
        Ok(Voltage::from_volts(reference.nominal.volts() * self.ratio(own)?.part()))
    }

    /// The outputs of good parts on a good reference; `None` where a tolerance was not given.
    ///
    /// # Errors
    /// As for [`ratio`](Self::ratio).
    pub fn voltage_window(
        &self,
        own: Pressure,
        reference: Toleranced<Voltage>,
    ) -> Result<Option<Interval<Voltage>>, TransducerError> {
        let ratio = self.ratio_window(own)?;
        Ok(ratio.zip(reference.limits).map(|(ratio, reference)| Interval {
            low: Voltage::from_volts(reference.low.volts() * ratio.low.part()),
            high: Voltage::from_volts(reference.high.volts() * ratio.high.part()),
        }))
    }

    /// The pressure behind an output, in its own sense.
    ///
    /// # Errors
    /// [`TransducerError::Clamped`] at or beyond a clamp, [`TransducerError::OutsideRange`]
    /// beyond the line where no clamp was given.
    pub fn pressure(&self, reading: Ratio) -> Result<Pressure, TransducerError> {
        let ratio = reading.part();
        match self.clamp {
            Some(clamp) if ratio <= clamp.low.part() || ratio >= clamp.high.part() => {
                return Err(TransducerError::Clamped);
            }
            None if !self.on_line(ratio) => return Err(TransducerError::OutsideRange),
            _ if !ratio.is_finite() => return Err(TransducerError::NotPhysical),
            _ => {}
        }
        Ok(self.believed(reading))
    }

    /// What the line makes of any output: what a control unit without limits believes.
    #[must_use]
    pub fn believed(&self, reading: Ratio) -> Pressure {
        let share = (reading.part() - self.low.ratio.part()) / self.span();
        let (low, high) = (self.low.pressure.pascals(), self.high.pressure.pascals());
        Pressure::from_pascals(low + share * (high - low))
    }

    /// The outputs with one fault, at an absolute pressure.
    ///
    /// # Errors
    /// As for [`ratio`](Self::ratio); [`TransducerError::NotPhysical`] for an offset that is no number.
    pub fn with_fault(
        &self,
        fault: Fault,
        absolute: Pressure,
        air: Pressure,
    ) -> Result<FaultReading, TransducerError> {
        let own = self.sense.of_absolute(absolute, air);
        // A part that is away does not care for the pressure; one that is there does.
        self.line(own)?;
        let ratio = match fault {
            Fault::SignalOpen { idle } => idle,
            Fault::ShortToReturn | Fault::ReferenceLost => Some(Ratio::new(0.0)),
            Fault::ShortToReference | Fault::ReturnLost => Some(Ratio::new(1.0)),
            Fault::Offset(offset) => {
                Some(self.ratio(Pressure::from_pascals(own.pascals() + offset.pascals()))?)
            }
            Fault::OtherSense => Some(self.ratio(self.sense.other().of_absolute(absolute, air))?),
        };
        Ok(FaultReading { ratio, believed: ratio.map(|ratio| self.believed(ratio)) })
    }

    /// Between which limits good parts (`None`), or parts with one fault, give
    /// their output at an absolute pressure.
    ///
    /// `None` where no accuracy was given and the fault leaves the part in the
    /// reading, and where nothing says where an open signal stands. The reference's
    /// tolerance is not in it: it drops out of a ratio.
    ///
    /// # Errors
    /// As for [`with_fault`](Self::with_fault).
    pub fn fault_window(
        &self,
        fault: Option<Fault>,
        absolute: Pressure,
        air: Pressure,
    ) -> Result<Option<Interval<Ratio>>, TransducerError> {
        let own = self.sense.of_absolute(absolute, air);
        let Some(fault) = fault else { return self.ratio_window(own) };
        let nominal = self.with_fault(fault, absolute, air)?.ratio;
        match fault {
            Fault::Offset(offset) => {
                self.ratio_window(Pressure::from_pascals(own.pascals() + offset.pascals()))
            }
            Fault::OtherSense => self.ratio_window(self.sense.other().of_absolute(absolute, air)),
            _ => Ok(nominal.map(|ratio| Interval { low: ratio, high: ratio })),
        }
    }

    fn span(&self) -> f64 {
        self.high.ratio.part() - self.low.ratio.part()
    }

    /// The line's ratio, not clamped.
    fn line(&self, own: Pressure) -> Result<f64, TransducerError> {
        let pascals = own.pascals();
        if pascals.is_nan() || pascals.abs() > MOST_PASCALS {
            return Err(TransducerError::NotPhysical);
        }
        let (low, high) = (self.low.pressure.pascals(), self.high.pressure.pascals());
        let share = (pascals - low) / (high - low);
        Ok(self.low.ratio.part() * (1.0 - share) + self.high.ratio.part() * share)
    }

    fn clamped(&self, ratio: f64) -> Result<Ratio, TransducerError> {
        match self.clamp {
            Some(clamp) => Ok(Ratio::new(ratio.clamp(clamp.low.part(), clamp.high.part()))),
            None if self.on_line(ratio) => Ok(Ratio::new(ratio)),
            None => Err(TransducerError::OutsideRange),
        }
    }

    fn on_line(&self, ratio: f64) -> bool {
        (self.low.ratio.part() - HAIR..=self.high.ratio.part() + HAIR).contains(&ratio)
    }
}

/// One fault of a transducer or its three wires.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Fault {
    /// The signal wire is open: the pin stands where the control unit's own
    /// resistor holds it.
    SignalOpen {
        /// That place, where it is known.
        idle: Option<Ratio>,
    },
    /// The signal wire touches the return.
    ShortToReturn,
    /// The signal wire touches the reference.
    ShortToReference,
    /// The reference wire is open: the output has nothing to rise from and stays
    /// at the return (common practice, no source).
    ReferenceLost,
    /// The return wire is open: the part lifts the output to the reference
    /// (common practice, no source).
    ReturnLost,
    /// It reads this much too much; below zero, too little.
    Offset(Pressure),
    /// A part of the other sense with the same line: absolute for gauge, or the reverse.
    OtherSense,
}

impl Fault {
    /// The rows of a fault dictionary; `idle` is where an open signal stands, where known.
    ///
    /// # Source
    /// Common practice, no source: sizes that a workshop meets.
    #[must_use]
    pub fn dictionary(idle: Option<Ratio>) -> Vec<Self> {
        let offset = |kilopascals: f64| Self::Offset(Pressure::from_pascals(1e3 * kilopascals));
        let wires = [Self::ShortToReturn, Self::ShortToReference, Self::ReferenceLost, Self::ReturnLost];
        std::iter::once(Self::SignalOpen { idle })
            .chain(wires)
            .chain([-300.0, -100.0, -30.0, 30.0, 100.0, 300.0].map(offset))
            .chain([Self::OtherSense])
            .collect()
    }
}

/// What a transducer with a fault gives.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FaultReading {
    /// The output's part of the reference; `None` where nothing says where it stands.
    pub ratio: Option<Ratio>,
    /// The pressure the control unit believes, in the right part's sense.
    pub believed: Option<Pressure>,
}

/// No pressure of a climate system comes near this: 10 GPa.
const MOST_PASCALS: f64 = 1e10;

/// Points nearer than this make no line: 1 Pa and a millionth of the reference.
const LEAST_SPAN: f64 = 1.0;
const LEAST_RATIO: f64 = 1e-6;

/// An end of the line that binary arithmetic missed.
const HAIR: f64 = 1e-9;
