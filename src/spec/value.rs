//! A value together with its place, its spelling and its source.

use crate::diag::Place;

/// A value and where it stands.
#[derive(Debug, Clone)]
pub struct At<T> {
    /// The value.
    pub value: T,
    /// Where it stands.
    pub place: Place,
}

/// A value that appears on paper: as written, with the document it comes from.
#[derive(Debug, Clone)]
pub struct Sourced<T> {
    /// The value.
    pub value: T,
    /// As the user wrote it, in the user's unit.
    pub written: String,
    /// Where it stands.
    pub place: Place,
    /// Its own source, or its table's. `None` prints with the mark "no source".
    pub source: Option<String>,
}

impl<T> Sourced<T> {
    /// The same text, place and source with another value.
    #[must_use]
    pub fn map<U>(&self, value: U) -> Sourced<U> {
        Sourced {
            value,
            written: self.written.clone(),
            place: self.place.clone(),
            source: self.source.clone(),
        }
    }
}
