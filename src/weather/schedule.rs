//! When a cell is asked for again.

use super::source::Fault;
use chrono::{DateTime, TimeDelta, Utc};

/// A cell is not asked for more often than this, whatever a service allows: forecasts outside the north are made two to
/// four times a day.
const LEAST: TimeDelta = TimeDelta::hours(3);
/// A file that comes first is looked at again after this: that costs nobody anything.
pub const FILE_AGAIN: TimeDelta = TimeDelta::minutes(10);
/// So many calls a day are made for all cells together; with more cells each is asked less often.
pub const CALLS_A_DAY: i64 = 4_000;
/// What a service says of its documents is kept up to this.
const LONGEST_EXPIRY: TimeDelta = TimeDelta::days(7);
/// Calls for cells that fall due together are spread over this long.
const SPREAD_S: i64 = 600;
/// After a first failure a cell waits this long, and twice as long after each other…
const AFTER_FAILURE: TimeDelta = TimeDelta::minutes(5);
/// …up to this.
const AFTER_FAILURES: TimeDelta = TimeDelta::hours(3);
/// A service that asks to be left alone, or refuses, is left alone at least this long, and twice as long after each other
/// time…
const PAUSE_ASKED_FOR: TimeDelta = TimeDelta::minutes(10);
/// …up to this.
const LONGEST_PAUSE: TimeDelta = TimeDelta::hours(6);
/// A service that is out of order waits this long, and twice as long after each other time, up to an hour.
const PAUSE_OUT_OF_ORDER: TimeDelta = TimeDelta::minutes(1);
const LONGEST_OUT_OF_ORDER: TimeDelta = TimeDelta::hours(1);

/// The next time after a success: not before the document expires, not more often than is fair.
#[must_use]
pub fn after_success(now: DateTime<Utc>, expires: Option<DateTime<Utc>>, cells: usize, key: &str) -> DateTime<Utc> {
    let fair = TimeDelta::seconds(86_400 * i64::try_from(cells).unwrap_or(i64::MAX / 86_400) / CALLS_A_DAY);
    let own = now + LEAST.max(fair);
    let expiry = expires.map_or(own, |expires| expires.min(now + LONGEST_EXPIRY));
    own.max(expiry) + spread(key, now)
}

/// The next time after so many failures, this one counted.
#[must_use]
pub fn after_failure(now: DateTime<Utc>, failures: u32, key: &str) -> DateTime<Utc> {
    now + doubled(AFTER_FAILURE, failures, AFTER_FAILURES) + spread(key, now) / 10
}

/// How long a service is left alone after so many failures in a row, this one counted.
#[must_use]
pub fn pause(fault: &Fault, failures: u32) -> TimeDelta {
    match fault {
        Fault::Busy { wait, .. } => {
            doubled(PAUSE_ASKED_FOR, failures, LONGEST_PAUSE).max(wait.unwrap_or_default().min(TimeDelta::days(1)))
        }
        Fault::Refused { .. } => doubled(PAUSE_ASKED_FOR, failures, LONGEST_PAUSE),
        Fault::OutOfOrder { .. } | Fault::Unreachable { .. } => {
            doubled(PAUSE_OUT_OF_ORDER, failures, LONGEST_OUT_OF_ORDER)
        }
        Fault::Document { .. } => TimeDelta::zero(),
    }
}

fn doubled(first: TimeDelta, failures: u32, most: TimeDelta) -> TimeDelta {
    let times = 1_i32 << failures.saturating_sub(1).min(16);
    (first * times).min(most)
}

/// Between nothing and [`SPREAD_S`], by the cell and the moment: no cell is always the first, and none of many is asked
/// on the same second.
fn spread(key: &str, now: DateTime<Utc>) -> TimeDelta {
    let bytes = key.bytes().chain(now.timestamp().to_le_bytes());
    // FNV-1a, 64 bits (Fowler, Noll, Vo).
    let hash =
        bytes.fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3));
    TimeDelta::seconds((hash >> 16) as i64 % SPREAD_S)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::weather::source::Service;

    fn now() -> DateTime<Utc> {
        "2026-05-18T02:30:00Z".parse().unwrap()
    }

    #[track_caller]
    fn waits(next: DateTime<Utc>, least_h: f64, most_h: f64) {
        let hours = (next - now()).num_seconds() as f64 / 3600.0;
        assert!((least_h..=most_h).contains(&hours), "{hours} h");
    }

    #[test]
    fn never_before_it_expires_and_never_too_often() {
        waits(after_success(now(), None, 1, "a"), 3.0, 3.2);
        waits(after_success(now(), Some(now() + TimeDelta::minutes(30)), 1, "a"), 3.0, 3.2);
        waits(after_success(now(), Some(now() + TimeDelta::hours(9)), 1, "a"), 9.0, 9.2);
        waits(after_success(now(), Some(now() - TimeDelta::hours(9)), 1, "a"), 3.0, 3.2);
    }

    /// 100 000 sites on 200 km by 200 km lie in some 1 400 cells.
    #[test]
    fn many_cells_cost_a_few_thousand_calls_a_day() {
        for cells in [1_usize, 300, 500, 1_400, 20_000] {
            let wait = after_success(now(), None, cells, "a") - now();
            let calls = cells as f64 * 86_400.0 / wait.num_seconds() as f64;
            assert!(calls <= CALLS_A_DAY as f64, "{cells} cells: {calls} calls");
        }
        waits(after_success(now(), None, 1_400, "a"), 8.4, 8.6);
    }

    #[test]
    fn backs_off() {
        waits(after_failure(now(), 1, "a"), 5.0 / 60.0, 6.1 / 60.0);
        waits(after_failure(now(), 4, "a"), 40.0 / 60.0, 41.1 / 60.0);
        waits(after_failure(now(), 60, "a"), 3.0, 3.1);
        let busy = |seconds| Fault::Busy { service: Service::MetNorway, wait: Some(TimeDelta::seconds(seconds)) };
        assert_eq!(pause(&busy(7_200), 1), TimeDelta::hours(2));
        assert_eq!(pause(&busy(1), 1), TimeDelta::minutes(10));
        assert_eq!(pause(&busy(1), 3), TimeDelta::minutes(40));
        let broken = Fault::OutOfOrder { service: Service::MetNorway, status: 502 };
        assert_eq!(pause(&broken, 2), TimeDelta::minutes(2));
    }
}
