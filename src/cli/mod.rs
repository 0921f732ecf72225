//! The commands, one file each, and the only room that prints.

mod args;
mod check;
mod export;
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
mod watch;
mod whole;

pub use args::{Arguments, Command};
pub use outcome::Outcome;

/// Runs a command.
#[must_use]
pub fn run(arguments: Arguments) -> Outcome {
    let language = arguments.language;
    match arguments.command {
        Command::Print(print) => print::run(&print, language),
        Command::Preview(preview) => preview::run(&preview, language),
        Command::Watch(watch) => watch::run(&watch, language),
        Command::Check(check) => check::run(&check, language),
        Command::Table(table) => table::run(&table, language),
        Command::Export(export) => export::run(&export, language),
        Command::Faults(faults) => faults::run(&faults, language),
        Command::Judge(judge) => judge::run(&judge, language),
        Command::Fit(fit) => fit::run(&fit, language),
        Command::Templates(templates) => handout::run(&templates, language),
        Command::Completions(completions) => shell::completions(&completions, language),
        Command::Man(man) => shell::man(&man, language),
        Command::Schema(schema) => schema::run(&schema, language),
        Command::New(new) => new::run(&new, language),
        Command::Import(import) => import::run(&import, language),
    }
}
