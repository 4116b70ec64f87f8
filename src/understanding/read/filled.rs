//! What was found in a text, put down as its reading.

use super::words::forms_of;
use super::{Found, Named, Reader, Reading, Told};
use crate::garden::{BedKind, JobKind};
use crate::knowledge::{Kind, Point};
use crate::script::Text;
use crate::understanding::sun_clock;

/// The one thing spoken of. "That" and "this" as often stand before a name.
const IT: [&str; 23] = [
    "it",
    "them",
    "ise",
    "isko",
    "iske",
    "ispe",
    "ispar",
    "usko",
    "inko",
    "inhe",
    "inhen",
    "unko",
    "unhe",
    "इसे",
    "इसको",
    "इसके",
    "इसपर",
    "उसे",
    "उसको",
    "इनको",
    "इन्हें",
    "उनको",
    "उन्हें",
];

/// The same in two words: "this one", "does this need", "is par", "yah ab".
const IT_IN_TWO: [(&str, &[&str]); 9] = [
    ("this", &["one", "go", "goes", "need", "needs", "want", "wants", "require", "requires", "now"]),
    ("that", &["one", "need", "needs", "want", "wants"]),
    ("they", &["go", "need", "want"]),
    ("is", &["par", "pe", "ke"]),
    ("us", &["par", "pe", "ke"]),
    ("इस", &["पर", "पे", "के"]),
    ("यह", &["अब", "अभी", "कब", "बो", "बोने", "लगाने"]),
    ("ye", &["ab", "abhi", "kab", "bo", "bone", "lagane", "lagau"]),
    ("yeh", &["ab", "abhi", "kab", "bo", "bone", "lagane", "lagau"]),
];

/// Whether what is asked about is "it".
fn is_of_it(text: &Text) -> bool {
    let words = || text.tokens.iter().map(|token| token.normal.as_str());
    let two =
        |(first, then): (&str, &str)| IT_IN_TWO.iter().any(|(this, after)| *this == first && after.contains(&then));
    words().any(|word| IT.contains(&word)) || words().zip(words().skip(1)).any(two)
}

/// Whether a thing is pointed at: "iske liye", "for this one". The "it" of "is it time" may point at nothing.
fn is_for_it(text: &Text) -> bool {
    const DUMMY: [&str; 2] = ["it", "them"];
    // "Iske baad", "iske alawa": of what was said.
    const BESIDES: [&str; 10] = ["baad", "alawa", "saath", "sath", "bina", "pehle", "बाद", "अलावा", "साथ", "पहले"];
    let word = |at: usize| text.normal(at);
    (0..text.tokens.len()).any(|at| {
        let this = IT.contains(&word(at)) && !DUMMY.contains(&word(at)) && !BESIDES.contains(&word(at + 1));
        let one = matches!(word(at), "this" | "that") && word(at + 1) == "one";
        let ends = text.tokens.get(at + 1).is_none_or(|next| !next.is_word());
        let last = matches!(word(at), "this" | "it") && ends && at > 0 && matches!(word(at - 1), "for" | "to" | "on");
        this || one || last
    })
}

