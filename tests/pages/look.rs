//! The look stands in one file, and each template says what it receives.

use bayleaf::typeset::TEMPLATES;

/// The code of a template without its comments.
fn code(text: &str) -> impl Iterator<Item = (usize, &str)> {
    text.lines().enumerate().map(|(number, line)| (number + 1, line.split("//").next().unwrap_or_default()))
}

/// Whether a number stands before `at`, other than nought.
fn counts(line: &str, at: usize) -> bool {
    let digits = line[..at].chars().rev().take_while(|c| c.is_ascii_digit() || *c == '.');
    let number: String = digits.collect::<Vec<_>>().into_iter().rev().collect();
    number.parse::<f64>().is_ok_and(|number| number > 0.0)
}

/// A size of type, a weight of a line or a shade: what a restyled set would change.
fn is_a_look(line: &str) -> bool {
    let points = line.match_indices("pt").any(|(at, _)| {
        let ends = !line[at + 2..].starts_with(|c: char| c.is_alphanumeric());
        ends && counts(line, at)
    });
    let weight = ["stroke:", "thickness:"].iter().any(|key| {
        line.match_indices(key)
            .any(|(at, _)| line[at + key.len()..].trim_start().starts_with(|c: char| c.is_ascii_digit()))
    });
    let shade = ["luma(", "rgb(", "cmyk(", "gray", "silver"].iter().any(|shade| line.contains(shade));
    points || weight || shade
}

#[test]
fn sizes_of_type_weights_of_lines_and_shades_stand_in_the_theme_alone() {
    for (path, text) in TEMPLATES.iter().filter(|(path, _)| *path != "theme.typ") {
        for (number, line) in code(text) {
            assert!(!is_a_look(line), "{path}:{number} has a look of its own: {line}");
        }
    }
    let theme = TEMPLATES.iter().find(|(path, _)| *path == "theme.typ").expect("there is a theme").1;
    assert!(code(theme).filter(|(_, line)| is_a_look(line)).count() > 20, "the rule finds what it forbids");
}

#[test]
fn every_template_says_what_it_sets_and_which_data_it_receives() {
    for (path, text) in TEMPLATES {
        let head: Vec<&str> = text.lines().take_while(|line| line.starts_with("//")).collect();
        assert!(head.first().is_some_and(|line| line.len() > 10), "{path} begins with what it sets");
        assert!(
            head.iter().any(|line| line.starts_with("// Data: ")),
            "{path} has no line `// Data: …` in its head"
        );
    }
}
