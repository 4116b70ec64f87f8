//! Everything found in a text, before its kind is decided.

use super::deeds::Deeds;
use super::words::parts_named;
use super::{Hit, Named, Reader, Told, commands, harmed, matters, questions, seen, together};
use crate::garden::{BedKind, JobKind, SeenKind};
use crate::knowledge::{Aspect, Kind, MaterialKind, Part, Point};
use crate::quantity::UnitOf;
use crate::script::{Text, index_word};
use crate::understanding::about::{Signs, about_feeds, about_sprays};
use crate::understanding::asker::Asker;
use crate::understanding::kind::Evidence;
use crate::understanding::parts::NOT_UP;
use crate::understanding::phrasebook::Forms;
use crate::understanding::quantities::{self, Quantities};
use crate::understanding::reading::Measured;
use crate::understanding::symptoms::Described;
use crate::understanding::{dates, sun_clock};
use chrono::NaiveDate;
use std::ops::Range;

/// What stands in a text: names, words that steer, quantities, days, signs, and what was done.
#[derive(Clone)]
pub(super) struct Found {
    pub(super) names: Vec<Hit<Named>>,
    pub(super) told: Vec<Hit<Told>>,
    /// Words that speak of one kind of question alone.
    pub(super) topic_words: Vec<Hit<Kind>>,
    pub(super) quantities: Quantities,
    pub(super) days: Vec<dates::DayFound>,
    /// Signs of trouble, and whether one of them is on a plant rather than in its mix.
    pub(super) signs: Vec<String>,
    pub(super) denied: Vec<String>,
    pub(super) like: Vec<(String, f64)>,
    pub(super) on_plant: bool,
    pub(super) asks: bool,
    pub(super) did: Option<JobKind>,
    /// No water was given, and nothing else is told.
    pub(super) unwatered: bool,
    /// Something to spray, or a feed that is nothing else, is named.
    pub(super) sprays: bool,
    pub(super) feeds: bool,
    /// Another harmed a plant, or it was found so.
    pub(super) harmed: bool,
    /// A tray was set with seed.
    pub(super) tray_sown: bool,
    /// What others sow or plant is asked for oneself.
    pub(super) likewise: bool,
    /// One of the crew is named.
    pub(super) crew: bool,
    /// What the company of its words tells: most often that it is of another world than a garden.
    pub(super) by_company: Option<Kind>,
    /// What the company of its words tells stands, whatever they are usual for.
    pub(super) company_stands: bool,
    /// Its words are next to never said of anything but a garden of one's own.
    pub(super) ours: bool,
    /// Crops that the name of a trouble holds, where no other is named: "the brinjal borer".
    pub(super) crops_within: Vec<String>,
}

impl Found {
    /// A pest or an illness by its name, seen, and neither work nor the state of a bed beside it.
    pub(super) fn sees_a_trouble(&self, text: &Text) -> bool {
        let named = self.names.iter().any(|hit| matches!(hit.meaning, Named::Trouble(_)));
        let saw = self.told.iter().any(|hit| matches!(hit.meaning, Told::Saw(_)));
        let done = self.told.iter().any(|hit| matches!(hit.meaning, Told::Done | Told::Did(_)));
        const SEES: [&str; 24] = [
            "saw",
            "see",
            "seeing",
            "seen",
            "noticed",
            "spotted",
            "found",
            "dikhe",
            "dikha",
            "dikhi",
            "dikh",
            "dekhe",
            "dekha",
            "dekhi",
            "mile",
            "दिखे",
            "दिखा",
            "दिखी",
            "दिख",
            "देखे",
            "देखा",
            "देखी",
            "मिले",
            "मिला",
        ];
        let sees = text.tokens.iter().any(|token| SEES.contains(&token.normal.as_str()));
        named && sees && self.did.is_none() && !saw && !done
    }

