//! Boxes to write in by hand.

use schemars::JsonSchema;
use serde::Serialize;

use super::Context;
use crate::words::Words;

/// A box, with what belongs in it and the unit printed there.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct WriteOn {
    /// What belongs into it.
    label: String,
    /// The unit printed in it: `°C`; may be empty.
    unit: &'static str,
}

/// A box for each label of the word table and its metric unit, which becomes the edition's.
pub(super) fn boxes<'a>(
    Context { words, units, .. }: Context<'_>,
    all: impl IntoIterator<Item = &'a (&'a str, &'static str)>,
) -> Vec<WriteOn> {
    all.into_iter().map(|(id, unit)| WriteOn { label: words.word(id), unit: units.in_box(unit) }).collect()
}

/// The same without units: names, dates, signatures.
pub(super) fn signatures(words: &Words, all: &[&str]) -> Vec<WriteOn> {
    all.iter().map(|id| WriteOn { label: words.word(id), unit: "" }).collect()
}
