//! Sensors, connectors, vehicles and papers, checked and linked.
//!
//! A value that exists here is valid, and a link leads to something. What a
//! spec left out stays `None`: it prints as NOT GIVEN and is never replaced.
//!
//! Invariant: this room reads no file and computes no reading.

mod actuator;
mod build;
mod checklist;
mod connector;
mod convert;
mod driver;
mod fact;
mod instrument;
mod lamination;
mod light;
pub mod load;
mod mode;
pub mod offered;
mod panel;
mod paper;
mod pins;
mod refrigerant;
pub mod request;
mod sensor;
pub mod strip;
mod test;
mod transducer;
mod vent;
mod wire;

use std::collections::BTreeMap;

pub use actuator::{Actuator, Contacts, PositionLadder, Stop, Stops, Sweep};
pub use build::{build, probes_of, step_number};
pub use checklist::{
    Chart, Checklist, Ending, Exit, MOST_LAYERS, MOST_WIDTH, Probes, Question, Symptom, Ways, ways,
};
pub use connector::{Connector, ConnectorPin, pin_order};
pub use convert::{
    bits_of, circuit, curve, ladder, ladder_contacts, light, tolerance, transducer, truth_table,
};
pub use driver::{Blower, Coil, Driver, Limits, Load, Solenoid, Step, Switched};
pub use fact::Fact;
pub use instrument::{Hygrometer, Multimeter, PressureGauge, Thermometer};
pub use lamination::{Lamination, Place, Punch};
pub use light::Light;
pub use mode::{Control, Mode, ModeSet};
pub use panel::{Panel, printed_scales};
pub use paper::{Card, Group, Report, Row, RowOf, Sheet};
pub use pins::{PartEnd, PinEnd, PinUse, RolePin};
pub use refrigerant::Refrigerant;
pub use request::Request;
pub use sensor::{Points, Sensor};
pub use test::{Bounds, Expect, SequenceStep, Sweep as TestSweep, SweepGiven, Test, TruthRow, Wave};
pub use transducer::Transducer;
pub use vent::{CabinAir, MOST_ROWS as MOST_VENT_ROWS, Position, Vent, steps as vent_steps};
pub use wire::Wire;

use crate::physics::atmosphere::Site;
use crate::physics::decision::Rule;
use crate::quantity::{Size, TemperatureDifference, Toleranced, Units, Voltage};
use crate::spec::{Paper, PaperKind, Sourced};

/// A whole set of specs, checked and linked.
#[derive(Debug)]
pub struct Model {
    /// The shop.
    pub shop: Shop,
    /// Systems by id.
    pub systems: BTreeMap<String, System>,
    /// Sensors by id.
    pub sensors: BTreeMap<String, Sensor>,
    /// Panel modes and control points by their system's id.
    pub mode_sets: BTreeMap<String, ModeSet>,
    /// Panels by id.
    pub panels: BTreeMap<String, Panel>,
    /// Thermometers by id.
    pub thermometers: BTreeMap<String, Thermometer>,
    /// Multimeters by id.
    pub multimeters: BTreeMap<String, Multimeter>,
    /// Switched loads by id.
    pub drivers: BTreeMap<String, Driver>,
    /// Wires by id.
    pub wires: BTreeMap<String, Wire>,
    /// Actuators by id.
    pub actuators: BTreeMap<String, Actuator>,
    /// Light sensors by id.
    pub lights: BTreeMap<String, Light>,
    /// Pressure transducers by id.
    pub transducers: BTreeMap<String, Transducer>,
    /// Connectors by id.
    pub connectors: BTreeMap<String, Connector>,
    /// Vehicles by id.
    pub vehicles: BTreeMap<String, Vehicle>,
    /// Cards by id.
    pub cards: BTreeMap<String, Card>,
    /// Sheets by id.
    pub sheets: BTreeMap<String, Sheet>,
    /// Result reports by id.
    pub reports: BTreeMap<String, Report>,
    /// Tests by id.
    pub tests: BTreeMap<String, Test>,
    /// Checklists by id.
    pub checklists: BTreeMap<String, Checklist>,
    /// Symptoms by id.
    pub symptoms: BTreeMap<String, Symptom>,
    /// Refrigerants by id.
    pub refrigerants: BTreeMap<String, Refrigerant>,
    /// Vents by id.
    pub vents: BTreeMap<String, Vent>,
    /// Requests by id.
    pub requests: BTreeMap<String, Request>,
}

/// The shop whose paper this is.
#[derive(Debug)]
pub struct Shop {
    /// Its name.
    pub title: String,
    /// The paper of its test sheets.
    pub paper: Paper,
    /// The units of what is printed, where no print says otherwise.
    pub units: Units,
    /// The sizes of its other papers, by kind, where it chose them.
    pub sizes: BTreeMap<PaperKind, Size>,
    /// A line printed in bold on every page.
    pub notice: Option<String>,
    /// How it decides over a reading near a limit.
    pub decision: Option<Rule>,
    /// How far a sensor may be from the thermometer beside it after soaking.
    pub soak: Option<TemperatureDifference>,
    /// Decision rule and soak, as written.
    pub facts: Vec<Fact>,
    /// Its air pressure, where its elevation was given.
    pub site: Option<Site>,
    /// Its elevation, as written.
    pub elevation: Fact,
    /// How it laminates cards, where it says so.
    pub lamination: Option<Lamination>,
}

/// One kind of climate system.
#[derive(Debug)]
pub struct System {
    /// Its name.
    pub title: String,
    /// Which vehicles it is fitted to.
    pub applicability: Option<Sourced<String>>,
    /// The reference its control unit feeds to sensors.
    pub reference: Option<Sourced<Toleranced<Voltage>>>,
    /// What the battery gives while sensors are measured.
    pub battery: Option<Sourced<Toleranced<Voltage>>>,
    /// Its high-voltage parts, which every paper says to keep away from.
    pub high_voltage: Option<Sourced<String>>,
}

/// One vehicle of the fleet.
#[derive(Debug)]
pub struct Vehicle {
    /// Its id in the specs.
    pub id: String,
    /// What the shop calls it.
    pub title: String,
    /// Its system's id.
    pub system: String,
    /// The registration mark.
    pub registration: Option<String>,
    /// The chassis number.
    pub chassis: Option<String>,
    /// When it was built.
    pub built: Option<String>,
}
