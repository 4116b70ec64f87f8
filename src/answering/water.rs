//! "How much water, how often, now or not, this week?"

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::figure::Figure;
use super::line::{Line, Said};
use super::subject::{Subject, place_choices, subjects};
use super::water_bed::BedWater;
use super::water_working::{cite, working};
use super::{water_asked, water_away, water_now, water_salt};
use crate::garden::{Assumed, SeenKind};
use crate::knowledge::Aspect;
use crate::needs::heat::{PastLimit, past_limit};
use crate::needs::salt::{FlushDay, Salts};
use crate::needs::water::WaterWeek;
use crate::quantity::{Estimate, Temperature, UnitOf, Volume};
use crate::understanding::Reading;
use crate::weather::Day;

/// So many beds are told one by one; figures are given for all.
pub const TOLD_ONE_BY_ONE: usize = 4;

/// The rhythm, the litres each turn, the reason, the finger test; and what else was asked about it.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    let said = reading;
    let reading = &meant(reading, facts);
    let subjects = match subjects(reading, facts) {
        Ok(subjects) => subjects,
        Err(question) => return question,
    };
    if subjects.is_empty() {
        return super::handed_over::not_known();
    }
    if subjects.iter().all(|subject| subject.weather.is_none()) {
        return Answer::ask(Line::new("ask-which-place"), place_choices(facts));
    }
    let other_time = water_asked::other_time(reading, facts);
    let subjects: Vec<Subject<'_>> = match other_time {
        Some(day) => subjects.into_iter().map(|subject| water_asked::on_day(subject, day)).collect(),
        None => subjects,
    };
    let mut unsummed = Vec::new();
    let mut beds: Vec<BedWater<'_>> = Vec::new();
    for subject in &subjects {
        match BedWater::of(subject, said, facts) {
            Some(bed) if other_time.is_some() => beds.push(water_asked::without_record(bed)),
            Some(bed) => beds.push(bed),
            None => unsummed.push(subject.called()),
        }
    }
    if beds.is_empty() {
        return super::handed_over::not_known();
    }
    let asks = |aspect| reading.aspects.contains(&aspect);
    let mut answer = Answer::new(Outcome::Answered);
    for bed in &beds {
        cite(&mut answer, bed, facts);
    }
    if asks(Aspect::Salt) {
        if let Some(unanswered) = water_salt::answered(&mut answer, &beds) {
            return unanswered;
        }
    } else if asks(Aspect::Away) || asks(Aspect::Without) {
        water_away::answered(&mut answer, &beds, reading, facts);
    } else {
        answer.lines.extend(other_time.map(water_asked::told));
        usual(&mut answer, &beds, reading);
        answer.tables.extend(beds.iter().map(super::water_table::table));
    }
    let all_summed = unsummed.is_empty();
    answer.lines.extend(not_summed(unsummed));
    let several = beds.len() > 1;
    for bed in &beds {
        figures(&mut answer, bed, reading, several);
    }
    if other_time.is_some() {
        water_asked::of_other_days(&mut answer);
    }
    // A total with a bed missing is no total of the site.
    if all_summed && (reading.all_beds || several && beds.len() == facts.beds().count()) {
        let all = by_the_day(&beds);
        answer.figures.push(Figure::number("litres_per_day_site", all.map(Volume::as_litres), "L/day"));
    }
    for bed in beds.iter().take(TOLD_ONE_BY_ONE) {
        answer.working.extend(working(bed, facts));
    }
    if let Some(first) = beds.first() {
        let lines = assumptions(first, facts).into_iter();
        answer.lines.extend(lines.filter(|line| other_time.is_none() || line.phrase != "assumed-usual-days"));
    }
    answer
}

/// Beds that are asked about and can't be summed are named, never passed over.
pub fn not_summed(beds: Vec<Said>) -> Option<Line> {
    (!beds.is_empty()).then(|| Line::new("water-not-summed").with("beds", Said::List(beds)))
}

/// The reading as a question of water takes it: what a drip or a hose gives describes no bed, and who goes
/// away means every bed.
fn meant(reading: &Reading, facts: &Facts<'_>) -> Reading {
    let mut reading = reading.clone();
    if reading.aspects.contains(&Aspect::Away) && reading.beds.is_empty() && reading.crops.is_empty() {
        reading.all_beds = true;
        reading.beds = facts.beds().map(|(_, bed)| bed.bed.id.clone()).collect();
    }
    if reading.aspects.iter().any(|aspect| matches!(aspect, Aspect::Drip | Aspect::Hose)) {
        reading.quantities.retain(|said| said.unit.measures() != UnitOf::Volume);
    }
    // What a mug holds is no size of a bag.
    if let Some(holds) = reading.vessels.as_ref().and_then(|vessels| vessels.holds) {
        reading.quantities.retain(|said| *said != holds);
    }
    reading
}

