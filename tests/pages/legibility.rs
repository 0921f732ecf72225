//! Text that is too small for where it is read from is refused, and named.

use bayleaf::document::{Distance, Reading};
use bayleaf::typeset::{Job, Typesetter};
use bayleaf::words::Words;

/// What is said of a page with this text, read from an arm's length, its title from across
/// the bay; nothing where it is printed.
fn refused(body: &str) -> Option<String> {
    let page = format!(
        "#set document(title: \"x\")\n#set text(font: \"DejaVu Sans\", stretch: 75%, lang: \"en\")\n\
         #import \"/parts/part.typ\": part, part-inline\n{body}"
    );
    let part = bayleaf::typeset::TEMPLATES.iter().filter(|(path, _)| *path == "parts/part.typ");
    let templates: Vec<(&str, &str)> = part.copied().chain([("page.typ", page.as_str())]).collect();
    let reading = Reading { rest: Distance::Arm, parts: &[("title", Distance::Wall)] };
    let job = Job {
        id: "X",
        template: "page.typ",
        data: b"{}",
        pages: 0,
        sides: 0,
        reading,
        lamination: None,
        date: super::date(),
    };
    let refused = Typesetter::with_templates(&templates, "{}").pdf(job).err();
    refused.map(|failure| failure.said(&Words::english()))
}

/// A title that can be read from 2 m: 8.73 mm are 33.9 pt of these capitals (0.729 em).
const TITLE: &str = "#part(\"title\", text(size: 34pt)[Far])\n";

fn below(body: &str) -> Option<String> {
    refused(&(TITLE.to_owned() + body))
}

#[test]
fn fifteen_minutes_of_arc_are_enough_and_a_tenth_of_a_point_less_are_not() {
    // NUREG-0700 rev. 3, 11.4.1.5-1 (a secondary source gives 2.6 mm at 600 mm):
    // 600 mm × 2 tan 7.5' = 2.618 mm = 7.42 pt; capitals of the font are 1493/2048 em.
    assert_eq!(below("#text(size: 10.2pt)[Near 31 °C]"), None);
    let said = below("#text(size: 10.1pt)[Near 31 °C]").expect("10.1 pt is too small at 600 mm");
    for part in ["page 1", "`Near 31 °C`", "10.1 pt", "2.60 mm", "600 mm", "10.2 pt"] {
        assert!(said.contains(part), "`{part}` is not in: {said}");
    }
}

#[test]
fn a_text_is_as_large_as_it_ends_up_on_the_paper() {
    assert_eq!(below("#scale(150%, reflow: true, text(size: 7pt)[Near])"), None);
    assert!(below("#scale(50%, reflow: true, text(size: 15pt)[Near])").is_some());
    assert!(below("#rotate(90deg, reflow: true, text(size: 10pt)[Near])").is_some());
    assert_eq!(below("#rotate(90deg, reflow: true, text(size: 10.2pt)[Near])"), None);
}

#[test]
fn a_part_has_its_own_distance_on_all_of_its_pages_and_none_after_it() {
    let said = refused("#part(\"title\", text(size: 33.8pt)[Far])").expect("2 m ask for 33.9 pt");
    assert!(said.contains("title") && said.contains("`Far`") && said.contains("2000 mm"), "{said}");
    let pages = "#part(\"title\")[#set text(size: 34pt)\nFar\n#colbreak()\n#text(size: 30pt)[farther]]";
    let said = refused(pages).expect("the second page belongs to the part");
    assert!(said.contains("page 2, title") && said.contains("`farther`"), "{said}");
    assert_eq!(below("#text(size: 11pt)[after it]"), None);
    assert_eq!(below("#part(\"foot\", text(size: 7pt)[in the hand])"), None);
}

#[test]
fn a_part_that_is_stated_is_marked_and_one_that_is_marked_is_stated() {
    let said = refused("#text(size: 34pt)[Far]").expect("no title is marked");
    assert!(said.contains("nothing as `title`"), "{said}");
    let said = below("#part(\"titel\", text(size: 34pt)[Far])").expect("nobody states a `titel`");
    assert!(said.contains("`titel`"), "{said}");
}
