//! A coil that is switched on and off quickly, with a freewheel diode across it.
//!
//! While the switch is on the current rises towards (Vb − Vs)/R, while it is
//! off it falls towards −Vf/R and stops at zero: two exponentials of the time
//! constant L/R, joined so that a period ends where it began.

mod control;
pub mod waveform;

pub use control::{ControlCurve, CurveFault, Direction};

use std::fmt;

use crate::quantity::{Current, Frequency, Inductance, Interval, Ratio, Resistance, Voltage};

/// What feeds the coil.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Supply {
    /// Vb, the battery's voltage at the coil's feed.
    pub battery: Voltage,
    /// Vs, lost in the switch while it is on.
    pub switch_drop: Voltage,
    /// Vf, across the freewheel diode while it carries the current.
    pub diode_drop: Voltage,
}

/// A coil that is switched.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Coil {
    /// R, at the coil's temperature.
    pub resistance: Resistance,
    /// L.
    pub inductance: Inductance,
}

/// Whether the current stops between two pulses.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Conduction {
    /// It flows all the time.
    Continuous,
    /// It falls to zero before the next pulse.
    Discontinuous,
}

/// The coil's current over one settled period.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Running {
    /// The mean current: what a clamp or a slow ammeter shows.
    pub mean: Current,
    /// The least current.
    pub least: Current,
    /// The greatest current.
    pub greatest: Current,
    /// From the least to the greatest current.
    pub ripple: Current,
    /// Whether it stops between pulses.
    pub conduction: Conduction,
    /// What an averaging voltmeter shows across the coil: R times the mean current.
    pub across_coil: Voltage,
}

/// Why a current was not computed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SolenoidError {
    /// Resistance, inductance or frequency is not above zero, or a value is not finite.
    NotPhysical,
    /// The duty is not a part between 0 and 1.
    Duty,
    /// The switch takes the whole battery voltage, or a drop is negative.
    Supply,
    /// No duty gives this mean current.
    OutOfReach,
}

impl fmt::Display for SolenoidError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NotPhysical => "not the data of a switched coil",
            Self::Duty => "a duty is 0 % to 100 %",
            Self::Supply => "the battery does not drive this coil",
            Self::OutOfReach => "no duty gives this mean current",
        })
    }
}

impl std::error::Error for SolenoidError {}

