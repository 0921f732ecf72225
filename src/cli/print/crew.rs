//! The other processes of a run: the same program with a share each.

use std::io::{self, BufRead, BufReader};
use std::process::{Child, Command, Stdio};
use std::sync::mpsc::{Receiver, channel};
use std::thread;

use chrono::NaiveDate;
use clap::ValueEnum;

use super::batch::Told;
use crate::cli::args::Print;
use crate::words::Language;

/// Workers that are printing.
pub(super) struct Crew {
    workers: Vec<Child>,
    reports: Receiver<Told>,
}

/// Starts all workers but the first share, which is the parent's own.
pub(super) fn start(
    asked: (&Print, Option<Language>),
    date: NaiveDate,
    digest: &str,
    jobs: usize,
) -> io::Result<Crew> {
    let (sender, reports) = channel();
    let mut workers = Vec::new();
    for index in 2..=jobs {
        let mut worker = command(asked, date, digest)?
            .arg(format!("--worker={index}/{jobs}"))
            .args(&asked.0.ids)
            .stdin(Stdio::null())
            .stdout(Stdio::piped())
            .spawn()?;
        if let Some(output) = worker.stdout.take() {
            let sender = sender.clone();
            thread::spawn(move || {
                let lines = BufReader::new(output).lines().map_while(Result::ok);
                for report in lines.filter_map(|line| serde_json::from_str(&line).ok()) {
                    if sender.send(report).is_err() {
                        return;
                    }
                }
            });
        }
        workers.push(worker);
    }
    Ok(Crew { workers, reports })
}

/// This program again, with everything that decides what a page says.
fn command(
    (arguments, language): (&Print, Option<Language>),
    date: NaiveDate,
    digest: &str,
) -> io::Result<Command> {
    let mut command = Command::new(std::env::current_exe()?);
    command.arg("print").arg("--out").arg(&arguments.out);
    command.arg(format!("--date={date}")).arg(format!("--digest={digest}"));
    if let Some(sheet) = arguments.sheet.and_then(|sheet| sheet.to_possible_value()) {
        command.arg(format!("--sheet={}", sheet.get_name()));
    } else {
        let shard = arguments.shard;
        command.arg(format!("--shard={}/{}", shard.index + 1, shard.of));
    }
    if let Some(specs) = &arguments.specs.specs {
        command.arg("--specs").arg(specs);
    }
    if let (None, Some(format)) = (arguments.sheet, arguments.format.to_possible_value()) {
        command.arg(format!("--format={}", format.get_name())).arg(format!("--ppi={}", arguments.ppi));
    }
    if let Some(size) = arguments.edition.size {
        command.arg(format!("--size={size}"));
    }
    if let (Some(_), Some(flip)) = (arguments.sheet, arguments.flip.to_possible_value()) {
        command.arg(format!("--flip={}", flip.get_name()));
    }
    if let Some(language) = language {
        command.arg(format!("--language={}", language.code()));
    }
    if arguments.proofs {
        command.arg("--proofs");
    }
    if let Some(templates) = &arguments.edition.templates {
        command.arg("--templates").arg(templates);
    }
    if let Some(at) = arguments.edition.at {
        command.arg(format!("--at={at}"));
    }
    if let Some(units) = arguments.edition.units {
        command.arg(format!("--units={}", units.word()));
    }
    Ok(command)
}

impl Crew {
    /// What has been reported since the last call; does not wait.
    pub(super) fn reports(&self) -> impl Iterator<Item = Told> {
        self.reports.try_iter()
    }

    /// What is still to come; waits for it.
    pub(super) fn remaining(&self) -> impl Iterator<Item = Told> {
        self.reports.iter()
    }

    /// Waits for the workers to end; how many did not end well.
    pub(super) fn wait(self) -> usize {
        let ended = self.workers.into_iter().map(|mut worker| worker.wait());
        ended.filter(|status| !status.as_ref().is_ok_and(std::process::ExitStatus::success)).count()
    }
}
