//! Where in its layer each cell stands: in order, apart, and under what leads to it.

use super::{Plan, SPACE};

const SWEEPS: usize = 400;

/// Moves smaller than this change nothing that can be seen.
const SETTLED: f64 = 1e-5;

/// How much a straight line is wanted between two passing places, or one and a node;
/// between two nodes it counts once.
const PASSING: f64 = 3.0;

/// The middle of every cell, and the width of the whole.
pub(super) fn place(plan: &Plan) -> (Vec<f64>, f64) {
    let width = plan.layers.iter().map(|layer| needed(plan, layer)).fold(0.0, f64::max);
    let mut x = vec![width / 2.0; plan.cells.len()];
    for layer in &plan.layers {
        settle(plan, layer, &mut x, width, |_| (0.0, 0.0));
    }
    let linked = linked(plan);
    for sweep in 0..SWEEPS {
        let before = x.clone();
        let depth = plan.layers.len();
        for step in 0..depth {
            let index = if sweep % 2 == 0 { step } else { depth - 1 - step };
            let layer = &plan.layers[index];
            let pulls: Vec<(f64, f64)> = layer.iter().map(|cell| pull(&linked[*cell], &x)).collect();
            settle(plan, layer, &mut x, width, |at| pulls[at]);
        }
        if before.iter().zip(&x).all(|(before, after)| (before - after).abs() < SETTLED) {
            break;
        }
    }
    (x, width)
}

/// The cells that each is linked with, and how strongly.
fn linked(plan: &Plan) -> Vec<Vec<(usize, f64)>> {
    let mut linked = vec![Vec::new(); plan.cells.len()];
    for link in &plan.links {
        let passes = [link.from, link.to].iter().filter(|cell| plan.cells[**cell].node.is_none()).count();
        let weight = match passes {
            0 => 1.0,
            1 => PASSING,
            _ => PASSING * PASSING,
        };
        for (cell, other) in [(link.from, link.to), (link.to, link.from)] {
            linked[cell].push((other, weight));
        }
    }
    linked
}

/// Where its links would have a cell, and how strongly.
fn pull(linked: &[(usize, f64)], x: &[f64]) -> (f64, f64) {
    let add = |(sum, weights), &(other, weight): &(usize, f64)| (sum + weight * x[other], weights + weight);
    linked.iter().fold((0.0, 0.0), add)
}

fn needed(plan: &Plan, layer: &[usize]) -> f64 {
    layer.iter().map(|cell| plan.cells[*cell].width + SPACE).sum::<f64>() - SPACE
}

/// Moves the cells of a layer as near to where they are pulled, by their place in it, as order and
/// distance allow.
///
/// Isotonic regression by pooling adjacent violators, over the places less the room that
/// the cells to the left take; clamping its answer keeps it the best within the width.
fn settle(plan: &Plan, layer: &[usize], x: &mut [f64], width: f64, pull: impl Fn(usize) -> (f64, f64)) {
    let mut pools: Vec<(f64, f64, usize)> = Vec::new();
    let mut taken = 0.0;
    let mut offsets = Vec::new();
    for (at, &cell) in layer.iter().enumerate() {
        let half = plan.cells[cell].width / 2.0;
        offsets.push(taken + half);
        let (sum, weight) = pull(at);
        // A cell that nothing pulls stays where it is, lightly.
        let (aim, weight) = if weight > 0.0 { (sum / weight, weight) } else { (x[cell], 1e-3) };
        let aim = aim - (taken + half);
        pools.push((aim * weight, weight, 1));
        while let [.., before, last] = pools.as_mut_slice()
            && before.0 / before.1 > last.0 / last.1
        {
            *before = (before.0 + last.0, before.1 + last.1, before.2 + last.2);
            pools.pop();
        }
        taken += plan.cells[cell].width + SPACE;
    }
    let room = (width - needed(plan, layer)).max(0.0);
    let aims = pools.iter().flat_map(|pool| std::iter::repeat_n((pool.0 / pool.1).clamp(0.0, room), pool.2));
    for ((cell, offset), aim) in layer.iter().zip(offsets).zip(aims) {
        x[*cell] = aim + offset;
    }
}