    pub(super) fn of(text: &Text, reader: &Reader<'_>, asker: &Asker, today: NaiveDate, noted: bool) -> Self {
        let forms = Forms::of(text);
        let quantities = quantities::read(text, &reader.known.words);
        let mut told = reader.gazetteer.told(&forms);
        // A word for a day is no deed, though "today" sounds as the Hindi for "picked".
        let is_day = |span: &Range<usize>| {
            let day = reader.known.words.days.at(text, span.start);
            day.is_some_and(|(_, length)| length == span.len())
        };
        let of_picking = |what: &Told| matches!(what, Told::Did(_) | Told::Point(Point::Wait) | Told::Got);
        told.retain(|hit| !(of_picking(&hit.meaning) && is_day(&hit.span)));
        // "Did" in "did I miss it" asks, and tells of nothing done.
        let asks_did: Vec<Range<usize>> =
            told.iter().filter(|hit| hit.meaning == Told::DidAsk).map(|hit| hit.span.clone()).collect();
        told.retain(|hit| hit.meaning != Told::Done || asks_did.iter().all(|did| !did.contains(&hit.span.start)));
        told.retain(|hit| !(hit.meaning == Told::Others && together::is_of_the_house(text, &hit.span)));
        together::did_and_asks_not(text, &mut told);
        together::same_reckoning(text, &mut told);
        together::missed_is_no_excess(text, &mut told);
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
        // "Nmb" has the consonants of "nimbu", and so has what is typed at random.
        names.retain(|hit| {
            !matches!(hit.meaning, Named::Crop(_)) || hit.span.len() > 1 || !has_no_vowel(text.normal(hit.span.start))
        });
        told.extend(slips.into_iter().filter(|slip| names.iter().all(|hit| hit.span != slip.span)));
        // "Ruk jau" is to wait: no barley stands in it.
        names.retain(|hit| {
            let within = |told: &Hit<Told>| told.span.start <= hit.span.start && hit.span.end <= told.span.end;
            !told.iter().any(|told| told.meaning == Told::Filler && told.span.len() > hit.span.len() && within(told))
        });
        // "Chidiya ki beet" is what birds drop.
        names.retain(|hit| !(matches!(hit.meaning, Named::Crop(_)) && harmed::is_dropping(text, &told, &hit.span)));
        names.retain(|hit| !(matches!(hit.meaning, Named::Trouble(_)) && matters::is_likened(text, &hit.span)));
        // "Onion peel" is what is left of one.
        names.retain(|hit| !matters::is_peeled(text, hit));
        let other_crop = asker.before.as_ref().is_some_and(|before| !before.crops.is_empty());
        let crops_within = if other_crop { Vec::new() } else { matters::crops_within(text, &names, reader, asker) };
        names.sort_by_key(|hit| hit.span.start);
        // "May" of "1 may" asks nothing.
        let dated = dates::read(text, &reader.known.words, today, false);
        names.retain(|hit| !super::homonyms::is_no_plant(text, &dated, hit));
        // "Spoons per pot" names none of hers.
        let a_measure = |hit: &Hit<Named>| {
            matches!(hit.meaning, Named::BedKind(_) | Named::OwnBed(_))
                && hit.span.len() == 1
                && hit.span.start.checked_sub(1).is_some_and(|at| text.normal(at) == "per")
        };
        if asker.before.is_none() && quantities.said.is_empty() && quantities.dimensions.is_empty() {
            names.retain(|hit| !a_measure(hit));
        }
        // "Side shoots" are no shoots of a tray.
        let of_a_plant = |hit: &Hit<Told>| {
            let before = hit.span.start.checked_sub(1).map_or("", |at| text.normal(at));
            hit.meaning == Told::Microgreen
                && hit.span.len() == 1
                && matches!(text.normal(hit.span.start), "shoots" | "shoot")
                && matches!(
                    before,
                    "side" | "sideshoot" | "sucker" | "new" | "fresh" | "basal" | "water" | "extra" | "lower"
                )
        };
        told.retain(|hit| !of_a_plant(hit));
        // "Baby kale" is no child.
        let young = |hit: &Hit<Told>| {
            let baby = matches!(text.normal(hit.span.start), "baby" | "बेबी") && hit.span.len() == 1;
            baby && names.iter().any(|name| name.span.start == hit.span.end && matches!(name.meaning, Named::Crop(_)))
        };
        told.retain(|hit| !young(hit));
        super::homonyms::strewn_is_sown(text, reader.known, &names, &dated, &mut told);
        told.retain(|hit| hit.meaning != Told::Question || dated.iter().all(|day| !day.span.contains(&hit.span.start)));
        told.retain(|hit| !(hit.meaning == Told::Saw(SeenKind::RanThrough) && seen::is_denied(text, &hit.span)));
        // "Herb pots stay soggy", "paani kaise mile": what is so as a rule was not seen, what is asked how was not done.
        told.retain(|hit| !(matches!(hit.meaning, Told::Saw(_)) && seen::is_as_a_rule(text)));
        told.retain(|hit| !seen::is_asked_how(text, &hit.span));
        let told_before = told.clone();
        told.retain(|hit| hit.meaning != Told::Question || questions::asks(text, hit, &told_before));
        let asks = text.original.contains('?')
            || told.iter().any(|hit| matches!(hit.meaning, Told::Question | Told::DidAsk))
            || questions::asks_of_work(&told)
            || questions::asks_if_enough(text)
            || questions::asks_to_give_as_much(text)
            || questions::asks_by_its_order(text, &names.iter().map(|hit| hit.span.start).collect::<Vec<_>>());
        let chemicals = (0..text.tokens.len()).filter(|at| super::worlds::is_chemical(text.normal(*at)));
        let poison = |at: usize| Hit { span: at..at + 1, meaning: Told::Point(Point::SyntheticSpray), exact: true };
        told.extend(chemicals.map(poison));
        told.extend(together::given_by_others(text, &told));
        told.extend(together::by_its_numbers(text, &dated));
        told.extend(together::what_lives(&told));
        let once = super::once::is_told(text).then_some(Told::Point(Point::OnceADay));
        told.extend(once.map(|meaning| Hit { span: 0..0, meaning, exact: true }));
        let named: Vec<Range<usize>> = dated.iter().map(|day| day.span.clone()).collect();
        let come = dated.iter().any(|day| day.last <= today);
        let gone = dated.iter().any(|day| day.last < today);
        let known = reader.known;
        let deeds = Deeds {
            text,
            known,
            told: &told,
            names: &names,
            quantities: &quantities,
            days: &named,
            come,
            gone,
            asks,
            noted,
        };
        // "Kisne boi": who did it is asked, and nothing told. Of work whose last time is kept, that is told.
        let who = text.tokens.iter().any(|token| matches!(token.normal.as_str(), "kisne" | "किसने"));
        let kept = |job: &JobKind| matches!(job, JobKind::Water | JobKind::Spray | JobKind::Feed | JobKind::Pick);
        let did = deeds.job().filter(|job| !who || kept(job));
        let did = asker.before.as_ref().and_then(|before| deeds.as_asked(before, did)).or(did);
        let tray_sown = did == Some(JobKind::Sow) && deeds.tray_set();
        let harmed = did.is_none()
            && !told.iter().any(|hit| matches!(hit.meaning, Told::Saw(_)))
            && harmed::is_told(&deeds.claims());
        let unwatered = deeds.not_watered() && together::one_clause(text);
        let seen = told.iter().any(|hit| matches!(hit.meaning, Told::Saw(_))) && !asks;
        // "Kal nahi parso" after work told is of days gone by.
        let of_work = asker.before.as_ref().is_some_and(|before| before.kind == Kind::Record && before.did.is_some());
        let past = did.is_some() || unwatered || seen || deeds.notes() || of_work && !asks || deeds.is_sprayed_before();
        if unwatered && !of_work {
            told.push(Hit { span: 0..0, meaning: Told::Aspect(Aspect::Now), exact: true });
        }
        told.extend(together::asks_whether_done(text, &told, did));
        if who && did.is_some() && together::one_clause(text) {
            told.push(Hit { span: 0..0, meaning: Told::Point(Point::LastDone), exact: true });
        }
        let starts: Vec<usize> = names.iter().map(|hit| hit.span.start).collect();
        if did.is_some() && together::one_clause(text) && questions::asks_by_its_order(text, &starts) {
            told.push(Hit { span: 0..0, meaning: Told::Point(Point::LastDone), exact: true });
        }
        told.extend(together::overdone(&told, did));
        let days = dates::read(text, &reader.known.words, today, past);
        together::last_is_told(text, &days, today, &mut told);
        let material = |kinds: &[MaterialKind]| {
            names.iter().any(|hit| match &hit.meaning {
                Named::Material(id) => reader.known.materials.get(id).is_some_and(|found| kinds.contains(&found.kind)),
                _ => false,
            })
        };
        let spray = |hit: &Hit<Named>| match &hit.meaning {
            Named::Material(id) => {
                reader.known.materials.get(id).is_some_and(|found| found.kind == MaterialKind::Spray)
            }
            _ => false,
        };
        let sprayed =
            told.iter().filter(|hit| matches!(hit.meaning, Told::Thing(JobKind::Spray) | Told::Did(JobKind::Spray)));
        let spans: Vec<Range<usize>> = names
            .iter()
            .filter(|hit| spray(hit))
            .map(|hit| hit.span.clone())
            .chain(sprayed.map(|hit| hit.span.clone()))
            .collect();
        let waits = together::waits_after_spray(text, &told, &spans);
        told.extend(waits);
        let thing =
            |job| told.iter().any(|hit| matches!(hit.meaning, Told::Thing(kind) | Told::Did(kind) if kind == job));
        let sprays = material(&[MaterialKind::Spray]) || thing(JobKind::Spray);
        let feeds = material(&[MaterialKind::Feed, MaterialKind::Meal]);
        let volume = quantities.said.iter().any(|said| said.written.unit.measures() == UnitOf::Volume);
        let strong = did.is_none().then(|| together::asks_how_strong(text, &told, sprays, volume)).flatten();
        let bare = did.is_none() && names.is_empty() && quantities.said.is_empty() && days.is_empty();
        let barely = together::asks_barely(text, &told, bare);
        told.extend(strong.into_iter().chain(barely));
        let tray = |hit: &Hit<Named>| hit.meaning == Named::BedKind(BedKind::Tray);
        let sprouts = told.iter().any(|hit| hit.meaning == Told::Microgreen) || names.iter().any(tray);
        let Described { seen: signs, denied, like } = reader
            .gazetteer
            .signs(&together::without_short_days(text, &days, &told), &parts_named(&names, sprouts, reader.known));
        // "My okra is not happy": what is seen is still to be said.
        let (mut signs, like) =
            if seen::is_told_poorly_alone(text, &names, &told) { (Vec::new(), Vec::new()) } else { (signs, like) };
        if !seen::is_said_to_bear_nothing(text, &names, &told) {
            signs.retain(|sign| sign != seen::BEARS_NOTHING);
        }
        if harmed::is_cover_laid(text) {
            signs.retain(|sign| !sign.contains("dry") && !sign.contains("crisp"));
        }
        if did == Some(JobKind::Sow) && harmed::is_bare_earth(text) && !signs.iter().any(|sign| sign == NOT_UP) {
            signs.push(NOT_UP.into());
        }
        let on_plant = signs.iter().any(|id| reader.known.signs.get(id).is_some_and(|sign| sign.part != Part::Mix));
        let mut found = Self {
            names,
            topic_words: reader.gazetteer.topics(&forms),
            told,
            quantities,
            days,
            signs,
            denied,
            like,
            on_plant,
            asks,
            did,
            unwatered,
            sprays,
            feeds,
            harmed,
            tray_sown,
            likewise: false,
            crew: asker.everyone.names_crew(&forms),
            by_company: None,
            company_stands: false,
            ours: false,
            crops_within,
        };
        found.likewise = found.asks_to_do_likewise(text);
        if found.likewise {
            found.did = None;
        }
        let ordered = commands::is_dressed_as_one(text).then_some(Kind::None);
        let company = found.told_by_company(text, &forms, reader);
        found.by_company = ordered.or(company.map(|company| company.kind));
        found.company_stands = ordered.is_some() || company.is_some_and(|company| company.whatever);
        // A product that nobody knows is one of a maker: no dose of it is told.
        let product = company.and_then(|company| company.point).map(Told::Point);
        found.told.extend(product.map(|meaning| Hit { span: 0..0, meaning, exact: true }));
        found
    }

