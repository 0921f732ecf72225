//! A request and what permits or inhibits it: states over time.
//!
//! A condition watches one value. Once the value is past the threshold for the condition's
//! delay, the condition is set; once it is past the release threshold, on the other side, for
//! the release delay, it lets go. Between both it stays as it was. A request is granted when
//! it and everything that it depends on have stood for the hold time without a break.
//! Thresholds are plain numbers in whatever unit the trace is in; times are seconds.

mod reach;
mod trace;

pub use reach::can_be_granted;
pub use trace::Trace;

use trace::Region;

/// The side of its threshold on which a condition is set.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// Set from the threshold upwards.
    Above,
    /// Set from the threshold downwards.
    Below,
}

/// What a condition does to the request while it is set.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Effect {
    /// Nothing is granted without it.
    Permits,
    /// Nothing is granted with it.
    Inhibits,
}

/// What is wrong with a condition or a scenario.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Error {
    /// The release threshold lies beyond the threshold.
    Release,
    /// A time is negative or no number.
    Time,
    /// A trace has no point, or its times do not rise.
    Trace,
    /// There is not one trace for each condition.
    Count,
}

/// One condition of a request.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Condition {
    effect: Effect,
    side: Side,
    threshold: f64,
    release: f64,
    delay: f64,
    release_delay: f64,
}

/// How far a condition is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Phase {
    /// Not set.
    Clear,
    /// Past the threshold; the delay runs.
    Setting,
    /// Set.
    Set,
    /// Past the release threshold; the release delay runs. It still counts as set.
    Releasing,
}

/// How far a request is.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum State {
    /// Nobody asks.
    Absent,
    /// Asked for, and held back by these conditions.
    Inhibited(Vec<usize>),
    /// Asked for and held back by nothing; the hold time runs.
    Delayed,
    /// Granted.
    Permitted,
}

/// A stretch of time in which nothing changes.
#[derive(Debug, Clone, PartialEq)]
pub struct Span<T> {
    /// When it begins, in seconds.
    pub from: f64,
    /// When it ends, in seconds.
    pub to: f64,
    /// What it is.
    pub is: T,
}

/// What happens: when the request stands, and what each condition sees.
#[derive(Debug, Clone)]
pub struct Scenario {
    /// How long is looked at, in seconds.
    pub length: f64,
    /// When the request stands, in seconds; in rising order and apart from each other.
    pub requested: Vec<(f64, f64)>,
    /// What each condition's value does.
    pub traces: Vec<Trace>,
}

/// States over the whole time of a scenario.
#[derive(Debug, Clone, PartialEq)]
pub struct Timeline {
    /// The request.
    pub request: Vec<Span<State>>,
    /// Each condition.
    pub conditions: Vec<Vec<Span<Phase>>>,
}

impl Condition {
    /// A condition with its threshold and release threshold, delay and release delay.
    ///
    /// # Errors
    /// [`Error::Release`] where the release threshold lies beyond the threshold,
    /// [`Error::Time`] where a delay is below zero.
    pub fn new(
        (effect, side): (Effect, Side),
        (threshold, release): (f64, f64),
        (delay, release_delay): (f64, f64),
    ) -> Result<Self, Error> {
        let apart = match side {
            Side::Above => release <= threshold,
            Side::Below => release >= threshold,
        };
        if !apart {
            return Err(Error::Release);
        }
        let is_time = |time: f64| time.is_finite() && time >= 0.0;
        if !is_time(delay) || !is_time(release_delay) {
            return Err(Error::Time);
        }
        Ok(Self { effect, side, threshold, release, delay, release_delay })
    }

    fn region(&self, value: f64) -> Region {
        let (past, back) = match self.side {
            Side::Above => (value >= self.threshold, value <= self.release),
            Side::Below => (value <= self.threshold, value >= self.release),
        };
        // Without hysteresis the value may be at both: the threshold counts.
        if past {
            Region::Past
        } else if back {
            Region::Back
        } else {
            Region::Between
        }
    }

    /// Whether a request is held back while the condition is in this phase.
    #[must_use]
    pub fn holds_back(&self, phase: Phase) -> bool {
        let is_set = matches!(phase, Phase::Set | Phase::Releasing);
        match self.effect {
            Effect::Permits => !is_set,
            Effect::Inhibits => is_set,
        }
    }

