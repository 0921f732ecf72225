//! Builds test sheets.

use super::super::paper::{Group, Report, Row, RowOf, Sheet};
use super::{multimeter, text, thermometer};
use crate::spec::{self, About, Set, Surface};

pub(super) fn build(set: &Set, id: &str, sheet: &spec::Sheet) -> Option<Sheet> {
    let system = text(&sheet.system)?;
    let vehicles = match &sheet.vehicles {
        Some(chosen) => chosen.iter().map(|vehicle| vehicle.value.clone()).collect(),
        None => (set.vehicles.iter())
            .filter(|(_, vehicle)| vehicle.item.has(&system))
            .map(|(id, _)| id.clone())
            .collect(),
    };
    Some(Sheet {
        id: id.to_owned(),
        title: text(&sheet.title)?,
        vehicles,
        thermometer: thermometer(set, &sheet.thermometer),
        meter: multimeter(set, &sheet.meter),
        surface: sheet.surface.as_ref().map_or(Surface::Paper, |surface| surface.value),
        groups: sheet.groups.iter().map(|written| group(set, written)).collect::<Option<_>>()?,
        system,
    })
}

fn group(set: &Set, written: &spec::Group) -> Option<Group> {
    let measured = written.measure.as_ref().zip(written.place.as_ref());
    let row = |row: &spec::SheetRow| {
        let of = match &row.what {
            spec::RowOf::Sensor(sensor) => {
                let (measure, place) = measured?;
                RowOf::Sensor { id: sensor.value.clone(), measure: measure.value, place: place.value }
            }
            spec::RowOf::Test(test) => RowOf::Test(test.value.clone()),
        };
        Some(Row { card: card_of(set, row), note: text(&row.note), of })
    };
    Some(Group {
        title: text(&written.title)?,
        state: text(&written.state),
        rows: written.rows.iter().map(row).collect::<Option<_>>()?,
    })
}

/// The card that has the strip table of a row's sensor.
fn card_of(set: &Set, row: &spec::SheetRow) -> Option<String> {
    let sensor = match &row.what {
        spec::RowOf::Sensor(sensor) => &sensor.value,
        spec::RowOf::Test(test) => {
            let component = set.tests.get(&test.value)?.item.component.as_ref()?;
            component.value.strip_prefix("sensor.")?
        }
    };
    let about = |card: &spec::Card| card.of(About::Sensor).is_some_and(|at| at.value == *sensor);
    set.cards.iter().find(|(_, card)| about(&card.item)).map(|(id, _)| id.clone())
}

pub(super) fn report(id: &str, report: &spec::Report) -> Option<Report> {
    Some(Report {
        id: id.to_owned(),
        title: text(&report.title)?,
        sheet: text(&report.sheet)?,
        evidence: report.evidence.iter().map(|test| test.value.clone()).collect(),
    })
}
