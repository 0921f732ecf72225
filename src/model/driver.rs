//! A checked load: its coil or motor, what feeds it, what it does.

use super::fact::Fact;
use super::pins::PartEnd;
use crate::physics::blower::{Motor, Side};
use crate::physics::coil::RatedCoil;
use crate::physics::solenoid::ControlCurve;
use crate::quantity::{Frequency, Inductance, Interval, Ratio, Resistance, Temperature, Toleranced, Voltage};

/// A load that the control unit switches.
#[derive(Debug)]
pub struct Driver {
    /// Its id in the specs.
    pub id: String,
    /// Its name.
    pub title: String,
    /// Its system's id.
    pub system: String,
    /// On which side of the load the switch is, where given.
    pub polarity: Option<Side>,
    /// The battery from its lowest to its highest voltage, where given.
    pub battery: Option<Interval<Voltage>>,
    /// The battery that nominal figures are computed for, where given.
    pub nominal: Option<Voltage>,
    /// Where in the vehicle it sits.
    pub location: Option<String>,
    /// What its wires and contacts may lose.
    pub limits: Limits,
    /// The pins at its own plug, connector by connector.
    pub own_ends: Vec<PartEnd>,
    /// Its pins at the control unit.
    pub unit_ends: Vec<PartEnd>,
    /// Its coil or its motor.
    pub load: Load,
    /// What to do next, in the lead's own words.
    pub next: Vec<String>,
    /// The values behind its figures.
    pub facts: Vec<Fact>,
}

/// How much the wires and contacts of a load may lose while its current flows.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Limits {
    /// On the way from battery positive, without the switch.
    pub supply: Option<Voltage>,
    /// On the way to battery negative, without the switch.
    pub ground: Option<Voltage>,
    /// Across the closed contact of a relay.
    pub contact: Option<Voltage>,
}

/// What is switched.
#[derive(Debug)]
pub enum Load {
    /// A coil that is on or off: a clutch, a relay.
    Coil(Coil, Switched),
    /// A coil that is switched quickly, to set its mean current.
    Solenoid(Coil, Solenoid),
    /// A blower motor.
    Blower(Blower),
}

/// Which load a coil that is on or off belongs to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Switched {
    /// The clutch of a compressor.
    Clutch,
    /// A relay.
    Relay,
}

/// A copper coil.
#[derive(Debug)]
pub struct Coil {
    /// Its resistance at its rated temperature.
    pub rated: RatedCoil,
    /// How cold and how hot it gets in service, where given.
    pub temperature: Option<Interval<Temperature>>,
    /// The least resistance from coil to case, where given.
    pub isolation: Option<Resistance>,
}

/// How a solenoid is switched, and what its current does.
#[derive(Debug)]
pub struct Solenoid {
    /// Lost in the switch.
    pub switch_drop: Option<Toleranced<Voltage>>,
    /// Across the freewheel diode.
    pub diode_drop: Option<Toleranced<Voltage>>,
    /// How often it is switched.
    pub frequency: Option<Frequency>,
    /// The coil's inductance and the switching frequency, where both are given.
    pub timing: Option<(Inductance, Frequency)>,
    /// The duties of the spec, where it lists any.
    pub steps: Option<Vec<Ratio>>,
    /// Displacement against control current.
    pub control: Option<ControlCurve>,
}

/// A blower and its steps.
#[derive(Debug)]
pub struct Blower {
    /// Current against voltage, where current, voltage and exponent are given.
    pub motor: Option<Motor>,
    /// What sets the voltage across the motor.
    pub steps: Vec<Step>,
    /// Lost in the relay that bypasses at the highest step, where given.
    pub bypass_drop: Option<Voltage>,
    /// The resistance of the wires, where given.
    pub wiring: Option<Resistance>,
}

/// One step of a blower.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Step {
    /// A part of the battery's voltage, and how far it may be off, where given.
    Part(Ratio, Option<Ratio>),
    /// A resistor in series with the motor.
    Resistor(Toleranced<Resistance>),
}
