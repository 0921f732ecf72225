//! The binary in an empty folder: exit codes, help, whole files or none.

use std::fs;
use std::path::Path;
use std::process::{Command, Output};

use tempfile::TempDir;

#[path = "cli/export.rs"]
mod export;
#[path = "cli/faults.rs"]
mod faults;
#[path = "cli/fit.rs"]
mod fit;
#[path = "cli/import.rs"]
mod import;
#[path = "cli/judge.rs"]
mod judge;
#[path = "cli/new.rs"]
mod new;
#[path = "cli/overrides.rs"]
mod overrides;
#[path = "cli/pictures.rs"]
mod pictures;
#[path = "cli/plot.rs"]
mod plot;
#[path = "cli/sheets.rs"]
mod sheets;
#[path = "cli/shell.rs"]
mod shell;
#[path = "cli/sizes.rs"]
mod sizes;
#[path = "cli/templates.rs"]
mod templates;
#[path = "cli/watch.rs"]
mod watch;

const GOOD: &str = r#"
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
"#;

fn bayleaf(folder: &Path, arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_bayleaf"))
        .current_dir(folder)
        .args(arguments)
        .output()
        .expect("the binary of this test run starts")
}

fn folder() -> TempDir {
    tempfile::tempdir().expect("a temporary folder can be made")
}

fn write(folder: &Path, name: &str, text: impl AsRef<[u8]>) {
    let path = folder.join(name);
    fs::create_dir_all(path.parent().expect("names are below the folder")).expect("folders can be made");
    fs::write(path, text).expect("files can be written");
}

fn errors(output: &Output) -> String {
    String::from_utf8(output.stderr.clone()).expect("findings are UTF-8")
}

fn said(output: &Output) -> String {
    String::from_utf8(output.stdout.clone()).expect("output is UTF-8")
}

#[track_caller]
fn must_contain(text: &str, wanted: &str) {
    assert!(text.contains(wanted), "expected `{wanted}` in:\n{text}");
}

fn names_in(folder: &Path) -> Vec<String> {
    let Ok(entries) = fs::read_dir(folder) else { return Vec::new() };
    let name = |entry: Result<fs::DirEntry, _>| entry.expect("entries can be read").file_name();
    let mut names: Vec<String> = entries.map(|entry| name(entry).to_string_lossy().into_owned()).collect();
    names.sort();
    names
}

/// How many documents the demo set makes.
fn documents() -> usize {
    let set = bayleaf::spec::Set::read(&bayleaf::spec::demo(), &bayleaf::diag::Findings::default());
    let model = bayleaf::model::build(&set).expect("the demo set is whole");
    bayleaf::document::list(&model).len()
}

