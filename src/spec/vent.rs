//! `[vent.ID]`: the cooling that a system should give at its outlets, and in which air.

use super::reader::Reader;
use super::value::{At, Sourced};
use crate::quantity::{
    Interval, Ratio, SpecificEnthalpy, Step, Temperature, Toleranced, interval, ratio, scalar, toleranced,
};

/// What leaves the outlets for a stated duty.
#[derive(Debug, Clone)]
pub struct Vent {
    /// What its table is called.
    pub title: Option<At<String>>,
    /// The system it is about.
    pub system: Option<At<String>>,
    /// What the evaporator takes from each kilogram of dry air.
    pub duty: Option<Sourced<Toleranced<SpecificEnthalpy>>>,
    /// How humid the air leaves while water settles.
    pub outlet_humidity: Option<Sourced<Ratio>>,
    /// The temperatures of the outside air.
    pub ambient: Option<Sourced<Interval<Temperature>>>,
    /// From one of them to the next.
    pub ambient_step: Option<Sourced<Step>>,
    /// The relative humidities of the outside air.
    pub humidity: Option<Sourced<Interval<Ratio>>>,
    /// From one of them to the next.
    pub humidity_step: Option<Sourced<Ratio>>,
    /// The temperatures that the evaporator is held between.
    pub evaporator: Option<Sourced<Interval<Temperature>>>,
    /// The cabin air, which some positions of the intake door take in.
    pub cabin: Option<Sourced<Temperature>>,
    /// How humid the cabin air is.
    pub cabin_humidity: Option<Sourced<Ratio>>,
    /// Whether one of both stands there that could not be read.
    pub cabin_misread: bool,
    /// The thermometer that the airs are measured with.
    pub thermometer: Option<At<String>>,
    /// The hygrometer that they are measured with.
    pub hygrometer: Option<At<String>>,
    /// The positions of the intake door.
    pub positions: Vec<Position>,
}

/// A position of the intake door.
#[derive(Debug, Clone)]
pub struct Position {
    /// What the shop calls it.
    pub name: Option<At<String>>,
    /// The share of outside air, by mass; the rest is cabin air.
    pub outside: Option<Sourced<Ratio>>,
    /// Where it stands.
    pub at: crate::diag::Place,
}

impl Vent {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        let needed = [
            "title",
            "system",
            "duty",
            "outlet_humidity",
            "ambient",
            "ambient_step",
            "humidity",
            "humidity_step",
            "position",
        ];
        reader.require(&needed);
        let cabin = reader.sourced("cabin", scalar);
        let cabin_humidity = reader.sourced("cabin_humidity", ratio);
        let unread = |key, is_read: bool| reader.has(key) && !is_read;
        Self {
            cabin_misread: unread("cabin", cabin.is_some())
                || unread("cabin_humidity", cabin_humidity.is_some()),
            title: reader.text("title"),
            system: reader.text("system"),
            duty: reader.sourced("duty", toleranced),
            outlet_humidity: reader.sourced("outlet_humidity", ratio),
            ambient: reader.sourced("ambient", interval),
            ambient_step: reader.sourced("ambient_step", scalar),
            humidity: reader.sourced("humidity", interval),
            humidity_step: reader.sourced("humidity_step", ratio),
            evaporator: reader.sourced("evaporator", interval),
            cabin,
            cabin_humidity,
            thermometer: reader.text("thermometer"),
            hygrometer: reader.text("hygrometer"),
            positions: reader.tables("position").iter().map(Position::read).collect(),
        }
    }
}

impl Position {
    fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["name", "outside"]);
        let position = Self {
            name: reader.text("name"),
            outside: reader.sourced("outside", ratio),
            at: reader.place.clone(),
        };
        reader.finish();
        position
    }
}
