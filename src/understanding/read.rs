//! A text, who wrote it and on which day → its reading.

mod asked;
mod asked_back;
mod claims;
mod classed;
mod contrast;
mod deeds;
mod leaning;
mod leans;
mod plainly;
mod questions;
mod seen;
mod sky;
mod theirs;
mod words;

use super::about::{Signs, about_feeds, about_sprays};
use super::asker::Asker;
use super::dates;
use super::follow_up::{completed, corrected, started, undone};
use super::gazetteer::{Gazetteer, Named, Told};
use super::kind::{Evidence, decide};
use super::own_beds::with_beds;
use super::phrasebook::{Forms, Hit};
use super::quantities::{self, Quantities};
use super::reading::{Measured, Reading};
use super::sun_clock;
use super::symptoms::Described;
use crate::garden::{BedKind, JobKind};
use crate::knowledge::{Aspect, Index, Kind, Knowledge, MaterialKind, Part, Point, Slips, class_word};
use crate::script::{Language, Text, index_word};
use chrono::NaiveDate;
use std::ops::Range;

pub use classed::classed;
use deeds::Deeds;
use words::parts_named;

/// What reading needs of the knowledge base, made ready once.
pub struct Reader<'a> {
    pub known: &'a Knowledge,
    pub index: &'a Index,
    pub gazetteer: &'a Gazetteer,
}

/// What is denied for another is told in so few tokens.
const CONTRAST: usize = 14;

/// Reads a message as one request. Never fails: what has no sense is a reading too.
pub fn read_as(text: &str, reader: &Reader<'_>, asker: &Asker, today: NaiveDate) -> Reading {
    read_text(Text::read(text), reader, asker, today)
}

/// Reads a part of a message whose language is that of the whole.
pub fn read_part(text: &str, language: Language, reader: &Reader<'_>, asker: &Asker, today: NaiveDate) -> Reading {
    read_text(Text::read_as(text, language), reader, asker, today)
}

fn read_text(text: Text, reader: &Reader<'_>, asker: &Asker, today: NaiveDate) -> Reading {
    let mut found = Found::of(&text, reader, asker, today);
    if let Some(reading) = found.in_another_place(&text, reader) {
        return reading;
    }
    let mut contrasts =
        asker.before.is_some() && text.tokens.len() <= CONTRAST && found.without_denied(&text, reader.known);
    let meant = reader.known.meanings.of(&text.tokens, text.language, Slips::Forgiven);
    let verdict = decide(reader.index, &found.class_form(&text), &meant, found.evidence(&text, reader));
    let plainly = found
        .plainly(&text, reader)
        .or_else(|| found.as_seen(reader, verdict.kind, verdict.sureness))
        .or_else(|| found.about_a_named_thing(verdict, asker.before.as_ref()));
    let (kind, sureness) = plainly.unwrap_or((verdict.kind, verdict.sureness));
    let mut reading = Reading {
        sky: found.sky(&text, today),
        perhaps: verdict.perhaps,
        ..found.reading(&text, reader, kind, sureness)
    };
    if let Some(days) = found.days_of_a_move(&text, today) {
        reading.days = vec![days];
    }
    if let Some(before) = &asker.before {
        if let Some(chosen) =
            found.chosen(&text, &reading, before).or_else(|| found.chosen_kind(&text, &reading, before))
        {
            return chosen;
        }
        found.with_day_after(&mut reading, before);
        found.with_bare_size(&mut reading, before);
        found.with_bare_amount(&text, &mut reading, before);
        let others = found.other_beds(before, asker);
        reading.beds_named |= others.len() == 1;
        contrasts |= !others.is_empty();
        reading.beds.extend(others);
        reading.count = found.count_of_same(&text).or(reading.count);
    }
    if let Some(before) = &asker.before
        && let Some(reading) = corrected(
            &reading,
            before,
            contrasts || found.corrects() || found.says_otherwise(&text, reader, &reading, before),
            asker,
        )
        .or_else(|| undone(&reading, before, found.undoes()))
        .or_else(|| started(&reading, before))
    {
        return with_beds(reading, asker);
    }
    if let Some(before) = &asker.before
        && let Some(reading) = found.answers_about_trouble(&text, &reading, before)
    {
        return with_beds(reading, asker);
    }
    let reading = match &asker.before {
        Some(before) => {
            let says = found.says(&text, reader, before, (kind, verdict.nearness));
            completed(reading, before, says, asker)
        }
        None => reading,
    };
    with_beds(reading, asker)
}

