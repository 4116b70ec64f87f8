//! A year as a table, for its picture.

use super::line::{Line, Said};
use super::table::{YearKind, YearRow, YearSpan, YearTable};
use super::year::Told;
use crate::needs::season::Window;
use crate::planning::year::{Choice, MonthAhead};
use chrono::{Days, Months, NaiveDate};

/// More crops than this are too small to read on a phone.
const CROPS: usize = 14;

/// The crops told first, the net, the feeds, the rains, and the waterings of the bed that stands for all.
pub fn table(told: &Told<'_>) -> Option<YearTable> {
    let months = &told.ahead.months;
    let first = months.first()?.first;
    let end = first.checked_add_months(Months::new(12))?.checked_sub_days(Days::new(1))?;
    let mut rows: Vec<YearRow> =
        told.ahead.choices.iter().take(CROPS).map(|choice| crop(choice, told.asked.today, end)).collect();
    let today = told.asked.today;
    let nets = spells(months, today, end, |month| month.net_up, |month| month.net_down);
    let feeds = spells(months, today, end, |month| month.feed_halved, |month| month.feed_full);
    let rains = months.iter().filter(|month| month.drains).filter_map(|month| {
        let last = month.first.checked_add_months(Months::new(1))?.checked_sub_days(Days::new(1))?;
        Some((month.first.max(today), last.min(end)))
    });
    for (kind, all) in [(YearKind::Net, nets), (YearKind::FeedLess, feeds), (YearKind::Rains, rains.collect())] {
        if !all.is_empty() {
            let spans = all.into_iter().map(|(from, until)| YearSpan { from, until, kind }).collect();
            let name = Line::new("draw-year-kind").with("kind", Said::Key(kind.word()));
            rows.push(YearRow { name: Said::Line(Box::new(name)), spans });
        }
    }
    let any = months.iter().any(|month| month.waterings.is_some());
    let waterings = if any { months.iter().map(|month| month.waterings).collect() } else { Vec::new() };
    Some(YearTable { told: told.head.clone(), first, today, rows, waterings })
}

fn crop(choice: &Choice<'_>, today: NaiveDate, end: NaiveDate) -> YearRow {
    let span = |from: NaiveDate, until: NaiveDate| YearSpan { from, until, kind: YearKind::GoesIn };
    let spans = if choice.seasons.whole_year {
        vec![span(today, end)]
    } else {
        let of = |window: &Window| {
            let (from, until) = (window.from.value().max(today), window.until.value().min(end));
            (from <= until).then(|| span(from, until))
        };
        choice.seasons.windows.iter().filter_map(of).collect()
    };
    YearRow { name: Said::Crop(choice.crop.id.clone()), spans }
}

/// From each day on which something begins to the next on which it ends, or to the year's end; what ends first was on before.
fn spells(
    months: &[MonthAhead],
    today: NaiveDate,
    end: NaiveDate,
    begins: impl Fn(&MonthAhead) -> Option<NaiveDate>,
    ends: impl Fn(&MonthAhead) -> Option<NaiveDate>,
) -> Vec<(NaiveDate, NaiveDate)> {
    let mut turns: Vec<(NaiveDate, bool)> = Vec::new();
    turns.extend(months.iter().filter_map(|month| begins(month).map(|day| (day, true))));
    turns.extend(months.iter().filter_map(|month| ends(month).map(|day| (day, false))));
    turns.sort();
    let mut all = Vec::new();
    let mut since = turns.first().filter(|(_, on)| !on).map(|_| today);
    for (day, on) in turns {
        match (on, since) {
            (true, None) => since = Some(day),
            (false, Some(from)) => {
                all.push((from, day));
                since = None;
            }
            _ => {}
        }
    }
    all.extend(since.map(|from| (from, end)));
    all
}
