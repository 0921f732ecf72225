//! The modes of one system have a place each, or none of them has one.

use crate::diag::{Finding, Findings, Place};
use crate::spec::Set;
use crate::words::Message;

/// No panel has more modes, whatever numbers its maker gives them.
const LARGEST: f64 = 9999.0;

pub(super) fn check(set: &Set, findings: &Findings) {
    for order in set.modes.values().filter_map(|entry| entry.item.order.as_ref()) {
        let place = order.value;
        if !(place.abs() <= LARGEST && (place - libm::trunc(place)).abs() < f64::EPSILON) {
            let message = Message::new("rule-mode-order-whole").with("order", &order.written);
            findings.report(Finding::error(message, order.place.clone(), Message::new("wanted-whole")));
        }
    }
    for system in set.systems.keys() {
        let mut ordered: Option<&Place> = None;
        let mut before: Option<(f64, &Place)> = None;
        let modes = set.modes_of(system);
        for (_, entry) in &modes {
            let Some(order) = &entry.item.order else { continue };
            ordered = ordered.or(Some(&order.place));
            if let Some((_, first)) = before.filter(|(known, _)| known.total_cmp(&order.value).is_eq()) {
                let message = Message::new("rule-mode-order-twice").with("order", &order.written);
                let finding = Finding::error(message, order.place.clone(), Message::new("label-second"));
                findings.report(finding.because(first.clone(), Message::new("label-first")));
            }
            before = Some((order.value, &order.place));
        }
        let Some(first) = ordered else { continue };
        for (id, entry) in modes.iter().filter(|(_, entry)| entry.item.order.is_none()) {
            let message = Message::new("rule-mode-order-missing").with("id", id).with("system", system);
            let finding = Finding::error(message, entry.place.clone(), Message::new("wanted-order"));
            findings.report(finding.because(first.clone(), Message::new("label-order")));
        }
    }
}
