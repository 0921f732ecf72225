//! A recorded sweep of a feedback potentiometer: what is wrong with it, and where.

use std::fmt;

use crate::quantity::{Duration, Interval, Ratio, Voltage};

/// One recorded point.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sample {
    /// Since the start of the recording.
    pub time: Duration,
    /// The feedback voltage.
    pub feedback: Voltage,
}

/// What a good sweep may do. A rule that was not given is not judged.
///
/// Shares are parts of the travel between first and last reading of the sweep.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rules {
    /// Changes up to this are noise of meter and wiper.
    pub noise: Voltage,
    /// The greatest change from one sample to the next.
    pub step: Option<Ratio>,
    /// The greatest commanded travel without a change of the feedback.
    pub dead_band: Option<Ratio>,
    /// The longest time from end to end.
    pub time: Option<Duration>,
}

/// A stretch of the recording that breaks a rule.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stretch {
    /// From when to when.
    pub time: Interval<Duration>,
    /// The feedback at its start.
    pub feedback: Voltage,
    /// How much: a part of the travel.
    pub part: Ratio,
}

/// What is wrong with a sweep.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Defect {
    /// The feedback jumps away and comes back: a worn place of the track.
    DropOut(Stretch),
    /// The feedback runs against the sweep.
    Reversal(Stretch),
    /// The feedback jumps and stays there.
    Step(Stretch),
    /// The feedback stands still while the motor goes on.
    DeadBand(Stretch),
    /// The sweep takes longer than it may.
    Slow {
        /// What it took.
        took: Duration,
    },
}

/// A judged sweep.
#[derive(Debug, Clone, PartialEq)]
pub struct Report {
    /// Last less first reading: above zero where the feedback rises.
    pub travel: Voltage,
    /// From the last sample at the first reading to the first at the last one.
    pub time: Interval<Duration>,
    /// The largest change between two samples, drop-outs left out.
    pub largest_step: Option<Stretch>,
    /// The longest stand-still between the ends, drop-outs left out.
    pub longest_stand: Option<Stretch>,
    /// What breaks a rule, in the order of time.
    pub defects: Vec<Defect>,
}

/// Why a recording cannot be judged.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SweepError {
    /// Fewer than three points.
    TooFewSamples,
    /// A time that is not later than the one before, or no number.
    TimeNotRising,
    /// A feedback or a rule that is no number, or a noise below zero.
    NotANumber,
    /// First and last reading differ by no more than noise.
    NoTravel,
}

impl fmt::Display for SweepError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::TooFewSamples => "fewer than three points",
            Self::TimeNotRising => "time does not rise from point to point",
            Self::NotANumber => "a value that is no number",
            Self::NoTravel => "the feedback did not move",
        })
    }
}

impl std::error::Error for SweepError {}

/// Judges a sweep in one direction, recorded while the motor runs all the time.
///
/// A drop-out is a jump of more than `step` against which, within the recording,
/// a jump back of at least half its size follows; without a `step` rule none is
/// looked for. The rest is judged as if the drop-outs' samples were not there.
/// The commanded travel of a stand-still is its share of the end-to-end time: a
/// direct-current motor that runs free moves evenly (common practice, no source).
///
/// # Errors
/// Where the points are not a sweep at all.
pub fn judge(samples: &[Sample], rules: &Rules) -> Result<Report, SweepError> {
    check(samples, rules)?;
    let travel = samples[samples.len() - 1].feedback.volts() - samples[0].feedback.volts();
    if travel.abs() <= rules.noise.volts().max(LEAST_TRAVEL) {
        return Err(SweepError::NoTravel);
    }
    let sweep = Sweep { travel, noise: rules.noise.volts() };
    let (kept, mut defects) = match rules.step {
        Some(step) => sweep.without_drop_outs(samples, step.part() * travel.abs()),
        None => (samples.to_vec(), Vec::new()),
    };
    let time = sweep.moving(&kept);
    // What the feedback does while it is dropped out is no step.
    let bridges = |from: Sample| {
        defects.iter().any(|defect| matches!(defect, Defect::DropOut(out) if out.time.low == from.time))
    };
    let steps: Vec<(Sample, Sample)> =
        kept.windows(2).map(|pair| (pair[0], pair[1])).filter(|(from, _)| !bridges(*from)).collect();
    let stretches = steps.iter().map(|(from, to)| sweep.stretch(*from, *to));
    let largest_step = stretches.max_by(|a, b| a.part.part().total_cmp(&b.part.part()));
    let beyond = |stretch: &Stretch, rule: Option<Ratio>| rule.is_some_and(|most| stretch.part > most);
    // A jump against the sweep is a reversal and told as one.
    let ahead = steps.iter().filter(|(from, to)| sweep.forward(*from, *to) > 0.0);
    let jumps = ahead.map(|(from, to)| sweep.stretch(*from, *to)).filter(|s| beyond(s, rules.step));
    defects.extend(jumps.map(Defect::Step));
    defects.extend(sweep.reversals(&kept).into_iter().map(Defect::Reversal));
    let stands = sweep.stands(&kept, time);
    let longest_stand = stands.iter().copied().max_by(|a, b| a.part.part().total_cmp(&b.part.part()));
    defects.extend(stands.into_iter().filter(|s| beyond(s, rules.dead_band)).map(Defect::DeadBand));
    defects.sort_by(|a, b| started(a).total_cmp(&started(b)));
    let took = Duration::from_seconds(time.high.seconds() - time.low.seconds());
    if rules.time.is_some_and(|most| took > most) {
        defects.push(Defect::Slow { took });
    }
    Ok(Report { travel: Voltage::from_volts(travel), time, largest_step, longest_stand, defects })
}

