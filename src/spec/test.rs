//! `[test.ID]`: one measurement, where and in which state it is made, and what is expected.

use super::expect::Expect;
use super::reader::Reader;
use super::value::{At, Sourced};
use crate::quantity::{Dimension, Duration, scalar};

/// One measurement.
#[derive(Debug, Clone)]
pub struct Test {
    /// What is measured, in a few words.
    pub title: Option<At<String>>,
    /// The thing it is about, as `kind.id`.
    pub component: Option<At<String>>,
    /// What is read.
    pub quantity: Option<At<Reads>>,
    /// At which end of the wires, or where else.
    pub place: Option<At<Where>>,
    /// Whether the connector is together.
    pub mated: Option<Sourced<bool>>,
    /// Where the probes go, where not at the thing's own pins.
    pub pins: Option<Probes>,
    /// What key and engine do.
    pub ignition: Option<At<Ignition>>,
    /// The panel mode, by its id.
    pub mode: Option<At<String>>,
    /// The set-point, as it is chosen on the panel.
    pub set_point: Option<At<String>>,
    /// The blower, as it is chosen on the panel.
    pub blower: Option<At<String>>,
    /// How long the parts take the temperature of the bay before.
    pub soak: Option<Sourced<Duration>>,
    /// How long to wait in this state before reading.
    pub wait: Option<Sourced<Duration>>,
    /// What else must be so before, in the lead's own words.
    pub before: Vec<At<String>>,
    /// What the meter is set to.
    pub meter: Option<At<Function>>,
    /// The multimeter, where not the sheet's.
    pub instrument: Option<At<String>>,
    /// What a good one reads.
    pub expect: Option<Expect>,
    /// Where something else is expected: start-up, extreme ambient.
    pub differs: Vec<Differs>,
    /// What wrong readings mean.
    pub faults: Vec<FaultRow>,
    /// What to do next when it is not as expected.
    pub next: Vec<At<String>>,
    /// Only vehicles built from this month on, as `2021-01`.
    pub built_from: Option<At<String>>,
    /// Only vehicles built up to this month.
    pub built_to: Option<At<String>>,
}

/// What a test reads.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Reads {
    /// Volts.
    Voltage,
    /// Ohms.
    Resistance,
    /// Amperes.
    Current,
    /// The part of the time that something is on.
    Duty,
    /// How often something is switched.
    Frequency,
    /// How long something takes.
    Time,
    /// A temperature.
    Temperature,
    /// A pressure.
    Pressure,
    /// Which contacts are closed.
    Contacts,
    /// What eye, ear or hand notices.
    Observation,
}

impl Reads {
    /// What limits of it are given in; `None` where there are no numbers.
    #[must_use]
    pub fn dimension(self) -> Option<Dimension> {
        Some(match self {
            Self::Voltage => Dimension::Voltage,
            Self::Resistance => Dimension::Resistance,
            Self::Current => Dimension::Current,
            Self::Duty => Dimension::Ratio,
            Self::Frequency => Dimension::Frequency,
            Self::Time => Dimension::Duration,
            Self::Temperature => Dimension::Temperature,
            Self::Pressure => Dimension::Pressure,
            Self::Contacts | Self::Observation => return None,
        })
    }

    /// Whether probes touch wires for it.
    #[must_use]
    pub fn is_electrical(self) -> bool {
        matches!(
            self,
            Self::Voltage | Self::Resistance | Self::Current | Self::Duty | Self::Frequency | Self::Contacts
        )
    }
}

/// Where a test is made.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Where {
    /// At the component's own connector.
    Component,
    /// At the control unit's connector.
    ControlUnit,
    /// Somewhere between, or from one end to the other.
    InLine,
    /// On the vehicle: battery, outlets, hoses.
    Vehicle,
}

/// What key and engine do.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Ignition {
    /// Key off.
    Off,
    /// Key on, engine off.
    On,
    /// Engine running.
    Running,
}

/// What a meter is set to, or what is used instead of one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Function {
    /// DC volts.
    Volts,
    /// DC volts with the least and the greatest kept.
    VoltsKept,
    /// Ohms.
    Ohms,
    /// Continuity, with a tone.
    Continuity,
    /// DC amperes, the meter in the line or a clamp around it.
    Amperes,
    /// Duty in percent.
    Duty,
    /// Hertz.
    Hertz,
    /// Volts drawn over time.
    Scope,
    /// A thermometer.
    Thermometer,
    /// A pressure gauge.
    Gauge,
    /// A watch.
    Watch,
    /// No instrument.
    None,
}

