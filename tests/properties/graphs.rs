//! Checklists: whatever graph passes the rules leads from every step to an ending; its
//! numbers and its map hold. Generated graphs are written as specs, so that the rules
//! themselves decide which pass.

use bayleaf::diag::{Findings, Severity, Sources};
use bayleaf::graph::Graph;
use bayleaf::graph::map::{Map, draw};
use bayleaf::model::{self, Chart, Checklist};
use bayleaf::rules;
use bayleaf::spec::Set;
use proptest::prelude::*;

const HEAD: &str = r#"
[shop]
title = "S"
paper = "A4"
[system.s]
title = "S"
applicability = "all"
[vehicle.v]
title = "V"
system = "s"
[checklist.C]
title = "C"
system = "s"
symptom = "cold"
work = "electrical"
start = "n0"
source = "manual"
"#;

/// For each step two or three targets; a number from the count of steps on is an ending.
fn checklist(exits: &[Vec<usize>]) -> String {
    let name = |to: usize| if to < exits.len() { format!("n{to}") } else { format!("e{}", to - exits.len()) };
    let mut text = HEAD.to_owned();
    for (step, out) in exits.iter().enumerate() {
        text += &format!(
            "[checklist.C.step.n{step}]\ntitle = \"Step {step}\"\nquestion = \"Is it so?\"\ndo = \"Look.\"\n\
             where = \"dash\"\nstate = \"key on\"\nexpect = \"it is\"\ntime = \"{} min\"\ncost = \"look\"\n",
            1 + step % 5
        );
        for (answer, to) in ["yes", "no", "undecided"].iter().zip(out) {
            text += &format!("{answer} = \"{}\"\n", name(*to));
        }
    }
    let mut endings: Vec<usize> = exits.iter().flatten().copied().filter(|to| *to >= exits.len()).collect();
    endings.sort_unstable();
    endings.dedup();
    for ending in endings {
        text +=
            &format!("[checklist.C.ending.{}]\nkind = \"control unit\"\ndo = \"Say so.\"\n", name(ending));
    }
    text
}

/// Steps whose exits lead mostly onward, and now and then back or past the next ones.
fn exits() -> impl Strategy<Value = Vec<Vec<usize>>> {
    (1_usize..=11).prop_flat_map(|steps| {
        let exit = move |step: usize| {
            prop_oneof![
                40 => Just((step + 1).min(steps)),
                30 => (step + 1)..=(steps + 2),
                29 => steps..=(steps + 3),
                1 => 0..=step,
            ]
        };
        let out = move |step: usize| prop::collection::vec(exit(step), 2..=3);
        (0..steps).map(out).collect::<Vec<_>>()
    })
}

/// The checklist, if no rule objects with an error.
fn passed(text: &str) -> Option<Checklist> {
    let mut sources = Sources::default();
    sources.add("c.toml".to_owned(), text.to_owned());
    let findings = Findings::default();
    let set = Set::read(&sources, &findings);
    rules::check(&set, &findings);
    if findings.sorted().iter().any(|finding| finding.severity == Severity::Error) {
        return None;
    }
    let mut model = model::build(&set).expect("a set without errors makes a model");
    model.checklists.remove("C")
}

