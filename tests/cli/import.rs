//! `bayleaf import`: tables of any country in, spec lines that read back.

use std::collections::BTreeMap;
use std::fs;

use bayleaf::diag::{Findings, Sources};
use bayleaf::spec::import::{Decimal, Known, import};

use crate::{bayleaf, errors, folder, must_contain, said, write};

/// Every table of tests/reference/01a_ntc_rt_published.csv in ohms, by part: the
/// digits as its source prints them.
fn published() -> BTreeMap<String, Vec<(String, String)>> {
    let path = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/reference/01a_ntc_rt_published.csv");
    let text = fs::read_to_string(path).expect("the reference is part of the project");
    let mut reader = csv::ReaderBuilder::new().comment(Some(b'#')).from_reader(text.as_bytes());
    let mut tables: BTreeMap<String, Vec<(String, String)>> = BTreeMap::new();
    for record in reader.records() {
        let record = record.expect("the reference is CSV");
        if &record[3] == "ohm" {
            tables
                .entry(record[0].to_owned())
                .or_default()
                .push((record[1].to_owned(), record[2].to_owned()));
        }
    }
    assert!(tables.len() > 3, "only {} tables", tables.len());
    tables
}

/// `1747920.5` with another mark, and its thousands apart.
fn written(number: &str, decimal: char, thousands: &str) -> String {
    let (sign, number) = number.strip_prefix('-').map_or(("", number), |rest| ("−", rest));
    let (whole, decimals) =
        number.split_once('.').map_or((number, ""), |(whole, decimals)| (whole, decimals));
    let mut grouped = String::new();
    for (index, digit) in whole.chars().enumerate() {
        if index > 0 && (whole.len() - index) % 3 == 0 {
            grouped.push_str(thousands);
        }
        grouped.push(digit);
    }
    let tail = if decimals.is_empty() { String::new() } else { format!("{decimal}{decimals}") };
    format!("{sign}{grouped}{tail}")
}

fn rows(file: &str, text: String, decimal: Option<Decimal>) -> Vec<(f64, f64)> {
    let mut sources = Sources::default();
    sources.add(file.to_owned(), text);
    let findings = Findings::default();
    let imported = import(&sources, Known { decimal, ..Known::default() }, &findings);
    let imported = imported.unwrap_or_else(|| panic!("{file}: {:?}", findings.sorted()));
    imported.rows.iter().map(|row| (row.temperature.celsius(), row.nominal.ohms())).collect()
}

#[test]
fn published_tables_come_back_from_every_way_of_writing_them() {
    for (part, table) in published() {
        let lines = |head: &str, line: &dyn Fn(&str, &str) -> String| {
            let body: String = table.iter().map(|(t, r)| line(t, r) + "\r\n").collect();
            format!("\u{feff}{head}\r\n{body}").replace('\u{feff}', "")
        };
        let files = [
            lines("t_degC,ohm", &|t, r| format!("{t},{r}")),
            lines("Temperatur (°C);Widerstand (Ω)", &|t, r| {
                format!("{};{}", written(t, ',', "."), written(r, ',', "\u{202f}"))
            }),
            lines("T/°C\tR/Ω\tremark", &|t, r| format!("{t}\t{}\t", written(r, '.', "'"))),
            lines("remark,R [ohm],t [°C]", &|t, r| format!("as printed,\"{} Ω\",{t}", written(r, '.', ","))),
        ];
        let wanted: Vec<(f64, f64)> =
            table.iter().map(|(t, r)| (t.parse().expect("a number"), r.parse().expect("a number"))).collect();
        for (index, file) in files.into_iter().enumerate() {
            // Where all numbers have six digits, a lone comma before three needs to be told.
            let decimal = (index == 3).then_some(Decimal::Point);
            let found = rows(&format!("{part}-{index}"), file, decimal);
            assert_eq!(found.len(), wanted.len(), "{part}, {index}");
            for (found, wanted) in found.iter().zip(&wanted) {
                let close = (found.0 - wanted.0).abs() < 1e-9 && (found.1 / wanted.1 - 1.0).abs() < 1e-12;
                assert!(close, "{part}, {index}: {found:?} for {wanted:?}");
            }
        }
    }
}

#[test]
fn the_lines_read_back_as_a_sensor() {
    let folder = folder();
    let text = "Page 31;;;\r\n\"Temp.\n(°F)\";min kΩ;nom kΩ;max kΩ;\r\n32;32,1;32,6;33,2;\r\n50;19,4;19,8;20,3;\r\n77;9,8;10,0;10,2;\r\n";
    write(folder.path(), "Cabin air.csv", format!("\u{feff}{text}"));
    let arguments =
        ["import", "Cabin air.csv", "--title", "Cabin \"air\"", "--system", "gull", "--source", "page 31"];
    let output = bayleaf(folder.path(), &arguments);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    let lines = said(&output);
    for told in [
        "# From Cabin air.csv: 3 rows, cells apart by semicolons, decimal comma.",
        "# Above the heads: Page 31",
        "# Column 1 \"Temp. (°F)\": temperature, °F",
        "# Column 5 \"\": empty, –",
    ] {
        must_contain(&lines, told);
    }
    let spec = "[shop]\ntitle = \"Saltmarsh Rescue\"\npaper = \"A4\"\n\n[system.gull]\ntitle = \"Gull\"\n\n";
    write(folder.path(), "specs/set.toml", format!("{spec}{lines}"));
    let table = ["table", "cabin-air", "--from", "77 °F", "--to", "77 °F", "--format", "json"];
    let output = bayleaf(folder.path(), &table);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    let rows: serde_json::Value = serde_json::from_str(&said(&output)).expect("valid JSON");
    let ohms = ["resistance_min_ohm", "resistance_nom_ohm", "resistance_max_ohm"].map(|key| &rows[0][key]);
    let ohms = ohms.map(|value| value.as_f64().expect("a number").round());
    assert!(ohms.map(|ohms| ohms as i64) == [9800, 10_000, 10_200], "{ohms:?}");
}

