//! `weather`: which weather each site stands on, how old it is, who made it, when it is fetched next; and, if asked, a
//! call to the services now.

use super::arguments::{Arguments, Weather};
use super::ask::print;
use super::forecasts::Forecasts;
use super::front::{knowledge, person, read_forecast, store, system_clock};
use super::refusal::Refusal;
use crate::desk::sky::{Due, Filed, Handed, Skies, SkySlip};
use crate::garden::rights::may_see_site;
use crate::garden::{Site, SiteId, Store};
use crate::knowledge::{Knowledge, Worth};
use crate::weather::cell::Spot;
use crate::weather::kept::Sky;
use crate::weather::source::Choice;
use crate::weather::{Day, Forecast, Origin, Service};
use chrono::{DateTime, Days, FixedOffset, Offset, Utc};
use std::collections::HashSet;
use std::process::ExitCode;
use std::sync::Arc;

/// Days gone by are counted so far back.
const LOOKED_BACK_D: u64 = 60;
/// So many days from today on are shown.
const SHOWN_D: usize = 16;

pub fn run(weather: &Weather, arguments: &Arguments) -> Result<ExitCode, Refusal> {
    let known = knowledge(arguments)?;
    let store: Arc<dyn Store> = store(arguments)?.into();
    let now = weather.now.unwrap_or_else(system_clock);
    let sites = sites(weather, store.as_ref())?;
    if sites.is_empty() {
        print("no site is in the store")?;
    }
    if weather.fetch {
        fetch(weather, &store, &sites, now)?;
    }
    let file = file_of(weather)?;
    let handed = match &file {
        Some((forecast, true)) => Handed::First(forecast),
        Some((forecast, false)) => Handed::Later(forecast),
        None => Handed::Nothing,
    };
    let mut skies = Skies::new(store.as_ref(), handed, &known);
    for site in &sites {
        for line in lines(site, store.as_ref(), &known, &mut skies, now)? {
            print(&line)?;
        }
    }
    Ok(ExitCode::SUCCESS)
}

fn sites(weather: &Weather, store: &dyn Store) -> Result<Vec<Site>, Refusal> {
    let mut sites = store.sites()?;
    if let Some(id) = &weather.person {
        let person = store.person(&person(id, store)?)?;
        sites.retain(|site| may_see_site(person.as_ref(), &site.id));
    }
    if let Some(id) = &weather.site {
        let wanted = SiteId::new(id).ok();
        let ids: Vec<String> = sites.iter().map(|site| site.id.to_string()).collect();
        sites.retain(|site| Some(&site.id) == wanted.as_ref());
        if sites.is_empty() {
            let here = if ids.is_empty() { "none yet".to_owned() } else { ids.join(", ") };
            return Err(Refusal::plain(format!("no site with the id \"{id}\" is in the store; it has {here}")));
        }
    }
    Ok(sites)
}

fn file_of(weather: &Weather) -> Result<Option<(Forecast, bool)>, Refusal> {
    let choices = weather.sources.weather.choices.iter().enumerate();
    let mut files = choices.filter_map(|(place, choice)| match choice {
        Choice::File(path) => Some((path, place == 0)),
        Choice::MetNorway(_) | Choice::OpenMeteo(_) => None,
    });
    files.next().map(|(path, first)| Ok((read_forecast(path)?, first))).transpose()
}

/// Asks for the cells of these sites now, but for documents whose service wants to be left alone still.
fn fetch(weather: &Weather, store: &Arc<dyn Store>, sites: &[Site], now: DateTime<FixedOffset>) -> Result<(), Refusal> {
    let forecasts = Forecasts::of(&weather.sources, store.clone(), Arc::default())?;
    let forecasts = forecasts.ok_or_else(|| {
        Refusal::plain("no source of weather is set; ROOFTEND_WEATHER=met-norway, open-meteo or file:PATH expected")
    })?;
    let forecasts = forecasts.at(weather.now);
    let runtime = tokio::runtime::Builder::new_multi_thread().worker_threads(1).enable_all().build();
    let runtime = runtime.map_err(Refusal::plain)?;
    let spots: HashSet<Spot> = store.sites()?.iter().map(spot_of).collect();
    let mut asked = HashSet::new();
    for spot in sites.iter().map(spot_of).filter(|spot| asked.insert(*spot)) {
        let sky = SkySlip::of(store.as_ref(), &spot)?;
        if let Some(until) = left_alone(&sky, now) {
            print(&format!("cell {}: its service asks not to be asked before {}", spot.cell, clock(until, now)))?;
            continue;
        }
        let told = runtime.block_on(forecasts.fetch(&Due::of(spot, &sky), spots.len()))?;
        if told.is_empty() {
            print(&format!("cell {}: every source is left alone for now", spot.cell))?;
        }
        for (service, filed) in told {
            print(&format!("cell {}: {}", spot.cell, said(service, &filed)))?;
            if let Filed::New { unmade, .. } = &filed {
                for why in unmade {
                    print(&format!("  {why}"))?;
                }
            }
        }
    }
    Ok(())
}

fn spot_of(site: &Site) -> Spot {
    Spot::of(site.latitude_deg, site.longitude_deg, site.timezone)
}

