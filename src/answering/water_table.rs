//! A bed's week of water as a table.

use super::table::{Table, Turn, WaterDay, WaterTable};
use super::water::{check, rhythm, rhythm_key};
use super::water_bed::BedWater;
use crate::weather::Origin;

/// The days of a bed's week, each with what it asks for and when to water.
pub fn table(bed: &BedWater<'_>) -> Table {
    let week = &bed.week;
    let first = first_turn(bed);
    let days = week.days.iter().zip(&week.litres_by_day).enumerate().map(|(ahead, ((day, loss), litres))| WaterDay {
        date: day.date,
        litres: *litres,
        tmax: day.tmax,
        rain: day.rain.unwrap_or(loss.rain),
        rain_chance: day.rain_chance,
        usual: day.origin == Origin::Normals,
        turns: turns(week.rhythm, ahead, first),
    });
    Table::Water(WaterTable {
        id: bed.subject.own.clone(),
        bed: bed.subject.called(),
        told: rhythm(bed),
        check: check(week),
        rhythm: rhythm_key(week.rhythm),
        turn: bed.each_turn(),
        days: days.collect(),
        can: bed.subject.can,
    })
}

/// Whole days from one watering to the next; at least one, however often a day it is.
fn interval(rhythm: f64) -> i64 {
    (7.0 / rhythm.max(0.1)).round().max(1.0) as i64
}

/// Days from today to the first watering of a slow rhythm: counted from the last on record, else from today.
fn first_turn(bed: &BedWater<'_>) -> i64 {
    first_after(bed.week.rhythm, bed.last.as_ref().map(|last| (bed.today.date - last.on).num_days()))
}

/// The same, of the days gone since the last; what is overdue is due today.
fn first_after(rhythm: f64, since: Option<i64>) -> i64 {
    let interval = interval(rhythm);
    since.map_or(0, |since| interval - since).clamp(0, interval - 1)
}

/// The turns of one day.
fn turns(rhythm: f64, ahead: usize, first: i64) -> Vec<Turn> {
    let on_it = || {
        let since_first = i64::try_from(ahead).unwrap_or(i64::MAX) - first;
        since_first >= 0 && since_first % interval(rhythm) == 0
    };
    match rhythm {
        r if r < 0.5 => Vec::new(),
        r if r < 5.0 => {
            if on_it() {
                vec![Turn::Morning]
            } else {
                Vec::new()
            }
        }
        r if r < 10.0 => vec![Turn::Morning],
        r if r < 17.0 => vec![Turn::Morning, Turn::Evening],
        _ => vec![Turn::Morning, Turn::Noon, Turn::Evening],
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::needs::water::RHYTHMS;

    /// Every rhythm has the waterings of its week, one more or less where the week does not divide.
    #[test]
    fn a_week_has_the_waterings_of_its_rhythm() {
        for rhythm in RHYTHMS {
            let count: usize = (0..7).map(|ahead| turns(rhythm, ahead, 0).len()).sum();
            assert!((count as f64 - rhythm).abs() < 1.0, "{rhythm}: {count}");
        }
        for rhythm in RHYTHMS {
            for since in [None, Some(-3), Some(0), Some(1), Some(40)] {
                let first = first_after(rhythm, since);
                assert!((0..70).contains(&first), "{rhythm} {since:?}: {first}");
            }
        }
        assert_eq!((first_after(3.5, Some(1)), first_after(3.5, Some(5)), first_after(3.5, None)), (1, 0, 0));
        let days = |first| (0..7).filter(|ahead| !turns(3.5, *ahead, first).is_empty()).collect::<Vec<_>>();
        assert_eq!((days(0), days(1)), (vec![0, 2, 4, 6], vec![1, 3, 5]));
    }
}
