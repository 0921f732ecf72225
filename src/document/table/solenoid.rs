//! A solenoid's mean current, and what it does, over the duty.

use super::{Ask, Cell, Column, Show, Table};
use crate::document::figures::{celsius, trimmed};
use crate::model::{Coil, Driver, Solenoid};
use crate::physics::copper::DOMAIN;
use crate::physics::solenoid::{self, Conduction, ControlCurve, Direction, Running, Spread, Supply};
use crate::quantity::{
    Current, Interval, Ratio, Resistance, Rounding, Temperature, Toleranced, Voltage, figure,
};
use crate::words::{Message, Words};

/// Duties of the rows where the spec lists none: every tenth.
const TENTHS: u32 = 10;

/// The table of a solenoid.
///
/// `from` and `to` narrow the coil's temperatures, over which the limits are taken.
pub(super) fn of(
    words: &Words,
    (driver, coil, solenoid): (&Driver, &Coil, &Solenoid),
    ask: &Ask<'_>,
) -> Result<Table, Message> {
    super::without_step(&driver.id, ask)?;
    let temperature = coil_temperatures(&driver.id, coil, ask)?;
    let bench = Bench { driver, coil, solenoid, temperature };
    let tenths = || (0..=TENTHS).map(|tenth| Ratio::new(f64::from(tenth) / f64::from(TENTHS))).collect();
    let duties = solenoid.steps.clone().unwrap_or_else(tenths);
    Ok(Table {
        title: driver.title.clone(),
        notes: bench.notes(words),
        columns: columns(words),
        rows: duties.into_iter().map(|duty| bench.row(words, duty)).collect(),
        formulas: bench.formulas(words),
        inputs: driver.facts.clone(),
    })
}

/// The coil's temperatures of the limits: its own, or those asked for; one alone is both ends.
fn coil_temperatures(id: &str, coil: &Coil, ask: &Ask<'_>) -> Result<Option<Interval<Temperature>>, Message> {
    let own = coil.temperature;
    let low = ask.from.or(own.map(|own| own.low)).or(ask.to);
    let high = ask.to.or(own.map(|own| own.high)).or(ask.from);
    let Some((low, high)) = low.zip(high) else { return Ok(None) };
    let shown = Temperature::to_hundredths;
    if let Some(end) = [low, high].into_iter().find(|end| !DOMAIN.contains(end)) {
        let message = Message::new("run-table-outside").with("at", shown(end)).with("id", id);
        return Err(message.with("low", shown(DOMAIN.low)).with("high", shown(DOMAIN.high)));
    }
    if low > high {
        return Err(Message::new("run-table-reversed").with("from", shown(low)).with("to", shown(high)));
    }
    Ok(Some(Interval { low, high }))
}

fn columns(words: &Words) -> Vec<Column> {
    let nearest = |decimals| Show::Decimals(decimals, Rounding::Nearest);
    let amperes = ["current_min_a", "current_nom_a", "current_max_a"];
    let percents = ["displacement_min_percent", "displacement_nom_percent", "displacement_max_percent"];
    let ripple = words.word("table-ripple");
    [Column::new("duty_percent", words.word("table-duty"), nearest(1))]
        .into_iter()
        .chain(Column::band(words, amperes, "A", |rounding| Show::Decimals(3, rounding)))
        .chain([
            Column::new("ripple_a", format!("A {ripple}"), nearest(3)),
            Column::new("conduction", words.word("table-conduction"), nearest(0)),
            Column::new("meter_v", words.word("table-meter-across"), nearest(2)),
        ])
        .chain(Column::band(words, percents, &words.word("table-displacement"), |rounding| {
            Show::Decimals(1, rounding)
        }))
        .collect()
}

/// A solenoid with what it hangs on.
struct Bench<'a> {
    driver: &'a Driver,
    coil: &'a Coil,
    solenoid: &'a Solenoid,
    temperature: Option<Interval<Temperature>>,
}