/// Everything found in a text, before its kind is decided.
struct Found {
    names: Vec<Hit<Named>>,
    told: Vec<Hit<Told>>,
    quantities: Quantities,
    days: Vec<dates::DayFound>,
    /// Signs of trouble, and whether one of them is on a plant rather than in its mix.
    signs: Vec<String>,
    denied: Vec<String>,
    like: Vec<(String, f64)>,
    on_plant: bool,
    asks: bool,
    did: Option<JobKind>,
    /// Something to spray, or a feed that is nothing else, is named.
    sprays: bool,
    feeds: bool,
}

impl Found {
    fn of(text: &Text, reader: &Reader<'_>, asker: &Asker, today: NaiveDate) -> Self {
        let forms = Forms::of(text);
        let quantities = quantities::read(text, &reader.known.words);
        let mut told = reader.gazetteer.told(&forms);
        // A word for a day is no deed, though "today" sounds as the Hindi for "picked".
        let is_day = |span: &Range<usize>| {
            let day = reader.known.words.days.at(text, span.start);
            day.is_some_and(|(_, length)| length == span.len())
        };
        told.retain(|hit| !(matches!(hit.meaning, Told::Did(_)) && is_day(&hit.span)));
        // "Did" in "did I miss it" asks, and tells of nothing done.
        let asks_did: Vec<Range<usize>> =
            told.iter().filter(|hit| hit.meaning == Told::DidAsk).map(|hit| hit.span.clone()).collect();
        told.retain(|hit| hit.meaning != Told::Done || asks_did.iter().all(|did| !did.contains(&hit.span.start)));
        // "Do baje" is two o'clock, whatever the language of the rest.
        let hour = |span: &Range<usize>| sun_clock::is_hour(text, span.start, &reader.known.talk.sun);
        told.retain(|hit| !(hit.meaning == Told::Question && hour(&hit.span)));
        let mut names = reader.gazetteer.names(&forms, asker);
        // "Friday" sounds as the name Farid does.
        names.retain(|hit| !(matches!(hit.meaning, Named::SomeoneElse | Named::Site(_)) && is_day(&hit.span)));
        // What no phrase and no name has may be a name with a slip of the finger in it.
        let known_word = |position: usize| {
            let word = text.tokens.get(position).and_then(|token| index_word(token, text.language));
            word.is_none_or(|word| reader.index.knows(&word))
                || names.iter().any(|hit| hit.span.contains(&position))
                || told.iter().any(|hit| hit.span.contains(&position))
        };
        let nearly = reader.gazetteer.names_nearly(&forms, |position| !known_word(position));
        let slips = reader.gazetteer.told_nearly(&forms, |position| !known_word(position));
        names.extend(nearly);
        told.extend(slips.into_iter().filter(|slip| names.iter().all(|hit| hit.span != slip.span)));
        // "Ruk jau" is to wait: no barley stands in it.
        names.retain(|hit| {
            let within = |told: &Hit<Told>| told.span.start <= hit.span.start && hit.span.end <= told.span.end;
            !told.iter().any(|told| told.meaning == Told::Filler && told.span.len() > hit.span.len() && within(told))
        });
        names.sort_by_key(|hit| hit.span.start);
        // "May" of "1 may" asks nothing.
        let dated = dates::read(text, &reader.known.words, today, false);
        told.retain(|hit| hit.meaning != Told::Question || dated.iter().all(|day| !day.span.contains(&hit.span.start)));
        let told_before = told.clone();
        told.retain(|hit| hit.meaning != Told::Question || questions::asks(text, hit, &told_before));
        let asks =
            text.original.contains('?') || told.iter().any(|hit| matches!(hit.meaning, Told::Question | Told::DidAsk));
        let named: Vec<Range<usize>> = dated.iter().map(|day| day.span.clone()).collect();
        let come = dated.iter().any(|day| day.last <= today);
        let known = reader.known;
        let deeds =
            Deeds { text, known, told: &told, names: &names, quantities: &quantities, days: &named, come, asks };
        let did = deeds.job();
        let seen = told.iter().any(|hit| matches!(hit.meaning, Told::Saw(_))) && !asks;
        // "Kal nahi parso" after work told is of days gone by.
        let of_work = asker.before.as_ref().is_some_and(|before| before.kind == Kind::Record && before.did.is_some());
        let past = did.is_some() || seen || deeds.notes() || of_work && !asks;
        let days = dates::read(text, &reader.known.words, today, past);
        let material = |kinds: &[MaterialKind]| {
            names.iter().any(|hit| match &hit.meaning {
                Named::Material(id) => reader.known.materials.get(id).is_some_and(|found| kinds.contains(&found.kind)),
                _ => false,
            })
        };
        let thing =
            |job| told.iter().any(|hit| matches!(hit.meaning, Told::Thing(kind) | Told::Did(kind) if kind == job));
        let sprays = material(&[MaterialKind::Spray]) || thing(JobKind::Spray);
        let feeds = material(&[MaterialKind::Feed, MaterialKind::Meal]);
        let tray = |hit: &Hit<Named>| hit.meaning == Named::BedKind(BedKind::Tray);
        let sprouts = told.iter().any(|hit| hit.meaning == Told::Microgreen) || names.iter().any(tray);
        let Described { seen: signs, denied, like } =
            reader.gazetteer.signs(text, &parts_named(&names, sprouts, reader.known));
        let on_plant = signs.iter().any(|id| reader.known.signs.get(id).is_some_and(|sign| sign.part != Part::Mix));
        Self { names, told, quantities, days, signs, denied, like, on_plant, asks, did, sprays, feeds }
    }

