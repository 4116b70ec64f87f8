//! Phrases and what they mean. A table in `tests/reading/` gives a meaning at the left margin, then, set in,
//! every phrase that carries it, in any of the three ways of writing; under `not this:` stand near misses,
//! which must mean something else. Lines with `#` are remarks.

use chrono::NaiveDate;
use proptest::prelude::*;
use rooftend::knowledge::Words;
use rooftend::quantity::Written;
use rooftend::script::Text;
use rooftend::understanding::{dates, quantities};
use std::fmt::Write as _;

fn words() -> Words {
    Words::parse(include_str!("../knowledge/words/units.toml"), include_str!("../knowledge/words/days.toml")).unwrap()
}

/// Checks every phrase of a table, and tells all that read otherwise at once.
#[track_caller]
fn check(table: &str, read: impl Fn(&str) -> String) {
    let (mut meaning, mut wanted, mut checked, mut wrong) = ("", true, 0, String::new());
    for line in table.lines().filter(|line| !line.trim().is_empty() && !line.starts_with('#')) {
        if let Some(phrase) = line.strip_prefix("  ") {
            let got = read(phrase);
            checked += 1;
            if (got == meaning) != wanted {
                let not = if wanted { "" } else { "not " };
                writeln!(wrong, "{phrase}\n    read: {got}\n    wanted: {not}{meaning}").unwrap();
            }
        } else if line == "not this:" {
            wanted = false;
        } else {
            (meaning, wanted) = (line, true);
        }
    }
    assert!(checked > 0, "an empty table");
    assert!(wrong.is_empty(), "\n{wrong}");
}

#[track_caller]
fn check_days(table: &str, past: bool) {
    let words = words();
    // A Wednesday.
    let today = NaiveDate::from_ymd_opt(2026, 9, 9).unwrap();
    check(table, |phrase| {
        let days = dates::read(&Text::read(phrase), &words, today, past);
        let shown = days.iter().map(|day| {
            if day.first == day.last { day.first.to_string() } else { format!("{}..{}", day.first, day.last) }
        });
        let shown: Vec<String> = shown.collect();
        if shown.is_empty() { "none".into() } else { shown.join(", ") }
    });
}

#[test]
fn days_where_a_job_done_is_told() {
    check_days(include_str!("reading/days-done.txt"), true);
}

#[test]
fn days_where_something_is_asked() {
    check_days(include_str!("reading/days-asked.txt"), false);
}

#[test]
fn quantities_said() {
    let words = words();
    check(include_str!("reading/quantities.txt"), |phrase| {
        let found = quantities::read(&Text::read(phrase), &words);
        let shown: Vec<String> = found.said.iter().map(|said| said.written.to_string()).collect();
        if shown.is_empty() { "none".into() } else { shown.join(", ") }
    });
}

#[test]
fn sizes() {
    let words = words();
    check(include_str!("reading/sizes.txt"), |phrase| {
        let found = quantities::read(&Text::read(phrase), &words);
        let shown: Vec<String> = found
            .dimensions
            .iter()
            .map(|size| {
                let part = |name: &str, measure: Option<Written>| measure.map(|measure| format!("{name} {measure}"));
                let parts = [
                    part("length", size.length),
                    part("width", size.width),
                    part("depth", size.depth),
                    part("diameter", size.diameter),
                ];
                parts.into_iter().flatten().collect::<Vec<_>>().join(" ")
            })
            .collect();
        if shown.is_empty() { "none".into() } else { shown.join(", ") }
    });
}

#[test]
fn counts_times_and_heat() {
    let words = words();
    check(include_str!("reading/counts.txt"), |phrase| {
        let text = Text::read(phrase);
        let found = quantities::read(&text, &words);
        let mut shown: Vec<String> = Vec::new();
        for count in &found.counts {
            let of = count.of.map_or("", |token| text.normal(token));
            shown.push(format!("{} {of}", count.value).trim().to_owned());
        }
        shown.extend(found.durations.iter().map(|time| format!("{} {:?}", time.value, time.unit)));
        shown.extend(found.temperatures.iter().map(|heat| format!("{:.1} °C", heat.celsius)));
        shown.extend(found.bare.iter().map(|size| format!("{:?} of what", size.values)));
        if shown.is_empty() { "none".into() } else { shown.join(", ") }
    });
}

#[test]
fn languages() {
    check(include_str!("reading/languages.txt"), |phrase| Text::read(phrase).language.tag().to_owned());
}

/// A text of any script, and one made of the signs and words that reading looks at.
fn any_text() -> impl Strategy<Value = String> {
    let pieces = [
        "1",
        "२",
        "½",
        "/",
        "-",
        ".",
        "x",
        "ft",
        "'",
        "\"",
        " ",
        "in",
        "kal",
        "कल",
        "may",
        "20",
        "31",
        "2026",
        "9999999999",
        "sadhe",
        "डेढ़",
        "dozen",
        "half",
        "a",
        "and",
        "weeks",
        "ago",
        "baad",
        "for",
        "से",
        "friday",
        "ml",
        "per",
        "litre",
        "°",
        "c",
        "th",
        "on",
        "🌱",
        "pot",
        "deep",
        "to",
        "\u{0}",
        "\u{200d}",
        "\u{93c}",
    ];
    let some = || prop::collection::vec(prop::sample::select(pieces.to_vec()), 0..120);
    prop_oneof!["\\PC{0,200}", some().prop_map(|pieces| pieces.concat()), some().prop_map(|pieces| pieces.join(" "))]
}

#[test]
fn any_text_is_read() {
    let words = words();
    let today = NaiveDate::from_ymd_opt(2024, 2, 29).unwrap();
    proptest!(|(text in any_text(), past: bool)| {
        let read = Text::read(&text);
        let found = quantities::read(&read, &words);
        for said in &found.said {
            prop_assert!(said.written.value.is_finite() && said.span.end <= read.tokens.len());
        }
        prop_assert!(found.said.windows(2).all(|pair| pair[0].span.end <= pair[1].span.start));
        for day in dates::read(&read, &words, today, past) {
            prop_assert!(day.first <= day.last && day.span.end <= read.tokens.len());
        }
    });
}

#[test]
fn a_long_text_is_read() {
    let words = words();
    for piece in ["4 x ", "9\" ", "kal ", "1/2 ", "फुट ", "sadhe ", "20 may ", "hundred ", "🌱"] {
        let text = Text::read(&piece.repeat(100_000 / piece.len()));
        assert!(text.cut, "{piece}");
        let _ = quantities::read(&text, &words);
        let _ = dates::read(&text, &words, NaiveDate::MAX, true);
        let _ = dates::read(&text, &words, NaiveDate::MIN, false);
    }
}
