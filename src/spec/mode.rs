//! `[mode.ID]`: a panel mode, and what it does with every control point.

use super::Control;
use super::reader::Reader;
use super::set::{Entry, Set};
use super::value::{At, Sourced};
use crate::quantity::{Duration, scalar};

/// A panel mode.
#[derive(Debug, Clone)]
pub struct Mode {
    /// What it is called.
    pub title: Option<At<String>>,
    /// The system whose panel has it.
    pub system: Option<At<String>>,
    /// Control points that it forces to a value.
    pub forces: Vec<Force>,
    /// Control points that the control unit decides about.
    pub free: Vec<At<String>>,
    /// Control points that make no difference in this mode.
    pub dont_care: Vec<At<String>>,
    /// How long it may take until every forced value is reached.
    pub time: Option<Sourced<Duration>>,
    /// Its place among the system's modes; the order of the files where no mode has one.
    pub order: Option<Sourced<f64>>,
    /// Whether a list of control points stands there that could not be read.
    pub misread: bool,
}

/// One control point that a mode forces.
#[derive(Debug, Clone)]
pub struct Force {
    /// The control point's id.
    pub control: At<String>,
    /// The value it is forced to; `None` where it could not be read.
    pub value: Option<Sourced<String>>,
}

impl Mode {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "system"]);
        let forces = reader.table("forces").map(|forces| read_forces(&forces));
        let free = reader.all_texts("free");
        let dont_care = reader.all_texts("dont_care");
        let unread = |key, is_read: bool| reader.has(key) && !is_read;
        Self {
            title: reader.text("title"),
            system: reader.text("system"),
            time: reader.sourced("time", scalar),
            order: reader.number("order"),
            misread: unread("forces", forces.is_some())
                || unread("free", free.is_some())
                || unread("dont_care", dont_care.is_some()),
            forces: forces.unwrap_or_default(),
            free: free.unwrap_or_default(),
            dont_care: dont_care.unwrap_or_default(),
        }
    }

    /// Every control point the mode names, in the order of its three lists.
    pub fn named(&self) -> impl Iterator<Item = &At<String>> {
        let forced = self.forces.iter().map(|force| &force.control);
        forced.chain(&self.free).chain(&self.dont_care)
    }
}

impl Set {
    /// The control points of a system, as they stand in the files.
    #[must_use]
    pub fn controls_of(&self, system: &str) -> Vec<(&str, &Entry<Control>)> {
        let of = |control: &Control| control.system.as_ref().is_some_and(|at| at.value == system);
        let mut controls: Vec<_> = self.controls.iter().filter(|(_, entry)| of(&entry.item)).collect();
        controls.sort_by_key(|(_, entry)| standing(entry));
        controls.into_iter().map(|(id, entry)| (id.as_str(), entry)).collect()
    }

    /// The modes of a system by their `order`, or as they stand in the files.
    #[must_use]
    pub fn modes_of(&self, system: &str) -> Vec<(&str, &Entry<Mode>)> {
        let of = |mode: &Mode| mode.system.as_ref().is_some_and(|at| at.value == system);
        let order = |entry: &Entry<Mode>| entry.item.order.as_ref().map_or(0.0, |order| order.value);
        let mut modes: Vec<_> = self.modes.iter().filter(|(_, entry)| of(&entry.item)).collect();
        modes.sort_by(|(_, a), (_, b)| {
            order(a).total_cmp(&order(b)).then_with(|| standing(a).cmp(&standing(b)))
        });
        modes.into_iter().map(|(id, entry)| (id.as_str(), entry)).collect()
    }
}

/// Where an entry stands among all of them.
fn standing<T>(entry: &Entry<T>) -> (usize, usize) {
    (entry.place.file.number(), entry.place.span.start)
}

/// Forced values as `intake = "fresh"` or `intake = { value = "fresh", source = "…" }`.
fn read_forces(reader: &Reader<'_>) -> Vec<Force> {
    let force = |(control, value)| {
        let control: At<String> = control;
        let value = match reader.entry(&control, value) {
            Ok(table) => {
                table.require(&["value"]);
                let value = table.sourced_text("value");
                table.finish();
                value
            }
            Err(text) => text.map(|text| Sourced {
                value: text.value.clone(),
                written: text.value,
                place: text.place,
                source: reader.source(),
            }),
        };
        Force { control, value }
    };
    reader.entries().map(force).collect()
}
