//! Divider readings, their windows, and the resistance behind a reading.

use bayleaf::physics::circuit::{Circuit, Meter, Probe, Reader, Topology};
use bayleaf::physics::curve::{BetaCurve, Curve};
use bayleaf::physics::uncertainty::{Input, Instruments, Source, derivative, volts};
use bayleaf::quantity::{
    Beta, Interval, Resistance, Scalar, Temperature, TemperatureDifference, Toleranced, Voltage,
};
use proptest::prelude::*;

use crate::plus_minus;

/// A window's ends are computed in another order than a reading inside it.
const LAST_BITS: f64 = 1e-12;

fn resistors(ohms: std::ops::Range<f64>) -> impl Strategy<Value = Toleranced<Resistance>> {
    (ohms, 0.0..0.2_f64).prop_map(|(ohms, part)| plus_minus(ohms, part))
}

fn circuits() -> impl Strategy<Value = Circuit> {
    let topology = prop::sample::select(vec![Topology::PullUp, Topology::PullDown]);
    let reference = (1.0..12.0_f64, 0.0..0.1_f64).prop_map(|(volts, part)| plus_minus(volts, part));
    let series = prop::option::of(resistors(1.0..10e3));
    let parallel = prop::option::of(resistors(100.0..1e6));
    (topology, resistors(100.0..1e6), reference, series, parallel).prop_map(
        |(topology, resistor, reference, series, parallel)| Circuit {
            series,
            parallel,
            ..Circuit::divider(topology, resistor, reference)
        },
    )
}

/// Circuits with another unit on the line and a return that is not quite ground.
fn shared_circuits() -> impl Strategy<Value = Circuit> {
    let reference = prop::option::of((1.0..12.0_f64, 0.0..0.1_f64).prop_map(|(v, part)| plus_minus(v, part)));
    let reader = prop::option::of(
        (resistors(1e3..1e6), reference).prop_map(|(resistor, reference)| Reader { resistor, reference }),
    );
    let offset = prop::option::of((0.0..0.2_f64, 0.0..0.5_f64).prop_map(|(v, part)| plus_minus(v, part)));
    (circuits(), reader, offset).prop_map(|(circuit, reader, offset)| Circuit { reader, offset, ..circuit })
}

fn meters() -> impl Strategy<Value = Option<Meter>> {
    let place = prop::sample::select(vec![Probe::ControlUnit, Probe::Sensor]);
    prop::option::of((resistors(1e5..1e8), place).prop_map(|(input, at)| Meter { input, at }))
}

/// A real part: one value somewhere inside a tolerance, and no more doubt about it.
fn chosen<T: Scalar>(part: Toleranced<T>, share: f64) -> Toleranced<T> {
    let limits = part.limits.expect("every part here has a tolerance");
    let value = limits.low.si() + share * (limits.high.si() - limits.low.si());
    plus_minus(value.clamp(limits.low.si(), limits.high.si()), 0.0)
}

/// A circuit with a meter on it and a sensor in it, all of them with tolerances.
struct Bench {
    circuit: Circuit,
    meter: Option<Meter>,
    sensor: Toleranced<Resistance>,
}

impl Bench {
    /// The windows in volts and as parts of the reference.
    fn windows(&self) -> (Interval<f64>, Interval<f64>) {
        let sensor = self.sensor.limits.expect("every part here has a tolerance");
        let meter = self.meter.as_ref();
        let volts = self.circuit.voltage_window(sensor, meter).expect("every part has a tolerance");
        let parts = self.circuit.ratio_window(sensor, meter).expect("every part has a tolerance");
        (
            Interval { low: volts.low.volts(), high: volts.high.volts() },
            Interval { low: parts.low.part(), high: parts.high.part() },
        )
    }

    /// What real parts read, in volts and as a part of the reference; each a share of its tolerance.
    fn of_parts(&self, shares: [f64; 6]) -> (f64, f64) {
        let [resistor, reference, series, parallel, input, sensor] = shares;
        let circuit = Circuit {
            resistor: chosen(self.circuit.resistor, resistor),
            reference: chosen(self.circuit.reference, reference),
            series: self.circuit.series.map(|part| chosen(part, series)),
            parallel: self.circuit.parallel.map(|part| chosen(part, parallel)),
            reader: self.circuit.reader.map(|reader| Reader {
                resistor: chosen(reader.resistor, resistor),
                reference: reader.reference.map(|part| chosen(part, series)),
            }),
            offset: self.circuit.offset.map(|part| chosen(part, input)),
            ..self.circuit
        };
        let meter = self.meter.map(|meter| Meter { input: chosen(meter.input, input), at: meter.at });
        let sensor = chosen(self.sensor, sensor).nominal;
        let reading = circuit.voltage(sensor, meter.as_ref()).volts();
        (reading, circuit.ratio(sensor, meter.as_ref()).part())
    }
}

