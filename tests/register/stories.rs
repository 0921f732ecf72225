//! What happens to a workshop's papers, told from first issue to last, with given dates.

use std::fs;
use std::process::Command;

use serde_json::Value;

use super::shop::Shop;
use crate::reader::text_of;
use crate::squeezed;

/// Every paper that shows the evaporator's pull-up resistor or what is computed from it, by hand:
/// its four cards, both connectors, the compressor request that it decides, the checklist that
/// asks for it; and of each of the four vehicles the sheet that prints it, the report with its
/// window, and the sheet of parts that the request stands on.
fn of_the_pull_up() -> Vec<String> {
    let mut ids: Vec<String> =
        ["CUR-C2", "CUR-EVAP", "CUR-EVAP-STRIP", "CUR-EVAP-WALL", "CUR-NO-COLD", "CUR-REQUEST", "CUR-S3"]
            .map(str::to_owned)
            .to_vec();
    for sheet in ["CUR-PARTS", "CUR-SENSORS", "CUR-REPORT"] {
        ids.extend([11, 12, 14, 15].map(|number| format!("{sheet}.AMB-{number}")));
    }
    ids.sort();
    ids
}

/// The ids that `issue` names with a revision.
fn issued(told: &str, revision: &str) -> Vec<String> {
    let of = |line: &str| {
        let mut words = line.split_whitespace();
        let id = words.next()?.to_owned();
        (words.next()? == revision && line.ends_with(".pdf")).then_some(id)
    };
    let mut ids: Vec<String> = told.lines().filter_map(of).collect();
    ids.sort();
    ids
}

#[test]
fn after_the_first_issue_nothing_is_due_and_nothing_is_written() {
    let shop = Shop::issued();
    assert_eq!(shop.papers().len(), 103, "one each, no pull list, no part, no index");
    let register = shop.register();
    for _ in 0..2 {
        // The second time from what was kept.
        assert_eq!(shop.done(&["status"]).trim(), "as issued: 103");
    }
    let told = shop.done(&["issue", "--by", "KM", "--why", "again", "--date", "2026-11-02"]);
    assert!(told.contains("Nothing is due"), "{told}");
    assert_eq!(shop.register(), register);
}

#[test]
fn a_corrected_pull_up_reissues_exactly_what_shows_it_and_says_where_to_take_down_what() {
    let shop = Shop::issued();
    let held = ["holders", "add", "CUR-EVAP", "--holder", "Bay 3", "--place", "wall", "--date", "2026-11-02"];
    shop.done(&held);
    shop.correct_pull_up();
    let status = shop.ends(&["status"], 3);
    assert!(status.contains("changed: 19"), "{status}");
    assert!(status.contains("sensor.curlew-evaporator.circuit.resistor: 4.7 kΩ ± 1 % → 4.8 kΩ ± 1 %"));
    assert!(status.contains("0, V, min: 2.765 → 2.740, by 25 in the last digit"), "{status}");
    assert!(status.contains("held: Bay 3, wall (r1)") && status.contains("as issued: 84"), "{status}");
    assert!(status.contains("4 vehicles have sheets with old figures"), "{status}");
    let act = ["issue", "--by", "KM", "--why", "pull-up corrected", "--date", "2026-11-20"];
    let plan = shop.done(&[&act[..], &["--dry-run"]].concat());
    assert!(
        plan.contains("19 papers would be issued") && plan.contains("take down CUR-EVAP r1: wall, Bay 3")
    );
    assert_eq!(shop.papers().len(), 103, "a plan writes nothing");
    let before = fs::read(shop.paper("CUR-EVAP_r1.pdf")).expect("it was issued");
    let told = shop.done(&act);
    assert_eq!(issued(&told, "r2"), of_the_pull_up());
    assert_eq!(shop.papers().len(), 103 + 19 + 1, "{:?}", shop.papers());
    assert_eq!(fs::read(shop.paper("CUR-EVAP_r1.pdf")).ok(), Some(before), "what was issued stays");
    assert_eq!(shop.done(&["status"]).trim(), "as issued: 103");
    let outdated = shop.done(&["holders", "list", "--outdated"]);
    assert!(outdated.contains("CUR-EVAP r1: Bay 3, wall, since 2026-11-02; out of date, r2 is valid"));
    shop.done(&["holders", "return", "--date", "2026-11-21"]);
    assert!(shop.done(&["holders", "list", "--outdated"]).contains("No copy is held"));
    // From the printed code, and from the file.
    let old = shop.ends(&["verify", "CUR-EVAP", "r1"], 1);
    assert!(old.contains("superseded by r2 since 2026-11-20, by KM: pull-up corrected"), "{old}");
    assert!(shop.done(&["verify", "out/issued/CUR-EVAP_r2.pdf"]).contains("is the valid one"));
    let unknown = shop.ends(&["verify", "AAAA-AAAA"], 1);
    assert!(unknown.contains("unknown"), "{unknown}");
}

