//! A blower's steps: volts across the motor, current, heat, and what a meter to ground shows.

use super::{Ask, Cell, Column, Show, Table};
use crate::model::{Blower, Driver, Step};
use crate::physics::blower::{Side, full_speed, step, to_ground};
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
        columns: bench.columns(words),
        rows,
        formulas: bench.formulas(words),
        inputs: driver.facts.clone(),
    })
}

/// A step of a blower, or its relay, in percent of the battery's voltage.
pub(in crate::document) struct Part {
    /// Its number; `None` where the relay bypasses the series element.
    pub step: Option<usize>,
    pub least: Option<f64>,
    pub nominal: Option<f64>,
    pub most: Option<f64>,
    /// Across the motor at the nominal battery.
    pub volts: Option<f64>,
}

/// Every step from the slowest on, then the relay, where one bypasses.
pub(in crate::document) fn parts(driver: &Driver, blower: &Blower) -> Vec<Part> {
    let bench = Bench { driver, blower };
    let part = |step: Option<usize>, row: Vec<Cell>| {
        let number = |index: usize| match row.get(index) {
            Some(Cell::Number(number)) => Some(*number),
            _ => None,
        };
        Part { step, least: number(1), nominal: number(2), most: number(3), volts: number(5) }
    };
    let steps = blower.steps.iter().enumerate().map(|(index, step)| {
        part(Some(index + 1), bench.row(String::new(), |at| bench.across(*step, at), Some(*step)))
    });
    let relay =
        blower.bypass_drop.map(|_| part(None, bench.row(String::new(), |at| bench.bypassed(at), None)));
    steps.chain(relay).collect()
}

/// How hot the series element gets, in words.
pub(in crate::document) fn hottest(words: &Words, driver: &Driver, blower: &Blower) -> Vec<String> {
    Bench { driver, blower }.hottest(words)
}

struct Bench<'a> {
    driver: &'a Driver,
    blower: &'a Blower,
}

