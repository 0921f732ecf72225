//! Position contacts: which are closed at which position.

use std::fmt;

/// More contacts than any actuator has (from memory: three to five are usual).
pub const MOST_CONTACTS: usize = 16;

/// Which of a number of contacts are closed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Code {
    /// Bit i: contact i is closed.
    bits: u32,
    contacts: usize,
}

impl Code {
    /// From each contact in its order: closed or not.
    ///
    /// # Errors
    /// [`ContactsError::Contacts`] for none, or more than [`MOST_CONTACTS`].
    pub fn new(closed: &[bool]) -> Result<Self, ContactsError> {
        if closed.is_empty() || closed.len() > MOST_CONTACTS {
            return Err(ContactsError::Contacts);
        }
        let bits = closed.iter().rev().fold(0, |bits, closed| bits << 1 | u32::from(*closed));
        Ok(Self { bits, contacts: closed.len() })
    }

    /// Each contact in its order: closed or not.
    pub fn closed(self) -> impl Iterator<Item = bool> {
        (0..self.contacts).map(move |contact| self.bits >> contact & 1 == 1)
    }

    /// In how many contacts two codes differ: their Hamming distance.
    ///
    /// # Source
    /// Definition of the Hamming distance (common practice, no source).
    #[must_use]
    pub fn distance(self, other: Self) -> u32 {
        (self.bits ^ other.bits).count_ones()
    }

    /// The code that is seen where a contact is stuck.
    fn with_stuck(self, contact: usize, stuck: Stuck) -> Self {
        let bit = 1 << contact;
        let bits = match stuck {
            Stuck::Open => self.bits & !bit,
            Stuck::Closed => self.bits | bit,
        };
        Self { bits, ..self }
    }
}

impl fmt::Display for Code {
    /// `101`: 1 is a closed contact, the first one on the left.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.closed().try_for_each(|closed| f.write_str(if closed { "1" } else { "0" }))
    }
}

/// What is wrong with a contact.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stuck {
    /// It never closes.
    Open,
    /// It never opens.
    Closed,
}

/// What the control unit makes of a code.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Seen {
    /// One position, by its index in the table.
    Position(usize),
    /// Several positions have this code.
    Undecidable(Vec<usize>),
    /// No position has it.
    NoPosition,
}

/// Two neighbouring positions that differ in more than one contact.
///
/// No two contacts switch at one instant: on the way, for a moment, every code
/// between the two may be seen.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Jump {
    /// The position's index; the other one is the next.
    pub from: usize,
    /// In how many contacts they differ.
    pub distance: u32,
    /// What may be seen on the way that is neither of the two.
    pub glitches: Vec<(Code, Seen)>,
}

/// A position that a stuck contact lets the control unit take for another.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Misread {
    /// The true position's index.
    pub position: usize,
    /// What the control unit sees.
    pub seen: Seen,
}

/// Why there is no table.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ContactsError {
    /// No contact, or more than [`MOST_CONTACTS`].
    Contacts,
    /// No position.
    NoPosition,
    /// A code of another number of contacts than the first one.
    Length(usize),
}

impl fmt::Display for ContactsError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Contacts => write!(f, "no contact, or more than {MOST_CONTACTS}"),
            Self::NoPosition => f.write_str("no position"),
            Self::Length(position) => write!(f, "position {position} has another number of contacts"),
        }
    }
}

impl std::error::Error for ContactsError {}

/// The codes of an actuator's positions, in the order in which it passes them.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TruthTable {
    positions: Vec<Code>,
    contacts: usize,
}

impl TruthTable {
    /// From the codes in the order of travel.
    ///
    /// # Errors
    /// Without a position, or where the codes differ in length.
    pub fn new(positions: Vec<Code>) -> Result<Self, ContactsError> {
        let contacts = positions.first().ok_or(ContactsError::NoPosition)?.contacts;
        match positions.iter().position(|code| code.contacts != contacts) {
            Some(odd) => Err(ContactsError::Length(odd)),
            None => Ok(Self { positions, contacts }),
        }
    }

    /// The codes in the order of travel.
    #[must_use]
    pub fn positions(&self) -> &[Code] {
        &self.positions
    }

    /// How many contacts there are.
    #[must_use]
    pub fn contacts(&self) -> usize {
        self.contacts
    }

    /// The position behind a code.
    #[must_use]
    pub fn seen(&self, code: Code) -> Seen {
        let same: Vec<usize> =
            self.positions.iter().enumerate().filter(|(_, c)| **c == code).map(|(at, _)| at).collect();
        match same[..] {
            [] => Seen::NoPosition,
            [one] => Seen::Position(one),
            _ => Seen::Undecidable(same),
        }
    }

