//! `bayleaf verify`: what an issued PDF carries inside, computed again by today's tool.

use std::fs;
use std::path::Path;

use super::args::Verify;
use super::outcome::{Outcome, fail, say};
use crate::diag::reason;
use crate::enclosure::{self, Comparison, Differing, Enclosed};
use crate::words::{Language, Message, Words};

/// Runs the command: done where the figures are the same, findings where they are not.
pub(super) fn run(arguments: &Verify, language: Option<Language>) -> Outcome {
    let path = &arguments.file;
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
    match enclosure::compare(&enclosed) {
        Ok(comparison) => {
            let told = tell(&words, &enclosed, &comparison);
            let outcome = Outcome::of_output(&words, told);
            let same = comparison.figures.is_empty();
            if outcome == Outcome::Done && !same { Outcome::Findings } else { outcome }
        }
        Err(why) => refused(&words, &why),
    }
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
