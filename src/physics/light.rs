//! Light sensors: a photocurrent through a resistor or into a pull-up.

mod diode;
pub mod fault;

pub use diode::{SingleDiode, slope_voltage};

use std::fmt;

use crate::quantity::{Current, Interval, Irradiance, Length, Resistance, Toleranced, Voltage};

/// How the photocurrent becomes volts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LightTopology {
    /// Resistor from reference to signal, diode from signal to return: lighter is fewer volts.
    PullUp,
    /// Diode from reference to signal, resistor from signal to ground: lighter is more volts.
    Load,
}

/// A reverse-biased photodiode and the input that reads it.
///
/// The photocurrent is proportional to the irradiance. Silicon responds from
/// about 400 nm to 1100 nm; lamps with light-emitting diodes and fluorescent
/// tubes have little of the near infra-red, so no response under shop lights is
/// normal (common practice, no source).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LightSensor {
    /// The photocurrent at `at`.
    pub current: Toleranced<Current>,
    /// The irradiance that `current` holds at.
    pub at: Irradiance,
    /// The greatest current of a good part in the dark; the least is zero, and
    /// the nominal reading is without it.
    pub dark: Option<Current>,
    /// Which way the volts go.
    pub topology: LightTopology,
    /// The pull-up or the load resistor.
    pub resistor: Toleranced<Resistance>,
    /// The reference voltage.
    pub reference: Toleranced<Voltage>,
}

/// Why there is no reading, or no irradiance behind one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LightError {
    /// A value below zero, or no number.
    NotPhysical,
    /// The reading lies at the rail: the irradiance is this or more.
    Saturated,
    /// The reading lies beyond what darkness gives.
    BeyondDark,
    /// The lamp is too near for the square law.
    TooClose,
}

impl fmt::Display for LightError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NotPhysical => "not the data of a light sensor",
            Self::Saturated => "at the rail: more light changes nothing",
            Self::BeyondDark => "beyond what darkness gives",
            Self::TooClose => "too near to the lamp for the square law",
        })
    }
}

impl std::error::Error for LightError {}

/// Exact values of one corner.
#[derive(Debug, Clone, Copy)]
struct Values {
    current: f64,
    dark: f64,
    resistor: f64,
    reference: f64,
    /// Conductance to ground.
    meter: f64,
}

impl LightSensor {
    /// The volts at an irradiance, all values nominal, clamped at the rails.
    ///
    /// Pull-up: V = (Vref − I R)/(1 + R/Rm), not below 0 V. Load: V = I R/(1 + R/Rm),
    /// not above Vref. The real pin goes a diode's drop beyond; the limit here is
    /// where the reading stops to say anything.
    ///
    /// # Errors
    /// [`LightError::NotPhysical`] for an irradiance or a part that does not exist.
    ///
    /// # Source
    /// tests/reference/07b_photoconductive_pullup.csv; Ohm's law for the load.
    pub fn voltage(
        &self,
        irradiance: Irradiance,
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<Voltage, LightError> {
        let values = self.nominal(meter)?;
        Ok(Voltage::from_volts(self.volts(values, self.share(irradiance)?)))
    }

    /// The volts over all corners; `None` where a part has no tolerance or no dark current.
    ///
    /// Monotone in each value while the others stand still, so every corner is
    /// computed and the ends are exact.
    ///
    /// # Errors
    /// As for [`voltage`](Self::voltage).
    pub fn voltage_window(
        &self,
        irradiance: Irradiance,
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<Option<Interval<Voltage>>, LightError> {
        let share = self.share(irradiance)?;
        self.nominal(meter)?;
        let Some(corners) = self.corners(meter) else { return Ok(None) };
        let readings = corners.iter().map(|corner| self.volts(*corner, share));
        let (low, high) =
            readings.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), v| (low.min(v), high.max(v)));
        Ok(Some(Interval { low: Voltage::from_volts(low), high: Voltage::from_volts(high) }))
    }

    /// The irradiance from which on the nominal reading lies at the rail.
    ///
    /// # Errors
    /// As for [`voltage`](Self::voltage).
    pub fn saturation(&self) -> Result<Irradiance, LightError> {
        Ok(self.irradiance_of(full_scale(self.nominal(None)?)))
    }

    /// The irradiance from which on some good sensor in a good circuit lies at the rail.
    ///
    /// `None` where a part has no tolerance or no dark current.
    ///
    /// # Errors
    /// As for [`voltage`](Self::voltage).
    pub fn earliest_saturation(&self) -> Result<Option<Irradiance>, LightError> {
        self.nominal(None)?;
        let Some(corners) = self.corners(None) else { return Ok(None) };
        let least = corners.iter().map(|corner| full_scale(*corner)).fold(f64::INFINITY, f64::min);
        Ok(Some(self.irradiance_of(least.max(0.0))))
    }