    /// Every code that no position has.
    #[must_use]
    pub fn illegal(&self) -> Vec<Code> {
        let every = (0..1_u32 << self.contacts).map(|bits| Code { bits, contacts: self.contacts });
        every.filter(|code| !self.positions.contains(code)).collect()
    }

    /// Pairs of positions with one code.
    #[must_use]
    pub fn same_codes(&self) -> Vec<(usize, usize)> {
        let mut pairs = Vec::new();
        for (second, code) in self.positions.iter().enumerate() {
            if let Some(first) = self.positions[..second].iter().position(|other| other == code) {
                pairs.push((first, second));
            }
        }
        pairs
    }

    /// Neighbouring positions more than one contact apart.
    #[must_use]
    pub fn jumps(&self) -> Vec<Jump> {
        let jump = |(from, pair): (usize, &[Code])| {
            let (a, b) = (pair[0], pair[1]);
            let distance = a.distance(b);
            (distance > 1).then(|| Jump { from, distance, glitches: self.between(a, b) })
        };
        self.positions.windows(2).enumerate().filter_map(jump).collect()
    }

    /// The positions that are not seen as what they are where a contact is stuck.
    ///
    /// Empty where there is no such contact.
    #[must_use]
    pub fn stuck(&self, contact: usize, stuck: Stuck) -> Vec<Misread> {
        if contact >= self.contacts {
            return Vec::new();
        }
        let misread = |(position, code): (usize, &Code)| {
            let seen = self.seen(code.with_stuck(contact, stuck));
            (seen != Seen::Position(position)).then_some(Misread { position, seen })
        };
        self.positions.iter().enumerate().filter_map(misread).collect()
    }

    /// What may be seen between two codes that differ in several contacts.
    fn between(&self, a: Code, b: Code) -> Vec<(Code, Seen)> {
        let differing = a.bits ^ b.bits;
        let every = (0..1_u32 << self.contacts).map(|bits| Code { bits, contacts: self.contacts });
        let on_the_way =
            every.filter(|code| (code.bits ^ a.bits) & !differing == 0 && *code != a && *code != b);
        on_the_way.map(|code| (code, self.seen(code))).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn code(text: &str) -> Code {
        let closed: Vec<bool> = text.chars().map(|c| c == '1').collect();
        Code::new(&closed).unwrap()
    }

    fn table(codes: &[&str]) -> TruthTable {
        TruthTable::new(codes.iter().map(|text| code(text)).collect()).unwrap()
    }

    #[test]
    fn a_gray_code_has_no_jump_and_a_counted_one_has() {
        // Binary-reflected Gray code: neighbours differ in one bit by construction.
        assert_eq!(table(&["000", "001", "011", "010", "110", "111", "101", "100"]).jumps(), []);
        let jumps = table(&["00", "01", "10", "11"]).jumps();
        assert_eq!(jumps.len(), 1);
        assert_eq!((jumps[0].from, jumps[0].distance), (1, 2));
        let glitches = [(code("00"), Seen::Position(0)), (code("11"), Seen::Position(3))];
        assert_eq!(jumps[0].glitches, glitches);
        // Neighbours of one code are no jump: `same_codes` names them.
        let standing = table(&["00", "00", "01"]);
        assert_eq!((standing.jumps(), standing.same_codes()), (vec![], vec![(0, 1)]));
    }

    #[test]
    fn a_stuck_contact_makes_positions_look_like_others() {
        let table = table(&["100", "110", "010", "011"]);
        assert_eq!(
            table.stuck(0, Stuck::Open),
            [
                Misread { position: 0, seen: Seen::NoPosition },
                Misread { position: 1, seen: Seen::Position(2) },
            ]
        );
        assert_eq!(
            table.stuck(0, Stuck::Closed),
            [
                Misread { position: 2, seen: Seen::Position(1) },
                Misread { position: 3, seen: Seen::NoPosition },
            ]
        );
        assert_eq!(table.stuck(3, Stuck::Open), []);
        let illegal: Vec<String> = table.illegal().iter().map(Code::to_string).collect();
        assert_eq!(illegal, ["000", "001", "101", "111"]);
    }

    #[test]
    fn one_code_for_two_positions_decides_nothing() {
        let table = table(&["10", "01", "10"]);
        assert_eq!(table.same_codes(), [(0, 2)]);
        assert_eq!(table.seen(code("10")), Seen::Undecidable(vec![0, 2]));
        assert_eq!(TruthTable::new(vec![code("10"), code("1")]), Err(ContactsError::Length(1)));
    }
}
