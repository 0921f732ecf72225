//! Pages as pictures, for a screen: PNG or SVG.

use png::{Encoder, PixelDimensions};
use typst::layout::{Abs, Frame, FrameItem};
use typst::utils::Scalar;
use typst::visualize::Color;
use typst_layout::{Page, PagedDocument};
use typst_render::RenderOptions;
use typst_svg::SvgOptions;

/// Points in an inch, and millimetres.
const POINTS_PER_INCH: f64 = 72.0;
const METRES_PER_INCH: f64 = 0.0254;

/// Between the pages of a preview, mm.
const GAP: f64 = 4.0;

/// A form of picture.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Picture {
    /// Pixels.
    Png {
        /// So many to an inch of paper.
        ppi: f64,
    },
    /// Lines and glyphs.
    Svg,
}

/// Every page as a picture of its own.
pub(super) fn of(document: &PagedDocument, form: Picture) -> Result<Vec<Vec<u8>>, Vec<String>> {
    refuse_blanks(document)?;
    let picture = |page: &Page| match form {
        Picture::Png { ppi } => {
            let pixels = typst_render::render(page, &options(ppi));
            png((pixels.width(), pixels.height()), pixels.data(), ppi)
        }
        Picture::Svg => Ok(typst_svg::svg(page, &SvgOptions::default()).into_bytes()),
    };
    document.pages().iter().map(picture).collect()
}

/// All pages below one another, with a dark gap between.
pub(super) fn preview(document: &PagedDocument, ppi: f64) -> Result<Vec<u8>, Vec<String>> {
    refuse_blanks(document)?;
    let pixels = typst_render::render_merged(document, &options(ppi), Abs::mm(GAP), Some(Color::GRAY));
    png((pixels.width(), pixels.height()), pixels.data(), ppi)
}

fn options(ppi: f64) -> RenderOptions {
    RenderOptions { pixel_per_pt: Scalar::new(ppi / POINTS_PER_INCH), ..RenderOptions::default() }
}

pub(super) fn refuse_blanks(document: &PagedDocument) -> Result<(), Vec<String>> {
    let missing: Vec<String> = document.pages().iter().flat_map(|page| without_glyph(&page.frame)).collect();
    if missing.is_empty() { Ok(()) } else { Err(missing) }
}

/// Texts in which a character has no glyph: a picture would show an empty box.
fn without_glyph(frame: &Frame) -> Vec<String> {
    let mut missing = Vec::new();
    for (_, item) in frame.items() {
        match item {
            FrameItem::Group(group) => missing.extend(without_glyph(&group.frame)),
            FrameItem::Text(text) if text.glyphs.iter().any(|glyph| glyph.id == 0) => {
                missing.push(format!("no glyph for a character of `{}`", text.text));
            }
            _ => {}
        }
    }
    missing
}

/// Pixels that know how large they are on paper.
fn png((width, height): (u32, u32), colours: &[u8], ppi: f64) -> Result<Vec<u8>, Vec<String>> {
    // Pages are black on white: one channel holds all there is.
    let grey: Vec<u8> = colours.chunks_exact(4).map(|rgba| rgba[1]).collect();
    let mut bytes = Vec::new();
    let mut encoder = Encoder::new(&mut bytes, width, height);
    encoder.set_color(png::ColorType::Grayscale);
    encoder.set_depth(png::BitDepth::Eight);
    // At most some ten thousand: the number fits by far.
    let per_metre = (ppi / METRES_PER_INCH).round() as u32;
    let dimensions = PixelDimensions { xppu: per_metre, yppu: per_metre, unit: png::Unit::Meter };
    encoder.set_pixel_dims(Some(dimensions));
    let written = encoder.write_header().and_then(|mut writer| writer.write_image_data(&grey));
    written.map(|()| bytes).map_err(|error| vec![error.to_string()])
}
