//! The terminal: a line typed, a reply printed.

use crate::wording::Reply;

/// How a reply is shown in a terminal.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Looks {
    /// Colours, only where someone looks at them.
    pub colours: bool,
}

const STRONG: &str = "\u{1b}[1m";
const FAINT: &str = "\u{1b}[2m";
const PLAIN: &str = "\u{1b}[0m";

impl Looks {
    /// A reply as text: the first line stands out, the choices follow below.
    #[must_use]
    pub fn reply(self, reply: &Reply) -> String {
        let (first, rest) = reply.text.split_once('\n').unwrap_or((reply.text.as_str(), ""));
        let mut shown = self.paint(STRONG, first);
        if !rest.is_empty() {
            shown.push('\n');
            shown.push_str(rest);
        }
        for choice in &reply.choices {
            shown.push('\n');
            shown.push_str(&self.paint(FAINT, &format!("  - {choice}")));
        }
        shown
    }

    /// What a person typed, shown back.
    #[must_use]
    pub fn typed(self, line: &str) -> String {
        self.paint(FAINT, &format!("> {line}"))
    }

    fn paint(self, colour: &str, text: &str) -> String {
        if self.colours { format!("{colour}{text}{PLAIN}") } else { text.to_owned() }
    }
}
