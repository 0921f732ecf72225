//! Requests and their conditions.
//!
//! No published source gives such a timeline with its numbers; the ones here are worked by
//! hand, and the working stands beside them.

use bayleaf::physics::request::{
    Condition, Effect, Error, Phase, Scenario, Side, Span, State, Trace, can_be_granted, timeline,
};

const ABOVE: (Effect, Side) = (Effect::Inhibits, Side::Above);
const BELOW: (Effect, Side) = (Effect::Inhibits, Side::Below);
const PERMIT: (Effect, Side) = (Effect::Permits, Side::Above);

fn condition(kind: (Effect, Side), levels: (f64, f64), delays: (f64, f64)) -> Condition {
    Condition::new(kind, levels, delays).expect("a condition")
}

fn trace(points: &[(f64, f64)]) -> Trace {
    Trace::new(points.to_vec()).expect("a trace")
}

fn meets<T: PartialEq + std::fmt::Debug>(found: &[Span<T>], wanted: &[(f64, f64, T)]) {
    assert_eq!(found.len(), wanted.len(), "{found:?}");
    for (found, (from, to, is)) in found.iter().zip(wanted) {
        assert!(
            (found.from - from).abs() < 1e-9 && (found.to - to).abs() < 1e-9,
            "{found:?}, {from} to {to}"
        );
        assert_eq!(&found.is, is);
    }
}

/// Worked by hand. Hold time 2 s, request from 2 s to 86 s.
///
/// 0. Engine runs, permits above 650 r/min, delay 3 s: 0 at 4 s to 820 at 5 s passes 650 at
///    4 + 650/820 = 4.792 682 926 s, so it is set 3 s later.
/// 1. Evaporator, inhibits below 2 °C for 1 s until above 4 °C for 5 s: 22 °C at 10 s to 0 °C
///    at 40 s passes 2 °C at 10 + 30 × 20/22 = 37.272 727 s, set at 38.272 727 s; 0 °C at 44 s
///    to 10 °C at 64 s passes 4 °C at 44 + 20 × 4/10 = 52 s, clear at 57 s.
/// 2. Full load, inhibits above 90 % for 0.5 s until below 75 % for 4 s: passes 90 % at 69.9 s,
///    set at 70.4 s; passes 75 % at 73.25 s, clear at 77.25 s.
#[test]
fn a_chain_of_three_worked_by_hand() {
    let conditions = [
        condition(PERMIT, (650.0, 500.0), (3.0, 0.0)),
        condition(BELOW, (2.0, 4.0), (1.0, 5.0)),
        condition(ABOVE, (90.0, 75.0), (0.5, 4.0)),
    ];
    let traces = vec![
        trace(&[(0.0, 0.0), (4.0, 0.0), (5.0, 820.0)]),
        trace(&[(0.0, 22.0), (10.0, 22.0), (40.0, 0.0), (44.0, 0.0), (64.0, 10.0), (90.0, 6.0)]),
        trace(&[(0.0, 0.0), (69.0, 0.0), (70.0, 100.0), (73.0, 100.0), (74.0, 0.0)]),
    ];
    let scenario = Scenario { length: 90.0, requested: vec![(2.0, 86.0)], traces };
    let found = timeline(&conditions, 2.0, &scenario).expect("a timeline");
    let engine = 4.0 + 650.0 / 820.0;
    let cold = 10.0 + 30.0 * 20.0 / 22.0;
    meets(
        &found.conditions[0],
        &[
            (0.0, engine, Phase::Clear),
            (engine, engine + 3.0, Phase::Setting),
            (engine + 3.0, 90.0, Phase::Set),
        ],
    );
    meets(
        &found.conditions[1],
        &[
            (0.0, cold, Phase::Clear),
            (cold, cold + 1.0, Phase::Setting),
            (cold + 1.0, 52.0, Phase::Set),
            (52.0, 57.0, Phase::Releasing),
            (57.0, 90.0, Phase::Clear),
        ],
    );
    meets(
        &found.request,
        &[
            (0.0, 2.0, State::Absent),
            (2.0, engine + 3.0, State::Inhibited(vec![0])),
            (engine + 3.0, engine + 5.0, State::Delayed),
            (engine + 5.0, cold + 1.0, State::Permitted),
            (cold + 1.0, 57.0, State::Inhibited(vec![1])),
            (57.0, 59.0, State::Delayed),
            (59.0, 70.4, State::Permitted),
            (70.4, 77.25, State::Inhibited(vec![2])),
            (77.25, 79.25, State::Delayed),
            (79.25, 86.0, State::Permitted),
            (86.0, 90.0, State::Absent),
        ],
    );
}

