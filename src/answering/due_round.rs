//! "Which roof first tomorrow": in which order the roofs with work are gone round.

use super::answer::Answer;
use super::due::places;
use super::facts::Facts;
use super::line::{Line, Said};
use super::table::Table;
use crate::garden::SiteId;
use std::collections::BTreeSet;

/// The roofs on which the jobs told stand, in the order of the way, before the jobs.
pub fn put(answer: &mut Answer, facts: &Facts<'_>) {
    let with_work: BTreeSet<SiteId> = answer
        .tables
        .iter()
        .filter_map(|table| match table {
            Table::Due(due) => Some(due.jobs.iter().map(|job| job.site.clone())),
            _ => None,
        })
        .flatten()
        .collect();
    if with_work.is_empty() {
        return;
    }
    let places = places(facts);
    let mut sites: Vec<_> = facts.sites.iter().filter(|site| with_work.contains(&site.site.id)).collect();
    sites.sort_by_key(|site| site.beds.iter().filter_map(|bed| places.get(&bed.bed.id)).min().copied());
    let names: Vec<Said> = sites.iter().map(|site| Said::Quoted(site.site.name.clone())).collect();
    let how = if names.len() > 1 { "several" } else { "one" };
    answer.lines.insert(0, Line::new("due-round").with("how", Said::Key(how)).with("sites", Said::List(names)));
}
