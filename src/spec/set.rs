//! A whole set: every kind, every id, from every file.

use std::collections::BTreeMap;

use toml::Spanned;
use toml::de::{DeTable, DeValue};

use super::duplicate;
use super::reader::{File, Notes, Reader, unknown};
use super::syntax;
use super::value::At;
use super::{
    Actuator, Card, Checklist, Connector, Control, Driver, Instrument, Light, Mode, Panel, Refrigerant,
    Report, Request, Sensor, Sheet, Shop, Symptom, System, Test, Transducer, Vehicle, Vent, Wire,
};
use crate::diag::{Finding, Findings, Place, Sources};
use crate::words::Message;

/// The kinds of table that a spec may hold.
pub(super) const KINDS: &[&str] = &[
    "shop",
    "system",
    "sensor",
    "actuator",
    "light",
    "transducer",
    "connector",
    "control",
    "driver",
    "instrument",
    "mode",
    "panel",
    "vehicle",
    "wire",
    "card",
    "sheet",
    "test",
    "report",
    "checklist",
    "symptom",
    "refrigerant",
    "vent",
    "request",
];

/// The longest id: it is part of a file name and stands in the title band.
pub const LONGEST_ID: usize = 40;

/// Something with an id, and where the id stands.
#[derive(Debug, Clone)]
pub struct Entry<T> {
    /// The thing.
    pub item: T,
    /// Where its id stands.
    pub place: Place,
}

/// Entries by id, in the order of their ids.
pub type Entries<T> = BTreeMap<String, Entry<T>>;

/// Everything a folder of specs says.
#[derive(Debug, Default)]
pub struct Set {
    /// The shop.
    pub shop: Option<Entry<Shop>>,
    /// Systems by id.
    pub systems: Entries<System>,
    /// Sensors by id.
    pub sensors: Entries<Sensor>,
    /// Actuators by id.
    pub actuators: Entries<Actuator>,
    /// Light sensors by id.
    pub lights: Entries<Light>,
    /// Pressure transducers by id.
    pub transducers: Entries<Transducer>,
    /// Connectors by id.
    pub connectors: Entries<Connector>,
    /// Control points by id.
    pub controls: Entries<Control>,
    /// Panel modes by id.
    pub modes: Entries<Mode>,
    /// Panels by id.
    pub panels: Entries<Panel>,
    /// Switched loads by id.
    pub drivers: Entries<Driver>,
    /// Wires by id.
    pub wires: Entries<Wire>,
    /// Instruments by id.
    pub instruments: Entries<Instrument>,
    /// Vehicles by id.
    pub vehicles: Entries<Vehicle>,
    /// Cards by id.
    pub cards: Entries<Card>,
    /// Sheets by id.
    pub sheets: Entries<Sheet>,
    /// Result reports by id.
    pub reports: Entries<Report>,
    /// Tests by id.
    pub tests: Entries<Test>,
    /// Checklists by id.
    pub checklists: Entries<Checklist>,
    /// Symptoms by id.
    pub symptoms: Entries<Symptom>,
    /// Refrigerants by id.
    pub refrigerants: Entries<Refrigerant>,
    /// Vents by id.
    pub vents: Entries<Vent>,
    /// Requests by id.
    pub requests: Entries<Request>,
}

/// Whether things of this kind have an id: `[sensor.ID]`, but `[shop]`.
pub(super) fn has_ids(kind: &str) -> bool {
    kind != "shop" && KINDS.contains(&kind)
}

impl Set {
    /// Reads every file; what is wrong with them goes to `findings`.
    #[must_use]
    pub fn read(sources: &Sources, findings: &Findings) -> Self {
        Self::read_noting(sources, findings, None)
    }

    /// Reads every file, and notes what each table is asked for.
    pub(super) fn read_noting(sources: &Sources, findings: &Findings, notes: Option<&Notes>) -> Self {
        let mut set = Self::default();
        for (id, text) in sources.texts() {
            let mut file = File { notes, ..File::new(id, text, findings) };
            let root = syntax::parse(&mut file);
            set.read_file(file, root.get_ref());
        }
        set
    }

