//! What the cards of light sensors and transducers have in common: pins at the control unit,
//! a table over what they sense, the circuit, what each fault reads.

use schemars::JsonSchema;
use serde::Serialize;

use super::card::{self, KeyFigure};
use super::caution::{self, Cautions, Room, Touch};
use super::ends::{self, End};
use super::fault_rows::{self, FaultRow};
use super::figures;
use super::furniture::{Furniture, Kind};
use super::given::{Given, given};
use super::grid::{Column, Grid};
use super::marks::Marks;
use super::table::{BLANK, Cell, Table};
use super::{Context, Data, Document, Listed, faults, finish, table};
use crate::model::{Fact, Model, RolePin};
use crate::physics::Band;
use crate::quantity::{Rounding, figure};
use crate::spec::Role;
use crate::words::{Message, Words};

/// Everything the template of such a card gets.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct PartCard {
    /// What every page carries: title band, foot, sources.
    furniture: Furniture,
    /// Where in the vehicle it sits, or NOT GIVEN.
    place: String,
    /// The letter of that place's source.
    place_mark: String,
    /// Which way its reading goes: `hotter → fewer Ω → fewer V`.
    direction: String,
    /// The connectors at both ends of its wires.
    ends: Vec<End>,
    /// Up to three figures to be read from a distance.
    key_figures: Vec<KeyFigure>,
    /// Over what it senses, where that can be computed.
    readings: Option<Grid>,
    /// The drawing of the circuit; null where it is not known.
    circuit: Option<Circuit>,
    /// What each fault reads; null where that cannot be computed.
    wrong: Option<Grid>,
    /// What to do next, a text for each step.
    next: Vec<String>,
    /// The values that it rests on, a line each.
    given: Vec<Given>,
    /// The caution box.
    cautions: Cautions,
}

impl Data for PartCard {
    fn furniture(&mut self) -> &mut Furniture {
        &mut self.furniture
    }
}

/// The drawing: which one, the wires from top to bottom, what stands inside the control unit.
#[derive(Debug, Serialize, JsonSchema)]
pub(super) struct Circuit {
    /// `light-pull-up`, `light-load` or `transducer`.
    pub form: &'static str,
    /// The reference: `5.00 V ± 2 %`; may be empty.
    pub reference: String,
    /// The unit's own resistor: `3.9 kΩ ± 1 %`; may be empty.
    pub resistor: String,
    /// The pins at the control unit, empty where there is none.
    pub reference_pin: String,
    /// That of the signal: `C3/8`.
    pub signal_pin: String,
    /// That of the return.
    pub return_pin: String,
    /// What it shows, for readers who cannot see it.
    pub alt: String,
}

/// What tells one kind from the other.
pub(super) struct Part<'a> {
    /// The id with its kind: `light.sun`.
    pub name: String,
    pub title: &'a str,
    pub system: &'a str,
    pub facts: &'a [Fact],
    pub pins: &'a [RolePin],
    pub kind: &'static str,
    pub template: &'static str,
    pub direction: &'static str,
    pub key_figures: Vec<KeyFigure>,
    pub circuit: Option<Circuit>,
    /// The column of the dictionary that tells its two conditions apart, and that of what the
    /// control unit believes; the unit of both.
    pub condition: (&'static str, &'static str, &'static str),
    pub next: Vec<String>,
    pub touches: Vec<Touch>,
}

/// Composes the card of one part.
pub(super) fn compose(context: Context<'_>, listed: &Listed, part: Part<'_>) -> Option<Document> {
    let Context { model, words, .. } = context;
    let system = model.systems.get(part.system)?;
    let mut marks = Marks::of(context.units);
    let kind = Kind {
        word: part.kind,
        size: context.size_of(listed),
        title: part.title.to_owned(),
        id: listed.id.clone(),
    };
    let furniture = Furniture::new(context, kind, part.system, system, &mut marks);
    let (place, place_mark) = card::place(words, part.facts, &mut marks);
    let mut readings = table_of(context, &part.name)?;
    // Cautions have a box of their own.
    readings.notes.retain(|note| !part.is_caution(words, note));
    let missing = part
        .pins
        .is_empty()
        .then(|| Fact::new::<()>(format!("{}.pins", part.name), "fact-control-unit-pins", None));
    let facts = part.facts.iter().filter(|fact| fact.label != "fact-location").chain(&missing);
    let data = PartCard {
        furniture,
        place,
        place_mark,
        direction: words.word(part.direction),
        ends: ends_of(words, model, part.pins, &mut marks),
        key_figures: card::figures(words, "card-part-window", part.key_figures),
        readings: (!readings.rows.is_empty())
            .then(|| Grid::of_table(words, "card-part-readings", &readings).without_blanks()),
        circuit: part.circuit,
        wrong: wrong(context, &part.name, part.condition),
        next: part.next,
        given: given(words, facts, &mut marks),
        cautions: caution::of(words, &part.touches, Room::Card),
    };
    Some(finish(context, listed, (part.template, 2), data, marks))
}

impl Part<'_> {
    fn is_caution(&self, words: &Words, note: &str) -> bool {
        ["caution-transducer", "caution-refrigerant", "caution-law", "caution-law-open"]
            .iter()
            .any(|id| words.word(id) == note)
    }
}

/// The figures that `bayleaf table` shows.
pub(super) fn table_of(Context { model, words, units, .. }: Context<'_>, name: &str) -> Option<Table> {
    table::of(model, words, &table::Ask { id: name, units, ..table::Ask::default() }).ok()
}

