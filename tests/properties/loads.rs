//! Copper, coils, solenoids, blowers and wires.

use bayleaf::physics::blower::{Motor, Side, full_speed, step, to_ground};
use bayleaf::physics::coil::{CoilFault, RatedCoil, causes};
use bayleaf::physics::copper;
use bayleaf::physics::solenoid::{
    Coil, ControlCurve, Direction, Spread, Supply, ceiling, continuous_mean, duty_for, mean_window, running,
};
use bayleaf::physics::wire::{self, Class, Run};
use bayleaf::quantity::{
    Current, Frequency, Inductance, Interval, Length, Ratio, Resistance, Scalar, Temperature, Toleranced,
    Voltage, WireSize,
};
use proptest::prelude::*;

/// Two ways to the same value differ by the order of their roundings.
const LAST_BITS: f64 = 1e-12;

/// Any finite number, of any size and sign.
fn finite() -> impl Strategy<Value = f64> {
    use proptest::num::f64::{NEGATIVE, NORMAL, POSITIVE, SUBNORMAL, ZERO};
    let near = -300.0..300.0_f64;
    prop_oneof![POSITIVE | NEGATIVE | NORMAL | SUBNORMAL | ZERO, near, 0.0..1.0_f64]
}

fn around<T: Scalar>(nominal: f64, part: f64) -> Interval<T> {
    Interval { low: T::from_si(nominal * (1.0 - part)), high: T::from_si(nominal * (1.0 + part)) }
}

fn toleranced<T: Scalar>(nominal: f64, part: f64) -> Toleranced<T> {
    Toleranced { nominal: T::from_si(nominal), limits: Some(around(nominal, part)) }
}

fn inside<T: Scalar>(interval: Interval<T>, share: f64) -> T {
    let (low, high) = (interval.low.si(), interval.high.si());
    T::from_si((low + share * (high - low)).clamp(low, high))
}

fn celsius(degrees: f64) -> Temperature {
    Temperature::from_celsius(degrees)
}

fn finite_si<T: Scalar, E>(value: Result<T, E>) -> bool {
    value.map_or(true, |value| value.si().is_finite())
}

/// Battery, switch drop, diode drop, resistance, inductance, frequency of a vehicle's coil.
fn drives() -> impl Strategy<Value = (Supply, Coil, Frequency)> {
    (6.0..32.0_f64, 0.0..1.0_f64, 0.0..1.2_f64, 1.0..100.0_f64, 1e-4..1.0_f64, 20.0..20e3_f64).prop_map(
        |(battery, switch, diode, ohms, henries, hertz)| {
            let supply = Supply {
                battery: Voltage::from_volts(battery),
                switch_drop: Voltage::from_volts(switch),
                diode_drop: Voltage::from_volts(diode),
            };
            let coil = Coil {
                resistance: Resistance::from_ohms(ohms),
                inductance: Inductance::from_henries(henries),
            };
            (supply, coil, Frequency::from_hertz(hertz))
        },
    )
}

fn motors() -> impl Strategy<Value = (Motor, Voltage)> {
    (1.0..40.0_f64, 9.0..30.0_f64, 0.5..3.0_f64, 0.7..1.3_f64).prop_map(|(amperes, at, exponent, part)| {
        let rated = Voltage::from_volts(at);
        let motor = Motor::new(Current::from_amperes(amperes), rated, exponent).expect("a motor");
        (motor, Voltage::from_volts(at * part))
    })
}

fn curves() -> impl Strategy<Value = ControlCurve> {
    let steps = prop::collection::vec((0.01..0.5_f64, 0.0..1.0_f64), 2..8);
    (steps, prop::bool::ANY).prop_map(|(steps, less)| {
        let whole: f64 = steps.iter().map(|step| step.1).sum::<f64>() + 1e-6;
        let (mut current, mut part) = (0.0, 0.0);
        let mut points = vec![(0.0, 0.0)];
        for (further, more) in steps {
            (current, part) = (current + further, part + (more + 1e-7) / whole);
            points.push((current, part.min(1.0)));
        }
        let of =
            |&(i, d): &(f64, f64)| (Current::from_amperes(i), Ratio::new(if less { 1.0 - d } else { d }));
        let direction = if less { Direction::LessDisplacement } else { Direction::MoreDisplacement };
        ControlCurve::new(&points.iter().map(of).collect::<Vec<_>>(), direction).expect("monotone points")
    })
}

