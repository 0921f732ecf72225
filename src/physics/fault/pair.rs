//! Two readings at two temperatures: how much is a shifted sensor, how much a
//! second fault, and which third temperature would tell which.

use super::Kind;
use crate::physics::curve::Curve;
use crate::quantity::{Interval, Ratio, Resistance, Temperature};

/// How far a sensor may have shifted before the answer is no longer one.
///
/// # Source
/// Common practice, no source: aged and damp thermistors are off by some percent,
/// seldom by more than twenty; beyond that it is another sensor or another fault.
pub const REASONABLE_SHIFT: Interval<Ratio> = Interval { low: Ratio::new(-0.3), high: Ratio::new(0.3) };

/// A reading, as the resistance it makes the sensor look like.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// The sensor's temperature.
    pub at: Temperature,
    /// What the sensor looks like, line and sensor together.
    pub resistance: Resistance,
    /// How far that can be trusted, to either side.
    pub doubt: Resistance,
}

/// The fault that is added to a shifted sensor.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Second {
    /// Resistance in the line.
    Series,
    /// A path across the sensor.
    Leak,
}

/// A shift and a second fault that give both readings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pair {
    /// Which second fault.
    pub second: Second,
    /// How far the sensor is off, at the readings as they are.
    pub shift: Ratio,
    /// The same over the doubt in both readings and in the curve's slope.
    pub shifts: Interval<Ratio>,
    /// The size of the second fault; below zero where only an impossible one fits,
    /// infinite for a leak that is none.
    pub size: Resistance,
    /// The same over all doubt; without an upper end (infinite) for a leak that may be none.
    pub sizes: Interval<Resistance>,
    /// Whether some of it is inside reason: see [`REASONABLE_SHIFT`], and a second
    /// fault that exists.
    pub reasonable: bool,
}

/// Why two readings say nothing together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PairError {
    /// A temperature lies outside the curve, or a resistance is not above zero.
    Outside,
    /// The temperatures are too near: the doubt is larger than the difference.
    TooNear,
}

/// Solves two readings for (shift, series) and for (shift, leak).
///
/// With r₁, r₂ the good sensor's resistances and R₁, R₂ those read:
/// R = (1 + x) r + s gives 1 + x = (R₁ − R₂)/(r₁ − r₂); 1/R = k/r + g with
/// k = 1/(1 + x) gives k = (1/R₁ − 1/R₂)/(1/r₁ − 1/r₂). `tilt` is the tolerance of
/// the curve's slope (B value), which turns r₁ against r₂.
///
/// # Errors
/// See [`PairError`].
///
/// # Source
/// Ohm's law; both equations are linear in their two unknowns, so their extremes
/// over the doubt lie at its corners.
pub fn two_faults(
    curve: &Curve,
    (rated, tilt): (Temperature, Ratio),
    first: Reading,
    second: Reading,
) -> Result<[Pair; 2], PairError> {
    let good = |at| curve.resistance(at).map(Resistance::ohms).map_err(|_| PairError::Outside);
    let (one, two, zero) = (good(first.at)?, good(second.at)?, good(rated)?);
    let readings = [first, second];
    if readings.iter().any(|reading| reading.resistance.ohms() <= reading.doubt.ohms()) {
        return Err(PairError::Outside);
    }
    let apart = (first.resistance.ohms() - second.resistance.ohms()).abs();
    if apart <= first.doubt.ohms() + second.doubt.ohms() || (one - two).abs() <= 0.0 {
        return Err(PairError::TooNear);
    }
    let tilted = |ohms: f64, tilt: f64| ohms * libm::exp(tilt * libm::log(ohms / zero));
    let solved = |second_fault: Second, [tilt, left, right]: [f64; 3]| {
        let r = [tilted(one, tilt), tilted(two, tilt)];
        let read = [
            first.resistance.ohms() + left * first.doubt.ohms(),
            second.resistance.ohms() + right * second.doubt.ohms(),
        ];
        solve(second_fault, r, read)
    };
    let pair = |second_fault| {
        let (shift, size) = solved(second_fault, [0.0; 3]);
        let corners = (0..8_u32).map(|bits| {
            let sign = |bit: u32| if bits >> bit & 1 == 0 { -1.0 } else { 1.0 };
            solved(second_fault, [sign(0) * tilt.part(), sign(1), sign(2)])
        });
        let (shifts, sizes): (Vec<f64>, Vec<f64>) = corners.chain([(shift, size)]).unzip();
        let (shifts, sizes) = (span(&shifts), span(&sizes));
        Pair {
            second: second_fault,
            shift: Ratio::new(shift),
            shifts: Interval { low: Ratio::new(shifts.0), high: Ratio::new(shifts.1) },
            size: ohms_of(second_fault, size),
            sizes: match second_fault {
                Second::Series => {
                    Interval { low: Resistance::from_ohms(sizes.0), high: Resistance::from_ohms(sizes.1) }
                }
                Second::Leak => leaks(sizes),
            },
            reasonable: exists(second_fault, sizes) && overlaps(shifts),
        }
    };
    Ok([pair(Second::Series), pair(Second::Leak)])
}

