//! Water asked for another time of the year, or in vessels.

use super::answer::Answer;
use super::facts::Facts;
use super::line::{Line, Said};
use super::subject::Subject;
use super::water_bed::BedWater;
use crate::knowledge::Aspect;
use crate::quantity::{Estimate, Written};
use crate::understanding::Reading;
use chrono::{Datelike, NaiveDate, NaiveTime};

/// The day whose week is asked for, where it lies in another time of the year than today: the middle of the month named,
/// or the middle month of the season. A season is spoken of a month before and after its middle too (judgement).
pub fn other_time(reading: &Reading, facts: &Facts<'_>) -> Option<NaiveDate> {
    const MIDDLE: u32 = 15;
    let today = facts.today();
    let of_now = [Aspect::Away, Aspect::Without, Aspect::Now, Aspect::Salt];
    if !reading.days.is_empty() || reading.did.is_some() || reading.aspects.iter().any(|aspect| of_now.contains(aspect))
    {
        return None;
    }
    let apart = |month: u32| {
        let apart = month.abs_diff(today.month());
        apart.min(12_u32.saturating_sub(apart))
    };
    // A month by its name, else a season.
    let near = u32::from(!reading.season.is_some_and(|month| reading.months.contains(&month)));
    let month = reading.season.filter(|month| apart(*month) > near)?;
    let year = today.year() + i32::from(month < today.month());
    NaiveDate::from_ymd_opt(year, month, MIDDLE)
}

/// The same bed in the morning of that day.
pub fn on_day<'a>(subject: Subject<'a>, day: NaiveDate) -> Subject<'a> {
    const MORNING_H: u32 = 8;
    let morning = NaiveTime::from_hms_opt(MORNING_H, 0, 0).unwrap_or_default();
    let now = day.and_time(morning).and_local_timezone(*subject.now.offset()).single().unwrap_or(subject.now);
    Subject { now, ..subject }
}

/// What is on record of now says nothing of that day.
pub fn without_record(mut bed: BedWater<'_>) -> BedWater<'_> {
    bed.last = None;
    bed.salts = None;
    bed
}

/// Of which days the figures are.
pub fn told(day: NaiveDate) -> Line {
    Line::new("water-of-time").with("day", Said::SeasonDay(day))
}

/// Figures and phrases that would be taken for this week's.
pub fn of_other_days(answer: &mut Answer) {
    answer.figures.retain(|figure| !matches!(figure.name.as_str(), "litres_this_week" | "days_until_dry"));
    let wet = |(name, value): &(&'static str, Said)| *name == "air" && matches!(value, Said::Key("wet"));
    for line in answer.lines.iter_mut().filter(|line| line.phrase == "water-reason") {
        for value in line.values.iter_mut().filter(|value| wet(value)) {
            value.1 = Said::Key("wet-usual");
        }
    }
}

/// One watering in the vessels that were asked for: counted where it is known what one holds, else how to find out.
pub fn in_vessels(bed: &BedWater<'_>, reading: &Reading) -> Option<Line> {
    let vessels = reading.vessels.as_ref().filter(|vessels| vessels.wanted)?;
    let turn = bed.each_turn()?;
    let can = || bed.subject.can.filter(|_| is_can(&vessels.word));
    let holds = vessels.holds.and_then(Written::volume).or_else(can);
    let word = Said::Quoted(vessels.word.clone());
    Some(match holds.filter(|holds| holds.as_litres() > 0.0) {
        Some(holds) => {
            let count: Estimate<f64> = turn.map(|litres| litres / holds);
            Line::new("water-in-vessels").with("count", Said::Span(count, 1)).with("word", word)
        }
        None => Line::new("water-vessel-unknown").with("word", word),
    })
}

/// A can, whose size a site may have on record.
pub fn is_can(word: &str) -> bool {
    matches!(word.to_lowercase().as_str(), "can" | "cans" | "कैन")
}

/// "Six 12 inch pots": the day's water of all of them, where so many of one size were described.
pub fn of_all(bed: &BedWater<'_>, reading: &Reading) -> Option<Line> {
    let count = reading.beds_told.filter(|count| *count > 1)?;
    if bed.subject.own.is_some() || bed.subject.usual || !reading.groups.is_empty() || bed.week.rhythm <= 0.0 {
        return None;
    }
    let day = bed.week.litres.map(|litres| litres * f64::from(count) / 7.0);
    let line = Line::new("water-of-all").with("count", Said::Count(i64::from(count)));
    Some(line.with("day", Said::Volume(day)))
}
