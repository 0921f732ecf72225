//! A size that a kind of paper is not laid out for, and a strip table that is no sensor's.

use crate::diag::{Finding, Findings, Place};
use crate::model::offered;
use crate::quantity::Size;
use crate::spec::{PaperKind, Set};
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    if let Some(shop) = &set.shop {
        for (kind, size) in &shop.item.sizes {
            refuse(*kind, size.value, &size.place, findings);
        }
    }
    for card in set.cards.values().map(|entry| &entry.item) {
        let (Some(kind), Some(size)) = (card.kind(), &card.size) else { continue };
        refuse(kind, size.value, &size.place, findings);
    }
}

fn refuse(kind: PaperKind, size: Size, place: &Place, findings: &Findings) {
    if offered::sizes(kind).any(|offered| offered == size) {
        return;
    }
    let sizes = super::quoted(offered::sizes(kind).map(Size::name));
    let message = Message::new("rule-size-not-offered").with_word("kind", kind.word()).with("size", size);
    let label = Message::new("wanted-one-of").with("words", sizes);
    findings.report(Finding::error(message, place.clone(), label));
}