    /// The irradiance behind a nominal reading.
    ///
    /// # Errors
    /// [`LightError::Saturated`] at the rail, [`LightError::BeyondDark`] on its other side.
    pub fn irradiance(
        &self,
        reading: Voltage,
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<Irradiance, LightError> {
        let values = self.nominal(meter)?;
        let unloaded = reading.volts() * (1.0 + values.resistor * values.meter);
        let drop = match self.topology {
            LightTopology::PullUp => values.reference - unloaded,
            LightTopology::Load => unloaded,
        };
        let at_rail = match self.topology {
            LightTopology::PullUp => reading.volts() <= 0.0,
            LightTopology::Load => reading.volts() >= values.reference,
        };
        if at_rail {
            return Err(LightError::Saturated);
        }
        if drop < -HAIR * values.reference {
            return Err(LightError::BeyondDark);
        }
        if !drop.is_finite() {
            return Err(LightError::NotPhysical);
        }
        Ok(self.irradiance_of(drop.max(0.0) / values.resistor / values.current))
    }

    /// The photocurrent's part of the rated one.
    fn share(&self, irradiance: Irradiance) -> Result<f64, LightError> {
        let share = irradiance.watts_per_square_metre() / self.at.watts_per_square_metre();
        if (0.0..=MOST).contains(&share) { Ok(share) } else { Err(LightError::NotPhysical) }
    }

    fn irradiance_of(&self, share: f64) -> Irradiance {
        Irradiance::from_watts_per_square_metre(share * self.at.watts_per_square_metre())
    }

    fn volts(&self, values: Values, share: f64) -> f64 {
        let drop = (values.current * share + values.dark) * values.resistor;
        let loading = 1.0 + values.resistor * values.meter;
        match self.topology {
            LightTopology::PullUp => ((values.reference - drop) / loading).max(0.0),
            LightTopology::Load => (drop / loading).min(values.reference),
        }
    }

    fn nominal(&self, meter: Option<Toleranced<Resistance>>) -> Result<Values, LightError> {
        let values = Values {
            current: self.current.nominal.amperes(),
            dark: 0.0,
            resistor: self.resistor.nominal.ohms(),
            reference: self.reference.nominal.volts(),
            meter: meter.map_or(0.0, |meter| 1.0 / meter.nominal.ohms()),
        };
        let dark = self.dark.map_or(0.0, Current::amperes);
        let above = [values.current, values.resistor, values.reference, self.at.watts_per_square_metre()];
        let physical = above.iter().all(|value| (LEAST..=MOST).contains(value))
            && (0.0..=MOST).contains(&values.meter)
            && (0.0..=MOST).contains(&dark);
        if physical { Ok(values) } else { Err(LightError::NotPhysical) }
    }

    fn corners(&self, meter: Option<Toleranced<Resistance>>) -> Option<Vec<Values>> {
        let current = self.current.limits?;
        let resistor = self.resistor.limits?;
        let reference = self.reference.limits?;
        let dark = self.dark?.amperes();
        let meters = match meter {
            None => [0.0, 0.0],
            Some(meter) => [1.0 / meter.limits?.low.ohms(), 1.0 / meter.limits?.high.ohms()],
        };
        let end = |bit: u32, low: f64, high: f64| if bit == 0 { low } else { high };
        let corner = |bits: u32| Values {
            current: end(bits & 1, current.low.amperes(), current.high.amperes()),
            dark: end(bits & 2, 0.0, dark),
            resistor: end(bits & 4, resistor.low.ohms(), resistor.high.ohms()),
            reference: end(bits & 8, reference.low.volts(), reference.high.volts()),
            meter: end(bits & 16, meters[0], meters[1]),
        };
        Some((0..32).map(corner).collect())
    }
}

/// Between these a value is one that somebody can measure.
const LEAST: f64 = 1e-12;
const MOST: f64 = 1e12;

/// A whole reference that binary arithmetic made a hair too much.
const HAIR: f64 = 1e-9;

/// The photocurrent's part of the rated one that fills the range from rail to rail.
fn full_scale(values: Values) -> f64 {
    (values.reference / values.resistor - values.dark) / values.current
}

/// How many times the lamp's largest dimension it has to be away.
const FIVE_TIMES: f64 = 5.0;

/// The irradiance of a lamp at another distance: E₂ = E₁ (d₁/d₂)².
///
/// # Range
/// Refused where a distance is less than five times the lamp's largest
/// dimension: from there on an even round lamp is within 1 % of the square law,
/// E ∝ 1/(d² + r²) with r ≤ d/10.
///
/// # Errors
/// [`LightError::TooClose`], [`LightError::NotPhysical`].
///
/// # Source
/// The five-times rule of photometry (from memory); the bound by arithmetic.
pub fn lamp(
    known: Irradiance,
    known_at: Length,
    at: Length,
    lamp_size: Length,
) -> Result<Irradiance, LightError> {
    let lengths = [known_at.metres(), at.metres(), lamp_size.metres()];
    let irradiance = known.watts_per_square_metre();
    if !lengths.iter().all(|length| (1e-6..=1e6).contains(length)) || !(0.0..=MOST).contains(&irradiance) {
        return Err(LightError::NotPhysical);
    }
    if known_at.metres().min(at.metres()) < FIVE_TIMES * lamp_size.metres() {
        return Err(LightError::TooClose);
    }
    let ratio = known_at.metres() / at.metres();
    Ok(Irradiance::from_watts_per_square_metre(irradiance * ratio * ratio))
}