/// The settled current of a switched coil.
///
/// # Symbols
/// D duty, f frequency, R resistance, L inductance, Vb battery, Vs switch drop,
/// Vf diode drop; x = R/(f L), a = e^(−D x), b = e^(−(1 − D) x),
/// I₁ = (Vb − Vs)/R, I₂ = −Vf/R.
///
/// Continuous: greatest = (I₁ (1 − a) + I₂ a (1 − b))/(1 − a b),
/// ripple = (I₁ − I₂)(1 − a)(1 − b)/(1 − a b), mean = (D (Vb − Vs) − (1 − D) Vf)/R.
/// Discontinuous, where that least current would be below zero: greatest =
/// I₁ (1 − a), the current ends after t₀ = (L/R) ln(1 − greatest/I₂), and mean =
/// (D (Vb − Vs) − f t₀ Vf)/R. An inductance takes no mean voltage, so a
/// voltmeter that averages shows R × mean in both.
///
/// # Range
/// Resistance, inductance and drops taken as constant: iron that saturates, and
/// a plunger that moves, change L with the current, and with it the ripple, but
/// in continuous conduction not the mean.
///
/// # Errors
/// As [`SolenoidError`] says.
///
/// # Source
/// The differential equation L di/dt = v − R i, solved; checked against a
/// time-stepping simulation in tests/reference/loads.rs.
///
/// # Example
/// ```
/// use bayleaf::physics::solenoid::{Coil, Supply, running};
/// use bayleaf::quantity::{Frequency, Inductance, Ratio, Resistance, Voltage};
/// let supply = Supply {
///     battery: Voltage::from_volts(13.8),
///     switch_drop: Voltage::from_volts(0.0),
///     diode_drop: Voltage::from_volts(0.7),
/// };
/// let coil =
///     Coil { resistance: Resistance::from_ohms(10.95), inductance: Inductance::from_henries(0.025) };
/// let half = running(&supply, &coil, Frequency::from_hertz(400.0), Ratio::new(0.5))?;
/// assert!((half.mean.amperes() - 0.60).abs() < 0.005);
/// # Ok::<(), bayleaf::physics::solenoid::SolenoidError>(())
/// ```
pub fn running(
    supply: &Supply,
    coil: &Coil,
    frequency: Frequency,
    duty: Ratio,
) -> Result<Running, SolenoidError> {
    let (drive, fall, part) = checked(supply, duty)?;
    let ohms = coil.resistance.ohms();
    // The period in time constants.
    let periods = ohms / (frequency.hertz() * coil.inductance.henries());
    let positive = [ohms, frequency.hertz(), coil.inductance.henries(), periods];
    if !positive.iter().all(|value| value.is_finite() && *value > 0.0) {
        return Err(SolenoidError::NotPhysical);
    }
    let (on, off) = (drive / ohms, -fall / ohms);
    // 1 − e^−x, kept exact where x is small.
    let grown = |time: f64| -libm::expm1(-time);
    let (rise, decay, whole) = (grown(part * periods), grown((1.0 - part) * periods), grown(periods));
    let ripple = (on - off) * rise * decay / whole;
    let greatest = (on * rise + off * (1.0 - rise) * decay) / whole;
    let least = greatest - ripple;
    let all_on = part >= 1.0;
    let found = if least > 0.0 || all_on {
        let mean = part * on + (1.0 - part) * off;
        let (ripple, greatest) = if all_on { (0.0, on) } else { (ripple, greatest) };
        (mean, greatest - ripple, greatest, ripple, Conduction::Continuous)
    } else {
        let greatest = on * rise;
        // With no drop in the diode the current never ends, so `off` is below zero here
        // unless there was no pulse at all.
        let ends = run_out(greatest, off).map_or(0.0, |constants| constants / periods);
        // Never beyond the next pulse: rounding must not make it so.
        let mean = part * on + ends.min(1.0 - part) * off;
        (mean.max(0.0), 0.0, greatest, greatest, Conduction::Discontinuous)
    };
    let (mean, least, greatest, ripple, conduction) = found;
    let across_coil = mean * ohms;
    if ![mean, least, greatest, ripple, across_coil].iter().all(|value| value.is_finite()) {
        return Err(SolenoidError::NotPhysical);
    }
    Ok(Running {
        mean: Current::from_amperes(mean),
        least: Current::from_amperes(least),
        greatest: Current::from_amperes(greatest),
        ripple: Current::from_amperes(ripple),
        conduction,
        across_coil: Voltage::from_volts(across_coil),
    })
}

/// After how many time constants nothing is left of a current that falls from `start`
/// towards `end`; `None` where there is none, or it never ends.
fn run_out(start: f64, end: f64) -> Option<f64> {
    (start > 0.0 && end < 0.0).then(|| libm::log1p(-start / end))
}

/// The mean current of a coil whose inductance is not known: I = (D (Vb − Vs) − (1 − D) Vf)/R.
///
/// # Range
/// Only where the current never stops between two pulses; where it does, the
/// real mean is higher. Below D = Vf/(Vb − Vs + Vf) the current does stop, at any
/// inductance, and the formula is refused; at D = 0 there is no current.
///
/// # Errors
/// As [`SolenoidError`] says; [`SolenoidError::OutOfReach`] where the formula
/// would give less than nothing.
///
/// # Source
/// The mean of L di/dt over a settled period is zero.
pub fn continuous_mean(
    supply: &Supply,
    resistance: Resistance,
    duty: Ratio,
) -> Result<Current, SolenoidError> {
    let (drive, fall, part) = checked(supply, duty)?;
    let mean = (part * drive - (1.0 - part) * fall) / resistance.ohms();
    if !(resistance.ohms() > 0.0 && mean.is_finite()) {
        return Err(SolenoidError::NotPhysical);
    }
    match mean {
        _ if part <= 0.0 => Ok(Current::from_amperes(0.0)),
        mean if mean < 0.0 => Err(SolenoidError::OutOfReach),
        mean => Ok(Current::from_amperes(mean)),
    }
}

