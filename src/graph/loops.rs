//! Ways that come back to where they began.

use std::collections::VecDeque;

use super::Graph;

impl Graph {
    /// Loops, each as its nodes in order, the first not repeated; at least one of every
    /// knot of nodes that lead to one another, and the shortest through its first node.
    #[must_use]
    pub fn loops(&self) -> Vec<Vec<usize>> {
        let mut shown = vec![false; self.len()];
        let mut loops = Vec::new();
        for node in 0..self.len() {
            if shown[node] {
                continue;
            }
            if let Some(found) = self.back_to(node) {
                found.iter().for_each(|node| shown[*node] = true);
                loops.push(found);
            }
        }
        loops
    }

    /// The shortest way from a node back to itself.
    fn back_to(&self, start: usize) -> Option<Vec<usize>> {
        let mut before = vec![None; self.len()];
        let mut open = VecDeque::from([start]);
        while let Some(node) = open.pop_front() {
            for &next in self.next(node) {
                if next == start {
                    let mut way = vec![node];
                    while let Some(previous) = before[*way.last()?] {
                        way.push(previous);
                    }
                    way.reverse();
                    return Some(way);
                }
                if before[next].is_none() {
                    before[next] = Some(node);
                    open.push_back(next);
                }
            }
        }
        None
    }
}

#[cfg(test)]
mod tests {
    use super::Graph;

    #[test]
    fn a_loop_is_shown_with_its_nodes_in_order() {
        let graph = Graph::new(vec![vec![1], vec![2, 4], vec![3], vec![1], vec![]]);
        assert_eq!(graph.loops(), [[1, 2, 3]]);
    }

    #[test]
    fn two_knots_are_two_loops_and_a_node_may_lead_to_itself() {
        let graph = Graph::new(vec![vec![1], vec![0, 2], vec![2]]);
        assert_eq!(graph.loops(), [vec![0, 1], vec![2]]);
        assert!(Graph::new(vec![vec![1, 1], vec![]]).loops().is_empty());
    }
}
