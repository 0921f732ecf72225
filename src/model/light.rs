//! A checked light sensor.

use super::fact::Fact;
use super::pins::RolePin;
use crate::physics::light::LightSensor;
use crate::quantity::Voltage;

/// A sun or light sensor.
#[derive(Debug)]
pub struct Light {
    /// Its id in the specs.
    pub id: String,
    /// Its name.
    pub title: String,
    /// Its system's id.
    pub system: String,
    /// Where it sits.
    pub location: Option<String>,
    /// Photocurrent and circuit, where both were given whole.
    pub sensor: Option<LightSensor>,
    /// The least difference of volts between covered and lit.
    pub least_span: Option<Voltage>,
    /// Its pins.
    pub pins: Vec<RolePin>,
    /// What to do next, in the lead's own words.
    pub next: Vec<String>,
    /// The values behind its figures.
    pub facts: Vec<Fact>,
}
