//! Draws findings over the user's lines.

use annotate_snippets::renderer::DecorStyle;
use annotate_snippets::{AnnotationKind, Group, Level, Origin, Snippet};

use super::{Finding, Place, Severity, Sources, Subject};
use crate::words::Words;

/// Draws findings, with or without colour.
pub struct Renderer<'a> {
    drawer: annotate_snippets::Renderer,
    sources: &'a Sources,
    words: &'a Words,
}

impl<'a> Renderer<'a> {
    /// Prepares to draw findings over `sources` in the language of `words`.
    #[must_use]
    pub fn new(sources: &'a Sources, words: &'a Words, colour: bool) -> Self {
        let drawer =
            if colour { annotate_snippets::Renderer::styled() } else { annotate_snippets::Renderer::plain() };
        Self { drawer: drawer.decor_style(DecorStyle::Ascii), sources, words }
    }

    /// One finding as text, without a line end.
    #[must_use]
    pub fn draw(&self, finding: &Finding) -> String {
        let (word, level) = match finding.severity {
            Severity::Error => ("finding-error", Level::ERROR),
            Severity::Warning => ("finding-warning", Level::WARNING),
        };
        let level = level.with_name(self.words.word(word));
        let mut group = Group::with_title(level.primary_title(self.words.say(&finding.message)));
        match &finding.subject {
            Subject::Path(path) => group = group.element(Origin::path(path.as_str())),
            Subject::Place(place, label) => {
                let label = self.words.say(label);
                let primary = AnnotationKind::Primary.span(self.visible(place)).label(label);
                let mut snippet = self.snippet(place).annotation(primary);
                let mut other = None;
                if let Some((context, label)) = &finding.context {
                    let annotation =
                        AnnotationKind::Context.span(self.visible(context)).label(self.words.say(label));
                    if context.file == place.file {
                        snippet = snippet.annotation(annotation);
                    } else {
                        other = Some(self.snippet(context).annotation(annotation));
                    }
                }
                group = group.element(snippet).elements(other);
            }
        }
        for note in &finding.notes {
            let level = Level::NOTE.with_name(self.words.word("finding-note"));
            group = group.element(level.message(self.words.say(note)));
        }
        for help in &finding.help {
            let level = Level::HELP.with_name(self.words.word("finding-help"));
            group = group.element(level.message(self.words.say(help)));
        }
        self.drawer.render(&[group])
    }

    fn snippet(&self, place: &Place) -> Snippet<'a, annotate_snippets::Annotation<'a>> {
        Snippet::source(self.sources.text(place.file)).path(self.sources.path(place.file))
    }

    /// The place cut to its first line, and never empty: a finding about a
    /// whole table points at its head, not at sixty rows.
    fn visible(&self, place: &Place) -> std::ops::Range<usize> {
        let text = self.sources.text(place.file);
        let start = floor_boundary(text, place.span.start.min(text.len()));
        let end = floor_boundary(text, place.span.end.min(text.len()));
        let stretch = text.get(start..end).unwrap_or_default();
        let line = stretch.find(['\n', '\r']).map_or(end, |length| start + length);
        if line > start {
            return start..line;
        }
        let step = text[start..].chars().next().map_or(0, char::len_utf8);
        start..start + step
    }
}

/// The nearest character boundary at or below `at`.
fn floor_boundary(text: &str, at: usize) -> usize {
    (0..=at).rev().find(|&at| text.is_char_boundary(at)).unwrap_or(0)
}
