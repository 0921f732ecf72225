//! Panel modes: the fewest that show every forced value.
//!
//! A panel mode forces some control points to a value, leaves others free and
//! does not care for the rest. Only a forced cell is a test. Modes, control
//! points and values are indices here; their names are the spec's.

mod cover;

pub use cover::{Cover, MOST_EXACT};

/// What a mode does with one control point.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Cell {
    /// The mode forces this value, by its index.
    Forced(usize),
    /// The control unit decides.
    Free,
    /// It makes no difference in this mode.
    DontCare,
}

/// One value of one control point: what a mode forces, or where a point is stuck.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Pair {
    /// The control point.
    pub control: usize,
    /// The value.
    pub value: usize,
}

/// Why a table is none.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Error {
    /// A mode has another number of cells than there are control points.
    RowLength {
        /// The mode.
        mode: usize,
    },
    /// A mode forces a value that the control point does not have.
    NoSuchValue {
        /// The mode.
        mode: usize,
        /// The control point.
        control: usize,
    },
}

/// Panel modes against control points.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TruthTable {
    values: Vec<usize>,
    rows: Vec<Vec<Cell>>,
}

/// A control point that stays at one value whatever is forced.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct StuckAt {
    /// The control point and the value it stays at.
    pub stuck_at: Pair,
    /// The modes that expose it, because they force another value; where there
    /// are none, no mode can tell it from a good one.
    pub exposed_by: Vec<usize>,
}

impl StuckAt {
    /// The first of `modes` that exposes the fault.
    #[must_use]
    pub fn first_in(&self, modes: &[usize]) -> Option<usize> {
        modes.iter().copied().find(|mode| self.exposed_by.contains(mode))
    }
}

impl TruthTable {
    /// A table of `rows`, one a mode, for control points with so many `values` each.
    ///
    /// # Errors
    /// [`Error::RowLength`] where a row has not one cell for each control point,
    /// [`Error::NoSuchValue`] where a forced value is beyond a point's values.
    pub fn new(values: Vec<usize>, rows: Vec<Vec<Cell>>) -> Result<Self, Error> {
        for (mode, row) in rows.iter().enumerate() {
            if row.len() != values.len() {
                return Err(Error::RowLength { mode });
            }
            for (control, (cell, &count)) in row.iter().zip(&values).enumerate() {
                if matches!(cell, Cell::Forced(value) if *value >= count) {
                    return Err(Error::NoSuchValue { mode, control });
                }
            }
        }
        Ok(Self { values, rows })
    }

    /// How many control points a mode forces; none for a mode that is not there.
    #[must_use]
    pub fn forced(&self, mode: usize) -> usize {
        let cells = self.rows.get(mode).into_iter().flatten();
        cells.filter(|cell| matches!(cell, Cell::Forced(_))).count()
    }

    /// Every pair that some mode forces, by control point and value.
    #[must_use]
    pub fn pairs(&self) -> Vec<Pair> {
        self.all().filter(|&pair| self.forces(pair).next().is_some()).collect()
    }

    /// The modes that force a pair.
    #[must_use]
    pub fn visitors(&self, pair: Pair) -> Vec<usize> {
        self.forces(pair).collect()
    }

    /// Pairs that a single mode forces, each with that mode: it is in every set
    /// that visits all pairs.
    #[must_use]
    pub fn essential(&self) -> Vec<(Pair, usize)> {
        let alone = |pair| {
            let mut modes = self.forces(pair);
            modes.next().filter(|_| modes.next().is_none()).map(|mode| (pair, mode))
        };
        self.all().filter_map(alone).collect()
    }

    /// The smallest set of modes that visits every forced pair at least once.
    ///
    /// Proven smallest for up to [`MOST_EXACT`] modes; of several such sets it
    /// is the lexicographically first one by the modes' order. Beyond that it
    /// is found by taking the mode that adds the most, so it may not be the
    /// smallest: [`Cover::is_proven`] says which, [`Cover::at_least`] how many
    /// modes any set needs. A table that forces nothing needs no mode.
    ///
    /// # Source
    /// The set covering problem: R. M. Karp, Reducibility among combinatorial
    /// problems, 1972 (from memory). The search is a plain one, tried against
    /// all subsets in tests/properties/modes.rs.
    #[must_use]
    pub fn smallest_cover(&self) -> Cover {
        let visitors: Vec<Vec<usize>> = self.pairs().into_iter().map(|pair| self.visitors(pair)).collect();
        cover::smallest(self.rows.len(), &visitors)
    }

    /// Every control point stuck at each of its values, by control point and value.
    ///
    /// A set of modes that visits every forced pair exposes each fault that any
    /// mode exposes: the mode that forces another value is visited through that
    /// value.
    #[must_use]
    pub fn faults(&self) -> Vec<StuckAt> {
        let fault = |stuck_at: Pair| {
            let exposes = |mode: &usize| match self.rows[*mode][stuck_at.control] {
                Cell::Forced(value) => value != stuck_at.value,
                Cell::Free | Cell::DontCare => false,
            };
            StuckAt { stuck_at, exposed_by: (0..self.rows.len()).filter(exposes).collect() }
        };
        self.all().map(fault).collect()
    }

    fn all(&self) -> impl Iterator<Item = Pair> {
        let points = self.values.iter().enumerate();
        points.flat_map(|(control, &count)| (0..count).map(move |value| Pair { control, value }))
    }

    fn forces(&self, pair: Pair) -> impl Iterator<Item = usize> {
        let forced = Cell::Forced(pair.value);
        let modes = self.rows.iter().enumerate();
        modes.filter(move |(_, row)| row.get(pair.control) == Some(&forced)).map(|(mode, _)| mode)
    }
}