    fn evidence(&self, text: &Text, reader: &Reader<'_>) -> Evidence {
        let points = self.points().collect();
        let worked = |job| self.told.iter().any(|hit| hit.meaning == Told::Thing(job));
        let signs = Signs { points, asks: self.asks, did: self.did, feeding: worked(JobKind::Feed) };
        let mix = self.names.iter().any(|hit| matches!(hit.meaning, Named::Mix(_)));
        let picking = worked(JobKind::Pick) || signs.points.contains(&Point::Wait);
        Evidence {
            told: self.did.is_some() || self.saw().is_some(),
            asks: self.asks,
            names: self.names.len(),
            sizes: self.quantities.said.len(),
            trouble: self.names.iter().any(|hit| matches!(hit.meaning, Named::Trouble(_))),
            strange: self.strange(text, reader),
            of_others: self.of_others(),
            picking,
            signs: self.signs.len(),
            on_plant: self.on_plant,
            crop: self.names.iter().any(|hit| matches!(hit.meaning, Named::Crop(_))),
            started: self.asks && matches!(self.did, Some(JobKind::Sow | JobKind::Plant)),
            month: !self.months(text, reader).is_empty(),
            sprays: about_sprays(&signs, self.sprays),
            feeds: about_feeds(&signs, self.feeds && !mix),
        }
    }

    /// Jobs that were named, done or not.
    fn jobs(&self) -> Vec<JobKind> {
        let mut jobs = Vec::new();
        for hit in &self.told {
            if let Told::Thing(job) | Told::Did(job) = hit.meaning
                && !jobs.contains(&job)
            {
                jobs.push(job);
            }
        }
        jobs
    }

    /// What is not ours to tell: what others have, what the body wants, what the law forbids.
    fn of_others(&self) -> bool {
        let says = |what: Told| self.told.iter().any(|hit| hit.meaning == what);
        let own = self.names.iter().any(|hit| matches!(hit.meaning, Named::OwnBed(_)));
        if says(Told::OthersGarden) && !own && !self.asks && !says(Told::OthersSaid) {
            return true;
        }
        let someone = says(Told::Others) || self.names.iter().any(|hit| hit.meaning == Named::SomeoneElse);
        let theirs = says(Told::Data) || (self.asks || self.did.is_none()) && !says(Told::OthersSaid);
        someone && theirs || says(Told::NotOurs)
    }

    /// The tokens that name a crop.
    fn crop_tokens(&self) -> Vec<usize> {
        let crops = self.names.iter().filter(|hit| matches!(hit.meaning, Named::Crop(_)));
        crops.flat_map(|hit| hit.span.clone()).collect()
    }

    fn points(&self) -> impl Iterator<Item = Point> {
        self.told.iter().filter_map(|hit| match hit.meaning {
            Told::Point(point) => Some(point),
            _ => None,
        })
    }

    /// How many: "one" says less than any other number beside it.
    fn count(&self) -> Option<f64> {
        let counts = &self.quantities.counts;
        let several = counts.iter().find(|count| (count.value - 1.0).abs() > f64::EPSILON);
        several.or(counts.first()).map(|count| count.value)
    }

    /// What was measured. A round thing has one width: a pot "14 inches wide" has that diameter.
    fn measures(&self) -> Vec<Measured> {
        let kind = self.names.iter().find_map(|hit| match hit.meaning {
            Named::BedKind(kind) => Some(kind),
            _ => None,
        });
        let round = matches!(kind, Some(BedKind::Pot | BedKind::Basket));
        let mut all: Vec<Measured> = self.quantities.dimensions.iter().map(measured).collect();
        for one in all.iter_mut().filter(|one| round && one.length.is_none() && one.diameter.is_none()) {
            one.diameter = one.width.take();
        }
        all
    }

    fn saw(&self) -> Option<crate::garden::SeenKind> {
        self.told.iter().find_map(|hit| match hit.meaning {
            Told::Saw(kind) => Some(kind),
            _ => None,
        })
    }

    fn aspects(&self) -> Vec<Aspect> {
        let mut aspects = Vec::new();
        for hit in &self.told {
            if let Told::Aspect(aspect) = hit.meaning
                && !aspects.contains(&aspect)
            {
                aspects.push(aspect);
            }
        }
        aspects
    }

