//! What an issued PDF carries inside: read back, computed again, and refused where it cannot be.

use std::path::Path;

use bayleaf::diag::{Findings, Sources};
use bayleaf::document::{self, Cell, Context, Stamp, Trial};
use bayleaf::enclosure::{Encloser, compare, read};
use bayleaf::model;
use bayleaf::quantity::Temperature;
use bayleaf::spec::{self, Set};
use bayleaf::typeset::{Attachment, Job, Typesetter};
use bayleaf::words::{Language, Words};

use super::{date, job};

/// The files of an issue, and its PDF.
struct Issued {
    id: String,
    template: &'static str,
    files: Vec<Attachment>,
    pdf: Vec<u8>,
    cells: Vec<Cell>,
}

/// The documents of a set that `chosen` wants, as issued in a language.
fn issued(
    sources: &Sources,
    language: Language,
    only: Option<&str>,
    mut chosen: impl FnMut(&str) -> bool,
) -> Vec<Issued> {
    let set = Set::read(sources, &Findings::default());
    let model = model::build(&set).expect("the set is clean");
    let words = Words::of(language);
    let typesetter = Typesetter::new(&words.paper_json());
    let stamp = Stamp { revision: 1, date: date(), by: "WB".to_owned(), since: None };
    let context = Context {
        model: &model,
        words: &words,
        date: date(),
        bay: Some(Temperature::from_celsius(31.0)),
        units: bayleaf::quantity::Units::default(),
        size: None,
        trial: Trial::default(),
        codes: None,
        said: None,
    };
    let encloser = Encloser::new(sources);
    let mut all = Vec::new();
    for listed in document::list(&model) {
        if only.is_some_and(|only| only != listed.id) || listed.paperwork == document::Paperwork::Index {
            continue;
        }
        let document = document::compose(context, &listed).expect("it composes").issued(&words, &stamp);
        if chosen(document.template) {
            let files = encloser.enclose(context, &listed, (&document, &stamp));
            let job = Job { attached: &files, ..job(&document) };
            let pdf = typesetter.pdf(job).expect("it exports to both standards").pdf;
            let cells = document.content().cells().to_vec();
            all.push(Issued { id: document.id.clone(), template: document.template, files, pdf, cells });
        }
    }
    all
}

fn one(id: &str) -> Issued {
    issued(&spec::demo(), Language::English, Some(id), |_| true).pop().expect("the demo has it")
}

fn refusal(bytes: &[u8]) -> String {
    Words::english().say(&read(bytes).expect_err("it cannot be verified"))
}

#[test]
fn every_kind_of_paper_is_computed_again_from_its_own_pdf_and_comes_out_the_same() {
    let mut met = Vec::new();
    for language in [Language::English, Language::German] {
        let mut templates: Vec<String> = Vec::new();
        let all = issued(&spec::demo(), language, None, |template| {
            let is_new = !templates.iter().any(|known| known == template);
            templates.push(template.to_owned());
            // In German a few: that the record says in which language is what is asked.
            is_new && (language == Language::English || template.starts_with("sensor"))
        });
        for issued in &all {
            let text = String::from_utf8_lossy(&issued.pdf);
            let claims =
                ["<pdfaid:part>3</pdfaid:part>", "<pdfaid:conformance>A<", "<pdfuaid:part>1</pdfuaid:part>"];
            assert!(claims.iter().all(|claim| text.contains(claim)), "{}", issued.id);
            let enclosed = read(&issued.pdf).expect("it carries its figures");
            assert_eq!(enclosed.record.id, issued.id);
            assert_eq!(enclosed.record.cells(), issued.cells, "{}", issued.id);
            let comparison = compare(&enclosed).expect("its specs are clean");
            assert_eq!((comparison.figures, comparison.wording), (Vec::new(), 0), "{}", issued.id);
            met.push(issued.template);
        }
    }
    assert!(met.len() >= 16, "{met:?}");
}

#[test]
fn the_same_issue_has_the_same_bytes_and_a_draft_none_of_this() {
    assert!(one("CUR-MIX").pdf == one("CUR-MIX").pdf);
    let model = super::demo();
    let draft = super::documents(&model).into_iter().next().expect("there are documents");
    let pdf = super::typesetter().pdf(job(&draft)).expect("it exports").pdf;
    assert!(refusal(&pdf).starts_with("a draft"), "{}", refusal(&pdf));
}

