//! Which pins a sensor has at one end of its wires, and how they are seen.

use super::fact::Fact;
use crate::spec::{Side, View};

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
    /// The values shown with this end.
    pub facts: Vec<Fact>,
}

/// One pin of a sensor.
#[derive(Debug, Clone)]
pub struct PinUse {
    /// As written: `C2/7`.
    pub name: String,
    /// The wire's colour letters and size.
    pub wire: Option<String>,
    /// Where the pin assignment comes from.
    pub source: Option<String>,
}
