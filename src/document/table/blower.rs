//! A blower's steps: volts across the motor, current, heat, and what a meter to ground shows.

use super::{Ask, Cell, Column, Show, Table};
use crate::model::{Blower, Driver, Step};
use crate::physics::blower::{Motor, Side, full_speed, step, to_ground};
use crate::quantity::{Interval, Ratio, Resistance, Rounding, Voltage, figure};
use crate::words::{Message, Words};

/// The table of a blower.
pub(super) fn of(
    words: &Words,
    (driver, blower): (&Driver, &Blower),
    ask: &Ask<'_>,
) -> Result<Table, Message> {
    super::without_step(&driver.id, ask)?;
    if ask.from.is_some() || ask.to.is_some() {
        return Err(Message::new("run-table-no-temperatures").with("id", &driver.id));
    }
    let bench = Bench { driver, blower };
    let steps = blower.steps.iter().enumerate();
    let rows = steps
        .map(|(index, step)| bench.row((index + 1).to_string(), |at| bench.across(*step, at), Some(*step)));
    let full =
        blower.bypass_drop.map(|_| bench.row(words.word("table-bypass"), |at| bench.bypassed(at), None));
    let rows = rows.chain(full).collect();
    Ok(Table {
        title: driver.title.clone(),
        notes: bench.notes(words),
        columns: columns(words),
        rows,
        formulas: bench.formulas(words),
        inputs: driver.facts.clone(),
    })
}

fn columns(words: &Words) -> Vec<Column> {
    let nearest = |decimals| Show::Decimals(decimals, Rounding::Nearest);
    let across = words.word("table-across-motor");
    let parts = ["ratio_min_percent", "ratio_nom_percent", "ratio_max_percent"];
    [Column::new("step", words.word("table-step"), nearest(0))]
        .into_iter()
        .chain(Column::band(words, parts, "Vm/Vb %", |rounding| Show::Decimals(1, rounding)))
        .chain([
            Column::new(
                "motor_low_battery_v",
                format!("{across} {}", words.word("table-battery-low")),
                nearest(2),
            ),
            Column::new("motor_v", format!("{across} {}", words.word("table-nominal")), nearest(2)),
            Column::new(
                "motor_high_battery_v",
                format!("{across} {}", words.word("table-battery-high")),
                nearest(2),
            ),
            Column::new("current_a", "A", nearest(1)),
            Column::new("heat_w", words.word("table-heat"), nearest(1)),
            Column::new("switched_to_ground_v", words.word("table-to-ground"), nearest(2)),
        ])
        .collect()
}

struct Bench<'a> {
    driver: &'a Driver,
    blower: &'a Blower,
}

