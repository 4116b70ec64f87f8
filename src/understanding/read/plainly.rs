//! What a message tells without weighing its words: days away, work done, a new bed, a correction.

use super::seen::is_told_poorly_alone;
use super::theirs::asks_of_someones_work;
use super::{Found, Hit, Reader, Told};
use crate::garden::{JobKind, Move};
use crate::knowledge::{Aspect, DayWord, Emergency, Kind, Part, Point, Sign, TimeUnit};
use crate::quantity::Unit;
use crate::script::Text;
use crate::understanding::asker::Asker;
use crate::understanding::gazetteer::Named;
use crate::understanding::kind::Verdict;
use crate::understanding::parts::NOT_UP;
use crate::understanding::reading::Reading;
use chrono::{Days, NaiveDate};
use std::ops::Range;

/// A kind, how sure, and whether it stands whatever its words are usual for.
pub(super) struct ByRule {
    pub(super) kind: Kind,
    pub(super) sureness: f64,
    pub(super) stands: bool,
}

impl Found {
    /// Days or weeks that something takes, in days.
    pub(super) fn for_days(&self) -> Option<f64> {
        let of_a_day = |span: &Range<usize>| {
            // "10 days back" names a day, and is no length of time.
            self.days.iter().any(|day| day.span.start <= span.start && span.end <= day.span.end)
        };
        let lengths = self.quantities.durations.iter().filter(|duration| !of_a_day(&duration.span));
        lengths.into_iter().find_map(|duration| match duration.unit {
            TimeUnit::Day => Some(duration.value),
            TimeUnit::Week => Some(duration.value * 7.0),
            _ => None,
        })
    }

    /// What only watering can be about: days away, a flush, a bed left dry; and whether it is time again for a
    /// bed that was watered. Told with a word for done it stays a record.
    pub(super) fn about_water(&self, text: &Text) -> Option<(Kind, f64)> {
        /// A phrase that leaves little else (judgement).
        const SURE: f64 = 0.85;
        let aspects = self.aspects();
        // "Before I leave for office" is a matter of hours.
        let soon_back =
            self.told.iter().any(|hit| hit.meaning == Told::Aspect(Aspect::Away) && is_for_the_day(text, hit.span.end));
        let only_water = [Aspect::Away, Aspect::Without, Aspect::Salt];
        // "The gardener is away, so I will spray", "I'll spray myself, tell me the dose": what is asked is the spray.
        let said = |what: Told| self.told.iter().any(|hit| hit.meaning == what);
        let sprays = self.sprays && (said(Told::Will) || said(Told::Request) || self.says_point(Point::Strength));
        let plainly =
            !soon_back && !sprays && self.did.is_none() && only_water.iter().any(|aspect| aspects.contains(aspect));
        // "Today it hangs limp. Gave water this morning": only a word for the turn itself asks where nothing else does.
        let drooping = self.on_plant && !self.asks;
        let again = self.did == Some(JobKind::Water) && self.speaks_of_now() && !drooping;
        let unwatered = self.unwatered;
        (plainly || again || unwatered).then_some((Kind::Water, SURE))
    }

    /// "Aaj paani" asks whether to water now, and "aaj paani de diya" tells that it was done.
    fn speaks_of_now(&self) -> bool {
        let done = |at: usize| {
            let verb = |hit: &Hit<Told>| matches!(hit.meaning, Told::Did(_) | Told::Done) && hit.span.start == at;
            self.told.iter().any(verb)
        };
        self.told.iter().any(|hit| hit.meaning == Told::Aspect(Aspect::Now) && !done(hit.span.end))
    }

    /// "Sorry, …", or "no, …" at its beginning.
    pub(super) fn corrects(&self, text: &Text) -> bool {
        self.told.iter().any(|hit| hit.meaning == Told::Correction) || self.begins_with(text, &Told::NoneOfThese)
    }

