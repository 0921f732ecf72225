//! What `bayleaf import` says: the lines for a spec, and how the table was understood.

use crate::quantity::Unit;
use crate::spec::import::{Column, Decimal, Imported, Use};
use crate::words::{Message, Words};

/// What the caller says of the sensor, where he does.
#[derive(Debug, Clone, Default)]
pub struct Named {
    /// Its id.
    pub id: String,
    /// Its title.
    pub title: Option<String>,
    /// Its system's id.
    pub system: Option<String>,
    /// Where the table comes from.
    pub source: Option<String>,
}

/// The lines of a spec: comments that tell how the table was read, then the sensor.
#[must_use]
pub fn lines(words: &Words, file: &str, imported: &Imported, named: &Named) -> Vec<String> {
    let mut lines: Vec<String> = how(words, file, imported).iter().map(|line| format!("# {line}")).collect();
    lines.push(String::new());
    lines.push(format!("[sensor.{}]", named.id));
    let keys = [("title", &named.title), ("system", &named.system), ("source", &named.source)];
    for (key, value) in keys {
        lines.push(match value {
            Some(value) => format!("{key} = {}", toml::Value::String(value.clone())),
            // Only the person knows: the line says what is still to be written.
            None => format!("# {key} = \"…\""),
        });
    }
    lines.push(String::new());
    lines.push(format!("[sensor.{}.curve]", named.id));
    lines.push("model = \"table\"".to_owned());
    lines.push(format!("temperature = \"{}\"", imported.temperature.symbol()));
    lines.push(format!("resistance = \"{}\"", imported.resistance.symbol()));
    lines.push("points = [".to_owned());
    lines.extend(imported.rows.iter().map(|row| format!("    [{}],", row.written.join(", "))));
    lines.push("]".to_owned());
    lines
}

/// How the file was understood, a line each.
fn how(words: &Words, file: &str, imported: &Imported) -> Vec<String> {
    let separator = match imported.separator {
        ';' => "import-semicolon",
        '\t' => "import-tab",
        '|' => "import-bar",
        _ => "import-comma",
    };
    let decimal = match imported.decimal {
        Decimal::Point => "import-decimal-point",
        Decimal::Comma => "import-decimal-comma",
    };
    let first = Message::new("import-how")
        .with("file", file)
        .with_count("rows", imported.rows.len())
        .with_word("separator", separator)
        .with_word("decimal", decimal);
    let columns =
        imported.columns.iter().enumerate().map(|(index, column)| column_line(words, index, column));
    let titles =
        imported.titles.iter().map(|title| words.say(&Message::new("import-title").with("title", title)));
    let skipped = (imported.skipped > 0)
        .then(|| words.say(&Message::new("import-skipped").with_count("lines", imported.skipped)));
    std::iter::once(words.say(&first)).chain(titles).chain(columns).chain(skipped).collect()
}

fn column_line(words: &Words, index: usize, column: &Column) -> String {
    let used = match column.used {
        Use::Temperature => "import-temperature",
        Use::Low => "import-low",
        Use::Nominal => "import-nominal",
        Use::High => "import-high",
        Use::LeftOut => "import-left-out",
        Use::Empty => "import-empty",
    };
    let message = Message::new("import-column")
        .with("number", index + 1)
        .with("head", &column.head)
        .with_word("used", used)
        .with("unit", column.unit.filter(|_| column.used != Use::Empty).map_or("–", Unit::symbol));
    words.say(&message)
}
