//! Position feedback: a wiper on a track, and the circuit that reads it.

pub mod fault;
pub mod hysteresis;
pub mod sweep;
mod track;

use std::fmt;

use crate::quantity::{Interval, Ratio, Resistance, Toleranced, Voltage};
use track::Track;

/// Where the control unit's load resistor leads to.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LoadTo {
    /// From the pin to ground: pulls the reading down.
    Ground,
    /// From the pin to the reference: pulls the reading up.
    Reference,
}

/// A feedback potentiometer with the input that reads it.
///
/// From the reference through an end resistance, the track and the other end
/// resistance to the return; the wiper leads through its contact to the pin.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Feedback {
    /// The track from end to end, without the end resistances.
    pub track: Toleranced<Resistance>,
    /// The resistance at each end that the wiper never reaches.
    pub ends: Option<Toleranced<Resistance>>,
    /// The resistance between wiper and pin.
    pub contact: Option<Toleranced<Resistance>>,
    /// The control unit's resistor at the pin.
    pub load: Option<(Toleranced<Resistance>, LoadTo)>,
    /// The reference voltage across the potentiometer.
    pub reference: Toleranced<Voltage>,
}

/// The readings at the two end stops, as parts of the reference.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stops {
    /// The reading at the stop that counts as 0 %.
    pub low: Ratio,
    /// The reading at the stop that counts as 100 %.
    pub high: Ratio,
}

/// Why there is no position.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PositionError {
    /// The position lies off the track, or is no number.
    OffTrack,
    /// No position of the wiper gives this reading.
    NoSuchReading,
    /// The two stops have the same reading.
    StopsEqual,
    /// A resistance or voltage that is not above zero, or no number.
    NotPhysical,
}

impl fmt::Display for PositionError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::OffTrack => "off the track",
            Self::NoSuchReading => "no position gives this reading",
            Self::StopsEqual => "both stops have the same reading",
            Self::NotPhysical => "not the data of a potentiometer",
        })
    }
}

impl std::error::Error for PositionError {}

/// The ohms between the three pins of an unmated potentiometer.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ohms {
    /// From end to end.
    pub total: Resistance,
    /// From the wiper to the return end.
    pub to_low: Resistance,
    /// From the wiper to the reference end.
    pub to_high: Resistance,
}

impl Ohms {
    /// The wiper's contact resistance: half of what the two parts have too much.
    ///
    /// (Rw₁ + Rw₂ − Rt)/2, as the contact is in both parts and not in the whole.
    /// Below zero by more than the meters' errors, the three are not readings of
    /// one position.
    #[must_use]
    pub fn contact(&self) -> Resistance {
        Resistance::from_ohms(0.5 * (self.to_low.ohms() + self.to_high.ohms() - self.total.ohms()))
    }
}

/// A whole number of steps that binary arithmetic made a hair too much.
const HAIR: f64 = 1e-9;

impl Stops {
    /// The percent position of a reading: (V/Vref − r₀)/(r₁ − r₀), as a part of one.
    ///
    /// Below 0 or above 1 the wiper is beyond a stop; that is not cut off.
    ///
    /// # Errors
    /// [`PositionError::StopsEqual`] where the stops give no span.
    ///
    /// # Source
    /// Common practice, no source.
    pub fn position(&self, reading: Ratio) -> Result<Ratio, PositionError> {
        let span = self.high.part() - self.low.part();
        let position = (reading.part() - self.low.part()) / span;
        // A span of zero, or one so small that the quotient is no number.
        if position.is_finite() { Ok(Ratio::new(position)) } else { Err(PositionError::StopsEqual) }
    }

    /// The reading at a percent position where nothing loads the wiper.
    #[must_use]
    pub fn reading(&self, position: Ratio) -> Ratio {
        let part = position.part();
        Ratio::new(self.low.part() * (1.0 - part) + self.high.part() * part)
    }
}

