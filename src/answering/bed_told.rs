//! A new bed as it was understood, before it is kept.

use super::answer::{Answer, Outcome};
use super::line::{Line, Said};
use super::new_bed::measures;
use crate::garden::{Bed, Site, Sun};

/// What would be kept of it, and what counts where nothing was said.
#[must_use]
pub fn bed_told(bed: &Bed, site: &Site) -> Answer {
    let name = bed.names.first().cloned().unwrap_or_else(|| bed.id.bed().replace('-', " "));
    let size = measures(bed).into_iter().map(|(_, written)| written).collect();
    let (how, hours) = match bed.sun_counted(site) {
        Sun::Stated(hours) => ("told", hours),
        Sun::Assumed(hours) => ("usual", hours),
        Sun::FromWalls => ("walls", 0.0),
    };
    let lines = vec![
        Line::new("draft-bed")
            .with("site", Said::Quoted(site.name.clone()))
            .with("name", Said::Quoted(name))
            .with("kind", Said::Key(bed.kind.word()))
            .with("size", Said::Size(size)),
        Line::new("draft-bed-sun").with("how", Said::Key(how)).with("hours", Said::Number(hours, 1)),
        Line::new("draft-bed-rest"),
        Line::new("draft-right"),
    ];
    Answer { lines, ..Answer::new(Outcome::AskedBack) }
}
