//! The commands, one file each, and the only room that prints.

mod args;
mod check;
mod faults;
mod fit;
mod judge;
mod load;
mod outcome;
mod print;
mod table;
mod templates;

pub use args::{Arguments, Command};
pub use outcome::Outcome;

/// Runs a command.
#[must_use]
pub fn run(arguments: Arguments) -> Outcome {
    match arguments.command {
        Command::Print(print) => print::run(&print),
        Command::Check(check) => check::run(&check),
        Command::Table(table) => table::run(&table),
        Command::Faults(faults) => faults::run(&faults),
        Command::Judge(judge) => judge::run(&judge),
        Command::Fit(fit) => fit::run(&fit),
    }
}