/// Until when the service of the last good document wants to be left alone.
fn left_alone(sky: &Sky, now: DateTime<FixedOffset>) -> Option<DateTime<Utc>> {
    sky.good.as_ref()?.expires.filter(|expires| *expires > now.with_timezone(&Utc))
}

fn said(service: Service, filed: &Filed) -> String {
    match filed {
        Filed::New { days, deprecated, .. } => {
            let ends = if *deprecated { "; the service says that this product ends (203)" } else { "" };
            format!("{service} gave a new forecast of {days} days{ends}")
        }
        Filed::Same => format!("{service} says that what is kept is still the newest"),
        Filed::Kept(fault) => format!("nothing taken, what is kept stays: {fault}"),
    }
}

/// What is shown of one site.
fn lines(
    site: &Site,
    store: &dyn Store,
    known: &Knowledge,
    skies: &mut Skies<'_, '_>,
    now: DateTime<FixedOffset>,
) -> Result<Vec<String>, Refusal> {
    let here = now.with_timezone(&site.timezone);
    let here = here.with_timezone(&here.offset().fix());
    let today = here.date_naive();
    let spot = spot_of(site);
    let sky = SkySlip::of(store, &spot)?;
    let weather = skies.over(site, here)?;
    let mut lines = vec![format!("{} ({}), cell {}", site.name, site.id, spot.cell)];
    match weather.foretold() {
        Some(foretold) => {
            let made = foretold.made.map_or_else(
                || "of an unknown day".to_owned(),
                |made| format!("made {} ({})", made.format("%Y-%m-%d %H:%M"), age(here, made)),
            );
            lines.push(format!("  forecast: {}, {made}, until {}", foretold.by, foretold.until));
            lines.extend(terms(foretold.by, known));
        }
        None => lines.push("  forecast: none".to_owned()),
    }
    if let Some(tried) = sky.tried {
        let next = clock(sky.next, here);
        lines.push(format!("  last asked {}; next fetch after {next}", clock(tried, here)));
    }
    if let Some(trouble) = &sky.trouble {
        lines.push(format!("  last trouble: {trouble}"));
    }
    let back = today.checked_sub_days(Days::new(LOOKED_BACK_D)).unwrap_or(today);
    let gone: Vec<Day> = weather.from(back).take_while(|day| day.date < today).collect();
    let count = |origin: Origin| gone.iter().filter(|day| day.origin == origin).count();
    lines.push(format!(
        "  the last {LOOKED_BACK_D} days: {} observed, {} kept forecasts, {} told, {} usual days",
        count(Origin::Observed),
        count(Origin::Kept) + count(Origin::Forecast),
        count(Origin::Told),
        count(Origin::Normals)
    ));
    let ahead: Vec<Day> = weather.from(today).take(SHOWN_D).collect();
    let until = weather.foretold().map(|foretold| foretold.until);
    lines.extend(ahead.iter().filter(|day| until.is_some_and(|until| day.date <= until)).map(day_line));
    match weather.normals() {
        Some((place, distance)) => {
            let then = if until.is_some_and(|until| until >= today) { "after that: " } else { "" };
            lines.push(format!("  {then}usual days of {} ({}, {distance:.0} km away)", place.id, place.period));
        }
        None => lines.push("  no usual days are known within 250 km".to_owned()),
    }
    Ok(lines)
}

/// Whose data they are, as their terms ask.
fn terms(by: Service, known: &Knowledge) -> Option<String> {
    let (id, terms) = by.source()?;
    let source = known.sources.get(id).filter(|source| source.worth == Worth::Published)?;
    let whose = source.by.as_deref().unwrap_or(id);
    Some(format!("  data from {whose} ({terms})"))
}

fn day_line(day: &Day) -> String {
    let mut line = format!("  {}  {:.1} to {:.1} °C", day.date, day.tmin.as_celsius(), day.tmax.as_celsius());
    let mut add = |text: String| line.push_str(&text);
    if let Some(rain) = day.rain {
        add(format!(", rain {:.1} mm", rain.as_millimetres()));
    }
    if let Some(humidity) = day.humidity_mean {
        add(format!(", air {:.0} %", humidity.as_percent()));
    }
    if let Some(wind) = day.wind_2m {
        add(format!(", wind {:.1} m/s", wind.as_metres_per_second()));
    }
    match day.solar {
        Some(solar) => add(format!(", sun {:.1} MJ/m2", solar.as_megajoules_per_square_metre())),
        None => add(", sun estimated from the temperatures".to_owned()),
    }
    match day.origin {
        Origin::Told => add(" (as told)".to_owned()),
        Origin::Normals => add(" (a usual day: the forecast lacks it)".to_owned()),
        Origin::Forecast | Origin::Kept | Origin::Observed => {}
    }
    line
}

fn age(now: DateTime<FixedOffset>, made: DateTime<FixedOffset>) -> String {
    let hours = (now - made).num_hours();
    if hours < 48 { format!("{hours} h old") } else { format!("{} days old", hours / 24) }
}

fn clock(at: DateTime<Utc>, here: DateTime<FixedOffset>) -> String {
    at.with_timezone(here.offset()).format("%Y-%m-%d %H:%M").to_string()
}