/// How often and how much, and whether now.
fn usual(answer: &mut Answer, beds: &[BedWater<'_>], reading: &Reading) {
    let Some(first) = beds.first() else { return };
    // What a hand has felt comes before what the sum says of now.
    if reading.saw == Some(SeenKind::StillWet) {
        answer.lines.push(Line::new("water-skip-turn"));
    } else if reading.aspects.contains(&Aspect::Now) {
        answer.lines.extend(beds.iter().take(TOLD_ONE_BY_ONE).flat_map(water_now::lines));
    }
    let several = beds.len() > 1;
    if several {
        answer.lines.push(Line::new("water-all-beds").with("day", Said::Volume(by_the_day(beds))));
    } else {
        limits(answer, beds);
    }
    for bed in beds.iter().take(TOLD_ONE_BY_ONE) {
        answer.lines.push(rhythm(bed));
        answer.lines.extend(bed.once.then(|| Line::new("water-once")));
        answer.lines.extend(water_asked::of_all(bed, reading));
        answer.lines.extend(water_asked::in_vessels(bed, reading));
        answer.lines.extend(bed.gently());
        if reading.aspects.contains(&Aspect::EachDay) {
            answer.lines.push(bed.day_by_day());
        }
        if reading.aspects.contains(&Aspect::Drip) && bed.week.rhythm > 0.0 {
            answer.lines.push(bed.drip_line());
        }
    }
    if beds.len() > TOLD_ONE_BY_ONE {
        let more = (beds.len() - TOLD_ONE_BY_ONE) as i64;
        answer.lines.push(Line::new("water-more-beds").with("count", Said::Count(more)));
    }
    if several {
        limits(answer, beds);
    }
    answer.lines.push(reason(&first.week));
    answer.lines.extend(water_salt::soon(first));
    answer.lines.extend(check(&first.week));
}

/// A crop past what it stands is told so; of one bed, before it is watered.
fn limits(answer: &mut Answer, beds: &[BedWater<'_>]) {
    let mut told = std::collections::BTreeSet::new();
    for BedWater { subject, week, .. } in beds {
        let days: Vec<Day> = week.days.iter().map(|(day, _)| *day).collect();
        // A shoot is cut before heat can make it flower.
        let grown = subject.standing.iter().filter(|standing| !standing.microgreen);
        for standing in grown.filter(|standing| told.insert(standing.crop.id.as_str())) {
            let crop = Said::Crop(standing.crop.id.clone());
            match past_limit(standing.crop, &days) {
                Some(PastLimit::Hot { mean_tmax, limit, beyond }) => {
                    answer.cite(&limit.source);
                    let line = Line::new("water-past-heat")
                        .with("crop", crop)
                        .with("tmax", Said::Temperature(mean_tmax))
                        .with("limit", Said::Temperature(limit.value()))
                        .with("beyond", Said::Key(beyond.word()));
                    answer.lines.push(line);
                }
                Some(PastLimit::Cold { mean_tmin, limit }) => {
                    answer.cite(&limit.source);
                    let line = Line::new("water-past-cold")
                        .with("crop", crop)
                        .with("tmin", Said::Temperature(mean_tmin))
                        .with("limit", Said::Temperature(limit.value()));
                    answer.lines.push(line);
                }
                None => {}
            }
        }
    }
}

/// The name of a rhythm as phrases know it.
pub fn rhythm_key(rhythm: f64) -> &'static str {
    match rhythm {
        r if r < 0.5 => "none",
        r if r < 2.0 => "weekly",
        r if r < 3.0 => "third",
        r if r < 5.0 => "second",
        r if r < 10.0 => "daily",
        r if r < 17.0 => "twice",
        _ => "thrice",
    }
}

/// How often and how much.
pub fn rhythm(bed: &BedWater<'_>) -> Line {
    let BedWater { subject, week, .. } = bed;
    let line = Line::new("water-rhythm")
        .with("rhythm", Said::Key(if bed.once { "once" } else { rhythm_key(week.rhythm) }))
        .with("bed", subject.called())
        .with("week", Said::Volume(week.litres));
    match bed.each_turn() {
        Some(turn) => line.with("turn", Said::About(turn)),
        None => line,
    }
}

fn figures(answer: &mut Answer, water: &BedWater<'_>, reading: &Reading, several: bool) {
    let BedWater { subject, week, .. } = water;
    let bed = subject.own.as_ref().filter(|_| several);
    let crop = subject.standing.first().map(|standing| standing.crop.id.as_str()).filter(|_| several);
    let mut put = |figure: Figure| answer.figures.push(figure.of_bed(bed).of_crop(crop));
    let turn = water.each_turn();
    if let Some(turn) = &turn {
        put(Figure::quantity("litres_per_watering", turn));
    }
    put(Figure::number("waterings_per_week", week.waterings, "1/week"));
    if week.rhythm > 0.0 {
        put(Figure::number("days_between_waterings", Estimate::exactly(7.0 / week.rhythm), "day"));
    }
    put(Figure::quantity("litres_this_week", &week.litres));
    put(Figure::number("reference_et", week.reference_et.map(|et| et.as_millimetres()), "mm/day"));
    let rate = |aspect| water.rate.filter(|_| reading.aspects.contains(&aspect));
    if let Some(turn) = turn {
        let hose = rate(Aspect::Hose).or(subject.hose_l_min).filter(|rate| *rate > 0.0);
        if let Some(litres_a_minute) = hose {
            put(Figure::number("seconds_of_hose", turn.map(|litres| litres.as_litres() / litres_a_minute * 60.0), "s"));
        }
        if let Some(can) = subject.can.filter(|can| can.as_litres() > 0.0) {
            put(Figure::number("cans", turn.map(|litres| litres / can), "1"));
        }
    }
    if let Some(minutes) = water.drip_minutes().filter(|_| reading.aspects.contains(&Aspect::Drip)) {
        put(Figure::number("drip_minutes", minutes, "min"));
    }
    if let Some(days) = water.days_until_dry(reading) {
        put(Figure::number("days_until_dry", days, "day"));
    }
    if let Some(Salts::Flush(flush)) = &water.salts {
        if let FlushDay::Between(days) = flush.on {
            put(Figure::date("next_flush", days));
        }
        put(Figure::quantity("litres_to_flush", &flush.litres));
    }
}

/// All beds together, by the day.
fn by_the_day(beds: &[BedWater<'_>]) -> Estimate<Volume> {
    let sum = |end: fn(&Estimate<Volume>) -> Volume| beds.iter().map(|bed| end(&bed.week.litres)).sum::<Volume>();
    let value = sum(Estimate::value);
    Estimate::spanning(value, [sum(Estimate::low), sum(Estimate::high)]).map(|litres| litres / 7.0)
}

fn reason(week: &WaterWeek) -> Line {
    let hottest =
        week.days.iter().map(|(day, _)| day.tmax).fold(Temperature::celsius(-90.0), |a, b| if b > a { b } else { a });
    let dry = week.days.iter().all(|(_, loss)| loss.reference.humidity_min.as_percent() < 30.0);
    let wet = week.rain.as_millimetres() >= WET_WEEK_MM;
    let air = if wet {
        "wet"
    } else if dry {
        "dry"
    } else {
        "plain"
    };
    Line::new("water-reason")
        .with("loss", Said::Depth(week.loss_per_day))
        .with("tmax", Said::Temperature(hottest))
        .with("air", Said::Key(air))
        .with("rain", Said::Depth(Estimate::exactly(week.rain)))
}

/// What the finger checks before a turn.
pub fn check(week: &WaterWeek) -> Option<Line> {
    (week.rhythm > 0.0).then(|| {
        let hot = week.days.iter().any(|(day, _)| day.tmax.as_celsius() >= HOSE_HEATS_C);
        Line::new("water-check").with("hot", Said::Key(if hot { "hot" } else { "mild" }))
    })
}

/// Above this a hose in the sun gives water that scalds roots first (common practice, no source).
const HOSE_HEATS_C: f64 = 38.0;

/// What was assumed, if it changes the answer.
fn assumptions(bed: &BedWater<'_>, facts: &Facts<'_>) -> Vec<Line> {
    let BedWater { subject, week, .. } = bed;
    let mut lines = Vec::new();
    if subject.usual {
        lines.push(Line::new("assumed-bed").with("bed", subject.called()));
    } else if subject.assumed.contains(&Assumed::SunHours) {
        lines.push(Line::new("assumed-sun").with("hours", Said::Hours(subject.sun_hours)));
    }
    let own = subject.own.as_ref().and_then(|id| facts.bed(id));
    if own.is_some_and(|(_, bed)| bed.net_unrated) {
        let cut = Said::Percent(subject.bed.net_counted().as_percent());
        lines.push(Line::new("assumed-net").with("cut", cut));
    }
    if week.usual_days == week.days.len() && week.rain.as_millimetres() >= WET_WEEK_MM {
        lines.push(Line::new("assumed-usual-rain").with("days", Said::Number(week.wet_days(), 0)));
    }
    if week.usual_days > 0 {
        let place = subject.weather.as_ref().and_then(|weather| weather.normals());
        if let Some((place, _)) = place {
            // A forecast that lacks some days is another thing than no forecast at all.
            let line = if week.usual_days < week.days.len() {
                Line::new("assumed-usual-days-part").with("days", Said::Count(week.usual_days as i64))
            } else {
                Line::new("assumed-usual-days")
            };
            let line = line.with("place", Said::Place(place.id.clone())).with("day", Said::Day(subject.today()));
            lines.push(line);
        }
    }
    lines
}

/// Rain of a week that is worth a word.
const WET_WEEK_MM: f64 = 5.0;
