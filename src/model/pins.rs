//! Which pins a sensor has at one end of its wires, and how they are seen.

use super::fact::Fact;
use crate::spec::{Role, Side, View};

/// A connector at one end of a sensor's wires.
#[derive(Debug, Clone)]
pub struct PinEnd {
    /// The connector's id, such as `C2`.
    pub connector: String,
    /// What the connector is.
    pub title: String,
    /// From where its face is seen.
    pub view: Option<View>,
    /// Which half of the pair is meant.
    pub side: Option<Side>,
    /// Where the latch is in that view.
    pub latch: Option<String>,
    /// The signal pin.
    pub signal: Option<PinUse>,
    /// The return pin, or the reference pin of a pull-down sensor.
    pub other: Option<PinUse>,
    /// The pin to measure volts against, where the other one carries the reference.
    pub ground: Option<PinUse>,
    /// What is missing at this end: a pin, the view, the side.
    pub missing: Vec<Fact>,
}

impl PinEnd {
    /// Every value shown with this end, and what is missing.
    pub fn facts(&self) -> impl Iterator<Item = &Fact> {
        let pins = self.signal.iter().chain(&self.other).chain(&self.ground);
        pins.flat_map(PinUse::facts).chain(&self.missing)
    }
}

/// One pin of a sensor.
#[derive(Debug, Clone)]
pub struct PinUse {
    /// As written: `C2/7`.
    pub name: String,
    /// Which pin it is, with its source.
    pub fact: Fact,
    /// The wire's colour letters and size, where the connector's table has them.
    pub wire: Option<Fact>,
}

/// A connector at one end of the wires of an actuator or a switched load.
#[derive(Debug, Clone)]
pub struct PartEnd {
    /// The connector's id, such as `C2`.
    pub connector: String,
    /// What the connector is.
    pub title: String,
    /// From where its face is seen.
    pub view: Option<View>,
    /// Which half of the pair is meant.
    pub side: Option<Side>,
    /// Where the latch is in that view.
    pub latch: Option<String>,
    /// The part's pins on it.
    pub pins: Vec<RolePin>,
    /// What is missing: the view, the side.
    pub missing: Vec<Fact>,
}

impl PartEnd {
    /// Every value shown with this end, and what is missing.
    pub fn facts(&self) -> impl Iterator<Item = &Fact> {
        self.pins.iter().flat_map(|pin| pin.pin.facts()).chain(&self.missing)
    }
}

/// One pin of an actuator, a light sensor, a transducer or a switched load.
#[derive(Debug, Clone)]
pub struct RolePin {
    /// What it does.
    pub role: Role,
    /// Which one it is.
    pub pin: PinUse,
}

impl PinUse {
    /// The values shown with this pin.
    pub fn facts(&self) -> impl Iterator<Item = &Fact> {
        std::iter::once(&self.fact).chain(&self.wire)
    }
}
