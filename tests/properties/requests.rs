//! Requests: nothing before its delay, hysteresis holds, what the rule calls possible is.

use bayleaf::physics::request::{
    Condition, Effect, Phase, Scenario, Side, Span, State, Timeline, Trace, can_be_granted, timeline,
};
use proptest::prelude::*;

const LENGTH: f64 = 60.0;

fn conditions() -> impl Strategy<Value = Condition> {
    let kind = (prop_oneof![Just(Effect::Permits), Just(Effect::Inhibits)], any::<bool>());
    (kind, -5_i32..=5, 0_i32..=4, 0.0..6.0_f64, 0.0..6.0_f64).prop_map(
        |((effect, above), threshold, apart, delay, release_delay)| {
            let (side, sign) = if above { (Side::Above, -1) } else { (Side::Below, 1) };
            let levels = (f64::from(threshold), f64::from(threshold + sign * apart));
            Condition::new((effect, side), levels, (delay, release_delay))
                .expect("it lets go on its other side")
        },
    )
}

fn traces() -> impl Strategy<Value = Trace> {
    prop::collection::vec((0.3..9.0_f64, -8.0..8.0_f64), 1..10).prop_map(|steps| {
        let mut at = 0.0;
        let points = steps.into_iter().map(|(step, value)| {
            at += step;
            (at, value)
        });
        Trace::new(points.collect()).expect("times rise")
    })
}

fn chains() -> impl Strategy<Value = (Vec<Condition>, f64, Scenario)> {
    let pairs = prop::collection::vec((conditions(), traces()), 0..5);
    let requested = (0.0..10.0_f64, 20.0..30.0_f64, 32.0..40.0_f64, 41.0..LENGTH);
    (pairs, 0.0..5.0_f64, requested).prop_map(|(pairs, hold, (a, b, c, d))| {
        let (conditions, traces) = pairs.into_iter().unzip();
        (conditions, hold, Scenario { length: LENGTH, requested: vec![(a, b), (c, d)], traces })
    })
}

fn at<T>(spans: &[Span<T>], time: f64) -> Option<&T> {
    spans.iter().find(|span| span.from <= time && time < span.to).map(|span| &span.is)
}

/// Stretches without a gap from 0 to the end, each unlike its neighbour.
fn whole<T: PartialEq>(spans: &[Span<T>]) -> bool {
    let touch = spans
        .windows(2)
        .all(|pair| pair[0].to.to_bits() == pair[1].from.to_bits() && pair[0].is != pair[1].is);
    let ends = spans.first().is_some_and(|span| span.from <= 0.0)
        && spans.last().is_some_and(|span| span.to >= LENGTH);
    touch && ends && spans.iter().all(|span| span.from < span.to)
}

fn computed((conditions, hold, scenario): &(Vec<Condition>, f64, Scenario)) -> Timeline {
    timeline(conditions, *hold, scenario).expect("a whole chain")
}

proptest! {
    #![proptest_config(crate::every_run())]

    /// Granted only where it was asked for, and nothing held it back, for the whole hold time.
    #[test]
    fn never_granted_before_its_delay(chain in chains()) {
        let found = computed(&chain);
        let (conditions, hold, scenario) = &chain;
        prop_assert!(whole(&found.request));
        for span in found.request.iter().filter(|span| span.is == State::Permitted) {
            let earlier = (0..=20).map(|part| span.from - hold * f64::from(part) / 20.0);
            for time in earlier.chain([0.5 * (span.from + span.to)]) {
                let time = time + 1e-9;
                prop_assert!(scenario.requested.iter().any(|(on, off)| *on <= time && time <= *off));
                for (condition, phases) in conditions.iter().zip(&found.conditions) {
                    let phase = at(phases, time);
                    prop_assert!(phase.is_none_or(|phase| !condition.holds_back(*phase)), "at {time}");
                }
            }
        }
    }

    /// A condition that holds a request back is named, and no other one.
    #[test]
    fn whatever_holds_back_is_named(chain in chains(), time in 0.0..LENGTH) {
        let found = computed(&chain);
        let holds = chain.0.iter().zip(&found.conditions).enumerate().filter(|(_, (condition, phases))| {
            at(phases, time).is_some_and(|phase| condition.holds_back(*phase))
        });
        let holds: Vec<usize> = holds.map(|(index, _)| index).collect();
        match at(&found.request, time) {
            Some(State::Inhibited(by)) => prop_assert_eq!(by, &holds),
            Some(State::Delayed | State::Permitted) => prop_assert!(holds.is_empty()),
            _ => {}
        }
    }

    /// Set only at the end of its delay, let go only at the end of the other one; between, a
    /// condition never goes from clear to set in one step unless its delay is nothing.
    #[test]
    fn a_condition_keeps_its_delays((condition, trace) in (conditions(), traces())) {
        let phases = condition.phases(&trace, LENGTH);
        prop_assert!(whole(&phases));
        for pair in phases.windows(2) {
            let lasted = pair[0].to - pair[0].from;
            let follows = match (pair[0].is, pair[1].is) {
                (Phase::Setting, Phase::Set) | (Phase::Releasing, Phase::Clear) => lasted > 0.0,
                (Phase::Clear, Phase::Setting) | (Phase::Set, Phase::Releasing) => true,
                (Phase::Setting, Phase::Clear) | (Phase::Releasing, Phase::Set) => true,
                // Only where a delay is nothing.
                (Phase::Clear, Phase::Set) | (Phase::Set, Phase::Clear) => true,
                _ => false,
            };
            prop_assert!(follows, "{:?}", pair);
        }
    }

    /// A value that moves between threshold and release threshold changes nothing.
    #[test]
    fn between_both_thresholds_nothing_changes(
        above in any::<bool>(), start in any::<bool>(), values in prop::collection::vec(0.01..0.99_f64, 1..8)
    ) {
        let (side, levels) = if above { (Side::Above, (1.0, 0.0)) } else { (Side::Below, (0.0, 1.0)) };
        let condition = Condition::new((Effect::Inhibits, side), levels, (0.5, 0.5)).expect("a condition");
        let first = if start { levels.0 } else { levels.1 };
        let mut points = vec![(0.0, first), (1.0, first)];
        points.extend(values.iter().enumerate().map(|(index, value)| {
            (2.0 + u32::try_from(index).map_or(0.0, f64::from), *value)
        }));
        let phases = condition.phases(&Trace::new(points).expect("times rise"), LENGTH);
        let only = if start { Phase::Set } else { Phase::Clear };
        prop_assert!(phases.iter().all(|span| span.is == only), "{:?}", phases);
    }

    /// Conditions on one value that shut each other out let no trace through.
    #[test]
    fn what_can_never_be_granted_never_is(
        conditions in prop::collection::vec(conditions(), 1..4), trace in traces()
    ) {
        let still: Vec<Condition> = conditions;
        let scenario = Scenario {
            length: LENGTH,
            requested: vec![(0.0, LENGTH)],
            traces: vec![trace; still.len()],
        };
        // Waiting for every delay: at the last value, which stays for ever.
        let found = timeline(&still, 0.0, &scenario).expect("a whole chain");
        let last = found.request.last().map(|span| &span.is);
        let settled = scenario.traces[0].points().last().is_some_and(|point| point.0 + 13.0 < LENGTH);
        if settled && last == Some(&State::Permitted) {
            prop_assert!(can_be_granted(&still));
        }
    }
}
