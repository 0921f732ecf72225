//! The codes of position contacts: which are closed where, and which are no position's.

use crate::document::grid::{Column, Grid};
use crate::model::{Actuator, Contacts, PositionLadder};
use crate::physics::contacts::Code;
use crate::words::{Message, Words};

/// More codes than this that are no position's are counted, not listed.
const MOST_ILLEGAL: usize = 8;

/// A row for each position, then one for each code that no position has.
pub(super) fn compose(words: &Words, contacts: &Contacts) -> Grid {
    let positions = contacts.positions.iter().zip(contacts.table.positions());
    let mut rows: Vec<Vec<String>> = positions.map(|(name, code)| row(name.clone(), *code)).collect();
    let illegal = contacts.table.illegal();
    let counted = illegal.len() > MOST_ILLEGAL;
    if !counted {
        rows.extend(illegal.iter().map(|code| row(words.word("card-act-illegal"), *code)));
    }
    let counted =
        counted.then(|| words.say(&Message::new("card-act-illegal-count").with("count", illegal.len())));
    let legend = words.word("card-act-contacts");
    let name = std::iter::once(Column::words(words.word("card-act-position")));
    let columns = name.chain(contacts.names.iter().map(|name| Column::figures(name.clone(), "")));
    Grid {
        title: words.word("card-act-codes"),
        notes: std::iter::once(legend).chain(counted).collect(),
        columns: columns.collect(),
        rows,
    }
}

fn row(name: String, code: Code) -> Vec<String> {
    let marks = code.closed().map(|closed| if closed { "●" } else { "○" }.to_owned());
    std::iter::once(name).chain(marks).collect()
}

/// What the digits of a ladder's contacts mean.
pub(super) fn legend(words: &Words, actuator: &Actuator) -> Option<String> {
    actuator.ladder.as_ref().map(|_| words.word("card-act-ladder"))
}

/// The positions of the fewest and of the most volts among those with a contact closed.
pub(super) fn ends(ladder: &PositionLadder) -> Option<(&str, &str)> {
    let read = |(name, closed): &'_ (String, Vec<bool>)| {
        let window = ladder.ladder.ratio_window(closed, None).ok().flatten()?;
        Some((name.clone(), window.high.part()))
    };
    let closed = || ladder.positions.iter().filter(|(_, closed)| closed.contains(&true));
    let known: Vec<(String, f64)> = closed().filter_map(read).collect();
    let by_volts = |one: &&(String, f64), other: &&(String, f64)| one.1.total_cmp(&other.1);
    let (least, most) = (known.iter().min_by(by_volts)?, known.iter().max_by(by_volts)?);
    let own = |name: &str| closed().map(|(known, _)| known.as_str()).find(|known| *known == name);
    (least.0 != most.0).then_some((own(&least.0)?, own(&most.0)?))
}
