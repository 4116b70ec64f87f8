//! One bed as a question of water sees it: its week, what it has shown, when it was watered last.

use super::facts::Facts;
use super::line::{Line, Said};
use super::subject::Subject;
use crate::garden::{JobKind, RainExposure};
use crate::knowledge::{Aspect, Point};
use crate::needs::day_course::{Hour, share_by};
use crate::needs::dry_down::{DryDown, dry_down};
use crate::needs::looks::{factor, lost_since, waterings};
use crate::needs::loss_factor::LossFactor;
use crate::needs::salt::{Salts, salts};
use crate::needs::surroundings::Surroundings;
use crate::needs::water::{WaterWeek, water_week_of};
use crate::needs::water_day::{round_saplings, seed_on_top};
use crate::quantity::{Estimate, Fraction, UnitOf, Volume, WaterDepth};
use crate::understanding::{Reading, SkyTold};
use crate::weather::{Day, Told};
use chrono::{Days, NaiveDate, Timelike};

/// One bed's water.
pub struct BedWater<'a> {
    pub subject: &'a Subject<'a>,
    pub week: WaterWeek,
    /// What looks at it have taught.
    pub factor: LossFactor,
    pub last: Option<LastWatering>,
    /// Of beds whose site has water of known conductivity, dS/m.
    pub salts: Option<Salts>,
    pub water_ds_m: Option<f64>,
    /// A flush of it is on record, so that this crew keeps to flushing.
    pub flushed: bool,
    /// What a drip (L an hour) or a hose (L a minute) was said to give.
    pub rate: Option<f64>,
    /// The day's water is given in one go, though two or three would be kept.
    pub once: bool,
    pub today: Day,
    /// The hour of asking.
    pub hour: f64,
    /// Saplings or seed that want a gentle hand.
    gentle: Option<&'static str>,
    surface: WaterDepth,
}

/// A watering, and the bed since then.
pub struct LastWatering {
    pub on: NaiveDate,
    /// Told in the same message, not on record.
    pub told: bool,
    /// It was rain that filled the bed, told in the same message.
    pub by_rain: bool,
    /// Days from then until now.
    pub ago: f64,
    pub down: DryDown,
    /// Over the top, since then.
    pub lost: WaterDepth,
    pub missing: Volume,
}

impl<'a> BedWater<'a> {
    /// None where its week can't be summed.
    pub fn of(subject: &'a Subject<'a>, reading: &Reading, facts: &'a Facts<'a>) -> Option<Self> {
        let around = subject.surroundings(facts, subject.today())?;
        let own = subject.own.as_ref().and_then(|id| facts.bed(id));
        let factor = own.map_or(LossFactor::UNSEEN, |(_, bed)| factor(&around, &bed.jobs, &bed.seen));
        let mut week = water_week_of(&around, &factor)?;
        let once = once_a_day(reading, &mut week);
        let today = week.days.first()?.0;
        let now = (subject.today(), f64::from(subject.now.num_seconds_from_midnight()) / 3600.0);
        let last = last(&around, own.map(|(_, bed)| bed.jobs.as_slice()), reading, now, &factor);
        let water_ds_m = own.and_then(|(site, _)| site.site.water_ec_ds_m).filter(|ec| *ec > 0.0);
        let salts = own.zip(water_ds_m).and_then(|((_, bed), ec)| {
            let flushes = bed.jobs.iter().filter(|job| matches!(job.job, JobKind::Flush | JobKind::Mix));
            let since = flushes.map(|job| job.on.date()).chain(bed.bed.mix_added).max();
            salts(&around, ec, since, &factor)
        });
        let flushed = own.is_some_and(|(_, bed)| bed.jobs.iter().any(|job| job.job == JobKind::Flush));
        let saplings = around.standing.iter().any(|standing| round_saplings(standing, subject.today()));
        let gentle = match (seed_on_top(&around), saplings) {
            (true, _) => Some("water-seed"),
            (false, true) => Some("water-saplings"),
            (false, false) => None,
        };
        let surface = week.surface_limit;
        let rate = rate(reading);
        Some(Self {
            subject,
            week,
            factor,
            last,
            salts,
            water_ds_m,
            flushed,
            rate,
            once,
            today,
            hour: now.1,
            gentle,
            surface,
        })
    }

