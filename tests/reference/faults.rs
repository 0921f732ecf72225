//! Faulty circuits against a circuit simulator, and the trade's own figures.

use bayleaf::physics::circuit::{
    Bits, Circuit, Clamp, Converter, Disturbance, Probe, Topology, self_heating,
};
use bayleaf::physics::curve::{BetaCurve, Curve};
use bayleaf::physics::fault::{
    Fault, Instruments, Kind, Reading, Second, Subject, Test, third_temperature, two_faults,
};
use bayleaf::quantity::{
    Beta, Current, Dissipation, Interval, Ratio, Resistance, Temperature, Toleranced, Voltage,
};

use crate::bench::{divider, meter_at_pin, written};
use crate::sheet::Within::{Absolute, Relative};
use crate::sheet::{Row, meets, rows_of};

/// The disturbance that a row of 03h describes, and the sensor that is left.
fn fault_of(row: &Row) -> (Disturbance, Resistance) {
    let sensor = row.ohms("R_sensor");
    let size = row.has("r_fault").then(|| row.ohms("r_fault"));
    // Header: a short of 0 Ω is one of a milliohm.
    let at_least = |ohms: Resistance| Resistance::from_ohms(ohms.ohms().max(0.001));
    let leak = size.map_or(Resistance::from_ohms(f64::INFINITY), at_least);
    let battery = if row.has("v_bat") { row.volts("v_bat") } else { Voltage::from_volts(0.0) };
    let none = Disturbance { battery, ..Disturbance::NONE };
    let open = Resistance::from_ohms(f64::INFINITY);
    match row.text("fault") {
        "healthy" => (none, sensor),
        "open" => (none, open),
        "short_gnd" => (Disturbance { leak_to_ground: leak, ..none }, sensor),
        "leak" => (Disturbance { leak_across: leak, ..none }, sensor),
        "short_ref" => (Disturbance { leak_to_reference: leak, ..none }, sensor),
        "short_bat" | "leak_bat" => (Disturbance { leak_to_battery: leak, ..none }, sensor),
        "corrosion" => (Disturbance { contact: size.expect("it has a size"), ..none }, sensor),
        // Header: the ground is gone and 100 kΩ of a path is left: more resistance in the loop.
        "ground_open_leak" => (Disturbance { contact: Resistance::from_ohms(100e3), ..none }, sensor),
        other => panic!("{}: unknown fault {other}", row.place()),
    }
}

/// 03h: every fault of a protected 10 kΩ pull-up input.
///
/// # Source
/// ngspice-39 operating points; header: 1e-5 relative at the pin, 0.02 V at the
/// converter where the diode conducts.
#[test]
fn a_faulty_circuit_reads_as_simulated() {
    let (mut checked, mut clamped) = (0, 0);
    let circuit = divider(Topology::PullUp, written("5 V"), written("10 kΩ"));
    let meter = meter_at_pin(written("10 MΩ"));
    let clamp = Clamp { resistor: Resistance::from_ohms(10e3), saturation: Current::from_amperes(1e-14) };
    for row in rows_of("03h_fault_injection.csv") {
        let (disturbance, sensor) = fault_of(&row);
        let read = clamp.voltages(&circuit, sensor, &disturbance, Some(&meter));
        row.agrees("V_pin", read.pin.volts(), Relative(1e-5));
        row.agrees("V_adc", read.converter.volts(), Absolute(0.02));
        // What the pin pushes back into the supply, through its 10 kΩ and through the diode; a
        // short to the reference is a third way, whose milliohm is not told apart here.
        if row.text("fault") != "short_ref" {
            let diode = (read.pin.volts() - read.converter.volts()) / 10e3;
            let within = if diode > 1e-6 { 0.02 / 10e3 } else { 1e-5 * row.number("V_pin").max(0.01) / 10e3 };
            let back = (read.pin.volts() - 5.0) / 10e3 + diode;
            row.agrees("I_into_supply_A", back, Absolute(within));
        }
        if row.number("V_pin") > 5.4 {
            clamped += 1;
        } else {
            let plain = circuit.disturbed_voltage(sensor, &disturbance, Some(&meter)).volts();
            row.agrees("V_pin", plain, Relative(1e-5));
        }
        if row.has("R_apparent") {
            // Header: what the unit believes, which knows of no meter; printed to seven digits.
            let believed = circuit.resistance(read.pin, None).map_or(0.0, Resistance::ohms);
            let part = 5e-6 * 5.0 / (5.0 - read.pin.volts()).max(1e-9);
            row.agrees("R_apparent", believed, Relative(part.max(1e-5)));
        }
        checked += 1;
    }
    assert_eq!(checked, 78, "every row of 03h");
    assert!(clamped > 5, "the diode conducts in some rows: {clamped}");
}

