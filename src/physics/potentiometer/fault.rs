//! What a faulty potentiometer reads, and which position the control unit believes.

use super::track::Track;
use super::{Feedback, PositionError, Stops, on_track};
use crate::quantity::{Interval, Ratio, Resistance, Toleranced, Voltage};

/// One fault of a feedback potentiometer or its three wires.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Fault {
    /// The wiper or its wire is open.
    WiperOpen,
    /// The track is broken off its return end.
    TrackOpenAtLowEnd,
    /// The track is broken off its reference end.
    TrackOpenAtHighEnd,
    /// The track is broken at a place, a part of it from its return end; a wiper
    /// that stands there touches the return side.
    TrackOpenAt(Ratio),
    /// The reference wire is open.
    ReferenceLost,
    /// The return wire is open.
    ReturnLost,
    /// This much more resistance between wiper and pin.
    ContactResistance(Resistance),
    /// The signal wire touches the return.
    ShortToReturn,
    /// The signal wire touches the reference.
    ShortToReference,
    /// The wiper stands this part of the track too high; below zero, too low.
    /// At an end of the track it goes no further.
    Slipped(Ratio),
}

impl Fault {
    /// The rows of a fault dictionary. A break of the track is taken beside the
    /// wiper, on either side: those are the two that can be told apart.
    ///
    /// # Source
    /// Common practice, no source: sizes that a workshop meets.
    #[must_use]
    pub fn dictionary() -> Vec<Self> {
        let contact = |ohms| Self::ContactResistance(Resistance::from_ohms(ohms));
        let slipped = |part| Self::Slipped(Ratio::new(part));
        let wires = [Self::ReferenceLost, Self::ReturnLost, Self::ShortToReturn, Self::ShortToReference];
        [Self::WiperOpen, Self::TrackOpenAtLowEnd, Self::TrackOpenAtHighEnd]
            .into_iter()
            .chain(wires)
            .chain([100.0, 1e3, 10e3, 100e3].map(contact))
            .chain([-0.1, -0.05, 0.05, 0.1].map(slipped))
            .collect()
    }
}

/// What a potentiometer with a fault reads.
///
/// Ohms are those between the three wires at the control unit's connector, with
/// the control unit unmated: `None` is an open circuit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FaultReading {
    /// Ohms from reference to return wire.
    pub total: Option<Resistance>,
    /// Ohms from signal to return wire.
    pub to_low: Option<Resistance>,
    /// Ohms from signal to reference wire.
    pub to_high: Option<Resistance>,
    /// The pin's part of the reference; `None` where nothing holds the pin anywhere.
    pub ratio: Option<Ratio>,
    /// The pin's voltage.
    pub voltage: Option<Voltage>,
    /// The position that the control unit computes from the ratio: below 0 or
    /// above 1 it is beyond a stop.
    pub believed: Option<Ratio>,
}

/// Between which limits potentiometers with a fault read; `None` where some have an
/// open circuit, or nothing that holds the pin.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FaultWindow {
    /// See [`FaultReading::total`].
    pub total: Option<Interval<Resistance>>,
    /// See [`FaultReading::to_low`].
    pub to_low: Option<Interval<Resistance>>,
    /// See [`FaultReading::to_high`].
    pub to_high: Option<Interval<Resistance>>,
    /// See [`FaultReading::ratio`].
    pub ratio: Option<Interval<Ratio>>,
}

