//! Many papers made at once: on as many threads as there are processors, one paper each.
//!
//! A pool of several threads for one paper would keep many layouts in memory at once; here each
//! thread lays one out alone. Papers are taken in the order in which they are done, a few of them
//! waiting at most.

use std::num::NonZero;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::mpsc::sync_channel;
use std::thread;

/// Makes something of each piece of work, and hands it over with the number of its piece.
///
/// # Errors
/// The first error of who takes it; what is not begun then stays undone.
pub(super) fn each<T: Sync, M: Send, E>(
    work: &[T],
    make: impl Fn(&T) -> M + Sync,
    mut take: impl FnMut(usize, M) -> Result<(), E>,
) -> Result<(), E> {
    let hands = thread::available_parallelism().map_or(1, NonZero::get).min(work.len()).max(1);
    let (next, make) = (AtomicUsize::new(0), &make);
    thread::scope(|scope| {
        let (made, done) = sync_channel(hands);
        for _ in 0..hands {
            let (made, next) = (made.clone(), &next);
            let work = move || {
                while let Some((at, piece)) = numbered(work, next) {
                    if made.send((at, make(piece))).is_err() {
                        return;
                    }
                }
            };
            scope.spawn(move || alone(work));
        }
        drop(made);
        done.into_iter().try_for_each(|(at, made)| take(at, made))
    })
}

/// The next piece of work that nobody has begun.
fn numbered<'a, T>(work: &'a [T], next: &AtomicUsize) -> Option<(usize, &'a T)> {
    let at = next.fetch_add(1, Ordering::Relaxed);
    Some((at, work.get(at)?))
}

/// Runs something that asks for no other thread's help.
fn alone(work: impl FnOnce()) {
    // This thread is all of its pool; where there is none, others help, and it is as right.
    let pool = rayon::ThreadPoolBuilder::new().num_threads(1).use_current_thread().build();
    work();
    drop(pool);
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
