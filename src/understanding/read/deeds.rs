//! What a message tells as done.

use super::claims::{BOTH_TENSES, Claims};
use super::{Hit, Named, Quantities, Told};
use crate::garden::JobKind;
use crate::knowledge::{Aspect, Knowledge, MaterialKind, Point};
use crate::quantity::UnitOf;
use crate::script::{Language, Text};
use rustc_hash::FxHashSet;
use std::ops::Range;

/// What a text says of work, and what it is looked at with.
pub(super) struct Deeds<'a> {
    pub text: &'a Text,
    pub known: &'a Knowledge,
    pub told: &'a [Hit<Told>],
    pub names: &'a [Hit<Named>],
    pub quantities: &'a Quantities,
    /// Where days are named, and whether one of them has come.
    pub days: &'a [Range<usize>],
    pub come: bool,
    /// One of them is gone by.
    pub gone: bool,
    pub asks: bool,
    /// It stands in a list of what was done.
    pub noted: bool,
}

impl Deeds<'_> {
    /// The job that is told as done.
    pub(super) fn job(&self) -> Option<JobKind> {
        if self.claims().is_no_earnest() || self.is_mishap() {
            return None;
        }
        self.said()
            .or_else(|| self.measured())
            .or_else(|| self.net_moved())
            .or_else(|| self.put_in())
            .or_else(|| self.told_plainly())
            .or_else(|| self.noted())
            .filter(|job| *job != JobKind::Pick || !self.claims().is_bought() && !self.broke_a_vessel())
    }

    pub(super) fn claims(&self) -> Claims<'_> {
        Claims {
            text: self.text,
            words: &self.known.words,
            told: self.told,
            names: self.names,
            days: self.days,
            asks: self.asks,
        }
    }

    pub(super) fn says(&self, what: &Told) -> bool {
        self.told.iter().any(|hit| hit.meaning == *what)
    }

    pub(super) fn names_any(&self, what: impl Fn(&Named) -> bool) -> bool {
        self.names.iter().any(|hit| what(&hit.meaning))
    }

    pub(super) fn measures(&self, what: UnitOf) -> bool {
        self.quantities.said.iter().any(|said| said.written.unit.measures() == what)
    }

    /// Something to give, or what a bed is filled with: what was measured may be that.
    pub(super) fn stuff(&self) -> bool {
        self.names_any(|name| matches!(name, Named::Material(_) | Named::Mix(_)))
            || self.says(&Told::Thing(JobKind::Sow))
    }

    /// Said alone, or by a thing with a word for done a few words apart.
    fn said(&self) -> Option<JobKind> {
        const APART: usize = 5;
        let claims = self.claims();
        // "Put them out on 1 July, fine?": asked of a day to come.
        let to_come = self.asks && !self.days.is_empty() && !self.come;
        // "Ungli daali": felt, and nothing given.
        let felt = |span: &Range<usize>| {
            let no_deed = |hit: &Hit<Told>| hit.meaning == Told::NoDeed && hit.span.contains(&span.start);
            self.text.language != Language::En && self.told.iter().any(no_deed)
        };
        let claimed = |hit: &&Hit<Told>| {
            let later = to_come && BOTH_TENSES.contains(&self.text.normal(hit.span.start));
            claims.is_made(&hit.span) && !later && !felt(&hit.span)
        };
        let deeds = || self.told.iter().filter(|hit| matches!(hit.meaning, Told::Did(_))).filter(claimed);
        // "Chhantai kar di" is said of pruning, though "chhanti" alone is thinning.
        let within = |hit: &Hit<Told>| {
            let around = |other: &&Hit<Told>| {
                other.span.len() > hit.span.len()
                    && other.span.start <= hit.span.start
                    && hit.span.end <= other.span.end
            };
            deeds().any(|other| around(&other))
        };
        let alone = deeds().filter(|hit| !within(hit)).find_map(|hit| match hit.meaning {
            Told::Did(kind) => Some(kind),
            _ => None,
        });
        let mut done: Vec<Range<usize>> = self
            .told
            .iter()
            .filter(|hit| hit.meaning == Told::Done)
            .filter(claimed)
            .map(|hit| hit.span.clone())
            .collect();
        // "Vermicompost is in the box as of yesterday".
        let in_place = self.told.iter().filter(|hit| hit.meaning == Told::PutIn && self.come).filter(claimed);
        done.extend(in_place.map(|hit| hit.span.clone()));
        done.extend(self.verbs().into_iter().filter(|span| claims.is_made(span)));
        let with_thing =
            self.things().into_iter().filter(|(span, _)| !self.is_without(span)).find_map(|(span, kind)| {
                let far = |done: &Range<usize>| kind != JobKind::Water && self.governs(done, &span);
                let became = |done: &Range<usize>| self.became(done, kind);
                let near = |done: &Range<usize>| {
                    let close = done.start.abs_diff(span.start) <= APART || far(done);
                    let out = kind == JobKind::Water && self.runs_out(done, &span);
                    *done != span && close && !out && !became(done) && !self.is_of_a_clause_before(done, &span)
                };
                done.iter().any(near).then_some(kind)
            });
        // Water is sprinkled with the word for spraying.
        let sprays = self.things().iter().any(|(_, kind)| *kind == JobKind::Spray);
        if (alone, with_thing, sprays) == (Some(JobKind::Spray), Some(JobKind::Water), false) {
            return Some(JobKind::Water);
        }
        // "Sau gram nikli" sounds as the word for pulled out: so much came of it.
        let came = |hit: &Hit<Told>| hit.meaning == Told::Got && claims.is_made(&hit.span);
        if alone == Some(JobKind::Pull) && self.measures(UnitOf::Mass) && self.told.iter().any(came) {
            return Some(JobKind::Pick);
        }
        // "Planted" in Hindi is also what one does with a net: the thing decides.
        let weeds = self.says(&Told::Thing(JobKind::Weed));
        match (alone, with_thing) {
            (Some(JobKind::Pull | JobKind::Clear), _) if weeds => Some(JobKind::Weed),
            // "Repotted into fresh mix".
            (Some(JobKind::Plant), Some(JobKind::TopUp)) if self.text.language == Language::En => Some(JobKind::Plant),
            (Some(JobKind::Plant), Some(kind)) => Some(kind),
            // "Topped the basket with fresh mix" cuts no tops.
            (Some(JobKind::Prune), _) if self.is_topped_with_mix() => Some(JobKind::TopUp),
            // A tray is sown.
            (Some(JobKind::Plant), None) if self.is_of_a_tray() => Some(JobKind::Sow),
            (Some(JobKind::Stake), Some(JobKind::Net)) => Some(JobKind::Net),
            (Some(kind), _) => Some(kind),
            (None, thing) => thing,
        }
    }

    /// "Mitti patthar ho gayi", "paudhe bade ho gaye": what they became, and no work.
    fn became(&self, done: &Range<usize>, kind: JobKind) -> bool {
        let ho = matches!(self.text.normal(done.start), "ho" | "हो" | "hua" | "hui" | "hue" | "हुआ" | "हुई" | "हुए");
        ho && matches!(kind, JobKind::TopUp | JobKind::Plant)
    }

    /// "The tray stood full of water, emptied it": let out again, where "emptied a can of water over it" pours it in.
    fn runs_out(&self, done: &Range<usize>, water: &Range<usize>) -> bool {
        water.start < done.start && matches!(self.text.normal(done.start), "emptied" | "drained" | "tipped")
    }

    /// "Bina dawa ke", "without water".
    fn is_without(&self, thing: &Range<usize>) -> bool {
        const WITHOUT: [&str; 6] = ["without", "bina", "bagair", "bager", "बिना", "बगैर"];
        // "25 April ko daali, pehli katai kab": the first one is to come.
        const FIRST: [&str; 9] = ["pehli", "pahli", "pehla", "pahla", "agli", "agla", "पहली", "पहला", "अगली"];
        let of_picking = self.told.iter().any(|hit| hit.meaning == Told::Thing(JobKind::Pick) && hit.span == *thing);
        let word = thing.start.checked_sub(1).map_or("", |before| self.text.normal(before));
        WITHOUT.contains(&word) || self.asks && of_picking && FIRST.contains(&word)
    }

    /// In Hindi the verb comes after the thing: one before a comma or stop was done to something else.
    fn is_of_a_clause_before(&self, done: &Range<usize>, thing: &Range<usize>) -> bool {
        let mark = |at: usize| matches!(self.text.normal(at), "," | "." | "।" | ";" | "?");
        self.text.language != Language::En && done.end <= thing.start && (done.end..thing.start).any(mark)
    }

    /// What work is done with: what is given or sprayed before all else, since "cake water" is a feed and "neem cake" no
    /// spray.
    pub(super) fn things(&self) -> Vec<(Range<usize>, JobKind)> {
        let stuff: Vec<(Range<usize>, JobKind)> =
            self.names.iter().filter_map(|hit| Some((hit.span.clone(), self.given_with(&hit.meaning)?))).collect();
        let within = |span: &Range<usize>| {
            stuff.iter().any(|(of, _)| of.start <= span.start && span.end <= of.end && of.len() >= span.len())
        };
        // "Cake water" is a feed, though no cake is named.
        const STEEPED: [&str; 7] = ["cake", "compost", "manure", "dung", "vermi", "khali", "खली"];
        let steeped = |at: usize| at.checked_sub(1).is_some_and(|before| STEEPED.contains(&self.text.normal(before)));
        // "Sabun wala paani", "neem ka paani": the water is what was stirred into it.
        const OF: [&str; 12] = ["wala", "wale", "wali", "ka", "ki", "ke", "वाला", "वाले", "का", "की", "के", "vala"];
        let stirred = |at: usize| {
            let of = at.checked_sub(1).filter(|before| OF.contains(&self.text.normal(*before)));
            stuff.iter().find(|(span, _)| span.end == of.unwrap_or(at)).map(|(_, kind)| *kind)
        };
        let things = self.told.iter().filter_map(|hit| match hit.meaning {
            Told::Thing(JobKind::Water) if steeped(hit.span.start) => Some((hit.span.clone(), JobKind::Feed)),
            Told::Thing(JobKind::Water) if stirred(hit.span.start).is_some() => {
                Some((hit.span.clone(), stirred(hit.span.start)?))
            }
            Told::Thing(kind) if !within(&hit.span) => Some((hit.span.clone(), kind)),
            _ => None,
        });
        let mut all: Vec<(Range<usize>, JobKind)> = things.collect();
        // "Water" beside what is stirred into it says less; a seed or a net says more.
        let place = all.iter().position(|(_, kind)| *kind == JobKind::Water).unwrap_or(all.len());
        all.splice(place..place, stuff);
        all
    }

    pub(super) fn given_with(&self, name: &Named) -> Option<JobKind> {
        let Named::Material(id) = name else { return None };
        match self.known.materials.get(id)?.kind {
            MaterialKind::Spray => Some(JobKind::Spray),
            MaterialKind::Feed | MaterialKind::Meal | MaterialKind::Compost => Some(JobKind::Feed),
            MaterialKind::Net => Some(JobKind::Net),
            _ => None,
        }
    }

    /// English verbs with the ending of what is done, where a sentence has its verb: at its beginning, after who did it,
    /// or in the passive. "Rotted manure" and "compost needed" hold none.
    fn verbs(&self) -> Vec<Range<usize>> {
        const BEFORE: [&str; 19] = [
            "i", "we", "he", "she", "have", "has", "just", "already", "also", "and", "then", "n", "was", "were",
            "been", "got", "is", "are", "gets",
        ];
        if self.text.language != Language::En {
            return Vec::new();
        }
        let free = |at: usize| self.names.iter().all(|hit| !hit.span.contains(&at));
        let no_deed = |at: usize| self.told.iter().any(|hit| hit.meaning == Told::NoDeed && hit.span.contains(&at));
        let places = (0..self.text.tokens.len()).filter(|at| {
            let word = self.text.normal(*at);
            let past = word.len() >= 5 && word.ends_with("ed") && !word.ends_with("eed");
            let placed = at.checked_sub(1).is_none_or(|before| {
                BEFORE.contains(&self.text.normal(before))
                    || self.text.tokens.get(before).is_some_and(|token| !token.is_word())
            });
            past && placed && free(*at) && !no_deed(*at)
        });
        places.map(|at| at..at + 1).collect()
    }

    /// Told and not asked about: "got 400 g of tomatoes", a crop and a weight; "done, 4 L on the east box", "the pot got
    /// two mugs", a bed and what was poured.
    fn measured(&self) -> Option<JobKind> {
        let planted = self.names_any(|name| matches!(name, Named::Crop(_) | Named::OwnBed(_)));
        // "2 litres each to both papaya tubs": poured, whatever stands in them.
        let stands = planted || self.names_any(|name| matches!(name, Named::BedKind(_) | Named::OtherPlant(_)));
        if self.asks || !self.quantities.dimensions.is_empty() || self.stuff() || !stands {
            return None;
        }
        let word = |what: &str| (0..self.text.tokens.len()).any(|at| self.text.normal(at) == what);
        let took = word("took") && (word("off") || word("down") || word("home"));
        let told = self.says(&Told::Got) || self.notes() || self.handed_out() || took;
        // "Hose on the east box 3 min this morning".
        let hosed = self.says(&Told::Aspect(Aspect::Hose)) && !self.quantities.durations.is_empty();
        if hosed && self.come && !self.days.is_empty() && !self.is_to_come() {
            return Some(JobKind::Water);
        }
        let done = told || self.done_claimed();
        // "Chilli, 180 g today": a crop, its weight and a day that has come.
        let weighed = self.come && !self.is_to_come() && self.names_any(|name| matches!(name, Named::Crop(_)));
        let picked = told || self.says(&Told::Thing(JobKind::Pick)) || weighed && !self.says_done();
        if planted && picked && self.measures(UnitOf::Mass) {
            return Some(JobKind::Pick);
        }
        (done && self.poured()).then_some(JobKind::Water)
    }

    pub(super) fn is_to_come(&self) -> bool {
        // "May" of "16 May" is no word for what is to come.
        let dated = |at: usize| self.days.iter().any(|day| day.contains(&at));
        // "One can each to the bag".
        let poured = |at: usize| {
            let vessel = self.told.iter().any(|hit| hit.meaning == Told::Vessel && hit.span.contains(&at));
            let measured = self.quantities.said.iter().any(|said| said.span.contains(&at));
            vessel && counted(self.text, at) || measured
        };
        (0..self.text.tokens.len()).any(|at| !dated(at) && !poured(at) && self.known.words.is_to_come(self.text, at))
    }

    fn says_done(&self) -> bool {
        self.says(&Told::Done)
    }

    /// "Net down from the tomato, 16 May": told without a verb, of a bed or crop and a day that has come.
    fn net_moved(&self) -> Option<JobKind> {
        let planted = self.names_any(|name| matches!(name, Named::Crop(_) | Named::OwnBed(_) | Named::BedKind(_)));
        let net = self.things().iter().any(|(_, kind)| *kind == JobKind::Net);
        // "Net up over the chilli since Wednesday". "Up on the one, down from the other" is two moves that no verb parts.
        let up = (0..self.text.tokens.len()).any(|at| self.text.normal(at) == "up");
        let moved = if up { !self.says(&Told::NetDown) && !self.days.is_empty() } else { self.says(&Told::NetDown) };
        (net && planted && moved && self.come && !self.asks && !self.is_to_come()).then_some(JobKind::Net)
    }

    fn done_claimed(&self) -> bool {
        let claims = self.claims();
        self.told.iter().any(|hit| hit.meaning == Told::Done && claims.is_made(&hit.span))
    }

    /// A volume that is no size of a bag, or vessels of a number: "two mugs", "half a can".
    fn poured(&self) -> bool {
        let of_bed = |at: usize| {
            self.names
                .iter()
                .any(|hit| hit.span.contains(&at) && matches!(hit.meaning, Named::BedKind(_) | Named::OwnBed(_)))
        };
        let volume = self
            .quantities
            .said
            .iter()
            .any(|said| said.written.unit.measures() == UnitOf::Volume && !of_bed(said.span.end));
        let vessel = self.told.iter().any(|hit| hit.meaning == Told::Vessel && counted(self.text, hit.span.start));
        volume || vessel
    }

    /// "Chaulai 28 april ko daali": a crop that was put in on a day gone by, and nothing measured; or a crop and such a
    /// day with a word for done, and picking asked about.
    fn put_in(&self) -> Option<JobKind> {
        const APART: usize = 5;
        let crops = || self.names.iter().filter(|hit| matches!(hit.meaning, Named::Crop(_)));
        let measured = self.measures(UnitOf::Mass) || self.poured();
        let soaked = || self.tray_set() && !self.names_any(|name| matches!(name, Named::Material(_) | Named::Mix(_)));
        if crops().next().is_none() || !self.come || self.stuff() && !soaked() {
            return None;
        }
        let claims = self.claims();
        // "The mint put out new leaves today": no one sowed it.
        let put = self
            .told
            .iter()
            .filter(|hit| hit.meaning == Told::PutIn && claims.is_made(&hit.span))
            .filter(|hit| !self.names_what_grows(hit.span.start))
            .any(|hit| crops().any(|crop| crop.span.start.abs_diff(hit.span.start) <= APART));
        let put = put || self.tray_set() || self.put_it_in(&claims);
        let picking = self.says(&Told::Thing(JobKind::Pick)) || self.says(&Told::Point(Point::Wait));
        (put && !measured || picking && self.done_claimed()).then_some(JobKind::Sow)
    }

    /// Whether a word of the clause there is one for what a plant puts out itself.
    pub(super) fn names_what_grows(&self, verb: usize) -> bool {
        const ENDS: [&str; 14] =
            [".", "?", "!", ";", "।", ",", "when", "how", "kab", "कब", "and", "but", "no", "still"];
        const LOOKS: [&str; 4] = ["leaf", "flower", "bud", "fruit"];
        let looks = self.known.looks.looks.iter().filter(|look| LOOKS.contains(&look.look.as_str()));
        let words: FxHashSet<&str> = looks.flat_map(|look| look.words.all()).collect();
        let grows = |word: &str| words.contains(word) || matches!(word, "growth" | "spike" | "flush");
        // "Phool gobhi" is a crop.
        let of_crop =
            |at: usize| self.names.iter().any(|hit| matches!(hit.meaning, Named::Crop(_)) && hit.span.contains(&at));
        let ends = |at: &usize| ENDS.contains(&self.text.normal(*at));
        let from = (0..verb).rev().find(ends).map_or(0, |at| at + 1);
        let to = (verb..self.text.tokens.len()).find(ends).unwrap_or(self.text.tokens.len());
        (from..to).any(|at| grows(self.text.normal(at)) && !of_crop(at))
    }

    /// "2 din se pani nahi diya", "not watered since Friday": no work, and nothing else is told or asked.
    pub(super) fn not_watered(&self) -> bool {
        let water = self.says(&Told::Thing(JobKind::Water)) || self.says(&Told::Did(JobKind::Water));
        let other = self.told.iter().any(|hit| matches!(hit.meaning, Told::Saw(_) | Told::Will | Told::Move));
        let claims = self.claims();
        let denied = |hit: &&Hit<Told>| {
            matches!(hit.meaning, Told::Did(JobKind::Water) | Told::Done | Told::Got) && claims.is_denied(&hit.span)
        };
        let stuff = self.names_any(|name| matches!(name, Named::Material(_)));
        water && !self.asks && !other && !stuff && self.job().is_none() && self.told.iter().any(|hit| denied(&hit))
    }

    /// "Dimethoate on the chillies on Saturday, can I serve them?": a product, a day and a stop, and whether one may eat.
    pub(super) fn is_sprayed_before(&self) -> bool {
        let product = self.things().into_iter().find(|(_, kind)| *kind == JobKind::Spray);
        let named = product.filter(|(span, _)| self.names.iter().any(|hit| hit.span == *span));
        let stop = |at: usize| matches!(self.text.normal(at), "," | "." | ";" | "।" | "-");
        let ends = |day: &Range<usize>| stop(day.end);
        let told = named.is_some_and(|(span, _)| self.days.iter().any(|day| span.end <= day.start && ends(day)));
        told && self.says(&Told::Point(Point::Wait)) && self.asks && !self.says(&Told::Will)
    }

    /// "Note: mustard cake, tomato bag, Thursday": what is to be noted was done, though no verb says so.
    fn noted(&self) -> Option<JobKind> {
        if !self.notes() || self.asks || self.is_to_come() {
            return None;
        }
        self.things().first().map(|(_, kind)| *kind)
    }

    /// Whether the message asks at its beginning that something be written down.
    pub(super) fn notes(&self) -> bool {
        /// "Hi, please note down …": so many tokens may come before.
        const FIRST: usize = 4;
        let hindi = self.text.language != Language::En;
        let people = |hit: &Hit<Told>| hindi && hit.span.len() == 1 && self.text.normal(hit.span.start) == "log";
        // "Sat 16th: 120 g beans", "28 Feb - compost tea to all boxes": a day at the head, as in a diary.
        let mark = |at: usize| matches!(self.text.normal(at), ":" | "-" | "–");
        let dated = self.days.first().is_some_and(|day| day.start == 0 && mark(day.end)) && self.come && !self.asks;
        self.noted
            || dated
            || self.told.iter().any(|hit| hit.meaning == Told::Note && hit.span.start < FIRST && !people(hit))
    }
}

/// Whether a number or an article stands before the vessel there.
pub(super) fn counted(text: &Text, at: usize) -> bool {
    let before = |back: usize| at.checked_sub(back).map_or("", |place| text.normal(place));
    let number = at.checked_sub(1).and_then(|place| text.tokens.get(place)).is_some_and(|token| token.number.is_some());
    const ONE: [&str; 19] = [
        "a",
        "one",
        "two",
        "three",
        "four",
        "half",
        "full",
        "each",
        "ek",
        "do",
        "teen",
        "aadha",
        "aadhi",
        "एक",
        "दो",
        "तीन",
        "आधा",
        "आधी",
        "of",
    ];
    number
        || ONE.contains(&before(1))
        || ONE.contains(&before(2)) && matches!(before(1), "small" | "big" | "full" | "watering" | "भर")
}
