//! Worst-case windows, and the numbers a meter shows of them.

use bayleaf::physics::circuit::Topology;
use bayleaf::physics::curve::{BetaCurve, Curve};
use bayleaf::physics::tolerance::{Tolerance, band};
use bayleaf::quantity::{
    Accuracy, Beta, Interval, Ratio, Resistance, Rounding, Temperature, Toleranced, Voltage, accuracy, figure,
};

use crate::bench::{divider, exactly, meter_at_pin, written};
use crate::sheet::Within::{self, Absolute, Relative};
use crate::sheet::{Row, meets, rows_of};

/// Header of the 03 files: pure arithmetic, 1e-6 relative.
///
/// # Source
/// ngspice-39 operating points of every corner, and exact rational analysis.
const SIMULATED: Within = Relative(1e-6);

/// The parts of one case of 03g, each with its tolerance.
struct Case {
    reference: Toleranced<Voltage>,
    resistor: Toleranced<Resistance>,
    sensor: Toleranced<Resistance>,
    meter: Toleranced<Resistance>,
}

impl Case {
    /// From the columns, and from a name such as `CurveA_10k@25 Rntc=10000 Rpu=10000`.
    fn of(row: &Row) -> Self {
        let named = |key: &str| {
            let mut words = row.text("case").split(' ');
            words.find_map(|word| word.strip_prefix(key)).expect("the case names its parts")
        };
        let ohms = |key, column| written(&format!("{} Ω ± {} %", named(key), row.text(column)));
        Self {
            reference: written(&format!("{} V ± {} %", row.text("Vref_nom"), row.text("tolV_pct"))),
            resistor: ohms("Rpu=", "tolRpu_pct"),
            sensor: ohms("Rntc=", "tolRntc_pct"),
            // Header: 10 MΩ ± 5 % in every row.
            meter: written("10 MΩ ± 5 %"),
        }
    }

    /// The case with every part at one end, in the order Vref, Rpu, Rntc, Rm.
    fn at_corner(&self, signs: &str) -> Self {
        let mut ends = signs.chars().map(|sign| sign == '+');
        let mut next = || ends.next().expect("a corner has four signs");
        Self {
            reference: end_of(self.reference, next()),
            resistor: end_of(self.resistor, next()),
            sensor: end_of(self.sensor, next()),
            meter: end_of(self.meter, next()),
        }
    }
}

/// One end of a tolerance, as a value without any.
fn end_of<T: Copy>(part: Toleranced<T>, high: bool) -> Toleranced<T> {
    let limits = limits_of(part);
    let value = if high { limits.high } else { limits.low };
    Toleranced { nominal: value, limits: Some(Interval { low: value, high: value }) }
}

fn limits_of<T>(part: Toleranced<T>) -> Interval<T> {
    part.limits.expect("the part is written with a tolerance")
}

/// 03g: every corner one by one, and the least and greatest of them by the window.
#[test]
fn a_window_reaches_from_the_least_to_the_greatest_corner() {
    let (mut corners, mut nominals, mut extremes) = (0, 0, 0);
    for row in rows_of("03g_worst_case_corners.csv") {
        let case = Case::of(&row);
        let circuit = divider(Topology::PullUp, case.reference, case.resistor);
        let meter = meter_at_pin(case.meter);
        let sensor = limits_of(case.sensor);
        let volts = || circuit.voltage_window(sensor, Some(&meter)).expect("all parts have limits");
        let parts = || circuit.ratio_window(sensor, Some(&meter)).expect("all parts have limits");
        let agree = |volts: Voltage, ratio: Ratio| {
            row.agrees("V_pin", volts.volts(), SIMULATED);
            row.agrees("ratio_V_over_Vref", ratio.part(), SIMULATED);
        };
        match row.text("corner") {
            "NOMINAL" => {
                let nominal = case.sensor.nominal;
                agree(circuit.voltage(nominal, Some(&meter)), circuit.ratio(nominal, Some(&meter)));
                nominals += 1;
            }
            // The ratio's ends are those of the ratio itself: a module whose own
            // reference follows Vref never sees the tolerance of Vref.
            corner if corner.starts_with("MIN") => {
                agree(volts().low, parts().low);
                extremes += 1;
            }
            corner if corner.starts_with("MAX") => {
                agree(volts().high, parts().high);
                extremes += 1;
            }
            signs => {
                let end = case.at_corner(signs);
                let circuit = divider(Topology::PullUp, end.reference, end.resistor);
                let (meter, sensor) = (meter_at_pin(end.meter), end.sensor.nominal);
                agree(circuit.voltage(sensor, Some(&meter)), circuit.ratio(sensor, Some(&meter)));
                corners += 1;
            }
        }
    }
    assert_eq!((corners, nominals, extremes), (48, 3, 6), "every row of 03g");
}

