//! Refuses what is too small to be read from where it is read.
//!
//! Looks at every text of a laid-out page: its capitals, as the font draws them and as
//! large as they end up on paper, must fill 15 minutes of arc.

use std::collections::BTreeSet;

use typst::introspection::{Location, Tag};
use typst::layout::{Abs, Frame, FrameItem, Transform};
use typst::text::FontInstance;
use typst_layout::PagedDocument;

use crate::document::{ASKED_FOR, Distance, Reading};
use crate::words::Message;

/// The least angle that a capital fills at the eye, in minutes of arc.
///
/// # Source
/// NUREG-0700 rev. 3, 11.4.1.5-1 (from a secondary source): 15 at least, 20 better;
/// ISO 9241-3 asks for 16 on a screen.
const LEAST_ARC: f64 = 15.0;

/// The least height of a capital read from a distance, in millimetres.
///
/// # Example
/// At 400 mm it is 1.75 mm, at 2 m 8.73 mm (0.0044 times the distance).
fn least_height(distance: Distance) -> f64 {
    let half = LEAST_ARC / 60.0 / 2.0;
    2.0 * distance.millimetres() * libm::tan(half.to_radians())
}

/// A part's mark in the templates: `<part:title>`.
const MARK: &str = "part:";

/// Finds what cannot be read, or is not marked as it has to be.
///
/// # Errors
/// Each of it by name.
pub(super) fn check(document: &PagedDocument, reading: Reading) -> Result<(), Vec<Message>> {
    let mut walk = Walk {
        reading,
        page: 0,
        parts: Vec::new(),
        met: BTreeSet::new(),
        capitals: Vec::new(),
        said: BTreeSet::new(),
        found: Vec::new(),
    };
    for (index, page) in document.pages().iter().enumerate() {
        walk.page = index + 1;
        walk.frame(&page.frame, Transform::identity());
    }
    let Walk { met, mut found, .. } = walk;
    let missing = reading.parts.iter().filter(|(name, _)| !met.contains(*name));
    found.extend(missing.map(|(name, _)| Message::new("run-part-missing").with("part", name)));
    if found.is_empty() { Ok(()) } else { Err(found) }
}

struct Walk {
    reading: Reading,
    page: usize,
    /// The parts that the walk is inside of, the innermost last.
    parts: Vec<(Location, String)>,
    met: BTreeSet<String>,
    /// The height of an H in each font met.
    capitals: Vec<(FontInstance, f64)>,
    /// What has been reported: one text of each part and size is enough.
    said: BTreeSet<(String, u64)>,
    found: Vec<Message>,
}

impl Walk {
    fn frame(&mut self, frame: &Frame, outer: Transform) {
        for (at, item) in frame.items() {
            match item {
                FrameItem::Group(group) => {
                    let here = outer.pre_concat(Transform::translate(at.x, at.y));
                    self.frame(&group.frame, here.pre_concat(group.transform));
                }
                FrameItem::Tag(Tag::Start(content, _)) => {
                    let label = content.label().map(|label| label.resolve().to_string());
                    let name = label.as_deref().and_then(|label| label.strip_prefix(MARK));
                    if let (Some(name), Some(location)) = (name, content.location()) {
                        self.enter(name, location);
                    }
                }
                FrameItem::Tag(Tag::End(location, ..)) => {
                    if let Some(begun) = self.parts.iter().rposition(|(begun, _)| begun == location) {
                        self.parts.remove(begun);
                    }
                }
                FrameItem::Text(text) if !text.text.trim().is_empty() => {
                    // How far apart a line's foot and its capitals' tops come to lie.
                    let stretched = libm::hypot(outer.kx.get(), outer.sy.get());
                    let cap = self.capitals(&text.font) * text.size.to_mm() * stretched;
                    self.text(&text.text, cap, text.size);
                }
                _ => {}
            }
        }
    }

    /// How high the font draws an H, in em: what a font says of itself may be more.
    fn capitals(&mut self, font: &FontInstance) -> f64 {
        if let Some((_, height)) = self.capitals.iter().find(|(known, _)| known == font) {
            return *height;
        }
        let face = font.ttf();
        let letter = face.glyph_index('H').and_then(|letter| face.glyph_bounding_box(letter));
        let drawn = letter.map(|area| f64::from(area.y_max) / f64::from(face.units_per_em()));
        let height = drawn.unwrap_or_else(|| font.metrics().cap_height.get());
        self.capitals.push((font.clone(), height));
        height
    }

    fn enter(&mut self, name: &str, location: Location) {
        self.met.insert(name.to_owned());
        if self.stated(name).is_none() && self.said.insert((name.to_owned(), 0)) {
            self.found.push(Message::new("run-part-unknown").with("part", name));
        }
        self.parts.push((location, name.to_owned()));
    }

    fn stated(&self, name: &str) -> Option<Distance> {
        let all = self.reading.parts.iter().chain(&ASKED_FOR);
        all.copied().find(|(part, _)| *part == name).map(|(_, distance)| distance)
    }

    fn text(&mut self, text: &str, cap: f64, size: Abs) {
        let part = self.parts.last().map(|(_, name)| name.clone()).unwrap_or_default();
        let distance = self.stated(&part).unwrap_or(self.reading.rest);
        let least = least_height(distance);
        if cap >= least || !self.said.insert((part.clone(), size.to_pt().to_bits())) {
            return;
        }
        let points = size.to_pt();
        let id = if part.is_empty() { "run-illegible" } else { "run-illegible-part" };
        let message = Message::new(id)
            .with("page", self.page)
            .with("text", text.trim())
            .with("part", &part)
            .with("size", format!("{points:.1}"))
            .with("height", format!("{cap:.2}"))
            .with("distance", distance.millimetres())
            .with("needed", format!("{:.1}", 0.05 + points * least / cap));
        self.found.push(message);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn heights_are_those_of_the_rule() {
        // The least heights of 15' in the tables of human factors: 0.0044 times the
        // distance (15 minutes are 4.36 milliradians, arithmetic).
        for (distance, height) in
            [(Distance::Hand, 1.75), (Distance::Bench, 2.18), (Distance::Arm, 2.62), (Distance::Wall, 8.73)]
        {
            assert!((least_height(distance) - height).abs() < 0.005, "{distance:?}");
        }
    }
}
