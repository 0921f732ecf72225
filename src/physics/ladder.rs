//! Resistor-coded contacts on one wire.

use std::fmt;

use crate::quantity::{Interval, Ratio, Resistance, Toleranced, Voltage};

/// How resistors and contacts hang together.
#[derive(Debug, Clone, PartialEq)]
pub enum Wiring {
    /// A chain from the pin; contact k leads from behind k resistors to ground,
    /// contact 0 from the pin itself: one contact more than resistors.
    Series {
        /// The resistors from the pin on.
        chain: Vec<Toleranced<Resistance>>,
        /// A resistor from the chain's far end to ground that no contact switches.
        end: Option<Toleranced<Resistance>>,
    },
    /// Each contact leads through a resistor of its own from the pin to ground.
    Parallel {
        /// The resistors in the order of their contacts.
        chain: Vec<Toleranced<Resistance>>,
    },
}

/// Coded contacts, fed through a pull-up resistor.
#[derive(Debug, Clone, PartialEq)]
pub struct Ladder {
    /// The resistors and contacts.
    pub wiring: Wiring,
    /// From the reference to the pin, inside the control unit.
    pub pull_up: Toleranced<Resistance>,
    /// The reference voltage.
    pub reference: Toleranced<Voltage>,
    /// The greatest resistance of a good closed contact; the least is zero.
    pub contact: Option<Resistance>,
}

/// The resistance of each contact in its order; `None` is an open one.
pub type Contacts = Vec<Option<Resistance>>;

/// Why a ladder has no reading.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum LadderError {
    /// More or fewer contacts than the ladder has.
    Contacts,
    /// A resistance or voltage below zero, or no number.
    NotPhysical,
}

impl fmt::Display for LadderError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Contacts => "not as many contacts as the ladder has",
            Self::NotPhysical => "not the data of a resistor ladder",
        })
    }
}

impl std::error::Error for LadderError {}

/// Two positions whose windows are neighbours, and what lies between them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Gap {
    /// The index of the position with the lower window.
    pub lower: usize,
    /// The index of the position with the higher window.
    pub upper: usize,
    /// From the end of the lower to the start of the upper window, a part of the
    /// reference; zero or less where they overlap and no reading decides.
    pub gap: f64,
}

/// A dirty contact that makes one position look like another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dirty {
    /// The dirty contact.
    pub contact: usize,
    /// The index of the position that is then believed.
    pub into: usize,
    /// The contact's resistance from which on the reading lies in that window.
    pub resistance: Resistance,
}

/// Which end of every tolerance.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Corner {
    Low,
    Nominal,
    High,
}

impl Ladder {
    /// How many contacts there are.
    #[must_use]
    pub fn contacts(&self) -> usize {
        match &self.wiring {
            Wiring::Series { chain, .. } => chain.len() + 1,
            Wiring::Parallel { chain } => chain.len(),
        }
    }

