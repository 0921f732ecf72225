//! The files of a set in one: TOML again, in which each begins with a line that names it.
//!
//! One file is saved from a PDF by any reader and can be used as it is; names with folders in them
//! cannot. Files of a set hold tables alone, so that one after the other they mean the same.

use crate::spec::Texts;

/// What stands before a file's name, at the least.
const RULE: usize = 4;

/// The files in one, each by its path.
pub(super) fn joined(files: &Texts) -> String {
    // Longer than any that a file holds already: it may have been put together from others.
    let is_met = |rule: &str| files.values().any(|text| text.lines().any(|line| line.starts_with(rule)));
    let rule = (RULE..).map(rule).find(|rule| !is_met(rule)).unwrap_or_default();
    let mut all = String::new();
    for (path, text) in files {
        // A line break in a file's name would begin a line of TOML.
        let path = path.replace(char::is_control, " ");
        all.extend([rule.as_str(), &path, "\n", text, "\n"]);
    }
    all
}

/// The files again, as they were; nothing where the text was not put together from any.
pub(super) fn parted(all: &str) -> Option<Texts> {
    if all.is_empty() {
        return Some(Texts::new());
    }
    let dashes = all.strip_prefix("# ")?.split(' ').next()?;
    if dashes.len() < RULE || dashes.bytes().any(|byte| byte != b'-') {
        return None;
    }
    let rule = rule(dashes.len());
    let mut files: Vec<(String, String)> = Vec::new();
    for line in all.split_inclusive('\n') {
        match line.strip_prefix(&rule) {
            Some(path) => files.push((path.trim_end().to_owned(), String::new())),
            None => files.last_mut()?.1.push_str(line),
        }
    }
    for (_, text) in &mut files {
        text.pop();
    }
    Some(files.into_iter().collect())
}

fn rule(dashes: usize) -> String {
    format!("# {} ", "-".repeat(dashes))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn files_come_back_as_they_were_whatever_they_hold() {
        let files = [
            ("curlew/sensors.toml", "# ---- not a file\n[sensor.a]\r\nr = 1\r\n"),
            ("no end.toml", "# ------\n[sensor.b]"),
            ("empty.toml", ""),
            ("shop.toml", "\n\n[shop]\nname = \"-- #\"\n\n"),
        ];
        let files: Texts = files.map(|(path, text)| (path.into(), text.into())).into();
        let once = joined(&files);
        assert!(once.starts_with("# ----- curlew/sensors.toml\n"), "{once}");
        assert_eq!(parted(&once).as_ref(), Some(&files));
        let twice = Texts::from([("all.toml".to_owned(), once)]);
        assert_eq!(parted(&joined(&twice)), Some(twice));
        assert_eq!(parted(""), Some(Texts::new()));
        assert_eq!((parted("[shop]\n"), parted("# --- a\n"), parted("# --x- a\n")), (None, None, None));
    }

    #[test]
    fn a_name_ends_with_its_line() {
        let all = joined(&Texts::from([("a\nb.toml".to_owned(), "[shop]\n".to_owned())]));
        assert_eq!(all, "# ---- a b.toml\n[shop]\n\n");
    }
}
