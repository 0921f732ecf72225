//! The timeline: a lane for each condition, one for the request, positions in parts of the width.

use schemars::JsonSchema;
use serde::Serialize;

use super::levels::signs;
use crate::document::axis::{Axis, Tick, tidy};
use crate::document::table::request::state;
use crate::document::{Context, beside, figures};
use crate::model::request::Condition;
use crate::model::{Fact, Request};
use crate::physics::request::{Phase, Span, State, Trace};
use crate::quantity::{Units, reprinted};
use crate::words::Message;

/// How many steps the time axis has at most.
const MOST_STEPS: f64 = 12.0;

/// What is left free above and below a trace, a part of its height.
const MARGIN: f64 = 0.12;

/// A whole timeline.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Timeline {
    /// Seconds along the axis.
    ticks: Vec<Tick>,
    /// What runs along it: `time, s`.
    axis: String,
    /// The request's own lane.
    request: Lane,
    /// Where the request changes, for lines through all lanes.
    changes: Vec<f64>,
    /// A lane for each condition.
    lanes: Vec<Lane>,
    /// The kinds of line.
    legend: Vec<Key>,
    /// What it shows, for readers who cannot see it.
    alt: String,
}

/// One lane: its stretches, and for a condition what its value does.
#[derive(Debug, Serialize, JsonSchema)]
struct Lane {
    /// Which condition: `1 Engine runs`.
    label: String,
    /// From the left to the right.
    stretches: Vec<Stretch>,
    /// Points of its value, x and y each, 0 to 1; empty for the request.
    trace: Vec<[f64; 2]>,
    /// Thresholds that it passes.
    levels: Vec<Drawn>,
}

/// A stretch of a lane, of one kind of line.
#[derive(Debug, Serialize, JsonSchema)]
struct Stretch {
    /// Where it begins: 0 to 1.
    from: f64,
    /// Where it ends.
    to: f64,
    /// `bar`, `frame`, `dots` or `thin`.
    kind: &'static str,
}

/// A threshold in a lane.
#[derive(Debug, Serialize, JsonSchema)]
struct Drawn {
    /// At which height: 0 to 1.
    at: f64,
    /// The threshold: `≥ 650 r/min`.
    text: String,
    /// Whether it lets go there.
    release: bool,
}

/// A kind of line and its words.
#[derive(Debug, Serialize, JsonSchema)]
struct Key {
    /// `bar`, `frame`, `dots` or `thin`.
    kind: &'static str,
    /// What it means.
    text: String,
}

/// The timeline of a request, where nothing of it is missing.
pub(super) fn compose(Context { words, units, .. }: Context<'_>, request: &Request) -> Option<Timeline> {
    let scenario = &request.scenario.as_ref()?.what;
    let timeline = request.timeline()?;
    let length = scenario.length;
    let lanes = request.conditions.iter().zip(&timeline.conditions).zip(&scenario.traces).enumerate();
    let lanes = lanes.map(|(index, ((condition, phases), trace))| Lane {
        label: format!("{} {}", index + 1, condition.title),
        stretches: phases.iter().map(|span| stretch(span, length, phase)).collect(),
        levels: levels(units, condition, trace),
        trace: drawn(condition, trace, length),
    });
    let said: Vec<String> = (timeline.request.iter())
        .map(|span| {
            let (from, to) = (figures::trimmed(span.from), figures::trimmed(span.to));
            format!("{from}–{to} s {}", words.word(state(&span.is).1))
        })
        .collect();
    let keys = [
        ("bar", "card-line-bar"),
        ("frame", "card-line-frame"),
        ("dots", "card-line-dots"),
        ("thin", "card-line-thin"),
    ];
    Some(Timeline {
        ticks: Axis::exactly(0.0, length, MOST_STEPS).map_or_else(Vec::new, Axis::ticks),
        axis: words.word("card-timeline-axis"),
        changes: timeline.request.iter().skip(1).map(|span| tidy(span.from / length)).collect(),
        request: Lane {
            label: request.title.clone(),
            stretches: timeline.request.iter().map(|span| stretch(span, length, kind_of_state)).collect(),
            trace: Vec::new(),
            levels: Vec::new(),
        },
        lanes: lanes.collect(),
        legend: keys.map(|(kind, id)| Key { kind, text: words.word(id) }).into(),
        alt: words.say(&Message::new("card-alt-timeline").with("states", said.join(", "))),
    })
}

fn stretch<T>(span: &Span<T>, length: f64, kind: impl Fn(&T) -> &'static str) -> Stretch {
    Stretch { from: tidy(span.from / length), to: tidy(span.to / length), kind: kind(&span.is) }
}

/// The line of a condition: a bar while it is set, hollow while it lets go.
fn phase(phase: &Phase) -> &'static str {
    match phase {
        Phase::Clear => "thin",
        Phase::Setting => "dots",
        Phase::Set => "bar",
        Phase::Releasing => "frame",
    }
}

/// The line of the request: a bar while it is granted, hollow while it is held back.
fn kind_of_state(state: &State) -> &'static str {
    match state {
        State::Absent => "thin",
        State::Inhibited(_) => "frame",
        State::Delayed => "dots",
        State::Permitted => "bar",
    }
}

/// The least and greatest number that a lane shows.
fn reach(condition: &Condition, trace: &Trace) -> (f64, f64) {
    let levels = condition.levels.iter().flatten().map(|level| level.number);
    let all = trace.points().iter().map(|point| point.1).chain(levels);
    all.fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), value| (low.min(value), high.max(value)))
}

/// A number of a lane in parts of its height, upwards.
fn height(value: f64, (low, high): (f64, f64)) -> f64 {
    let part = if high > low { (value - low) / (high - low) } else { 0.5 };
    tidy(MARGIN + part * (1.0 - 2.0 * MARGIN))
}

fn drawn(condition: &Condition, trace: &Trace, length: f64) -> Vec<[f64; 2]> {
    let reach = reach(condition, trace);
    let inside = trace.points().iter().map(|point| point.0).filter(|at| *at > 0.0 && *at < length);
    let times = std::iter::once(0.0).chain(inside).chain([length]);
    times.map(|at| [tidy(at / length), height(trace.at(at), reach)]).collect()
}

fn levels(units: Units, condition: &Condition, trace: &Trace) -> Vec<Drawn> {
    let reach = reach(condition, trace);
    let (past, back) = signs(condition.side);
    let [threshold, release, ..] = &condition.facts;
    let line = |level: Option<crate::spec::Level>, fact: &Fact, sign: &str, release: bool| {
        // The table of conditions has it as written too.
        let written = fact.written.as_ref()?;
        let shown = beside::converted(units, fact.label, written).unwrap_or_else(|| reprinted(written));
        let text = format!("{sign} {}", shown.replace('-', "−"));
        Some(Drawn { at: height(level?.number, reach), text, release })
    };
    let [first, second] = condition.levels;
    let both = [line(first, threshold, past, false), line(second, release, back, true)];
    both.into_iter().flatten().collect()
}
