//! A crop's way through a year from the day on which it goes in, and what stands against that day.

use super::{
    EASED, FLOWER_TO_FRUIT_DAYS, FURTHEST_DOUBT_DAYS, Hindrance, LONGEST_TRAY_DAYS, NURSERY_DAYS, TAKES_HOLD_DAYS,
    TENDER_K, WEEK_DOUBT_K, WORTH_PICKING_DAYS, Way, Window, YEAR_DAYS, YOUNG_STANDS_K, emergence_days,
};
use crate::agronomy::thermal_time::Thresholds;
use crate::knowledge::{Beyond, Crop, Fact};
use crate::needs::gathered::Gathered;
use crate::needs::year::Year;
use crate::quantity::{Estimate, Temperature, TemperatureDifference};

/// A crop's way through a year.
pub(super) struct Growth<'a> {
    pub(super) crop: &'a Crop,
    pub(super) way: Way,
    pub(super) year: &'a Year,
    pub(super) gathered: Gathered,
}

impl<'a> Growth<'a> {
    pub(super) fn of(crop: &'a Crop, way: Way, year: &'a Year) -> Self {
        let (base, upper) = match (&crop.microgreen, way) {
            (Some(tray), Way::Tray) => (tray.base.value(), tray.upper.value()),
            _ => (crop.heat.base.value(), crop.heat.upper.value()),
        };
        Self { crop, way, year, gathered: year.gathered(Thresholds { base, upper: Some(upper) }) }
    }

    pub(super) fn nursery(&self) -> usize {
        if self.way == Way::Seedbed { NURSERY_DAYS.1 as usize } else { 0 }
    }

    pub(super) fn first_pick(&self, bed_day: usize) -> Option<usize> {
        let sum = match (&self.crop.microgreen, self.way) {
            (Some(tray), Way::Tray) => tray.thermal_time.value(),
            _ => self.crop.harvest.first.value(),
        };
        self.gathered.reached(bed_day, sum)
    }

    /// The day from which what goes in is judged by its picking, where that comes within a year. A tree fruits after years:
    /// there the end of its first weeks, through which it has to get.
    pub(super) fn judged_from(&self, bed_day: usize) -> Option<usize> {
        let pick = self.first_pick(bed_day).filter(|pick| pick - bed_day <= YEAR_DAYS);
        let tree = self.crop.stands_for_years() && self.way != Way::Tray;
        pick.or_else(|| tree.then_some(bed_day + TAKES_HOLD_DAYS))
    }

    /// A young tree just planted, in years without fruit, bears less heat than the grown one.
    pub(super) fn is_tender(&self, bed_day: usize) -> bool {
        let fruits = self.first_pick(bed_day).is_some_and(|pick| pick - bed_day <= YEAR_DAYS);
        !fruits && self.crop.stands_for_years() && self.way != Way::Tray
    }

    /// What stands against a day, the limits drawn in by so many times their doubt.
    pub(super) fn hindrance(&self, day: usize, strict: f64) -> Option<Hindrance> {
        if self.comes_up()
            && let Some(seed) = self.seed(day, strict)
        {
            return Some(seed);
        }
        let bed_day = day + self.nursery();
        let slow = || Hindrance::Slow { on: self.year.date(day) };
        let Some(pick) = self.judged_from(bed_day) else {
            return Some(slow());
        };
        if self.way == Way::Tray {
            return (pick - day > LONGEST_TRAY_DAYS).then(slow);
        }
        self.limit(bed_day, (pick, pick + self.worth_picking()), strict)
    }

    /// Whether seed or a resting piece has to come up.
    pub(super) fn comes_up(&self) -> bool {
        match self.way {
            Way::Planted => false,
            Way::Pieces(piece) => piece.rests(),
            Way::InBed | Way::Seedbed | Way::Tray => true,
        }
    }

    /// It has to stand for so many days from its first pick.
    pub(super) fn worth_picking(&self) -> usize {
        self.crop.harvest.picking_days.value().min(WORTH_PICKING_DAYS) as usize
    }

    pub(super) fn seed(&self, day: usize, strict: f64) -> Option<Hindrance> {
        let week = self.year.week(day)?;
        let (mean, on) = (week.mean(), self.year.date(day));
        let emergence = &self.crop.emergence;
        let (base, ceiling) = (&emergence.base, &emergence.ceiling);
        if mean > drawn(ceiling, -strict) {
            return Some(Hindrance::SeedHot { on, mean, limit: ceiling.clone() });
        }
        (mean < drawn(base, strict)).then(|| Hindrance::SeedCold { on, mean, limit: base.clone() })
    }

    /// From when air bears on it: a piece that rests in the mix has no leaves until it shoots.
    pub(super) fn leaves_from(&self, bed_day: usize) -> usize {
        match self.way {
            Way::Pieces(piece) if piece.rests() => {
                let days = emergence_days(self.crop, self.year, bed_day);
                bed_day + days.map_or(0, |days| days.value() as usize)
            }
            _ => bed_day,
        }
    }

    /// Until when a plant that is first picked on a day is young for what heat does to it.
    pub(super) fn young_until(&self, from: usize, pick: usize) -> usize {
        // Of a tree in its first weeks nothing is known but that it bears less.
        if self.is_tender(from) {
            return from;
        }
        let growing = pick.saturating_sub(from);
        match self.crop.heat.beyond {
            Beyond::DropsFlowers => from + growing.saturating_sub(FLOWER_TO_FRUIT_DAYS),
            Beyond::Bolts | Beyond::TurnsBitter => {
                from + (self.crop.stages.initial_days.value() as usize).min(growing / 2)
            }
            Beyond::Stops | Beyond::Scorches => from,
        }
    }

