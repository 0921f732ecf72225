//! Cards on sheets: backs behind their fronts, every page once, the bar as long as it says.

use bayleaf::document::Document;
use bayleaf::typeset::{Flip, Imposed, Job, Laid, Leaf, Piece, Press, TEMPLATES, Typesetter};
use bayleaf::words::{Language, Words};
use hayro::hayro_interpret::InterpreterSettings;
use hayro::hayro_syntax::Pdf;
use hayro::vello_cpu::color::palette::css::WHITE;
use hayro::{RenderCache, RenderSettings, render};

use super::reader::text_of;

const A4: (f64, f64) = (210.0, 297.0);
const LETTER: (f64, f64) = (215.9, 279.4);

/// Width and height of cards, mm: ISO 216, half letter, 4 × 6 in, 100 × 150 mm, one lying.
const CARDS: [(f64, f64); 6] =
    [(148.0, 210.0), (105.0, 148.0), (139.7, 215.9), (101.6, 152.4), (100.0, 150.0), (210.0, 148.0)];

/// Where the mark of a test card is: from the left of a front, from the right of a back, and
/// from the top; its width and height. Of no other piece.
const MARK: (f64, f64, f64, f64) = (17.0, 23.0, 7.0, 3.0);

/// A card with nothing on it but its mark and its page.
const CARD: &str = "#let d = json(\"/data.json\")\n\
    #set page(width: d.w * 1mm, height: d.h * 1mm, margin: 8mm)\n\
    #set text(font: \"DejaVu Sans\", stretch: 75%, fallback: false, size: 9pt)\n\
    #set document(title: \"Card\")\n\
    #for n in range(d.pages) {\n\
      if n > 0 { pagebreak() }\n\
      let mark = rect(width: 7mm, height: 3mm, fill: black)\n\
      if calc.even(n) { place(top + left, dx: 9mm, dy: 15mm, mark) }\n\
      else { place(top + right, dx: -9mm, dy: 15mm, mark) }\n\
      place(bottom + left, d.id + \" page \" + str(n + 1))\n\
    }\n";

fn press(sheet: (f64, f64), flip: Flip) -> Press {
    Press { sheet, flip, lamination: None, language: Language::English, date: super::date() }
}

fn typesetter() -> Typesetter {
    let templates: Vec<_> = TEMPLATES.iter().copied().chain([("card.typ", CARD)]).collect();
    Typesetter::with_templates(&templates, &Words::english().paper_json())
}

/// The leaves of a test card.
fn card(typesetter: &Typesetter, id: &str, size: (f64, f64), pages: usize, press: &Press) -> Vec<Leaf> {
    let data = format!("{{\"id\":\"{id}\",\"w\":{},\"h\":{},\"pages\":{pages}}}", size.0, size.1);
    let job = Job {
        id,
        template: "card.typ",
        data: data.as_bytes(),
        pages: 0,
        sides: 0,
        reading: super::READ,
        lamination: None,
        date: super::date(),
        attached: &[],
    };
    match typesetter.for_sheet(job, press).expect("it lays out") {
        Laid::Leaves(leaves, counted) => {
            assert_eq!((counted, leaves.len()), (pages, pages.div_ceil(2)));
            leaves
        }
        Laid::Whole(..) => panic!("a card is smaller than the sheet"),
    }
}

/// A side seen from the front of its sheet: what is left on a back lies behind what is right.
fn seen([left, top, right, bottom]: [f64; 4], page: usize, press: &Press) -> [f64; 4] {
    let (width, height) = press.sheet;
    match (page % 2, press.flip) {
        (1, _) => [left, top, right, bottom],
        (_, Flip::Long) => [width - right, top, width - left, bottom],
        (_, Flip::Short) => [left, height - bottom, right, height - top],
    }
}

fn is_mark(piece: &&Piece) -> bool {
    let [left, top, right, bottom] = piece.area;
    let (one, other) = (right - left, bottom - top);
    let (_, _, width, height) = MARK;
    let is = |a: f64, b: f64| (a - width).abs() < 0.01 && (b - height).abs() < 0.01;
    piece.text.is_none() && (is(one, other) || is(other, one))
}

/// The marks of a sheet's side, as seen from its front.
fn marks(pieces: &[Piece], page: usize, press: &Press) -> Vec<[f64; 4]> {
    let on_it = pieces.iter().filter(|piece| piece.page == page).filter(is_mark);
    on_it.map(|piece| seen(piece.area, page, press)).collect()
}

