//! `bayleaf verify`: whether a paper is the valid one, and whether today's tool computes the
//! figures that an issued PDF carries inside.

use std::fs;
use std::path::Path;

use super::desk::{self, Book};
use crate::cli::args::Verify;
use crate::cli::load::Origin;
use crate::cli::outcome::{Outcome, fail, say};
use crate::diag::reason;
use crate::enclosure::{self, Comparison, Differing, Enclosed};
use crate::register::{Code, Verdict};
use crate::spec::{Act, Issue, REGISTER_FILE};
use crate::words::{Language, Message, Words};

/// Runs the command: done where the paper is the valid one and its figures are the same,
/// findings where not.
pub(in crate::cli) fn run(arguments: &Verify, language: Option<Language>) -> Outcome {
    match arguments.what.as_slice() {
        [one] if is_file(one) => file(Path::new(one), arguments, language),
        code => of_code(&code.join(" "), arguments, language).unwrap_or_else(|outcome| outcome),
    }
}

fn is_file(text: &str) -> bool {
    let path = Path::new(text);
    path.extension().is_some_and(|end| end.eq_ignore_ascii_case("pdf")) || path.is_file()
}

/// By the register alone.
fn of_code(code: &str, arguments: &Verify, language: Option<Language>) -> Result<Outcome, Outcome> {
    let specs = arguments.specs.specs.as_deref();
    let words = desk::words(specs, language);
    let folder = desk::folder(specs, &words)?;
    let book = Book::read(&folder, &words)?;
    let verdict = book.record.verdict(&Code::read(code));
    let told = Outcome::of_output(&words, say(words.say(&said(&words, code, verdict))));
    Ok(told.or_findings(!matches!(verdict, Verdict::Current(..))))
}

/// What the register says, in a line.
fn said(words: &Words, code: &str, verdict: Verdict<'_>) -> Message {
    let of = |message: Message, id: &str, issue: &Issue| {
        let message = message.with("id", id).with("revision", issue.act.revision.value);
        message.with("date", issue.act.date.value.format(words.language().dates())).with("by", &issue.act.by)
    };
    let by = |message: Message, act: &Act| {
        let message = message.with("since", act.date.value.format(words.language().dates()));
        message.with("who", &act.by).with("why", &act.why)
    };
    match verdict {
        Verdict::Current(id, issue) => of(Message::new("verdict-current"), id, issue),
        Verdict::Superseded(id, issue, act) => {
            by(of(Message::new("verdict-superseded"), id, issue), act).with("newest", act.revision.value)
        }
        Verdict::Withdrawn(id, issue, act) => by(of(Message::new("verdict-withdrawn"), id, issue), act),
        Verdict::Other(id, issue) => {
            of(Message::new("verdict-other"), id, issue).with("code", &issue.content)
        }
        Verdict::Draft(Some((id, issue))) => of(Message::new("verdict-draft-same"), id, issue),
        Verdict::Draft(None) => Message::new("verdict-draft"),
        Verdict::Unknown => Message::new("verdict-unknown").with("code", code),
    }
}

/// By what the file carries inside, and by the register where there is one.
fn file(path: &Path, arguments: &Verify, language: Option<Language>) -> Outcome {
    let words = Words::of(language.unwrap_or_default());
    let refused = |words: &Words, why: &Message| {
        let message = Message::new("enclosed-refused").with("path", path.display());
        fail(words, &message.with("why", words.say(why)))
    };
    let enclosed = match looked_into(path) {
        Ok(enclosed) => enclosed,
        Err(why) => return refused(&words, &why),
    };
    // In the language of the paper, where no other is asked for.
    let words = Words::of(language.unwrap_or_else(|| enclosed.record.language()));
    let is_valid = match by_register(&words, &enclosed, arguments) {
        Ok(is_valid) => is_valid,
        Err(outcome) => return outcome,
    };
    match enclosure::compare(&enclosed) {
        Ok(comparison) => {
            let told = tell(&words, &enclosed, &comparison);
            let outcome = Outcome::of_output(&words, told);
            outcome.or_findings(!is_valid || !comparison.figures.is_empty())
        }
        Err(why) => refused(&words, &why),
    }
}

/// Says whether the paper is the valid one; it is not doubted where there is no register to ask.
fn by_register(words: &Words, enclosed: &Enclosed, arguments: &Verify) -> Result<bool, Outcome> {
    let Origin::Folder(folder) = Origin::of(arguments.specs.specs.as_deref()) else { return Ok(true) };
    if !folder.join(REGISTER_FILE).exists() {
        return Ok(true);
    }
    let book = Book::read(&folder, words)?;
    let record = &enclosed.record;
    let fingerprint = record.data.pointer("/furniture/fingerprint").and_then(serde_json::Value::as_str);
    let code = Code {
        id: Some(record.id.clone()),
        revision: Some(record.revision),
        fingerprint: fingerprint.map(str::to_owned),
        is_draft: false,
    };
    let verdict = book.record.verdict(&code);
    let shown = format!("{} r{} {}", record.id, record.revision, fingerprint.unwrap_or_default());
    let told = Outcome::of_output(words, say(words.say(&said(words, &shown, verdict))));
    if told == Outcome::Done { Ok(matches!(verdict, Verdict::Current(..))) } else { Err(told) }
}

fn looked_into(path: &Path) -> Result<Enclosed, Message> {
    let unread = |error: std::io::Error| Message::new("enclosed-unread").with("reason", reason(&error));
    // Before it is read: a large file is refused without being held in memory.
    let size = fs::metadata(path).map_err(unread)?.len();
    if size > enclosure::LARGEST {
        return Err(Message::new("enclosed-huge").with("most", enclosure::LARGEST >> 20));
    }
    enclosure::read(&fs::read(path).map_err(unread)?)
}

fn tell(words: &Words, enclosed: &Enclosed, comparison: &Comparison) -> std::io::Result<()> {
    let record = &enclosed.record;
    let paper = Message::new("enclosed-paper")
        .with("id", &record.id)
        .with("revision", record.revision)
        .with("date", record.date.format(words.language().dates()))
        .with("by", &record.by)
        .with("tool", &record.tool);
    say(words.say(&paper))?;
    let verdict = match comparison.figures.len() {
        0 => Message::new("enclosed-same"),
        count => Message::new("enclosed-differ").with_count("figures", count),
    };
    say(words.say(&verdict.with("tool", enclosure::tool())))?;
    comparison.figures.iter().try_for_each(|figure| say(format_args!("  {}", line(words, figure))))?;
    if comparison.wording > 0 {
        say(words.say(&Message::new("enclosed-wording").with_count("texts", comparison.wording)))?;
    }
    Ok(())
}

fn line(words: &Words, figure: &Differing) -> String {
    let shown = |text: &str| if text.is_empty() { "–".to_owned() } else { text.to_owned() };
    let line = Message::new("enclosed-figure")
        .with("place", &figure.place)
        .with("printed", shown(&figure.printed))
        .with("today", shown(&figure.today));
    let digits =
        figure.digits.map(|digits| words.say(&Message::new("enclosed-digits").with("digits", digits)));
    std::iter::once(words.say(&line)).chain(digits).collect::<Vec<_>>().join(", ")
}
