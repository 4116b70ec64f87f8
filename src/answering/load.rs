//! "Can the roof carry it?" What it weighs is told; whether the roof carries it is never.

use super::answer::{Answer, Outcome};
use super::care;
use super::facts::{Facts, SiteFacts};
use super::figure::Figure;
use super::groups;
use super::hint::{has_words, says};
use super::line::{Line, Said};
use super::load_working::{area_working, density, site_working, working};
use super::subject::{Subject, described_bed, subjects};
use crate::garden::{BedId, BedKind, Role, Site};
use crate::knowledge::{Article, Kind, Point, SourceRef};
use crate::needs::load::{AreaLoad, BedLoad, GARDEN_SOIL_KG_PER_L, area_load, bed_load, full_density, site_load};
use crate::quantity::{Estimate, Length, Mass, RoofLoad, Unit, UnitOf, Volume, Written};
use crate::understanding::Reading;

/// So many beds are told one by one; figures are given for all.
const TOLD_ONE_BY_ONE: usize = 5;

/// Before any sum: words that call for an engineer or a person first, in a message about load, or in one about
/// building, room or mix, or in one whose kind is unsure.
pub fn first(reading: &Reading, facts: &Facts<'_>, sure: bool) -> Option<Answer> {
    if reading.points.contains(&Point::FallsOver) && reading.did.is_none() {
        return Some(over_edge());
    }
    let words = &facts.known.talk.roof;
    // Told and not asked: what runs into the rooms below is looked at before all else, whatever was asked before it.
    if (!reading.asks || reading.follow_up) && says(reading, &words.below) && says(reading, &words.damage) {
        return Some(doubt("damage"));
    }
    if says(reading, &words.through) {
        return Some(doubt("damage"));
    }
    let near = matches!(reading.kind, Kind::Load | Kind::Space | Kind::Build | Kind::Mix);
    if near || !sure {
        if says(reading, &words.damage) && (reading.kind == Kind::Load || of_roof(reading)) {
            return Some(doubt("damage"));
        }
        let over_edge = reading.kind == Kind::Load && says(reading, &words.over_edge);
        if over_edge || says(reading, &words.hanging) && (near || of_roof(reading)) {
            return Some(doubt("hanging"));
        }
    }
    (!sure && reading.kind == Kind::Load).then(|| {
        let place = says(reading, &words.place);
        if place { doubt("place") } else { with_caution(super::handed_over::not_known()) }
    })
}

/// Something heavy is spoken of: a leaking hose or a cracked tomato is no roof.
fn of_roof(reading: &Reading) -> bool {
    reading.crops.is_empty() && (reading.bed_kind.is_some() || reading.beds_named || !reading.measures.is_empty())
}

/// An article in place of a weight that nobody asked for: "may I use garden soil in the roof boxes".
pub fn instead<'a>(reading: &Reading, facts: &'a Facts<'_>) -> Option<&'a Article> {
    // "Twenty sacks of mix on the roof": so many weigh, whatever else its words are near to.
    let counted = reading.count.is_some() || reading.vessels.is_some() || reading.in_bags;
    let sacks = ["bori", "bore", "boriyan", "sack", "sacks", "bag", "bags", "बोरी", "बोरे"];
    let counted = counted || sacks.iter().any(|word| reading.all_words.contains(*word));
    let sized = !reading.measures.is_empty() || !reading.quantities.is_empty() || counted;
    let weighs = sized || says(reading, &facts.known.talk.roof.weight);
    care::instead(reading, facts).filter(|_| !weighs)
}

