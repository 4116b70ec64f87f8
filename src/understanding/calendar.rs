//! Days of the calendar written in numbers: `8/4`, `8.4.26`, `2026-05-04`.

use crate::script::Text;

/// A day of the calendar as written; the year may be left out.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) struct Written {
    pub day: u32,
    pub month: u32,
    pub year: Option<i32>,
}

/// A day written in numbers there, and how many tokens it takes. Day before month; `8/15` is none.
pub(super) fn numeric_at(text: &Text, at: usize) -> Option<(Written, usize)> {
    let first = whole_at(text, at)?;
    let mark = text.normal(at + 1);
    if !matches!(mark, "/" | "-" | ".")
        || !close(text, at, 2)
        || at > 0 && close(text, at - 1, 1) && joined(text, at - 1)
    {
        return None;
    }
    let second = whole_at(text, at + 2)?;
    let third = (text.normal(at + 3) == mark && close(text, at + 2, 2)).then(|| whole_at(text, at + 4)).flatten();
    let written = |day, month, year| Written { day, month, year };
    match third {
        Some(third) if first > 1900 => Some((checked(written(third, second, year(first)))?, 5)),
        Some(third) => Some((checked(written(first, second, Some(year(third)?)))?, 5)),
        None if mark == "/" && text.normal(at + 3) != "/" && first <= 31 => {
            Some((checked(written(first, second, None))?, 3))
        }
        None => None,
    }
}

/// Whether the token there is a mark that joins numbers.
fn joined(text: &Text, at: usize) -> bool {
    matches!(text.normal(at), "/" | "-" | "." | ":")
        && at > 0
        && whole_at(text, at - 1).is_some()
        && close(text, at - 1, 1)
}

fn checked(written: Written) -> Option<Written> {
    ((1..=31).contains(&written.day) && (1..=12).contains(&written.month)).then_some(written)
}

/// A year of two or four digits.
pub(super) fn year(number: u32) -> Option<i32> {
    match number {
        0..=99 => i32::try_from(number).ok().map(|short| 2000 + short),
        1900..=2100 => i32::try_from(number).ok(),
        _ => None,
    }
}

/// The whole number written in digits there.
pub(super) fn whole_at(text: &Text, at: usize) -> Option<u32> {
    let token = text.tokens.get(at)?;
    token.number?;
    token.normal.parse().ok()
}

/// Whether so many tokens after this one follow without a space.
pub(super) fn close(text: &Text, at: usize, following: usize) -> bool {
    text.tokens
        .get(at..at + following + 1)
        .is_some_and(|tokens| tokens.iter().zip(tokens.iter().skip(1)).all(|(before, after)| before.touches(after)))
}