    /// "Oh, it was yesterday", "300 g thi", "with neem oil": nothing but another day, amount or product than was just told.
    pub(super) fn says_otherwise(&self, text: &Text, reader: &Reader<'_>, reading: &Reading, before: &Reading) -> bool {
        // "Sown yesterday": what is done once was not done twice.
        let once = matches!(before.did, Some(JobKind::Sow | JobKind::Plant)) && self.did == before.did;
        // "Kal kiya tha": the same, on another day.
        let another_day = reading.days.iter().any(|day| !before.days.contains(day));
        let done = self.told.iter().any(|hit| hit.meaning == Told::Done);
        let again = before.did.is_some() && another_day && done && (self.did.is_none() || self.did == before.did);
        let covered = |at: usize| {
            let job = |hit: &Hit<Told>| {
                hit.span.contains(&at) && matches!(hit.meaning, Told::Did(_) | Told::Thing(_) | Told::Done)
            };
            text.tokens.get(at).is_none_or(|token| !token.normal.chars().any(char::is_alphabetic))
                || self.is_empty_word(at)
                || (once || again) && self.told.iter().any(job)
                || self.told.iter().any(|hit| hit.meaning == Told::Got && hit.span.contains(&at))
                || self.days.iter().any(|day| day.span.contains(&at))
                || self.quantities.said.iter().any(|said| said.span.contains(&at))
                || self.names.iter().any(|hit| matches!(hit.meaning, Named::Material(_)) && hit.span.contains(&at))
                || reader.known.words.parts_of_day.at(text, at).is_some()
        };
        let bare = (0..text.tokens.len()).all(covered) && !self.begins_with(text, &Told::FollowUp);
        // An amount or a product that was left out is of the same work.
        let amount = reading.quantities.iter().any(|now| !before.quantities.contains(now));
        let stuff = !reading.materials.is_empty() && reading.materials != before.materials;
        let day = !reading.days.is_empty() && reading.days != before.days;
        bare && (amount || stuff || day)
    }

    /// What happened to someone. "Kaat lu" is "shall I cut": no hot wind that struck anyone.
    pub(super) fn emergency(&self, text: &Text, reader: &Reader<'_>) -> Option<Emergency> {
        let cuts = self.told.iter().filter(|hit| hit.meaning == Told::Point(Point::Wait) && hit.span.len() > 1);
        let spans: Vec<&Range<usize>> = cuts.map(|hit| &hit.span).collect();
        if spans.is_empty() {
            return reader.gazetteer.emergency(text, &self.crop_tokens());
        }
        let mut rest = text.clone();
        let kept: Vec<usize> =
            (0..text.tokens.len()).filter(|at| !spans.iter().any(|span| span.contains(at))).collect();
        rest.tokens = kept.iter().filter_map(|at| text.tokens.get(*at).cloned()).collect();
        let crops = self.crop_tokens();
        let crops: Vec<usize> = (0..).zip(&kept).filter(|(_, at)| crops.contains(at)).map(|(now, _)| now).collect();
        // "Kha sakte" is asked of what may be poison too.
        let whole = || reader.gazetteer.emergency(text, &self.crop_tokens());
        let eaten = || whole().filter(|what| *what == Emergency::WouldEat);
        reader.gazetteer.emergency(&rest, &crops).or_else(eaten)
    }

    pub(super) fn undoes(&self) -> bool {
        self.told.iter().any(|hit| hit.meaning == Told::Undo)
    }

    /// A month with a number beside it that makes no day: 31 June.
    pub(super) fn no_such_day(&self, text: &Text, reader: &Reader<'_>) -> bool {
        (0..text.tokens.len()).any(|position| {
            let month = matches!(reader.known.words.days.at(text, position), Some((DayWord::Month(_), _)));
            let dated = self.days.iter().any(|day| day.span.contains(&position));
            let number = |place: Option<usize>| {
                let number = place.and_then(|place| text.tokens.get(place)).and_then(|token| token.number);
                number.is_some_and(|number| (29.0..100.0).contains(&number) && number.fract() == 0.0)
            };
            month && !dated && (number(position.checked_sub(1)) || number(Some(position + 1)))
        })
    }

