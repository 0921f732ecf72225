//! Circuits with all their parts, and a sensor in them, by Kirchhoff's laws worked by hand.

use bayleaf::physics::circuit::{Circuit, Probe, Reader, Topology, self_heating};
use bayleaf::physics::curve::{BetaCurve, Curve, CurveError, Table};
use bayleaf::physics::fault::{Fault, Instruments, Kind, Subject, Test};
use bayleaf::physics::tolerance::Tolerance;
use bayleaf::quantity::{Beta, Dissipation, Interval, Ratio, Resistance, Temperature, Toleranced, Voltage};

use crate::bench::{divider, exactly, written};
use crate::sheet::Within::{Absolute, Relative};
use crate::sheet::meets;

fn ohms(value: f64) -> Resistance {
    Resistance::from_ohms(value)
}

fn volts(low: f64, nominal: f64, high: f64) -> Toleranced<Voltage> {
    let of = Voltage::from_volts;
    Toleranced { nominal: of(nominal), limits: Some(Interval { low: of(low), high: of(high) }) }
}

/// 5 V and 4.7 kΩ without a width.
fn exact_divider(topology: Topology) -> Circuit {
    divider(topology, volts(5.0, 5.0, 5.0), exactly(ohms(4700.0)))
}

fn beta(rated: f64, at: f64, kelvins: f64) -> Curve {
    let curve = BetaCurve::new(ohms(rated), Temperature::from_celsius(at), Beta::from_kelvins(kelvins));
    Curve::Beta(curve.expect("a thermistor"))
}

fn subject<'a>(curve: &'a Curve, tolerance: Option<&'a Tolerance>, circuit: &'a Circuit) -> Subject<'a> {
    Subject { curve, tolerance, circuit: Some(circuit), others: &[], battery: None }
}

/// 1 kΩ over a return lifted by 80 to 120 mV: V = u + (5 V − u)/5.7. And beside a
/// second unit's 10 kΩ to 4.9 to 5.1 V: V = (5/4.7 + u/10)/(1/4.7 + 1/10 + 1).
#[test]
fn a_lifted_return_and_another_units_reference_widen_the_window() {
    let one = Interval { low: ohms(1000.0), high: ohms(1000.0) };
    let lifted = Circuit { offset: Some(volts(0.08, 0.1, 0.12)), ..exact_divider(Topology::PullUp) };
    let window = lifted.voltage_window(one, None).expect("limits everywhere");
    meets("lifted, least", 0.08 + 4.92 / 5.7, window.low.volts(), Relative(1e-12));
    meets("lifted, most", 0.12 + 4.88 / 5.7, window.high.volts(), Relative(1e-12));
    let reader = Reader { resistor: exactly(ohms(10e3)), reference: Some(volts(4.9, 5.0, 5.1)) };
    let shared = Circuit { reader: Some(reader), ..exact_divider(Topology::PullUp) };
    let window = shared.voltage_window(one, None).expect("limits everywhere");
    let of = |other: f64| (5.0 / 4.7 + other / 10.0) / (1.0 / 4.7 + 0.1 + 1.0);
    meets("shared, least", of(4.9), window.low.volts(), Relative(1e-12));
    meets("shared, most", of(5.1), window.high.volts(), Relative(1e-12));
    meets("shared", of(5.0), shared.voltage(ohms(1000.0), None).volts(), Relative(1e-12));
}

