//! What comes to a whole roof.

use super::{Alert, Peak, Roof, What};
use crate::agronomy::heat_index::{heat_index, humidity_at_tmax};
use crate::planning::year::rains_begin;
use crate::quantity::{Temperature, WaterDepth};
use crate::weather::{Day, Weather};
use chrono::{Datelike, Days, Months, NaiveDate};

/// The India Meteorological Department's heat wave on plains: at least so hot…
const HEAT_WAVE: Temperature = Temperature::celsius(40.0);
/// …and so much above the normal of the day, K; beyond the second a severe one (read in papers that reprint it)…
const ABOVE_NORMAL_K: f64 = 4.5;
const FAR_ABOVE_NORMAL_K: f64 = 6.4;
/// …or so hot whatever is normal; from the second on a severe one.
const HOT_ANYWHERE: Temperature = Temperature::celsius(45.0);
const VERY_HOT_ANYWHERE: Temperature = Temperature::celsius(47.0);
/// The department declares one on its second day; a severe day is told at once (judgement).
const DAYS_RUNNING: usize = 2;

/// The department's classes of a day's rain: heavy, very heavy, extremely heavy (read in papers that reprint them).
const RAIN_CLASSES_MM: [f64; 3] = [64.5, 115.6, 204.5];

/// Beaufort 6 (strong breeze: large branches move) and 7 (near gale: whole trees move) begin at these, m/s at 10 m
/// (25 and 32 mph, read on a weather service's page).
const BEAUFORT_M_S: [f64; 2] = [11.2, 14.3];
/// From 10 m down to 2 m over short grass: FAO-56 eq. 47.
const TO_2_M: f64 = 0.748;
/// The windiest hour of a day against its mean (judgement: a forecast here has the mean alone).
const OF_MEAN: f64 = 2.0;

/// The rains are told of so long before their first month.
const BEFORE_RAINS_DAYS: u64 = 14;

/// From this heat index on work outdoors is a high risk, and from the second on a very high one: 103 and 115 °F (the
/// bands of the United States' labour safety agency, read in reprints). In full sun it feels up to 8 K hotter.
pub const RISKY: Temperature = Temperature::celsius(39.4);

pub(super) fn alerts(roof: &Roof<'_>) -> impl Iterator<Item = Alert> {
    [heat(roof), rain(roof), wind(roof), rains(roof)].into_iter().flatten()
}

fn heat(roof: &Roof<'_>) -> Option<Alert> {
    let grade = |day: &Day| heat_grade(day, usual(roof.weather, day)?);
    let severe = roof.days.iter().any(|day| grade(day) == Some(2));
    let running = roof.days.windows(DAYS_RUNNING).any(|days| days.iter().all(|day| grade(day).is_some()));
    if !severe && !running {
        return None;
    }
    let spell = roof.spell(|day| grade(day).is_some())?;
    let hottest = spell.iter().max_by(|a, b| a.tmax.as_celsius().total_cmp(&b.tmax.as_celsius()))?;
    let peak = Peak::Hot { tmax: hottest.tmax, usual: usual(roof.weather, hottest)? };
    roof.alert(What::HeatWave, if severe { 2 } else { 1 }, &spell, peak)
}

/// 1 for a heat wave, 2 for a severe one.
fn heat_grade(day: &Day, usual: Temperature) -> Option<u8> {
    // What a sum of tenths leaves over is no heat.
    const ROUNDING_K: f64 = 1e-6;
    let above = (day.tmax - usual).as_kelvins() + ROUNDING_K;
    let severe =
        day.tmax >= VERY_HOT_ANYWHERE || day.tmax >= HEAT_WAVE && above > FAR_ABOVE_NORMAL_K + 2.0 * ROUNDING_K;
    let wave = day.tmax >= HOT_ANYWHERE || day.tmax >= HEAT_WAVE && above >= ABOVE_NORMAL_K;
    match (severe, wave) {
        (true, _) => Some(2),
        (false, true) => Some(1),
        (false, false) => None,
    }
}

/// The usual maximum of a day. Where no usual days are known the day's own stands in: then only what is hot anywhere
/// counts.
fn usual(weather: &Weather<'_>, day: &Day) -> Option<Temperature> {
    Some(weather.usual(day.date).map_or(day.tmax, |usual| usual.tmax))
}

fn rain(roof: &Roof<'_>) -> Option<Alert> {
    let mm = |day: &Day| day.rain.map_or(0.0, WaterDepth::as_millimetres);
    let spell = roof.spell(|day| mm(day) >= RAIN_CLASSES_MM[0])?;
    let most = spell.iter().map(mm).fold(0.0, f64::max);
    let grade = RAIN_CLASSES_MM.iter().filter(|class| most >= **class).count() as u8;
    roof.alert(What::HeavyRain, grade, &spell, Peak::Rain { millimetres: most })
}

fn wind(roof: &Roof<'_>) -> Option<Alert> {
    let mean = |day: &Day| day.wind_2m.map_or(0.0, |wind| wind.as_metres_per_second());
    let reaches = |mean: f64, force: f64| mean * OF_MEAN >= force * TO_2_M;
    let spell = roof.spell(|day| reaches(mean(day), BEAUFORT_M_S[0]))?;
    let most = spell.iter().map(mean).fold(0.0, f64::max);
    let grade = BEAUFORT_M_S.iter().filter(|force| reaches(most, **force)).count() as u8;
    roof.alert(What::StrongWind, grade, &spell, Peak::Wind { metres_per_second: most })
}

/// Drains are cleared before the rains: in the two weeks before their first month, and in it.
fn rains(roof: &Roof<'_>) -> Option<Alert> {
    let (place, _) = roof.weather.normals()?;
    let soon = roof.today.checked_add_days(Days::new(BEFORE_RAINS_DAYS))?;
    let month = [roof.today, soon].into_iter().find(|day| rains_begin(place, *day))?;
    let first = month.with_day(1)?;
    let until: NaiveDate = first.checked_add_months(Months::new(1))?.pred_opt()?;
    Some(Alert {
        what: What::Rains,
        grade: 1,
        site: roof.site.clone(),
        from: first.max(roof.today),
        until,
        peak: Peak::Month(month.month()),
        beds: Vec::new(),
        crops: Vec::new(),
        start: None,
    })
}

/// How hot a day's hottest hour feels in the shade. None where its humidity is not known.
#[must_use]
pub fn heat_index_of(day: &Day) -> Option<Temperature> {
    let noon = humidity_at_tmax(day.tmax, day.tmin, day.humidity_mean?);
    // Dry air that draws sweat away feels cooler than a thermometer says; it harms no less.
    let felt = heat_index(day.tmax, noon);
    Some(if felt > day.tmax { felt } else { day.tmax })
}

/// Whether work in the open is a high risk at a heat index.
#[must_use]
pub fn work_is_dangerous(felt: Temperature) -> bool {
    felt >= RISKY
}