impl Found {
    pub(super) fn reading(&self, text: &Text, reader: &Reader<'_>, kind: Kind, sureness: f64) -> Reading {
        let sun = self.is_new_bed(text, reader).then(|| sun_clock::read(text, &reader.known.talk.sun)).flatten();
        let mut reading = Reading {
            kind,
            also: Vec::new(),
            sureness,
            language: text.language,
            devanagari_digits: text.devanagari_digits,
            crops: Vec::new(),
            microgreen: self.told.iter().any(|hit| hit.meaning == Told::Microgreen),
            beds: Vec::new(),
            beds_named: false,
            bed_kind: None,
            all_beds: self.told.iter().any(|hit| hit.meaning == Told::All),
            sites: Vec::new(),
            materials: Vec::new(),
            mixes: Vec::new(),
            troubles: Vec::new(),
            refused: Vec::new(),
            other_plants: Vec::new(),
            signs: self.signs.clone(),
            denied: self.denied.clone(),
            like: self.like.clone(),
            offered: Vec::new(),
            asked: 0,
            offered_beds: Vec::new(),
            alike: Vec::new(),
            perhaps: None,
            unsaid: 0.0,
            says_too_little: false,
            another: false,
            offered_kinds: Vec::new(),
            words: None,
            speaks: self.speaks(),
            once_more: self.once_more(text),
            shorter: self.shorter(),
            none_of_these: false,
            places: Vec::new(),
            days: self.days.iter().map(|day| (day.first, day.last)).collect(),
            quantities: self.quantities.said.iter().map(|said| said.written).collect(),
            given: self.given_volumes(text),
            measures: self.measures(),
            groups: self.groups(text),
            in_bags: false,
            count: self.count(),
            vessels: self.vessels(text),
            season: self.season_asked(text, reader),
            months: self.months(text, reader),
            follows: self.told.iter().any(|hit| hit.meaning == Told::Follows),
            saplings: self.told.iter().any(|hit| hit.meaning == Told::Thing(JobKind::Plant)),
            unknown: self.unknown_words(text, reader),
            sky: Vec::new(),
            temperatures_c: self.quantities.temperatures.iter().map(|degrees| degrees.celsius).collect(),
            did: self.did,
            unwatered: self.unwatered,
            put_off: self.put_off(text),
            stays: self.stays(text),
            not_to_move: self.told.iter().any(|hit| hit.meaning == Told::Move) && self.says_not(),
            jobs: self.jobs(),
            new_bed: self.is_new_bed(text, reader),
            beds_told: self.beds_told(text),
            called: self.called(text),
            speaks_of: self.topics(text, reader).into_iter().map(|hit| hit.meaning).collect(),
            one_more: self.told.iter().any(|hit| hit.meaning == Told::NewBed),
            undo: false,
            no_such_day: self.no_such_day(text, reader),
            on_no_day: self.is_on_no_day(text, reader),
            sun_hours: self.sun_hours(),
            sun_from_h: sun.and_then(|clock| clock.from_h),
            sun_until_h: sun.and_then(|clock| clock.until_h),
            someone_else: self.names.iter().any(|hit| hit.meaning == Named::SomeoneElse),
            emergency: self.emergency(text, reader),
            ill_will: false,
            likewise: self.likewise,
            corrects: false,
            net_down: self.told.iter().any(|hit| hit.meaning == Told::NetDown),
            saw: self.saw(),
            why: self.is_why(text),
            follow_up: false,
            asks: self.asks,
            of_it: is_of_it(text) || is_of_those_seeds(text),
            for_it: is_for_it(text),
            senseless: self.is_senseless(text, reader),
            search: self.search_words(text),
            telling: self.words_told(text),
            all_words: (0..text.tokens.len()).flat_map(|at| forms_of(text, at)).collect(),
            points: self.points().collect(),
            leans: Vec::new(),
            spray_told: None,
            aspects: self.aspects(),
            for_days: self.for_days(),
            parts_of_day: self.parts_of_day(text, reader),
        };
        let cut_young = |hit: &super::Hit<Named>| match &hit.meaning {
            Named::Crop(id) => reader.known.crops.get(id).is_none_or(|crop| crop.microgreen.is_some()),
            _ => true,
        };
        reading.microgreen |= (self.tray_sown || self.tray_eaten_raw()) && self.names.iter().all(cut_young);
        // "New bed: south rail bag, 30 L": of what sort it is says the other word.
        let sort = |hit: &super::Hit<Named>| {
            matches!(hit.meaning, Named::BedKind(_)) && !says_any_bed(text.normal(hit.span.start))
        };
        let sorted = reading.new_bed && self.names.iter().any(sort);
        for hit in &self.names {
            let list = match &hit.meaning {
                Named::OwnBed(bed) => {
                    if !reading.beds.contains(bed) {
                        reading.beds.push(bed.clone());
                    }
                    reading.beds_named = true;
                    continue;
                }
                Named::Site(site) => {
                    if !reading.sites.contains(site) {
                        reading.sites.push(site.clone());
                    }
                    continue;
                }
                Named::SomeoneElse => continue,
                Named::BedKind(_)
                    if says_any_bed(text.normal(hit.span.start)) && (reading.is_unmeasured() || sorted) =>
                {
                    continue;
                }
                Named::BedKind(kind) => {
                    reading.bed_kind = reading.bed_kind.or(Some(*kind));
                    continue;
                }
                Named::Crop(id) => (&mut reading.crops, id),
                Named::Material(id) => (&mut reading.materials, id),
                Named::Mix(id) => (&mut reading.mixes, id),
                Named::Trouble(id) => (&mut reading.troubles, id),
                Named::Refused(id) => (&mut reading.refused, id),
                Named::OtherPlant(id) => (&mut reading.other_plants, id),
                Named::Place(id) => (&mut reading.places, id),
            };
            if !list.0.contains(list.1) {
                list.0.push(list.1.clone());
            }
        }
        if reading.bed_kind.is_some() {
            reading.bed_kind = self.kind_measured(text).or(reading.bed_kind);
            let bags = self.names.iter().any(|hit| hit.meaning == Named::BedKind(BedKind::Bag));
            reading.in_bags = bags && reading.bed_kind != Some(BedKind::Bag);
        }
        if reading.crops.is_empty() {
            reading.crops.clone_from(&self.crops_within);
        }
        if reading.senseless {
            // A name among such words met by chance.
            reading.crops.clear();
        }
        reading
    }
}

impl Found {
    /// "Tray sown on Monday, may we eat it raw": what is cut young and eaten as it is.
    fn tray_eaten_raw(&self) -> bool {
        let tray = |hit: &super::Hit<Named>| hit.meaning == Named::BedKind(BedKind::Tray);
        let sown = matches!(self.did, Some(JobKind::Sow)) || self.told.iter().any(|hit| hit.meaning == Told::PutIn);
        sown && self.names.iter().any(tray) && self.points().any(|point| point == Point::Raw)
    }
}

/// "Bed" is said of all of them, whatever they are made of.
fn says_any_bed(word: &str) -> bool {
    const ANY: [&str; 11] =
        ["bed", "beds", "kyari", "kyariyan", "kyariyon", "बेड", "बेडों", "क्यारी", "क्यारियाँ", "क्यारियों", "क्यारियां"];
    ANY.contains(&word)
}

/// "When should I put those seeds in": of which crop is not said.
fn is_of_those_seeds(text: &Text) -> bool {
    let those = |at: usize| matches!(text.normal(at), "those" | "these" | "this" | "that" | "ye" | "yeh" | "ये" | "यह");
    let seeds = |at: usize| matches!(text.normal(at), "seed" | "seeds" | "packet" | "beej" | "बीज" | "पैकेट");
    (0..text.tokens.len()).any(|at| those(at) && seeds(at + 1))
}
