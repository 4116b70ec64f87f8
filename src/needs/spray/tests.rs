//! Next sprays under skies of one kind, and what must hold of any of them.

use super::*;
use crate::knowledge::{Fact, Knowledge, SourceRef};
use crate::quantity::WindSpeed;
use crate::weather::Forecast;
use proptest::prelude::*;

fn fact<Q: Copy + PartialOrd>(low: Q, value: Q, high: Q) -> Fact<Q> {
    Fact { is: Estimate::between(low, value, high).unwrap(), source: SourceRef::new("memory", ""), read: false }
}

fn oil() -> SprayUse {
    let celsius = Temperature::celsius;
    SprayUse {
        millilitres_per_litre: fact(5.0, 5.0, 10.0),
        limit_millilitres_per_litre: fact(10.0, 10.0, 10.0),
        product_must_be_known: true,
        not_above: fact(celsius(32.0), celsius(32.0), celsius(32.0)),
        not_in_wind: {
            let wind = WindSpeed::metres_per_second;
            fact(wind(3.0), wind(3.5), wind(4.0))
        },
        every_days: fact(7.0, 7.0, 14.0),
        wait_days: fact(0.0, 1.0, 1.0),
    }
}

/// Ten equal days from 18 May at 21.15 N 79.09 E, but for rain and wind on days of their own.
fn forecast(tmax: f64, tmin: f64, rain: [f64; 10], wind: [f64; 10]) -> Forecast {
    let days: Vec<String> = (0..10)
        .map(|day| {
            format!(
                r#"{{"date": "2026-05-{}", "tmax_c": {tmax}, "tmin_c": {tmin}, "rain_mm": {}, "wind_2m_m_s": {}}}"#,
                18 + day,
                rain[day],
                wind[day]
            )
        })
        .collect();
    let text = format!(
        r#"{{"latitude": 21.15, "longitude": 79.09, "elevation_m": 310, "timezone": "Asia/Kolkata", "days": [{}]}}"#,
        days.join(",")
    );
    Forecast::read("test", &text).unwrap()
}

const DRY: [f64; 10] = [0.0; 10];
const CALM: [f64; 10] = [1.5; 10];

fn next(forecast: &Forecast, last: Option<&str>, now: &str) -> NextSpray {
    let known = Knowledge::default();
    let weather = Weather::at((21.15, 79.09, 310.0), Some(forecast), &known);
    let last = last.map(|day| day.parse().unwrap());
    let bed = SprayedBed { last, pickings: &[], open_to_rain: true, chosen: None, now: now.parse().unwrap() };
    next_spray(&oil(), &bed, Some(&weather))
}

const MORNING: &str = "2026-05-18T08:00:00+05:30";

#[track_caller]
fn case(
    forecast: &Forecast,
    last: Option<&str>,
    day: &str,
    hours: Option<(PartOfDay, &str, &str)>,
    moved: &[Obstacle],
) {
    let got = next(forecast, last, MORNING);
    assert_eq!(got.day.value().to_string(), day, "{got:?}");
    assert_eq!(got.moved_by.iter().copied().collect::<Vec<_>>(), moved, "{got:?}");
    match (got.hours, hours) {
        (None, None) => {}
        (Some(got), Some((part, not_before, not_after))) => {
            let time = |text: &str| text.parse::<NaiveTime>().unwrap();
            assert_eq!(got.part, part);
            assert!(got.from >= time(not_before) && got.until <= time(not_after) && got.from < got.until, "{got:?}");
            assert!(got.warmest <= Temperature::celsius(32.0), "{got:?}");
        }
        (got, _) => panic!("{got:?}"),
    }
}

/// Sunrise there on 18 May is near 05:33, sunset near 18:45 (local time).
#[test]
fn the_first_fit_day_and_its_hours() {
    let mild = forecast(31.0, 20.0, DRY, CALM);
    case(&mild, None, "2026-05-18", Some((PartOfDay::Evening, "17:40:00", "19:15:00")), &[]);
    case(&mild, Some("2026-05-16"), "2026-05-23", Some((PartOfDay::Evening, "17:40:00", "19:15:00")), &[]);
    // A dry 43/29 week: before dawn's end, and today's dawn is over.
    let hot = forecast(43.0, 29.0, DRY, CALM);
    case(&hot, Some("2026-05-10"), "2026-05-19", Some((PartOfDay::Dawn, "05:05:00", "05:35:00")), &[Obstacle::Heat]);
    // Nights of 33: not at all.
    let scorching = forecast(45.0, 33.0, DRY, CALM);
    case(&scorching, Some("2026-05-10"), "2026-05-18", None, &[Obstacle::Heat]);
    let mut rain = DRY;
    rain[0] = 12.0;
    let mut wind = CALM;
    wind[1] = 6.0;
    let rough = forecast(31.0, 20.0, rain, wind);
    case(
        &rough,
        None,
        "2026-05-20",
        Some((PartOfDay::Evening, "17:40:00", "19:15:00")),
        &[Obstacle::Rain, Obstacle::Wind],
    );
}