    /// The class of each token that is part of a name, a size or a day, and whether its words stay beside it.
    fn classes(&self, text: &Text) -> Vec<Option<(&'static str, bool)>> {
        let mut class: Vec<Option<(&'static str, bool)>> = vec![None; text.tokens.len()];
        let mut mark = |span: &Range<usize>, name: &'static str, keep: bool| {
            for position in span.clone() {
                if let Some(slot) = class.get_mut(position).filter(|slot| slot.is_none()) {
                    *slot = Some((name, keep));
                }
            }
        };
        for day in &self.days {
            mark(&day.span, "day", false);
        }
        for said in &self.quantities.said {
            mark(&said.span, "size", false);
        }
        for dimensions in &self.quantities.dimensions {
            mark(&dimensions.span, "size", false);
        }
        for hit in &self.names {
            match hit.meaning {
                Named::SomeoneElse => {}
                Named::Crop(_) => mark(&hit.span, "crop", false),
                Named::OwnBed(_) | Named::BedKind(_) => mark(&hit.span, "bed", true),
                Named::Site(_) => mark(&hit.span, "place", true),
                Named::Material(_) => mark(&hit.span, "material", true),
                Named::Mix(_) => mark(&hit.span, "mix", true),
                Named::Refused(_) | Named::OtherPlant(_) => mark(&hit.span, "crop", false),
                Named::Trouble(_) => mark(&hit.span, "trouble", true),
                Named::Place(_) => mark(&hit.span, "place", true),
            }
        }
        class
    }

    /// The words of the text with its names replaced by their class. Crops, sizes and days are replaced;
    /// beds, materials and troubles keep their words beside the class, since phrasings use both.
    fn class_form(&self, text: &Text) -> Vec<String> {
        let class = self.classes(text);
        let mut words = Vec::new();
        let mut last = "";
        for (token, class) in text.tokens.iter().zip(&class) {
            let (name, keep) = class.unwrap_or(("", true));
            if !name.is_empty() && name != last {
                words.push(class_word(name));
            }
            if keep {
                words.extend(index_word(token, text.language));
            }
            last = name;
        }
        words
    }

    fn reading(&self, text: &Text, reader: &Reader<'_>, kind: Kind, sureness: f64) -> Reading {
        let sun = self.is_new_bed().then(|| sun_clock::read(text, &reader.known.talk.sun)).flatten();
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
            perhaps: None,
            offered_kinds: Vec::new(),
            words: None,
            speaks: self.speaks(),
            once_more: self.once_more(text),
            shorter: self.shorter(),
            none_of_these: false,
            places: Vec::new(),
            days: self.days.iter().map(|day| (day.first, day.last)).collect(),
            quantities: self.quantities.said.iter().map(|said| said.written).collect(),
            measures: self.measures(),
            count: self.count(),
            months: self.months(text, reader),
            follows: self.told.iter().any(|hit| hit.meaning == Told::Follows),
            saplings: self.told.iter().any(|hit| hit.meaning == Told::Thing(JobKind::Plant)),
            unknown: self.unknown_words(text, reader),
            sky: Vec::new(),
            temperatures_c: self.quantities.temperatures.iter().map(|degrees| degrees.celsius).collect(),
            did: self.did,
            put_off: self.put_off(text),
            stays: self.stays(text),
            not_to_move: self.told.iter().any(|hit| hit.meaning == Told::Move) && self.says_not(),
            jobs: self.jobs(),
            new_bed: self.is_new_bed(),
            one_more: self.told.iter().any(|hit| hit.meaning == Told::NewBed),
            undo: false,
            no_such_day: self.no_such_day(text, reader) || self.is_on_no_day(text, reader),
            sun_hours: self.sun_hours(),
            sun_from_h: sun.and_then(|clock| clock.from_h),
            sun_until_h: sun.and_then(|clock| clock.until_h),
            someone_else: self.names.iter().any(|hit| hit.meaning == Named::SomeoneElse),
            emergency: self.emergency(text, reader),
            corrects: false,
            net_down: self.told.iter().any(|hit| hit.meaning == Told::NetDown),
            saw: self.saw(),
            why: self.is_why(text),
            follow_up: false,
            asks: self.asks,
            senseless: self.is_senseless(text, reader),
            search: self.search_words(text),
            points: self.points().collect(),
            aspects: self.aspects(),
            for_days: self.for_days(),
            parts_of_day: self.parts_of_day(text, reader),
        };
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
        reading
    }
}

fn measured(found: &quantities::Dimensions) -> Measured {
    Measured { length: found.length, width: found.width, depth: found.depth, diameter: found.diameter }
}
