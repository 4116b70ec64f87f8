//! Where a text may be parted.

use crate::script::{Text, Token};

/// Byte places, and what stands there.
#[derive(Debug, Clone, Copy)]
pub(super) struct Border {
    /// Where what parts them begins, ends the first part, begins the second.
    pub mark: usize,
    pub left: usize,
    pub right: usize,
    /// A joining word stands there or right behind.
    pub joins: bool,
    /// A sentence ends there.
    pub stops: bool,
}

pub(super) fn is_joining(text: &Text, at: usize) -> bool {
    const JOINING: [&str; 11] = ["and", "or", "aur", "ya", "और", "या", "also", "plus", "n", "&", "+"];
    JOINING.contains(&text.normal(at))
}

/// Each comma, stop, dash between thoughts or joining word.
pub(super) fn borders(text: &Text) -> Vec<Border> {
    let joins = |at: usize| is_joining(text, at);
    let marks = |at: usize| matches!(text.normal(at), "," | "." | "?" | ";" | "।" | "!");
    let border = |(at, token): (usize, &Token)| {
        if joins(at) && joins_two_ends(text, at) {
            return None;
        }
        // A question mark belongs to the part it ends.
        let left = if joins(at) { token.span.start } else { token.span.end };
        let is_one = marks(at) || joins(at) || is_spaced_dash(text, token);
        let stops = matches!(text.normal(at), "." | "?" | ";" | "।" | "!");
        is_one.then(|| Border {
            mark: token.span.start,
            left,
            right: token.span.end,
            joins: joins(at) || joins(at + 1),
            stops,
        })
    };
    text.tokens.iter().enumerate().filter_map(border).collect()
}

/// "Between neem and picking", "neem aur tudai ke beech": one span from end to end.
fn joins_two_ends(text: &Text, at: usize) -> bool {
    /// An end has at most so many tokens.
    const REACH: usize = 4;
    let stops = |place: &usize| !matches!(text.normal(*place), "," | "." | "?" | ";" | "।" | "!");
    let between = |word: &str| matches!(word, "beech" | "bich" | "beich" | "बीच");
    let before = (at.saturating_sub(REACH)..at).rev().take_while(stops).any(|place| text.normal(place) == "between");
    let after = (at + 1..=at + REACH).take_while(stops).any(|place| between(text.normal(place)));
    before || after
}

/// "… - …" between two thoughts; "4-5" and "east-box" hold none.
fn is_spaced_dash(text: &Text, token: &Token) -> bool {
    let spaced =
        |byte: Option<usize>| byte.and_then(|at| text.original.as_bytes().get(at)).is_some_and(u8::is_ascii_whitespace);
    matches!(token.normal.as_str(), "-" | "–" | "—")
        && spaced(token.span.start.checked_sub(1))
        && spaced(Some(token.span.end))
}

/// Where a question begins without a mark before it: "neem done today next when", "kal khaad di agli kab".
pub(super) fn questions_begin(text: &Text) -> Vec<Border> {
    const ASKS: [&str; 26] = [
        "how",
        "hw",
        "when",
        "whn",
        "wen",
        "what",
        "which",
        "next",
        "nxt",
        "should",
        "shall",
        "do",
        "does",
        "can",
        "kab",
        "kitna",
        "kitni",
        "kitne",
        "kaise",
        "agla",
        "agli",
        "कब",
        "कितना",
        "कितनी",
        "कितने",
        "अगली",
    ];
    let asks = |at: usize| ASKS.contains(&text.normal(at));
    let first = |at: &usize| *at > 0 && asks(*at) && !asks(at - 1);
    let border = |at: usize| {
        let span = &text.tokens.get(at)?.span;
        Some(Border { mark: span.start, left: span.start, right: span.start, joins: false, stops: false })
    };
    (0..text.tokens.len()).filter(first).filter_map(border).collect()
}
