//! A bed's facts as planning takes them, and how a move is told.

use super::facts::{BedFacts, Facts, SiteFacts};
use super::line::{Line, Said};
use crate::garden::Move;
use crate::knowledge::Knowledge;
use crate::needs::surroundings::Standing;
use crate::needs::year::Year;
use crate::planning::due::Plot;

/// A bed for planning, as it stands at its site's moment of asking.
pub fn plot<'a>(site: &'a SiteFacts<'a>, bed: &'a BedFacts, year: Option<&'a Year>, known: &'a Knowledge) -> Plot<'a> {
    let standing = bed.standing(site.now.date_naive()).into_iter().filter_map(|planting| {
        Some(Standing {
            crop: known.crops.get(&planting.crop)?,
            microgreen: planting.microgreen,
            start: Some(planting.start),
            plants: planting.plants,
        })
    });
    Plot {
        bed: &bed.bed,
        standing: standing.collect(),
        jobs: &bed.jobs,
        moves: &bed.moves,
        weather: &site.weather,
        year,
        known,
        now: site.now,
    }
}

/// "Ravi moved it to Friday."
pub fn moved_by(moved: &Move, facts: &Facts<'_>) -> Line {
    Line::new("moved-by").with("who", mover(moved, facts)).with("day", Said::Day(moved.to))
}

/// Who moved a job: the asker, someone by name, or someone who was forgotten.
pub fn mover(moved: &Move, facts: &Facts<'_>) -> Said {
    let own = moved.by.is_some() && moved.by == facts.asker.as_ref().map(|asker| asker.id.clone());
    let name = moved.by.as_ref().and_then(|by| facts.movers.get(by));
    match name {
        _ if own => Said::Key("you"),
        Some(name) => Said::Quoted(name.clone()),
        None => Said::Key("someone"),
    }
}