/// Rain after a spray washes it off: it is due again on the day after, not when the rhythm says.
#[test]
fn rain_brings_the_next_spray_forward() {
    let mut rain = DRY;
    rain[2] = WASHES_OFF_MM;
    let evening = Some((PartOfDay::Evening, "17:40:00", "19:15:00"));
    let wet = forecast(31.0, 20.0, rain, CALM);
    case(&wet, Some("2026-05-18"), "2026-05-21", evening, &[]);
    // A shower does not, nor does rain after the next one.
    rain[2] = WASHES_OFF_MM - 1.0;
    rain[8] = 40.0;
    case(&forecast(31.0, 20.0, rain, CALM), Some("2026-05-18"), "2026-05-25", evening, &[]);
    let under = |open_to_rain| {
        let (known, last) = (Knowledge::default(), "2026-05-18".parse().ok());
        let weather = Weather::at((21.15, 79.09, 310.0), Some(&wet), &known);
        let bed = SprayedBed { last, pickings: &[], open_to_rain, chosen: None, now: MORNING.parse().unwrap() };
        next_spray(&oil(), &bed, Some(&weather)).day.value().to_string()
    };
    assert_eq!((under(true), under(false)), ("2026-05-21".to_owned(), "2026-05-25".to_owned()));
}

#[test]
fn what_is_ready_within_the_wait_is_picked_first() {
    let mild = forecast(31.0, 20.0, DRY, CALM);
    let next = |pickings: &[&str]| {
        let known = Knowledge::default();
        let weather = Weather::at((21.15, 79.09, 310.0), Some(&mild), &known);
        let pickings: Vec<NaiveDate> = pickings.iter().map(|day| day.parse().unwrap()).collect();
        let bed = SprayedBed {
            last: None,
            pickings: &pickings,
            open_to_rain: true,
            chosen: None,
            now: MORNING.parse().unwrap(),
        };
        let mut oil = oil();
        oil.wait_days = fact(0.0, 2.0, 3.0);
        let next = next_spray(&oil, &bed, Some(&weather));
        (next.day.value().to_string(), next.moved_by.contains(&Obstacle::Picking))
    };
    let moved = |day: &str| (day.to_owned(), true);
    assert_eq!(next(&[]), ("2026-05-18".to_owned(), false));
    assert_eq!(next(&["2026-05-20"]), moved("2026-05-21"));
    assert_eq!(next(&["2026-05-23", "2026-05-20"]), moved("2026-05-24"));
    // Beyond the wait, and gone by.
    assert_eq!(next(&["2026-05-22", "2026-05-10"]), ("2026-05-18".to_owned(), false));
}

#[test]
fn never_stronger_than_the_lowest_limit() {
    let mut oil = oil();
    oil.limit_millilitres_per_litre = fact(7.0, 20.0, 20.0);
    let strength = strength(&oil);
    assert_eq!((strength.low(), strength.value(), strength.high()), (5.0, 5.0, 7.0));
}

#[test]
fn liquid_by_the_leaves() {
    // 1 m² of ground, 2 m² of leaf, 200 ml on each: 0.4 L.
    let litres = litres_of_spray(Area::square_metres(1.0));
    assert!((litres.value().as_litres() - 0.4).abs() < 1e-9);
    assert!(litres.low().as_litres() > 0.05 && litres.high().as_litres() < 1.2, "{litres:?}");
}

proptest! {
    #[test]
    fn hours_are_always_below_the_limit_and_the_day_never_past(
        tmax in 20.0..48.0f64, fall in 6.0..18.0f64, ago in 0u64..30, hour in 0u32..24,
    ) {
        let sky = forecast(tmax, tmax - fall, DRY, CALM);
        let today: NaiveDate = "2026-05-18".parse().unwrap();
        let last = today.checked_sub_days(Days::new(ago)).unwrap().to_string();
        let now = format!("2026-05-18T{hour:02}:00:00+05:30");
        let got = next(&sky, Some(&last), &now);
        prop_assert!(got.day.low() >= today && got.day.low() <= got.day.value() && got.day.value() <= got.day.high());
        if let Some(hours) = got.hours {
            prop_assert!(hours.from < hours.until && hours.warmest <= Temperature::celsius(32.0), "{hours:?}");
            let moment = got.day.value().and_time(hours.until);
            prop_assert!(moment > now.parse::<DateTime<FixedOffset>>().unwrap().naive_local());
        }
    }

    #[test]
    fn a_hotter_week_is_never_sprayed_sooner(tmax in 25.0..42.0f64, more in 0.0..6.0f64) {
        let day = |tmax: f64| next(&forecast(tmax, tmax - 13.0, DRY, CALM), Some("2026-05-10"), MORNING).day.value();
        let (cool, hot) = (day(tmax), day(tmax + more));
        // A week with no fit hour keeps the day it was due.
        prop_assert!(hot >= cool || next(&forecast(tmax + more, tmax + more - 13.0, DRY, CALM), Some("2026-05-10"), MORNING).hours.is_none());
    }
}
