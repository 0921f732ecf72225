//! A set names its shop.

use crate::diag::{Finding, Findings, Place};
use crate::spec::Set;
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    if set.shop.is_some() {
        return;
    }
    // Said once, at the first paper that would carry the shop's name.
    let papers = set.cards.values().map(|entry| &entry.place);
    let sheets = set.sheets.values().map(|entry| &entry.place);
    let first: Option<&Place> = papers.chain(sheets).next();
    let Some(place) = first else { return };
    let message = Message::new("rule-no-shop");
    let finding = Finding::error(message, place.clone(), Message::new("label-needs-shop"));
    findings.report(finding.help(Message::new("rule-no-shop-help")));
}
