//! The commands, one file each, and the only room that prints.

mod args;
mod check;
mod faults;
mod fit;
mod handout;
mod import;
mod judge;
mod load;
mod new;
mod outcome;
mod preview;
mod print;
mod schema;
mod shell;
mod table;
mod templates;
mod whole;

pub use args::{Arguments, Command};
pub use outcome::Outcome;

/// Runs a command.
#[must_use]
pub fn run(arguments: Arguments) -> Outcome {
    match arguments.command {
        Command::Print(print) => print::run(&print),
        Command::Preview(preview) => preview::run(&preview),
        Command::Check(check) => check::run(&check),
        Command::Table(table) => table::run(&table),
        Command::Faults(faults) => faults::run(&faults),
        Command::Judge(judge) => judge::run(&judge),
        Command::Fit(fit) => fit::run(&fit),
        Command::Templates(templates) => handout::run(&templates),
        Command::Completions(completions) => shell::completions(&completions),
        Command::Man(man) => shell::man(&man),
        Command::Schema(schema) => schema::run(&schema),
        Command::New(new) => new::run(&new),
        Command::Import(import) => import::run(&import),
    }
}