/// Weight, load, the engineer's figure or what to ask for it, what lowers it.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    let words = &facts.known.talk.roof;
    let meant = described_bed(reading).is_some() || reading.beds_named || !reading.crops.is_empty();
    if let Some(depth) = depth_alone(reading).filter(|_| !meant) {
        return of_depth(depth, facts);
    }
    // A drum holds from 20 to 200 litres: none is taken for one.
    const DRUMS: [&str; 8] = ["drum", "drums", "barrel", "barrels", "ड्रम", "tank", "टंकी", "tanki"];
    let drum = DRUMS.iter().any(|word| reading.all_words.contains(*word));
    let own = !reading.beds.is_empty() && reading.beds_named;
    if drum && !own && reading.measures.is_empty() && reading.quantities.is_empty() && meant {
        return with_caution(Answer::ask(Line::new("ask-size"), Vec::new()));
    }
    if says(reading, &words.stored_water) {
        return doubt("water");
    }
    if says(reading, &words.place) && !meant {
        return doubt("place");
    }
    if says(reading, &words.engineer) && !meant {
        return engineers_word(reading, facts);
    }
    if let Some(volume) = volume_of_mix(reading).filter(|_| !meant) {
        return of_volume(volume, facts);
    }
    // One more box is none of those that stand there: its size decides.
    if reading.one_more && described_bed(reading).is_none() {
        return with_caution(Answer::ask(Line::new("ask-what-bed"), Vec::new()));
    }
    // "How heavy will the box be": one that does not stand yet, for all that is said, and its size decides.
    let bare = reading.bed_kind.is_some() && !reading.beds_named && reading.measures.is_empty() && !meant;
    if bare && !reading.follow_up && reading.quantities.is_empty() && has_words(reading, &words.to_come) {
        return with_caution(Answer::ask(Line::new("ask-size"), Vec::new()));
    }
    if let Some(beds) = groups::described(reading, facts) {
        return of_groups(&beds, facts);
    }
    let subjects = match subjects(reading, facts) {
        Ok(subjects) => subjects,
        Err(question) => return which(question, facts),
    };
    let loads: Vec<(&Subject<'_>, BedLoad)> =
        subjects.iter().filter_map(|subject| Some((subject, bed_load(&subject.bed, subject.mix(facts)?)?))).collect();
    if loads.is_empty() {
        return super::handed_over::not_known();
    }
    of_beds(&loads, reading, facts)
}

/// Signs that no sum answers: nothing more is put there until an engineer has looked.
fn doubt(what: &'static str) -> Answer {
    let line = Line::new("load-doubt").with("what", Said::Key(what));
    let mut answer = Answer { stops: !matches!(what, "place" | "water"), ..Answer::hand_over(line) };
    if what == "hanging" {
        answer.cautions.push(Line::new("caution-hanging"));
    }
    with_caution(answer)
}

/// What fell over the edge may fall again, on someone.
fn over_edge() -> Answer {
    let mut answer = Answer { stops: true, ..Answer::hand_over(Line::new("edge-fall")) };
    answer.cautions.push(Line::new("caution-edge"));
    answer.articles.push("working-near-an-edge".to_owned());
    answer.cite(&SourceRef::new("common-practice", ""));
    answer
}

fn with_caution(mut answer: Answer) -> Answer {
    answer.cautions.push(Line::new("caution-load"));
    answer
}

/// A question back about which bed; for several of her own, all of them is an answer too.
fn which(question: Answer, facts: &Facts<'_>) -> Answer {
    let mut question =
        if facts.beds().next().is_none() { Answer::ask(Line::new("ask-load-size"), Vec::new()) } else { question };
    if question.choices.len() > 1 {
        question.choices.truncate(3);
        question.choices.push(Line::new("choice-all-beds"));
    }
    with_caution(question)
}

/// A depth and no bed it could be of: what lies on each square metre.
fn depth_alone(reading: &Reading) -> Option<Written> {
    let lengths: Vec<_> = reading.quantities.iter().filter(|said| said.unit.measures() == UnitOf::Length).collect();
    let volume = reading.quantities.iter().any(|said| said.unit.measures() == UnitOf::Volume);
    match (lengths.as_slice(), reading.measures.as_slice()) {
        ([only], []) if !volume => Some(**only),
        ([_], [measured]) if !volume && measured.length.is_none() && measured.diameter.is_none() => measured.depth,
        _ => None,
    }
}

/// A volume of mix and no bed or vessel it could be in.
fn volume_of_mix(reading: &Reading) -> Option<Written> {
    let vessel = reading.bed_kind.is_some() || !reading.measures.is_empty() || reading.count.is_some();
    match reading.quantities.as_slice() {
        [only] if !vessel && only.unit.measures() == UnitOf::Volume => Some(*only),
        _ => None,
    }
}

/// So many litres of mix, moist and full of water.
fn of_volume(written: Written, facts: &Facts<'_>) -> Answer {
    let Some(mix) = facts.known.mixes.get("house") else { return super::handed_over::not_known() };
    let Some(volume) = written.volume().filter(|volume| *volume > Volume::default()) else {
        return with_caution(Answer::ask(Line::new("ask-load-size"), Vec::new()));
    };
    let weighs = |litre: &Estimate<f64>| litre.map(|litre| Mass::kilograms(litre * volume.as_litres()));
    let soil = Estimate::spanning(GARDEN_SOIL_KG_PER_L.0, [GARDEN_SOIL_KG_PER_L.1]);
    let (wet, full) = (weighs(&mix.properties.density_wet_kg_per_l.is), weighs(&full_density(&mix.properties)));
    let mut answer = Answer::new(Outcome::Answered);
    answer.figures.push(Figure::quantity("kilograms_wet", &wet));
    answer.figures.push(Figure::quantity("kilograms_full_of_water", &full));
    answer.lines.push(
        Line::new("load-volume")
            .with("volume", Said::Size(vec![written]))
            .with("wet", Said::Mass(wet))
            .with("full", Said::Mass(full))
            .with("soil", Said::Span(soil, 1)),
    );
    density(&mut answer, mix);
    answer.cite(&SourceRef::new("roof-garden-pages", "natural soil, light to heavy"));
    with_caution(answer)
}

