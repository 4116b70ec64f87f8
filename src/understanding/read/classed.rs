//! A message as a way of asking: names, sizes and days replaced by their class.

use super::{Asker, Found, Named, Reader};
use crate::script::Text;
use chrono::NaiveDate;

/// The text with `{crop}`, `{bed}`, `{size}` … in the places of names; what names a person or a site is left out.
#[must_use]
pub fn classed(text: &str, reader: &Reader<'_>, asker: &Asker, today: NaiveDate) -> String {
    let text = Text::read(text);
    let found = Found::of(&text, reader, asker, today);
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
        let piece = match class {
            Some((name, _)) if last == Some(name) || name.is_empty() => {
                last = Some(name);
                continue;
            }
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
