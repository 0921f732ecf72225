//! Whether conditions on one value can ever let a request through.

use std::collections::BTreeSet;

use super::trace::Region;
use super::{Condition, Phase};

/// Whether there is a value, and a way for it to get there, at which no condition holds the
/// request back; all of them watch the same value, and delays are waited for.
///
/// The value walks up and down over all thresholds and the places between them, from every
/// place that it may start at; each condition remembers whether it is set.
#[must_use]
pub fn can_be_granted(conditions: &[Condition]) -> bool {
    let places = places(conditions);
    if places.is_empty() {
        return true;
    }
    let start = |place: usize| {
        let set = conditions.iter().map(|c| c.at_start(c.region(places[place])) == Phase::Set);
        (place, set.collect::<Vec<_>>())
    };
    let mut open: Vec<(usize, Vec<bool>)> = (0..places.len()).map(start).collect();
    let mut seen: BTreeSet<(usize, Vec<bool>)> = open.iter().cloned().collect();
    while let Some((place, set)) = open.pop() {
        let phase = |set: bool| if set { Phase::Set } else { Phase::Clear };
        if !conditions.iter().zip(&set).any(|(condition, &set)| condition.holds_back(phase(set))) {
            return true;
        }
        let around = [place.checked_sub(1), place.checked_add(1).filter(|next| *next < places.len())];
        for next in around.into_iter().flatten() {
            let then = |(condition, &was): (&Condition, &bool)| match condition.region(places[next]) {
                Region::Past => true,
                Region::Between => was,
                Region::Back => false,
            };
            let state = (next, conditions.iter().zip(&set).map(then).collect::<Vec<_>>());
            if seen.insert(state.clone()) {
                open.push(state);
            }
        }
    }
    false
}

/// Every threshold, a place between each two of them, and one beyond both ends.
fn places(conditions: &[Condition]) -> Vec<f64> {
    let mut levels: Vec<f64> = conditions.iter().flat_map(|c| [c.threshold, c.release]).collect();
    levels.sort_by(f64::total_cmp);
    levels.dedup();
    let between = levels.windows(2).map(|pair| pair[0] + 0.5 * (pair[1] - pair[0])).collect::<Vec<_>>();
    let beyond = levels.first().zip(levels.last()).map(|(low, high)| [low - 1.0, high + 1.0]);
    levels.extend(between);
    levels.extend(beyond.into_iter().flatten());
    levels.sort_by(f64::total_cmp);
    levels.dedup();
    levels
}