#[test]
fn a_second_issue_with_its_marks_is_computed_again_as_well() {
    let (model, words) = (super::demo(), Words::english());
    let listed =
        document::list(&model).into_iter().find(|listed| listed.id == "CUR-MIX").expect("it is there");
    let moved = document::Moved {
        pointer: "/place".to_owned(),
        place: "place".to_owned(),
        old: "elsewhere".to_owned(),
        new: "here".to_owned(),
        key: None,
    };
    let since = document::Since { revision: 1, why: "moved".to_owned(), moved: vec![moved], is_known: true };
    let stamp = Stamp { revision: 2, date: date(), by: "WB".to_owned(), since: Some(since) };
    let context = Context {
        model: &model,
        words: &words,
        date: date(),
        bay: None,
        units: bayleaf::quantity::Units::default(),
        size: None,
        trial: Trial::default(),
        codes: None,
        said: None,
    };
    let document = document::compose(context, &listed).expect("it composes").issued(&words, &stamp);
    let files = Encloser::new(&spec::demo()).enclose(context, &listed, (&document, &stamp));
    let pdf = super::typesetter().pdf(Job { attached: &files, ..job(&document) }).expect("it exports").pdf;
    let comparison = compare(&read(&pdf).expect("it carries its figures")).expect("its specs are clean");
    assert_eq!((comparison.figures, comparison.wording), (Vec::new(), 0));
}

#[test]
fn files_are_found_without_the_list_that_another_program_may_have_lost() {
    let pdf = one("CUR-MIX").pdf;
    let at: Vec<usize> =
        pdf.windows(4).enumerate().filter(|(_, key)| *key == b"/AF[").map(|(at, _)| at).collect();
    assert!(!at.is_empty(), "PDF/A-3 asks for it (ISO 19005-3, 6.8)");
    let mut without = pdf.clone();
    for at in at {
        without[at + 1..at + 3].copy_from_slice(b"XX");
    }
    let [with, without] = [pdf, without].map(|pdf| read(&pdf).expect("it carries its figures"));
    assert_eq!((with.record, with.specs), (without.record, without.specs));
}

#[test]
fn the_specs_are_one_file_that_any_reader_saves_and_that_is_a_set_by_itself() {
    let card = one("CUR-EVAP");
    let names: Vec<&str> = card.files.iter().map(|file| file.name.as_str()).collect();
    assert_eq!(names, ["figures.json", "specs.toml"]);
    let mut alone = Sources::default();
    let saved = String::from_utf8(card.files[1].bytes.clone()).expect("specs are text");
    alone.add("specs/saved.toml".to_owned(), saved);
    let findings = Findings::default();
    bayleaf::rules::check(&Set::read(&alone, &findings), &findings);
    assert!(!findings.has_errors());
    let again = issued(&alone, Language::English, Some("CUR-EVAP"), |_| true).pop().expect("it is there");
    assert_eq!(again.cells, card.cells);
}

#[test]
fn a_card_carries_the_specs_of_its_system_and_of_no_other() {
    let specs = read(&one("CUR-MIX").pdf).expect("it carries its figures").specs;
    assert!(specs.keys().any(|path| path.starts_with("curlew/")), "{:?}", specs.keys());
    assert!(specs.keys().all(|path| !path.starts_with("heron/")), "{:?}", specs.keys());
}

#[test]
fn a_sheet_carries_its_own_vehicle_and_no_other() {
    let sheet = one("CUR-SENSORS.AMB-12");
    let all: String = sheet.files.iter().map(|file| String::from_utf8_lossy(&file.bytes)).collect();
    let vehicles: String =
        spec::DEMO.iter().filter(|(path, _)| *path == "vehicles.toml").map(|(_, text)| *text).collect();
    let chassis = vehicles.lines().filter(|line| line.starts_with("chassis"));
    let kept = chassis.clone().filter(|line| all.contains(line)).count();
    assert!(chassis.count() > 2 && kept == 1, "{kept} chassis numbers");
}

#[test]
fn a_figure_that_comes_out_otherwise_is_named_with_its_last_digit() {
    let card = one("CUR-EVAP");
    let mut enclosed = read(&card.pdf).expect("it carries its figures");
    let mut record = serde_json::to_value(&enclosed.record).expect("plain data");
    let cell = &mut record["data"]["strip"]["rows"][3][5];
    let printed = cell.as_str().expect("a figure").to_owned();
    let last = printed.chars().last().and_then(|c| c.to_digit(10)).expect("a digit");
    let other = format!("{}{}", &printed[..printed.len() - 1], if last > 4 { last - 2 } else { last + 2 });
    *cell = other.clone().into();
    enclosed.record = serde_json::from_value(record).expect("a record");
    let comparison = compare(&enclosed).expect("its specs are clean");
    let [figure] = &comparison.figures[..] else { panic!("{comparison:?}") };
    assert_eq!(figure.place, "strip rows 4 6");
    assert_eq!((&figure.printed, &figure.today, figure.digits), (&other, &printed, Some(2.0)));
}

