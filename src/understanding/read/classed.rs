//! A message as a way of asking: names, sizes and days replaced by their class.

use super::{Asker, Found, Named, Reader};
use crate::knowledge::{as_written, class_word};
use crate::script::{Text, index_word};
use chrono::NaiveDate;
use std::ops::Range;

/// The text with `{crop}`, `{bed}`, `{size}` … in the places of names; what names a person or a site is left out.
#[must_use]
pub fn classed(text: &str, reader: &Reader<'_>, asker: &Asker, today: NaiveDate) -> String {
    with_classes(text, reader, asker, today, false)
}

/// The same as it is learned from (`knowledge/heard/`): beds, stuff and troubles keep their words behind their class.
#[must_use]
pub fn classed_beside(text: &str, reader: &Reader<'_>, asker: &Asker, today: NaiveDate) -> String {
    with_classes(text, reader, asker, today, true)
}

fn with_classes(text: &str, reader: &Reader<'_>, asker: &Asker, today: NaiveDate, beside: bool) -> String {
    let text = Text::read(text);
    let found = Found::of(&text, reader, asker, today, false);
    let mut class = found.classes(&text);
    for hit in found.names.iter().filter(|hit| matches!(hit.meaning, Named::SomeoneElse | Named::Site(_))) {
        for position in hit.span.clone() {
            if let Some(slot) = class.get_mut(position) {
                *slot = Some(("", false));
            }
        }
    }
    let (mut said, mut last, mut end) = (String::new(), None, 0);
    for (token, class) in text.tokens.iter().zip(class) {
        let gap = token.span.start > end && !said.is_empty() && !said.ends_with(' ');
        end = token.span.end;
        let goes_on = class.is_some_and(|(name, _)| last == Some(name) || name.is_empty());
        let piece = match class {
            Some((name, true)) if beside && goes_on && !name.is_empty() => token.text.clone(),
            Some((name, _)) if goes_on => {
                last = Some(name);
                continue;
            }
            Some((name, true)) if beside => format!("{{{name}}} {}", token.text),
            Some((name, _)) => format!("{{{name}}}"),
            None => token.text.clone(),
        };
        last = class.map(|(name, _)| name);
        if gap {
            said.push(' ');
        }
        said.push_str(&piece);
    }
    said.trim().to_owned()
}

impl Found {
    /// The class of each token that is part of a name, a size or a day, and whether its words stay beside it.
    fn classes(&self, text: &Text) -> Vec<Option<(&'static str, bool)>> {
        let mut class: Vec<Option<(&'static str, bool)>> = vec![None; text.tokens.len()];
        let mut mark = |span: &Range<usize>, name: &'static str, keep: bool| {
            for position in span.clone() {
                if let Some(slot) = class.get_mut(position).filter(|slot| slot.is_none()) {
                    *slot = Some((name, keep));
                }
            }
        };
        for day in &self.days {
            mark(&day.span, "day", false);
        }
        for said in &self.quantities.said {
            mark(&said.span, "size", false);
        }
        for dimensions in &self.quantities.dimensions {
            mark(&dimensions.span, "size", false);
        }
        for hit in &self.names {
            match hit.meaning {
                Named::SomeoneElse => {}
                Named::Crop(_) => mark(&hit.span, "crop", false),
                Named::OwnBed(_) | Named::BedKind(_) => mark(&hit.span, "bed", true),
                Named::Site(_) => mark(&hit.span, "place", true),
                Named::Material(_) => mark(&hit.span, "material", true),
                Named::Mix(_) => mark(&hit.span, "mix", true),
                Named::Refused(_) | Named::OtherPlant(_) => mark(&hit.span, "crop", false),
                Named::Trouble(_) => mark(&hit.span, "trouble", true),
                Named::Place(_) => mark(&hit.span, "place", true),
            }
        }
        class
    }

    /// The words of the text with its names replaced by their class, and those that stay as they are written. Crops,
    /// sizes and days are replaced; beds, materials and troubles keep their words beside the class, since phrasings
    /// use both.
    pub(super) fn class_form(&self, text: &Text) -> (Vec<String>, Vec<String>) {
        let class = self.classes(text);
        let (mut words, mut written) = (Vec::new(), Vec::new());
        let mut last = "";
        for (token, class) in text.tokens.iter().zip(&class) {
            let (name, keep) = class.unwrap_or(("", true));
            if !name.is_empty() && name != last {
                words.push(class_word(name));
            }
            if keep {
                words.extend(index_word(token, text.language));
                written.push(as_written(token));
            }
            last = name;
        }
        (words, written)
    }
}
