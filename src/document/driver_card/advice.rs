//! What a reading at a switched load means, and what to do next.

use crate::document::card::Reading;
use crate::model::{Driver, Load};
use crate::physics::blower::Side;
use crate::quantity::{Rounding, figure};
use crate::words::{Message, Words};

/// Readings at the control pin against the battery's negative post, or what a blower does.
pub(super) fn readings(words: &Words, driver: &Driver) -> Vec<Reading> {
    let battery = driver.nominal.map_or_else(|| words.word("card-drv-battery"), |volts| volts.to_string());
    let say = |id: &'static str| words.say(&Message::new(id).with("battery", &battery));
    let rows: &[(&'static str, &'static str)] = match (&driver.load, driver.polarity) {
        (Load::Blower(_), _) => &[
            ("card-drv-only-high", "card-drv-only-high-means"),
            ("card-drv-no-high", "card-drv-no-high-means"),
            ("card-drv-dead", "card-drv-dead-means"),
            ("card-drv-runs-on", "card-drv-runs-on-means"),
            ("card-drv-all-low", "card-drv-all-low-means"),
        ],
        (_, Some(Side::Low)) => &[
            ("card-drv-low-off", "card-drv-low-off-means"),
            ("card-drv-low-dead", "card-drv-low-dead-means"),
            ("card-drv-low-on", "card-drv-low-on-means"),
            ("card-drv-low-never", "card-drv-low-never-means"),
        ],
        (_, Some(Side::High)) => &[
            ("card-drv-high-off", "card-drv-high-off-means"),
            ("card-drv-high-stuck", "card-drv-high-stuck-means"),
            ("card-drv-high-on", "card-drv-high-on-means"),
            ("card-drv-high-never", "card-drv-high-never-means"),
        ],
        (_, None) => &[("card-drv-unknown", "card-drv-unknown-means")],
    };
    // A solenoid's card has no table of its coil's faults.
    let of_coil: &[(&'static str, &'static str)] = match &driver.load {
        Load::Solenoid(..) => &[
            ("card-drv-ohms-open", "card-drv-ohms-open-means"),
            ("card-drv-ohms-few", "card-drv-ohms-few-means"),
            ("card-drv-ohms-many", "card-drv-ohms-many-means"),
        ],
        _ => &[],
    };
    let line =
        |(reads, means): &(&'static str, &'static str)| Reading { reads: say(reads), means: say(means) };
    rows.iter().chain(of_coil).map(line).collect()
}

/// The lead's own steps, or those that any load of this kind calls for.
pub(super) fn next(words: &Words, driver: &Driver) -> Vec<String> {
    if !driver.next.is_empty() {
        return driver.next.clone();
    }
    let usual: &[&str] = match &driver.load {
        Load::Blower(_) => &["card-drv-next-across", "card-drv-next-drops", "card-drv-next-fuse"],
        Load::Coil(..) => &["card-drv-next-ohms", "card-drv-next-isolation", "card-drv-next-coil-drops"],
        Load::Solenoid(..) => &["card-drv-next-current", "card-drv-next-ohms", "card-drv-next-isolation"],
    };
    let coil = match &driver.load {
        Load::Coil(coil, _) | Load::Solenoid(coil, _) => Some(coil),
        Load::Blower(_) => None,
    };
    let isolation = coil.and_then(|coil| coil.isolation).map(|least| least.to_string());
    let half = driver.nominal.map(|volts| format!("{} V", figure(volts.volts(), 1, Rounding::Nearest)));
    let say = |id: &&'static str| {
        let message = Message::new(id)
            .with("least", isolation.clone().unwrap_or_else(|| words.word("doc-not-given")))
            .with("battery", half.clone().unwrap_or_else(|| words.word("card-drv-battery")));
        words.say(&message)
    };
    usual.iter().map(say).collect()
}
