//! Which kinds of paper are laid out for which sizes, and for which one where nobody says.

use crate::quantity::{Format, Size};
use crate::spec::{About, Paper, PaperKind};

/// Every format, for a table alone.
const EVERY: &[Format] = &Format::ALL;
/// Cards to carry about.
const CARDS: &[Format] = &[Format::A4, Format::Letter, Format::A5, Format::HalfLetter];
/// Papers with tables of many columns, or boxes to write in.
const SHEETS: &[Format] = &[Format::A4, Format::Letter];

/// The formats of a kind, upright and on their side.
fn formats(kind: PaperKind) -> (&'static [Format], &'static [Format]) {
    match kind {
        PaperKind::Strip => (EVERY, EVERY),
        PaperKind::Card(About::Sensor) => (EVERY, CARDS),
        PaperKind::Card(About::Connector | About::Light | About::Transducer) => (EVERY, &[]),
        // Readings of a ladder, and figures of a blower's steps, need the width of a hand's page.
        PaperKind::Card(About::Actuator | About::Driver) => (CARDS, &[]),
        PaperKind::Card(About::System | About::Panel) | PaperKind::Checklist => (SHEETS, SHEETS),
        PaperKind::Card(About::Request | About::Air)
        | PaperKind::Wall
        | PaperKind::Sheet
        | PaperKind::Report
        | PaperKind::Symptoms
        | PaperKind::Index
        | PaperKind::Proof => (SHEETS, &[]),
    }
}

/// The sizes that a kind is laid out for, the largest first.
pub fn sizes(kind: PaperKind) -> impl Iterator<Item = Size> {
    let (upright, landscape) = formats(kind);
    Size::all().filter(move |size| {
        let formats = if size.landscape { landscape } else { upright };
        formats.contains(&size.format)
    })
}

/// The size of a kind where neither card, shop nor command line says one.
#[must_use]
pub fn usual(kind: PaperKind, paper: Paper) -> Size {
    Size::upright(match (kind, paper) {
        (PaperKind::Strip, Paper::A4) => Format::A6,
        (PaperKind::Strip, Paper::Letter) => Format::FourBySix,
        (
            PaperKind::Card(
                About::Sensor
                | About::Light
                | About::Transducer
                | About::Connector
                | About::Actuator
                | About::Driver,
            ),
            _,
        ) => Format::A5,
        (_, Paper::A4) => Format::A4,
        (_, Paper::Letter) => Format::Letter,
    })
}

/// Whether a size is that of a kind where nobody says, or its like of the other family.
#[must_use]
pub fn is_like_usual(kind: PaperKind, size: Size) -> bool {
    let like = match size.format {
        Format::HalfLetter => Format::A5,
        Format::Letter => Format::A4,
        format => format,
    };
    usual(kind, Paper::A4) == Size { format: like, ..size }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_usual_size_of_every_kind_is_one_it_is_laid_out_for() {
        for (key, kind, _) in PaperKind::ALL {
            for paper in [Paper::A4, Paper::Letter] {
                let usual = usual(*kind, paper);
                assert!(sizes(*kind).any(|size| size == usual), "{key}: {usual}");
            }
        }
    }
}
