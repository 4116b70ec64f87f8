//! The steps of a round that are tapped, its start, its end.

use super::awaits::Awaited;
use super::bed_card::Offered;
use super::round::{Path, Round, State, sites_of};
use super::tap::{Step, Tap};
use super::turn::Turn;
use crate::answering::{Line, Said};
use crate::garden::rights::may_go_round;
use crate::garden::{BedId, Slip, Store, StoreError};
use crate::script::Language;
use chrono::NaiveDate;

impl Turn<'_> {
    /// A step of the round was tapped.
    pub fn round_step(&mut self, step: Step) -> Result<(), StoreError> {
        let Some(person) = self.person.clone().filter(|person| may_go_round(Some(person))) else {
            self.say("bot-crew-only", &[]);
            return Ok(());
        };
        self.await_nothing()?;
        let Some(mut round) = self.round_today()? else { return self.plan(person.id, None, Vec::new()) };
        match step {
            Step::Begin => round.state = State::Going,
            Step::AskStart => {
                self.await_next(Awaited::RoundStart)?;
                self.say("round-ask-start", &[]);
                return Ok(());
            }
            Step::From { latitude_deg, longitude_deg } => return self.round_from((latitude_deg, longitude_deg)),
            Step::AsGiven => {
                let given = self.sites_given()?;
                return self.plan(person.id, None, given);
            }
            Step::Anew => return self.plan(person.id, round.from, Vec::new()),
            Step::Next => round.next(),
            Step::Skip => round.skip(),
            Step::Go(bed) => round.go(&bed),
            Step::LeaveSite(site) => round.leave(&site),
            Step::Others => return self.show_others(&round),
            Step::End => {
                for bed in std::mem::take(&mut round.queue) {
                    let gone_past = self.worked_in(&bed, round.day)?;
                    if gone_past { round.walked.push(bed) } else { round.left_out.push(bed) }
                }
            }
        }
        if round.queue.is_empty() {
            round.state = State::Over;
        }
        self.show_round(round)
    }

    /// Whether something was recorded in a bed on a day.
    fn worked_in(&self, bed: &BedId, day: NaiveDate) -> Result<bool, StoreError> {
        let jobs = self.sheet.jobs_of_bed(bed)?;
        let seen = self.sheet.seen_of_bed(bed)?;
        Ok(jobs.iter().any(|job| job.on.date() == day) || seen.iter().any(|seen| seen.on.date() == day))
    }

    /// The round starts where the person is; beds gone past stay so.
    pub fn round_from(&mut self, position: (f64, f64)) -> Result<(), StoreError> {
        self.await_nothing()?;
        let Some(person) = self.person.clone().filter(|person| may_go_round(Some(person))) else {
            self.say("bot-crew-only", &[]);
            return Ok(());
        };
        match self.round_today()? {
            Some(mut round) if round.state == State::Going => {
                let sites = self.sites_by_way(Some(position))?;
                let place = |bed: &BedId| sites.iter().position(|site| site == bed.site()).unwrap_or(usize::MAX);
                round.queue.sort_by_key(place);
                round.from = Some(position);
                self.show_round(round)
            }
            _ => self.plan(person.id, Some(position), Vec::new()),
        }
    }

    /// Beds to go to instead: of this site, then the first of the others; and to leave this roof.
    fn show_others(&mut self, round: &Round) -> Result<(), StoreError> {
        /// So many are offered.
        const OFFERED: usize = 16;
        let Some(here) = round.queue.first().cloned() else { return self.end_round(round.clone()) };
        let mut buttons: Vec<Offered> = Vec::new();
        for bed in round.queue.iter().skip(1).filter(|bed| bed.site() == here.site()).take(OFFERED) {
            let name = self.bed_name(bed)?;
            buttons.push((name, Tap::Round(Step::Go(bed.clone())), buttons.len() % 2 == 1));
        }
        for site in sites_of(&round.queue).iter().skip(1).take(OFFERED) {
            let first = round.queue.iter().find(|bed| bed.site() == site);
            if let (Some(bed), Some(site)) = (first, self.sheet.site(site)?) {
                buttons.push((site.name, Tap::Round(Step::Go(bed.clone())), false));
            }
        }
        let leave = Step::LeaveSite(here.site().clone());
        buttons.push((self.phrase("round-button-leave", &[]), Tap::Round(leave), false));
        buttons.push((self.phrase("card-button-back", &[]), self.card_of(&here), false));
        let question = self.phrase("round-where-to", &[]);
        self.put_card(Some(&here), &question, buttons)
    }

    /// What a bed is called, in the script of this chat where there is such a name.
    pub fn bed_name(&self, bed: &BedId) -> Result<String, StoreError> {
        let names = self.sheet.bed(bed)?.map(|bed| bed.names).unwrap_or_default();
        let devanagari = |name: &&String| name.chars().any(|c| ('\u{900}'..='\u{97f}').contains(&c));
        let hindi = self.language == Language::Hi;
        let fitting = names.iter().find(|name| devanagari(name) == hindi).or_else(|| names.first());
        Ok(fitting.cloned().unwrap_or_else(|| bed.bed().replace('-', " ")))
    }

    /// The end: what was left out, and the notes for those who live there.
    pub fn end_round(&mut self, mut round: Round) -> Result<(), StoreError> {
        round.state = State::Over;
        let mut changes = vec![round.put()?];
        for site in sites_of(&round.walked) {
            let mut beds: Vec<BedId> = round.walked.iter().filter(|bed| *bed.site() == site).cloned().collect();
            // What was not walked this time keeps its place behind.
            let known = Path::find(self.sheet, site.as_str())?.map(|path| path.beds).unwrap_or_default();
            beds.extend(known.into_iter().filter(|bed| !round.walked.contains(bed)));
            changes.push(Path { site, beds }.put()?);
        }
        self.sheet.write(changes)?;
        let over = Line::new("round-over")
            .with("sites", Said::Count(sites_of(&round.walked).len() as i64))
            .with("beds", Said::Count(round.walked.len() as i64));
        let mut text = self.put_lines(vec![over]);
        if !round.left_out.is_empty() {
            let names = round.left_out.iter().map(|bed| self.bed_name(bed)).collect::<Result<Vec<_>, _>>()?;
            text = format!("{text}\n{}", self.phrase("round-left-out", &[("beds", &names.join(", "))]));
        }
        self.put_card(None, &text, Vec::new())?;
        self.offer_notes(round.day)
    }
}