    /// The pin's part of the reference, all values nominal; a meter leads to ground.
    ///
    /// # Errors
    /// For another number of contacts, or a resistance that no part has.
    ///
    /// # Source
    /// Kirchhoff's laws; tests/reference/03e_resistor_ladder_contacts.csv and
    /// 03f_parallel_coded_contacts.csv.
    pub fn ratio(
        &self,
        contacts: &[Option<Resistance>],
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<Ratio, LadderError> {
        // Every part has a nominal value: only a limit can be missing.
        self.at(Corner::Nominal, contacts, meter)?.ok_or(LadderError::NotPhysical)
    }

    /// The same in volts.
    ///
    /// # Errors
    /// As for [`ratio`](Self::ratio).
    pub fn voltage(
        &self,
        contacts: &[Option<Resistance>],
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<Voltage, LadderError> {
        let ratio = self.ratio(contacts, meter)?.part();
        Ok(Voltage::from_volts(self.reference.nominal.volts() * ratio))
    }

    /// The reading of a good ladder with good contacts, from corner to corner.
    ///
    /// It rises with every resistance but the pull-up's, so that its ends lie where
    /// all of them are at one end and the pull-up at the other. `None` where a part
    /// has no tolerance, or a contact is closed whose greatest resistance is not known.
    ///
    /// # Errors
    /// As for [`ratio`](Self::ratio).
    pub fn ratio_window(
        &self,
        closed: &[bool],
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<Option<Interval<Ratio>>, LadderError> {
        let none_closed = closed.iter().all(|closed| !closed);
        let Some(greatest) = self.contact.or(none_closed.then_some(Resistance::from_ohms(0.0))) else {
            return Ok(None);
        };
        let all = |ohms: Resistance| -> Contacts { closed.iter().map(|c| c.then_some(ohms)).collect() };
        let low = self.at(Corner::Low, &all(Resistance::from_ohms(0.0)), meter)?;
        let high = self.at(Corner::High, &all(greatest), meter)?;
        Ok(low.zip(high).map(|(low, high)| Interval { low, high }))
    }

    /// The same in volts, with the reference's tolerance.
    ///
    /// # Errors
    /// As for [`ratio`](Self::ratio).
    pub fn voltage_window(
        &self,
        closed: &[bool],
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<Option<Interval<Voltage>>, LadderError> {
        let ratio = self.ratio_window(closed, meter)?;
        Ok(ratio.zip(self.reference.limits).map(|(ratio, reference)| Interval {
            low: Voltage::from_volts(reference.low.volts() * ratio.low.part()),
            high: Voltage::from_volts(reference.high.volts() * ratio.high.part()),
        }))
    }

    /// What each closed contact's resistance has to be to move one position's
    /// reading into the window of the next higher one, all else nominal.
    ///
    /// A contact in whose way the reading never gets there, or that is bridged by
    /// another one, is left out. `windows` are those of all positions.
    ///
    /// # Errors
    /// As for [`ratio`](Self::ratio).
    pub fn dirty(&self, closed: &[bool], windows: &[Interval<Ratio>]) -> Result<Vec<Dirty>, LadderError> {
        let clean: Contacts = closed.iter().map(|c| c.then_some(Resistance::from_ohms(0.0))).collect();
        let good = self.ratio(&clean, None)?.part();
        let above = windows.iter().enumerate().filter(|(_, window)| window.low.part() > good);
        let next = above.min_by(|a, b| a.1.low.part().total_cmp(&b.1.low.part()));
        let Some((into, window)) = next else { return Ok(Vec::new()) };
        let wanted = window.low.part();
        let mut found = Vec::new();
        for contact in (0..closed.len()).filter(|contact| closed[*contact]) {
            let with = |ohms: Option<Resistance>| {
                let mut contacts = clean.clone();
                contacts[contact] = ohms;
                self.ratio(&contacts, None).map(Ratio::part)
            };
            // The reading is (ρ∞ R + ρ₀ k)/(R + k); one more point gives k.
            let some = self.pull_up.nominal;
            let (open, between) = (with(None)?, with(Some(some))?);
            if !(wanted < open && between > good) {
                continue;
            }
            let k = some.ohms() * (open - between) / (between - good);
            let ohms = k * (wanted - good) / (open - wanted);
            if ohms.is_finite() {
                found.push(Dirty { contact, into, resistance: Resistance::from_ohms(ohms) });
            }
        }
        Ok(found)
    }

    /// The reading at a corner of all tolerances; `None` where one was not given.
    fn at(
        &self,
        corner: Corner,
        contacts: &[Option<Resistance>],
        meter: Option<Toleranced<Resistance>>,
    ) -> Result<Option<Ratio>, LadderError> {
        if contacts.len() != self.contacts() {
            return Err(LadderError::Contacts);
        }
        let contact = |contact: &Option<Resistance>| contact.map_or(0.0, |ohms| 1.0 / ohms.ohms());
        let opposite = match corner {
            Corner::Low => Corner::High,
            Corner::Nominal => Corner::Nominal,
            Corner::High => Corner::Low,
        };
        let end = |part: &Toleranced<Resistance>| ohms_at(part, corner);
        let Some(pull_up) = ohms_at(&self.pull_up, opposite) else { return Ok(None) };
        let meter = match meter.as_ref().map(end) {
            None => 0.0,
            Some(None) => return Ok(None),
            Some(Some(ohms)) => 1.0 / ohms,
        };
        let (chain, last) = match &self.wiring {
            Wiring::Series { chain, end } => (chain, end.as_ref()),
            Wiring::Parallel { chain } => (chain, None),
        };
        let Some(chain) = chain.iter().map(end).collect::<Option<Vec<f64>>>() else { return Ok(None) };
        let Some(last) = last.map_or(Some(f64::INFINITY), end) else { return Ok(None) };
        let given = contacts.iter().flatten().map(|ohms| ohms.ohms());
        let finite = last.is_infinite() || (0.0..=MOST_OHMS).contains(&last);
        let all = chain.iter().copied().chain(given);
        let usable = |ohms: f64| (0.0..=MOST_OHMS).contains(&ohms);
        if !(finite && all.into_iter().all(usable) && usable(pull_up) && pull_up > 0.0 && meter >= 0.0) {
            return Err(LadderError::NotPhysical);
        }
        // Conductances from the far end on; infinite where a contact bridges all behind it.
        let leg = match self.wiring {
            Wiring::Series { .. } => {
                let far = contact(&contacts[chain.len()]) + 1.0 / last;
                let stages = chain.iter().zip(contacts).rev();
                stages.fold(far, |behind, (ohms, here)| contact(here) + 1.0 / (ohms + 1.0 / behind))
            }
            Wiring::Parallel { .. } => {
                let branch = |(ohms, here): (&f64, &Option<Resistance>)| {
                    here.map_or(0.0, |contact| 1.0 / (ohms + contact.ohms()))
                };
                chain.iter().zip(contacts).map(branch).sum()
            }
        };
        Ok(Some(Ratio::new(1.0 / (1.0 + pull_up * (leg + meter)))))
    }
}

/// A resistance above this is an open circuit to any meter.
const MOST_OHMS: f64 = 1e12;

fn ohms_at(part: &Toleranced<Resistance>, corner: Corner) -> Option<f64> {
    match corner {
        Corner::Low => part.limits.map(|limits| limits.low.ohms()),
        Corner::Nominal => Some(part.nominal.ohms()),
        Corner::High => part.limits.map(|limits| limits.high.ohms()),
    }
}

/// The gaps between neighbouring windows, the lowest first.
#[must_use]
pub fn gaps(windows: &[Interval<Ratio>]) -> Vec<Gap> {
    let mut order: Vec<usize> = (0..windows.len()).collect();
    let middle = |index: &usize| windows[*index].low.part() + windows[*index].high.part();
    order.sort_by(|a, b| middle(a).total_cmp(&middle(b)));
    let gap = |pair: &[usize]| Gap {
        lower: pair[0],
        upper: pair[1],
        gap: windows[pair[1]].low.part() - windows[pair[0]].high.part(),
    };
    order.windows(2).map(gap).collect()
}

/// Every two positions whose windows share a reading: undecidable.
#[must_use]
pub fn overlaps(windows: &[Interval<Ratio>]) -> Vec<(usize, usize)> {
    let share = |a: &Interval<Ratio>, b: &Interval<Ratio>| a.low <= b.high && b.low <= a.high;
    let pairs = (0..windows.len()).flat_map(|a| (a + 1..windows.len()).map(move |b| (a, b)));
    pairs.filter(|(a, b)| share(&windows[*a], &windows[*b])).collect()
}