impl Feedback {
    /// The readings with one fault, all values nominal, the wiper at a part of the track.
    ///
    /// # Errors
    /// [`PositionError::OffTrack`] for a position, or a break, off the track;
    /// [`PositionError::NotPhysical`] for a resistance below zero or a slip that is no number.
    ///
    /// # Source
    /// Kirchhoff's laws with one part of the circuit changed.
    pub fn with_fault(
        &self,
        fault: Fault,
        position: Ratio,
        stops: Option<Stops>,
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<FaultReading, PositionError> {
        on_track(position)?;
        let outcome = self.nominal(meter)?.with_fault(Some(fault), position.part())?;
        let [total, to_low, to_high] = outcome.ohms.map(|ohms| ohms.map(Resistance::from_ohms));
        let ratio = outcome.ratio.map(Ratio::new);
        let voltage = |ratio: Ratio| Voltage::from_volts(self.reference.nominal.volts() * ratio.part());
        Ok(FaultReading {
            total,
            to_low,
            to_high,
            ratio,
            voltage: ratio.map(voltage),
            believed: ratio.zip(stops).and_then(|(ratio, stops)| stops.position(ratio).ok()),
        })
    }

    /// Where the wiper stands on the track at a percent of the travel between two
    /// stops, all values nominal: a part of the track from its return end.
    ///
    /// A stop beyond the track's end is taken to be at the end.
    ///
    /// # Errors
    /// As for [`at_travel`](Self::at_travel).
    pub fn place(&self, travel: Ratio, stops: Stops) -> Result<Ratio, PositionError> {
        on_track(travel)?;
        self.nominal(None)?.place(travel.part(), stops).map(Ratio::new)
    }

    /// Between which limits good feedbacks (`None`), or those with one fault, read at
    /// a percent of the travel between the windows of two stops.
    ///
    /// `None` where a part has no tolerance. Tried are every corner of stops, ends,
    /// contact, load and meter with the least, nominal and greatest track. Ohms, and
    /// volts where nothing loads the wiper, are monotone in each, so the window is
    /// exact; with a load that is at least the track's ohms random draws stay inside
    /// (tests/properties/dictionaries.rs).
    ///
    /// # Errors
    /// As for [`with_fault`](Self::with_fault) and [`at_travel`](Self::at_travel).
    pub fn fault_window(
        &self,
        fault: Option<Fault>,
        travel: Ratio,
        [low, high]: [Interval<Ratio>; 2],
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<Option<FaultWindow>, PositionError> {
        on_track(travel)?;
        self.nominal(meter)?;
        let (Some(limits), Some(corners)) = (self.track.limits, self.corners(meter)) else { return Ok(None) };
        let (mut ohms, mut ratio): ([Hull; 3], Hull) = Default::default();
        let ends = [Stops { low: low.low, high: high.low }, Stops { low: low.high, high: high.high }];
        for corner in corners {
            for track in [limits.low, self.track.nominal, limits.high] {
                let corner = Track { track: track.ohms(), ..corner };
                for stops in ends {
                    let outcome = corner.with_fault(fault, corner.place(travel.part(), stops)?)?;
                    ohms.iter_mut().zip(outcome.ohms).for_each(|(hull, ohms)| hull.add(ohms));
                    ratio.add(outcome.ratio);
                }
            }
        }
        let [total, to_low, to_high] = ohms.map(|hull| hull.interval(Resistance::from_ohms));
        Ok(Some(FaultWindow { total, to_low, to_high, ratio: ratio.interval(Ratio::new) }))
    }
}

/// Ohms between the three wires and the pin's part of the reference, of exact values.
struct Outcome {
    /// End to end, signal to return, signal to reference.
    ohms: [Option<f64>; 3],
    ratio: Option<f64>,
}

impl Track {
    /// What these values read with the wiper at a part of the track.
    fn with_fault(mut self, fault: Option<Fault>, position: f64) -> Result<Outcome, PositionError> {
        let mut at = position;
        match fault {
            Some(Fault::TrackOpenAt(place)) => on_track(place)?,
            Some(Fault::ContactResistance(extra)) if extra.ohms() >= 0.0 && extra.ohms().is_finite() => {
                self.contact += extra.ohms();
            }
            Some(Fault::Slipped(slip)) if slip.part().is_finite() => at = (at + slip.part()).clamp(0.0, 1.0),
            Some(Fault::ContactResistance(_) | Fault::Slipped(_)) => return Err(PositionError::NotPhysical),
            _ => {}
        }
        let (below, whole) = (self.below(at), self.total());
        let above = whole - below;
        let low = self.contact + below;
        let high = self.contact + above;
        let ohms = match fault {
            Some(Fault::WiperOpen) => [Some(whole), None, None],
            Some(Fault::TrackOpenAtLowEnd | Fault::ReturnLost) => [None, None, Some(high)],
            Some(Fault::TrackOpenAtHighEnd | Fault::ReferenceLost) => [None, Some(low), None],
            Some(Fault::TrackOpenAt(place)) if at <= place.part() => [None, Some(low), None],
            Some(Fault::TrackOpenAt(_)) => [None, None, Some(high)],
            Some(Fault::ShortToReturn) => {
                let bridged = above + parallel(self.contact, below);
                [Some(bridged), Some(0.0), Some(bridged)]
            }
            Some(Fault::ShortToReference) => {
                let bridged = below + parallel(self.contact, above);
                [Some(bridged), Some(bridged), Some(0.0)]
            }
            None | Some(Fault::ContactResistance(_) | Fault::Slipped(_)) => {
                [Some(whole), Some(low), Some(high)]
            }
        };
        let ratio = match (fault, ohms) {
            (Some(Fault::WiperOpen), _) => {
                let held = self.conductance();
                (held > 0.0).then(|| self.to_reference / held)
            }
            (Some(Fault::ShortToReturn), _) => Some(0.0),
            (Some(Fault::ShortToReference), _) => Some(1.0),
            (_, [None, Some(to_low), None]) => Some(self.pin(0.0, to_low)),
            (_, [None, None, Some(to_high)]) => Some(self.pin(1.0, to_high)),
            _ => Some(self.ratio(at)),
        };
        Ok(Outcome { ohms, ratio })
    }

    /// The wiper's place at a part of the travel between two stops. A stop beyond
    /// the track's end is at the end: the wiper goes no further.
    fn place(&self, travel: f64, stops: Stops) -> Result<f64, PositionError> {
        let share = self.unmetered().between(travel, stops).ok_or(PositionError::NoSuchReading)?;
        Ok(((share * self.total() - self.low_end) / self.track).clamp(0.0, 1.0))
    }
}

/// The hull of readings; `None` once one of them is: it has no limits.
#[derive(Default)]
struct Hull(Option<Option<(f64, f64)>>);

impl Hull {
    fn add(&mut self, value: Option<f64>) {
        let hull = match (self.0, value) {
            (None, value) => value.map(|value| (value, value)),
            (Some(hull), value) => {
                hull.zip(value).map(|((low, high), value)| (low.min(value), high.max(value)))
            }
        };
        self.0 = Some(hull);
    }

    fn interval<T>(self, of: fn(f64) -> T) -> Option<Interval<T>> {
        self.0.flatten().map(|(low, high)| Interval { low: of(low), high: of(high) })
    }
}

fn parallel(a: f64, b: f64) -> f64 {
    if a + b > 0.0 { a * b / (a + b) } else { 0.0 }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::physics::potentiometer::LoadTo;
    use crate::quantity::toleranced;

    fn pot(load: Option<LoadTo>) -> Feedback {
        Feedback {
            track: toleranced("5 kΩ").unwrap(),
            ends: None,
            contact: None,
            load: load.map(|to| (toleranced("95 kΩ").unwrap(), to)),
            reference: toleranced("5 V").unwrap(),
        }
    }

    fn reading(load: Option<LoadTo>, fault: Fault) -> FaultReading {
        let stops = Stops { low: Ratio::new(0.1), high: Ratio::new(0.9) };
        pot(load).with_fault(fault, Ratio::new(0.4), Some(stops), None).unwrap()
    }

    #[test]
    fn an_open_wiper_goes_where_the_load_leads() {
        // Common practice, no source: an open signal takes the level of its own resistor.
        let part = |load| reading(load, Fault::WiperOpen).ratio.map(Ratio::part);
        assert_eq!(part(None), None);
        assert_eq!(part(Some(LoadTo::Ground)), Some(0.0));
        assert_eq!(part(Some(LoadTo::Reference)), Some(1.0));
        assert_eq!(reading(None, Fault::WiperOpen).to_low, None);
    }

    #[test]
    fn a_broken_track_leaves_the_side_the_wiper_is_on() {
        // 95 kΩ to ground behind 3 kΩ of track: 95/98 (Ohm's law).
        let above = reading(Some(LoadTo::Ground), Fault::TrackOpenAt(Ratio::new(0.2)));
        assert!((above.ratio.unwrap().part() - 95.0 / 98.0).abs() < 1e-12);
        assert_eq!((above.total, above.to_low), (None, None));
        assert!((above.to_high.unwrap().ohms() - 3000.0).abs() < 1e-9);
        let below = reading(Some(LoadTo::Ground), Fault::TrackOpenAt(Ratio::new(0.6)));
        assert_eq!(below.ratio.map(Ratio::part), Some(0.0));
        assert!((below.to_low.unwrap().ohms() - 2000.0).abs() < 1e-9);
        // A wiper that stands on the break touches the return side.
        let on = reading(Some(LoadTo::Ground), Fault::TrackOpenAt(Ratio::new(0.4)));
        assert!((on.to_low.unwrap().ohms() - 2000.0).abs() < 1e-9 && on.to_high.is_none());
        // 2 kΩ of track below, 95 kΩ to the reference: 2/97.
        let lost = reading(Some(LoadTo::Reference), Fault::ReferenceLost);
        assert!((lost.ratio.unwrap().part() - 2.0 / 97.0).abs() < 1e-12);
        assert_eq!(reading(None, Fault::ReturnLost).ratio.map(Ratio::part), Some(1.0));
        assert_eq!(reading(None, Fault::TrackOpenAtLowEnd).ratio.map(Ratio::part), Some(1.0));
        assert_eq!(reading(None, Fault::TrackOpenAtHighEnd).ratio.map(Ratio::part), Some(0.0));
    }

    #[test]
    fn shorts_and_slips_move_the_believed_position() {
        let believed = |fault| reading(None, fault).believed.unwrap().part();
        assert!((believed(Fault::ShortToReturn) - (0.0 - 0.1) / 0.8).abs() < 1e-12);
        assert!((believed(Fault::ShortToReference) - (1.0 - 0.1) / 0.8).abs() < 1e-12);
        assert!((believed(Fault::Slipped(Ratio::new(0.08))) - (0.48 - 0.1) / 0.8).abs() < 1e-12);
        // Shorted to the return the 3 kΩ above are left.
        let shorted = reading(None, Fault::ShortToReturn);
        assert!((shorted.total.unwrap().ohms() - 3000.0).abs() < 1e-9);
        // 500 Ω of contact lie beside the 2 kΩ below: 400 Ω.
        let contact = Some(toleranced("500 Ω").unwrap());
        let rough = Feedback { contact, ..pot(None) };
        let shorted = rough.with_fault(Fault::ShortToReturn, Ratio::new(0.4), None, None).unwrap();
        assert!((shorted.total.unwrap().ohms() - 3400.0).abs() < 1e-9);
        // To the reference, the 2 kΩ below: between both wires and the signal alike.
        let shorted = reading(None, Fault::ShortToReference);
        let ohms = [shorted.total, shorted.to_low, shorted.to_high].map(|ohms| ohms.unwrap().ohms());
        assert!((ohms[0] - 2000.0).abs() < 1e-9 && (ohms[1] - 2000.0).abs() < 1e-9 && ohms[2] <= 0.0);
        let worn = reading(None, Fault::ContactResistance(Resistance::from_ohms(500.0)));
        // Nothing flows through the contact: the volts know nothing of it, the ohms do.
        assert_eq!(worn.ratio.map(Ratio::part), Some(0.4));
        assert!((worn.to_low.unwrap().ohms() - 2500.0).abs() < 1e-9);
    }
}
