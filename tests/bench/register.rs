//! What keeping papers under control costs: whole processes, as ratios within the run.

use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};
use std::time::Instant;

/// What a value of the evaporator's circuit is changed from, and to: its pull-up resistor.
const PULL_UP: [&str; 2] = ["4.7", "4.8"];
const ROUNDS: usize = 7;
/// So often an issue and the prints that it is held against.
const PAIRS: usize = 15;
/// Vehicles beside the demo's, three papers each: a thousand papers with those of the demo.
const FLEET: usize = 300;

/// Prints a line for each.
pub(crate) fn report() {
    status();
    issue();
}

fn shop() -> tempfile::TempDir {
    let folder = tempfile::tempdir().expect("a temporary folder can be made");
    copy(&Path::new(env!("CARGO_MANIFEST_DIR")).join("specs"), &folder.path().join("specs"));
    folder
}

fn status() {
    let shop = shop();
    let vehicle = |number| format!("[vehicle.FLEET-{number:03}]\ntitle = \"Van\"\nsystem = \"curlew\"\n\n");
    let fleet: String = (0..FLEET).map(vehicle).collect();
    fs::write(shop.path().join("specs/fleet.toml"), fleet).expect("it can be written");
    let first = ran(shop.path(), &["issue", "--by", "KM", "--why", "first", "--date", "2026-11-01"]);
    println!("| `bayleaf issue`, the first, of 1,003 papers | {:.1} s |", first / 1000.0);
    let seen = shop.path().join("out/issued/.seen");
    let fresh = median(|| {
        drop(fs::remove_file(&seen));
        ran(shop.path(), &["status"])
    });
    let again = median(|| ran(shop.path(), &["status"]));
    println!("| `bayleaf status` over these with nothing changed, its kept answer deleted | {fresh:.0} ms |");
    println!("| the same again; part of the aim of 150 ms | {again:.0} ms; {:.2} |", again / 150.0);
}

fn issue() {
    let shop = shop();
    let first = ["issue", "--by", "KM", "--why", "first", "--date", "2026-11-01", "--at", "31 °C"];
    ran(shop.path(), &first);
    correct(shop.path());
    let act = ["issue", "--by", "KM", "--why", "corrected", "--date", "2026-11-02"];
    let changed = tempfile::tempdir().expect("a temporary folder can be made");
    copy(shop.path(), &changed.path().join("before"));
    let again = || {
        let again = tempfile::tempdir().expect("a temporary folder can be made");
        copy(&changed.path().join("before"), again.path());
        again
    };
    let ids = {
        let issued = again();
        ran(issued.path(), &act);
        second_issues(&issued.path().join("out/issued"))
    };
    let print: Vec<&str> = ["print", "--at", "31 °C", "--out", "drafts"]
        .into_iter()
        .chain(ids.iter().map(String::as_str))
        .collect();
    let alone = [&print[..], &["--jobs", "1"]].concat();
    let (mut acts, mut prints) = (Vec::new(), Vec::new());
    // In turns, so that what else the machine does falls on both alike, and so does being the first.
    for pair in 0..PAIRS {
        let again = again();
        let mut issue = || acts.push(ran(again.path(), &act));
        let mut print = || prints.push(ran(shop.path(), &print));
        if pair % 2 == 0 {
            issue();
            print();
        } else {
            print();
            issue();
        }
    }
    let [acts, prints] = [acts, prints].map(middle);
    let one = median(|| ran(shop.path(), &alone));
    println!("| `bayleaf issue` after one resistor changed, {} papers of 103 | {acts:.0} ms |", ids.len());
    println!(
        "| against `print` of these alone, two processes, whose aim is at most 1.3; one process | {:.2}; {:.2} |",
        acts / prints,
        acts / one
    );
}

/// The ids of what was issued the second time.
fn second_issues(folder: &Path) -> Vec<String> {
    let files = fs::read_dir(folder).expect("it was issued");
    let names = files.map(|file| file.expect("it can be listed").file_name());
    names.filter_map(|name| name.to_str()?.strip_suffix("_r2.pdf").map(str::to_owned)).collect()
}

fn correct(folder: &Path) {
    let path = folder.join("specs/curlew/sensors.toml");
    let text = fs::read_to_string(&path).expect("it is a spec of the demo");
    let of = |ohms| {
        format!("resistor = \"{ohms} kΩ ± 1 %\"\nconverter = {{ bits = 10, plausible = \"2 % to 98 %\"")
    };
    let [from, to] = PULL_UP.map(of);
    assert_eq!(text.matches(&from).count(), 1);
    fs::write(path, text.replace(&from, &to)).expect("it can be written");
}

fn command(folder: &Path, arguments: &[&str]) -> Command {
    let mut command = Command::new(env!("CARGO_BIN_EXE_bayleaf"));
    command.current_dir(folder).args(arguments).stdout(Stdio::null()).stderr(Stdio::null());
    command
}

/// Milliseconds of a whole command that ends well.
fn ran(folder: &Path, arguments: &[&str]) -> f64 {
    let started = Instant::now();
    let status = command(folder, arguments).status().expect("the binary of this bench starts");
    assert!(status.success(), "{arguments:?} ended with {status}");
    started.elapsed().as_secs_f64() * 1000.0
}

fn median(mut time: impl FnMut() -> f64) -> f64 {
    middle((0..ROUNDS).map(|_| time()).collect())
}

fn middle(mut times: Vec<f64>) -> f64 {
    times.sort_by(f64::total_cmp);
    times[times.len() / 2]
}

fn copy(from: &Path, to: &Path) {
    fs::create_dir_all(to).expect("folders can be made");
    for entry in fs::read_dir(from).expect("it can be listed") {
        let entry = entry.expect("it can be listed");
        let to = to.join(entry.file_name());
        if entry.path().is_dir() {
            copy(&entry.path(), &to);
        } else {
            fs::copy(entry.path(), to).expect("it can be copied");
        }
    }
}
