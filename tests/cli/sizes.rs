//! `--size`, sizes in specs, and the refusals of both: what is named as fitting does fit.

use crate::{GOOD, bayleaf, errors, folder, must_contain, write};

#[test]
fn an_unknown_size_is_refused_with_the_nearest() {
    let folder = folder();
    write(folder.path(), "specs/set.toml", GOOD);
    for (wrong, near) in
        [("A6 landscap", "A6 landscape"), ("half leter", "half letter"), ("4x7 in", "4x6 in")]
    {
        let output = bayleaf(folder.path(), &["print", "--size", wrong]);
        assert_eq!(output.status.code(), Some(2));
        must_contain(&errors(&output), &format!("did you mean \"{near}\"?"));
    }
}

#[test]
fn a_kind_that_is_not_laid_out_for_a_size_is_refused_by_name() {
    let folder = folder();
    write(folder.path(), "specs/set.toml", GOOD.to_owned() + "\n[card.GULL]\nsystem = \"gull\"\n");
    for arguments in [&["print", "GULL", "--size", "A6"][..], &["preview", "GULL", "--size", "A6"]] {
        let output = bayleaf(folder.path(), arguments);
        assert_eq!(output.status.code(), Some(2), "{}", errors(&output));
        must_contain(&errors(&output), "not laid out for `A6`");
        must_contain(&errors(&output), "letter");
    }
    assert!(!folder.path().join("out").exists(), "nothing is written");
}

#[test]
fn what_is_named_as_fitting_does_fit() {
    let folder = folder();
    let strip = "\n[card.STRIP]\nsensor = \"cabin\"\nstrip = \"one side\"\nstep = \"2 K\"\nsize = \"A6\"\n";
    write(folder.path(), "specs/set.toml", GOOD.to_owned() + strip);
    let output = bayleaf(folder.path(), &["print", "STRIP"]);
    assert_ne!(output.status.code(), Some(0));
    let said = errors(&output);
    let fits =
        said.split("what fits: ").nth(1).and_then(|rest| rest.lines().next()).expect("it says what fits");
    let named: Vec<&str> = fits.split(", ").collect();
    assert!(named.contains(&"A4") && named.iter().any(|fit| fit.starts_with("a step of ")), "{said}");
    for fit in named {
        let changed = match (fit.strip_prefix("a step of "), fit) {
            (Some(step), _) => strip.replace("2 K", step),
            (None, "two sides") => strip.replace("one side", "two sides"),
            (None, size) => strip.replace("A6", size),
        };
        write(folder.path(), "specs/set.toml", GOOD.to_owned() + &changed);
        let output = bayleaf(folder.path(), &["print", "STRIP"]);
        assert_eq!(output.status.code(), Some(0), "{fit}: {}", errors(&output));
    }
}

#[test]
fn the_option_wins_over_the_card_and_the_card_over_the_shop() {
    let folder = folder();
    let shop = GOOD.replace("paper = \"A4\"", "paper = \"A4\"\nsizes = { sensor = \"half letter\" }");
    let height = |set: &str, more: &[&str]| {
        write(folder.path(), "specs/set.toml", set);
        let arguments = [&["print", "SEN-1", "--format", "svg"], more].concat();
        let output = bayleaf(folder.path(), &arguments);
        assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
        let svg = std::fs::read_to_string(folder.path().join("out/SEN-1-1.svg")).expect("it was drawn");
        let height = svg.split("height=\"").nth(1).and_then(|rest| rest.split("pt").next());
        height.and_then(|height| height.parse::<f64>().ok()).expect("it has a height")
    };
    let points = |millimetres: f64| millimetres / 25.4 * 72.0;
    for (set, more, millimetres) in [
        (GOOD.to_owned(), &[][..], 210.0),
        (shop.clone(), &[], 8.5 * 25.4),
        (shop.clone() + "size = \"letter\"\n", &[], 11.0 * 25.4),
        (shop + "size = \"letter\"\n", &["--size", "A4 landscape"], 210.0),
    ] {
        assert!((height(&set, more) - points(millimetres)).abs() < 0.1, "{millimetres} mm");
    }
}
