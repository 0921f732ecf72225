//! A value that a paper rests on, with its source.

use crate::quantity::reprinted;
use crate::spec::Sourced;

/// One value of a spec as a paper shows it: as written, with its source.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Fact {
    /// The spec key, such as `sensor.cabin.circuit.resistor`: what is counted.
    pub key: String,
    /// The word table's id for what it is.
    pub label: &'static str,
    /// As the user wrote it; `None` prints NOT GIVEN.
    pub written: Option<String>,
    /// Where it comes from; `None` prints with the mark "no source".
    pub source: Option<String>,
}

impl Fact {
    /// A fact from a value that may be missing.
    #[must_use]
    pub fn new<T>(key: String, label: &'static str, value: Option<&Sourced<T>>) -> Self {
        Self {
            key,
            label,
            written: value.map(|value| value.written.clone()),
            source: value.and_then(|value| value.source.clone()),
        }
    }

    /// As written, but a quantity in the notation of the paper it is printed on.
    #[must_use]
    pub fn shown(&self) -> Option<String> {
        self.written.as_deref().map(reprinted)
    }

    /// Whether the value is missing.
    #[must_use]
    pub fn is_missing(&self) -> bool {
        self.written.is_none()
    }

    /// Whether the value is there but nobody said where it comes from.
    #[must_use]
    pub fn has_no_source(&self) -> bool {
        self.written.is_some() && self.source.is_none()
    }
}
