//! A checked request with its conditions.

use super::fact::Fact;
use super::pins::PinUse;
use crate::physics::request;
use crate::quantity::{Dimension, Duration};
use crate::spec::{Level, Watch};

/// A request, such as the one for the compressor.
#[derive(Debug)]
pub struct Request {
    /// Its id in the specs.
    pub id: String,
    /// Its name.
    pub title: String,
    /// Its system's id.
    pub system: String,
    /// The pin that carries it.
    pub line: Option<PinUse>,
    /// How long it and all its conditions must stand before it is granted.
    pub hold: Option<Duration>,
    /// What a technician reads while nobody asks, while it waits, and while it is granted.
    pub reads: [Fact; 3],
    /// Its conditions, in the order in which they are looked at.
    pub conditions: Vec<Condition>,
    /// What happens, to see it work; `None` where there is none or it is not whole.
    pub scenario: Option<Scenario>,
    /// Line and hold time, as written.
    pub facts: Vec<Fact>,
}

/// One condition.
#[derive(Debug)]
pub struct Condition {
    /// What it is called.
    pub title: String,
    /// Whether it permits or inhibits.
    pub effect: request::Effect,
    /// On which side of its threshold it is set.
    pub side: request::Side,
    /// What kind of thing watches its value.
    pub watch: Watch,
    /// The id of that thing, or the reading's name.
    pub thing: String,
    /// What is watched.
    pub dimension: Dimension,
    /// Threshold and release threshold, where given.
    pub levels: [Option<Level>; 2],
    /// Threshold, release threshold, delay and release delay, as written.
    pub facts: [Fact; 4],
    /// The whole condition, where nothing of it is missing.
    pub checked: Option<request::Condition>,
}

/// A scenario with its name.
#[derive(Debug)]
pub struct Scenario {
    /// What it is called.
    pub title: String,
    /// When the request stands, and what each condition sees.
    pub what: request::Scenario,
}

impl Request {
    /// Every value behind it.
    pub fn all_facts(&self) -> impl Iterator<Item = &Fact> {
        let conditions = self.conditions.iter().flat_map(|condition| &condition.facts);
        self.facts.iter().chain(&self.reads).chain(conditions)
    }

    /// Its states over the scenario, where nothing is missing.
    #[must_use]
    pub fn timeline(&self) -> Option<request::Timeline> {
        let checked: Option<Vec<_>> = self.conditions.iter().map(|condition| condition.checked).collect();
        request::timeline(&checked?, self.hold?.seconds(), &self.scenario.as_ref()?.what).ok()
    }
}
