//! What lamination keeps clear: a border, round corners, holes.

use typst_layout::PagedDocument;

use super::geometry::{size, to_edge};
use super::ink::{self, Ink};
use crate::model::{Lamination, Place, Punch};
use crate::words::Message;

/// Around a hole, for a punch that is not held quite straight, mm (common practice, no
/// source).
pub(super) const AROUND_HOLE: f64 = 1.0;

/// Rounding of a layout, mm.
const SLACK: f64 = 0.02;

/// Finds what would be sealed over, cut off or punched through.
///
/// # Errors
/// The worst of each page and hole, by name.
pub(super) fn check(document: &PagedDocument, lamination: &Lamination) -> Result<(), Vec<Message>> {
    let mut found = Vec::new();
    for (index, page) in document.pages().iter().enumerate() {
        let size = size(&page.frame);
        let mut ink = ink::of(&page.frame);
        ink.retain(|ink| !ink.ground);
        let number = index + 1;
        found.extend(in_border(size, &ink, lamination, number));
        // Leaves have two sides: every other page is a back.
        let on_back = index % 2 == 1;
        let punched = lamination.punches.iter().filter_map(|punch| under(size, &ink, punch, on_back, number));
        found.extend(punched);
    }
    if found.is_empty() { Ok(()) } else { Err(found) }
}

/// The ink nearest to an edge, where that is too near.
fn in_border(
    (width, height): (f64, f64),
    ink: &[Ink<'_>],
    lamination: &Lamination,
    page: usize,
) -> Option<Message> {
    let quiet = lamination.quiet.millimetres();
    // The quiet border goes round the corner with it.
    let round = lamination.corner.map_or(0.0, |corner| (corner.millimetres() - quiet).max(0.0));
    let from_edge = |ink: &Ink<'_>| {
        let [left, top, right, bottom] = ink.area;
        let straight = to_edge((width, height), ink.area);
        let corners = [(left, top), (right, top), (left, bottom), (right, bottom)].map(|(x, y)| {
            let (x, y) = (x.min(width - x) - quiet, y.min(height - y) - quiet);
            if x >= round || y >= round {
                f64::MAX
            } else {
                quiet + round - libm::hypot(round - x, round - y)
            }
        });
        corners.into_iter().fold(straight, f64::min)
    };
    let nearest = ink.iter().min_by(|a, b| from_edge(a).total_cmp(&from_edge(b)))?;
    let distance = from_edge(nearest);
    (distance < quiet - SLACK).then(|| {
        let message = match nearest.text {
            Some(text) => Message::new("run-in-border-text").with("text", text.trim()),
            None => Message::new("run-in-border"),
        };
        message
            .with("page", page)
            .with("quiet", format!("{quiet:.1}"))
            .with("distance", format!("{:.1}", distance.max(0.0)))
    })
}

/// What lies under a hole: a text rather than a line.
fn under(size: (f64, f64), ink: &[Ink<'_>], punch: &Punch, on_back: bool, page: usize) -> Option<Message> {
    let (x, y) = punch.centre(size, on_back);
    let diameter = punch.diameter.millimetres();
    let reach = diameter / 2.0 + AROUND_HOLE;
    let from_centre = |[left, top, right, bottom]: [f64; 4]| {
        libm::hypot((left - x).max(x - right).max(0.0), (top - y).max(y - bottom).max(0.0))
    };
    let hit = |ink: &&Ink<'_>| from_centre(ink.area) < reach - SLACK;
    let first = ink.iter().filter(hit).max_by_key(|ink| ink.text.is_some())?;
    let message = match first.text {
        Some(text) => Message::new("run-under-hole-text").with("text", text.trim()),
        None => Message::new("run-under-hole"),
    };
    let free = white_depth(size, ink, (x, y), reach, punch.place);
    Some(
        message
            .with("page", page)
            .with("diameter", format!("{diameter:.1}"))
            .with("inset", format!("{:.1}", punch.inset.millimetres()))
            .with_word("place", punch.place.word())
            .with("around", format!("{AROUND_HOLE:.0}"))
            // Rounded down: what is told to be free is.
            .with("free", format!("{:.1}", libm::floor(free * 10.0) / 10.0)),
    )
}

/// How deep the paper is white from the edge inwards, as wide as the hole with what is
/// kept clear around it. At a corner from its level edge.
fn white_depth(
    (width, height): (f64, f64),
    ink: &[Ink<'_>],
    (x, y): (f64, f64),
    reach: f64,
    place: Place,
) -> f64 {
    let across = ink.iter().filter(|ink| ink.area[0] < x + reach && ink.area[2] > x - reach);
    let down = ink.iter().filter(|ink| ink.area[1] < y + reach && ink.area[3] > y - reach);
    let least = |depths: &mut dyn Iterator<Item = f64>| depths.fold(f64::MAX, f64::min);
    match place {
        Place::Left | Place::Right if x < width / 2.0 => least(&mut down.map(|ink| ink.area[0])),
        Place::Left | Place::Right => least(&mut down.map(|ink| width - ink.area[2])),
        _ if y < height / 2.0 => least(&mut across.map(|ink| ink.area[1])),
        _ => least(&mut across.map(|ink| height - ink.area[3])),
    }
}
