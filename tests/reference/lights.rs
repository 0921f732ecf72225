//! Light sensors against a reference library, and pressure transducers against arithmetic.

use bayleaf::physics::light::{
    self, LightError, LightSensor, LightTopology, SingleDiode, lamp, slope_voltage,
};
use bayleaf::physics::transducer::{Fault, Point, Sense, Transducer, TransducerError};
use bayleaf::quantity::{Current, Irradiance, Length, Pressure, Ratio, Resistance, Voltage, scalar};

use crate::bench::written;
use crate::sheet::Within::{Absolute, Relative};
use crate::sheet::{meets, rows_of};

/// 07a: a photodiode and a small cell across a load resistor, without bias.
///
/// # Source
/// Header: pvlib 0.16.1 and mpmath, 1e-6 relative.
#[test]
fn a_cell_across_a_load_reads_as_the_library_has_it() {
    let mut checked = 0;
    for row in rows_of("07a_light_sensor_single_diode.csv") {
        let slope = slope_voltage(row.number("n"), row.celsius("t_degC"));
        row.agrees("nVth_V", slope.volts(), Relative(1e-11));
        let light = row.number("IL_at_1000_A") * row.number("G_W_m2") / 1000.0;
        let cell = SingleDiode {
            photocurrent: Current::from_amperes(light),
            saturation: Current::from_amperes(row.number("I0_A")),
            series: row.ohms("Rs_ohm"),
            shunt: row.ohms("Rsh_ohm"),
            slope,
        };
        let volts = cell.voltage(row.ohms("R_load_ohm")).unwrap_or_else(|e| panic!("{}: {e}", row.place()));
        row.agrees("V_pvlib", volts.volts(), Relative(1e-6));
        row.agrees("V_mp", volts.volts(), Relative(1e-11));
        // The trap of the file: the load taken for a short circuit.
        row.agrees("V_linear_IL_R", light * row.number("R_load_ohm"), Relative(1e-9));
        checked += 1;
    }
    assert_eq!(checked, 56, "every row of 07a");
}

/// 07b: a photodiode that pulls a pull-up down, until it saturates.
#[test]
fn a_photodiode_on_a_pull_up_reads_as_computed() {
    let mut checked = 0;
    for row in rows_of("07b_photoconductive_pullup.csv") {
        let sensor = LightSensor {
            current: written(&format!("{} A", row.text("IL_at_1000_A"))),
            at: Irradiance::from_watts_per_square_metre(1000.0),
            dark: None,
            topology: LightTopology::PullUp,
            resistor: written(&format!("{} Ω", row.text("R_pullup"))),
            reference: written(&format!("{} V", row.text("Vref"))),
        };
        let light = Irradiance::from_watts_per_square_metre(row.number("G_W_m2"));
        let volts = sensor.voltage(light, None).unwrap_or_else(|e| panic!("{}: {e}", row.place()));
        row.agrees("V_pin", volts.volts(), Absolute(1e-9));
        let saturation = sensor.saturation().unwrap_or_else(|e| panic!("{}: {e}", row.place()));
        let saturated = light >= saturation;
        assert_eq!(saturated, !row.is_zero("saturated"), "{}", row.place());
        let back = sensor.irradiance(row.volts("V_pin"), None);
        match back {
            Ok(back) => row.agrees("G_W_m2", back.watts_per_square_metre(), Absolute(1e-9)),
            Err(error) => assert_eq!((error, saturated), (LightError::Saturated, true), "{}", row.place()),
        }
        checked += 1;
    }
    assert_eq!(checked, 10, "every row of 07b");
}

/// Ohm's law: 1.2 mA through 2.2 kΩ is 2.64 V, and a rail is a rail.
#[test]
fn a_load_resistor_rises_to_the_reference_and_no_further() {
    let sensor = LightSensor {
        current: written("1.2 mA ± 20 %"),
        at: scalar("1000 W/m²").unwrap(),
        dark: Some(Current::from_amperes(1e-6)),
        topology: LightTopology::Load,
        resistor: written("2.2 kΩ ± 1 %"),
        reference: written("5 V ± 2 %"),
    };
    let sun = |w| Irradiance::from_watts_per_square_metre(w);
    let volts = |w| sensor.voltage(sun(w), None).unwrap().volts();
    assert!((volts(1000.0) - 2.64).abs() < 1e-12);
    assert!((volts(3000.0) - 5.0).abs() < 1e-12);
    let window = sensor.voltage_window(sun(1000.0), None).unwrap().unwrap();
    assert!((window.low.volts() - 0.96e-3 * 2178.0).abs() < 1e-12);
    assert!((window.high.volts() - 1.441e-3 * 2222.0).abs() < 1e-12);
    // 4.9 V over 2.222 kΩ less 1 µA, over 1.44 mA.
    let earliest = sensor.earliest_saturation().unwrap().unwrap().watts_per_square_metre();
    assert!((earliest - 1000.0 * (4.9 / 2222.0 - 1e-6) / 1.44e-3).abs() < 1e-9);
    assert_eq!(sensor.irradiance(Voltage::from_volts(5.0), None), Err(LightError::Saturated));
    assert_eq!(sensor.irradiance(Voltage::from_volts(-0.1), None), Err(LightError::BeyondDark));
    // 10 kΩ across 2.2 kΩ: 2.64 V × 10/12.2.
    let meter = Some(written::<Resistance>("10 kΩ"));
    let loaded = sensor.voltage(sun(1000.0), meter).unwrap().volts();
    assert!((loaded - 2.64 * 10.0 / 12.2).abs() < 1e-12);
}

