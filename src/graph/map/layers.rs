//! Which layer each node stands in, and a place in every layer that a way passes.

use super::{Cell, Link, Plan, SPACE};
use crate::graph::Graph;

/// Room that a passing way takes, in widths of a node.
const PASSING: f64 = 0.1;

/// Cells and links in reading order; `None` where a loop can be reached.
///
/// A layer that is as wide as `most` is full: what comes later in the reading order goes
/// below it.
pub(super) fn plan(graph: &Graph, start: usize, widths: &[f64], most: f64) -> Option<Plan> {
    let order = graph.reading_order(start);
    let mut layer_of = vec![None; graph.len()];
    *layer_of.get_mut(start)? = Some(0_usize);
    let mut done = vec![false; graph.len()];
    let mut used: Vec<f64> = Vec::new();
    for &node in &order {
        done[node] = true;
        let width = widths.get(node).copied().unwrap_or(1.0);
        let mut layer = layer_of[node]?;
        used.resize(used.len().max(layer + 1), 0.0);
        while used.get(layer).is_some_and(|used| *used > 0.0 && used + SPACE + width > most) {
            layer += 1;
        }
        used.resize(used.len().max(layer + 1), 0.0);
        used[layer] += if used[layer] > 0.0 { SPACE + width } else { width };
        layer_of[node] = Some(layer);
        let below = layer + 1;
        for &next in graph.next(node) {
            if done[next] {
                return None;
            }
            layer_of[next] = layer_of[next].max(Some(below));
        }
    }
    let mut cells = Vec::new();
    let mut cell_of = vec![None; graph.len()];
    for &node in &order {
        cell_of[node] = Some(cells.len());
        let width = widths.get(node).copied().unwrap_or(1.0);
        cells.push(Cell { layer: layer_of[node]?, width, node: Some(node) });
    }
    let (mut links, mut ways) = (Vec::new(), Vec::new());
    for &node in &order {
        for (way, &next) in graph.next(node).iter().enumerate() {
            let mut above = cell_of[node]?;
            for layer in layer_of[node]? + 1..layer_of[next]? {
                links.push(Link { from: above, to: cells.len(), route: ways.len() });
                above = cells.len();
                cells.push(Cell { layer, width: PASSING, node: None });
            }
            links.push(Link { from: above, to: cell_of[next]?, route: ways.len() });
            ways.push((node, way, next));
        }
    }
    let depth = cells.iter().map(|cell| cell.layer).max()? + 1;
    let mut layers = vec![Vec::new(); depth];
    for (index, cell) in cells.iter().enumerate() {
        layers[cell.layer].push(index);
    }
    Some(Plan { cells, links, ways, layers })
}
