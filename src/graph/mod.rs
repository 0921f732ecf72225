//! Nodes and the ways between them: what can be reached, loops, the longest way, a map.
//!
//! Invariant: pure, and the same answer every time; it knows no spec, no text and no
//! millimetre. Nodes are numbers from 0, ways keep the order in which they were given.

mod longest;
mod loops;
pub mod map;

pub use longest::Longest;

/// Nodes and the ways that lead from each.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Graph {
    ways: Vec<Vec<usize>>,
}

impl Graph {
    /// A graph from the ways out of each node; a way to a node that is not there is left out.
    #[must_use]
    pub fn new(mut ways: Vec<Vec<usize>>) -> Self {
        let count = ways.len();
        ways.iter_mut().for_each(|out| out.retain(|to| *to < count));
        Self { ways }
    }

    /// How many nodes there are.
    #[must_use]
    pub fn len(&self) -> usize {
        self.ways.len()
    }

    /// Whether there is no node.
    #[must_use]
    pub fn is_empty(&self) -> bool {
        self.ways.is_empty()
    }

    /// Where the ways out of a node lead, in their order.
    #[must_use]
    pub fn next(&self, node: usize) -> &[usize] {
        self.ways.get(node).map_or(&[], Vec::as_slice)
    }

    /// Which nodes can be reached from one, itself among them.
    #[must_use]
    pub fn reachable(&self, from: usize) -> Vec<bool> {
        let mut met = vec![false; self.len()];
        let mut open = if from < self.len() { vec![from] } else { Vec::new() };
        while let Some(node) = open.pop() {
            if !std::mem::replace(&mut met[node], true) {
                open.extend(self.next(node));
            }
        }
        met
    }

    /// Nodes in the order in which a person meets them: none before all that lead to it,
    /// and behind each node, where that allows it, the one its first way leads to.
    ///
    /// Only nodes that can be reached; where there is a loop, it is entered once.
    #[must_use]
    pub fn reading_order(&self, from: usize) -> Vec<usize> {
        let mut met = vec![false; self.len()];
        let mut left = Vec::with_capacity(self.len());
        // Reverse postorder, last ways first: what the first way leads to is left last.
        let mut stack = Vec::new();
        if from < self.len() {
            met[from] = true;
            stack.push((from, self.next(from).len()));
        }
        while let Some((node, open)) = stack.last_mut() {
            if *open == 0 {
                left.push(*node);
                stack.pop();
                continue;
            }
            *open -= 1;
            let next = self.next(*node)[*open];
            if !std::mem::replace(&mut met[next], true) {
                stack.push((next, self.next(next).len()));
            }
        }
        left.reverse();
        left
    }
}

#[cfg(test)]
mod tests {
    use super::Graph;

    #[test]
    fn what_can_be_reached() {
        let graph = Graph::new(vec![vec![1], vec![1], vec![0]]);
        assert_eq!(graph.reachable(0), [true, true, false]);
        assert_eq!(graph.reachable(7), [false, false, false]);
    }

    #[test]
    fn the_first_way_is_read_on_and_nothing_comes_before_what_leads_to_it() {
        // 0 → 3 or 1; 3 → 2; 1 → 2.
        let graph = Graph::new(vec![vec![3, 1], vec![2], vec![], vec![2]]);
        assert_eq!(graph.reading_order(0), [0, 3, 1, 2]);
        let graph = Graph::new(vec![vec![1, 3], vec![2], vec![], vec![]]);
        assert_eq!(graph.reading_order(0), [0, 1, 2, 3]);
    }
}