    /// Its phases while its value follows a trace. At the start it is as if the value had
    /// been there for ever: set where it is past the threshold, clear elsewhere.
    #[must_use]
    pub fn phases(&self, trace: &Trace, length: f64) -> Vec<Span<Phase>> {
        let mut spans = Vec::new();
        let mut phase = None;
        for region in trace.regions(self, length) {
            let (running, wait) = match (phase.unwrap_or(self.at_start(region.is)), region.is) {
                (Phase::Clear | Phase::Setting, Region::Past) => (Phase::Setting, self.delay),
                (Phase::Clear | Phase::Setting, _) => (Phase::Clear, 0.0),
                (Phase::Set | Phase::Releasing, Region::Back) => (Phase::Releasing, self.release_delay),
                (Phase::Set | Phase::Releasing, _) => (Phase::Set, 0.0),
            };
            let over = match running {
                Phase::Setting => Phase::Set,
                Phase::Releasing => Phase::Clear,
                same => same,
            };
            let turn = region.from + wait;
            if turn >= region.to {
                // Just over at the end of the region is over.
                push(&mut spans, region.from, region.to, running);
                phase = Some(if turn > region.to { running } else { over });
                continue;
            }
            push(&mut spans, region.from, turn, running);
            push(&mut spans, turn, region.to, over);
            phase = Some(over);
        }
        spans
    }

    fn at_start(&self, region: Region) -> Phase {
        match region {
            Region::Past => Phase::Set,
            Region::Between | Region::Back => Phase::Clear,
        }
    }
}

/// Computes the states of a request over a scenario.
///
/// # Errors
/// [`Error::Count`] where there is not one trace for each condition, [`Error::Time`] where
/// the length, the hold time or a time of the request is none.
///
/// # Source
/// Common practice, no source: the names of states and the order of delays are ours; the
/// chain is checked against timelines worked by hand in tests/reference/requests.rs.
pub fn timeline(conditions: &[Condition], hold: f64, scenario: &Scenario) -> Result<Timeline, Error> {
    let Scenario { length, requested, traces } = scenario;
    if traces.len() != conditions.len() {
        return Err(Error::Count);
    }
    let mut last = 0.0;
    for &(from, to) in requested {
        if !(from >= last && to >= from && to <= *length) {
            return Err(Error::Time);
        }
        last = to;
    }
    if !(*length > 0.0 && length.is_finite() && hold >= 0.0 && hold.is_finite()) {
        return Err(Error::Time);
    }
    let phases: Vec<Vec<Span<Phase>>> =
        conditions.iter().zip(traces).map(|(condition, trace)| condition.phases(trace, *length)).collect();
    let mut changes: Vec<f64> = phases.iter().flatten().map(|span| span.from).collect();
    changes.extend(requested.iter().flat_map(|&(from, to)| [from, to]));
    changes.extend([0.0, *length]);
    changes.sort_by(f64::total_cmp);
    changes.dedup();
    let mut request = Vec::new();
    let mut free_since = None;
    for pair in changes.windows(2) {
        let (from, to) = (pair[0], pair[1]);
        if !requested.iter().any(|&(on, off)| on <= from && to <= off) {
            free_since = None;
            push(&mut request, from, to, State::Absent);
            continue;
        }
        let holding = held_back(conditions, &phases, from);
        if !holding.is_empty() {
            free_since = None;
            push(&mut request, from, to, State::Inhibited(holding));
            continue;
        }
        let turn: f64 = *free_since.get_or_insert(from) + hold;
        push(&mut request, from, turn.clamp(from, to), State::Delayed);
        push(&mut request, turn.clamp(from, to), to, State::Permitted);
    }
    Ok(Timeline { request, conditions: phases })
}

/// The conditions that hold a request back from a moment on.
fn held_back(conditions: &[Condition], phases: &[Vec<Span<Phase>>], at: f64) -> Vec<usize> {
    let both = conditions.iter().zip(phases).enumerate();
    let holds = both.filter(|(_, (condition, spans))| {
        let now = spans.iter().find(|span| span.from <= at && at < span.to);
        now.is_some_and(|span| condition.holds_back(span.is))
    });
    holds.map(|(index, _)| index).collect()
}

/// Adds a stretch; one of no length is left out, one like the last is joined to it.
fn push<T: PartialEq>(spans: &mut Vec<Span<T>>, from: f64, to: f64, is: T) {
    if to <= from {
        return;
    }
    match spans.last_mut().filter(|last| last.is == is) {
        Some(last) => last.to = to,
        None => spans.push(Span { from, to, is }),
    }
}
