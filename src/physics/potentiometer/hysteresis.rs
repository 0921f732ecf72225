//! Hysteresis: the same command from below and from above.

use std::fmt;

use crate::quantity::{Ratio, Voltage};

/// One commanded place and the feedback that settled there.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Settled {
    /// What was commanded, a part of the travel.
    pub command: Ratio,
    /// The feedback voltage.
    pub feedback: Voltage,
}

/// The greatest difference between the way up and the way down at one command.
///
/// Between commands the feedback is taken straight; only commands that both ways
/// reach are compared. Gives the command and up less down.
///
/// # Errors
/// [`HysteresisError::NoOverlap`] where there is none, [`HysteresisError::NotANumber`].
pub fn hysteresis(up: &[Settled], down: &[Settled]) -> Result<(Ratio, Voltage), HysteresisError> {
    let finite = |point: &Settled| point.command.part().abs() <= MOST && point.feedback.volts().abs() <= MOST;
    if !up.iter().chain(down).all(finite) {
        return Err(HysteresisError::NotANumber);
    }
    let sorted = |points: &[Settled]| {
        let mut points = points.to_vec();
        points.sort_by(|a, b| a.command.part().total_cmp(&b.command.part()));
        points
    };
    let (up, down) = (sorted(up), sorted(down));
    let commands = up.iter().chain(&down).map(|point| point.command.part());
    let differences = commands.filter_map(|at| Some((at, feedback_at(&up, at)? - feedback_at(&down, at)?)));
    let (at, difference) =
        differences.max_by(|a, b| a.1.abs().total_cmp(&b.1.abs())).ok_or(HysteresisError::NoOverlap)?;
    Ok((Ratio::new(at), Voltage::from_volts(difference)))
}

/// The feedback at a command, straight between the neighbours; `None` outside.
fn feedback_at(points: &[Settled], command: f64) -> Option<f64> {
    let on = points.iter().find(|point| point.command.part().total_cmp(&command).is_eq());
    if let Some(point) = on {
        return Some(point.feedback.volts());
    }
    let pair = points.windows(2).find(|p| p[0].command.part() < command && command < p[1].command.part())?;
    let share = (command - pair[0].command.part()) / (pair[1].command.part() - pair[0].command.part());
    Some(pair[0].feedback.volts() * (1.0 - share) + pair[1].feedback.volts() * share)
}

/// Larger than any command or volts, so that no difference overflows.
const MOST: f64 = 1e12;

/// Why two ways cannot be compared.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum HysteresisError {
    /// A command or a feedback that is no number.
    NotANumber,
    /// The two directions have no command in common.
    NoOverlap,
}

impl fmt::Display for HysteresisError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::NotANumber => "a value that is no number",
            Self::NoOverlap => "the two directions have no command in common",
        })
    }
}

impl std::error::Error for HysteresisError {}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn hysteresis_is_the_widest_gap_at_one_command() {
        let way = |points: &[(f64, f64)]| -> Vec<Settled> {
            let settled = |(command, volts): &(f64, f64)| Settled {
                command: Ratio::new(*command),
                feedback: Voltage::from_volts(*volts),
            };
            points.iter().map(settled).collect()
        };
        let up = way(&[(0.0, 0.5), (0.5, 2.4), (1.0, 4.5)]);
        let down = way(&[(1.0, 4.5), (0.25, 1.6), (0.0, 0.5)]);
        let (at, difference) = hysteresis(&up, &down).unwrap();
        // At 25 %: up 0.5 + 1.9/2 = 1.45 V against 1.6 V; at 50 %: 2.4 V against 1.6 + 2.9/3 V.
        assert!((at.part() - 0.5).abs() < 1e-12);
        assert!((difference.volts() - (2.4 - 1.6 - 2.9 / 3.0)).abs() < 1e-12);
        // The widest gap may lie at a command of the way down alone: 1.5 V against 2 V at 25 %.
        let up = way(&[(0.0, 0.5), (1.0, 4.5)]);
        let down = way(&[(1.0, 4.5), (0.25, 2.0), (0.0, 0.5)]);
        let (at, difference) = hysteresis(&up, &down).unwrap();
        assert!((at.part() - 0.25).abs() < 1e-12 && (difference.volts() + 0.5).abs() < 1e-12);
        assert_eq!(hysteresis(&up, &[]), Err(HysteresisError::NoOverlap));
    }
}