/// Less travel than this no voltmeter sees, noise or not.
const LEAST_TRAVEL: f64 = 1e-9;

/// Larger than any sample's volts or seconds, so that no difference overflows.
const MOST: f64 = 1e12;

fn check(samples: &[Sample], rules: &Rules) -> Result<(), SweepError> {
    if samples.len() < 3 {
        return Err(SweepError::TooFewSamples);
    }
    let known = |value: f64| value.abs() <= MOST;
    if !samples.iter().all(|sample| known(sample.time.seconds()))
        || !samples.windows(2).all(|pair| pair[0].time < pair[1].time)
    {
        return Err(SweepError::TimeNotRising);
    }
    let shares = [rules.step, rules.dead_band].into_iter().flatten().map(Ratio::part);
    let times = rules.time.map(Duration::seconds);
    let all = samples.iter().map(|sample| sample.feedback.volts()).chain(shares).chain(times);
    if !all.chain([rules.noise.volts()]).all(known) || rules.noise.volts() < 0.0 {
        return Err(SweepError::NotANumber);
    }
    Ok(())
}

fn started(defect: &Defect) -> f64 {
    match defect {
        Defect::DropOut(s) | Defect::Reversal(s) | Defect::Step(s) | Defect::DeadBand(s) => {
            s.time.low.seconds()
        }
        Defect::Slow { took } => took.seconds(),
    }
}

/// The direction and size of a sweep.
struct Sweep {
    travel: f64,
    noise: f64,
}

impl Sweep {
    /// How far the feedback goes with the sweep from one sample to another, volts.
    fn forward(&self, from: Sample, to: Sample) -> f64 {
        (to.feedback.volts() - from.feedback.volts()) * self.travel.signum()
    }

    fn stretch(&self, from: Sample, to: Sample) -> Stretch {
        let part = self.forward(from, to).abs() / self.travel.abs();
        Stretch {
            time: Interval { low: from.time, high: to.time },
            feedback: from.feedback,
            part: Ratio::new(part),
        }
    }

    fn without_drop_outs(&self, samples: &[Sample], step: f64) -> (Vec<Sample>, Vec<Defect>) {
        let (mut kept, mut defects) = (vec![samples[0]], Vec::new());
        let mut index = 1;
        while index < samples.len() {
            let (from, sample) = (kept[kept.len() - 1], samples[index]);
            let away = self.forward(from, sample);
            let back = (away.abs() > step.max(self.noise))
                .then(|| self.back(&samples[index..], away, step))
                .flatten();
            let Some(back) = back else {
                kept.push(sample);
                index += 1;
                continue;
            };
            let out = &samples[index..index + back];
            let farthest = out.iter().map(|s| self.forward(from, *s).abs()).fold(0.0, f64::max);
            let part = Ratio::new(farthest / self.travel.abs());
            let time = Interval { low: from.time, high: samples[index + back].time };
            defects.push(Defect::DropOut(Stretch { time, feedback: from.feedback, part }));
            kept.push(samples[index + back]);
            index += back + 1;
        }
        (kept, defects)
    }

