//! What a meter shows at a pin: given by a document, or computed from what hangs on it.

use crate::document::figures;
use crate::document::sensor_card::reading::{self, Readings};
use crate::document::users::{Thing, User, WhichEnd};
use crate::model::{Actuator, Driver, Light, Multimeter, Sensor, System, Transducer};
use crate::physics::Band;
use crate::physics::blower::Side as Polarity;
use crate::physics::circuit::Probe;
use crate::physics::light::fault::DARKNESS;
use crate::quantity::{Interval, Rounding, Temperature, Toleranced, Voltage, figure};
use crate::spec::{Role, Side};
use crate::words::{Message, Words};

/// Key off, key on, unmated, running.
pub(super) const STATES: usize = 4;
pub(super) const ON: usize = 1;
const UNMATED: usize = 2;
const RUNNING: usize = 3;

/// What the computed values depend on.
pub(super) struct Conditions<'a> {
    pub words: &'a Words,
    /// Which half of the connector is probed.
    pub side: Option<Side>,
    /// The temperature of every sensor.
    pub at: Option<Temperature>,
    /// The meter on the pin.
    pub meter: Option<&'a Multimeter>,
    pub system: &'a System,
}

/// What a meter shows in each state, where that can be computed.
pub(super) type Shown = [Option<String>; STATES];

impl Conditions<'_> {
    /// What one user of a pin makes a meter show.
    pub(super) fn computed(&self, user: &User<'_>) -> Shown {
        match user.role {
            // The other probe goes here: nothing is read, and no limit of it is given.
            Role::Return | Role::Ground | Role::Common if !matches!(user.thing, Thing::Driver(_)) => {
                on(Some(self.words.word("card-minus-probe")))
            }
            Role::Reference => {
                let shown = self.reference(user.thing).map(band);
                match user.end {
                    // At a part's own plug the reference is there with the part unplugged too.
                    WhichEnd::Own if self.side == Some(Side::Harness) => {
                        let mut both = on(shown.clone());
                        both[UNMATED] = shown;
                        both
                    }
                    _ => on(shown),
                }
            }
            role => match user.thing {
                Thing::Sensor(sensor) => self.sensor(sensor, user.end),
                Thing::Light(light) => on(self.light(light)),
                Thing::Transducer(part) => on(transducer(part)),
                Thing::Actuator(part) if role == Role::Signal => on(feedback(part)),
                Thing::Actuator(_) => Shown::default(),
                Thing::Driver(part) => driver(self.words, part, role),
            },
        }
    }

    fn reference(&self, thing: Thing<'_>) -> Option<Toleranced<Voltage>> {
        let own = match thing {
            Thing::Sensor(sensor) => sensor.circuit.as_ref().map(|circuit| circuit.reference),
            Thing::Actuator(part) => part.reference,
            Thing::Light(part) => part.sensor.as_ref().map(|sensor| sensor.reference),
            Thing::Transducer(part) => part.reference,
            Thing::Driver(_) => None,
        };
        own.or(self.system.reference.as_ref().map(|reference| reference.value))
    }

    /// A sensor's volts mated; unmated its ohms, or the volts where it hung.
    fn sensor(&self, sensor: &Sensor, end: WhichEnd) -> Shown {
        let probe = if end == WhichEnd::Unit { Probe::ControlUnit } else { Probe::Sensor };
        let readings = Readings::at(sensor, self.meter, probe);
        // Beyond what is known of it nothing is computed.
        let at = self.at.filter(|at| sensor.range.contains(at));
        let ohms = || Some(format!("{} Ω", figures::range(&reading::ohms(readings.ohm_band(at?)?))));
        let volts = |window: Band<Voltage>| format!("{} V", figures::range(&reading::volts(window)));
        let mut shown = on(at.and_then(|at| readings.volt_band(at)).map(volts));
        shown[UNMATED] = match (end, self.side) {
            (WhichEnd::Unit, Some(Side::Harness)) | (WhichEnd::Own, Some(Side::Component)) => ohms(),
            (WhichEnd::Own, Some(Side::Harness)) => readings.open_window().map(volts),
            _ => None,
        };
        shown
    }

    fn light(&self, light: &Light) -> Option<String> {
        let sensor = light.sensor.as_ref()?;
        let meter = self.meter.and_then(|meter| meter.input);
        let window = sensor.voltage_window(DARKNESS, meter).ok()??;
        let nominal = sensor.voltage(DARKNESS, meter).ok()?;
        let shown = reading::volts(Band { low: window.low, nominal, high: window.high });
        let message = Message::new("card-in-the-dark").with("volts", figures::range(&shown));
        Some(self.words.say(&message))
    }
}

