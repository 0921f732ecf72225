//! What an issue survives: a second person, kill -9, a link out of the folder, a clock that goes
//! back, thousands of papers.

use std::fs;
use std::thread::sleep;
use std::time::Duration;

use bayleaf::register::{Lock, Owner};

use super::shop::Shop;

const ACT: [&str; 7] = ["issue", "--by", "KM", "--why", "pull-up corrected", "--date", "2026-11-20"];

#[test]
fn the_second_person_is_told_who_is_at_it_and_since_when() {
    let shop = Shop::issued();
    shop.correct_pull_up();
    let since = chrono::Local::now().fixed_offset() - chrono::TimeDelta::minutes(7);
    let owner = Owner { who: "rs@bench-2".to_owned(), process: 4711, since };
    let lock = Lock::take(&shop.path().join("specs"), &owner).expect("nobody has it");
    let register = shop.register();
    let told = shop.ends(&ACT, 2);
    assert!(told.contains("in use by rs@bench-2 (process 4711)") && told.contains("7 minutes"), "{told}");
    assert_eq!(shop.register(), register);
    drop(lock);
    shop.done(&ACT);
}

#[test]
fn two_at_once_issue_every_paper_once() {
    let shop = Shop::issued();
    shop.correct_pull_up();
    let mut both =
        [shop.command(&ACT), shop.command(&ACT)].map(|mut command| command.spawn().expect("it starts"));
    let codes = both.each_mut().map(|child| child.wait().expect("it ends").code());
    assert!(codes.contains(&Some(0)), "{codes:?}");
    assert_eq!(shop.register().matches("revision = 2").count(), 19);
    assert_eq!(shop.done(&["status"]).trim(), "as issued: 103");
}

/// Each time killed a little later, until it comes to its end: old state or new one.
#[test]
fn killed_at_any_time_it_leaves_the_old_state_or_the_new_one() {
    let shop = Shop::issued();
    shop.correct_pull_up();
    let old = shop.register();
    let first = fs::read(shop.paper("CUR-EVAP_r1.pdf")).expect("it was issued");
    let (mut kills, mut wait) = (0, 0);
    loop {
        let mut child = shop.command(&ACT).spawn().expect("it starts");
        sleep(Duration::from_millis(wait));
        let has_ended = child.try_wait().expect("it can be asked").is_some();
        // On Unix this is signal 9.
        drop(child.kill());
        child.wait().expect("it ends");
        if shop.register() != old {
            break;
        }
        assert!(!has_ended, "it ended, and issued nothing");
        kills += 1;
        wait += 20;
        let told = shop.ends(&["status"], 3);
        assert!(told.contains("changed: 19"), "{told}");
    }
    assert!(kills >= 5, "{kills}");
    assert_eq!(shop.register().matches("revision = 2").count(), 19, "all of it");
    assert_eq!(shop.done(&["status"]).trim(), "as issued: 103");
    assert_eq!(fs::read(shop.paper("CUR-EVAP_r1.pdf")).ok(), Some(first));
    // One paper of each, one pull list, what `status` keeps; no part of a file.
    let papers = shop.papers();
    let other: Vec<&String> = papers.iter().filter(|name| !name.contains("_r")).collect();
    assert_eq!(other, [".seen", "pull-list_2026-11-20_1.pdf"]);
    assert_eq!(papers.len(), 103 + 19 + 2);
}

/// The system itself refuses to let a file grow, later and later, as a full disk does: without the
/// signal that goes with it a write fails in the middle of a file.
#[cfg(unix)]
#[test]
fn files_that_the_system_does_not_let_grow_leave_all_as_it_was() {
    let shop = Shop::issued();
    shop.correct_pull_up();
    let (register, papers) = (shop.register(), shop.papers());
    let run = |blocks: u32| {
        let limited = format!("trap '' XFSZ; ulimit -f {blocks}; exec \"$0\" \"$@\"");
        let mut command = std::process::Command::new("sh");
        command.current_dir(shop.path()).args(["-c", &limited, env!("CARGO_BIN_EXE_bayleaf")]).args(ACT);
        let output = command.output().expect("it starts");
        (output.status.code(), String::from_utf8_lossy(&output.stderr).into_owned())
    };
    // Blocks of 512 or 1024 bytes, as the shell counts them: a lock, small papers, large ones.
    let mut refused = 0;
    for blocks in [0, 16, 64, 128, 256, 420] {
        let (code, told) = run(blocks);
        if code == Some(0) {
            break;
        }
        refused += 1;
        assert!(code == Some(2) && told.contains("too large"), "{blocks}: {told}");
        assert!((shop.register(), shop.papers()) == (register.clone(), papers.clone()), "{blocks}");
    }
    assert!(refused >= 3, "{refused}");
    assert_eq!(run(1 << 20).0, Some(0));
    assert_eq!(shop.done(&["status"]).trim(), "as issued: 103");
}

