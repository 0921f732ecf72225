//! Position feedback, coded contacts, light sensors and transducers, for every value.

use bayleaf::physics::contacts::{Code, Seen, Stuck, TruthTable};
use bayleaf::physics::ladder::{Ladder, Wiring, overlaps};
use bayleaf::physics::light::{LightSensor, LightTopology, SingleDiode};
use bayleaf::physics::potentiometer::fault::Fault;
use bayleaf::physics::potentiometer::sweep::{Rules, Sample, judge};
use bayleaf::physics::potentiometer::{Feedback, LoadTo, Stops};
use bayleaf::physics::transducer::{Point, Sense, Transducer};
use bayleaf::quantity::{
    Current, Duration, Interval, Irradiance, Pressure, Ratio, Resistance, Scalar, Toleranced, Voltage,
};
use proptest::prelude::*;

use crate::plus_minus;

/// A window's ends are computed in another order than a reading inside it.
const LAST_BITS: f64 = 1e-12;

fn resistors(ohms: std::ops::Range<f64>) -> impl Strategy<Value = Toleranced<Resistance>> {
    (ohms, 0.0..0.3_f64).prop_map(|(ohms, part)| plus_minus(ohms, part))
}

/// Any finite number, small and large ones as likely as each other.
fn any_size() -> impl Strategy<Value = f64> {
    prop::num::f64::NORMAL | prop::num::f64::SUBNORMAL | prop::num::f64::ZERO
}

fn pots() -> impl Strategy<Value = Feedback> {
    let to = prop::sample::select(vec![LoadTo::Ground, LoadTo::Reference]);
    (
        resistors(500.0..50e3),
        prop::option::of(resistors(1.0..500.0)),
        prop::option::of(resistors(0.1..1000.0)),
        prop::option::of((resistors(2e3..1e6), to)),
    )
        .prop_map(|(track, ends, contact, load)| Feedback {
            track,
            ends,
            contact,
            load,
            reference: plus_minus(5.0, 0.02),
        })
}

fn meters() -> impl Strategy<Value = Option<Toleranced<Resistance>>> {
    prop::option::of(resistors(1e5..1e8))
}

/// A real part: one value somewhere inside a tolerance.
fn chosen<T: Scalar>(part: Toleranced<T>, share: f64) -> Toleranced<T> {
    let limits = part.limits.expect("every part here has a tolerance");
    let value = limits.low.si() + share * (limits.high.si() - limits.low.si());
    plus_minus(value.clamp(limits.low.si(), limits.high.si()), 0.0)
}

fn holds(window: Interval<f64>, value: f64) -> bool {
    let slack = LAST_BITS * window.high.abs().max(1.0);
    window.low - slack <= value && value <= window.high + slack
}

fn parts(window: Interval<Ratio>) -> Interval<f64> {
    Interval { low: window.low.part(), high: window.high.part() }
}

fn ratio(part: f64) -> Ratio {
    Ratio::new(part)
}

