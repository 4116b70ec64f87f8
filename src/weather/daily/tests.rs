//! Days made of steps, against days counted by hand.

use super::*;

const NAGPUR: Ground = Ground { latitude_deg: 21.15, longitude_deg: 79.1, zone: chrono_tz::Asia::Kolkata };
const BERLIN: Ground = Ground { latitude_deg: 52.5, longitude_deg: 13.4, zone: chrono_tz::Europe::Berlin };

fn step(at: DateTime<Utc>, hours: f64, celsius: f64, rain_mm: f64) -> Step {
    Step {
        at,
        hours,
        temperature: Temperature::celsius(celsius),
        humidity: Some(Fraction::of_one(0.4)),
        wind_2m: None,
        rain: Some(WaterDepth::millimetres(rain_mm)),
        rain_chance: None,
        solar_w_m2: Some(250.0),
    }
}

/// Hourly steps from a moment on, the temperature of each its place in the run.
fn hourly(from: &str, count: i64) -> Vec<Step> {
    let from: DateTime<Utc> = from.parse().unwrap();
    (0..count).map(|hour| step(from + TimeDelta::hours(hour), 1.0, hour as f64 / 2.0, 0.5)).collect()
}

fn date(text: &str) -> NaiveDate {
    text.parse().unwrap()
}

#[track_caller]
fn case(ground: &Ground, from: &str, count: i64, day: &str, (tmin, tmax): (f64, f64), rain_mm: f64, solar_mj: f64) {
    let (made, _) = days(&hourly(from, count), ground);
    let day = made.into_iter().find(|made| made.date == date(day)).expect("the day is made");
    assert_eq!((day.tmin.as_celsius(), day.tmax.as_celsius()), (tmin, tmax));
    assert!((day.rain.unwrap().as_millimetres() - rain_mm).abs() < 1e-9, "{day:?}");
    assert!((day.solar.unwrap().as_megajoules_per_square_metre() - solar_mj).abs() < 1e-9, "{day:?}");
    assert!((day.humidity_mean.unwrap().as_of_one() - 0.4).abs() < 1e-12);
}

/// 250 W/m² over 24 hours are 250 × 86 400 J = 21.6 MJ; half a millimetre an hour is 12 mm.
#[test]
fn a_day_of_the_site_and_not_of_greenwich() {
    // Midnight in Nagpur is 18:30 UTC, in the middle of an hour: the step of 18:00 belongs to the day before, the half
    // of its rain to this one.
    case(&NAGPUR, "2026-05-17T12:00:00Z", 60, "2026-05-18", (3.5, 15.0), 12.0, 21.6);
}

/// The clock of Berlin skips 02:00 to 03:00 on 29 March 2026 and goes through it twice on 25 October: days of 23 and 25
/// hours (IANA time zone database, Europe/Berlin).
#[test]
fn the_days_on_which_the_clock_is_moved() {
    // From 23:00 UTC on the 28th (midnight, CET) to 22:00 UTC on the 29th (midnight, CEST): 23 steps.
    case(&BERLIN, "2026-03-28T23:00:00Z", 48, "2026-03-29", (0.0, 11.0), 11.5, 20.7);
    // From 22:00 UTC on the 24th (midnight, CEST) to 23:00 UTC on the 25th (midnight, CET): 25 steps.
    case(&BERLIN, "2026-10-24T22:00:00Z", 48, "2026-10-25", (0.0, 12.0), 12.5, 22.5);
}

#[test]
fn a_day_with_too_few_hours_is_not_made() {
    let (made, unmade) = days(&hourly("2026-05-18T04:30:00Z", 14), &NAGPUR);
    assert_eq!(made, []);
    assert_eq!(unmade[0].to_string(), "2026-05-18 is not made: 14 of its 24 hours are known");
    // Three hours may be missing, in the middle or at the end; four may not.
    let mut steps = hourly("2026-05-17T18:30:00Z", 24);
    steps.drain(5..8);
    assert_eq!(days(&steps, &NAGPUR).0.len(), 1);
    steps.drain(5..6);
    assert_eq!(days(&steps, &NAGPUR).0, []);
}

#[test]
fn longer_steps_give_their_rain_to_the_days_by_the_hour() {
    // 6 mm in the six hours around midnight in Nagpur, 17:30 to 23:30 UTC: one of them lies before it.
    let mut steps = hourly("2026-05-17T18:30:00Z", 24);
    steps.iter_mut().for_each(|step| step.rain = Some(WaterDepth::default()));
    steps.truncate(23);
    steps.push(step("2026-05-18T17:30:00Z".parse().unwrap(), 6.0, 20.0, 6.0));
    let (made, _) = days(&steps, &NAGPUR);
    assert!((made[0].rain.unwrap().as_millimetres() - 1.0).abs() < 1e-9, "{made:?}");
}

/// Four instants of the published curve itself give back the ends it was drawn with.
#[test]
fn six_hourly_instants_give_the_ends_of_the_daily_curve() {
    let sun = sun_times(NAGPUR.latitude_deg, NAGPUR.longitude_deg, date("2026-05-20")).unwrap();
    let (rise, set) = (sun.sunrise.unwrap(), sun.sunset.unwrap());
    let celsius = Temperature::celsius;
    let curve = DailyCurve {
        tmax: celsius(43.0),
        tmin: celsius(29.0),
        next_tmin: celsius(29.0),
        sunrise_h: 0.0,
        sunset_h: (set - rise).num_seconds() as f64 / 3600.0,
    };
    let steps: Vec<Step> = ["2026-05-19T18:00:00Z", "2026-05-20T00:00:00Z", "2026-05-20T06:00:00Z"]
        .into_iter()
        .chain(["2026-05-20T12:00:00Z", "2026-05-20T18:00:00Z"])
        .map(|at| {
            let at: DateTime<Utc> = at.parse().unwrap();
            let hour = ((at - rise).num_seconds() as f64 / 3600.0).rem_euclid(24.0);
            step(at, 6.0, curve.air_temperature(hour).as_celsius(), 0.0)
        })
        .collect();
    let (made, _) = days(&steps, &NAGPUR);
    let day = made.iter().find(|day| day.date == date("2026-05-20")).unwrap();
    let sampled = steps[2].temperature.as_celsius().max(steps[3].temperature.as_celsius());
    assert!(sampled < 42.0, "the instants miss the crest: {sampled}");
    assert!((day.tmax.as_celsius() - 43.0).abs() < 0.05 && (day.tmin.as_celsius() - 29.0).abs() < 0.05, "{day:?}");
}

#[test]
fn a_day_without_a_midnight_begins_with_its_first_moment() {
    // Beirut, 27 March 2022: 00:00 is skipped to 01:00 (IANA time zone database, Asia/Beirut).
    let begun = begins(date("2022-03-27"), chrono_tz::Asia::Beirut).unwrap();
    assert_eq!(begun.to_rfc3339(), "2022-03-26T22:00:00+00:00");
}
