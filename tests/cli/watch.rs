//! `watch`: what is saved is drawn, what is broken leaves the picture as it was.

use std::fs;
use std::io::{BufRead, BufReader};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::sync::mpsc::{Receiver, channel};
use std::thread;
use std::time::Duration;

use super::{GOOD, bayleaf, errors, folder, must_contain, write};

/// A busy machine may take its time; nothing here waits so long when it is right.
const PATIENCE: Duration = Duration::from_secs(60);

/// A running `watch`, and the lines that it says on standard error.
pub(super) struct Watch {
    process: Child,
    lines: Receiver<String>,
}

impl Watch {
    pub(super) fn start(folder: &Path, arguments: &[&str]) -> Self {
        let mut process = Command::new(env!("CARGO_BIN_EXE_bayleaf"))
            .current_dir(folder)
            .args([&["watch", "--date", "2026-11-24", "--ppi", "30"], arguments].concat())
            .stdout(Stdio::null())
            .stderr(Stdio::piped())
            .spawn()
            .expect("the binary of this test run starts");
        let said = process.stderr.take().expect("it is piped");
        let (sender, lines) = channel();
        thread::spawn(move || {
            for line in BufReader::new(said).lines().map_while(Result::ok) {
                if sender.send(line).is_err() {
                    return;
                }
            }
        });
        Self { process, lines }
    }

    /// Everything up to the line with `wanted`.
    #[track_caller]
    pub(super) fn until(&self, wanted: &str) -> String {
        let mut said = String::new();
        loop {
            let line = self.lines.recv_timeout(PATIENCE);
            let line = line.unwrap_or_else(|_| panic!("expected `{wanted}` after:\n{said}"));
            said.push_str(&line);
            said.push('\n');
            if line.contains(wanted) {
                return said;
            }
        }
    }
}

impl Drop for Watch {
    fn drop(&mut self) {
        drop(self.process.kill());
        drop(self.process.wait());
    }
}

fn picture(folder: &Path) -> Vec<u8> {
    fs::read(folder.join("out/SEN-1.png")).expect("it was drawn")
}

#[test]
fn a_saved_spec_is_drawn_and_a_broken_one_leaves_the_picture() {
    let folder = folder();
    let at = folder.path();
    write(at, "specs/set.toml", GOOD);
    let watch = Watch::start(at, &["SEN-1"]);
    watch.until("1 drawn, 0 as before");
    let first = picture(at);

    write(at, "specs/set.toml", GOOD.replace("3500 K", "3600 K"));
    watch.until("1 drawn, 0 as before");
    let second = picture(at);
    assert_ne!(first, second);

    write(at, "specs/set.toml", GOOD.replace("3500 K", "3500 V"));
    let said = watch.until("pictures stay as they were");
    must_contain(&said, "specs/set.toml:14");
    assert_eq!(picture(at), second);

    // As an editor saves: to the side, then renamed.
    write(at, "specs/set.toml.new", GOOD);
    fs::rename(at.join("specs/set.toml.new"), at.join("specs/set.toml")).expect("it can be renamed");
    watch.until("1 drawn, 0 as before");
    assert_eq!(picture(at), first);
}

#[test]
fn only_what_a_change_touches_is_drawn() {
    let folder = folder();
    let at = folder.path();
    let other = "\n[sensor.outside]\ntitle = \"Outside air\"\nsystem = \"gull\"\nrange = \"0 °C to 40 °C\"\n\
                 curve = { model = \"beta\", resistance = \"5 kΩ\", at = \"25 °C\", beta = \"3800 K\" }\n\
                 [card.SEN-2]\nsensor = \"outside\"\n";
    // A step is the card's own; a curve would change the other card too, as a wrong part.
    write(at, "specs/set.toml", format!("{GOOD}{other}"));
    let watch = Watch::start(at, &[]);
    watch.until("2 drawn, 0 as before");
    write(
        at,
        "specs/set.toml",
        format!("{GOOD}{}", other.replace("outside\"\n", "outside\"\nstep = \"4 K\"\n")),
    );
    watch.until("1 drawn, 1 as before");
    // Saved without a change: nothing to say; what comes next is told of what was changed then.
    write(at, "specs/notes.txt", "not a spec");
    write(at, "specs/set.toml", format!("{GOOD}{other}"));
    watch.until("1 drawn, 1 as before");
}

#[test]
fn a_folder_that_goes_is_waited_for() {
    let folder = folder();
    let at = folder.path();
    write(at, "specs/set.toml", GOOD);
    let watch = Watch::start(at, &[]);
    watch.until("1 drawn, 0 as before");
    let first = picture(at);
    fs::rename(at.join("specs"), at.join("away")).expect("folders can be moved");
    must_contain(&watch.until("waiting for it to come back"), "specs");
    write(at, "away/set.toml", GOOD.replace("3500 K", "3600 K"));
    fs::rename(at.join("away"), at.join("specs")).expect("folders can be moved");
    watch.until("1 drawn, 0 as before");
    assert_ne!(picture(at), first);
    // It is watched again.
    write(at, "specs/set.toml", GOOD);
    watch.until("1 drawn, 0 as before");
    assert_eq!(picture(at), first);
}

#[test]
fn a_saved_template_is_drawn() {
    let folder = folder();
    let at = folder.path();
    write(at, "specs/set.toml", GOOD);
    let theme = fs::read_to_string(concat!(env!("CARGO_MANIFEST_DIR"), "/templates/theme.typ"));
    let theme = theme.expect("the theme is part of the project");
    write(at, "own/theme.typ", &theme);
    let watch = Watch::start(at, &["--templates", "own"]);
    watch.until("1 drawn, 0 as before");
    let first = picture(at);
    write(at, "own/theme.typ", theme.replace("line-open = 1pt", "line-open = 3pt"));
    watch.until("1 drawn, 0 as before");
    assert_ne!(picture(at), first);
}

#[test]
fn nothing_to_watch_is_said() {
    let folder = folder();
    let output = bayleaf(folder.path(), &["watch"]);
    assert_eq!(output.status.code(), Some(2));
    must_contain(&errors(&output), "`bayleaf new specs` begins a set of your own");
    let output = bayleaf(folder.path(), &["watch", "--specs", "nowhere"]);
    assert_eq!(output.status.code(), Some(2));
    must_contain(&errors(&output), "cannot watch `nowhere`");
}
