//! How long what the typesetting library remembers is kept.
//!
//! It remembers for all threads together, and counts the age of what it remembers in documents.
//! Where several threads lay documents out at once, one of them would age what another is about to
//! use again: a round of all threads counts as one document.

use std::sync::{Mutex, PoisonError};
use std::thread::{self, ThreadId};

/// How many documents back the library's cache reaches. One: the templates stay
/// evaluated from each document to the next, and sheets of one fleet share their
/// rows; none would be a tenth slower, more would keep more in memory.
const KEPT: usize = 1;

static ROUND: Mutex<Round> = Mutex::new(Round(Vec::new()));

/// The threads that finished a document since the last round ended.
struct Round(Vec<ThreadId>);

impl Round {
    /// A thread finished a document; whether that ends a round: with its second one.
    fn ends_with(&mut self, thread: ThreadId) -> bool {
        let is_over = self.0.contains(&thread);
        if is_over {
            self.0.clear();
        }
        self.0.push(thread);
        is_over
    }
}

/// A document is done, whether or not it failed.
pub(super) fn done() {
    let here = thread::current().id();
    // Not under the lock: what is forgotten takes a while to be freed.
    let is_over = ROUND.lock().unwrap_or_else(PoisonError::into_inner).ends_with(here);
    if is_over {
        comemo::evict(KEPT);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_round_is_a_document_of_each_thread() {
        let one = thread::current().id();
        let other = thread::spawn(|| thread::current().id()).join().expect("it ends");
        let mut round = Round(Vec::new());
        let ended = [one, one, one, other, one, other, one].map(|thread| round.ends_with(thread));
        assert_eq!(ended, [false, true, true, false, true, false, true]);
    }
}
