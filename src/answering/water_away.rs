//! "We are away from then to then", "how long without water?"

use super::answer::Answer;
use super::facts::Facts;
use super::figure::Figure;
use super::line::{Line, Said};
use super::water::{TOLD_ONE_BY_ONE, rhythm_key};
use super::water_bed::BedWater;
use crate::garden::BedKind;
use crate::knowledge::Aspect;
use crate::needs::dry_down::Lasts;
use crate::quantity::Fraction;
use crate::understanding::Reading;
use chrono::{Days, NaiveDate};

/// The hour of the last watering before one goes.
const LEAVING_H: f64 = 7.0;
/// What a heavy shade net cuts (common practice: 50 %).
const HEAVY_NET: Fraction = Fraction::of_one(0.5);

/// The days away: first to last.
struct Away {
    from: NaiveDate,
    /// None where no length was said.
    until: Option<NaiveDate>,
}

/// How long each bed lasts, which is short first, what buys days, and who has to come.
pub fn answered(answer: &mut Answer, beds: &[BedWater<'_>], reading: &Reading, facts: &Facts<'_>) {
    let away = away(reading, beds.first().map_or(facts.today(), |bed| bed.subject.today()));
    let mut unknown = Vec::new();
    let mut lasts: Vec<(&BedWater<'_>, Lasts)> = Vec::new();
    for bed in beds {
        match bed.left_from((away.from, LEAVING_H), None, facts) {
            Some(down) => lasts.push((bed, down.until_dry)),
            None => unknown.push(bed.subject.called()),
        }
    }
    for (bed, lasts) in &lasts {
        let own = bed.subject.own.as_ref().filter(|_| beds.len() > 1);
        if let Some(days) = lasts.known() {
            answer.figures.push(Figure::number("days_until_dry", days, "day").of_bed(own));
        }
    }
    let days = |lasts: &Lasts| days(lasts, away.from);
    lasts.sort_by(|(_, a), (_, b)| a.about().total_cmp(&b.about()));
    let Some((first, shortest)) = lasts.first() else {
        answer.lines.push(Line::new("water-away-unknown"));
        return;
    };
    let gone = away.until.map(|until| (until - away.from).num_days() + 1);
    let enough = gone.is_some_and(|gone| shortest.sure() >= gone as f64);
    answer.lines.push(
        dates(&away, reading)
            .with("bed", first.subject.called())
            .with("dry", days(shortest))
            .with("which", Said::Key(if lasts.len() > 1 { "first" } else { "only" })),
    );
    if lasts.len() > 1 {
        let others = lasts.iter().skip(1).map(|(bed, dry)| {
            Said::Line(Box::new(Line::new("water-away-other").with("bed", bed.subject.called()).with("dry", days(dry))))
        });
        answer.lines.push(Line::new("water-away-others").with("beds", Said::List(others.collect())));
    }
    answer.lines.extend(super::water::not_summed(unknown));
    if enough {
        answer.lines.push(Line::new("water-away-enough"));
        return;
    }
    if let Some(sheltered) = first.left_from((away.from, LEAVING_H), Some(HEAVY_NET), facts) {
        // Told only where it buys something to speak of.
        if sheltered.until_dry.about() >= shortest.about() + 0.2 {
            answer.lines.push(
                Line::new("water-away-shelter")
                    .with("bed", first.subject.called())
                    .with("net", Said::Percent(HEAVY_NET.as_percent()))
                    .with("dry", days(&sheltered.until_dry)),
            );
        }
    }
    let small = |bed: &BedWater<'_>| matches!(bed.subject.bed.kind, BedKind::Pot | BedKind::Basket | BedKind::Bag);
    if beds.iter().any(small) {
        answer.lines.push(Line::new("water-away-saucers"));
    }
    let turns = lasts.iter().take(TOLD_ONE_BY_ONE).filter_map(|(bed, _)| {
        let line = Line::new("water-away-turn")
            .with("bed", bed.subject.called())
            .with("rhythm", Said::Key(rhythm_key(bed.week.rhythm)))
            .with("turn", Said::About(bed.each_turn()?));
        Some(Said::Line(Box::new(line)))
    });
    let turns: Vec<Said> = turns.collect();
    if !turns.is_empty() {
        answer.lines.push(Line::new("water-away-person").with("turns", Said::List(turns)));
    }
    answer.cautions.push(Line::new("caution-away"));
    let article = facts.articles.iter().map(|found| &found.what).find(|id| *id == "holidays-away");
    answer.articles.extend(article.cloned());
}

fn dates(away: &Away, reading: &Reading) -> Line {
    match away.until {
        Some(until) if reading.aspects.contains(&Aspect::Away) => Line::new("water-away")
            .with("from", Said::Day(away.from))
            .with("until", Said::Day(until))
            .with("days", Said::Count((until - away.from).num_days() + 1)),
        _ => Line::new("water-without"),
    }
}

/// Days as a person counts them, rounded outward. An open end is told by the day before which nothing runs short.
fn days(lasts: &Lasts, from: NaiveDate) -> Said {
    let (how, low, high) = match lasts {
        Lasts::For(is) => {
            let step = if is.high() < 4.0 { 0.5 } else { 1.0 };
            let (low, high) = ((is.low() / step).floor() * step, (is.high() / step).ceil() * step);
            match low > 0.0 {
                _ if high <= 1.0 => ("part", low, high),
                true => ("days", low, high),
                false => ("up-to", high, high),
            }
        }
        Lasts::AtLeast(days) => {
            let step = if *days < 4.0 { 0.5 } else { 1.0 };
            let days = (days / step).floor() * step;
            ("open", days, days)
        }
    };
    let both = || Line::new("span").with("low", Said::Hours(low)).with("high", Said::Hours(high));
    let n = if low < high { Said::Line(Box::new(both())) } else { Said::Hours(low) };
    let whole = (lasts.sure() + LEAVING_H / 24.0).floor().max(0.0) as u64;
    let not_before = from.checked_add_days(Days::new(whole)).unwrap_or(from);
    let line = Line::new("water-days").with("how", Said::Key(how)).with("n", n).with("day", Said::Day(not_before));
    Said::Line(Box::new(line))
}

fn away(reading: &Reading, today: NaiveDate) -> Away {
    let span = reading.days.first().copied().filter(|(_, last)| *last >= today);
    let second = reading.days.get(1).map(|(day, _)| *day);
    let from = span.map_or(today, |(first, _)| first.max(today));
    let length = reading.for_days.filter(|days| (1.0..=200.0).contains(days)).map(|days| days.round() as u64);
    let until = match span {
        Some((_, last)) if last > from => Some(last),
        _ => second.filter(|day| *day > from).or_else(|| from.checked_add_days(Days::new(length?.saturating_sub(1)))),
    };
    Away { from, until }
}
