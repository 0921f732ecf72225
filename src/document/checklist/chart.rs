//! The map of a checklist on one page: where its boxes stand, and the lines between them.

use schemars::JsonSchema;
use serde::Serialize;

use super::question::answer_word;
use super::{Numbers, ending_word, minutes};
use crate::graph::map::{Map, Route};
use crate::model::Checklist;
use crate::spec::{Answer, EndingKind};
use crate::words::{Message, Words};

/// Boxes and lines, in widths of a box and in layers from the top.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Drawing {
    /// The head of the map.
    title: String,
    /// The way that takes longest, and how long: `Longest way: 1 → 2 → C, 22 min`.
    longest: String,
    /// What boxes and lines mean.
    key: String,
    /// What it shows, for readers who cannot see it.
    alt: String,
    /// How many layers there are from top to bottom.
    layers: usize,
    /// How wide all is, in widths of a box.
    width: f64,
    /// How many lines across each gap between layers has to hold.
    tracks: Vec<usize>,
    /// Steps and endings.
    boxes: Vec<Place>,
    /// What leads from one to another.
    lines: Vec<Line>,
}

/// A step's or an ending's box.
#[derive(Debug, Serialize, JsonSchema)]
struct Place {
    /// Its layer, 0 at the top.
    layer: usize,
    /// Its middle, in widths of a box from the left.
    x: f64,
    /// A step's number or an ending's letter.
    mark: String,
    /// A step's title, or what an ending is.
    text: String,
    /// Whether it is an ending.
    ends: bool,
    /// Whether nobody but a licensed person goes on from here.
    stop: bool,
    /// Whether the longest way leads through it.
    on_longest: bool,
}

/// The lines of one answer.
#[derive(Debug, Serialize, JsonSchema)]
#[schemars(rename = "ChartLine")]
struct Line {
    /// `yes`, `no` or `?` for undecided, in the language of the page.
    answer: String,
    /// Whether the longest way goes along it.
    on_longest: bool,
    /// One for each gap between layers that it passes.
    bends: Vec<Bend>,
}

/// Where a line passes a gap between two layers.
#[derive(Debug, Serialize, JsonSchema)]
struct Bend {
    /// Which gap, 0 below the first layer.
    gap: usize,
    /// Where it enters, in widths of a box from the left.
    from: f64,
    /// Where it leaves.
    to: f64,
    /// On which track it runs across, 0 at the top.
    track: usize,
}

/// Draws the map.
pub(super) fn draw(words: &Words, checklist: &Checklist, numbers: &Numbers) -> Option<Drawing> {
    let chart = checklist.chart()?;
    let steps = checklist.ways.steps;
    // The node of the checklist that a box stands for.
    let node =
        |place: usize| if place < steps { Some(place) } else { chart.endings.get(place - steps).copied() };
    let on_longest = |route: &Route| {
        let exits = &checklist.steps[route.from].exits;
        // Of two answers that lead to one place the first is the way.
        let first = exits.iter().position(|exit| Some(exit.to) == node(route.to));
        first == Some(route.way) && node(route.to).is_some_and(|to| numbers.on_longest(route.from, to))
    };
    let longest: Vec<usize> =
        chart.map.routes.iter().filter(|route| on_longest(route)).map(|route| route.to).collect();
    let place = |(place, at): (usize, &Option<crate::graph::map::Place>)| {
        let (at, node) = ((*at)?, node(place)?);
        let ending = node.checked_sub(steps).and_then(|ending| checklist.endings.get(ending));
        let text = match ending {
            Some(ending) => words.word(short_word(ending.kind)),
            None => checklist.steps[node].title.clone(),
        };
        Some(Place {
            layer: at.layer,
            x: at.x,
            mark: numbers.mark(node),
            text,
            ends: ending.is_some(),
            stop: ending.is_some_and(|ending| ending.kind == EndingKind::Refer),
            on_longest: longest.contains(&place) || Some(node) == checklist.ways.start,
        })
    };
    let line = |route: &Route| Line {
        answer: words.word(match checklist.steps[route.from].exits[route.way].answer {
            Answer::Undecided => "check-undecided-short",
            answer => answer_word(answer),
        }),
        on_longest: on_longest(route),
        bends: (route.bends.iter())
            .map(|bend| Bend { gap: bend.gap, from: bend.from, to: bend.to, track: bend.track })
            .collect(),
    };
    let Map { layers, width, places, routes, tracks, .. } = &chart.map;
    let way: Vec<String> = numbers.longest.nodes.iter().map(|node| numbers.mark(*node)).collect();
    let said = Message::new("check-longest")
        .with("way", way.join(" → "))
        .with("time", minutes(numbers.longest.weight));
    Some(Drawing {
        title: words.word("check-map"),
        longest: words.say(&said),
        key: words.word("check-map-key"),
        alt: alt(words, checklist, numbers),
        layers: *layers,
        width: *width,
        tracks: tracks.clone(),
        boxes: places.iter().enumerate().filter_map(place).collect(),
        lines: routes.iter().map(line).collect(),
    })
}

/// What fits into an ending's box.
fn short_word(kind: EndingKind) -> &'static str {
    if kind == EndingKind::Refer { "check-ending-refer-short" } else { ending_word(kind) }
}

/// The map in words.
fn alt(words: &Words, checklist: &Checklist, numbers: &Numbers) -> String {
    let step = |node: &usize| {
        let step = &checklist.steps[*node];
        let exit = |exit: &crate::model::Exit| {
            format!("{} → {}", words.word(answer_word(exit.answer)), numbers.mark(exit.to))
        };
        let exits = step.exits.iter().map(exit).collect::<Vec<_>>().join(", ");
        format!("{} {}: {exits}", numbers.mark(*node), step.title)
    };
    numbers.steps.iter().map(step).collect::<Vec<_>>().join("; ")
}
