//! Lamination that some pouch, cutter and punch can do.

use crate::diag::{Finding, Findings};
use crate::quantity::Length;
use crate::spec::{Set, Sourced};
use crate::words::Message;

/// What pouches, corner cutters and punches for cards come in, mm (common practice, no
/// source): film around the card, border, radius, diameter.
const SEAL: (f64, f64) = (1.0, 25.0);
const QUIET: (f64, f64) = (0.0, 25.0);
const CORNER: (f64, f64) = (0.0, 15.0);
const DIAMETER: (f64, f64) = (2.0, 16.0);

/// Paper that is left between a hole and the edge, at least, mm: less tears.
const RIM: f64 = 1.0;

/// As far in as a hole to hang a card up by may be, mm.
const DEEPEST: f64 = 40.0;

pub(super) fn check(set: &Set, findings: &Findings) {
    let shop = set.shop.as_ref().map(|entry| &entry.item);
    let Some(lamination) = shop.and_then(|shop| shop.lamination.as_ref()) else { return };
    for (key, length, span) in [
        ("seal", &lamination.seal, SEAL),
        ("quiet", &lamination.quiet, QUIET),
        ("corner", &lamination.corner, CORNER),
    ] {
        within(key, length.as_ref(), span, findings);
    }
    for punch in &lamination.punches {
        within("diameter", punch.diameter.as_ref(), DIAMETER, findings);
        let Some(diameter) = punch.diameter.as_ref().map(|diameter| diameter.value.millimetres()) else {
            continue;
        };
        within("inset", punch.inset.as_ref(), (diameter / 2.0 + RIM, DEEPEST), findings);
    }
}

fn within(key: &str, length: Option<&Sourced<Length>>, (least, most): (f64, f64), findings: &Findings) {
    let Some(length) = length else { return };
    if (least - 1e-9..=most + 1e-9).contains(&length.value.millimetres()) {
        return;
    }
    let message = Message::new("rule-lamination").with("key", key).with("written", &length.written);
    let wanted = Message::new("wanted-lamination").with("least", least).with("most", most);
    findings.report(Finding::error(message, length.place.clone(), wanted));
}
