//! Whether a day suits, for hundreds of days of the same crop and limits: the weeks of the year are held against the
//! limits once, not again for each day that looks at them.

use super::{Growth, LONGEST_TRAY_DAYS, TENDER_K, Way, YOUNG_STANDS_K, drawn, end_of};
use crate::needs::year::Week;
use crate::quantity::{Temperature, TemperatureDifference};

/// A crop's limits, drawn in or eased, against every week of a year.
pub(super) struct Bounds {
    seed_ceiling: Temperature,
    seed_base: Temperature,
    /// From each place on, the first week that is past what a young plant stands; and a grown one.
    young: Vec<usize>,
    grown: Vec<usize>,
    /// And a young tree.
    tender: Vec<usize>,
}

impl Growth<'_> {
    /// The limits, drawn in by so many times their doubt.
    pub(super) fn bounds(&self, strict: f64) -> Bounds {
        let heat = &self.crop.heat;
        let (hot, cold) = (drawn(&heat.day_limit, -strict), drawn(&heat.cold_limit, strict));
        let young_hot = hot + TemperatureDifference::kelvins(YOUNG_STANDS_K);
        let long = self.crop.season.as_ref().and_then(|season| season.bolts_above_day_h.as_ref());
        let long = long.map(|limit| end_of(limit, -strict));
        let is_long = |week: &Week| long.is_some_and(|limit| week.day_h > limit);
        let emergence = &self.crop.emergence;
        Bounds {
            seed_ceiling: drawn(&emergence.ceiling, -strict),
            seed_base: drawn(&emergence.base, strict),
            young: self.next(|week| week.tmax > young_hot || week.tmin < cold),
            tender: self.next(|week| {
                week.tmax > hot + TemperatureDifference::kelvins(-TENDER_K) || week.tmin < cold || is_long(week)
            }),
            grown: self.next(|week| week.tmax > hot || week.tmin < cold || is_long(week)),
        }
    }

    /// For each place the first week from it on that passes a test; the number of weeks where none does.
    fn next(&self, test: impl Fn(&Week) -> bool) -> Vec<usize> {
        let count = self.year.len();
        let mut next = vec![count; count + 1];
        for place in (0..count).rev() {
            let passes = self.year.week(place).is_some_and(&test);
            let after = next.get(place + 1).copied().unwrap_or(count);
            if let Some(here) = next.get_mut(place) {
                *here = if passes { place } else { after };
            }
        }
        next
    }

    /// Whether nothing stands against a day: what [`Growth::hindrance`] finds nothing against.
    pub(super) fn suits(&self, day: usize, bounds: &Bounds) -> bool {
        let comes_up = |week: &Week| (bounds.seed_base..=bounds.seed_ceiling).contains(&week.mean());
        if self.comes_up() && !self.year.week(day).is_none_or(comes_up) {
            return false;
        }
        let bed_day = day + self.nursery();
        let Some(pick) = self.judged_from(bed_day) else { return false };
        if self.way == Way::Tray {
            return pick - day <= LONGEST_TRAY_DAYS;
        }
        let (first, last) = self.year.places_within(self.leaves_from(bed_day), pick + self.worth_picking());
        let young_until = self.young_until(bed_day, pick);
        let clear = |next: &[usize], from: usize, end: usize| {
            from >= end || next.get(from).is_none_or(|found| *found >= end || *found >= self.year.len())
        };
        if self.is_tender(bed_day) {
            return clear(&bounds.tender, first, last + 1);
        }
        clear(&bounds.young, first, young_until.min(last + 1)) && clear(&bounds.grown, first.max(young_until), last + 1)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::knowledge::{Files, Knowledge};
    use crate::needs::season::{seasons, usual_way};
    use crate::needs::year::Year;
    use crate::weather::Weather;

    /// Every crop in the ways it may go in, on many days of a hot and of a cool place, however strict.
    #[test]
    fn a_day_suits_where_nothing_stands_against_it() {
        let known = Knowledge::read(&Files::embedded()).0;
        let mut counts = [0, 0];
        for place in known.places.iter().filter(|place| ["nagpur", "bengaluru"].contains(&place.id.as_str())) {
            let year = Year::around(&Weather::of_place(place), "2026-05-18".parse().unwrap()).unwrap();
            for crop in known.crops.values() {
                for way in [usual_way(crop, false), usual_way(crop, true), Way::Planted] {
                    let growth = Growth::of(crop, way, &year);
                    for strict in [-3.0, -1.0, 0.0, 1.0] {
                        let bounds = growth.bounds(strict);
                        for day in (0..year.len()).step_by(23) {
                            let suits = growth.suits(day, &bounds);
                            assert_eq!(suits, growth.hindrance(day, strict).is_none(), "{} {way:?} {day}", crop.id);
                            counts[usize::from(suits)] += 1;
                        }
                    }
                }
                assert!(seasons(crop, usual_way(crop, false), &year).windows.len() < 10);
            }
        }
        assert!(counts.iter().all(|count| *count > 1_000), "{counts:?}");
    }
}
