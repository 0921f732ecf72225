//! Checklists: questions and endings as a graph, and the complaints that lead to them.

use std::sync::OnceLock;

use super::fact::Fact;
use super::instrument::{Multimeter, Thermometer};
use super::pins::PinEnd;
use crate::graph::Graph;
use crate::graph::map::{self, Map};
use crate::quantity::Duration;
use crate::spec::{self, Answer, Cost, EndingKind, Near, Side, Work};

/// A checklist. Its nodes are its steps and behind them its endings.
#[derive(Debug)]
pub struct Checklist {
    /// Its id, which is also its file name.
    pub id: String,
    /// What it is called.
    pub title: String,
    /// The system's id.
    pub system: String,
    /// The vehicles it is for, where not every one of the system.
    pub vehicles: Option<Vec<String>>,
    /// What a driver complains of.
    pub symptom: String,
    /// The thermometer that the windows of its tests assume.
    pub thermometer: Option<Thermometer>,
    /// And the multimeter.
    pub meter: Option<Multimeter>,
    /// Who may do the work.
    pub work: Work,
    /// Questions and endings, and where each answer leads.
    pub ways: Ways,
    /// The questions.
    pub steps: Vec<Question>,
    /// How it can end.
    pub endings: Vec<Ending>,
    /// Its map, drawn when somebody first asks.
    pub(super) chart: OnceLock<Option<Chart>>,
}

impl Checklist {
    /// Its map.
    #[must_use]
    pub fn chart(&self) -> Option<&Chart> {
        self.chart.get_or_init(|| Chart::of(&self.ways)).as_ref()
    }
}

/// One question.
#[derive(Debug)]
pub struct Question {
    /// What it is called.
    pub title: String,
    /// The question.
    pub question: String,
    /// What to do.
    pub action: String,
    /// Where, in words.
    pub at: Option<String>,
    /// Where the meter's leads go.
    pub probes: Vec<Probes>,
    /// Which half is probed, where not the one that is drawn.
    pub half: Option<Side>,
    /// Key, engine, panel, and what is mated.
    pub state: String,
    /// The test whose computed window answers yes.
    pub test: Option<String>,
    /// What answers yes, where no test says it.
    pub expect: Fact,
    /// The unit of the reading; none where nothing is read off.
    pub unit: Option<String>,
    /// How long it takes.
    pub time: Duration,
    /// The same, as written.
    pub time_fact: Fact,
    /// What it costs besides.
    pub cost: Cost,
    /// Why it stands before a cheaper one.
    pub because: Option<String>,
    /// What the hands come near.
    pub near: Vec<Near>,
    /// The card that has the figures.
    pub card: Option<String>,
    /// Where each answer leads, in the order yes, no, undecided.
    pub exits: Vec<Exit>,
}

/// Pins of one connector, in the order of the meter's leads.
#[derive(Debug)]
pub struct Probes {
    /// The connector, and how it is seen.
    pub end: PinEnd,
    /// Each pin, as written, with its wire's letters and size.
    pub pins: Vec<(Fact, Option<Fact>)>,
}

/// An answer, and where it leads.
#[derive(Debug)]
pub struct Exit {
    /// The answer.
    pub answer: Answer,
    /// The node it leads to.
    pub to: usize,
    /// What to do on the way.
    pub note: Option<String>,
}

/// How a checklist can end.
#[derive(Debug)]
pub struct Ending {
    /// Which of the five.
    pub kind: EndingKind,
    /// The part, harness or unit, by name.
    pub what: Option<String>,
    /// What to do.
    pub action: String,
    /// The card that has the figures.
    pub card: Option<String>,
}

/// A complaint, and what to test first.
#[derive(Debug)]
pub struct Symptom {
    /// The complaint.
    pub title: String,
    /// The system's id.
    pub system: String,
    /// The checklist that leads through it.
    pub checklist: Option<String>,
    /// The first tests.
    pub first: Vec<Fact>,
    /// The cards to have at hand.
    pub cards: Vec<String>,
}

/// A checklist's graph: its steps in the order of the file, then its endings.
#[derive(Debug, Clone)]
pub struct Ways {
    /// Nodes and ways; an answer that leads nowhere is left out.
    pub graph: Graph,
    /// The step it begins with, where there is such a step.
    pub start: Option<usize>,
    /// How many of the nodes are steps.
    pub steps: usize,
}

impl Ways {
    /// Whether a node is an ending.
    #[must_use]
    pub fn is_ending(&self, node: usize) -> bool {
        node >= self.steps
    }
}

