//! "What goes in the mix, and how much of each?"

use super::answer::{Answer, Outcome};
use super::care;
use super::facts::Facts;
use super::figure::Figure;
use super::groups;
use super::hint::says;
use super::line::{Line, Said};
use super::subject::{Subject, described_bed, subjects};
use crate::garden::{BedKind, Shape};
use crate::knowledge::{Mix, Point};
use crate::needs::mix::{MixNeed, blocks_need, loose_need, mix_need, top_up_need, total};
use crate::needs::surroundings::vessel;
use crate::quantity::{Estimate, Length, UnitOf, Volume, Written};
use crate::understanding::Reading;
use std::collections::BTreeMap;

/// The article on a mix that has been used before.
const OLD_MIX_ARTICLE: &str = "reviving-old-mix";

/// The recipe, and for a size its litres.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    if let Some(swollen) = super::mix_swollen::answer(reading, facts) {
        return swollen;
    }
    if let Some(sunk) = sunk(reading, facts) {
        return top_up(sunk, reading, facts);
    }
    if reading.all_beds && described_bed(reading).is_none() {
        return whole(reading, facts);
    }
    if let Some(beds) = groups::described(reading, facts) {
        return of_groups(&beds, reading, facts);
    }
    let sized = described_bed(reading).is_some() || reading.beds_named;
    let subject = if sized { subjects(reading, facts).ok().and_then(|all| all.into_iter().next()) } else { None };
    if subject.is_none() {
        // "How do I use last year's mix again" wants the article on it, not the recipe of a new one.
        if let Some(article) = care::article(facts).filter(|article| article.id == OLD_MIX_ARTICLE) {
            return care::told(article);
        }
    }
    // How much a bed takes hangs on its size.
    let of_each = reading.points.contains(&Point::OfEach);
    let amount =
        reading.points.contains(&Point::Amount) && !of_each && reading.crops.is_empty() && reading.materials.is_empty();
    let litres = litres_of_mix(reading).filter(|_| subject.is_none());
    if subject.is_none() && litres.is_none() && (reading.one_more || amount) {
        return Answer::ask(Line::new("ask-size"), Vec::new());
    }
    let id = mix_meant(reading, subject.as_ref());
    let Some(mix) = facts.known.mixes.get(&id) else { return super::handed_over::not_known() };
    if let Some(material) = left_out(reading, mix, facts) {
        return Answer::hand_over(Line::new("mix-without").with("material", Said::Material(material)));
    }
    let mut answer = Answer::new(Outcome::Answered);
    match subject {
        Some(subject) => {
            let count = reading.count.unwrap_or(1.0).max(1.0);
            let need = mix_need(&vessel(&subject.bed.shape), count, mix, facts.known);
            put(&mut answer, mix, &need, &subject.called(), count);
            answer.lines.extend(bags(reading, &need, (&subject, count)));
        }
        None if litres.is_some() => put_litres(&mut answer, mix, litres.unwrap_or_default(), facts),
        None => {
            answer
                .lines
                .push(Line::new("mix-recipe").with("mix", Said::Mix(mix.id.clone())).with("parts", shares(mix)));
        }
    }
    recipe_notes(&mut answer, mix);
    answer
}

