//! Conditions on one value that can never let the request through together.

use std::collections::BTreeMap;

use crate::diag::{Finding, Findings};
use crate::physics::request::{self, Error, can_be_granted};
use crate::spec::{Condition, Set, Watch};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for (id, entry) in &set.requests {
        let mut watched: BTreeMap<(Watch, &str), Vec<(&Condition, request::Condition)>> = BTreeMap::new();
        for condition in &entry.item.conditions {
            let Some((watch, thing)) = condition.watch.first() else { continue };
            // What is wrong with one alone is another rule's.
            let Some(Ok(checked)) = thresholds(condition) else { continue };
            watched.entry((*watch, &thing.value)).or_default().push((condition, checked));
        }
        for together in watched.values() {
            let mut sofar = Vec::new();
            for (condition, checked) in together {
                sofar.push(*checked);
                if can_be_granted(&sofar) {
                    continue;
                }
                let Some(threshold) = &condition.threshold else { continue };
                let message = Message::new("rule-request-never").with("id", id);
                let label = Message::new("label-never-together");
                let mut finding = Finding::error(message, threshold.place.clone(), label);
                if let Some((other, _)) = together.first().filter(|_| sofar.len() > 1)
                    && let Some(other) = &other.threshold
                {
                    finding = finding.because(other.place.clone(), Message::new("label-threshold"));
                }
                findings.report(finding.help(Message::new("rule-request-never-help")));
                break;
            }
        }
    }
}

/// A condition by its thresholds alone: delays are waited for.
fn thresholds(condition: &Condition) -> Option<Result<request::Condition, Error>> {
    let kind = (condition.effect.as_ref()?.value, condition.side.as_ref()?.value);
    let levels = (condition.threshold.as_ref()?.value.number, condition.release.as_ref()?.value.number);
    Some(request::Condition::new(kind, levels, (0.0, 0.0)))
}
