//! What a person tells of the weather: "43/29 till Friday, no rain", "it rained 20 mm last night".

use super::{Found, Hit, Told};
use crate::knowledge::Point;
use crate::quantity::Unit;
use crate::script::Text;
use crate::understanding::dates::DayFound;
use crate::understanding::reading::SkyTold;
use crate::understanding::tense::is_supposed;
use chrono::{Days, NaiveDate};
use std::ops::Range;

/// What a roof's day may reach, °C; said of anything else a number is no temperature of the air.
const HOT_C: Range<f64> = 15.0..53.0;
const COOL_C: Range<f64> = -5.0..36.0;
/// By day and by night differ by so much at least, K.
const APART_K: f64 = 3.0;
/// The second of a pair above this can't be a month.
const MONTHS: f64 = 12.0;
/// Rain of one day, mm, beyond which it was misheard.
const MOST_RAIN_MM: f64 = 500.0;
/// Rain that was told without its millimetres, light, plain and hard (judgement: less is poured away by mistake than
/// left out; India's weather service calls 2.5 to 15.5 mm light and up to 64.4 moderate).
const GUESSED_MM: [f64; 3] = [2.0, 5.0, 20.0];
/// "Every day" is the coming week.
const EVERY_DAY: u64 = 6;

const UNTIL_BEFORE: [&str; 6] = ["till", "til", "until", "upto", "thru", "through"];
const UNTIL_AFTER: [&str; 3] = ["tak", "tk", "तक"];
const NIGHT: [&str; 5] = ["night", "nights", "raat", "रात", "रातें"];

impl Found {
    /// What is told of the sky, a span of days each.
    pub(super) fn sky(&self, text: &Text, today: NaiveDate) -> Vec<SkyTold> {
        let has = |point| self.points().any(|told| told == point);
        let rain = self.rain_told(text, today, has);
        let (tmax_c, tmin_c) = self.degrees(text);
        let mut all: Vec<SkyTold> = Vec::new();
        if tmax_c.is_some() || tmin_c.is_some() {
            let (first, last) = self.days_ahead(text, today, has(Point::DayByDay));
            all.push(SkyTold { first, last, tmax_c, tmin_c, rain_mm: None, rain_guessed: false });
        }
        if let Some((millimetres, guessed)) = rain {
            let (first, last) =
                if millimetres > 0.0 { self.day_gone(today) } else { self.dry_days(text, today, has(Point::DayByDay)) };
            let (rain_mm, rain_guessed) = (Some(millimetres), guessed);
            let same = |told: &&mut SkyTold| (told.first, told.last) == (first, last);
            if let Some(told) = all.first_mut().filter(same) {
                *told = SkyTold { rain_mm, rain_guessed, ..told.clone() };
                return all;
            }
            all.push(SkyTold { first, last, tmax_c: None, tmin_c: None, rain_mm, rain_guessed });
        }
        all
    }

    /// Millimetres that fell, and whether they were not said. Whether it will rain is a question.
    fn rain_told(&self, text: &Text, today: NaiveDate, has: impl Fn(Point) -> bool) -> Option<(f64, bool)> {
        if has(Point::NoRain) {
            return Some((0.0, false));
        }
        let said = self.quantities.said.iter().find(|said| said.written.unit == Unit::Millimetre);
        let said = said.map(|said| said.written.value).filter(|mm| (0.0..=MOST_RAIN_MM).contains(mm));
        if let Some(millimetres) = said.filter(|_| has(Point::Rain)) {
            return Some((millimetres, false));
        }
        let [light, plain, hard] = GUESSED_MM;
        let guessed = match (has(Point::RainHard), has(Point::RainLight)) {
            (true, _) => hard,
            (false, true) => light,
            (false, false) => plain,
        };
        // "If it rained tomorrow", "kal barish hui to bhi": supposed, and of no day that is gone.
        let fell = self.told.iter().filter(|hit| hit.meaning == Told::Point(Point::RainFell));
        let of_if = self.told.iter().any(|hit| hit.meaning == Told::Supposed);
        let supposed = of_if || fell.flat_map(|hit| hit.span.clone()).any(|at| is_supposed(text, at));
        let told = !supposed || self.days.iter().any(|day| day.last < today);
        (has(Point::RainFell) && told).then_some((guessed, true))
    }

