//! The code of every page, read back the way a telephone would: from its pixels.

use bayleaf::document::Document;
use hayro::hayro_interpret::InterpreterSettings;
use hayro::hayro_syntax::Pdf;
use hayro::vello_cpu::color::palette::css::WHITE;
use hayro::{RenderCache, RenderSettings, render};
use rqrr::PreparedImage;
use serde_json::Value;

use super::reader::text_of;

/// Pixels to a point: 200 dots per inch, a plain office scanner.
const SCALE: f32 = 200.0 / 72.0;

/// What the symbols on every page of a PDF say, decoded by a reader of another make.
fn read(pdf: &[u8]) -> Vec<Vec<String>> {
    let pdf = Pdf::new(pdf.to_vec()).expect("the PDF can be read");
    let cache = RenderCache::new();
    let settings = RenderSettings { x_scale: SCALE, y_scale: SCALE, bg_color: WHITE, ..Default::default() };
    let page = |page| {
        let pixels = render(page, &cache, &InterpreterSettings::default(), &settings);
        let (width, height) = (usize::from(pixels.width()), usize::from(pixels.height()));
        let grey = |x: usize, y: usize| pixels.data()[y * width + x].g;
        let mut image = PreparedImage::prepare_from_greyscale(width, height, grey);
        let grids = image.detect_grids();
        grids.iter().map(|grid| grid.decode().expect("a symbol that is found can be read").1).collect()
    };
    pdf.pages().iter().map(page).collect()
}

#[test]
fn every_page_says_in_its_symbol_what_is_typed_beside_it() {
    let typesetter = super::typesetter();
    let mut documents = super::documents(&super::demo());
    documents.extend(super::documents(&super::built(&super::specs::extreme())));
    for document in &documents {
        let printed = typesetter.pdf(super::job(document)).expect("it exports");
        let wanted = typed(document);
        let pages = read(&printed.pdf);
        assert_eq!(pages.len(), printed.pages);
        for (index, found) in pages.iter().enumerate() {
            assert_eq!(found, std::slice::from_ref(&wanted), "{} page {}", document.id, index + 1);
        }
        // Twice a page: in the band beside the symbol, and at the foot.
        let text = text_of(&printed.pdf);
        let typed = text.matches(&super::squeezed(&wanted)).count();
        assert_eq!(typed, 2 * printed.pages, "{}: {wanted}", document.id);
    }
}

#[test]
fn a_symbol_is_large_and_stands_alone() {
    let typesetter = super::typesetter();
    let mut documents = super::documents(&super::demo());
    documents.extend(super::documents(&super::built(&super::specs::extreme())));
    for document in &documents {
        let pieces = typesetter.pieces(super::job(document)).expect("it lays out");
        let modules = data(document)["furniture"]["code"]["modules"].as_f64().expect("a number");
        let symbols: Vec<_> = pieces.iter().filter(|piece| piece.image).collect();
        let pages = pieces.iter().map(|piece| piece.page).max().expect("there are pages");
        assert_eq!(symbols.len(), pages, "{}: one on every page", document.id);
        for symbol in symbols {
            let [left, top, right, bottom] = symbol.area;
            let side = right - left;
            // 20 mm is a usual least size in print (kitmul.com QR notes, a weak source);
            // half a millimetre a module is common practice, no source.
            assert!(side >= 20.0 - 0.01 && side >= 0.5 * modules - 0.01, "{}: {side} mm", document.id);
            // Four modules of quiet zone: ISO/IEC 18004 (qrcode.com, "how to", quotes it).
            let quiet = 4.0 * side / modules - 0.01;
            let near = pieces.iter().filter(|piece| piece.page == symbol.page && !piece.turned);
            for piece in near.filter(|piece| *piece != symbol && !piece.blank()) {
                let [l, t, r, b] = piece.area;
                let clear =
                    r <= left - quiet || l >= right + quiet || b <= top - quiet || t >= bottom + quiet;
                // The white ground of the symbol itself reaches to its quiet zone.
                let ground = piece.text.is_none() && l <= left && r >= right && t <= top && b >= bottom;
                assert!(clear || ground, "{} page {}: {piece:?} beside {symbol:?}", document.id, piece.page);
            }
        }
    }
}

fn data(document: &Document) -> Value {
    serde_json::from_slice(&document.data).expect("data is JSON")
}

fn typed(document: &Document) -> String {
    let data = data(document);
    let part = |key: &str| data["furniture"][key].as_str().expect("a text").to_owned();
    let typed = [part("id"), part("revision"), part("fingerprint")].join(" ");
    assert_eq!(data["furniture"]["code"]["text"], Value::String(typed.clone()));
    typed
}
