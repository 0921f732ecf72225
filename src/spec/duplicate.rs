//! The same id given twice: a finding that shows both places.

use super::reader::File;
use crate::diag::{Finding, Place};
use crate::words::Message;

/// Reports the second of two definitions, with the first beside it.
pub(super) fn report(file: File<'_>, name: &str, second: Place, first: Place) {
    let message = Message::new("spec-duplicate").with("name", name);
    let finding = Finding::error(message, second, Message::new("label-second"))
        .because(first, Message::new("label-first"))
        .help(Message::new("spec-duplicate-help"));
    file.findings.report(finding);
}