    /// Work of "last week", "sown in january": done on a day that is not told.
    pub(super) fn is_on_no_day(&self, text: &Text, reader: &Reader<'_>) -> bool {
        let words = &reader.known.words;
        let last = (0..text.tokens.len()).any(|at| {
            let length = words.sign(Sign::Last, text, at);
            length.is_some_and(|length| {
                let span = words.spans.at(text, at + length).map(|(unit, _)| unit);
                matches!(span, Some(TimeUnit::Week | TimeUnit::Month | TimeUnit::Year))
            })
        });
        let month = (1..text.tokens.len()).any(|at| {
            let in_month = matches!(words.days.at(text, at), Some((DayWord::Month(_), _)));
            in_month && matches!(text.normal(at - 1), "in" | "since" | "during")
        });
        (last || month) && self.did.is_some() && self.days.is_empty() && !self.asks
    }

    /// A wish for another language or fewer words, and nothing else.
    fn about_the_talk(&self, text: &Text) -> Option<(Kind, f64)> {
        const SURE: f64 = 0.9;
        self.once_more(text).then_some((Kind::None, SURE))
    }

    /// Whether one may pick or eat after a spray is about the spray, however it is put.
    fn about_waiting(&self) -> Option<(Kind, f64)> {
        /// What may do harm is read so (judgement).
        const SURE: f64 = 0.85;
        let says = |point| self.points().any(|said| said == point);
        // "He used imidacloprid on it, cook wants it today": poison and a meal need no word that asks.
        let asked = self.asks || says(Point::SyntheticSpray) && self.saw().is_none();
        // "Someone used malathion", "dawa daali thi": any word for done beside a product, whoever did it.
        let product = self.sprays || says(Point::SyntheticSpray) || says(Point::Drug);
        let done = self.told.iter().any(|hit| matches!(hit.meaning, Told::Done | Told::ByOthers));
        let put = product && done && matches!(self.did, None | Some(JobKind::Sow));
        let sprayed = self.did == Some(JobKind::Spray) || put && !self.feeds;
        (sprayed && asked && says(Point::Wait)).then_some((Kind::Spray, SURE))
    }

    /// "Black spots on the leaves, tell me a medicine": what ails it comes first, then what helps.
    fn about_a_cure(&self) -> Option<(Kind, f64)> {
        /// A sign beside the word for any medicine leaves little else (judgement).
        const SURE: f64 = 0.85;
        let says = |point| self.points().any(|said| said == point);
        let of_a_product = [Point::SyntheticSpray, Point::Wait, Point::Strength, Point::Time, Point::Together];
        let plain = says(Point::Drug) && !of_a_product.into_iter().any(says);
        (plain && self.on_plant && self.did.is_none()).then_some((Kind::Trouble, SURE))
    }

    /// A job that is to be done on another day: "move the spray to friday", "spray kal karenge". Who says that a job is
    /// going to be done must name its day; who asks, or says that it is not, moves nothing.
    pub(super) fn put_off(&self, text: &Text) -> Option<JobKind> {
        self.speaks_of_moving(text).filter(|_| !self.says_not())
    }

    /// A job that is not to be moved, or not to be done on a day: "don't move the spray", "kal spray nahi karenge". Of
    /// several jobs it is not told which.
    pub(super) fn stays(&self, text: &Text) -> Option<JobKind> {
        self.speaks_of_moving(text).filter(|_| self.says_not() && self.jobs().len() < 2)
    }

    pub(super) fn says_not(&self) -> bool {
        self.told.iter().any(|hit| hit.meaning == Told::Not)
    }