    /// Litres of one watering; none where none is due.
    pub fn each_turn(&self) -> Option<Estimate<Volume>> {
        let week = &self.week;
        (week.rhythm > 0.0).then(|| week.litres.map(|litres| litres / week.rhythm))
    }

    /// Watered full on a day at an hour and left, perhaps better sheltered.
    pub fn left_from(&self, full: Hour, net: Option<Fraction>, facts: &Facts<'_>) -> Option<DryDown> {
        let around = self.subject.surroundings(facts, full.0)?;
        match net {
            None => dry_down(&around, full, &self.factor),
            Some(net) => {
                let bed = crate::needs::dry_down::sheltered(&self.subject.bed, net);
                dry_down(&Surroundings { bed: &bed, ..around }, full, &self.factor)
            }
        }
    }

    /// Days from now, since its last watering, where that is known and they end within what can be looked at.
    pub fn days_until_dry(&self, reading: &Reading) -> Option<Estimate<f64>> {
        if reading.aspects.iter().any(|aspect| matches!(aspect, Aspect::Away | Aspect::Without)) {
            return None;
        }
        let last = self.last.as_ref()?;
        Some(last.down.until_dry.known()?.map(|days| (days - last.ago).max(0.0)))
    }

    /// Minutes of drip for one watering, where what it gives was said.
    pub fn drip_minutes(&self) -> Option<Estimate<f64>> {
        let litres_an_hour = self.rate.filter(|rate| *rate > 0.0)?;
        Some(self.each_turn()?.map(|litres| litres.as_litres() / litres_an_hour * 60.0))
    }

    /// The drip in minutes, or what has to be known for it.
    pub fn drip_line(&self) -> Line {
        match self.drip_minutes() {
            Some(minutes) => Line::new("water-drip").with("minutes", Said::Span(minutes, 0)),
            None => Line::new("water-drip-unknown"),
        }
    }

    /// How to pour where seed lies on top or saplings have just been set.
    pub fn gently(&self) -> Option<Line> {
        self.gentle.filter(|_| self.week.rhythm > 0.0).map(Line::new)
    }

    /// What each day of the week asks for.
    pub fn day_by_day(&self) -> Line {
        let days = self.week.days.iter().zip(&self.week.litres_by_day).map(|((day, _), litres)| {
            let line = Line::new("water-of-day").with("day", Said::Day(day.date));
            Said::Line(Box::new(line.with("litres", Said::About(*litres))))
        });
        Line::new("water-day-by-day").with("days", Said::List(days.collect()))
    }

    /// Rain that is to be counted on today: likely, and more than the bed lacks.
    pub fn rain_today(&self) -> Option<WaterDepth> {
        /// A likelier rain than this is waited for (judgement).
        const LIKELY: f64 = 0.6;
        let caught = match self.subject.bed.rain_counted() {
            RainExposure::None => return None,
            RainExposure::Part => 0.5,
            RainExposure::Open => 1.0,
        };
        let rain = self.today.rain?;
        let likely = self.today.rain_chance.is_none_or(|chance| chance.as_of_one() >= LIKELY);
        let lacks = self.last.as_ref().map_or(self.surface, |last| last.lost);
        // What the day's rain has brought by now is already off the loss: only the rest can still fall.
        let to_come = rain * (caught * (1.0 - share_by(self.hour)));
        (likely && to_come >= lacks.max(self.surface)).then_some(rain)
    }
}

/// Who can come once a day gives the whole day's water then, however often the bed would have it.
fn once_a_day(reading: &Reading, week: &mut WaterWeek) -> bool {
    const DAILY: f64 = 7.0;
    let asked = [Point::Amount, Point::HowMuchWater].iter().any(|point| reading.points.contains(point));
    let once = asked && reading.points.contains(&Point::OnceADay) && week.rhythm > DAILY;
    if once {
        week.rhythm = DAILY;
        week.waterings = Estimate::exactly(DAILY);
    }
    once
}

