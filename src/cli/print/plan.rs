//! Who prints what: shares of about the same size, and the same files whoever prints them.

use crate::cli::args::Share;
use crate::document::{Listed, Paperwork};

/// Fewer cards than these come into one file of sheets: a second process would save nothing
/// that anybody notices.
const ONE_FILE: usize = 12;

/// What is printed in one go.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Unit<'a> {
    /// One document.
    Single(&'a Listed),
    /// Cards that share a file of sheets; its number, from 1.
    Bundle(usize, &'a [Listed]),
}

/// All that a run prints, but for the index.
#[derive(Debug)]
pub(super) struct Plan {
    singles: Vec<Listed>,
    bundles: Vec<Vec<Listed>>,
}

impl Plan {
    /// Every document in a file of its own.
    pub(super) fn of_documents(listed: Vec<Listed>) -> Self {
        Self { singles: listed, bundles: Vec::new() }
    }

    /// Cards on sheets. How many files they make depends on them alone, never on how many
    /// processes there are; an even number, since most machines have an even number of processors.
    pub(super) fn of_sheets(listed: Vec<Listed>) -> Self {
        let is_card = |listed: &Listed| matches!(listed.paperwork, Paperwork::Card(_));
        let (cards, singles): (Vec<Listed>, Vec<Listed>) = listed.into_iter().partition(is_card);
        let files = if cards.len() < ONE_FILE { 1 } else { cards.len().div_ceil(2 * ONE_FILE) * 2 };
        let mut bundles = Vec::new();
        let mut rest = cards;
        for left in (1..=files).rev() {
            let after = rest.split_off(rest.len().div_ceil(left));
            if !rest.is_empty() {
                bundles.push(rest);
            }
            rest = after;
        }
        Self { singles, bundles }
    }

    /// How many documents it has.
    pub(super) fn documents(&self) -> usize {
        self.singles.len() + self.bundles.iter().map(Vec::len).sum::<usize>()
    }

    /// How many files of sheets there are, if each of them gets a sheet.
    pub(super) fn bundles(&self) -> usize {
        self.bundles.len()
    }

    /// Into how many shares it can be parted.
    pub(super) fn units(&self) -> usize {
        self.singles.len() + self.bundles.len()
    }

    /// Every document, cards on sheets first.
    pub(super) fn listed(&self) -> impl Iterator<Item = &Listed> {
        self.bundles.iter().flatten().chain(&self.singles)
    }

    /// What one of several processes prints: bundles, then single documents, each to
    /// whoever has least.
    pub(super) fn share(&self, share: Share) -> Vec<Unit<'_>> {
        let bundles = self.bundles.iter().enumerate();
        let bundles = bundles.map(|(index, cards)| Unit::Bundle(index + 1, cards.as_slice()));
        let mut given = vec![0; share.of];
        let mut mine = Vec::new();
        for unit in bundles.chain(self.singles.iter().map(Unit::Single)) {
            let least = (0..share.of).min_by_key(|process| given[*process]).unwrap_or_default();
            given[least] += match unit {
                Unit::Single(_) => 1,
                Unit::Bundle(_, cards) => cards.len(),
            };
            if least == share.index {
                mine.push(unit);
            }
        }
        mine
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::spec::About;

    fn listed(count: usize, paperwork: &Paperwork) -> Vec<Listed> {
        let one = |n| Listed { id: format!("D{n}"), spec: String::new(), paperwork: paperwork.clone() };
        (0..count).map(one).collect()
    }

    #[test]
    fn every_unit_is_printed_by_one_process() {
        for cards in [0, 1, 11, 12, 25, 60] {
            let mut all = listed(cards, &Paperwork::Card(About::Sensor));
            all.extend(listed(7, &Paperwork::Checklist));
            let plan = Plan::of_sheets(all);
            assert_eq!(plan.documents(), cards + 7);
            for of in 1..5 {
                let shares: Vec<_> = (0..of).map(|index| plan.share(Share { index, of })).collect();
                assert_eq!(shares.iter().map(Vec::len).sum::<usize>(), plan.units());
                let bundles = shares.iter().flatten().filter(|unit| matches!(unit, Unit::Bundle(..)));
                assert_eq!(bundles.count(), plan.bundles());
            }
        }
    }

    #[test]
    fn two_processes_print_as_many_cards() {
        let plan = Plan::of_sheets(listed(54, &Paperwork::Card(About::Sensor)));
        let cards = |index| {
            let units = plan.share(Share { index, of: 2 });
            units
                .iter()
                .map(|unit| if let Unit::Bundle(_, cards) = unit { cards.len() } else { 0 })
                .sum::<usize>()
        };
        assert_eq!((plan.bundles(), cards(0), cards(1)), (6, 27, 27));
    }
}
