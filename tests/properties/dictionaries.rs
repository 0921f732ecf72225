//! The windows behind fault dictionaries of potentiometers, coils and transducers:
//! they hold every draw of real parts, and corners reach their ends, so that faults
//! are told apart where no two parts read alike, and only there.

use bayleaf::physics::coil::{CoilFault, RatedCoil};
use bayleaf::physics::potentiometer::fault::{Fault, FaultReading};
use bayleaf::physics::potentiometer::{Feedback, LoadTo, Stops};
use bayleaf::physics::transducer::{self, Point, Sense, Transducer};
use bayleaf::quantity::{Interval, Pressure, Ratio, Resistance, Scalar, Temperature, Toleranced, Voltage};
use proptest::prelude::*;

use crate::plus_minus;

/// A window's ends are computed in another order than a reading inside it.
const LAST_BITS: f64 = 1e-9;

fn between<T: Scalar>(limits: Interval<T>, share: f64) -> T {
    let (low, high) = (limits.low.si(), limits.high.si());
    T::from_si((low + share * (high - low)).clamp(low, high))
}

fn chosen<T: Scalar>(part: Toleranced<T>, share: f64) -> Toleranced<T> {
    plus_minus(between(part.limits.expect("every part here has a tolerance"), share).si(), 0.0)
}

fn holds<T: Scalar>(window: Interval<T>, value: T) -> bool {
    let slack = LAST_BITS * window.high.si().abs().max(1.0);
    window.low.si() - slack <= value.si() && value.si() <= window.high.si() + slack
}

/// Feedbacks as they are: the load is no smaller than the track.
fn pots() -> impl Strategy<Value = Feedback> {
    let to = prop::sample::select(vec![LoadTo::Ground, LoadTo::Reference]);
    let load = prop::option::of((1.0..100.0_f64, 0.0..0.1_f64, to));
    (1e3..20e3_f64, 0.0..0.3_f64, prop::option::of(1.0..200.0_f64), load).prop_map(
        |(track, part, contact, load)| Feedback {
            track: plus_minus(track, part),
            ends: None,
            contact: contact.map(|ohms| plus_minus(ohms, 0.5)),
            load: load.map(|(times, part, to)| (plus_minus(1.4 * times * track, part), to)),
            reference: plus_minus(5.0, 0.02),
        },
    )
}

fn pot_faults() -> impl Strategy<Value = Fault> {
    prop::sample::select(vec![
        Fault::WiperOpen,
        Fault::TrackOpenAtLowEnd,
        Fault::TrackOpenAtHighEnd,
        Fault::ReferenceLost,
        Fault::ReturnLost,
        Fault::ContactResistance(Resistance::from_ohms(1e3)),
        Fault::ContactResistance(Resistance::from_ohms(1e4)),
        Fault::ShortToReturn,
        Fault::ShortToReference,
        Fault::Slipped(Ratio::new(0.05)),
        Fault::Slipped(Ratio::new(-0.1)),
    ])
}

const STOPS: [Interval<Ratio>; 2] = [
    Interval { low: Ratio::new(0.08), high: Ratio::new(0.14) },
    Interval { low: Ratio::new(0.86), high: Ratio::new(0.92) },
];

/// One real feedback with a fault: a value inside each tolerance. The two stops share one draw.
fn real(pot: &Feedback, fault: Fault, travel: Ratio, shares: [f64; 4]) -> FaultReading {
    let [track, contact, load, stop] = shares;
    let real = Feedback {
        track: chosen(pot.track, track),
        contact: pot.contact.map(|part| chosen(part, contact)),
        load: pot.load.map(|(part, to)| (chosen(part, load), to)),
        ..*pot
    };
    let stops = Stops { low: between(STOPS[0], stop), high: between(STOPS[1], stop) };
    let place = real.place(travel, stops).expect("between the stops");
    real.with_fault(fault, place, Some(stops), None).expect("on the track")
}