impl Bench<'_> {
    /// The columns; each that holds at one battery only says at which.
    fn columns(&self, words: &Words) -> Vec<Column> {
        let nearest = |decimals| Show::Decimals(decimals, Rounding::Nearest);
        let nominal = self.driver.nominal;
        let at = |head: String, battery: Option<Voltage>| match battery {
            Some(battery) => {
                words.say(&Message::new("table-at-battery").with("what", head).with("battery", battery))
            }
            None => head,
        };
        let motor = |battery| at(words.word("table-across-motor"), battery);
        let [low, high] =
            self.driver.battery.map_or([None, None], |range| [Some(range.low), Some(range.high)]);
        let parts = ["ratio_min_percent", "ratio_nom_percent", "ratio_max_percent"];
        let mut parts = Column::band(words, parts, "Vm/Vb %", |rounding| Show::Decimals(1, rounding));
        parts[1].head = at(parts[1].head.clone(), nominal);
        [Column::new("step", words.word("table-step"), nearest(0))]
            .into_iter()
            .chain(parts)
            .chain([
                Column::new("motor_low_battery_v", motor(low), nearest(2)),
                Column::new("motor_v", motor(nominal), nearest(2)),
                Column::new("motor_high_battery_v", motor(high), nearest(2)),
                Column::new("current_a", at("A".to_owned(), nominal), nearest(1)),
                Column::new("heat_w", at(words.word("table-heat"), nominal), nearest(1)),
                Column::new("switched_to_ground_v", at(words.word("table-to-ground"), nominal), nearest(2)),
            ])
            .collect()
    }

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
        // The relay leaves the series element nothing.
        let heat = step.and_then(|step| self.heat(step, nominal?));
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

    /// What the series element turns to heat at a step: the wires take their share before it.
    fn heat(&self, step: Step, battery: Voltage) -> Option<f64> {
        let volts = self.across(step, battery)?;
        let amperes = self.blower.motor?.current(volts).ok()?.amperes();
        let left = battery.volts() - volts.volts() - self.wiring() * amperes;
        Some(left.max(0.0) * amperes)
    }

    /// The part of the battery over the ends of the step's own tolerance and of the battery.
    fn limits(&self, at: Step) -> Option<Interval<Ratio>> {
        match at {
            Step::Part(part, tolerance) => {
                let away = tolerance?.part();
                let end = |part: f64| Ratio::new(part.clamp(0.0, 1.0));
                Some(Interval { low: end(part.part() - away), high: end(part.part() + away) })
            }
            Step::Resistor(resistor) => {
                let (limits, battery) = (resistor.limits?, self.driver.battery?);
                let part = |ohms, feed| Some(self.behind(feed, ohms)?.volts() / feed.volts());
                // An exponent above 1 makes the part fall with the battery, one below 1 rise.
                let ends = |ohms| Some([part(ohms, battery.low)?, part(ohms, battery.high)?]);
                let (greatest, least) = (ends(limits.high)?, ends(limits.low)?);
                Some(Interval {
                    low: Ratio::new(greatest[0].min(greatest[1])),
                    high: Ratio::new(least[0].max(least[1])),
                })
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
        let wiring = self.blower.wiring.is_none().then(|| words.word("table-note-no-wiring"));
        let trap = self.driver.polarity.map(|side| {
            words.word(match side {
                Side::Low => "table-note-low-side",
                Side::High => "table-note-high-side",
            })
        });
        let caution = Some(words.word("caution-around"));
        let before = [nominal, volts].into_iter().flatten();
        before.chain(self.hottest(words)).chain([wiring, trap, caution].into_iter().flatten()).collect()
    }

    /// How hot the series element gets: a pack at one of its steps, a transistor between its own.
    fn hottest(&self, words: &Words) -> Vec<String> {
        let highest = self.driver.battery.map(|battery| battery.high);
        let say = |message: &Message| words.say(message);
        if self.has_resistors() {
            let batteries = self.driver.nominal.into_iter().chain(highest);
            return batteries
                .filter_map(|battery| self.hottest_step(battery))
                .map(|note| say(&note))
                .collect();
        }
        let hottest = highest.or(self.driver.nominal).zip(self.blower.motor).and_then(|(battery, motor)| {
            let wiring = Resistance::from_ohms(self.wiring());
            let (at, heat) = motor.hottest_behind(battery, wiring).ok()?;
            Some(
                Message::new("table-note-hottest")
                    .with("battery", battery)
                    .with("percent", figure(100.0 * at.volts() / battery.volts(), 0, Rounding::Nearest))
                    .with("volts", figure(at.volts(), 1, Rounding::Nearest))
                    .with("watts", figure(heat.watts(), 1, Rounding::Up)),
            )
        });
        hottest.iter().map(say).collect()
    }

    /// The step at which a pack's resistor is hottest.
    fn hottest_step(&self, battery: Voltage) -> Option<Message> {
        let heats = self.blower.steps.iter().map(|step| self.heat(*step, battery));
        let known = heats.enumerate().filter_map(|(index, heat)| Some((index + 1, heat?)));
        let (step, watts) = known.max_by(|(_, one), (_, other)| one.total_cmp(other))?;
        Some(
            Message::new("table-note-hottest-step")
                .with("battery", battery)
                .with("step", step)
                .with("watts", figure(watts, 1, Rounding::Nearest)),
        )
    }

    fn has_resistors(&self) -> bool {
        self.blower.steps.iter().any(|step| matches!(step, Step::Resistor(_)))
    }

    fn formulas(&self, words: &Words) -> Vec<String> {
        let has_parts = self.blower.steps.iter().any(|step| matches!(step, Step::Part(..)));
        let parts = has_parts.then_some("table-formula-step");
        let resistors = self.has_resistors().then_some("table-formula-resistors");
        let model = self.blower.motor.map(|_| "table-formula-motor");
        let heat = self.blower.motor.map(|_| {
            if self.has_resistors() { "table-formula-heat-resistors" } else { "table-formula-heat" }
        });
        let bypass = self.blower.bypass_drop.map(|_| "table-formula-bypass");
        [parts, resistors, model, heat, bypass].into_iter().flatten().map(|id| words.word(id)).collect()
    }
}