fn of_depth(written: Written, facts: &Facts<'_>) -> Answer {
    /// Deeper than this it is not a bed's depth.
    const DEEPEST: Length = Length::metres(1.5);
    let Some(mix) = facts.known.mixes.get("house") else { return super::handed_over::not_known() };
    let Some(depth) = written.length().filter(|depth| *depth > Length::default() && *depth <= DEEPEST) else {
        return with_caution(Answer::ask(Line::new("ask-load-size"), Vec::new()));
    };
    let load = area_load(depth, mix);
    let mut answer = Answer::new(Outcome::Answered);
    answer.figures.push(Figure::quantity("kilonewtons_per_square_metre", &load.load));
    answer.lines.push(depth_line(written, &load));
    // One's own roof has a figure only where it is the only one.
    let site = the_site(&[], facts);
    if let Some(site) = site {
        // A bare depth has no tray, sides, plants or ponded water: it is not set against the roof's figure.
        match site.site.engineer_limit_kn_m2 {
            Some(limit) => {
                answer.lines.push(Line::new("load-engineer").with("limit", Said::Size(vec![kilonewtons(limit)])))
            }
            None => answer.lines.push(Line::new("load-ask")),
        }
    } else {
        answer.lines.push(Line::new("load-ask"));
    }
    lower(&mut answer);
    area_working(&mut answer, &load, mix);
    with_caution(answer)
}

fn depth_line(written: Written, load: &AreaLoad) -> Line {
    const SQUARE_FEET_IN_A_SQUARE_METRE: f64 = 10.763_91;
    let kilograms = load.kilograms_per_square_metre.map(Mass::kilograms);
    let on_a_foot = load.kilograms_per_square_metre.map(|mass| Mass::kilograms(mass / SQUARE_FEET_IN_A_SQUARE_METRE));
    Line::new("load-depth")
        .with("depth", Said::Size(vec![written]))
        .with("mass", Said::Mass(kilograms))
        .with("foot", Said::Mass(on_a_foot))
        .with("load", Said::Load(load.load))
}

