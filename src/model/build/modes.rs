//! Builds truth tables and panels.

use std::collections::BTreeMap;

use super::text;
use crate::model::fact::Fact;
use crate::model::mode::{Control, Mode, ModeSet};
use crate::model::panel::Panel;
use crate::physics::modes::{Cell, TruthTable};
use crate::spec::{self, Set};

/// The truth tables of every system that has control points or modes.
pub(super) fn mode_sets(set: &Set) -> Option<BTreeMap<String, ModeSet>> {
    let mut sets = BTreeMap::new();
    for system in set.systems.keys() {
        if let Some(modes) = mode_set(set, system)? {
            sets.insert(system.clone(), modes);
        }
    }
    Some(sets)
}

/// `None` where a part is missing; `Some(None)` where the system has no modes.
fn mode_set(set: &Set, system: &str) -> Option<Option<ModeSet>> {
    let controls: Vec<Control> = (set.controls_of(system).into_iter())
        .map(|(id, entry)| control(id, &entry.item))
        .collect::<Option<_>>()?;
    let modes: Vec<Mode> = (set.modes_of(system).into_iter())
        .map(|(id, entry)| mode(&controls, id, &entry.item))
        .collect::<Option<_>>()?;
    if modes.is_empty() {
        return Some(None);
    }
    let values = controls.iter().map(|control| control.values.len()).collect();
    let rows = modes.iter().map(|mode| mode.cells.clone()).collect();
    let table = TruthTable::new(values, rows).ok()?;
    Some(Some(ModeSet { system: system.to_owned(), controls, modes, table }))
}

fn control(id: &str, control: &spec::Control) -> Option<Control> {
    let values: Vec<String> = control.values.as_ref()?.iter().map(|value| value.value.clone()).collect();
    let key = |part: &str| format!("control.{id}.{part}");
    let mut facts = vec![Fact {
        key: key("values"),
        label: "fact-control-values",
        written: Some(values.join(", ")),
        source: control.source.clone(),
    }];
    facts.push(Fact::new(key("observe"), "fact-control-observe", control.observe.as_ref()));
    Some(Control {
        id: id.to_owned(),
        title: text(&control.title)?,
        values,
        observe: control.observe.as_ref().map(|observe| observe.value.clone()),
        facts,
    })
}

fn mode(controls: &[Control], id: &str, mode: &spec::Mode) -> Option<Mode> {
    let cells = controls.iter().map(|control| cell(control, mode)).collect::<Option<_>>()?;
    let mut facts = forced(id, mode);
    facts.push(Fact::new(format!("mode.{id}.time"), "fact-mode-time", mode.time.as_ref()));
    Some(Mode {
        id: id.to_owned(),
        title: text(&mode.title)?,
        cells,
        time: mode.time.as_ref().map(|time| time.value),
        facts,
    })
}

/// What a mode does with a control point; a rule has seen that it says so.
fn cell(control: &Control, mode: &spec::Mode) -> Option<Cell> {
    let named = |list: &[spec::At<String>]| list.iter().any(|at| at.value == control.id);
    if let Some(force) = mode.forces.iter().find(|force| force.control.value == control.id) {
        let value = &force.value.as_ref()?.value;
        return control.values.iter().position(|known| known == value).map(Cell::Forced);
    }
    match (named(&mode.free), named(&mode.dont_care)) {
        (true, false) => Some(Cell::Free),
        (false, true) => Some(Cell::DontCare),
        _ => None,
    }
}

/// What a mode forces: one fact for all that come from one source.
fn forced(id: &str, mode: &spec::Mode) -> Vec<Fact> {
    let mut by_source: Vec<(Option<&String>, Vec<String>)> = Vec::new();
    for force in &mode.forces {
        let Some(value) = &force.value else { continue };
        let shown = format!("{} = {}", force.control.value, value.written);
        match by_source.iter_mut().find(|(source, _)| *source == value.source.as_ref()) {
            Some((_, all)) => all.push(shown),
            None => by_source.push((value.source.as_ref(), vec![shown])),
        }
    }
    let fact = |(source, all): (Option<&String>, Vec<String>)| Fact {
        key: format!("mode.{id}.forces"),
        label: "fact-mode-forces",
        written: Some(all.join(", ")),
        source: source.cloned(),
    };
    by_source.into_iter().map(fact).collect()
}

/// A panel with its scales as given.
pub(super) fn panel(id: &str, panel: &spec::Panel) -> Option<Panel> {
    let key = |part: &str| format!("panel.{id}.{part}");
    let mut facts = vec![
        Fact::new(key("celsius"), "fact-panel-celsius", panel.celsius.as_ref()),
        Fact::new(key("fahrenheit"), "fact-panel-fahrenheit", panel.fahrenheit.as_ref()),
        Fact::new(key("low_mark"), "fact-panel-low-mark", panel.low_mark.as_ref()),
        Fact::new(key("high_mark"), "fact-panel-high-mark", panel.high_mark.as_ref()),
    ];
    // Scales that nobody called separate are not a missing value.
    if panel.separate.is_some() {
        facts.push(Fact::new(key("separate"), "fact-panel-separate", panel.separate.as_ref()));
    }
    let mark = |mark: &Option<spec::Sourced<String>>| mark.as_ref().map(|mark| mark.value.clone());
    Some(Panel {
        id: id.to_owned(),
        title: text(&panel.title)?,
        system: text(&panel.system)?,
        celsius: panel.celsius.as_ref().map(|scale| scale.value),
        fahrenheit: panel.fahrenheit.as_ref().map(|scale| scale.value),
        marks: [mark(&panel.low_mark), mark(&panel.high_mark)],
        facts,
    })
}
