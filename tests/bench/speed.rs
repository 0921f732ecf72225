//! Microseconds of physics per card; milliseconds per command, card and sheet, on
//! one process and on two; peak memory.
//!
//! `cargo bench --bench speed` prints a table for DEVELOPERS.md; a word after `--`
//! asks for a part of it: `physics`, `commands`, `paper`, `kinds`, `turns` or `register`. Times are only
//! good as ratios within one run. With `REPORTLAB_PYTHON` naming a Python that
//! has reportlab, the same tables are drawn by it in the same run.

#![expect(clippy::print_stdout, reason = "a benchmark says what it measured")]

mod commands;
mod kinds;
mod physics;
mod register;
mod turns;

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::Once;
use std::time::{Duration, Instant};

use bayleaf::document::{self, Context, Distance, Document, Edition, Listed, Reading};
use bayleaf::model::{self, Model};
use bayleaf::quantity::{Temperature, Units};
use bayleaf::spec::{self, Set};
use bayleaf::typeset::{Job, TEMPLATES, Typesetter};
use bayleaf::words::Words;

const ROUNDS: usize = 5;
const EACH: usize = 60;

fn main() {
    let asked: Vec<String> = std::env::args().skip(1).filter(|word| !word.starts_with('-')).collect();
    let parts: [(&str, fn()); 6] = [
        ("physics", physics::report),
        ("commands", commands::report),
        ("paper", paper),
        ("kinds", kinds::report),
        ("register", register::report),
        ("turns", turns::report),
    ];
    println!("| Measured | Figure |\n|---|---|");
    for (name, report) in parts {
        if asked.is_empty() || asked.iter().any(|word| word == name) {
            report();
        }
    }
}

/// One thread, as in a worker process.
fn one_thread() {
    static ONCE: Once = Once::new();
    ONCE.call_once(|| {
        let pool = rayon::ThreadPoolBuilder::new().num_threads(1).use_current_thread();
        pool.build_global().expect("nothing has used the pool yet");
    });
}

fn paper() {
    one_thread();
    let scratch = tempfile::tempdir().expect("a temporary folder can be made");
    let bench = Bench::new(scratch.path());
    let cards = bench.documents("sensor-card.typ");
    let sheets = bench.documents("test-sheet.typ");
    let card = bench.in_process(&cards, "sensor card, A5, four sides");
    let sheet = bench.in_process(&sheets, "sheet, A4, 10 to 15 tests, two pages");
    let strip = bench.strip_alone(&cards);
    bench.against_python(&cards, "the cards' strip tables", strip);
    bench.against_python(&cards, "the whole cards", card);
    bench.against_python(&sheets, "the whole sheets", sheet);
    bench.first_document();
    bench.fleet();
}

struct Bench {
    model: Model,
    words: Words,
    scratch: PathBuf,
}

impl Bench {
    fn new(scratch: &Path) -> Self {
        let findings = bayleaf::diag::Findings::default();
        let set = Set::read(&spec::demo(), &findings);
        let model = model::build(&set).expect("the demo set is clean");
        Self { model, words: Words::english(), scratch: scratch.to_owned() }
    }

