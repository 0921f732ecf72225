//! Where everything lies on the pages of a document, in millimetres.
//!
//! For checks over the layout itself: that nothing leaves its page, that no
//! text lies on another, that nothing is smaller than can be read.

use typst::layout::{Abs, Frame, FrameItem, Transform};
use typst_layout::PagedDocument;

use super::geometry::{around, size};

/// A piece of a page: a run of text or a shape.
#[derive(Debug, Clone, PartialEq)]
pub struct Piece {
    /// The page, from 1.
    pub page: usize,
    /// Width and height of the page.
    pub page_size: (f64, f64),
    /// The text, with its size in points; `None` for a shape.
    pub text: Option<(String, f64)>,
    /// Left, top, right and bottom. A text reaches from its baseline to the
    /// height of its capitals.
    pub area: [f64; 4],
    /// Whether it is an image.
    pub image: bool,
    /// Whether it was turned, as the draft mark is.
    pub turned: bool,
}

impl Piece {
    /// Whether it is a text of blanks.
    #[must_use]
    pub fn blank(&self) -> bool {
        self.text.as_ref().is_some_and(|(text, _)| text.trim().is_empty())
    }
}

/// Lists every piece of every page.
pub(super) fn of(document: &PagedDocument) -> Vec<Piece> {
    let mut pieces = Vec::new();
    for (index, page) in document.pages().iter().enumerate() {
        let mut walk = Walk { page: index + 1, page_size: size(&page.frame), pieces: &mut pieces };
        walk.frame(&page.frame, Transform::identity());
    }
    pieces
}

struct Walk<'a> {
    page: usize,
    page_size: (f64, f64),
    pieces: &'a mut Vec<Piece>,
}

impl Walk<'_> {
    fn frame(&mut self, frame: &Frame, outer: Transform) {
        for (at, item) in frame.items() {
            let here = outer.pre_concat(Transform::translate(at.x, at.y));
            match item {
                FrameItem::Group(group) => {
                    self.frame(&group.frame, here.pre_concat(group.transform));
                }
                FrameItem::Text(text) => {
                    let cap = text.font.metrics().cap_height.at(text.size);
                    let words = Some((text.text.to_string(), text.size.to_pt()));
                    self.add((words, false), here, [Abs::zero(), -cap, text.width(), Abs::zero()]);
                }
                FrameItem::Shape(shape, _) => {
                    let area = shape.geometry.bbox(None);
                    self.add((None, false), here, [area.min.x, area.min.y, area.max.x, area.max.y]);
                }
                FrameItem::Image(_, size, _) => {
                    self.add((None, true), here, [Abs::zero(), Abs::zero(), size.x, size.y]);
                }
                FrameItem::Link(..) | FrameItem::Tag(_) => {}
            }
        }
    }

    fn add(&mut self, (text, image): (Option<(String, f64)>, bool), here: Transform, local: [Abs; 4]) {
        self.pieces.push(Piece {
            page: self.page,
            page_size: self.page_size,
            text,
            image,
            area: around(here, local),
            turned: !here.kx.is_zero() || !here.ky.is_zero(),
        });
    }
}
