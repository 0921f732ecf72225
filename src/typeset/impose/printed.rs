//! One side of a printed sheet: its cards, and what stands beside them.

use schemars::JsonSchema;
use serde::Serialize;
use typst::layout::{Abs, Frame, Size};

use super::Press;
use super::arrange::Cell;
use super::leaf::{self, Leaf, push};
use super::marks::Guides;
use super::side::Side;
use super::spread::UNPRINTABLE;
use crate::typeset::geometry::moved;

/// From a card to what is written beside its marks, mm.
const BESIDE_MARKS: f64 = 5.5;

/// What the template of a sheet receives for each side.
#[derive(Serialize, JsonSchema)]
pub(super) struct SideData {
    /// Where to cut, to round and to punch.
    guides: Guides,
    /// Where the bar stands, where no card has it: x, y, and whether it reads upwards.
    pub bar: Option<(f64, f64, bool)>,
    /// What is written beside the cards; null where there is no room.
    note: Option<Note>,
}

/// What is written beside the cards.
#[derive(Clone, Serialize, JsonSchema)]
struct Note {
    /// Its middle, from the left.
    x: f64,
    /// Its middle, from the top.
    y: f64,
    /// Whether it reads upwards.
    upright: bool,
    /// The number of the sheet.
    number: usize,
    /// How many sheets there are.
    of: usize,
    /// Whether this is the front of the sheet.
    front: bool,
    /// Width and height that the cards are cut to.
    cut: [String; 2],
    /// Inside of the smallest pouch that seals the card.
    pouch: Option<[String; 2]>,
}

/// One side of a sheet with its cards.
pub(super) struct PrintedSide<'a> {
    pub press: &'a Press,
    pub side: Side,
    pub cells: &'a [Cell],
    pub leaves: &'a [Leaf],
}

impl PrintedSide<'_> {
    /// The pages on this side, each with its place; a leaf without a back has none there.
    pub(super) fn pages(&self) -> impl Iterator<Item = (&leaf::Page, &Leaf, &Cell)> {
        let face = usize::from(self.side != Side::Front);
        let placed = self.leaves.iter().zip(self.cells);
        placed.filter_map(move |(leaf, cell)| Some((leaf.pages[face].as_ref()?, leaf, cell)))
    }

    pub(super) fn has_bar(&self) -> bool {
        self.pages().any(|(page, ..)| page.has_bar)
    }

    /// The cards alone.
    pub(super) fn cards(&self) -> Frame {
        let (width, height) = self.press.sheet;
        let mut frame = Frame::hard(Size::new(Abs::mm(width), Abs::mm(height)));
        for (page, leaf, cell) in self.pages() {
            push(&mut frame, &page.frame, self.side.placed(self.press.sheet, cell, leaf.size));
        }
        frame
    }

    /// The marks, and what is written beside the cards. A side without a page is left blank.
    pub(super) fn data(&self, bar: (f64, f64), (number, of): (usize, usize)) -> SideData {
        if self.pages().next().is_none() {
            return SideData { guides: Guides::default(), bar: None, note: None };
        }
        let sheet = self.press.sheet;
        let lamination = self.press.lamination.as_ref();
        let cells = &self.cells[..self.leaves.len().min(self.cells.len())];
        let corner = lamination.and_then(|lamination| lamination.corner).map(|corner| corner.millimetres());
        let mut guides = Guides::of(sheet, cells, corner, self.side);
        for punch in lamination.map_or(&[][..], |lamination| &lamination.punches) {
            let holes = self.leaves.iter().zip(cells).map(|(leaf, cell)| {
                let on_front =
                    moved(Side::Front.placed(sheet, cell, leaf.size), punch.centre(leaf.size, false));
                let (x, y) = moved(self.side.through(sheet), on_front);
                [x, y, punch.diameter.millimetres()]
            });
            guides.holes.extend(holes);
        }
        let mut strips = self.strips(cells, bar.1).into_iter();
        let bar = if self.has_bar() { None } else { strips.next() };
        let size = self.leaves.first().map_or((0.0, 0.0), |leaf| leaf.size);
        let note = strips.next().map(|(x, y, upright)| {
            let pouch = lamination.map(|lamination| {
                let seal = 2.0 * lamination.seal.millimetres();
                [size.0 + seal, size.1 + seal].map(millimetres)
            });
            let cut = [size.0, size.1].map(millimetres);
            Note { x, y, upright, number, of, front: self.side == Side::Front, cut, pouch }
        });
        SideData { guides, bar, note }
    }

    /// Where a line of this height can stand clear of cards and marks, as far out as is
    /// printed: its middle, and whether it reads upwards. At the foot, the head, the sides.
    fn strips(&self, cells: &[Cell], high: f64) -> Vec<(f64, f64, bool)> {
        let (width, height) = self.press.sheet;
        let mut around = [f64::MAX, f64::MAX, f64::MIN, f64::MIN];
        for cell in cells {
            let [left, top, right, bottom] = self.side.edges(self.press.sheet, cell);
            around = [around[0].min(left), around[1].min(top), around[2].max(right), around[3].max(bottom)];
        }
        let [left, top, right, bottom] = around;
        let (out, room) = (UNPRINTABLE + high / 2.0, UNPRINTABLE + high + BESIDE_MARKS);
        let strips = [
            (height - bottom, (width / 2.0, height - out, false)),
            (top, (width / 2.0, out, false)),
            (left, (out, height / 2.0, true)),
            (width - right, (width - out, height / 2.0, true)),
        ];
        strips.into_iter().filter(|(free, _)| *free >= room).map(|(_, place)| place).collect()
    }
}

/// A length as a ruler shows it.
pub(super) fn millimetres(length: f64) -> String {
    let text = format!("{length:.1}");
    text.strip_suffix(".0").map_or(text.clone(), str::to_owned)
}
