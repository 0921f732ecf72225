//! Sees when something below a folder is saved, and when the folder itself goes.

use std::path::PathBuf;
use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};
use std::time::{Duration, Instant};

use notify::{EventKind, RecommendedWatcher, RecursiveMode, Watcher};
use same_file::Handle;

use crate::diag::reason;
use crate::words::Message;

/// An editor saves in several steps; this long after the last of them a file is whole.
const SETTLED: Duration = Duration::from_millis(25);

/// A folder that is written to without end is looked at all the same.
const AT_MOST: Duration = Duration::from_millis(400);

/// How often the folders themselves are looked for: what was moved away tells nothing.
const LOOK: Duration = Duration::from_millis(300);

/// What was seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Seen {
    /// Something was saved, or may have been.
    Change,
    /// A folder is gone, or another one stands in its place.
    Gone,
}

/// Folders that are watched.
pub(super) struct Eyes {
    changes: Receiver<()>,
    folders: Vec<(PathBuf, Handle)>,
    /// Watches for as long as it lives.
    _watcher: RecommendedWatcher,
}

impl Eyes {
    /// Begins to watch the folders with all below them.
    pub(super) fn open(folders: &[PathBuf]) -> Result<Self, Message> {
        let (sender, changes) = channel();
        let hear = move |event: notify::Result<notify::Event>| {
            // Reading is no change; of an error nothing is known but that one may have been.
            let read = event.is_ok_and(|event| matches!(event.kind, EventKind::Access(_)));
            // Nobody listens any more: the run is ending.
            let _ended = !read && sender.send(()).is_err();
        };
        let unwatched = |path: &PathBuf, why: String| {
            Message::new("run-cannot-watch").with("path", path.display()).with("reason", why)
        };
        let first = folders.first().cloned().unwrap_or_default();
        let mut watcher =
            notify::recommended_watcher(hear).map_err(|error| unwatched(&first, error.to_string()))?;
        let mut known = Vec::new();
        for folder in folders {
            let handle = Handle::from_path(folder).map_err(|error| unwatched(folder, reason(&error)))?;
            watcher.watch(folder, RecursiveMode::Recursive).map_err(|error| {
                let why = if let notify::ErrorKind::Io(error) = &error.kind {
                    reason(error)
                } else {
                    error.to_string()
                };
                unwatched(folder, why)
            })?;
            known.push((folder.clone(), handle));
        }
        Ok(Self { changes, folders: known, _watcher: watcher })
    }

    /// Waits for what happens next.
    pub(super) fn next(&self) -> Seen {
        loop {
            match self.changes.recv_timeout(LOOK) {
                Ok(()) => {
                    self.settle();
                    return if self.same() { Seen::Change } else { Seen::Gone };
                }
                Err(RecvTimeoutError::Timeout) if self.same() => {}
                Err(RecvTimeoutError::Timeout | RecvTimeoutError::Disconnected) => return Seen::Gone,
            }
        }
    }

    fn settle(&self) {
        let since = Instant::now();
        while since.elapsed() < AT_MOST && self.changes.recv_timeout(SETTLED).is_ok() {}
    }

    /// Whether the folders are still those that are watched.
    fn same(&self) -> bool {
        self.folders.iter().all(|(path, handle)| Handle::from_path(path).is_ok_and(|now| now == *handle))
    }
}
