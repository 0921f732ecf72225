//! Typesets with the templates of a run, and says why where it cannot.

use std::sync::OnceLock;

use super::sizes;
use super::templates::Templates;
use super::why::{Part, Why};
use crate::document::{Context, Listed};
use crate::typeset::{Complaint, Failure, Typesetter};
use crate::words::Words;

/// A typesetter that knows a shop's own templates from the built-in ones.
pub(super) struct Setter {
    templates: Templates,
    typesetter: Typesetter,
    /// With the built-in templates alone; made when something fails.
    usual: OnceLock<Typesetter>,
}

impl Setter {
    pub(super) fn new(templates: Templates, words: &Words) -> Self {
        let typesetter = templates.typesetter(words);
        Self { templates, typesetter, usual: OnceLock::new() }
    }

    pub(super) fn templates(&self) -> &Templates {
        &self.templates
    }

    /// The typesetter alone, for what is told elsewhere where it fails.
    pub(super) fn typesetter(&self) -> &Typesetter {
        &self.typesetter
    }

    /// Makes something; where that fails, finds out whose doing it is.
    pub(super) fn make<T>(
        &self,
        words: &Words,
        with: impl Fn(&Typesetter) -> Result<T, Failure>,
    ) -> Result<T, Why> {
        self.make_or(words, with, |_, failure| failure.said(words))
    }

    /// The same of a listed document; where it does not fit its pages, says what would.
    pub(super) fn make_of<T>(
        &self,
        context: Context<'_>,
        listed: &Listed,
        with: impl Fn(&Typesetter) -> Result<T, Failure>,
    ) -> Result<T, Why> {
        let say =
            |typesetter: &Typesetter, failure: &Failure| sizes::reason(context, typesetter, listed, failure);
        self.make_or(context.words, with, say)
    }

    /// The same; says in its own way what is no doing of the shop's templates.
    fn make_or<T>(
        &self,
        words: &Words,
        with: impl Fn(&Typesetter) -> Result<T, Failure>,
        say: impl Fn(&Typesetter, &Failure) -> String,
    ) -> Result<T, Why> {
        with(&self.typesetter).map_err(|failure| {
            if failure.complaints.iter().any(|complaint| matches!(complaint, Complaint::Unread)) {
                return Why::Unread;
            }
            if !self.is_own(&failure) && !self.works_without_own(words, &with) {
                return Why::Run(say(&self.typesetter, &failure));
            }
            let part = |complaint| match complaint {
                Complaint::Template(diagnosis) => Some(Part::of(diagnosis, &self.templates)),
                Complaint::Page(message) => Some(Part::Page(words.say(&message))),
                Complaint::Unread => None,
            };
            Why::Own(failure.complaints.into_iter().filter_map(part).collect())
        })
    }

    /// Whether all that is wrong stands in templates that the shop changed.
    fn is_own(&self, failure: &Failure) -> bool {
        let own = |complaint: &Complaint| match complaint {
            Complaint::Template(diagnosis) => {
                diagnosis.at.as_ref().is_some_and(|spot| self.templates.is_changed(&spot.path))
            }
            Complaint::Page(_) | Complaint::Unread => false,
        };
        failure.complaints.iter().all(own)
    }

    /// Whether the built-in templates alone do it: then the shop's own are what fails, wherever
    /// it shows.
    fn works_without_own<T>(&self, words: &Words, with: impl Fn(&Typesetter) -> Result<T, Failure>) -> bool {
        if self.templates.changed().next().is_none() {
            return false;
        }
        let usual = self.usual.get_or_init(|| Typesetter::new(&words.paper_json()));
        with(usual).is_ok()
    }
}

#[cfg(test)]
mod tests {
    use std::fs;

    use super::*;
    use crate::typeset::{Diagnosis, Spot};

    fn failure(path: &str) -> Failure {
        let at = Some(Spot { path: path.to_owned(), span: 0..4, line: 1 });
        let (through, hints) = (Vec::new(), Vec::new());
        let diagnosis = Diagnosis { warning: false, said: "no such thing".to_owned(), at, through, hints };
        Failure { id: "SEN-1".to_owned(), complaints: vec![Complaint::Template(diagnosis)], crowded: false }
    }

    fn why(templates: Templates, path: &str) -> Why {
        let setter = Setter::new(templates, &Words::english());
        let made: Result<(), Why> = setter.make(&Words::english(), |_| Err(failure(path)));
        made.expect_err("it always fails")
    }

    #[test]
    fn a_built_in_template_that_fails_is_a_failure_of_the_run() {
        let templates = Templates::load(None).expect("they are built in");
        assert_eq!(why(templates, "theme.typ"), Why::Run("theme.typ:1: no such thing".to_owned()));
    }

    #[test]
    fn a_file_is_the_shop_s_only_where_it_differs() {
        let folder = tempfile::tempdir().expect("a folder can be made");
        let (_, theme) =
            crate::typeset::TEMPLATES.iter().find(|(path, _)| *path == "theme.typ").expect("one");
        for (text, is_own) in [((*theme).to_owned(), false), (format!("{theme}//"), true)] {
            fs::write(folder.path().join("theme.typ"), text).expect("files can be written");
            let load = || Templates::load(Some(folder.path())).expect("it has a template");
            assert_eq!(matches!(why(load(), "theme.typ"), Why::Own(_)), is_own);
            assert!(matches!(why(load(), "sensor-card.typ"), Why::Run(_)), "it fails without own ones too");
        }
    }
}
