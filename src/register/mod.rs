//! Controlled documents: what was issued at which revision, who holds it, and what is due.
//!
//! The register is a text file beside the specs, made for people and version control.
//! Everything else that an issue leaves (final papers and their records) lies in
//! `issued/` in the output folder. One step makes an issue valid: the register's rename.
//!
//! Invariant: nothing that the register names is ever overwritten, and a register that
//! contradicts itself is not written to.

mod disk;
mod ledger;
mod lock;
mod record;

pub use disk::{Disk, Trouble};
pub use ledger::{Copy, Ledger, NewAct};
pub use lock::{Lock, Locked, Owner};
pub use record::{History, Record};