proptest! {
    #![proptest_config(crate::every_run())]

    #[test]
    fn a_faulty_feedback_reads_inside_its_window(
        pot in pots(),
        fault in pot_faults(),
        travel in 0.0..=1.0_f64,
        shares in prop::array::uniform4(0.0..=1.0_f64),
    ) {
        let travel = Ratio::new(travel);
        let window = pot.fault_window(Some(fault), travel, STOPS, None).expect("on the track").expect("tolerances");
        let reading = real(&pot, fault, travel, shares);
        for (window, ohms) in [(window.total, reading.total), (window.to_low, reading.to_low), (window.to_high, reading.to_high)] {
            prop_assert_eq!(window.is_some(), ohms.is_some());
            prop_assert!(window.zip(ohms).is_none_or(|(window, ohms)| holds(window, ohms)), "{:?} {:?}", window, ohms);
        }
        prop_assert_eq!(window.ratio.is_some(), reading.ratio.is_some());
        let inside = window.ratio.zip(reading.ratio).is_none_or(|(window, ratio)| holds(window, ratio));
        prop_assert!(inside, "{:?} {:?}", window.ratio, reading.ratio);
        // A corner draw reaches each end of the volts, so windows that meet hold parts that read alike.
        if let Some(window) = window.ratio {
            let corner = |bits: u32| [0, 1, 2, 3].map(|bit| f64::from(bits >> bit & 1));
            let corners = (0..16).filter_map(|bits| real(&pot, fault, travel, corner(bits)).ratio.map(Ratio::part));
            let (low, high) = corners.fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), r| (l.min(r), h.max(r)));
            // A slipped wiper may have its turning point at the nominal track, which is tried too.
            prop_assert!((window.low.part() - low).abs() < 1e-4 && (window.high.part() - high).abs() < 1e-4);
        }
    }

    #[test]
    fn a_feedback_without_a_fault_reads_as_its_travel_window_says(pot in pots(), travel in 0.0..=1.0_f64) {
        let travel = Ratio::new(travel);
        let good = pot.fault_window(None, travel, STOPS, None).expect("on the track").expect("tolerances");
        let window = pot.travel_window(travel, STOPS[0], STOPS[1], None).expect("on the track").expect("tolerances");
        let good = good.ratio.expect("a wiper that is there");
        prop_assert!((good.low.part() - window.low.part()).abs() < LAST_BITS);
        prop_assert!((good.high.part() - window.high.part()).abs() < LAST_BITS);
    }

    #[test]
    fn a_faulty_coil_reads_inside_its_window(
        nominal in 1.0..100.0_f64,
        tolerance in 0.0..0.2_f64,
        at in -20.0..100.0_f64,
        size in 0.0..0.9_f64,
        shares in prop::array::uniform2(0.0..=1.0_f64),
    ) {
        let rated = Temperature::from_celsius(20.0);
        let coil = RatedCoil { resistance: plus_minus(nominal, tolerance), at: rated };
        let battery = Interval { low: Voltage::from_volts(12.0), high: Voltage::from_volts(14.5) };
        let at = Temperature::from_celsius(at);
        for fault in [
            None,
            Some(CoilFault::Open),
            Some(CoilFault::OpenWire),
            Some(CoilFault::Shorted),
            Some(CoilFault::ShortedTurns(Ratio::new(size))),
            Some(CoilFault::Series(Resistance::from_ohms(20.0 * size))),
            Some(CoilFault::OtherTemperature(Temperature::from_celsius(at.celsius() + 60.0))),
        ] {
            let window = coil.window(fault, at, Some(battery)).expect("a coil").expect("a tolerance");
            let real = RatedCoil { resistance: chosen(coil.resistance, shares[0]), at: rated };
            let volts = between(battery, shares[1]);
            let reading = real.reading(fault, at, Resistance::from_ohms(0.0), volts).expect("a coil");
            match reading.resistance {
                Some(ohms) => prop_assert!(holds(window.resistance, ohms)),
                None => prop_assert!(window.resistance.low.ohms().is_infinite()),
            }
            prop_assert!(holds(window.voltage.expect("a battery"), reading.voltage), "{:?}", fault);
            let current = window.current.zip(reading.current).is_none_or(|(window, current)| holds(window, current));
            prop_assert!(current && window.current.is_some() == reading.current.is_some(), "{:?}", fault);
        }
    }

    #[test]
    fn a_faulty_transducer_reads_inside_its_window(
        share in 0.0..=1.0_f64,
        accuracy in 0.0..0.05_f64,
        off in -1.0..=1.0_f64,
        offset in -3e5..3e5_f64,
        gauge in any::<bool>(),
    ) {
        let point = |pascals: f64, part: f64| Point { pressure: Pressure::from_pascals(pascals), ratio: Ratio::new(part) };
        let sense = if gauge { Sense::Gauge } else { Sense::Absolute };
        let clamp = Some(Interval { low: Ratio::new(0.05), high: Ratio::new(0.95) });
        // A real part: its whole line is off by a share of its accuracy of the span.
        let line = |by: f64, accuracy: f64| {
            let part = Transducer::new(sense, point(0.0, 0.1 + by), point(3e6, 0.9 + by), Some(Ratio::new(accuracy)), clamp);
            part.expect("a line")
        };
        let (part, real) = (line(0.0, accuracy), line(0.8 * off * accuracy, 0.0));
        let air = Pressure::from_pascals(97e3);
        let absolute = sense.to_absolute(Pressure::from_pascals(3e6 * share), air);
        for fault in [
            transducer::Fault::ShortToReturn,
            transducer::Fault::ShortToReference,
            transducer::Fault::ReferenceLost,
            transducer::Fault::ReturnLost,
            transducer::Fault::Offset(Pressure::from_pascals(offset)),
            transducer::Fault::OtherSense,
        ] {
            let window = part.fault_window(Some(fault), absolute, air).expect("clamped").expect("an accuracy");
            let reading = real.with_fault(fault, absolute, air).expect("clamped").ratio.expect("a level");
            prop_assert!(holds(window, reading), "{:?}: {:?} {}", fault, window, reading);
        }
        let good = part.fault_window(None, absolute, air).expect("clamped");
        prop_assert_eq!(good, part.ratio_window(sense.of_absolute(absolute, air)).expect("clamped"));
    }
}
