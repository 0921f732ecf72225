//! Papers and a register that an earlier program made, as they were found: `old/` was written by
//! bayleaf 0.1.0 in November 2026 and is never written again. Whatever becomes of the form of
//! either, what hangs on a wall must still be told apart.

use std::fs;
use std::path::Path;

use super::shop::{Shop, copy};

/// A folder with what was found.
fn found() -> Shop {
    let shop = Shop::empty();
    let old = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/register/old");
    copy(&old.join("specs"), &shop.path().join("specs"));
    copy(&old.join("issued"), &shop.path().join("out/issued"));
    shop
}

const SAME: &str = "computes the same figures from its specs";

#[test]
fn each_old_paper_is_told_from_its_file_and_computed_again() {
    let shop = found();
    for (paper, code, told) in [
        (
            "SEN-1_r1.pdf",
            1,
            "SEN-1 r1 of 2026-10-01 by KM is superseded by r2 since 2026-10-20, by WB: pull-up corrected",
        ),
        ("SEN-1_r2.pdf", 0, "SEN-1 r2 of 2026-10-20 by WB is the valid one"),
        (
            "SEN-2_r1.pdf",
            1,
            "SEN-2 r1 of 2026-10-01 by KM is withdrawn since 2026-10-21, by KM: strip is on SEN-1",
        ),
    ] {
        let said = shop.ends(&["verify", &format!("out/issued/{paper}")], code);
        assert!(said.contains(told), "{said}");
        assert!(said.contains("made with bayleaf 0.1.0") && said.contains(SAME), "{said}");
    }
}

#[test]
fn the_printed_codes_of_old_papers_still_say_the_same() {
    let shop = found();
    // As they stand on the pages.
    for (code, ends, told) in [
        ("SEN-1 r1 316J-VM0Y", 1, "superseded by r2"),
        ("SEN-1 r2 DW8M-H0KM", 0, "is the valid one"),
        ("SEN-2 r1 316J-VM0Y", 1, "withdrawn"),
    ] {
        let words: Vec<&str> = code.split(' ').collect();
        let said = shop.ends(&[&["verify"][..], &words].concat(), ends);
        assert!(said.contains(told), "{code}: {said}");
    }
}

#[test]
fn an_old_register_is_read_and_grows_as_it_is() {
    let shop = found();
    let status = shop.done(&["status"]);
    // A newer program looks otherwise at most; what the papers say has not changed.
    assert!(!status.contains("changed:") && status.contains("withdrawn: 1"), "{status}");
    let before = shop.register();
    let spec = shop.path().join("specs/gull.toml");
    let text = fs::read_to_string(&spec).expect("it was found");
    fs::write(&spec, text.replace("4.8 kΩ", "4.9 kΩ")).expect("it can be written");
    let told = shop.ends(&["status"], 3);
    assert!(told.contains("sensor.cabin.circuit.resistor: 4.8 kΩ ± 1 % → 4.9 kΩ ± 1 %"), "{told}");
    shop.done(&["issue", "--by", "KM", "--why", "again", "--date", "2026-12-01"]);
    let register = shop.register();
    let mut rest = register.lines();
    assert!(before.lines().all(|line| rest.any(|other| other == line)), "{register}");
    assert!(shop.papers().contains(&"SEN-1_r3.pdf".to_owned()));
}
