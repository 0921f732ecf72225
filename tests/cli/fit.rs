//! `bayleaf fit`: points in, formulas out, spec lines that read back.

use std::path::Path;

use serde_json::Value;

use crate::{bayleaf, errors, folder, must_contain, said, write};

/// Six rows of 103JL1A as tests/reference/01a_ntc_rt_published.csv has them (instrument
/// manual 8002-4-1, Table 16).
const GOOD: &str = "# as printed\n°C,Ω\n0,32650\n10,19901\n20,12493\n30,8057\n40,5326\n50,3602\n";

fn json(folder: &Path, file: &str) -> Value {
    let output = bayleaf(folder, &["fit", file, "--format", "json"]);
    assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
    serde_json::from_str(&said(&output)).expect("valid JSON")
}

fn model<'a>(found: &'a Value, name: &str) -> &'a Value {
    let models = found["models"].as_array().expect("a list of models");
    models.iter().find(|model| model["model"] == name).expect("every model is listed")
}

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("{value} is no number"))
}

#[test]
fn fitted_lines_read_back_to_the_curve_they_were_fitted_to() {
    let folder = folder();
    write(folder.path(), "points.csv", GOOD);
    let found = json(folder.path(), "points.csv");
    assert_eq!(found["suspect"], Value::Null);
    for name in ["beta", "steinhart-hart", "steinhart-hart-4"] {
        let model = model(&found, name);
        let lines: Vec<&str> =
            model["spec"].as_array().expect("lines").iter().filter_map(Value::as_str).collect();
        let spec = format!(
            "[shop]\ntitle = \"Saltmarsh Rescue\"\npaper = \"A4\"\n\n[system.gull]\ntitle = \"Gull\"\n\n\
             [sensor.cabin]\ntitle = \"Cabin air\"\nsystem = \"gull\"\n{}\n",
            lines.join("\n")
        );
        write(folder.path(), "specs/set.toml", spec);
        for residual in model["residuals"].as_array().expect("residuals") {
            let at = format!("{} °C", residual["temperature_c"]);
            let arguments = ["table", "cabin", "--from", &at, "--to", &at, "--format", "json"];
            let output = bayleaf(folder.path(), &arguments);
            assert_eq!(output.status.code(), Some(0), "{}", errors(&output));
            let rows: Value = serde_json::from_str(&said(&output)).expect("valid JSON");
            let wanted =
                number(&residual["resistance_ohm"]) * (1.0 + number(&residual["residual_percent"]) / 100.0);
            let off = number(&rows[0]["resistance_nom_ohm"]) / wanted - 1.0;
            assert!(off.abs() < 1e-7, "{name} at {at}: {off:e}");
        }
    }
    // A three-term fit over 50 K misses a clean table by some thousandths of a kelvin (01e).
    assert!(number(&model(&found, "steinhart-hart")["largest_k"]) < 0.01);
}

#[test]
fn columns_and_toml_in_any_unit_say_the_same() {
    let folder = folder();
    write(folder.path(), "a.csv", "°C,kΩ\n0,6.42\n10,4.15\n20,2.75\n30,1.86\n40,1.28\n");
    write(folder.path(), "b.txt", "R (kΩ);t (°F)\n1.28;104\n1.86;86\n2.75;68\n4.15;50\n6.42;32\n");
    write(
        folder.path(),
        "c.csv",
        "temperature °C\tmin Ω\tnominal Ω\tmax Ω\n0\t6100\t6420\t6700\n10\t4000\t4150\t4300\n20\t2700\t2750\t2800\n30\t1800\t1860\t1900\n40\t1250\t1280\t1300\n",
    );
    write(
        folder.path(),
        "d.toml",
        "model = \"table\"\ntemperature = \"K\"\nresistance = \"Ω\"\npoints = [[273.15, 6420], [283.15, 4150], [293.15, 2750], [303.15, 1860], [313.15, 1280]]\n",
    );
    let first = json(folder.path(), "a.csv");
    for other in ["b.txt", "c.csv", "d.toml"] {
        let other = json(folder.path(), other);
        for name in ["beta", "steinhart-hart", "steinhart-hart-4"] {
            let (one, two) = (model(&first, name), model(&other, name));
            assert!((number(&one["rms_k"]) - number(&two["rms_k"])).abs() < 1e-9, "{name}");
        }
    }
    assert_eq!(model(&json(folder.path(), "b.txt"), "beta")["spec"][2], "range = \"32 °F to 104 °F\"");
}

