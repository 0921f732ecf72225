//! An actuator's position contacts, on a wire each or coded by resistors on one.

use toml::Spanned;
use toml::de::DeValue;

use super::reader::{Item, Reader, plain_number};
use super::roles::{Role, RolePin};
use super::value::{At, Sourced};
use crate::diag::{Finding, Place};
use crate::quantity::{Resistance, Toleranced, Voltage, scalar, toleranced};
use crate::words::Message;

/// Position contacts on a wire each.
#[derive(Debug, Clone)]
pub struct Contacts {
    /// Their names, in the order of the codes.
    pub names: Option<Vec<At<String>>>,
    /// The greatest resistance of a closed contact.
    pub closed: Option<Sourced<Resistance>>,
    /// The positions in the order of travel.
    pub positions: Vec<DoorPosition>,
    /// The pins of the contacts at the control unit.
    pub(super) pins: Vec<RolePin>,
    /// The pins of the contacts at the part's own plug.
    pub(super) component_pins: Vec<RolePin>,
}

/// Position contacts coded by resistors on one wire.
#[derive(Debug, Clone)]
pub struct Ladder {
    /// A chain, or a resistor for each contact.
    pub kind: Option<At<LadderKind>>,
    /// The pull-up resistor inside the control unit.
    pub resistor: Option<Sourced<Toleranced<Resistance>>>,
    /// The resistors, from the pin on.
    pub chain: Option<Vec<Sourced<Toleranced<Resistance>>>>,
    /// The resistor at the far end of a chain.
    pub end: Option<Sourced<Toleranced<Resistance>>>,
    /// The greatest resistance of a closed contact.
    pub closed: Option<Sourced<Resistance>>,
    /// The reference, where it is not the system's.
    pub reference: Option<Sourced<Toleranced<Voltage>>>,
    /// The positions in the order of travel.
    pub positions: Vec<DoorPosition>,
    /// Where the table's name stands.
    pub place: Place,
}

/// How resistors and contacts hang together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LadderKind {
    /// Contact k leads to ground from behind k resistors.
    Series,
    /// Each contact has a resistor of its own.
    Parallel,
}

/// One position: its name and which contacts are closed there.
#[derive(Debug, Clone)]
pub struct DoorPosition {
    /// What the door is there.
    pub name: String,
    /// The closed contacts.
    pub code: Code,
    /// Where the row stands.
    pub place: Place,
    /// The source of its table.
    pub source: Option<String>,
}

/// Which contacts are closed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Code {
    /// One for each contact in its order.
    Each(Vec<bool>),
    /// Only this one, by its number.
    Only(usize),
    /// None.
    Open,
}

impl Code {
    /// Each contact of so many in its order; `None` where the code is for another number.
    #[must_use]
    pub fn closed(&self, contacts: usize) -> Option<Vec<bool>> {
        match self {
            Self::Each(closed) => (closed.len() == contacts).then(|| closed.clone()),
            Self::Only(only) => {
                (*only < contacts).then(|| (0..contacts).map(|contact| contact == *only).collect())
            }
            Self::Open => Some(vec![false; contacts]),
        }
    }
}

impl Contacts {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["names", "positions"]);
        let pins = |end: &'static str| -> Vec<RolePin> {
            let pins = reader.sourced_list(end, |text| Ok(text.to_owned()));
            let pin = |(index, pin): (usize, Sourced<String>)| RolePin {
                role: Role::Contact(index),
                key: format!("contacts.{end}.{index}"),
                pin,
            };
            pins.into_iter().flatten().enumerate().map(pin).collect()
        };
        let contacts = Self {
            names: reader.texts("names"),
            closed: reader.sourced("closed", scalar),
            positions: read_positions(reader),
            pins: pins("pins"),
            component_pins: pins("component_pins"),
        };
        reader.finish();
        contacts
    }
}

impl Ladder {
    pub(super) fn read(reader: &Reader<'_>) -> Self {
        reader.require(&["kind", "chain", "positions"]);
        let kinds = [("series", LadderKind::Series), ("parallel", LadderKind::Parallel)];
        let kind = reader.choice("kind", &kinds);
        // Without a chain there is no far end: the key stays unknown.
        let is_chain = kind.as_ref().is_none_or(|kind| kind.value == LadderKind::Series);
        let ladder = Self {
            resistor: reader.sourced("resistor", toleranced),
            chain: reader.sourced_list("chain", toleranced),
            end: is_chain.then(|| reader.sourced("end", toleranced)).flatten(),
            closed: reader.sourced("closed", scalar),
            reference: reader.sourced("reference", toleranced),
            positions: read_positions(reader),
            place: reader.place.clone(),
            kind,
        };
        reader.finish();
        ladder
    }
}

/// A name, and a contact's number, a code or `open`.
const POSITION: Item =
    Item::Row(&[Item::Text, Item::OneOf(&[Item::Count, Item::Pattern("^[01]+$"), Item::Pattern("^open$")])]);

/// Reads `positions`: rows of `["name", "101"]`, `["name", 2]` or `["name", "open"]`.
fn read_positions(reader: &Reader<'_>) -> Vec<DoorPosition> {
    let Some(rows) = reader.list("positions", &POSITION) else { return Vec::new() };
    rows.value.iter().filter_map(|row| read_position(reader, row)).collect()
}

fn read_position<'a>(reader: &Reader<'a>, row: &'a Spanned<DeValue<'a>>) -> Option<DoorPosition> {
    let place = reader.file().place(row);
    let cells = row.get_ref().as_array();
    let (name, code) = match cells.map(|cells| cells.iter().collect::<Vec<_>>()).as_deref() {
        Some([name, code]) if name.get_ref().is_str() => {
            (reader.text_of("positions", name, "wanted-text"), read_code(code.get_ref()))
        }
        _ => (None, None),
    };
    if let (Some(name), Some(code)) = (&name, &code) {
        let (name, code) = (name.value.clone(), code.clone());
        return Some(DoorPosition { name, code, place, source: reader.source() });
    }
    // A name that cannot be printed has had its own finding.
    if name.is_some() || code.is_none() {
        let finding =
            Finding::error(Message::new("spec-bad-position"), place, Message::new("wanted-position"));
        reader.report(finding);
    }
    None
}

fn read_code(value: &DeValue<'_>) -> Option<Code> {
    if let Some(number) = plain_number(value) {
        let whole = (0..=MOST_CONTACTS).find(|&contact| (contact as f64).total_cmp(&number).is_eq());
        return whole.map(Code::Only);
    }
    let text = value.as_str()?;
    if text == "open" {
        return Some(Code::Open);
    }
    let closed = text.chars().map(|c| match c {
        '1' => Some(true),
        '0' => Some(false),
        _ => None,
    });
    closed.collect::<Option<Vec<bool>>>().filter(|closed| !closed.is_empty()).map(Code::Each)
}

/// A contact's number is small.
const MOST_CONTACTS: usize = crate::physics::contacts::MOST_CONTACTS;
