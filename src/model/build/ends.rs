//! The pins of a part, connector by connector.

use super::super::fact::Fact;
use super::super::pins::PartEnd;
use super::{parts, text};
use crate::spec::{self, Set};

/// The connectors that the pins of a part are on, in the order in which they are first named.
pub(super) fn of(set: &Set, key: &str, pins: &[spec::RolePin]) -> Vec<PartEnd> {
    let mut ends: Vec<PartEnd> = Vec::new();
    for pin in parts::pins(set, key, pins) {
        let Some((connector, _)) = pin.pin.name.split_once('/') else { continue };
        if let Some(end) = ends.iter_mut().find(|end| end.connector == connector) {
            end.pins.push(pin);
            continue;
        }
        let Some(entry) = set.connectors.get(connector).map(|entry| &entry.item) else { continue };
        let Some(title) = text(&entry.title) else { continue };
        // View and side say how to look: they have no source, but they can be missing.
        let look = [("view", "fact-view", entry.view.is_some()), ("side", "fact-side", entry.side.is_some())];
        let look = look.into_iter().filter(|(.., given)| !given);
        let missing = look
            .map(|(part, label, _)| Fact::new::<()>(format!("connector.{connector}.{part}"), label, None));
        ends.push(PartEnd {
            connector: connector.to_owned(),
            title,
            view: entry.view.as_ref().map(|view| view.value),
            side: entry.side.as_ref().map(|side| side.value),
            latch: text(&entry.latch),
            missing: missing.collect(),
            pins: vec![pin],
        });
    }
    ends
}
