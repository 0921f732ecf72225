//! The order of every layer's cells, so that few links cross.
//!
//! Cells are sorted by the mean place of those they are linked with, downwards and
//! upwards in turn, and neighbours change places while that helps; from several
//! beginnings, of which the first is the reading order and the others are drawn from a
//! generator with a fixed seed. The best is kept; of equal ones the first.

use super::{Plan, count};

const BEGINNINGS: u64 = 48;
/// So many are tried even where nothing crosses any more, for ways that lean less.
const ENOUGH: u64 = 3;
const SWEEPS: usize = 10;

/// Puts the layers of a plan into the best order found.
pub(super) fn arrange(plan: &mut Plan) {
    let links = Links::of(plan);
    let mut best: Option<(Cost, Vec<Vec<usize>>)> = None;
    for beginning in 0..BEGINNINGS {
        let mut layers = plan.layers.clone();
        shuffle(&mut layers, beginning);
        for sweep in 0..SWEEPS {
            sort(&mut layers, &links, sweep % 2 == 0);
            exchange(&mut layers, &links);
            let cost = links.cost(&layers);
            if best.as_ref().is_none_or(|(found, _)| cost < *found) {
                best = Some((cost, layers.clone()));
            }
        }
        let is_plain = best.as_ref().is_some_and(|((crossings, _), _)| *crossings == 0);
        if is_plain && beginning >= ENOUGH {
            break;
        }
    }
    if let Some((_, layers)) = best {
        plan.layers = layers;
    }
}

/// Crossings first, then how far links lean.
type Cost = (usize, usize);

/// The links as the cells at their ends see them.
struct Links {
    /// By the layer above them: pairs of cells.
    gaps: Vec<Vec<(usize, usize)>>,
    above: Vec<Vec<usize>>,
    below: Vec<Vec<usize>>,
    layer: Vec<usize>,
}

impl Links {
    fn of(plan: &Plan) -> Self {
        let count = plan.cells.len();
        let mut gaps = vec![Vec::new(); plan.layers.len()];
        let (mut above, mut below) = (vec![Vec::new(); count], vec![Vec::new(); count]);
        for link in &plan.links {
            gaps[plan.cells[link.from].layer].push((link.from, link.to));
            above[link.to].push(link.from);
            below[link.from].push(link.to);
        }
        let layer = plan.cells.iter().map(|cell| cell.layer).collect();
        Self { gaps, above, below, layer }
    }

    fn cost(&self, layers: &[Vec<usize>]) -> Cost {
        let at = places(layers, self.layer.len());
        let crossings = self.gaps.iter().map(|gap| crossings(gap, &at)).sum();
        // Twice the distance from the middle of a layer, so that it stays a whole number.
        let middle = |cell: usize| 2 * at[cell] + self.layer.len() - layers[self.layer[cell]].len();
        let lean = self.gaps.iter().flatten().map(|&(from, to)| middle(from).abs_diff(middle(to))).sum();
        (crossings, lean)
    }

    /// Whether fewer links cross where neighbours change places: no others than theirs can.
    fn cross_less_exchanged(&self, [left, right]: [usize; 2], at: &[usize]) -> bool {
        let (mut now, mut then) = (0, 0);
        for ends in [&self.above, &self.below] {
            for (a, b) in ends[left].iter().flat_map(|a| ends[right].iter().map(move |b| (at[*a], at[*b]))) {
                now += usize::from(a > b);
                then += usize::from(a < b);
            }
        }
        then < now
    }
}

fn crossings(gap: &[(usize, usize)], at: &[usize]) -> usize {
    let cross = |a: &(usize, usize), b: &(usize, usize)| {
        (at[a.0] < at[b.0] && at[a.1] > at[b.1]) || (at[a.0] > at[b.0] && at[a.1] < at[b.1])
    };
    gap.iter().enumerate().map(|(index, a)| gap[index + 1..].iter().filter(|b| cross(a, b)).count()).sum()
}

/// Each cell's place in its layer.
fn places(layers: &[Vec<usize>], count: usize) -> Vec<usize> {
    let mut at = vec![0; count];
    for layer in layers {
        layer.iter().enumerate().for_each(|(index, cell)| at[*cell] = index);
    }
    at
}

/// Sorts each layer by the mean place of the cells linked above, or below.
fn sort(layers: &mut [Vec<usize>], links: &Links, downwards: bool) {
    let depth = layers.len();
    for step in 0..depth {
        let layer = if downwards { step } else { depth - 1 - step };
        let at = places(layers, links.layer.len());
        let linked = if downwards { &links.above } else { &links.below };
        let mean = |cell: &usize| {
            let ends = &linked[*cell];
            let sum: usize = ends.iter().map(|end| at[*end]).sum();
            if ends.is_empty() { count(at[*cell]) } else { count(sum) / count(ends.len()) }
        };
        layers[layer].sort_by(|a, b| mean(a).total_cmp(&mean(b)));
    }
}

/// Lets neighbours change places while fewer links cross.
fn exchange(layers: &mut [Vec<usize>], links: &Links) {
    let mut at = places(layers, links.layer.len());
    let mut better = true;
    while better {
        better = false;
        for layer in layers.iter_mut() {
            for left in 1..layer.len() {
                if links.cross_less_exchanged([layer[left - 1], layer[left]], &at) {
                    at.swap(layer[left - 1], layer[left]);
                    layer.swap(left - 1, left);
                    better = true;
                }
            }
        }
    }
}

/// Another order to begin from; the first beginning is left as it is.
fn shuffle(layers: &mut [Vec<usize>], beginning: u64) {
    if beginning == 0 {
        return;
    }
    // Knuth's linear congruential generator (MMIX; constants from memory).
    let mut state = beginning;
    let mut draw = |below: usize| {
        state = state.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        usize::try_from(state >> 33).unwrap_or_default() % below
    };
    for layer in layers {
        for last in (1..layer.len()).rev() {
            layer.swap(last, draw(last + 1));
        }
    }
}
