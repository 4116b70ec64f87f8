//! "Now, or not yet?"

use super::line::{Line, Said};
use super::water_bed::{BedWater, LastWatering};
use crate::quantity::{Estimate, Volume};
use chrono::Days;

/// The hours of the two turns (common practice: early and late).
const MORNING_H: f64 = 7.0;
const EVENING_H: f64 = 18.0;
/// Between these water is lost to the sun and may scald.
const MIDDAY_H: (f64, f64) = (11.0, 16.0);

/// Within so many hours nobody waters a bed twice (judgement).
const JUST_WATERED_H: f64 = 1.0;

/// Whether to water now, and what is known of the last time.
pub fn lines(bed: &BedWater<'_>) -> Vec<Line> {
    let called = bed.subject.called();
    let Some(last) = &bed.last else {
        return vec![Line::new("water-now-unknown").with("bed", called)];
    };
    if let Some(rain) = bed.rain_today() {
        return vec![
            Line::new("water-now-rain").with("bed", called).with("rain", Said::Depth(Estimate::exactly(rain))),
        ];
    }
    let (key, days_ahead) = if rain_will_do(bed, last) { ("evening", 0) } else { turn(bed.hour, last) };
    let line = Line::new("water-now")
        .with("when", Said::Key(key))
        .with("bed", called)
        .with("pour", Said::About(Estimate::exactly(pour(bed, last))))
        .with("day", Said::Day(bed.today.date.checked_add_days(Days::new(days_ahead)).unwrap_or(bed.today.date)));
    let how = match (last.by_rain, last.told) {
        (true, _) => "rain",
        (false, true) => "told",
        (false, false) => "recorded",
    };
    let since = Line::new("water-now-since")
        .with("how", Said::Key(how))
        .with("day", Said::Day(last.on))
        .with("lost", Said::Depth(Estimate::exactly(last.lost)));
    vec![line, since]
}

/// Whether it wants water now, by what is known; where nobody noted the last watering it may.
pub fn wants_water(bed: &BedWater<'_>) -> bool {
    bed.last.as_ref().is_none_or(|last| bed.rain_today().is_none() && turn(bed.hour, last).0 == "now")
}

/// A usual turn, or all that is missing where that is more.
fn pour(bed: &BedWater<'_>, last: &LastWatering) -> Volume {
    bed.each_turn().map_or(last.missing, |turn| turn.value().max(last.missing))
}

/// Rain has filled the bed and hardly anything of it is gone: what is poured now runs through. Its top may look dry an
/// hour before the evening turn.
fn rain_will_do(bed: &BedWater<'_>, last: &LastWatering) -> bool {
    /// Less than this part of a turn is missing (judgement).
    const LITTLE: f64 = 0.25;
    /// It must last for most of the day at least.
    const LASTS_H: f64 = 6.0;
    let missing = last.missing.as_litres();
    let little = bed.each_turn().is_some_and(|turn| missing < LITTLE * turn.value().as_litres());
    let due_in_h = (last.down.until_due.about() - last.ago) * 24.0;
    let evening = bed.hour + due_in_h < 24.0 + MORNING_H;
    last.by_rain && little && due_in_h >= LASTS_H && bed.hour < MIDDAY_H.1 && evening
}

/// The last turn that is not later than the bed can wait, and how many days ahead it lies.
fn turn(hour: f64, last: &LastWatering) -> (&'static str, u64) {
    let due_in_h = (last.down.until_due.about() - last.ago) * 24.0;
    let midday = hour >= MIDDAY_H.0 && hour < MIDDAY_H.1;
    /// Longer overdue than this, waiting for the evening costs more than watering at noon (judgement).
    const CANNOT_WAIT_H: f64 = -3.0;
    let mut best = if midday && due_in_h > CANNOT_WAIT_H { "evening" } else { "now" };
    if hour < MIDDAY_H.0 && hour + due_in_h >= EVENING_H {
        best = "evening";
    }
    // Just watered, it is full: more would run through, however soon it dries.
    if last.ago * 24.0 < JUST_WATERED_H && best == "now" {
        return if hour < MIDDAY_H.1 { ("evening", 0) } else { ("tomorrow", 1) };
    }
    if hour + due_in_h < 24.0 + MORNING_H {
        return (best, 0);
    }
    let ahead = ((hour + due_in_h - MORNING_H) / 24.0).floor().clamp(1.0, 60.0);
    if ahead < 2.0 { ("tomorrow", 1) } else { ("later", ahead as u64) }
}