    /// The job whose day is spoken of as changed or not, told and not asked.
    fn speaks_of_moving(&self, text: &Text) -> Option<JobKind> {
        /// A message of so few tokens is about the move alone: its day is asked back.
        const BARE: usize = 6;
        let says = |what: &Told| self.told.iter().any(|hit| hit.meaning == *what);
        // "Can you move …?" and "will spray" hold a word that asks, and ask nothing.
        let steers = |hit: &&Hit<Told>| matches!(hit.meaning, Told::Move | Told::Will);
        let within = |asks: &Hit<Told>| {
            let spans = self.told.iter().filter(steers).map(|hit| &hit.span);
            spans.into_iter().any(|span| span.start <= asks.span.start && asks.span.end <= span.end)
        };
        let (polite, asked): (Vec<&Hit<Told>>, Vec<&Hit<Told>>) =
            self.told.iter().filter(|hit| hit.meaning == Told::Question).partition(|hit| within(hit));
        let asks = !asked.is_empty()
            || says(&Told::DidAsk)
            || self.asks_whether_moved(text)
            || text.original.contains('?') && polite.is_empty();
        // "I'll spray today, tell me the dose": how much of it is asked, and nothing moved.
        let dosed = [Point::Strength, Point::Amount, Point::Liquid, Point::Wait];
        let asks = asks || says(&Told::Request) || dosed.into_iter().any(|point| self.says_point(point));
        let job = Move::JOBS.into_iter().find(|job| says(&Told::Thing(*job)))?;
        let day = !self.days.is_empty();
        let moves = says(&Told::Move) && (day || self.for_days().is_some() || text.tokens.len() <= BARE);
        // "I will spray today, tell me the measure": a question about that spray.
        let will = says(&Told::Will) && day && !says(&Told::Request);
        ((moves || will) && !asks && self.did.is_none()).then_some(job)
    }

    /// "Did you move the spray to Friday", "was it moved": whether a job was moved is asked.
    fn asks_whether_moved(&self, text: &Text) -> bool {
        const HELPING: [&str; 7] = ["did", "have", "has", "had", "was", "were", "is"];
        let moves = self.told.iter().any(|hit| hit.meaning == Told::Move);
        let begins = (0..text.tokens.len()).find(|at| !self.is_empty_word(*at)).unwrap_or_default();
        moves && (0..=begins).any(|at| HELPING.contains(&text.normal(at)))
    }

    /// Whether a job was moved is told by when it is due.
    fn about_a_move_made(&self, text: &Text) -> Option<(Kind, f64)> {
        const SURE: f64 = 0.85;
        let job = self.jobs().into_iter().any(|job| Move::JOBS.contains(&job));
        (job && self.asks_whether_moved(text) && !self.says_not()).then_some((Kind::Due, SURE))
    }

    /// The days on which a job may stand that was perhaps moved: from today to the day named, a week at least.
    pub(super) fn days_of_a_move(&self, text: &Text, today: NaiveDate) -> Option<(NaiveDate, NaiveDate)> {
        const WEEK: u64 = 6;
        self.about_a_move_made(text)?;
        let week = today.checked_add_days(Days::new(WEEK)).unwrap_or(today);
        Some((today, self.days.iter().map(|day| day.last).max().map_or(week, |last| last.max(week))))
    }

    fn about_a_move(&self, text: &Text) -> Option<(Kind, f64)> {
        /// A job, a word for moving and a day leave little else (judgement).
        const SURE: f64 = 0.85;
        self.put_off(text).or_else(|| self.stays(text)).map(|_| (Kind::Record, SURE))
    }

    /// What is told by words of one sense, whatever such a message is usually about.
    fn firmly(&self, text: &Text) -> Option<(Kind, f64)> {
        if self.company_stands {
            return self.about_its_company();
        }
        let first = self.about_the_talk(text).or_else(|| self.about_own_beds()).or_else(|| self.about_doing_likewise());
        // In the company of another world's words a medicine is none of ours.
        if first.is_some() || self.about_its_company().is_some() {
            return first;
        }
        self.about_one_of_the_crew(text)
            .or_else(|| self.about_a_saying())
            .or_else(|| self.about_a_poison_astray())
            .or_else(|| self.about_a_feed_astray())
            .or_else(|| self.about_a_move(text))
            .or_else(|| self.about_a_move_made(text))
            .or_else(|| self.about_someone_else())
            .or_else(|| self.about_what_was_done())
            .or_else(|| self.about_waiting())
            .or_else(|| self.about_harm_done())
            .or_else(|| self.about_leaving_it_thick(text))
            .or_else(|| self.about_water(text))
            .or_else(|| self.about_things_moved(text))
            .or_else(|| self.about_what_fills(text))
            .or_else(|| self.about_room_or_seed(text, false))
            .or_else(|| self.about_shares_of_light(text))
            .or_else(|| self.about_litres_alone(text))
    }

