//! What a page prints, and where: every text, shape and image as a rectangle.

use typst::layout::{Abs, Frame, FrameItem, Transform};
use typst::visualize::Color;

use super::geometry::{around, to_edge};

/// How far letters reach below their line, in parts of their size: more than any of
/// the fonts at hand.
const DESCENT: f64 = 0.25;

/// A piece of ink, mm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Ink<'a> {
    /// Left, top, right and bottom.
    pub area: [f64; 4],
    /// What it says, where it is a text.
    pub text: Option<&'a str>,
    /// Whether it is a white ground, such as the quiet zone of a code: it keeps others out,
    /// and may itself be cut off.
    pub ground: bool,
}

impl Ink<'_> {
    /// Whether it reaches into a rectangle.
    pub(super) fn touches(&self, [left, top, right, bottom]: [f64; 4]) -> bool {
        let [l, t, r, b] = self.area;
        l < right && r > left && t < bottom && b > top
    }
}

/// All ink of a page, in the order of drawing. A text across the page, as the draft
/// mark is, counts as none: it may be cut and punched.
pub(super) fn of(frame: &Frame) -> Vec<Ink<'_>> {
    let mut found = Vec::new();
    walk(frame, Transform::identity(), &mut found);
    found
}

fn walk<'a>(frame: &'a Frame, outer: Transform, found: &mut Vec<Ink<'a>>) {
    for (at, item) in frame.items() {
        let here = outer.pre_concat(Transform::translate(at.x, at.y));
        match item {
            FrameItem::Group(group) => walk(&group.frame, here.pre_concat(group.transform), found),
            FrameItem::Text(text) => {
                let cap = text.font.metrics().cap_height.at(text.size);
                let slanted = !(here.kx.is_zero() || here.sx.is_zero());
                if !text.text.trim().is_empty() && !slanted {
                    let local = [Abs::zero(), -cap, text.width(), text.size * DESCENT];
                    found.push(Ink { area: around(here, local), text: Some(&text.text), ground: false });
                }
            }
            FrameItem::Shape(shape, _) => {
                if shape.fill.is_some() || shape.stroke.is_some() {
                    let area = shape.bbox(true);
                    let local = [area.min.x, area.min.y, area.max.x, area.max.y];
                    let ground = shape.stroke.is_none() && shape.fill == Some(Color::WHITE.into());
                    found.push(Ink { area: around(here, local), text: None, ground });
                }
            }
            FrameItem::Image(_, size, _) => {
                let local = [Abs::zero(), Abs::zero(), size.x, size.y];
                found.push(Ink { area: around(here, local), text: None, ground: false });
            }
            FrameItem::Link(..) | FrameItem::Tag(_) => {}
        }
    }
}

/// The narrowest white border of a page: how far its ink keeps from every edge.
pub(super) fn white_border(size: (f64, f64), ink: &[Ink<'_>]) -> f64 {
    ink.iter().filter(|ink| !ink.ground).map(|ink| to_edge(size, ink.area)).fold(f64::MAX, f64::min)
}
