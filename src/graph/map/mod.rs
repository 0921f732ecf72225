//! A graph laid out in layers from top to bottom, each way as lines that keep clear of nodes.
//!
//! A node stands below the lowest of those that lead to it, in the next layer that has
//! room. Where a way passes
//! layers it gets a place of its own in each, so that it runs beside the nodes; then the
//! places of every layer are ordered so that few ways cross, and moved so that ways are
//! straight where they can be.
//!
//! Layered drawing after K. Sugiyama, S. Tagawa, M. Toda, "Methods for visual understanding
//! of hierarchical system structures" (1981; from memory).

mod layers;
mod order;
mod place;
mod route;

use super::Graph;

/// Empty room between neighbours of a layer, in widths of a node.
pub const SPACE: f64 = 0.14;

/// A graph laid out. Lengths are in widths of a node, from the left edge.
#[derive(Debug, Clone, PartialEq)]
pub struct Map {
    /// How many layers there are.
    pub layers: usize,
    /// How wide the widest layer is.
    pub width: f64,
    /// Where each node stands; `None` for those that cannot be reached.
    pub places: Vec<Option<Place>>,
    /// Every way, by its node and in the order of its ways.
    pub routes: Vec<Route>,
    /// How many horizontal lines one above the other each gap between layers needs.
    pub tracks: Vec<usize>,
    /// How often a line crosses another.
    pub crossings: usize,
}

/// Where a node stands.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Place {
    /// Its layer, from the top.
    pub layer: usize,
    /// Its middle.
    pub x: f64,
}

/// The lines of one way, one [`Bend`] for each gap that it passes.
#[derive(Debug, Clone, PartialEq)]
pub struct Route {
    /// The node it leaves.
    pub from: usize,
    /// Which of that node's ways it is.
    pub way: usize,
    /// The node it leads to.
    pub to: usize,
    /// From layer to layer.
    pub bends: Vec<Bend>,
}

/// Down from the layer above, across, and down to the layer below.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bend {
    /// The layer above the gap.
    pub gap: usize,
    /// Where it comes down from.
    pub from: f64,
    /// Where it goes down to.
    pub to: f64,
    /// The height of the line across, from the top; 0 and of no meaning where it is straight.
    pub track: usize,
}

/// Lays a graph out; `widths` are those of its nodes, and no layer gets more of them than
/// fit into `most`. `None` where a loop can be reached.
#[must_use]
pub fn draw(graph: &Graph, start: usize, widths: &[f64], most: f64) -> Option<Map> {
    let mut plan = layers::plan(graph, start, widths, most)?;
    order::arrange(&mut plan);
    let (x, width) = place::place(&plan);
    Some(route::route(graph, &plan, &x, width))
}

/// Something that takes room in a layer.
#[derive(Debug, Clone)]
struct Cell {
    layer: usize,
    width: f64,
    /// `None` where only a way passes.
    node: Option<usize>,
}

/// A piece of a way from one layer to the next.
#[derive(Debug, Clone, Copy)]
struct Link {
    from: usize,
    to: usize,
    /// Which way it is a piece of.
    route: usize,
}

/// All cells with their order in each layer, and the links between them.
#[derive(Debug, Clone)]
struct Plan {
    cells: Vec<Cell>,
    links: Vec<Link>,
    /// Of each way: its node, which of its ways, and where it leads.
    ways: Vec<(usize, usize, usize)>,
    /// Cells of each layer from left to right.
    layers: Vec<Vec<usize>>,
}

/// A count as a number.
#[must_use]
pub fn count(count: usize) -> f64 {
    u32::try_from(count).map_or(f64::INFINITY, f64::from)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn drawn(ways: Vec<Vec<usize>>) -> Map {
        let widths = vec![1.0; ways.len()];
        draw(&Graph::new(ways), 0, &widths, 9.0).expect("there is no loop")
    }

    #[test]
    fn a_chain_is_a_straight_line() {
        let map = drawn(vec![vec![1], vec![2], vec![]]);
        assert_eq!((map.layers, map.crossings, map.tracks), (3, 0, vec![0, 0]));
        assert!(
            map.routes.iter().flat_map(|route| &route.bends).all(|bend| (bend.from - bend.to).abs() < 1e-9)
        );
    }

    #[test]
    fn a_way_past_a_layer_keeps_clear_of_its_nodes() {
        // 0 → 1 → 2 and 0 → 2.
        let map = drawn(vec![vec![1, 2], vec![2], vec![]]);
        let long = map.routes.iter().find(|route| route.bends.len() == 2).expect("it passes a layer");
        let beside = map.places[1].expect("it is reached").x;
        assert!((long.bends[0].to - beside).abs() > 0.5, "{map:?}");
        assert_eq!(map.crossings, 0);
    }

    #[test]
    fn two_nodes_that_share_both_aims_cross_once() {
        // K₂,₂ between two layers cannot be drawn without a crossing.
        let map = drawn(vec![vec![1, 2], vec![3, 4], vec![4, 3], vec![], vec![]]);
        assert_eq!(map.crossings, 1);
    }
}