/// E1 in its circuit: 2.2 kΩ, 3500 K, 4.7 kΩ to 5 V.
fn e1() -> (Curve, Circuit) {
    let rated = Temperature::from_celsius(25.0);
    let curve = BetaCurve::new(Resistance::from_ohms(2200.0), rated, Beta::from_kelvins(3500.0));
    let circuit = divider(Topology::PullUp, written("5 V"), written("4.7 kΩ"));
    (Curve::Beta(curve.expect("a thermistor")), circuit)
}

/// The project's notes (computed by their author, no published source): ohms taken
/// with the unit still plugged in, and the temperature they look like.
#[test]
fn ohms_with_the_unit_plugged_in_are_not_the_sensors() {
    let (curve, circuit) = e1();
    let sensor = curve.resistance(Temperature::from_celsius(31.0)).expect("inside");
    let mated = circuit.ohms_while_mated(sensor, Probe::ControlUnit);
    meets("ohms while mated", 1273.0, mated.ohms(), Absolute(0.5));
    let looks_like = curve.temperature(mated).expect("inside");
    meets("looks like", 39.6, looks_like.celsius(), Absolute(0.05));
}

/// The same notes: 4.9 V and 5.1 V move the reading, 1 % of pull-up is 0.26 K, and
/// a converter's steps.
#[test]
fn reference_pull_up_and_converter_move_the_reading_as_noted() {
    let (curve, circuit) = e1();
    let at = Temperature::from_celsius(31.0);
    let sensor = curve.resistance(at).expect("inside");
    for (reference, volts) in [("4.9 V", 1.327), ("5.1 V", 1.381)] {
        let moved = Circuit { reference: written(reference), ..circuit };
        meets(reference, volts, moved.voltage(sensor, None).volts(), Absolute(0.0005));
    }
    let more = Circuit { resistor: written("4747 Ω"), ..circuit };
    let believed = circuit.resistance(more.voltage(sensor, None), None).expect("between the rails");
    let off = curve.temperature(believed).expect("inside").celsius() - 31.0;
    meets("pull-up + 1 %", 0.26, off.abs(), Absolute(0.005));
    for (bits, celsius, kelvins, last) in
        [(8, 0.0, 0.34, 0.005), (8, 31.0, 0.52, 0.005), (8, 80.0, 2.1, 0.05), (10, 31.0, 0.13, 0.005)]
    {
        let converter = Converter { bits: Bits::new(bits), plausible: None };
        let step = converter.step(&circuit, &curve, Temperature::from_celsius(celsius));
        let step = step.expect("inside").expect("it has bits").kelvins();
        meets(&format!("{bits} bits at {celsius} °C"), kelvins, step, Absolute(last));
    }
}

/// Arithmetic by hand: a 10-bit converter at a half and at the ends; a good sensor
/// that leaves 2 % to 98 % of the reference.
#[test]
fn a_converter_counts_and_a_good_sensor_can_look_broken() {
    let plausible = Interval { low: Ratio::new(0.02), high: Ratio::new(0.98) };
    let converter = Converter { bits: Bits::new(10), plausible: Some(plausible) };
    for (ratio, count) in [(0.0, 0), (0.5, 512), (1.0, 1023), (1.2, 1023), (-0.1, 0)] {
        assert_eq!(converter.count(Ratio::new(ratio)), Some(count), "{ratio}");
    }
    let built = [5, 6, 24, 25].map(|bits| Bits::new(bits).is_some());
    assert_eq!(built, [false, true, true, false]);
    let (curve, circuit) = e1();
    let [cold, hot] = converter.good_sensor_limits(&circuit, &curve).map(|end| end.expect("inside"));
    // 49 Rp/1 and Rp/49: 230.3 kΩ and 95.92 Ω, by the beta formula −57.4 °C and 129.4 °C.
    let of = |ohms: f64| 1.0 / (libm::log(ohms / 2200.0) / 3500.0 + 1.0 / 298.15) - 273.15;
    meets("looks open", of(49.0 * 4700.0), cold.celsius(), Absolute(1e-6));
    meets("looks shorted", of(4700.0 / 49.0), hot.celsius(), Absolute(1e-6));
}