/// Whether the boxes of a map keep apart, and every line keeps clear of every box.
fn is_clear(map: &Map, widths: &[f64]) -> Result<(), TestCaseError> {
    const SLACK: f64 = 1e-6;
    let boxes: Vec<_> =
        map.places.iter().zip(widths).filter_map(|(place, width)| Some(((*place)?, *width))).collect();
    for (index, (one, width)) in boxes.iter().enumerate() {
        prop_assert!(one.x - width / 2.0 >= -SLACK && one.x + width / 2.0 <= map.width + SLACK, "{:?}", map);
        for (other, other_width) in &boxes[index + 1..] {
            let apart = (one.x - other.x).abs() + SLACK >= (width + other_width) / 2.0;
            prop_assert!(one.layer != other.layer || apart, "{:?}", map);
        }
    }
    for route in &map.routes {
        let (from, to) = (
            map.places[route.from].expect("a way begins somewhere"),
            map.places[route.to].expect("and ends"),
        );
        prop_assert_eq!(route.bends.len(), to.layer - from.layer);
        prop_assert!((route.bends[0].from - from.x).abs() <= widths[route.from] / 2.0);
        prop_assert!((route.bends.last().expect("it passes a gap").to - to.x).abs() < SLACK);
        for pair in route.bends.windows(2) {
            // Straight down through the layer between two gaps.
            prop_assert!((pair[0].to - pair[1].from).abs() < SLACK);
            for (place, width) in boxes.iter().filter(|(place, _)| place.layer == pair[1].gap) {
                prop_assert!((pair[0].to - place.x).abs() > width / 2.0, "{:?}", map);
            }
        }
        for bend in &route.bends {
            prop_assert!(bend.track < map.tracks[bend.gap].max(1));
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(crate::every_run())]

    #[test]
    fn what_passes_the_rules_leads_from_every_step_to_an_ending(exits in exits(), answers in prop::collection::vec(0_usize..3, 16)) {
        let text = checklist(&exits);
        let has_loop = !Graph::new(exits.iter().cloned().chain(vec![vec![]; 8]).collect()).loops().is_empty();
        let checklist = passed(&text);
        // Too few that pass would fail the test as well.
        prop_assume!(checklist.is_some());
        let Some(checklist) = checklist else { return Ok(()) };
        prop_assert!(!has_loop, "a loop passed the rules:\n{}", text);
        for first in 0..checklist.steps.len() {
            let mut node = first;
            let mut asked = 0;
            while !checklist.ways.is_ending(node) {
                prop_assert!(asked < checklist.steps.len(), "from step {} no end is reached:\n{}", first, text);
                let exits = &checklist.steps[node].exits;
                node = exits[answers[asked] % exits.len()].to;
                asked += 1;
            }
        }
        // Nothing comes before what leads to it, and the longest way is as long as any.
        let order = checklist.ways.graph.reading_order(0);
        let number = |node: usize| order.iter().position(|met| *met == node).expect("every node is reached");
        for (node, step) in checklist.steps.iter().enumerate() {
            for exit in &step.exits {
                prop_assert!(number(node) < number(exit.to));
            }
        }
        let chart = Chart::of(&checklist.ways).expect("there is no loop");
        let widths: Vec<f64> = (0..checklist.steps.len()).map(|_| 1.0).chain(chart.endings.iter().map(|_| 0.62)).collect();
        is_clear(&chart.map, &widths)?;
    }

    /// No walk takes longer than the longest way, and that one can be walked.
    #[test]
    fn no_walk_is_longer_than_the_longest_way(exits in exits(), answers in prop::collection::vec(0_usize..3, 16)) {
        let checklist = passed(&checklist(&exits));
        prop_assume!(checklist.is_some());
        let Some(checklist) = checklist else { return Ok(()) };
        let weights: Vec<f64> = (0..checklist.steps.len()).map(|step| f64::from(u32::try_from(1 + step % 5).expect("small"))).collect();
        let longest = checklist.ways.graph.longest(0, &weights).expect("there is no loop");
        let weight = |node: usize| weights.get(node).copied().unwrap_or_default();
        let sum: f64 = longest.nodes.iter().map(|node| weight(*node)).sum();
        prop_assert!((sum - longest.weight).abs() < 1e-9);
        for pair in longest.nodes.windows(2) {
            prop_assert!(checklist.ways.graph.next(pair[0]).contains(&pair[1]));
        }
        let (mut node, mut walked, mut asked) = (0, 0.0, 0);
        while !checklist.ways.is_ending(node) {
            walked += weight(node);
            let exits = &checklist.steps[node].exits;
            node = exits[answers[asked] % exits.len()].to;
            asked += 1;
        }
        prop_assert!(walked <= longest.weight);
    }

    /// Against every order of every layer, for graphs of two layers.
    #[test]
    fn two_layers_cross_as_seldom_as_they_can(ways in prop::collection::vec((0_usize..4, 0_usize..4), 1..9)) {
        // 0 leads to 1 to 4, those lead to 5 to 8.
        let mut ways = ways;
        ways.sort_unstable();
        ways.dedup();
        let mut next = vec![vec![]; 9];
        next[0] = vec![1, 2, 3, 4];
        ways.iter().for_each(|(from, to)| next[from + 1].push(to + 5));
        let map = draw(&Graph::new(next), 0, &[1.0; 9], 99.0).expect("there is no loop");
        let orders = permutations(4);
        let crossings = |above: &[usize], below: &[usize]| {
            let cross = |a: &(usize, usize), b: &(usize, usize)| {
                (above[a.0] < above[b.0] && below[a.1] > below[b.1]) || (above[a.0] > above[b.0] && below[a.1] < below[b.1])
            };
            ways.iter().enumerate().map(|(index, a)| ways[index + 1..].iter().filter(|b| cross(a, b)).count()).sum::<usize>()
        };
        let fewest = orders.iter().flat_map(|above| orders.iter().map(|below| crossings(above, below))).min();
        prop_assert_eq!(Some(map.crossings), fewest, "{:?}", map);
        is_clear(&map, &[1.0; 9])?;
    }
}

/// Every order of so many things.
fn permutations(count: usize) -> Vec<Vec<usize>> {
    if count == 0 {
        return vec![vec![]];
    }
    let insert = |shorter: Vec<usize>| {
        (0..count).map(move |at| {
            let mut longer = shorter.clone();
            longer.insert(at, count - 1);
            longer
        })
    };
    permutations(count - 1).into_iter().flat_map(insert).collect()
}
