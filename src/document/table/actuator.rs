//! An actuator's readings: over its travel, and at the positions of its contacts.

use super::{Ask, Cell, Column, Show, Table, coded, not_over_temperature};
use crate::model::{Actuator, Model, Stops};
use crate::physics::ladder::Wiring;
use crate::physics::potentiometer;
use crate::quantity::{Interval, Ratio, Rounding, Toleranced, Voltage, decimals_for, figure};
use crate::words::{Message, Words};

/// From row to row: a tenth of the travel.
const STEPS: u32 = 10;

/// One row, whichever columns it has.
#[derive(Debug, Clone, Default)]
pub(super) struct Row {
    pub(super) position: Option<String>,
    pub(super) travel_percent: Option<f64>,
    /// Which contacts are closed: `101`.
    pub(super) contacts: Option<String>,
    pub(super) ratio: [Option<f64>; 3],
    pub(super) volts: [Option<f64>; 3],
}

/// The table of an actuator.
pub(super) fn of_actuator(model: &Model, words: &Words, id: &str, ask: &Ask<'_>) -> Result<Table, Message> {
    not_over_temperature(ask)?;
    let missing = || Message::new("run-no-such-table").with("id", id);
    let actuator = model.actuators.get(id).ok_or_else(missing)?;
    let rows = rows(actuator);
    let say = |message: &Message| words.say(message);
    Ok(Table {
        title: actuator.title.clone(),
        notes: notes(actuator).iter().chain(&coded::notes(actuator)).map(say).collect(),
        columns: columns(words, actuator),
        rows: rows.iter().map(|row| cells(actuator, row)).collect(),
        formulas: formulas(actuator).iter().map(say).collect(),
        inputs: actuator
            .facts
            .iter()
            .chain(actuator.pins().flat_map(|pin| pin.pin.facts()))
            .cloned()
            .collect(),
    })
}

fn rows(actuator: &Actuator) -> Vec<Row> {
    let travel = actuator.stops.as_ref().map(|stops| travel(actuator, stops));
    travel.into_iter().flatten().chain(coded::rows(actuator)).collect()
}

/// The readings from stop to stop.
fn travel(actuator: &Actuator, stops: &Stops) -> Vec<Row> {
    let row = |step: u32| {
        let part = f64::from(step) / f64::from(STEPS);
        let window = travel_window(actuator, stops, Ratio::new(part));
        let nominal = travel_nominal(actuator, stops, Ratio::new(part));
        let ratio = [window.map(|w| w.low), nominal, window.map(|w| w.high)];
        let name = match step {
            0 => stops.low.name.clone(),
            STEPS => stops.high.name.clone(),
            _ => None,
        };
        Row {
            position: name,
            travel_percent: Some(100.0 * part),
            ratio: ratio.map(|ratio| ratio.map(Ratio::part)),
            volts: volts(ratio, actuator.reference),
            ..Row::default()
        }
    };
    (0..=STEPS).map(row).collect()
}

/// Where good feedbacks read at a part of the travel; a load on the wiper bends it.
fn travel_window(actuator: &Actuator, stops: &Stops, travel: Ratio) -> Option<Interval<Ratio>> {
    match &actuator.feedback {
        Some(feedback) if feedback.load.is_some() => {
            feedback.travel_window(travel, stops.low.window, stops.high.window, None).ok().flatten()
        }
        _ => {
            let at = |low, high| potentiometer::Stops { low, high }.reading(travel);
            let (low, high) = (stops.low.window, stops.high.window);
            Some(Interval { low: at(low.low, high.low), high: at(low.high, high.high) })
        }
    }
}

fn travel_nominal(actuator: &Actuator, stops: &Stops, travel: Ratio) -> Option<Ratio> {
    let nominal = potentiometer::Stops { low: stops.low.nominal?, high: stops.high.nominal? };
    match &actuator.feedback {
        Some(feedback) if feedback.load.is_some() => feedback.at_travel(travel, nominal, None).ok(),
        _ => Some(nominal.reading(travel)),
    }
}

/// Least, nominal and greatest volts of a ratio.
pub(super) fn volts(
    [low, nominal, high]: [Option<Ratio>; 3],
    reference: Option<Toleranced<Voltage>>,
) -> [Option<f64>; 3] {
    let limits = reference.and_then(|reference| reference.limits);
    let product = |ratio: Option<Ratio>, volts: Option<Voltage>| Some(ratio?.part() * volts?.volts());
    [
        product(low, limits.map(|limits| limits.low)),
        product(nominal, reference.map(|reference| reference.nominal)),
        product(high, limits.map(|limits| limits.high)),
    ]
}