/// Plugged in, an ohmmeter at the unit sees line and sensor beside every resistor that
/// leads to a supply taken as a short: 1 kΩ + 100 Ω, 4.7 kΩ and 10 kΩ.
#[test]
fn ohms_while_mated_lie_beside_every_pull_up() {
    let reader = Reader { resistor: written("10 kΩ ± 5 %"), reference: None };
    let circuit = Circuit {
        series: Some(written("100 Ω ± 5 %")),
        reader: Some(reader),
        resistor: written("4.7 kΩ ± 1 %"),
        ..exact_divider(Topology::PullUp)
    };
    let of = |line: f64, pull_up: f64, other: f64| 1.0 / (1.0 / line + 1.0 / pull_up + 1.0 / other);
    let mated = circuit.ohms_while_mated(ohms(1000.0), Probe::ControlUnit).ohms();
    meets("mated", of(1100.0, 4700.0, 10e3), mated, Relative(1e-12));
    // A resistor inside the unit lies across line and sensor together: 22 kΩ across 1.1 kΩ.
    let more = Circuit { parallel: Some(written("22 kΩ ± 1 %")), ..circuit };
    let across = 1.0 / (1.0 / 1100.0 + 1.0 / 22e3);
    meets("leg", across, more.leg(ohms(1000.0)).ohms(), Relative(1e-12));
    let mated = more.ohms_while_mated(ohms(1000.0), Probe::ControlUnit).ohms();
    meets("mated", of(across, 4700.0, 10e3), mated, Relative(1e-12));
    // At the sensor's plug the line's 100 Ω lie before the unit's three.
    let mated = more.ohms_while_mated(ohms(1000.0), Probe::Sensor).ohms();
    let unit = 100.0 + of(22e3, 4700.0, 10e3);
    meets("mated, at the sensor", 1.0 / (1.0 / unit + 1.0 / 1000.0), mated, Relative(1e-12));
    // The window of a good part of ± 10 %, at the ends of everything.
    let curve = beta(1000.0, 25.0, 3500.0);
    let at = Temperature::from_celsius(25.0);
    let tolerance = Tolerance::Rated { resistance: Ratio::new(0.1), beta: Ratio::new(0.0), at };
    let known = subject(&curve, Some(&tolerance), &circuit);
    let bare = Instruments::default();
    let (nominal, window) =
        known.reading(Some(&Fault::UnitStillMated), Test::OhmsAtUnit, at, &bare).expect("it applies");
    let window = window.expect("limits everywhere");
    meets("mated", of(1100.0, 4700.0, 10e3), nominal, Relative(1e-12));
    meets("mated, least", of(900.0 + 95.0, 4653.0, 9500.0), window.low, Relative(1e-12));
    meets("mated, most", of(1100.0 + 105.0, 4747.0, 10_500.0), window.high, Relative(1e-12));
    // Unplugged from the unit, the line's resistor is in series with the sensor.
    let (nominal, window) = known.reading(None, Test::OhmsAtUnit, at, &bare).expect("it applies");
    let window = window.expect("limits everywhere");
    meets("at the unit's plug", 1100.0, nominal, Relative(1e-12));
    meets("least", 900.0 + 95.0, window.low, Relative(1e-12));
    meets("most", 1100.0 + 105.0, window.high, Relative(1e-12));
    // And 10 kΩ of moisture lies across the sensor, behind that resistor.
    let leak = Kind::Leak.of_size(10e3);
    let (nominal, _) = known.reading(Some(&leak), Test::OhmsAtUnit, at, &bare).expect("it applies");
    meets("with a leak", 1.0 / (1.0 / 1000.0 + 1.0 / 10e3) + 100.0, nominal, Relative(1e-12));
    // Of a part without a tolerance there is no window.
    let unknown = subject(&curve, None, &circuit);
    let (_, none) =
        unknown.reading(Some(&Fault::UnitStillMated), Test::OhmsAtUnit, at, &bare).expect("it applies");
    assert_eq!(none, None);
}

/// A return that lies 0.3 V above ground: a short to it reads 0.3 V, a short to ground
/// reads nothing. A pull-down sensor has no return that could be lifted.
#[test]
fn a_short_to_return_is_not_one_to_ground() {
    let curve = beta(2200.0, 25.0, 3500.0);
    let circuit = Circuit { offset: Some(volts(0.3, 0.3, 0.3)), ..exact_divider(Topology::PullUp) };
    let at = Temperature::from_celsius(25.0);
    let read = |fault: &Fault, circuit: &Circuit| {
        let subject = subject(&curve, None, circuit);
        subject.reading(Some(fault), Test::VoltsAtUnit, at, &Instruments::default()).map(|read| read.0)
    };
    meets("return", 0.3, read(&Fault::ShortToReturn, &circuit).expect("it applies"), Relative(1e-12));
    meets("ground", 0.0, read(&Fault::ShortToGround, &circuit).expect("it applies"), Absolute(1e-12));
    // 10 kΩ of moisture to the same return: the sensor's 2.2 kΩ beside it.
    let beside = 1.0 / (1.0 / 2200.0 + 1.0 / 10e3);
    let leak = read(&Kind::Leak.of_size(10e3), &circuit).expect("it applies");
    meets("leak", 0.3 + 4.7 * beside / (beside + 4700.0), leak, Relative(1e-12));
    let lift = Kind::LiftedReturn.of_size(0.1);
    assert_eq!(read(&lift, &exact_divider(Topology::PullDown)), None);
    // A pull-up of 10 % too much: V = 0.3 + 4.7 R/(R + 1.1 Rp).
    let more = read(&Kind::WrongResistor.of_size(0.1), &circuit).expect("it applies");
    meets("resistor", 0.3 + 4.7 * 2200.0 / (2200.0 + 5170.0), more, Relative(1e-12));
}