fn holds(window: Interval<f64>, value: f64) -> bool {
    let slack = LAST_BITS * window.high.abs();
    window.low - slack <= value && value <= window.high + slack
}

proptest! {
    #![proptest_config(crate::every_run())]

    #[test]
    fn a_window_holds_every_reading_of_good_parts(
        circuit in shared_circuits(),
        meter in meters(),
        sensor in resistors(10.0..1e6),
        shares in prop::array::uniform6(0.0..=1.0_f64),
    ) {
        let bench = Bench { circuit, meter, sensor };
        let (volts, parts) = bench.windows();
        let (reading, ratio) = bench.of_parts(shares);
        prop_assert!(holds(volts, reading), "{} outside {:?}", reading, volts);
        prop_assert!(holds(parts, ratio), "{} outside {:?}", ratio, parts);
        if circuit.reader.is_none() && circuit.offset.is_none() {
            prop_assert!(0.0 <= parts.low && parts.high <= 1.0 + LAST_BITS, "{:?}", parts);
        }
        let nominal = circuit.voltage(sensor.nominal, meter.as_ref()).volts();
        prop_assert!(holds(volts, nominal), "{} outside {:?}", nominal, volts);
    }

    #[test]
    fn a_window_ends_at_the_readings_of_parts_at_their_ends(
        circuit in circuits(),
        meter in meters(),
        sensor in resistors(10.0..1e6),
    ) {
        let bench = Bench { circuit, meter, sensor };
        let (volts, parts) = bench.windows();
        let corner = |bits: u32| [0, 1, 2, 3, 4, 5].map(|part| f64::from(bits >> part & 1));
        let readings = (0..64).map(|bits| bench.of_parts(corner(bits)));
        let none = Interval { low: f64::INFINITY, high: f64::NEG_INFINITY };
        let widened = |ends: Interval<f64>, value: f64| {
            Interval { low: ends.low.min(value), high: ends.high.max(value) }
        };
        let (all_volts, all_parts) = readings.fold((none, none), |(volts, parts), (reading, ratio)| {
            (widened(volts, reading), widened(parts, ratio))
        });
        for (window, corners) in [(volts, all_volts), (parts, all_parts)] {
            prop_assert!(holds(window, corners.low) && holds(window, corners.high), "{:?}", corners);
            prop_assert!(holds(corners, window.low) && holds(corners, window.high), "{:?}", window);
        }
    }

    #[test]
    fn a_window_is_no_wider_than_its_parts(
        circuit in circuits(),
        meter in meters(),
        sensor in resistors(10.0..1e6),
    ) {
        // Both ends are readings of parts that may exist: exact parts leave no width.
        let exact = |part: Toleranced<Resistance>| plus_minus(part.nominal.ohms(), 0.0);
        let circuit = Circuit {
            resistor: exact(circuit.resistor),
            reference: plus_minus(circuit.reference.nominal.volts(), 0.0),
            series: circuit.series.map(exact),
            parallel: circuit.parallel.map(exact),
            ..circuit
        };
        let meter = meter.map(|meter| Meter { input: exact(meter.input), at: meter.at });
        let sensor = Interval { low: sensor.nominal, high: sensor.nominal };
        let window = circuit.voltage_window(sensor, meter.as_ref()).expect("every part has limits");
        let reading = circuit.voltage(sensor.low, meter.as_ref());
        prop_assert_eq!((window.low, window.high), (reading, reading));
    }

    #[test]
    fn a_part_without_a_tolerance_gives_no_window(
        circuit in circuits(),
        sensor in resistors(10.0..1e6),
        which in 0_usize..3,
    ) {
        let bare = |part: Toleranced<Resistance>| Toleranced { limits: None, ..part };
        let mut circuit = circuit;
        match which {
            0 => circuit.resistor = bare(circuit.resistor),
            1 => circuit.series = Some(bare(plus_minus(100.0, 0.01))),
            _ => circuit.parallel = Some(bare(plus_minus(1e4, 0.01))),
        }
        let limits = sensor.limits.expect("every part here has a tolerance");
        prop_assert_eq!(circuit.ratio_window(limits, None), None);
        prop_assert_eq!(circuit.voltage_window(limits, None), None);
    }

    #[test]
    fn the_resistance_behind_a_reading_is_the_sensors(
        circuit in shared_circuits(),
        meter in prop::option::of(resistors(1e5..1e8)),
        sensor in 10.0..1e6_f64,
    ) {
        let meter = meter.map(|input| Meter { input, at: Probe::ControlUnit });
        let reading = circuit.voltage(Resistance::from_ohms(sensor), meter.as_ref());
        let behind = circuit.resistance(reading, meter.as_ref()).map_or(f64::NAN, Resistance::ohms);
        // Near a rail a digit of the reading is many digits of the resistance:
        // 1e6 Ω against 100 Ω costs four of sixteen, a parallel resistor as many again.
        prop_assert!((behind / sensor - 1.0).abs() <= 1e-6, "{} behind {}", behind, reading);
    }

    #[test]
    fn nothing_finite_makes_a_circuit_undefined(
        circuit in circuits(),
        meter in meters(),
        sensor in prop_oneof![Just(0.0), Just(f64::INFINITY), 0.0..1e9_f64],
        reading in -5.0..20.0_f64,
    ) {
        let meter = meter.as_ref();
        let volts = circuit.voltage(Resistance::from_ohms(sensor), meter).volts();
        let most = circuit.reference.nominal.volts();
        prop_assert!(0.0 <= volts && volts <= most, "{} Ω reads {} of {}", sensor, volts, most);
        let rails = [0.0, most];
        for reading in rails.into_iter().chain([reading]) {
            if let Some(behind) = circuit.resistance(Voltage::from_volts(reading), meter) {
                prop_assert!(behind.ohms().is_finite() && behind.ohms() > 0.0, "{} V: {}", reading, behind);
                prop_assert!(0.0 < reading && reading < most, "{} V behind {}", reading, behind);
            }
        }
    }

    #[test]
    fn a_meter_only_ever_draws_the_reading_to_ground(
        circuit in circuits(),
        input in 1e5..1e8_f64,
        sensor in 10.0..1e6_f64,
    ) {
        let sensor = Resistance::from_ohms(sensor);
        for at in [Probe::ControlUnit, Probe::Sensor] {
            let ideal = Meter { input: plus_minus(f64::INFINITY, 0.0), at };
            let real = Meter { input: plus_minus(input, 0.0), at };
            let (ideal, real) = (circuit.voltage(sensor, Some(&ideal)), circuit.voltage(sensor, Some(&real)));
            prop_assert!(real < ideal, "{:?}: {} with the meter, {} without", at, real, ideal);
        }
    }

    #[test]
    fn a_parallel_resistor_lies_across_line_and_sensor(
        circuit in circuits(),
        input in prop::option::of(resistors(1e5..1e8)),
        ohms in (10.0..1e6_f64, 10.0..1e6_f64, 1.0..10e3_f64),
    ) {
        // Seen from the control unit's pin, line, sensor and parallel resistor are one.
        let (sensor, parallel, series) = ohms;
        let meter = input.map(|input| Meter { input, at: Probe::ControlUnit });
        let fitted = |ohms| Some(plus_minus(ohms, 0.0));
        let with = Circuit { parallel: fitted(parallel), series: fitted(series), ..circuit };
        let without = Circuit { parallel: None, series: None, ..circuit };
        let all = Resistance::from_ohms(1.0 / (1.0 / (series + sensor) + 1.0 / parallel));
        let expected = without.voltage(all, meter.as_ref()).volts();
        let reading = with.voltage(Resistance::from_ohms(sensor), meter.as_ref()).volts();
        prop_assert!((reading - expected).abs() <= 1e-12 * expected, "{} for {}", reading, expected);
    }

    #[test]
    fn without_a_series_resistor_both_ends_of_the_line_read_alike(
        circuit in circuits(),
        input in resistors(1e5..1e8),
        sensor in 10.0..1e6_f64,
    ) {
        let circuit = Circuit { series: None, ..circuit };
        let reading = |at| circuit.voltage(Resistance::from_ohms(sensor), Some(&Meter { input, at })).volts();
        let (unit, end) = (reading(Probe::ControlUnit), reading(Probe::Sensor));
        prop_assert!((unit - end).abs() <= 1e-12 * unit, "{} and {}", unit, end);
    }

    #[test]
    fn behind_a_series_resistor_a_pull_down_is_longer(
        circuit in circuits(),
        meter in prop::option::of(resistors(1e5..1e8)),
        series in 1.0..10e3_f64,
        sensor in 10.0..1e6_f64,
    ) {
        // Seen from the sensor the two resistors are one; from the pin the series
        // resistor belongs to the sensor.
        let sensor = Resistance::from_ohms(sensor);
        let plain = Circuit { topology: Topology::PullDown, series: None, parallel: None, ..circuit };
        let with = Circuit { series: Some(plus_minus(series, 0.0)), ..plain };
        let longer = Circuit { resistor: plus_minus(circuit.resistor.nominal.ohms() + series, 0.0), ..plain };
        let bigger = Resistance::from_ohms(sensor.ohms() + series);
        let at = |at| meter.map(|input| Meter { input, at });
        let (pin, end) = (at(Probe::ControlUnit), at(Probe::Sensor));
        let pairs = [
            (with.voltage(sensor, pin.as_ref()), plain.voltage(bigger, pin.as_ref())),
            (with.voltage(sensor, end.as_ref()), longer.voltage(sensor, pin.as_ref())),
        ];
        let of_pairs = if meter.is_some() { &pairs[..] } else { &pairs[..1] };
        for (reading, expected) in of_pairs {
            let off = (reading.volts() - expected.volts()).abs();
            prop_assert!(off <= 1e-12 * expected.volts(), "{} for {}", reading, expected);
        }
    }

    #[test]
    fn the_slope_of_a_circuit_is_that_of_its_readings(
        circuit in shared_circuits(),
        meter in meters(),
        sensor in resistors(10.0..1e6),
    ) {
        let meter = meter.as_ref();
        let ohms = sensor.nominal.ohms();
        let input = [Input { source: Source::Rated, value: ohms, limit: 0.0 }];
        let model = |point: &[f64]| Some(circuit.voltage(Resistance::from_ohms(point[0]), meter).volts());
        let numeric = derivative(&input, 0, model).expect("a reading at every resistance");
        let exact = circuit.voltage_slope(sensor.nominal, meter);
        // The differences' own error, and the last bits of readings R/2048 apart.
        let slack = numeric.error * 1e-3 + 1e-11 * circuit.voltage(sensor.nominal, meter).volts().abs() / ohms;
        prop_assert!((exact - numeric.value).abs() <= slack, "{exact} for {numeric:?}");
    }

    #[test]
    fn volts_move_with_temperature_as_curve_and_circuit_say(
        circuit in shared_circuits(),
        meter in meters(),
        at in -40.0..120.0_f64,
    ) {
        let rated = Temperature::from_celsius(25.0);
        let beta = BetaCurve::new(Resistance::from_ohms(10_000.0), rated, Beta::from_kelvins(3950.0));
        let curve = Curve::Beta(beta.expect("a thermistor"));
        let one = TemperatureDifference::from_kelvins(1.0);
        let with = Instruments { thermometer: Some(one), ..Instruments::default() };
        let reading = |celsius: f64| {
            let sensor = curve.resistance(Temperature::from_celsius(celsius)).expect("inside");
            circuit.voltage(sensor, meter.as_ref()).volts()
        };
        let reads = Voltage::from_volts(reading(at));
        let doubt = volts(&curve, &circuit, meter.as_ref(), Temperature::from_celsius(at), reads, &with);
        let exact = doubt.expect("inside").budget.contributions()[0].sensitivity;
        let input = [Input { source: Source::Thermometer, value: 0.0, limit: 1.0 }];
        let numeric = derivative(&input, 0, |point| Some(reading(at + point[0]))).expect("inside");
        let slack = numeric.error * 1e-3 + 1e-12 * reads.volts().abs();
        prop_assert!((exact - numeric.value).abs() <= slack, "{exact} for {numeric:?}");
    }
}