/// 03i: from the part's tolerance to the two numbers on the card.
#[test]
fn a_window_ends_on_the_displayed_digits() {
    const RESOLUTION: f64 = 0.01;
    let rated = Temperature::from_celsius(25.0);
    // Header: the inputs of every row.
    let curve = BetaCurve::new(Resistance::from_ohms(10_000.0), rated, Beta::from_kelvins(3950.0));
    let curve = Curve::Beta(curve.expect("10 kΩ and 3950 K are a thermistor"));
    let one_percent = Ratio::new(0.01);
    let tolerance = Tolerance::Rated { resistance: one_percent, beta: one_percent, at: rated };
    let circuit = divider(Topology::PullUp, written("5 V ± 1 %"), written("10 kΩ ± 1 %"));
    let meter = meter_at_pin(exactly(Resistance::from_ohms(10e6)));
    let display = accuracy("0.8 % + 2 digits").expect("an accuracy as makers print it");
    let mut checked = 0;
    for row in rows_of("03i_end_to_end_window.csv") {
        let sensor = band(&curve, &tolerance, row.celsius("t_degC")).expect("inside the domain");
        row.agrees("R_nominal", sensor.nominal.ohms(), SIMULATED);
        let window = circuit.voltage_band(sensor, Some(&meter)).expect("all parts have limits");
        row.agrees("v_nominal", window.nominal.volts(), SIMULATED);
        let (low, high) = (window.low.volts(), window.high.volts());
        row.agrees("v_min", low, SIMULATED);
        row.agrees("v_max", high, SIMULATED);
        // The meter's limit of error is taken at either end of the window.
        let (at_low, at_high) = (display.limit(low, RESOLUTION), display.limit(high, RESOLUTION));
        row.agrees("dmm_lo", at_low, SIMULATED);
        row.agrees("dmm_hi", at_high, SIMULATED);
        let (accept_low, accept_high) = (low - at_low, high + at_high);
        row.agrees("accept_low", accept_low, SIMULATED);
        row.agrees("accept_high", accept_high, SIMULATED);
        row.agrees("guard_low", low + at_low, SIMULATED);
        row.agrees("guard_high", high - at_high, SIMULATED);
        // Header: the rounded columns are exact, inwards and outwards.
        let shown = |volts, rounding| figure(volts, 2, rounding);
        assert_eq!(shown(accept_low, Rounding::Up), row.text("disp_low"), "{}", row.place());
        assert_eq!(shown(accept_high, Rounding::Down), row.text("disp_high"), "{}", row.place());
        assert_eq!(shown(accept_low, Rounding::Down), row.text("outw_low"), "{}", row.place());
        assert_eq!(shown(accept_high, Rounding::Up), row.text("outw_high"), "{}", row.place());
        checked += 1;
    }
    assert_eq!(checked, 7, "every row of 03i");
}

/// 04d: a meter's limit of error, as vendors' pages and arithmetic give it.
#[test]
fn a_meter_is_as_good_as_its_maker_says() {
    let (mut checked, mut printed) = (0, 0);
    for row in rows_of("04d_dmm_accuracy.csv") {
        let text = format!("± {} % of reading + {} digits", row.text("pct_rdg"), row.text("digits"));
        let meter: Accuracy = accuracy(&text).expect("an accuracy as makers print it");
        let reading = row.number("reading");
        let limit = meter.limit(reading, row.number("resolution"));
        // Header: 1e-9 relative.
        row.agrees("limit", limit, Relative(1e-9));
        row.agrees("low", reading - limit, Relative(1e-9));
        row.agrees("high", reading + limit, Relative(1e-9));
        if row.has("printed") {
            printed_band(&row, reading, limit);
            printed += 1;
        }
        let below_zero = meter.limit(-reading, row.number("resolution"));
        row.agrees("limit", below_zero, Relative(1e-9));
        checked += 1;
    }
    assert_eq!((checked, printed), (7, 4), "every row of 04d");
}

/// What a vendor's page prints, such as `+-1.0, 99.0..101.0`: half a last digit.
fn printed_band(row: &Row, reading: f64, limit: f64) {
    let printed = row.text("printed");
    let near = |text: &str, computed: f64| {
        let places = text.split_once('.').map_or(0, |(_, digits)| digits.len());
        let half = 0.5 * libm::pow(10.0, -(places as f64)) + 1e-9;
        let number = text.parse().unwrap_or_else(|_| panic!("{}: {text}", row.place()));
        meets(&format!("{} printed", row.place()), number, computed, Absolute(half));
    };
    let (band, alone) = match printed.strip_prefix("+-").and_then(|rest| rest.split_once(", ")) {
        Some((alone, band)) => (band, Some(alone)),
        None => (printed.split(' ').next().unwrap_or_default(), None),
    };
    let (low, high) = band.split_once("..").unwrap_or_else(|| panic!("{}: {band}", row.place()));
    near(low, reading - limit);
    near(high, reading + limit);
    if let Some(alone) = alone {
        near(alone, limit);
    }
}
