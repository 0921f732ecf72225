//! A shop without an elevation, or with one where nobody works.

use crate::diag::{Finding, Findings};
use crate::physics::atmosphere::ELEVATIONS;
use crate::spec::Set;
use crate::words::Message;

/// From the shore of the lowest lake to the highest roads, in metres (from memory).
const USUAL: (f64, f64) = (-450.0, 5_500.0);

pub(super) fn check(set: &Set, findings: &Findings) {
    let elevation = set.shop.as_ref().and_then(|shop| shop.item.elevation.as_ref());
    if let Some(elevation) = elevation {
        let metres = elevation.value.metres();
        let label = |low: f64, high: f64| {
            Message::new("wanted-inside").with("low", format!("{low} m")).with("high", format!("{high} m"))
        };
        if !ELEVATIONS.contains(&elevation.value) {
            let message = Message::new("rule-elevation-outside").with("written", &elevation.written);
            let label = label(ELEVATIONS.low.metres(), ELEVATIONS.high.metres());
            let finding = Finding::error(message, elevation.place.clone(), label);
            findings.report(finding.help(Message::new("rule-elevation-unit-help")));
        } else if !(USUAL.0..=USUAL.1).contains(&metres) {
            let message = Message::new("rule-elevation-unusual").with("written", &elevation.written);
            let finding = Finding::warning(message, elevation.place.clone(), label(USUAL.0, USUAL.1));
            findings.report(finding.help(Message::new("rule-elevation-unit-help")));
        }
        return;
    }
    // An elevation that stands there and was not read has its own finding. Without a shop
    // the set has another one.
    let Some(shop) = set.shop.as_ref().filter(|shop| !shop.item.has_elevation) else { return };
    let refrigerants = set.refrigerants.values().map(|entry| &entry.place);
    let vents = set.vents.values().map(|entry| &entry.place);
    let Some(first) = refrigerants.chain(vents).next() else { return };
    let message = Message::new("rule-elevation-missing");
    let finding = Finding::warning(message, shop.place.clone(), Message::new("wanted-elevation"));
    let finding = finding.because(first.clone(), Message::new("label-needs-elevation"));
    findings.report(finding.help(Message::new("rule-elevation-help")));
}
