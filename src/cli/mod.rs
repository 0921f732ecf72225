//! The commands, one file each, and the only room that prints.

mod args;
mod check;
mod fit;
mod load;
mod outcome;
mod print;
mod table;

pub use args::{Arguments, Command};
pub use outcome::Outcome;

/// Runs a command.
#[must_use]
pub fn run(arguments: Arguments) -> Outcome {
    match arguments.command {
        Command::Print(print) => print::run(&print),
        Command::Check(check) => check::run(&check),
        Command::Table(table) => table::run(&table),
        Command::Fit(fit) => fit::run(&fit),
    }
}
