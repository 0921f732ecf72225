//! Divider readings against a circuit simulator, a printed chart and common practice.

use bayleaf::physics::circuit::{Circuit, Disturbance, Meter, Reader, Topology};
use bayleaf::physics::curve::{BetaCurve, Curve};
use bayleaf::quantity::{Beta, Resistance, Temperature, Toleranced, Voltage};

use crate::bench::{divider, exactly, meter_at_pin, meter_at_sensor, written};
use crate::curves::{ohms, published_tables, through};
use crate::sheet::Within::{Absolute, Relative};
use crate::sheet::{Row, rows_of};

/// Header of every 03 file: pure arithmetic, 1e-6 relative.
///
/// # Source
/// ngspice-39 operating points, and exact rational nodal analysis beside them.
const SIMULATED: crate::sheet::Within = Relative(1e-6);

/// The reference of the checks.
///
/// Common practice, no source: 5 V is the usual reference of a control unit's
/// sensors and actuators.
fn five_volts() -> Toleranced<Voltage> {
    written("5 V")
}

/// A nominal value from a column of ohms.
fn nominal(row: &Row, column: &str) -> Toleranced<Resistance> {
    written(&format!("{} Ω", row.text(column)))
}

/// The meter at the pin, where the row has one.
fn meter_of(row: &Row) -> Option<Meter> {
    row.has("meter_ohm").then(|| meter_at_pin(nominal(row, "meter_ohm")))
}

fn reference_of(row: &Row) -> Toleranced<Voltage> {
    written(&format!("{} V", row.text("Vref")))
}

/// The resistance behind a reading, in Ω, where the check knows it to exist.
fn behind(circuit: &Circuit, reading: Voltage, meter: Option<&Meter>) -> f64 {
    circuit.resistance(reading, meter).unwrap_or_else(|| panic!("nothing reads {reading}")).ohms()
}

/// 01g: the chart of a chiller controls manual (HXC076, Table 39B).
#[test]
fn a_printed_chart_is_read_at_every_degree() {
    // Header: the pull-up is not printed; 10 kΩ and 5 V reproduce the column.
    let circuit = divider(Topology::PullUp, five_volts(), written("10 kΩ"));
    let mut checked = 0;
    for row in rows_of("01g_ntc_divider_chart_published.csv") {
        let volts = circuit.voltage(row.ohms("r_printed_ohm"), None).volts();
        // Header: the chart rounds volts to 1 mV and ohms to 1 to 10 Ω.
        row.agrees("v_printed", volts, Absolute(0.0006));
        // The same formula on the printed ohms, to the column's last digit.
        row.agrees("v_calc_5V_10k", volts, Absolute(0.51e-6));
        checked += 1;
    }
    assert_eq!(checked, 81, "every row of 01g");
}

/// 03a: pull-up divider with and without a meter, and back.
#[test]
fn a_pull_up_divider_reads_as_simulated() {
    let (mut checked, mut loaded) = (0, 0);
    for row in rows_of("03a_divider_pullup_ntc.csv") {
        let circuit = divider(Topology::PullUp, reference_of(&row), nominal(&row, "R_pullup"));
        let meter = meter_of(&row);
        let volts = circuit.voltage(row.ohms("R_ntc"), meter.as_ref()).volts();
        row.agrees("V_pin", volts, SIMULATED);
        let reading = row.volts("V_pin");
        row.agrees("R_ntc", behind(&circuit, reading, meter.as_ref()), SIMULATED);
        // The trap of the file: the loaded reading taken as if no meter were there.
        row.agrees("R_naive_from_V", behind(&circuit, reading, None), SIMULATED);
        loaded += u32::from(meter.is_some());
        checked += 1;
    }
    assert_eq!((checked, loaded), (72, 48), "every row of 03a");
}

