//! A checked test: what is measured, where, in which state, and what is expected.

use super::fact::Fact;
use super::instrument::Multimeter;
use super::pins::{PinEnd, PinUse};
use crate::quantity::{Duration, Frequency, Interval, Measured, Pressure, Ratio, Voltage};
use crate::spec::{Function, Ignition, Origin, RatioTo, Reads, Sourced, Thing, Where};

/// One measurement.
#[derive(Debug)]
pub struct Test {
    /// Its id in the specs.
    pub id: String,
    /// What is measured, in a few words.
    pub title: String,
    /// The kind of thing it is about.
    pub thing: Thing,
    /// That thing's id.
    pub component: String,
    /// What that thing is called.
    pub component_title: String,
    /// Its system's id.
    pub system: String,
    /// What is read.
    pub reads: Reads,
    /// At which end of the wires, or where else.
    pub place: Where,
    /// Whether the connector is together, where given.
    pub mated: Option<bool>,
    /// The two probes, where they are known.
    pub probes: [Option<PinUse>; 2],
    /// How the probed connector is seen.
    pub end: Option<PinEnd>,
    /// What key and engine do, where given.
    pub ignition: Option<Ignition>,
    /// The panel mode's id and name.
    pub mode: Option<(String, String)>,
    /// The set-point, as it is chosen.
    pub set_point: Option<String>,
    /// The blower, as it is chosen.
    pub blower: Option<String>,
    /// How long the parts take the temperature of the bay before.
    pub soak: Option<Sourced<Duration>>,
    /// How long to wait in this state.
    pub wait: Option<Sourced<Duration>>,
    /// What else must be so before.
    pub before: Vec<String>,
    /// What the meter is set to.
    pub meter: Function,
    /// The multimeter, where not the sheet's.
    pub instrument: Option<Multimeter>,
    /// What a good one reads.
    pub expect: Expect,
    /// Where something else is expected: when, and what.
    pub differs: Vec<(String, String)>,
    /// Wrong readings and what they mean.
    pub faults: Vec<(String, String)>,
    /// What to do next, in the lead's own words.
    pub next: Vec<String>,
    /// The first and the last month of building that it applies to.
    pub built: [Option<String>; 2],
    /// The values written in the test itself.
    pub facts: Vec<Fact>,
}

/// Limits: written in the test, or a figure of the component.
#[derive(Debug)]
pub enum Bounds {
    /// As written; one of the two may be missing.
    Given {
        /// The lower limit.
        low: Option<Sourced<Measured>>,
        /// The upper limit.
        high: Option<Sourced<Measured>>,
    },
    /// A figure that the component has.
    Of(Origin),
    /// A step of the component, a blower, by its number from one.
    Step(usize),
}

/// What a good one reads.
#[derive(Debug)]
pub enum Expect {
    /// The component's curve at the temperature of the bay, or at this pressure.
    Curve(Option<Sourced<Pressure>>),
    /// Between two limits.
    Window(Bounds),
    /// Below or above one limit.
    Limit(Bounds),
    /// A part of another voltage.
    Ratio(RatioTo, Bounds),
    /// How far two readings, with these names, may be apart.
    Difference([String; 2], Bounds),
    /// From one end to the other.
    Sweep(Sweep),
    /// Events one after the other.
    Sequence(Vec<SequenceStep>),
    /// Columns and rows, as written.
    TruthTable(Vec<String>, Vec<TruthRow>),
    /// The contacts of the component, or what the test's panel mode forces.
    TruthOf(Origin),
    /// A switched line.
    Wave(Wave),
}

/// A sweep.
#[derive(Debug)]
pub enum Sweep {
    /// From stop to stop of the component.
    Travel,
    /// As written.
    Given(Box<SweepGiven>),
}

/// A sweep as its spec gives it.
#[derive(Debug)]
pub struct SweepGiven {
    /// Where it starts.
    pub start: Sourced<Interval<Measured>>,
    /// Where it ends.
    pub end: Sourced<Interval<Measured>>,
    /// The longest time.
    pub time: Option<Sourced<Duration>>,
    /// The largest step.
    pub largest_step: Option<Sourced<Measured>>,
}

/// One event of a sequence.
#[derive(Debug)]
pub struct SequenceStep {
    /// What is done or watched.
    pub event: String,
    /// What is expected.
    pub expect: String,
    /// How long after the step before, at least, where that matters.
    pub least: Option<Duration>,
    /// How long after the step before, at most.
    pub most: Option<Duration>,
}

/// One row of a truth table.
#[derive(Debug)]
pub struct TruthRow {
    /// The position.
    pub name: String,
    /// The state in each column.
    pub values: Vec<String>,
}

/// A switched line; what is `None` is not judged.
#[derive(Debug)]
pub struct Wave {
    /// How often it is switched.
    pub frequency: Option<Interval<Frequency>>,
    /// The part of the time at the high level.
    pub duty: Option<Interval<Ratio>>,
    /// The high level.
    pub high: Option<Interval<Voltage>>,
    /// The low level.
    pub low: Option<Interval<Voltage>>,
}