    /// How many samples lie in a drop-out: up to the first jump back of at least half its size.
    fn back(&self, samples: &[Sample], away: f64, step: f64) -> Option<usize> {
        let jumps = samples.windows(2).map(|pair| self.forward(pair[0], pair[1]));
        let returns = |jump: f64| {
            jump.signum() * away.signum() < 0.0
                && jump.abs() > step.max(self.noise)
                && jump.abs() >= 0.5 * away.abs()
        };
        jumps.into_iter().position(returns).map(|index| index + 1)
    }

    /// From the last sample at the first reading to the first sample at the last reading.
    fn moving(&self, samples: &[Sample]) -> Interval<Duration> {
        let (first, last) = (samples[0], samples[samples.len() - 1]);
        let left = samples.iter().find(|s| self.forward(first, **s) > self.noise);
        let left = samples.iter().rev().find(|s| left.is_some_and(|left| s.time < left.time));
        let arrived = samples.iter().find(|s| self.forward(**s, last) <= self.noise);
        let (low, high) = (left.map_or(first.time, |s| s.time), arrived.map_or(last.time, |s| s.time));
        if low < high { Interval { low, high } } else { Interval { low: first.time, high: last.time } }
    }

    /// Stretches in which the feedback falls back behind its farthest place by more than noise.
    fn reversals(&self, samples: &[Sample]) -> Vec<Stretch> {
        let mut found: Vec<Stretch> = Vec::new();
        let (mut farthest, mut open) = (samples[0], false);
        for &sample in samples {
            let behind = -self.forward(farthest, sample);
            if behind <= self.noise {
                open = false;
                if behind <= 0.0 {
                    farthest = sample;
                }
                continue;
            }
            let stretch = self.stretch(farthest, sample);
            match found.last_mut().filter(|_| open) {
                Some(last) if last.part >= stretch.part => {}
                Some(last) => *last = stretch,
                None => found.push(stretch),
            }
            open = true;
        }
        found
    }