    /// The day's and the night's temperature: a pair with a stroke, or a number beside a word for reaching.
    fn degrees(&self, text: &Text) -> (Option<f64>, Option<f64>) {
        let number = |at: usize| text.tokens.get(at).and_then(|token| token.number);
        let pair = (1..text.tokens.len()).filter(|at| text.normal(*at) == "/").find_map(|at| {
            let (hot, cool) = (number(at - 1)?, number(at + 1)?);
            let fits = HOT_C.contains(&hot) && COOL_C.contains(&cool) && cool > MONTHS && hot - cool >= APART_K;
            fits.then_some((hot, cool))
        });
        if let Some((hot, cool)) = pair {
            return (Some(hot), Some(cool));
        }
        let reaching = self.told.iter().filter(|hit| hit.meaning == Told::Point(Point::SkyReaches));
        let Some(reached) = reaching.filter_map(|hit| self.beside(text, hit)).next() else { return (None, None) };
        if text.tokens.iter().any(|token| NIGHT.contains(&token.normal.as_str())) {
            return (None, Some(reached).filter(|reached| COOL_C.contains(reached)));
        }
        (Some(reached).filter(|reached| HOT_C.contains(reached)), None)
    }

    /// A number of no unit, or of degrees, within two words of a hit: never one of a question about what a crop stands.
    fn beside(&self, text: &Text, hit: &Hit<Told>) -> Option<f64> {
        const NEAR: usize = 2;
        /// A bare number below this is as often a count.
        const SURELY_DEGREES: f64 = 35.0;
        let from = hit.span.start.saturating_sub(NEAR);
        (from..hit.span.end + NEAR).filter(|at| !hit.span.contains(at)).find_map(|at| {
            let value = text.tokens.get(at)?.number?;
            let degrees = self.quantities.temperatures.iter().any(|said| said.span.contains(&at));
            let bare = self
                .quantities
                .counts
                .iter()
                .any(|count| count.span.contains(&at) && count.of.is_none_or(|of| hit.span.contains(&of)));
            let dated = self.days.iter().any(|day| day.span.contains(&at));
            (degrees || bare && value >= SURELY_DEGREES && !dated).then_some(value)
        })
    }

    /// The days that are meant of what is or is to come: up to a day named, that day, the week, else today.
    fn days_ahead(&self, text: &Text, today: NaiveDate, every_day: bool) -> (NaiveDate, NaiveDate) {
        let week = today.checked_add_days(Days::new(EVERY_DAY)).unwrap_or(today);
        match self.days.iter().find(|day| day.last >= today) {
            Some(day) if is_until(text, day) => (today, day.last),
            Some(day) => (day.first.max(today), day.last),
            None if every_day => (today, week),
            None => (today, today),
        }
    }

    /// The same of days without rain, which may have gone by.
    fn dry_days(&self, text: &Text, today: NaiveDate, every_day: bool) -> (NaiveDate, NaiveDate) {
        match self.days.first() {
            Some(day) if day.last < today => (day.first, day.last),
            _ => self.days_ahead(text, today, every_day),
        }
    }

    /// The day on which rain fell: the last one named that has come, else today.
    fn day_gone(&self, today: NaiveDate) -> (NaiveDate, NaiveDate) {
        let named = self.days.iter().filter(|day| day.first <= today).map(|day| day.first).max();
        let day = named.unwrap_or(today);
        (day, day)
    }
}

/// "Till Friday", "Friday tak".
fn is_until(text: &Text, day: &DayFound) -> bool {
    let before = day.span.start.checked_sub(1).is_some_and(|at| UNTIL_BEFORE.contains(&text.normal(at)));
    before || UNTIL_AFTER.contains(&text.normal(day.span.end))
}
