//! The fewest modes that together visit every pair.

/// The most modes for which the smallest set is proven.
pub const MOST_EXACT: usize = 20;

/// A set of modes that visits every forced pair.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Cover {
    /// The modes, in their order.
    pub modes: Vec<usize>,
    /// How many modes every such set needs at least.
    pub at_least: usize,
}

impl Cover {
    /// Whether no smaller set visits every pair.
    #[must_use]
    pub fn is_proven(&self) -> bool {
        self.modes.len() == self.at_least
    }
}

/// The smallest set out of `modes` modes that meets each list of visitors.
pub(super) fn smallest(modes: usize, visitors: &[Vec<usize>]) -> Cover {
    if modes > MOST_EXACT {
        return Cover { modes: greedy(modes, visitors), at_least: disjoint(visitors) };
    }
    let masks = masks(visitors);
    for size in 0..=modes {
        if let Some(found) = first_of_size(&masks, modes, size, Chosen { set: 0, next: 0 }) {
            let modes = (0..modes).filter(|mode| found & bit(*mode) != 0).collect();
            return Cover { modes, at_least: size };
        }
    }
    // Every pair has a visitor, so all modes together visit every pair.
    Cover { modes: (0..modes).collect(), at_least: modes }
}

/// A mode's bit; only for as many modes as are searched exactly.
fn bit(mode: usize) -> u32 {
    1 << mode
}

/// The visitors of each pair as bits, without those that another pair implies.
fn masks(visitors: &[Vec<usize>]) -> Vec<u32> {
    let mut masks: Vec<u32> =
        visitors.iter().map(|modes| modes.iter().fold(0, |mask, mode| mask | bit(*mode))).collect();
    // A pair with few visitors leaves the least choice: ask for it first.
    masks.sort_unstable_by_key(|mask| (mask.count_ones(), *mask));
    let mut kept: Vec<u32> = Vec::new();
    for mask in masks {
        if !kept.iter().any(|fewer| fewer & mask == *fewer) {
            kept.push(mask);
        }
    }
    kept
}

/// Modes chosen so far, and the first that may still be.
#[derive(Clone, Copy)]
struct Chosen {
    set: u32,
    next: usize,
}

/// The lexicographically first set that adds `left` modes to `chosen` and meets every mask.
fn first_of_size(masks: &[u32], modes: usize, left: usize, chosen: Chosen) -> Option<u32> {
    let mut unmet = masks.iter().filter(|mask| *mask & chosen.set == 0);
    if left == 0 {
        return unmet.next().is_none().then_some(chosen.set);
    }
    // A pair whose last visitor is behind us can't be met any more; of the
    // others, the one that ends first says how far the next mode may lie.
    let last = unmet.map(|mask| mask.checked_ilog2().map_or(0, |at| at as usize)).min();
    let last = last.unwrap_or(modes).min(modes.saturating_sub(left));
    (chosen.next..=last).find_map(|mode| {
        let chosen = Chosen { set: chosen.set | bit(mode), next: mode + 1 };
        first_of_size(masks, modes, left - 1, chosen)
    })
}

/// Takes the mode that visits the most unvisited pairs, again and again; then
/// leaves out every mode that turned out not to be needed.
fn greedy(modes: usize, visitors: &[Vec<usize>]) -> Vec<usize> {
    let mut unvisited: Vec<&Vec<usize>> = visitors.iter().collect();
    let mut chosen: Vec<usize> = Vec::new();
    while !unvisited.is_empty() {
        let gain = |mode: &usize| unvisited.iter().filter(|modes| modes.contains(mode)).count();
        // Of equal ones the first: `max_by_key` keeps the last, so it is asked backwards.
        let Some(best) = (0..modes).rev().max_by_key(gain).filter(|mode| gain(mode) > 0) else { break };
        unvisited.retain(|modes| !modes.contains(&best));
        chosen.push(best);
    }
    chosen.sort_unstable();
    for mode in chosen.clone().into_iter().rev() {
        let without = |modes: &Vec<usize>| modes.iter().any(|m| *m != mode && chosen.contains(m));
        if visitors.iter().all(without) {
            chosen.retain(|kept| *kept != mode);
        }
    }
    chosen
}

/// How many pairs share no visitor with one another: each needs a mode of its own.
fn disjoint(visitors: &[Vec<usize>]) -> usize {
    let mut by_choice: Vec<&Vec<usize>> = visitors.iter().collect();
    by_choice.sort_by_key(|modes| modes.len());
    let mut taken: Vec<usize> = Vec::new();
    let mut count = 0;
    for modes in by_choice {
        if !modes.iter().any(|mode| taken.contains(mode)) {
            taken.extend(modes);
            count += 1;
        }
    }
    count
}
