//! A release threshold beyond its threshold, or at it.

use crate::diag::{Finding, Findings};
use crate::physics::request::Side;
use crate::spec::Set;
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for condition in set.requests.values().flat_map(|entry| &entry.item.conditions) {
        let (Some(side), Some(threshold), Some(release)) =
            (&condition.side, &condition.threshold, &condition.release)
        else {
            continue;
        };
        let (at, lets_go) = (threshold.value.number, release.value.number);
        let (beyond, wanted) = match side.value {
            Side::Above => (lets_go > at, "wanted-release-below"),
            Side::Below => (lets_go < at, "wanted-release-above"),
        };
        let label = Message::new(wanted).with("threshold", &threshold.written);
        let finding = if beyond {
            let message = Message::new("rule-request-release")
                .with("threshold", &threshold.written)
                .with("release", &release.written);
            Finding::error(message, release.place.clone(), label)
                .help(Message::new("rule-request-release-help"))
        } else if lets_go.total_cmp(&at).is_eq() {
            let message = Message::new("rule-request-no-hysteresis").with("threshold", &threshold.written);
            let finding = Finding::warning(message, release.place.clone(), label);
            finding.help(Message::new("rule-request-no-hysteresis-help"))
        } else {
            continue;
        };
        findings.report(finding.because(threshold.place.clone(), Message::new("label-threshold")));
    }
}
