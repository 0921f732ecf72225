//! Position feedback, coded contacts and resistor ladders against a circuit simulator.

use bayleaf::physics::ladder::{Ladder, Wiring};
use bayleaf::physics::potentiometer::{Feedback, LoadTo, PositionError, Stops};
use bayleaf::quantity::{Interval, Ratio, Resistance, Toleranced};

use crate::bench::{exactly, written};
use crate::sheet::Within::{Absolute, Relative};
use crate::sheet::{Row, rows_of};

/// Header of every 03 file: pure arithmetic, 1e-6 relative.
///
/// # Source
/// ngspice-39 operating points, and exact rational nodal analysis beside them.
const SIMULATED: crate::sheet::Within = Relative(1e-6);

/// A zero-ohm segment is 1e-6 Ω in the netlist (header): up to 5 nV.
const NETLIST_ZERO: crate::sheet::Within = Absolute(6e-9);

fn ohms(row: &Row, column: &str) -> Toleranced<Resistance> {
    written(&format!("{} Ω", row.text(column)))
}

fn feedback(row: &Row) -> Feedback {
    let load = |to| Some((ohms(row, "R_load"), to));
    let ends = row.number("R_end");
    Feedback {
        track: ohms(row, "R_track"),
        ends: (ends > 0.0).then(|| ohms(row, "R_end")),
        contact: None,
        load: match row.text("load_to") {
            "none" => None,
            "gnd" => load(LoadTo::Ground),
            "vref" => load(LoadTo::Reference),
            other => panic!("{}: unknown load {other}", row.place()),
        },
        reference: written("5 V"),
    }
}

/// 03d: volts at a position, and the position behind them.
#[test]
fn a_loaded_potentiometer_reads_as_simulated() {
    let (mut checked, mut loaded) = (0, 0);
    for row in rows_of("03d_potentiometer_loaded.csv") {
        let pot = feedback(&row);
        let meter = row.has("meter_ohm").then(|| ohms(&row, "meter_ohm"));
        let position = row.percent("pos_pct");
        let volts = pot.voltage(position, meter).unwrap_or_else(|e| panic!("{}: {e}", row.place())).volts();
        let at_zero = row.number("V_pin") < 1e-6;
        row.agrees("V_pin", volts, if at_zero { NETLIST_ZERO } else { SIMULATED });
        let ratio = Ratio::new(row.number("V_pin") / 5.0);
        let back = pot.position(ratio, meter).unwrap_or_else(|e| panic!("{}: {e}", row.place()));
        // The file's volts have nine digits.
        row.agrees("pos_pct", 100.0 * back.part(), Absolute(1e-6));
        // The trap of the file: the position as if nothing loaded the wiper.
        let naive = 100.0 * (volts / 5.0 - position.part());
        row.agrees("err_naive_pct_of_Vref", naive, Absolute(0.51e-6));
        loaded += u32::from(pot.load.is_some() || meter.is_some());
        checked += 1;
    }
    assert_eq!((checked, loaded), (120, 105), "every row of 03d");
}

/// Two resistors in series: end resistances keep the wiper off the rails (arithmetic).
#[test]
fn end_resistances_keep_the_wiper_off_the_rails() {
    let pot = Feedback {
        track: written("4900 Ω"),
        ends: Some(written("50 Ω")),
        contact: Some(written("20 Ω")),
        load: None,
        reference: written("5 V"),
    };
    let at = |part| pot.voltage(Ratio::new(part), None).map(|v| v.volts());
    assert!((at(0.0).unwrap() - 0.05).abs() < 1e-12);
    assert!((at(1.0).unwrap() - 4.95).abs() < 1e-12);
    assert_eq!(pot.position(Ratio::new(0.005), None), Err(PositionError::NoSuchReading));
    assert_eq!(at(1.1), Err(PositionError::OffTrack));
    let ohms = pot.ohms(Ratio::new(0.25)).unwrap();
    assert!((ohms.total.ohms() - 5000.0).abs() < 1e-9);
    assert!((ohms.to_low.ohms() - (50.0 + 1225.0 + 20.0)).abs() < 1e-9);
    assert!((ohms.contact().ohms() - 20.0).abs() < 1e-9);
}