/// 03b: a resistor between pin and sensor, the meter on either side of it.
#[test]
fn a_series_resistor_reads_as_simulated_on_both_sides() {
    let (mut at_pin, mut at_sensor, mut lifted_grounds) = (0, 0, 0);
    for row in rows_of("03b_divider_series_groundoffset.csv") {
        let offset = Toleranced { nominal: row.volts("v_go"), limits: None };
        lifted_grounds += u32::from(!row.is_zero("v_go"));
        let circuit = Circuit {
            series: Some(nominal(&row, "R_series")),
            offset: Some(offset),
            ..divider(Topology::PullUp, five_volts(), nominal(&row, "R_pullup"))
        };
        let sensor = row.ohms("R_ntc");
        let ten_megaohm = written("10 MΩ");
        let ideal = exactly(Resistance::from_ohms(f64::INFINITY));
        // One meter reads at one place: the pin's voltage while the meter is at
        // the sensor, and the other way round, can't be asked for.
        let (pin, conn) = match row.text("meter_at") {
            "none" => (Some(None), Some(meter_at_sensor(ideal))),
            "pin" => (Some(Some(meter_at_pin(ten_megaohm))), None),
            "conn" => (None, Some(meter_at_sensor(ten_megaohm))),
            other => panic!("{}: unknown place {other}", row.place()),
        };
        if let Some(meter) = pin {
            row.agrees("V_pin", circuit.voltage(sensor, meter.as_ref()).volts(), SIMULATED);
            row.agrees("R_ntc", behind(&circuit, row.volts("V_pin"), meter.as_ref()), SIMULATED);
            at_pin += 1;
        }
        if let Some(meter) = conn {
            let volts = circuit.voltage(sensor, Some(&meter)).volts();
            row.agrees("V_conn", volts, SIMULATED);
            // Across the sensor itself, less its lifted return.
            row.agrees("V_across", volts - row.number("v_go"), SIMULATED);
            // The control unit's pin while the meter loads the sensor's.
            row.agrees("R_ntc", behind(&circuit, row.volts("V_pin"), Some(&meter)), SIMULATED);
            at_sensor += 1;
        }
        the_other_end_of_the_line(&row, &circuit);
    }
    assert_eq!((at_pin, at_sensor, lifted_grounds), (60, 60, 60), "rows of 03b");
}

/// The end of the line where the meter is not: 10 MΩ of another unit stands for it.
fn the_other_end_of_the_line(row: &Row, circuit: &Circuit) {
    let (sensor, ten_megaohm) = (row.ohms("R_ntc"), written("10 MΩ"));
    match row.text("meter_at") {
        "pin" => {
            let reader = Some(Reader { resistor: ten_megaohm, reference: None });
            let ideal = meter_at_sensor(exactly(Resistance::from_ohms(f64::INFINITY)));
            let volts = Circuit { reader, ..*circuit }.voltage(sensor, Some(&ideal)).volts();
            row.agrees("V_conn", volts, SIMULATED);
            row.agrees("V_across", volts - row.number("v_go"), SIMULATED);
        }
        "conn" => {
            let leak = Disturbance { leak_to_ground: ten_megaohm.nominal, ..Disturbance::NONE };
            row.agrees("V_pin", circuit.disturbed_voltage(sensor, &leak, None).volts(), SIMULATED);
        }
        _ => {}
    }
}

/// 03c: sensor to the reference, resistor to ground.
#[test]
fn a_pull_down_divider_reads_as_simulated() {
    let (mut checked, mut loaded) = (0, 0);
    for row in rows_of("03c_divider_highside.csv") {
        let circuit = divider(Topology::PullDown, reference_of(&row), nominal(&row, "R_pulldown"));
        let meter = meter_of(&row);
        let volts = circuit.voltage(row.ohms("R_ntc"), meter.as_ref()).volts();
        row.agrees("V_pin", volts, SIMULATED);
        row.agrees("R_ntc", behind(&circuit, row.volts("V_pin"), meter.as_ref()), SIMULATED);
        loaded += u32::from(meter.is_some());
        checked += 1;
    }
    assert_eq!((checked, loaded), (15, 10), "every row of 03c");
}

