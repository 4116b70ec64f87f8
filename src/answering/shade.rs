//! "Does it need a net, which, from when?"

use super::answer::{Answer, Outcome};
use super::facts::Facts;
use super::figure::Figure;
use super::line::{Line, Said};
use super::shade_working::{cite, light_left, working};
use super::sow::{Asked, asked, caution_heat};
use super::subject::{StandingCrop, Subject, subjects};
use crate::knowledge::Point;
use crate::needs::shade::{NetNeed, densest, net_need, water_under_net, wind_pressure_n_m2};
use crate::quantity::{Estimate, Fraction, Unit};
use crate::understanding::Reading;

/// So many are told one by one.
const TOLD_ONE_BY_ONE: usize = 3;
/// A gust before a thunderstorm, km/h, for the caution on wind.
const GUST_KM_H: f64 = 60.0;
/// Nets that are sold everywhere, percent of the light they cut (common practice, no source).
const USUAL_CUTS: [f64; 2] = [35.0, 50.0];

/// Whether, how dense, from when until when; which of those offered.
pub fn answer(reading: &Reading, facts: &Facts<'_>) -> Answer {
    if reading.microgreen {
        return tray(reading);
    }
    let asked = match asked(reading, facts) {
        Ok(asked) => asked,
        Err(answer) => return answer,
    };
    let subjects = match shaded(reading, facts) {
        Ok(subjects) => subjects,
        Err(question) => return question,
    };
    let wanted: Vec<(&Subject<'_>, StandingCrop<'_>)> = subjects
        .iter()
        .flat_map(|subject| meant(subject, reading).into_iter().map(move |standing| (subject, standing)))
        .collect();
    let mut needs: Vec<Shaded<'_>> = Vec::new();
    for (subject, standing) in wanted {
        let Some(need) = net_need(standing.crop, &asked.year) else { continue };
        needs.push(Shaded::of(subject, standing, need, reading, facts, &asked));
    }
    if needs.is_empty() {
        return Answer::ask(Line::new("shade-ask-crop"), crop_choices());
    }
    // Where no crop was named, what is due comes first.
    if reading.crops.is_empty() {
        needs.sort_by_key(|shaded| !shaded.need.due);
    }
    let mut answer = Answer::new(Outcome::Answered);
    let several = needs.len() > 1;
    for (position, shaded) in needs.iter().enumerate() {
        shaded.figures(&mut answer, several);
        if position < TOLD_ONE_BY_ONE {
            shaded.lines(&mut answer, reading, (several, position == 0));
            working(&mut answer, shaded, &asked);
        }
        cite(&mut answer, shaded);
    }
    if needs.len() > TOLD_ONE_BY_ONE {
        let more = (needs.len() - TOLD_ONE_BY_ONE) as i64;
        answer.lines.push(Line::new("shade-more-beds").with("count", Said::Count(more)));
    }
    // A storm that is spoken of comes before any shade.
    if reading.points.contains(&Point::Storm) && reading.asks {
        answer.lines.insert(0, Line::new("shade-storm"));
    }
    if needs.iter().any(|shaded| shaded.need.cut.is_some()) {
        if reading.quantities.is_empty() {
            answer.rest.push(Line::new("shade-how"));
        }
        let newtons = wind_pressure_n_m2(GUST_KM_H);
        answer.cautions.push(
            Line::new("caution-net-wind")
                .with("gust", Said::Number(GUST_KM_H, 0))
                .with("kilograms", Said::Number((newtons / 9.81).ceil(), 0)),
        );
    }
    caution_heat(&mut answer, &asked, asked.day);
    answer
}

/// Beds the message means; with neither bed nor crop, all that the asker has something in.
fn shaded<'a>(reading: &Reading, facts: &'a Facts<'a>) -> Result<Vec<Subject<'a>>, Answer> {
    let unsaid = reading.crops.is_empty() && reading.beds.is_empty() && reading.measures.is_empty();
    if !unsaid {
        // Several beds of a kind: each is answered.
        return subjects(&Reading { all_beds: true, ..reading.clone() }, facts);
    }
    let own: Vec<_> = facts.beds().map(|(_, bed)| bed.bed.id.clone()).collect();
    if own.is_empty() {
        return Err(Answer::ask(Line::new("shade-ask-crop"), crop_choices()));
    }
    // "Does it need a net", "shall I put the net up": of one of several beds, and nothing says which.
    let bare = reading.bed_kind.is_none() && reading.days.is_empty() && reading.months.is_empty();
    let bare = bare && reading.sky.is_empty() && reading.quantities.is_empty() && reading.season.is_none();
    let own_way = reading.all_beds
        || reading.follow_up
        || reading.points.iter().any(|point| *point != Point::Own && !point.is_of_a_frame());
    if reading.asks && bare && (reading.of_it || !own_way) {
        return subjects(reading, facts);
    }
    subjects(&Reading { beds: own, all_beds: true, ..reading.clone() }, facts)
}

