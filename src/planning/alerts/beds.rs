//! What comes to single beds.

use super::{Alert, Peak, Roof, What};
use crate::garden::{BedKind, Sides};
use crate::knowledge::{Beyond, Crop};
use crate::needs::surroundings::Standing;
use crate::planning::due::Plot;
use crate::quantity::Temperature;
use crate::weather::Day;
use std::collections::BTreeMap;

/// A night so far below a crop's limit, K, or this cold at all, is a worse one (judgement; frost forms on clear nights
/// when the air at head height is still above freezing).
const WORSE_K: f64 = 3.0;
const NEAR_FROST: Temperature = Temperature::celsius(2.0);
/// In mix above 39 °C roots of some plants stop growing altogether (container-colour-roots); a wall that the sun
/// stands on is warmer than the air. From so hot a day on it gets there (judgement).
const WALLS_HEAT_ABOVE: Temperature = Temperature::celsius(38.0);
/// One hot day is no season of hot walls.
const DAYS_RUNNING: usize = 3;

pub(super) fn alerts(roof: &Roof<'_>, plots: &[Plot<'_>]) -> Vec<Alert> {
    [cold(roof, plots), walls(roof, plots)].into_iter().flatten().chain(bolting(roof, plots)).collect()
}

/// Grown crops of a bed: shoots on a tray stand indoors or are cut within days.
fn grown<'p>(plot: &'p Plot<'_>) -> impl Iterator<Item = &'p Standing<'p>> {
    plot.standing.iter().filter(|standing| !standing.microgreen)
}

fn cold(roof: &Roof<'_>, plots: &[Plot<'_>]) -> Option<Alert> {
    let limit = |crop: &Crop| crop.heat.cold_limit.value();
    let all = || plots.iter().flat_map(grown).map(|standing| standing.crop);
    let highest = all().map(limit).max_by(|a, b| a.as_celsius().total_cmp(&b.as_celsius()))?;
    let spell = roof.spell(|day| day.tmin < highest)?;
    let coldest = spell.iter().map(|day| day.tmin).min_by(|a, b| a.as_celsius().total_cmp(&b.as_celsius()))?;
    let worse = coldest <= NEAR_FROST || (highest - coldest).as_kelvins() >= WORSE_K;
    let mut alert = roof.alert(What::ColdNight, if worse { 2 } else { 1 }, &spell, Peak::Cold { tmin: coldest })?;
    let suffers = |standing: &&Standing<'_>| coldest < limit(standing.crop);
    for plot in plots {
        let mut crops = grown(plot).filter(suffers).map(|standing| standing.crop.id.clone()).peekable();
        if crops.peek().is_some() {
            alert.beds.push(plot.bed.id.clone());
            alert.crops.extend(crops);
        }
    }
    alert.crops.sort();
    alert.crops.dedup();
    Some(alert)
}

/// Baskets, bags and pots, and whatever has cloth for sides.
fn walls(roof: &Roof<'_>, plots: &[Plot<'_>]) -> Option<Alert> {
    let thin = |plot: &&Plot<'_>| {
        let small = matches!(plot.bed.kind, BedKind::Basket | BedKind::Bag | BedKind::Pot);
        (small || plot.bed.sides_counted() == Sides::Cloth) && grown(plot).next().is_some()
    };
    let beds: Vec<_> = plots.iter().filter(thin).map(|plot| plot.bed.id.clone()).collect();
    let hot = |day: &Day| day.tmax >= WALLS_HEAT_ABOVE;
    if beds.is_empty() || !roof.days.windows(DAYS_RUNNING).any(|days| days.iter().all(hot)) {
        return None;
    }
    let spell = roof.spell(hot)?;
    let hottest = spell.iter().map(|day| day.tmax).max_by(|a, b| a.as_celsius().total_cmp(&b.as_celsius()))?;
    let mut alert = roof.alert(What::HotWalls, 1, &spell, Peak::Hot { tmax: hottest, usual: hottest })?;
    alert.beds = beds;
    Some(alert)
}

/// One for each crop and sowing whose coming week is past what makes it flower: heat, or the length of the day.
fn bolting(roof: &Roof<'_>, plots: &[Plot<'_>]) -> Vec<Alert> {
    let mut all: BTreeMap<String, Alert> = BTreeMap::new();
    for plot in plots {
        let Some(week) = plot.year.and_then(|year| year.week(year.today())) else { continue };
        for standing in grown(plot) {
            let Some(peak) = bolts(standing.crop, week.tmax, week.day_h) else { continue };
            let until = roof.today + chrono::TimeDelta::days(6);
            let start = standing.start.map(|start| start.date());
            let crops = vec![standing.crop.id.clone()];
            let (from, site) = (roof.today, roof.site.clone());
            let alert =
                Alert { what: What::Bolting, grade: 1, site, from, until, peak, beds: Vec::new(), crops, start };
            all.entry(alert.event()).or_insert(alert).beds.push(plot.bed.id.clone());
        }
    }
    all.into_values().collect()
}

fn bolts(crop: &Crop, tmax: Temperature, day_h: f64) -> Option<Peak> {
    if !matches!(crop.heat.beyond, Beyond::Bolts) {
        return None;
    }
    let limit = crop.heat.day_limit.value();
    if tmax > limit {
        return Some(Peak::Week { tmax, limit });
    }
    let limit = crop.season.as_ref()?.bolts_above_day_h.as_ref()?;
    (day_h > limit.value()).then(|| Peak::LongDay { limit_h: limit.value() })
}
