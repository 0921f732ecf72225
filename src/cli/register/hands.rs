//! Many papers made at once: on as many threads as there are processors, one paper each.
//!
//! The threads are those that compared the papers before: what these freed is used again. Papers
//! are taken in the order in which they are done, a few of them waiting at most.

use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::mpsc::sync_channel;

/// Makes something of each piece of work, and hands it over with the number of its piece.
///
/// # Errors
/// The first error of who takes it; what is not begun then stays undone.
pub(super) fn each<T: Sync, M: Send, E: Send>(
    work: &[T],
    make: impl Fn(&T) -> M + Sync,
    mut take: impl FnMut(usize, M) -> Result<(), E>,
) -> Result<(), E> {
    let (next, make) = (AtomicUsize::new(0), &make);
    // Each thread has a loop of its own: of pieces that were tasks, one that waits for a part of its
    // layout would begin a second layout.
    rayon::in_place_scope(|scope| {
        let (made, done) = sync_channel(rayon::current_num_threads());
        let next = &next;
        scope.spawn_broadcast(move |_, _| {
            while let Some((at, piece)) = numbered(work, next) {
                if made.send((at, make(piece))).is_err() {
                    return;
                }
            }
        });
        done.into_iter().try_for_each(|(at, made)| take(at, made))
    })
}

/// The next piece of work that nobody has begun.
fn numbered<'a, T>(work: &'a [T], next: &AtomicUsize) -> Option<(usize, &'a T)> {
    let at = next.fetch_add(1, Ordering::Relaxed);
    Some((at, work.get(at)?))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_piece_is_made_once_and_handed_over_with_its_number() {
        let work: Vec<usize> = (0..100).collect();
        let mut made = Vec::new();
        let take = |at, two| {
            made.push((at, two));
            Ok::<(), ()>(())
        };
        let taken = each(&work, |piece| piece * 2, take);
        assert_eq!(taken, Ok(()));
        made.sort_unstable();
        assert_eq!(made, work.iter().map(|piece| (*piece, piece * 2)).collect::<Vec<_>>());
    }

    #[test]
    fn an_error_of_who_takes_ends_it() {
        let work: Vec<usize> = (0..10_000).collect();
        let begun = AtomicUsize::new(0);
        let make = |_: &usize| begun.fetch_add(1, Ordering::Relaxed);
        assert_eq!(each(&work, make, |at, _| if at < 3 { Ok(()) } else { Err("full") }), Err("full"));
        assert!(begun.into_inner() < work.len(), "all was made");
    }
}
