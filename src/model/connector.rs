//! A checked connector: how one looks at it, its face, and what each pin carries.

use super::fact::Fact;
use crate::spec::{Corner, Edge, Side, View};

/// A connector.
#[derive(Debug)]
pub struct Connector {
    /// Its id, such as `C2`.
    pub id: String,
    /// What it is.
    pub title: String,
    /// From where its face is seen.
    pub view: Option<View>,
    /// Which half of the pair is meant.
    pub side: Option<Side>,
    /// Where latch and keys are in that view, in the lead's words.
    pub latch: Option<String>,
    /// At which edge the latch is.
    pub latch_side: Option<Edge>,
    /// Where the keys are.
    pub keys: Vec<Corner>,
    /// The marks of the face, row by row; none where there is no pin hole.
    pub rows: Option<Vec<Vec<Option<String>>>>,
    /// Its listed pins: numbers in their order, then names.
    pub pins: Vec<ConnectorPin>,
    /// What is missing of how to look at it: view, side, latch, rows.
    pub missing: Vec<Fact>,
}

/// One listed pin.
#[derive(Debug)]
pub struct ConnectorPin {
    /// Its mark on the connector.
    pub mark: String,
    /// What it carries.
    pub function: Option<String>,
    /// The wire's colour letters and size.
    pub wire: Fact,
    /// What a document says a meter shows: key off, key on, unmated, running.
    pub expect: [Option<Fact>; 4],
}

/// Orders `2` before `10`, and `A2` before `A10` and after both: letters, then the number behind them.
#[must_use]
pub fn pin_order(mark: &str) -> (String, u64, String) {
    let at = mark.find(|c: char| c.is_ascii_digit()).unwrap_or(mark.len());
    let (letters, rest) = mark.split_at(at);
    let end = rest.find(|c: char| !c.is_ascii_digit()).unwrap_or(rest.len());
    (letters.to_owned(), rest[..end].parse().unwrap_or(u64::MAX), rest[end..].to_owned())
}

#[cfg(test)]
mod tests {
    use super::pin_order;

    #[test]
    fn pins_stand_in_the_order_of_a_person() {
        let mut marks = ["10", "A10", "2", "B1", "A2", "1"];
        marks.sort_by_key(|mark| pin_order(mark));
        assert_eq!(marks, ["1", "2", "10", "A2", "A10", "B1"]);
    }
}