    /// What the rules make of a message, else the verdict of its words.
    pub(super) fn by_rule(&self, text: &Text, reader: &Reader<'_>, verdict: Verdict, asker: &Asker) -> ByRule {
        let firmly = self.firmly(text).or_else(|| asks_of_someones_work(text, verdict.kind, asker));
        let told = firmly
            .or_else(|| self.plainly(text, reader))
            .or_else(|| self.as_seen(text, reader, verdict.kind, verdict.sureness))
            .or_else(|| self.in_few_words(text, verdict.sureness))
            .or_else(|| self.about_a_named_thing(verdict, asker.before.as_ref()));
        let (kind, sureness) = told.unwrap_or((verdict.kind, verdict.sureness));
        let one_sense = firmly.is_some() || self.is_told_by_company();
        // How much of a product nobody knows is nothing else, nor is what is built as the last one was or what fills a box of a size.
        let framed = told.is_some() && matches!(kind, Kind::Spray | Kind::Build | Kind::Mix);
        // A trouble of a crop, by its name, is told whatever else such words are said of.
        let named = kind == Kind::Trouble && (!self.crops_within.is_empty() || self.asks_what_ails_it(text));
        // How much sun a crop wants is no question of a net.
        let wants = kind == Kind::Care && self.says_point(Point::SunWanted) && self.about_what_a_crop_wants().is_some();
        let framed = framed || wants;
        // Nor is work that is told and not asked about: such words are usual for questions of that work.
        ByRule { kind, sureness, stands: one_sense || framed || named || self.is_told_outright(reader, kind) }
    }

    /// What can be told without weighing words.
    fn plainly(&self, text: &Text, reader: &Reader<'_>) -> Option<(Kind, f64)> {
        self.about_its_company()
            .or_else(|| self.about_a_cover_laid(text))
            .or_else(|| self.about_a_cure())
            .or_else(|| self.about_a_new_bed(text, reader))
            .or_else(|| self.about_a_plant_after_work(text, reader))
            .or_else(|| self.about_what_is_poorly(text))
            .or_else(|| self.about_a_made_feed())
            .or_else(|| self.about_a_matter(text))
            .or_else(|| self.about_damp_mix(text))
            .or_else(|| self.about_a_trouble_after_work(reader))
            .or_else(|| self.about_work(text, reader))
            .or_else(|| self.about_how_much_water(text))
            .or_else(|| self.about_more_water(text))
            .or_else(|| self.about_what_was_missed())
            .or_else(|| self.about_what_a_crop_wants())
            .or_else(|| self.about_the_fruit_of_it(text, reader))
            .or_else(|| self.about_one_thing(text, reader))
            .or_else(|| self.about_a_frame(text, reader))
            .or_else(|| self.about_a_net())
    }