/// A value that is there with the key on.
fn on(shown: Option<String>) -> Shown {
    let mut all = Shown::default();
    all[ON] = shown;
    all
}

fn band(volts: Toleranced<Voltage>) -> String {
    let nominal = volts.nominal;
    match volts.limits {
        Some(limits) => {
            let shown = reading::volts(Band { low: limits.low, nominal, high: limits.high });
            format!("{} V", figures::range(&shown))
        }
        None => format!("{} V", figures::nominal_volts(nominal.volts())),
    }
}

fn window(volts: Interval<f64>, decimals: usize) -> String {
    let shown = |value, rounding| figure(value, decimals, rounding);
    format!("{}–{} V", shown(volts.low, Rounding::Up), shown(volts.high, Rounding::Down))
}

/// From the lowest to the highest reading of a good part.
fn transducer(part: &Transducer) -> Option<String> {
    let line = part.line.as_ref()?;
    let limits = part.reference?.limits?;
    let range = line.range();
    let (low, high) = (line.ratio_window(range.low).ok()??, line.ratio_window(range.high).ok()??);
    let volts = Interval {
        low: low.low.part().min(high.low.part()) * limits.low.volts(),
        high: low.high.part().max(high.high.part()) * limits.high.volts(),
    };
    Some(window(volts, figures::VOLT_DECIMALS))
}

/// From one stop to the other.
fn feedback(part: &Actuator) -> Option<String> {
    let (stops, limits) = (part.stops.as_ref()?, part.reference?.limits?);
    let volts = Interval {
        low: stops.low.window.low.part() * limits.low.volts(),
        high: stops.high.window.high.part() * limits.high.volts(),
    };
    Some(window(volts, figures::VOLT_DECIMALS))
}

/// A battery is given to a tenth of a volt.
const BATTERY_DECIMALS: usize = 2;

/// The pins of a load: key on it stands still, running it is switched on.
fn driver(words: &Words, part: &Driver, role: Role) -> Shown {
    let mut shown = Shown::default();
    let battery = part.battery.map(|battery| (battery.low.volts(), battery.high.volts()));
    let fed = |drop: Option<Voltage>| {
        let (low, high) = battery?;
        let low = low - drop.map_or(0.0, Voltage::volts);
        Some(window(Interval { low, high }, BATTERY_DECIMALS))
    };
    let at_most = |drop: Option<Voltage>| {
        let drop = drop?.volts();
        let decimals = if drop < 0.1 { figures::VOLT_DECIMALS } else { BATTERY_DECIMALS };
        let drop = figure(drop, decimals, Rounding::Down);
        Some(words.say(&Message::new("card-at-most").with("volts", drop)))
    };
    match (role, part.polarity) {
        (Role::Feed | Role::ContactIn, _) => {
            shown[ON] = fed(None);
            shown[RUNNING] = part.limits.supply.and_then(|drop| fed(Some(drop)));
        }
        (Role::ContactOut, _) => shown[RUNNING] = part.limits.contact.and_then(|drop| fed(Some(drop))),
        (Role::Ground, _) => shown[RUNNING] = at_most(part.limits.ground),
        // A blower's step and a solenoid's duty decide what its control pin shows.
        (Role::Control, Some(side)) if matches!(part.load, crate::model::Load::Coil(..)) => match side {
            Polarity::Low => {
                shown[ON] = fed(None);
                shown[RUNNING] = at_most(part.limits.ground);
            }
            Polarity::High => shown[RUNNING] = part.limits.supply.and_then(|drop| fed(Some(drop))),
        },
        _ => {}
    }
    shown
}
