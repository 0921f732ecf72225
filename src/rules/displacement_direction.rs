//! A displacement that turns back, or goes against the direction that is stated.

use crate::diag::{Finding, Findings, Place};
use crate::model::load::control;
use crate::physics::solenoid::CurveFault;
use crate::spec::Set;
use crate::words::Message;

pub(super) fn check(set: &Set, findings: &Findings) {
    for entry in set.drivers.values() {
        let Some(curve) = &entry.item.displacement else { continue };
        let Some(Err(fault)) = control(curve) else { continue };
        let (Some(points), Some(direction)) = (&curve.points, &curve.more_current) else { continue };
        let point = |index: usize| points.get(index);
        let place = |index: usize| point(index).map_or(&curve.place, |pair| &pair.place).clone();
        let shown = |index: usize| {
            let pair = point(index);
            pair.map(|pair| format!("{}, {}", pair.first.written, pair.second.written)).unwrap_or_default()
        };
        let error = |id, place: Place, label| Finding::error(Message::new(id), place, Message::new(label));
        findings.report(match fault {
            CurveFault::TooFewPoints => error("rule-control-few", curve.place.clone(), "wanted-two-points"),
            CurveFault::Flat => error("rule-control-flat", curve.place.clone(), "wanted-a-change"),
            CurveFault::NotPhysical(index) => {
                let message = Message::new("rule-control-point").with("point", shown(index));
                Finding::error(message, place(index), Message::new("wanted-control-point"))
            }
            CurveFault::SameCurrent(first, second) => {
                let message = Message::new("rule-control-same").with("point", shown(second));
                let finding = Finding::error(message, place(second), Message::new("label-second"));
                finding.because(place(first), Message::new("label-first"))
            }
            CurveFault::AgainstDirection(less, more) => {
                let message = Message::new("rule-control-direction")
                    .with("less", shown(less))
                    .with("more", shown(more))
                    .with("direction", &direction.written);
                let finding = Finding::error(message, place(more), Message::new("wanted-stated-direction"));
                finding
                    .because(direction.place.clone(), Message::new("label-direction"))
                    .help(Message::new("rule-control-direction-help"))
            }
        });
    }
}
