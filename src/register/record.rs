//! What is issued, withdrawn and held, by document: checked, so that every number in it
//! can be relied on.

use std::collections::BTreeMap;

use chrono::NaiveDate;

use crate::diag::{Finding, Findings, Place};
use crate::spec::{Act, Held, Issue, Register};
use crate::words::Message;

/// What a register says of every document, without contradiction.
#[derive(Debug, Default)]
pub struct Record {
    documents: BTreeMap<String, History>,
}

/// One document's history.
#[derive(Debug, Default)]
pub struct History {
    /// Revisions 1, 2, 3 and so on.
    issues: Vec<Issue>,
    /// By revision.
    withdrawals: Vec<Act>,
    copies: Vec<Held>,
}

impl Record {
    /// Sorts a register by document. What contradicts itself is a finding; nothing is guessed.
    #[must_use]
    pub fn checked(register: Register, findings: &Findings) -> Self {
        let mut documents: BTreeMap<String, History> = BTreeMap::new();
        for issue in register.issues {
            documents.entry(issue.act.id.value.clone()).or_default().issues.push(issue);
        }
        for withdrawal in register.withdrawals {
            documents.entry(withdrawal.id.value.clone()).or_default().withdrawals.push(withdrawal);
        }
        for copy in register.copies {
            documents.entry(copy.id.value.clone()).or_default().copies.push(copy);
        }
        for history in documents.values_mut() {
            history.issues.sort_by_key(|issue| issue.act.revision.value);
            history.withdrawals.sort_by_key(|withdrawal| withdrawal.revision.value);
            history.check(findings);
        }
        Self { documents }
    }

    /// Every document that was ever issued, by id.
    pub fn documents(&self) -> impl Iterator<Item = (&str, &History)> {
        self.documents.iter().map(|(id, history)| (id.as_str(), history))
    }

    /// One document's history.
    #[must_use]
    pub fn of(&self, id: &str) -> Option<&History> {
        self.documents.get(id)
    }

    /// The numbers of all pull lists.
    pub fn pull_lists(&self) -> impl Iterator<Item = &str> {
        let acts = self
            .documents
            .values()
            .flat_map(|history| history.issues.iter().map(|issue| &issue.act).chain(&history.withdrawals));
        acts.filter_map(|act| act.pull_list.as_deref())
    }

    /// The latest date that anything was issued or withdrawn.
    #[must_use]
    pub fn latest(&self) -> Option<NaiveDate> {
        self.documents.values().filter_map(History::latest).max()
    }
}

impl History {
    /// All revisions, oldest first.
    #[must_use]
    pub fn issues(&self) -> &[Issue] {
        &self.issues
    }

    /// The newest revision, withdrawn or not.
    #[must_use]
    pub fn newest(&self) -> Option<&Issue> {
        self.issues.last()
    }

    /// The revision that is valid, where one is.
    #[must_use]
    pub fn current(&self) -> Option<&Issue> {
        self.newest().filter(|issue| self.withdrawal_of(issue.act.revision.value).is_none())
    }

    /// A revision by its number.
    #[must_use]
    pub fn revision(&self, number: u32) -> Option<&Issue> {
        self.issues.iter().find(|issue| issue.act.revision.value == number)
    }

    /// How a revision was withdrawn, where it was.
    #[must_use]
    pub fn withdrawal_of(&self, revision: u32) -> Option<&Act> {
        self.withdrawals.iter().find(|withdrawal| withdrawal.revision.value == revision)
    }

    /// The number that the next issue gets.
    #[must_use]
    pub fn next(&self) -> u32 {
        self.newest().map_or(1, |issue| issue.act.revision.value.saturating_add(1))
    }

    /// Copies in somebody's hands, in the order of the file.
    pub fn held(&self) -> impl Iterator<Item = &Held> {
        self.copies.iter().filter(|copy| copy.until.is_none())
    }

    /// Copies of what is not valid any more.
    pub fn outdated(&self) -> impl Iterator<Item = &Held> {
        let current = self.current().map(|issue| issue.act.revision.value);
        self.held().filter(move |copy| current != Some(copy.revision.value))
    }

