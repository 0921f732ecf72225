//! The cautions a paper prints, chosen by what it touches.

use serde::Serialize;

use crate::words::Words;

/// A caution box.
#[derive(Debug, Clone, Serialize)]
pub(super) struct Cautions {
    pub signal: String,
    pub lines: Vec<String>,
}

/// Cautions for measuring at low-voltage sensor wiring behind the dash.
pub(super) fn sensor_wiring(words: &Words) -> Cautions {
    let lines = ["caution-law", "caution-wiring", "caution-around"];
    Cautions { signal: words.word("caution-signal"), lines: lines.iter().map(|id| words.word(id)).collect() }
}
