//! Whether a paper is the valid one, from the code printed on it.

use super::record::{History, Record};
use crate::spec::{Act, Issue};

/// A printed code: `CUR-EVAP r2 RS5D-MKAG`, or a part of it.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Code {
    /// The document.
    pub id: Option<String>,
    /// Its revision.
    pub revision: Option<u32>,
    /// The fingerprint of what it says.
    pub fingerprint: Option<String>,
    /// Whether something else stands where the revision does: then it was never issued.
    pub is_draft: bool,
}

/// What the register says of a paper.
#[derive(Debug, Clone, Copy)]
pub enum Verdict<'a> {
    /// It is the valid one.
    Current(&'a str, &'a Issue),
    /// Another revision took its place.
    Superseded(&'a str, &'a Issue, &'a Act),
    /// It is not to be used any more.
    Withdrawn(&'a str, &'a Issue, &'a Act),
    /// Its fingerprint is not that of the revision it names.
    Other(&'a str, &'a Issue),
    /// A draft was never issued; the revision that says the same, where one does.
    Draft(Option<(&'a str, &'a Issue)>),
    /// No such paper was issued from this register.
    Unknown,
}

/// Letters that are read for digits by mistake, and the digits: the code has none of them.
const MISREAD: [(char, char); 3] = [('O', '0'), ('I', '1'), ('L', '1')];

impl Code {
    /// Reads a code as it is printed, or typed by somebody.
    #[must_use]
    pub fn read(text: &str) -> Self {
        let mut code = Self::default();
        let mut parts: Vec<&str> = text.split_whitespace().collect();
        if let Some(fingerprint) = parts.last().and_then(|last| fingerprint(last)) {
            code.fingerprint = Some(fingerprint);
            parts.pop();
        }
        let mut parts = parts.into_iter();
        code.id = parts.next().map(str::to_owned);
        for part in parts {
            match part.strip_prefix(['r', 'R']).and_then(|number| number.parse().ok()) {
                Some(number) => code.revision = Some(number),
                None => code.is_draft = true,
            }
        }
        code
    }

    fn is_of(&self, issue: &Issue) -> bool {
        self.revision.is_none_or(|number| number == issue.act.revision.value)
            && self.fingerprint.as_ref().is_none_or(|code| *code == issue.content)
    }
}

/// Two groups of four characters, as printed; letters that the code does not have are digits.
fn fingerprint(text: &str) -> Option<String> {
    let plain = |c: char| {
        let c = c.to_ascii_uppercase();
        MISREAD.iter().find(|(misread, _)| *misread == c).map_or(c, |(_, digit)| *digit)
    };
    let text: String = text.chars().map(plain).collect();
    let groups: Vec<&str> = text.split('-').collect();
    let is_group = |group: &&str| group.len() == 4 && group.bytes().all(|b| b.is_ascii_alphanumeric());
    (groups.len() == 2 && groups.iter().all(is_group)).then_some(text)
}

impl Record {
    /// What it says of a paper with this code.
    #[must_use]
    pub fn verdict(&self, code: &Code) -> Verdict<'_> {
        if code.id.is_none() && code.fingerprint.is_none() {
            return Verdict::Unknown;
        }
        let is_meant = |id: &str| code.id.as_ref().is_none_or(|known| known.eq_ignore_ascii_case(id));
        let documents = || self.documents().filter(|(id, _)| is_meant(id));
        // The newest of those with this code: a layout reissued has the same.
        let found = documents().find_map(|(id, history)| {
            let issue = history.issues().iter().rev().find(|issue| code.is_of(issue))?;
            Some((id, history, issue))
        });
        if code.is_draft {
            return Verdict::Draft(found.map(|(id, _, issue)| (id, issue)));
        }
        if let Some((id, history, issue)) = found {
            return history.verdict(id, issue);
        }
        let named = documents().find_map(|(id, history)| Some((id, history.revision(code.revision?)?)));
        match named.filter(|_| code.id.is_some()) {
            Some((id, issue)) => Verdict::Other(id, issue),
            None => Verdict::Unknown,
        }
    }
}

impl History {
    fn verdict<'a>(&'a self, id: &'a str, issue: &'a Issue) -> Verdict<'a> {
        let number = issue.act.revision.value;
        let next = self.issues().iter().find(|other| other.act.revision.value > number);
        match (next, self.withdrawal_of(number)) {
            // Withdrawn, then issued anew: the newer one is what counts.
            (Some(_), _) => {
                let newest = self.newest().map_or(&issue.act, |newest| &newest.act);
                Verdict::Superseded(id, issue, newest)
            }
            (None, Some(act)) => Verdict::Withdrawn(id, issue, act),
            (None, None) => Verdict::Current(id, issue),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_code_is_read_as_printed_and_as_misread() {
        let code = Code::read("CUR-EVAP r2 RS5D-MKAG");
        assert_eq!((code.id.as_deref(), code.revision), (Some("CUR-EVAP"), Some(2)));
        assert_eq!(code.fingerprint.as_deref(), Some("RS5D-MKAG"));
        let code = Code::read(" rs5d-mkaO ");
        assert_eq!((code.id, code.fingerprint.as_deref()), (None, Some("RS5D-MKA0")));
        assert!(Code::read("CUR-EVAP DRAFT RS5D-MKAG").is_draft);
        // An id that looks like one is one where the rest follows.
        assert_eq!(Code::read("SENS-CARD r1").id.as_deref(), Some("SENS-CARD"));
    }
}
