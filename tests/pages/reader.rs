//! Reads the text of a PDF back, glyph by glyph, through its own Unicode maps.

use hayro_interpret::font::Glyph;
use hayro_interpret::hayro_cmap::BfString;
use hayro_interpret::hayro_syntax::Pdf;
use hayro_interpret::{
    BlendMode, ClipPath, Context, Device, GlyphDrawMode, Image, InterpreterCache, InterpreterSettings, Paint,
    PathDrawMode, SoftMask, interpret_page,
};
use kurbo::{Affine, BezPath, Rect};

/// The text of every page in the order of drawing, without white space.
pub(crate) fn text_of(pdf: &[u8]) -> String {
    let pdf = Pdf::new(pdf.to_vec()).expect("the PDF can be read");
    let cache = InterpreterCache::new();
    let mut text = Text::default();
    for page in pdf.pages().iter() {
        let (area, settings) = (Rect::new(0.0, 0.0, 1e4, 1e4), InterpreterSettings::default());
        let mut context = Context::new(Affine::IDENTITY, area, &cache, pdf.xref(), settings);
        interpret_page(page, &mut context, &mut text);
    }
    super::squeezed(&text.0)
}

#[derive(Default)]
struct Text(String);

impl<'a> Device<'a> for Text {
    fn draw_glyph(&mut self, glyph: &Glyph<'a>, _: Affine, _: Affine, _: &Paint<'a>, _: &GlyphDrawMode) {
        match glyph.as_unicode() {
            Some(BfString::Char(char)) => self.0.push(char),
            Some(BfString::String(string)) => self.0.push_str(&string),
            None => self.0.push('\u{fffd}'),
        }
    }

    fn set_soft_mask(&mut self, _: Option<SoftMask<'a>>) {}
    fn set_blend_mode(&mut self, _: BlendMode) {}
    fn draw_path(&mut self, _: &BezPath, _: Affine, _: &Paint<'a>, _: &PathDrawMode) {}
    fn push_clip_path(&mut self, _: &ClipPath) {}
    fn push_transparency_group(&mut self, _: f32, _: Option<SoftMask<'a>>, _: BlendMode) {}
    fn draw_image(&mut self, _: Image<'a, '_>, _: Affine) {}
    fn pop_clip_path(&mut self) {}
    fn pop_transparency_group(&mut self) {}
}
