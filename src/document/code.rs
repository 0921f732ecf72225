//! The code of a page: which paper, which revision, which content, as plain text.
//!
//! Typed on the page and drawn beside it as a QR symbol (ISO/IEC 18004). Plain text, so
//! that it says the same with no network as with one.

use fast_qr::{ECL, QRBuilder};
use schemars::JsonSchema;
use serde::Serialize;

/// Id, revision and fingerprint, and the symbol that holds them.
#[derive(Debug, Clone, Default, Serialize, JsonSchema)]
pub(super) struct Code {
    /// `ID REVISION FINGERPRINT`.
    pub text: String,
    /// How many modules the symbol has along a side, without its quiet zone.
    modules: usize,
    /// Its dark modules as an outline in SVG's notation, one unit a module.
    outline: String,
}

/// Why a symbol always holds its text.
const SHORT: &str = "two ids of at most 40 characters, a revision and a fingerprint fit a symbol";

impl Code {
    /// The code as text alone.
    pub(super) fn text(id: &str, revision: &str, fingerprint: &str) -> Self {
        Self { text: format!("{id} {revision} {fingerprint}"), ..Self::default() }
    }

    /// The code with its symbol.
    pub(super) fn new(id: &str, revision: &str, fingerprint: &str) -> Self {
        let Self { text, .. } = Self::text(id, revision, fingerprint);
        let symbol = QRBuilder::new(text.as_bytes()).ecl(ECL::Q).build().expect(SHORT);
        let modules = symbol.size;
        let dark = |row: usize, column: usize| symbol[row].get(column).is_some_and(|module| module.value());
        Self { text, modules, outline: outline(modules, dark) }
    }
}

/// One closed rectangle for each run of dark modules in a row. As all are one outline,
/// nothing shows between those that touch.
fn outline(modules: usize, dark: impl Fn(usize, usize) -> bool) -> String {
    let mut outline = String::new();
    for row in 0..modules {
        let mut column = 0;
        while column < modules {
            let run = (column..modules).take_while(|&at| dark(row, at)).count();
            if run > 0 {
                outline += &format!("M{column},{row}h{run}v1h-{run}z");
            }
            column += run.max(1);
        }
    }
    outline
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn runs_of_dark_modules_become_rectangles() {
        let rows = ["##.", "...", ".##"];
        let drawn = outline(3, |row, column| rows[row].as_bytes()[column] == b'#');
        assert_eq!(drawn, "M0,0h2v1h-2zM1,2h2v1h-2z");
    }

    #[test]
    fn the_longest_ids_of_a_set_fit() {
        let id = format!("{0}.{0}", "w".repeat(40));
        let code = Code::new(&id, "R999", "WERC-8GMR");
        // ISO/IEC 18004, table 7 (from memory): version 9 holds 98 bytes at level Q.
        assert!(code.modules <= 17 + 4 * 9, "{}", code.modules);
    }
}