proptest! {
    #![proptest_config(crate::every_run())]

    #[test]
    fn the_position_is_found_behind_every_reading(
        pot in pots(),
        meter in meters(),
        position in 0.0..=1.0_f64,
    ) {
        let reading = pot.ratio(ratio(position), meter).unwrap();
        prop_assert!((0.0..=1.0).contains(&reading.part()));
        let back = pot.position(reading, meter).unwrap().part();
        prop_assert!((back - position).abs() < 1e-9, "{} for {}", back, position);
    }

    #[test]
    fn a_wiper_that_goes_up_reads_more(pot in pots(), meter in meters(), a in 0.0..0.99_f64, d in 1e-6..0.01_f64) {
        prop_assert!(pot.ratio(ratio(a), meter).unwrap() < pot.ratio(ratio(a + d), meter).unwrap());
    }

    #[test]
    fn a_window_holds_every_good_potentiometer(
        pot in pots(),
        meter in meters(),
        position in 0.0..=1.0_f64,
        shares in prop::array::uniform6(0.0..=1.0_f64),
    ) {
        let [track, ends, contact, load, input, reference] = shares;
        let window = pot.ratio_window(ratio(position), meter).unwrap().unwrap();
        let volts = pot.voltage_window(ratio(position), meter).unwrap().unwrap();
        let real = Feedback {
            track: chosen(pot.track, track),
            ends: pot.ends.map(|part| chosen(part, ends)),
            contact: pot.contact.map(|part| chosen(part, contact)),
            load: pot.load.map(|(part, to)| (chosen(part, load), to)),
            reference: chosen(pot.reference, reference),
        };
        let meter = meter.map(|part| chosen(part, input));
        let reading = real.ratio(ratio(position), meter).unwrap().part();
        prop_assert!(holds(parts(window), reading), "{} outside {:?}", reading, window);
        let volts = Interval { low: volts.low.volts(), high: volts.high.volts() };
        prop_assert!(holds(volts, real.voltage(ratio(position), meter).unwrap().volts()));
    }

    #[test]
    fn the_track_drops_out_where_nothing_loads_it(track in resistors(500.0..50e3), position in 0.0..=1.0_f64) {
        let pot = Feedback { track, ends: None, contact: None, load: None, reference: plus_minus(5.0, 0.0) };
        let window = pot.ratio_window(ratio(position), None).unwrap().unwrap();
        prop_assert!((window.low.part() - position).abs() < LAST_BITS);
        prop_assert!((window.high.part() - position).abs() < LAST_BITS);
    }

    #[test]
    fn a_travel_window_holds_every_good_actuator(
        pot in pots(),
        meter in meters(),
        travel in 0.0..=1.0_f64,
        shares in prop::array::uniform6(0.0..=1.0_f64),
    ) {
        let [track, contact, load, input, low, high] = shares;
        let stops = [(0.3, 0.34), (0.6, 0.64)].map(|(low, high)| Interval { low: ratio(low), high: ratio(high) });
        let Ok(window) = pot.travel_window(ratio(travel), stops[0], stops[1], meter) else { return Ok(()) };
        let window = parts(window.unwrap());
        let real = Feedback {
            track: chosen(pot.track, track),
            ends: pot.ends.map(|part| plus_minus(part.nominal.ohms(), 0.0)),
            contact: pot.contact.map(|part| chosen(part, contact)),
            load: pot.load.map(|(part, to)| (chosen(part, load), to)),
            ..pot
        };
        let at = |stop: Interval<Ratio>, share: f64| ratio(stop.low.part() + share * (stop.high.part() - stop.low.part()));
        let stops = Stops { low: at(stops[0], low), high: at(stops[1], high) };
        let meter = meter.map(|part| chosen(part, input));
        let reading = real.at_travel(ratio(travel), stops, meter).unwrap().part();
        prop_assert!(holds(window, reading), "{} outside {:?}", reading, window);
        if meter.is_none() {
            for (travel, stop) in [(0.0, stops.low), (1.0, stops.high)] {
                let at_stop = real.at_travel(ratio(travel), stops, None).unwrap().part();
                prop_assert!((at_stop - stop.part()).abs() < 1e-9);
            }
        }
    }

    #[test]
    fn no_potentiometer_gives_a_number_that_is_none(
        values in prop::array::uniform6(any_size()),
        position in any_size(),
        broken in any_size(),
    ) {
        let ohms = |value: f64| plus_minus(value, 0.1);
        let pot = Feedback {
            track: ohms(values[0]),
            ends: Some(ohms(values[1])),
            contact: Some(ohms(values[2])),
            load: Some((ohms(values[3]), LoadTo::Reference)),
            reference: plus_minus(5.0, 0.02),
        };
        let meter = Some(ohms(values[4]));
        for position in [position, position.abs() % 1.0] {
            if let Ok(reading) = pot.ratio(ratio(position), meter) {
                prop_assert!(reading.part().is_finite());
            }
            if let Ok(back) = pot.position(ratio(position), meter) {
                prop_assert!(back.part().is_finite());
            }
            if let Ok(Some(window)) = pot.ratio_window(ratio(position), meter) {
                prop_assert!(window.low.part().is_finite() && window.high.part().is_finite());
            }
            let stops = Stops { low: ratio(values[5]), high: ratio(values[0]) };
            if let Ok(believed) = stops.position(ratio(position)) {
                prop_assert!(believed.part().is_finite());
            }
            for fault in [
                Fault::WiperOpen,
                Fault::TrackOpenAt(ratio(broken.abs() % 1.0)),
                Fault::ContactResistance(Resistance::from_ohms(broken)),
                Fault::Slipped(ratio(broken)),
                Fault::ShortToReturn,
                Fault::ReturnLost,
            ] {
                let Ok(reading) = pot.with_fault(fault, ratio(position), Some(stops), meter) else { continue };
                let numbers = [
                    reading.total.map(Resistance::ohms),
                    reading.to_low.map(Resistance::ohms),
                    reading.to_high.map(Resistance::ohms),
                    reading.ratio.map(Ratio::part),
                    reading.believed.map(Ratio::part),
                ];
                prop_assert!(numbers.iter().flatten().all(|number| number.is_finite()), "{:?}", reading);
            }
        }
    }

    #[test]
    fn a_fault_of_no_size_is_no_fault(pot in pots(), meter in meters(), position in 0.0..=1.0_f64) {
        let good = pot.ratio(ratio(position), meter).unwrap();
        for fault in [Fault::ContactResistance(Resistance::from_ohms(0.0)), Fault::Slipped(ratio(0.0))] {
            let reading = pot.with_fault(fault, ratio(position), None, meter).unwrap();
            prop_assert_eq!(reading.ratio, Some(good));
            let ohms = pot.ohms(ratio(position)).unwrap();
            prop_assert_eq!(reading.total, Some(ohms.total));
            // A good wiper's two parts exceed the whole by twice its contact.
            let contact = pot.contact.map_or(0.0, |part| part.nominal.ohms());
            prop_assert!((ohms.contact().ohms() - contact).abs() < 1e-9 * ohms.total.ohms());
        }
    }

    #[test]
    fn a_smooth_sweep_has_no_defect_and_a_dip_is_found(
        points in 40_usize..200,
        at in 0.2..0.8_f64,
        rises in any::<bool>(),
    ) {
        let volts = |share: f64| if rises { 0.5 + 4.0 * share } else { 4.5 - 4.0 * share };
        let sample = |index: usize| Sample {
            time: Duration::from_seconds(index as f64 * 0.1),
            feedback: Voltage::from_volts(volts(index as f64 / (points - 1) as f64)),
        };
        let mut samples: Vec<Sample> = (0..points).map(sample).collect();
        let rules = Rules {
            noise: Voltage::from_volts(0.01),
            step: Some(ratio(0.05)),
            dead_band: Some(ratio(0.05)),
            time: Some(Duration::from_seconds(points as f64 * 0.1)),
        };
        let good = judge(&samples, &rules).unwrap();
        prop_assert_eq!(&good.defects, &[]);
        prop_assert!((good.travel.volts().abs() - 4.0).abs() < 1e-12);
        let dip = (at * points as f64) as usize;
        samples[dip].feedback = Voltage::from_volts(0.0);
        let worn = judge(&samples, &rules).unwrap();
        prop_assert_eq!(worn.defects.len(), 1, "{:?}", worn.defects);
        let found = match worn.defects[0] {
            bayleaf::physics::potentiometer::sweep::Defect::DropOut(stretch) => stretch,
            other => return Err(TestCaseError::fail(format!("{other:?}"))),
        };
        prop_assert!(found.time.contains(&samples[dip].time));
    }

    #[test]
    fn no_recording_gives_a_number_that_is_none(
        points in prop::collection::vec((any_size(), any_size()), 0..12),
        noise in any_size(),
        share in any_size(),
    ) {
        let mut samples: Vec<Sample> = (points.iter())
            .map(|(time, volts)| Sample { time: Duration::from_seconds(*time), feedback: Voltage::from_volts(*volts) })
            .collect();
        let rules = Rules {
            noise: Voltage::from_volts(noise),
            step: Some(ratio(share)),
            dead_band: Some(ratio(share)),
            time: Some(Duration::from_seconds(share)),
        };
        for _ in 0..2 {
            if let Ok(report) = judge(&samples, &rules) {
                let step = report.largest_step.map_or(0.0, |step| step.part.part());
                let stand = report.longest_stand.map_or(0.0, |stand| stand.part.part());
                prop_assert!(step.is_finite() && stand.is_finite());
            }
            for (index, sample) in samples.iter_mut().enumerate() {
                sample.time = Duration::from_seconds(index as f64);
                sample.feedback = Voltage::from_volts(sample.feedback.volts() % 10.0);
            }
        }
    }

    #[test]
    fn contacts_that_work_are_read_as_what_they_are(bits in prop::collection::vec(0_u32..16, 1..8)) {
        let closed = |bits: u32| [0, 1, 2, 3].map(|contact| bits >> contact & 1 == 1);
        let codes: Vec<Code> = bits.iter().map(|bits| Code::new(&closed(*bits)).unwrap()).collect();
        let table = TruthTable::new(codes.clone()).unwrap();
        let unique = table.same_codes().is_empty();
        for (position, code) in codes.iter().enumerate() {
            prop_assert_eq!(table.seen(*code) == Seen::Position(position), unique || matches!(table.seen(*code), Seen::Position(_)));
            let seen: Vec<bool> = code.closed().collect();
            for (contact, is_closed) in seen.iter().enumerate() {
                // A contact that is stuck where it belongs changes nothing.
                let stuck = if *is_closed { Stuck::Closed } else { Stuck::Open };
                let misread = table.stuck(contact, stuck);
                prop_assert!(!unique || misread.iter().all(|misread| misread.position != position));
            }
        }
        let mut distinct = bits.clone();
        distinct.sort_unstable();
        distinct.dedup();
        prop_assert_eq!(table.illegal().len(), 16 - distinct.len());
    }

    #[test]
    fn a_ladder_window_holds_every_good_ladder(
        chain in prop::collection::vec(resistors(50.0..5e3), 1..5),
        series in any::<bool>(),
        bits in 0_u32..32,
        pull_up in resistors(200.0..20e3),
        shares in prop::array::uniform8(0.0..=1.0_f64),
        dirt in 0.0..=1.0_f64,
    ) {
        let greatest = 5.0;
        let wiring = |chain| if series { Wiring::Series { chain, end: None } } else { Wiring::Parallel { chain } };
        let ladder = Ladder {
            wiring: wiring(chain.clone()),
            pull_up,
            reference: plus_minus(5.0, 0.02),
            contact: Some(Resistance::from_ohms(greatest)),
        };
        let closed: Vec<bool> = (0..ladder.contacts()).map(|contact| bits >> contact & 1 == 1).collect();
        let window = ladder.ratio_window(&closed, None).unwrap().unwrap();
        let real = Ladder {
            wiring: wiring(chain.iter().zip(shares).map(|(part, share)| chosen(*part, share)).collect()),
            pull_up: chosen(pull_up, shares[7]),
            ..ladder.clone()
        };
        let contacts: Vec<_> =
            closed.iter().map(|c| c.then_some(Resistance::from_ohms(dirt * greatest))).collect();
        let reading = real.ratio(&contacts, None).unwrap().part();
        prop_assert!(holds(parts(window), reading), "{} outside {:?}", reading, window);
    }

    #[test]
    fn no_ladder_gives_a_number_that_is_none(
        values in prop::array::uniform6(any_size()),
        bits in 0_u32..8,
        series in any::<bool>(),
    ) {
        let chain = vec![plus_minus(values[0], 0.1), plus_minus(values[1], 0.1)];
        let wiring = match series {
            true => Wiring::Series { chain, end: Some(plus_minus(values[2], 0.1)) },
            false => Wiring::Parallel { chain },
        };
        let ladder = Ladder {
            wiring,
            pull_up: plus_minus(values[3], 0.1),
            reference: plus_minus(5.0, 0.02),
            contact: Some(Resistance::from_ohms(values[4])),
        };
        let closed: Vec<bool> = (0..ladder.contacts()).map(|contact| bits >> contact & 1 == 1).collect();
        let contacts: Vec<_> = closed.iter().map(|c| c.then_some(Resistance::from_ohms(values[5]))).collect();
        if let Ok(reading) = ladder.ratio(&contacts, None) {
            prop_assert!((0.0..=1.0).contains(&reading.part()), "{}", reading);
        }
        if let Ok(Some(window)) = ladder.ratio_window(&closed, None) {
            prop_assert!((0.0..=1.0).contains(&window.low.part()) && (0.0..=1.0).contains(&window.high.part()));
            for dirty in ladder.dirty(&closed, &[window, window]).unwrap_or_default() {
                prop_assert!(dirty.resistance.ohms().is_finite());
            }
        }
    }

    #[test]
    fn a_dirty_contact_reads_as_the_position_it_is_taken_for(
        chain in prop::collection::vec(100.0..2e3_f64, 2..6),
        position in 0_usize..5,
    ) {
        let ladder = Ladder {
            wiring: Wiring::Series { chain: chain.iter().map(|ohms| plus_minus(*ohms, 0.01)).collect(), end: None },
            pull_up: plus_minus(1e3, 0.01),
            reference: plus_minus(5.0, 0.02),
            contact: Some(Resistance::from_ohms(2.0)),
        };
        let all = ladder.contacts();
        let alone = |contact: usize| -> Vec<bool> { (0..all).map(|other| other == contact).collect() };
        let windows: Vec<_> =
            (0..all).map(|contact| ladder.ratio_window(&alone(contact), None).unwrap().unwrap()).collect();
        prop_assume!(overlaps(&windows).is_empty());
        let position = position % all;
        for dirty in ladder.dirty(&alone(position), &windows).unwrap() {
            prop_assert_eq!((dirty.contact, dirty.into), (position, position + 1));
            let mut contacts = vec![None; all];
            contacts[dirty.contact] = Some(dirty.resistance);
            let reading = ladder.ratio(&contacts, None).unwrap().part();
            prop_assert!((reading - windows[dirty.into].low.part()).abs() < 1e-9);
        }
        prop_assert_eq!(ladder.dirty(&alone(position), &windows).unwrap().len(), usize::from(position + 1 < all));
    }

    #[test]
    fn the_irradiance_is_found_behind_every_reading(
        current in 1e-5..5e-3_f64,
        resistor in 100.0..1e4_f64,
        light in 1.0..1200.0_f64,
        rises in any::<bool>(),
        meter in meters(),
    ) {
        let sensor = LightSensor {
            current: plus_minus(current, 0.2),
            at: Irradiance::from_watts_per_square_metre(1000.0),
            dark: Some(Current::from_amperes(1e-6)),
            topology: if rises { LightTopology::Load } else { LightTopology::PullUp },
            resistor: plus_minus(resistor, 0.01),
            reference: plus_minus(5.0, 0.02),
        };
        let light = Irradiance::from_watts_per_square_metre(light);
        let volts = sensor.voltage(light, meter).unwrap();
        let window = sensor.voltage_window(light, meter).unwrap().unwrap();
        prop_assert!(window.low <= volts && volts <= window.high);
        prop_assert!((0.0..=5.1).contains(&window.low.volts()) && window.high.volts() <= 5.1 + LAST_BITS);
        // A meter lets a load resistor saturate later, and a pull-up not at all sooner.
        if light < sensor.saturation().unwrap() {
            let back = sensor.irradiance(volts, meter).unwrap().watts_per_square_metre();
            prop_assert!((back / light.watts_per_square_metre() - 1.0).abs() < 1e-9, "{}", back);
        }
        prop_assert!(sensor.earliest_saturation().unwrap().unwrap() < sensor.saturation().unwrap());
    }

    #[test]
    fn no_light_gives_a_number_that_is_none(values in prop::array::uniform6(any_size()), light in any_size()) {
        let sensor = LightSensor {
            current: plus_minus(values[0], 0.2),
            at: Irradiance::from_watts_per_square_metre(values[1]),
            dark: Some(Current::from_amperes(values[2])),
            topology: LightTopology::Load,
            resistor: plus_minus(values[3], 0.01),
            reference: plus_minus(values[4], 0.02),
        };
        let meter = Some(plus_minus(values[5], 0.01));
        if let Ok(volts) = sensor.voltage(Irradiance::from_watts_per_square_metre(light), meter) {
            prop_assert!(volts.volts().is_finite());
        }
        if let Ok(light) = sensor.irradiance(Voltage::from_volts(light), meter) {
            prop_assert!(light.watts_per_square_metre().is_finite());
        }
        let cell = SingleDiode {
            photocurrent: Current::from_amperes(values[0]),
            saturation: Current::from_amperes(values[1]),
            series: Resistance::from_ohms(values[2]),
            shunt: Resistance::from_ohms(values[3]),
            slope: Voltage::from_volts(values[4]),
        };
        if let Ok(volts) = cell.voltage(Resistance::from_ohms(light)) {
            prop_assert!(volts.volts().is_finite());
        }
    }

    #[test]
    fn a_cell_gives_less_than_its_current_through_the_load_and_more_with_more_light(
        light in 1e-6..0.05_f64,
        dark in 1e-14..1e-7_f64,
        load in 1.0..1e6_f64,
        slope in 0.02..0.06_f64,
    ) {
        let cell = |light: f64| SingleDiode {
            photocurrent: Current::from_amperes(light),
            saturation: Current::from_amperes(dark),
            series: Resistance::from_ohms(5.0),
            shunt: Resistance::from_ohms(1e5),
            slope: Voltage::from_volts(slope),
        };
        let volts = |light: f64| cell(light).voltage(Resistance::from_ohms(load)).unwrap().volts();
        prop_assert!(volts(light) <= light * load);
        prop_assert!(volts(light) < volts(1.1 * light));
        // What the equation asks for: the currents add up.
        let junction = volts(light) * (1.0 + 5.0 / load);
        let current = light - dark * libm::expm1(junction / slope) - junction / 1e5;
        prop_assert!((current - volts(light) / load).abs() <= 1e-9 * light, "{}", current);
    }

    #[test]
    fn the_pressure_is_found_behind_every_output(
        low in -1e5..1e5_f64,
        span in 1e4..5e6_f64,
        share in 0.01..0.99_f64,
        accuracy in 0.0..0.05_f64,
    ) {
        let point = |pascals: f64, part: f64| Point { pressure: Pressure::from_pascals(pascals), ratio: ratio(part) };
        let part = Transducer::new(
            Sense::Gauge,
            point(low, 0.1),
            point(low + span, 0.9),
            Some(ratio(accuracy)),
            Some(Interval { low: ratio(0.05), high: ratio(0.95) }),
        ).unwrap();
        let pressure = Pressure::from_pascals(low + share * span);
        let reading = part.ratio(pressure).unwrap();
        prop_assert!((part.pressure(reading).unwrap().pascals() - pressure.pascals()).abs() < 1e-9 * span);
        let window = part.ratio_window(pressure).unwrap().unwrap();
        prop_assert!(window.low <= reading && reading <= window.high);
        prop_assert!(part.ratio(Pressure::from_pascals(pressure.pascals() + 1e-3 * span)).unwrap() > reading);
    }

    #[test]
    fn no_transducer_gives_a_number_that_is_none(values in prop::array::uniform6(any_size()), pascals in any_size()) {
        let point = |pascals: f64, part: f64| Point { pressure: Pressure::from_pascals(pascals), ratio: ratio(part) };
        let part = Transducer::new(
            Sense::Absolute,
            point(values[0], values[1].abs() % 1.0),
            point(values[2], values[3].abs() % 1.0),
            Some(ratio(values[4])),
            None,
        );
        let Ok(part) = part else { return Ok(()) };
        if let Ok(reading) = part.ratio(Pressure::from_pascals(pascals)) {
            prop_assert!(reading.part().is_finite());
        }
        if let Ok(pressure) = part.pressure(ratio(values[5])) {
            prop_assert!(pressure.pascals().is_finite());
        }
    }
}
