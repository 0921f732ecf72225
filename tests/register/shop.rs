//! A workshop in a folder of its own, with the demo set as its specs, driven through the binary.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};
use std::sync::OnceLock;

use tempfile::TempDir;

/// A workshop's folder.
pub(super) struct Shop {
    folder: TempDir,
}

impl Shop {
    /// With nothing in it.
    pub(super) fn empty() -> Self {
        Self { folder: tempfile::tempdir().expect("a temporary folder can be made") }
    }

    /// With the demo set, of which nothing is issued.
    pub(super) fn new() -> Self {
        let shop = Self::empty();
        copy(&Path::new(env!("CARGO_MANIFEST_DIR")).join("specs"), &shop.path().join("specs"));
        shop
    }

    /// With all of the demo set issued on the first of November, at 31 °C.
    pub(super) fn issued() -> Self {
        static FIRST: OnceLock<Shop> = OnceLock::new();
        let first = FIRST.get_or_init(|| {
            let shop = Self::new();
            let told = shop.done(&[
                "issue",
                "--by",
                "KM",
                "--why",
                "first issue",
                "--date",
                "2026-11-01",
                "--at",
                "31 °C",
            ]);
            assert!(told.contains("103 papers issued"), "{told}");
            shop
        });
        let shop = Self::empty();
        copy(first.path(), shop.path());
        shop
    }

    pub(super) fn path(&self) -> &Path {
        self.folder.path()
    }

    pub(super) fn command(&self, arguments: &[&str]) -> Command {
        let mut command = Command::new(env!("CARGO_BIN_EXE_bayleaf"));
        command.current_dir(self.path()).args(arguments);
        command
    }

    pub(super) fn run(&self, arguments: &[&str]) -> Output {
        self.command(arguments).output().expect("the binary of this test run starts")
    }

    /// What a command says that ends well.
    pub(super) fn done(&self, arguments: &[&str]) -> String {
        self.ends(arguments, 0)
    }

    /// What a command says, to both streams, that ends with this code.
    pub(super) fn ends(&self, arguments: &[&str], code: i32) -> String {
        let output = self.run(arguments);
        let told = [output.stdout, output.stderr].map(|bytes| String::from_utf8_lossy(&bytes).into_owned());
        let told = told.concat();
        assert_eq!(output.status.code(), Some(code), "{arguments:?}:\n{told}");
        told
    }

    /// Replaces text in one spec, where it stands once.
    pub(super) fn edit(&self, file: &str, from: &str, to: &str) {
        let path = self.path().join("specs").join(file);
        let text = fs::read_to_string(&path).expect("it is a spec of the demo");
        assert_eq!(text.matches(from).count(), 1, "{from} in {file}");
        fs::write(path, text.replace(from, to)).expect("it can be written");
    }

    /// The evaporator's pull-up resistor, corrected.
    pub(super) fn correct_pull_up(&self) {
        let converter = "\nconverter = { bits = 10, plausible = \"2 % to 98 %\"";
        let of = |ohms| format!("resistor = \"{ohms} kΩ ± 1 %\"{converter}");
        self.edit("curlew/sensors.toml", &of("4.7"), &of("4.8"));
    }

    pub(super) fn register(&self) -> String {
        fs::read_to_string(self.path().join("specs/register.toml")).unwrap_or_default()
    }

    /// What lies in the folder of issued papers, hidden files too.
    pub(super) fn papers(&self) -> Vec<String> {
        let entries = fs::read_dir(self.path().join("out/issued")).into_iter().flatten();
        let mut names: Vec<String> = entries
            .map(|entry| entry.expect("it can be listed").file_name().to_string_lossy().into_owned())
            .collect();
        names.sort();
        names
    }

    pub(super) fn paper(&self, name: &str) -> PathBuf {
        self.path().join("out/issued").join(name)
    }
}

pub(super) fn copy(from: &Path, to: &Path) {
    fs::create_dir_all(to).expect("folders can be made");
    for entry in fs::read_dir(from).expect("it can be listed") {
        let entry = entry.expect("it can be listed");
        let to = to.join(entry.file_name());
        if entry.path().is_dir() {
            copy(&entry.path(), &to);
        } else {
            fs::copy(entry.path(), to).expect("it can be copied");
        }
    }
}