/// The temperature, of those offered, at which two answers differ most for their doubt,
/// with what each would make the sensor look like; `None` where none tells them apart.
#[must_use]
pub fn third_temperature(
    curve: &Curve,
    pairs: &[Pair; 2],
    candidates: &[Temperature],
    doubt: impl Fn(Resistance, Temperature) -> Resistance,
) -> Option<(Temperature, [Resistance; 2])> {
    let gap = |at: Temperature| {
        let good = curve.resistance(at).ok()?.ohms();
        let looks = pairs.map(|pair| pair.looks_like(good));
        let apart = (looks[0].ohms() - looks[1].ohms()).abs();
        let needed = doubt(looks[0], at).ohms() + doubt(looks[1], at).ohms();
        let known = apart.is_finite() && looks.iter().all(|looks| looks.ohms() > 0.0);
        (known && apart > needed).then(|| (apart / needed.max(f64::MIN_POSITIVE), looks))
    };
    let mut best: Option<(f64, Temperature, [Resistance; 2])> = None;
    for &at in candidates {
        if let Some((score, looks)) = gap(at)
            && best.is_none_or(|(most, ..)| score > most)
        {
            best = Some((score, at, looks));
        }
    }
    best.map(|(_, at, looks)| (at, looks))
}

impl Pair {
    /// What a good sensor of this resistance would look like with both faults.
    fn looks_like(&self, good: f64) -> Resistance {
        let shifted = (1.0 + self.shift.part()) * good;
        Resistance::from_ohms(match self.second {
            Second::Series => shifted + self.size.ohms(),
            Second::Leak => 1.0 / (1.0 / shifted + 1.0 / self.size.ohms()),
        })
    }
}

/// Shift, and series in ohms or leak in siemens.
fn solve(second: Second, good: [f64; 2], read: [f64; 2]) -> (f64, f64) {
    match second {
        Second::Series => {
            let factor = (read[0] - read[1]) / (good[0] - good[1]);
            (factor - 1.0, read[0] - factor * good[0])
        }
        Second::Leak => {
            let factor = (1.0 / read[0] - 1.0 / read[1]) / (1.0 / good[0] - 1.0 / good[1]);
            (1.0 / factor - 1.0, 1.0 / read[0] - factor / good[0])
        }
    }
}

fn ohms_of(second: Second, size: f64) -> Resistance {
    Resistance::from_ohms(match second {
        Second::Series => size,
        Second::Leak if size.abs() <= 0.0 => f64::INFINITY,
        Second::Leak => 1.0 / size,
    })
}

/// The leaks of conductances: the larger one is the smaller leak, and where none at
/// all is among them no leak is too large.
fn leaks((least, most): (f64, f64)) -> Interval<Resistance> {
    let none = least < 0.0 && most >= 0.0;
    let high = if none { Resistance::from_ohms(f64::INFINITY) } else { ohms_of(Second::Leak, least) };
    Interval { low: ohms_of(Second::Leak, most), high }
}

fn span(values: &[f64]) -> (f64, f64) {
    let ends = (f64::INFINITY, f64::NEG_INFINITY);
    values.iter().fold(ends, |(low, high), &value| (low.min(value), high.max(value)))
}

/// Whether some of the sizes are those of a fault, or of none.
fn exists(second: Second, (low, high): (f64, f64)) -> bool {
    let most = match second {
        Second::Series => Kind::Series.sizes().1,
        Second::Leak => 1.0 / Kind::Leak.sizes().0,
    };
    high >= 0.0 && low <= most
}

fn overlaps((low, high): (f64, f64)) -> bool {
    low <= REASONABLE_SHIFT.high.part() && high >= REASONABLE_SHIFT.low.part()
}
