//! Sizes asked for on the command line, and what would fit where something does not.

use crate::document::{self, Context, Listed, Trial};
use crate::model::offered;
use crate::quantity::Size;
use crate::typeset::{Failure, Job, Typesetter};
use crate::words::Message;

/// Steps that are tried in place of one that is too narrow, in degrees of the edition's scale.
const STEPS: [f64; 4] = [2.0, 5.0, 10.0, 20.0];

/// Refuses a size that one of the documents is not laid out for.
pub(super) fn refuse<'a>(
    context: Context<'_>,
    mut listed: impl Iterator<Item = &'a Listed>,
) -> Result<(), Message> {
    let Some(size) = context.size else { return Ok(()) };
    let unfit = listed.find(|listed| !offered::sizes(listed.paperwork.kind()).any(|offered| offered == size));
    let Some(unfit) = unfit else { return Ok(()) };
    let kind = unfit.paperwork.kind();
    let sizes: Vec<&str> = offered::sizes(kind).map(Size::name).collect();
    let message = Message::new("run-size-not-offered").with_word("kind", kind.word());
    Err(message.with("size", size).with("sizes", sizes.join(", ")))
}

/// Why a document was not made; where it does not fit, with what would, tried out.
pub(super) fn reason(
    context: Context<'_>,
    typesetter: &Typesetter,
    listed: &Listed,
    failure: &Failure,
) -> String {
    let words = context.words;
    let said = failure.said(words);
    if !failure.crowded {
        return said;
    }
    let fits = |context: Context<'_>| {
        let document = document::compose(context, listed)?;
        typesetter.page_count(Job::of(&document, context.date)).ok()
    };
    let tried = |size, trial| fits(Context { size: Some(size), trial, ..context }).is_some();
    let size = context.size_of(listed);
    let mut all: Vec<String> = Vec::new();
    let (width, height) = size.millimetres();
    for other in offered::sizes(listed.paperwork.kind()).filter(|other| *other != size) {
        let (w, h) = other.millimetres();
        if w * h > width * height * 0.99 && tried(other, context.trial) {
            all.push(other.name().to_owned());
        }
    }
    if listed.paperwork == document::Paperwork::StripCard {
        let two = Trial { sides: Some(2), ..context.trial };
        if tried(size, two) {
            all.push(words.word("run-fits-two-sides"));
        }
        let mut steps = STEPS.into_iter().map(|degrees| context.units.step_of(degrees));
        if let Some(step) = steps.find(|step| tried(size, Trial { step: Some(*step), ..context.trial })) {
            all.push(words.say(&Message::new("run-fits-step").with("step", step)));
        }
    }
    let id = if all.is_empty() { "run-fits-nothing" } else { "run-fits" };
    words.say(&Message::new(id).with("reason", said).with("fits", all.join(", ")))
}
