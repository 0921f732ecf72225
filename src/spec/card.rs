//! `[card.ID]`: one laminated sensor card.

use super::reader::Reader;
use super::value::{At, Sourced};
use crate::quantity::{Interval, Temperature, TemperatureDifference, interval, scalar};

/// A sensor card.
#[derive(Debug, Clone)]
pub struct Card {
    /// The sensor it is about.
    pub sensor: Option<At<String>>,
    /// The multimeter whose loading its volts include.
    pub meter: Option<At<String>>,
    /// The step of its strip table; chosen to fit where it is left out.
    pub step: Option<Sourced<TemperatureDifference>>,
    /// The temperatures of its strip table, where not the whole range.
    pub range: Option<Sourced<Interval<Temperature>>>,
    /// The temperature of its worked example.
    pub example: Option<Sourced<Temperature>>,
}

impl Card {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["sensor"]);
        Self {
            sensor: reader.text("sensor"),
            meter: reader.text("meter"),
            step: reader.sourced("step", scalar),
            range: reader.sourced("range", interval),
            example: reader.sourced("example", scalar),
        }
    }
}
