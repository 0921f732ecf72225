//! The waveform of a switched coil: volts at its control pin, and the current through it.

use crate::document::axis::{Axis, Trace};
use crate::document::figures;
use crate::model::{Coil, Driver, Load, Solenoid};
use crate::physics::blower::Side;
use crate::physics::solenoid::waveform::{Moment, period};
use crate::physics::solenoid::{self, Supply};
use crate::quantity::{Duration, Ratio, Rounding, Voltage, figure};
use crate::words::{Message, Words};

/// Pieces of each phase; at arm's length they look smooth.
const PIECES: u32 = 12;

/// How many periods are drawn.
const PERIODS: f64 = 2.0;

/// Steps of an axis, at most.
const STEPS: f64 = 5.0;

/// The duty that is drawn where the spec lists none.
const USUAL: Ratio = Ratio::new(0.5);

/// A sketch of each, and what must be known to compare it with a screen; nothing where the
/// load is not switched quickly, or a figure of the sketch was not given.
pub(super) fn compose(words: &Words, driver: &Driver) -> (Vec<Trace>, Vec<String>) {
    let Load::Solenoid(coil, solenoid) = &driver.load else { return (Vec::new(), Vec::new()) };
    let Some(sketch) = Sketch::new(driver, coil, solenoid) else {
        return (Vec::new(), vec![words.word("card-drv-no-waveform")]);
    };
    let traces = [sketch.volts(words), sketch.amperes(words)].into_iter().flatten().collect();
    (traces, sketch.notes(words))
}

struct Sketch {
    side: Side,
    battery: Voltage,
    switch_drop: Voltage,
    diode_drop: Voltage,
    duty: Ratio,
    frequency: f64,
    /// One settled period; without currents where the inductance is not known.
    moments: Vec<Moment>,
    has_current: bool,
}

impl Sketch {
    fn new(driver: &Driver, coil: &Coil, part: &Solenoid) -> Option<Self> {
        let (battery, side) = (driver.nominal?, driver.polarity?);
        let (switch_drop, diode_drop) = (part.switch_drop?.nominal, part.diode_drop?.nominal);
        let duty = middle(part.steps.as_deref().unwrap_or_default());
        let frequency = part.frequency?;
        let supply = Supply { battery, switch_drop, diode_drop };
        let resistance = coil.rated.nominal(coil.rated.at).ok()?;
        let moments = match part.timing {
            Some((inductance, frequency)) => {
                period(&supply, &solenoid::Coil { resistance, inductance }, frequency, duty, PIECES).ok()?
            }
            None => flows_on(&supply, frequency.hertz(), duty),
        };
        let has_current = part.timing.is_some();
        let frequency = frequency.hertz();
        Some(Self { side, battery, switch_drop, diode_drop, duty, frequency, moments, has_current })
    }

    /// What stands at the control pin against the battery's negative post.
    fn at_pin(&self, across: f64) -> f64 {
        match self.side {
            Side::Low => self.battery.volts() - across,
            Side::High => across,
        }
    }

    fn volts(&self, words: &Words) -> Option<Trace> {
        let (on, off) = (self.at_pin(self.on()), self.at_pin(-self.diode_drop.volts()));
        let alt = Message::new("card-drv-alt-volts")
            .with("on", volts(on))
            .with("off", volts(off))
            .with("percent", figures::trimmed(100.0 * self.duty.part()))
            .with("hertz", figures::trimmed(self.frequency));
        self.trace(
            words.word("card-drv-at-pin"),
            "V",
            |moment| self.at_pin(moment.across.volts()),
            words.say(&alt),
        )
    }

    fn amperes(&self, words: &Words) -> Option<Trace> {
        if !self.has_current {
            return None;
        }
        let current = |moment: &Moment| moment.current.amperes();
        let (least, most) = ends(self.moments.iter().map(current));
        let ampere = |value: f64| format!("{} A", figure(value, 2, Rounding::Nearest));
        let alt =
            Message::new("card-drv-alt-amperes").with("least", ampere(least)).with("most", ampere(most));
        self.trace(words.word("card-drv-current"), "A", current, words.say(&alt))
    }

    /// Across the coil while the switch is on.
    fn on(&self) -> f64 {
        self.battery.volts() - self.switch_drop.volts()
    }

    fn trace(
        &self,
        title: String,
        unit: &'static str,
        of: impl Fn(&Moment) -> f64,
        alt: String,
    ) -> Option<Trace> {
        let milliseconds = 1e3 / self.frequency;
        let x = Axis::exactly(0.0, PERIODS * milliseconds, STEPS)?;
        let (least, most) = ends(self.moments.iter().map(&of));
        let y = Axis::around(least.min(0.0), most.max(0.0), STEPS)?;
        let moments = [0.0, 1.0].into_iter().flat_map(|index| {
            self.moments.iter().map(move |moment| (moment.at.seconds() * 1e3 + index * milliseconds, moment))
        });
        Some(Trace {
            title,
            unit,
            x_unit: "ms",
            x_ticks: x.ticks(),
            y_ticks: y.ticks(),
            nominal: moments.map(|(at, moment)| [x.part(at), y.part(of(moment))]).collect(),
            low: Vec::new(),
            high: Vec::new(),
            alt,
        })
    }

    fn notes(&self, words: &Words) -> Vec<String> {
        let (on, off) = (self.at_pin(self.on()), self.at_pin(-self.diode_drop.volts()));
        let milliseconds = 1e3 / self.frequency;
        let time = |part: f64| format!("{} ms", figure(part * milliseconds, 2, Rounding::Nearest));
        let shape = Message::new("card-drv-shape")
            .with("hertz", figures::trimmed(self.frequency))
            .with("period", time(1.0))
            .with("percent", figures::trimmed(100.0 * self.duty.part()))
            .with("time", time(self.duty.part()))
            .with("battery", self.battery);
        let levels = Message::new("card-drv-levels").with("on", volts(on)).with("off", volts(off));
        let assumed = (!self.has_current).then(|| words.word("card-drv-flows-on"));
        [words.say(&shape), words.say(&levels)].into_iter().chain(assumed).collect()
    }
}

/// The duty in the middle of a list.
fn middle(steps: &[Ratio]) -> Ratio {
    let inside: Vec<Ratio> =
        steps.iter().copied().filter(|duty| duty.part() > 0.0 && duty.part() < 1.0).collect();
    inside.get(inside.len() / 2).copied().unwrap_or(USUAL)
}

/// The two levels of a coil whose current never stops; nothing is known of that current.
fn flows_on(supply: &Supply, hertz: f64, duty: Ratio) -> Vec<Moment> {
    let on = supply.battery.volts() - supply.switch_drop.volts();
    let off = -supply.diode_drop.volts();
    let moment = |at: f64, across: f64| Moment {
        at: Duration::from_seconds(at / hertz),
        across: Voltage::from_volts(across),
        current: crate::quantity::Current::from_amperes(0.0),
    };
    let part = duty.part();
    vec![moment(0.0, on), moment(part, on), moment(part, off), moment(1.0, off)]
}

fn ends(values: impl Iterator<Item = f64>) -> (f64, f64) {
    values
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(least, most), value| (least.min(value), most.max(value)))
}

fn volts(value: f64) -> String {
    format!("{} V", figure(value, 1, Rounding::Nearest))
}
