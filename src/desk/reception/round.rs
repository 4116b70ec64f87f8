//! A round by taps: the crew's sites of a day in their order, each bed a card, until all were seen. Where it stands is
//! kept in the store, so that a restart loses no step.

use super::bed_card::Offered;
use super::tap::{Step, Tap};
use super::turn::Turn;
use crate::answering::{Line, Said};
use crate::garden::rights::{may_go_round, may_see_site};
use crate::garden::{BedId, PersonId, SiteId, Slip, Store, StoreError};
use crate::planning::round::{Stop, order, way_km};
use chrono::{NaiveDate, TimeDelta};
use serde::{Deserialize, Serialize};

/// Where someone's round of a day stands.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Round {
    pub person: PersonId,
    pub day: NaiveDate,
    pub state: State,
    /// The beds that are to come, the present one first; those of a site together.
    pub queue: Vec<BedId>,
    /// Those that were gone past, in the order in which they were.
    #[serde(default)]
    pub walked: Vec<BedId>,
    /// Put off once, to the end of their site.
    #[serde(default)]
    pub put_off: Vec<BedId>,
    /// Left out today.
    #[serde(default)]
    pub left_out: Vec<BedId>,
    /// Where it starts, degrees north and east.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub from: Option<(f64, f64)>,
    /// The sites come as given, not by the shortest way.
    #[serde(default)]
    pub as_given: bool,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum State {
    /// Shown, not begun.
    Planned,
    Going,
    Over,
}

impl Slip for Round {
    const DRAWER: &'static str = "rounds";
    fn key(&self) -> String {
        self.person.to_string()
    }
}

impl Round {
    /// A round is of its day; the slip stays a little longer.
    pub const KEPT: TimeDelta = TimeDelta::days(3);
}

/// The order in which the beds of a site were walked last: they come in it the next time.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
pub struct Path {
    pub site: SiteId,
    pub beds: Vec<BedId>,
}

impl Slip for Path {
    const DRAWER: &'static str = "paths";
    fn key(&self) -> String {
        self.site.to_string()
    }
}

/// A site with its latitude and longitude, degrees.
type Placed = (SiteId, (f64, f64));