/// 10 % and 90 % at the stops: a quarter of the way is 30 % (straight line), there and back.
#[test]
fn percent_positions_run_from_stop_to_stop() {
    let stops = Stops { low: Ratio::new(0.1), high: Ratio::new(0.9) };
    assert!((stops.reading(Ratio::new(0.25)).part() - 0.3).abs() < 1e-12);
    assert!((stops.position(Ratio::new(0.3)).unwrap().part() - 0.25).abs() < 1e-12);
    assert!((stops.position(Ratio::new(0.02)).unwrap().part() + 0.1).abs() < 1e-12);
    let equal = Stops { high: stops.low, ..stops };
    assert_eq!(equal.position(Ratio::new(0.1)), Err(PositionError::StopsEqual));
}

/// Half of the travel between 10 % and 90 % of a 5 kΩ track, as the control unit sees it: a
/// 10 kΩ meter then draws 50 % down by 1250 Ω of source, to 0.5/1.125.
#[test]
fn the_meter_is_not_part_of_the_travel() {
    let pot =
        Feedback {
            track: written("5 kΩ"), ends: None, contact: None, load: None, reference: written("5 V")
        };
    let stops = Stops { low: Ratio::new(0.1), high: Ratio::new(0.9) };
    let half = Ratio::new(0.5);
    let plain = pot.at_travel(half, stops, None).unwrap().part();
    assert!((plain - 0.5).abs() < 1e-12);
    let metered = pot.at_travel(half, stops, Some(written("10 kΩ"))).unwrap().part();
    assert!((metered - 0.5 / 1.125).abs() < 1e-12);
    // Nor of where the wiper stands in a window of exact parts.
    let exact = Feedback { track: exactly(Resistance::from_ohms(5000.0)), ..pot };
    let stop = |part: Ratio| Interval { low: part, high: part };
    let meter = exactly(Resistance::from_ohms(10e3));
    let window = exact.fault_window(None, half, [stop(stops.low), stop(stops.high)], Some(meter));
    let window = window.unwrap().unwrap().ratio.unwrap();
    assert!((window.low.part() - 0.5 / 1.125).abs() < 1e-12);
    assert!((window.high.part() - 0.5 / 1.125).abs() < 1e-12);
}

/// A ladder of the 03 files: 1 kΩ to 5 V, no tolerance.
fn ladder(wiring: Wiring) -> Ladder {
    Ladder { wiring, pull_up: written("1 kΩ"), reference: written("5 V"), contact: None }
}

fn chain(values: &[&str]) -> Vec<Toleranced<Resistance>> {
    values.iter().map(|ohms| written(&format!("{ohms} Ω"))).collect()
}

/// 03e: contacts along a chain, alone, in pairs, and dirty.
#[test]
fn a_resistor_ladder_reads_as_simulated() {
    let ladder = ladder(Wiring::Series { chain: chain(&["150", "220", "390", "680", "1500"]), end: None });
    let mut checked = 0;
    for row in rows_of("03e_resistor_ladder_contacts.csv") {
        let mut contacts = vec![None; ladder.contacts()];
        if row.text("contacts_closed") != "none" {
            for contact in row.text("contacts_closed").split('+') {
                let contact: usize = contact.parse().expect("contacts are numbered");
                contacts[contact] = Some(row.ohms("contact_ohm"));
            }
        }
        let meter = row.has("meter_ohm").then(|| ohms(&row, "meter_ohm"));
        let volts = ladder.voltage(&contacts, meter).unwrap_or_else(|e| panic!("{}: {e}", row.place()));
        row.agrees("V_pin", volts.volts(), SIMULATED);
        checked += 1;
    }
    assert_eq!(checked, 35, "every row of 03e");
}

/// 03f: all sixteen codes of four contacts with a resistor each.
#[test]
fn parallel_coded_contacts_read_as_simulated() {
    let ladder = ladder(Wiring::Parallel { chain: chain(&["150", "220", "390", "680"]) });
    let mut checked = 0;
    for row in rows_of("03f_parallel_coded_contacts.csv") {
        // The file counts in binary: the first resistor is the last digit.
        let closed = row.text("code").chars().rev().map(|digit| digit == '1');
        let contacts: Vec<_> = closed.map(|c| c.then_some(Resistance::from_ohms(0.0))).collect();
        let volts = ladder.voltage(&contacts, None).unwrap_or_else(|e| panic!("{}: {e}", row.place()));
        row.agrees("V_pin", volts.volts(), SIMULATED);
        checked += 1;
    }
    assert_eq!(checked, 16, "every row of 03f");
}
