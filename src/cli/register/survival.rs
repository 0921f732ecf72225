//! An issue on a disk that fails, or a process that ends, at every single step.

use std::fs;
use std::io::ErrorKind;
use std::path::Path;

use clap::Parser;

use super::issue::issue;
use crate::cli::args::{Arguments, Command};
use crate::cli::outcome::Outcome;
use crate::register::{Disk, Trouble};

const SPECS: &str = r#"
[shop]
title = "Saltmarsh Rescue"
paper = "A4"

[system.gull]
title = "Gull"
reference = "5.00 V ± 2 %"

[sensor.cabin]
title = "Cabin air"
system = "gull"
range = "-20 °C to 60 °C"
curve = { model = "beta", resistance = "2.2 kΩ", at = "25 °C", beta = "3500 K" }
tolerance = { resistance = "3 %", beta = "1.5 %" }
circuit = { topology = "pull-up", resistor = "4.7 kΩ ± 1 %" }

[card.SEN-1]
sensor = "cabin"

[card.SEN-2]
sensor = "cabin"
"#;

fn run(folder: &Path, date: &str, disk: &Disk) -> Outcome {
    let (specs, out) = (folder.join("specs"), folder.join("out"));
    let (specs, out) = (specs.to_string_lossy(), out.to_string_lossy());
    let act =
        ["bayleaf", "issue", "--by", "KM", "--why", "w", "--date", date, "--specs", &specs, "--out", &out];
    let Command::Issue(arguments) = Arguments::parse_from(act).command else { panic!("it is an issue") };
    issue(&arguments, None, disk).unwrap_or_else(|outcome| outcome)
}

fn register(folder: &Path) -> String {
    fs::read_to_string(folder.join("specs/register.toml")).unwrap_or_default()
}

fn papers(folder: &Path) -> Vec<String> {
    let entries = fs::read_dir(folder.join("out/issued")).expect("it was made");
    let mut names: Vec<String> =
        entries.map(|entry| entry.expect("listed").file_name().to_string_lossy().into_owned()).collect();
    names.sort();
    names
}

/// A set of which the first revision is issued, and one value then changed.
fn changed() -> tempfile::TempDir {
    let folder = tempfile::tempdir().expect("a temporary folder can be made");
    fs::create_dir(folder.path().join("specs")).expect("it can be made");
    let spec = folder.path().join("specs/a.toml");
    fs::write(&spec, SPECS).expect("it can be written");
    assert_eq!(run(folder.path(), "2026-11-01", &Disk::default()), Outcome::Done);
    let text = fs::read_to_string(&spec).expect("it was written").replace("4.7 kΩ", "4.8 kΩ");
    fs::write(&spec, text).expect("it can be written");
    folder
}

#[test]
fn wherever_an_issue_fails_or_ends_it_is_the_old_state_or_the_new_one() {
    let folder = changed();
    let sound = Disk::default();
    assert_eq!(run(folder.path(), "2026-11-02", &sound), Outcome::Done);
    let (steps, new, all) = (sound.steps(), register(folder.path()), papers(folder.path()));
    assert!(steps > 20, "{steps}");
    let of_kind = |at| {
        [
            Trouble::Ends(at),
            Trouble::Fails(at, ErrorKind::StorageFull),
            Trouble::Fails(at, ErrorKind::PermissionDenied),
        ]
    };
    for trouble in (1..=steps).flat_map(of_kind) {
        let folder = changed();
        let (path, old) = (folder.path(), register(folder.path()));
        let first = fs::read(path.join("out/issued/SEN-1_r1.pdf")).expect("it was issued");
        assert_eq!(run(path, "2026-11-02", &Disk::troubled(trouble)), Outcome::Failed, "{trouble:?}");
        let found = register(path);
        assert!(found == old || found == new, "{trouble:?}: half a register");
        // The next run makes it whole, with no trace of what was left.
        assert_eq!(run(path, "2026-11-02", &Disk::default()), Outcome::Done, "{trouble:?}");
        assert_eq!(register(path), new, "{trouble:?}");
        assert_eq!(fs::read(path.join("out/issued/SEN-1_r1.pdf")).ok(), Some(first), "{trouble:?}");
        let parts = papers(path).into_iter().filter(|name| name.starts_with(".bayleaf-")).count();
        assert!(parts == 0 || found == new, "{trouble:?}: {parts} parts");
        let whole: Vec<String> = papers(path).into_iter().filter(|name| !name.starts_with('.')).collect();
        assert_eq!(whole, all, "{trouble:?}");
    }
}