    /// The latest date that it was issued or withdrawn.
    #[must_use]
    pub fn latest(&self) -> Option<NaiveDate> {
        let issued = self.issues.iter().map(|issue| issue.act.date.value);
        issued.chain(self.withdrawals.iter().map(|withdrawal| withdrawal.date.value)).max()
    }

    fn check(&self, findings: &Findings) {
        self.check_numbers(findings);
        for pair in self.issues.windows(2) {
            if let [before, issue] = pair
                && issue.act.date.value < before.act.date.value
            {
                let message = Message::new("register-date-back").with("id", &issue.act.id.value);
                let finding =
                    Finding::error(message, issue.act.date.place.clone(), not_before(before.act.date.value));
                let earlier = before.act.date.place.clone();
                findings.report(finding.because(earlier, Message::new("label-register-before")));
            }
        }
        for withdrawal in &self.withdrawals {
            let of = (withdrawal.revision.value, &withdrawal.revision.place);
            if let Some(issue) = self.issued(&withdrawal.id.value, of, findings) {
                after(issue.act.date.value, withdrawal.date.value, &withdrawal.date.place, findings);
            }
        }
        for pair in self.withdrawals.windows(2) {
            if let [first, second] = pair
                && first.revision.value == second.revision.value
            {
                let message = Message::new("register-withdrawn-twice").with("id", &second.id.value);
                twice(message, &first.place, &second.place, findings);
            }
        }
        for copy in &self.copies {
            let of = (copy.revision.value, &copy.revision.place);
            if let Some(issue) = self.issued(&copy.id.value, of, findings) {
                after(issue.act.date.value, copy.since.value, &copy.since.place, findings);
            }
            if let Some(until) = &copy.until {
                after(copy.since.value, until.value, &until.place, findings);
            }
        }
    }

    /// Revisions are 1, 2, 3 and so on, each once.
    fn check_numbers(&self, findings: &Findings) {
        let mut expected = 1;
        let mut before: Option<&Issue> = None;
        for issue in &self.issues {
            let number = issue.act.revision.value;
            if let Some(first) = before.filter(|before| before.act.revision.value == number) {
                let message = Message::new("register-issued-twice").with("id", &issue.act.id.value);
                let message = message.with("revision", number);
                twice(message, &first.act.revision.place, &issue.act.revision.place, findings);
            } else if number != expected {
                let message =
                    Message::new("register-gap").with("id", &issue.act.id.value).with("number", number);
                let label = Message::new("wanted-revision").with("number", expected);
                let finding = Finding::error(message, issue.act.revision.place.clone(), label);
                findings.report(finding.help(Message::new("register-gap-help")));
            }
            expected = number.saturating_add(1);
            before = Some(issue);
        }
    }

    /// The issue that an entry names, or a finding.
    fn issued(&self, id: &str, (revision, place): (u32, &Place), findings: &Findings) -> Option<&Issue> {
        let issue = self.revision(revision);
        if issue.is_none() {
            let message = Message::new("register-not-issued").with("id", id).with("revision", revision);
            let label = match self.newest() {
                Some(newest) => Message::new("wanted-revision-to").with("newest", newest.act.revision.value),
                None => Message::new("wanted-issued-id"),
            };
            findings.report(Finding::error(message, place.clone(), label));
        }
        issue
    }
}

/// Reports a date that is before the one it follows.
fn after(first: NaiveDate, second: NaiveDate, place: &Place, findings: &Findings) {
    if second < first {
        let message = Message::new("register-date-before");
        findings.report(Finding::error(message, place.clone(), not_before(first)));
    }
}

fn not_before(date: NaiveDate) -> Message {
    Message::new("wanted-not-before").with("date", date)
}

/// Reports an entry that says for the second time what must be said once.
fn twice(message: Message, first: &Place, second: &Place, findings: &Findings) {
    let finding = Finding::error(message, second.clone(), Message::new("label-second"));
    let finding = finding.because(first.clone(), Message::new("label-first"));
    findings.report(finding.help(Message::new("register-twice-help")));
}