impl Turn<'_> {
    /// "Round": today's as it stands, else a new one; sites that are named come in the order named.
    pub fn round(&mut self, named: &str) -> Result<(), StoreError> {
        let Some(person) = self.person.clone().filter(|person| may_go_round(Some(person))) else {
            self.say("bot-crew-only", &[]);
            return Ok(());
        };
        let named = self.sites_named(named)?;
        let today = self.today()?;
        let standing = Round::find(self.sheet, person.id.as_str())?.filter(|round| round.day == today);
        match standing {
            Some(round) if named.is_empty() && round.state == State::Going => self.show_round(round),
            Some(round) if named.is_empty() && round.state == State::Over => {
                let again = (self.phrase("round-button-anew", &[]), Tap::Round(Step::Anew), false);
                let text = self.phrase("round-over-already", &[]);
                self.put_card(None, &text, vec![again])
            }
            _ => self.plan(person.id, None, named),
        }
    }

    /// A round that is shown before it begins.
    pub fn plan(&mut self, person: PersonId, from: Option<(f64, f64)>, named: Vec<SiteId>) -> Result<(), StoreError> {
        let as_given = !named.is_empty();
        let sites = if as_given { named } else { self.sites_by_way(from)? };
        let round = Round {
            person,
            day: self.today()?,
            state: State::Planned,
            queue: self.beds_in_order(&sites)?,
            walked: Vec::new(),
            put_off: Vec::new(),
            left_out: Vec::new(),
            from,
            as_given,
        };
        self.show_round(round)
    }

    /// The sites of this person that have beds, as given: a gardener's in the order of their list.
    pub fn sites_given(&self) -> Result<Vec<SiteId>, StoreError> {
        let person = self.person.as_ref();
        let mut sites: Vec<SiteId> = self.sheet.sites()?.into_iter().map(|site| site.id).collect();
        sites.retain(|site| may_see_site(person, site));
        let listed = |site: &SiteId| {
            let place = person.and_then(|person| person.sites.iter().position(|listed| listed == site));
            place.unwrap_or(usize::MAX)
        };
        sites.sort_by_key(listed);
        let mut with_beds = Vec::new();
        for site in sites {
            if !self.sheet.beds_of_site(&site)?.is_empty() {
                with_beds.push(site);
            }
        }
        Ok(with_beds)
    }

    /// The same by the shortest way.
    pub fn sites_by_way(&self, from: Option<(f64, f64)>) -> Result<Vec<SiteId>, StoreError> {
        let given = self.sites_given()?;
        let stops = self.stops(&given)?;
        let stops: Vec<Stop<'_>> = stops.iter().map(|(id, place)| (id.as_str(), place.0, place.1)).collect();
        let ordered = order(&stops, from);
        Ok(ordered.iter().filter_map(|(id, ..)| SiteId::new(id).ok()).collect())
    }

    /// Where sites lie.
    fn stops(&self, sites: &[SiteId]) -> Result<Vec<Placed>, StoreError> {
        let mut stops = Vec::new();
        for id in sites {
            if let Some(site) = self.sheet.site(id)? {
                stops.push((id.clone(), (site.latitude_deg, site.longitude_deg)));
            }
        }
        Ok(stops)
    }

    /// Sites of this person's that a text names, in its order.
    fn sites_named(&self, text: &str) -> Result<Vec<SiteId>, StoreError> {
        let text = text.to_lowercase();
        let mut found: Vec<(usize, SiteId)> = Vec::new();
        for id in self.sites_given()? {
            let Some(site) = self.sheet.site(&id)? else { continue };
            let names = [id.to_string(), id.as_str().replace('-', " "), site.name.to_lowercase()];
            if let Some(at) = names.iter().filter_map(|name| text.find(name.as_str())).min() {
                found.push((at, id));
            }
        }
        found.sort();
        Ok(found.into_iter().map(|(_, id)| id).collect())
    }

    /// The beds of sites, of each in the order of its roof: as they were walked last, new ones at the end.
    fn beds_in_order(&self, sites: &[SiteId]) -> Result<Vec<BedId>, StoreError> {
        let mut all = Vec::new();
        for site in sites {
            let path = Path::find(self.sheet, site.as_str())?.map(|path| path.beds).unwrap_or_default();
            let mut beds: Vec<BedId> = self.sheet.beds_of_site(site)?.into_iter().map(|bed| bed.id).collect();
            beds.sort_by_key(|bed| path.iter().position(|walked| walked == bed).unwrap_or(usize::MAX));
            all.extend(beds);
        }
        Ok(all)
    }

    /// The round of today of whoever is here, as far as they may still see its beds.
    pub fn round_today(&self) -> Result<Option<Round>, StoreError> {
        let Some(person) = self.person.as_ref().filter(|person| may_go_round(Some(person))) else { return Ok(None) };
        let today = self.today()?;
        let round = Round::find(self.sheet, person.id.as_str())?.filter(|round| round.day == today);
        Ok(round.map(|mut round| {
            round.queue.retain(|bed| may_see_site(Some(person), bed.site()));
            round
        }))
    }

    /// Whether the round under way stands at this bed.
    pub fn round_is_at(&self, bed: &BedId) -> Result<bool, StoreError> {
        let round = self.round_today()?.filter(|round| round.state == State::Going);
        Ok(round.is_some_and(|round| round.queue.first() == Some(bed)))
    }

    /// What stands over the card of a bed in a round.
    pub fn round_line(&self, bed: &BedId) -> Result<Option<String>, StoreError> {
        let round = self.round_today()?.filter(|round| round.state == State::Going);
        Ok(round.filter(|round| round.queue.first() == Some(bed)).map(|round| {
            let all = round.walked.len() + round.left_out.len() + round.queue.len();
            let place = (all - round.queue.len() + 1).to_string();
            self.phrase("round-line", &[("n", &place), ("all", &all.to_string())])
        }))
    }

    /// Files where a round stands and shows it.
    pub fn show_round(&mut self, round: Round) -> Result<(), StoreError> {
        self.sheet.write(vec![round.put()?])?;
        match (round.state, round.queue.first()) {
            (State::Planned, None) => {
                self.say("round-nothing", &[]);
                Ok(())
            }
            (State::Planned, Some(_)) => self.show_plan(&round),
            (State::Going, Some(bed)) => self.show_again(bed),
            _ => self.end_round(round),
        }
    }

    /// Roofs in their order, what is due there, the way; and where to start.
    fn show_plan(&mut self, round: &Round) -> Result<(), StoreError> {
        let sites = sites_of(&round.queue);
        let stops = self.stops(&sites)?;
        let stops: Vec<Stop<'_>> = stops.iter().map(|(id, place)| (id.as_str(), place.0, place.1)).collect();
        let way = way_km(&stops, round.from);
        let mut lines = vec![
            Line::new("round-title")
                .with("day", Said::Day(round.day))
                .with("sites", Said::Count(sites.len() as i64))
                .with("beds", Said::Count(round.queue.len() as i64))
                .with("km", Said::Number(way, 1)),
        ];
        let person = self.person.clone();
        for (place, id) in sites.iter().enumerate() {
            let Some(site) = self.sheet.site(id)? else { continue };
            let jobs = self.with_facts_of(person.as_ref(), id, self.here(), |facts| {
                facts.sites.first().map(|site| crate::answering::visit::any_due(site, facts))
            })?;
            let line = Line::new("round-stop")
                .with("n", Said::Count(place as i64 + 1))
                .with("site", Said::Quoted(site.name))
                .with("jobs", Said::Count(jobs.unwrap_or(0) as i64));
            lines.push(line);
        }
        let text = self.put_lines(lines);
        let offer = |key: &str, step: Step| (self.phrase(key, &[]), Tap::Round(step), false);
        let mut buttons: Vec<Offered> = vec![offer("round-button-begin", Step::Begin)];
        if sites.len() > 1 {
            buttons.push(offer("round-button-from-here", Step::AskStart));
            if !round.as_given {
                buttons.push(offer("round-button-as-given", Step::AsGiven));
            }
        }
        self.put_card(None, &text, buttons)
    }
}

