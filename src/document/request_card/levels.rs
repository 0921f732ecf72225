//! What watches a condition, and the volts that it gives at the condition's thresholds.

use crate::document::figures;
use crate::document::sensor_card::reading::{self, Readings};
use crate::document::table::BLANK;
use crate::model::request::Condition;
use crate::model::{Card, Model, PinUse, Transducer};
use crate::physics::Band;
use crate::physics::request::Side;
use crate::quantity::{Interval, Pressure, Temperature};
use crate::spec::{Level, Role, Watch};

/// What the table of conditions says of one.
pub(super) struct Levels {
    /// The part, with the pin that shows it.
    pub watch: String,
    /// Volts at threshold and release threshold.
    pub volts: [String; 2],
}

/// The signs before threshold and release threshold.
pub(super) fn signs(side: Side) -> (&'static str, &'static str) {
    match side {
        Side::Above => ("≥", "≤"),
        Side::Below => ("≤", "≥"),
    }
}

/// What watches a condition; volts where it is a sensor or transducer whose line is known.
pub(super) fn of(model: &Model, card: &Card, condition: &Condition) -> Levels {
    let nothing = || Levels { watch: condition.thing.clone(), volts: [BLANK, BLANK].map(str::to_owned) };
    let named = |title: &str, pin: Option<&PinUse>| match pin {
        Some(pin) => format!("{title}, {}", pin.name),
        None => title.to_owned(),
    };
    match condition.watch {
        Watch::Reading => nothing(),
        Watch::Sensor => {
            let Some(sensor) = model.sensors.get(&condition.thing) else { return nothing() };
            let readings = Readings::new(sensor, card.meter.as_ref());
            let volts = |level: Option<Level>| {
                let at = Temperature::from_celsius(level?.number);
                let band = readings.volt_band(at).map(|band| figures::range(&reading::volts(band)));
                band.or_else(|| Some(figures::nominal_volts(readings.volts(at)?.volts())))
            };
            let pin = sensor.control_unit.as_ref().and_then(|end| end.signal.as_ref());
            Levels {
                watch: named(&sensor.title, pin),
                volts: condition.levels.map(|level| shown(volts(level))),
            }
        }
        Watch::Transducer => {
            let Some(transducer) = model.transducers.get(&condition.thing) else { return nothing() };
            let volts =
                |level: Option<Level>| of_transducer(transducer, Pressure::from_pascals(level?.number));
            let signal = transducer.pins.iter().find(|pin| pin.role == Role::Signal).map(|pin| &pin.pin);
            Levels {
                watch: named(&transducer.title, signal),
                volts: condition.levels.map(|level| shown(volts(level))),
            }
        }
    }
}

fn shown(text: Option<String>) -> String {
    text.unwrap_or_else(|| BLANK.to_owned())
}

/// The output at a pressure of the transducer's own sense.
fn of_transducer(transducer: &Transducer, at: Pressure) -> Option<String> {
    let (line, reference) = (transducer.line.as_ref()?, transducer.reference?);
    let nominal = line.voltage(at, reference).ok()?;
    let window = line.voltage_window(at, reference).ok().flatten();
    Some(match window {
        Some(Interval { low, high }) => figures::range(&reading::volts(Band { low, nominal, high })),
        None => figures::nominal_volts(nominal.volts()),
    })
}