/// The duty that makes a mean current, the inverse of [`running`].
///
/// # Errors
/// [`SolenoidError::OutOfReach`] beyond the current of a duty of 100 %; otherwise
/// as [`running`].
///
/// # Source
/// Bisection: the mean rises with the duty.
pub fn duty_for(
    supply: &Supply,
    coil: &Coil,
    frequency: Frequency,
    mean: Current,
) -> Result<Ratio, SolenoidError> {
    let reached = |duty: f64| running(supply, coil, frequency, Ratio::new(duty)).map(|run| run.mean);
    if !(reached(0.0)? <= mean && mean <= reached(1.0)?) {
        return Err(SolenoidError::OutOfReach);
    }
    let (mut low, mut high) = (0.0, 1.0);
    // Each step gains a bit; 60 of them reach the last one of a duty.
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if reached(middle)? < mean {
            low = middle;
        } else {
            high = middle;
        }
    }
    Ok(Ratio::new(0.5 * (low + high)))
}

/// The greatest current there can be: I = Vb/R, with the switch always on.
///
/// With a hot coil and a low battery it says what "does not reach its current" is worth.
///
/// # Errors
/// When the resistance is not above zero, or the battery is below zero or not finite.
///
/// # Source
/// Ohm's law. 12 V over 12.98 Ω is 0.92 A.
pub fn ceiling(battery: Voltage, resistance: Resistance) -> Result<Current, SolenoidError> {
    let amperes = battery.volts() / resistance.ohms();
    let valid = amperes.is_finite() && amperes >= 0.0 && resistance.ohms() > 0.0;
    if valid { Ok(Current::from_amperes(amperes)) } else { Err(SolenoidError::NotPhysical) }
}

/// Everything that decides a mean current, each between its ends.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spread {
    /// The battery.
    pub battery: Interval<Voltage>,
    /// The switch drop.
    pub switch_drop: Interval<Voltage>,
    /// The diode drop.
    pub diode_drop: Interval<Voltage>,
    /// The resistance, over tolerance and temperature.
    pub resistance: Interval<Resistance>,
    /// The duty.
    pub duty: Interval<Ratio>,
}

/// The least and the greatest mean current over all corners of a spread.
///
/// The mean rises with battery and duty and falls with resistance and both
/// drops, so its extremes lie at corners; every corner is computed. Where the
/// timing is given (inductance and frequency, taken as exact), discontinuous
/// conduction is respected; without it [`continuous_mean`] is used, with its range.
///
/// # Errors
/// As [`running`], for any corner.
///
/// # Source
/// Monotony: the coil's equation L di/dt = v − R i with i ≥ 0 compared for two
/// values of each argument; tests/properties/loads.rs.
pub fn mean_window(
    spread: &Spread,
    timing: Option<(Inductance, Frequency)>,
) -> Result<Interval<Current>, SolenoidError> {
    let mut window: Option<Interval<Current>> = None;
    for corner in 0..32_u32 {
        let high = |bit: u32| corner >> bit & 1 == 1;
        let supply = Supply {
            battery: end(spread.battery, high(0)),
            switch_drop: end(spread.switch_drop, high(1)),
            diode_drop: end(spread.diode_drop, high(2)),
        };
        let resistance = end(spread.resistance, high(3));
        let duty = end(spread.duty, high(4));
        let mean = match timing {
            Some((inductance, frequency)) => {
                running(&supply, &Coil { resistance, inductance }, frequency, duty)?.mean
            }
            None => continuous_mean(&supply, resistance, duty)?,
        };
        window = Some(window.map_or(Interval { low: mean, high: mean }, |window| Interval {
            low: if mean < window.low { mean } else { window.low },
            high: if mean > window.high { mean } else { window.high },
        }));
    }
    window.ok_or(SolenoidError::NotPhysical)
}

fn end<T>(interval: Interval<T>, high: bool) -> T {
    if high { interval.high } else { interval.low }
}

/// Volts that drive the current while the switch is on, volts that brake it while it is off, the duty.
fn checked(supply: &Supply, duty: Ratio) -> Result<(f64, f64, f64), SolenoidError> {
    let (battery, switch) = (supply.battery.volts(), supply.switch_drop.volts());
    let (drive, fall) = (battery - switch, supply.diode_drop.volts());
    if !(drive.is_finite() && fall.is_finite()) {
        return Err(SolenoidError::NotPhysical);
    }
    if !(drive > 0.0 && switch >= 0.0 && fall >= 0.0) {
        return Err(SolenoidError::Supply);
    }
    if (0.0..=1.0).contains(&duty.part()) { Ok((drive, fall, duty.part())) } else { Err(SolenoidError::Duty) }
}