#[test]
fn without_specs_the_demo_is_printed_and_said_first() {
    let folder = folder();
    let output = bayleaf(folder.path(), &["print", "--at", "31 °C"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    must_contain(said(&output).lines().next().unwrap_or_default(), "demo set built into the program");
    must_contain(&said(&output), &format!("{} documents", documents()));
    assert_eq!(names_in(&folder.path().join("out")).len(), documents());
}

#[test]
fn specs_in_the_usual_folder_are_read() {
    let folder = folder();
    write(folder.path(), "specs/all.toml", GOOD);
    let output = bayleaf(folder.path(), &["print"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    must_contain(&said(&output), "1 document, 4 pages");
    assert_eq!(names_in(&folder.path().join("out")), ["SEN-1.pdf"]);
}

#[test]
fn a_card_whose_back_is_too_full_is_printed_with_a_warning() {
    let folder = folder();
    let step = "\"Measure everything there is to measure, in the order in which it is to be measured. \"";
    let steps = format!("next = [{}]\n\n[card.SEN-1]", vec![step; 30].join(", "));
    write(folder.path(), "specs/all.toml", GOOD.replace("\n[card.SEN-1]", &steps));
    let output = bayleaf(folder.path(), &["print"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    must_contain(&errors(&output), "pages, not 4: its back is too full");
}

#[test]
fn a_set_with_an_error_exits_with_1_and_leaves_earlier_output_untouched() {
    let folder = folder();
    write(folder.path(), "specs/all.toml", GOOD);
    assert_eq!(bayleaf(folder.path(), &["print"]).status.code(), Some(0));
    let before = fs::read(folder.path().join("out/SEN-1.pdf")).expect("the card was printed");
    write(folder.path(), "specs/all.toml", GOOD.replace("3500 K", "35 K"));
    let output = bayleaf(folder.path(), &["print"]);
    assert_eq!(output.status.code(), Some(1));
    must_contain(&errors(&output), "specs/all.toml:14:71");
    must_contain(&errors(&output), "nothing was written");
    assert_eq!(fs::read(folder.path().join("out/SEN-1.pdf")).ok(), Some(before));
}

#[test]
fn a_set_with_an_error_does_not_even_make_the_folder() {
    let folder = folder();
    write(folder.path(), "specs/all.toml", "[shop]\ntitle = 3\n");
    assert_eq!(bayleaf(folder.path(), &["print"]).status.code(), Some(1));
    assert!(!folder.path().join("out").exists());
}

#[test]
fn files_that_are_no_specs_are_findings() {
    let folder = folder();
    fs::create_dir(folder.path().join("empty")).expect("folders can be made");
    let output = bayleaf(folder.path(), &["check", "--specs", "empty"]);
    assert_eq!(output.status.code(), Some(1));
    must_contain(&errors(&output), "no spec in `empty`");

    let output = bayleaf(folder.path(), &["check", "--specs", "nowhere"]);
    assert_eq!(output.status.code(), Some(1));
    must_contain(&errors(&output), "nowhere");

    write(folder.path(), "latin/a.toml", b"[shop]\ntitle = \"B\xfcro\"\npaper = \"A4\"\n");
    let output = bayleaf(folder.path(), &["check", "--specs", "latin"]);
    assert_eq!(output.status.code(), Some(1));
    must_contain(&errors(&output), "byte 0xFC is not UTF-8 text");
    must_contain(&errors(&output), "latin/a.toml:2:11");

    write(folder.path(), "large/a.toml", "# a comment that goes on\n".repeat(400_000));
    let output = bayleaf(folder.path(), &["check", "--specs", "large"]);
    assert_eq!(output.status.code(), Some(1));
    must_contain(&errors(&output), "file of 10.0 MB is too large");

    write(folder.path(), "file.toml", GOOD);
    let output = bayleaf(folder.path(), &["check", "--specs", "file.toml"]);
    assert_eq!(output.status.code(), Some(1));
    must_contain(&errors(&output), "is not a folder");
}

#[cfg(unix)]
#[test]
fn a_loop_of_links_is_a_finding_and_ends() {
    let folder = folder();
    write(folder.path(), "specs/all.toml", GOOD);
    std::os::unix::fs::symlink("..", folder.path().join("specs/up")).expect("links can be made");
    let output = bayleaf(folder.path(), &["check", "--specs", "specs"]);
    assert_eq!(output.status.code(), Some(1));
    must_contain(&errors(&output), "cannot read this");
}

#[test]
fn a_folder_that_cannot_be_written_exits_with_2() {
    let folder = folder();
    write(folder.path(), "specs/all.toml", GOOD);
    write(folder.path(), "out", "a file where the folder should be");
    let output = bayleaf(folder.path(), &["print"]);
    assert_eq!(output.status.code(), Some(2));
    must_contain(&errors(&output), "cannot write to `out`");
    assert_eq!(fs::read(folder.path().join("out")).ok(), Some(b"a file where the folder should be".to_vec()));
}

#[test]
fn a_file_that_cannot_be_replaced_exits_with_2_and_leaves_no_parts() {
    let folder = folder();
    write(folder.path(), "specs/all.toml", GOOD);
    write(folder.path(), "out/SEN-1.pdf/inside", "a folder where the file should be");
    let output = bayleaf(folder.path(), &["print"]);
    assert_eq!(output.status.code(), Some(2));
    must_contain(&errors(&output), "`SEN-1` was not printed");
    assert_eq!(names_in(&folder.path().join("out")), ["SEN-1.pdf"]);
}

#[test]
fn one_job_and_two_and_all_shares_give_the_same_bytes() {
    let folder = folder();
    let date = ["--at", "31 °C", "--date", "2026-11-24"];
    let print = |arguments: &[&str]| {
        let output = bayleaf(folder.path(), &[&["print"], &date[..], arguments].concat());
        assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    };
    print(&["--out", "one", "--jobs", "1"]);
    print(&["--out", "two", "--jobs", "2"]);
    for share in ["1/3", "2/3", "3/3"] {
        print(&["--out", "shares", "--shard", share, "--jobs", "2"]);
    }
    let names = names_in(&folder.path().join("one"));
    assert_eq!(names.len(), documents());
    for other in ["two", "shares"] {
        assert_eq!(names_in(&folder.path().join(other)), names);
        for name in &names {
            let bytes = |run: &str| fs::read(folder.path().join(run).join(name)).expect("it was printed");
            assert!(bytes("one") == bytes(other), "{name} differs between one and {other}");
        }
    }
}

#[test]
fn documents_are_named_by_their_own_id_their_sheet_or_their_vehicle() {
    let folder = folder();
    let printed = |ids: &[&str]| {
        let output = bayleaf(folder.path(), &[&["print", "--out", "some"], ids].concat());
        assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
        let names = names_in(&folder.path().join("some"));
        fs::remove_dir_all(folder.path().join("some")).expect("it was made just now");
        names
    };
    assert_eq!(printed(&["CUR-EVAP"]), ["CUR-EVAP.pdf"]);
    let of_vehicle = printed(&["AMB-12"]);
    assert!(of_vehicle.contains(&"CUR-SENSORS.AMB-12.pdf".to_owned()), "{of_vehicle:?}");
    assert!(of_vehicle.iter().all(|name| name.ends_with(".AMB-12.pdf")), "{of_vehicle:?}");
    assert_eq!(printed(&["HER-SENSORS"]).len(), 3);
    let output = bayleaf(folder.path(), &["print", "CUR-EVPA"]);
    assert_eq!(output.status.code(), Some(2));
    must_contain(&errors(&output), "did you mean `CUR-EVAP`?");
}

#[test]
fn the_table_has_the_agreed_columns_and_is_not_rounded() {
    let folder = folder();
    let arguments = ["table", "curlew-evaporator", "--from", "31 °C", "--to", "31 °C", "--format"];
    let csv = bayleaf(folder.path(), &[&arguments[..], &["csv"]].concat());
    let text = said(&csv);
    let lines: Vec<&str> = text.lines().collect();
    assert_eq!(
        lines[0],
        "temperature_c,temperature_f,resistance_min_ohm,resistance_nom_ohm,resistance_max_ohm,\
         voltage_min_v,voltage_nom_v,voltage_max_v,ratio_min,ratio_nom,ratio_max,slope_percent_per_k,\
         count,count_step_k,self_heating_still_k,self_heating_moving_k"
    );
    let values: Vec<f64> = lines[1].split(',').map(|cell| cell.parse().expect("a number")).collect();
    // 2200 Ω exp[3500 K (1/304.15 K − 1/298.15 K)], worked in another language; 4.7 kΩ pull-up.
    assert!((values[3] - 1_745.218_392_1).abs() < 1e-6, "{}", values[3]);
    assert!((values[6] - 5.0 * values[3] / (values[3] + 4700.0)).abs() < 1e-12);
    assert!(lines[1].len() > 150, "unrounded numbers are long: {}", lines[1]);
    let json = bayleaf(folder.path(), &[&arguments[..], &["json"]].concat());
    let rows: serde_json::Value = serde_json::from_str(&said(&json)).expect("valid JSON");
    assert_eq!(rows[0]["resistance_nom_ohm"].as_f64(), Some(values[3]));
    assert_eq!(lines[0].split(',').count(), rows[0].as_object().expect("a row").len());
}

#[test]
fn a_table_beyond_the_curve_is_refused() {
    let folder = folder();
    let output = bayleaf(folder.path(), &["table", "heron-cabin", "--to", "41 °C"]);
    assert_eq!(output.status.code(), Some(2));
    must_contain(&errors(&output), "lies outside the range of `heron-cabin`, 0 °C to 40 °C");
}

#[test]
fn arguments_without_a_unit_are_refused() {
    let folder = folder();
    for arguments in [["print", "--at", "31"], ["print", "--shard", "3/2"], ["print", "--at", "-300 °C"]] {
        let output = bayleaf(folder.path(), &arguments);
        assert_eq!(output.status.code(), Some(2), "{arguments:?}");
        must_contain(&errors(&output), "expected a");
    }
}

#[test]
fn help_of_every_command_has_an_example_and_the_exit_codes() {
    let folder = folder();
    let help = said(&bayleaf(folder.path(), &["--help"]));
    must_contain(&help, "Exit codes: 0 done; 1 the specs have errors");
    for command in ["print", "check", "table", "faults", "judge", "fit"] {
        must_contain(&said(&bayleaf(folder.path(), &[command, "--help"])), "Example: bayleaf");
    }
}

#[cfg(target_os = "linux")]
#[test]
fn output_that_cannot_be_written_exits_with_2_and_a_closed_pipe_is_no_failure() {
    let folder = folder();
    let table = |output: std::process::Stdio| {
        let arguments = ["table", "curlew-cabin", "--step", "0.01 K", "--format", "csv"];
        let mut command = Command::new(env!("CARGO_BIN_EXE_bayleaf"));
        command
            .current_dir(folder.path())
            .args(arguments)
            .stdout(output)
            .stderr(std::process::Stdio::piped());
        command.spawn().expect("the binary of this test run starts")
    };
    let full = fs::OpenOptions::new().write(true).open("/dev/full").expect("Linux has it");
    let output = table(full.into()).wait_with_output().expect("it ends");
    assert_eq!(output.status.code(), Some(2));
    must_contain(&errors(&output), "cannot write the output: no space left on device");

    let mut child = table(std::process::Stdio::piped());
    drop(child.stdout.take());
    assert_eq!(child.wait().expect("it ends").code(), Some(0));
}

#[cfg(unix)]
#[test]
fn a_reader_that_is_gone_stops_no_printing() {
    let folder = folder();
    let mut command = Command::new(env!("CARGO_BIN_EXE_bayleaf"));
    command.current_dir(folder.path()).args(["print", "--jobs", "1"]).stdout(std::process::Stdio::piped());
    let mut child = command.spawn().expect("the binary of this test run starts");
    drop(child.stdout.take());
    assert_eq!(child.wait().expect("it ends").code(), Some(0));
    assert_eq!(names_in(&folder.path().join("out")).len(), documents());
}

#[test]
fn what_is_missing_or_without_a_source_is_counted() {
    let folder = folder();
    let output = bayleaf(folder.path(), &["check"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    must_contain(&said(&output), "  sensor.curlew-coolant.service_limit");
    must_contain(&said(&output), "  sensor.heron-line.tolerance");
    // The count is that of the lists above it.
    let listed = said(&output).lines().filter(|line| line.starts_with("  ")).count();
    let counted = |word: &str| {
        let sum = said(&output).lines().last().unwrap_or_default().to_owned();
        let words: Vec<String> = sum.split_whitespace().map(str::to_owned).collect();
        let at = words.windows(3).position(|three| three[1] == "values" && three[2] == word);
        at.and_then(|at| words[at].parse::<usize>().ok()).unwrap_or_default()
    };
    assert_eq!((counted("without"), counted("without") + counted("NOT")), (3, listed));
}

#[test]
fn findings_and_answers_are_in_the_shop_s_language_unless_another_is_asked_for() {
    let folder = folder();
    let spanish = GOOD.replace("paper =", "language = \"es\"\npaper =");
    write(folder.path(), "specs/all.toml", &spanish);
    let checked = |arguments: &[&str]| said(&bayleaf(folder.path(), arguments));
    assert!(checked(&["check"]).contains("sin errores"), "{}", checked(&["check"]));
    assert!(checked(&["check", "--language", "en"]).contains("no errors"));
    write(folder.path(), "specs/all.toml", spanish.replace("A4", "A9"));
    let broken = bayleaf(folder.path(), &["check"]);
    assert_eq!(broken.status.code(), Some(1));
    assert!(errors(&broken).contains("no se ha escrito nada"), "{}", errors(&broken));
    let unknown = bayleaf(folder.path(), &["check", "--language", "spanisch"]);
    assert_eq!(unknown.status.code(), Some(2));
    assert!(errors(&unknown).contains("did you mean es?"), "{}", errors(&unknown));
}

#[test]
fn seconds_have_the_decimal_mark_of_the_language() {
    let folder = folder();
    write(folder.path(), "specs/set.toml", GOOD);
    for (code, mark) in [("en", '.'), ("de", ','), ("fr", ','), ("es", ',')] {
        let output = bayleaf(folder.path(), &["print", "--language", code, "SEN-1"]);
        let said = String::from_utf8_lossy(&output.stdout).into_owned();
        let before = said.split(" s").next().expect("seconds are told");
        let number = before.rsplit(' ').next().expect("seconds are a number");
        assert!(number.contains(mark), "{code}: {said}");
    }
}
