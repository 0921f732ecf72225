//! Builds connectors, and puts their pins in order.

use super::super::connector::{Connector, ConnectorPin, pin_order};
use super::super::fact::Fact;
use super::text;
use crate::spec;

pub(super) fn connector(id: &str, written: &spec::Connector) -> Option<Connector> {
    let mut pins: Vec<ConnectorPin> = written.pins.iter().map(|(mark, pin)| pin_of(id, mark, pin)).collect();
    pins.sort_by_cached_key(|pin| pin_order(&pin.mark));
    let row = |row: &spec::FaceRow| row.places.iter().map(|place| place.value.clone()).collect();
    let latch = written.latch.is_some() || written.latch_side.is_some();
    let looks = [
        ("view", "fact-view", written.view.is_some()),
        ("side", "fact-side", written.side.is_some()),
        ("latch", "fact-latch", latch),
        ("rows", "fact-face", written.rows.is_some()),
    ];
    let missing = looks.into_iter().filter(|(.., given)| !given);
    let missing =
        missing.map(|(key, label, _)| Fact::new::<()>(format!("connector.{id}.{key}"), label, None));
    Some(Connector {
        id: id.to_owned(),
        title: text(&written.title)?,
        view: written.view.as_ref().map(|view| view.value),
        side: written.side.as_ref().map(|side| side.value),
        latch: text(&written.latch),
        latch_side: written.latch_side.as_ref().map(|edge| edge.value),
        keys: written.keys.iter().flatten().map(|key| key.value).collect(),
        rows: written.rows.as_ref().map(|rows| rows.value.iter().map(row).collect()),
        missing: missing.collect(),
        pins,
    })
}

fn pin_of(id: &str, mark: &str, pin: &spec::Pin) -> ConnectorPin {
    let key = format!("connector.{id}.pins.{mark}");
    let expect = std::array::from_fn(|state| {
        let expected = pin.expect[state].as_ref()?;
        Some(Fact::new(format!("{key}.expect.{}", spec::Pin::STATES[state]), "fact-expected", Some(expected)))
    });
    ConnectorPin {
        mark: mark.to_owned(),
        function: text(&pin.function),
        wire: Fact::new(format!("{key}.wire"), "fact-wire", pin.wire.as_ref()),
        expect,
    }
}
