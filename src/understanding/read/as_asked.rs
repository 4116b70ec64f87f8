//! Work that was asked about and is then told as done, without its name: "do tomatoes need a net", then "put it up".

use super::Told;
use super::deeds::Deeds;
use crate::garden::JobKind;
use crate::knowledge::Kind;
use crate::quantity::UnitOf;
use crate::script::Text;
use crate::understanding::Reading;

/// Such a message has at most so many words.
const LONGEST: usize = 14;

/// Words of a habit, of a time long gone or of a complaint: nothing is to be noted.
const HABIT: [&str; 30] = [
    "every",
    "daily",
    "always",
    "usually",
    "weekly",
    "year",
    "years",
    "season",
    "ago",
    "used",
    "before",
    "roz",
    "rozana",
    "hamesha",
    "har",
    "saal",
    "much",
    "zyada",
    "jyada",
    "zyaada",
    "ज़्यादा",
    "ज्यादा",
    "pehle",
    "pahle",
    "रोज़",
    "रोज",
    "हमेशा",
    "हर",
    "साल",
    "पहले",
];

/// Verbs for what is put into a bed.
const PUT: [&str; 14] = [
    "put",
    "sown",
    "sowed",
    "dala",
    "dali",
    "daala",
    "daali",
    "lagaya",
    "lagayi",
    "lagai",
    "डाला",
    "डाली",
    "लगाया",
    "लगाई",
];

/// The work that a question is about.
pub(super) fn work_asked_about(before: &Reading) -> Option<JobKind> {
    if !before.asks || before.did.is_some() {
        return None;
    }
    Some(match before.kind {
        Kind::Water => JobKind::Water,
        Kind::Spray => JobKind::Spray,
        Kind::Feed => JobKind::Feed,
        Kind::Shade => JobKind::Net,
        Kind::Sow => JobKind::Sow,
        Kind::Harvest => JobKind::Pick,
        _ => return None,
    })
}

/// "Pichli baar 1 May ko di thi": what the question counts from, and nothing to note.
pub(super) fn tells_of_last_time(text: &Text) -> bool {
    const LAST: [&str; 9] = ["last", "pichli", "pichhli", "pichla", "aakhri", "akhri", "पिछली", "पिछला", "आखिरी"];
    const TIME: [&str; 8] = ["time", "one", "round", "baar", "bar", "feed", "spray", "बार"];
    (0..text.tokens.len()).any(|at| LAST.contains(&text.normal(at)) && TIME.contains(&text.normal(at + 1)))
}

impl Deeds<'_> {
    /// "De di aaj subah", "gave it, one mug", "did it", where that work was asked about just before; `did` is what the
    /// words tell by themselves: "laga diya" is said of a net as of a plant.
    pub(super) fn as_asked(&self, before: &Reading, did: Option<JobKind>) -> Option<JobKind> {
        let job = work_asked_about(before)?;
        let of_either = did.is_none() || job == JobKind::Net && did == Some(JobKind::Plant) && self.names.is_empty();
        if !of_either || tells_of_last_time(self.text) {
            return None;
        }
        let words = self.text.tokens.iter().filter(|token| token.is_word()).count();
        let habit = (0..self.text.tokens.len()).any(|at| HABIT.contains(&self.text.normal(at)));
        // "28 April I put them in", "25 ko daali" tells of a sowing, though the harvest was asked about.
        let put = |at: usize| PUT.contains(&self.text.normal(at));
        if job == JobKind::Pick && (self.says(&Told::PutIn) || (0..self.text.tokens.len()).any(put)) {
            let sown = !self.asks && self.gone && !self.is_to_come() && words <= LONGEST && !habit;
            return (sown && !self.measures(UnitOf::Mass)).then_some(JobKind::Sow);
        }
        let other = self.things().into_iter().any(|(_, kind)| kind != job) || self.says(&Told::Ails);
        let told = !self.asks && words <= LONGEST && !habit && !other && !self.is_to_come();
        let claims = self.claims();
        let done = || {
            let net = job == JobKind::Net && self.says(&Told::NetDown);
            let verb = |hit: &super::Hit<Told>| {
                let verb = hit.meaning == Told::Done || net && hit.meaning == Told::NetDown;
                (verb || did.is_some() && hit.meaning == Told::Did(JobKind::Plant)) && claims.is_made(&hit.span)
            };
            self.told.iter().any(verb)
        };
        (told && !claims.is_no_earnest() && done()).then_some(job)
    }
}

/// What was asked about is what was given.
pub(super) fn with_stuff_asked_about(reading: &mut Reading, before: &Reading) {
    let done = reading.kind == Kind::Record && reading.follow_up && reading.did == work_asked_about(before);
    if done
        && reading.did.is_some()
        && reading.materials.is_empty()
        && before.materials.len() == 1
        && reading.crops == before.crops
    {
        reading.materials.clone_from(&before.materials);
    }
}
