//! The commands that work with the register, and how they open it.

mod desk;
mod hands;
pub(super) mod holders;
pub(super) mod issue;
mod papers;
mod seen;
pub(super) mod standing;
pub(super) mod status;
#[cfg(test)]
mod survival;
mod told;
pub(super) mod verify;
pub(super) mod withdraw;

use chrono::{Local, NaiveDate};

use crate::diag::nearest;
use crate::register::{History, Record, Shelf};
use crate::words::Message;

/// The date of an act: the one asked for, or today's, which is refused where the register is
/// ahead of the clock.
fn day(asked: Option<NaiveDate>, record: &Record) -> Result<NaiveDate, Message> {
    if let Some(asked) = asked {
        return Ok(asked);
    }
    let today = Local::now().date_naive();
    match record.latest().filter(|latest| *latest > today) {
        Some(latest) => Err(Message::new("run-clock-back").with("today", today).with("latest", latest)),
        None => Ok(today),
    }
}

/// Says that a date is before what the register has of a document.
fn too_early(id: &str, date: NaiveDate, latest: NaiveDate) -> Message {
    Message::new("run-before-its-time").with("id", id).with("date", date).with("latest", latest)
}

/// Says that nothing was issued under an id, and which of the known ones is the nearest.
fn never_issued<'a>(id: &str, known: impl Iterator<Item = &'a str>) -> Message {
    match nearest(id, known) {
        Some(near) => Message::new("register-no-document-near").with("id", id).with("near", near),
        None => Message::new("register-no-document").with("id", id),
    }
}

/// Refuses a date before what the register has of a document.
fn not_before(history: Option<&History>, id: &str, date: NaiveDate) -> Result<(), Message> {
    match history.and_then(History::latest).filter(|latest| *latest > date) {
        Some(latest) => Err(too_early(id, date, latest)),
        None => Ok(()),
    }
}

/// Refuses to write where a link leads out of the folder of output.
fn not_outside(shelf: &Shelf) -> Result<(), Message> {
    match shelf.leads_outside() {
        Some(to) => {
            let message = Message::new("run-link-outside").with("path", shelf.folder().display());
            Err(message.with("to", to.display()))
        }
        None => Ok(()),
    }
}
