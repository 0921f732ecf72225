//! The modes of one system against its control points.

use super::fact::Fact;
use crate::physics::modes::{Cell, TruthTable};
use crate::quantity::Duration;

/// Panel modes and control points of one system.
#[derive(Debug)]
pub struct ModeSet {
    /// The system's id.
    pub system: String,
    /// The control points, as they stand in the specs.
    pub controls: Vec<Control>,
    /// The modes, in their order.
    pub modes: Vec<Mode>,
    /// What each mode does with each control point.
    pub table: TruthTable,
}

/// A control point.
#[derive(Debug)]
pub struct Control {
    /// Its id in the specs.
    pub id: String,
    /// Its name.
    pub title: String,
    /// Its values, in the lead's own words.
    pub values: Vec<String>,
    /// How its value can be seen, where given.
    pub observe: Option<String>,
    /// Its values, and how to see them.
    pub facts: Vec<Fact>,
}

/// A panel mode.
#[derive(Debug)]
pub struct Mode {
    /// Its id in the specs.
    pub id: String,
    /// Its name.
    pub title: String,
    /// What it does with each control point.
    pub cells: Vec<Cell>,
    /// How long it may take until every forced value is reached.
    pub time: Option<Duration>,
    /// What it forces, by source, and its time limit.
    pub facts: Vec<Fact>,
}