/// A diode of up to 100 µA in the dark on 2.2 kΩ ± 1 % and 5 V ± 2 %: covered it may lose
/// 100 µA × 2222 Ω, open nothing, and shorted the pin lies at the diode's other end (Ohm's law).
#[test]
fn a_faulty_light_sensor_reads_as_dark_or_at_a_rail() {
    let sensor = |topology| LightSensor {
        current: written("1.2 mA ± 20 %"),
        at: scalar("1000 W/m²").unwrap(),
        dark: Some(Current::from_amperes(100e-6)),
        topology,
        resistor: written("2.2 kΩ ± 1 %"),
        reference: written("5 V ± 2 %"),
    };
    let lost = 100e-6 * 2222.0;
    for (topology, fault, nominal, low, high) in [
        (LightTopology::PullUp, light::fault::Fault::Open, 5.0, 4.9, 5.1),
        (LightTopology::PullUp, light::fault::Fault::Covered, 5.0, 4.9 - lost, 5.1),
        (LightTopology::PullUp, light::fault::Fault::Shorted, 0.0, 0.0, 0.0),
        (LightTopology::Load, light::fault::Fault::Open, 0.0, 0.0, 0.0),
        (LightTopology::Load, light::fault::Fault::Covered, 0.0, 0.0, lost),
        (LightTopology::Load, light::fault::Fault::Shorted, 5.0, 4.9, 5.1),
    ] {
        let (what, sensor) = (format!("{topology:?} {fault:?}"), sensor(topology));
        meets(&what, nominal, sensor.fault_voltage(fault, None).unwrap().volts(), Absolute(1e-12));
        let window = sensor.fault_window(fault, None).unwrap().unwrap();
        meets(&what, low, window.low.volts(), Absolute(1e-12));
        meets(&what, high, window.high.volts(), Absolute(1e-12));
    }
}

/// The square law, where it may be used (the bound by arithmetic: r = 25 mm at 250 mm is 1 %).
#[test]
fn a_lamp_falls_with_the_square_only_from_afar() {
    let at = |mm: f64, size: f64| {
        let length = |mm: f64| Length::from_metres(mm / 1000.0);
        lamp(Irradiance::from_watts_per_square_metre(400.0), length(250.0), length(mm), length(size))
    };
    assert!((at(500.0, 50.0).unwrap().watts_per_square_metre() - 100.0).abs() < 1e-9);
    assert_eq!(at(500.0, 60.0), Err(LightError::TooClose));
    assert_eq!(at(200.0, 50.0), Err(LightError::TooClose));
    let exact = |d: f64| 1.0 / (d * d + 25.0 * 25.0);
    let off = (exact(500.0) / exact(250.0)) / 0.25 - 1.0;
    assert!(off.abs() < 0.01, "the square law is off by {off}");
}

/// Two-point arithmetic; an output of 10 % to 90 % is common practice, no source.
#[test]
fn a_transducer_reads_on_the_line_through_its_two_points() {
    let point = |pressure: &str, percent: f64| Point {
        pressure: scalar(pressure).unwrap(),
        ratio: Ratio::new(percent / 100.0),
    };
    let part = |sense| {
        let accuracy = Some(Ratio::new(0.01));
        Transducer::new(sense, point("0 bar", 10.0), point("32 bar", 90.0), accuracy, None).unwrap()
    };
    let gauge = part(Sense::Gauge);
    let bar = |bar: f64| Pressure::from_pascals(bar * 1e5);
    // 10 % + 80 % × 8/32 = 30 %; 1 % of a span of 80 % is 0.8 %.
    assert!((gauge.ratio(bar(8.0)).unwrap().part() - 0.3).abs() < 1e-12);
    let window = gauge.ratio_window(bar(8.0)).unwrap().unwrap();
    assert!((window.low.part() - 0.292).abs() < 1e-12 && (window.high.part() - 0.308).abs() < 1e-12);
    let volts = gauge.voltage_window(bar(8.0), written("5 V ± 2 %")).unwrap().unwrap();
    assert!((volts.low.volts() - 4.9 * 0.292).abs() < 1e-12);
    assert!((volts.high.volts() - 5.1 * 0.308).abs() < 1e-12);
    assert!((gauge.pressure(Ratio::new(0.3)).unwrap().pascals() - 8e5).abs() < 1e-6);
    assert_eq!(gauge.ratio(bar(33.0)), Err(TransducerError::OutsideRange));
    let air = bar(0.83);
    // 6 bar absolute is 5.17 bar on a gauge in air of 0.83 bar, and back.
    for (sense, own) in [(Sense::Gauge, 5.17e5), (Sense::Absolute, 6e5)] {
        assert!((sense.of_absolute(bar(6.0), air).pascals() - own).abs() < 1e-6);
        assert!((sense.to_absolute(Pressure::from_pascals(own), air).pascals() - 6e5).abs() < 1e-6);
    }
    // An absolute part where a gauge part belongs reads the air too much, and back.
    let believed =
        |part: &Transducer, fault| part.with_fault(fault, bar(6.0), air).unwrap().believed.unwrap().pascals();
    assert!((believed(&gauge, Fault::OtherSense) - 6e5).abs() < 1e-4);
    assert!((believed(&part(Sense::Absolute), Fault::OtherSense) - 5.17e5).abs() < 1e-4);
    assert!((believed(&gauge, Fault::Offset(bar(0.5))) - 5.67e5).abs() < 1e-4);
    // At the rails: 0 is 4 bar below the start, 1 is 4 bar above the end.
    assert!((believed(&gauge, Fault::ShortToReturn) + 4e5).abs() < 1e-4);
    assert!((believed(&gauge, Fault::ShortToReference) - 36e5).abs() < 1e-4);
}
