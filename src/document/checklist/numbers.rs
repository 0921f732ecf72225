//! Numbers of steps and letters of endings, in the order in which a person meets them.

use crate::document::marks::letters_of;
use crate::graph::Longest;
use crate::model::Checklist;
use crate::quantity::Scalar;

/// The reading order of a checklist.
pub(in crate::document) struct Numbers {
    /// Steps, the first one first.
    pub steps: Vec<usize>,
    /// Endings, in the order in which the steps name them.
    pub endings: Vec<usize>,
    /// The way that takes longest, and its seconds.
    pub longest: Longest,
}

impl Numbers {
    /// `None` where the rules would have refused: a loop, or no beginning.
    pub(in crate::document) fn of(checklist: &Checklist) -> Option<Self> {
        let ways = &checklist.ways;
        let start = ways.start?;
        let order = ways.graph.reading_order(start);
        let steps: Vec<usize> = order.into_iter().filter(|node| !ways.is_ending(*node)).collect();
        let mut endings = Vec::new();
        for exit in steps.iter().flat_map(|node| &checklist.steps[*node].exits) {
            if ways.is_ending(exit.to) && !endings.contains(&exit.to) {
                endings.push(exit.to);
            }
        }
        let seconds: Vec<f64> = checklist.steps.iter().map(|step| step.time.si()).collect();
        Some(Self { steps, endings, longest: ways.graph.longest(start, &seconds)? })
    }

    /// A step's number, an ending's letter.
    pub(in crate::document) fn mark(&self, node: usize) -> String {
        if let Some(place) = self.steps.iter().position(|step| *step == node) {
            return (place + 1).to_string();
        }
        let place = self.endings.iter().position(|ending| *ending == node).unwrap_or_default();
        letters_of(place).to_uppercase()
    }

    /// Whether the longest way leads from one node straight to another.
    pub(in crate::document) fn on_longest(&self, from: usize, to: usize) -> bool {
        self.longest.nodes.windows(2).any(|pair| pair == [from, to])
    }
}
