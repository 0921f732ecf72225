//! The face of a connector as one looks at it, drawn and in words.

use schemars::JsonSchema;
use serde::Serialize;

use crate::document::ends::{looked_at, view_word};
use crate::model::Connector;
use crate::spec::{Corner, Edge, Side, View};
use crate::words::{Message, Words};

/// The drawing.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Face {
    /// How it is seen: `wire-entry view, harness side`.
    caption: String,
    /// The marks, row by row; empty where there is no pin hole.
    rows: Vec<Vec<String>>,
    /// For each place `pin` (listed), `other` (a mark that is not) or nothing.
    kinds: Vec<Vec<&'static str>>,
    /// The edge of the latch: `top`, `bottom`, `left` or `right`; empty where nobody said.
    latch: &'static str,
    /// Keys that keep it from mating wrongly.
    keys: Vec<Key>,
    /// What it shows, for readers who cannot see it.
    alt: String,
}

/// A key: the edge it is at, and at which end of it.
#[derive(Debug, Serialize, JsonSchema)]
struct Key {
    /// `top`, `bottom`, `left` or `right`.
    edge: &'static str,
    /// At which end of that edge; empty in its middle.
    end: &'static str,
}

/// One line of how to look at it: what, and how.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Look {
    /// View, side, latch or keys, in the language of the page.
    what: String,
    /// How to look at it.
    how: String,
}

/// A connector in the view that its card has.
pub(super) struct Seen<'a> {
    connector: &'a Connector,
    /// The view drawn.
    view: Option<View>,
    /// Whether that is the mirror image of what the spec has.
    mirrored: bool,
}

impl<'a> Seen<'a> {
    /// The connector as its table has it, or from the side that the card asks for.
    pub(super) fn new(connector: &'a Connector, asked: Option<View>) -> Self {
        let view = asked.or(connector.view);
        let mirrored = connector.view.is_some() && view != connector.view;
        Self { connector, view, mirrored }
    }

    /// The face, where the spec has its rows.
    pub(super) fn face(&self, words: &Words) -> Option<Face> {
        let mut rows = self.connector.rows.clone()?;
        if self.mirrored {
            rows.iter_mut().for_each(|row| row.reverse());
        }
        let listed = |mark: &str| self.connector.pins.iter().any(|pin| pin.mark == mark);
        let kind = |place: &Option<String>| match place {
            None => "",
            Some(mark) if listed(mark) => "pin",
            Some(_) => "other",
        };
        let kinds = rows.iter().map(|row| row.iter().map(kind).collect()).collect();
        let rows: Vec<Vec<String>> =
            rows.into_iter().map(|row| row.into_iter().map(Option::unwrap_or_default).collect()).collect();
        Some(Face {
            caption: self.view_words(words),
            alt: self.alt(words, &rows),
            kinds,
            rows,
            latch: self.latch_side().map_or("", edge_key),
            keys: self
                .keys()
                .map(|key| Key { edge: edge_key(key.edge), end: key.end.map_or("", edge_key) })
                .collect(),
        })
    }

    fn latch_side(&self) -> Option<Edge> {
        let edge = self.connector.latch_side?;
        Some(if self.mirrored { edge.mirrored() } else { edge })
    }

    fn keys(&self) -> impl Iterator<Item = Corner> {
        self.connector.keys.iter().map(|key| if self.mirrored { key.mirrored() } else { *key })
    }

    fn view_words(&self, words: &Words) -> String {
        looked_at(words, self.view, self.connector.side, None)
    }

    fn alt(&self, words: &Words, rows: &[Vec<String>]) -> String {
        let row = |(index, row): (usize, &Vec<String>)| {
            let marks: Vec<&str> = row.iter().filter(|mark| !mark.is_empty()).map(String::as_str).collect();
            let message =
                Message::new("card-alt-face-row").with("row", index + 1).with("marks", marks.join(", "));
            words.say(&message)
        };
        let rows: Vec<String> = rows.iter().enumerate().map(row).collect();
        let message = Message::new("card-alt-face")
            .with("id", &self.connector.id)
            .with("view", self.view_words(words))
            .with("rows", rows.join(" "));
        words.say(&message)
    }

    /// View, side, latch and keys in words, and what the other view is.
    pub(super) fn looks(&self, words: &Words) -> Vec<Look> {
        let look = |what: &str, how: String| Look { what: words.word(what), how };
        let mut looks = vec![
            look("card-look-view", words.word(view_long(self.view))),
            look("card-look-side", words.word(side_long(self.connector.side))),
            look("card-look-latch", self.latch(words)),
        ];
        let keys: Vec<String> = self.keys().map(|key| place_words(words, key.edge, key.end)).collect();
        if !keys.is_empty() {
            looks.push(look("card-look-keys", keys.join("; ")));
        }
        looks
    }

    fn latch(&self, words: &Words) -> String {
        let drawn = self.latch_side().map(|edge| place_words(words, edge, None));
        let written = self.connector.latch.as_ref().map(|latch| {
            if !self.mirrored {
                return latch.clone();
            }
            // Left and right of these words are those of the other view.
            let view = words.word(view_word(self.connector.view));
            words.say(&Message::new("card-latch-of-view").with("latch", latch).with("view", view))
        });
        let said: Vec<String> = [drawn, written].into_iter().flatten().collect();
        if said.is_empty() { words.word("doc-not-given") } else { said.join(": ") }
    }

    /// What changes where the connector is looked at from the other side.
    pub(super) fn mirror(&self, words: &Words) -> Option<(bool, String)> {
        let view = self.view?;
        let id = if self.mirrored { "card-mirrored" } else { "card-mirror" };
        let other = words.word(view_word(Some(view.other())));
        Some((self.mirrored, words.say(&Message::new(id).with("other", other))))
    }
}

fn edge_key(edge: Edge) -> &'static str {
    match edge {
        Edge::Top => "top",
        Edge::Bottom => "bottom",
        Edge::Left => "left",
        Edge::Right => "right",
    }
}

/// Where at the face something is, in words.
fn place_words(words: &Words, edge: Edge, end: Option<Edge>) -> String {
    let edge = words.word(edge_word(edge));
    match end {
        None => words.say(&Message::new("card-at-edge").with("edge", edge)),
        Some(end) => {
            let end = words.word(edge_word(end));
            words.say(&Message::new("card-at-corner").with("edge", edge).with("end", end))
        }
    }
}

fn edge_word(edge: Edge) -> &'static str {
    match edge {
        Edge::Top => "card-edge-top",
        Edge::Bottom => "card-edge-bottom",
        Edge::Left => "card-edge-left",
        Edge::Right => "card-edge-right",
    }
}

fn view_long(view: Option<View>) -> &'static str {
    match view {
        Some(View::MatingFace) => "card-view-mating-face-long",
        Some(View::WireEntry) => "card-view-wire-entry-long",
        None => "doc-not-given",
    }
}

fn side_long(side: Option<Side>) -> &'static str {
    match side {
        Some(Side::Harness) => "card-side-harness-long",
        Some(Side::Component) => "card-side-component-long",
        None => "doc-not-given",
    }
}