    /// The heat limit of a week: a young plant's, else the grown one's.
    pub(super) fn hot(&self, week: usize, young_until: usize, strict: f64) -> Temperature {
        let young = if week < young_until { YOUNG_STANDS_K } else { 0.0 };
        drawn(&self.crop.heat.day_limit, -strict) + TemperatureDifference::kelvins(young)
    }

    /// The first week from a day until the end of picking that is past a limit.
    pub(super) fn limit(&self, from: usize, (pick, until): (usize, usize), strict: f64) -> Option<Hindrance> {
        let heat = &self.crop.heat;
        let young_until = self.young_until(from, pick);
        let cold = drawn(&heat.cold_limit, strict);
        let long = self.crop.season.as_ref().and_then(|season| season.bolts_above_day_h.as_ref());
        let less = TemperatureDifference::kelvins(if self.is_tender(from) { -TENDER_K } else { 0.0 });
        self.year.weeks_within(self.leaves_from(from), until).find_map(|(place, week)| {
            let on = self.year.date(place);
            if week.tmax > self.hot(place, young_until, strict) + less {
                let tender = self.is_tender(from);
                // It has no flowers to drop yet.
                let beyond = if tender { Beyond::Scorches } else { heat.beyond };
                let mut limit = heat.day_limit.clone();
                limit.is = limit.is.map(|limit| limit + less);
                return Some(Hindrance::Hot { on, mean_tmax: week.tmax, limit, beyond });
            }
            if week.tmin < cold {
                return Some(Hindrance::Cold { on, mean_tmin: week.tmin, limit: heat.cold_limit.clone() });
            }
            // Long days call out the flower of a plant that has leaves.
            let limit = long.filter(|limit| place >= young_until && week.day_h > end_of(limit, -strict))?;
            Some(Hindrance::LongDay { on, day_h: week.day_h, limit: limit.clone() })
        })
    }

    /// The ends that stricter and easier limits give.
    pub(super) fn doubted(&self, (first, last): (usize, usize), strict: f64) -> Window {
        let whole_year = first <= self.year.today() && last >= self.year.today() + YEAR_DAYS;
        let low = first.saturating_sub(FURTHEST_DOUBT_DAYS);
        let high = last + FURTHEST_DOUBT_DAYS;
        let date = |place: usize| self.year.date(place);
        if whole_year {
            let today = self.year.today();
            let (from, until) = (date(today), date(today + YEAR_DAYS - 1));
            return Window { from: Estimate::exactly(from), until: Estimate::exactly(until), whole_year };
        }
        let (easier, stricter) = (self.bounds(strict + EASED), self.bounds(strict + 1.0));
        let eased = |day: &usize| self.suits(*day, &easier);
        let kept = |day: &usize| self.suits(*day, &stricter);
        // Easier limits: as far as the days go on fitting without a break.
        let easier_from = (low..first).rev().take_while(eased).last();
        let easier_until = (last + 1..=high).take_while(eased).last();
        let (from, until) = (date(first), date(last));
        let later = (first..=last).find(kept).map_or(until, date);
        let sooner = (first..=last).rfind(kept).map_or(from, date);
        Window {
            from: Estimate::spanning(from, [easier_from.map_or(from, date), later]),
            until: Estimate::spanning(until, [sooner, easier_until.map_or(until, date)]),
            whole_year,
        }
    }

    /// How far the worst week of a stand stays from the nearer limit, K.
    pub(super) fn margin(&self, bed_day: usize) -> f64 {
        if self.way == Way::Tray {
            let ceiling = self.crop.emergence.ceiling.value();
            return self.year.week(bed_day).map_or(0.0, |week| (ceiling - week.mean()).as_kelvins());
        }
        let Some(pick) = self.first_pick(bed_day).or_else(|| self.judged_from(bed_day)) else { return f64::MIN };
        let heat = &self.crop.heat;
        let young_until = self.young_until(bed_day, pick);
        let less = if self.is_tender(bed_day) { TENDER_K } else { 0.0 };
        self.year.weeks_within(self.leaves_from(bed_day), pick + self.worth_picking()).fold(
            f64::MAX,
            |least, (place, week)| {
                let from_heat = (self.hot(place, young_until, 0.0) - week.tmax).as_kelvins() - less;
                let from_cold = (week.tmin - heat.cold_limit.value()).as_kelvins();
                least.min(from_heat).min(from_cold)
            },
        )
    }
}

/// A limit moved up (`by` above 0) or down by its doubt: the farther of its own range and what a usual week
/// may be off.
pub(super) fn drawn(limit: &Fact<Temperature>, by: f64) -> Temperature {
    let moved = limit.value() + TemperatureDifference::kelvins(WEEK_DOUBT_K * by);
    match by {
        by if by > 0.0 && limit.is.high() > moved => limit.is.high(),
        by if by < 0.0 && limit.is.low() < moved => limit.is.low(),
        _ => moved,
    }
}

/// The end of a number's own range, above for `by` over 0.
pub(super) fn end_of(limit: &Fact<f64>, by: f64) -> f64 {
    match by {
        by if by > 0.0 => limit.is.high(),
        by if by < 0.0 => limit.is.low(),
        _ => limit.value(),
    }
}
