//! Specs exactly as written, and where each value stands.
//!
//! Every `*.toml` below a folder is read; each table names its kind and id.
//! Quantities are parsed here, so a wrong unit is found at its own place, but
//! nothing is computed and nothing is linked.
//!
//! Invariant: nothing is silently dropped. An unknown key is a finding, and a
//! value that is not there stays `None`.

mod actuator;
mod card;
mod checklist;
mod circuit;
mod coded;
mod component;
mod connector;
mod control;
mod curve;
mod demo;
mod driver;
mod duplicate;
mod expect;
mod face;
pub mod import;
mod instrument;
mod lamination;
mod light;
mod load;
mod mode;
mod panel;
mod paper_kind;
mod part;
mod points;
mod reader;
mod refrigerant;
mod register;
mod report;
mod request;
mod roles;
mod scaffold;
pub mod schema;
mod sensor;
mod set;
mod sheet;
mod shop;
mod symptom;
mod syntax;
mod test;
mod transducer;
mod value;
mod vehicle;
mod vent;
mod wire;

pub use actuator::{Actuator, Feedback, LoadTo, Motor, Stop, Stops, Sweep};
pub use card::{About, Card, Hangs};
pub use checklist::{Answer, Checklist, Cost, Ending, EndingKind, Exit, Near, Question, Work};
pub use circuit::{Circuit, Converter, OtherReader, Topology};
pub use coded::{Code, Contacts, DoorPosition, Ladder, LadderKind};
pub use component::{Component, Thing};
pub use connector::{Connector, Expected, Pin, Side, View};
pub use control::Control;
pub use curve::{Curve, Row};
pub use demo::DEMO;
pub use driver::{Blower, BlowerControl, Coil, Displacement, Drive, Driver, DriverKind, Limits};
pub use expect::{Expect, Form, Origin, RatioTo, SequenceStep, SweepKeys, TruthRow, WaveKeys};
pub use face::{Corner, Edge, FaceRow};
pub use instrument::{Instrument, InstrumentKind, Range};
pub use lamination::{Lamination, Place, Punch};
pub use light::{Light, LightCircuit, LightTopology};
pub use load::{demo, file, folder, text};
pub use mode::{Force, Mode};
pub use panel::Panel;
pub use paper_kind::PaperKind;
pub use part::{OF_CHECKLISTS, Part, Parts, Texts};
pub use points::points;
pub use reader::Pair;
pub use refrigerant::Refrigerant;
pub use register::{Act, Held, Issue, REGISTER_FILE, REGISTER_FORMAT, Register};
pub use report::Report;
pub use request::{Condition, Level, Request, Scenario, Watch};
pub use roles::{Role, RolePin};
pub use scaffold::{SCAFFOLD, SCHEMA_FILE};
pub use sensor::{Pins, SelfHeating, Sensor, Tolerance};
pub use set::{Entries, Entry, LONGEST_ID, Set};
pub use sheet::{Group, Measure, RowOf, Sheet, SheetRow, Spot, Surface};
pub use shop::{Decision, Paper, Shop, System};
pub use symptom::Symptom;
pub use test::{Differs, FaultRow, Function, Ignition, Probes, Reads, Test, Where};
pub use transducer::{LinePoint, Sense, Transducer};
pub use value::{At, Sourced};
pub use vehicle::Vehicle;
pub use vent::{Position, Vent};
pub use wire::Wire;