impl Bench<'_> {
    /// One row; `step` is `None` where the relay bypasses the series element.
    fn row(
        &self,
        name: String,
        across: impl Fn(Voltage) -> Option<Voltage>,
        step: Option<Step>,
    ) -> Vec<Cell> {
        let battery = self.driver.battery;
        let at = |battery: Option<Voltage>| battery.and_then(&across);
        let nominal = self.driver.nominal;
        let motor = at(nominal);
        let part = |volts: Option<Voltage>| {
            volts.zip(nominal).map(|(volts, feed)| 100.0 * volts.volts() / feed.volts())
        };
        let limits = step.and_then(|step| self.limits(step));
        let percent = |part: Ratio| 100.0 * part.part();
        let stated = match step {
            Some(Step::Part(stated, _)) => Some(percent(stated)),
            _ => part(motor),
        };
        let amperes = motor.zip(self.blower.motor).and_then(|(volts, motor)| motor.current(volts).ok());
        // Wires take their share before the series element; the relay leaves it nothing.
        let heat = step.and_then(|_| {
            let (feed, volts, amperes) = (nominal?, motor?, amperes?);
            let left = feed.volts() - volts.volts() - self.wiring() * amperes.amperes();
            Some(left.max(0.0) * amperes.amperes())
        });
        let switched = self.driver.polarity.and_then(|side| {
            let ends = to_ground(side, nominal?, motor?).ok()?;
            Some(match side {
                Side::Low => ends.negative.volts(),
                Side::High => ends.positive.volts(),
            })
        });
        vec![
            Cell::from(name),
            Cell::from(limits.map(|limits| percent(limits.low))),
            Cell::from(stated),
            Cell::from(limits.map(|limits| percent(limits.high))),
            Cell::from(at(battery.map(|battery| battery.low)).map(Voltage::volts)),
            Cell::from(motor.map(Voltage::volts)),
            Cell::from(at(battery.map(|battery| battery.high)).map(Voltage::volts)),
            Cell::from(amperes.map(|amperes| amperes.amperes())),
            Cell::from(heat),
            Cell::from(switched),
        ]
    }

    /// The voltage across the motor at a step.
    fn across(&self, at: Step, battery: Voltage) -> Option<Voltage> {
        match at {
            Step::Part(part, _) => step(battery, part).ok(),
            Step::Resistor(resistor) => self.behind(battery, resistor.nominal),
        }
    }

    /// Behind a series resistor and the wires.
    fn behind(&self, battery: Voltage, resistor: Resistance) -> Option<Voltage> {
        let series = Resistance::from_ohms(resistor.ohms() + self.wiring());
        self.blower.motor?.behind(battery, series).ok()
    }

    /// With the relay across the series element.
    fn bypassed(&self, battery: Voltage) -> Option<Voltage> {
        let left = full_speed(battery, self.blower.bypass_drop?, Voltage::from_volts(0.0)).ok()?;
        match (self.blower.wiring, self.blower.motor) {
            (Some(wiring), Some(motor)) => motor.behind(left, wiring).ok(),
            (Some(_), None) => None,
            (None, _) => Some(left),
        }
    }

    /// The part of the battery between the ends of the step's own tolerance, at the nominal battery.
    fn limits(&self, at: Step) -> Option<Interval<Ratio>> {
        match at {
            Step::Part(part, tolerance) => {
                let away = tolerance?.part();
                let end = |part: f64| Ratio::new(part.clamp(0.0, 1.0));
                Some(Interval { low: end(part.part() - away), high: end(part.part() + away) })
            }
            Step::Resistor(resistor) => {
                let (limits, battery) = (resistor.limits?, self.driver.nominal?);
                let part = |ohms| Some(Ratio::new(self.behind(battery, ohms)?.volts() / battery.volts()));
                Some(Interval { low: part(limits.high)?, high: part(limits.low)? })
            }
        }
    }

    /// Ohms of the wires; where none are given they are left out, and a note says so.
    fn wiring(&self) -> f64 {
        self.blower.wiring.map_or(0.0, Resistance::ohms)
    }

    fn notes(&self, words: &Words) -> Vec<String> {
        let nominal = self
            .driver
            .nominal
            .map(|nominal| words.say(&Message::new("table-note-nominal-battery").with("nominal", nominal)));
        let volts = self.driver.battery.map(|battery| {
            words.say(&Message::new("table-note-battery").with("low", battery.low).with("high", battery.high))
        });
        let hottest = self.driver.nominal.zip(self.blower.motor).and_then(|(battery, motor)| {
            let (at, heat) = motor.hottest(battery).ok()?;
            Some(
                words.say(
                    &Message::new("table-note-hottest")
                        .with("battery", battery)
                        .with("percent", figure(100.0 * at.volts() / battery.volts(), 0, Rounding::Nearest))
                        .with("volts", figure(at.volts(), 1, Rounding::Nearest))
                        .with("watts", figure(heat.watts(), 0, Rounding::Up)),
                ),
            )
        });
        let wiring = self.blower.wiring.is_none().then(|| words.word("table-note-no-wiring"));
        let trap = self.driver.polarity.map(|side| {
            words.word(match side {
                Side::Low => "table-note-low-side",
                Side::High => "table-note-high-side",
            })
        });
        [nominal, volts, hottest, wiring, trap].into_iter().flatten().collect()
    }

    fn formulas(&self, words: &Words) -> Vec<String> {
        let has = |wanted: fn(&Step) -> bool| self.blower.steps.iter().any(wanted);
        let parts = has(|step| matches!(step, Step::Part(..))).then_some("table-formula-step");
        let resistors = has(|step| matches!(step, Step::Resistor(_))).then_some("table-formula-resistors");
        let motor: Option<Motor> = self.blower.motor;
        let model = motor.map(|_| "table-formula-motor");
        let heat = motor.map(|_| "table-formula-heat");
        let bypass = self.blower.bypass_drop.map(|_| "table-formula-bypass");
        [parts, resistors, model, heat, bypass].into_iter().flatten().map(|id| words.word(id)).collect()
    }
}