proptest! {
    #![proptest_config(crate::every_run())]

    #[test]
    fn copper_comes_back_from_another_temperature(
        ohms in 1e-3..1e4_f64,
        known in -100.0..=200.0_f64,
        at in -100.0..=200.0_f64,
    ) {
        let warm = copper::resistance(Resistance::from_ohms(ohms), celsius(known), celsius(at));
        let warm = warm.expect("inside the domain");
        let back = copper::temperature(Resistance::from_ohms(ohms), celsius(known), warm);
        prop_assert!((back.expect("inside the domain").celsius() - at).abs() < 1e-9);
        prop_assert_eq!(at > known, warm.ohms() > ohms);
    }

    #[test]
    fn a_wire_has_more_ohms_when_longer_hotter_or_thinner(
        gauge in 0..40_u8,
        length in 0.1..100.0_f64,
        at in -40.0..120.0_f64,
    ) {
        let run = |length| Run { length: Length::from_metres(length), conductors: 2 };
        let ohms = |gauge, length, at| {
            let metre = wire::nominal_per_metre(WireSize::Gauge(gauge)).expect("a gauge");
            wire::resistance(metre, run(length), celsius(at)).expect("a wire").ohms()
        };
        let here = ohms(gauge, length, at);
        prop_assert!(ohms(gauge + 1, length, at) > here);
        prop_assert!(ohms(gauge, 1.01 * length, at) > here);
        prop_assert!(ohms(gauge, length, at + 1.0) > here);
    }

    #[test]
    fn a_settled_period_is_in_order((supply, coil, frequency) in drives(), duty in 0.0..=1.0_f64) {
        let run = running(&supply, &coil, frequency, Ratio::new(duty)).expect("a coil");
        let most = ceiling(supply.battery, coil.resistance).expect("a coil");
        let slack = LAST_BITS * most.amperes();
        prop_assert!(0.0 <= run.least.amperes());
        prop_assert!(run.least.amperes() <= run.mean.amperes() + slack, "{:?}", run);
        prop_assert!(run.mean.amperes() <= run.greatest.amperes() + slack, "{:?}", run);
        prop_assert!(run.greatest.amperes() <= most.amperes() + slack, "{:?}", run);
        let ripple = run.greatest.amperes() - run.least.amperes();
        prop_assert!((run.ripple.amperes() - ripple).abs() <= slack);
        let ohms = coil.resistance.ohms();
        prop_assert!((run.across_coil.volts() - ohms * run.mean.amperes()).abs() <= slack * ohms);
        // Without a known inductance the mean is never overstated.
        if let Ok(simple) = continuous_mean(&supply, coil.resistance, Ratio::new(duty)) {
            prop_assert!(simple.amperes() <= run.mean.amperes() + slack, "{:?} {:?}", simple, run);
        }
    }

    #[test]
    fn more_duty_is_more_current_and_back(
        (supply, coil, frequency) in drives(),
        duty in 0.0..0.999_f64,
    ) {
        let mean = |duty| running(&supply, &coil, frequency, Ratio::new(duty)).expect("a coil").mean;
        prop_assert!(mean(duty) < mean(duty + 0.001));
        let found = duty_for(&supply, &coil, frequency, mean(duty)).expect("it was reached");
        let again = mean(found.part()).amperes();
        prop_assert!((again - mean(duty).amperes()).abs() <= 1e-9 * mean(1.0).amperes());
    }

    #[test]
    fn a_window_holds_every_mean_of_good_parts(
        (supply, coil, frequency) in drives(),
        parts in prop::array::uniform4(0.0..0.2_f64),
        duty in 0.0..0.9_f64,
        shares in prop::array::uniform5(0.0..=1.0_f64),
    ) {
        let spread = Spread {
            battery: around(supply.battery.volts(), parts[0]),
            switch_drop: around(supply.switch_drop.volts(), parts[1]),
            diode_drop: around(supply.diode_drop.volts(), parts[2]),
            resistance: around(coil.resistance.ohms(), parts[3]),
            duty: Interval { low: Ratio::new(duty), high: Ratio::new(duty + 0.1) },
        };
        let window = mean_window(&spread, Some((coil.inductance, frequency))).expect("a coil");
        let supply = Supply {
            battery: inside(spread.battery, shares[0]),
            switch_drop: inside(spread.switch_drop, shares[1]),
            diode_drop: inside(spread.diode_drop, shares[2]),
        };
        let coil = Coil { resistance: inside(spread.resistance, shares[3]), ..coil };
        let mean = running(&supply, &coil, frequency, inside(spread.duty, shares[4])).expect("a coil").mean;
        let slack = LAST_BITS * window.high.amperes();
        prop_assert!(window.low.amperes() - slack <= mean.amperes(), "{:?} {:?}", window, mean);
        prop_assert!(mean.amperes() <= window.high.amperes() + slack, "{:?} {:?}", window, mean);
    }

    #[test]
    fn displacement_goes_one_way_and_back(curve in curves(), shares in prop::array::uniform2(0.0..=1.0_f64)) {
        let domain = curve.domain();
        let (a, b) = (inside(domain, shares[0]), inside(domain, shares[1]));
        let (first, second) = (curve.displacement(a).expect("inside"), curve.displacement(b).expect("inside"));
        let rises = curve.direction() == Direction::MoreDisplacement;
        let slack = LAST_BITS;
        if a < b {
            let ahead = if rises { second.part() - first.part() } else { first.part() - second.part() };
            prop_assert!(ahead >= -slack);
        }
        let back = curve.current(first).expect("the curve has it");
        let again = [back.low, back.high].map(|at| curve.displacement(at).expect("inside").part());
        prop_assert!(again.iter().all(|part| (part - first.part()).abs() <= slack), "{:?}", again);
    }

    #[test]
    fn a_series_element_is_hottest_where_it_is_said(
        (motor, battery) in motors(),
        share in 0.0..=1.0_f64,
    ) {
        let (_, most) = motor.hottest(battery).expect("inside the model");
        let across = step(battery, Ratio::new(share)).expect("a step");
        let heat = motor.series_heat(battery, across).expect("inside the model");
        prop_assert!(0.0 <= heat.watts() && heat.watts() <= most.watts() * (1.0 + LAST_BITS));
    }

    #[test]
    fn a_resistor_step_is_found_back((motor, battery) in motors(), series in 0.0..20.0_f64) {
        let across = motor.behind(battery, Resistance::from_ohms(series)).expect("inside the model");
        let back = motor.series_for(battery, across).expect("a running motor");
        prop_assert!((back.ohms() - series).abs() <= 1e-6 * (1.0 + series), "{} {}", back, series);
        let more = motor.behind(battery, Resistance::from_ohms(series + 0.01)).expect("inside the model");
        prop_assert!(more < across);
    }

    #[test]
    fn a_coil_fault_is_found_with_its_size(
        nominal in 1.0..100.0_f64,
        tolerance in 0.0..0.2_f64,
        at in -20.0..100.0_f64,
        share in 0.0..=1.0_f64,
        turns in 0.0..0.9_f64,
        series in 0.0..50.0_f64,
    ) {
        let coil = RatedCoil { resistance: toleranced(nominal, tolerance), at: celsius(20.0) };
        let good = coil.between(Interval { low: celsius(at), high: celsius(at) });
        let good = good.expect("inside the domain").expect("a tolerance");
        // A real part: somewhere inside its tolerance.
        let real = inside(around::<Resistance>(nominal, tolerance), share);
        let real = RatedCoil { resistance: Toleranced { nominal: real, limits: None }, at: celsius(20.0) };
        let read = |fault| {
            let reading = real
                .reading(Some(fault), celsius(at), Resistance::from_ohms(0.0), Voltage::from_volts(12.0))
                .expect("a coil")
                .resistance
                .expect("not open");
            causes(&coil, good, Interval { low: reading, high: reading }).expect("a reading")
        };
        let slack = 1e-9;
        let found = read(CoilFault::ShortedTurns(Ratio::new(turns))).shorted_turns.expect("turns");
        prop_assert!(found.low.part() - slack <= turns && turns <= found.high.part() + slack);
        let found = read(CoilFault::Series(Resistance::from_ohms(series))).series.expect("series");
        prop_assert!(found.low.ohms() - slack <= series && series <= found.high.ohms() + slack);
        let found = read(CoilFault::OtherTemperature(celsius(at + 30.0))).temperature.expect("hotter");
        prop_assert!(found.low.celsius() - slack <= at + 30.0 && at + 30.0 <= found.high.celsius() + slack);
    }

    /// Any finite input gives a finite value or an error, never a panic.
    #[test]
    fn loads_refuse_rather_than_break(v in prop::array::uniform10(finite()), gauge in 0..=255_u8) {
        let ohms = v.map(Resistance::from_ohms);
        let volts = v.map(Voltage::from_volts);
        let amperes = v.map(Current::from_amperes);
        let parts = v.map(Ratio::new);
        let at = v.map(celsius);
        prop_assert!(finite_si(copper::resistance(ohms[0], at[1], at[2])));
        let temperature = copper::temperature(ohms[0], at[1], ohms[2]);
        prop_assert!(temperature.map_or(true, |t| t.celsius().is_finite()));
        prop_assert!(copper::cable_factor(at[0]).map_or(true, f64::is_finite));

        for size in [WireSize::SquareMillimetres(v[0]), WireSize::Gauge(gauge)] {
            prop_assert!(finite_si(wire::nominal_per_metre(size)));
            prop_assert!(finite_si(wire::greatest_per_metre(size, Class::Fixed)));
            prop_assert!(finite_si(wire::diameter(size)));
        }
        let run = Run { length: Length::from_metres(v[1]), conductors: gauge };
        prop_assert!(finite_si(wire::resistance(ohms[2], run, at[3])));
        prop_assert!(finite_si(wire::drop(ohms[0], amperes[1])));

        let supply = Supply { battery: volts[0], switch_drop: volts[1], diode_drop: volts[2] };
        let coil = Coil { resistance: ohms[3], inductance: Inductance::from_henries(v[4]) };
        let frequency = Frequency::from_hertz(v[5]);
        if let Ok(run) = running(&supply, &coil, frequency, parts[6]) {
            let all = [run.mean, run.least, run.greatest, run.ripple].map(Current::amperes);
            prop_assert!(all.iter().all(|value| value.is_finite() && *value >= 0.0), "{:?}", run);
        }
        prop_assert!(finite_si(continuous_mean(&supply, ohms[3], parts[6])));
        prop_assert!(finite_si(duty_for(&supply, &coil, frequency, amperes[7])));
        prop_assert!(finite_si(ceiling(volts[0], ohms[1])));
        let points = [(amperes[0], parts[1]), (amperes[2], parts[3])];
        if let Ok(curve) = ControlCurve::new(&points, Direction::LessDisplacement) {
            prop_assert!(curve.displacement(amperes[4]).is_none_or(|part| part.part().is_finite()));
            prop_assert!(curve.current(parts[5]).is_none_or(|found| found.low.amperes().is_finite()));
        }

        if let Ok(motor) = Motor::new(amperes[0], volts[1], v[2]) {
            prop_assert!(finite_si(motor.current(volts[3])));
            prop_assert!(finite_si(motor.series_heat(volts[3], volts[4])));
            prop_assert!(motor.hottest(volts[3]).map_or(true, |(_, heat)| heat.watts().is_finite()));
            prop_assert!(finite_si(motor.behind(volts[3], ohms[4])));
            prop_assert!(finite_si(motor.series_for(volts[3], volts[4])));
        }
        prop_assert!(finite_si(step(volts[0], parts[1])));
        prop_assert!(finite_si(full_speed(volts[0], volts[1], volts[2])));
        let ends = to_ground(Side::Low, volts[0], volts[1]);
        prop_assert!(ends.map_or(true, |ends| ends.negative.volts().is_finite()));

        let rated = RatedCoil { resistance: Toleranced { nominal: ohms[0], limits: None }, at: at[1] };
        for fault in [
            None,
            Some(CoilFault::Open),
            Some(CoilFault::Shorted),
            Some(CoilFault::ShortedTurns(parts[2])),
            Some(CoilFault::Series(ohms[3])),
            Some(CoilFault::WrongPart(ohms[4])),
            Some(CoilFault::OtherTemperature(at[5])),
        ] {
            if let Ok(reading) = rated.reading(fault, at[6], ohms[7], volts[8]) {
                prop_assert!(reading.resistance.is_none_or(|ohms| ohms.ohms().is_finite()));
                prop_assert!(reading.current.is_none_or(|current| current.amperes().is_finite()));
            }
        }
        let pair = |a: usize, b: usize| Interval { low: ohms[a], high: ohms[b] };
        if let Ok(found) = causes(&rated, pair(2, 3), pair(4, 5)) {
            let turns = found.shorted_turns.is_none_or(|turns| turns.high.part().is_finite());
            let series = found.series.is_none_or(|series| series.high.ohms().is_finite());
            prop_assert!(turns && series, "{:?}", found);
        }
    }
}
