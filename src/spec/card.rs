//! `[card.ID]`: one laminated card about one thing.

use super::connector::View;
use super::paper_kind::PaperKind;
use super::reader::Reader;
use super::value::{At, Sourced};
use crate::quantity::{Interval, Size, Step, Temperature, interval, scalar};

/// What a card may be about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum About {
    /// A temperature sensor.
    Sensor,
    /// A light sensor.
    Light,
    /// A pressure transducer.
    Transducer,
    /// A connector.
    Connector,
    /// A whole system.
    System,
    /// A door actuator.
    Actuator,
    /// A switched load.
    Driver,
    /// A panel: the modes of its system.
    Panel,
    /// A request with its conditions.
    Request,
    /// A system: its refrigerants and the air at its outlets.
    Air,
}

impl About {
    /// Every one, with the key that names it in a spec.
    pub const ALL: &[(&str, Self)] = &[
        ("sensor", Self::Sensor),
        ("light", Self::Light),
        ("transducer", Self::Transducer),
        ("connector", Self::Connector),
        ("actuator", Self::Actuator),
        ("driver", Self::Driver),
        ("panel", Self::Panel),
        ("request", Self::Request),
        ("air", Self::Air),
        ("system", Self::System),
    ];

    /// The key that names it in a spec.
    #[must_use]
    pub fn key(self) -> &'static str {
        Self::ALL.iter().find(|(_, about)| *about == self).map_or("", |(key, _)| key)
    }
}

/// Where a card hangs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Hangs {
    /// On a wall, to be read from across the bay.
    Wall,
}

/// A card.
#[derive(Debug, Clone)]
pub struct Card {
    /// What it is about; the rules see to it that it is one thing.
    pub about: Vec<(About, At<String>)>,
    /// The multimeter whose loading its volts include.
    pub meter: Option<At<String>>,
    /// The step of a sensor's strip table; chosen to fit where it is left out.
    pub step: Option<Sourced<Step>>,
    /// The temperatures of its strip table, where not the whole range.
    pub range: Option<Sourced<Interval<Temperature>>>,
    /// The temperature of its worked example.
    pub example: Option<Sourced<Temperature>>,
    /// Where it hangs, if it is not carried about.
    pub hangs: Option<At<Hangs>>,
    /// The temperature of the sensors on a connector that its volts and ohms hold at.
    pub at: Option<Sourced<Temperature>>,
    /// From where a connector's face is drawn, where not as its table has it.
    pub view: Option<At<View>>,
    /// The size it is printed in.
    pub size: Option<At<Size>>,
    /// How many sides its strip table may take, where it is that table alone.
    pub strip: Option<At<usize>>,
}

impl Card {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        let about = About::ALL.iter().filter_map(|(key, about)| Some((*about, reader.text(key)?)));
        let about = about.collect();
        reader.require_one_of(About::ALL.iter().map(|(key, _)| *key));
        Self {
            about,
            meter: reader.text("meter"),
            step: reader.sourced("step", scalar),
            range: reader.sourced("range", interval),
            example: reader.sourced("example", scalar),
            hangs: reader.choice("hangs", &[("wall", Hangs::Wall)]),
            at: reader.sourced("at", scalar),
            view: reader.choice("view", View::WORDS),
            size: reader.size("size"),
            strip: reader.choice("strip", &[("one side", 1), ("two sides", 2)]),
        }
    }

    /// Which kind of paper it is.
    #[must_use]
    pub fn kind(&self) -> Option<PaperKind> {
        let (about, _) = self.about.first()?;
        Some(match (about, &self.hangs, &self.strip) {
            (About::Sensor, Some(_), _) => PaperKind::Wall,
            (About::Sensor, None, Some(_)) => PaperKind::Strip,
            _ => PaperKind::Card(*about),
        })
    }

    /// The id of the thing it is about, where that is one of this kind.
    #[must_use]
    pub fn of(&self, kind: About) -> Option<&At<String>> {
        self.about.iter().find(|(about, _)| *about == kind).map(|(_, id)| id)
    }
}
