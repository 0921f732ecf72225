//! The pins of a part, connector by connector.

use super::super::pins::{PartEnd, PinEnd};
use super::{parts, plug};
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
        let Some(plug) = plug(set, connector) else { continue };
        let PinEnd { connector, title, view, side, latch, missing, .. } = plug;
        ends.push(PartEnd { connector, title, view, side, latch, missing, pins: vec![pin] });
    }
    ends
}