/// The project's notes: at worst 1.33 mW, 0.9 K in still air at 1.5 mW/K.
#[test]
fn a_sensor_warms_itself() {
    let (curve, circuit) = e1();
    // The power is greatest where the sensor equals the pull-up: Vref²/(4 Rp) = 1.33 mW.
    let worst = curve.temperature(Resistance::from_ohms(4700.0)).expect("inside");
    let still = Dissipation::from_watts_per_kelvin(1.5e-3);
    let rise = self_heating(&circuit, &curve, worst, still).expect("inside").kelvins();
    meets("warmer than the air by", 25.0 / (4.0 * 4700.0) / 1.5e-3, rise, Relative(0.01));
    assert!((0.85..0.95).contains(&rise), "{rise}");
    // The defining equation holds at the warmed temperature.
    let ohms = curve.resistance(Temperature::from_celsius(worst.celsius() + rise)).expect("inside");
    let volts = circuit.voltage(ohms, None).volts();
    meets("P = δ ΔT", volts * volts / ohms.ohms(), rise * 1.5e-3, Relative(1e-9));
}

/// Two resistors side by side by hand: 4.7 kΩ and 1 kΩ make 824.56 Ω.
#[test]
fn a_switched_pull_up_lies_beside_the_first() {
    let (_, circuit) = e1();
    assert_eq!(circuit.with_switched(), None);
    let one: Toleranced<Resistance> = written("1 kΩ ± 1 %");
    let both = Circuit { switched: Some(one), resistor: written("4.7 kΩ ± 1 %"), ..circuit };
    let on = both.with_switched().expect("it has a second").resistor;
    meets("both", 4700.0 / 5.7, on.nominal.ohms(), Relative(1e-12));
    let limits = on.limits.expect("both have");
    meets("both low", 0.99 * 4700.0 / 5.7, limits.low.ohms(), Relative(1e-12));
    meets("both high", 1.01 * 4700.0 / 5.7, limits.high.ohms(), Relative(1e-12));
}

/// The signature table of E1: how wrong the unit's belief is.
#[test]
fn faults_move_the_believed_temperature_as_noted() {
    let (curve, circuit) = e1();
    let subject =
        Subject { curve: &curve, tolerance: None, circuit: Some(&circuit), others: &[], battery: None };
    let mut checked = 0;
    for row in rows_of("e1_signatures.csv") {
        let kind = match row.text("fault").split(' ').next() {
            Some("series") => Kind::Series,
            Some("leak") => Kind::Leak,
            Some("R25") => Kind::ShiftedResistance,
            Some("B") => Kind::ShiftedSlope,
            Some("return") => Kind::LiftedReturn,
            other => panic!("{}: unknown fault {other:?}", row.place()),
        };
        let fault = kind.of_size(row.number("size"));
        for celsius in [-10.0, 0.0, 10.0, 25.0, 31.0, 60.0] {
            let at = Temperature::from_celsius(celsius);
            let believed = subject.believed(Some(&fault), at).expect("inside the curve");
            row.agrees(&format!("t{celsius}"), believed.celsius() - celsius, Absolute(0.0501));
            checked += 1;
        }
    }
    assert_eq!(checked, 42, "every cell");
}