/// The nominal current at a duty, with everything else where the inductance is known.
enum Nominal {
    Whole(Running),
    Mean(Current),
}

impl Bench<'_> {
    fn row(&self, words: &Words, duty: Ratio) -> Vec<Cell> {
        let nominal = self.nominal(duty);
        let mean = nominal.as_ref().map(|nominal| match nominal {
            Nominal::Whole(run) => run.mean,
            Nominal::Mean(mean) => *mean,
        });
        let run = nominal.as_ref().and_then(|nominal| match nominal {
            Nominal::Whole(run) => Some(run),
            Nominal::Mean(_) => None,
        });
        let window = self.window(duty);
        let ends = window.map_or([None, None], |window| [Some(window.low), Some(window.high)]);
        let curve = self.solenoid.control.as_ref();
        // One end may lie beyond the curve while the other does not.
        let [least, most] = curve.map_or([None, None], |curve| match curve.direction() {
            Direction::LessDisplacement => [ends[1], ends[0]],
            Direction::MoreDisplacement => ends,
        });
        let at = |current: Option<Current>| {
            curve.zip(current).map_or(Cell::Missing, |(curve, current)| displacement(curve, current))
        };
        let conduction = run.map(|run| {
            words.word(match run.conduction {
                Conduction::Continuous => "table-continuous",
                Conduction::Discontinuous => "table-discontinuous",
            })
        });
        vec![
            Cell::from(100.0 * duty.part()),
            Cell::from(ends[0].map(Current::amperes)),
            Cell::from(mean.map(Current::amperes)),
            Cell::from(ends[1].map(Current::amperes)),
            Cell::from(run.map(|run| run.ripple.amperes())),
            conduction.map_or(Cell::Missing, Cell::Text),
            Cell::from(self.meter(mean)),
            at(least),
            at(mean),
            at(most),
        ]
    }

    /// What an averaging voltmeter shows across the nominal coil.
    fn meter(&self, mean: Option<Current>) -> Option<f64> {
        Some(mean?.amperes() * self.nominal_resistance()?.ohms())
    }

    /// The coil's temperature of the nominal figures: its rated one, or the nearest of the limits'.
    fn nominal_temperature(&self) -> Temperature {
        let rated = self.coil.rated.at;
        match self.temperature {
            Some(range) if rated < range.low => range.low,
            Some(range) if rated > range.high => range.high,
            _ => rated,
        }
    }

    fn nominal_resistance(&self) -> Option<Resistance> {
        self.coil.rated.nominal(self.nominal_temperature()).ok()
    }

    /// With everything nominal.
    fn nominal(&self, duty: Ratio) -> Option<Nominal> {
        let supply = Supply {
            battery: self.driver.nominal?,
            switch_drop: self.solenoid.switch_drop?.nominal,
            diode_drop: self.solenoid.diode_drop?.nominal,
        };
        let resistance = self.nominal_resistance()?;
        match self.solenoid.timing {
            Some((inductance, frequency)) => {
                let coil = solenoid::Coil { resistance, inductance };
                solenoid::running(&supply, &coil, frequency, duty).ok().map(Nominal::Whole)
            }
            None => solenoid::continuous_mean(&supply, resistance, duty).ok().map(Nominal::Mean),
        }
    }

    /// Over battery, drops, the coil's tolerance and its temperatures.
    fn window(&self, duty: Ratio) -> Option<Interval<Current>> {
        let limits = |part: Option<Toleranced<Voltage>>| part?.limits;
        let spread = Spread {
            battery: self.driver.battery?,
            switch_drop: limits(self.solenoid.switch_drop)?,
            diode_drop: limits(self.solenoid.diode_drop)?,
            resistance: self.resistances()?,
            duty: Interval { low: duty, high: duty },
        };
        solenoid::mean_window(&spread, self.solenoid.timing).ok()
    }

    fn resistances(&self) -> Option<Interval<Resistance>> {
        self.coil.rated.between(self.temperature?).ok().flatten()
    }

    fn notes(&self, words: &Words) -> Vec<String> {
        let nominal = self.driver.nominal.map(|battery| {
            let message = Message::new("table-note-solenoid-nominal").with("battery", battery);
            words.say(&message.with("at", shown(self.nominal_temperature())))
        });
        let limits = self.driver.battery.zip(self.temperature).map(|(battery, coil)| {
            words.say(
                &Message::new("table-note-solenoid-limits")
                    .with("low", battery.low)
                    .with("high", battery.high)
                    .with("cold", shown(coil.low))
                    .with("hot", shown(coil.high)),
            )
        });
        let ceiling = self.ceiling().map(|message| words.say(&message));
        let direction = self.solenoid.control.as_ref().map(|curve| words.word(direction(curve)));
        let timing = self.solenoid.timing.is_none().then(|| words.word("table-note-no-timing"));
        let meter = Some(words.word("table-note-averaging"));
        let caution = Some(words.word("caution-around"));
        [nominal, limits, ceiling, direction, timing, meter, caution].into_iter().flatten().collect()
    }

    /// The most that the lowest battery makes of a hot coil, from its least to its greatest resistance.
    fn ceiling(&self) -> Option<Message> {
        let (battery, hot) = (self.driver.battery?.low, self.temperature?.high);
        let drop = self.solenoid.switch_drop?.limits?.low;
        let ohms = self.coil.rated.band(hot).ok().flatten()?;
        let left = Voltage::from_volts(battery.volts() - drop.volts());
        let amperes = |ohms| {
            let most = solenoid::ceiling(left, ohms).ok()?;
            Some(format!("{} A", figure(most.amperes(), 2, Rounding::Up)))
        };
        let ohmic = |ohms: Resistance| format!("{} Ω", figure(ohms.ohms(), 2, Rounding::Nearest));
        Some(
            Message::new("table-note-ceiling")
                .with("battery", battery)
                .with("drop", format!("{} V", trimmed(drop.volts())))
                .with("least", ohmic(ohms.low))
                .with("most", amperes(ohms.low)?)
                .with("greatest", ohmic(ohms.high))
                .with("fewest", amperes(ohms.high)?),
        )
    }

    fn formulas(&self, words: &Words) -> Vec<String> {
        let current = match self.solenoid.timing {
            Some(_) => "table-formula-switched",
            None => "table-formula-continuous",
        };
        let control = self.solenoid.control.as_ref().map(|_| "table-formula-displacement");
        let window = Some("table-formula-mean-window");
        [Some("table-formula-copper"), Some(current), window, Some("table-formula-averaging"), control]
            .into_iter()
            .flatten()
            .map(|id| words.word(id))
            .collect()
    }
}

fn shown(at: Temperature) -> String {
    format!("{} °C", celsius(at))
}

/// The displacement at a current; beyond the curve's points no more than where it leaves them.
fn displacement(curve: &ControlCurve, current: Current) -> Cell {
    if let Some(displacement) = curve.displacement(current) {
        return Cell::Number(100.0 * displacement.part());
    }
    let domain = curve.domain();
    let above = current > domain.high;
    let last = curve.displacement(if above { domain.high } else { domain.low });
    let less = above == matches!(curve.direction(), Direction::LessDisplacement);
    let (key, sign, rounding) = match less {
        true => ("at_most_the_last_point", "≤", Rounding::Up),
        false => ("at_least_the_last_point", "≥", Rounding::Down),
    };
    last.map_or(Cell::Missing, |last| {
        Cell::Named(key, format!("{sign} {}", figure(100.0 * last.part(), 1, rounding)))
    })
}

fn direction(curve: &ControlCurve) -> &'static str {
    match curve.direction() {
        Direction::LessDisplacement => "table-note-less-displacement",
        Direction::MoreDisplacement => "table-note-more-displacement",
    }
}
