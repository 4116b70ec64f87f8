//! Whether the nitrogen of a bed lasts a month.

use super::answer::Answer;
use super::facts::{BedFacts, Facts};
use super::figure::Figure;
use super::line::{Line, Said};
use super::subject::Subject;
use crate::garden::{JobDone, JobKind};
use crate::knowledge::{Crop, FeedUse};
use crate::needs::feed::{Given, Taken, grown, nitrogen_balance};
use crate::needs::mix::mix_need;
use crate::needs::surroundings::vessel;
use crate::quantity::{Estimate, Mass};
use chrono::NaiveDate;

/// Less than this is within the doubt of any sum, g.
const NOTHING_G: f64 = 0.5;

/// The balance of the asker's own bed, where its filling, its mix's feeds and its crops' take are known; else
/// nothing is said.
pub fn nitrogen(answer: &mut Answer, subject: &Subject<'_>, facts: &Facts<'_>) -> Option<()> {
    let (_, bed) = facts.bed(subject.own.as_ref()?)?;
    let added = subject.bed.mix_added?;
    let mut given = of_mix(subject, facts, added)?;
    given.extend(bed.jobs.iter().filter_map(|job| of_feed(job, facts, added)));
    let taken = taken(subject, facts, bed, added)?;
    let balance = nitrogen_balance(&given, &taken, subject.today());
    answer.figures.push(Figure::number("nitrogen_short_g", balance.short_g, "g"));
    if balance.short_g.value() >= NOTHING_G {
        answer.lines.push(Line::new("feed-short").with("grams", Said::Span(balance.short_g, 0)));
    }
    for part in &given {
        answer.cite(&part.feed.nitrogen.source);
        answer.cite(&part.feed.released.source);
    }
    answer.working.push(
        Line::new("working-nitrogen")
            .with("released", Said::Span(balance.released_g, 0))
            .with("taken", Said::Span(balance.taken_g, 0))
            .with("short", Said::Span(balance.short_g, 0))
            .with("day", Said::Day(added)),
    );
    Some(())
}

/// What the mix held when it was filled in.
fn of_mix<'a>(subject: &Subject<'_>, facts: &'a Facts<'_>, added: NaiveDate) -> Option<Vec<Given<'a>>> {
    let mix = subject.mix(facts)?;
    let need = mix_need(&vessel(&subject.bed.shape), 1.0, mix, facts.known);
    let given: Vec<Given<'a>> = need
        .parts
        .into_iter()
        .filter_map(|part| Some(Given { feed: feed(facts, &part.material)?, mass: part.mass?, on: added }))
        .collect();
    (!given.is_empty()).then_some(given)
}

fn feed<'a>(facts: &'a Facts<'_>, material: &str) -> Option<&'a FeedUse> {
    facts.known.materials.get(material)?.feed.as_ref()
}

/// A feed that was given since, if its amount was noted as a weight.
fn of_feed<'a>(job: &JobDone, facts: &'a Facts<'_>, added: NaiveDate) -> Option<Given<'a>> {
    let fed = matches!(job.job, JobKind::Feed | JobKind::TopUp) && job.on.date() >= added;
    let mass = job.amount.filter(|_| fed)?.mass()?;
    Some(Given { feed: feed(facts, job.what.as_deref()?)?, mass: Estimate::exactly(mass), on: job.on.date() })
}

/// What was picked of each crop since the mix went in, and what stands and will grow.
fn taken(subject: &Subject<'_>, facts: &Facts<'_>, bed: &BedFacts, added: NaiveDate) -> Option<Vec<Taken>> {
    let top = vessel(&subject.bed.shape).measures().top;
    let mut picks: Vec<Pick<'_>> = bed.jobs.iter().filter_map(|job| Pick::of(job, bed, added)).collect();
    let mut all = Vec::new();
    for standing in &subject.standing {
        let crop = standing.crop;
        let feeding = crop.feeding.as_ref()?;
        let start = standing.start?.date();
        let age = (subject.today() - start.max(added)).num_days().max(0) as f64;
        let shared = subject.standing.len() as f64;
        let whole = crop.harvest.grams_per_m2.is.map(|grams| Mass::grams(grams * top.as_square_metres() / shared));
        let own = |pick: &Pick<'_>| pick.crop == crop.id && pick.from == Some(start);
        let picked = picks.extract_if(.., |pick| own(pick)).map(|pick| pick.mass).sum();
        let fresh = grown(&whole, age, days_in_bed(crop), picked);
        all.push(Taken { fresh, nitrogen_g_per_kg: feeding.nitrogen_g_per_kg.is });
    }
    // Crops that stood here before, of whatever kind, took theirs from the same mix.
    for pick in picks {
        if let Some(feeding) = facts.known.crops.get(pick.crop).and_then(|crop| crop.feeding.as_ref()) {
            all.push(Taken { fresh: Estimate::exactly(pick.mass), nitrogen_g_per_kg: feeding.nitrogen_g_per_kg.is });
        }
    }
    (!all.is_empty()).then_some(all)
}

/// One picking and the planting it came from.
struct Pick<'a> {
    crop: &'a str,
    mass: Mass,
    /// The day that planting began; none where no such planting is on record.
    from: Option<NaiveDate>,
}

impl<'a> Pick<'a> {
    /// What was picked since a day: of the crop named, else of the only one that stood; of plantings of one crop, of
    /// the oldest that stood the day before (a bed may be picked bare, cleared and sown again on one day).
    fn of(job: &'a JobDone, bed: &'a BedFacts, since: NaiveDate) -> Option<Self> {
        let mass = job.amount.filter(|_| job.job == JobKind::Pick && job.on.date() >= since)?.mass()?;
        let stood = bed.standing(job.on.date().pred_opt()?);
        let crop = match (job.what.as_deref(), stood.as_slice()) {
            (Some(crop), _) => crop,
            (None, [only]) => only.crop.as_str(),
            (None, _) => return None,
        };
        let from = stood.iter().filter(|planting| planting.crop == crop).map(|planting| planting.start.date()).min();
        Some(Self { crop, mass, from })
    }
}

/// Whole time in the bed: as its file says, else the sum of its stages.
fn days_in_bed(crop: &Crop) -> f64 {
    let stages = &crop.stages;
    let sum = stages.initial_days.value()
        + stages.development_days.value()
        + stages.mid_days.value()
        + stages.late_days.value();
    crop.season.as_ref().map_or(sum, |season| season.days_in_bed.value())
}
