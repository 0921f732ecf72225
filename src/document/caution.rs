//! The cautions a paper prints, chosen by what it has people touch.
//!
//! Signal words in the meaning of ANSI Z535.6 and ISO 3864-2 (from secondary sources):
//! WARNING where someone could die or be badly hurt, CAUTION where someone could be hurt
//! a little, NOTICE where only things break. DANGER, where someone will, is the STOP of a
//! system with high voltage, which stands in the head of every page. The sentences are our own; local law, licence and the vehicle's own
//! instructions come first in every box.

use schemars::JsonSchema;
use serde::Serialize;

use super::marks::Marks;
use crate::model::{Fact, System};
use crate::words::{Message, Words};

/// What the work on a paper brings a person near to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Touch {
    /// Wiring behind the dash, which airbags and high-voltage cables share.
    Dash,
    /// Belts, fans, doors that move.
    MovingParts,
    /// The battery and its posts.
    Battery,
    /// Gauges on, or fittings of, the refrigerant circuit.
    Refrigerant,
    /// A running engine.
    Running,
    /// Exhaust, coolant, discharge line, blower transistor.
    HotParts,
    /// Probes at pins and wires.
    Probing,
    /// Connectors that are mated and unmated.
    Unplugging,
    /// Ohms at a circuit that could be powered.
    Ohms,
}

/// How much room a paper has for them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Room {
    /// Three lines.
    Card,
    /// As many as it takes.
    Sheet,
}

/// How bad it would be, the worst first.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Level {
    Warning,
    Caution,
    Notice,
}

/// A caution box.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub(super) struct Cautions {
    /// One entry for each signal word, the worst first.
    pub levels: Vec<Signalled>,
    /// What stands over all of them.
    pub law: String,
    /// Whether each signal word begins a line of its own.
    pub apart: bool,
}

/// A signal word and what it is said of.
#[derive(Debug, Clone, Serialize, JsonSchema)]
pub(super) struct Signalled {
    /// The signal word: `WARNING`.
    pub signal: String,
    /// What may happen and how to keep clear of it.
    pub text: String,
}

/// The cautions for all that a paper touches, in the order given within each level.
pub(super) fn of(words: &Words, touches: &[Touch], room: Room) -> Cautions {
    let signalled = |level: Level| {
        let sentences = touches.iter().filter(|touch| touch.level() == level);
        let sentences: Vec<String> = sentences.map(|touch| words.word(touch.sentence(room))).collect();
        let signal = words.word(level.word());
        (!sentences.is_empty()).then(|| Signalled { signal, text: sentences.join(" ") })
    };
    let law = match (room, touches.contains(&Touch::Refrigerant)) {
        (Room::Card, false) => "caution-law-card",
        (Room::Card, true) => "caution-law-card-open",
        (Room::Sheet, false) => "caution-law",
        (Room::Sheet, true) => "caution-law-open",
    };
    Cautions {
        levels: [Level::Warning, Level::Caution, Level::Notice].into_iter().filter_map(signalled).collect(),
        law: words.word(law),
        apart: room == Room::Sheet,
    }
}

/// The STOP of a system with high voltage: its parts, and that no value for them is here.
pub(super) fn stop(words: &Words, system_id: &str, system: &System, marks: &mut Marks) -> Option<Signalled> {
    let parts = system.high_voltage.as_ref()?;
    let fact = Fact::new(format!("system.{system_id}.high_voltage"), "fact-high-voltage", Some(parts));
    let text = Message::new("caution-stop").with("parts", marks.shown(words, &fact));
    Some(Signalled { signal: words.word("caution-danger"), text: words.say(&text) })
}

/// Measuring at low-voltage wiring and plugs, as on every electrical paper.
pub(super) const AT_WIRES: &[Touch] =
    &[Touch::Dash, Touch::MovingParts, Touch::HotParts, Touch::Unplugging, Touch::Ohms, Touch::Probing];

/// The same on a sheet, which leads a person around a whole vehicle, its battery too.
pub(super) const AROUND: &[Touch] = &[
    Touch::Dash,
    Touch::MovingParts,
    Touch::Battery,
    Touch::Running,
    Touch::HotParts,
    Touch::Unplugging,
    Touch::Ohms,
    Touch::Probing,
];

impl Level {
    fn word(self) -> &'static str {
        match self {
            Self::Warning => "caution-warning",
            Self::Caution => "caution-caution",
            Self::Notice => "caution-notice",
        }
    }
}

impl Touch {
    fn level(self) -> Level {
        match self {
            Self::Dash | Self::MovingParts | Self::Battery | Self::Refrigerant | Self::Running => {
                Level::Warning
            }
            Self::HotParts => Level::Caution,
            Self::Probing | Self::Unplugging | Self::Ohms => Level::Notice,
        }
    }

    fn sentence(self, room: Room) -> &'static str {
        match (self, room) {
            (Self::Dash, Room::Card) => "caution-dash-card",
            (Self::Dash, Room::Sheet) => "caution-dash",
            (Self::MovingParts, Room::Card) => "caution-moving-card",
            (Self::MovingParts, Room::Sheet) => "caution-moving",
            (Self::Battery, Room::Card) => "caution-battery-card",
            (Self::Battery, Room::Sheet) => "caution-battery",
            (Self::Refrigerant, Room::Card) => "caution-refrigerant-card",
            (Self::Refrigerant, Room::Sheet) => "caution-refrigerant",
            (Self::Running, Room::Card) => "caution-running-card",
            (Self::Running, Room::Sheet) => "caution-running",
            (Self::HotParts, Room::Card) => "caution-hot-card",
            (Self::HotParts, Room::Sheet) => "caution-hot",
            (Self::Probing, Room::Card) => "caution-probing-card",
            (Self::Probing, Room::Sheet) => "caution-probing",
            (Self::Unplugging, Room::Card) => "caution-unplugging-card",
            (Self::Unplugging, Room::Sheet) => "caution-unplugging",
            (Self::Ohms, Room::Card) => "caution-ohms-card",
            (Self::Ohms, Room::Sheet) => "caution-ohms",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn each_signal_word_stands_once_and_the_worst_first() {
        let touches = [Touch::Unplugging, Touch::HotParts, Touch::Battery, Touch::Ohms, Touch::MovingParts];
        let cautions = of(&Words::english(), &touches, Room::Sheet);
        let signals: Vec<&str> = cautions.levels.iter().map(|level| level.signal.as_str()).collect();
        // The order of ANSI Z535.6 and ISO 3864-2.
        assert_eq!(signals, ["WARNING", "CAUTION", "NOTICE"]);
        let said: String = cautions.levels.iter().map(|level| level.text.as_str()).collect();
        for touched in ["Battery gas", "fans", "burn", "unmate", "ohms"] {
            assert!(said.contains(touched), "{touched}");
        }
        assert!(!said.contains("Airbag"), "only what is touched");
    }

    #[test]
    fn only_a_paper_for_gauges_leaves_the_circuit_to_licensed_people() {
        let words = Words::english();
        for room in [Room::Card, Room::Sheet] {
            assert!(of(&words, AT_WIRES, room).law.contains("circuit stays"));
            let gauges = of(&words, &[Touch::Refrigerant], room);
            assert!(!gauges.law.contains("circuit stays"));
            assert!(gauges.levels[0].text.contains("licensed"));
        }
    }
}
