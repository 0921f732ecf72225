//! What to measure next: the cheapest condition that tells most suspects apart.

use super::{Case, Expected, text};
use crate::document::bench::fault;
use crate::physics::decision::Verdict;
use crate::physics::fault::{Cause, Condition, Fault, Separation, Test, best_condition};
use crate::quantity::Temperature;
use crate::words::Message;

/// Other temperatures that a sensor can be brought to, in the order of the effort.
///
/// # Source
/// Common practice, no source: ice water, water from the tap, hot water in a bag.
const OTHERS: [Temperature; 3] =
    [Temperature::from_celsius(0.0), Temperature::from_celsius(15.0), Temperature::from_celsius(50.0)];

impl Case<'_> {
    /// What to do next, and what each suspect would read there.
    pub(super) fn next(&self, verdict: Verdict, causes: &[Cause]) -> (String, Vec<Expected>) {
        if verdict == Verdict::Pass {
            return (self.words.word("judge-next-pass"), Vec::new());
        }
        // A good sensor is a suspect where the verdict is open.
        let good = (verdict == Verdict::Undecided).then_some(None);
        let suspects: Vec<Option<Fault>> =
            good.into_iter().chain(causes.iter().map(|cause| Some(cause.fault))).collect();
        if causes.is_empty() {
            return (self.words.word("judge-next-nothing-explains"), Vec::new());
        }
        match best_condition(&self.subject, &suspects, &self.candidates(), &self.instruments) {
            Some(best) => (self.told(&best), self.expected(&suspects, best.condition)),
            None if suspects.len() == 1 => (self.words.word("judge-next-one-suspect"), Vec::new()),
            None => (self.words.word("judge-next-none-separates"), Vec::new()),
        }
    }

    /// Every test here, then every test at another temperature, cheapest first.
    fn candidates(&self) -> Vec<Condition> {
        let range = self.bench.sensor.range;
        let others = OTHERS.into_iter().filter(|at| range.contains(at));
        let temperatures = [self.at].into_iter().chain(others);
        let all = temperatures.flat_map(|at| Test::ALL.map(|test| Condition { test, at }));
        all.filter(|condition| *condition != Condition { test: self.test, at: self.at }).collect()
    }

    fn told(&self, best: &Separation) -> String {
        let message = Message::new("judge-next")
            .with_word("test", text::test_word(best.condition.test))
            .with("at", text::celsius(best.condition.at))
            .with_count("pairs", best.pairs)
            .with("of", best.of);
        self.words.say(&message)
    }

    fn expected(&self, suspects: &[Option<Fault>], condition: Condition) -> Vec<Expected> {
        let names: Vec<_> = self.bench.others.iter().map(|(sensor, _)| *sensor).collect();
        let finite = |value: f64| value.is_finite().then_some(value);
        let expected = |suspect: &Option<Fault>| {
            let Condition { test, at } = condition;
            let (_, window) = self.subject.reading(suspect.as_ref(), test, at, &self.instruments)?;
            let window = window?;
            let who = match suspect {
                None => self.words.word("judge-good"),
                Some(fault) => text::with_size(self.words, fault, &names),
            };
            Some(Expected {
                fault: suspect.as_ref().map_or("none", fault::key),
                low: finite(window.low),
                high: finite(window.high),
                unit: if test.is_ohms() { "Ω" } else { "V" },
                range: text::range(self.words, window, test),
                told: who,
            })
        };
        suspects.iter().filter_map(expected).collect()
    }
}
