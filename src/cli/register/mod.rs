//! The commands that work with the register, and how they open it.

mod desk;
mod hands;
pub(super) mod holders;
pub(super) mod issue;
mod papers;
mod seen;
pub(super) mod status;
#[cfg(test)]
mod survival;
mod told;
pub(super) mod verify;
pub(super) mod withdraw;

use chrono::{Local, NaiveDate};

use crate::register::Record;
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
