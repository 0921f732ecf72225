//! `[light.ID]`: a sun or light sensor as its documents describe it.

use super::reader::Reader;
use super::roles::{self, RolePin};
use super::value::{At, Sourced};
use crate::quantity::{Current, Irradiance, Resistance, Toleranced, Voltage, scalar, toleranced};

/// A light sensor.
#[derive(Debug, Clone)]
pub struct Light {
    /// Its name.
    pub title: Option<At<String>>,
    /// The system it belongs to.
    pub system: Option<At<String>>,
    /// Where in the vehicle it sits.
    pub location: Option<Sourced<String>>,
    /// The photocurrent at `at`.
    pub current: Option<Sourced<Toleranced<Current>>>,
    /// The irradiance that `current` holds at.
    pub at: Option<Sourced<Irradiance>>,
    /// The greatest current in the dark.
    pub dark: Option<Sourced<Current>>,
    /// How the control unit reads it.
    pub circuit: Option<LightCircuit>,
    /// The least difference of volts between covered and lit.
    pub least_span: Option<Sourced<Voltage>>,
    /// Its pins.
    pub pins: Vec<RolePin>,
    /// What to do next, in steps.
    pub next: Option<Vec<At<String>>>,
}

/// How the control unit reads a light sensor.
#[derive(Debug, Clone)]
pub struct LightCircuit {
    /// Which way the volts go.
    pub topology: Option<At<LightTopology>>,
    /// The pull-up or load resistor.
    pub resistor: Option<Sourced<Toleranced<Resistance>>>,
    /// The reference, where it is not the system's.
    pub reference: Option<Sourced<Toleranced<Voltage>>>,
}

/// Which way a light sensor's volts go.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LightTopology {
    /// Resistor from reference to signal: lighter is fewer volts.
    PullUp,
    /// Resistor from signal to ground: lighter is more volts.
    Load,
}

impl Light {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "system"]);
        // A current means nothing without the light that makes it.
        for (key, other) in [("current", "at"), ("at", "current")] {
            if reader.has(key) {
                reader.require(&[other]);
            }
        }
        Self {
            title: reader.text("title"),
            system: reader.text("system"),
            location: reader.sourced_text("location"),
            current: reader.sourced("current", toleranced),
            at: reader.sourced("at", scalar),
            dark: reader.sourced("dark", scalar),
            circuit: reader.table("circuit").map(|circuit| LightCircuit::read(&circuit)),
            least_span: reader.sourced("least_span", scalar),
            pins: roles::read(reader, "pins", roles::READING),
            next: reader.texts("next"),
        }
    }
}

impl LightCircuit {
    fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["topology"]);
        let topologies = [("pull-up", LightTopology::PullUp), ("load", LightTopology::Load)];
        let circuit = Self {
            topology: reader.choice("topology", &topologies),
            resistor: reader.sourced("resistor", toleranced),
            reference: reader.sourced("reference", toleranced),
        };
        reader.finish();
        circuit
    }
}