/// Folders that nobody may write in, as they are on a disk: an administrator, who may, tries it as a
/// user with no rights.
#[cfg(unix)]
#[test]
fn folders_that_cannot_be_written_in_keep_all_as_it_was() {
    use std::os::unix::fs::PermissionsExt;
    use std::os::unix::process::CommandExt;

    const NOBODY: u32 = 65_534;
    let shop = Shop::issued();
    shop.correct_pull_up();
    let allow = |folder: &str, mode: u32| {
        let allowed = fs::Permissions::from_mode(mode);
        fs::set_permissions(shop.path().join(folder), allowed).expect("it is one's own");
    };
    let (register, papers) = (shop.register(), shop.papers());
    allow("", 0o755);
    allow("out", 0o555);
    allow("out/issued", 0o555);
    allow("specs", 0o555);
    let is_administrator = fs::write(shop.path().join("specs/note"), "").is_ok();
    // Where the binary is built, others may have no way to it.
    let tools = tempfile::tempdir().expect("a temporary folder can be made");
    let tool = tools.path().join("bayleaf");
    fs::copy(env!("CARGO_BIN_EXE_bayleaf"), &tool).expect("it can be copied");
    fs::set_permissions(tools.path(), fs::Permissions::from_mode(0o755)).expect("it is one's own");
    let run = |arguments: &[&str]| {
        let mut command = std::process::Command::new(&tool);
        command.current_dir(shop.path()).args(arguments);
        if is_administrator {
            command.uid(NOBODY).gid(NOBODY);
        }
        let output = command.output().expect("it starts");
        (output.status.code(), String::from_utf8_lossy(&output.stderr).into_owned())
    };
    let as_it_was = || assert!((shop.register(), shop.papers()) == (register.clone(), papers.clone()));
    // Nothing has to be written to say what is due.
    assert_eq!(run(&["status"]).0, Some(3));
    let (code, told) = run(&ACT);
    assert!(code == Some(2) && told.contains("specs") && told.contains("ermission denied"), "{told}");
    as_it_was();
    // The register could be written, its papers not.
    allow("specs", 0o777);
    let (code, told) = run(&ACT);
    assert!(code == Some(2) && told.contains("out/issued") && told.contains("ermission denied"), "{told}");
    as_it_was();
    // And the other way round, with a lock that is there already.
    fs::write(shop.path().join("specs/.register.lock"), "").expect("it can be written");
    fs::set_permissions(shop.path().join("specs/.register.lock"), fs::Permissions::from_mode(0o666))
        .expect("it is one's own");
    allow("specs", 0o555);
    allow("out/issued", 0o777);
    let (code, told) = run(&ACT);
    assert!(code == Some(2) && told.contains("register.toml") && told.contains("ermission denied"), "{told}");
    as_it_was();
    allow("specs", 0o755);
}

#[cfg(unix)]
#[test]
fn a_link_that_leads_out_of_the_folder_is_refused_by_name() {
    let shop = Shop::new();
    let elsewhere = tempfile::tempdir().expect("a temporary folder can be made");
    fs::create_dir_all(shop.path().join("out")).expect("it can be made");
    std::os::unix::fs::symlink(elsewhere.path(), shop.path().join("out/issued")).expect("links can be made");
    let told = shop.ends(&["issue", "CUR-EVAP", "--by", "KM", "--why", "first", "--date", "2026-11-01"], 2);
    assert!(told.contains("issued is a link that leads outside"), "{told}");
    assert_eq!(fs::read_dir(elsewhere.path()).expect("it can be listed").count(), 0);
    assert_eq!(shop.register(), "");
}

#[test]
fn a_clock_that_went_back_is_noticed() {
    let shop = Shop::new();
    let act = |date: &'static str| ["issue", "CUR-EVAP", "--by", "KM", "--why", "first", "--date", date];
    shop.done(&act("2090-01-01"));
    let told = shop.ends(&["issue", "CUR-S3", "--by", "KM", "--why", "first"], 2);
    assert!(told.contains("clock says") && told.contains("2090-01-01"), "{told}");
    shop.correct_pull_up();
    let told = shop.ends(&act("2089-12-31"), 2);
    assert!(told.contains("2089-12-31 is before 2090-01-01, the last entry of CUR-EVAP"), "{told}");
}

#[test]
fn a_name_that_differs_in_case_alone_overwrites_nothing_on_any_disk() {
    let shop = Shop::issued();
    shop.edit("heron/part-cards.toml", "[card.HER-SUN]", "[card.Her-Sun]");
    let told = shop.ends(&["issue", "--by", "KM", "--why", "renamed", "--date", "2026-11-02"], 2);
    assert!(told.contains("Her-Sun and HER-SUN, which was issued before"), "{told}");
    assert_eq!(shop.papers().len(), 103);
}

#[test]
fn the_built_in_set_and_an_unknown_id_are_refused() {
    let empty = tempfile::tempdir().expect("a temporary folder can be made");
    let output = std::process::Command::new(env!("CARGO_BIN_EXE_bayleaf"))
        .current_dir(empty.path())
        .arg("status")
        .output()
        .expect("it starts");
    assert_eq!(output.status.code(), Some(2));
    assert!(String::from_utf8_lossy(&output.stderr).contains("bayleaf new specs"));
    let shop = Shop::new();
    let told = shop.ends(&["issue", "CUR-EVAPP", "--by", "KM", "--why", "first"], 2);
    assert!(told.contains("CUR-EVAP"), "{told}");
    shop.ends(&["issue", "--by", " ", "--why", "first"], 2);
}

/// Three sheets for each of 1,667 vehicles: nothing goes with the square of their number.
#[test]
fn five_thousand_papers_are_no_other_than_a_hundred() {
    let shop = Shop::issued();
    let vehicle = |number| format!("[vehicle.FLEET-{number:04}]\ntitle = \"Van\"\nsystem = \"curlew\"\n\n");
    let vehicles: String = (0..1667).map(vehicle).collect();
    fs::write(shop.path().join("specs/fleet.toml"), vehicles).expect("it can be written");
    let told = shop.ends(&["status"], 3);
    assert!(told.starts_with("new: 5001"), "{}", &told[..told.len().min(400)]);
    let told = shop.done(&["issue", "FLEET-0007", "--by", "KM", "--why", "new", "--date", "2026-11-22"]);
    assert!(told.contains("3 papers issued"), "{told}");
}