#[test]
fn what_cannot_be_verified_is_refused_in_words_and_never_ends_the_program() {
    let card = one("CUR-MIX");
    assert_eq!(refusal(b"Not a PDF"), "not a PDF file");
    let foreign = b"%PDF-1.4\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n\
        2 0 obj<</Type/Pages/Kids[3 0 R]/Count 1>>endobj\n\
        3 0 obj<</Type/Page/Parent 2 0 R/MediaBox[0 0 9 9]>>endobj\n\
        trailer<</Root 1 0 R/Size 4>>\n%%EOF";
    assert!(refusal(foreign).starts_with("a PDF of another program"), "{}", refusal(foreign));
    // Cut off anywhere, and with a byte changed anywhere: refused, or read as it was.
    let step = card.pdf.len() / 40;
    for cut in (0..card.pdf.len()).step_by(step) {
        if let Ok(enclosed) = read(&card.pdf[..cut]) {
            assert_eq!(enclosed.record.id, "CUR-MIX");
        }
        let mut changed = card.pdf.clone();
        changed[cut] ^= 0x55;
        if let Ok(enclosed) = read(&changed) {
            assert_eq!(enclosed.record.id, "CUR-MIX");
        }
    }
}

#[test]
fn a_record_of_a_newer_form_and_one_that_grows_without_end_are_refused() {
    let card = one("CUR-MIX");
    let model = super::demo();
    let draft = super::documents(&model).into_iter().next().expect("there are documents");
    let with = |bytes: Vec<u8>| {
        let files = vec![Attachment { bytes, ..card.files[0].clone() }];
        super::typesetter().pdf(Job { attached: &files, ..job(&draft) }).expect("it exports").pdf
    };
    let newer = with(b"{\"format\": 3}".to_vec());
    assert!(refusal(&newer).contains("form 3"), "{}", refusal(&newer));
    let endless = with(vec![b' '; 65 << 20]);
    assert!(endless.len() < 1 << 20, "{} bytes", endless.len());
    assert!(refusal(&endless).starts_with("damaged"), "{}", refusal(&endless));
}

#[test]
fn many_names_of_one_stream_do_not_fill_the_memory() {
    let mut pdf = b"%PDF-1.4\n1 0 obj<</Type/Catalog/Pages 2 0 R>>endobj\n\
        2 0 obj<</Type/Pages/Kids[3 0 R]/Count 1>>endobj\n\
        3 0 obj<</Type/Page/Parent 2 0 R/MediaBox[0 0 9 9]>>endobj\n"
        .to_vec();
    let length = 1 << 20;
    pdf.extend(format!("4 0 obj<</Length {length}>>stream\n").bytes());
    pdf.extend(vec![b' '; length]);
    pdf.extend(b"\nendstream endobj\n");
    for number in 5..105 {
        let file = format!("{number} 0 obj<</UF(specs/{number}.toml)/EF<</F 4 0 R>>>>endobj\n");
        pdf.extend(file.bytes());
    }
    pdf.extend(b"trailer<</Root 1 0 R/Size 105>>\n%%EOF");
    assert!(refusal(&pdf).starts_with("damaged"), "{}", refusal(&pdf));
}

/// PDFs as earlier versions issued them; every later version must read them and say what it
/// computes. A change of a figure that is meant belongs into the line of its file here.
#[test]
fn papers_of_earlier_versions_are_still_verified() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/pages/issued");
    let kept = [("0.1.0-card.pdf", "CABIN"), ("0.1.0-sheet.pdf", "SENSORS.V1")];
    for (file, id) in kept {
        let bytes = std::fs::read(folder.join(file)).expect("it is kept");
        let enclosed = read(&bytes).expect("it carries its figures");
        assert_eq!(enclosed.record.id, id);
        let comparison = compare(&enclosed).expect("its specs are still clean");
        assert!(comparison.figures.is_empty(), "{file}: {:?}", comparison.figures);
    }
}