    fn context(&self) -> Context<'_> {
        let date = "2026-11-24".parse().expect("a date");
        let bay = Some(Temperature::from_celsius(31.0));
        let edition = Edition { language: self.words.language(), units: Units::Both, size: None, bay };
        edition.context(&self.model, &self.words, date)
    }

    /// Every document of the demo set with this template.
    fn documents(&self, template: &str) -> Vec<(Listed, Document)> {
        let compose = |listed: Listed| {
            let document = document::compose(self.context(), &listed).expect("it composes");
            (listed, document)
        };
        let all = document::list(&self.model).into_iter().map(compose);
        all.filter(|(_, document)| document.template == template).collect()
    }

    /// The strip tables of the cards and nothing else, for a comparison of like
    /// with like: a page, a title, the table, both standards.
    fn strip_alone(&self, documents: &[(Listed, Document)]) -> f64 {
        let template = "#import \"/theme.typ\": *\n#import \"/parts/strip.typ\": strip\n\
            #let d = json(\"/data.json\")\n#set document(title: d.furniture.title)\n\
            #set page(width: 148mm, height: 210mm, margin: 8mm)\n\
            #set text(font: family, stretch: stretch, fallback: false, size: size.hand, hyphenate: false)\n\
            #set par(linebreaks: \"simple\")\n#strip(d.strip, d.direction, 150mm)\n";
        let templates: Vec<_> = TEMPLATES.iter().copied().chain([("strip-alone.typ", template)]).collect();
        let typesetter = Typesetter::with_templates(&templates, &self.words.paper_json());
        let rounds = (0..ROUNDS).map(|_| {
            let started = Instant::now();
            for (_, document) in documents.iter().cycle().take(EACH) {
                let (date, data) = (self.context().date, &document.data);
                // No titles to be found: the strip alone.
                let reading = Reading { rest: Distance::Hand, parts: &[("strip", Distance::Bench)] };
                let job = Job {
                    id: &document.id,
                    template: "strip-alone.typ",
                    data,
                    pages: 0,
                    sides: 0,
                    reading,
                    lamination: None,
                    date,
                    attached: &[],
                };
                typesetter.pdf(job).expect("it typesets");
            }
            started.elapsed().as_secs_f64() * 1000.0 / EACH as f64
        });
        let best = rounds.fold(f64::MAX, f64::min);
        println!("| strip table of a card alone, 15 to 26 rows of 9: one process | {best:.1} ms |");
        best
    }

    /// Composes and typesets one document after another, never the same twice in
    /// a row, as a batch does; the best round's mean.
    fn in_process(&self, documents: &[(Listed, Document)], name: &str) -> f64 {
        let typesetter = Typesetter::new(&self.words.paper_json());
        let (mut composing, mut all) = (f64::MAX, f64::MAX);
        for _ in 0..ROUNDS {
            let (mut compose, mut whole) = (Duration::ZERO, Duration::ZERO);
            for (listed, _) in documents.iter().cycle().take(EACH) {
                let started = Instant::now();
                let document = document::compose(self.context(), listed).expect("it composes");
                compose += started.elapsed();
                typesetter.pdf(Job::of(&document, self.context().date)).expect("it typesets");
                whole += started.elapsed();
            }
            let mean = |total: Duration| total.as_secs_f64() * 1000.0 / EACH as f64;
            composing = composing.min(mean(compose));
            all = all.min(mean(whole));
        }
        println!("| {name}: one process | {all:.1} ms, of it {composing:.2} ms to compose |");
        all
    }

    fn against_python(&self, documents: &[(Listed, Document)], name: &str, ours: f64) {
        let Some(python) = std::env::var_os("REPORTLAB_PYTHON") else { return };
        let script = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/bench/reportlab_tables.py");
        let mut command = Command::new(python);
        command.arg(script).arg(EACH.to_string());
        for (listed, document) in documents {
            let file = self.scratch.join(format!("{}.json", listed.id));
            fs::write(&file, &document.data).expect("the scratch folder can be written");
            command.arg(file);
        }
        let text =
            String::from_utf8(command.output().expect("Python starts").stdout).expect("it prints text");
        let theirs: f64 = text.trim().parse().expect("it prints milliseconds");
        println!("| reportlab, table alone; ratio of {name} to it | {theirs:.1} ms; {:.2} |", ours / theirs);
    }

    /// From the start of the process to its end with one card printed.
    fn first_document(&self) {
        let times = (0..20).map(|_| {
            let started = Instant::now();
            let mut run = print(&self.scratch, &["CUR-EVAP", "--jobs", "1"]);
            assert!(run.wait().expect("it ends").success());
            started.elapsed().as_secs_f64() * 1000.0
        });
        let best = times.fold(f64::MAX, f64::min);
        println!("| process start to one card printed and process ended | {best:.0} ms |");
    }

    /// A thousand sheets of one fleet: one process against two, and peak memory.
    fn fleet(&self) {
        let specs = self.scratch.join("specs");
        fs::create_dir(&specs).expect("the scratch folder can be written");
        for (path, text) in spec::DEMO {
            fs::write(specs.join(path.replace('/', "-")), text).expect("it can be written");
        }
        let vehicle = |n: usize| format!("[vehicle.F{n}]\ntitle = \"Fleet {n}\"\nsystem = \"curlew\"\n");
        let fleet: String = (0..1000).map(vehicle).collect();
        fs::write(specs.join("fleet.toml"), fleet).expect("it can be written");
        let run = |jobs: &str, ids: &[&str]| {
            let started = Instant::now();
            let specs = specs.to_str().expect("a plain path");
            let child = print(&self.scratch, &[&["--specs", specs, "--jobs", jobs], ids].concat());
            let peak = peak_memory(child);
            (started.elapsed().as_secs_f64(), peak)
        };
        let (one, peak_one) = run("1", &["CUR-SENSORS"]);
        let (two, peak_two) = run("2", &["CUR-SENSORS"]);
        println!("| 1,004 sheets, one process | {one:.1} s, peak {peak_one:.0} MiB |");
        println!("| 1,004 sheets, two processes | {two:.1} s, peak {peak_two:.0} MiB in both together |");
        println!("| two processes against one | {:.2} times as many per second |", one / two);
    }
}

fn print(scratch: &Path, arguments: &[&str]) -> Child {
    Command::new(env!("CARGO_BIN_EXE_bayleaf"))
        .current_dir(scratch)
        .args(["print", "--at", "31 °C"])
        .args(arguments)
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()
        .expect("the binary of this bench starts")
}

/// Waits for a process; the peak resident memory of it and its children, in MiB.
///
/// The kernel keeps the peak of each process until it ends, so asking every few
/// milliseconds misses nothing but the last ones.
fn peak_memory(mut child: Child) -> f64 {
    let mut peaks = std::collections::BTreeMap::new();
    while child.try_wait().expect("it can be asked").is_none() {
        let id = child.id();
        let children = fs::read_to_string(format!("/proc/{id}/task/{id}/children")).unwrap_or_default();
        for process in std::iter::once(id.to_string()).chain(children.split_whitespace().map(str::to_owned)) {
            let status = fs::read_to_string(format!("/proc/{process}/status")).unwrap_or_default();
            let peak = status.lines().find_map(|line| line.strip_prefix("VmHWM:"));
            let kib = peak.and_then(|line| line.trim().trim_end_matches(" kB").parse::<f64>().ok());
            if let Some(kib) = kib {
                peaks.insert(process, kib / 1024.0);
            }
        }
        std::thread::sleep(Duration::from_millis(5));
    }
    peaks.values().sum()
}