    /// Stretches of two samples and more that stay within noise, between the two ends.
    ///
    /// Their size is their share of the end-to-end time.
    fn stands(&self, samples: &[Sample], time: Interval<Duration>) -> Vec<Stretch> {
        let inside: Vec<Sample> = samples.iter().copied().filter(|s| time.contains(&s.time)).collect();
        let whole = time.high.seconds() - time.low.seconds();
        let mut found = Vec::new();
        let mut start = 0;
        while start < inside.len() {
            let stays = |s: &&Sample| self.forward(inside[start], **s).abs() <= self.noise;
            let count = inside[start..].iter().take_while(stays).count();
            if count > 1 {
                let (from, to) = (inside[start], inside[start + count - 1]);
                let part = Ratio::new((to.time.seconds() - from.time.seconds()) / whole);
                let time = Interval { low: from.time, high: to.time };
                found.push(Stretch { time, feedback: from.feedback, part });
            }
            start += count.max(1);
        }
        found
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// One sample each second.
    fn recorded(volts: &[f64]) -> Vec<Sample> {
        let sample = |(second, volts): (usize, &f64)| Sample {
            time: Duration::from_seconds(second as f64),
            feedback: Voltage::from_volts(*volts),
        };
        volts.iter().enumerate().map(sample).collect()
    }

    /// Step and dead band of a quarter of the travel, 20 mV of noise, ten seconds.
    const RULES: Rules = Rules {
        noise: Voltage::from_volts(0.02),
        step: Some(Ratio::new(0.25)),
        dead_band: Some(Ratio::new(0.25)),
        time: Some(Duration::from_seconds(10.0)),
    };

    fn judged(volts: &[f64]) -> Report {
        judge(&recorded(volts), &RULES).unwrap()
    }

    fn seconds(stretch: Stretch) -> (f64, f64) {
        (stretch.time.low.seconds(), stretch.time.high.seconds())
    }

    // The recordings are drawn by hand; what each shows is the trade's own wording
    // (common practice, no source).

    #[test]
    fn a_good_sweep_rises_or_falls_without_a_word() {
        let up = [0.5, 0.5, 1.0, 1.5, 2.0, 2.5, 3.0, 3.5, 4.0, 4.5, 4.5];
        let report = judged(&up);
        assert_eq!(report.defects, []);
        assert!((report.travel.volts() - 4.0).abs() < 1e-12);
        assert_eq!((report.time.low.seconds(), report.time.high.seconds()), (1.0, 9.0));
        let down: Vec<f64> = up.iter().rev().copied().collect();
        assert_eq!(judged(&down).defects, []);
        assert!(judged(&down).travel.volts() < 0.0);
    }

    #[test]
    fn a_worn_place_is_one_drop_out() {
        let report = judged(&[0.5, 1.0, 1.5, 0.0, 0.1, 3.0, 3.5, 4.0, 4.5]);
        let [Defect::DropOut(stretch)] = report.defects[..] else { panic!("{:?}", report.defects) };
        assert_eq!(seconds(stretch), (2.0, 5.0));
        assert!((stretch.part.part() - 1.5 / 4.0).abs() < 1e-12);
    }

    /// A way back of 60 % of the jump away ends a drop-out; one of 40 % ends none.
    #[test]
    fn half_of_the_jump_has_to_come_back() {
        let report = judged(&[0.5, 1.0, 4.0, 2.2, 2.8, 3.6, 4.5]);
        let [Defect::DropOut(stretch)] = report.defects[..] else { panic!("{:?}", report.defects) };
        assert_eq!(seconds(stretch), (1.0, 3.0));
        let report = judged(&[0.5, 1.0, 4.0, 2.8, 3.2, 3.8, 4.5]);
        assert!(report.defects.iter().all(|defect| !matches!(defect, Defect::DropOut(_))), "{report:?}");
        assert!(report.defects.iter().any(|defect| matches!(defect, Defect::Step(_))), "{report:?}");
    }

    #[test]
    fn a_jump_that_stays_is_a_step_and_a_small_way_back_a_reversal() {
        let report = judged(&[0.5, 1.0, 1.5, 3.5, 4.0, 4.5]);
        let [Defect::Step(stretch)] = report.defects[..] else { panic!("{:?}", report.defects) };
        assert_eq!(seconds(stretch), (2.0, 3.0));
        let report = judged(&[0.5, 1.2, 2.0, 1.6, 1.8, 2.4, 3.0, 3.8, 4.5]);
        let [Defect::Reversal(stretch)] = report.defects[..] else { panic!("{:?}", report.defects) };
        assert_eq!(seconds(stretch), (2.0, 3.0));
        assert!((stretch.part.part() - 0.1).abs() < 1e-12);
    }

    #[test]
    fn a_flat_place_is_a_dead_band_and_a_long_way_is_slow() {
        let report = judged(&[0.5, 1.3, 2.1, 2.1, 2.11, 2.1, 2.9, 3.7, 4.5]);
        let [Defect::DeadBand(stretch)] = report.defects[..] else { panic!("{:?}", report.defects) };
        assert_eq!(seconds(stretch), (2.0, 5.0));
        assert!((stretch.part.part() - 3.0 / 8.0).abs() < 1e-12);
        let slow: Vec<f64> = (0..=12).map(|second| 0.5 + f64::from(second) / 3.0).collect();
        let just: Vec<f64> = (0..=10).map(|second| 0.5 + 0.4 * f64::from(second)).collect();
        assert_eq!(judged(&just).defects, [], "ten seconds are what it may take");
        assert_eq!(judged(&slow).defects, [Defect::Slow { took: Duration::from_seconds(12.0) }]);
    }

    #[test]
    fn what_is_no_sweep_is_refused() {
        assert_eq!(judge(&recorded(&[0.5, 4.5]), &RULES), Err(SweepError::TooFewSamples));
        assert_eq!(judge(&recorded(&[2.0, 2.3, 2.01]), &RULES), Err(SweepError::NoTravel));
        let mut twice = recorded(&[0.5, 1.0, 1.5]);
        twice[2].time = twice[1].time;
        assert_eq!(judge(&twice, &RULES), Err(SweepError::TimeNotRising));
    }
}