    /// A plant that looks wrong after the work told. What was sprayed against, cut off or pulled out is part of the work.
    fn about_a_plant_after_work(&self, text: &Text, reader: &Reader<'_>) -> Option<(Kind, f64)> {
        /// A sign on a plant beside work leaves little else (judgement).
        const SURE: f64 = 0.8;
        const SINCE: [&str; 13] =
            ["now", "still", "but", "yet", "ab", "phir", "fir", "lekin", "magar", "अब", "फिर", "लेकिन", "मगर"];
        const STILL: [&str; 4] = ["still", "bhi", "भी", "yet"];
        const AGAIN: [&str; 8] = ["again", "today", "resown", "resowed", "aaj", "dobara", "आज", "दोबारा"];
        let says = |words: &[&str]| text.tokens.iter().any(|token| words.contains(&token.normal.as_str()));
        let since = || says(&SINCE);
        // "Nothing came up, so I sowed it again": noted.
        let again = || says(&AGAIN);
        let after = match self.did? {
            JobKind::Water | JobKind::Feed | JobKind::TopUp => true,
            JobKind::Sow if self.signs.iter().any(|sign| sign == NOT_UP) => !again(),
            // "Planted them in a sack, no fruit has come": long after.
            JobKind::Plant => since() || self.days.is_empty() && self.tells_of_its_fruit(reader),
            JobKind::Spray | JobKind::Net | JobKind::Sow => since(),
            _ => false,
        };
        // "Neem was put on, and still whitefly".
        let pest = self.names.iter().any(|hit| matches!(hit.meaning, Named::Trouble(_)));
        let persists = self.did == Some(JobKind::Spray) && pest && self.days.is_empty() && says(&STILL) && since();
        // "It droops, and I did water. What happened to it": the work is the ground of that question.
        let ground = matches!(self.did, Some(JobKind::Water | JobKind::Feed));
        let ails = ground && self.told.iter().any(|hit| hit.meaning == Told::Ails) || self.asks_only_what_ails();
        let ails_after = after && self.on_plant && (!self.asks || ails);
        (ails_after || persists && !self.asks).then_some((Kind::Trouble, SURE))
    }

    /// A sign on the flower or the fruit, which come weeks after a planting.
    fn tells_of_its_fruit(&self, reader: &Reader<'_>) -> bool {
        let part = |id: &String| reader.known.signs.get(id).map(|sign| sign.part);
        self.signs.iter().any(|id| matches!(part(id), Some(Part::Flower | Part::Fruit)))
    }

    /// "My okra is not happy": what is seen is asked.
    fn about_what_is_poorly(&self, text: &Text) -> Option<(Kind, f64)> {
        const SURE: f64 = 0.8;
        let plant = self.names.iter().any(|hit| matches!(hit.meaning, Named::Crop(_) | Named::OtherPlant(_)));
        (plant && is_told_poorly_alone(text, &self.names, &self.told)).then_some((Kind::Trouble, SURE))
    }

    /// How much water, said so, where nothing else is named that one mixes or gives.
    fn about_how_much_water(&self, text: &Text) -> Option<(Kind, f64)> {
        const SURE: f64 = 0.85;
        let asked = self.points().any(|point| point == Point::HowMuchWater)
            || self.asks_vessels_for_all(text)
            || self.asks_vessels_alone(text)
            || self.asks && asks_by_its_verb(text);
        let stuff = self.names.iter().any(|hit| matches!(hit.meaning, Named::Material(_) | Named::Mix(_)));
        // "Okra planted in a 20 L bag, how much water": what grows there is the ground of it.
        let worked = self.did.is_some_and(|job| !matches!(job, JobKind::Sow | JobKind::Plant));
        let other = stuff || self.sprays || self.feeds || worked || !self.signs.is_empty();
        (asked && !other).then_some((Kind::Water, SURE))
    }

    /// "Found dry at noon, shall I pour two mugs more".
    fn about_more_water(&self, text: &Text) -> Option<(Kind, f64)> {
        const SURE: f64 = 0.8;
        let placed = self.names.iter().any(|hit| matches!(hit.meaning, Named::OwnBed(_) | Named::Crop(_)));
        let stuff = self.names.iter().any(|hit| matches!(hit.meaning, Named::Material(_) | Named::Mix(_)));
        let counted = self.asks && self.vessels(text).is_some_and(|vessels| vessels.count.is_some());
        let other = stuff || self.sprays || self.feeds || self.did.is_some();
        (placed && counted && !other).then_some((Kind::Water, SURE))
    }