impl Feedback {
    /// The reading with the wiper at a part of the track from its return end, all values nominal.
    ///
    /// ρ = (a/S + s g_r)/(1 + s (g_g + g_r)), with a the ohms below the wiper, S the
    /// whole, s = R_contact + a (S − a)/S and g the conductances at the pin. A
    /// `meter` at the pin leads to ground. Rises with the position whatever the load.
    ///
    /// # Errors
    /// Off the track, or where a resistance is not above zero.
    ///
    /// # Source
    /// Kirchhoff's laws; tests/reference/03d_potentiometer_loaded.csv.
    pub fn ratio(
        &self,
        position: Ratio,
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<Ratio, PositionError> {
        on_track(position)?;
        Ok(Ratio::new(self.nominal(meter)?.ratio(position.part())))
    }

    /// The same in volts.
    ///
    /// # Errors
    /// As for [`ratio`](Self::ratio).
    pub fn voltage(
        &self,
        position: Ratio,
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<Voltage, PositionError> {
        let ratio = self.ratio(position, meter)?.part();
        Ok(Voltage::from_volts(self.reference.nominal.volts() * ratio))
    }

    /// The wiper's place on the track behind a reading: the exact inverse, loaded or not.
    ///
    /// With u = a/S, k = ρ (g_g + g_r) − g_r and q = k S the reading is the root of
    /// q u² + (1 − q) u − (ρ + k R_contact) = 0 where the left side rises.
    ///
    /// # Errors
    /// [`PositionError::NoSuchReading`] outside what the ends of the track give.
    ///
    /// # Source
    /// As for [`ratio`](Self::ratio).
    pub fn position(
        &self,
        reading: Ratio,
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<Ratio, PositionError> {
        let track = self.nominal(meter)?;
        let share = track.share(reading.part()).ok_or(PositionError::NoSuchReading)?;
        let position = (share * track.total() - track.low_end) / track.track;
        let inside = (-HAIR..=1.0 + HAIR).contains(&position);
        if inside { Ok(Ratio::new(position.clamp(0.0, 1.0))) } else { Err(PositionError::NoSuchReading) }
    }

    /// The reading over all corners of track, ends, contact, load and meter.
    ///
    /// `None` where a part has no tolerance. The reading is monotone in each
    /// value but the track's, in which it may turn once: the turning points that
    /// lie inside the track's tolerance are tried too, so the window is exact.
    /// Without load and without ends the track drops out.
    ///
    /// # Errors
    /// As for [`ratio`](Self::ratio).
    pub fn ratio_window(
        &self,
        position: Ratio,
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<Option<Interval<Ratio>>, PositionError> {
        on_track(position)?;
        self.nominal(meter)?;
        let (Some(track), Some(corners)) = (self.track.limits, self.corners(meter)) else { return Ok(None) };
        let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
        for corner in corners {
            let turns = corner.turning_tracks(position.part());
            let inside = turns.into_iter().filter(|ohms| track.contains(&Resistance::from_ohms(*ohms)));
            for ohms in [track.low.ohms(), track.high.ohms()].into_iter().chain(inside) {
                let ratio = Track { track: ohms, ..corner }.ratio(position.part());
                (low, high) = (low.min(ratio), high.max(ratio));
            }
        }
        Ok(Some(Interval { low: Ratio::new(low), high: Ratio::new(high) }))
    }

    /// The same in volts, with the reference's tolerance.
    ///
    /// # Errors
    /// As for [`ratio`](Self::ratio).
    pub fn voltage_window(
        &self,
        position: Ratio,
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<Option<Interval<Voltage>>, PositionError> {
        let ratio = self.ratio_window(position, meter)?;
        Ok(ratio.zip(self.reference.limits).map(|(ratio, reference)| Interval {
            low: Voltage::from_volts(reference.low.volts() * ratio.low.part()),
            high: Voltage::from_volts(reference.high.volts() * ratio.high.part()),
        }))
    }

    /// The reading at a percent of the travel between two stops.
    ///
    /// The wiper moves evenly from where it reads `stops.low` to where it reads
    /// `stops.high`, as the control unit sees them; a load bends what lies between,
    /// and the meter, which the control unit does not know of, comes on top.
    ///
    /// # Errors
    /// Where a stop's reading cannot be reached, or the percentage is not 0 to 100 %.
    pub fn at_travel(
        &self,
        travel: Ratio,
        stops: Stops,
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<Ratio, PositionError> {
        on_track(travel)?;
        let unloaded = self.nominal(None)?;
        let between = unloaded.between(travel.part(), stops).ok_or(PositionError::NoSuchReading)?;
        Ok(Ratio::new(self.nominal(meter)?.at_share(between)))
    }

    /// The same over the corners of both stops, track, contact, load and meter.
    ///
    /// `None` where a part has no tolerance. The bend that a load makes depends on
    /// track and load only through their product, and grows with it.
    ///
    /// # Errors
    /// As for [`at_travel`](Self::at_travel).
    pub fn travel_window(
        &self,
        travel: Ratio,
        low: Interval<Ratio>,
        high: Interval<Ratio>,
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<Option<Interval<Ratio>>, PositionError> {
        on_track(travel)?;
        self.nominal(meter)?;
        let (Some(track), Some(corners)) = (self.track.limits, self.corners(meter)) else { return Ok(None) };
        let mut window: Option<Interval<Ratio>> = None;
        for corner in corners {
            for ohms in [track.low.ohms(), track.high.ohms()] {
                let metered = Track { track: ohms, ..corner };
                let unloaded = metered.unmetered();
                for stops in
                    [Stops { low: low.low, high: high.low }, Stops { low: low.high, high: high.high }]
                {
                    let between =
                        unloaded.between(travel.part(), stops).ok_or(PositionError::NoSuchReading)?;
                    let ratio = Ratio::new(metered.at_share(between));
                    window = Some(window.map_or(Interval { low: ratio, high: ratio }, |window| Interval {
                        low: if ratio < window.low { ratio } else { window.low },
                        high: if ratio > window.high { ratio } else { window.high },
                    }));
                }
            }
        }
        Ok(window)
    }

    /// The ohms between the pins, unmated, all values nominal.
    ///
    /// # Errors
    /// As for [`ratio`](Self::ratio).
    pub fn ohms(&self, position: Ratio) -> Result<Ohms, PositionError> {
        on_track(position)?;
        let track = self.nominal(None)?;
        let below = track.below(position.part());
        Ok(Ohms {
            total: Resistance::from_ohms(track.total()),
            to_low: Resistance::from_ohms(track.contact + below),
            to_high: Resistance::from_ohms(track.contact + track.total() - below),
        })
    }

    /// Least and greatest ohms from end to end; `None` where a tolerance was not given.
    #[must_use]
    pub fn total_window(&self) -> Option<Interval<Resistance>> {
        let track = self.track.limits?;
        let (low, high) = match self.ends {
            None => (0.0, 0.0),
            Some(ends) => (ends.limits?.low.ohms(), ends.limits?.high.ohms()),
        };
        Some(Interval {
            low: Resistance::from_ohms(track.low.ohms() + 2.0 * low),
            high: Resistance::from_ohms(track.high.ohms() + 2.0 * high),
        })
    }

    fn nominal(&self, meter: Option<Toleranced<Resistance>>) -> Result<Track, PositionError> {
        let ohms = |part: Option<Toleranced<Resistance>>| part.map_or(0.0, |part| part.nominal.ohms());
        let mut track = Track {
            track: self.track.nominal.ohms(),
            low_end: ohms(self.ends),
            high_end: ohms(self.ends),
            contact: ohms(self.contact),
            to_ground: 0.0,
            to_reference: 0.0,
            meter: meter.map_or(0.0, |meter| 1.0 / meter.nominal.ohms()),
        };
        if let Some((load, to)) = self.load {
            track.load(load.nominal.ohms(), to);
        }
        if track.is_physical() { Ok(track) } else { Err(PositionError::NotPhysical) }
    }

    /// Every combination of the ends of every tolerance but the track's and the reference's.
    fn corners(&self, meter: Option<Toleranced<Resistance>>) -> Option<Vec<Track>> {
        let both = |part: Toleranced<Resistance>| part.limits.map(|l| vec![l.low.ohms(), l.high.ohms()]);
        let or_zero = |part: Option<Toleranced<Resistance>>| part.map_or(Some(vec![0.0]), both);
        let ends = or_zero(self.ends)?;
        let contacts = or_zero(self.contact)?;
        let loads = match self.load {
            None => vec![None],
            Some((load, to)) => both(load)?.into_iter().map(|ohms| Some((ohms, to))).collect(),
        };
        let meters = meter.map_or(Some(vec![f64::INFINITY]), both)?;
        let mut corners = vec![self.nominal(meter).ok()?];
        let mut split = |values: &[f64], set: fn(&mut Track, f64)| {
            let with = |corner: &Track, value: f64| {
                let mut corner = *corner;
                set(&mut corner, value);
                corner
            };
            corners = corners.iter().flat_map(|c| values.iter().map(move |&v| with(c, v))).collect();
        };
        split(&ends, |corner, ohms| corner.low_end = ohms);
        split(&ends, |corner, ohms| corner.high_end = ohms);
        split(&contacts, |corner, ohms| corner.contact = ohms);
        split(&meters, |corner, ohms| corner.meter = 1.0 / ohms);
        let loaded = |corner: Track| {
            loads.iter().map(move |load| {
                let mut corner = corner;
                if let Some((ohms, to)) = *load {
                    corner.load(ohms, to);
                }
                corner
            })
        };
        Some(corners.into_iter().flat_map(loaded).collect())
    }
}

fn on_track(position: Ratio) -> Result<(), PositionError> {
    if (0.0..=1.0).contains(&position.part()) { Ok(()) } else { Err(PositionError::OffTrack) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::toleranced;

    #[test]
    fn a_reading_that_turns_inside_the_tracks_tolerance_is_in_the_window() {
        let ohms =
            |low, high| Interval { low: Resistance::from_ohms(low), high: Resistance::from_ohms(high) };
        let pot = Feedback {
            track: Toleranced { nominal: Resistance::from_ohms(1000.0), limits: Some(ohms(100.0, 5000.0)) },
            ends: Some(toleranced("50 Ω ± 0 %").unwrap()),
            contact: None,
            load: Some((toleranced("1 kΩ ± 0 %").unwrap(), LoadTo::Ground)),
            reference: toleranced("5 V").unwrap(),
        };
        let window = pot.ratio_window(Ratio::new(0.8), None).unwrap().unwrap();
        // 1/ρ = (T + 100)/(0.8 T + 50) + (0.2 T + 50)/1000 is least where
        // 30/(0.8 T + 50)² = 0.2/1000, at 0.8 T + 50 = √150000 (by hand).
        let track = (libm::sqrt(150_000.0) - 50.0) / 0.8;
        let greatest = 1.0 / ((track + 100.0) / libm::sqrt(150_000.0) + (0.2 * track + 50.0) / 1000.0);
        assert!((window.high.part() - greatest).abs() < 1e-12, "{window:?}, {greatest}");
        let least = 1.0 / (5100.0 / 4050.0 + 1050.0 / 1000.0);
        assert!((window.low.part() - least).abs() < 1e-12, "{window:?}, {least}");
    }
}