/// The window in one row of a table: its limits, or its nominal value alone.
pub(super) fn window(
    words: &Words,
    table: &Table,
    row: usize,
    at: String,
    also: String,
) -> Option<KeyFigure> {
    let volts = |key: &str| table.number(table.rows.get(row)?, key);
    let nominal = volts("voltage_nom_v")?;
    if let (Some(low), Some(high)) = (volts("voltage_min_v"), volts("voltage_max_v")) {
        let shown = figures::band(Band { low, nominal, high }, figures::VOLT_DECIMALS);
        return Some(KeyFigure { at, value: figures::range(&shown), unit: "V".to_owned(), also });
    }
    let nominal = format!("{} V", figures::nominal_volts(nominal));
    let also = words.say(&Message::new("card-nominal-value").with("value", nominal));
    Some(KeyFigure { at, value: words.word("doc-not-given"), unit: String::new(), also })
}

/// The pins, connector by connector.
fn ends_of(words: &Words, model: &Model, pins: &[RolePin], marks: &mut Marks) -> Vec<End> {
    let mut ends: Vec<(&str, End)> = Vec::new();
    for pin in pins {
        let Some((id, _)) = pin.pin.name.split_once('/') else { continue };
        let Some(line) = ends::line(words, ends::role(pin.role), Some(&pin.pin), marks) else { continue };
        if let Some((_, end)) = ends.iter_mut().find(|(known, _)| *known == id) {
            end.pins.push(line);
            continue;
        }
        let Some(connector) = model.connectors.get(id) else { continue };
        let end = End {
            title: ends::title(words, id, &connector.title),
            view: ends::looked_at(words, connector.view, connector.side, connector.latch.as_deref()),
            pins: vec![line],
        };
        ends.push((id, end));
    }
    ends.into_iter().map(|(_, end)| end).collect()
}

/// The pin of a role, as the drawing has room for it.
pub(super) fn pin(pins: &[RolePin], roles: &[Role]) -> String {
    let found = pins.iter().find(|pin| roles.contains(&pin.role));
    found.map(|pin| ends::short(&pin.pin.name)).unwrap_or_default()
}

/// What each fault reads under both conditions, and what the control unit believes of it.
fn wrong(
    context: Context<'_>,
    name: &str,
    (condition, believes, unit): (&'static str, &'static str, &'static str),
) -> Option<Grid> {
    let Context { model, words, units, .. } = context;
    let ask = faults::Ask { id: name, units, ..faults::Ask::default() };
    let table = faults::of(model, words, &ask).ok()?;
    let at = table.column(condition)?;
    let mut heads: Vec<String> = Vec::new();
    for row in &table.rows {
        let head = format!("{} {unit}", table.columns[at].text(&row[at]));
        if !heads.contains(&head) {
            heads.push(head);
        }
    }
    let blocks = blocks(&table, at, heads.len())?;
    let decimals = if unit == units.pressure().symbol() { units.pressure_decimals() } else { 0 };
    let rows = fault_rows::rows(&blocks, heads.len(), |cell| {
        let shown = |key: &str, decimals| match cell(key) {
            Cell::Number(number) => figure(number, decimals, Rounding::Nearest),
            _ => BLANK.to_owned(),
        };
        vec![shown("voltage_v", 3), shown(believes, decimals)]
    });
    let believed = words.say(&Message::new("card-part-believes").with("unit", unit));
    let columns = std::iter::once(Column::words(words.word("card-part-fault")))
        .chain(heads.iter().flat_map(|head| {
            [Column::figures(head.clone(), "V"), Column::figures(head.clone(), believed.clone())]
        }))
        .chain([Column::words(words.word("card-part-told"))]);
    let row = |row: FaultRow| {
        let told = words.word(if row.by.is_empty() { "faults-no" } else { "faults-yes" });
        std::iter::once(fault_rows::listed(&row.names)).chain(row.reads).chain([told]).collect()
    };
    // A fault of which no reading is known is named, and gives no figures to look for.
    let is_known = |row: &FaultRow| row.reads.iter().any(|cell| cell != BLANK);
    let (known, unknown) = fault_rows::parted(words, rows, is_known, "card-part-unknown");
    Some(Grid {
        title: words.word("card-part-wrong"),
        notes: std::iter::once(words.word("card-part-wrong-note")).chain(unknown).collect(),
        columns: columns.collect(),
        rows: known.into_iter().map(row).collect(),
    })
}

/// The dictionary with the same faults in each condition: one that is none in a condition, as a
/// cover in the dark, stands there with no reading.
fn blocks(table: &Table, at: usize, count: usize) -> Option<Table> {
    let (fault, size) = (table.column("fault")?, table.column("size")?);
    let mut conditions: Vec<&Cell> = Vec::new();
    for row in &table.rows {
        if !conditions.contains(&&row[at]) {
            conditions.push(&row[at]);
        }
    }
    let mut names: Vec<(&Cell, &Cell)> = Vec::new();
    for row in &table.rows {
        if !names.contains(&(&row[fault], &row[size])) {
            names.push((&row[fault], &row[size]));
        }
    }
    let mut rows = Vec::with_capacity(count * names.len());
    for condition in conditions {
        for (name, of_size) in &names {
            let same =
                |row: &&Vec<Cell>| row[at] == *condition && row[fault] == **name && row[size] == **of_size;
            rows.push(table.rows.iter().find(same).cloned().unwrap_or_else(|| {
                let mut row = vec![Cell::Missing; table.columns.len()];
                (row[at], row[fault], row[size]) = (condition.clone(), (*name).clone(), (*of_size).clone());
                row
            }));
        }
    }
    Some(Table { rows, ..table.clone() })
}