/// "One 10 litre bag for two 12 inch pots", "100 litres of mix, how many such pots": how far so much ready mix goes.
fn bags(reading: &Reading, need: &MixNeed, (subject, count): (&Subject<'_>, f64)) -> Option<Line> {
    /// Less is a measure of something in it (judgement).
    const LEAST: Volume = Volume::litres(5.0);
    let own = match subject.bed.shape {
        Shape::Bag { volume, .. } => Some(volume.written()),
        _ => None,
    };
    let other = |said: &&Written| own != Some(**said) && said.volume().is_some_and(|volume| volume >= LEAST);
    let mut others = reading.quantities.iter().filter(other);
    let (holds, None) = (others.next().filter(|_| subject.own.is_none())?, others.next()) else { return None };
    let litres = holds.volume()?.as_litres();
    let line = Line::new(if reading.in_bags { "mix-bags" } else { "mix-have" }).with("holds", Said::Size(vec![*holds]));
    if reading.in_bags {
        let bags = need.loose.map(|loose| (loose.as_litres() / litres).ceil());
        return Some(line.with("bags", Said::Span(bags, 0)));
    }
    // The most that one takes fills the fewest.
    let fills = (litres * count / need.loose.high().as_litres().max(0.1)).floor();
    let how = match fills {
        fills if fills < count => "short",
        _ if count > 1.0 => "enough",
        _ => "fills",
    };
    Some(line.with("how", Said::Key(how)).with("fills", Said::Count(fills as i64)))
}

/// "50 litres of mix": so much as it is stirred, for no bed that was told.
fn litres_of_mix(reading: &Reading) -> Option<Volume> {
    /// Less is a measure of something in it (judgement).
    const LEAST: Volume = Volume::litres(5.0);
    reading.quantities.iter().find_map(|said| said.volume()).filter(|volume| *volume >= LEAST)
}

/// The parts of so much loose mix.
fn put_litres(answer: &mut Answer, mix: &Mix, litres: Volume, facts: &Facts<'_>) {
    let settled = litres * (1.0 - mix.properties.settling.is.value().as_of_one());
    let need = loose_need(Estimate::exactly(settled), mix, facts.known);
    figures(answer, &need);
    answer.lines.push(
        Line::new("mix-of-litres")
            .with("litres", Said::Volume(Estimate::exactly(litres)))
            .with("settled", Said::Volume(need.settled)),
    );
    answer.lines.push(parts(&need));
    working(answer, mix, &need);
}

/// The part of the mix that is to be left out: its recipe says nothing of a mix without it.
fn left_out(reading: &Reading, mix: &Mix, facts: &Facts<'_>) -> Option<String> {
    let parts = mix.components.iter().map(|part| &part.material);
    let mut parts = parts.chain(mix.additions.iter().map(|part| &part.material));
    let named = parts.find(|part| reading.materials.contains(part))?;
    says(reading, &facts.known.talk.without).then(|| named.clone())
}

/// How far the mix has gone down, where that is told: one length beside a word for it.
fn sunk(reading: &Reading, facts: &Facts<'_>) -> Option<Written> {
    /// Further down a bed is filled anew.
    const MOST: Length = Length::metres(0.5);
    let mut lengths = reading.quantities.iter().filter(|said| said.unit.measures() == UnitOf::Length);
    let last = lengths.next_back().filter(|_| says(reading, &facts.known.talk.sunk))?;
    let depth = last.length()?;
    (depth > Length::default() && depth <= MOST).then_some(*last)
}

/// What fills a bed up again.
fn top_up(sunk: Written, reading: &Reading, facts: &Facts<'_>) -> Answer {
    let subject = match subjects(reading, facts) {
        Ok(subjects) => subjects.into_iter().next(),
        Err(question) => return question,
    };
    let Some((subject, depth)) = subject.zip(sunk.length()) else { return super::handed_over::not_known() };
    let id = mix_meant(reading, Some(&subject));
    let Some(mix) = facts.known.mixes.get(&id) else { return super::handed_over::not_known() };
    let need = top_up_need(vessel(&subject.bed.shape).measures().top, depth, mix, facts.known);
    let mut answer = Answer::new(Outcome::Answered);
    figures(&mut answer, &need);
    answer.lines.push(
        Line::new("mix-top-up")
            .with("litres", Said::Volume(need.loose))
            .with("bed", subject.called())
            .with("sunk", Said::Size(vec![sunk])),
    );
    answer.lines.push(parts(&need));
    working(&mut answer, mix, &need);
    recipe_notes(&mut answer, mix);
    answer
}

/// Beds of several sizes that were described, added up and only then rounded.
fn of_groups(beds: &[(Subject<'_>, f64)], reading: &Reading, facts: &Facts<'_>) -> Answer {
    let id = mix_meant(reading, None);
    let Some(mix) = facts.known.mixes.get(&id) else { return super::handed_over::not_known() };
    let needs = beds.iter().map(|(subject, count)| mix_need(&vessel(&subject.bed.shape), *count, mix, facts.known));
    let all = total(&needs.collect::<Vec<_>>());
    let mut answer = Answer::new(Outcome::Answered);
    figures(&mut answer, &all);
    answer.lines.push(
        Line::new("mix-groups")
            .with("litres", Said::Volume(all.loose))
            .with("settled", Said::Volume(all.settled))
            .with("beds", groups::called(beds)),
    );
    answer.lines.push(parts(&all));
    working(&mut answer, mix, &all);
    recipe_notes(&mut answer, mix);
    answer
}

/// One list for all beds of a person.
fn whole(reading: &Reading, facts: &Facts<'_>) -> Answer {
    let subjects = match subjects(reading, facts) {
        Ok(subjects) => subjects,
        Err(question) => return question,
    };
    let mut answer = Answer::new(Outcome::Answered);
    put_whole(&mut answer, &subjects, facts);
    if answer.figures.is_empty() { super::handed_over::not_known() } else { answer }
}

/// The mix of several beds, each by its own recipe, added up and only then rounded.
pub fn put_whole(answer: &mut Answer, subjects: &[Subject<'_>], facts: &Facts<'_>) {
    let mut by_mix: BTreeMap<&str, (&Mix, Vec<MixNeed>)> = BTreeMap::new();
    for subject in subjects {
        if let Some(mix) = subject.mix(facts) {
            let need = mix_need(&vessel(&subject.bed.shape), 1.0, mix, facts.known);
            by_mix.entry(mix.id.as_str()).or_insert_with(|| (mix, Vec::new())).1.push(need);
        }
    }
    if by_mix.is_empty() {
        return;
    }
    let totals: Vec<(&Mix, MixNeed)> = by_mix.into_values().map(|(mix, needs)| (mix, total(&needs))).collect();
    let all = total(&totals.iter().map(|(_, need)| need.clone()).collect::<Vec<_>>());
    figures(answer, &all);
    answer.lines.push(
        Line::new("mix-litres")
            .with("litres", Said::Volume(all.loose))
            .with("settled", Said::Volume(all.settled))
            .with("bed", all_beds(subjects.len()))
            .with("count", Said::Count(1)),
    );
    if totals.len() > 1 {
        let each = totals.iter().map(|(mix, need)| {
            let line = Line::new("mix-part").with("material", Said::Mix(mix.id.clone()));
            Said::Line(Box::new(line.with("amount", Said::Volume(need.loose))))
        });
        answer.lines.push(Line::new("mix-parts").with("parts", Said::List(each.collect())));
    }
    answer.lines.push(parts(&all));
    let pressed = blocks(&all, answer, facts);
    answer.lines.extend(pressed);
    for (mix, need) in &totals {
        working(answer, mix, need);
        recipe_notes(answer, mix);
    }
}

/// How several beds are called together.
pub fn all_beds(count: usize) -> Said {
    Said::Line(Box::new(Line::new("mix-all-beds").with("count", Said::Count(count as i64))))
}

/// What comes pressed, by weight and in whole blocks.
fn blocks(need: &MixNeed, answer: &mut Answer, facts: &Facts<'_>) -> Vec<Line> {
    /// A usual block, kg (common practice; smaller bricks are sold too).
    const BLOCK_KG: f64 = 5.0;
    let mut lines = Vec::new();
    for part in &need.parts {
        let swell = facts.known.materials.get(&part.material).and_then(|material| material.swell_l_per_kg.as_ref());
        let Some((litres, swell)) = part.litres.zip(swell) else { continue };
        let mass = blocks_need(&litres, &swell.is);
        answer.cite(&swell.source);
        lines.push(
            Line::new("mix-blocks")
                .with("material", Said::Material(part.material.clone()))
                .with("mass", Said::Mass(mass))
                .with("blocks", Said::Span(mass.map(|mass| (mass.as_kilograms() / BLOCK_KG).ceil()), 0)),
        );
    }
    lines
}

/// The mix that was named, else that of the bed, else what suits a sprouting tray or a bed.
fn mix_meant(reading: &Reading, subject: Option<&Subject<'_>>) -> String {
    let tray = reading.microgreen || reading.bed_kind == Some(BedKind::Tray);
    let own = subject.filter(|subject| subject.own.is_some()).map(|subject| subject.bed.mix_counted());
    // "Mix" alone is the house mix's name too: only another one was chosen by name.
    let named = reading.mixes.iter().map(String::as_str).find(|mix| *mix != "house");
    named.or(own).unwrap_or(if tray { "tray" } else { "house" }).to_owned()
}

/// Figures, lines and working of a mix for beds of a size.
pub fn put(answer: &mut Answer, mix: &Mix, need: &MixNeed, bed: &Said, count: f64) {
    figures(answer, need);
    answer.lines.push(
        Line::new("mix-litres")
            .with("litres", Said::Volume(need.loose))
            .with("settled", Said::Volume(need.settled))
            .with("bed", bed.clone())
            .with("count", Said::Count(count as i64)),
    );
    answer.lines.push(parts(need));
    working(answer, mix, need);
}

/// The same of a bed that was named above.
pub fn put_below(answer: &mut Answer, mix: &Mix, need: &MixNeed) {
    figures(answer, need);
    let line = Line::new("build-mix").with("litres", Said::Volume(need.loose));
    answer.lines.push(line.with("settled", Said::Volume(need.settled)));
    answer.lines.push(parts(need));
    working(answer, mix, need);
}

fn figures(answer: &mut Answer, need: &MixNeed) {
    answer.figures.push(Figure::quantity("litres_total", &need.loose));
    answer.figures.push(Figure::quantity("litres_settled", &need.settled));
    for part in &need.parts {
        if let Some(litres) = &part.litres {
            answer.figures.push(Figure::quantity(format!("litres_of.{}", part.material), litres));
        }
        if let Some(mass) = &part.mass {
            answer.figures.push(Figure::quantity(format!("kilograms_of.{}", part.material), mass));
        }
    }
}

fn parts(need: &MixNeed) -> Line {
    let parts = need.parts.iter().map(|part| {
        let material = Said::Material(part.material.clone());
        let line = Line::new("mix-part").with("material", material);
        let line = match (&part.litres, &part.mass) {
            (Some(litres), _) => line.with("amount", Said::Volume(*litres)),
            (None, Some(mass)) => line.with("amount", Said::Mass(*mass)),
            (None, None) => line,
        };
        Said::Line(Box::new(line))
    });
    Line::new("mix-parts").with("parts", Said::List(parts.collect()))
}

fn working(answer: &mut Answer, mix: &Mix, need: &MixNeed) {
    answer.working.push(
        Line::new("working-mix")
            .with("settled", Said::Volume(need.settled))
            .with("rim", Said::Length(mix.properties.rim.value()))
            .with("settling", Said::Percent(mix.properties.settling.value().as_percent()))
            .with("loose", Said::Volume(need.loose)),
    );
    answer.working.push(Line::new("working-recipe").with("mix", Said::Mix(mix.id.clone())).with("parts", shares(mix)));
}

/// Sources and cautions of a recipe.
pub fn recipe_notes(answer: &mut Answer, mix: &Mix) {
    for source in mix.components.iter().map(|component| &component.share.source) {
        answer.cite(source);
    }
    answer.cite(&mix.properties.settling.source);
    answer.cite(&mix.properties.rim.source);
    for caution in &mix.cautions {
        answer.cautions.push(Line::new("caution-text").with("text", Said::Text(caution.clone())));
    }
}

/// The recipe by percent, and what is stirred in by the litre.
fn shares(mix: &Mix) -> Said {
    let components = mix.components.iter().map(|component| {
        Line::new("mix-share")
            .with("material", Said::Material(component.material.clone()))
            .with("percent", Said::Percent(component.share.value().as_percent()))
    });
    let additions = mix.additions.iter().map(|addition| {
        Line::new("mix-addition")
            .with("material", Said::Material(addition.material.clone()))
            .with("grams", Said::Number(addition.grams_per_litre.value(), 0))
    });
    Said::List(components.chain(additions).map(|line| Said::Line(Box::new(line))).collect())
}