    fn read_file(&mut self, file: File<'_>, root: &DeTable<'_>) {
        for (kind, value) in root {
            let place = Place { file: file.id, span: kind.span() };
            let name = kind.get_ref().as_ref();
            let Some(table) = value.get_ref().as_table() else {
                let message = Message::new("spec-loose-key").with("word", name);
                let label = if has_ids(name) {
                    Message::new("wanted-id-table").with("kind", name)
                } else {
                    Message::new("wanted-table")
                };
                file.findings.report(Finding::error(message, place, label));
                continue;
            };
            if table.is_empty() && has_ids(name) && !file.broken {
                let message = Message::new("spec-empty-table").with("name", name);
                let label = Message::new("wanted-id-table").with("kind", name);
                file.findings.report(Finding::error(message, place, label));
                continue;
            }
            match name {
                "shop" => self.read_shop(file, table, place),
                "system" => read_kind(file, name, table, &mut self.systems, System::read),
                "sensor" => read_kind(file, name, table, &mut self.sensors, Sensor::read),
                "actuator" => read_kind(file, name, table, &mut self.actuators, Actuator::read),
                "light" => read_kind(file, name, table, &mut self.lights, Light::read),
                "transducer" => {
                    read_kind(file, name, table, &mut self.transducers, Transducer::read);
                }
                "connector" => read_kind(file, name, table, &mut self.connectors, Connector::read),
                "driver" => read_kind(file, name, table, &mut self.drivers, Driver::read),
                "wire" => read_kind(file, name, table, &mut self.wires, Wire::read),
                "instrument" => {
                    read_kind(file, name, table, &mut self.instruments, Instrument::read);
                }
                "control" => read_kind(file, name, table, &mut self.controls, Control::read),
                "mode" => read_kind(file, name, table, &mut self.modes, Mode::read),
                "panel" => read_kind(file, name, table, &mut self.panels, Panel::read),
                "vehicle" => read_kind(file, name, table, &mut self.vehicles, Vehicle::read),
                "card" => read_kind(file, name, table, &mut self.cards, Card::read),
                "sheet" => read_kind(file, name, table, &mut self.sheets, Sheet::read),
                "report" => read_kind(file, name, table, &mut self.reports, Report::read),
                "test" => read_kind(file, name, table, &mut self.tests, Test::read),
                "checklist" => read_kind(file, name, table, &mut self.checklists, Checklist::read),
                "symptom" => read_kind(file, name, table, &mut self.symptoms, Symptom::read),
                "refrigerant" => read_kind(file, name, table, &mut self.refrigerants, Refrigerant::read),
                "vent" => read_kind(file, name, table, &mut self.vents, Vent::read),
                "request" => read_kind(file, name, table, &mut self.requests, Request::read),
                _ => file.findings.report(unknown("spec-unknown-kind", "", name, place, KINDS)),
            }
        }
    }

    fn read_shop(&mut self, file: File<'_>, table: &DeTable<'_>, place: Place) {
        if let Some(first) = &self.shop {
            return duplicate::report(file, "shop", place, first.place.clone());
        }
        let reader = Reader::new(file, table, "shop".to_owned(), place.clone(), None);
        let item = Shop::read(&reader);
        reader.finish();
        self.shop = Some(Entry { item, place });
    }
}

/// Reads every `[kind.ID]` of one file.
fn read_kind<'a, T>(
    file: File<'a>,
    kind: &str,
    table: &'a DeTable<'a>,
    entries: &mut Entries<T>,
    read: impl Fn(&Reader<'a>) -> T,
) {
    for (id, value) in table {
        let at = At { value: id.get_ref().to_string(), place: Place { file: file.id, span: id.span() } };
        let name = format!("{kind}.{}", at.value);
        if !check_id(file, kind, &at, value) {
            continue;
        }
        let Some(table) = value.get_ref().as_table() else { continue };
        if let Some(first) = entries.get(&at.value) {
            duplicate::report(file, &name, at.place, first.place.clone());
            continue;
        }
        let reader = Reader::new(file, table, name, at.place.clone(), None);
        let item = read(&reader);
        reader.finish();
        entries.insert(at.value, Entry { item, place: at.place });
    }
}

/// Whether a text can be an id: it is printed, typed on a command line and used as a file name.
pub(super) fn is_id(text: &str) -> bool {
    let plain = |c: char| c.is_ascii_alphanumeric() || c == '-' || c == '_';
    let begins = text.starts_with(|c: char| c.is_ascii_alphanumeric());
    begins && text.len() <= LONGEST_ID && text.chars().all(plain)
}

fn check_id(file: File<'_>, kind: &str, id: &At<String>, value: &Spanned<DeValue<'_>>) -> bool {
    if !value.get_ref().is_table() {
        let message = Message::new("spec-no-id").with("kind", kind).with("word", &id.value);
        let label = Message::new("wanted-id-table").with("kind", kind);
        file.findings.report(Finding::error(message, id.place.clone(), label));
        return false;
    }
    if !is_id(&id.value) {
        let message = Message::new("spec-bad-id").with("id", &id.value);
        let label = Message::new("wanted-id").with("longest", LONGEST_ID);
        file.findings.report(Finding::error(message, id.place.clone(), label));
        return false;
    }
    true
}
