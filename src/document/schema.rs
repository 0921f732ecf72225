//! The JSON Schema of what each template gets, made from the types that are serialized.
//!
//! Their comments are the descriptions. A document always carries every key, so that each
//! is required and no other is allowed. JSON Schema draft 7, as for specs.

use schemars::JsonSchema;
use schemars::r#gen::SchemaSettings;
use schemars::schema::SchemaObject;
use schemars::visit::{Visitor, visit_schema_object};
use serde_json::{Value, json};

use super::{
    actuator_card, air_card, checklist, connector_card, driver_card, index, mode_card, part_card, proof,
    pull_list, report, request_card, sensor_card, symptoms, system_card, test_sheet,
};

/// The key by which a file of data names its schema. Templates do not look at it.
pub const NAMED: &str = "$schema";

/// Writes one schema.
type Write = fn(&str) -> Value;

/// Every template of a kind of paper with the schema of its data.
const SCHEMAS: &[(&str, Write)] = &[
    ("actuator-card.typ", of::<actuator_card::ActuatorCard>),
    ("air-card.typ", of::<air_card::AirCard>),
    ("checklist.typ", of::<checklist::Page>),
    ("connector-card.typ", of::<connector_card::ConnectorCard>),
    ("driver-card.typ", of::<driver_card::DriverCard>),
    ("index.typ", of::<index::Index>),
    ("light-card.typ", of::<part_card::PartCard>),
    ("mode-card.typ", of::<mode_card::ModeCard>),
    ("proof.typ", of::<proof::Proof>),
    ("pull-list.typ", of::<pull_list::Page>),
    ("report.typ", of::<report::ResultReport>),
    ("request-card.typ", of::<request_card::RequestCard>),
    ("sensor-card.typ", of::<sensor_card::SensorCard>),
    ("strip-card.typ", of::<sensor_card::strip_card::StripCard>),
    ("symptoms.typ", of::<symptoms::Index>),
    ("system-card.typ", of::<system_card::SystemCard>),
    ("test-sheet.typ", of::<test_sheet::TestSheet>),
    ("transducer-card.typ", of::<part_card::PartCard>),
    ("wall-card.typ", of::<sensor_card::SensorCard>),
];

/// The schema of each template's data, by the template's file name.
#[must_use]
pub fn schemas() -> Vec<(&'static str, Value)> {
    SCHEMAS.iter().map(|(template, write)| (*template, write(template))).collect()
}

/// The file that a template's schema is written to, beside it.
#[must_use]
pub fn file_of(template: &str) -> String {
    format!("{}.schema.json", template.trim_end_matches(".typ"))
}

/// The schema of a type, as the data of a template.
pub(crate) fn of<T: JsonSchema>(template: &str) -> Value {
    let generator = SchemaSettings::draft07().with_visitor(Whole).into_generator();
    let mut schema = json!(generator.into_root_schema_for::<T>());
    schema["title"] = json!(format!("Data of {template}"));
    schema["properties"][NAMED] =
        json!({ "type": "string", "description": "Names this schema, in a file for an editor." });
    schema
}

/// Every key of an object is there, and no other.
#[derive(Debug, Clone)]
struct Whole;

impl Visitor for Whole {
    fn visit_schema_object(&mut self, schema: &mut SchemaObject) {
        if let Some(object) = schema.object.as_mut().filter(|object| !object.properties.is_empty()) {
            object.required = object.properties.keys().cloned().collect();
            object.additional_properties = Some(Box::new(false.into()));
        }
        visit_schema_object(self, schema);
    }
}
