//! The layout of every page: a code for where everything lies, and pictures of a few.
//!
//! A changed code is a changed page: look at it before you accept it with
//! `UPDATE_EXPECT=1 cargo test --release --test pages layout`.

use std::fs;
use std::path::{Path, PathBuf};

use bayleaf::typeset::Picture;
use expect_test::expect_file;
use sha2::{Digest, Sha256};

use super::{built, demo, documents, job, specs, typesetter};

/// Pages that are kept as pictures: one of each way of laying out.
const PICTURES: [(&str, usize); 8] = [
    ("CUR-EVAP", 1),
    ("CUR-EVAP-WALL", 1),
    ("CUR-SYSTEM", 1),
    ("CUR-C2", 1),
    ("HER-MODES", 1),
    ("HER-MIX", 1),
    ("CUR-REQUEST", 2),
    ("CUR-SENSORS.AMB-12", 1),
];

/// Small, and still enough to see a block that moved.
const PPI: f64 = 36.0;

/// The greatest mean difference of two pictures that are the same page, of 255: what
/// another processor's arithmetic may do to the edges of glyphs.
const SAME: f64 = 0.5;

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/pages")
}

#[test]
fn everything_lies_where_it_lay() {
    let typesetter = typesetter();
    let mut lines = String::new();
    for document in documents(&demo()) {
        let pieces = typesetter.pieces(job(&document)).expect("it lays out");
        let mut hash = Sha256::new();
        for piece in &pieces {
            // To a twentieth of a millimetre.
            let area = piece.area.map(|edge| (edge * 20.0).round());
            hash.update(format!("{} {area:?} {:?}\n", piece.page, piece.text));
        }
        let code: String = hash.finalize().iter().take(6).map(|byte| format!("{byte:02x}")).collect();
        let pages = pieces.iter().map(|piece| piece.page).max().unwrap_or_default();
        lines.push_str(&format!("{code} {pages} {}\n", document.id));
    }
    expect_file![folder().join("layout.txt")].assert_eq(&lines);
}

/// A picture's size, and its grey pixels.
fn pixels(png: &[u8]) -> ((u32, u32), Vec<u8>) {
    let mut reader = png::Decoder::new(std::io::Cursor::new(png)).read_info().expect("it is a PNG");
    let mut grey = vec![0; reader.output_buffer_size().expect("it has a size")];
    let info = reader.next_frame(&mut grey).expect("it has pixels");
    ((info.width, info.height), grey)
}

#[test]
fn pages_look_as_they_looked() {
    let update = std::env::var_os("UPDATE_EXPECT").is_some();
    let documents = documents(&demo());
    for (id, page) in PICTURES {
        let document = documents.iter().find(|document| document.id == id).expect("it is in the demo set");
        let pictures =
            typesetter().pictures(job(document), Picture::Png { ppi: PPI }).expect("it can be drawn");
        let path = folder().join("pictures").join(format!("{id}-{page}.png"));
        let drawn = &pictures[page - 1];
        if update {
            fs::write(&path, drawn).expect("pictures can be written");
        }
        let kept = fs::read(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
        let ((size, new), (old_size, old)) = (pixels(drawn), pixels(&kept));
        assert_eq!(size, old_size, "{id} page {page}");
        let off: f64 = new.iter().zip(&old).map(|(a, b)| f64::from(a.abs_diff(*b))).sum();
        let mean = off / f64::from(size.0 * size.1);
        assert!(
            mean < SAME,
            "{id} page {page} looks different: {mean:.2} of 255; look at {}",
            path.display()
        );
    }
}

/// A head without what it heads: the last line above the foot of a page is never a section's.
#[test]
fn no_head_stands_alone_at_the_end_of_a_page() {
    /// Sections are this large or larger, and begin with a capital.
    const SECTION: f64 = 9.4;
    /// A head begins at the margin, which is no wider than this, mm.
    const EDGE: f64 = 14.5;
    /// The foot of a page begins so far above its edge, mm.
    const FOOT: f64 = 21.0;
    let typesetter = typesetter();
    for document in documents(&demo()) {
        let pieces = typesetter.pieces(job(&document)).expect("it lays out");
        let last = pieces.iter().map(|piece| piece.page).max().unwrap_or_default();
        for page in 1..last {
            let body = pieces.iter().filter(|piece| {
                let above = piece.area[3] < piece.page_size.1 - FOOT;
                piece.page == page && above && !piece.turned && piece.text.is_some()
            });
            let lowest = body.max_by(|one, other| one.area[3].total_cmp(&other.area[3]));
            let Some(((text, points), left)) =
                lowest.and_then(|piece| Some((piece.text.as_ref()?, piece.area[0])))
            else {
                continue;
            };
            // Within a row of a table so large a text is no head.
            let head = left < EDGE
                && *points >= SECTION
                && text.starts_with(char::is_uppercase)
                && !text.contains('.');
            assert!(!head, "{} page {page} ends with `{text}`", document.id);
        }
    }
}

/// No line of a title hangs out of its black band.
#[test]
fn titles_stay_in_their_bands() {
    let typesetter = typesetter();
    let mut titles = 0;
    for model in [demo(), built(&specs::extreme())] {
        for document in documents(&model) {
            let pieces = typesetter.pieces(job(&document)).expect("it lays out");
            // The first shape of a page that is as wide as a band and higher than a line.
            let band = pieces.iter().find(|piece| {
                let [left, top, right, bottom] = piece.area;
                piece.text.is_none() && right - left > 60.0 && bottom - top > 8.0 && top < 16.0
            });
            let [_, top, right, bottom] = band.expect("every page has a band").area;
            for piece in
                pieces.iter().filter(|piece| piece.page == 1 && piece.text.is_some() && !piece.turned)
            {
                let [left, begin, _, end] = piece.area;
                // Capitals that begin within the band keep clear of its edges.
                if left < right && begin < bottom - 0.2 {
                    let inside = begin > top + 0.8 && end < bottom - 0.8;
                    assert!(inside, "{}: {:?} hangs out of the band", document.id, piece.text);
                    titles += 1;
                }
            }
        }
    }
    assert!(titles > 200, "only {titles} texts in bands");
}

/// A page that says no more than what letters stand for would be a page for nothing.
#[test]
fn sources_never_have_a_page_to_themselves() {
    /// Head and code end above this, mm.
    const HEAD: f64 = 60.0;
    let typesetter = typesetter();
    for document in documents(&demo()) {
        let pieces = typesetter.pieces(job(&document)).expect("it lays out");
        let list = pieces.iter().find(|piece| piece.text.as_ref().is_some_and(|(text, _)| text == "Sources"));
        if let Some(list) = list {
            assert!(list.area[1] > HEAD, "{} page {}: sources alone", document.id, list.page);
        }
    }
}