/// The graph of a checklist as written, good or broken.
#[must_use]
pub fn ways(checklist: &spec::Checklist) -> Ways {
    let node = |name: &str| node_of(checklist, name);
    let steps = checklist.steps.iter().map(|step| {
        let exits = step.exits.iter().filter_map(|exit| node(&exit.to.value));
        exits.collect()
    });
    let endings = checklist.endings.iter().map(|_| Vec::new());
    Ways {
        graph: Graph::new(steps.chain(endings).collect()),
        start: checklist.start.as_ref().and_then(|start| node(&start.value)),
        steps: checklist.steps.len(),
    }
}

/// The node of a step's or an ending's name.
pub(super) fn node_of(checklist: &spec::Checklist, name: &str) -> Option<usize> {
    checklist.names().position(|id| id.value == name)
}

/// A checklist's map: every step has a box of its own for an ending that it leads to,
/// so that no line runs across the page to a shared one.
#[derive(Debug, Clone)]
pub struct Chart {
    /// The steps, and behind them the boxes of endings.
    pub map: Map,
    /// Of each box behind the steps: the node of its ending.
    pub endings: Vec<usize>,
}

/// The layers and the widths of a step's box that the page of a map holds.
pub const MOST_LAYERS: usize = 16;
/// See [`MOST_LAYERS`].
pub const MOST_WIDTH: f64 = 6.0;

/// How wide a map is tried.
const TRIED: [f64; 5] = [3.7, 4.1, 4.6, 5.2, 5.8];

/// Up to this width, and this many layers, the boxes have their full size.
const ROOMY: (f64, usize) = (4.1, 10);

/// Width of an ending's box, in widths of a step's.
const ENDING: f64 = 0.62;

impl Chart {
    /// Draws a checklist's ways; `None` where there is a loop or no beginning.
    #[must_use]
    pub fn of(ways: &Ways) -> Option<Self> {
        let (graph, widths, endings) = Self::boxes(ways);
        let start = ways.start?;
        let drawn = TRIED.iter().map(|most| map::draw(&graph, start, &widths, *most));
        let maps = drawn.collect::<Option<Vec<Map>>>()?;
        let map = maps.into_iter().min_by(|a, b| cost(a).total_cmp(&cost(b)))?;
        Some(Self { map, endings })
    }

    /// Whether there is a drawing of a checklist's ways that fits a page: the first one that does
    /// answers that.
    #[must_use]
    pub fn can_fit(ways: &Ways) -> bool {
        let (graph, widths, _) = Self::boxes(ways);
        let can = |most: &f64| {
            let map = ways.start.and_then(|start| map::draw(&graph, start, &widths, *most));
            map.is_some_and(|map| fits(&map))
        };
        TRIED.iter().any(can)
    }

    /// The boxes that ways run between, with their widths; which endings they show.
    fn boxes(ways: &Ways) -> (Graph, Vec<f64>, Vec<usize>) {
        let mut endings = Vec::new();
        let mut next: Vec<Vec<usize>> = Vec::new();
        for step in 0..ways.steps {
            let own = endings.len();
            let box_of = |to: &usize| {
                if !ways.is_ending(*to) {
                    return *to;
                }
                // Two answers of one step that end alike share a box.
                let known = endings[own..].iter().position(|ending| ending == to);
                let place = known.map_or(endings.len(), |known| own + known);
                if known.is_none() {
                    endings.push(*to);
                }
                ways.steps + place
            };
            next.push(ways.graph.next(step).iter().map(box_of).collect());
        }
        let widths: Vec<f64> = (0..ways.steps).map(|_| 1.0).chain(endings.iter().map(|_| ENDING)).collect();
        next.resize(widths.len(), Vec::new());
        (Graph::new(next), widths, endings)
    }
}

fn fits(map: &Map) -> bool {
    map.layers <= MOST_LAYERS && map.width <= MOST_WIDTH
}

/// How bad a map is: a page that it does not fit, crossings, small boxes, long ways.
fn cost(map: &Map) -> f64 {
    let small = (map.width - ROOMY.0).max(0.0) * 6.0 + map::count(map.layers.saturating_sub(ROOMY.1));
    let passed = map.routes.iter().map(|route| route.bends.len().saturating_sub(1)).sum();
    let base = if fits(map) { 0.0 } else { 1e6 };
    base + 100.0 * map::count(map.crossings) + small + 2.0 * map::count(passed)
}
