//! The longest way to an end, by a weight of each node.

use super::Graph;

/// A way from a node to one that leads nowhere.
#[derive(Debug, Clone, PartialEq)]
pub struct Longest {
    /// Its nodes in order.
    pub nodes: Vec<usize>,
    /// The sum of their weights.
    pub weight: f64,
}

impl Graph {
    /// The longest way from a node; of equal ones the one whose first ways come first.
    ///
    /// A node without a weight weighs nothing. `None` where a loop can be reached, or
    /// the node is not there.
    #[must_use]
    pub fn longest(&self, from: usize, weights: &[f64]) -> Option<Longest> {
        let order = self.reading_order(from);
        let mut best: Vec<Option<(f64, Option<usize>)>> = vec![None; self.len()];
        for &node in order.iter().rev() {
            let own = weights.get(node).copied().unwrap_or_default();
            let mut most: Option<(f64, usize)> = None;
            for &next in self.next(node) {
                // Behind this node in the order, unless a loop leads back.
                let (weight, _) = best[next]?;
                if most.is_none_or(|(found, _)| weight > found) {
                    most = Some((weight, next));
                }
            }
            best[node] = Some(most.map_or((own, None), |(weight, next)| (own + weight, Some(next))));
        }
        let weight = (*best.get(from)?)?.0;
        let next = |node: &usize| best[*node].and_then(|(_, next)| next);
        Some(Longest { nodes: std::iter::successors(Some(from), next).collect(), weight })
    }
}

#[cfg(test)]
mod tests {
    use super::Graph;

    #[test]
    fn the_heavier_way_is_the_longest() {
        let graph = Graph::new(vec![vec![1, 2], vec![3], vec![3], vec![]]);
        let longest = graph.longest(0, &[1.0, 2.0, 5.0, 0.0]).expect("there is no loop");
        assert_eq!((longest.nodes.as_slice(), longest.weight), ([0, 2, 3].as_slice(), 6.0));
        let equal = graph.longest(0, &[1.0, 5.0, 5.0, 0.0]).expect("there is no loop");
        assert_eq!(equal.nodes, [0, 1, 3]);
    }

    #[test]
    fn a_loop_has_no_longest_way() {
        assert_eq!(Graph::new(vec![vec![1], vec![0]]).longest(0, &[1.0, 1.0]), None);
        assert_eq!(Graph::new(vec![]).longest(0, &[]), None);
    }
}
