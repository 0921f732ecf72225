//! A card of a connector on which something hangs, in a view that can be drawn.

use crate::diag::{Finding, Findings};
use crate::spec::{About, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for card in set.cards.values().map(|entry| &entry.item) {
        let Some(about) = card.of(About::Connector) else { continue };
        let Some(entry) = set.connectors.get(&about.value) else { continue };
        // Such wiring has a finding of its own.
        if super::airbag::is_airbag(&entry.item).is_some() {
            continue;
        }
        let on_it = |pin: &str| pin.split_once('/').is_some_and(|(connector, _)| connector == about.value);
        if !super::pins::written(set).any(|pin| on_it(&pin.value)) {
            let message = Message::new("rule-connector-unused").with("id", &about.value);
            let label = Message::new("wanted-used-connector").with("id", &about.value);
            findings.report(Finding::error(message, about.place.clone(), label));
        }
        if let (Some(view), None) = (&card.view, &entry.item.rows) {
            let message = Message::new("rule-view-no-rows").with("id", &about.value);
            let finding = Finding::error(message, view.place.clone(), Message::new("wanted-rows"));
            findings.report(finding.because(entry.place.clone(), Message::new("label-connector")));
        }
    }
}
