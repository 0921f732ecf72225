//! The lines of every way: where it leaves a node, and at which height it goes across.

use super::{Bend, Map, Place, Plan, Route, count};
use crate::graph::Graph;

/// Two lines nearer than this are one.
const NEAR: f64 = 1e-3;

/// How far from its middle an outer line leaves a node, in parts of its width.
const OUTER: f64 = 0.36;

/// Lines for every way of a plan whose cells stand at `x`.
pub(super) fn route(graph: &Graph, plan: &Plan, x: &[f64], width: f64) -> Map {
    let mut places = vec![None; graph.len()];
    for (cell, x) in plan.cells.iter().zip(x) {
        if let Some(node) = cell.node {
            places[node] = Some(Place { layer: cell.layer, x: *x });
        }
    }
    let leaves = leaves(plan, x);
    let mut gaps: Vec<Vec<Line>> = vec![Vec::new(); plan.layers.len()];
    for (index, link) in plan.links.iter().enumerate() {
        let line = Line { from: leaves[index], to: x[link.to], aim: link.to, route: link.route, track: 0 };
        gaps[plan.cells[link.from].layer].push(line);
    }
    let tracks = gaps.iter_mut().map(|lines| stack(lines)).collect::<Vec<_>>();
    let crossings = gaps.iter().map(|lines| crossings(lines)).sum();
    let route = |(index, &(from, way, to)): (usize, &(usize, usize, usize))| {
        let lines =
            gaps.iter().enumerate().flat_map(|(gap, lines)| lines.iter().map(move |line| (gap, line)));
        let own = lines.filter(|(_, line)| line.route == index);
        let bends = own.map(|(gap, line)| Bend { gap, from: line.from, to: line.to, track: line.track });
        Route { from, way, to, bends: bends.collect() }
    };
    let routes = plan.ways.iter().enumerate().map(route).collect();
    let gaps = tracks.len().saturating_sub(1);
    Map { layers: plan.layers.len(), width, places, routes, tracks: tracks[..gaps].to_vec(), crossings }
}

/// Where each link leaves its cell: those of a node spread over its width, in the order
/// of where they go; a lone one under its middle.
fn leaves(plan: &Plan, x: &[f64]) -> Vec<f64> {
    let mut at = vec![0.0; plan.links.len()];
    for (cell, own) in plan.cells.iter().enumerate() {
        let mut out: Vec<usize> =
            (0..plan.links.len()).filter(|link| plan.links[*link].from == cell).collect();
        out.sort_by(|a, b| x[plan.links[*a].to].total_cmp(&x[plan.links[*b].to]));
        let slots =
            slots(x[cell], own.width, &out.iter().map(|link| x[plan.links[*link].to]).collect::<Vec<_>>());
        for (link, slot) in out.into_iter().zip(slots) {
            at[link] = slot;
        }
    }
    at
}

/// Where lines leave a node of a width at `x`, for aims from left to right: so that they
/// have the least way across.
fn slots(x: f64, width: f64, aims: &[f64]) -> Vec<f64> {
    let at = |part: f64| x + part * width;
    match aims {
        [one, two] => {
            let pairs = [(-OUTER, 0.0), (0.0, OUTER), (-OUTER, OUTER)];
            let way = |pair: &(f64, f64)| (at(pair.0) - one).abs() + (at(pair.1) - two).abs();
            let best = pairs.into_iter().min_by(|a, b| way(a).total_cmp(&way(b)));
            best.map_or(Vec::new(), |(left, right)| vec![at(left), at(right)])
        }
        [] | [_] => vec![x; aims.len()],
        more => {
            let step = 2.0 * OUTER / count(more.len() - 1);
            (0..more.len()).map(|place| at(step * count(place) - OUTER)).collect()
        }
    }
}

/// A way through one gap.
#[derive(Debug, Clone, Copy)]
struct Line {
    from: f64,
    to: f64,
    /// The cell it goes to: lines to one cell join.
    aim: usize,
    route: usize,
    track: usize,
}

impl Line {
    fn is_straight(&self) -> bool {
        (self.from - self.to).abs() < NEAR
    }

    fn spans(&self, x: f64) -> bool {
        x > self.from.min(self.to) - NEAR && x < self.from.max(self.to) + NEAR
    }

    fn shares_room(&self, other: &Self) -> bool {
        let (low, high) = (self.from.min(self.to), self.from.max(self.to));
        let (other_low, other_high) = (other.from.min(other.to), other.from.max(other.to));
        low < other_high + NEAR && other_low < high + NEAR
    }

    /// What it costs if this line goes across above the other one.
    fn cost_above(&self, other: &Self) -> usize {
        let joins = self.aim == other.aim;
        let down = usize::from(!joins && other.spans(self.to));
        let up = usize::from(self.spans(other.from));
        // One vertical on the other would look like one line.
        let on = usize::from(!joins && (self.to - other.from).abs() < NEAR);
        down + up + 9 * on
    }
}

/// Gives lines that would lie on one another heights of their own; returns how many.
fn stack(lines: &mut [Line]) -> usize {
    let bent: Vec<usize> = (0..lines.len()).filter(|index| !lines[*index].is_straight()).collect();
    let better_above = |a: usize, b: usize| {
        let (line, other) = (lines[a], lines[b]);
        let (as_is, turned) = (line.cost_above(&other), other.cost_above(&line));
        line.shares_room(&other) && as_is < turned
    };
    let mut left = bent.clone();
    let mut order = Vec::new();
    while !left.is_empty() {
        // The one with the fewest that should be above it; in a knot, one has to give way.
        let above = |index: usize| {
            left.iter().filter(|other| **other != index && better_above(**other, index)).count()
        };
        let Some(place) = (0..left.len()).min_by_key(|place| above(left[*place])) else { break };
        order.push(left.remove(place));
    }
    let mut most = 0;
    for (place, &index) in order.iter().enumerate() {
        let line = lines[index];
        let used = order[..place].iter().filter(|other| lines[**other].shares_room(&line));
        let track = used.map(|other| lines[*other].track + 1).max().unwrap_or(0);
        lines[index].track = track;
        most = most.max(track + 1);
    }
    most
}

/// How often a line across meets a line down that is not its own.
fn crossings(lines: &[Line]) -> usize {
    let meets = |across: &Line, down: &Line| {
        if across.route == down.route || across.is_straight() {
            return 0;
        }
        let comes_down = across.spans(down.from) && (down.is_straight() || down.track > across.track);
        let goes_down = !down.is_straight()
            && across.aim != down.aim
            && across.spans(down.to)
            && down.track < across.track;
        // A straight line to the same cell is joined, not crossed.
        let joined = down.is_straight() && across.aim == down.aim;
        usize::from(comes_down && !joined) + usize::from(goes_down)
    };
    lines.iter().flat_map(|across| lines.iter().map(move |down| meets(across, down))).sum()
}
