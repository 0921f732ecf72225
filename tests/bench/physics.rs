//! Microseconds of `physics` for one sensor card, against an aim and a yardstick.

use std::hint::black_box;
use std::time::Instant;

use bayleaf::physics::circuit::{Circuit, Meter, Topology};
use bayleaf::physics::curve::{BetaCurve, Curve, Platinum, Table};
use bayleaf::physics::fault::{Condition, Fault, Instruments, Other, Subject, Test};
use bayleaf::physics::tolerance::{PlatinumClass, Tolerance, band};
use bayleaf::quantity::{
    Accuracy, Beta, Interval, MeterRanges, Ratio, Resistance, Temperature, TemperatureDifference, toleranced,
};

/// What one card may take: microseconds on one thread.
const AIM: f64 = 200.0;
const ROWS: u32 = 120;
const OTHERS: usize = 5;
const REPETITIONS: usize = 2000;
const TESTS: [Test; 2] = [Test::VoltsAtUnit, Test::OhmsAtUnit];

/// Prints a line for each kind of sensor.
pub(crate) fn report() {
    println!("| yardstick: 1,000,000 × `libm::exp` | {:.2} ms |", yardstick() / 1000.0);
    for card in cards() {
        let time = |work: fn(&Card, &mut dyn FnMut(f64))| {
            median(REPETITIONS, || work(&card, &mut |figure| _ = black_box(figure)))
        };
        let before = yardstick();
        let whole = time(|card, see| card.all(see));
        let yardstick = 0.5 * (before + yardstick());
        let [rows, faults, doubts] = [Card::rows, Card::faults, Card::doubts].map(time);
        println!(
            "| physics of a card, {}: median of {REPETITIONS}, its part of {AIM} µs, of the yardstick \
             | {whole:.0} µs ({ROWS} rows {rows:.0}, faults at three temperatures {faults:.0}, \
             uncertainty {doubts:.0}); {:.2}; {:.4} |",
            card.name,
            whole / AIM,
            whole / yardstick,
        );
    }
}

/// A fixed piece of work on the same machine, in microseconds; taken in pieces as
/// short as a card, so that a busy machine delays both alike.
fn yardstick() -> f64 {
    let piece = || (0..10_000).map(|n| libm::exp(black_box(f64::from(n) * 1e-4))).sum::<f64>();
    100.0 * median(REPETITIONS, piece)
}

/// The median of so many runs, in microseconds.
fn median<T>(runs: usize, mut work: impl FnMut() -> T) -> f64 {
    let time = |_| {
        let started = Instant::now();
        black_box(work());
        started.elapsed().as_secs_f64() * 1e6
    };
    let mut times: Vec<f64> = (0..runs).map(time).collect();
    times.sort_by(f64::total_cmp);
    times[runs / 2]
}

/// Everything that the card of one sensor is computed from; all values invented.
pub(crate) struct Card {
    pub(crate) name: &'static str,
    curve: Curve,
    tolerance: Tolerance,
    circuit: Circuit,
    instruments: Instruments,
    others: Vec<(Curve, Tolerance)>,
    /// Coldest and hottest row, in °C.
    range: (f64, f64),
}

/// A card of each kind of sensor, and one with resistors in and across the line.
pub(crate) fn cards() -> [Card; 4] {
    let beta = (thermistor(10_000.0, 3950.0), rated());
    let line = Circuit {
        series: Some(toleranced("47 Ω ± 5 %").expect("a resistor")),
        parallel: Some(toleranced("100 kΩ ± 1 %").expect("a resistor")),
        ..divider("4.7 kΩ ± 1 %")
    };
    let platinum = Curve::Platinum(Platinum::new(Resistance::from_ohms(1000.0)).expect("an element"));
    let platinum = (platinum, Tolerance::Platinum(PlatinumClass::B));
    [
        Card::new("beta", beta.clone(), divider("4.7 kΩ ± 1 %"), (-30.0, 89.0)),
        Card::new("table with columns", table(), divider("6.8 kΩ ± 1 %"), (-20.0, 99.0)),
        Card::new("platinum", platinum, divider("2.2 kΩ ± 1 %"), (-40.0, 198.0)),
        Card::new("beta, line of 5 parts with tolerance", beta, line, (-30.0, 89.0)),
    ]
}

fn divider(resistor: &str) -> Circuit {
    let resistor = toleranced(resistor).expect("a resistor");
    Circuit::divider(Topology::PullUp, resistor, toleranced("5.00 V ± 0.10 V").expect("a reference"))
}

fn thermistor(ohms: f64, kelvins: f64) -> Curve {
    let rated = Temperature::from_celsius(25.0);
    let curve = BetaCurve::new(Resistance::from_ohms(ohms), rated, Beta::from_kelvins(kelvins));
    Curve::Beta(curve.expect("a thermistor"))
}

fn rated() -> Tolerance {
    let at = Temperature::from_celsius(25.0);
    Tolerance::Rated { resistance: Ratio::new(0.02), beta: Ratio::new(0.01), at }
}