impl Round {
    /// Whether it was begun and is not over.
    pub fn is_going(&self) -> bool {
        self.state == State::Going
    }

    pub fn next(&mut self) {
        if !self.queue.is_empty() {
            self.walked.push(self.queue.remove(0));
        }
    }

    /// To the end of its site's beds; a second time it is left out.
    pub fn skip(&mut self) {
        if self.queue.is_empty() {
            return;
        }
        let bed = self.queue.remove(0);
        let more = self.queue.iter().take_while(|next| next.site() == bed.site()).count();
        if more == 0 || self.put_off.contains(&bed) {
            self.left_out.push(bed);
        } else {
            self.put_off.push(bed.clone());
            self.queue.insert(more, bed);
        }
    }

    /// Goes to a bed that is to come; at another site its beds come with it.
    pub fn go(&mut self, bed: &BedId) {
        if !self.queue.contains(bed) {
            return;
        }
        let (there, rest): (Vec<BedId>, Vec<BedId>) =
            self.queue.drain(..).partition(|other| other.site() == bed.site());
        self.queue.push(bed.clone());
        self.queue.extend(there.into_iter().filter(|other| other != bed));
        self.queue.extend(rest);
    }

    /// What is left of a site is left out.
    pub fn leave(&mut self, site: &SiteId) {
        let (there, rest): (Vec<BedId>, Vec<BedId>) = self.queue.drain(..).partition(|bed| bed.site() == site);
        self.left_out.extend(there);
        self.queue = rest;
    }
}

/// The sites of beds, in the order in which they come.
pub fn sites_of(beds: &[BedId]) -> Vec<SiteId> {
    let mut sites: Vec<SiteId> = Vec::new();
    for bed in beds {
        if !sites.contains(bed.site()) {
            sites.push(bed.site().clone());
        }
    }
    sites
}

#[cfg(test)]
mod tests {
    use super::*;

    fn bed(id: &str) -> BedId {
        BedId::new(id).unwrap()
    }

    fn round(beds: &[&str]) -> Round {
        Round {
            person: PersonId::new("ravi").unwrap(),
            day: NaiveDate::from_ymd_opt(2026, 5, 18).unwrap(),
            state: State::Going,
            queue: beds.iter().map(|id| bed(id)).collect(),
            walked: Vec::new(),
            put_off: Vec::new(),
            left_out: Vec::new(),
            from: None,
            as_given: false,
        }
    }

    fn names(beds: &[BedId]) -> Vec<String> {
        beds.iter().map(ToString::to_string).collect()
    }

    #[test]
    fn a_bed_is_put_off_once_and_left_out_the_second_time() {
        let mut going = round(&["a/x", "a/y", "b/z"]);
        going.skip();
        assert_eq!(names(&going.queue), ["a/y", "a/x", "b/z"], "to the end of its own roof");
        going.next();
        going.skip();
        assert_eq!((names(&going.queue), names(&going.left_out)), (vec!["b/z".into()], vec!["a/x".to_owned()]));
        going.skip();
        assert_eq!(names(&going.left_out), ["a/x", "b/z"], "alone on its roof it has no later");
        assert_eq!(names(&going.walked), ["a/y"]);
        going.skip();
        going.next();
        assert!(going.queue.is_empty());
    }

    #[test]
    fn another_bed_first_and_a_roof_left() {
        let mut going = round(&["a/x", "a/y", "b/z", "b/w"]);
        going.go(&bed("b/w"));
        assert_eq!(names(&going.queue), ["b/w", "b/z", "a/x", "a/y"]);
        going.go(&bed("c/none"));
        assert_eq!(going.queue.len(), 4);
        going.leave(&SiteId::new("b").unwrap());
        assert_eq!(names(&going.queue), ["a/x", "a/y"]);
        assert_eq!(names(&going.left_out), ["b/w", "b/z"]);
    }
}
