//! What the README shows is true: its spec is a valid set, its finding is the real one.

use bayleaf::diag::{Findings, Renderer, Sources};
use bayleaf::document;
use bayleaf::model;
use bayleaf::rules;
use bayleaf::spec::{About, Set};
use bayleaf::words::Words;

const README: &str = include_str!("../README.md");

/// The text of the first fenced block of a language that holds `marker`.
fn block(language: &str, marker: &str) -> &'static str {
    let fence = format!("```{language}\n");
    let blocks =
        README.split(fence.as_str()).skip(1).map(|rest| rest.split("```").next().unwrap_or_default());
    blocks.into_iter().find(|block| block.contains(marker)).expect("the README has this block")
}

fn check(text: &str) -> (Option<bayleaf::model::Model>, String) {
    let mut sources = Sources::default();
    sources.add("specs/sensors.toml".to_owned(), text.to_owned());
    let findings = Findings::default();
    let set = Set::read(&sources, &findings);
    rules::check(&set, &findings);
    let words = Words::english();
    let renderer = Renderer::new(&sources, &words, false);
    let drawn = findings.sorted().iter().map(|finding| renderer.draw(finding)).collect();
    (model::build(&set), drawn)
}

#[test]
fn the_example_set_is_valid_and_makes_a_card() {
    let (model, findings) = check(block("toml", "[card.SEN-EVAP]"));
    assert_eq!(findings, "");
    assert!(model.is_some_and(|model| model.cards.contains_key("SEN-EVAP")));
}

#[test]
fn the_further_examples_add_their_papers_to_that_set() {
    let both = [block("toml", "[card.SEN-EVAP]"), block("toml", "[test.REFERENCE]")].concat();
    let (model, findings) = check(&both);
    assert_eq!(findings, "");
    let ids: Vec<_> =
        document::list(&model.expect("it has no error")).into_iter().map(|paper| paper.id).collect();
    for id in ["PARTS.AMB-12", "RESULT.AMB-12", "NO-COLD", "curlew.SYMPTOMS", "REQUEST", "SET.INDEX"] {
        assert!(ids.iter().any(|there| there == id), "{id} is not among {ids:?}");
    }
}

#[test]
fn every_thing_that_a_card_may_be_about_is_among_the_kinds_of_paper() {
    for (key, _) in About::ALL {
        assert!(README.contains(&format!("| `[card.ID]` with `{key}` |")), "no card with `{key}`");
    }
}

#[test]
fn the_example_finding_is_what_the_program_says() {
    let shown = block("", "error: `service_limit`").trim_end();
    let spec = "\n".repeat(9) + "service_limit = \"2.5 °C\"\n";
    let spec = spec.replacen('\n', "[sensor.cabin]", 1).replacen("[sensor.cabin]", "[sensor.cabin]\n", 1);
    let (_, findings) = check(&spec);
    assert!(findings.contains(shown), "the README shows\n{shown}\nthe program says\n{findings}");
}
