//! Documents in the published shapes, their values invented: a run of days between 29 and 43 °C, dry but for what is asked
//! for.

use chrono::{DateTime, TimeDelta, Utc};
use serde_json::{Value, json};

/// Where the documents are for.
pub const NAGPUR: (f64, f64) = (21.15, 79.1);

/// °C at a moment: 43 at 15:00 and 29 at 03:00 in Nagpur.
pub fn celsius(at: DateTime<Utc>) -> f64 {
    let hour = (at.timestamp() + 19_800).rem_euclid(86_400) as f64 / 3_600.0;
    36.0 + 7.0 * ((hour - 15.0) * std::f64::consts::PI / 12.0).cos()
}

/// A compact document: so many hourly steps, then so many of six hours, then one without a step.
pub fn met_norway(first: DateTime<Utc>, hourly: i64, six_hourly: i64) -> Value {
    let details = |at: DateTime<Utc>| {
        json!({
            "air_pressure_at_sea_level": 1002.4, "air_temperature": celsius(at), "cloud_area_fraction": 12.5,
            "relative_humidity": 30.0, "wind_from_direction": 250.1, "wind_speed": 2.0
        })
    };
    let next = |mm: f64| json!({"summary": {"symbol_code": "clearsky_day"}, "details": {"precipitation_amount": mm}});
    let mut series = Vec::new();
    for hour in 0..hourly {
        let at = first + TimeDelta::hours(hour);
        series.push(json!({"time": stamp(at), "data": {
            "instant": {"details": details(at)},
            "next_12_hours": {"summary": {"symbol_code": "clearsky_day"}, "details": {}},
            "next_1_hours": next(0.0), "next_6_hours": next(0.0)
        }}));
    }
    for place in 0..six_hourly {
        let at = first + TimeDelta::hours(hourly + 6 * place);
        series.push(json!({"time": stamp(at), "data": {
            "instant": {"details": details(at)}, "next_6_hours": next(0.6)
        }}));
    }
    let at = first + TimeDelta::hours(hourly + 6 * six_hourly);
    series.push(json!({"time": stamp(at), "data": {"instant": {"details": details(at)}}}));
    json!({
        "type": "Feature",
        "geometry": {"type": "Point", "coordinates": [NAGPUR.1, NAGPUR.0, 306]},
        "properties": {
            "meta": {
                "updated_at": stamp(first),
                "units": {
                    "air_pressure_at_sea_level": "hPa", "air_temperature": "celsius", "cloud_area_fraction": "%",
                    "precipitation_amount": "mm", "relative_humidity": "%", "wind_from_direction": "degrees",
                    "wind_speed": "m/s"
                }
            },
            "timeseries": series
        }
    })
}

/// A document of parallel arrays, by the hour, from the midnight of Greenwich two days before a moment's own.
pub fn open_meteo(now: DateTime<Utc>, days: i64) -> Value {
    let first = now.date_naive().and_hms_opt(0, 0, 0).unwrap().and_utc() - TimeDelta::days(2);
    let times: Vec<DateTime<Utc>> = (0..days * 24).map(|hour| first + TimeDelta::hours(hour)).collect();
    let list = |of: &dyn Fn(DateTime<Utc>) -> f64| times.iter().map(|at| of(*at)).collect::<Vec<f64>>();
    json!({
        "latitude": NAGPUR.0 + 0.02, "longitude": NAGPUR.1 - 0.03, "generationtime_ms": 0.14, "utc_offset_seconds": 0,
        "timezone": "GMT", "timezone_abbreviation": "GMT", "elevation": 310.0,
        "hourly_units": {
            "time": "iso8601", "temperature_2m": "°C", "relative_humidity_2m": "%", "precipitation": "mm",
            "precipitation_probability": "%", "wind_speed_10m": "m/s", "shortwave_radiation": "W/m²"
        },
        "hourly": {
            "time": times.iter().map(|at| at.format("%Y-%m-%dT%H:%M").to_string()).collect::<Vec<_>>(),
            "temperature_2m": list(&|at| celsius(at) - 1.0),
            "relative_humidity_2m": list(&|_| 40.0),
            "precipitation": list(&|_| 0.1),
            "precipitation_probability": list(&|_| 20.0),
            "wind_speed_10m": list(&|_| 3.0),
            "shortwave_radiation": list(&|_| 290.0)
        }
    })
}

pub fn stamp(at: DateTime<Utc>) -> String {
    at.format("%Y-%m-%dT%H:%M:%SZ").to_string()
}

/// As headers have it.
pub fn http_date(at: DateTime<Utc>) -> String {
    at.format("%a, %d %b %Y %H:%M:%S GMT").to_string()
}