/// The last watering on record, or told in the same message.
fn last(
    around: &Surroundings<'_>,
    jobs: Option<&[crate::garden::JobDone]>,
    reading: &Reading,
    now: Hour,
    factor: &LossFactor,
) -> Option<LastWatering> {
    /// A day without its hour: the morning turn.
    const MORNING_H: f64 = 7.0;
    let hour = reading.parts_of_day.iter().map(|part| part.counts_h).reduce(f64::max).unwrap_or(MORNING_H);
    let told = (reading.did == Some(JobKind::Water)).then(|| reading.days.first().map_or(now.0, |(day, _)| *day));
    let told = told.or_else(|| not_since(reading, now.0));
    let told = told.filter(|day| *day <= now.0).map(|day| (day, hour.min(if day == now.0 { now.1 } else { 24.0 })));
    let recorded = jobs.and_then(|jobs| waterings(jobs, now).next()).map(|(hour, _)| hour);
    let watered = told.or(recorded);
    let rained = filled_by_rain(around, reading, watered, now, factor);
    let told = told.filter(|_| rained.is_none());
    let at = rained.or(watered)?;
    let down = dry_down(around, at, factor)?;
    let lost = lost_since(around, at, now, factor)?;
    let missing = lost * around.filled().top;
    let ago = (now.0 - at.0).num_days() as f64 + (now.1 - at.1) / 24.0;
    Some(LastWatering { on: at.0, told: told.is_some(), by_rain: rained.is_some(), ago, down, lost, missing })
}

/// "No water for two days", "none since Saturday": the day on which it had some at the latest.
fn not_since(reading: &Reading, today: NaiveDate) -> Option<NaiveDate> {
    /// Who counts further back counts otherwise.
    const MOST: f64 = 60.0;
    if !reading.unwatered {
        return None;
    }
    let for_days = reading.for_days.filter(|days| (1.0..=MOST).contains(days)).map(|days| days.round() as u64);
    let counted = for_days.and_then(|days| today.checked_sub_days(Days::new(days)));
    counted.or_else(|| reading.days.first().map(|(day, _)| *day))
}

/// The hour at which rain that was told filled the bed: at the end of its day, where it brought what the bed had lost
/// since its last watering, or without one enough for a moist surface.
fn filled_by_rain(
    around: &Surroundings<'_>,
    reading: &Reading,
    watered: Option<Hour>,
    now: Hour,
    factor: &LossFactor,
) -> Option<Hour> {
    /// Nearly full is full: what is short dries off within hours (judgement).
    const NEARLY: f64 = 0.8;
    /// Rain longer ago than this is in no balance any more.
    const LOOKED_BACK_DAYS: i64 = 3;
    let fell = |told: &&SkyTold| told.rain_mm.is_some_and(|mm| mm > 0.0) && told.last <= now.0;
    let told = reading.sky.iter().filter(fell).max_by_key(|told| told.last)?;
    let hour = (told.last, if told.last == now.0 { now.1 } else { 24.0 });
    let later = |watered: Hour| watered.0 > hour.0 || watered.0 == hour.0 && watered.1 > hour.1;
    if (now.0 - told.last).num_days() > LOOKED_BACK_DAYS || watered.is_some_and(later) {
        return None;
    }
    let caught = told.rain_mm? * around.rain_caught();
    let dry = Surroundings {
        weather: around.weather.clone().hearing(Told::checked(told.last, None, None, Some(0.0))),
        ..around.clone()
    };
    let lost = match watered {
        Some(watered) => lost_since(&dry, watered, hour, factor)?,
        None => around.mix.properties.surface_limit.value(),
    };
    (caught > 0.0 && caught >= lost.as_millimetres() * NEARLY).then_some(hour)
}

/// A volume said beside a drip or a hose is what it gives; a count before it, how many of them.
fn rate(reading: &Reading) -> Option<f64> {
    let volume = reading.quantities.iter().find(|said| said.unit.measures() == UnitOf::Volume)?;
    let each = volume.volume()?.as_litres();
    let drippers =
        reading.count.filter(|count| reading.aspects.contains(&Aspect::Drip) && (1.0..=200.0).contains(count));
    Some(each * drippers.unwrap_or(1.0))
}