fn crop_choices() -> Vec<Line> {
    let kinds = ["lettuce", "tomato", "amaranth"];
    kinds.map(|crop| Line::new("choice-crop").with("crop", Said::Crop(crop.to_owned()))).to_vec()
}

/// The crops of a bed that are meant: those named, else all that stand; shoots on a tray want no net.
fn meant<'a>(subject: &'a Subject<'a>, reading: &Reading) -> Vec<StandingCrop<'a>> {
    let named = |standing: &&StandingCrop<'_>| {
        !standing.microgreen && (reading.crops.is_empty() || reading.crops.contains(&standing.crop.id))
    };
    subject.standing.iter().filter(named).copied().collect()
}

/// One crop in one bed with what a net does for it.
pub struct Shaded<'a> {
    pub subject: &'a Subject<'a>,
    pub standing: StandingCrop<'a>,
    pub need: NetNeed,
    /// Usable light at the bed without a net, mol m⁻² d⁻¹; in the first week that a net is due.
    pub light_mol_m2: Option<Estimate<f64>>,
    /// The densest net that leaves the crop its least light.
    pub densest: Option<Fraction>,
    /// The cut to take: within what suits, and of those offered where one does.
    pub cut: Option<Estimate<Fraction>>,
    pub offered: Vec<Fraction>,
    /// Water under it, as a share of that without.
    pub water: Option<Fraction>,
}

impl<'a> Shaded<'a> {
    fn of(
        subject: &'a Subject<'a>,
        standing: StandingCrop<'a>,
        need: NetNeed,
        reading: &Reading,
        facts: &Facts<'a>,
        asked: &Asked<'_>,
    ) -> Self {
        let from = need.from.map_or(asked.day, |from| from.value());
        let light = crate::needs::shade::daily_light_mol_m2(asked.weather, subject.sun_hours, from);
        let least = standing.crop.net.as_ref().map(|net| net.least_light_mol_m2.value());
        let densest = light.zip(least).map(|(light, least)| densest(light.value(), least));
        let offered: Vec<Fraction> = reading
            .quantities
            .iter()
            .filter(|written| written.unit == Unit::Percent && (1.0..=95.0).contains(&written.value))
            .map(|written| Fraction::percent(written.value))
            .collect();
        let cut = need.cut.map(|cut| chosen(cut, densest, &offered));
        let water = cut.filter(|_| need.due).and_then(|cut| {
            let around = subject.surroundings(facts, asked.today)?;
            water_under_net(&around, cut.value())
        });
        Self { subject, standing, need, light_mol_m2: light, densest, cut, offered, water }
    }

    fn figures(&self, answer: &mut Answer, several: bool) {
        let bed = self.subject.own.as_ref().filter(|_| several);
        let crop = Some(self.standing.crop.id.as_str()).filter(|_| several);
        let mut put = |figure: Figure| answer.figures.push(figure.of_bed(bed).of_crop(crop));
        let cut = self.cut.unwrap_or_else(|| Estimate::exactly(Fraction::NONE));
        put(Figure::number("net_percent", cut.map(Fraction::as_percent), "percent"));
        if let Some(from) = self.need.from {
            put(Figure::date("net_from", from));
        }
        if let Some(until) = self.need.until {
            put(Figure::date("net_until", until));
        }
    }

