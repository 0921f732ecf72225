//! The rule that finds a mistyped digit, tried on published tables.

use bayleaf::diag::{Finding, Findings, Sources};
use bayleaf::rules;
use bayleaf::spec::Set;
use bayleaf::words::Words;

use crate::curves::published_tables;

/// A row of a spec: temperature in °C and resistance in Ω, as a manual prints them.
type Line = (f64, String);

fn findings_for(lines: &[Line]) -> Vec<Finding> {
    let points: String = lines.iter().map(|(t, ohms)| format!("    [{t}, {ohms}],\n")).collect();
    let spec = format!(
        "[system.gull]\ntitle = \"Gull\"\n\n[sensor.cabin]\ntitle = \"Cabin air\"\nsystem = \"gull\"\n\n\
         [sensor.cabin.curve]\nmodel = \"table\"\ntemperature = \"°C\"\nresistance = \"Ω\"\npoints = [\n{points}]\n"
    );
    let mut sources = Sources::default();
    sources.add("table.toml".to_owned(), spec);
    let findings = Findings::default();
    let set = Set::read(&sources, &findings);
    rules::check(&set, &findings);
    findings.sorted()
}

/// Four significant digits, as most manuals print.
fn printed(ohms: f64) -> String {
    let digits = |decimals: usize| format!("{ohms:.decimals$}");
    match ohms {
        r if r >= 1000.0 => digits(0),
        r if r >= 100.0 => digits(1),
        _ => digits(2),
    }
}

fn tables() -> Vec<(String, Vec<Line>)> {
    let line = |(t, r): &(bayleaf::quantity::Temperature, bayleaf::quantity::Resistance)| {
        (t.celsius(), printed(r.ohms()))
    };
    published_tables()
        .iter()
        .map(|(part, points)| (part.clone(), points.iter().map(line).collect()))
        .collect()
}

#[test]
fn no_published_table_is_suspected() {
    for (part, lines) in tables() {
        assert_eq!(findings_for(&lines), [], "{part}");
        let every_second: Vec<Line> = lines.iter().step_by(2).cloned().collect();
        assert_eq!(findings_for(&every_second), [], "{part}, every second row");
    }
}

/// A digit typed one too high, in the second place of each inner row in turn.
///
/// That is a change of 1 % to 10 % of the row. Where the table then does not
/// fall any more it is an error; else the rule must name that very row. What
/// it allows is 1 % inside and 4 % towards the ends, so the demand is for
/// changes that are well above what is allowed.
#[test]
fn a_mistyped_digit_is_found_and_its_row_is_named() {
    let words = Words::english();
    let (mut tried, mut found) = (0, 0);
    for (part, lines) in tables() {
        for index in 2..lines.len() - 2 {
            let mut wrong = lines.clone();
            let Some(typed) = one_higher(&lines[index].1) else { continue };
            let change =
                typed.parse::<f64>().expect("digits") / lines[index].1.parse::<f64>().expect("digits");
            if change < 1.03 {
                continue;
            }
            tried += 1;
            wrong[index].1 = typed.clone();
            let told: String =
                findings_for(&wrong).iter().map(|finding| words.say(&finding.message)).collect();
            let named =
                told.contains(&format!("`{}, {typed}`", lines[index].0)) || told.contains("does not fall");
            found += usize::from(named);
            assert!(named, "{part}: {} typed for {} at {} °C: {told}", typed, lines[index].1, lines[index].0);
        }
    }
    assert!(tried > 70, "only {tried} misprints were tried");
    assert_eq!(tried, found);
}

/// The same number with its second digit one higher; `None` where that is a 9.
fn one_higher(number: &str) -> Option<String> {
    let mut digits: Vec<char> = number.chars().collect();
    let second = digits.iter().enumerate().filter(|(_, c)| c.is_ascii_digit()).nth(1)?.0;
    let higher = digits[second].to_digit(10)? + 1;
    digits[second] = char::from_digit(higher, 10)?;
    Some(digits.into_iter().collect())
}