/// The same notes: E1 at 31 °C, good and with each of six faults.
#[test]
fn faults_read_in_volts_as_noted() {
    let (curve, circuit) = e1();
    let subject = Subject {
        curve: &curve,
        tolerance: None,
        circuit: Some(&circuit),
        others: &[],
        battery: Some(written("12.6 V ± 0.3 V")),
    };
    let at = Temperature::from_celsius(31.0);
    let bare = Instruments::default();
    let volts = |fault: Option<&Fault>| {
        subject.reading(fault, Test::VoltsAtUnit, at, &bare).expect("it has a circuit").0
    };
    let ohms = |fault: Option<&Fault>, test| subject.reading(fault, test, at, &bare).expect("it applies").0;
    meets("good", 1.354, volts(None), Absolute(0.0005));
    meets("good", 1745.0, ohms(None, Test::OhmsAtSensor), Absolute(0.5));
    for (fault, noted) in [
        (Kind::Series.of_size(500.0), 1.616),
        (Kind::Leak.of_size(10e3), 1.201),
        (Fault::Open, 5.0),
        (Fault::OpenWire, 5.0),
        (Fault::ShortToReturn, 0.0),
        (Fault::ShortToGround, 0.0),
        (Kind::LiftedReturn.of_size(0.1), 1.427),
        (Fault::ShortToReference, 5.0),
        (Fault::ShortToBattery, 12.6),
    ] {
        meets(&format!("{fault:?}"), noted, volts(Some(&fault)), Absolute(0.0005));
    }
    meets("mated", 1273.0, ohms(Some(&Fault::UnitStillMated), Test::OhmsAtUnit), Absolute(0.5));
    assert!(ohms(Some(&Fault::Open), Test::OhmsAtSensor).is_infinite());
    assert!(ohms(Some(&Fault::OpenWire), Test::OhmsAtUnit).is_infinite());
    // A wire's fault does not show at the sensor's own pins.
    meets("wire", 1745.0, ohms(Some(&Fault::OpenWire), Test::OhmsAtSensor), Absolute(0.5));
    meets("wire", 2245.0, ohms(Some(&Kind::Series.of_size(500.0)), Test::OhmsAtUnit), Absolute(0.5));
    // Common practice, no source: an unplugged sensor reads the reference at its plug,
    // and nothing where the wire is open.
    let unplugged = |fault: Option<&Fault>| {
        let meter = Instruments { input: Some(written("10 MΩ")), ..bare };
        subject.reading(fault, Test::VoltsUnplugged, at, &meter).expect("it has a circuit").0
    };
    meets("unplugged", 4.998, unplugged(None), Absolute(0.0005));
    meets("unplugged, open wire", 0.0, unplugged(Some(&Fault::OpenWire)), Absolute(1e-9));
    // Without a battery voltage there is no reading that needs one.
    let no_battery = Subject { battery: None, ..subject };
    assert_eq!(no_battery.reading(Some(&Fault::ShortToBattery), Test::VoltsAtUnit, at, &bare), None);
}

/// By hand: 10 % more and 100 Ω, 10 % more and 47 kΩ across it, from two readings each.
#[test]
fn two_readings_give_back_two_faults() {
    let (curve, _) = e1();
    let good = |celsius: f64| curve.resistance(Temperature::from_celsius(celsius)).expect("inside").ohms();
    let exact = |celsius: f64, ohms: f64| Reading {
        at: Temperature::from_celsius(celsius),
        resistance: Resistance::from_ohms(ohms),
        limits: Interval { low: Resistance::from_ohms(ohms), high: Resistance::from_ohms(ohms) },
    };
    let rating = (Temperature::from_celsius(25.0), Ratio::new(0.0));
    let with_series = |celsius: f64| exact(celsius, 1.1 * good(celsius) + 100.0);
    let [series, leak] = two_faults(&curve, rating, with_series(0.0), with_series(31.0)).expect("solvable");
    assert_eq!((series.second, leak.second), (Second::Series, Second::Leak));
    meets("shift", 0.1, series.shift.part(), Absolute(1e-9));
    meets("series", 100.0, series.size.ohms(), Relative(1e-9));
    // The same two readings are also those of a sensor that is off by 17.4 %, with 145.1 kΩ
    // across it (worked in another language): only a third temperature tells which.
    meets("shift of the other answer", 0.173_630_6, leak.shift.part(), Absolute(1e-7));
    meets("leak of the other answer", 145_147.33, leak.size.ohms(), Relative(1e-7));
    assert!(series.reasonable && leak.reasonable, "{series:?} {leak:?}");
    let hot = [60.0, 80.0].map(Temperature::from_celsius);
    let doubt = |ohms: Resistance, _| Resistance::from_ohms(0.005 * ohms.ohms());
    let (at, [one, other]) =
        third_temperature(&curve, &[series, leak], &hot, doubt).expect("hot enough to tell");
    meets("third temperature", 80.0, at.celsius(), Absolute(0.0));
    meets("with series", 1.1 * good(80.0) + 100.0, one.ohms(), Relative(1e-9));
    assert!(other.ohms() < one.ohms());
    let with_leak = |celsius: f64| exact(celsius, 1.0 / (1.0 / (0.9 * good(celsius)) + 1.0 / 10e3));
    let [series, leak] = two_faults(&curve, rating, with_leak(0.0), with_leak(31.0)).expect("solvable");
    meets("shift", -0.1, leak.shift.part(), Absolute(1e-9));
    meets("leak", 10e3, leak.size.ohms(), Relative(1e-9));
    // The other answer here is a sensor with half its ohms, and 498 Ω: not inside reason.
    meets("shift of the other answer", -0.507_641_9, series.shift.part(), Absolute(1e-7));
    meets("series of the other answer", 498.205_529, series.size.ohms(), Relative(1e-7));
    assert!(leak.reasonable && !series.reasonable, "{series:?} {leak:?}");
}