#[test]
fn what_cannot_be_decided_is_a_finding_that_says_how() {
    let folder = folder();
    let cases = [
        ("a.csv", "t,R\n0,\"2,252\"\n10,\"1,801\"\n", "no column is known as a temperature"),
        (
            "b.csv",
            "t °C,R Ω\n0,\"2,252\"\n10,\"1,801\"\n",
            "say which with --decimal comma or --decimal point",
        ),
        ("c.csv", "°C;Ω\n0;900,5\n20;600.5\n", "`900,5` has a decimal comma, other numbers a decimal point"),
        ("d.csv", "°C;Ω\n0;900\n20;0.6 kΩ\n", "`0.6 kΩ` is not in Ω as its column is"),
        ("e.csv", "°C;min kΩ;max Ω\n0;1;2\n", "the columns are not one resistance"),
        ("f.csv", "°C;min kΩ;nom kΩ;max Ω\n0;1;2;3\n", "resistances in kΩ and in Ω"),
        ("g.csv", "°C;Ω\n0;900\n0;890\n20;600\n", "temperature 0 stands in two rows"),
        ("h.csv", "°C;Ω\n0;12.34.5\n20;600\n", "`12.34.5` is no number that can be read"),
        ("i.csv", "°C;\"Ω\n0;900\n", "no line holds two numbers"),
        ("j.csv", "nothing here\n", "the file has no columns"),
        ("k.csv", "", "the file has no columns"),
        ("l.csv", "°C;V\n0;3.1\n20;2.2\n", "the columns are not one resistance"),
        ("m.csv", "°C;MΩ\n0;3.1\n20;2.2\n", "a curve's resistances are in Ω or kΩ, these are in MΩ"),
    ];
    for (name, text, told) in cases {
        write(folder.path(), name, text);
        let output = bayleaf(folder.path(), &["import", name]);
        assert_eq!(output.status.code(), Some(1), "{name}: {}", errors(&output));
        must_contain(&errors(&output), told);
        must_contain(&errors(&output), &format!("--> {name}:"));
        assert_eq!(said(&output), "", "{name}");
    }
}

#[test]
fn the_caller_decides_what_the_file_does_not_say() {
    let folder = folder();
    write(folder.path(), "b.csv", "t,R\n0,\"2,252\"\n10,\"1,801\"\n");
    let arguments =
        |decimal| ["import", "b.csv", "--temperature", "degC", "--resistance", "kohm", "--decimal", decimal];
    must_contain(&said(&bayleaf(folder.path(), &arguments("comma"))), "[0, 2.252],");
    must_contain(&said(&bayleaf(folder.path(), &arguments("point"))), "[0, 2252],");
    let output = bayleaf(folder.path(), &["import", "b.csv", "--temperature", "V"]);
    assert_eq!(output.status.code(), Some(2));
    must_contain(&errors(&output), "expected one of °C, °F, K");
}

#[test]
fn a_line_without_a_point_is_left_out_and_told() {
    let folder = folder();
    write(folder.path(), "a.csv", "°C;Ω\n0;900\n10;\n20;600\nSource: page 3;\n");
    let output = bayleaf(folder.path(), &["import", "a.csv"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    must_contain(&errors(&output), "--> a.csv:3:1");
    must_contain(&errors(&output), "--> a.csv:5:1");
    must_contain(&said(&output), "# 2 lines hold no point and were left out.");
}

#[test]
fn what_is_told_has_the_decimal_mark_of_the_language_and_the_lines_that_of_specs() {
    let folder = folder();
    // At 0 °C the digits are in the wrong order; 6,424 is one swap away and fits (invented values: 2.2 kΩ at 25 °C, B = 3500 K).
    let rows = "-20;17,729\n-15;13,564\n-10;10,483\n-5;8,181\n0;6,442\n5;5,117\n10;4,097\n15;3,306\n20;2,688\n25;2,200\n30;1,813\n35;1,503\n40;1,254\n45;1,052\n";
    let rows = rows.replace("6,442", "6,244");
    write(folder.path(), "t.csv", format!("t (°C);R (kΩ)\n{rows}"));
    let run = |language: &str| {
        bayleaf(folder.path(), &["import", "t.csv", "--decimal", "comma", "--language", language])
    };
    for (language, quoted, mended) in [("de", "0; 6,244", "6,424"), ("en", "0, 6.244", "6.424")] {
        let output = run(language);
        let (lines, told) = (said(&output), errors(&output));
        must_contain(&told, quoted);
        must_contain(&told, mended);
        // A percent with one decimal, as the language writes it.
        let mark = if language == "de" { ',' } else { '.' };
        let decimal = |word: &str| {
            let number = word.trim_matches(|c: char| !c.is_ascii_digit());
            number.split_once(mark).is_some_and(|(_, tenth)| tenth.len() == 1)
        };
        assert!(told.split_whitespace().any(decimal), "{told}");
        must_contain(&lines, "[0, 6.244]");
        must_contain(&lines, "[-20, 17.729]");
    }
}