    /// The first of several has its reason, the others tell when and how dense alone.
    fn lines(&self, answer: &mut Answer, reading: &Reading, (several, first): (bool, bool)) {
        let crop = Said::Crop(self.standing.crop.id.clone());
        let base = |phrase: &'static str| {
            Line::new(phrase)
                .with("crop", crop.clone())
                .with("tmax", Said::Temperature(self.need.mean_tmax))
                .with("above", Said::Temperature(self.need.above))
        };
        let (Some(cut), Some(from)) = (self.cut, self.need.from) else {
            answer.lines.push(base("shade-none"));
            return;
        };
        let hangs = self.subject.bed.net_percent.filter(|percent| *percent > 0.0);
        let when = match (self.need.due, hangs) {
            (true, Some(_)) => "keep",
            (true, None) => "now",
            (false, _) => "later",
        };
        // No cut at all suits as well as a thin net: then it is a choice, not a need.
        let percent = cut.value().as_percent();
        answer.lines.push(
            base("shade-net")
                .with("when", Said::Key(when))
                .with("optional", Said::Key(if cut.low() <= Fraction::NONE { "yes" } else { "no" }))
                .with("reason", Said::Key(if first { "yes" } else { "no" }))
                .with("percent", Said::Percent(percent))
                .with("hangs", Said::Percent(hangs.unwrap_or(percent)))
                .with("from", Said::SeasonDay(from.value()))
                .with("ends", Said::Key(if self.need.until.is_some() { "day" } else { "year" }))
                .with("until", Said::SeasonDay(self.need.until.unwrap_or(from).value())),
        );
        for offered in &self.offered {
            answer.lines.push(self.judged(*offered, cut));
        }
        if several && reading.crops.is_empty() {
            return;
        }
        if let Some(too_little) = self.too_dark() {
            answer.lines.push(too_little);
        }
        if self.need.past_limit {
            let line = base("shade-past-limit").with("beyond", Said::Key(self.standing.crop.heat.beyond.word()));
            if several { answer.rest.push(line) } else { answer.lines.push(line) }
        }
        if let Some(less) = self.less_water(cut) {
            answer.rest.push(Line::new("shade-water").with("less", Said::Span(less, 0)));
        }
    }

    /// Percent of the water that the net saves, in steps of 5: from half of the light it cuts (judgement: the air
    /// stays as hot) to what the sum gives.
    fn less_water(&self, cut: Estimate<Fraction>) -> Option<Estimate<f64>> {
        let steps = |share: f64| (share * 20.0).round() * 5.0;
        let (cut, sum) = (cut.value().as_of_one(), 1.0 - self.water?.as_of_one());
        (cut > 0.05).then(|| Estimate::spanning(steps(cut * 0.75), [steps(cut / 2.0), steps(sum)]))
    }

    /// A net that was offered: it suits, cuts too little, or leaves too little light.
    fn judged(&self, offered: Fraction, cut: Estimate<Fraction>) -> Line {
        let dark = self.densest.is_some_and(|densest| offered > densest) || offered > cut.high();
        let verdict = if dark {
            "dark"
        } else if offered < cut.low() {
            "thin"
        } else {
            "suits"
        };
        let line = Line::new("shade-offered")
            .with("percent", Said::Percent(offered.as_percent()))
            .with("verdict", Said::Key(verdict));
        let light = self.light_mol_m2.zip(self.standing.crop.net.as_ref());
        match light {
            Some((light, net)) => line
                .with("known", Said::Key("yes"))
                .with("left", Said::Number(light_left(light.value(), offered), 0))
                .with("least", Said::Number(net.least_light_mol_m2.value(), 0)),
            None => line.with("known", Said::Key("no")),
        }
    }

    /// Even without a net the bed is darker than the crop wants.
    fn too_dark(&self) -> Option<Line> {
        let dark = self.densest.is_some_and(|densest| densest <= Fraction::percent(10.0));
        dark.then(|| {
            Line::new("shade-dark-bed")
                .with("crop", Said::Crop(self.standing.crop.id.clone()))
                .with("hours", Said::Number(self.subject.sun_hours, 1))
        })
    }
}

/// The cut to take: what suits, no denser than the light allows; of those offered the nearest that suits.
fn chosen(cut: Estimate<Fraction>, densest: Option<Fraction>, offered: &[Fraction]) -> Estimate<Fraction> {
    let least = |a: Fraction, b: Fraction| if a < b { a } else { b };
    let most = densest.unwrap_or(cut.high());
    let limited = Estimate::spanning(least(cut.value(), most), [least(cut.low(), most), least(cut.high(), most)]);
    let off = |offered: &Fraction| (offered.as_of_one() - limited.value().as_of_one()).abs();
    let suits = offered.iter().filter(|offered| **offered >= limited.low() && **offered <= limited.high());
    match suits.min_by(|a, b| off(a).total_cmp(&off(b))) {
        Some(offered) => Estimate::spanning(*offered, [limited.low(), limited.high()]),
        None => Estimate::spanning(bought(limited), [limited.low(), limited.high()]),
    }
}

/// A net that can be bought: the nearest usual one within what suits, else the figure itself.
fn bought(cut: Estimate<Fraction>) -> Fraction {
    let off = |usual: &Fraction| (usual.as_of_one() - cut.value().as_of_one()).abs();
    let usual = USUAL_CUTS.map(Fraction::percent).into_iter();
    let suits = usual.filter(|usual| *usual >= cut.low() && *usual <= cut.high());
    suits.min_by(|a, b| off(a).total_cmp(&off(b))).unwrap_or(cut.value())
}

/// Shoots on a tray: dark until they are up, then bright shade (common practice, no source).
fn tray(reading: &Reading) -> Answer {
    let mut answer = Answer::new(Outcome::Answered);
    let percent = Fraction::percent;
    let cut = Estimate::spanning(percent(50.0), [percent(35.0), percent(75.0)]);
    let crop = reading.crops.first().map(String::as_str);
    let figure = Figure::number("net_percent", cut.map(Fraction::as_percent), "percent");
    answer.figures.push(figure.of_crop(crop.filter(|_| reading.crops.len() > 1)));
    answer.lines.push(Line::new("shade-tray"));
    answer.working.push(Line::new("working-shade-tray"));
    answer.cite(&crate::knowledge::SourceRef::new("common-practice", "shade for sprouting trays"));
    answer
}
