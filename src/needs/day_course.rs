//! The course of a day: when its loss and its rain come, told by no record, for every sum of a bed.

use crate::agronomy::maths::{acos, cos};
use crate::quantity::WaterDepth;
use chrono::NaiveDate;
use std::f64::consts::PI;

/// A day and an hour of it, 0 to 24.
pub type Hour = (NaiveDate, f64);

/// The part of a day's loss that is over by an hour: it follows the sun from six to six, as a sine.
#[must_use]
pub fn share_by(hour: f64) -> f64 {
    (1.0 - cos(PI * ((hour - 6.0) / 12.0).clamp(0.0, 1.0))) / 2.0
}

/// The hour by which a part of a day's loss is over: [`share_by`] turned round.
#[must_use]
pub fn hour_of(share: f64) -> f64 {
    6.0 + 12.0 * acos(1.0 - 2.0 * share.clamp(0.0, 1.0)) / PI
}

/// A stretch of one day, from a part of its course to a later one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stretch {
    begins: f64,
    ends: f64,
}

impl Stretch {
    /// The stretch of a date between two hours; the whole day on days between them.
    #[must_use]
    pub fn between(date: NaiveDate, from: Hour, until: Option<Hour>) -> Self {
        let begins = if date == from.0 { share_by(from.1) } else { 0.0 };
        let ends = until.filter(|until| until.0 == date).map_or(1.0, |until| share_by(until.1));
        Self { begins, ends: ends.max(begins) }
    }

    /// The part of the day's loss that falls in it.
    #[must_use]
    pub fn part(&self) -> f64 {
        self.ends - self.begins
    }

    /// The hour at which a share of the stretch's loss is over.
    #[must_use]
    pub fn hour_at(&self, share: f64) -> f64 {
        hour_of(self.begins + share * self.part())
    }

    /// What is short at its end. Nobody knows the hour of a day's rain: it is taken to fall in step with the loss,
    /// so that what fell before a watering counts for nothing, and what is beyond the loss runs through.
    #[must_use]
    pub fn short_after(&self, short: WaterDepth, lost: WaterDepth, rain_of_day: WaterDepth) -> WaterDepth {
        (short + lost - rain_of_day * self.part()).max(WaterDepth::default())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn case(from_h: f64, lost: f64, rain: f64, expected: f64) {
        let day: NaiveDate = "2026-07-01".parse().unwrap();
        let stretch = Stretch::between(day, (day, from_h), None);
        let of = WaterDepth::millimetres;
        let got = stretch.short_after(of(1.0), of(lost), of(rain)).as_millimetres();
        assert!((got - expected).abs() < 1e-9, "{from_h}: {got}");
    }

    #[test]
    fn rain_counts_for_the_part_of_the_day_that_is_left() {
        case(6.0, 4.0, 3.0, 2.0);
        case(12.0, 2.0, 3.0, 1.5);
        case(18.0, 0.0, 3.0, 1.0);
        case(6.0, 4.0, 30.0, 0.0);
    }

    #[test]
    fn hours_and_shares_are_one_course() {
        for hour in [6.0, 7.5, 12.0, 17.0, 18.0] {
            assert!((hour_of(share_by(hour)) - hour).abs() < 1e-9);
        }
    }
}
