//! Voltage and current of a switched coil through one settled period.

use super::{Coil, Running, SolenoidError, Supply, running};
use crate::quantity::{Current, Duration, Frequency, Ratio, Voltage};

/// One moment of a period.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Moment {
    /// The time since the switch went on.
    pub at: Duration,
    /// The voltage across the coil: Vb − Vs while on, −Vf while the current falls, then none.
    pub across: Voltage,
    /// The coil's current.
    pub current: Current,
}

/// One settled period from switching on to switching on again, in at least so many pieces.
///
/// Where the voltage jumps there are two moments at one time.
///
/// # Symbols
/// As [`running`]; τ = L/R. On: I₁ + (least − I₁) e^(−t/τ). Off: I₂ + (greatest − I₂) e^(−t/τ),
/// until the current is gone.
///
/// # Range
/// As [`running`].
///
/// # Errors
/// As [`running`].
///
/// # Source
/// The two exponentials that [`running`] joins; checked against the same simulation in time.
pub fn period(
    supply: &Supply,
    coil: &Coil,
    frequency: Frequency,
    duty: Ratio,
    pieces: u32,
) -> Result<Vec<Moment>, SolenoidError> {
    let Running { least, greatest, .. } = running(supply, coil, frequency, duty)?;
    let (ohms, henries) = (coil.resistance.ohms(), coil.inductance.henries());
    let (length, tau) = (1.0 / frequency.hertz(), henries / ohms);
    let on_volts = supply.battery.volts() - supply.switch_drop.volts();
    let off_volts = -supply.diode_drop.volts();
    let on_time = duty.part() * length;
    let off_time = length - on_time;
    // Where the current goes in the end of a phase, and how it gets there.
    let toward = |end: f64, from: f64, time: f64| end + (from - end) * libm::exp(-time / tau);
    let (start, peak) = (least.amperes(), greatest.amperes());
    let fallen = |time: f64| toward(off_volts / ohms, peak, time);
    let gone = super::run_out(peak, off_volts / ohms).map_or(off_time, |fall| (tau * fall).min(off_time));
    let mut moments = Vec::new();
    let mut phase = |from: f64, time: f64, volts: f64, current: &dyn Fn(f64) -> f64| {
        if time <= 0.0 {
            return;
        }
        for piece in 0..=pieces.max(1) {
            // The part first: at the last piece it is 1 to the last bit.
            let passed = time * (f64::from(piece) / f64::from(pieces.max(1)));
            moments.push(Moment {
                at: Duration::from_seconds(from + passed),
                across: Voltage::from_volts(volts),
                current: Current::from_amperes(current(passed).max(0.0)),
            });
        }
    };
    phase(0.0, on_time, on_volts, &|time| toward(on_volts / ohms, start, time));
    if peak > 0.0 {
        phase(on_time, gone, off_volts, &fallen);
    }
    let idle = if peak > 0.0 { on_time + gone } else { on_time };
    // Less than a billionth of the period is rounding, not a pause.
    if length - idle > 1e-9 * length {
        phase(idle, length - idle, 0.0, &|_| 0.0);
    }
    Ok(moments)
}