    /// "How many cans for the whole roof".
    fn asks_vessels_for_all(&self, text: &Text) -> bool {
        let all = self.told.iter().any(|hit| hit.meaning == Told::All);
        all && self.vessels(text).is_some_and(|vessels| vessels.wanted)
    }

    /// "Kitni balti daalni hai": of what, if not of water.
    fn asks_vessels_alone(&self, text: &Text) -> bool {
        const MOST: usize = 7;
        let wanted = self.vessels(text).is_some_and(|vessels| vessels.wanted && vessels.count.is_none());
        let other = |hit: &Hit<Told>| matches!(hit.meaning, Told::Thing(job) if job != JobKind::Water);
        let plain = self.names.is_empty() && self.quantities.said.is_empty() && !self.told.iter().any(other);
        wanted && plain && text.tokens.len() <= MOST
    }

    /// A net of so many percent, asked about.
    fn about_a_net(&self) -> Option<(Kind, f64)> {
        const SURE: f64 = 0.8;
        let net = self.told.iter().any(|hit| hit.meaning == Told::Thing(JobKind::Net));
        let percent = self.quantities.said.iter().any(|said| said.written.unit == Unit::Percent);
        (net && percent && self.asks).then_some((Kind::Shade, SURE))
    }

    /// Work that is told of a bed or crop, and nothing asked: a record, whatever its words lean to. A plant that looks
    /// wrong after it is a trouble; a text of strange words is chatter.
    pub(super) fn about_work(&self, text: &Text, reader: &Reader<'_>) -> Option<(Kind, f64)> {
        /// A plain statement leaves little else (judgement).
        const SURE: f64 = 0.8;
        const STRANGE: f64 = 0.5;
        /// So few tokens hold nothing but the work.
        const SHORT: usize = 6;
        let named =
            self.names.iter().any(|hit| matches!(hit.meaning, Named::OwnBed(_) | Named::Crop(_) | Named::BedKind(_)));
        let seen = self.saw().is_some();
        // "Gave feed yesterday": of which bed is asked back.
        let short = text.tokens.len() <= SHORT && self.quantities.dimensions.is_empty();
        let told = (self.did.is_some() || seen) && !self.on_plant && (named || short) && !self.asks;
        // "Sprayed tomato yday eve, rain aftr": of a crop and a day, however it is spelled.
        let placed = self.names.iter().any(|hit| matches!(hit.meaning, Named::OwnBed(_) | Named::Crop(_)));
        let dated = self.did.is_some() && placed && !self.days.is_empty();
        (told && (dated || self.strange(text, reader) < STRANGE)).then_some((Kind::Record, SURE))
    }
}

/// Where one goes and is back by evening; "leave it for seed" goes nowhere.
fn is_for_the_day(text: &Text, at: usize) -> bool {
    const PLACES: [&str; 12] = [
        "office", "work", "school", "college", "market", "duty", "class", "shop", "clinic", "hospital", "seed", "seeds",
    ];
    (at..at + 2).any(|place| PLACES.contains(&text.normal(place)))
}

/// "Kab seenchein", "mitti geeli rakhu?", "shall I keep the mix moist": of water, by the verb or by what it makes.
fn asks_by_its_verb(text: &Text) -> bool {
    const VERBS: [&str; 4] = ["सींच", "seench", "sinch", "सिंच"];
    const WET: [&str; 9] = ["geeli", "gili", "geela", "gila", "nam", "गीली", "गीला", "नम", "moist"];
    const KEPT: [&str; 4] = ["rakh", "रख", "keep", "kept"];
    let word = |at: usize| text.normal(at);
    let starts = |at: usize, all: &[&str]| all.iter().any(|start| word(at).starts_with(start));
    (0..text.tokens.len()).any(|at| {
        let wet = || WET.contains(&word(at));
        let kept = || (at.saturating_sub(4)..=at + 1).any(|near| starts(near, &KEPT));
        starts(at, &VERBS) || wet() && kept()
    })
}
