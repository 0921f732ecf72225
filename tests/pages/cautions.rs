//! The caution box as it is laid out.

use serde_json::Value;

/// The lines of text in the box around the first signal word.
fn lines(pieces: &[bayleaf::typeset::Piece], signal: &str) -> usize {
    let is_signal =
        |piece: &&bayleaf::typeset::Piece| piece.text.as_ref().is_some_and(|(text, _)| text == signal);
    let word = pieces.iter().find(is_signal).expect("the signal word is on the page");
    let around = |outer: &[f64; 4], inner: &[f64; 4]| {
        outer[0] <= inner[0] && outer[1] <= inner[1] && outer[2] >= inner[2] && outer[3] >= inner[3]
    };
    let height = |area: &[f64; 4]| area[3] - area[1];
    let frames = pieces.iter().filter(|piece| piece.page == word.page && piece.text.is_none());
    let frames = frames.filter(|piece| around(&piece.area, &word.area)).map(|piece| piece.area);
    let frame = frames.min_by(|a, b| height(a).total_cmp(&height(b))).expect("a box stands around it");
    let inside =
        pieces.iter().filter(|piece| piece.page == word.page && piece.text.is_some() && !piece.turned);
    let mut feet: Vec<i64> = inside
        .filter(|piece| around(&frame, &piece.area))
        .map(|piece| (10.0 * piece.area[3]).round() as i64)
        .collect();
    feet.sort_unstable();
    feet.dedup_by(|a, b| (*a - *b).abs() < 5);
    feet.len()
}

#[test]
fn cautions_of_a_card_take_three_lines_at_most_and_none_is_without_them() {
    let typesetter = super::typesetter();
    let mut cards = 0;
    for document in super::documents(&super::demo()) {
        let data: Value = serde_json::from_slice(&document.data).expect("data is JSON");
        // A paper without a box of its own has nothing to touch: an index, a proof.
        let Some(signal) = data["cautions"]["levels"][0]["signal"].as_str() else { continue };
        let pieces = typesetter.pieces(super::job(&document)).expect("it lays out");
        let lines = lines(&pieces, signal);
        assert!(lines > 0, "{}", document.id);
        if data["cautions"]["apart"] == false {
            cards += 1;
            // What takes three lines of 132 mm takes more on a paper for the pocket.
            let most = if document.size.millimetres().0 < 110.0 { 6 } else { 3 };
            assert!(lines <= most, "{}: {lines} lines of cautions", document.id);
        }
    }
    assert!(cards > 10, "only {cards} cards were looked at");
}
