//! The cautions a paper prints, chosen by what it touches.

use serde::Serialize;

use crate::words::Words;

/// A caution box.
#[derive(Debug, Clone, Serialize)]
pub(super) struct Cautions {
    pub signal: String,
    pub lines: Vec<String>,
}

/// Cautions for measuring at low-voltage sensor wiring behind the dash, in the
/// few lines that a card has for them.
pub(super) fn on_a_card(words: &Words) -> Cautions {
    box_of(words, &["caution-law", "caution-card"])
}

/// The same on a sheet, which leads a person around a whole vehicle.
pub(super) fn on_a_sheet(words: &Words) -> Cautions {
    box_of(words, &["caution-law", "caution-wiring", "caution-around"])
}

fn box_of(words: &Words, lines: &[&str]) -> Cautions {
    Cautions { signal: words.word("caution-signal"), lines: lines.iter().map(|id| words.word(id)).collect() }
}
