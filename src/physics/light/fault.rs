//! What a faulty light sensor reads.

use super::{LightError, LightSensor, LightTopology};
use crate::quantity::{Current, Interval, Irradiance, Resistance, Toleranced, Voltage};

/// One fault of a light sensor or its wires.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fault {
    /// The diode, or a wire to it, is open: no current flows.
    Open,
    /// The diode is shorted.
    Shorted,
    /// Something lies over it: it reads as in the dark.
    Covered,
}

impl Fault {
    /// Every fault, in the order of a dictionary.
    pub const ALL: [Self; 3] = [Self::Open, Self::Shorted, Self::Covered];
}

impl LightSensor {
    /// The nominal volts with one fault.
    ///
    /// # Errors
    /// As for [`voltage`](Self::voltage).
    ///
    /// # Source
    /// Ohm's law with the diode's current none, or limited by the resistor alone.
    pub fn fault_voltage(
        &self,
        fault: Fault,
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<Voltage, LightError> {
        let dark = self.voltage(DARKNESS, meter)?;
        Ok(match (fault, self.topology) {
            // The nominal reading in the dark is without the dark current.
            (Fault::Covered | Fault::Open, _) => dark,
            (Fault::Shorted, LightTopology::PullUp) => Voltage::from_volts(0.0),
            (Fault::Shorted, LightTopology::Load) => self.reference.nominal,
        })
    }

    /// The volts with one fault over all corners; `None` as for [`voltage_window`](Self::voltage_window).
    ///
    /// # Errors
    /// As for [`voltage`](Self::voltage).
    pub fn fault_window(
        &self,
        fault: Fault,
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<Option<Interval<Voltage>>, LightError> {
        let zero = Voltage::from_volts(0.0);
        match (fault, self.topology) {
            (Fault::Covered, _) => self.voltage_window(DARKNESS, meter),
            (Fault::Open, _) => {
                Self { dark: Some(Current::from_amperes(0.0)), ..*self }.voltage_window(DARKNESS, meter)
            }
            (Fault::Shorted, LightTopology::PullUp) => Ok(Some(Interval { low: zero, high: zero })),
            (Fault::Shorted, LightTopology::Load) => Ok(self.reference.limits),
        }
    }
}

/// Nothing shines.
pub const DARKNESS: Irradiance = Irradiance::from_watts_per_square_metre(0.0);