#[test]
fn backs_lie_behind_their_fronts_within_a_fifth_of_a_millimetre() {
    let typesetter = typesetter();
    for flip in [Flip::Long, Flip::Short] {
        for sheet in [A4, LETTER] {
            let press = press(sheet, flip);
            let fits = |(width, height): &(f64, f64)| {
                width.min(*height) <= sheet.0
                    && width.max(*height) <= sheet.1
                    && (*width, *height) != (210.0, 297.0)
            };
            for size in CARDS.into_iter().filter(fits) {
                let leaves: Vec<Leaf> =
                    ["A", "B", "C"].iter().flat_map(|id| card(&typesetter, id, size, 4, &press)).collect();
                let pieces = typesetter.sheet_pieces(leaves, &press).expect("it lays out");
                let last = pieces.iter().map(|piece| piece.page).max().expect("there are sheets");
                let mut found = 0;
                for front in (1..=last).step_by(2) {
                    let (fronts, backs) = (marks(&pieces, front, &press), marks(&pieces, front + 1, &press));
                    assert_eq!(fronts.len(), backs.len(), "{size:?} on {sheet:?}");
                    found += fronts.len();
                    for mark in &fronts {
                        let behind =
                            |other: &[f64; 4]| mark.iter().zip(other).all(|(a, b)| (a - b).abs() < 0.2);
                        assert!(
                            backs.iter().any(behind),
                            "{size:?} on {sheet:?}, {flip:?}: {mark:?} {backs:?}"
                        );
                    }
                }
                assert_eq!(found, 6, "{size:?} on {sheet:?}");
            }
        }
    }
}

#[test]
fn every_page_of_a_card_is_on_the_sheets_once() {
    let typesetter = typesetter();
    let press = press(A4, Flip::Long);
    for count in [1, 2, 3, 5] {
        // Of mixed sizes, with one, two, three and four pages.
        let cards: Vec<(String, (f64, f64), usize)> =
            (0..count).map(|n| (format!("CARD{n}"), CARDS[n % 3], n % 4 + 1)).collect();
        let leaves = cards.iter().flat_map(|(id, size, pages)| card(&typesetter, id, *size, *pages, &press));
        let leaves: Vec<Leaf> = leaves.collect();
        let Imposed { pdf, without_bar, .. } = typesetter.impose(leaves, &press).expect("it exports");
        assert_eq!(without_bar, 0);
        let text = text_of(&pdf);
        for (id, _, pages) in &cards {
            for page in 1..=4 {
                let wanted = usize::from(page <= *pages);
                assert_eq!(text.matches(&format!("{id}page{page}")).count(), wanted, "{id} page {page}");
            }
        }
    }
}

#[test]
fn what_fits_no_sheet_is_refused_by_its_size() {
    let (typesetter, press) = (typesetter(), press(LETTER, Flip::Long));
    let data = b"{\"id\":\"X\",\"w\":210,\"h\":297,\"pages\":1}";
    let job = Job {
        id: "X",
        template: "card.typ",
        data,
        pages: 0,
        sides: 0,
        reading: super::READ,
        lamination: None,
        date: super::date(),
        attached: &[],
    };
    let failure = typesetter.for_sheet(job, &press).expect_err("A4 is higher than letter");
    let said = failure.said(&Words::english());
    assert!(said.contains("210 × 297 mm does not fit a sheet of 215.9 × 279.4 mm"), "{said}");
}

/// The leaves of all documents of the demo, and those that are as large as the sheet.
fn demo_on(typesetter: &Typesetter, press: &Press) -> (Vec<Document>, Vec<Leaf>, Vec<Vec<u8>>) {
    let (mut documents, mut leaves, mut whole) = (Vec::new(), Vec::new(), Vec::new());
    for document in super::documents(&super::demo()) {
        match typesetter.for_sheet(super::job(&document), press).expect("the demo fits A4") {
            Laid::Leaves(laid, _) => {
                leaves.extend(laid);
                documents.push(document);
            }
            Laid::Whole(printed, without_bar) => {
                assert!(without_bar.is_empty(), "{}: no bar on pages {without_bar:?}", document.id);
                whole.push(printed.pdf);
            }
        }
    }
    (documents, leaves, whole)
}

#[test]
fn every_printed_page_of_the_demo_has_a_bar_and_no_ink_where_no_printer_prints() {
    let (typesetter, press) = (super::typesetter(), press(A4, Flip::Short));
    let (documents, leaves, whole) = demo_on(&typesetter, &press);
    assert!(documents.len() > 30 && whole.len() > 30);
    for pdf in whole {
        assert!(text_of(&pdf).contains("measure:100mm;ifnot,printat100%"));
    }
    let pieces = typesetter.sheet_pieces(leaves.clone(), &press).expect("it lays out");
    for piece in pieces
        .iter()
        .filter(|piece| !piece.turned || piece.text.as_ref().is_none_or(|(text, _)| text != "DRAFT"))
    {
        // The code's white ground is no ink; it has no colour to be seen here.
        let [left, top, right, bottom] = piece.area;
        let inside = left >= 4.7 && top >= 4.7 && right <= 210.0 - 4.7 && bottom <= 297.0 - 4.7;
        assert!(inside || piece.blank(), "page {}: {piece:?}", piece.page);
    }
    let last = pieces.iter().map(|piece| piece.page).max().expect("there are sheets");
    for page in 1..=last {
        let of_page: Vec<&Piece> = pieces.iter().filter(|piece| piece.page == page).collect();
        let has_bar = of_page
            .iter()
            .any(|piece| piece.text.as_ref().is_some_and(|(text, _)| text.starts_with("measure: 100")));
        assert!(has_bar || of_page.is_empty(), "page {page}");
    }
    let imposed = typesetter.impose(leaves, &press).expect("it exports to PDF/A-2u");
    let text = text_of(&imposed.pdf);
    for document in documents {
        // The typed code of a page stands twice on it.
        let furniture: serde_json::Value = serde_json::from_slice(&document.data).expect("data is JSON");
        let code = furniture["furniture"]["code"]["text"].as_str().expect("a text");
        let pages = typesetter.page_count(super::job(&document)).expect("it lays out");
        assert_eq!(text.matches(&super::squeezed(code)).count(), 2 * pages, "{}", document.id);
    }
}

