//! A card's leaf: two pages back to back, ready to lie on a sheet.

use typst::layout::{Frame, FrameItem, GroupItem, Point, Transform};
use typst_layout::PagedDocument;

use super::spread::UNPRINTABLE;
use super::{Bar, bar};
use crate::model::Lamination;
use crate::typeset::geometry::size;
use crate::typeset::ink;

/// One leaf of a document.
#[derive(Debug, Clone)]
pub struct Leaf {
    /// The document's id.
    pub id: String,
    /// Which of its leaves it is, from 0.
    pub number: usize,
    /// Front and back; no back where the number of pages is odd.
    pub(super) pages: [Option<Page>; 2],
    /// Width and height, mm.
    pub(super) size: (f64, f64),
    /// Whether its border is so wide that it may lie where no printer prints.
    pub(super) white: bool,
}

/// A page without what only a document of its own can use: links, places, structure.
#[derive(Debug, Clone)]
pub(super) struct Page {
    pub frame: Frame,
    /// Whether it carries the bar of 100 mm.
    pub has_bar: bool,
}

impl Leaf {
    /// The sides that tell cards of one size, whichever way they are held.
    pub(super) fn sides(&self) -> (f64, f64) {
        let (width, height) = self.size;
        (width.min(height), width.max(height))
    }
}

/// Whether two sizes are one to what a ruler shows.
pub(super) fn alike(one: (f64, f64), other: (f64, f64)) -> bool {
    (one.0 - other.0).abs() < 0.05 && (one.1 - other.1).abs() < 0.05
}

/// The leaves of a document. A page of another size than the one before begins a leaf.
pub(super) fn of(
    id: &str,
    document: &PagedDocument,
    the_bar: &Bar,
    lamination: Option<&Lamination>,
) -> Vec<Leaf> {
    let quiet = lamination.map_or(UNPRINTABLE, |lamination| lamination.quiet.millimetres());
    let mut leaves: Vec<Leaf> = Vec::new();
    for page in document.pages() {
        let size = size(&page.frame);
        let ink = ink::of(&page.frame);
        let white = ink::white_border(size, &ink) >= UNPRINTABLE - 0.01;
        let open = leaves.last_mut().filter(|leaf| leaf.pages[1].is_none() && alike(leaf.size, size));
        let kept = kept(size, lamination, open.is_some());
        let place = bar::place(size, the_bar.size(), quiet, &ink, &kept);
        let mut frame = untagged(&page.frame);
        if let Some(place) = place {
            push(&mut frame, &the_bar.frame, place);
        }
        let page = Page { frame, has_bar: place.is_some() };
        match open {
            Some(leaf) => {
                leaf.white &= white;
                leaf.pages[1] = Some(page);
            }
            None => {
                let number = leaves.len();
                leaves.push(Leaf { id: id.to_owned(), number, pages: [Some(page), None], size, white });
            }
        }
    }
    leaves
}

/// What a bar keeps clear of: the holes of a page.
pub(in crate::typeset) fn kept(
    size: (f64, f64),
    lamination: Option<&Lamination>,
    on_back: bool,
) -> Vec<[f64; 4]> {
    let punches = lamination.map_or(&[][..], |lamination| &lamination.punches);
    let square = |(x, y): (f64, f64), half: f64| [x - half, y - half, x + half, y + half];
    let half = |diameter: f64| diameter / 2.0 + crate::typeset::keep_out::AROUND_HOLE;
    punches
        .iter()
        .map(|punch| square(punch.centre(size, on_back), half(punch.diameter.millimetres())))
        .collect()
}

/// Puts a frame onto another.
pub(super) fn push(onto: &mut Frame, frame: &Frame, by: Transform) {
    let mut group = GroupItem::new(frame.clone());
    group.transform = by;
    onto.push(Point::zero(), FrameItem::Group(group));
}

/// A frame without tags and links: those of several documents cannot be told apart.
pub(super) fn untagged(frame: &Frame) -> Frame {
    let mut plain = Frame::new(frame.size(), frame.kind());
    let items = frame.items().filter_map(|(at, item)| {
        let item = match item {
            FrameItem::Tag(_) | FrameItem::Link(..) => return None,
            FrameItem::Group(group) => {
                let frame = untagged(&group.frame);
                FrameItem::Group(GroupItem { frame, label: None, parent: None, ..group.clone() })
            }
            other => other.clone(),
        };
        Some((*at, item))
    });
    plain.push_multiple(items);
    plain
}
