//! `[refrigerant.ID]`: what a system is charged with, and the gauges it is read with.

use super::reader::Reader;
use super::value::{At, Sourced};
use crate::quantity::{Interval, Step, Temperature, TemperatureDifference, Unit, interval, scalar};

/// A refrigerant in a system.
#[derive(Debug, Clone)]
pub struct Refrigerant {
    /// What its table is called.
    pub title: Option<At<String>>,
    /// The system it is in.
    pub system: Option<At<String>>,
    /// Which refrigerant it is.
    pub fluid: Option<Sourced<crate::physics::refrigerant::Refrigerant>>,
    /// The temperatures its table covers, where not all that are known.
    pub range: Option<Sourced<Interval<Temperature>>>,
    /// From row to row.
    pub step: Option<Sourced<Step>>,
    /// The units that the shop's gauges show, where not all.
    pub units: Option<Vec<At<Unit>>>,
    /// The gauge on the suction side.
    pub low_gauge: Option<At<String>>,
    /// The gauge on the discharge side.
    pub high_gauge: Option<At<String>>,
    /// The thermometer on the lines.
    pub thermometer: Option<At<String>>,
    /// How far the suction line may be above saturation.
    pub superheat: Option<Sourced<Interval<TemperatureDifference>>>,
    /// How far the liquid line may be below saturation.
    pub subcooling: Option<Sourced<Interval<TemperatureDifference>>>,
    /// How far off saturation a soaked system at rest still counts as saturated.
    pub at_rest: Option<Sourced<TemperatureDifference>>,
}

impl Refrigerant {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["title", "system", "fluid"]);
        let fluids = crate::physics::refrigerant::Refrigerant::ALL.map(|fluid| (fluid.number(), fluid));
        let units = [("kPa", Unit::Kilopascal), ("bar", Unit::Bar), ("psi", Unit::PoundPerSquareInch)];
        Self {
            title: reader.text("title"),
            system: reader.text("system"),
            fluid: reader.sourced_choice("fluid", &fluids),
            range: reader.sourced("range", interval),
            step: reader.sourced("step", scalar),
            units: reader.choices("units", &units),
            low_gauge: reader.text("low_gauge"),
            high_gauge: reader.text("high_gauge"),
            thermometer: reader.text("thermometer"),
            superheat: reader.sourced("superheat", interval),
            subcooling: reader.sourced("subcooling", interval),
            at_rest: reader.sourced("at_rest", scalar),
        }
    }
}
