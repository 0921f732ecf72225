//! From a saved spec to its new picture, through the running `watch`; and what printing on
//! sheets costs beside the plain print.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use bayleaf::spec;

use super::{ROUNDS, print};

/// How often a spec is saved.
const SAVES: usize = 21;

/// From look to look at the picture.
const LOOK: Duration = Duration::from_millis(1);

/// Longer than any save may take.
const PATIENCE: Duration = Duration::from_secs(60);

/// The card whose picture is waited for, and the file that its sensor stands in.
const CARD: &str = "CUR-EVAP";
const FILE: &str = "specs/curlew/sensors.toml";

/// Prints a line for each.
pub(super) fn report() {
    let scratch = tempfile::tempdir().expect("a temporary folder can be made");
    for (path, text) in spec::DEMO {
        let path = scratch.path().join("specs").join(path);
        fs::create_dir_all(path.parent().expect("it lies in a folder")).expect("it can be made");
        fs::write(path, text).expect("the demo set can be written");
    }
    watch(scratch.path());
    sheets(scratch.path());
}

/// Saves the demo set's sensors with another B value of the card's own, again and again.
fn watch(folder: &Path) {
    let file = folder.join(FILE);
    let one = fs::read_to_string(&file).expect("it was written");
    let other = one.replacen("beta = \"3500 K\"", "beta = \"3510 K\"", 1);
    assert_ne!(one, other, "the first sensor has that B value");
    let watching = Watching::start(folder);
    let saved = |text: &str| {
        let before = watching.picture();
        let started = Instant::now();
        fs::write(&file, text).expect("it can be saved");
        watching.wait_for(|now| *now != before);
        started.elapsed().as_secs_f64() * 1000.0
    };
    let mut times: Vec<f64> =
        (0..SAVES).map(|save| saved(if save % 2 == 0 { &other } else { &one })).collect();
    times.sort_by(f64::total_cmp);
    println!(
        "| `watch`: saved spec of the demo to the new picture of a sensor card, four sides at the usual \
         resolution: median; worst of {SAVES} | {:.0} ms; {:.0} ms |",
        times[SAVES / 2],
        times[SAVES - 1]
    );
}

/// A running `watch` of one card; ends with the value.
struct Watching {
    process: Child,
    picture: PathBuf,
}

impl Watching {
    fn start(folder: &Path) -> Self {
        let process = Command::new(env!("CARGO_BIN_EXE_bayleaf"))
            .current_dir(folder)
            .args(["watch", CARD, "--date", "2026-11-24", "--out", "pictures"])
            .stdout(Stdio::null())
            .stderr(Stdio::null())
            .spawn()
            .expect("the binary of this bench starts");
        let picture = folder.join("pictures").join(CARD).with_extension("png");
        let watching = Self { process, picture };
        watching.wait_for(Option::is_some);
        watching
    }

    /// When the picture was written: it is put in its place whole.
    fn picture(&self) -> Option<(std::time::SystemTime, u64)> {
        let about = fs::metadata(&self.picture).ok()?;
        Some((about.modified().ok()?, about.len()))
    }

    fn wait_for(&self, is_due: impl Fn(&Option<(std::time::SystemTime, u64)>) -> bool) {
        let started = Instant::now();
        while !is_due(&self.picture()) {
            assert!(started.elapsed() < PATIENCE, "no new picture of {CARD}");
            std::thread::sleep(LOOK);
        }
    }
}

impl Drop for Watching {
    fn drop(&mut self) {
        drop(self.process.kill());
        drop(self.process.wait());
    }
}

/// Cards of the demo printed plain and on sheets, turn about.
fn sheets(scratch: &Path) {
    let seconds = |arguments: &[&str]| {
        let started = Instant::now();
        let status = print(scratch, arguments).wait().expect("it can be waited for");
        assert!(status.success(), "{arguments:?} ended with {status}");
        started.elapsed().as_secs_f64()
    };
    let mut best = [f64::MAX; 2];
    for _ in 0..ROUNDS {
        for (best, more) in best.iter_mut().zip([&[][..], &["--sheet", "A4"]]) {
            *best = best.min(seconds(&[&["--jobs", "1"], more].concat()));
        }
    }
    let [plain, on_sheets] = best;
    println!(
        "| the demo plain, one process; with `--sheet A4`; ratio, whose aim is at most 1.15 | {plain:.2} s; \
         {on_sheets:.2} s; {:.2} |",
        on_sheets / plain
    );
}