    pub(super) fn evidence(&self, text: &Text, reader: &Reader<'_>) -> Evidence {
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
            not_ours: self.told.iter().any(|hit| hit.meaning == Told::NotOurs),
            picking,
            signs: self.signs.len(),
            on_plant: self.on_plant,
            crop: self.names.iter().any(|hit| matches!(hit.meaning, Named::Crop(_))),
            started: self.asks && matches!(self.did, Some(JobKind::Sow | JobKind::Plant)),
            month: !self.months(text, reader).is_empty(),
            cut: self.says_a_cut(text),
            sprays: about_sprays(&signs, self.sprays),
            feeds: about_feeds(&signs, self.feeds && !mix),
        }
    }

    /// Jobs that were named, done or not.
    pub(super) fn jobs(&self) -> Vec<JobKind> {
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
    pub(super) fn of_others(&self) -> bool {
        if self.by_company == Some(Kind::None) {
            return true;
        }
        if self.likewise {
            return false;
        }
        let says = |what: Told| self.told.iter().any(|hit| hit.meaning == what);
        let own = self.names.iter().any(|hit| matches!(hit.meaning, Named::OwnBed(_)));
        if says(Told::OthersGarden) && !own && !self.asks && !says(Told::OthersSaid) {
            return true;
        }
        // "My neighbour returned the ladder with pea seeds": someone in a tale of one's own garden.
        let in_a_tale = self.ours && !says(Told::Data);
        let someone = says(Told::Others) && !says(Told::ByOthers) && !in_a_tale
            || self.names.iter().any(|hit| hit.meaning == Named::SomeoneElse);
        let theirs = says(Told::Data) || (self.asks || self.did.is_none()) && !says(Told::OthersSaid);
        // A recipe is the kitchen's, unless it is one of a mix or of something to spray.
        let mixed = |hit: &Hit<Named>| {
            matches!(hit.meaning, Named::Material(_) | Named::Mix(_) | Named::OwnBed(_) | Named::BedKind(_))
        };
        let filled = self.names.iter().any(mixed) || says(Told::Thing(JobKind::TopUp)) || self.sprays;
        someone && theirs || says(Told::NotOurs) || says(Told::Point(Point::Recipe)) && !filled
    }

    /// A product that is no one's to pour, or the wait after it.
    pub(super) fn is_of_poison(&self) -> bool {
        self.points().any(|point| matches!(point, Point::SyntheticSpray | Point::Wait))
    }

    /// The tokens that name a crop.
    pub(super) fn crop_tokens(&self) -> Vec<usize> {
        let crops = self.names.iter().filter(|hit| matches!(hit.meaning, Named::Crop(_)));
        crops.flat_map(|hit| hit.span.clone()).collect()
    }

    pub(super) fn points(&self) -> impl Iterator<Item = Point> {
        self.told.iter().filter_map(|hit| match hit.meaning {
            Told::Point(point) => Some(point),
            _ => None,
        })
    }

    /// How many: "one" says less than any other number beside it.
    pub(super) fn count(&self) -> Option<f64> {
        let counts = &self.quantities.counts;
        let several = counts.iter().find(|count| (count.value - 1.0).abs() > f64::EPSILON);
        several.or(counts.first()).map(|count| count.value)
    }

    /// What was measured. A round thing has one width: a pot "14 inches wide" has that diameter.
    pub(super) fn measures(&self) -> Vec<Measured> {
        let kind = self.names.iter().find_map(|hit| match hit.meaning {
            Named::BedKind(kind) => Some(kind),
            _ => None,
        });
        let round = matches!(kind, Some(BedKind::Pot | BedKind::Basket));
        let mut all: Vec<Measured> = self.quantities.dimensions.iter().map(measured).collect();
        if all.is_empty() && self.told.iter().any(|hit| hit.meaning == Told::NewBed) {
            all.extend(self.one_width());
        }
        for one in all.iter_mut().filter(|one| round && one.length.is_none() && one.diameter.is_none()) {
            one.diameter = one.width.take();
        }
        all
    }

    pub(super) fn saw(&self) -> Option<crate::garden::SeenKind> {
        self.told.iter().find_map(|hit| match hit.meaning {
            Told::Saw(kind) => Some(kind),
            _ => None,
        })
    }

    pub(super) fn aspects(&self) -> Vec<Aspect> {
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
}

pub(super) fn measured(found: &quantities::Dimensions) -> Measured {
    Measured { length: found.length, width: found.width, depth: found.depth, diameter: found.diameter }
}

/// Latin letters, and no vowel among them.
fn has_no_vowel(word: &str) -> bool {
    word.chars().all(|letter| letter.is_ascii_alphabetic() && !"aeiouy".contains(letter))
}