fn of_beds(loads: &[(&Subject<'_>, BedLoad)], reading: &Reading, facts: &Facts<'_>) -> Answer {
    let mut answer = Answer::new(Outcome::Answered);
    let several = loads.len() > 1;
    // A count is of beds that were described; beside one's own it may be of anything.
    let described = loads.iter().all(|(subject, _)| subject.own.is_none());
    let count = reading.count.filter(|count| described && *count >= 1.0 && *count <= 500.0).unwrap_or(1.0).floor();
    for (subject, load) in loads {
        let bed = subject.own.as_ref().filter(|_| several);
        let wet = load.wet().map(|mass| mass * count);
        answer.figures.push(Figure::quantity("kilograms_wet", &wet).of_bed(bed));
        answer.figures.push(Figure::quantity("kilonewtons_per_square_metre", &load.load()).of_bed(bed));
    }
    let owned: Vec<&BedId> = loads.iter().filter_map(|(subject, _)| subject.own.as_ref()).collect();
    let site = the_site(&owned, facts);
    let heaviest = loads
        .iter()
        .max_by(|a, b| a.1.load().high().partial_cmp(&b.1.load().high()).unwrap_or(std::cmp::Ordering::Equal));
    if several {
        if let Some(site) = site {
            whole_site(&mut answer, site, loads, count, facts, true);
        }
        answer.lines.extend(heaviest.map(|(subject, load)| list(loads, subject, load)));
    } else {
        answer.lines.extend(loads.iter().map(|(subject, load)| bed_line(subject, load, count)));
    }
    match site {
        Some(site) => {
            limit(&mut answer, &site.site, heaviest.map_or((0.0, 0.0), |(_, load)| usual_and_worst(&load.load())))
        }
        None => answer.lines.push(Line::new("load-ask")),
    }
    if let Some(site) = site.filter(|_| !several) {
        whole_site(&mut answer, site, loads, count, facts, described);
    }
    wait(&mut answer, several);
    lower(&mut answer);
    for (subject, load) in loads {
        working(&mut answer, subject, load, facts);
    }
    assumptions(&mut answer, loads);
    with_caution(answer)
}

/// Beds of several sizes that were described: all of them together, and the one that lays most on the slab.
fn of_groups(beds: &[(Subject<'_>, f64)], facts: &Facts<'_>) -> Answer {
    let load = |(subject, count): &(Subject<'_>, f64)| Some((bed_load(&subject.bed, subject.mix(facts)?)?, *count));
    let Some(loads) = beds.iter().map(load).collect::<Option<Vec<(BedLoad, f64)>>>() else {
        return super::handed_over::not_known();
    };
    let sum = |end: fn(&Estimate<Mass>) -> Mass| {
        loads.iter().map(|(load, count)| end(&load.wet()) * *count).fold(Mass::default(), |all, one| all + one)
    };
    let wet = Estimate::spanning(sum(Estimate::value), [sum(Estimate::low), sum(Estimate::high)]);
    let worst = |load: &BedLoad| load.load().high();
    let heaviest = beds
        .iter()
        .zip(&loads)
        .max_by(|a, b| worst(&a.1.0).partial_cmp(&worst(&b.1.0)).unwrap_or(std::cmp::Ordering::Equal));
    let Some(((subject, _), (load, _))) = heaviest else { return super::handed_over::not_known() };
    let mut answer = Answer::new(Outcome::Answered);
    answer.figures.push(Figure::quantity("kilograms_wet", &wet));
    answer.figures.push(Figure::quantity("kilonewtons_per_square_metre", &load.load()));
    answer.lines.push(
        Line::new("load-groups")
            .with("beds", groups::called(beds))
            .with("mass", Said::Mass(wet))
            .with("bed", subject.called())
            .with("load", Said::Load(load.load())),
    );
    match the_site(&[], facts) {
        Some(site) => limit(&mut answer, &site.site, usual_and_worst(&load.load())),
        None => answer.lines.push(Line::new("load-ask")),
    }
    lower(&mut answer);
    for ((subject, _), (load, _)) in beds.iter().zip(&loads) {
        working(&mut answer, subject, load, facts);
    }
    with_caution(answer)
}

/// What waits behind "more": what to ask an engineer, where much else is told and the caution sends there; the whole
/// roof, where one bed stands against the engineer's figure.
fn wait(answer: &mut Answer, several: bool) {
    let has = |phrase: &str| answer.lines.iter().any(|line| line.phrase == phrase);
    let (site, limit) = (has("load-site"), has("load-limit"));
    let waits = |line: &Line| match line.phrase {
        "load-ask" => several || site,
        "load-site" => limit && !several,
        _ => false,
    };
    let (rest, lines) = std::mem::take(&mut answer.lines).into_iter().partition(waits);
    (answer.rest, answer.lines) = (rest, lines);
}

/// Several beds in one line, and the one that lays most on the slab.
fn list(loads: &[(&Subject<'_>, BedLoad)], heaviest: &Subject<'_>, load: &BedLoad) -> Line {
    let parts = loads.iter().take(TOLD_ONE_BY_ONE).map(|(subject, load)| {
        let line = Line::new("load-one").with("bed", subject.called()).with("mass", Said::Mass(load.wet()));
        Said::Line(Box::new(line))
    });
    Line::new("load-heaviest")
        .with("parts", Said::List(parts.collect()))
        .with("bed", heaviest.called())
        .with("load", Said::Load(load.load()))
}

fn bed_line(subject: &Subject<'_>, load: &BedLoad, count: f64) -> Line {
    let usual = Estimate::exactly(load.soaked().value() * count);
    Line::new("load-bed")
        .with("count", Said::Count(count as i64))
        .with("bed", subject.called())
        .with("mass", Said::Mass(load.wet().map(|mass| mass * count)))
        .with("usual", Said::Mass(usual))
        .with("load", Said::Load(load.load()))
}

/// The site that is meant: that of the beds, else the only one.
fn the_site<'f>(beds: &[&BedId], facts: &'f Facts<'_>) -> Option<&'f SiteFacts<'f>> {
    // A crew member may ask about any roof: a stored figure counts only for one that was named, or for a client's own.
    let client = facts.asker.as_ref().is_some_and(|person| person.role == Role::Client);
    if beds.is_empty() && !client {
        return None;
    }
    let mut sites = facts
        .sites
        .iter()
        .filter(|site| beds.is_empty() || beds.iter().any(|bed| site.beds.iter().any(|known| known.bed.id == **bed)));
    let first = sites.next()?;
    sites.next().is_none().then_some(first)
}

/// The worst end, and the load after an ordinary watering, beside a stored engineer's figure; without one, what to ask. Never beside a code's figure.
fn limit(answer: &mut Answer, site: &Site, (usual_kn_m2, worst_kn_m2): (f64, f64)) {
    let Some(limit) = site.engineer_limit_kn_m2 else {
        answer.lines.push(Line::new("load-ask"));
        return;
    };
    answer.figures.push(Figure::number("engineer_limit_kn_m2", Estimate::exactly(limit), "kN/m2"));
    let larger = match (usual_kn_m2 > limit, worst_kn_m2 > limit) {
        (true, _) => "usual",
        (false, true) => "load",
        (false, false) => "limit",
    };
    answer.lines.push(
        Line::new("load-limit").with("limit", Said::Size(vec![kilonewtons(limit)])).with("larger", Said::Key(larger)),
    );
}

/// The load after an ordinary watering and at its heaviest, kN/m².
fn usual_and_worst(load: &Estimate<RoofLoad>) -> (f64, f64) {
    (load.value().as_kilonewtons_per_square_metre(), load.high().as_kilonewtons_per_square_metre())
}

fn kilonewtons(value: f64) -> Written {
    Written { value, unit: Unit::KilonewtonPerSquareMetre }
}

/// All that stands on the roof, and what was described on top of it.
fn whole_site(
    answer: &mut Answer,
    site: &SiteFacts<'_>,
    loads: &[(&Subject<'_>, BedLoad)],
    count: f64,
    facts: &Facts<'_>,
    told: bool,
) {
    let standing = site.beds.iter().filter_map(|bed| {
        let mix = facts.known.mixes.get(bed.bed.mix_counted())?;
        bed_load(&bed.bed, mix)
    });
    let mut all: Vec<BedLoad> = standing.collect();
    for (_, load) in loads.iter().filter(|(subject, _)| subject.own.is_none()) {
        all.extend(std::iter::repeat_n(*load, count as usize));
    }
    let Some(sum) = site_load(&all) else { return };
    answer.figures.push(Figure::quantity("kilograms_site", &sum.total));
    if told {
        answer.lines.push(
            Line::new("load-site")
                .with("site", Said::Quoted(site.site.name.clone()))
                .with("mass", Said::Mass(sum.total))
                .with("count", Said::Count(all.len() as i64)),
        );
    }
    site_working(answer, &sum);
}

fn lower(answer: &mut Answer) {
    let soil = Estimate::spanning(GARDEN_SOIL_KG_PER_L.0, [GARDEN_SOIL_KG_PER_L.1]);
    // How to make it lighter is the next question, not the answer.
    answer.working.push(Line::new("load-lower").with("soil", Said::Span(soil, 1)));
    answer.cite(&SourceRef::new("roof-garden-pages", "natural soil, light to heavy"));
}

fn assumptions(answer: &mut Answer, loads: &[(&Subject<'_>, BedLoad)]) {
    for (subject, _) in loads.iter().filter(|(subject, _)| subject.usual) {
        answer.lines.push(Line::new("load-assumed").with("bed", subject.called()));
    }
    if let Some((subject, _)) =
        loads.iter().find(|(subject, _)| subject.depth_assumed && subject.bed.kind != BedKind::Bag)
        && let Some(depth) = super::subject::depth_written(&subject.bed)
    {
        answer.lines.push(Line::new("assumed-depth").with("depth", Said::Size(vec![depth])));
    }
}

/// "What did the engineer say?", "do I need one?"
fn engineers_word(reading: &Reading, facts: &Facts<'_>) -> Answer {
    let owned: Vec<&BedId> = reading.beds.iter().collect();
    let site = the_site(&owned, facts);
    let mut answer = Answer::new(Outcome::Answered);
    match site.and_then(|site| site.site.engineer_limit_kn_m2) {
        Some(limit) => {
            answer.figures.push(Figure::number("engineer_limit_kn_m2", Estimate::exactly(limit), "kN/m2"));
            answer.lines.push(Line::new("load-engineer").with("limit", Said::Size(vec![kilonewtons(limit)])));
        }
        None => {
            answer.lines.push(Line::new("load-no-engineer"));
            answer.lines.push(Line::new("load-ask"));
        }
    }
    with_caution(answer)
}