/// Unplugged, the sensor's own tolerance does not matter: the window is the circuit's.
#[test]
fn an_unplugged_reading_has_a_window_without_the_sensors_tolerance() {
    let curve = beta(2200.0, 25.0, 3500.0);
    let circuit = divider(Topology::PullUp, volts(4.9, 5.0, 5.1), exactly(ohms(4700.0)));
    let bench = Instruments { input: Some(exactly(ohms(10e6))), ..Instruments::default() };
    let read = |test| {
        let subject = subject(&curve, None, &circuit);
        subject.reading(None, test, Temperature::from_celsius(25.0), &bench).expect("it applies").1
    };
    let window = read(Test::VoltsUnplugged).expect("the circuit's limits are known");
    let loaded = 10e6 / (10e6 + 4700.0);
    meets("least", 4.9 * loaded, window.low, Relative(1e-12));
    meets("most", 5.1 * loaded, window.high, Relative(1e-12));
    assert_eq!(read(Test::VoltsAtUnit), None, "the part's limits are not known");
}

/// A slope that is off does not show where the part is rated: at the beta curve's own
/// temperature, at 25 °C inside a table, at the cold end of one that begins above it.
#[test]
fn a_wrong_slope_turns_about_the_rated_temperature() {
    let table = |celsius: [f64; 3]| {
        let points = celsius.map(|at| {
            let at = Temperature::from_celsius(at);
            (at, beta(2200.0, 25.0, 3500.0).resistance(at).expect("inside"))
        });
        Curve::Table(Table::new(&points).expect("it falls"))
    };
    let circuit = exact_divider(Topology::PullUp);
    for (curve, pivot) in [
        (beta(1000.0, 100.0, 3930.0), 100.0),
        (table([0.0, 25.0, 80.0]), 25.0),
        (table([40.0, 60.0, 80.0]), 40.0),
    ] {
        let read = |by: f64, celsius: f64| {
            let fault = Kind::ShiftedSlope.of_size(by);
            let subject = subject(&curve, None, &circuit);
            let at = Temperature::from_celsius(celsius);
            let read = subject.reading(Some(&fault), Test::OhmsAtSensor, at, &Instruments::default());
            read.expect("inside the curve").0
        };
        let good =
            |celsius: f64| curve.resistance(Temperature::from_celsius(celsius)).expect("inside").ohms();
        meets("where it turns", good(pivot), read(0.05, pivot), Relative(1e-12));
        // Elsewhere R (R/R₀)^δ: a steeper part has fewer ohms when hot.
        let there = good(70.0) * libm::pow(good(70.0) / good(pivot), 0.05);
        meets("elsewhere", there, read(0.05, 70.0), Relative(1e-9));
    }
}

/// 1 mW/K and a sensor as large as its pull-up: 25/(4 × 4700) W warm it by about 1.3 K,
/// which a table that ends 0.5 K above does not know.
#[test]
fn a_sensor_that_warms_itself_out_of_its_curve_is_refused() {
    let at = |celsius: f64| Temperature::from_celsius(celsius);
    let points = [(at(0.0), ohms(12_000.0)), (at(24.5), ohms(4800.0)), (at(25.5), ohms(4600.0))];
    let curve = Curve::Table(Table::new(&points).expect("it falls"));
    let still = Dissipation::from_watts_per_kelvin(1e-3);
    let circuit = exact_divider(Topology::PullUp);
    let near_end = self_heating(&circuit, &curve, at(25.0), still);
    assert_eq!(near_end, Err(CurveError::OutsideDomain));
    let inside = self_heating(&circuit, &curve, at(22.0), still).expect("it ends 3.5 K above");
    assert!((1.2..1.35).contains(&inside.kelvins()), "{inside}");
    assert_eq!(
        self_heating(&circuit, &curve, at(22.0), Dissipation::from_watts_per_kelvin(0.0)),
        Err(CurveError::NotPhysical)
    );
}
