//! Milliseconds of a whole command, from the start of its process to its end.

use std::process::{Command, Stdio};
use std::time::Instant;

const RUNS: usize = 41;

/// Prints a line for each command, on the demo set.
pub(crate) fn report() {
    let judge = ["judge", "heron-evaporator", "--reading", "1.42 V", "--at", "31 °C"];
    let pair = [&judge[..], &["--second", "2.6 V@5 °C"]].concat();
    let faults = ["faults", "heron-evaporator", "--at", "31 °C"];
    let nothing = ["--version"];
    let runs: [(&str, &[&str]); 4] = [
        ("`bayleaf --version`: the process alone", &nothing),
        ("`bayleaf judge`, one reading", &judge),
        ("`bayleaf judge`, two readings", &pair),
        ("`bayleaf faults`, every fault at one temperature", &faults),
    ];
    for (name, arguments) in runs {
        println!("| {name}: median of {RUNS} processes | {:.1} ms |", median(arguments));
    }
}

fn median(arguments: &[&str]) -> f64 {
    let scratch = tempfile::tempdir().expect("a temporary folder can be made");
    let time = |_| {
        let started = Instant::now();
        // Without a folder of specs the demo set is read.
        let status = Command::new(env!("CARGO_BIN_EXE_bayleaf"))
            .current_dir(scratch.path())
            .args(arguments)
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .status()
            .expect("the binary of this bench starts");
        assert!(status.success(), "{arguments:?} ended with {status}");
        started.elapsed().as_secs_f64() * 1000.0
    };
    let mut times: Vec<f64> = (0..RUNS).map(time).collect();
    times.sort_by(f64::total_cmp);
    times[RUNS / 2]
}
