//! The steps behind a sowing window.

use super::answer::Answer;
use super::facts::Facts;
use super::line::{Line, Said};
use super::sow::Asked;
use super::sow_crop::way_key;
use super::subject::Subject;
use crate::garden::Sun;
use crate::knowledge::{Beyond, Crop, SourceRef};
use crate::needs::season::{Outlook, Way, YOUNG_STANDS_K};
use crate::needs::sun_by_walls::sun_hours_by_month;
use chrono::{Datelike, NaiveDate};

/// Limits, the way through the year, the window with its doubt.
pub fn working(answer: &mut Answer, crop: &Crop, outlook: &Outlook, asked: &Asked<'_>) {
    let heat = &crop.heat;
    answer.working.push(
        Line::new("working-sow-limits")
            .with("crop", Said::Crop(crop.id.clone()))
            .with("hot", Said::Temperature(heat.day_limit.value()))
            .with("hot_source", Said::Source(heat.day_limit.source.clone()))
            .with("cold", Said::Temperature(heat.cold_limit.value()))
            .with("cold_source", Said::Source(heat.cold_limit.source.clone())),
    );
    if !matches!(heat.beyond, Beyond::Stops | Beyond::Scorches) && outlook.way != Way::Tray {
        answer.working.push(Line::new("working-sow-young").with("more", Said::Number(YOUNG_STANDS_K, 0)));
    }
    answer.cite(&heat.day_limit.source);
    answer.cite(&heat.cold_limit.source);
    if !matches!(outlook.way, Way::Planted) {
        let emergence = &crop.emergence;
        answer.working.push(
            Line::new("working-sow-seed")
                .with("base", Said::Temperature(emergence.base.value()))
                .with("ceiling", Said::Temperature(emergence.ceiling.value()))
                .with("source", Said::Source(emergence.ceiling.source.clone())),
        );
        answer.cite(&emergence.base.source);
        answer.cite(&emergence.ceiling.source);
    }
    if let Some(limit) = crop.season.as_ref().and_then(|season| season.bolts_above_day_h.as_ref()) {
        answer.working.push(
            Line::new("working-sow-day-length")
                .with("hours", Said::Number(limit.value(), 1))
                .with("source", Said::Source(limit.source.clone())),
        );
        answer.cite(&limit.source);
        answer.cite(&SourceRef::new("fao56", "eq. 34"));
    }
    let sum = match (&crop.microgreen, outlook.way) {
        (Some(tray), Way::Tray) => &tray.thermal_time,
        _ => &crop.harvest.first,
    };
    answer.cite(&sum.source);
    answer.cite(&SourceRef::new("baskerville-emin-1969", "one sine a day"));
    answer.working.push(
        Line::new("working-sow-growth")
            .with("way", Said::Key(way_key(outlook.way)))
            .with("sum", Said::Number(sum.value().as_degree_days(), 0))
            .with("source", Said::Source(sum.source.clone())),
    );
    if let Some(window) = outlook.window.filter(|window| !window.whole_year) {
        answer.working.push(
            Line::new("working-sow-window")
                .with("from", Said::Days(window.from))
                .with("until", Said::Days(window.until)),
        );
    }
    days(answer, asked);
}

/// Where the weeks come from.
pub fn days(answer: &mut Answer, asked: &Asked<'_>) {
    let Some((place, distance)) = asked.weather.normals() else { return };
    answer.cite(&place.source);
    answer.working.push(
        Line::new("working-season-days")
            .with("place", Said::Place(place.id.clone()))
            .with("period", Said::Quoted(place.period.clone()))
            .with("distance", Said::Number(distance, 0))
            .with("forecast", Said::Key(if asked.weather.has_forecast() { "yes" } else { "no" })),
    );
}

/// The sun that the walls of a site leave to a bed, month by month.
pub fn walls(answer: &mut Answer, bed: &Subject<'_>, facts: &Facts<'_>, day: NaiveDate) {
    let Some((site, own)) = bed.own.as_ref().and_then(|id| facts.bed(id)) else { return };
    if own.bed.sun_counted(&site.site) != Sun::FromWalls {
        return;
    }
    answer.cite(&SourceRef::new("meeus-1998", "chapters 13, 22, 25, 28"));
    let hours = sun_hours_by_month(site.site.latitude_deg, &site.site.walls, day.year());
    answer.working.push(
        Line::new("working-sow-walls")
            .with("bed", bed.called())
            .with("hours", Said::List(hours.map(|hours| Said::Number(hours, 1)).to_vec())),
    );
}
