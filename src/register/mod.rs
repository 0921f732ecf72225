//! Controlled documents: what was issued at which revision, who holds it, and what is due.
//!
//! The register is a text file beside the specs, made for people and version control.
//! Everything else that an issue leaves (final papers and their records) lies in
//! `issued/` in the output folder. One step makes an issue valid: the register's rename.
//!
//! Invariant: nothing that the register names is ever overwritten, and a register that
//! contradicts itself is not written to.

mod cause;
mod disk;
mod entry;
mod issue;
mod kept;
mod ledger;
mod lock;
mod moved;
mod plan;
mod reasons;
mod record;
mod shelf;
mod verdict;
mod writer;

pub use disk::{Disk, Trouble};
pub use entry::{Difference, Entry, State};
pub use issue::{Order, pulls_of_issue, pulls_of_withdrawal, stamp, write_down, write_down_withdrawal};
pub use ledger::{Copy, Ledger, NewAct};
pub use lock::{Lock, Locked, Owner};
pub use plan::{Archive, Asked, Earlier, Today, plan};
pub use record::{History, Record};
pub use shelf::Shelf;
pub use verdict::{Code, Verdict};
pub use writer::{Refused, Writer};