/// Pixels to a millimetre of the rasters below.
const SCALE: f64 = 20.0;

/// The dark pixels of each page, a row after the other.
fn rasters(pdf: &[u8]) -> Vec<Raster> {
    let pdf = Pdf::new(pdf.to_vec()).expect("the PDF can be read");
    let scale = (SCALE * 25.4 / 72.0) as f32;
    let settings = RenderSettings { x_scale: scale, y_scale: scale, bg_color: WHITE, ..Default::default() };
    let cache = RenderCache::new();
    let page = |page| {
        let pixels = render(page, &cache, &InterpreterSettings::default(), &settings);
        let dark = pixels.data().iter().map(|pixel| pixel.g < 128).collect();
        Raster { width: usize::from(pixels.width()), dark }
    };
    pdf.pages().iter().map(page).collect()
}

struct Raster {
    width: usize,
    dark: Vec<bool>,
}

impl Raster {
    /// Left, top, right and bottom of what is dark within a rectangle, mm.
    fn dark_in(&self, [left, top, right, bottom]: [f64; 4]) -> [f64; 4] {
        let pixel = |length: f64| (length * SCALE).round() as usize;
        let mut around = [f64::MAX, f64::MAX, f64::MIN, f64::MIN];
        for y in pixel(top)..pixel(bottom) {
            for x in pixel(left)..pixel(right) {
                if self.dark[y * self.width + x] {
                    let (x, y) = (x as f64 / SCALE, y as f64 / SCALE);
                    let step = 1.0 / SCALE;
                    around = [
                        around[0].min(x),
                        around[1].min(y),
                        around[2].max(x + step),
                        around[3].max(y + step),
                    ];
                }
            }
        }
        around
    }
}

#[test]
fn on_the_raster_backs_lie_behind_fronts_and_the_bar_measures_100_mm() {
    let typesetter = typesetter();
    // A card that is alone on its sheet, and one of each small size; four of A6 go on A4.
    let tried =
        [(LETTER, (148.0, 210.0)), (A4, (105.0, 148.0)), (A4, (101.6, 152.4)), (LETTER, (100.0, 150.0))];
    let flips = [Flip::Long, Flip::Short];
    for (flip, (sheet, size)) in flips.into_iter().flat_map(|flip| tried.map(|tried| (flip, tried))) {
        let press = press(sheet, flip);
        let leaves = card(&typesetter, "A", size, 2, &press);
        let pieces = typesetter.sheet_pieces(leaves.clone(), &press).expect("it lays out");
        let imposed = typesetter.impose(leaves, &press).expect("it exports");
        let pages = rasters(&imposed.pdf);
        assert_eq!(pages.len(), 2);
        let mut seen_marks = Vec::new();
        for (index, raster) in pages.iter().enumerate() {
            let number = index + 1;
            let here = |piece: &&Piece| piece.page == number;
            let mark = pieces.iter().filter(here).find(is_mark).expect("it has a mark").area;
            let around = [mark[0] - 2.0, mark[1] - 2.0, mark[2] + 2.0, mark[3] + 2.0];
            seen_marks.push(seen(raster.dark_in(around), number, &press));
            // Beside a small card the bar may stand on end; it is the same one.
            if size.0 < 140.0 {
                continue;
            }
            // The ticks at both ends of the bar: as high as it, and nothing else there is upright.
            let ticks: Vec<&Piece> = pieces
                .iter()
                .filter(here)
                .filter(|piece| {
                    let [left, top, right, bottom] = piece.area;
                    piece.text.is_none() && right - left < 0.01 && (bottom - top - 2.6).abs() < 0.01
                })
                .collect();
            assert_eq!(ticks.len(), 2, "{ticks:?}");
            let on_frames = (ticks[1].area[0] - ticks[0].area[0]).abs();
            assert!((on_frames - 100.0).abs() < 0.001, "{on_frames} mm");
            let middle = |tick: &Piece| {
                // Above the line between the ticks.
                let [x, top, ..] = tick.area;
                let [left, _, right, _] = raster.dark_in([x - 0.6, top + 0.1, x + 0.6, top + 0.9]);
                (left + right) / 2.0
            };
            let measured = (middle(ticks[1]) - middle(ticks[0])).abs();
            assert!((measured - 100.0).abs() < 0.1, "{measured} mm");
        }
        let apart = seen_marks[0].iter().zip(&seen_marks[1]).map(|(a, b)| (a - b).abs()).fold(0.0, f64::max);
        assert!(apart < 0.2, "{apart} mm: {seen_marks:?}");
    }
}
