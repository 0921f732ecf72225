//! How cards in a row share what is left of a sheet's side.

/// What no printer of an office prints on, at each edge of a sheet, mm (common
/// practice, no source).
pub(in crate::typeset) const UNPRINTABLE: f64 = 5.0;

/// Between two cards where there is room: a cut for each, with its mark between, mm.
const GUTTER: f64 = 6.0;
/// The least gutter that has marks of two cuts, mm.
const LEAST_GUTTER: f64 = 2.0;
/// From the edge of a sheet to the first card where marks stand beside the cards, mm.
const ROOMY: f64 = 10.0;

/// Two cards this near to each other are parted by one cut, mm: each is at most
/// half a millimetre larger, which no pouch notices.
pub(super) const ONE_CUT: f64 = 1.05;

/// Sides of cards in a row on a sheet's side, and how they may lie there.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Spread {
    /// From the edge to the first card.
    pub edge: f64,
    /// Between two cards.
    pub gutter: f64,
    /// Whether cards reach into what the printer does not print on.
    pub tight: bool,
}

/// Shares what is left out; `None` where the cards do not fit. `white` says that the
/// border of every card is as wide as the unprintable strip, so that a card may lie in it.
pub(super) fn spread(whole: f64, cards: &[f64], white: bool) -> Option<Spread> {
    let left = whole - cards.iter().sum::<f64>();
    let gutters = cards.len().checked_sub(1)? as f64;
    let rounding = 1e-6;
    let roomy = left >= 2.0 * ROOMY + gutters * GUTTER - rounding;
    if roomy || left >= 2.0 * UNPRINTABLE + gutters * LEAST_GUTTER - rounding {
        let least = if roomy { ROOMY } else { UNPRINTABLE };
        let gutter = if cards.len() > 1 { GUTTER.min((left - 2.0 * least) / gutters) } else { 0.0 };
        return Some(Spread { edge: (left - gutters * gutter) / 2.0, gutter, tight: false });
    }
    if !white || left < -rounding {
        return None;
    }
    // Flush with the edges of the sheet, which need no cut: no mark can be printed there.
    if cards.len() > 1 {
        return Some(Spread { edge: 0.0, gutter: left.max(0.0) / gutters, tight: true });
    }
    let no_cut = left <= ONE_CUT / 2.0;
    let far_enough = left >= UNPRINTABLE;
    (no_cut || far_enough).then_some(Spread { edge: 0.0, gutter: 0.0, tight: true })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_has_room_keeps_clear_of_the_edges() {
        // An A5 card on letter: 215.9 − 148 and 279.4 − 210 (arithmetic).
        for (whole, card) in [(215.9, 148.0), (279.4, 210.0)] {
            let spread = spread(whole, &[card], false).expect("it fits");
            assert!((spread.edge - (whole - card) / 2.0).abs() < 1e-9 && !spread.tight);
        }
    }

    #[test]
    fn halves_of_a_sheet_lie_at_its_edges_or_do_not_fit() {
        // 2 × 148 of 297 mm, 2 × 5.5 of 11 in.
        for (whole, card, gutter) in [(297.0, 148.0, 1.0), (279.4, 139.7, 0.0)] {
            let tight = spread(whole, &[card, card], true).expect("it fits");
            assert!(tight.tight && tight.edge.abs() < 1e-9 && (tight.gutter - gutter).abs() < 1e-9);
            assert_eq!(spread(whole, &[card, card], false), None);
        }
        assert_eq!(spread(297.0, &[149.0, 149.0], true), None);
    }

    #[test]
    fn a_cut_that_no_mark_could_show_is_none() {
        assert_eq!(spread(210.0, &[207.0], true), None);
        assert!(spread(210.0, &[204.0], true).is_some());
    }
}