/// E1, the invented sensor of the project's notes: no published source.
#[test]
fn the_invented_sensor_reads_as_its_author_computed() {
    let rated = Temperature::from_celsius(25.0);
    let curve = BetaCurve::new(Resistance::from_ohms(2200.0), rated, Beta::from_kelvins(3500.0));
    let curve = Curve::Beta(curve.expect("2.2 kΩ and 3500 K are a thermistor"));
    let circuit = divider(Topology::PullUp, five_volts(), written("4.7 kΩ"));
    let mut checked = 0;
    for row in rows_of("e1_invented.csv") {
        let at = row.celsius("t_degC");
        let ratio = circuit.ratio(Resistance::from_ohms(ohms(&curve, at)), None).part();
        let slope = curve.slope(at).expect("a formula has a slope in its domain");
        // Half of the last printed digit of each column, and a hair.
        row.agrees("R_ohm", ohms(&curve, at), Absolute(0.050_001));
        row.agrees("V_pin", 5.0 * ratio, Absolute(0.000_501));
        row.agrees("slope_pct_per_K", 100.0 * slope, Absolute(0.005_001));
        // dV/dT = V (1 − V/Vref) (1/R) dR/dT, with V = Vref R/(R + Rp).
        row.agrees("slope_mV_per_K", 5000.0 * ratio * (1.0 - ratio) * slope, Absolute(0.050_001));
        checked += 1;
    }
    assert_eq!(checked, 12, "every row of E1");
}

/// Common practice, no source: a thermistor's resistance rises as its temperature falls.
#[test]
fn a_colder_thermistor_has_more_ohms() {
    let mut checked = 0;
    for (part, points) in published_tables() {
        let curve = through(&points);
        let [(coldest, _), .., (hottest, _)] = points[..] else { panic!("{part}: no table") };
        let mut colder = coldest;
        while colder.celsius() + 0.5 <= hottest.celsius() {
            let warmer = Temperature::from_celsius(colder.celsius() + 0.5);
            assert!(ohms(&curve, colder) > ohms(&curve, warmer), "{part} between {colder} and {warmer}");
            assert!(curve.slope(colder).is_ok_and(|slope| slope < 0.0), "{part} at {colder}");
            colder = warmer;
            checked += 1;
        }
    }
    assert_eq!(checked, 1770, "every half degree of every table");
}

/// Common practice, no source: an unplugged sensor reads the reference, a short reads ground.
#[test]
fn an_unplugged_sensor_reads_the_reference() {
    let open = Resistance::from_ohms(f64::INFINITY);
    let short = Resistance::from_ohms(0.0);
    let ten_megaohm = meter_at_pin(written("10 MΩ"));
    let mut checked = 0;
    for resistor in ["1 kΩ", "4.7 kΩ", "10 kΩ"] {
        for series in [None, Some(written("1 kΩ"))] {
            let circuit = Circuit { series, ..divider(Topology::PullUp, five_volts(), written(resistor)) };
            // No current flows, so nothing is lost in the pull-up: the very bits.
            let unloaded = circuit.voltage(open, None).volts();
            assert_eq!(unloaded.to_bits(), 5.0_f64.to_bits(), "{resistor}, no meter");
            // A 10 MΩ meter takes 10 kΩ/10 MΩ of it at most: 0.1 %.
            let loaded = circuit.voltage(open, Some(&ten_megaohm)).volts();
            assert!((5.0 * 0.999..5.0).contains(&loaded), "{resistor}: {loaded} V");
            if series.is_none() {
                assert!(circuit.voltage(short, None).volts().abs() <= 0.0, "{resistor}, short");
            }
            checked += 1;
        }
        // With the sensor towards the reference it is the other way round.
        let circuit = divider(Topology::PullDown, five_volts(), written(resistor));
        for meter in [None, Some(&ten_megaohm)] {
            assert!(circuit.voltage(open, meter).volts().abs() <= 0.0, "{resistor}, pulled down");
            assert_eq!(circuit.voltage(short, meter).volts().to_bits(), 5.0_f64.to_bits());
            checked += 1;
        }
    }
    assert_eq!(checked, 12, "every circuit");
}