/// The keys that JSON names behind a document.
fn keys(status: &Value, id: &str) -> Vec<String> {
    let documents = status["documents"].as_array().expect("a list");
    let found = documents.iter().find(|document| document["id"] == id).expect("it is listed");
    let because = found["because"].as_array().into_iter().flatten();
    because.map(|one| one["key"].as_str().expect("a key").to_owned()).collect()
}

#[test]
fn of_two_changed_values_each_paper_names_those_that_moved_it() {
    let shop = Shop::issued();
    shop.correct_pull_up();
    let text = fs::read_to_string(shop.path().join("specs/curlew/sensors.toml")).expect("it is there");
    // The first sensor of the file is the evaporator's, which the checks of others cite.
    let text = text.replacen("beta = \"3500 K\"", "beta = \"3510 K\"", 1);
    fs::write(shop.path().join("specs/curlew/sensors.toml"), text).expect("it can be written");
    let status: Value = serde_json::from_str(&shop.ends(&["status", "--format", "json"], 3)).expect("JSON");
    let (resistor, beta) =
        ("sensor.curlew-evaporator.circuit.resistor", "sensor.curlew-evaporator.curve.beta");
    assert_eq!(keys(&status, "CUR-EVAP"), [resistor, beta]);
    assert_eq!(keys(&status, "CUR-C2"), [resistor], "a connector card shows no curve");
    assert_eq!(keys(&status, "CUR-CABIN"), [beta], "its swapped neighbour's curve, not its circuit");
    assert_eq!(keys(&status, "HER-EVAP"), [""; 0]);
    let moved = status["documents"].as_array().expect("a list").iter();
    let moved = moved.flat_map(|document| document["cells"].as_array().into_iter().flatten());
    assert!(moved.clone().count() > 100 && moved.clone().all(|cell| cell["key"].is_string()));
}

/// Whatever the number of threads, and in whatever order papers are done: every byte is the same.
#[test]
fn one_thread_and_four_issue_the_same_to_the_byte() {
    let act = ["issue", "CUR-EVAP", "CUR-SENSORS", "--by", "KM", "--why", "first", "--date", "2026-11-01"];
    let issued = ["1", "4"].map(|threads| {
        let shop = Shop::new();
        let run = shop.command(&act).env("RAYON_NUM_THREADS", threads).output().expect("it starts");
        assert!(run.status.success());
        let papers = shop.papers();
        assert_eq!(papers.len(), 5, "a card, and the sheet of four vehicles");
        let bytes: Vec<Vec<u8>> =
            papers.iter().map(|name| fs::read(shop.paper(name)).expect("it was issued")).collect();
        (shop.register(), papers, bytes)
    });
    let [one, four] = issued;
    assert_eq!(one.0, four.0, "the register");
    assert_eq!(one.1, four.1);
    assert!(one.2 == four.2, "the papers");
}

#[test]
fn of_a_lost_paper_nobody_says_what_changed() {
    let shop = Shop::issued();
    shop.correct_pull_up();
    fs::remove_file(shop.paper("CUR-S3_r1.pdf")).expect("it was issued");
    // Another's paper in its place says nothing of it either.
    fs::copy(shop.paper("HER-SUN_r1.pdf"), shop.paper("CUR-C2_r1.pdf")).expect("it was issued");
    // Of the one that is missing a warning is told beside it.
    let status = shop.run(&["status", "--format", "json"]).stdout;
    let status: Value = serde_json::from_slice(&status).expect("JSON");
    for id in ["CUR-S3", "CUR-C2"] {
        assert_eq!(keys(&status, id), [""; 0], "{id}");
    }
    assert!(shop.ends(&["status"], 3).contains("which figures changed cannot be said"));
    shop.done(&["issue", "CUR-S3", "--by", "KM", "--why", "pull-up", "--date", "2026-11-20"]);
    let text = text_of(&fs::read(shop.paper("CUR-S3_r2.pdf")).expect("it was issued"));
    assert!(text.contains(&squeezed("Reissued since r1; what changed is not known")), "{text}");
}

