//! The `bayleaf` command: parse, run, exit.

use std::process::ExitCode;

use clap::Parser;

#[global_allocator]
static ALLOCATOR: mimalloc::MiMalloc = mimalloc::MiMalloc;

fn main() -> ExitCode {
    let arguments = bayleaf::cli::Arguments::parse();
    bayleaf::cli::run(arguments).into()
}
