//! Refuses pages whose text does not fit them: no text past the edge, none on another.
//!
//! Type is never made smaller than can be read, so what is too much for a small paper shows
//! as texts in each other's place. Such a page does not reach a printer.

use super::pieces::Piece;
use crate::words::Message;

/// What stays free along the edges, in millimetres: about what a printer cannot reach.
const EDGE: f64 = 4.0;

/// Texts share less than this in both directions, in millimetres.
const SHARED: f64 = 0.3;

/// Finds what leaves its page or lies on something else; the first on each page.
pub(super) fn check(pieces: &[Piece]) -> Result<(), Message> {
    let mut texts: Vec<&Piece> =
        pieces.iter().filter(|piece| piece.text.is_some() && !piece.turned && !piece.blank()).collect();
    for piece in &texts {
        let [left, top, right, bottom] = piece.area;
        let (width, height) = piece.page_size;
        if left < EDGE || top < EDGE || right > width - EDGE || bottom > height - EDGE {
            return Err(said("run-past-edge", piece));
        }
    }
    // From top to bottom: only neighbours in that order can meet.
    texts.sort_by(|a, b| a.page.cmp(&b.page).then(a.area[1].total_cmp(&b.area[1])));
    for (index, one) in texts.iter().enumerate() {
        let near = texts[index + 1..]
            .iter()
            .take_while(|other| other.page == one.page && other.area[1] < one.area[3] - SHARED);
        for other in near {
            let shared = |low: usize, high: usize| {
                one.area[high].min(other.area[high]) - one.area[low].max(other.area[low])
            };
            if shared(0, 2) > SHARED && shared(1, 3) > SHARED {
                let other = other.text.as_ref().map_or("", |(text, _)| text.trim());
                return Err(said("run-text-on-text", one).with("other", other));
            }
        }
    }
    Ok(())
}

fn said(id: &'static str, piece: &Piece) -> Message {
    let text = piece.text.as_ref().map_or("", |(text, _)| text.trim());
    Message::new(id).with("page", piece.page).with("text", text)
}