/// A point every 5 K, with a least and a greatest column.
fn table() -> (Curve, Tolerance) {
    let (curve, tolerance) = (thermistor(5000.0, 3700.0), rated());
    let rows: Vec<_> = (-8..=28)
        .map(|row| {
            let at = Temperature::from_celsius(5.0 * f64::from(row));
            (at, band(&curve, &tolerance, at).expect("inside"))
        })
        .collect();
    let column = |of: fn(&bayleaf::physics::Band<Resistance>) -> Resistance| {
        let points: Vec<_> = rows.iter().map(|(at, band)| (*at, of(band))).collect();
        Table::new(&points).expect("it falls")
    };
    let (low, high) = (column(|band| band.low), column(|band| band.high));
    (Curve::Table(column(|band| band.nominal)), Tolerance::Columns { low, high })
}

impl Card {
    fn new(
        name: &'static str,
        (curve, tolerance): (Curve, Tolerance),
        circuit: Circuit,
        range: (f64, f64),
    ) -> Self {
        let meter = |digits| Accuracy { reading: Ratio::new(0.008), digits };
        let instruments = Instruments {
            volts: Some(MeterRanges::one(meter(2), 0.001)),
            ohms: Some(MeterRanges::one(meter(3), 1.0)),
            input: Some(toleranced("10 MΩ ± 2 %").expect("an input")),
            leads: Some(Resistance::from_ohms(0.2)),
            thermometer: Some(TemperatureDifference::from_kelvins(0.5)),
            soak: Some(TemperatureDifference::from_kelvins(0.5)),
        };
        let others = [2000.0, 3300.0, 5000.0, 15_000.0, 30_000.0];
        let others = others.map(|ohms| (thermistor(ohms, 3800.0), rated())).to_vec();
        Self { name, curve, tolerance, circuit, instruments, others, range }
    }

    /// All of it: table, faults, uncertainty.
    pub(crate) fn all(&self, see: &mut dyn FnMut(f64)) {
        self.rows(see);
        self.faults(see);
        self.doubts(see);
    }

    fn temperatures(&self) -> impl Iterator<Item = Temperature> {
        let (low, high) = self.range;
        let step = (high - low) / f64::from(ROWS - 1);
        (0..ROWS).map(move |row| Temperature::from_celsius(low + step * f64::from(row)))
    }

    fn meter(&self) -> Option<Meter> {
        self.instruments.meter(Test::VoltsAtUnit)
    }

    /// Ohms, volts and ratio with their corners, and the slope.
    fn rows(&self, see: &mut dyn FnMut(f64)) {
        let meter = self.meter();
        let corners = self.circuit.corners(meter.as_ref()).expect("all have limits");
        for at in self.temperatures() {
            let ohms = band(&self.curve, &self.tolerance, at).expect("inside the curve");
            let ends = Interval { low: ohms.low, high: ohms.high };
            let (volts, ratios) = corners.windows(ends);
            let nominal = self.circuit.voltage(ohms.nominal, meter.as_ref());
            let ratio = self.circuit.ratio(ohms.nominal, meter.as_ref());
            let _ = [ohms.low, ohms.nominal, ohms.high].map(|ohms| see(ohms.ohms()));
            let _ = [volts.low, nominal, volts.high].map(|volts| see(volts.volts()));
            let _ = [ratios.low, ratio, ratios.high].map(|ratio| see(ratio.part()));
            see(self.curve.slope(at).expect("inside the curve"));
        }
    }

    /// The whole dictionary at the coldest row, the middle and the hottest.
    fn faults(&self, see: &mut dyn FnMut(f64)) {
        let others: Vec<_> = self.others().collect();
        let subject = self.subject(&others);
        let (low, high) = self.range;
        for celsius in [low, (low + high) / 2.0, high] {
            let at = Temperature::from_celsius(celsius);
            let setups = TESTS.map(|test| {
                subject.setup(Condition { test, at }, &self.instruments).expect("inside the curve")
            });
            let good = setups.each_ref().map(|setup| setup.signature(None).expect("it reads"));
            for fault in Fault::dictionary(OTHERS) {
                for (setup, good) in setups.iter().zip(&good) {
                    let faulty = setup.signature(Some(&fault));
                    if let Some(faulty) = faulty {
                        let window = faulty.window.expect("all have limits");
                        let _ = [faulty.nominal, window.low, window.high].map(&mut *see);
                    }
                    let apart = faulty.and_then(|faulty| faulty.is_apart_from(good));
                    see(apart.map_or(2.0, f64::from));
                }
                see(setups[0].believed(Some(&fault)).map_or(-1.0, Temperature::kelvins));
            }
        }
    }

    /// How far ohms and volts of every row can be trusted.
    fn doubts(&self, see: &mut dyn FnMut(f64)) {
        let subject = self.subject(&[]);
        let meter = self.meter();
        for at in self.temperatures() {
            let ohms = self.curve.resistance(at).expect("inside the curve");
            let volts = self.circuit.voltage(ohms, meter.as_ref()).volts();
            for (test, reading) in [(Test::VoltsAtUnit, volts), (Test::OhmsAtUnit, ohms.ohms())] {
                let doubt = subject.doubt(reading, test, at, &self.instruments).expect("a reading");
                see(doubt.budget.expanded());
            }
        }
    }

    fn others(&self) -> impl Iterator<Item = Other<'_>> {
        self.others.iter().map(|(curve, tolerance)| Other { curve, tolerance: Some(tolerance) })
    }

    fn subject<'a>(&'a self, others: &'a [Other<'a>]) -> Subject<'a> {
        Subject {
            curve: &self.curve,
            tolerance: Some(&self.tolerance),
            circuit: Some(&self.circuit),
            others,
            battery: Some(toleranced("13.8 V ± 0.3 V").expect("a battery")),
        }
    }
}