#[test]
fn a_lost_paper_is_told_while_nothing_else_changed_and_until_it_is_back() {
    let shop = Shop::issued();
    shop.done(&["status"]);
    let kept = fs::read(shop.paper("CUR-S3_r1.pdf")).expect("it was issued");
    fs::remove_file(shop.paper("CUR-S3_r1.pdf")).expect("it was issued");
    let told = |shop: &Shop| String::from_utf8(shop.run(&["status"]).stderr).expect("UTF-8");
    for _ in 0..2 {
        assert!(told(&shop).contains("One issued paper is missing from out/issued (CUR-S3_r1.pdf)"), "told");
    }
    fs::write(shop.paper("CUR-S3_r1.pdf"), kept).expect("it can be written");
    assert_eq!(told(&shop), "");
    fs::remove_dir_all(shop.path().join("out")).expect("it was issued into");
    let all = told(&shop);
    assert!(all.contains("issued papers are missing") && all.contains(", …)"), "{all}");
}

#[test]
fn the_index_says_which_revision_is_valid() {
    let shop = Shop::issued();
    shop.correct_pull_up();
    let act = ["--by", "KM", "--date", "2026-11-20"];
    shop.done(&[&["issue", "CUR-EVAP", "--why", "pull-up"][..], &act].concat());
    shop.done(&[&["withdraw", "HER-SUN", "--why", "not used"][..], &act].concat());
    // In whatever units and at whatever temperature the index itself is printed.
    shop.done(&["print", "SET.INDEX", "--format", "json", "--units", "US", "--at", "20 °C"]);
    let index = fs::read(shop.path().join("out/SET.INDEX.json")).expect("it was printed");
    let index: Value = serde_json::from_slice(&index).expect("JSON");
    let issue = |id: &str| {
        let mut rows = index["documents"]["rows"].as_array().expect("rows").iter();
        rows.find(|row| row[0] == id).map(|row| row[5].as_str().expect("a text").to_owned())
    };
    assert!(issue("CUR-EVAP").is_some_and(|issue| issue.starts_with("r2 ")), "{:?}", issue("CUR-EVAP"));
    assert!(issue("HER-EVAP").is_some_and(|issue| issue.starts_with("r1 ")));
    assert_eq!(issue("CUR-S3").as_deref(), Some("r1, changed"));
    assert_eq!(issue("HER-SUN").as_deref(), Some("withdrawn"));
}

#[test]
fn the_register_changes_by_additions_alone() {
    let shop = Shop::issued();
    let before = shop.register();
    shop.correct_pull_up();
    shop.done(&["issue", "CUR-EVAP", "--by", "KM", "--why", "pull-up", "--date", "2026-11-20"]);
    let after = shop.register();
    let mut rest = after.lines();
    assert!(before.lines().all(|line| rest.any(|other| other == line)), "a line is gone or moved");
    assert!(after.contains(
        "revision = 2\ndate = 2026-11-20\nby = \"KM\"\nwhy = \"pull-up\"\npull-list = \"2026-11-20/1\""
    ));
    assert!(shop.ends(&["status"], 3).contains("changed: 18"), "the others are still due");
}

#[test]
fn another_layout_changes_no_revision_until_somebody_wants_it() {
    let shop = Shop::issued();
    shop.done(&["templates", "--write", "own"]);
    let theme = shop.path().join("own/theme.typ");
    let text = fs::read_to_string(&theme).expect("it was written");
    fs::write(&theme, format!("{text}\n// ours\n")).expect("it can be written");
    let told = shop.done(&["status", "--templates", "own"]);
    assert!(told.contains("layout only") && told.contains(": 103"), "{told}");
    let act = ["issue", "--by", "KM", "--why", "larger type", "--date", "2026-11-05", "--templates", "own"];
    assert!(shop.done(&act).contains("Nothing is due"));
    let told = shop.done(&[&act[..], &["--layout", "CUR-EVAP"]].concat());
    assert_eq!(issued(&told, "r2"), ["CUR-EVAP"]);
    assert!(shop.done(&["verify", "CUR-EVAP", "r2"]).contains("is the valid one"));
}