#[test]
fn a_mistyped_row_is_named_with_the_number_that_would_fit() {
    let folder = folder();
    write(folder.path(), "points.csv", GOOD.replace("40,5326", "40,5236"));
    let output = bayleaf(folder.path(), &["fit", "points.csv"]);
    assert_eq!(output.status.code(), Some(0));
    must_contain(&errors(&output), "--> points.csv:7:1");
    must_contain(&errors(&output), "`5326` would fit, with two digits in the other order");
    must_contain(&said(&output), "Mistyped? row `40, 5236` lies −1.7 % off");
    must_contain(&said(&output), "curve = { model = \"beta\", resistance = \"");
    let found = json(folder.path(), "points.csv");
    assert_eq!(found["suspect"]["would_fit"], "5326");
    let csv = said(&bayleaf(folder.path(), &["fit", "points.csv", "--format", "csv"]));
    let suspects: Vec<&str> = csv.lines().filter(|line| line.ends_with(",yes")).collect();
    assert!(suspects.len() == 1 && suspects[0].starts_with("40,5236,"), "{csv}");
}

#[test]
fn what_cannot_be_fitted_is_a_finding_over_the_users_line() {
    let folder = folder();
    let cases = [
        ("a.csv", "°C;kΩ\n0;6,42\n20;2.75\n", "did you mean `6.42`?"),
        ("b.csv", "0,815\n25,1000\n", "begin with a line such as"),
        ("c.csv", "", "the file has no line that names the units"),
        ("d.csv", "°C,Ω\n0,1 000\n20,600\n", "has no number that can be read: `1 000`"),
        ("e.csv", "°C,Ω\n0,1,000\n20,600\n", "a row of 3 cells where the first line has 2"),
        ("f.csv", "°C,Ω\n0,815\n25,1000\n50,1209\n", "platinum and silicon have models of their own"),
        ("g.csv", "°C,Ω\n0,815\n", "a curve needs two rows or more; the table has 1"),
        ("h.csv", "°C,V\n0,3.1\n20,2.2\n", "no columns of points are named by `°C,V`"),
        ("i.csv", "°C,Ω\n-300,815\n20,0\n", "lies below absolute zero"),
        (
            "j.toml",
            "temperature = \"°C\"\nresistence = \"Ω\"\npoints = [[0, 1]]\n",
            "did you mean `resistance`?",
        ),
        ("k.toml", "points = [[0, 1]\n", "not valid TOML"),
        ("l.csv", "°C,Ω\n0,1000\n0,900\n20,600\n", "temperature 0 stands in two rows"),
    ];
    for (name, text, told) in cases {
        write(folder.path(), name, text);
        let output = bayleaf(folder.path(), &["fit", name]);
        assert_eq!(output.status.code(), Some(1), "{name}: {}", errors(&output));
        must_contain(&errors(&output), told);
        must_contain(&errors(&output), &format!("--> {name}:"));
        assert_eq!(said(&output), "", "{name}");
    }
    let output = bayleaf(folder.path(), &["fit", "none.csv"]);
    assert_eq!(output.status.code(), Some(1));
    must_contain(&errors(&output), "cannot read this: no such file or directory");
}

#[test]
fn two_points_have_a_b_value_and_no_more() {
    let folder = folder();
    write(folder.path(), "two.csv", "°C,Ω\n25,47000\n50,16433\n");
    let found = json(folder.path(), "two.csv");
    // tests/reference/01c, first row.
    assert!((number(&model(&found, "beta")["coefficients"]["beta_k"]) - 4049.88053).abs() < 1e-4);
    assert_eq!(model(&found, "beta")["exact"], true);
    let three = model(&found, "steinhart-hart");
    assert_eq!(three["error"], "No fit: 3 points are needed, at least.");
    assert_eq!(three["spec"], Value::Array(Vec::new()));
}
