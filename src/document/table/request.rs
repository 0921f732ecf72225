//! What a request does over its scenario: its states, and what holds it back when.

use super::{Ask, Cell, Column, Show, Table, not_over_temperature};
use crate::model::{Model, Request};
use crate::physics::request::{Span, State};
use crate::quantity::Rounding;
use crate::words::{Message, Words};

/// The states of a request over the scenario of its spec.
pub(super) fn of_request(model: &Model, words: &Words, id: &str, ask: &Ask<'_>) -> Result<Table, Message> {
    not_over_temperature(ask)?;
    let request = model.requests.get(id).ok_or_else(|| Message::new("run-no-such-table").with("id", id))?;
    Ok(table(words, request))
}

/// The table itself; without rows where the scenario, a threshold or a delay is missing.
pub(in crate::document) fn table(words: &Words, request: &Request) -> Table {
    let tenth = Show::Decimals(1, Rounding::Nearest);
    let text = Show::Digits(Rounding::Nearest);
    let timeline = request.timeline();
    let mut notes = Vec::new();
    match (&request.scenario, &timeline) {
        (Some(scenario), Some(_)) => notes.push(scenario.title.clone()),
        (Some(_), None) => notes.push(words.word("table-request-incomplete")),
        (None, _) => notes.push(words.word("table-request-no-scenario")),
    }
    Table {
        title: words.say(&Message::new("table-request-title").with("request", &request.title)),
        notes,
        columns: vec![
            Column::new("from_s", words.word("table-from"), tenth),
            Column::new("to_s", words.word("table-to"), tenth),
            Column::new("state", words.word("table-state"), text),
            Column::new("held_back_by", words.word("table-held-back-by"), text),
        ],
        rows: timeline
            .iter()
            .flat_map(|timeline| &timeline.request)
            .map(|span| row(words, request, span))
            .collect(),
        formulas: vec![words.word("table-formula-condition"), words.word("table-formula-request")],
        inputs: request.all_facts().cloned().collect(),
    }
}

fn row(words: &Words, request: &Request, span: &Span<State>) -> Vec<Cell> {
    let by = match &span.is {
        State::Inhibited(by) => {
            let titles = by.iter().filter_map(|index| request.conditions.get(*index));
            Cell::Text(titles.map(|condition| condition.title.clone()).collect::<Vec<_>>().join(", "))
        }
        _ => Cell::Missing,
    };
    let (key, word) = state(&span.is);
    vec![Cell::Number(span.from), Cell::Number(span.to), Cell::Named(key, words.word(word)), by]
}

/// The key of a state for programs, and the word for it.
pub(in crate::document) fn state(state: &State) -> (&'static str, &'static str) {
    match state {
        State::Absent => ("absent", "table-request-absent"),
        State::Inhibited(_) => ("inhibited", "table-request-inhibited"),
        State::Delayed => ("delayed", "table-request-delayed"),
        State::Permitted => ("permitted", "table-request-permitted"),
    }
}