impl Function {
    const WORDS: &'static [(&'static str, Self)] = &[
        ("DC volts", Self::Volts),
        ("DC volts, min and max", Self::VoltsKept),
        ("ohms", Self::Ohms),
        ("continuity", Self::Continuity),
        ("DC amperes", Self::Amperes),
        ("duty", Self::Duty),
        ("frequency", Self::Hertz),
        ("oscilloscope", Self::Scope),
        ("thermometer", Self::Thermometer),
        ("pressure gauge", Self::Gauge),
        ("stopwatch", Self::Watch),
        ("none", Self::None),
    ];

    /// How specs name it.
    #[must_use]
    pub fn word(self) -> &'static str {
        Self::WORDS.iter().find(|(_, function)| *function == self).map_or("", |(word, _)| word)
    }

    /// Whether it can show what a test reads.
    #[must_use]
    pub fn shows(self, reads: Reads) -> bool {
        match self {
            Self::Volts | Self::VoltsKept => matches!(reads, Reads::Voltage | Reads::Contacts),
            Self::Ohms => matches!(reads, Reads::Resistance | Reads::Contacts),
            Self::Continuity => reads == Reads::Contacts,
            Self::Amperes => reads == Reads::Current,
            Self::Duty => reads == Reads::Duty,
            Self::Hertz => reads == Reads::Frequency,
            Self::Scope => {
                matches!(reads, Reads::Voltage | Reads::Duty | Reads::Frequency | Reads::Time)
            }
            Self::Thermometer => reads == Reads::Temperature,
            Self::Gauge => reads == Reads::Pressure,
            Self::Watch => reads == Reads::Time,
            Self::None => matches!(reads, Reads::Observation | Reads::Time),
        }
    }

    /// Whether the meter itself drives a current: then nothing else may.
    #[must_use]
    pub fn feeds_the_circuit(self) -> bool {
        matches!(self, Self::Ohms | Self::Continuity)
    }
}

/// Where the two probes go, as `connector/pin` or one of [`Probes::POSTS`].
#[derive(Debug, Clone)]
pub struct Probes {
    /// The probe that is read.
    pub plus: Option<Sourced<String>>,
    /// The probe it is read against.
    pub minus: Option<Sourced<String>>,
    /// Where the table stands.
    pub place: crate::diag::Place,
}

impl Probes {
    /// Where a probe may go that is no pin of a connector.
    pub const POSTS: [&'static str; 3] = ["battery positive", "battery negative", "body ground"];
}

/// A condition under which something else is expected.
#[derive(Debug, Clone)]
pub struct Differs {
    /// Start-up, extreme ambient.
    pub when: At<String>,
    /// What is expected then.
    pub expect: At<String>,
}

/// A wrong reading and its meaning.
#[derive(Debug, Clone)]
pub struct FaultRow {
    /// What is read.
    pub reads: At<String>,
    /// What that means.
    pub means: At<String>,
}

impl Test {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "component", "quantity", "place", "meter", "expect"]);
        let reads = [
            ("voltage", Reads::Voltage),
            ("resistance", Reads::Resistance),
            ("current", Reads::Current),
            ("duty", Reads::Duty),
            ("frequency", Reads::Frequency),
            ("time", Reads::Time),
            ("temperature", Reads::Temperature),
            ("pressure", Reads::Pressure),
            ("contacts", Reads::Contacts),
            ("observation", Reads::Observation),
        ];
        let places = [
            ("component", Where::Component),
            ("control unit", Where::ControlUnit),
            ("in line", Where::InLine),
            ("vehicle", Where::Vehicle),
        ];
        let ignition =
            [("key off", Ignition::Off), ("key on", Ignition::On), ("engine running", Ignition::Running)];
        let quantity = reader.choice("quantity", &reads);
        let dimension = quantity.as_ref().and_then(|at| at.value.dimension());
        Self {
            title: reader.text("title"),
            component: reader.text("component"),
            place: reader.choice("place", &places),
            mated: reader.flag("mated"),
            pins: reader.table("pins").map(|pins| Probes::read(&pins)),
            ignition: reader.choice("ignition", &ignition),
            mode: reader.text("mode"),
            set_point: reader.text("set_point"),
            blower: reader.text("blower"),
            soak: reader.sourced("soak", scalar),
            wait: reader.sourced("wait", scalar),
            before: reader.texts("before").unwrap_or_default(),
            meter: reader.choice("meter", Function::WORDS),
            instrument: reader.text("instrument"),
            expect: reader.table("expect").map(|expect| Expect::read(&expect, dimension)),
            differs: reader.some_tables("differs").iter().filter_map(Differs::read).collect(),
            faults: reader.some_tables("faults").iter().filter_map(FaultRow::read).collect(),
            next: reader.texts("next").unwrap_or_default(),
            built_from: reader.text("built_from"),
            built_to: reader.text("built_to"),
            quantity,
        }
    }
}

impl Probes {
    fn read(reader: &Reader<'_>) -> Self {
        let probes = Self {
            plus: reader.sourced_text("plus"),
            minus: reader.sourced_text("minus"),
            place: reader.place.clone(),
        };
        reader.finish();
        probes
    }
}

impl Differs {
    fn read(reader: &Reader<'_>) -> Option<Self> {
        reader.require(&["when", "expect"]);
        let (when, expect) = (reader.text("when"), reader.text("expect"));
        reader.finish();
        Some(Self { when: when?, expect: expect? })
    }
}

impl FaultRow {
    fn read(reader: &Reader<'_>) -> Option<Self> {
        reader.require(&["reads", "means"]);
        let (reads, means) = (reader.text("reads"), reader.text("means"));
        reader.finish();
        Some(Self { reads: reads?, means: means? })
    }
}