/// Worked by hand: below 2 for 1 s sets; a dip of 0.5 s does not, and neither does coming back
/// to 3, between threshold and release threshold, let it go.
#[test]
fn a_short_dip_sets_nothing_and_half_way_back_lets_nothing_go() {
    let cold = condition(BELOW, (2.0, 4.0), (1.0, 1.0));
    let dip = trace(&[(0.0, 3.0), (1.0, 3.0), (1.0001, 1.0), (1.5, 1.0), (1.5001, 3.0), (3.0, 3.0)]);
    assert!(cold.phases(&dip, 3.0).iter().all(|span| matches!(span.is, Phase::Clear | Phase::Setting)));
    let stays = trace(&[(0.0, 1.0), (1.0, 3.0), (9.0, 3.0)]);
    meets(&cold.phases(&stays, 9.0), &[(0.0, 9.0, Phase::Set)]);
}

/// Worked by hand: at its threshold is past it, from the very end of the delay on it is set.
#[test]
fn a_value_at_its_threshold_counts() {
    let hot = condition(ABOVE, (10.0, 8.0), (2.0, 2.0));
    meets(&hot.phases(&trace(&[(0.0, 10.0)]), 5.0), &[(0.0, 5.0, Phase::Set)]);
    let rise = trace(&[(0.0, 8.0), (2.0, 10.0), (4.0, 10.0), (6.0, 8.0)]);
    // Past from 2 s to 4 s: the delay is over at the very end, so it is set until 6 s and 2 s on.
    meets(
        &hot.phases(&rise, 10.0),
        &[
            (0.0, 2.0, Phase::Clear),
            (2.0, 4.0, Phase::Setting),
            (4.0, 6.0, Phase::Set),
            (6.0, 8.0, Phase::Releasing),
            (8.0, 10.0, Phase::Clear),
        ],
    );
}

/// Worked by hand: wanted from 20 up until 17, forbidden from 18 up until 16, nothing gets
/// through; wanted until 15, it does on the way down from 20, between 16 and 15.
#[test]
fn a_permit_that_ends_before_its_inhibit_lets_nothing_through() {
    let hot = condition(ABOVE, (18.0, 16.0), (0.0, 0.0));
    assert!(!can_be_granted(&[condition(PERMIT, (20.0, 17.0), (0.0, 0.0)), hot]));
    assert!(can_be_granted(&[condition(PERMIT, (20.0, 15.0), (0.0, 0.0)), hot]));
    assert!(can_be_granted(&[]));
    // Forbidden everywhere: from 2 down and from 1 up.
    let cold = condition(BELOW, (2.0, 3.0), (0.0, 0.0));
    assert!(!can_be_granted(&[cold, condition(ABOVE, (1.0, 0.0), (0.0, 0.0))]));
}

#[test]
fn what_makes_no_condition_or_timeline_is_refused() {
    assert_eq!(Condition::new(BELOW, (4.0, 2.0), (0.0, 0.0)), Err(Error::Release));
    assert_eq!(Condition::new(ABOVE, (2.0, 4.0), (0.0, 0.0)), Err(Error::Release));
    assert_eq!(Condition::new(ABOVE, (4.0, 2.0), (-1.0, 0.0)), Err(Error::Time));
    assert_eq!(Trace::new(vec![(0.0, 1.0), (0.0, 2.0)]), Err(Error::Trace));
    assert_eq!(Trace::new(Vec::new()), Err(Error::Trace));
    let scenario = |requested| Scenario { length: 10.0, requested, traces: Vec::new() };
    assert_eq!(timeline(&[], 0.0, &scenario(vec![(5.0, 11.0)])), Err(Error::Time));
    assert_eq!(timeline(&[], 0.0, &scenario(vec![(5.0, 7.0), (6.0, 8.0)])), Err(Error::Time));
    assert_eq!(timeline(&[], -1.0, &scenario(Vec::new())), Err(Error::Time));
    let one = [condition(ABOVE, (1.0, 0.0), (0.0, 0.0))];
    assert_eq!(timeline(&one, 0.0, &scenario(Vec::new())), Err(Error::Count));
}