#[test]
fn a_withdrawn_paper_stays_withdrawn_until_it_is_named() {
    let shop = Shop::issued();
    let told =
        shop.done(&["withdraw", "CUR-SUN", "--by", "KM", "--why", "wrong light", "--date", "2026-11-06"]);
    assert!(told.contains("take down CUR-SUN r1"), "{told}");
    assert!(shop.papers().contains(&"pull-list_2026-11-06_1.pdf".to_owned()));
    let told = shop.done(&["status"]);
    assert!(told.contains("withdrawn: 1\n  CUR-SUN r1"), "{told}");
    let verdict = shop.ends(&["verify", "CUR-SUN", "r1"], 1);
    assert!(verdict.contains("withdrawn since 2026-11-06, by KM: wrong light"), "{verdict}");
    let again =
        shop.ends(&["withdraw", "CUR-SUN", "--by", "KM", "--why", "again", "--date", "2026-11-07"], 2);
    assert!(again.contains("is withdrawn since 2026-11-06"), "{again}");
    let told = shop.done(&["issue", "CUR-SUN", "--by", "KM", "--why", "back", "--date", "2026-11-08"]);
    assert_eq!(issued(&told, "r2"), ["CUR-SUN"]);
}

#[test]
fn the_sheets_of_a_vehicle_that_was_sold_are_to_be_withdrawn() {
    let shop = Shop::issued();
    let path = shop.path().join("specs/vehicles.toml");
    let text = fs::read_to_string(&path).expect("it is a spec of the demo");
    let start = text.find("[vehicle.AMB-12]").expect("it has that vehicle");
    let end = text[start + 1..].find("\n[").map_or(text.len(), |end| start + 1 + end + 1);
    fs::write(&path, format!("{}{}", &text[..start], &text[end..])).expect("it can be written");
    let told = shop.ends(&["status"], 3);
    assert!(told.contains("no longer in the set, to be withdrawn: 3"), "{told}");
    assert!(told.contains("AMB-12: "), "{told}");
    shop.done(&["withdraw", "AMB-12", "--by", "KM", "--why", "sold", "--date", "2026-11-09"]);
    assert!(!shop.done(&["status"]).contains("no longer in the set"));
}

#[test]
fn registers_of_two_people_merge_where_they_issued_different_papers() {
    let shop = Shop::issued();
    let base = shop.register();
    let mut sides = Vec::new();
    for id in ["CUR-EVAP", "CUR-S3"] {
        let side = Shop::issued();
        side.correct_pull_up();
        side.done(&["issue", id, "--by", "RS", "--why", "pull-up", "--date", "2026-11-20"]);
        sides.push(side.register());
    }
    let file = |name: &str, text: &str| {
        let path = shop.path().join(name);
        fs::write(&path, text).expect("it can be written");
        path
    };
    let (ours, old, theirs) = (file("ours", &sides[0]), file("base", &base), file("theirs", &sides[1]));
    let merged = Command::new("git").arg("merge-file").args([&ours, &old, &theirs]).status();
    assert!(merged.expect("git is there").success(), "different papers are different lines");
    fs::copy(&ours, shop.path().join("specs/register.toml")).expect("it can be copied");
    for id in ["CUR-EVAP", "CUR-S3"] {
        assert!(shop.done(&["verify", id, "r2"]).contains("is the valid one"));
    }
    // The same paper issued by both is found, not guessed.
    let twice = format!("{}\n{}", shop.register(), last_issue(&sides[0], "CUR-EVAP"));
    fs::write(shop.path().join("specs/register.toml"), twice).expect("it can be written");
    let told = shop.ends(&["status"], 1);
    assert!(told.contains("has two revisions 2"), "{told}");
    let conflict = format!("<<<<<<< ours\n{base}=======\n>>>>>>> theirs\n");
    fs::write(shop.path().join("specs/register.toml"), &conflict).expect("it can be written");
    let told = shop.ends(&["issue", "--by", "KM", "--why", "x", "--date", "2026-11-21"], 1);
    assert!(told.contains("a merge left this register unsettled"), "{told}");
    assert_eq!(shop.register(), conflict, "nothing was written");
}

/// The newest entry of a document.
fn last_issue(register: &str, id: &str) -> String {
    let entries: Vec<&str> = register.split("[[issue]]").collect();
    let of_id = entries.iter().rev().find(|entry| entry.contains(&format!("id = \"{id}\"\n")));
    format!("[[issue]]{}", of_id.expect("it was issued"))
}
