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
mod plot;
mod preview;
mod print;
mod register;
mod schema;
mod setter;
mod shell;
mod sizes;
mod table;
mod templates;
mod watch;
mod whole;
mod why;

pub use args::{Arguments, Command};
pub use outcome::Outcome;

use crate::words::Words;

/// Runs a command.
#[must_use]
pub fn run(arguments: Arguments) -> Outcome {
    let language = arguments.language;
    // Where no set is read, no shop has a language.
    let words = || Words::of(language.unwrap_or_default());
    match arguments.command {
        Command::Print(print) => print::run(&print, language),
        Command::Preview(preview) => preview::run(&preview, language),
        Command::Watch(watch) => watch::run(&watch, language),
        Command::Check(check) => check::run(&check, language),
        Command::Table(table) => table::run(&table, language),
        Command::Export(export) => export::run(&export, language),
        Command::Faults(faults) => faults::run(&faults, language),
        Command::Judge(judge) => judge::run(&judge, language),
        Command::Fit(fit) => fit::run(&fit, &words()),
        Command::Templates(templates) => handout::run(&templates, &words()),
        Command::Completions(completions) => shell::completions(&completions, &words()),
        Command::Man(man) => shell::man(&man, &words()),
        Command::Schema(schema) => schema::run(&schema, &words()),
        Command::New(new) => new::run(&new, language),
        Command::Status(status) => register::status::run(&status, language),
        Command::Issue(issue) => register::issue::run(&issue, language),
        Command::Withdraw(withdraw) => register::withdraw::run(&withdraw, language),
        Command::Holders(holders) => register::holders::run(&holders, language),
        Command::Verify(verify) => register::verify::run(&verify, language),
        Command::Import(import) => import::run(&import, &words()),
    }
}