/// Contacts on a wire each are read as closed or open, not in volts.
fn has_volts(actuator: &Actuator) -> bool {
    actuator.stops.is_some() || actuator.ladder.is_some()
}

fn has_contacts(actuator: &Actuator) -> bool {
    actuator.contacts.is_some() || actuator.ladder.is_some()
}

fn columns(words: &Words, actuator: &Actuator) -> Vec<Column> {
    let word = |key, id: &str, show| Column::new(key, words.word(id), show);
    let whole = Show::Decimals(0, Rounding::Nearest);
    let ratios = ["ratio_min", "ratio_nom", "ratio_max"];
    let volts = ["voltage_min_v", "voltage_nom_v", "voltage_max_v"];
    let travel = actuator.stops.as_ref().map(|_| word("travel_percent", "table-travel", whole));
    let contacts = has_contacts(actuator).then(|| word("contacts", "table-contacts", whole));
    let volts = Column::band(words, volts, "V", |rounding| Show::Decimals(3, rounding));
    let ratios = Column::band(words, ratios, "V/Vref", |rounding| Show::Decimals(4, rounding));
    let readings = volts.into_iter().chain(ratios).filter(|_| has_volts(actuator));
    let position = std::iter::once(word("position", "table-position", whole));
    position.chain(travel).chain(contacts).chain(readings).collect()
}

fn cells(actuator: &Actuator, row: &Row) -> Vec<Cell> {
    let text = |text: &Option<String>| text.clone().map_or(Cell::Missing, Cell::Text);
    let travel = actuator.stops.as_ref().map(|_| Cell::from(row.travel_percent));
    let contacts = has_contacts(actuator).then(|| text(&row.contacts));
    let readings = row.volts.into_iter().chain(row.ratio).filter(|_| has_volts(actuator));
    let position = std::iter::once(text(&row.position));
    position.chain(travel).chain(contacts).chain(readings.map(Cell::from)).collect()
}

fn notes(actuator: &Actuator) -> Vec<Message> {
    let moves = actuator.moves.as_ref().map(|what| Message::new("table-note-moves").with("what", what));
    let meter = has_volts(actuator).then(|| Message::new("run-table-no-meter"));
    let ends = actuator.stops.as_ref().and_then(|stops| {
        let (low, high) = (stops.low.name.as_ref()?, stops.high.name.as_ref()?);
        Some(Message::new("table-note-ends").with("low", low).with("high", high))
    });
    let windows_only = |stops: &Stops| stops.low.nominal.is_none() || stops.high.nominal.is_none();
    let no_nominal = actuator.stops.as_ref().is_some_and(windows_only);
    let no_nominal = no_nominal.then(|| Message::new("table-note-no-nominal"));
    let total = actuator.feedback.as_ref().and_then(|feedback| feedback.total_window()).map(|total| {
        let decimals = decimals_for(total.low.ohms());
        Message::new("table-note-end-to-end")
            .with("low", figure(total.low.ohms(), decimals, Rounding::Up))
            .with("high", figure(total.high.ohms(), decimals, Rounding::Down))
    });
    let reports = has_volts(actuator) || has_contacts(actuator);
    let silent = (!reports).then(|| Message::new("table-note-no-position"));
    [moves, meter, ends, no_nominal, total, silent].into_iter().flatten().collect()
}

fn formulas(actuator: &Actuator) -> Vec<Message> {
    let loaded = actuator.feedback.as_ref().is_some_and(|feedback| feedback.load.is_some());
    let travel = actuator
        .stops
        .as_ref()
        .map(|_| Message::new(if loaded { "table-formula-travel-loaded" } else { "table-formula-travel" }));
    let contacts = actuator
        .contacts
        .as_ref()
        .map(|contacts| Message::new("table-formula-contacts").with("names", contacts.names.join(", ")));
    let stuck = actuator.contacts.as_ref().map(|_| Message::new("table-formula-contacts-stuck"));
    let ladder = actuator.ladder.as_ref().map(|_| Message::new("table-formula-ladder"));
    let wiring = actuator.ladder.as_ref().map(|ladder| match ladder.ladder.wiring {
        Wiring::Series { .. } => Message::new("table-formula-ladder-series"),
        Wiring::Parallel { .. } => Message::new("table-formula-ladder-parallel"),
    });
    let dirty = actuator.ladder.as_ref().map(|_| Message::new("table-formula-dirty"));
    let volts = has_volts(actuator).then(|| Message::new("table-formula-volts"));
    [travel, contacts, stuck, ladder, wiring, dirty, volts].into_iter().flatten().collect()
}
